//! A top plate that was cut for a pipe or a duct, and the tie across it.

use fastening::read_nail;
use inspection::cuts::{CutPlate, PlateIn, TieFound, judge_cut_plate};
use inspection::{Seen, Subject, Verdict};
use measure::{Length, Rounding};
use standards::irc_2021::r602_6_1::TOP_PLATE_TIE;

use super::{Cuts, NotchFoundCase, bearing, input_of};
use crate::walk::answer::Answer;
use crate::walk::reading::{Field, Inputs, could_not_be_seen, typed};
use crate::walk::reply::Foremost;
use crate::walk::words::{self, length};

const OPENING: Field = Field::new("opening", "Opening in the plate", 1.0 / 64.0, 480.0);
const THICKNESS: Field = Field::new("tie_thickness", "Thickness of the tie", 0.01, 0.5);
const WIDTH: Field = Field::new("tie_width", "Width of the tie", 0.25, 12.0);
const PAST: Field = Field::new("tie_past_opening", "Tie past the opening", 0.0, 120.0);
const NAILS: Field = Field::new("tie_nails", "Nails on the side that has fewer", 0.0, 100.0);

pub(super) fn answer(inputs: &mut Inputs, answer: &mut Answer, case: &NotchFoundCase, width: Length, cuts: &Cuts) {
    let plate_in = if bearing(inputs, answer, case) { PlateIn::ExteriorOrBearing } else { PlateIn::Nonbearing };
    let along = inputs.length(&case.opening, &OPENING);
    let tie = tie(inputs, answer, case);
    let both = [cuts.notch_depth, cuts.hole].into_iter().flatten().reduce(|notch, hole| notch + hole);
    let Some(taken) = both.map(|both| both.min(width)) else { return };
    let opening = along.or(cuts.notch_length.observed()).or(cuts.hole).unwrap_or_else(|| {
        let same = length(taken);
        inputs.assume(OPENING.id, format!("Opening along the wall: {same} (as long as it is deep)."));
        taken
    });
    let found = judge_cut_plate(&CutPlate { plate_in, width, taken, opening, tie });
    let share = words::percent(found.share * 100.0);
    let clause = Some(words::published(TOP_PLATE_TIE));
    answer.say(format!("{} of the plate's {} is taken, {share}.", length(taken), length(width)));
    answer.fact("Share of the plate's width that is taken", share.clone(), None);
    answer.fact(
        "The most that may be taken without a tie",
        words::limit_length(found.limit, Rounding::Down),
        clause.clone(),
    );
    if let Some(needed) = found.needed {
        let nails = needed.tie.nails_each_side;
        let over = length(taken - found.limit);
        let foremost = Foremost {
            subject: words::subject(Subject::PlateCut).to_owned(),
            found: share,
            word: words::too(Subject::PlateCut).to_owned(),
            share: Some(taken / found.limit),
        };
        answer.by_how_much(format!("Taken of the plate's width: {over} over what needs no tie"), foremost);
        answer.fact("Least length of the tie", length(needed.length), clause.clone());
        answer.fact("Nails of the tie", format!("{nails} on each side"), clause);
        let older = words::published(needed.older_text);
        let says = "16d nails, and no tie where that side of the wall was sheathed with wood panels";
        answer.fact("An older text of the clause asked for", says, Some(older));
        answer.caution("The clause was changed: the edition in force decides. It counts notches and holes alike.");
        if tie == Seen::NotObserved {
            answer.ask("Is there a metal tie across the cut?", "tie");
        }
    }
    if plate_in == PlateIn::Nonbearing {
        answer.say("The clause does not name nonbearing walls.");
    }
    answer.finding(&found.finding, None, input_of);
}

/// The tie that was found: whole, or what of it is missing is asked.
fn tie(inputs: &mut Inputs, answer: &mut Answer, case: &NotchFoundCase) -> Seen<Option<TieFound>> {
    let thickness = inputs.seen_length(&case.tie_thickness, &THICKNESS);
    let width = inputs.length(&case.tie_width, &WIDTH);
    let past_opening = inputs.length(&case.tie_past_opening, &PAST);
    let nails = inputs.count(&case.tie_nails, &NAILS);
    let nail = nail(inputs, case);
    match typed(&case.tie) {
        Some(text) if could_not_be_seen(text) => return Seen::CouldNotBeSeen,
        _ => {}
    }
    let options = [("yes", true), ("none", false), ("no", false)];
    let begun = width.is_some() || past_opening.is_some() || nails.is_some();
    match inputs.choice(&case.tie, "tie", &options) {
        Some(false) => return Seen::Observed(None),
        None if !begun => return Seen::NotObserved,
        _ => {}
    }
    match (width, past_opening, nails) {
        (Some(width), Some(past_opening), Some(nails)) => {
            let nails_each_side = u8::try_from(nails).unwrap_or(u8::MAX);
            Seen::Observed(Some(TieFound { thickness, width, past_opening, nails_each_side, nail }))
        }
        _ => {
            answer.verdict(Verdict::NotSeen);
            answer.not_seen(Subject::TieWidth, None);
            let asks = "How wide is the tie, how far does it reach past the opening, and how many nails has each side?";
            answer.ask(asks, WIDTH.id);
            Seen::NotObserved
        }
    }
}

fn nail(inputs: &mut Inputs, case: &NotchFoundCase) -> Seen<(Length, Length)> {
    let Some(text) = typed(&case.tie_nail) else { return Seen::NotObserved };
    if could_not_be_seen(text) {
        return Seen::CouldNotBeSeen;
    }
    match read_nail(text) {
        Ok(reading) => {
            inputs.understood("tie_nail", None, text, reading.echo);
            Seen::Observed((reading.nail.diameter(), reading.nail.length()))
        }
        Err(problem) => {
            inputs.refuse("tie_nail", problem.to_string());
            Seen::NotObserved
        }
    }
}
