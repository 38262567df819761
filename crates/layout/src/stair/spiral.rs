//! Spiral stairs, which have limits of their own.

use measure::Length;

use super::check::{Check, Edition, Subject};
use super::error::{StairError, size};

/// A spiral stair.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spiral {
    /// Its riser; all are alike.
    pub riser: Length,
    /// Depth of a tread at the walk line, 12 in from the narrow side.
    pub tread: Length,
    /// Headroom.
    pub headroom: Length,
    /// Clear width at and below the handrail.
    pub width: Length,
}

/// Looks at a spiral stair: riser, tread, headroom and width.
///
/// Source: IRC R311.7.10.1, from memory; another building code has the same four sizes.
///
/// # Errors
/// Sizes of nothing or over 100 ft.
pub fn spiral(given: &Spiral, edition: Edition) -> Result<[Check; 4], StairError> {
    let limits = edition.limits();
    let riser = size("riser", given.riser)?;
    let tread = size("depth of a tread", given.tread)?;
    let headroom = size("headroom", given.headroom)?;
    let width = size("clear width", given.width)?;
    Ok([
        Check::at_most(Subject::Riser, riser, limits.spiral_riser),
        Check::at_least(Subject::Tread, tread, limits.spiral_tread),
        Check::at_least(Subject::Headroom, headroom, limits.spiral_headroom),
        Check::at_least(Subject::WidthAtRail, width, limits.spiral_width),
    ])
}
