//! A stair as it was measured: the largest and the smallest, and what the code and the crew's safety say.

use measure::Length;

use super::check::{Check, Edition, Subject};
use super::error::{StairError, count, size};

/// One riser or tread that stands out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Extreme {
    /// Which, from 1 at the bottom; the lowest of several alike.
    pub number: usize,
    /// What was measured.
    pub size: Length,
}

/// Measured risers or treads beside the code.
#[derive(Clone, Debug, PartialEq)]
pub struct AsBuilt {
    /// The largest.
    pub largest: Extreme,
    /// The smallest.
    pub smallest: Extreme,
    /// Their difference.
    pub spread: Length,
    /// All of them together.
    pub total: Length,
    /// The worst one against the code: the highest riser, the shallowest tread.
    pub worst: Check,
    /// The spread against the code.
    pub variation: Check,
}

impl AsBuilt {
    /// Whether the code takes both.
    #[must_use]
    pub const fn holds(&self) -> bool {
        self.worst.holds() && self.variation.holds()
    }
}

/// Judges the risers of a flight, from the bottom.
///
/// Source: IRC R311.7.5.1.
///
/// # Errors
/// No riser, or more than 300; one of nothing or over 100 ft.
pub fn judge(risers: &[Length], edition: Edition) -> Result<AsBuilt, StairError> {
    let (largest, smallest) = extremes("riser", risers)?;
    let limits = edition.limits();
    let spread = largest.size - smallest.size;
    Ok(AsBuilt {
        largest,
        smallest,
        spread,
        total: risers.iter().copied().sum(),
        worst: Check::at_most(Subject::Riser, largest.size, limits.riser),
        variation: Check::at_most(Subject::RiserVariation, spread, limits.riser_variation),
    })
}

/// Judges the treads of a flight, nosing to nosing.
///
/// Source: IRC R311.7.5.2.
///
/// # Errors
/// As [`judge`].
pub fn judge_treads(treads: &[Length], edition: Edition) -> Result<AsBuilt, StairError> {
    let (largest, smallest) = extremes("tread", treads)?;
    let limits = edition.limits();
    let spread = largest.size - smallest.size;
    Ok(AsBuilt {
        largest,
        smallest,
        spread,
        total: treads.iter().copied().sum(),
        worst: Check::at_least(Subject::Tread, smallest.size, limits.tread),
        variation: Check::at_most(Subject::TreadVariation, spread, limits.tread_variation),
    })
}

/// The largest and the smallest.
fn extremes(what: &'static str, sizes: &[Length]) -> Result<(Extreme, Extreme), StairError> {
    let none = StairError::Risers { given: 0, least: 1, most: super::error::MOST_RISERS };
    count(sizes.len(), 1)?;
    let mut all = sizes.iter().enumerate().map(|(index, &size)| Extreme { number: index + 1, size });
    let first = all.next().ok_or(none)?;
    size(what, first.size)?;
    let (mut largest, mut smallest) = (first, first);
    for one in all {
        size(what, one.size)?;
        if one.size > largest.size {
            largest = one;
        }
        if one.size < smallest.size {
            smallest = one;
        }
    }
    Ok((largest, smallest))
}
