//! The title block of the checks: whose job, whether it is kept, the saved checks.

use leptos::prelude::*;

use super::title_frame::TitleFrame;
use crate::desk::Desk;
use crate::route::{Route, Sheet};

/// The block at the top of the sheet.
#[component]
pub fn TitleBlock() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let route = expect_context::<Route>();
    let name = Signal::derive(move || desk.keeper.job.with(|job| job.name.clone()));
    let saved = move || desk.keeper.job.with(|job| job.headers.len());
    view! {
        <TitleFrame name state=desk.keeper.state.into()>
            <button type="button" class="cell" aria-haspopup="dialog" on:click=move |_| route.slide_up(Sheet::Saved)>
                "Saved "
                <span class="count">{saved}</span>
            </button>
        </TitleFrame>
    }
}
