//! The look of the sheet.

use leptos::prelude::*;

use crate::theme::{Look, Theme};

/// As the phone, paper, dusk, full sun.
#[component]
pub fn LookChoice() -> impl IntoView {
    let look = expect_context::<Look>();
    let card = move |theme: Theme| {
        view! {
            <label class="option">
                <input
                    type="radio"
                    name="look"
                    value=theme.name()
                    prop:checked=move || look.get() == theme
                    on:change=move |_| look.choose(theme)
                />
                <span>{theme.words()}</span>
            </label>
        }
    };
    view! {
        <section class="group">
            <h2 id="look">"Light"</h2>
            <div class="options" role="radiogroup" aria-labelledby="look">
                {Theme::ALL.map(card).into_iter().collect_view()}
            </div>
        </section>
    }
}
