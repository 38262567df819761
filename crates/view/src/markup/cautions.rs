//! The usual cautions.

use maud::{Markup, html};

/// Who decides.
#[must_use]
pub fn cautions(cautions: &[String]) -> Markup {
    html! {
        @if !cautions.is_empty() {
            section.cautions {
                h2 { "Cautions" }
                ul { @for words in cautions { li { (words) } } }
            }
        }
    }
}
