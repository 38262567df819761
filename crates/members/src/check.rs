//! What every check of a member has in common: a demand beside a capacity, and the verdict on their share.

use measure::Ratio;
use standards::asce7_16::chapter_2::Combination;

/// Whether a part carries what is asked of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// It does.
    Carries,
    /// It does, with less than one per cent to spare.
    AtLimit,
    /// It does not.
    TooSmall,
    /// The rules used here give no answer.
    Outside,
}

/// From this share of capacity on, up to the limit itself, the verdict is *at the limit*.
const AT_LIMIT_FROM: Ratio = 0.99;

impl Verdict {
    /// The verdict of a share of capacity. Anything over the limit, however little, is too small.
    #[must_use]
    pub fn of(share: Ratio) -> Self {
        if share.is_nan() {
            Self::Outside
        } else if share > 1.0 {
            Self::TooSmall
        } else if share >= AT_LIMIT_FROM {
            Self::AtLimit
        } else {
            Self::Carries
        }
    }

    /// Whether it carries, be it only just.
    #[must_use]
    pub const fn holds(self) -> bool {
        matches!(self, Self::Carries | Self::AtLimit)
    }
}

/// Deflection limits, as the `n` of `L/n`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DeflectionLimits {
    /// Under live load.
    pub live: Ratio,
    /// Under total load.
    pub total: Ratio,
}

/// One limit of one size: what is asked, what there is, and under which combination.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Check<L> {
    /// What limits.
    pub limit: L,
    /// Share of capacity used.
    pub share: Ratio,
    /// What is asked, in `unit`; a share for limits that have no one unit.
    pub demand: f64,
    /// What there is, in `unit`.
    pub capacity: f64,
    /// Unit of both: `psi`, `in`, `lb`, or empty.
    pub unit: &'static str,
    /// The combination that governs it.
    pub combination: Combination,
}

impl<L> Check<L> {
    /// A demand beside its capacity, both in a unit.
    #[must_use]
    pub fn new(limit: L, (demand, capacity, unit): (f64, f64, &'static str), combination: Combination) -> Self {
        Self { limit, share: demand / capacity, demand, capacity, unit, combination }
    }

    /// A share alone.
    #[must_use]
    pub const fn of_share(limit: L, share: Ratio, combination: Combination) -> Self {
        Self { limit, share, demand: share, capacity: 1.0, unit: "", combination }
    }
}

/// The one that uses the greatest share; the first of equals.
#[must_use]
pub fn governing<L>(checks: &[Check<L>]) -> Option<&Check<L>> {
    checks.iter().reduce(|most, check| if check.share > most.share { check } else { most })
}

/// Keeps one check of each limit, in the order of the limits.
pub(crate) fn keep_worst<L: Ord + Copy>(checks: &mut Vec<Check<L>>, check: Check<L>) {
    match checks.binary_search_by_key(&check.limit, |kept| kept.limit) {
        Ok(place) if check.share > checks[place].share => checks[place] = check,
        Ok(_) => {}
        Err(place) => checks.insert(place, check),
    }
}

/// Share of the allowable-stress wind under which sag and bow are judged (IRC Table R301.7 note a).
pub(crate) const fn wind_for_deflection() -> Ratio {
    standards::irc_2021::r301::WIND_FOR_DEFLECTION
}
