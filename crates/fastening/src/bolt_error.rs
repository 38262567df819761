//! What can be wrong with a bolt in its joint; every message is a sentence with a next step.

use measure::Length;
use standards::nds_2018::OutsideLimits;

use crate::error::thousandths;

/// Why a bolt has no design value in a joint.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum BoltError {
    /// A panel on a bolt.
    #[error("A bolt through a wood panel has no value here. Bolt lumber, or ask the engineer.")]
    Panel,
    /// A thickness that no bolted piece has.
    #[error("A piece {} thick was given; over 0, to 12 in, is taken. Measure it again.", thousandths(*given))]
    Thickness {
        /// The thickness given.
        given: Length,
    },
    /// A bolt that is not deep enough in concrete.
    #[error(
        "The bolt is {} deep in the concrete; the table of bolts in concrete is for 6 in and deeper, and the code asks for \
         7 in of an anchor bolt. Ask the engineer.",
        thousandths(*given)
    )]
    Embedment {
        /// The depth given.
        given: Length,
    },
    /// A distance under the least one.
    #[error(
        "The bolt stands {} from {to}; {} is the least, and under it a bolt has no value. Move it, use a thinner bolt or a \
         wider piece, or ask the engineer.",
        thousandths(*given), thousandths(*least)
    )]
    TooClose {
        /// What it is too close to.
        to: &'static str,
        /// The distance given.
        given: Length,
        /// The least distance.
        least: Length,
    },
    /// A rule of the standard was asked outside its limits.
    #[error(transparent)]
    OutsideLimits(#[from] OutsideLimits),
}
