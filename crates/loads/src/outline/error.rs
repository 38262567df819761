//! What stops an outline, as a sentence.

use core::{error::Error, fmt};

/// Why an outline has no shape. `Display` says what was given and what is taken. Parts are counted from 0, the main
/// part; the sentence counts them from 1.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OutlineError {
    /// A size that no wood house has, or that contradicts another.
    Size {
        /// Which part; none for the house as a whole.
        part: Option<usize>,
        /// Which size: `eave height`.
        what: &'static str,
        /// What was given, with its unit.
        given: String,
        /// What is taken.
        taken: String,
    },
    /// A building that is not worked here.
    NotCovered {
        /// What it has: `a parapet`.
        what: &'static str,
        /// Why it is refused, and who decides; a sentence.
        reason: &'static str,
    },
    /// No part at all.
    NoParts,
    /// Two parts that cover the same ground.
    Overlap {
        /// The one.
        first: usize,
        /// The other.
        second: usize,
    },
    /// A part that no other part touches.
    Apart {
        /// Which part.
        part: usize,
    },
}

impl fmt::Display for OutlineError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Size { part, what, given, taken } => {
                match part {
                    Some(part) => write!(f, "Part {}, {what}.", part + 1)?,
                    None => write!(f, "The house, {what}.")?,
                }
                write!(f, " Given: {given}. Taken: {taken}.")
            }
            Self::NotCovered { what, reason } => write!(f, "Given: {what}. {reason}"),
            Self::NoParts => write!(f, "Given: no part of a house. Taken: one rectangle or more."),
            Self::Overlap { first, second } => write!(
                f,
                "Given: parts {} and {} that cover the same ground. Taken: parts that touch along a wall at most.",
                first + 1,
                second + 1
            ),
            Self::Apart { part } => write!(
                f,
                "Given: part {}, which does not touch the others along a wall. Taken: one house. Describe a building that \
                 stands by itself as a house of its own.",
                part + 1
            ),
        }
    }
}

impl Error for OutlineError {}
