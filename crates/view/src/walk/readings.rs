//! Lists with their readings: each as typed, as understood, and what is asked about it.

use framing::walk::reply::WalkQuestion;

use super::fields::{Said, understood};
use super::screen::{ListShown, ReadingShown};
use super::spec::Spec;
use super::typed::{InHand, Typed};
use super::typing::confirmation;
use crate::model::State;

/// Pulls that were said to be right stand in a list of their own, by their numbers.
const CAN_BE_CONFIRMED: &str = "pulls";
const CONFIRMED: &str = "confirmed";

/// Every list with readings, but the one that only says which pulls are right.
pub(super) fn readings(
    specs: &[Spec],
    typed: &Typed,
    hand: InHand,
    said: &Said<'_>,
    questions: &[WalkQuestion],
) -> Vec<ListShown> {
    let lists = specs.iter().filter(|spec| spec.many && spec.id != CONFIRMED && !typed.list(spec.id).is_empty());
    let list = |spec: &Spec| ListShown {
        field: spec.id,
        label: spec.label,
        readings: typed
            .list(spec.id)
            .iter()
            .enumerate()
            .map(|(index, text)| reading(spec, (index, text.trim()), typed, hand, said, questions))
            .collect(),
    };
    lists.map(list).collect()
}

fn reading(
    spec: &Spec,
    (index, text): (usize, &str),
    typed: &Typed,
    hand: InHand,
    said: &Said<'_>,
    questions: &[WalkQuestion],
) -> ReadingShown {
    let problem = said.problem(spec.id, Some(index));
    let asked = questions
        .iter()
        .find(|question| question.input.as_deref() == Some(spec.id) && question.which == Some(index + 1));
    let (number, confirmation) = ((index + 1).to_string(), confirmation(index, text));
    ReadingShown {
        typed: text.to_owned(),
        understood: if problem.is_some() { String::new() } else { understood(spec, text).0 },
        state: match (problem, asked) {
            (Some(_), _) => State::Short,
            (None, Some(_)) => State::NotKnown,
            (None, None) => State::Carries,
        },
        question: problem.map(str::to_owned).or_else(|| asked.map(|question| question.asks.clone())),
        perhaps: asked.map(|question| question.perhaps.clone()).unwrap_or_default(),
        can_be_confirmed: asked.is_some() && spec.id == CAN_BE_CONFIRMED,
        confirmed: spec.id == CAN_BE_CONFIRMED
            && typed.list(CONFIRMED).iter().any(|said| said.trim() == number || *said == confirmation),
        in_hand: hand.field == spec.id && hand.reading == index,
    }
}
