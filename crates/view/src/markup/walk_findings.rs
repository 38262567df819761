//! What a look found, what can be done, and what follows.

use maud::{Markup, html};

use super::{Act, figure};
use crate::model::FieldId;
use crate::walk::LookScreen;

/// What is still to be answered, each one tap from its input, or from the reading it is about.
#[must_use]
pub fn walk_questions(questions: &[(FieldId, Option<usize>, String)]) -> Markup {
    html! {
        @if !questions.is_empty() {
            section.asked {
                h2 { "Still to be said" }
                @for (field, reading, words) in questions {
                    @let act = reading.map_or(Act::Bring(field), |reading| Act::Reading(field, reading));
                    button.question type="button" data-act=(act) { (figure(words)) }
                }
            }
        }
    }
}

/// What was found in sentences, what could not be seen, and what others decide.
#[must_use]
pub fn walk_findings(screen: &LookScreen) -> Markup {
    html! {
        (sentences("found", "What was found", &screen.says))
        (sentences("not-seen", "Not seen", &screen.not_seen))
        @if !screen.left_to.is_empty() {
            section.left-to {
                h2 { "Not for this tool to decide" }
                ul { @for (subject, who) in &screen.left_to { li { (figure(subject)) ": the " (who) " decides." } } }
            }
        }
    }
}

fn sentences(class: &str, heading: &str, says: &[String]) -> Markup {
    html! {
        @if !says.is_empty() {
            section class=(class) {
                h2 { (heading) }
                ul { @for words in says { li { (figure(words)) } } }
            }
        }
    }
}

/// What can be done, and who must say yes first.
#[must_use]
pub fn walk_remedies(remedies: &[(String, Vec<String>)]) -> Markup {
    html! {
        @if !remedies.is_empty() {
            section.remedies {
                h2 { "What can be done" }
                ul {
                    @for (what, who) in remedies {
                        li {
                            (figure(what))
                            @if !who.is_empty() { span.who { "Who must say yes: " strong { (who.join(", ")) } "." } }
                        }
                    }
                }
            }
        }
    }
}

/// Numbers that follow, and limits to know beside them.
#[must_use]
pub fn walk_facts(facts: &[(String, String, String)]) -> Markup {
    html! {
        @if !facts.is_empty() {
            section.facts {
                h2 #walk-facts { "What follows" }
                table aria-labelledby="walk-facts" {
                    tbody {
                        @for (what, value, source) in facts {
                            tr {
                                th scope="row" {
                                    (figure(what))
                                    @if !source.is_empty() { span.note.clause { (source) } }
                                }
                                td { strong { (figure(value)) } }
                            }
                        }
                    }
                }
            }
        }
    }
}
