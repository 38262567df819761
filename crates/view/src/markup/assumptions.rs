//! What was assumed, each one tap from being said.

use maud::{Markup, html};

use super::{Act, figure};
use crate::model::FieldId;

/// Assumed values, underlined with dashes.
#[must_use]
pub fn assumptions(assumed: &[(Option<FieldId>, String)]) -> Markup {
    html! {
        @if !assumed.is_empty() {
            section.assumptions {
                h2 { "Assumed" }
                p.note { "Tap one to say what it really is." }
                ul { @for (field, words) in assumed { (line(*field, words)) } }
            }
        }
    }
}

fn line(field: Option<FieldId>, words: &str) -> Markup {
    html! {
        @if let Some(field) = field {
            li { button.assumption type="button" data-act=(Act::Bring(field)) { (figure(words)) } }
        } @else {
            li.assumption.fixed { (figure(words)) }
        }
    }
}
