//! One option of a choice.

use leptos::prelude::*;
use view::model::FieldId;

use super::pad::Pad;

/// A card with a small picture and its words. The one that is only assumed is marked, not chosen: a tap states it.
#[component]
pub fn OptionCard(
    /// The inputs.
    pad: Pad,
    /// The one in hand.
    id: FieldId,
    /// The value that it states.
    value: &'static str,
    /// Its words.
    words: &'static str,
    /// What was typed for the input.
    typed: Memo<Option<String>>,
    /// The value in use, in words.
    shown: Memo<String>,
) -> impl IntoView {
    let chosen = Signal::derive(move || typed.with(|typed| typed.as_deref() == Some(value)));
    let assumed = Signal::derive(move || typed.with(Option::is_none) && shown.with(|shown| shown == words));
    let picture = (pad.pictures)(id, value, words).map(|scene| view::svg::vignette(&scene).into_string());
    view! {
        <label class="option" class:assumed=assumed>
            <input
                type="radio"
                name=id
                value=value
                prop:checked=chosen
                on:click=move |_| pad.write.run((id, Some(value.to_owned())))
            />
            <div class="block" inner_html=picture></div>
            <span>{words}</span>
        </label>
    }
}
