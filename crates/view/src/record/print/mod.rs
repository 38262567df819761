//! The record as it is printed: one page flow that opens without the app.

mod cover;
mod looks;
mod marks;
mod photos;
mod rest;
mod signatures;
mod strokes;
mod summary;

pub(super) use photos::shows;
pub use strokes::strokes;

use job::walk::Walk;
use maud::{Markup, html};

use super::judged::Judgements;
use super::overview::overview;
use super::words::when;

/// The address of a photo's picture, by the photo's id; none where it is not at hand.
type Thumbs<'a> = &'a dyn Fn(&str) -> Option<String>;

/// The record of a walk as printable markup. `thumbs` gives the address of a photo's picture by the photo's id, and
/// none where it is not at hand; `now` is the phone's own time. What was corrected or crossed out is printed with what
/// took its place; nothing is left out. The record closes with the words that its signer chose, and with none while it
/// is not signed.
#[must_use]
pub fn printed(walk: &Walk, job_name: &str, thumbs: &dyn Fn(&str) -> Option<String>, now: &str) -> Markup {
    let (overview, judgements) = (overview(walk), Judgements::of(walk));
    html! {
        article.record {
            header.record-head {
                p.record-kind { "Record of what was seen on a walk through the frame" }
                h1 { (job_name) }
                p { (walk.begun.what) @if !walk.begun.at.is_empty() { ", begun " (when(&walk.begun.at)) } }
                @if let Some(why) = &walk.begun.struck { p.struck-why { "This walk is crossed out: " (why) } }
            }
            (cover::cover(walk))
            (summary::summary(&overview))
            @for mark in &walk.marks { (marks::mark(thumbs, &judgements, mark)) }
            (rest::open_items(&overview))
            (rest::not_seen(walk, &judgements, &overview))
            (rest::assumed_and_cautions(walk, &judgements))
            (signatures::signatures(walk))
            footer.record-foot {
                p { "Times are the phone's own, as its clock stood." }
                @if !now.is_empty() { p { "Printed " (when(now)) "." } }
            }
        }
    }
}

/// What stands in the record's place until its photos are read.
#[must_use]
pub fn not_yet() -> Markup {
    html! { p.note role="status" { "The record is being put together…" } }
}

/// A text, crossed out where it no longer counts.
fn crossed(is_struck: bool, text: &str) -> Markup {
    html! { @if is_struck { del { (text) } } @else { (text) } }
}

/// Why a thing is crossed out.
fn struck_why(struck: Option<&String>) -> Markup {
    html! { @if let Some(why) = struck { p.struck-why { "Crossed out: " (why) } } }
}
