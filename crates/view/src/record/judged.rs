//! A look judged again from what is kept of it, beside what was answered at the time.

use std::collections::BTreeMap;

use crate::walk::Kind;
use framing::walk::reply::Clause;
use framing::walk::{WalkReply, judge};
use job::walk::{Look, LookEntry, Walk};

use super::words::sentence;

/// A look, judged again.
pub(super) struct Judged {
    /// The answer; empty where there is none.
    pub(super) reply: WalkReply,
    /// That it is not the answer of the time, in sentences; none where it is.
    pub(super) differs: Option<String>,
}

/// Every look of a walk, judged again: once each, for the whole of a record.
pub(super) struct Judgements<'w>(BTreeMap<&'w str, Judged>);

impl<'w> Judgements<'w> {
    /// Of every look, crossed out or not.
    pub(super) fn of(walk: &'w Walk) -> Self {
        let looks = walk.points().flat_map(|(_, point)| &point.looks);
        Self(looks.map(|look| (look.id.as_str(), judged(&look.what))).collect())
    }

    /// Of a look of that walk.
    pub(super) fn look(&self, look: &LookEntry) -> Option<&Judged> {
        self.0.get(look.id.as_str())
    }
}

/// Judges a look again from its own inputs.
pub(super) fn judged(look: &Look) -> Judged {
    let nothing = WalkReply::default;
    match judge(&look.kind, &look.texts, &look.lists) {
        None => Judged {
            reply: nothing(),
            differs: Some(
                "This version does not judge looks of this kind. What was answered at the time stands.".to_owned(),
            ),
        },
        Some(Err(refused)) => {
            let problems: Vec<String> = refused.iter().map(|refusal| sentence(&refusal.problem)).collect();
            let says = "Judged again by this version, an input is refused; what was answered at the time stands.";
            Judged { reply: nothing(), differs: Some(format!("{says} {}", problems.join(" "))) }
        }
        Some(Ok(reply)) => {
            let differs = (reply.verdict != look.verdict).then(|| {
                let (then, now) = (&look.verdict, &reply.verdict);
                format!("Answered at the time: {then}. Judged again by this version: {now}. Find out which counts.")
            });
            Judged { reply, differs }
        }
    }
}

/// Where a limit comes from: the drawing, a publication, what was typed.
pub(super) fn origin(clause: &Clause) -> &str {
    if clause.status.is_empty() { &clause.source } else { "published" }
}

/// The publication that a limit comes from, and how it came here; empty for every other limit.
pub(super) fn published(clause: &Clause) -> String {
    if clause.status.is_empty() { String::new() } else { format!("{}, {}", clause.source, clause.status) }
}

/// An input's stable name as it is read.
pub(super) fn input_words(name: &str) -> String {
    name.replace('_', " ")
}

/// What was typed, input by input, as it was typed; a choice in the words of its card.
pub(super) fn as_typed(look: &Look) -> Vec<(String, String)> {
    let kind = Kind::at(&look.kind);
    let said = |name: &str, text: &str| {
        let known =
            kind.and_then(|kind| kind.said(name, text)).map(|(label, words)| (label.to_owned(), words.to_owned()));
        known.unwrap_or_else(|| (input_words(name), text.to_owned()))
    };
    let texts = look.texts.iter().map(|(name, text)| said(name, text.trim()));
    let lists = look.lists.iter().map(|(name, list)| said(name, &list.join("; ")));
    lists.chain(texts).filter(|(_, text)| !text.is_empty()).collect()
}

/// What is not the same in two sets of inputs: the input, the old text and the new one.
pub(super) fn changes(old: &[(String, String)], new: &[(String, String)]) -> Vec<(String, String, String)> {
    let text = |inputs: &[(String, String)], name: &str| {
        inputs.iter().find(|(other, _)| other == name).map(|(_, text)| text.clone()).unwrap_or_default()
    };
    let gone = old.iter().filter(|(name, _)| !new.iter().any(|(other, _)| other == name));
    let names = new.iter().chain(gone).map(|(name, _)| name);
    let all = names.map(|name| (name.clone(), text(old, name), text(new, name)));
    all.filter(|(_, old, new)| old != new).collect()
}
