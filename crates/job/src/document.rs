//! The job as one document.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::FORMAT;
use crate::part::{Part, PartBody};

/// What was typed, by the input's stable name: `opening_width` to `6' 0"`.
pub type Fields = BTreeMap<String, String>;

/// A job: its name, its site values, its saved checks.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Job {
    /// The format it is written in.
    pub format: u32,
    /// Its stable id.
    pub id: String,
    /// Its name, as typed.
    pub name: String,
    /// The site values that every check of the job starts from.
    pub site: Fields,
    /// The header checks that were saved.
    pub headers: Vec<SavedHeader>,
}

/// A header check that was saved: what was typed, and what the answer was then.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SavedHeader {
    /// Its stable id.
    pub id: String,
    /// Its name: `Header 1`.
    pub name: String,
    /// Every value that it was worked from, site values among them.
    pub fields: Fields,
    /// The answer in words at the time: `2-2x10 carries it: 82 %, bending`.
    pub answer: String,
    /// Local time in ISO form, as the caller gave it: `2026-05-04T10:42:00-05:00`.
    pub saved_at: String,
}

impl Job {
    /// An empty job.
    #[must_use]
    pub fn new(id: String, name: String) -> Self {
        Self { format: FORMAT, id, name, site: Fields::new(), headers: Vec::new() }
    }

    /// Puts a job together from its parts; parts of other jobs are passed over. Saved checks stand in the order in
    /// which they were saved, then by id.
    #[must_use]
    pub fn from_parts(id: &str, parts: &[Part]) -> Self {
        let mut job = Self::new(id.to_owned(), String::new());
        for part in parts.iter().filter(|part| part.job == id) {
            match &part.body {
                PartBody::Head { name } => job.name.clone_from(name),
                PartBody::Site { fields } => job.site.clone_from(fields),
                PartBody::Header(header) => job.insert(header.clone()),
            }
        }
        job
    }

    /// Puts a saved check where it belongs: most come in their order, so this is mostly at the end.
    fn insert(&mut self, header: SavedHeader) {
        let key = |header: &SavedHeader| (header.saved_at.clone(), header.id.clone());
        let place = self.headers.partition_point(|before| key(before) <= key(&header));
        self.headers.insert(place, header);
    }

    /// The first name of the form `Header 1`, `Header 2` that no saved check has.
    #[must_use]
    pub fn next_header_name(&self) -> String {
        let taken = |name: &str| self.headers.iter().any(|header| header.name == name);
        let mut number = 1_u32;
        while taken(&format!("Header {number}")) {
            number = number.saturating_add(1);
        }
        format!("Header {number}")
    }
}
