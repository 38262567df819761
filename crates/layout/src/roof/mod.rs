//! Hand-cut roofs: planes that meet along lines, and the sticks that follow them.
//!
//! Where to look: [`Corner`] solves two planes over a corner, equal or not, at any angle, with every bevel that follows;
//! [`common()`] lays out a common rafter, [`birdsmouth()`] its seat; [`hip()`] a hip or valley,
//! [`jacks()`] the jacks along it. Every stick is a [`Stick`] with [`Mark`]s on both faces.
//!
//! Two conventions of angles are in use, and a [`Cut`] names both: from square, as a saw's scale reads, and from the axis, as a
//! bevel along the edge reads. Lengths run along the measuring line, the top edge.

mod birdsmouth;
mod common;
mod corner;
mod corner_cuts;
mod cut;
mod error;
mod hip;
mod hip_space;
mod jack_space;
mod jacks;
mod plane;
mod ridge;
mod space;
mod stick;
mod wall_offset;

pub use birdsmouth::{Birdsmouth, BirdsmouthAnswer, TailRule, birdsmouth};
pub use common::{Common, CommonAnswer, Tail, common};
pub use corner::{Corner, Meeting};
pub use corner_cuts::DropAndSlide;
pub use cut::{Cut, DIAGONAL_RUN, Under};
pub use error::RoofError;
pub use hip::{Hip, HipAnswer, HipHead, TopEdge, hip};
pub use hip_space::HipSeat;
pub use jacks::{Jack, Jacks, JacksAnswer, Start, jacks};
pub use plane::{STEEPEST, Side, Sides, along_slope, rise};
pub use ridge::{Ridge, RidgeHeight, RidgeReading};
pub use stick::{Edge, Face, Mark, Spot, Stick, StickCut, stock_length};
pub use wall_offset::{Bearing, WallOffset};
