//! Squaring: diagonals of any four corners, and which corner moves.
//!
//! [`right_angles`] has the multiples of 3-4-5 that fit two legs; [`out_of_square`] which way a rectangle leans by its two
//! diagonals; [`four_sided`] solves any four corners from four sides and one thing more, [`to_rectangle`] says where each of them
//! goes, and [`closing`] tells which of six measurements does not fit. [`plumb`], [`straightness`] and [`level`] are the same for
//! walls and for what is set to one plane.
//!
//! Plan: corners go round as A, B, C, D. A is the origin, B lies along, C and D across to the left of AB. Along is A to B.
//!
//! *Absent on purpose*: corners that point inward, crossed sides, and what lean or crookedness does to strength.

mod closing;
mod diagonal;
mod error;
mod four_sided;
mod impossible;
mod level;
mod measured;
mod out_of_square;
mod plumb;
mod rectangle;
mod right_angle;
mod straight;

pub use closing::{Closing, Fit, closing};
pub use diagonal::{MAX_SIDE, diagonal};
pub use error::SquareError;
pub use four_sided::{Corner, FourSided, Known, Place, four_sided};
pub use level::{Levelled, Reading, Tilt, level};
pub use measured::{Measurement, Sides};
pub use out_of_square::{Lean, OutOfSquare, out_of_square};
pub use plumb::{COMMON_LIMIT, Plumb, plumb};
pub use rectangle::{Move, to_rectangle};
pub use right_angle::{RightAngle, angle_error, right_angles};
pub use straight::{Offset, Straight, straightness};
