//! Writing the zip. Sizes stand before what they measure and every date is the first that a zip knows, so that any
//! program opens the file and the same job gives the same bytes.

use std::borrow::Cow;
use std::collections::BTreeMap;

use super::names;

/// Version 2.0 of the zip format: folders and deflate.
const VERSION: u16 = 20;
/// 1 January 1980, midnight: the first day that a zip can say.
const NO_DATE: u16 = 0x21;
const STORED: u16 = 0;
const DEFLATED: u16 = 8;
/// Of ten levels the one that most programs use.
const LEVEL: u8 = 6;

struct Entry<'a> {
    name: String,
    method: u16,
    crc: u32,
    size: u32,
    data: Cow<'a, [u8]>,
}

/// The job's list is deflated; photos are as small as they get and are stored as they are.
pub(super) fn pack(json: &[u8], photos: &BTreeMap<String, Vec<u8>>) -> Vec<u8> {
    let list = Entry {
        name: names::CONTENTS.to_owned(),
        method: DEFLATED,
        crc: rawzip::crc32(json),
        size: size(json.len()),
        data: Cow::Owned(miniz_oxide::deflate::compress_to_vec(json, LEVEL)),
    };
    let photos = photos.iter().map(|(id, bytes)| Entry {
        name: names::of_photo(id),
        method: STORED,
        crc: rawzip::crc32(bytes),
        size: size(bytes.len()),
        data: Cow::Borrowed(bytes),
    });
    let (mut zip, mut directory, mut count) = (Vec::new(), Vec::new(), 0_u16);
    for entry in std::iter::once(list).chain(photos) {
        entry.write_directory(&mut directory, size(zip.len()));
        entry.write(&mut zip);
        count = count.saturating_add(1);
    }
    write_end(&mut zip, &directory, count);
    zip
}

/// The limits of a job file keep every size far below what a zip can say.
fn size(length: usize) -> u32 {
    u32::try_from(length).unwrap_or(u32::MAX)
}

impl Entry<'_> {
    fn write(&self, zip: &mut Vec<u8>) {
        zip.extend(b"PK\x03\x04");
        self.write_shared(zip);
        zip.extend(self.name.as_bytes());
        zip.extend(self.data.as_ref());
    }

    fn write_directory(&self, directory: &mut Vec<u8>, offset: u32) {
        directory.extend(b"PK\x01\x02");
        directory.extend(VERSION.to_le_bytes());
        self.write_shared(directory);
        // No comment, the first disk, no attributes: two bytes each, and four for the outer attributes.
        directory.extend([0; 10]);
        directory.extend(offset.to_le_bytes());
        directory.extend(self.name.as_bytes());
    }

    /// What the head before the data and the one in the directory both say.
    fn write_shared(&self, to: &mut Vec<u8>) {
        let (no_flags, midnight, no_extra) = (0_u16, 0_u16, 0_u16);
        for value in [VERSION, no_flags, self.method, midnight, NO_DATE] {
            to.extend(value.to_le_bytes());
        }
        for value in [self.crc, size(self.data.len()), self.size] {
            to.extend(value.to_le_bytes());
        }
        let name = u16::try_from(self.name.len()).unwrap_or(u16::MAX);
        for value in [name, no_extra] {
            to.extend(value.to_le_bytes());
        }
    }
}

fn write_end(zip: &mut Vec<u8>, directory: &[u8], count: u16) {
    let offset = size(zip.len());
    zip.extend(directory);
    zip.extend(b"PK\x05\x06");
    let (this_disk, first_disk, no_comment) = (0_u16, 0_u16, 0_u16);
    for value in [this_disk, first_disk, count, count] {
        zip.extend(value.to_le_bytes());
    }
    for value in [size(directory.len()), offset] {
        zip.extend(value.to_le_bytes());
    }
    zip.extend(no_comment.to_le_bytes());
}
