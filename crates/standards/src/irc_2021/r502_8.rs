//! R502.8 and R802.7: cuts, notches and holes in joists, rafters and beams.

use measure::{Length, Ratio};

use super::DOCUMENT;
use crate::{Source, Status};

/// R502.8.1: sawn joists and beams of floors.
pub const SAWN_JOISTS: Source = Source::new(DOCUMENT, "R502.8.1", Status::LookedUp);
/// R802.7.1: sawn rafters and ceiling joists; the same limits.
pub const SAWN_RAFTERS: Source = Source::new(DOCUMENT, "R802.7.1", Status::LookedUp);
/// R502.8.2: engineered members and trusses take no cut, notch or hole that their maker or designer has not allowed.
pub const ENGINEERED: Source = Source::new(DOCUMENT, "R502.8.2", Status::LookedUp);

/// Deepest notch, as a share of the depth.
pub const NOTCH_DEPTH_SHARE: Ratio = 1.0 / 6.0;
/// Longest notch, as a share of the depth.
pub const NOTCH_LENGTH_SHARE: Ratio = 1.0 / 3.0;
/// Deepest notch at the end of a member, as a share of the depth.
pub const END_NOTCH_SHARE: Ratio = 1.0 / 4.0;
/// Widest hole, as a share of the depth.
pub const HOLE_SHARE: Ratio = 1.0 / 3.0;
/// Least wood between a hole and the top or bottom of the member, or another hole or notch.
pub const BESIDE_A_HOLE: Length = Length::from_inches(2.0);
/// From this nominal thickness on, a member's tension face is notched only at its ends.
pub const THICK: Length = Length::from_inches(4.0);

/// Deepest notch away from the ends of a member of this depth.
#[must_use]
pub fn notch_depth_limit(depth: Length) -> Length {
    depth * NOTCH_DEPTH_SHARE
}

/// Longest notch in a member of this depth.
#[must_use]
pub fn notch_length_limit(depth: Length) -> Length {
    depth * NOTCH_LENGTH_SHARE
}

/// Deepest notch at the end of a member of this depth.
#[must_use]
pub fn end_notch_limit(depth: Length) -> Length {
    depth * END_NOTCH_SHARE
}

/// Widest hole in a member of this depth.
///
/// ```
/// use measure::Length;
/// use standards::irc_2021::r502_8::hole_limit;
///
/// assert_eq!(hole_limit(Length::from_inches(11.25)).inches(), 3.75);
/// ```
#[must_use]
pub fn hole_limit(depth: Length) -> Length {
    depth * HOLE_SHARE
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: IRC R502.8.1, limits in inches worked out in a value sheet, rounded down to a sixteenth: 2x8 1-3/16 notch
    /// and 2-7/16 hole (which is rounded to the nearest), 2x10 1-9/16 (nearest) and 3-1/16, 2x12 1-7/8 and 3-3/4. The
    /// exact limits are compared to half a sixteenth.
    #[test]
    fn limits_of_joists() {
        for (depth, notch, hole) in [(7.25, 1.1875, 2.4375), (9.25, 1.5625, 3.0625), (11.25, 1.875, 3.75)] {
            let depth = Length::from_inches(depth);
            assert!((notch_depth_limit(depth).inches() - notch).abs() <= 1.0 / 32.0);
            assert!((hole_limit(depth).inches() - hole).abs() <= 1.0 / 32.0);
        }
    }

    /// Source: a field case on a 2x10: hole to 3.08 in, notch to 1.54 in, end notch to 2.31 in.
    #[test]
    fn limits_of_a_two_by_ten() {
        let depth = Length::from_inches(9.25);
        for (limit, printed) in
            [(hole_limit(depth), 3.08), (notch_depth_limit(depth), 1.54), (end_notch_limit(depth), 2.31)]
        {
            assert!((limit.inches() - printed).abs() <= 0.005, "{printed}");
        }
        assert!((notch_length_limit(depth).inches() - 9.25 / 3.0).abs() < 1e-12);
    }
}
