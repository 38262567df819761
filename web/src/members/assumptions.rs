//! What was assumed, each one tap from being said.

use leptos::prelude::*;
use view::model::FieldId;

use crate::desk::Desk;
use crate::figure::Figure;

/// Assumed values, underlined with dashes.
#[component]
pub fn Assumptions(
    /// Brings an input to hand.
    bring: Callback<FieldId>,
) -> impl IntoView {
    let desk = expect_context::<Desk>();
    let assumed = desk.settled.part(|screen| screen.assumptions.clone());
    let line = move |(field, words): (Option<FieldId>, String)| {
        match field {
        Some(field) => view! {
            <li>
                <button type="button" class="assumption" on:click=move |_| bring.run(field)><Figure text=words /></button>
            </li>
        }
        .into_any(),
        None => view! { <li class="assumption fixed"><Figure text=words /></li> }.into_any(),
    }
    };
    view! {
        <Show when=move || assumed.with(|assumed| !assumed.is_empty())>
            <section class="assumptions">
                <h2>"Assumed"</h2>
                <p class="note">"Tap one to say what it really is."</p>
                <ul>{move || assumed.get().into_iter().map(line).collect_view()}</ul>
            </section>
        </Show>
    }
}
