//! Connections by themselves, one under the other, where no wall takes the uplift along.

use measure::Force;
use standards::OutsideTable;
use standards::irc_2021::r802_11::TOE_NAILS;

use super::chain::ChainAnswer;
use super::holds::by_itself;
use super::link::{Link, LinkAnswer, UpliftCaution};
use super::tie::Tie;
use super::wall::strength;

/// One connection: what pulls at it, and what is there.
#[derive(Clone, Debug, PartialEq)]
pub struct Single {
    /// The link.
    pub link: Link,
    /// What pulls at it, allowable stress design; below zero where it is pressed down.
    pub pull: Force,
    /// What is there.
    pub tie: Tie,
}

/// Works out connections by themselves, from the roof down, and the weakest of them, as [`check_chain`](super::check_chain)
/// does along a wall. What needs a wall around it, such as panels, may not count.
///
/// Source: statics; IRC R802.11.1 for toe nails at a roof (from memory).
///
/// # Errors
/// A strength or a weight below zero.
pub fn check_singles(singles: &[Single]) -> Result<ChainAnswer, OutsideTable> {
    singles.iter().map(answer).collect::<Result<Vec<_>, _>>().map(ChainAnswer::of)
}

fn answer(single: &Single) -> Result<LinkAnswer, OutsideTable> {
    strength(&single.tie)?;
    let (held, source) = by_itself(single.link, &single.tie);
    let limited = source == Some(TOE_NAILS);
    let cautions = limited.then_some(UpliftCaution::ToeNailLimit).into_iter().collect();
    Ok(LinkAnswer { source, cautions, ..LinkAnswer::pulled(single.link, single.pull, held) })
}
