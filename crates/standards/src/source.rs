//! Where a value or a rule comes from, and how far to trust the copy used here.

/// How a value came into this project.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Status {
    /// Read in a published text or a copy of it.
    LookedUp,
    /// Some of it was read in a published text; the rest is from memory.
    PartlyLookedUp,
    /// Follows arithmetically from other values.
    Computed,
    /// Two sources print different values; the safer one is used.
    Disputed,
    /// From memory: not compared with print.
    FromMemory,
    /// A fact of the trade, in no single document.
    CommonPractice,
}

impl Status {
    /// In words, for the margin of a working.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::LookedUp => "looked up",
            Self::PartlyLookedUp => "partly looked up",
            Self::Computed => "computed",
            Self::Disputed => "sources differ, the safer value",
            Self::FromMemory => "from memory",
            Self::CommonPractice => "common practice",
        }
    }
}

/// The document and the place in it behind a value or a rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Source {
    /// Standard and edition: `NDS 2018`.
    pub document: &'static str,
    /// Clause, equation or table: `Eq. 3.3-6`.
    pub place: &'static str,
    /// How the value came here.
    pub status: Status,
}

impl Source {
    /// A source.
    #[must_use]
    pub const fn new(document: &'static str, place: &'static str, status: Status) -> Self {
        Self { document, place, status }
    }
}
