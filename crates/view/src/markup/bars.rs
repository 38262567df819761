//! The checks of the chosen size, each as a bar.

use maud::{Markup, html};

use super::{figure, share, state_class};
use crate::model::Bar;

/// Governing first.
#[must_use]
pub fn bars(bars: &[Bar]) -> Markup {
    html! {
        @if !bars.is_empty() {
            section.bars {
                h2 { "How much of it is used" }
                @for bar in bars { (row(bar)) }
            }
        }
    }
}

fn row(bar: &Bar) -> Markup {
    html! {
        div class={ "bar " (state_class(bar.state)) @if bar.governs { " governs" } } {
            p.bar-head {
                strong { (bar.label) @if bar.governs { ", governs" } }
                span.bar-percent { (bar.percent) }
            }
            (share(bar.share, bar.state))
            p.note { (figure(&bar.detail)) }
        }
    }
}
