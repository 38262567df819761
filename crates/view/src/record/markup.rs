//! The walk as it is put on the page.

use maud::{Markup, html};

use super::lacks::Lacking;
use super::mark::MarkView;
use super::overview::{MarkRow, Overview};
use super::point::PointRow;
use super::words::{counted, when_and_who};
use crate::markup::{Act, beam, figure, state_class};

/// The marks as large cards, each one tap from its looks.
#[must_use]
pub fn overview_markup(overview: &Overview) -> Markup {
    html! {
        @if overview.marks.is_empty() {
            p.none-yet { "No mark is typed yet. Type one: W1, garage left." }
        } @else {
            ul.marks { @for mark in &overview.marks { (card(mark)) } }
        }
    }
}

fn card(mark: &MarkRow) -> Markup {
    html! {
        li {
            button type="button" class={ "mark-card " (state_class(mark.state)) } data-act=(Act::Open(&mark.id)) {
                (beam(mark.state))
                strong.mark-name { (mark.name) }
                span.counts { (mark.counts()) }
            }
        }
    }
}

/// A mark's rows, from the one with that number, counted from 0.
#[must_use]
pub fn mark_markup(mark: &MarkView, from: usize, count: usize) -> Markup {
    html! {
        @if mark.rows.is_empty() {
            p.none-yet { "Nothing was looked at here yet." }
        } @else {
            (rows_markup(&mark.rows, from, count))
        }
    }
}

/// A window of a list: so many rows from the one with that number, counted from 0. Beyond the end there are none.
#[must_use]
pub fn rows_markup(rows: &[PointRow], from: usize, count: usize) -> Markup {
    html! {
        ul.looks { @for row in rows.iter().skip(from).take(count) { (look(row)) } }
    }
}

/// What is to be mended, the worst first.
#[must_use]
pub fn to_mend_markup(rows: &[PointRow]) -> Markup {
    listed("to-mend", "To mend", rows)
}

/// What could not be seen.
#[must_use]
pub fn not_seen_markup(rows: &[PointRow]) -> Markup {
    listed("not-seen", "Could not be seen", rows)
}

fn listed(class: &str, heading: &str, rows: &[PointRow]) -> Markup {
    html! {
        @if !rows.is_empty() {
            section class=(class) {
                h2 { (heading) }
                ul.looks { @for row in rows { (look_with(row, &row.name())) } }
            }
        }
    }
}

/// What the record still lacks, each one tap from where it is written.
#[must_use]
pub fn lacks_markup(lacks: &[Lacking]) -> Markup {
    html! {
        @if !lacks.is_empty() {
            section.asked.lacks {
                h2 { "Still to be written down" }
                @for lack in lacks {
                    button.question type="button" data-act=(lack.of.act()) { (lack.says) }
                }
            }
        }
    }
}

fn look(row: &PointRow) -> Markup {
    let name = if row.place.trim().is_empty() {
        row.kind_words.clone()
    } else {
        format!("{}, {}", row.kind_words, row.place.trim())
    };
    look_with(row, &name)
}

fn look_with(row: &PointRow, name: &str) -> Markup {
    html! {
        li {
            button type="button" data-act=(Act::Look(&row.id))
                class={ "look-row " (state_class(row.state)) @if row.struck.is_some() { " struck" } } {
                (beam(row.state))
                strong.look-name { (name) }
                span.verdict-word { (row.verdict) }
                @if !row.says.is_empty() { span.says { (figure(&row.says)) } }
                @for tag in tags(row) { span.tag { (tag) } }
                span.note { (when_and_who(&row.at, &row.by)) }
            }
        }
    }
}

/// What else is to be known of it, a few words each.
fn tags(row: &PointRow) -> Vec<String> {
    let stage = row.stage.map(|stage| stage.word().to_owned());
    let photos = (row.photos > 0).then(|| counted(row.photos, "photo", "photos"));
    let struck = row.struck.as_ref().map(|why| format!("crossed out: {why}"));
    let severity = Some(row.severity_words.clone()).filter(|words| !words.is_empty());
    let corrected = row.corrected.then(|| "corrected".to_owned());
    let mended = row.mended.then(|| "mended".to_owned());
    [struck, severity, stage, corrected, mended, photos].into_iter().flatten().collect()
}
