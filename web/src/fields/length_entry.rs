//! A length: a line to type into, and below it the tape or, while typing, the carpenter's keys.

use leptos::html::Input;
use leptos::prelude::*;
use view::markup;
use view::model::{Entry, FieldId};

use super::echo::Echo;
use super::keys::Keys;
use super::next_key::NextKey;
use super::pad::Pad;
use super::sixteenths;
use super::tape::Tape;
use super::typed_text::TypedText;

/// Steps of the keys below the tape, in sixteenths of an inch, with their words.
const STEPS: [(i32, &str, &str); 4] = [
    (-16, "\u{2212}1\"", "One inch less"),
    (-1, "\u{2212}1/16", "One sixteenth less"),
    (1, "+1/16", "One sixteenth more"),
    (16, "+1\"", "One inch more"),
];

fn face(words: &str, said: &str) -> String {
    markup::figure_said(words, said).into_string()
}

/// The entry of a length.
#[component]
pub fn LengthEntry(
    /// The inputs.
    pad: Pad,
    /// The one in hand.
    id: FieldId,
) -> impl IntoView {
    let typing = pad.typing;
    let letters = RwSignal::new(false);
    let line = NodeRef::<Input>::new();
    let inches = pad.follow(id, |field| field.number);
    let ends = untrack(move || {
        pad.look(id, |field| match field.entry {
            Entry::Length { least, most } => (least, most),
            _ => (0.0, 0.0),
        })
    });
    let label = untrack(move || pad.look(id, |field| field.label));
    let set = Callback::new(move |marks: i32| pad.write.run((id, Some(sixteenths::written(marks, ends)))));
    let at = move || sixteenths::nearest(inches.get_untracked().unwrap_or(ends.0));
    view! {
        <TypedText pad id letters line unit="" />
        <Echo pad id />
        <div class="pad">
            <Show
                when=move || typing.get()
                fallback=move || {
                    view! {
                        <Tape inches ends set label />
                        {STEPS
                            .map(|(step, words, said)| {
                                view! {
                                    <button type="button" class="key" on:click=move |_| set.run(at() + step) inner_html=face(words, said)></button>
                                }
                            })
                            .into_iter()
                            .collect_view()}
                        <NextKey pad />
                    }
                }
            >
                <Keys pad id line letters inches set />
            </Show>
        </div>
    }
}
