//! What a beam may refuse, as sentences that end with what to do.

use measure::{FlexuralRigidity, Length};

/// Why a beam or its loads were refused. Supports and loads are counted from one, in the order they were given.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum BeamError {
    /// A number that is infinite or not a number at all.
    #[error("The {what} is not a finite number. Give it again.")]
    NotFinite {
        /// Which value, in words.
        what: &'static str,
    },
    /// The beam has no length.
    #[error("The beam is {} in long. Give a length above zero.", given.inches())]
    LengthNotPositive {
        /// The length given.
        given: Length,
    },
    /// The beam has no stiffness.
    #[error("The beam's EI is {} lb-in². Give a stiffness above zero.", given.pound_square_inches())]
    StiffnessNotPositive {
        /// The flexural rigidity given.
        given: FlexuralRigidity,
    },
    /// Too few supports to stand.
    #[error("The beam would fall with {given} support(s): give two or more, or one that holds it against turning.")]
    TooFewSupports {
        /// How many supports were given.
        given: usize,
    },
    /// A support that the beam does not reach.
    #[error("Support {number} is at {} in, but the beam runs from 0 to {} in. Move it onto the beam.",
        at.inches(), length.inches())]
    SupportOffBeam {
        /// Which support.
        number: usize,
        /// Where it was put.
        at: Length,
        /// The beam's length.
        length: Length,
    },
    /// A support that is not to the right of the one before it.
    #[error(
        "Support {number} is at {} in, the one before it at {} in. List them from left to right, no two in one place.",
        at.inches(), previous.inches()
    )]
    SupportsOutOfOrder {
        /// Which support.
        number: usize,
        /// Where it was put.
        at: Length,
        /// Where the one before it was put.
        previous: Length,
    },
    /// A load that is not on the beam.
    #[error("Load {number} reaches {} in, but the beam runs from 0 to {} in. Move or cut the load.",
        at.inches(), length.inches())]
    LoadOffBeam {
        /// Which load.
        number: usize,
        /// The place that is off the beam.
        at: Length,
        /// The beam's length.
        length: Length,
    },
    /// A distributed load that ends where it starts or before.
    #[error("Load {number} runs from {} in to {} in. Give it an end to the right of its start.",
        from.inches(), to.inches())]
    LoadWithoutLength {
        /// Which load.
        number: usize,
        /// Where it starts.
        from: Length,
        /// Where it ends.
        to: Length,
    },
    /// A place asked about that is not on the beam.
    #[error("The place asked about is at {} in, but the beam runs from 0 to {} in. Ask about a place on the beam.",
        at.inches(), length.inches())]
    PlaceOffBeam {
        /// The place.
        at: Length,
        /// The beam's length.
        length: Length,
    },
    /// Results too large to be held as numbers.
    #[error("The results are too large to compute. Check the units of lengths and loads.")]
    TooLarge,
}
