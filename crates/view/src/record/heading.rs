//! The head of the record as inputs.

use std::collections::BTreeMap;

use framing::walk::record::{self, paper_words, papers};

use crate::model::{Entry, Field, FieldId, Group, Origin};

/// An input of the record's head.
#[derive(Clone, Debug, PartialEq)]
pub struct HeadingInput {
    /// Its stable name.
    pub id: FieldId,
    /// Its label.
    pub label: &'static str,
    /// One line of help.
    pub help: &'static str,
    /// How it is filled.
    pub entry: Entry,
}

const fn text(id: FieldId, label: &'static str, help: &'static str) -> HeadingInput {
    HeadingInput { id, label, help, entry: Entry::Text }
}

/// The inputs of the record's head, in the order they are asked.
pub const INPUTS: [HeadingInput; 17] = [
    text("project", "Project", "The name on the drawings."),
    text("address", "Address or lot", ""),
    text("permit", "Permit number", "Or: none."),
    text("date", "Date of the visit", ""),
    text("start", "Began", "Time of day."),
    text("end", "Ended", "Time of day."),
    text("weather", "Weather and temperature", "Dry, light wind, 58 F."),
    text("observer_name", "Who looked", "Name."),
    text("observer_title", "Title", ""),
    text("observer_licence", "License", "Number, where there is one."),
    text("on_site", "Who else was on site", ""),
    text(
        "papers",
        "Compared with",
        "Each like: S2.1 rev B, approved. Or: not approved, not known. Between two papers write ; or begin a new line.",
    ),
    text("code_edition", "Code and edition", ""),
    text("code_sections", "Sections used", "With commas between them."),
    text("components", "What was covered", "Walls, floor, roof, anchors: with commas between them."),
    text("not_visible", "Not visible or not reached", "List it, or write: all was seen. Nothing is taken for granted."),
    text("remarks", "Remarks", "Deliveries, the order of the work."),
];

/// The head as the screen shows it: what was typed, and how the papers were understood.
#[must_use]
pub fn heading_fields(texts: &BTreeMap<String, String>) -> Vec<Field> {
    INPUTS.into_iter().map(|input| field(input, texts)).collect()
}

fn field(input: HeadingInput, texts: &BTreeMap<String, String>) -> Field {
    let text = texts.get(input.id).cloned().unwrap_or_default();
    let typed = !text.trim().is_empty();
    Field {
        shown: text.trim().to_owned(),
        echo: echo(input.id, &text),
        number: None,
        origin: if typed { Origin::Typed } else { Origin::Unknown },
        problem: None,
        group: Group::Record,
        id: input.id,
        label: input.label,
        help: input.help,
        entry: input.entry,
        text,
    }
}

/// What was understood, where a text is read and not only kept.
fn echo(id: &str, text: &str) -> String {
    match id {
        "papers" => papers(text).iter().map(paper_words).collect::<Vec<String>>().join("; "),
        "not_visible" if record::says_all_was_seen(text) => record::ALL_WAS_SEEN.to_owned(),
        _ => String::new(),
    }
}

/// What is still to be written down, in sentences, each with its input.
#[must_use]
pub fn heading_lacks(texts: &BTreeMap<String, String>) -> Vec<(FieldId, String)> {
    record::heading_lacks(texts)
}
