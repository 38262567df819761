//! What is being typed and is not saved yet.

use serde::{Deserialize, Serialize};

use crate::FORMAT;
use crate::document::Fields;
use crate::open::Versioned;

/// The state of the screen as it was typed, written a moment after each key so that nothing is lost.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Typing {
    /// The format it is written in.
    pub format: u32,
    /// The job it belongs to.
    pub job: String,
    /// What was typed for this check.
    pub fields: Fields,
    /// The input in hand.
    pub hand: String,
    /// The saved check that it was opened from; empty when it is a new one.
    pub opened: String,
    /// Local time in ISO form, as the caller gave it.
    pub at: String,
}

impl Versioned for Typing {
    fn format(&self) -> u32 {
        self.format
    }
}

impl Typing {
    /// Nothing typed yet.
    #[must_use]
    pub fn new(job: &str) -> Self {
        Self {
            format: FORMAT,
            job: job.to_owned(),
            fields: Fields::new(),
            hand: String::new(),
            opened: String::new(),
            at: String::new(),
        }
    }

    /// The JSON that is stored.
    #[must_use]
    pub fn to_json(&self) -> String {
        // Texts, numbers and text-keyed maps always have a JSON form.
        serde_json::to_string(self).unwrap_or_default()
    }
}
