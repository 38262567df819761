//! The head of the record: where, when, who, what it was compared with, and what was hidden.

use framing::walk::record::{paper_words, papers, says_all_was_seen};
use job::Fields;
use job::walk::Walk;
use maud::{Markup, html};

use super::super::heading::INPUTS;
use super::super::judged::changes;
use super::super::words::when_and_who;
use super::{crossed, struck_why};

/// Inputs that may be left out without a word.
const OPTIONAL: [&str; 3] = ["observer_licence", "on_site", "remarks"];

pub(super) fn cover(walk: &Walk) -> Markup {
    let heading = walk.heading();
    html! {
        section.cover {
            h2 { "The visit" }
            dl {
                @for input in &INPUTS {
                    @let text = heading.get(input.id).map_or("", |text| text.trim());
                    @if !text.is_empty() || !OPTIONAL.contains(&input.id) {
                        dt { (input.label) }
                        dd { (value(input.id, text)) }
                    }
                }
            }
            (versions(walk))
        }
    }
}

fn value(id: &str, text: &str) -> Markup {
    match id {
        "not_visible" if text.is_empty() => html! { "Nobody wrote down what was not visible." },
        _ if text.is_empty() => html! { "not written down" },
        "not_visible" if says_all_was_seen(text) => html! { "All was seen." },
        "papers" => html! { ul { @for paper in papers(text) { li { (paper_words(&paper)) } } } },
        _ => html! { span.as-typed { (text) } },
    }
}

/// What was changed in the head, and when: the first version is in the changes too.
fn versions(walk: &Walk) -> Markup {
    html! {
        @if walk.headings.len() > 1 {
            h3 { "Changes to these entries" }
            ol.changes {
                @for (before, version) in walk.headings.iter().zip(walk.headings.iter().skip(1)) {
                    li {
                        p.note { (when_and_who(&version.at, &version.by)) }
                        (changed(&before.what, &version.what, version.struck.is_some()))
                        (struck_why(version.struck.as_ref()))
                    }
                }
            }
        }
    }
}

/// What is not the same in two versions: the entry, the old text and the new one.
pub(super) fn changed(before: &Fields, after: &Fields, is_struck: bool) -> Markup {
    let listed = |fields: &Fields| -> Vec<(String, String)> {
        fields.iter().map(|(name, text)| (label(name), text.trim().to_owned())).collect()
    };
    changed_lines(&changes(&listed(before), &listed(after)), is_struck)
}

fn label(name: &str) -> String {
    let known = INPUTS.iter().find(|input| input.id == name).map(|input| input.label.to_owned());
    known.unwrap_or_else(|| super::super::judged::input_words(name))
}

/// Changes, one a line: `pulls: 16; 33 became 16; 32`.
pub(super) fn changed_lines(changes: &[(String, String, String)], is_struck: bool) -> Markup {
    let or_nothing = |text: &str| if text.is_empty() { "nothing".to_owned() } else { format!("“{text}”") };
    html! {
        @for (what, old, new) in changes {
            p.change { (crossed(is_struck, &format!("{what}: {} became {}.", or_nothing(old), or_nothing(new)))) }
        }
    }
}
