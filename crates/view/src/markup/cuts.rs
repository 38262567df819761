//! What to cut.

use maud::{Markup, html};

use super::figure_said;
use crate::model::Cut;

/// The cut list.
#[must_use]
pub fn cuts(cuts: &[Cut]) -> Markup {
    html! {
        @if !cuts.is_empty() {
            section.cuts {
                h2 #cut-list { "Cut list" }
                table aria-labelledby="cut-list" {
                    thead { tr { th scope="col" { "No." } th scope="col" { "Piece" } th scope="col" { "Length" } } }
                    tbody { @for cut in cuts { (row(cut)) } }
                }
            }
        }
    }
}

fn row(cut: &Cut) -> Markup {
    html! {
        tr {
            td.cut-count { (cut.count) }
            td { strong { (cut.piece) } span.note { (cut.note) } }
            td.cut-length { (figure_said(&cut.length, &cut.spoken)) }
        }
    }
}
