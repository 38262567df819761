//! What holds rafter or truss to the wall, and where the uplift goes from there.

use inspection::strap::Nails;
use inspection::uplift_tie::{Held, PathLink, RoofToWall, Side, TIE_ON_SHEATHED_SIDE, TieAnswer, judge_roof_to_wall};
use inspection::{Check, Remedy, Seen};
use measure::Length;

use super::{HoldDownPointCase, connector, input_of};
use crate::walk::answer::Answer;
use crate::walk::reading::{Field, Inputs, typed};
use crate::walk::words;

const HELD_BY: &str = "held_by";
const TIE_SIDE: &str = "tie_side";
const SPACING: Field = Field::new("tie_spacing", "Spacing of the connections", 4.0, 144.0);

/// What holds it, as it is typed.
#[derive(Clone, Copy)]
enum HeldBy {
    Tie,
    ToeNails,
}

/// What is a connection's alone. Where the number of walls above was left out, none is counted.
pub(super) fn read(inputs: &mut Inputs, case: &HoldDownPointCase) -> RoofToWall {
    let [uplift, listed] = connector::uplift(inputs, case);
    let side = inputs.seen_choice(&case.tie_side, TIE_SIDE, &[("sheathed", Side::Sheathed), ("inside", Side::Inside)]);
    let held = [("tie", HeldBy::Tie), ("toe_nails", HeldBy::ToeNails)];
    let held = inputs.seen_choice(&case.held_by, HELD_BY, &held).map(|held| match held {
        HeldBy::Tie => Held::Tie { side, listed },
        HeldBy::ToeNails => Held::ToeNails,
    });
    let walls = [("0", 0), ("1", 1), ("2", 2)];
    let says = "Full walls above: 0 (the careful side: each one above holds this one down).";
    RoofToWall {
        uplift,
        spacing: inputs.length(&case.tie_spacing, &SPACING).unwrap_or(Length::ZERO),
        full_walls_above: inputs.choice_or(&case.full_walls_above, "full_walls_above", &walls, 0, says),
        held,
        nails: connector::nails(inputs, case),
    }
}

pub(super) fn answer(inputs: &mut Inputs, answer: &mut Answer, case: &HoldDownPointCase) {
    let connection = read(inputs, case);
    let TieAnswer { finding, wall_top, path } = judge_roof_to_wall(&connection);
    answer.finding(&finding, None, input_of);
    connector::too_weak(answer, &finding);
    if finding.remedies.contains(&Remedy::TieOnSheathedSide) {
        let clause = words::published(TIE_ON_SHEATHED_SIDE);
        answer.say("A tie inside the wall rolls the plate, and the sheathing takes no part of the uplift.");
        answer.fact("Where the tie goes", "on the sheathed side", Some(clause));
    }
    questions(answer, case, &connection);
    if let Some(check) = wall_top {
        at_wall_top(answer, &check, &path);
    }
}

/// What is still to be found before it is judged whole.
fn questions(answer: &mut Answer, case: &HoldDownPointCase, connection: &RoofToWall) {
    match &connection.held {
        Seen::NotObserved => answer.ask("Is it held by a metal tie, or by toe nails alone?", HELD_BY),
        Seen::Observed(Held::Tie { listed, .. }) => {
            if listed.is_none() {
                answer.ask("What does its maker list for the tie, in this wood?", connector::LISTED.id);
            }
            connector::listed_with_every_nail(answer, listed.is_some());
        }
        Seen::Observed(Held::ToeNails) | Seen::CouldNotBeSeen => {}
    }
    if typed(&case.tie_spacing).is_none() {
        answer.ask("How far apart are the connections along the wall?", SPACING.id);
    }
    let Nails { required, found } = &connection.nails;
    match (required, found) {
        (Some(_), Seen::NotObserved) => answer.ask("How many nails hold it?", super::FASTENERS.id),
        (None, Seen::Observed(_)) => answer.ask("How many nails are asked for?", super::ASKED_NAILS.id),
        _ => {}
    }
}

/// It is no fault of the connection where the uplift goes on down: said, and never among the checks.
fn at_wall_top(answer: &mut Answer, check: &Check, path: &[PathLink]) {
    let said = words::check(check, None);
    answer.fact(said.subject, format!("{}, {} by the panels' nails alone", said.found, said.limit), Some(said.clause));
    if path.is_empty() {
        answer.say(format!("At the wall's top {} is left: the panels' nails are path enough.", said.found));
        return;
    }
    answer.say(format!("At the wall's top {} is left: the uplift goes on down. Look at each link.", said.found));
    for link in path {
        answer.say(looks_at(*link));
    }
}

const fn looks_at(link: PathLink) -> &'static str {
    match link {
        PathLink::PlateToStud => "Look at the top plate to the stud, on the side of the tie.",
        PathLink::HeaderEnds => "Look at the ends of each header to their studs.",
        PathLink::FloorToFloor => "Look at the straps from floor to floor.",
        PathLink::StudToBottomPlate => "Look at the studs or the sheathing to the bottom plate.",
        PathLink::PlateToFoundation => "Look at the bottom plate to the foundation.",
    }
}
