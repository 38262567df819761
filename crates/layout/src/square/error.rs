//! Why something cannot be squared, in sentences.

use core::fmt;

use measure::{Angle, Denominator, Length};

use super::diagonal::MAX_SIDE;
use super::measured::Measurement;

/// Why there is no answer; `Display` is a sentence that says what was given, what is taken and what to do.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SquareError {
    /// A length that must be more than nothing and no more than 1,000 ft.
    Size {
        /// Which.
        what: &'static str,
        /// What was given.
        given: Length,
    },
    /// A length past 1,000 ft, either way, that may be nothing.
    Reading {
        /// Which.
        what: &'static str,
        /// What was given.
        given: Length,
    },
    /// A measurement that no corners can have with the others.
    DoesNotFit {
        /// Which one.
        which: Measurement,
        /// What was given.
        given: Length,
        /// It must be more than this.
        least: Length,
        /// It must be less than this.
        most: Length,
    },
    /// Diagonals that no rectangle or parallelogram of this length has.
    DiagonalsTooFarApart {
        /// The longer one.
        longer: Length,
        /// The shorter one.
        shorter: Length,
        /// The side between the corners that they start from.
        side: Length,
    },
    /// A corner that is no corner.
    CornerAngle {
        /// What was given.
        given: Angle,
    },
    /// Corners that do not lie around one four-sided shape without one that points inward.
    PointsInward,
    /// Legs too short for any multiple.
    LegsTooShort {
        /// The longer leg.
        longer: Length,
        /// The shorter leg.
        shorter: Length,
    },
    /// A number of readings that is not taken.
    Readings {
        /// What was given.
        given: usize,
        /// The least that is taken.
        least: usize,
        /// The most that is taken.
        most: usize,
    },
    /// A plane steeper than is set by shims.
    Tilt,
}

fn feet(length: Length) -> String {
    length.to_feet_inches(Denominator::Sixteenth)
}

impl fmt::Display for SquareError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::Size { what, given } => {
                let most = MAX_SIDE.feet();
                write!(f, "The {what} is {}. More than nothing and to {most} ft is taken: measure it again.", feet(given))
            }
            Self::Reading { what, given } => {
                let most = MAX_SIDE.feet();
                write!(f, "The {what} is {}. To {most} ft either way is taken: read it again.", feet(given))
            }
            Self::DoesNotFit { which, given, least, most } => write!(
                f,
                "{which} is {}, and with the others it must be more than {} and less than {}. Measure it again, then its \
                 neighbours.",
                feet(given),
                feet(least),
                feet(most)
            ),
            Self::DiagonalsTooFarApart { longer, shorter, side } => write!(
                f,
                "Diagonals of {} and {} do not belong to a side of {}: they differ by as much as the side or more, or together do \
                 not reach past it. Measure all three again.",
                feet(longer),
                feet(shorter),
                feet(side)
            ),
            Self::CornerAngle { given } => {
                write!(f, "A corner of {} degrees was given. More than 0 and less than 180 is taken.", given.degrees())
            }
            Self::PointsInward => f.write_str(
                "With these measurements a corner points inward or sides cross. Look whether two of them were exchanged; a shape \
                 that does point inward is measured as two triangles.",
            ),
            Self::LegsTooShort { longer, shorter } => write!(
                f,
                "Legs of {} and {} hold no multiple of 3-4-5 in inches. 4\" and 3\" at least are taken: use a square.",
                feet(longer),
                feet(shorter)
            ),
            Self::Readings { given, least, most } => {
                write!(f, "{given} readings were given; {least} to {most} are taken. Add or leave out some.")
            }
            Self::Tilt => f.write_str(
                "The plane falls by more than 1 in 4. Shims set what is level or nearly so: give a smaller fall.",
            ),
        }
    }
}

impl core::error::Error for SquareError {}

/// Refuses a length of nothing or less, and one over 1,000 ft.
pub(super) fn size(what: &'static str, given: Length) -> Result<Length, SquareError> {
    let taken = given > Length::ZERO && given <= MAX_SIDE;
    if taken { Ok(given) } else { Err(SquareError::Size { what, given }) }
}

/// Refuses a reading over 1,000 ft either way.
pub(super) fn reading(what: &'static str, given: Length) -> Result<Length, SquareError> {
    if given.abs() <= MAX_SIDE { Ok(given) } else { Err(SquareError::Reading { what, given }) }
}

/// Refuses a number of readings.
pub(super) fn readings(given: usize, least: usize, most: usize) -> Result<(), SquareError> {
    if (least..=most).contains(&given) { Ok(()) } else { Err(SquareError::Readings { given, least, most }) }
}
