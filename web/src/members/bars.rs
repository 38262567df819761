//! The checks of the chosen size, each as a bar.

use leptos::prelude::*;
use view::model::Bar;

use super::share_bar::ShareBar;
use super::state_class;
use crate::desk::Desk;
use crate::figure::Figure;

/// Governing first.
#[component]
pub fn Bars() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let bars = desk.settled.part(|screen| screen.bars.clone());
    view! {
        <Show when=move || bars.with(|bars| !bars.is_empty())>
            <section class="bars">
                <h2>"How much of it is used"</h2>
                {move || bars.get().into_iter().map(row).collect_view()}
            </section>
        </Show>
    }
}

fn row(bar: Bar) -> impl IntoView {
    let Bar { label, share, percent, detail, state, governs } = bar;
    view! {
        <div class=format!("bar {}", state_class(state)) class:governs=governs>
            <p class="bar-head">
                <strong>{label}{governs.then_some(", governs")}</strong>
                <span class="bar-percent">{percent}</span>
            </p>
            <ShareBar share state />
            <p class="note"><Figure text=detail /></p>
        </div>
    }
}
