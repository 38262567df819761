//! A strap: floor to floor, header to stud, across a cut. By its nails, how it lies, and what it is listed for.

use inspection::strap::{FLAT_AND_STRAIGHT, Strap, WEAKER_END, judge_strap};
use inspection::{Seen, Subject};

use super::{ASKED_NAILS, FASTENERS, HoldDownPointCase, connector, input_of};
use crate::walk::answer::Answer;
use crate::walk::reading::Inputs;
use crate::walk::words;

const LIES_FLAT: &str = "lies_flat";

/// What is a strap's alone.
pub(super) fn read(inputs: &mut Inputs, case: &HoldDownPointCase) -> Strap {
    let [uplift, listed] = connector::uplift(inputs, case);
    let lies_flat = inputs.seen_yes(&case.lies_flat, LIES_FLAT);
    Strap { nails: connector::nails(inputs, case), lies_flat, uplift, listed }
}

pub(super) fn answer(inputs: &mut Inputs, answer: &mut Answer, case: &HoldDownPointCase) {
    let strap = read(inputs, case);
    let finding = judge_strap(&strap);
    answer.finding(&finding, None, input_of);
    connector::too_weak(answer, &finding);
    if finding.is_out(Subject::StrapFlat) {
        answer.fact("How a strap lies", "flat and straight", Some(words::published(FLAT_AND_STRAIGHT)));
    }
    let clause = words::published(WEAKER_END);
    answer.fact("Nails that count", "those on the side that has fewer", Some(clause));
    questions(answer, &strap);
    connector::listed_with_every_nail(answer, strap.listed.is_some());
}

fn questions(answer: &mut Answer, strap: &Strap) {
    if strap.nails.required.is_none() {
        answer.ask("How many nails on each side does the drawing or the maker ask for?", ASKED_NAILS.id);
    }
    if strap.nails.found == Seen::NotObserved {
        answer.ask("How many nails are in the side that has fewer?", FASTENERS.id);
    }
    if strap.lies_flat == Seen::NotObserved {
        answer.ask("Does the strap lie flat and straight?", LIES_FLAT);
    }
    match (&strap.uplift, &strap.listed) {
        (Some(_), None) => answer.ask("What does its maker list for the strap, in this wood?", connector::LISTED.id),
        (None, Some(_)) => answer.ask("What uplift does the drawing ask of the strap?", connector::UPLIFT.id),
        _ => {}
    }
}
