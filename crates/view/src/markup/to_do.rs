//! What is still to be said, and what to do.

use maud::{Markup, html};

use super::{Act, figure};
use crate::model::FieldId;

/// Questions first, each one tap from its input; then the sentences that tell what to do.
#[must_use]
pub fn to_do(questions: &[(FieldId, String)], action: &[String]) -> Markup {
    html! {
        @if !questions.is_empty() {
            section.asked {
                h2 { "Still to be said" }
                @for (field, words) in questions {
                    button.question type="button" data-act=(Act::Bring(field)) { (words) }
                }
            }
        }
        @if !action.is_empty() {
            section.to-do {
                h2 { "What to do" }
                ul { @for words in action { li { (words) } } }
            }
        }
    }
}

/// What is to be known, in sentences.
#[must_use]
pub fn known(sentences: &[String]) -> Markup {
    html! {
        @if !sentences.is_empty() {
            section.to-do.known {
                h2 { "What to know" }
                ul { @for words in sentences { li { (figure(words)) } } }
            }
        }
    }
}
