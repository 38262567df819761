//! A notch, a hole or a cut that was found in a stud, a joist, a rafter, an engineered member or a top plate.

use inspection::cuts::{CutJoist, CutStud, Doubled, Face, JoistCut, JoistKind, Place, StudCut};
use inspection::cuts::{judge_cut_joist, judge_cut_stud, stud_limits};
use inspection::{Question, Seen, Verdict};
use lumber::SawnSize;
use measure::{Length, Rounding};
use standards::irc_2021::r602_6::{SHARES, StudIn};

use super::answer::Answer;
use super::reading::{Field, Inputs, typed};
use super::{Walked, walk_case, words};

mod plate;

walk_case! {
    /// The inputs of a look at a cut. Each is a text with its unit.
    NotchFoundCase
    texts {
        /// What was cut: `stud`, `joist`, `rafter`, `engineered` (I-joist, truss, glued lumber) or `top_plate`.
        member,
        /// Its nominal size: `2x4`.
        size,
        /// Its width or depth as measured, in the direction of the cut, where it is not the dressed one: `4"`.
        member_width,
        /// The wall of a stud or plate: `exterior_or_bearing` or `nonbearing`.
        wall,
        /// Depth of the notch.
        notch_depth,
        /// Its length along the member.
        notch_length,
        /// The edge of a joist or rafter that the notch is in: `top` or `bottom`, between two bearings.
        notch_edge,
        /// Diameter of the hole; across the member where it is bored at an angle.
        hole_diameter,
        /// Wood between the hole and the nearer face or edge.
        to_edge,
        /// Wood between the hole and the next hole or notch of a joist; `none` where there is none.
        to_next,
        /// Whether a notch is in the same section of the stud as the hole: `yes` or `no`.
        notch_beside,
        /// Whether the stud is doubled: `yes` or `no`.
        doubled,
        /// How many doubled studs in a row are bored, this one among them.
        bored_in_a_row,
        /// Where along a joist or rafter: `end`, `outer_third` or `middle_third`.
        place,
        /// Length of the opening in a top plate, along the wall.
        opening,
        /// Whether a metal tie is across it: `yes` or `none`.
        tie,
        /// Thickness of the tie: `0.054`.
        tie_thickness,
        /// Its width.
        tie_width,
        /// How far it reaches past the opening, on the side where it reaches less.
        tie_past_opening,
        /// Nails on the side that has fewer.
        tie_nails,
        /// The nail: `0.148 x 1-1/2`.
        tie_nail,
    }
    lists {}
}

const WIDTH: Field = Field::new("member_width", "Width of the member", 1.0, 48.0);
const NOTCH_DEPTH: Field = Field::new("notch_depth", "Notch depth", 1.0 / 64.0, 48.0);
const NOTCH_LENGTH: Field = Field::new("notch_length", "Notch length", 1.0 / 64.0, 480.0);
const HOLE: Field = Field::new("hole_diameter", "Hole diameter", 1.0 / 64.0, 48.0);
const TO_EDGE: Field = Field::new("to_edge", "Wood beside the hole", 0.0, 48.0);
const TO_NEXT: Field = Field::new("to_next", "Wood to the next cut", 0.0, 480.0);
const IN_A_ROW: Field = Field::new("bored_in_a_row", "Doubled studs bored in a row", 1.0, 100.0);

/// What was cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Member {
    Stud,
    Joist(JoistKind),
    TopPlate,
}

const MEMBERS: [(&str, Member); 5] = [
    ("stud", Member::Stud),
    ("joist", Member::Joist(JoistKind::SawnJoist)),
    ("rafter", Member::Joist(JoistKind::SawnRafter)),
    ("engineered", Member::Joist(JoistKind::Engineered)),
    ("top_plate", Member::TopPlate),
];

/// The cuts that were measured.
#[derive(Clone, Copy, Debug)]
struct Cuts {
    notch_depth: Option<Length>,
    notch_length: Seen<Length>,
    hole: Option<Length>,
    to_edge: Seen<Length>,
}

/// Reads and answers a case.
///
/// # Errors
/// The inputs that were refused.
pub fn answer(case: &NotchFoundCase) -> Walked {
    let (mut inputs, mut answer) = (Inputs::default(), Answer::default());
    if typed(&case.member).is_none() {
        answer.ask("What was cut: a stud, a joist, a rafter, an engineered member or a top plate?", "member");
    }
    let says = "Cut member: a stud (most often asked).";
    let member = inputs.choice_or(&case.member, "member", &MEMBERS, Member::Stud, says);
    let (size, width) = size(&mut inputs, &mut answer, case, member);
    let cuts = Cuts {
        notch_depth: inputs.length(&case.notch_depth, &NOTCH_DEPTH),
        notch_length: inputs.seen_length(&case.notch_length, &NOTCH_LENGTH),
        hole: inputs.length(&case.hole_diameter, &HOLE),
        to_edge: inputs.seen_length(&case.to_edge, &TO_EDGE),
    };
    if let Some(cut) = cuts.notch_depth.or(cuts.hole).filter(|cut| *cut > width && inputs.refused.is_empty()) {
        let (cut, width) = (words::length(cut), words::length(width));
        let id = if cuts.notch_depth.is_some() { NOTCH_DEPTH.id } else { HOLE.id };
        inputs.refuse(id, format!("{cut} was given; the member is {width} there. Measure both again."));
    }
    let measured = cuts.notch_depth.is_some() || cuts.hole.is_some();
    if !measured && member != Member::Joist(JoistKind::Engineered) {
        answer.verdict(Verdict::NotSeen);
        answer.ask("How deep is the notch, or how wide is the hole?", "notch_depth");
    }
    let mut aside = Answer::default();
    inputs.only_refuse(|inputs| {
        stud(inputs, &mut aside, case, width, &cuts);
        joist(inputs, &mut aside, case, (JoistKind::SawnJoist, size, width), &cuts);
        plate::answer(inputs, &mut aside, case, width, &cuts);
    });
    match member {
        Member::Stud => stud(&mut inputs, &mut answer, case, width, &cuts),
        Member::Joist(JoistKind::Engineered) => engineered(&mut answer, width),
        Member::Joist(kind) => joist(&mut inputs, &mut answer, case, (kind, size, width), &cuts),
        Member::TopPlate => plate::answer(&mut inputs, &mut answer, case, width, &cuts),
    }
    answer.finish(inputs)
}

/// The nominal size, and the width in the direction of the cut.
fn size(inputs: &mut Inputs, answer: &mut Answer, case: &NotchFoundCase, member: Member) -> (Option<SawnSize>, Length) {
    let measured = inputs.length(&case.member_width, &WIDTH);
    let size = typed(&case.size).and_then(|text| match SawnSize::from_text(text) {
        Ok(size) => Some(size),
        Err(problem) => {
            inputs.refuse("size", problem.to_string());
            None
        }
    });
    if let Some(width) = measured.or_else(|| size.map(SawnSize::depth)) {
        return (size, width);
    }
    let (name, width) = if matches!(member, Member::Joist(_)) { ("2x8", 7.25) } else { ("2x4", 3.5) };
    let width = Length::from_inches(width);
    if typed(&case.size).is_none() && typed(&case.member_width).is_none() {
        inputs.assume("size", format!("Size: {name}, {} (the smallest in common use).", words::length(width)));
        answer.ask("What size is the member?", "size");
    }
    (size, width)
}

fn bearing(inputs: &mut Inputs, answer: &mut Answer, case: &NotchFoundCase) -> bool {
    if typed(&case.wall).is_none() {
        answer.ask("Is the wall an outer wall, or does it bear? A nonbearing partition may be cut deeper.", "wall");
    }
    let walls = [("exterior_or_bearing", true), ("nonbearing", false)];
    let says = "Wall: exterior or bearing (the stricter of the two).";
    inputs.choice_or(&case.wall, "wall", &walls, true, says)
}

fn stud(inputs: &mut Inputs, answer: &mut Answer, case: &NotchFoundCase, width: Length, cuts: &Cuts) {
    let bearing = bearing(inputs, answer, case);
    let stud_in = if bearing { StudIn::ExteriorOrBearing } else { StudIn::NonbearingPartition };
    let says = "Doubled: no (one stud is the usual).";
    let doubled = inputs.choice_or(&case.doubled, "doubled", &[("yes", true), ("no", false)], false, says);
    let bored_in_a_row = inputs.seen_count(&case.bored_in_a_row, &IN_A_ROW).map(|count| count as u8);
    let doubled = if doubled { Doubled::Doubled { bored_in_a_row } } else { Doubled::Single };
    let notch_beside = inputs.seen_yes(&case.notch_beside, "notch_beside");
    let notch = cuts.notch_depth.map(|depth| StudCut::Notch { depth });
    let hole = cuts.hole.map(|diameter| StudCut::Hole { diameter, to_face: cuts.to_edge, notch_beside });
    for cut in notch.into_iter().chain(hole) {
        let stud = CutStud { width, stud_in, doubled, cut };
        let share = words::percent(stud.share() * 100.0);
        let what = if matches!(cut, StudCut::Notch { .. }) { "notch" } else { "hole" };
        answer.say(format!("The {what} takes {share} of the stud's width."));
        answer.fact(format!("Share of the stud's width that the {what} takes"), share, None);
        answer.finding(&judge_cut_stud(&stud), None, input_of);
    }
    stud_facts(answer, width);
    answer.caution("A nail plate only guards a pipe from nails. It gives a cut stud no strength back.");
}

/// The limits of both kinds of wall, rounded down: they are read before a cut is made.
fn stud_facts(answer: &mut Answer, width: Length) {
    let down = |limit| words::limit_length(limit, Rounding::Down);
    let clause = words::published(SHARES);
    let bearing = stud_limits(width, StudIn::ExteriorOrBearing);
    let nonbearing = stud_limits(width, StudIn::NonbearingPartition);
    for (what, limit) in [
        ("Deepest notch, exterior or bearing wall (25 %)", bearing.notch),
        ("Deepest notch, nonbearing wall (40 %)", nonbearing.notch),
        ("Widest hole, exterior or bearing wall (40 %)", bearing.hole),
        ("Widest hole there in doubled studs, to two in a row (60 %)", bearing.hole_in_doubled),
        ("Widest hole, nonbearing wall (60 %)", nonbearing.hole),
    ] {
        answer.fact(what, down(limit), Some(clause.clone()));
    }
}

/// Whatever was cut, it is the maker's to judge.
fn engineered(answer: &mut Answer, depth: Length) {
    answer.say("An engineered member takes no cut that its maker or designer has not allowed.");
    let cut = JoistCut::Notch { depth: Length::ZERO, length: Seen::NotObserved, face: Face::Tension };
    let (kind, place, nominal_thickness) = (JoistKind::Engineered, Place::MiddleThird, Length::ZERO);
    answer.finding(&judge_cut_joist(&CutJoist { kind, depth, nominal_thickness, place, cut }), None, input_of);
}

fn joist(
    inputs: &mut Inputs,
    answer: &mut Answer,
    case: &NotchFoundCase,
    (kind, size, depth): (JoistKind, Option<SawnSize>, Length),
    cuts: &Cuts,
) {
    const PLACES: [(&str, Place); 3] =
        [("end", Place::End), ("outer_third", Place::OuterThird), ("middle_third", Place::MiddleThird)];
    let place = inputs.choice(&case.place, "place", &PLACES).unwrap_or_else(|| {
        if typed(&case.place).is_none() {
            inputs.assume("place", "Place: the middle third (no notch is allowed there).");
            answer.ask("Is the cut at an end, in an outer third or in the middle third?", "place");
        }
        Place::MiddleThird
    });
    let edges = [("top", Face::Compression), ("bottom", Face::Tension)];
    let says = "Edge of the notch: the bottom (the stricter of the two).";
    let face = inputs.choice_or(&case.notch_edge, "notch_edge", &edges, Face::Tension, says);
    if cuts.notch_depth.is_some() && place != Place::End && cuts.notch_length == Seen::NotObserved {
        answer.ask("How long is the notch, along the member?", NOTCH_LENGTH.id);
    }
    let to_next = match typed(&case.to_next) {
        Some("none") => Seen::Observed(None),
        _ => inputs.seen_length(&case.to_next, &TO_NEXT).map(Some),
    };
    let nominal_thickness = Length::from_inches(size.map_or(2.0, |size| f64::from(size.nominal_thickness())));
    let notch = cuts.notch_depth.map(|depth| JoistCut::Notch { depth, length: cuts.notch_length, face });
    let hole = cuts.hole.map(|diameter| JoistCut::Hole { diameter, to_edge: cuts.to_edge, to_next });
    for cut in notch.into_iter().chain(hole) {
        let joist = CutJoist { kind, depth, nominal_thickness, place, cut };
        answer.finding(&judge_cut_joist(&joist), None, input_of);
    }
}

/// The input that answers a question.
const fn input_of(question: Question) -> &'static str {
    match question {
        Question::HoleToNext => "to_next",
        Question::NotchBesideHole => "notch_beside",
        Question::DoubledInARow => "bored_in_a_row",
        _ => "to_edge",
    }
}
