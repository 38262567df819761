//! Why a ceiling has no strips or shims: what was given, what is taken, and what to do.

use core::fmt;

use measure::{Denominator, Length};

/// Why a ceiling has no set-out or no shims.
#[derive(Clone, Debug, PartialEq)]
pub enum StrappingError {
    /// A length outside what is taken.
    Outside {
        /// What it is of.
        what: &'static str,
        /// What was given.
        given: Length,
        /// The least that is taken.
        least: Length,
        /// The most that is taken.
        most: Length,
    },
    /// Places that do not go up by an inch or more from one to the next.
    NotInOrder {
        /// Of what.
        what: &'static str,
        /// Which one does not, counted from 1.
        at: usize,
    },
    /// Too many of something, or none.
    Count {
        /// Of what.
        what: &'static str,
        /// How many were given.
        given: usize,
        /// The most that are taken.
        most: usize,
    },
    /// A row of readings that is longer or shorter than the joists.
    RowLength {
        /// Which row, counted from 1.
        row: usize,
        /// How many were given, gaps counted.
        given: usize,
        /// How many joists there are.
        joists: usize,
    },
    /// No reading at all.
    NoReadings,
    /// All readings stand in one slanting line: that tells of no plane.
    InOneLine,
    /// A level ceiling from a string that is not known to be level.
    NotLevel,
    /// A joint needs more wood than half a joist is thick.
    Bearing {
        /// What each end needs.
        needed: Length,
        /// What half a joist gives.
        there: Length,
    },
    /// No joist within reach of a strip of this length.
    OutOfReach {
        /// From where.
        from: Length,
        /// The longest strip.
        stock: Length,
    },
    /// A shim that is no whole number of sixteenths.
    ShimSize {
        /// What was given.
        given: Length,
    },
    /// No plane was found; this is not expected.
    NoPlane,
}

impl fmt::Display for StrappingError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let inches = |length: &Length| length.to_inches_fraction(Denominator::SixtyFourth);
        match self {
            Self::Outside { what, given, least, most } => write!(
                f,
                "Given: {what} {}. Taken is {} to {}. Change it, or set this ceiling out by hand.",
                inches(given),
                inches(least),
                inches(most)
            ),
            Self::NotInOrder { what, at } => write!(
                f,
                "Number {at} of {what} is not an inch or more past the one before it. Give them in order from one wall."
            ),
            Self::Count { what, given, most } => {
                write!(f, "Given: {given} {what}. Taken are 1 to {most}. Divide the ceiling, or give what there is.")
            }
            Self::RowLength { row, given, joists } => write!(
                f,
                "Row {row} has {given} readings for {joists} joists. Give one for each joist, and leave a gap where none \
                 was read."
            ),
            Self::NoReadings => f.write_str("Nothing was read. Read at least one crossing."),
            Self::InOneLine => f.write_str(
                "All readings stand in one slanting line, which tells of no plane. Read a crossing beside it, or ask for \
                 level.",
            ),
            Self::NotLevel => f.write_str(
                "Level was asked for, and the string is not known to be level. Level it or read from a level laser, or \
                 ask for flat.",
            ),
            Self::Bearing { needed, there } => write!(
                f,
                "Each end at a joint needs {}, and half a joist gives {}. Ask for less, or nail a block beside the joist.",
                inches(needed),
                inches(there)
            ),
            Self::OutOfReach { from, stock } => write!(
                f,
                "From {} no joist is within a strip of {}. Take longer strips, or put in blocking.",
                inches(from),
                inches(stock)
            ),
            Self::ShimSize { given } => {
                write!(f, "Given: a shim of {}. Taken are whole sixteenths over nothing, to 3\".", inches(given))
            }
            Self::NoPlane => f.write_str("No plane was found. Check the readings, or ask for level."),
        }
    }
}

impl core::error::Error for StrappingError {}

/// Refuses a length outside its limits, ends included.
pub(super) fn within(what: &'static str, given: Length, [least, most]: [Length; 2]) -> Result<Length, StrappingError> {
    if given >= least && given <= most { Ok(given) } else { Err(StrappingError::Outside { what, given, least, most }) }
}

/// Refuses places that do not go up by an inch or more.
pub(super) fn in_order(what: &'static str, places: &[Length]) -> Result<(), StrappingError> {
    let apart = |pair: &[Length]| pair[1] - pair[0] >= Length::from_inches(1.0);
    match places.windows(2).position(|pair| !apart(pair)) {
        Some(at) => Err(StrappingError::NotInOrder { what, at: at + 2 }),
        None => Ok(()),
    }
}
