//! A name of one's own.

use leptos::html::Input;
use leptos::prelude::*;
use view::model::FieldId;

use super::echo::Echo;
use super::next_key::NextKey;
use super::pad::Pad;
use super::typed_text::TypedText;

/// The entry of a name.
#[component]
pub fn TextEntry(
    /// The inputs.
    pad: Pad,
    /// The one in hand.
    id: FieldId,
) -> impl IntoView {
    let line = NodeRef::<Input>::new();
    view! {
        <TypedText pad id letters=true line unit="" />
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
