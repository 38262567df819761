//! What is drawn of a wall's plates.

use layout::wall::{LaidWall, Wall};

/// A wall as it is laid out, its lengths from the end at which the tape is hooked.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnPlates {
    /// As it was given.
    pub wall: Wall,
    /// As it is laid out.
    pub laid: LaidWall,
    /// Whether that end is the right one.
    pub from_right: bool,
}
