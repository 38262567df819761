//! Reading the zip. Nothing that it says of itself is believed: it is measured.

use std::collections::{BTreeMap, BTreeSet};

use rawzip::{CompressionMethod, ZipArchive, ZipFileHeaderRecord, ZipSliceArchive};

use super::error::{FileError, Piece, torn};
use super::names::Name;
use super::{MOST_CONTENTS, MOST_ENTRIES, MOST_PHOTO, MOST_TOTAL};

/// What was in the zip.
pub(super) struct Unpacked {
    pub(super) contents: Vec<u8>,
    pub(super) photos: BTreeMap<String, Vec<u8>>,
}

type Zip<'a> = ZipSliceArchive<&'a [u8]>;
type Entry<'a> = ZipFileHeaderRecord<'a>;

pub(super) fn unpack(bytes: &[u8]) -> Result<Unpacked, FileError> {
    let zip = ZipArchive::from_slice(bytes).map_err(|_| no_zip(bytes))?;
    let entries = list(&zip)?;
    if !entries.iter().any(|(name, _)| *name == Name::Contents) {
        return Err(FileError::NotAJobFile { reason: "there is no job.json in it".to_owned() });
    }
    fits(entries.iter().filter_map(|(name, entry)| Some((name.piece()?, entry.uncompressed_size_hint()))))?;
    let mut unpacked = Unpacked { contents: Vec::new(), photos: BTreeMap::new() };
    for (name, entry) in entries {
        match name {
            Name::Contents => unpacked.contents = inflate(&zip, &entry, Piece::Contents)?,
            Name::Photo(id) => {
                let photo = inflate(&zip, &entry, Piece::Photo(id.clone()))?;
                unpacked.photos.insert(id, photo);
            }
            Name::Unknown => {}
        }
    }
    Ok(unpacked)
}

/// Whether all of it is within the limits, by the sizes given.
pub(super) fn fits(pieces: impl Iterator<Item = (Piece, u64)>) -> Result<(), FileError> {
    let (mut total, mut count) = (0_u64, 0_u64);
    for (piece, given) in pieces {
        let most = if piece == Piece::Contents { MOST_CONTENTS } else { MOST_PHOTO };
        if given > most {
            return Err(FileError::TooLarge { piece, given, most });
        }
        (total, count) = (total + given, count + 1);
    }
    if count > MOST_ENTRIES {
        return Err(FileError::TooMany { given: count, most: MOST_ENTRIES });
    }
    if total > MOST_TOTAL {
        return Err(FileError::TooLarge { piece: Piece::Whole, given: total, most: MOST_TOTAL });
    }
    Ok(())
}

/// A zip has its list at the end: one that begins like a zip and has none lost its end.
fn no_zip(bytes: &[u8]) -> FileError {
    if bytes.starts_with(b"PK\x03\x04") {
        return torn("its end is missing");
    }
    FileError::NotAJobFile { reason: "it does not begin as one".to_owned() }
}

/// Every name in the zip with its head. The zip must be whole: no name twice, as many as it says, nothing in front.
fn list<'a>(zip: &'a Zip<'_>) -> Result<Vec<(Name, Entry<'a>)>, FileError> {
    let count = zip.entries_hint();
    if count > MOST_ENTRIES {
        return Err(FileError::TooMany { given: count, most: MOST_ENTRIES });
    }
    let (mut entries, mut seen, mut first) = (Vec::new(), BTreeSet::new(), u64::MAX);
    for entry in zip.entries().take(usize::try_from(MOST_ENTRIES).unwrap_or(usize::MAX)) {
        let entry = entry.map_err(|_| torn("its list of files cannot be read"))?;
        let raw = entry.file_path();
        let name = Name::read(raw.as_ref())?;
        if !seen.insert(raw.as_ref().to_vec()) {
            return Err(
                Piece::Name(String::from_utf8_lossy(raw.as_ref()).into_owned()).corrupt("it stands there twice")
            );
        }
        first = first.min(entry.local_header_offset());
        entries.push((name, entry));
    }
    if entries.len() as u64 != count {
        return Err(torn("its list of files is not as long as it says"));
    }
    if count > 0 && first != 0 {
        return Err(torn("something stands in front of it"));
    }
    for (_, entry) in &entries {
        named_alike(zip, entry)?;
    }
    Ok(entries)
}

/// A name stands in the list and before the data: a changed letter in one of them would change an id.
fn named_alike(zip: &Zip<'_>, entry: &Entry<'_>) -> Result<(), FileError> {
    let local = zip.get_entry(entry.wayfinder()).map_err(|_| torn("a file that it lists is not there"))?;
    if local.local_header().file_path().as_ref() == entry.file_path().as_ref() {
        return Ok(());
    }
    Err(torn("a file in it is not the one that it lists"))
}

/// What an entry holds. Never makes more bytes than the entry said, which [`fits`] has judged.
fn inflate(zip: &Zip<'_>, entry: &Entry<'_>, piece: Piece) -> Result<Vec<u8>, FileError> {
    if entry.flags().is_encrypted() {
        return Err(piece.corrupt("it is locked with a password"));
    }
    let data = zip.get_entry(entry.wayfinder()).map_err(|_| torn("a file that it lists is not there"))?.data();
    let differs = || torn("what is in it is not what was saved");
    let size = usize::try_from(entry.uncompressed_size_hint()).map_err(|_| differs())?;
    let bytes = match entry.compression_method() {
        CompressionMethod::STORE if data.len() == size => data.to_vec(),
        CompressionMethod::STORE => return Err(differs()),
        // One more byte is allowed for, so that a thing of exactly its size comes to its end.
        CompressionMethod::DEFLATE => {
            miniz_oxide::inflate::decompress_to_vec_with_limit(data, size + 1).map_err(|_| differs())?
        }
        _ => return Err(piece.corrupt("it is packed in a way that this version does not read")),
    };
    if bytes.len() == size && rawzip::crc32(&bytes) == entry.crc32() { Ok(bytes) } else { Err(differs()) }
}
