//! What can be wrong with a nail, its joint or its spacing; every message is a sentence with a next step.

use measure::{Denominator, Length, LengthError};
use standards::nds_2018::OutsideLimits;

/// Why a text, or a pair of sizes, is not a nail.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NailError {
    /// Nothing was typed.
    #[error("Nothing was typed. Write diameter and length from the box, such as 0.131 x 2-1/2.")]
    Empty,
    /// A penny size that more than one nail of the table has.
    #[error("{given} is not one nail: it can be {can_be}. Write diameter and length from the box, or measure one.")]
    PennyAlone {
        /// What was typed.
        given: String,
        /// The nails it can be.
        can_be: String,
    },
    /// A penny size that the table does not hold, or not with this kind or size.
    #[error(
        "{given} is no nail of the table of sizes, which holds 6d to 60d common, box and sinker. Write diameter and \
         length from the box."
    )]
    UnknownPenny {
        /// What was typed.
        given: String,
    },
    /// A named nail and a diameter and length that are not its own.
    #[error("{given} names two nails: {named} is {is}. Write diameter and length from the box, without the name.")]
    TwoNails {
        /// What was typed.
        given: String,
        /// The name in it: `8d common`.
        named: String,
        /// What the name means.
        is: String,
    },
    /// A cooler nail, whose size differs by maker.
    #[error(
        "{given}: cooler nails differ by maker, and are thinner than common. Write diameter and length from the box."
    )]
    Cooler {
        /// What was typed.
        given: String,
    },
    /// A word that is no part of a nail's name.
    #[error("{given} has {word} in it, which is not read. Write diameter and length, such as 0.131 x 2-1/2.")]
    UnknownWord {
        /// What was typed.
        given: String,
        /// The word or mark.
        word: String,
    },
    /// Not a diameter and a length with an x between them.
    #[error(
        "{given} is not a diameter and a length. Write both with an x between, such as 0.131 x 2-1/2 or 3 x 0.131."
    )]
    NotTwoSizes {
        /// What was typed.
        given: String,
    },
    /// One of the two sizes cannot be read.
    #[error(transparent)]
    Size(#[from] LengthError),
    /// Two sizes that no nail has.
    #[error(
        "{given} is no nail: a diameter from 0.06 to 0.375 in and a length from 3/4 to 12 in are taken. Measure both \
         again."
    )]
    NoSuchNail {
        /// What was given.
        given: String,
    },
}

/// Why a nail has no design value in a joint.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum FasteningError {
    /// The nail does not reach 6 diameters into the main member.
    #[error(
        "The nail {}; {} is the least that counts, 6 diameters. Use a nail {} long or longer.",
        reach(*reaches), thousandths(*least), needed.to_inches_fraction(Denominator::Eighth)
    )]
    TooShort {
        /// How far it reaches; below zero when it does not come through the side member.
        reaches: Length,
        /// The least that counts.
        least: Length,
        /// The length that would do, up to the next eighth of an inch.
        needed: Length,
    },
    /// The main member is thinner than 6 diameters.
    #[error(
        "The main member is {} thick; the nail needs {} in it, 6 diameters. Use a thinner nail, or a thicker main member.",
        thousandths(*thickness), thousandths(*least)
    )]
    MainMemberTooThin {
        /// Thickness of the main member.
        thickness: Length,
        /// The least that counts.
        least: Length,
    },
    /// A thickness that no piece of wood in a joint has.
    #[error("{what} {} was given; {accepted} is taken. Measure it again.", thousandths(*given))]
    Thickness {
        /// What was given, in words.
        what: &'static str,
        /// The thickness given.
        given: Length,
        /// What is accepted.
        accepted: &'static str,
    },
    /// A rule of the standard was asked outside its limits.
    #[error(transparent)]
    OutsideLimits(#[from] OutsideLimits),
}

/// Why a spacing of panel nails has no answer.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error(
    "Nails {} on center were given; the rule covers edge nails from 2 to 12 in. An engineer decides about closer \
     nails.",
    thousandths(*given)
)]
pub struct SpacingError {
    /// The spacing given.
    pub given: Length,
}

fn reach(reaches: Length) -> String {
    if reaches > Length::ZERO {
        format!("reaches {} into the main member", thousandths(reaches))
    } else {
        "does not reach the main member".to_owned()
    }
}

/// Inches to the thousandth, for a sentence.
fn thousandths(length: Length) -> String {
    let text = format!("{:.3}", length.inches());
    format!("{} in", text.trim_end_matches('0').trim_end_matches('.'))
}
