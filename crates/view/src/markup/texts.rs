//! Lines of text to be copied, as they stand: a touch selects all of them.

use maud::{Markup, html};

/// Each text under its heading.
#[must_use]
pub fn texts(texts: &[(String, String)]) -> Markup {
    html! {
        @for (heading, text) in texts {
            section.results {
                h2 { (heading) }
                pre.to-copy tabindex="0" aria-label=(heading) { (text) }
            }
        }
    }
}
