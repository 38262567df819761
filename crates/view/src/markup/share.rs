//! The share of capacity used, with its mark at 100 %.

use maud::{Markup, html};

use super::state_class;
use crate::model::State;

/// Share at which the bar is full; beyond it the bar ends open.
const FULL: f64 = 1.25;

/// A bar that never looks longer than it is: beyond its end it is cut with a slash.
#[must_use]
pub fn share(share: f64, state: State) -> Markup {
    let beyond = share >= FULL;
    let used = (share / FULL).clamp(0.0, 1.0) * 100.0;
    html! {
        div class={ "share " (state_class(state)) @if beyond { " beyond" } } aria-hidden="true" {
            svg.share-used viewBox="0 0 100 1" preserveAspectRatio="none" {
                rect width=(format!("{used:.2}")) height="1" {}
            }
            div.share-mark {}
        }
    }
}
