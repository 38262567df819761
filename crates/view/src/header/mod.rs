//! The header screen: from a header's outcome to what is shown.

mod answer;
mod families;
mod opening;
mod panels;
mod picture;
mod section;

use std::sync::Arc;

use framing::words;
use framing::{HeaderCase, HeaderOutcome, derive_header};
use members::header::{HeaderAnswer, HeaderInput};

use crate::inputs;
use crate::model::{Answer, FieldId, HeaderScreen, State, WorkingPart, WorkingStep};
use crate::scene::Scene;

/// The input whose options are told by small sections of a house.
const PICTURED: FieldId = "carries";

/// Whether the options of an input have pictures.
#[must_use]
fn is_pictured(field: FieldId) -> bool {
    field == PICTURED
}

/// The small picture of an option, said in its words; none for an input whose options are words alone.
#[must_use]
pub fn option_picture(field: FieldId, value: &str, words: &str) -> Option<Scene> {
    if is_pictured(field) { section::picture(value, words) } else { None }
}

/// What the header screen shows for what was typed.
///
/// When an input is wrong the last good screen's answer stays, marked as not current; the inputs are always those of
/// now.
#[must_use]
pub fn screen(case: &HeaderCase, site: &HeaderCase, last_good: Option<&HeaderScreen>) -> HeaderScreen {
    let outcome = derive_header(case, site);
    let fields = Arc::new(inputs::fields(&outcome.reading));
    match &outcome.answered {
        Some((input, answer)) => HeaderScreen { fields, ..answered(&outcome, input, answer) },
        None => {
            let kept = last_good.cloned().unwrap_or_else(nothing_yet);
            HeaderScreen { fields, current: false, ..kept }
        }
    }
}

fn answered(outcome: &HeaderOutcome, input: &HeaderInput, found: &HeaderAnswer) -> HeaderScreen {
    HeaderScreen {
        answer: answer::answer(found),
        current: true,
        picture: picture::picture(input, found),
        fields: Arc::default(),
        questions: words::questions(&outcome.reading, input, found),
        bars: answer::bars(found),
        panels: panels::panels(input, found),
        families: families::families(input, found),
        asked: input.chosen.is_some(),
        cuts: panels::cuts(input, found),
        assumptions: words::assumptions(&outcome.reading, input),
        cautions: words::cautions(input, found),
        working: working(outcome, found),
    }
}

fn working(outcome: &HeaderOutcome, found: &HeaderAnswer) -> Vec<WorkingPart> {
    let step = |step: &members::working::Step| {
        let source = words::basis(step.basis, &outcome.reading);
        let value = members::working::figure(step.value);
        WorkingStep {
            symbol: step.symbol.to_owned(),
            meaning: step.meaning.clone(),
            expression: step.expression.clone(),
            value: if step.unit.is_empty() { value } else { format!("{value} {}", step.unit) },
            assumed: source == "assumed",
            source,
        }
    };
    found
        .working
        .iter()
        .map(|part| WorkingPart { heading: part.heading.clone(), steps: part.steps.iter().map(step).collect() })
        .collect()
}

/// Before anything could be answered.
fn nothing_yet() -> HeaderScreen {
    HeaderScreen {
        answer: Answer {
            state: State::NotKnown,
            figure: "Header".to_owned(),
            word: "still to be said".to_owned(),
            share: None,
            share_text: String::new(),
            action: vec!["Mend what is marked below.".to_owned()],
        },
        current: false,
        picture: picture::empty(),
        fields: Arc::default(),
        questions: Vec::new(),
        bars: Vec::new(),
        panels: Vec::new(),
        families: Vec::new(),
        asked: false,
        cuts: Vec::new(),
        assumptions: Vec::new(),
        cautions: Vec::new(),
        working: Vec::new(),
    }
}
