//! Why a text is not a length.

/// Why a text is not a length; `Display` is a sentence for the person who typed it.
///
/// Each sentence says what was given, what is taken, and what to do. `given` is the typed text on one line, cut when
/// it is long.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum LengthError {
    /// Nothing was typed.
    #[error("Nothing was typed. Write a length such as 8' 2-3/4\" or 98 3/4.")]
    Empty,
    /// A minus stands in front.
    #[error("{given} is below zero. Zero and more are taken: write the length without the minus.")]
    Negative {
        /// What was typed.
        given: String,
    },
    /// A comma, which may mean thousands or decimals.
    #[error("{given} has a comma, which may mean thousands or decimals. Write 1200 or 8.5, without a comma.")]
    Comma {
        /// What was typed.
        given: String,
    },
    /// A character that no length has.
    #[error(
        "{given} has the character {found:?} in it. Digits, fractions, ' and \", ft, in, mm, cm and m are taken: write \
         a length such as 8' 2-3/4\"."
    )]
    UnknownCharacter {
        /// What was typed.
        given: String,
        /// The first such character.
        found: char,
    },
    /// Letters that are no unit of length.
    #[error(
        "{given} has {word} in it, which is no unit of length here. Units taken are ft, in, mm, cm and m: write a \
         length such as 8' 2-3/4\" or 2496 mm."
    )]
    UnknownWord {
        /// What was typed.
        given: String,
        /// The letters.
        word: String,
    },
    /// Points and digits that make no number: `98.` or `1.2.3`.
    #[error("{given} has {found} where a number should be. Write decimals with one point and digits after it: 98.75.")]
    NotANumber {
        /// What was typed.
        given: String,
        /// The points and digits.
        found: String,
    },
    /// A number with more digits than a length needs.
    #[error("{given} has a number of more than {most} digits. Write it with fewer: a tape shows no more.")]
    TooManyDigits {
        /// What was typed.
        given: String,
        /// How many digits a number may have.
        most: usize,
    },
    /// More than one slash.
    #[error("{given} has more than one slash. One fraction is taken: write a length such as 8' 2-3/4\".")]
    TwoSlashes {
        /// What was typed.
        given: String,
    },
    /// A slash that does not stand between two whole numbers.
    #[error("{given} has a slash without a whole number on each side. Write the fraction like 3/4.")]
    UnfinishedFraction {
        /// What was typed.
        given: String,
    },
    /// A fraction of zero parts.
    #[error("{given} has a fraction over zero. Fractions over 2, 4, 8, 16, 32 and 64 are taken: write one like 3/4.")]
    ZeroDenominator {
        /// What was typed.
        given: String,
    },
    /// A fraction no tape shows, such as a roof pitch.
    #[error(
        "{given} has the fraction {fraction}. Fractions over 2, 4, 8, 16, 32 and 64 are taken, and a roof pitch is no \
         length: write a fraction like 1/2."
    )]
    NotATapeFraction {
        /// What was typed.
        given: String,
        /// The fraction in question.
        fraction: String,
    },
    /// A fraction of one or more.
    #[error("{given} has the fraction {fraction}. Fractions under one are taken: write 5/4 as 1-1/4.")]
    ImproperFraction {
        /// What was typed.
        given: String,
        /// The fraction in question.
        fraction: String,
    },
    /// Twelve inches or more after the feet.
    #[error(
        "{given} has {inches} inches after the feet. From 0 to less than 12 are taken there: carry the rest into the \
         feet, or write inches alone, such as 98 3/4 in."
    )]
    TooManyInches {
        /// What was typed.
        given: String,
        /// The inches as read.
        inches: String,
    },
    /// A third number without a slash that may be eighths or sixteenths.
    #[error(
        "{given} ends in {third}, which may be eighths or sixteenths. Write {start}-{third}/8 or {start}-{third}/16."
    )]
    EighthsOrSixteenths {
        /// What was typed.
        given: String,
        /// Its feet and inches: `8-2`.
        start: String,
        /// Its third number.
        third: u64,
    },
    /// A third number without a slash that is no number of sixteenths.
    #[error(
        "{given} ends in {third}. Without a slash, 8 to 15 are taken there as sixteenths: write the fraction out, such \
         as 8-2-3/4."
    )]
    TooManySixteenths {
        /// What was typed.
        given: String,
        /// Its third number.
        third: u64,
    },
    /// Two numbers side by side with nothing to say which are feet.
    #[error(
        "{given} has two numbers and nothing that says which is feet. Write 8' 2\" for feet and inches, or 98 3/4 for \
         inches and a fraction."
    )]
    WhichAreFeet {
        /// What was typed.
        given: String,
    },
    /// A dash after a space, which may be meant as a minus.
    #[error("{given} has a dash after a space, and nothing is subtracted here. Write 98-3/4 or 98 3/4.")]
    LooseDash {
        /// What was typed.
        given: String,
    },
    /// A metric unit with more than one number.
    #[error("{given} is not one metric number. One number and one unit are taken: write 2496 mm, 249.6 cm or 2.496 m.")]
    NotOneMetricNumber {
        /// What was typed.
        given: String,
    },
    /// Longer than anything that is framed.
    #[error("{understood} is more than 1,000 ft. Lengths from 0 to 1,000 ft are taken: check the number and its unit.")]
    TooLong {
        /// What was understood, with its unit.
        understood: String,
    },
    /// Numbers and units in an order that has no meaning.
    #[error(
        "{given} is in no order that is read. Write feet, then inches, then a fraction, such as 8' 2-3/4\", or inches \
         alone, such as 98 3/4 in."
    )]
    Unreadable {
        /// What was typed.
        given: String,
    },
}
