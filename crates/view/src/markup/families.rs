//! Other sizes, by family; tapping one judges it.

use maud::{Markup, html};

use super::{Act, beam, figure, state_class};
use crate::model::{Candidate, Family};

/// What stands over the other sizes of a header, and on the key that finds the least.
pub const OTHER_SIZES: (&str, &str) = ("Other sizes", "Find the smallest instead");

/// What stands over the families of sizes that were tried, with the word of the key that finds the least; `asked` when one
/// of them was asked for.
#[must_use]
pub fn other_sizes(families: &[Family], asked: bool, (heading, instead): (&str, &str)) -> Markup {
    html! {
        @if !families.is_empty() {
            section.other-sizes #sizes {
                h2 { (heading) }
                p.note { "Tap one to judge it." }
                @if asked {
                    button.plain type="button" data-act=(Act::FindSmallest) { (instead) }
                }
            }
        }
    }
}

/// One family, which stays as it is when the size that was asked for is of another.
#[must_use]
pub fn family(family: &Family) -> Markup {
    html! {
        section.family {
            h3 { (family.name) }
            ul.sizes { @for size in &family.sizes { (row(size)) } }
        }
    }
}

/// A size with its verdict.
fn row(size: &Candidate) -> Markup {
    html! {
        li {
            button
                type="button"
                class={ "size " (state_class(size.state)) @if size.chosen { " chosen" } }
                aria-pressed=(size.chosen)
                data-act=(Act::Judge(&size.value))
            {
                (beam(size.state))
                span.size-name { (figure(&size.name)) }
                span.size-note {
                    (figure(&size.note))
                    @if size.smallest { span.smallest { "smallest that works" } }
                }
            }
        }
    }
}
