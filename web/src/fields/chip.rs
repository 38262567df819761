//! An input that is not in hand: its label and its value, one tap away.

use leptos::prelude::*;
use view::model::{Field, FieldId, Origin};

use crate::desk::Pad;
use crate::figure::Figure;

/// What a chip says.
#[derive(Clone, Debug, Default, PartialEq)]
struct Face {
    value: String,
    class: &'static str,
    note: &'static str,
}

fn face(field: &Field, typed: Option<String>) -> Face {
    let face = |value: String, class, note| Face { value, class, note };
    if field.problem.is_some() {
        return face(typed.unwrap_or_default(), "chip wrong", "wrong");
    }
    match field.origin {
        Origin::Typed => face(field.shown.clone(), "chip", ""),
        Origin::Site => face(field.shown.clone(), "chip", "job"),
        Origin::Assumed => face(field.shown.clone(), "chip assumed", ""),
        Origin::Unknown => face("not said".to_owned(), "chip unknown", ""),
    }
}

/// A button that brings the input to hand.
#[component]
pub fn Chip(
    /// The inputs.
    pad: Pad,
    /// The one it stands for.
    id: FieldId,
) -> impl IntoView {
    let label = untrack(move || pad.look(id, |field| field.label));
    let face = Memo::new(move |_| pad.look(id, |field| face(field, pad.typed.run(id))));
    let value = Memo::new(move |_| face.with(|face| face.value.clone()));
    let spoken = move || if face.with(|face| face.class == "chip assumed") { ", assumed" } else { "" };
    let in_hand = Memo::new(move |_| pad.hand.get() == id);
    view! {
        <button
            type="button"
            class=move || face.with(|face| face.class)
            class:in-hand=in_hand
            aria-current=move || in_hand.get().then_some("true")
            on:click=move |_| pad.bring.run(id)
        >
            <span class="chip-label">{label}<span class="chip-note">{move || face.with(|face| face.note)}</span></span>
            <span class="chip-value"><Figure text=value /><span class="said">{spoken}</span></span>
        </button>
    }
}
