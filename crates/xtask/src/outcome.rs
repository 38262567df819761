//! How a command ends: well, or with a sentence that says what to do.

use std::fmt;
use std::path::Path;

/// Why a command stopped.
#[derive(Debug, PartialEq, Eq)]
pub struct Failure(String);

/// The result of a step.
pub type Outcome<T = ()> = Result<T, Failure>;

impl Failure {
    /// A failure with its sentence.
    pub fn new(sentence: impl Into<String>) -> Self {
        Self(sentence.into())
    }

    /// A file that could not be read or written: `doing` is "read", "write" or the like.
    pub fn file(doing: &str, path: &Path, error: &std::io::Error) -> Self {
        Self(format!("could not {doing} {}: {error}", path.display()))
    }

    /// Fails with all `problems`, one a line, when there are any.
    pub fn unless_empty(what: &str, problems: &[String]) -> Outcome {
        if problems.is_empty() { Ok(()) } else { Err(Self(format!("{what}:\n  {}", problems.join("\n  ")))) }
    }
}

impl fmt::Display for Failure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}
