//! Files that somebody made by hand, or a program that packs folders in its own way.

mod zips;

use std::time::{Duration, Instant};

use job::file::{FileError, MOST_CONTENTS, Piece, read_job_file};
use zips::{Entry, zip};

const HEAD: &str = r#"{"format":1,"job":"j1","revision":1,"body":{"head":{"name":"Beach house"}}}"#;

fn list(text: &str) -> Entry {
    Entry::deflated("job.json", text.as_bytes())
}

fn good() -> Entry {
    list(r#"{"format":1,"job":"j1","parts":[],"log":[]}"#)
}

#[track_caller]
#[expect(clippy::expect_used, reason = "a helper of tests: a panic is the report")]
fn refused(entries: &[Entry]) -> FileError {
    read_job_file(&zip(entries)).expect_err("must be refused")
}

#[track_caller]
#[expect(clippy::panic, reason = "a helper of tests: a panic is the report")]
fn corrupt(error: FileError) -> (Piece, String) {
    match error {
        FileError::Corrupt { piece, reason } => (piece, reason),
        other => panic!("{other}"),
    }
}

#[test]
fn what_is_no_job_file_is_told_so() {
    assert_eq!(
        read_job_file(b"a shopping list").expect_err("no job file").to_string(),
        "This is not a job file: it does not begin as one. Choose a file that was saved from a job."
    );
    for entries in [vec![], vec![Entry::stored("folder/job.json", b"{}")]] {
        let reason = "there is no job.json in it".to_owned();
        assert_eq!(refused(&entries), FileError::NotAJobFile { reason });
    }
}

#[test]
fn a_newer_file_is_refused_whole_with_the_reason() {
    let newer = r#"{"format":1,"job":"j1","parts":[],"log":[{"format":4,"weighed":1}]}"#;
    assert_eq!(refused(&[list(newer)]), FileError::Newer { found: 4 });
    assert_eq!(
        refused(&[list(r#"{"format":2,"rooms":[]}"#)]).to_string(),
        "This job file was saved by a newer version: format 2, and this version opens formats 1 to 1. Nothing of it \
         was taken in. Take up the new version, then open it again."
    );
}

#[test]
fn the_piece_that_cannot_be_read_is_named() {
    let parts = |parts: &str| list(&format!(r#"{{"format":1,"job":"j1","parts":[{parts}],"log":[]}}"#));
    let log = |log: &str| list(&format!(r#"{{"format":1,"job":"j1","parts":[],"log":[{log}]}}"#));
    let record =
        r#"{"format":1,"id":"w","job":"j1","walk":"w","number":1,"at":"","by":"","body":{"begun":{"name":""}}}"#;
    let other_part = HEAD.replace("j1", "j2");
    let other_record = record.replace("j1", "j2");
    let odd_record = record.replace(r#""id":"w""#, r#""id":"../w""#);
    let cases = [
        (parts(&format!("{HEAD},7")), Piece::Part(2), "does not say which format"),
        (parts(&format!("{HEAD},{HEAD}")), Piece::Part(2), "twice"),
        (parts(&other_part), Piece::Part(1), "another job"),
        (log(&format!("{record},{{}}")), Piece::Record(2), "does not say which format"),
        (log(&format!("{record},{record}")), Piece::Record(2), "twice"),
        (log(&other_record), Piece::Record(1), "another job"),
        (log(&odd_record), Piece::Record(1), "letters, digits and dashes"),
        (list(r#"{"format":1,"job":"../j1","parts":[],"log":[]}"#), Piece::Contents, "letters, digits and dashes"),
        (list(r#"{"format":1,"job":"j1","parts":[],"log":[],"rooms":[]}"#), Piece::Contents, "rooms"),
        (list("{"), Piece::Contents, "does not say which format"),
    ];
    for (entry, piece, words) in cases {
        let (found, reason) = corrupt(refused(&[entry]));
        assert_eq!(found, piece);
        assert!(reason.contains(words), "{reason}");
    }
    assert_eq!(
        refused(&[parts(&other_part)]).to_string(),
        "Part 1 of the job file cannot be read: it belongs to another job than the file. Nothing of it was taken in \
         and nothing was changed."
    );
}

#[test]
fn names_that_lead_out_of_the_folder_are_refused() {
    let names = ["../job.json", "/job.json", "photos/../../p.jpg", "photos\\p.jpg", "C:p.jpg", "a\nb", "", "photos/.."];
    for name in names {
        let (piece, reason) = corrupt(refused(&[good(), Entry::stored(name, b"x")]));
        assert_eq!((piece, reason.as_str()), (Piece::Name(name.to_owned()), "it leads out of the folder"));
    }
}

#[test]
fn a_photo_whose_id_is_not_plain_is_refused() {
    for name in ["photos/.jpg", "photos/a b.jpg", "photos/a/b.jpg", "photos/.a.jpg"] {
        let (piece, reason) = corrupt(refused(&[good(), Entry::stored(name, b"x")]));
        assert_eq!(piece, Piece::Name(name.to_owned()));
        assert!(reason.contains("letters, digits and dashes"), "{reason}");
    }
}

#[test]
fn what_a_program_adds_when_it_packs_a_folder_is_passed_over() {
    let names = ["photos/", ".DS_Store", "__MACOSX/photos/._p1.jpg", "photos/Thumbs.db", "notes.txt"];
    let mut entries = vec![good(), Entry::deflated("photos/p1.jpg", b"as it was taken")];
    entries.extend(names.map(|name| Entry::stored(name, b"")));
    entries.push(Entry { name: b"caf\x82.txt".to_vec(), ..Entry::stored("", b"") });
    let file = read_job_file(&zip(&entries)).expect("a packed folder is taken");
    assert_eq!(file.photos.into_iter().collect::<Vec<_>>(), [("p1".to_owned(), b"as it was taken".to_vec())]);
}

#[test]
fn a_name_that_stands_twice_is_refused() {
    for entry in [good(), Entry::stored("photos/p1.jpg", b"one")] {
        let (_, reason) = corrupt(refused(&[good(), entry.clone(), entry]));
        assert_eq!(reason, "it stands there twice");
    }
}

#[test]
fn a_locked_file_and_an_unknown_packing_are_refused() {
    let photo = Entry::stored("photos/p1.jpg", b"x");
    let (piece, reason) = corrupt(refused(&[good(), Entry { flags: 1, ..photo.clone() }]));
    assert_eq!((piece, reason.as_str()), (Piece::Photo("p1".to_owned()), "it is locked with a password"));
    let (_, reason) = corrupt(refused(&[good(), Entry { method: 93, ..photo }]));
    assert!(reason.contains("packed in a way"), "{reason}");
}

#[test]
fn something_in_front_is_refused_and_something_behind_is_not() {
    let bytes = zip(&[good()]);
    let error = read_job_file(&[b"#! run me", bytes.as_slice()].concat()).expect_err("must be refused");
    assert!(matches!(error, FileError::Torn { .. }), "{error}");
    assert!(read_job_file(&[bytes.as_slice(), b"\r\n"].concat()).is_ok());
}

#[test]
fn a_bomb_is_refused_quickly_whether_it_tells_its_size_or_not() {
    let began = Instant::now();
    let honest = Entry::deflated("job.json", &vec![b' '; usize::try_from(MOST_CONTENTS).expect("fits") + 1]);
    let packing = began.elapsed();
    let lies = Entry { says_size: 1_000, ..honest.clone() };
    let began = Instant::now();
    let error = refused(&[honest]);
    assert!(matches!(error, FileError::TooLarge { piece: Piece::Contents, .. }), "{error}");
    let error = refused(&[lies]);
    assert!(matches!(error, FileError::Torn { .. }), "{error}");
    assert!(began.elapsed() < packing / 4 + Duration::from_millis(50), "{:?}", began.elapsed());
}

#[test]
fn many_photos_that_are_small_in_the_file_and_large_out_of_it_are_refused_together() {
    let photo = |at: usize| Entry { says_size: 31_000_000, ..Entry::deflated(&format!("photos/p{at}.jpg"), b"x") };
    let entries: Vec<Entry> = std::iter::once(good()).chain((0..20).map(photo)).collect();
    assert_eq!(
        refused(&entries).to_string(),
        "The content of the job file takes 621 MB, and at most 500 MB is taken. Nothing was changed."
    );
}

#[test]
fn too_many_names_are_refused() {
    let entries: Vec<Entry> = (0..10_001).map(|at| Entry::stored(&format!("n{at}"), b"")).collect();
    assert_eq!(refused(&entries), FileError::TooMany { given: 10_001, most: 10_000 });
}

#[test]
fn a_list_that_nests_without_end_is_refused() {
    let deep = "[".repeat(200_000);
    let (piece, _) = corrupt(refused(&[list(&format!(r#"{{"format":1,"job":"j1","parts":{deep}"#))]));
    assert_eq!(piece, Piece::Contents);
    let closed = format!("{}{}", "[".repeat(200_000), "]".repeat(200_000));
    let (piece, _) = corrupt(refused(&[list(&format!(r#"{{"format":1,"job":"j1","parts":[{closed}],"log":[]}}"#))]));
    assert_eq!(piece, Piece::Part(1));
}
