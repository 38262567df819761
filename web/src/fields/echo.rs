//! What was understood, or what is wrong, always in the same place under the input.

use leptos::prelude::*;
use view::markup;
use view::model::FieldId;

use super::pad::Pad;

/// One line under the input in hand.
#[component]
pub fn Echo(
    /// The inputs.
    pad: Pad,
    /// The one in hand.
    id: FieldId,
) -> impl IntoView {
    let line = pad.follow(id, |field| markup::echo(field).into_string());
    view! { <div class="echo" id="in-hand-echo" aria-live="polite" inner_html=line></div> }
}
