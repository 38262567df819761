//! The input in hand, large, in reach of the thumb.

use leptos::prelude::*;
use view::model::{Entry, Origin};

use super::choice_entry::ChoiceEntry;
use super::length_entry::LengthEntry;
use super::lines_entry::LinesEntry;
use super::number_entry::NumberEntry;
use super::pad::Pad;
use super::text_entry::TextEntry;

/// How the input in hand is filled; the options of a choice may change without a new input.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Manner {
    Length,
    Number,
    Choice,
    Text,
    Lines,
}

/// The input in hand with its label and where its value comes from.
#[component]
pub fn Hand(
    /// The inputs.
    pad: Pad,
) -> impl IntoView {
    let manner = Memo::new(move |_| {
        let id = pad.hand.get();
        pad.look(id, |field| {
            let manner = match field.entry {
                Entry::Length { .. } => Manner::Length,
                Entry::Number { .. } => Manner::Number,
                Entry::Text => Manner::Text,
                Entry::Lines => Manner::Lines,
                Entry::Choice(_) => Manner::Choice,
            };
            Some((id, field.label, manner))
        })
    });
    view! {
        <section class="hand" aria-label="Input in hand">
            {move || {
                manner
                    .get()
                    .map(|(id, label, manner)| {
                        let origin = pad.follow(id, |field| words_for(field.origin));
                        let entry = match manner {
                            Manner::Length => view! { <LengthEntry pad id /> }.into_any(),
                            Manner::Number => view! { <NumberEntry pad id /> }.into_any(),
                            Manner::Text => view! { <TextEntry pad id /> }.into_any(),
                            Manner::Lines => view! { <LinesEntry pad id /> }.into_any(),
                            Manner::Choice => view! { <ChoiceEntry pad id label /> }.into_any(),
                        };
                        view! {
                            <div class="hand-head">
                                <label for="in-hand" id="in-hand-label">{label}</label>
                                <span class="origin">{origin}</span>
                            </div>
                            {entry}
                        }
                    })
            }}
        </section>
    }
}

const fn words_for(origin: Origin) -> &'static str {
    match origin {
        Origin::Typed => "",
        Origin::Site => "kept with the job",
        Origin::Assumed => "assumed",
        Origin::Unknown => "not said",
    }
}
