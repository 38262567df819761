//! A member as it was found: worked again with what is really there, beside the one that was drawn.

use std::collections::BTreeMap;

use lumber::{Grade, species_and_grade};

use super::MemberKind;
use crate::Texts;
use crate::quick::reply::{AsFoundReply, QuickReply};
use crate::quick::{QuickKind as _, derive_once};
use crate::reading::Reading;
use crate::words;

/// What a kind has for what may be found otherwise: the input that was found, and the one that it stands for.
const STANDS_FOR: [(&str, &[&str]); 2] = [
    ("found_spacing", &["joist_spacing", "rafter_spacing", "wall_spacing"]),
    ("found_bearing", &["bearing_length", "beam_bearing", "seat_cut"]),
];

/// Texts with some of them replaced.
struct Replaced<'t> {
    texts: &'t dyn Texts,
    by: BTreeMap<&'static str, String>,
}

impl Texts for Replaced<'_> {
    fn text(&self, field: &str) -> Option<&str> {
        self.by.get(field).map(String::as_str).or_else(|| self.texts.text(field))
    }
}

/// The answer with what was found put in, where something was; what was drawn stands beside it.
pub(super) fn beside(
    kind: MemberKind,
    case: &dyn Texts,
    site: &dyn Texts,
    reading: &mut Reading,
    drawn: QuickReply,
) -> Option<QuickReply> {
    let by = replacements(kind, reading, &drawn);
    if reading.problems().next().is_some() {
        return None;
    }
    if by.is_empty() {
        return Some(drawn);
    }
    let says = by.iter().filter_map(|(id, found)| difference(id, found, reading, &drawn)).collect();
    let outcome = derive_once(kind, &Replaced { texts: case, by }, site);
    let Some(mut found) = outcome.answered else {
        // What was found cannot be worked: say so where it was typed.
        for (id, problem) in outcome.reading.problems() {
            let at = if id == "drawn_size" { "found_size" } else { id };
            reading.refuse(at, problem.to_owned());
        }
        return None;
    };
    found.as_found = Some(AsFoundReply { drawn: drawn.size, verdict: drawn.verdict, ratio: drawn.ratio, says });
    if found.verdict != words::verdict(members::check::Verdict::Carries) && !found.action.is_empty() {
        found.action.push(
            "What was found differs from what was drawn: the engineer or the official says what stands.".to_owned(),
        );
    }
    Some(found)
}

fn replacements(kind: MemberKind, reading: &mut Reading, drawn: &QuickReply) -> BTreeMap<&'static str, String> {
    let mut by = BTreeMap::new();
    for (found, stands_for) in STANDS_FOR {
        let own = stands_for.iter().find(|id| kind.fields().contains(id));
        if let (Some(own), Some(text)) = (own, reading.word(found)) {
            by.insert(*own, text.to_owned());
        }
    }
    if let Some(text) = reading.word("found_grade").map(str::to_owned) {
        match (species_and_grade(&text), Grade::from_text(&text)) {
            (Ok((species, grade)), _) => {
                by.insert("species", species.short_name().to_owned());
                by.insert("grade", grade.name().to_owned());
            }
            (_, Ok(grade)) => {
                by.insert("grade", grade.name().to_owned());
            }
            (_, Err(problem)) => reading.refuse("found_grade", problem.to_string()),
        }
    }
    let size = reading.word("found_size").map(str::to_owned);
    match size {
        Some(size) => {
            by.insert("drawn_size", size);
        }
        // What carries as drawn is judged as found, not a larger one that would carry as found.
        None if !by.is_empty() => {
            by.insert("drawn_size", drawn.size.clone());
        }
        None => {}
    }
    by
}

fn difference(id: &str, found: &str, reading: &Reading, drawn: &QuickReply) -> Option<String> {
    if id == "drawn_size" {
        return (found != drawn.size).then(|| format!("Size: {found} found, {} drawn.", drawn.size));
    }
    let value = reading.get(id)?;
    (found != value.text).then(|| format!("{}: {found} found, {} drawn.", value.spec.label, value.shown))
}
