//! The title block of the page, and the head of each part of the walk with its way back.

use leptos::prelude::*;

use super::book::Book;
use super::way::{Spot, Way};
use crate::bars::TitleFrame;

/// The block at the top of the sheet.
#[component]
pub fn TitleBlock() -> impl IntoView {
    let book = expect_context::<Book>();
    let way = expect_context::<Way>();
    let name = Signal::derive(move || book.job.with(|job| job.name.clone()));
    view! {
        <TitleFrame name state=book.state.into()>
            <button type="button" class="cell" on:click=move |_| way.go(&Spot::Walks)>
                "Walks "
                <span class="count">{move || book.walks().len()}</span>
            </button>
        </TitleFrame>
    }
}

/// The heading of a part of the walk, and the way back to what it belongs to.
#[component]
pub fn Head(
    /// The heading.
    #[prop(into)]
    words: Signal<String>,
    /// Where back leads.
    back: Spot,
    /// Where back leads, in words.
    #[prop(into)]
    back_words: String,
) -> impl IntoView {
    let way = expect_context::<Way>();
    let said = format!("Back to {back_words}");
    view! {
        <div class="walk-head">
            <button type="button" class="key back" aria-label=said on:click=move |_| way.go_instead(&back)>
                <svg viewBox="0 0 24 24" aria-hidden="true"><path d="M15 4L7 12L15 20" /></svg>
                <span>{back_words}</span>
            </button>
            <h1>{words}</h1>
        </div>
    }
}
