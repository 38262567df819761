//! One of a few, each a card to tap.

use leptos::prelude::*;
use view::model::{Entry, FieldId};

use super::echo::Echo;
use super::next_key::NextKey;
use super::option_card::OptionCard;
use super::pad::Pad;

/// The entry of a choice.
#[component]
pub fn ChoiceEntry(
    /// The inputs.
    pad: Pad,
    /// The one in hand.
    id: FieldId,
    /// Its label.
    label: &'static str,
) -> impl IntoView {
    let options = untrack(move || {
        pad.look(id, |field| match field.entry {
            Entry::Choice(options) => options,
            _ => &[],
        })
    });
    let pictured = options.iter().any(|(value, words)| (pad.pictures)(id, value, words).is_some());
    let shown = pad.follow(id, |field| field.shown.clone());
    let typed = Memo::new(move |_| pad.typed.run(id));
    view! {
        <Echo pad id />
        <div class="options" class:pictured=pictured role="radiogroup" aria-label=label>
            {options.iter().map(|(value, words)| view! { <OptionCard pad id value words typed shown /> }).collect_view()}
        </div>
        <div class="pad steps">
            <button
                type="button"
                class="key wide"
                disabled=move || typed.with(Option::is_none)
                on:click=move |_| pad.write.run((id, None))
            >
                "Clear"
            </button>
            <NextKey pad />
        </div>
    }
}
