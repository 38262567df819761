//! What was compared with a limit on a walk.

use maud::{Markup, html};

use super::{beam, figure, state_class};
use crate::walk::WalkCheckShown;

/// Each value beside its limit, those that are out first.
#[must_use]
pub fn walk_checks(checks: &[WalkCheckShown]) -> Markup {
    html! {
        @if !checks.is_empty() {
            section.walk-checks {
                h2 #walk-checks { "Measured and judged" }
                table aria-labelledby="walk-checks" {
                    thead {
                        tr {
                            th scope="col" { "What" }
                            th scope="col" { "Found" }
                            th scope="col" { "Limit" }
                            th scope="col" { "Margin" }
                            th scope="col" { "It is" }
                        }
                    }
                    tbody { @for check in checks { (row(check)) } }
                }
            }
        }
    }
}

fn row(check: &WalkCheckShown) -> Markup {
    html! {
        tr class=(state_class(check.state)) {
            th scope="row" {
                (figure(&check.subject))
                @if let Some(at) = &check.at { span.note { (figure(at)) } }
            }
            td.check-found { strong { (figure(&check.found)) } }
            td.check-limit { (figure(&check.limit)) span.note.clause { (check.clause) } }
            td.check-margin { (figure(&check.margin)) }
            td.check-state { (beam(check.state)) span.check-word { (check.word) } }
        }
    }
}
