//! What can be wrong with a nail, its joint or its spacing; every message is a sentence with a next step.

use measure::{Denominator, Force, Length, LengthError};
use standards::nds_2018::OutsideLimits;

use crate::Nail;

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
    /// A slanted nail through a steel plate.
    #[error(
        "A nail at a slant through a steel plate has no value here. Drive it straight, or use the plate's own listing."
    )]
    ToeNailThroughSteel,
    /// What the point is in holds no nail that is pulled.
    #[error("A nail in {} has no withdrawal value. Carry the pull with a strap, a tie or a hanger.", .0.words())]
    NoWithdrawal(HoldsNoPull),
    /// No head of this nail in the table, and none typed.
    #[error("The table of nail sizes has no head for {nail}. Measure the head across and give its diameter.")]
    HeadNotKnown {
        /// The nail.
        nail: Nail,
    },
    /// A head that the nail cannot have.
    #[error(
        "A head {} across was given for {nail}; one wider than the shank, to 3/4 in, is taken. Measure the head again.",
        thousandths(*given)
    )]
    Head {
        /// The nail.
        nail: Nail,
        /// The head given.
        given: Length,
    },
    /// Wood that is not dry at both times, under a head that is pulled through.
    #[error(
        "The wood under the head is wet when it is nailed or in service; what a head in wet wood holds is not worked out \
         here. Nail it dry and keep it dry, or ask the engineer."
    )]
    WetUnderHead,
    /// A ringed length that the nail cannot have.
    #[error(
        "Rings on {} of {nail} were given; over 0, to the length of the nail, is taken. Measure the rings from the point.",
        thousandths(*given)
    )]
    Rings {
        /// The nail.
        nail: Nail,
        /// The ringed length given.
        given: Length,
    },
    /// Every ring past the main member.
    #[error("The rings of {nail} come out of the main member and hold nothing in it. Use a shorter nail.")]
    RingsOutside {
        /// The nail.
        nail: Nail,
    },
    /// A load that is not a number of pounds from nothing up.
    #[error("{what} of {} lb was given; 0 and more is taken. Give its size without a sign.", .given.pounds())]
    Load {
        /// Which load.
        what: &'static str,
        /// What was given.
        given: Force,
    },
    /// A pattern of nails that nobody drives.
    #[error("{given} was given; 1 to 1,000 nails, or nails over 0, to 48 in on center, are taken. Count again.")]
    Pattern {
        /// What was given, in words.
        given: String,
    },
    /// A spacing that no panel table has.
    #[error(transparent)]
    Spacing(#[from] SpacingError),
    /// A rule of the standard was asked outside its limits.
    #[error(transparent)]
    OutsideLimits(#[from] OutsideLimits),
}

/// What holds no nail that is pulled along its shank.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum HoldsNoPull {
    /// The end of a piece.
    EndGrain,
    /// A wood panel: the standard's rule is for the side grain of lumber.
    Panel,
}

impl HoldsNoPull {
    const fn words(self) -> &'static str {
        match self {
            Self::EndGrain => "end grain",
            Self::Panel => "a wood panel",
        }
    }
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
pub(crate) fn thousandths(length: Length) -> String {
    let text = format!("{:.3}", length.inches());
    format!("{} in", text.trim_end_matches('0').trim_end_matches('.'))
}
