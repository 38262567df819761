//! The working, as written by hand: one step a line, the clause in the margin.

use maud::{Markup, html};

use super::figure;
use crate::model::{WorkingPart, WorkingStep};

/// All parts of a working.
#[must_use]
pub fn working(parts: &[WorkingPart]) -> Markup {
    html! {
        div.working {
            @for (index, part) in parts.iter().enumerate() {
                section.working-part id={ "working-" (index) } {
                    h3 { (part.heading) }
                    @for one in &part.steps { (step(one)) }
                }
            }
        }
    }
}

fn step(step: &WorkingStep) -> Markup {
    html! {
        div class={ "working-step" @if step.assumed { " assumed" } } {
            p.clause { (step.source) }
            p.meaning { (step.meaning) }
            @if step.expression.is_empty() {
                p.expression { (symbol(&step.symbol)) " = " strong { (figure(&step.value)) } }
            } @else {
                p.expression { (symbol(&step.symbol)) " = " (figure(&step.expression)) }
                p.value { " = " strong { (figure(&step.value)) } }
            }
        }
    }
}

/// `f_b` with its index below the line; what follows the index stays on it: `F_b'`.
fn symbol(symbol: &str) -> Markup {
    let (letter, after) = symbol.split_once('_').unwrap_or((symbol, ""));
    let ends = |letter: char| letter.is_ascii() && !letter.is_ascii_alphanumeric();
    let (index, rest) = after.split_at(after.find(ends).unwrap_or(after.len()));
    html! { span.symbol { (letter) @if !index.is_empty() { sub { (index) } } (rest) } }
}
