//! The line that is typed into, for lengths and for numbers.

use leptos::html::Input;
use leptos::prelude::*;
use view::model::{FieldId, Origin};

use super::pad::Pad;
use crate::browser;

/// Time for a tap to land, milliseconds.
const SETTLE: i32 = 250;

/// The line's id; one line is on the page at a time.
const LINE: &str = "in-hand";

/// Whether a line is typed into: this one, or that of the input that came to hand after it.
fn is_typed_into() -> bool {
    browser::document().and_then(|page| page.active_element()).is_some_and(|active| active.id() == LINE)
}

/// A large line of text with the phone's own digit keys, and a key that clears it.
#[component]
pub fn TypedText(
    /// The inputs.
    pad: Pad,
    /// The one it writes.
    id: FieldId,
    /// Whether the phone shows its letters instead of its digits.
    #[prop(into)]
    letters: Signal<bool>,
    /// The line itself.
    line: NodeRef<Input>,
    /// The unit written after it.
    unit: &'static str,
) -> impl IntoView {
    let typing = pad.typing;
    let typed = move || pad.typed.run(id).unwrap_or_default();
    let shown = pad.follow(id, |field| field.shown.clone());
    let wrong = pad.follow(id, |field| field.problem.is_some());
    let assumed = pad.follow(id, |field| field.origin == Origin::Assumed);
    let bare = move || {
        pad.typed.run(id).is_some_and(|text| !text.contains(|letter: char| letter.is_alphabetic() || letter == '%'))
    };
    let said = Memo::new(move |_| pad.typed.run(id).is_some());
    // The tap that takes the focus away must land before anything moves under it.
    let let_go = move || {
        browser::after(SETTLE, move || {
            if !is_typed_into() {
                let _ = typing.try_set(false);
            }
        });
    };
    // Another input in hand is not being typed into: the page moves now, not under the next tap.
    on_cleanup(move || {
        let _ = typing.try_set(false);
    });
    view! {
        <div class="typed-text" class:assumed=assumed class:wrong=wrong>
            <input
                id=LINE
                node_ref=line
                type="text"
                inputmode=move || if letters.get() { "text" } else { "decimal" }
                enterkeyhint="done"
                autocomplete="off"
                autocapitalize="off"
                spellcheck="false"
                placeholder=shown
                aria-describedby="in-hand-echo"
                aria-invalid=move || wrong.get().to_string()
                prop:value=typed
                on:input:target=move |event| pad.write.run((id, Some(event.target().value())))
                on:focus:target=move |event| {
                    typing.set(true);
                    event.target().select();
                }
                on:blur=move |_| let_go()
                on:keydown:target=move |event| {
                    if event.key() == "Enter" {
                        let _ = event.target().blur();
                        // No tap is under way: what is tapped next is already where it stays.
                        typing.set(false);
                    }
                }
            />
            <span class="unit" aria-hidden="true" hidden=move || unit.is_empty() || !bare()>{unit}</span>
            <button
                type="button"
                class="clear"
                aria-label="Clear"
                hidden=move || !said.get()
                on:pointerdown=|event| event.prevent_default()
                on:click=move |_| pad.write.run((id, None))
            >
                <svg viewBox="0 0 20 20" aria-hidden="true"><path d="M3 3L17 17M17 3L3 17" /></svg>
            </button>
            {pad.beside.map(|beside| beside.run(said))}
        </div>
    }
}
