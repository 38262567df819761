//! One option of a choice.

use leptos::prelude::*;
use view::model::{ChoiceOption, FieldId};

use crate::desk::Pad;
use crate::drawing::Vignette;

/// A card with a small picture and its words. The one that is only assumed is marked, not chosen: a tap states it.
#[component]
pub fn OptionCard(
    /// The inputs.
    pad: Pad,
    /// The one in hand.
    id: FieldId,
    /// The option.
    option: ChoiceOption,
    /// What was typed for the input.
    typed: Memo<Option<String>>,
    /// The value in use, in words.
    shown: Memo<String>,
) -> impl IntoView {
    let ChoiceOption { value, label, picture } = option;
    let words = label.clone();
    let chosen = move || typed.with(|typed| typed.as_deref() == Some(value));
    let assumed = move || typed.with(Option::is_none) && shown.with(|shown| *shown == words);
    view! {
        <label class="option" class:assumed=assumed>
            <input
                type="radio"
                name=id
                value=value
                prop:checked=chosen
                on:click=move |_| pad.write.run((id, Some(value.to_owned())))
            />
            {picture.map(|scene| view! { <Vignette scene /> })}
            <span>{label}</span>
        </label>
    }
}
