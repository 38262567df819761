//! The saved checks.

use leptos::prelude::*;

use super::saved_row::SavedRow;
use super::slide_up::SlideUp;
use crate::desk::Desk;
use crate::route::{Route, Sheet};
use crate::storage::whether_lasting;

/// The list, latest first, and a key for a new check.
#[component]
pub fn SavedSheet() -> impl IntoView {
    view! { <SlideUp sheet=Sheet::Saved heading="Saved checks"><List /></SlideUp> }
}

#[component]
fn List() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let route = expect_context::<Route>();
    let lasting = LocalResource::new(whether_lasting);
    let headers = Memo::new(move |_| desk.keeper.job.with(|job| job.headers.iter().rev().cloned().collect::<Vec<_>>()));
    view! {
        <button
            type="button"
            class="key"
            on:click=move |_| {
                desk.start_new();
                route.slide_down();
            }
        >
            "New check"
        </button>
        <Show
            when=move || headers.with(|headers| !headers.is_empty())
            fallback=|| view! { <p>"Nothing is saved yet. Save puts the check and its answer here."</p> }
        >
            <ul class="saved">
                <For each=move || headers.get() key=|header| (header.id.clone(), header.saved_at.clone()) let:header>
                    <SavedRow header />
                </For>
            </ul>
            <p class="note">{move || lasting.get().map(|lasting| lasting.sentence())}</p>
        </Show>
    }
}
