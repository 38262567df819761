//! A wall out of plumb.

use measure::{Angle, Length, Ratio, math};

use super::error::{SquareError, reading, size};
use crate::stair::Verdict;

/// What a wall may lean by common practice: 1/4 in in 8 ft. From memory.
pub const COMMON_LIMIT: Ratio = 0.25 / 96.0;

/// A wall beside plumb.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plumb {
    /// How much it leans of its height.
    pub lean: Ratio,
    /// The same in 8 ft.
    pub in_eight_feet: Length,
    /// From plumb; the sign is that of what was read.
    pub angle: Angle,
    /// What may be read over this height.
    pub allowed: Length,
    /// How it stands.
    pub verdict: Verdict,
    /// How far its top goes back; below zero the other way.
    pub top_moves: Length,
}

/// Holds what a wall leans over a height against the limit of common practice.
///
/// Source: common practice, from memory.
///
/// # Errors
/// A height of nothing or over 1,000 ft, a reading over that.
pub fn plumb(off: Length, height: Length) -> Result<Plumb, SquareError> {
    size("height", height)?;
    reading("lean", off)?;
    let allowed = height * COMMON_LIMIT;
    Ok(Plumb {
        lean: off / height,
        in_eight_feet: Length::from_feet(8.0) * (off / height),
        angle: Angle::from_degrees(math::atan2(off.inches(), height.inches()).to_degrees()),
        allowed,
        verdict: Verdict::of_margin(allowed - off.abs()),
        top_moves: -off,
    })
}
