//! Several lines of text, typed or pasted.

use leptos::prelude::*;
use view::model::FieldId;

use super::echo::Echo;
use super::next_key::NextKey;
use super::pad::Pad;

/// The entry of several lines, as high as a few of them. A table is pasted as it comes.
#[component]
pub fn LinesEntry(
    /// The inputs.
    pad: Pad,
    /// The one in hand.
    id: FieldId,
) -> impl IntoView {
    let typed = move || pad.typed.run(id).unwrap_or_default();
    let wrong = pad.follow(id, |field| field.problem.is_some());
    view! {
        <div class="typed-lines" class:wrong=wrong>
            <textarea
                id="in-hand"
                rows="5"
                wrap="off"
                autocomplete="off"
                autocapitalize="off"
                spellcheck="false"
                aria-describedby="in-hand-echo"
                aria-invalid=move || wrong.get().to_string()
                prop:value=typed
                on:input:target=move |event| pad.write.run((id, Some(event.target().value())))
            ></textarea>
        </div>
        <Echo pad id />
        <div class="pad steps">
            <button
                type="button"
                class="key wide"
                disabled=move || pad.typed.run(id).is_none()
                on:click=move |_| pad.write.run((id, None))
            >
                "Clear"
            </button>
            <NextKey pad />
        </div>
    }
}
