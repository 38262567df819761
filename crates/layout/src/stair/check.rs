//! One size of a stair beside the limit that a clause sets.

use measure::Length;
use standards::irc_2021::r311_7::{StairLimit, StairLimits};
use standards::{Source, irc_2018, irc_2021};

/// Less than this to spare is at the limit: the finest mark of a tape.
const HAIR: Length = Length::from_inches(1.0 / 64.0);
/// What arithmetic alone may be off: nothing is put out by it. Far under what any tape reads.
pub(super) const NOISE: Length = Length::from_inches(1e-9);

/// Which edition of the residential code is followed. In stairs both say the same, as far as is known here.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Edition {
    /// 2018.
    Of2018,
    /// 2021.
    #[default]
    Of2021,
}

impl Edition {
    /// Its limits.
    #[must_use]
    pub const fn limits(self) -> &'static StairLimits {
        match self {
            Self::Of2018 => &irc_2018::STAIRS,
            Self::Of2021 => &irc_2021::r311_7::STAIRS,
        }
    }
}

/// How a size stands, from the best to the worst.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// Inside its limit.
    Within,
    /// Inside its limit, with less to spare than a tape reads: it passes only if it is measured exactly.
    AtLimit,
    /// Outside its limit.
    Out,
}

impl Verdict {
    /// Whether it is inside its limit, be it only just.
    #[must_use]
    pub const fn holds(self) -> bool {
        matches!(self, Self::Within | Self::AtLimit)
    }

    /// Of what is to spare, below zero where it is out.
    pub(crate) fn of_margin(margin: Length) -> Self {
        if margin < -NOISE {
            Self::Out
        } else if margin < HAIR {
            Self::AtLimit
        } else {
            Self::Within
        }
    }
}

/// What was held against a limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Subject {
    /// The highest riser.
    Riser,
    /// Largest less smallest riser.
    RiserVariation,
    /// The shallowest tread.
    Tread,
    /// Largest less smallest tread.
    TreadVariation,
    /// Headroom.
    Headroom,
    /// Clear width above the handrail.
    WidthAboveRail,
    /// Clear width at and below the handrail.
    WidthAtRail,
    /// Height of a flight.
    FlightRise,
    /// Projection of a nosing.
    Nosing,
    /// Depth of a landing.
    LandingDepth,
    /// Depth of a winder at the walk line.
    WinderAtWalkLine,
    /// Depth of a winder at its narrow end.
    WinderNarrowEnd,
    /// Gap of an open riser.
    OpenRiser,
    /// Height of a handrail.
    Handrail,
    /// Height of a guard.
    Guard,
    /// Opening in a guard.
    GuardOpening,
    /// Wood left between the steps of a stringer and its lower edge.
    Throat,
}

/// Which side of a size is the right one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Limit {
    /// No more than this.
    AtMost(Length),
    /// No less than this.
    AtLeast(Length),
}

/// One size beside its limit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Check {
    /// What it is.
    pub of: Subject,
    /// What it is in size.
    pub found: Length,
    /// What is allowed.
    pub limit: Limit,
    /// What is to spare; below zero by as much as it is out.
    pub margin: Length,
    /// How it stands.
    pub verdict: Verdict,
    /// Who says so.
    pub source: Source,
}

impl Check {
    pub(super) fn at_most(of: Subject, found: Length, limit: StairLimit) -> Self {
        Self::with(of, found, Limit::AtMost(limit.value), limit.value - found, limit.source)
    }

    pub(super) fn at_least(of: Subject, found: Length, limit: StairLimit) -> Self {
        Self::with(of, found, Limit::AtLeast(limit.value), found - limit.value, limit.source)
    }

    fn with(of: Subject, found: Length, limit: Limit, margin: Length, source: Source) -> Self {
        Self { of, found, limit, margin, verdict: Verdict::of_margin(margin), source }
    }

    /// Whether it is inside its limit, be it only just.
    #[must_use]
    pub const fn holds(&self) -> bool {
        self.verdict.holds()
    }
}
