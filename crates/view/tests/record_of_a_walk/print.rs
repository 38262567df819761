//! What is printed.

use job::walk::{Because, Look, Step, Walk};
use view::record::{CLOSINGS, printed};

use crate::log::{Log, OUT, RIGHT, WHOLE_HEAD, after, fields, said, studs, whole};

const HOSTILE: &str = "\"><script>alert(1)</script>";

fn paper(walk: &Walk) -> String {
    let thumbs = |photo: &str| (photo == "p1").then(|| "blob:p1".to_owned());
    printed(walk, "Lot 7", &thumbs, "2026-05-05T07:00:00-05:00").into_string()
}

/// What is read of markup: a line for each part; what is crossed out between double tildes.
fn read(markup: &str) -> String {
    let mut text = String::new();
    for piece in markup.split('<') {
        let (tag, words) = piece.split_once('>').unwrap_or(("", piece));
        text.push_str(match tag.split(' ').next().unwrap_or_default() {
            "del" | "/del" => "~~",
            "strong" | "/strong" | "span" | "/span" => "",
            "br" => ", ",
            "td" | "/td" | "th" | "/th" => " | ",
            _ => "\n",
        });
        text.push_str(words);
    }
    let text = text.replace(" |  | ", " | ");
    let lines = text.lines().map(|line| line.trim_matches([' ', '|'])).filter(|line| !line.is_empty());
    lines.collect::<Vec<&str>>().join("\n").replace("&quot;", "\"").replace("&amp;", "&")
}

#[track_caller]
fn holds(text: &str, line: &str) {
    assert!(text.lines().any(|other| other == line), "no line “{line}” in:\n{text}");
}

/// The whole record of a walk with a mend, a correction, a struck look, a photo and something hidden.
#[test]
fn the_record_of_a_walk() {
    let mut log = whole();
    log.signed("A. Framer", "observations_only");
    insta::assert_snapshot!("record", read(&paper(&log.walk())));
}

#[test]
fn what_was_not_written_down_is_said_to_be_so() {
    let text = read(&paper(&Log::begun().walk()));
    holds(&text, "Nobody wrote down what was not visible.");
    assert_eq!(text.matches("not written down\n").count(), 13, "{text}");
    holds(&text, "Write the permit number, or that there is none.");
    holds(&text, "This record is not signed.");
    holds(&text, "Times are the phone's own, as its clock stood.");
    // What may be left out is not mentioned.
    assert!(!text.contains("License") && !text.contains("Remarks"), "{text}");
}

/// Unless its signer says so, the record never says that work conforms.
#[test]
fn the_closing_words_are_the_signers() {
    assert!(!paper(&whole().walk()).contains("conform"));
    for (stable, words) in CLOSINGS {
        let mut log = whole();
        log.signed("A. Framer", stable);
        let text = read(&paper(&log.walk()));
        holds(&text, &format!("Closing words, chosen by the signer: {words}."));
        assert_eq!(text.matches("conform").count(), usize::from(words.contains("conform")), "{text}");
        assert!(!text.contains("not signed"), "{text}");
    }
    let mut log = whole();
    log.signed("A. Framer", "");
    let markup = paper(&log.walk());
    assert!(!markup.contains("Closing words"), "{markup}");
    assert!(markup.contains("aria-label=\"Signature of A. Framer\"") && markup.contains("1000,5000 9000,2500"));
}

#[test]
fn a_signature_that_is_crossed_out_does_not_sign() {
    let mut log = whole();
    log.signed("A. Framer", "is_in_conformance");
    let id = log.records.last().unwrap().id.clone();
    log.strike(&id, "signed too early");
    let text = read(&paper(&log.walk()));
    holds(&text, "This record is not signed.");
    holds(&text, "Crossed out: signed too early");
    holds(&text, "~~Closing words, chosen by the signer: is in conformance.~~");
}

#[test]
fn a_correction_shows_old_and_new_who_when_and_why() {
    let mut log = Log::begun();
    log.look("a", studs(&OUT));
    log.look("b", after(studs(&RIGHT), "a", Because::Corrected, "read 33-1/2 for 32"));
    let text = read(&paper(&log.walk()));
    holds(&text, "Stud spacing, grid B: out First look, 2026-05-04 08:03, A. Framer; a later look counts");
    holds(&text, "Pull: “16; 33-1/2; 48; 64” became “16; 32; 48; 64”.");
    holds(&text, "Why: read 33-1/2 for 32.");
    assert!(text.find(": out First look") < text.find("Corrected, 2026-05-04 08:04, A. Framer"), "{text}");
}

#[test]
fn another_answer_than_that_of_the_time_is_said() {
    let mut log = Log::begun();
    log.look("a", Look { verdict: "within".to_owned(), ..studs(&OUT) });
    log.look("b", Look { kind: "roof".to_owned(), ..said("m1", "grid A", "within") });
    let mut refused = said("m1", "grid C", "within");
    refused.texts.insert("required_spacing".to_owned(), "wide".to_owned());
    log.look("c", refused);
    let text = read(&paper(&log.walk()));
    holds(&text, "Answered at the time: within. Judged again by this version: out. Find out which counts.");
    holds(&text, "This version does not judge looks of this kind. What was answered at the time stands.");
    assert!(text.contains("an input is refused; what was answered at the time stands."), "{text}");
    // Nothing is said where both are the same.
    assert!(!read(&paper(&whole().walk())).contains("Judged again"), "the same answer");
}

#[test]
fn lines_are_drawn_over_a_photo_and_a_missing_picture_is_said() {
    let mut log = whole();
    log.photo("p2", "m1", "", Vec::new());
    log.strike("r-p2", "blurred");
    let markup = paper(&log.walk());
    assert!(markup.contains("<img src=\"blob:p1\" width=\"1600\" height=\"1200\""), "{markup}");
    assert!(markup.contains("viewBox=\"0 0 10000 10000\" preserveAspectRatio=\"none\""), "{markup}");
    assert!(markup.contains("points=\"0,0 5000,10000\"") && markup.contains("points=\"7,8 7,8\""), "{markup}");
    let text = read(&markup);
    holds(&text, "W1, Stud spacing, grid B, close view, tape in view.");
    holds(&text, "The lines were drawn on it later; the photo is kept without them.");
    holds(&text, "The picture is not at hand on this phone.");
    holds(&text, "Crossed out: blurred");
}

#[test]
fn changes_of_the_head_and_of_a_mark_are_kept() {
    let mut log = Log::begun();
    log.heading(&WHOLE_HEAD);
    log.heading(&WHOLE_HEAD.map(|(name, text)| (name, if name == "permit" { "B-121" } else { text })));
    log.mark("m1", "W1 north");
    let text = read(&paper(&log.walk()));
    holds(&text, "Permit number: “B-120” became “B-121”.");
    holds(&text, "name: “W1” became “W1 north”.");
    holds(&text, "Mark W1 north");
}

#[test]
fn what_becomes_of_it_is_told_with_who_said_yes() {
    let mut log = whole();
    log.follow_up("f", Step::Agreed, "B. Engineer said yes by phone");
    let id = log.records.last().unwrap().id.clone();
    let text = read(&paper(&log.walk()));
    holds(&text, "Agreed, 2026-05-04 08:16, A. Framer: B. Engineer said yes by phone.");
    assert!(text.contains("Stage: agreed."), "{text}");
    log.strike(&id, "not said");
    let text = read(&paper(&log.walk()));
    holds(&text, "~~Agreed, 2026-05-04 08:16, A. Framer: B. Engineer said yes by phone.~~");
    assert!(text.contains("Stage: found."), "{text}");
}

/// Every text that can be typed, hostile: none becomes a tag.
#[test]
fn what_was_typed_is_escaped_everywhere() {
    let mut log = Log::begun();
    log.heading(&WHOLE_HEAD.map(|(name, _)| (name, HOSTILE)));
    log.heading(&[("not_visible", HOSTILE), ("remarks", HOSTILE), (HOSTILE, HOSTILE)]);
    log.mark("m2", HOSTILE);
    log.mark("m2", &format!("{HOSTILE}2"));
    let hostile = || HOSTILE.to_owned();
    let look = Look {
        place: hostile(),
        kind: hostile(),
        texts: fields(&[(HOSTILE, HOSTILE), ("drawing", HOSTILE), ("required_spacing", "16\"")]),
        verdict: hostile(),
        says: hostile(),
        severity: hostile(),
        note: hostile(),
        ..said("m2", "", "")
    };
    log.look("a", look.clone());
    log.look("b", after(Look { kind: "stud_spacing".to_owned(), ..look.clone() }, "a", Because::Corrected, HOSTILE));
    log.look("c", Look { verdict: "out".to_owned(), ..look });
    log.follow_up("a", Step::Done, HOSTILE);
    log.photo("p1", "a", HOSTILE, vec![vec![(1, 1)]]);
    log.photo("p1b", "m2", HOSTILE, Vec::new());
    log.signed(HOSTILE, HOSTILE);
    log.strike("b", HOSTILE);
    log.records.iter_mut().for_each(|record| HOSTILE.clone_into(&mut record.by));
    let walk = log.walk();
    let thumbs = |_: &str| Some(hostile());
    let markup = printed(&walk, HOSTILE, &thumbs, HOSTILE).into_string();
    assert!(!markup.contains("<script"), "{markup}");
    assert!(markup.matches("&lt;script").count() > 40, "{markup}");
    assert!(!markup.contains("\"\">"), "an attribute is closed by what was typed: {markup}");
}

/// A list as it stands while someone types: an empty reading at its end, and none for the last bolt.
#[test]
fn readings_that_were_left_empty_are_judged_as_not_taken() {
    let list = |texts: &[&str]| texts.iter().map(|text| (*text).to_owned()).collect::<Vec<String>>();
    let mut lists = job::walk::Lists::from([("pulls".to_owned(), list(&["16", "32", ""]))]);
    let of_pulls = framing::walk::judge("stud_spacing", &fields(&[]), &lists).unwrap();
    assert_eq!(of_pulls.unwrap().read.len(), 2);
    lists = job::walk::Lists::from([
        ("bolts".to_owned(), list(&["6", "60", "120"])),
        ("nuts".to_owned(), list(&["tight", "tight"])),
        ("washers".to_owned(), list(&[" "])),
    ]);
    let of_bolts = |lists: &job::walk::Lists| framing::walk::judge("hold_down_point", &fields(&[]), lists).unwrap();
    let left_empty = of_bolts(&lists);
    lists.remove("washers");
    lists.insert("nuts".to_owned(), list(&["tight", "tight", "-"]));
    assert_eq!(left_empty, of_bolts(&lists));
    assert!(left_empty.is_ok(), "{left_empty:?}");
    assert_eq!(framing::walk::judge("roof", &fields(&[]), &lists), None);
}
