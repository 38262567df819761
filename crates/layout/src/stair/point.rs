//! A place in the elevation of a stair.

use measure::Length;

/// A place seen from the side.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Point {
    /// Level, up the stairs.
    pub run: Length,
    /// Plumb, up.
    pub height: Length,
}

impl Point {
    pub(super) const fn new(run: Length, height: Length) -> Self {
        Self { run, height }
    }
}
