//! What is drawn of a strapped ceiling: its plan, and one row of it from the side.

use measure::Length;

/// A ceiling in plan: across from the left wall, along from the near wall.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnStrapping {
    /// From wall to wall across the joists and along them.
    pub room: [Length; 2],
    /// Centres of the joists.
    pub joists: Vec<Length>,
    /// Their thickness.
    pub joist_thick: Length,
    /// The rows of strips.
    pub rows: Vec<DrawnRow>,
    /// Short pieces along the left and the right wall: from and to, along.
    pub short: [Vec<[Length; 2]>; 2],
    /// Width of a strip.
    pub strip_wide: Length,
    /// The crossings; none while nothing was read.
    pub crossings: Vec<DrawnCrossing>,
    /// The row with the thickest shim from the side; none while nothing was read.
    pub side: Option<DrawnSide>,
}

/// One line of strip.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnRow {
    /// Its centre.
    pub centre: Length,
    /// Its width.
    pub wide: Length,
    /// Its pieces, from and to, across.
    pub pieces: Vec<[Length; 2]>,
}

/// Where a strip crosses a joist.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnCrossing {
    /// Which row and which joist, counted from 1.
    pub name: [usize; 2],
    /// Where: across, along.
    pub at: [Length; 2],
    /// The shim; none where it is not known.
    pub shim: Option<Length>,
    /// Whether the joist was read here.
    pub read: bool,
    /// Whether the reading is to be read again.
    pub doubtful: bool,
    /// Whether the joist is to be planed here.
    pub planed: bool,
}

/// One row from the side.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnSide {
    /// Which row, counted from 1.
    pub row: usize,
    /// Height of the strip's back at the left and the right wall, over the lower one of them.
    pub backs: [Length; 2],
    /// Thickness of the strip.
    pub strip: Length,
    /// Each joist's centre and the gap under it; none where it is not known.
    pub joists: Vec<(Length, Option<Length>)>,
}
