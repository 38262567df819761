//! Records as earlier versions wrote them, one on a line. A fixture is never edited: each new format adds its own.

use job::OpenError;
use job::walk::{Because, Record, RecordBody, Step, Walk, open_record};

const RECORDS_1: [(&str, &str); 9] = [
    ("begun", include_str!("fixtures/format_1_record_begun.json")),
    ("heading", include_str!("fixtures/format_1_record_heading.json")),
    ("mark", include_str!("fixtures/format_1_record_mark.json")),
    ("look", include_str!("fixtures/format_1_record_look.json")),
    ("photo", include_str!("fixtures/format_1_record_photo.json")),
    ("drawn", include_str!("fixtures/format_1_record_drawn.json")),
    ("follow_up", include_str!("fixtures/format_1_record_follow_up.json")),
    ("struck", include_str!("fixtures/format_1_record_struck.json")),
    ("signed", include_str!("fixtures/format_1_record_signed.json")),
];

fn lines() -> impl Iterator<Item = (&'static str, &'static str)> {
    RECORDS_1.iter().flat_map(|(name, text)| text.lines().map(move |line| (*name, line)))
}

#[expect(clippy::expect_used, reason = "a helper of tests: a panic is the report")]
fn log() -> Vec<Record> {
    lines().map(|(_, line)| open_record(line.as_bytes()).expect("an old record must open")).collect()
}

/// The name that a body has where it is stored. A new body makes this fail to build: it needs a fixture.
fn stored_name(body: &RecordBody) -> &'static str {
    match body {
        RecordBody::Begun { .. } => "begun",
        RecordBody::Heading { .. } => "heading",
        RecordBody::Mark(_) => "mark",
        RecordBody::Look(_) => "look",
        RecordBody::Photo(_) => "photo",
        RecordBody::Drawn { .. } => "drawn",
        RecordBody::FollowUp { .. } => "follow_up",
        RecordBody::Struck { .. } => "struck",
        RecordBody::Signed(_) => "signed",
    }
}

#[test]
fn format_1_records_open_as_what_they_are_and_are_written_as_they_were() {
    for (name, line) in lines() {
        let record = open_record(line.as_bytes()).expect("an old record must open");
        assert_eq!(stored_name(&record.body), name);
        assert_eq!(record.to_json(), line);
    }
}

#[test]
fn a_format_1_walk_reads_with_every_value() {
    let walks = Walk::read(&log());
    let [walk] = walks.as_slice() else { panic!("one walk was stored") };
    assert_eq!((walk.begun.what.as_str(), walk.is_signed()), ("Walk 1", true));
    assert_eq!(walk.heading()["plan"], "sheet 4");
    let [mark] = walk.marks.as_slice() else { panic!("one mark was stored") };
    assert_eq!(mark.name(), "W1");
    let [point] = mark.points.as_slice() else { panic!("one point was looked at") };
    let because: Vec<_> = point.looks.iter().map(|look| look.what.follows.as_ref().map(|f| f.because)).collect();
    assert_eq!(because, [None, Some(Because::Corrected), Some(Because::Mended)]);
    assert_eq!(point.looks[0].what.lists["pulls"], ["16", "33", "50"]);
    assert_eq!(point.looks[1].struck.as_deref(), Some("wrong bay"));
    assert!(point.was_mended());
    let steps: Vec<Step> = point.follow_ups.iter().map(|entry| entry.what.0).collect();
    assert_eq!(steps, [Step::Agreed, Step::Done]);
    let [(photo, strokes)] = point.photos.as_slice() else { panic!("one photo was taken") };
    assert_eq!((photo.what.width, photo.what.tape_in_view, strokes.len()), (1600, true, 2));
}

#[test]
fn a_newer_record_is_refused_whole_with_its_bytes() {
    let text = br#"{"format":2,"id":"a","body":{"weighed":{}}}"#;
    assert_eq!(open_record(text), Err(OpenError::Newer { found: 2, bytes: text.to_vec() }));
}

#[test]
fn a_record_cut_short_never_opens() {
    for (_, line) in lines() {
        for at in 0..line.len() {
            let cut = &line.as_bytes()[..at];
            let error = open_record(cut).expect_err("a torn record must be refused");
            assert_eq!(error.bytes(), cut);
        }
    }
}

#[test]
fn an_unknown_piece_is_refused_and_named() {
    for (_, line) in lines() {
        let text = line.replacen("\"number\":", "\"colour\":\"red\",\"number\":", 1);
        let error = open_record(text.as_bytes()).expect_err("an unknown piece must be refused");
        assert!(error.to_string().contains("colour"), "{error}");
    }
    let text = RECORDS_1[7].1.replace("\"why\":", "\"colour\":\"red\",\"why\":");
    let error = open_record(text.trim().as_bytes()).expect_err("an unknown piece inside must be refused");
    assert!(error.to_string().contains("colour"), "{error}");
}

#[test]
fn ids_that_are_not_plain_are_refused() {
    let cases = [
        (0, r#""id":"0a01""#, r#""id":"../0a01""#),
        (0, r#""id":"0a01""#, r#""id":"""#),
        (0, r#""job":"3f2a9c10""#, r#""job":"3f2a/9c10""#),
        (0, r#""walk":"0a01""#, r#""walk":"0a 01""#),
        (2, r#""mark":"m-1""#, r#""mark":"m_1""#),
        (4, r#""photo":"p-1""#, r#""photo":"p.1""#),
    ];
    for (at, plain, odd) in cases {
        let text = RECORDS_1[at].1.replace(plain, odd);
        assert_ne!(text, RECORDS_1[at].1);
        let error = open_record(text.trim().as_bytes()).expect_err("an odd id must be refused");
        assert!(error.to_string().contains("letters, digits and dashes"), "{error}");
    }
}
