//! The parts that a job is kept in.

use serde::{Deserialize, Serialize};

use crate::FORMAT;
use crate::document::{Fields, SavedHeader};
use crate::open::Versioned;

/// One stored part of a job.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Part {
    /// The format it is written in.
    pub format: u32,
    /// The job that it belongs to.
    pub job: String,
    /// Grows by one at every write, so that an older copy can be told from a newer one.
    pub revision: u32,
    /// What it holds.
    pub body: PartBody,
}

impl Versioned for Part {
    fn format(&self) -> u32 {
        self.format
    }
}

/// What a part holds.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum PartBody {
    /// The job's name.
    Head {
        /// Its name, as typed.
        name: String,
    },
    /// The site values.
    Site {
        /// By the input's stable name.
        fields: Fields,
    },
    /// One saved header check.
    Header(SavedHeader),
}

/// Where a part is kept: a text that is the same for every revision of it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct PartKey(String);

impl PartKey {
    /// The key as text: `job/3f2a/site`.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl Part {
    /// The first revision of a part.
    #[must_use]
    pub fn new(job: &str, body: PartBody) -> Self {
        Self { format: FORMAT, job: job.to_owned(), revision: 1, body }
    }

    /// The same part with a new content, one revision on, in the present format.
    #[must_use]
    pub fn next(&self, body: PartBody) -> Self {
        Self { format: FORMAT, job: self.job.clone(), revision: self.revision.saturating_add(1), body }
    }

    /// Where it is kept.
    #[must_use]
    pub fn key(&self) -> PartKey {
        let place = match &self.body {
            PartBody::Head { .. } => "head".to_owned(),
            PartBody::Site { .. } => "site".to_owned(),
            PartBody::Header(header) => format!("header/{}", header.id),
        };
        PartKey(format!("job/{}/{place}", self.job))
    }

    /// The JSON that is stored.
    #[must_use]
    pub fn to_json(&self) -> String {
        // Texts, numbers and text-keyed maps always have a JSON form.
        serde_json::to_string(self).unwrap_or_default()
    }
}
