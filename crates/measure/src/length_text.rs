//! Lengths read and written as carpenters do.
//!
//! Reading ([`read_length`]) is exact: a fraction of halves to sixty-fourths loses nothing, and a decimal or metric
//! number is rounded once, to the nearest `f64`. A text with two sensible meanings is refused, not guessed.
//!
//! Writing ([`Length::to_feet_inches`], [`Length::to_inches_fraction`], [`Length::spoken`]) rounds to the nearest mark
//! of the fraction that is named, halves away from zero. A limit that must not be passed is first rounded to its
//! safe side with [`Length::rounded`].
//!
//! [`Length::to_feet_inches`]: crate::Length::to_feet_inches
//! [`Length::to_inches_fraction`]: crate::Length::to_inches_fraction
//! [`Length::spoken`]: crate::Length::spoken
//! [`Length::rounded`]: crate::Length::rounded

mod error;
mod exact;
mod read;
mod speech;
mod tokens;
mod write;

pub use error::LengthError;
pub use read::{LengthReading, MAX_READ_LENGTH, read_length};
pub use write::LengthParts;

/// The finest fraction a length is written to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Denominator {
    /// Eighths: layout talk.
    Eighth,
    /// Sixteenths: cuts.
    Sixteenth,
    /// Thirty-seconds: on request.
    ThirtySecond,
    /// Sixty-fourths: the finest mark on a steel rule, and the finest fraction that is read.
    SixtyFourth,
}

impl Denominator {
    /// Every fraction, from coarse to fine.
    pub const ALL: [Self; 4] = [Self::Eighth, Self::Sixteenth, Self::ThirtySecond, Self::SixtyFourth];

    /// How many of these make an inch: 8, 16, 32 or 64.
    #[must_use]
    pub const fn per_inch(self) -> u32 {
        match self {
            Self::Eighth => 8,
            Self::Sixteenth => 16,
            Self::ThirtySecond => 32,
            Self::SixtyFourth => 64,
        }
    }
}

/// Which mark of the tape a length is rounded to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Rounding {
    /// The nearest mark; halfway goes away from zero.
    Nearest,
    /// The next mark at or above: for the least that will do.
    Up,
    /// The next mark at or below: for the most that is allowed.
    Down,
}

/// What a bare number is taken to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LengthUnit {
    /// Inches.
    Inches,
    /// Feet.
    Feet,
}
