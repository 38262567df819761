//! The names in a job file.

use super::error::{FileError, Piece};
use crate::open::ids_are_plain;

/// The list of parts and records.
pub(super) const CONTENTS: &str = "job.json";
const BEFORE_A_PHOTO: &str = "photos/";
const AFTER_A_PHOTO: &str = ".jpg";

/// What a name in the file stands for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Name {
    Contents,
    Photo(String),
    /// Nothing that a job file holds.
    Unknown,
}

impl Name {
    pub(super) fn read(raw: &[u8]) -> Result<Self, FileError> {
        let text = String::from_utf8_lossy(raw);
        if leads_out(&text) {
            return Err(Piece::Name(text.into_owned()).corrupt("it leads out of the folder"));
        }
        if text == CONTENTS {
            return Ok(Self::Contents);
        }
        let photo = text.strip_prefix(BEFORE_A_PHOTO).and_then(|rest| rest.strip_suffix(AFTER_A_PHOTO));
        let Some(id) = photo.map(str::to_owned) else { return Ok(Self::Unknown) };
        photo_ids_are_plain([&id])?;
        Ok(Self::Photo(id))
    }

    /// The piece that it names, if it is one of a job file.
    pub(super) fn piece(&self) -> Option<Piece> {
        match self {
            Self::Contents => Some(Piece::Contents),
            Self::Photo(id) => Some(Piece::Photo(id.clone())),
            Self::Unknown => None,
        }
    }
}

/// The name that a photo has in the file.
pub(super) fn of_photo(id: &str) -> String {
    format!("{BEFORE_A_PHOTO}{id}{AFTER_A_PHOTO}")
}

pub(super) fn photo_ids_are_plain<'a>(ids: impl IntoIterator<Item = &'a String>) -> Result<(), FileError> {
    ids.into_iter()
        .try_for_each(|id| ids_are_plain([id], &[]).map_err(|error| Piece::Name(of_photo(id)).did_not_open(error)))
}

/// Whether a name could be taken for a place outside the folder, on any kind of phone or desk.
fn leads_out(name: &str) -> bool {
    let odd = |letter: char| letter == '\\' || letter == ':' || letter.is_control();
    name.is_empty() || name.starts_with('/') || name.contains(odd) || name.split('/').any(|step| step == "..")
}
