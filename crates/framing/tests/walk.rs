//! What was found on a walk, through the command's line: field cases, nonsense, and any object at all.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use framing::check::check_line;
use framing::walk::flatness::FlatnessCase;
use framing::walk::hold_down_point::HoldDownPointCase;
use framing::walk::moisture::MoistureCase;
use framing::walk::nailing::NailingCase;
use framing::walk::notch_found::NotchFoundCase;
use framing::walk::stud_spacing::StudSpacingCase;
use serde_json::{Value, json};

// Walls: studs and nails.
#[path = "walk/studs_and_nails.rs"]
mod studs_and_nails;

// Bolts, cuts, plane and moisture.
#[path = "walk/bolts_and_cuts.rs"]
mod bolts_and_cuts;

// Roof ties and straps.
#[path = "walk/ties_and_straps.rs"]
mod ties_and_straps;

// What is refused, and what is asked.
#[path = "walk/refusals.rs"]
mod refusals;

// The row as it is drawn, single studs, and what the screens need beside the answer.
#[path = "walk/row.rs"]
mod row;

// Any object at all.
#[path = "walk/anything.rs"]
mod anything;

type Names = &'static [&'static str];

/// Every kind with its inputs: those that are one text, and those that are a list.
const KINDS: [(&str, Names, Names); 6] = [
    ("stud_spacing", StudSpacingCase::TEXTS, StudSpacingCase::LISTS),
    ("nailing", NailingCase::TEXTS, NailingCase::LISTS),
    ("hold_down_point", HoldDownPointCase::TEXTS, HoldDownPointCase::LISTS),
    ("notch_found", NotchFoundCase::TEXTS, NotchFoundCase::LISTS),
    ("flatness", FlatnessCase::TEXTS, FlatnessCase::LISTS),
    ("moisture", MoistureCase::TEXTS, MoistureCase::LISTS),
];

/// Asks one line, which must come back as one line of JSON.
fn ask(line: &Value) -> Value {
    let answer = check_line(&line.to_string());
    assert!(!answer.contains('\n'), "{answer}");
    serde_json::from_str(&answer).unwrap()
}

/// A question of a kind, answered.
#[track_caller]
fn answered(kind: &str, inputs: Value) -> Value {
    let mut line = inputs;
    line["check"] = json!(kind);
    let answer = ask(&line);
    assert_eq!(answer["check"], kind, "{answer}");
    answer
}

/// The value of a fact by its name.
#[track_caller]
fn fact<'a>(answer: &'a Value, what: &str) -> &'a str {
    let facts = answer["facts"].as_array().unwrap();
    let found = facts.iter().find(|fact| fact["what"].as_str().unwrap().contains(what));
    assert!(found.is_some(), "no fact {what} in {facts:?}");
    found.unwrap()["value"].as_str().unwrap()
}

/// The check of a subject, and of a place where one is named.
#[track_caller]
fn check<'a>(answer: &'a Value, subject: &str, at: Option<&str>) -> &'a Value {
    let checks = answer["checks"].as_array().unwrap();
    let found = checks.iter().find(|check| check["subject"] == subject && check["at"].as_str() == at);
    assert!(found.is_some(), "no check {subject} at {at:?} in {checks:?}");
    found.unwrap()
}

fn texts(list: &Value, key: &str) -> Vec<String> {
    list.as_array().unwrap().iter().map(|item| item[key].as_str().unwrap().to_owned()).collect()
}

/// Who must say yes to the remedy that begins so.
#[track_caller]
fn who(answer: &Value, begins: &str) -> Vec<String> {
    let remedies = answer["remedies"].as_array().unwrap();
    let found = remedies.iter().find(|remedy| remedy["what"].as_str().unwrap().starts_with(begins));
    assert!(found.is_some(), "no remedy {begins} in {remedies:?}");
    found.unwrap()["who_says_yes"].as_array().unwrap().iter().map(|who| who.as_str().unwrap().to_owned()).collect()
}

fn has_remedy(answer: &Value, has: &str) -> bool {
    texts(&answer["remedies"], "what").iter().any(|what| what.contains(has))
}
