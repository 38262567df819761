//! Other sizes, by family; tapping one judges it.

use leptos::prelude::*;

use super::candidate_row::CandidateRow;
use crate::desk::Desk;

/// The input that holds the size to judge.
const SIZE: &str = "size";

/// All sizes that were tried.
#[component]
pub fn Families() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let families = desk.settled.part(|screen| screen.families.clone());
    let judge = Callback::new(move |size: Option<String>| desk.write(SIZE, size));
    let asked = Memo::new(move |_| desk.case.with(|case| case.get(SIZE).is_some()));
    view! {
        <Show when=move || families.with(|families| !families.is_empty())>
            <section class="families" id="sizes">
                <h2>"Other sizes"</h2>
                <p class="note">"Tap one to judge it."</p>
                <Show when=move || asked.get()>
                    <button type="button" class="plain" on:click=move |_| judge.run(None)>"Find the smallest instead"</button>
                </Show>
                {move || {
                    families
                        .get()
                        .into_iter()
                        .map(|family| {
                            let sizes = family.sizes.into_iter();
                            view! {
                                <h3>{family.name}</h3>
                                <ul class="sizes">{sizes.map(|size| view! { <CandidateRow size judge /> }).collect_view()}</ul>
                            }
                        })
                        .collect_view()
                }}
            </section>
        </Show>
    }
}
