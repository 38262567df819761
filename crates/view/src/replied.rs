//! Parts of a reply as a screen shows them.

use framing::reply::{StepReply, WorkingReply};
use framing::words::figure;

use crate::model::{WorkingPart, WorkingStep};

/// With a true minus before figures.
fn minus(text: &str) -> String {
    let mut written = String::with_capacity(text.len());
    let mut before = ' ';
    for letter in text.chars() {
        written.push(if letter == '-' && !before.is_alphanumeric() && before != '"' { '\u{2212}' } else { letter });
        before = letter;
    }
    written
}

/// A part of a working.
pub(crate) fn working(part: &WorkingReply) -> WorkingPart {
    let step = |step: &StepReply| {
        let value = minus(&figure(step.value));
        let expression = minus(&step.expression);
        WorkingStep {
            symbol: step.symbol.clone(),
            meaning: step.meaning.clone(),
            // What is one number is not written twice.
            expression: if expression == value { String::new() } else { expression },
            value: if step.unit.is_empty() { value } else { format!("{value} {}", step.unit) },
            assumed: step.source == "assumed",
            source: step.source.clone(),
        }
    };
    WorkingPart { heading: part.heading.clone(), steps: part.steps.iter().map(step).collect() }
}
