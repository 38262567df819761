//! Floors and roofs as deep beams that carry the wind to the wall lines.
//!
//! [`DiaphragmNailing`] on framing has a [`DiaphragmStrength`]; [`check_diaphragm`] gives the unit shear and the chord force
//! of a rectangle between two wall lines; [`collect`] draws the force that a wall line gathers along itself;
//! [`lightest_diaphragm`] finds the nailing that a unit shear needs. [`Layout`] has the tables' case of how panels lie, and
//! [`read_diaphragm`] reads a line of a schedule.

mod choose;
mod collector;
mod layout;
mod span;
mod strength;
mod text;

pub use choose::{ChosenDiaphragm, diaphragm_nailings, lightest_diaphragm};
pub use collector::{CollectorPoint, WallPiece, collect};
pub use layout::Layout;
pub use span::{Diaphragm, DiaphragmAnswer, Held, Outline, check_diaphragm};
pub use strength::{Blocking, DiaphragmFraming, DiaphragmNailing, DiaphragmStrength, diaphragm_strength};
pub use text::{DiaphragmTextError, read_diaphragm};
