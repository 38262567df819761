//! The readings of a list as a strip: each one tap from the hand, and what is asked about one stands under it.

use maud::{Markup, html};

use super::{Act, figure, state_class};
use crate::walk::{ListShown, ReadingShown, ReadyKeys};

/// What can be said with one tap of the reading in hand; nothing where there is nothing.
#[must_use]
pub fn walk_ready(ready: &ReadyKeys) -> Markup {
    html! {
        @if !ready.keys.is_empty() {
            div.ready role="group" aria-label=(ready.about) {
                p.note { (figure(&ready.about)) }
                div.ready-keys {
                    @for (index, key) in ready.keys.iter().enumerate() {
                        button.key type="button" data-act=(Act::Ready(index)) { (figure(&key.words)) }
                    }
                }
            }
        }
    }
}

/// The strip of a list.
#[must_use]
pub fn walk_readings(list: &ListShown) -> Markup {
    html! {
        div.readings {
            ol.reading-strip aria-label={ (list.label) ", in order" } {
                @for (index, reading) in list.readings.iter().enumerate() { li { (chip(list, index, reading)) } }
            }
            @for (index, reading) in list.readings.iter().enumerate() { (asked(index, reading)) }
        }
    }
}

fn chip(list: &ListShown, index: usize, reading: &ReadingShown) -> Markup {
    let value = if reading.understood.is_empty() { &reading.typed } else { &reading.understood };
    let note = match (&reading.question, reading.can_be_confirmed, reading.confirmed) {
        (Some(_), false, _) => "wrong",
        (Some(_), true, _) => "asked about",
        (None, _, true) => "right",
        (None, _, false) => "",
    };
    html! {
        button
            type="button"
            class={ "reading " (state_class(reading.state)) @if reading.in_hand { " in-hand" } }
            aria-current=[reading.in_hand.then_some("true")]
            data-act=(Act::Reading(list.field, index))
        {
            span.chip-label { (index + 1) span.chip-note { (note) } }
            span.chip-value { (figure(value)) }
        }
    }
}

/// The question under the strip, with what may have been meant; and the key that says the reading is right.
fn asked(index: usize, reading: &ReadingShown) -> Markup {
    html! {
        @if let Some(question) = &reading.question {
            div class={ "reading-asked " (state_class(reading.state)) } {
                p { (figure(question)) }
                @if !reading.perhaps.is_empty() {
                    p.note { (figure(&format!("Perhaps {}.", reading.perhaps.join("; or ")))) }
                }
                @if reading.can_be_confirmed {
                    button.plain type="button" data-act=(Act::Confirm(index)) { "It is right" }
                }
            }
        }
    }
}
