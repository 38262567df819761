//! The one error of a published rule: it was asked outside the range that it covers.

use core::{error::Error, fmt};

use crate::Source;

/// A value outside what a clause or a table covers. Nothing is extrapolated; `Display` is a sentence that says what
/// was given, what is covered, and who decides.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OutsideTable {
    /// The clause or table.
    pub source: Source,
    /// What was given, with its unit: `ground snow load 85 psf`.
    pub given: String,
    /// What the rule covers: `ground snow loads to 70 psf`.
    pub covers: &'static str,
    /// What to do: who decides where the rule ends.
    pub next_step: &'static str,
}

impl fmt::Display for OutsideTable {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { source, given, covers, next_step } = self;
        write!(f, "Given: {given}. {} {} covers {covers}. {next_step}", source.document, source.place)
    }
}

impl Error for OutsideTable {}
