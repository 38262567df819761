//! Files as earlier versions wrote them. A fixture is never edited: each new format adds its own.

use job::{OpenError, Part, PartBody, open_part, open_typing};

const HEADER_1: &str = include_str!("fixtures/format_1_header.json");
const SITE_1: &str = include_str!("fixtures/format_1_site.json");
const HEAD_1: &str = include_str!("fixtures/format_1_head.json");
const TYPING_1: &str = include_str!("fixtures/format_1_typing.json");

#[track_caller]
#[expect(clippy::expect_used, reason = "a helper of tests: a panic is the report")]
fn opens(text: &str) -> Part {
    open_part(text.trim().as_bytes()).expect("an old part must open")
}

#[test]
fn format_1_parts_open_with_every_value() {
    let PartBody::Header(header) = opens(HEADER_1).body else { panic!("a header was stored") };
    assert_eq!(header.name, "Header 1");
    assert_eq!(header.fields["opening_width"], "6' 0\"");
    assert_eq!(header.answer, "2-2x10 carries it: 82 %, bending");
    let PartBody::Site { fields } = opens(SITE_1).body else { panic!("site values were stored") };
    assert_eq!(fields["ground_snow"], "30 psf");
    assert_eq!(opens(HEAD_1).body, PartBody::Head { name: "Beach house".to_owned() });
}

#[test]
fn format_1_is_written_as_it_was() {
    for text in [HEADER_1, SITE_1, HEAD_1] {
        assert_eq!(opens(text).to_json(), text.trim());
    }
}

#[test]
fn format_1_typing_opens() {
    let typing = open_typing(TYPING_1.trim().as_bytes()).expect("old typing must open");
    assert_eq!(typing.hand, "opening_width");
    assert_eq!(typing.to_json(), TYPING_1.trim());
}

#[test]
fn keys_tell_the_parts_of_a_job_apart() {
    assert_eq!(opens(HEADER_1).key().as_str(), "job/3f2a9c10/header/77aa01bc");
    assert_eq!(opens(SITE_1).key().as_str(), "job/3f2a9c10/site");
    assert_eq!(opens(HEAD_1).key().as_str(), "job/3f2a9c10/head");
}

#[test]
fn a_newer_format_is_refused_in_a_sentence_with_its_bytes() {
    let text = r#"{"format":2,"rooms":[]}"#;
    let error = open_part(text.as_bytes()).expect_err("a newer part must be refused");
    assert_eq!(error, OpenError::Newer { found: 2, bytes: text.as_bytes().to_vec() });
    assert_eq!(
        error.to_string(),
        "This was saved by a newer version: format 2, and this version opens formats 1 to 1. It was left as it is. \
         Take up the new version, then open it again."
    );
}

#[test]
fn what_cannot_be_read_is_refused_in_a_sentence_with_its_bytes() {
    let cases: [(&[u8], &str); 5] = [
        (b"\xff\xfe", "it is not text"),
        (b"", "it does not say which format it is in"),
        (br#"{"job":"a1"}"#, "it does not say which format it is in"),
        (br#"{"format":0}"#, "there is no format 0"),
        (br#"{"format":1,"job":"a/1","revision":1,"body":{"head":{"name":""}}}"#, "an id holds something other"),
    ];
    for (bytes, reason) in cases {
        let error = open_part(bytes).expect_err("must be refused");
        assert!(error.to_string().starts_with(&format!("This cannot be read: {reason}")), "{error}");
        assert_eq!(error.bytes(), bytes);
    }
}

#[test]
fn an_unknown_piece_is_refused_and_named() {
    let text = br#"{"format":1,"job":"a1","revision":1,"body":{"head":{"name":"x","colour":"red"}}}"#;
    let error = open_part(text).expect_err("an unknown piece must be refused");
    assert!(error.to_string().contains("colour"), "{error}");
}
