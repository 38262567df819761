//! A job file is read back as it was written, or refused in a sentence.

mod logs;

use std::collections::BTreeMap;

use job::file::{FileError, JobFile, MOST_PHOTO, Piece, read_contents, read_job_file, write_job_file};
use job::{Part, PartBody};
use logs::{JOB, file};
use proptest::prelude::*;
use proptest::sample::Index;

#[track_caller]
#[expect(clippy::expect_used, reason = "a helper of tests: a panic is the report")]
fn written(file: &JobFile) -> Vec<u8> {
    write_job_file(file).expect("a good job must be written")
}

/// A job with something of everything.
fn a_job() -> JobFile {
    let parts = vec![
        Part::new(JOB, PartBody::Head { name: "Beach house".to_owned() }),
        Part::new(JOB, logs::header("h1", "Header 1", [("opening_width".to_owned(), "6' 0\"".to_owned())].into())),
    ];
    let photos = BTreeMap::from([("p0".to_owned(), b"as it was taken".to_vec()), ("p9".to_owned(), Vec::new())]);
    JobFile { job: JOB.to_owned(), parts, log: logs::log_of(&[]), photos }
}

/// Whether a damaged file is refused, or is read as if nothing had happened.
fn same_or_refused(bytes: &[u8], file: &JobFile) -> bool {
    match read_job_file(bytes) {
        Ok(read) => read == *file,
        Err(error) => error.to_string().ends_with('.'),
    }
}

proptest! {
    #[test]
    fn a_job_is_read_back_as_written(file in file()) {
        prop_assert_eq!(read_job_file(&written(&file)), Ok(file));
    }

    #[test]
    fn the_same_job_gives_the_same_bytes(file in file()) {
        prop_assert_eq!(written(&file), written(&file.clone()));
    }

    #[test]
    fn any_bytes_are_read_or_refused(bytes in proptest::collection::vec(any::<u8>(), 0..400)) {
        let told = matches!(read_job_file(&bytes), Err(FileError::NotAJobFile { .. }));
        prop_assert!(told);
    }

    #[test]
    fn any_bytes_behind_the_beginning_of_a_zip_and_before_its_end_are_refused(
        bytes in proptest::collection::vec(any::<u8>(), 0..400)
    ) {
        let bytes = [b"PK\x03\x04".as_slice(), &bytes, b"PK\x05\x06", &bytes, &[0; 18]].concat();
        prop_assert!(read_job_file(&bytes).is_err());
    }

    #[test]
    fn any_end_of_a_very_large_zip_is_refused(
        record in proptest::collection::vec(any::<u8>(), 52),
        at in prop_oneof![0_u64..9, any::<u64>()],
        count in 0_u8..4,
    ) {
        let locator = [b"PK\x06\x07\0\0\0\0".as_slice(), &at.to_le_bytes(), &[1, 0, 0, 0]].concat();
        let end = [b"PK\x05\x06\0\0\0\0".as_slice(), &[count, 0], &[0xff; 10], &[0, 0]].concat();
        let bytes = [b"PK\x03\x04".as_slice(), b"PK\x06\x06", &record, &locator, &end].concat();
        prop_assert!(read_job_file(&bytes).is_err());
    }

    #[test]
    fn changed_bytes_are_noticed(
        file in file(), changes in proptest::collection::vec((any::<Index>(), 1_u8..), 1..6)
    ) {
        let mut bytes = written(&file);
        for (at, change) in changes {
            let at = at.index(bytes.len());
            bytes[at] ^= change;
        }
        prop_assert!(same_or_refused(&bytes, &file));
    }

    #[test]
    fn changed_bytes_in_the_list_at_the_end_are_noticed(
        file in file(), changes in proptest::collection::vec((0_usize..150, any::<u8>()), 1..9)
    ) {
        let mut bytes = written(&file);
        let length = bytes.len();
        for (back, byte) in changes {
            bytes[length - 1 - back.min(length - 1)] = byte;
        }
        prop_assert!(same_or_refused(&bytes, &file));
    }
}

#[test]
fn a_file_cut_short_anywhere_is_refused() {
    let bytes = written(&a_job());
    for length in 0..bytes.len() {
        let error = read_job_file(&bytes[..length]).expect_err("a file cut short must be refused");
        match length {
            0..4 => assert!(matches!(error, FileError::NotAJobFile { .. }), "{length}: {error}"),
            _ => assert!(matches!(error, FileError::Torn { .. }), "{length}: {error}"),
        }
    }
}

#[test]
fn each_single_changed_bit_is_noticed() {
    let file = a_job();
    let bytes = written(&file);
    for at in 0..bytes.len() {
        for bit in 0..8 {
            let mut changed = bytes.clone();
            changed[at] ^= 1 << bit;
            assert!(same_or_refused(&changed, &file), "byte {at}, bit {bit}");
        }
    }
}

#[test]
fn photos_stand_in_the_file_as_they_are() {
    let bytes = written(&a_job());
    let photo = b"as it was taken";
    assert!(bytes.windows(photo.len()).any(|window| window == photo));
    assert!(!bytes.windows(11).any(|window| window == b"Beach house"), "the list is deflated");
}

#[test]
fn what_could_not_be_read_back_is_not_written() {
    let refused = |change: &dyn Fn(&mut JobFile)| {
        let mut file = a_job();
        change(&mut file);
        write_job_file(&file).expect_err("must be refused")
    };
    let piece = |error: FileError| match error {
        FileError::Corrupt { piece, .. } | FileError::TooLarge { piece, .. } => piece,
        other => panic!("{other}"),
    };
    assert_eq!(piece(refused(&|file| file.job = "a/b".to_owned())), Piece::Contents);
    assert_eq!(piece(refused(&|file| file.parts[1].job = "j2".to_owned())), Piece::Part(2));
    assert_eq!(piece(refused(&|file| file.parts.push(file.parts[0].clone()))), Piece::Part(3));
    assert_eq!(piece(refused(&|file| file.log[0].job = "j2".to_owned())), Piece::Record(1));
    assert_eq!(piece(refused(&|file| file.log[1].id = file.log[0].id.clone())), Piece::Record(2));
    let name = Piece::Name("photos/../p.jpg".to_owned());
    assert_eq!(piece(refused(&|file| drop(file.photos.insert("../p".to_owned(), Vec::new())))), name);
    let large = usize::try_from(MOST_PHOTO).expect("fits") + 1;
    let error = refused(&|file| drop(file.photos.insert("p1".to_owned(), vec![0; large])));
    assert_eq!(
        error.to_string(),
        "Photo p1 of the job file takes 33 MB, and at most 32 MB is taken. Nothing was changed."
    );
}

#[test]
fn a_format_1_file_opens_with_everything() {
    assert_eq!(read_job_file(include_bytes!("fixtures/format_1_job_file.zip")), Ok(a_job()));
}

/// The contents of a job file as someone writes them by hand: a part or a record a line.
fn by_hand(file: &JobFile) -> String {
    let parts: Vec<String> = file.parts.iter().map(Part::to_json).collect();
    let log: Vec<String> = file.log.iter().map(job::walk::Record::to_json).collect();
    format!(
        "{{\n  \"format\": 1,\n  \"job\": \"{}\",\n  \"parts\": [\n    {}\n  ],\n  \"log\": [\n    {}\n  ]\n}}\n",
        file.job,
        parts.join(",\n    "),
        log.join(",\n    ")
    )
}

#[test]
fn contents_by_themselves_are_the_job_without_its_photos() {
    let file = a_job();
    let expected = JobFile { photos: BTreeMap::new(), ..file.clone() };
    assert_eq!(read_contents(by_hand(&file).as_bytes()), Ok(expected));
}

#[test]
fn contents_by_themselves_are_refused_as_they_are_in_a_file() {
    let refused = |change: &dyn Fn(String) -> String| {
        read_contents(change(by_hand(&a_job())).as_bytes()).expect_err("must be refused")
    };
    let newer = refused(&|text| text.replacen("\"format\": 1", "\"format\": 99", 1));
    assert_eq!(newer, FileError::Newer { found: 99 });
    for (piece, error) in [
        (Piece::Contents, refused(&|text| text[..text.len() / 2].to_owned())),
        (Piece::Contents, refused(&|text| text.replacen(&format!("\"job\": \"{JOB}\""), "\"job\": \"a/b\"", 1))),
        (Piece::Part(1), refused(&|text| text.replacen("\"head\"", "\"heart\"", 1))),
        (Piece::Part(1), refused(&|text| text.replacen(&format!("\"job\": \"{JOB}\""), "\"job\": \"j2\"", 1))),
    ] {
        assert!(matches!(&error, FileError::Corrupt { piece: found, .. } if *found == piece), "{error}");
    }
}
