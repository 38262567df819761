//! What is drawn of a floor.

use layout::floor::{Floor, LaidFloor};

/// A floor as it is laid out, its lengths across the joists from the end at which the tape is hooked.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnJoists {
    /// As it was given.
    pub floor: Floor,
    /// As it is laid out.
    pub laid: LaidFloor,
    /// Whether that end is the right one.
    pub from_right: bool,
}
