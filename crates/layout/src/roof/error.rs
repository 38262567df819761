//! Why a roof has no answer, in sentences.

use core::fmt;

use measure::{Angle, Length, Slope};

use super::plane::{FLATTEST, STEEPEST, Side, Sides};

/// Why a roof, or a stick of it, is not worked out.
#[derive(Clone, Debug, PartialEq)]
pub enum RoofError {
    /// A size that must be more than nothing.
    NotPositive {
        /// Which size.
        what: &'static str,
        /// What was given.
        given: Length,
    },
    /// A size that may be nothing, and not less.
    Negative {
        /// Which size.
        what: &'static str,
        /// What was given.
        given: Length,
    },
    /// A roof that is level, falls inward or is steeper than any.
    Pitch {
        /// What was given.
        given: Slope,
    },
    /// Eaves that are one straight line, or fold back on each other.
    CornerAngle {
        /// What was given.
        given: Angle,
    },
    /// Two planes whose line leaves the corner past the square of one eave: jacks would run down from it.
    LeansPast {
        /// The eave that it leans past.
        side: Side,
        /// Both pitches.
        pitches: Sides<Slope>,
        /// The corner.
        corner: Angle,
    },
    /// Nothing of a stick is left between what it meets.
    NothingLeft {
        /// Which stick.
        what: &'static str,
        /// Level run between the centre lines of what it meets.
        run: Length,
        /// What both ends take off it.
        taken: Length,
    },
    /// More sticks than one side of a roof has.
    TooMany {
        /// Which.
        what: &'static str,
        /// The most there may be.
        most: usize,
    },
    /// A slope over another that is no flatter: they never meet.
    NeverMeets {
        /// Pitch of what must be steeper.
        lower: Slope,
        /// Pitch of what must be flatter.
        upper: Slope,
    },
    /// A polygon of too few or too many sides.
    Sides {
        /// What was given.
        given: u8,
    },
    /// A knee of a gambrel that stands on no half circle.
    KneeAngle {
        /// What was given.
        given: Angle,
    },
    /// A plan without a wing.
    NoWing,
    /// An end that runs into a wing where there is none.
    IntoNothing {
        /// The wing, counted from 1.
        wing: usize,
    },
    /// A common rafter of another pitch than the plane that its jacks lie in.
    OtherPitch {
        /// The plane.
        side: Side,
        /// Pitch of the rafter.
        given: Slope,
        /// Pitch of the plane.
        plane: Slope,
    },
    /// Two sizes of which the first must not be less than the second.
    Order {
        /// What is too small.
        what: &'static str,
        /// What was given.
        given: Length,
        /// The least it may be.
        least: Length,
    },
}

impl fmt::Display for RoofError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotPositive { what, given } => {
                write!(f, "The {what} is {} in. Give a size of more than nothing.", given.inches())
            }
            Self::Negative { what, given } => {
                write!(f, "The {what} is {} in. Give nothing or more.", given.inches())
            }
            Self::Pitch { given } => write!(
                f,
                "A pitch of {} in 12 is no roof that can be cut here. Give {} to {} in 12.",
                given.rise_in_twelve(),
                FLATTEST.rise_in_twelve(),
                STEEPEST.rise_in_twelve()
            ),
            Self::CornerAngle { given } => write!(
                f,
                "Eaves at {} degrees make no corner. Give 1 to 179 degrees; a square corner is 90.",
                given.degrees()
            ),
            Self::LeansPast { side, pitches, corner } => write!(
                f,
                "{} in 12 and {} in 12 at a corner of {} degrees meet in a line that leans past the square of eave {side}: the \
                 flatter roof never climbs to it there. Bring the two pitches closer, or frame that corner with a gable.",
                pitches.a.rise_in_twelve(),
                pitches.b.rise_in_twelve(),
                corner.degrees()
            ),
            Self::NothingLeft { what, run, taken } => write!(
                f,
                "Nothing of the {what} is left: its run is {} in and what it meets takes {} in. Give a longer run or \
                 thinner pieces.",
                run.inches(),
                taken.inches()
            ),
            Self::TooMany { what, most } => {
                write!(f, "There would be more than {most} {what}. Give a wider spacing, a shorter run or fewer parts.")
            }
            Self::NeverMeets { lower, upper } => write!(
                f,
                "The upper slope has {} in 12 and the lower one {} in 12. Give an upper slope that is flatter.",
                upper.rise_in_twelve(),
                lower.rise_in_twelve()
            ),
            Self::Sides { given } => {
                write!(f, "A roof over {given} sides is not worked. Give 3 to 100; an octagon has 8.")
            }
            Self::KneeAngle { given } => write!(
                f,
                "A knee at {} degrees above level is not on the half circle between plate and ridge. Give more than 0 \
                 and less than 90.",
                given.degrees()
            ),
            Self::NoWing => f.write_str("The plan has no wing. Give one rectangle or more."),
            Self::IntoNothing { wing } => write!(
                f,
                "Wing {wing} has an end that runs into another wing, and none is there. Give that end a gable or a \
                 hip, or move the wings together."
            ),
            Self::OtherPitch { side, given, plane } => write!(
                f,
                "The rafter has {} in 12 and plane {side} has {} in 12. Give the rafter of that plane.",
                given.rise_in_twelve(),
                plane.rise_in_twelve()
            ),
            Self::Order { what, given, least } => write!(
                f,
                "The {what} is {} in; it must be no less than {} in. Change one of the two.",
                given.inches(),
                least.inches()
            ),
        }
    }
}

impl core::error::Error for RoofError {}

/// Refuses a size of nothing or less.
pub(super) fn positive(what: &'static str, given: Length) -> Result<(), RoofError> {
    if given > Length::ZERO { Ok(()) } else { Err(RoofError::NotPositive { what, given }) }
}

/// Refuses a size below nothing.
pub(super) fn not_negative(what: &'static str, given: Length) -> Result<(), RoofError> {
    if given >= Length::ZERO { Ok(()) } else { Err(RoofError::Negative { what, given }) }
}
