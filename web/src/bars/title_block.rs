//! The title block: whose job, whether it is kept, the saved checks, full sun.

use leptos::prelude::*;

use crate::desk::Desk;
use crate::route::{Route, Sheet};
use crate::storage::Kept;
use crate::theme::{Look, Theme};

const fn kept(state: &Kept) -> &'static str {
    match state {
        Kept::Writing => "keeping\u{2026}",
        Kept::Safe => "kept on this phone",
        Kept::Not(_) => "not kept",
    }
}

/// The block at the top of the sheet.
#[component]
pub fn TitleBlock() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let route = expect_context::<Route>();
    let look = expect_context::<Look>();
    let state = desk.keeper.state;
    let saved = move || desk.keeper.job.with(|job| job.headers.len());
    let sun = move || look.get() == Theme::Sun;
    view! {
        <header class="title-block">
            <div class="cell job">
                <span class="job-name">{move || desk.keeper.job.with(|job| job.name.clone())}</span>
                <span class="kept" class:not-kept=move || state.with(|state| matches!(state, Kept::Not(_))) role="status">
                    {move || state.with(kept)}
                </span>
            </div>
            <button type="button" class="cell" aria-haspopup="dialog" on:click=move |_| route.slide_up(Sheet::Saved)>
                "Saved "
                <span class="count">{saved}</span>
            </button>
            <button
                type="button"
                class="cell sun"
                aria-label="Full sun"
                aria-pressed=move || sun().to_string()
                on:click=move |_| look.turn()
            >
                <svg viewBox="0 0 28 28" aria-hidden="true">
                    <circle cx="14" cy="14" r="5.5" />
                    <path d="M14 1V5M14 23V27M1 14H5M23 14H27M4.8 4.8L7.6 7.6M20.4 20.4L23.2 23.2M4.8 23.2L7.6 20.4M20.4 7.6L23.2 4.8" />
                </svg>
            </button>
        </header>
        {move || state.with(|state| match state {
            Kept::Not(problem) => Some(view! { <p class="storage-problem" role="alert">{problem.sentence()}</p> }),
            Kept::Writing | Kept::Safe => None,
        })}
    }
}
