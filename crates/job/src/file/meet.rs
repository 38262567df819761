//! Bringing a job file into the job that is here.

use std::collections::{BTreeMap, BTreeSet};

use super::JobFile;
use super::error::FileError;
use crate::document::SavedHeader;
use crate::part::{Part, PartBody};
use crate::walk::{Record, merge_logs};

/// A job as it is stored here.
#[derive(Clone, Copy, Debug)]
pub struct Here<'a> {
    /// Its id.
    pub job: &'a str,
    /// Its parts.
    pub parts: &'a [Part],
    /// The log of its walks.
    pub log: &'a [Record],
    /// The ids of the photos that are kept here.
    pub photos: &'a BTreeSet<String>,
}

/// A job with what a file brought. What is here is never overwritten with something that does not come after it, and
/// what stands no longer is given back.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Met {
    /// The parts that stand, by their keys.
    pub parts: Vec<Part>,
    /// The log.
    pub log: Vec<Record>,
    /// The photos to add: those that are not here yet. A photo is never changed, so one that is here stands.
    pub photos: BTreeMap<String, Vec<u8>>,
    /// The older of two revisions that differ, from either side. They stand no longer; the caller keeps them.
    pub older: Vec<Part>,
    /// The coming head or site of the same revision as the one here, and different. What is here stands; the caller
    /// asks.
    pub clashes: Vec<Part>,
    /// Coming records that differ from the one of the same id here, which stands. A file that nobody changed by hand
    /// has none.
    pub changed_records: Vec<Record>,
    /// What came in, in numbers.
    pub came_in: CameIn,
}

/// What a file brought, in numbers.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct CameIn {
    /// Parts that were not here.
    pub new_parts: usize,
    /// Parts that stand in a later revision than before.
    pub later_parts: usize,
    /// Checks that both sides changed, kept a second time under another name.
    pub copies: usize,
    /// Records that were not here.
    pub records: usize,
    /// Photos that were not here.
    pub photos: usize,
}

/// Brings a file of the same job into what is here. Of two revisions of a part the later one stands. Where both are of
/// the same revision and differ, what is here stands, and a coming header check is kept beside it as a copy, under an
/// id from `new_id` and with `(from the file)` after its name. Taking the same file in again changes nothing.
///
/// # Errors
/// When the file holds another job.
pub fn merge_file(here: Here<'_>, coming: JobFile, new_id: &mut dyn FnMut() -> String) -> Result<Met, FileError> {
    if coming.job != here.job {
        return Err(FileError::OtherJob { found: coming.job });
    }
    let mut parts = Parts::new(here.parts);
    coming.parts.into_iter().for_each(|part| parts.take(part, new_id));
    let known: BTreeMap<&str, &Record> = here.log.iter().map(|record| (record.id.as_str(), record)).collect();
    let differs = |record: &&Record| known.get(record.id.as_str()).is_some_and(|known| *known != *record);
    let changed_records = coming.log.iter().filter(differs).cloned().collect();
    let photos: BTreeMap<_, _> = coming.photos.into_iter().filter(|(id, _)| !here.photos.contains(id)).collect();
    let log = merge_logs(here.log.to_vec(), coming.log);
    let records = log.iter().filter(|record| !known.contains_key(record.id.as_str())).count();
    Ok(Met {
        came_in: CameIn { records, photos: photos.len(), ..parts.came_in },
        parts: parts.standing.into_values().collect(),
        log,
        photos,
        older: parts.older,
        clashes: parts.clashes,
        changed_records,
    })
}

/// The parts as far as they were brought together.
struct Parts {
    standing: BTreeMap<String, Part>,
    older: Vec<Part>,
    clashes: Vec<Part>,
    came_in: CameIn,
}

impl Parts {
    fn new(here: &[Part]) -> Self {
        let standing = here.iter().map(|part| (part.key().as_str().to_owned(), part.clone())).collect();
        Self { standing, older: Vec::new(), clashes: Vec::new(), came_in: CameIn::default() }
    }

    fn take(&mut self, coming: Part, new_id: &mut dyn FnMut() -> String) {
        let key = coming.key().as_str().to_owned();
        let Some(here) = self.standing.get_mut(&key) else {
            self.standing.insert(key, coming);
            self.came_in.new_parts += 1;
            return;
        };
        let differs = here.body != coming.body;
        if coming.revision > here.revision {
            let before = core::mem::replace(here, coming);
            self.came_in.later_parts += 1;
            self.older.extend(differs.then_some(before));
        } else if differs && coming.revision < here.revision {
            self.older.push(coming);
        } else if differs {
            self.clash(coming, new_id);
        }
    }

    fn clash(&mut self, coming: Part, new_id: &mut dyn FnMut() -> String) {
        let PartBody::Header(mut header) = coming.body else {
            self.clashes.push(coming);
            return;
        };
        header.name = format!("{} (from the file)", header.name);
        if self.holds(&header) {
            return;
        }
        header.id = new_id();
        let copy = Part::new(&coming.job, PartBody::Header(header));
        self.standing.insert(copy.key().as_str().to_owned(), copy);
        self.came_in.copies += 1;
    }

    /// Whether a check is here already, under whatever id.
    fn holds(&self, wanted: &SavedHeader) -> bool {
        self.standing.values().any(|part| match &part.body {
            PartBody::Header(header) => SavedHeader { id: wanted.id.clone(), ..header.clone() } == *wanted,
            PartBody::Head { .. } | PartBody::Site { .. } => false,
        })
    }
}
