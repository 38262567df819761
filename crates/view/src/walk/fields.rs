//! The inputs as the screen shows them.

use framing::reply::{AssumedReply, Refusal};
use framing::walk::{could_not_be_seen, which_reading, words};
use measure::{LengthUnit, read_length, read_number};

use super::spec::{HIDDEN, Spec};
use super::typed::{InHand, Typed};
use crate::model::{Entry, Field, Origin};

/// What the core said of the inputs.
pub(super) struct Said<'a> {
    pub(super) assumed: &'a [AssumedReply],
    pub(super) refused: &'a [Refusal],
}

impl<'a> Said<'a> {
    /// What is wrong with an input; of a list, with one reading (from 0) or with all of it.
    pub(super) fn problem(&self, id: &str, reading: Option<usize>) -> Option<&'a str> {
        let of_input = self.refused.iter().filter(|refusal| refusal.field == id);
        let mut numbered = of_input.map(|refusal| which_reading(&refusal.problem));
        numbered.find(|(which, _)| which.map(|number| number - 1) == reading).map(|(_, problem)| problem)
    }

    /// The value that was assumed for an input: `16"` of `Required spacing: 16" (the common one).`
    pub(super) fn assumed(&self, id: &str) -> Option<&'a str> {
        let said = self.assumed.iter().find(|assumed| assumed.input.as_deref() == Some(id))?;
        let value = said.says.split_once(": ").map_or(said.says.as_str(), |(_, value)| value);
        Some(value.split_once(" (").map_or(value, |(value, _)| value).trim_end_matches('.'))
    }
}

/// The inputs that matter, in the order they are asked.
pub(super) fn fields(specs: &[Spec], typed: &Typed, hand: InHand, said: &Said<'_>) -> Vec<Field> {
    let shown = specs.iter().filter(|spec| spec.is_shown(typed) || spec.id == hand.field);
    shown.map(|spec| field(spec, typed, hand, said)).collect()
}

fn field(spec: &Spec, typed: &Typed, hand: InHand, said: &Said<'_>) -> Field {
    let list = typed.list(spec.id);
    let reading = if spec.id == hand.field { hand.reading } else { list.len().saturating_sub(1) };
    let text = match spec.many {
        true => list.get(reading).map_or("", |text| text.trim()),
        false => typed.text(spec.id),
    };
    let problem = match spec.many {
        true => said.problem(spec.id, Some(reading)).or_else(|| said.problem(spec.id, None)),
        false => said.problem(spec.id, None),
    };
    let assumed = said.assumed(spec.id).filter(|_| text.is_empty() && list.is_empty());
    let value = if text.is_empty() { assumed.unwrap_or_default() } else { text };
    let (shown, echo, number) = understood(spec, value);
    Field {
        id: spec.id,
        label: spec.label,
        help: spec.help,
        entry: spec.entry.clone(),
        text: text.to_owned(),
        shown,
        echo: if text.is_empty() { String::new() } else { echo },
        number,
        origin: match (text.is_empty(), assumed) {
            (false, _) => Origin::Typed,
            (true, Some(_)) => Origin::Assumed,
            (true, None) => Origin::Unknown,
        },
        problem: problem.map(str::to_owned),
        group: spec.group,
    }
}

/// A text in words, its echo, and its number in the field's base unit.
pub(super) fn understood(spec: &Spec, text: &str) -> (String, String, Option<f64>) {
    if text.is_empty() {
        return (String::new(), String::new(), None);
    }
    if could_not_be_seen(text) {
        return (HIDDEN.1.to_owned(), HIDDEN.1.to_owned(), None);
    }
    match spec.entry {
        Entry::Length { .. } => match read_length(text, LengthUnit::Inches) {
            Ok(read) => (words::length(read.length), read.echo, Some(read.length.inches())),
            Err(_) => (text.to_owned(), String::new(), None),
        },
        Entry::Number { unit } => {
            let number = read_number(text, &[unit][usize::from(unit.is_empty())..]).ok();
            (text.to_owned(), number.map(|number| number.to_string()).unwrap_or_default(), number)
        }
        Entry::Choice(_) => (spec.words(text).to_owned(), spec.words(text).to_owned(), None),
        Entry::Text | Entry::Lines => (text.to_owned(), text.to_owned(), None),
    }
}
