//! `job.json`: the parts and the log.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;

use super::JobFile;
use super::error::{FileError, Piece};
use crate::FORMAT;
use crate::open::{Versioned, ids_are_plain, open as open_stored, open_part};
use crate::part::Part;
use crate::walk::{Record, open_record};

#[derive(Serialize)]
struct ToWrite<'a> {
    format: u32,
    job: &'a str,
    parts: &'a [Part],
    log: &'a [Record],
}

/// The pieces stay as text, so that each is opened by the one way that it has.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct AsFound {
    format: u32,
    job: String,
    parts: Vec<Box<RawValue>>,
    log: Vec<Box<RawValue>>,
}

impl Versioned for AsFound {
    fn format(&self) -> u32 {
        self.format
    }
}

pub(super) fn write(file: &JobFile) -> Vec<u8> {
    let sheet = ToWrite { format: FORMAT, job: &file.job, parts: &file.parts, log: &file.log };
    // Texts, numbers and text-keyed maps always have a JSON form.
    serde_json::to_vec(&sheet).unwrap_or_default()
}

/// The job's id, its parts and its log.
pub(super) fn open(json: &[u8]) -> Result<(String, Vec<Part>, Vec<Record>), FileError> {
    let found: AsFound = open_stored(json).map_err(|error| Piece::Contents.did_not_open(error))?;
    let job = found.job;
    ids_are_plain([&job], &[]).map_err(|error| Piece::Contents.did_not_open(error))?;
    let mut seen = Seen::new(&job);
    let parts = found.parts.iter().enumerate().map(|(at, text)| {
        let piece = Piece::Part(at + 1);
        let part = open_part(text.get().as_bytes()).map_err(|error| piece.clone().did_not_open(error))?;
        seen.take(piece, &part.job, part.key().as_str())?;
        Ok(part)
    });
    let parts = parts.collect::<Result<Vec<_>, FileError>>()?;
    let mut seen = Seen::new(&job);
    let log = found.log.iter().enumerate().map(|(at, text)| {
        let piece = Piece::Record(at + 1);
        let record = open_record(text.get().as_bytes()).map_err(|error| piece.clone().did_not_open(error))?;
        seen.take(piece, &record.job, &record.id)?;
        Ok(record)
    });
    let log = log.collect::<Result<Vec<_>, FileError>>()?;
    Ok((job, parts, log))
}

/// What was met so far, of the one job.
struct Seen<'a> {
    job: &'a str,
    keys: BTreeSet<String>,
}

impl<'a> Seen<'a> {
    const fn new(job: &'a str) -> Self {
        Self { job, keys: BTreeSet::new() }
    }

    fn take(&mut self, piece: Piece, job: &str, key: &str) -> Result<(), FileError> {
        if job != self.job {
            return Err(piece.corrupt("it belongs to another job than the file"));
        }
        if !self.keys.insert(key.to_owned()) {
            return Err(piece.corrupt("it stands in the file twice"));
        }
        Ok(())
    }
}
