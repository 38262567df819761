//! The share of capacity used, with its mark at 100 %.

use leptos::prelude::*;
use view::model::State;

use super::state_class;

/// Share at which the bar is full; beyond it the bar ends open.
const FULL: f64 = 1.25;

/// A bar that never looks longer than it is: beyond its end it is cut with a slash.
#[component]
pub fn ShareBar(
    /// The share, 1 at the limit.
    share: f64,
    /// Its state.
    state: State,
) -> impl IntoView {
    let width = format!("{:.2}%", (share / FULL).clamp(0.0, 1.0) * 100.0);
    let beyond = share >= FULL;
    view! {
        <div class=format!("share {}", state_class(state)) class:beyond=beyond aria-hidden="true">
            <div class="share-used" style:width=width></div>
            <div class="share-mark"></div>
        </div>
    }
}
