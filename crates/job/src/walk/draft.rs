//! What is being typed on a walk and is not in the log yet.

use serde::{Deserialize, Serialize};

use super::record::{Follows, Lists};
use crate::FORMAT;
use crate::document::Fields;
use crate::open::{OpenError, Versioned, open};

/// A form of the walk as it was typed, written a moment after each key so that nothing is lost.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Draft {
    /// The format it is written in.
    pub format: u32,
    /// The job it belongs to.
    pub job: String,
    /// Which form: the same text for the same form of the same mark.
    pub form: String,
    /// The inputs that are one text.
    pub texts: Fields,
    /// The inputs that are a list.
    pub lists: Lists,
    /// The input in hand.
    pub hand: String,
    /// Which reading of it, where it is a list; from 0.
    pub reading: usize,
    /// The look that this one will correct or check again.
    pub follows: Option<Follows>,
    /// The phone's own time in ISO form, as the caller gave it.
    pub at: String,
}

impl Versioned for Draft {
    fn format(&self) -> u32 {
        self.format
    }
}

impl Draft {
    /// Nothing typed yet.
    #[must_use]
    pub fn new(job: &str, form: &str) -> Self {
        Self {
            format: FORMAT,
            job: job.to_owned(),
            form: form.to_owned(),
            texts: Fields::new(),
            lists: Lists::new(),
            hand: String::new(),
            reading: 0,
            follows: None,
            at: String::new(),
        }
    }

    /// Whether anything was typed.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.texts.is_empty() && self.lists.values().all(Vec::is_empty)
    }

    /// The JSON that is stored.
    #[must_use]
    pub fn to_json(&self) -> String {
        // Texts, numbers and text-keyed maps always have a JSON form.
        serde_json::to_string(self).unwrap_or_default()
    }
}

/// Opens what was being typed.
///
/// # Errors
/// When it was written by a newer version, or cannot be read. The bytes come back with the reason.
pub fn open_draft(bytes: &[u8]) -> Result<Draft, OpenError> {
    open(bytes)
}
