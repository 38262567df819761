//! The limits that the rules are printed with: the check and the message together.

use core::{error::Error, fmt};

use crate::Source;

/// A rule was asked outside the limits it is printed with. There is no number to give.
///
/// `Display` is two sentences: what was given and what the rule covers; what to do. It holds no text of its own, so
/// that a search through many pieces does not pay for the ones that are refused.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OutsideLimits {
    /// The clause or table with the limit.
    pub source: Source,
    /// What was given: `slenderness ratio R_B`.
    pub what: &'static str,
    /// The number that was given, in `unit`.
    pub given: f64,
    /// Its unit; empty for a pure number.
    pub unit: &'static str,
    /// What the rule covers: `slenderness ratios over 0, to 50`.
    pub covers: &'static str,
    /// What to do, as a sentence.
    pub next_step: &'static str,
}

impl fmt::Display for OutsideLimits {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { source, what, given, unit, covers, next_step } = self;
        let number = format!("{given:.3}");
        let number = if number.contains('.') { number.trim_end_matches('0').trim_end_matches('.') } else { &number };
        let space = if unit.is_empty() { "" } else { " " };
        write!(f, "Given: {what} {number}{space}{unit}. {} {} covers {covers}. ", source.document, source.place)?;
        f.write_str(next_step)
    }
}

impl Error for OutsideLimits {}

/// The numbers that a rule takes.
#[derive(Clone, Copy)]
pub(super) enum Accepted {
    /// Any number above this one.
    MoreThan(f64),
    /// Any number below this one.
    LessThan(f64),
    /// More than nothing, and this much at the most.
    AtMost(f64),
    /// From the first to the second, both included.
    Between(f64, f64),
}

impl Accepted {
    /// A number that is not finite is never accepted.
    fn holds(self, given: f64) -> bool {
        given.is_finite()
            && match self {
                Self::MoreThan(low) => given > low,
                Self::LessThan(high) => given < high,
                Self::AtMost(high) => given > 0.0 && given <= high,
                Self::Between(low, high) => given >= low && given <= high,
            }
    }
}

/// One limit of one rule.
#[derive(Clone, Copy)]
pub(super) struct Limit {
    /// What is given: `slenderness ratio R_B`.
    pub what: &'static str,
    /// Unit of what is given; empty for a pure number.
    pub unit: &'static str,
    pub accepted: Accepted,
    /// `accepted` in words: `slenderness ratios to 50`.
    pub covers: &'static str,
    pub source: Source,
    pub next_step: &'static str,
}

impl Limit {
    /// Gives the number back when it is accepted.
    pub(super) fn check(self, given: f64) -> Result<f64, OutsideLimits> {
        if self.accepted.holds(given) { Ok(given) } else { Err(self.broken(given)) }
    }

    #[cold]
    fn broken(self, given: f64) -> OutsideLimits {
        let Self { what, unit, covers, source, next_step, .. } = self;
        OutsideLimits { source, what, given, unit, covers, next_step }
    }
}
