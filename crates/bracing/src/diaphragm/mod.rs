//! Floors and roofs as deep beams that carry the wind to the wall lines.
//!
//! [`DiaphragmNailing`] on framing has a [`DiaphragmStrength`]; [`check_diaphragm`] gives the unit shear and the chord force
//! of a rectangle between two wall lines; [`collect`] draws the force that a wall line gathers along itself;
//! [`lightest_diaphragm`] finds the nailing that a unit shear needs.

mod choose;
mod collector;
mod span;
mod strength;

pub use choose::{ChosenDiaphragm, lightest_diaphragm};
pub use collector::{CollectorPoint, WallPiece, collect};
pub use span::{Diaphragm, DiaphragmAnswer, Held, Outline, check_diaphragm};
pub use strength::{Blocking, DiaphragmFraming, DiaphragmNailing, DiaphragmStrength, diaphragm_strength};
