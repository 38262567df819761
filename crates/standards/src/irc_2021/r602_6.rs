//! R602.6: notches and holes in studs.

use measure::{Length, Ratio};

use super::DOCUMENT;
use crate::{Source, Status};

/// R602.6, items 1 and 2: how deep a stud may be notched and how wide it may be bored.
pub const SHARES: Source = Source::new(DOCUMENT, "R602.6", Status::LookedUp);
/// R602.6: wood beside a hole, and no hole in the same section as a notch. Read in the print of 2018.
pub const BESIDE_A_HOLE: Source = Source::new(DOCUMENT, "R602.6", Status::LookedUp);
/// Least wood between the edge of a hole and the face of the stud.
pub const HOLE_TO_FACE: Length = Length::from_inches(0.625);
/// A hole of the doubled share may be in no more studs in a row than this.
pub const DOUBLED_IN_A_ROW: u8 = 2;

/// What a stud stands in, as the clause names it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StudIn {
    /// An exterior wall or a bearing partition.
    ExteriorOrBearing,
    /// A nonbearing partition.
    NonbearingPartition,
}

impl StudIn {
    /// The share of the stud's width that a notch may take.
    #[must_use]
    pub const fn notch_share(self) -> Ratio {
        match self {
            Self::ExteriorOrBearing => 0.25,
            Self::NonbearingPartition => 0.40,
        }
    }

    /// The share of the stud's width that a hole may take in a stud that is not doubled.
    #[must_use]
    pub const fn hole_share(self) -> Ratio {
        match self {
            Self::ExteriorOrBearing => 0.40,
            Self::NonbearingPartition => 0.60,
        }
    }

    /// The share of the stud's width that a hole may take in a doubled stud, with no more than [`DOUBLED_IN_A_ROW`] of
    /// them bored in a row. A nonbearing partition gains nothing by doubling.
    #[must_use]
    pub const fn doubled_hole_share(self) -> Ratio {
        0.60
    }
}

/// Deepest notch in a stud of this width, measured across its wide face.
///
/// ```
/// use measure::Length;
/// use standards::irc_2021::r602_6::{StudIn, notch_limit};
///
/// let two_by_four = Length::from_inches(3.5);
/// assert_eq!(notch_limit(StudIn::ExteriorOrBearing, two_by_four).inches(), 0.875);
/// ```
#[must_use]
pub fn notch_limit(stud_in: StudIn, width: Length) -> Length {
    width * stud_in.notch_share()
}

/// Widest hole in a stud of this width: single, or doubled.
#[must_use]
pub fn hole_limit(stud_in: StudIn, width: Length, doubled: bool) -> Length {
    width * if doubled { stud_in.doubled_hole_share() } else { stud_in.hole_share() }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: IRC R602.6, limits in inches worked out in a value sheet: bearing 2x4 7/8 and 1-3/8, 2x6 1-3/8 and 2-3/16,
    /// each the limit rounded down to a sixteenth. The exact limits are compared to within that rounding.
    #[test]
    fn limits_of_bearing_studs() {
        for (width, notch, hole) in [(3.5, 0.875, 1.375), (5.5, 1.375, 2.1875)] {
            let exact_notch = notch_limit(StudIn::ExteriorOrBearing, Length::from_inches(width)).inches();
            let exact_hole = hole_limit(StudIn::ExteriorOrBearing, Length::from_inches(width), false).inches();
            assert!((0.0..1.0 / 16.0).contains(&(exact_notch - notch)), "{width}: {exact_notch}");
            assert!((0.0..1.0 / 16.0).contains(&(exact_hole - hole)), "{width}: {exact_hole}");
        }
    }

    /// Source: IRC R602.6: 25 and 40 % where the wall bears, 40 and 60 % where it does not, 60 % if doubled.
    #[test]
    fn shares_as_printed() {
        let bearing = StudIn::ExteriorOrBearing;
        let partition = StudIn::NonbearingPartition;
        assert_eq!([bearing.notch_share(), bearing.hole_share(), bearing.doubled_hole_share()], [0.25, 0.40, 0.60]);
        assert_eq!([partition.notch_share(), partition.hole_share()], [0.40, 0.60]);
        assert_eq!(HOLE_TO_FACE.inches(), 0.625);
    }
}
