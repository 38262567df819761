//! Wind on a house, brought to its wall lines storey by storey.
//!
//! A [`House`] is a rectangle with storeys, winds and wall lines; [`wind_to_lines`] gives each line what flexible floors
//! bring to it, by tributary width, with what comes down from the storeys above. [`stacked`] makes
//! of one line what [`crate::overturning`] turns.
//!
//! *Invariant*: in each direction the lines of a storey come to its shear, or there is no number at all.

mod house;
mod share;
mod stack;

pub use house::{BracedStorey, Direction, House, StoreyWind, WallLine, Winds};
pub use share::{
    AT_A_SIDE, HouseAnswer, LineForce, OpenSide, StoreyLines, TRIBUTARY, floors_between, wind_decides, wind_to_lines,
};
pub use stack::stacked;
