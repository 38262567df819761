//! The job file: a job carried from phone to phone, or kept as a backup.
//!
//! It is a zip. `job.json` is versioned and holds the job's parts and the log of its walks; `photos/<photo id>.jpg`
//! stands beside it for each photo, byte for byte as it was taken. The same job gives the same bytes: nothing in the
//! file tells when it was written.
//!
//! A file comes from outside and is not trusted. It is taken whole or refused whole, and what refuses it is a sentence:
//!
//! - A file of a newer version is refused, as is one in which a single part or record cannot be read, stands twice,
//!   or belongs to another job than the file says.
//! - How large a thing says it is only ever narrows what is inflated; see [`MOST_ENTRIES`], [`MOST_CONTENTS`],
//!   [`MOST_PHOTO`] and [`MOST_TOTAL`].
//! - A name that leads out of the folder is refused, whatever it belongs to; so is a name that stands twice, and a
//!   photo whose id is not plain. Other names that this version does not know, such as those which a phone or a desk
//!   adds when it packs a folder, are passed over: no job file holds anything under them.
//! - A photo of which no record speaks is kept: it may be the only one of its kind. A record whose photo is missing is
//!   kept as well.
//!
//! Taking a file in ([`merge_file`], [`as_copy`]) never overwrites: what could not be brought together is given back.

mod contents;
mod copy;
mod error;
mod meet;
mod names;
mod pack;
mod unpack;

use std::collections::BTreeMap;

use crate::part::Part;
use crate::walk::Record;

pub use copy::as_copy;
pub use error::{FileError, Piece};
pub use meet::{CameIn, Here, Met, merge_file};

/// At most so many names stand in a job file.
pub const MOST_ENTRIES: u64 = 10_000;
/// `job.json` has at most so many bytes.
pub const MOST_CONTENTS: u64 = 64_000_000;
/// A photo has at most so many bytes.
pub const MOST_PHOTO: u64 = 32_000_000;
/// All that is taken from a job file has at most so many bytes.
pub const MOST_TOTAL: u64 = 500_000_000;

/// What a job file holds.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct JobFile {
    /// The job's id.
    pub job: String,
    /// Its parts.
    pub parts: Vec<Part>,
    /// The log of its walks.
    pub log: Vec<Record>,
    /// Its photos, by their ids.
    pub photos: BTreeMap<String, Vec<u8>>,
}

/// Writes a job file. Parts and records stand in it in the order in which they are given. What is written has been read
/// back, but for the photos.
///
/// # Errors
/// When [`read_job_file`] would refuse it: it is too large, an id is not plain, something stands in it twice or
/// belongs to another job.
pub fn write_job_file(file: &JobFile) -> Result<Vec<u8>, FileError> {
    let json = contents::write(file);
    contents::open(&json)?;
    names::photo_ids_are_plain(file.photos.keys())?;
    let photos = file.photos.iter().map(|(id, bytes)| (Piece::Photo(id.clone()), bytes.len() as u64));
    unpack::fits(std::iter::once((Piece::Contents, json.len() as u64)).chain(photos))?;
    Ok(pack::pack(&json, &file.photos))
}

/// Reads a job file.
///
/// # Errors
/// When it is not a job file, was cut short, was written by a newer version, is too large, or something in it cannot be
/// read. Nothing of it is taken then.
pub fn read_job_file(bytes: &[u8]) -> Result<JobFile, FileError> {
    let unpacked = unpack::unpack(bytes)?;
    Ok(JobFile { photos: unpacked.photos, ..read_contents(&unpacked.contents)? })
}

/// Reads what `job.json` holds, where it stands by itself: a job without photos.
///
/// # Errors
/// When [`read_job_file`] would refuse it inside a job file. Nothing of it is taken then.
pub fn read_contents(json: &[u8]) -> Result<JobFile, FileError> {
    unpack::fits([(Piece::Contents, json.len() as u64)].into_iter())?;
    let (job, parts, log) = contents::open(json)?;
    Ok(JobFile { job, parts, log, photos: BTreeMap::new() })
}
