//! The frame of the title block: whose job, whether it is kept, full sun; between them what the page puts there.

use leptos::prelude::*;

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
pub fn TitleFrame(
    /// The job's name.
    name: Signal<String>,
    /// Whether what is on the screen is kept.
    state: Signal<Kept>,
    /// What stands beside the name.
    children: Children,
) -> impl IntoView {
    let look = expect_context::<Look>();
    let sun = move || look.get() == Theme::Sun;
    view! {
        <header class="title-block">
            <div class="cell job">
                <span class="job-name">{name}</span>
                <span class="kept" class:not-kept=move || state.with(|state| matches!(state, Kept::Not(_))) role="status">
                    {move || state.with(kept)}
                </span>
            </div>
            {children()}
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
