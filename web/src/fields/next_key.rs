//! On to the next input.

use leptos::prelude::*;

use super::pad::Pad;

/// The key at the lower right of the input in hand, always in the same place.
#[component]
pub fn NextKey(
    /// The inputs.
    pad: Pad,
) -> impl IntoView {
    let label = Signal::derive(move || pad.next_in_words().map(|words| format!("Next: {words}")).unwrap_or_default());
    view! {
        <button type="button" class="key next" aria-label=label on:click=move |_| pad.go_on()>
            <span aria-hidden="true">"Next"</span>
            <svg viewBox="0 0 24 12" class="next-arrow" aria-hidden="true">
                <path d="M1 6H22M16 1L22 6L16 11" />
            </svg>
        </button>
    }
}
