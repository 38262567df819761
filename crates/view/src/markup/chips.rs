//! Inputs that are not in hand: label and value, one tap away.

use maud::{Markup, html};

use super::{Act, figure};
use crate::model::{Field, FieldId, Origin};

/// The chips of some inputs; the one in hand is marked.
#[must_use]
pub fn chips<'a>(fields: impl Iterator<Item = &'a Field>, hand: FieldId) -> Markup {
    html! { div.chips { @for field in fields { (chip(field, field.id == hand)) } } }
}

fn chip(field: &Field, in_hand: bool) -> Markup {
    let (value, class, note) = face(field);
    html! {
        button
            type="button"
            class={ (class) @if in_hand { " in-hand" } }
            aria-current=[in_hand.then_some("true")]
            data-act=(Act::Bring(field.id))
        {
            span.chip-label { (field.label) span.chip-note { (note) } }
            span.chip-value {
                (figure(value))
                @if field.problem.is_none() && field.origin == Origin::Assumed { span.said { ", assumed" } }
            }
        }
    }
}

/// What it says, its class, and a note beside its label.
fn face(field: &Field) -> (&str, &'static str, &'static str) {
    if field.problem.is_some() {
        return (&field.text, "chip wrong", "wrong");
    }
    match field.origin {
        Origin::Typed => (&field.shown, "chip", ""),
        Origin::Site => (&field.shown, "chip", "job"),
        Origin::Assumed => (&field.shown, "chip assumed", ""),
        Origin::Unknown => ("not said", "chip unknown", ""),
    }
}
