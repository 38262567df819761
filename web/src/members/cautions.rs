//! The usual cautions.

use leptos::prelude::*;

use crate::desk::Desk;

/// Who decides.
#[component]
pub fn Cautions() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let cautions = desk.settled.part(|screen| screen.cautions.clone());
    view! {
        <Show when=move || cautions.with(|cautions| !cautions.is_empty())>
            <section class="cautions">
                <h2>"Cautions"</h2>
                <ul>{move || cautions.get().into_iter().map(|words| view! { <li>{words}</li> }).collect_view()}</ul>
            </section>
        </Show>
    }
}
