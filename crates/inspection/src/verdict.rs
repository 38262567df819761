//! The judgement of one found value against one limit.

use crate::amount::{Amount, Judged};
use crate::required::Origin;
use crate::subject::Subject;

/// How a point stands, from the best to the worst.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// Inside its limit.
    Within,
    /// Inside its limit, with less to spare than can be read.
    AtLimit,
    /// It could not be seen, or was not looked at: nothing is said of it.
    NotSeen,
    /// Not for this tool to decide.
    NotDecided,
    /// Outside its limit.
    Out,
}

impl Verdict {
    /// Whether it was seen and is inside its limit, be it only just.
    #[must_use]
    pub const fn holds(self) -> bool {
        matches!(self, Self::Within | Self::AtLimit)
    }

    /// The worst of several; none of none.
    #[must_use]
    pub fn worst(verdicts: impl IntoIterator<Item = Self>) -> Option<Self> {
        verdicts.into_iter().max()
    }
}

/// Which side of a value is the right one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Limit {
    /// No more than this.
    AtMost(Amount),
    /// No less than this.
    AtLeast(Amount),
}

impl Limit {
    /// The value itself.
    #[must_use]
    pub const fn value(self) -> Amount {
        match self {
            Self::AtMost(amount) | Self::AtLeast(amount) => amount,
        }
    }
}

/// One found value beside its limit.
#[derive(Clone, Debug, PartialEq)]
pub struct Check {
    /// What was looked at.
    pub of: Subject,
    /// What was found.
    pub found: Amount,
    /// What is allowed.
    pub limit: Limit,
    /// What is to spare; negative by as much as it is out. Of the same kind as the found value.
    pub margin: Amount,
    /// How it stands.
    pub verdict: Verdict,
    /// Who says so.
    pub by: Origin,
}

impl Check {
    /// A value that may be no more than its limit.
    #[must_use]
    pub fn at_most<Q: Judged>(of: Subject, found: Q, limit: Q, by: impl Into<Origin>) -> Self {
        Self::with(of, found, Limit::AtMost(limit.into()), limit - found, Q::HAIR, by.into())
    }

    /// A value that may be no less than its limit.
    #[must_use]
    pub fn at_least<Q: Judged>(of: Subject, found: Q, limit: Q, by: impl Into<Origin>) -> Self {
        Self::with(of, found, Limit::AtLeast(limit.into()), found - limit, Q::HAIR, by.into())
    }

    /// The size of a thing that is made to size, a nail or a washer: the size that is asked for is within.
    #[must_use]
    pub fn size_at_least<Q: Judged>(of: Subject, found: Q, limit: Q, by: impl Into<Origin>) -> Self {
        Self::with(of, found, Limit::AtLeast(limit.into()), found - limit, 0.0, by.into())
    }

    /// A spacing of pieces set to a mark: the spacing that is asked for is within.
    #[must_use]
    pub fn size_at_most<Q: Judged>(of: Subject, found: Q, limit: Q, by: impl Into<Origin>) -> Self {
        Self::with(of, found, Limit::AtMost(limit.into()), limit - found, 0.0, by.into())
    }

    fn with<Q: Judged>(of: Subject, found: Q, limit: Limit, margin: Q, hair: f64, by: Origin) -> Self {
        // Forty per cent of 3.5 in is not 1.4 in to the last bit: arithmetic alone puts nothing out.
        let margin = if margin.number().abs() <= Q::NOISE { Q::none() } else { margin };
        let verdict = if margin.number() < 0.0 {
            Verdict::Out
        } else if margin.number() < hair {
            Verdict::AtLimit
        } else {
            Verdict::Within
        };
        Self { of, found: found.into(), limit, margin: margin.into(), verdict, by }
    }
}

#[cfg(test)]
mod tests {
    use measure::Length;

    use super::*;
    use crate::amount::Count;

    fn at_most(found: f64, limit: f64) -> Verdict {
        let (found, limit) = (Length::from_inches(found), Length::from_inches(limit));
        Check::at_most(Subject::HoleDiameter, found, limit, Origin::Typed).verdict
    }

    #[test]
    fn a_limit_is_never_rounded_into_a_pass() {
        assert_eq!(at_most(1.38, 1.4), Verdict::Within);
        assert_eq!(at_most(1.4, 1.4), Verdict::AtLimit);
        assert_eq!(at_most(1.390, 1.4), Verdict::AtLimit);
        assert_eq!(at_most(1.400_001, 1.4), Verdict::Out);
    }

    #[test]
    fn arithmetic_alone_puts_nothing_out() {
        let a_share = 3.5 * 0.4;
        assert!(a_share > 1.4 && at_most(a_share, 1.4) == Verdict::AtLimit);
    }

    #[test]
    fn a_count_that_is_met_is_within() {
        let needed = Check::at_least(Subject::EdgeNails, Count::of(17), Count::of(17), Origin::Typed);
        assert_eq!((needed.verdict, needed.margin.count()), (Verdict::Within, Some(0)));
        let short = Check::at_least(Subject::EdgeNails, Count::of(5), Count::of(17), Origin::Typed);
        assert_eq!((short.verdict, short.margin.count()), (Verdict::Out, Some(-12)));
    }

    #[test]
    fn what_is_out_is_the_worst() {
        use Verdict::{AtLimit, NotDecided, NotSeen, Out, Within};
        assert_eq!(Verdict::worst([Within, Out, NotSeen]), Some(Out));
        assert_eq!(Verdict::worst([Within, NotSeen, AtLimit]), Some(NotSeen));
        assert_eq!(Verdict::worst([NotDecided, NotSeen]), Some(NotDecided));
        assert_eq!(Verdict::worst([]), None);
    }
}
