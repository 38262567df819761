//! Why a stair has no answer, in sentences.

use core::fmt;

use measure::{Denominator, Length};

/// No size of a stair is more than this: 100 ft, which keeps every list short.
pub(super) const LONGEST: Length = Length::from_feet(100.0);
/// No stair worked here has more risers.
pub(super) const MOST_RISERS: u16 = 300;

/// Why a stair is not worked out; `Display` is a sentence that says what was given, what is taken and what to do.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum StairError {
    /// A size that must be more than nothing and no more than 100 ft.
    Size {
        /// Which.
        what: &'static str,
        /// What was given.
        given: Length,
    },
    /// A size that may be nothing, not less, and no more than 100 ft.
    Thickness {
        /// Which.
        what: &'static str,
        /// What was given.
        given: Length,
    },
    /// Finish floors that leave no rise.
    NoRise {
        /// The rise between finished floors.
        rise: Length,
    },
    /// A number of risers outside what is taken.
    Risers {
        /// What was given.
        given: usize,
        /// The least that is taken.
        least: u16,
        /// The most that is taken.
        most: u16,
    },
    /// A tread board no thinner than the first riser: nothing is left to cut.
    NoFirstCut {
        /// Thickness of the tread.
        tread: Length,
        /// The first riser, above what the stringer stands on.
        riser: Length,
    },
    /// Steps cut deeper than the board.
    BoardTooShallow {
        /// The board.
        given: Length,
        /// The depth that its steps take.
        taken: Length,
    },
    /// A landing where there is no riser for it.
    LandingPlace {
        /// The riser that was given.
        given: u16,
        /// The last one it may be.
        last: u16,
    },
    /// Winders of which one turns by nothing, or by a right angle or more.
    Winders {
        /// How many were given.
        given: u8,
    },
    /// A turn that is not more than nothing and no more than 180 degrees.
    WinderTurn,
    /// A tread board with no spacing in practice.
    TreadBoardTooThin {
        /// What was given.
        given: Length,
        /// The thinnest.
        least: Length,
    },
}

fn inches(length: Length) -> String {
    length.to_inches_fraction(Denominator::Sixteenth)
}

impl fmt::Display for StairError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::Size { what, given } => {
                write!(
                    f,
                    "The {what} is {}. More than nothing and to 100 ft is taken: measure it again.",
                    inches(given)
                )
            }
            Self::Thickness { what, given } => {
                write!(
                    f,
                    "The {what} is {}. Nothing or more and to 100 ft is taken: write 0 where there is none.",
                    inches(given)
                )
            }
            Self::NoRise { rise } => write!(
                f,
                "With both finish floors the rise is {}. It must be more than nothing: look whether top and bottom are \
                 exchanged.",
                inches(rise)
            ),
            Self::Risers { given, least, most } => {
                write!(
                    f,
                    "{given} risers were given; {least} to {most} are taken here. Count the risers, not the treads."
                )
            }
            Self::NoFirstCut { tread, riser } => write!(
                f,
                "The first riser is {} above what the stringer stands on, and the tread is {} thick: nothing is left to cut. \
                 Take a thinner tread or fewer risers.",
                inches(riser),
                inches(tread)
            ),
            Self::BoardTooShallow { given, taken } => write!(
                f,
                "The board is {} deep and its steps take {} of it. Take a deeper board, or a closed stringer.",
                inches(given),
                inches(taken)
            ),
            Self::LandingPlace { given, last } => write!(
                f,
                "The landing is on riser {given}; it can be on riser 1 to {last}, with one riser or more above it. Choose one \
                 of those."
            ),
            Self::Winders { given } => write!(
                f,
                "{given} winders were given for the turn. One to twelve are taken, none of which turns by 90 degrees or more: \
                 a quarter turn has 2 or 3 as a rule."
            ),
            Self::WinderTurn => {
                f.write_str("The turn is taken from more than 0 to 180 degrees. A quarter turn is 90, a half turn 180.")
            }
            Self::TreadBoardTooThin { given, least } => write!(
                f,
                "A tread board of {} has no spacing of stringers in practice; the thinnest that has is {}. Take a thicker \
                 board.",
                inches(given),
                inches(least)
            ),
        }
    }
}

impl core::error::Error for StairError {}

/// Refuses a size of nothing or less, and one past all stairs.
pub(super) fn size(what: &'static str, given: Length) -> Result<Length, StairError> {
    let taken = given > Length::ZERO && given <= LONGEST;
    if taken { Ok(given) } else { Err(StairError::Size { what, given }) }
}

/// Refuses a thickness below nothing, and one past all stairs.
pub(super) fn thickness(what: &'static str, given: Length) -> Result<Length, StairError> {
    let taken = given >= Length::ZERO && given <= LONGEST;
    if taken { Ok(given) } else { Err(StairError::Thickness { what, given }) }
}

/// Refuses a number of risers outside what is taken.
pub(super) fn count(given: usize, least: u16) -> Result<u16, StairError> {
    let refused = StairError::Risers { given, least, most: MOST_RISERS };
    u16::try_from(given).ok().filter(|count| (least..=MOST_RISERS).contains(count)).ok_or(refused)
}
