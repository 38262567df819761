//! Ceiling strapping: strips across the joists, and the shims that bring them into one plane.
//!
//! [`set_out`] says where each strip goes, where it is joined and what it takes; [`Readings`] are what a string or a laser
//! reads at the crossings, and [`shims`] what goes between joist and strip there; [`planing`] looks whether a low joist is
//! better planed; [`hides`] tells what the strips hide, [`WallBoards`] and [`ceiling`] what height is left.
//!
//! Plan: *across* is along the strips, across the joists, from the left wall; *along* is along the joists, from the near
//! wall. A row is one line of strip.
//!
//! *Invariant*: a missing reading is never made up, a doubtful one never dropped. A plane is worked in whole numbers, so
//! that the same readings give the same shims everywhere.
//!
//! *Absent on purpose*: strips that are themselves warped; resilient channel; the best cutting of all pieces together,
//! which is a takeoff's.

mod doubt;
mod error;
mod height;
mod hidden;
mod obstacle;
mod pieces;
mod plane;
mod planing;
mod programme;
mod readings;
mod set_out;
mod shims;
mod stack;
mod take_off;

pub use doubt::Doubt;
pub use error::StrappingError;
pub use height::{Ceiling, WallBoards, ceiling};
pub use hidden::{Below, Hides, beam_below, hides};
pub use obstacle::{Backing, Obstacle};
pub use pieces::Run;
pub use plane::{Aim, Plane};
pub use planing::{Cut, JoistWood, Planed, Planing, PlaningWish, Refused, planing};
pub use readings::{Crossing, Datum, MOST_JOISTS, MOST_ROWS, Readings, Side};
pub use set_out::{ONE_BY_THREE, Row, SetOut, Strapping, Strip, rows, set_out};
pub use shims::{Known, NEIGHBOURS, Shim, ShimPlan, ShimWish, shims};
pub use stack::ShimSizes;
pub use take_off::{NAILS_A_CROSSING, Stock, TakeOff, TakeOffWish, take_off};
