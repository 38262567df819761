//! Jacks, kings, the code table, the fit: each with an answer of its own.

use leptos::prelude::*;
use view::model::Panel;

use super::state_class;
use super::verdict_beam::VerdictBeam;
use crate::desk::Desk;
use crate::figure::Figure;

/// In the order of the screen.
#[component]
pub fn Panels() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let panels = desk.settled.part(|screen| screen.panels.clone());
    view! { <div class="panels">{move || panels.get().into_iter().map(panel).collect_view()}</div> }
}

fn panel(panel: Panel) -> impl IntoView {
    let Panel { heading, state, figure, lines } = panel;
    view! {
        <section class=format!("panel {}", state_class(state))>
            <h2>{heading}</h2>
            <p class="panel-figure"><Figure text=figure /></p>
            <VerdictBeam state />
            {lines.into_iter().map(|line| view! { <p class="panel-line"><Figure text=line /></p> }).collect_view()}
        </section>
    }
}
