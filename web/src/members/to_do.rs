//! What is still to be said, and what to do.

use leptos::prelude::*;
use view::model::FieldId;

use crate::desk::Desk;

/// Questions first, each one tap from its input; then the sentences that tell what to do.
#[component]
pub fn ToDo(
    /// Brings an input to hand.
    bring: Callback<FieldId>,
) -> impl IntoView {
    let desk = expect_context::<Desk>();
    let questions = desk.settled.part(|screen| screen.questions.clone());
    let action = desk.settled.part(|screen| screen.answer.action.clone());
    view! {
        <Show when=move || questions.with(|questions| !questions.is_empty())>
            <section class="asked">
                <h2>"Still to be said"</h2>
                {move || {
                    let asked = questions.get().into_iter();
                    asked
                        .map(|(field, words)| {
                            view! { <button type="button" class="question" on:click=move |_| bring.run(field)>{words}</button> }
                        })
                        .collect_view()
                }}
            </section>
        </Show>
        <Show when=move || action.with(|action| !action.is_empty())>
            <section class="to-do">
                <h2>"What to do"</h2>
                <ul>{move || action.get().into_iter().map(|words| view! { <li>{words}</li> }).collect_view()}</ul>
            </section>
        </Show>
    }
}
