//! One thing that was looked at, as its own screen shows it.

use job::walk::{Mark, Photo, Point, Step, Walk};
use maud::{Markup, html};

use super::overview::Overview;
use super::point::{Stage, row};
use super::print::shows;
use super::words::sentence;
use crate::markup::figure;
use crate::model::Answer;

/// What a photo can show: the stable name, and its words. The first is taken where nothing is said.
pub const PHOTO_SHOWS: [(&str, &str); 4] =
    [("wide", "Wide view"), ("close", "Close view"), ("inside", "From inside"), ("outside", "From outside")];

/// A photo in a few words: its caption, and what it shows.
#[must_use]
pub fn photo_words(photo: &Photo) -> String {
    let caption = photo.caption.trim();
    let shows = shows(photo);
    if caption.is_empty() { shows } else { format!("{caption} ({shows})") }
}

/// Every look at it, the first kept; its note, and what became of it.
#[must_use]
pub fn point_markup(mark: &Mark, point: &Point) -> Markup {
    let Some(row) = row(mark, point) else { return html! {} };
    let said = [(row.place.trim(), "Where: "), (row.severity_words.as_str(), ""), (row.note.trim(), "Note: ")];
    html! {
        section.history {
            h2 { "The record of it" }
            ul {
                @for (text, before) in said.into_iter().filter(|(text, _)| !text.is_empty()) {
                    li { (before) (figure(&sentence(text))) }
                }
                @for line in row.history.iter().chain(&row.follow_ups) { li { (figure(line)) } }
            }
            p.note { "Times are the phone's own." }
        }
    }
}

/// What comes next of what was found: none where nothing is to be mended.
#[must_use]
pub fn next_step(mark: &Mark, point: &Point) -> Option<Step> {
    match row(mark, point)?.stage? {
        Stage::Found => Some(Step::Agreed),
        Stage::Agreed => Some(Step::Done),
        Stage::Done | Stage::Right => None,
    }
}

/// What is asked for a step.
#[must_use]
pub const fn step_asks(step: Step) -> &'static str {
    match step {
        Step::Agreed => "What is to be done, and who said yes?",
        Step::Done => "Who did it?",
    }
}

/// The word on a step's key.
#[must_use]
pub const fn step_key(step: Step) -> &'static str {
    match step {
        Step::Agreed => "It is agreed",
        Step::Done => "It is done",
    }
}

/// Whether the record lacks nothing that hinders signing it.
#[must_use]
pub fn may_sign(walk: &Walk) -> bool {
    super::heading_lacks(&walk.heading()).is_empty()
}

impl Overview {
    /// The walk's answer, as it is set on the sheet.
    #[must_use]
    pub fn answer(&self) -> Answer {
        Answer {
            state: self.state,
            figure: self.figure.clone(),
            word: self.word.clone(),
            share: None,
            share_text: self.share_text.clone(),
            action: Vec::new(),
        }
    }
}
