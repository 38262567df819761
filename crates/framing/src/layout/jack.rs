//! Jack rafters along a hip or a valley, read and answered.

use layout::roof::{
    Common, Corner, Edge, Face, Jack, Jacks, JacksAnswer, Meeting, Side, Spot, Start, jacks, stock_length,
};
use lumber::SawnSize;
use measure::Length;
use members::working::{Basis, Part};

use super::FROM_ONE_JACK_TO_THE_NEXT;
use super::common_rafter::{seat_rule, too_deep};
use super::drawn::{DrawnCornerPlan, DrawnHip, DrawnLayout, DrawnStick};
use super::roof_inputs::{corner, is_seated, meeting, other_pitch_taken, rafter, refuse, run_taken};
use super::say::{angle_fact, cautions, degrees, on_twelve};
use crate::quick::reply::{Drawn, FactReply, QuickReply, TableReply};
use crate::quick::say::{fact, length_fact};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

pub(super) const FIELDS: &[&str] = &[
    "cut_corner",
    "roof_pitch",
    "cut_other_pitch",
    "corner_angle",
    "jack_side",
    "jack_every",
    "jack_start",
    "house_width",
    "cut_run",
    "eave_overhang",
    "fascia_thick",
    "cut_stick",
    "hip_stick",
    "hip_plies",
    "ridge_meets",
    "ridge_thick",
    "ridge_deep",
    "ridge_seat",
    "seat_level",
    "tail_cut",
];

/// What the answer rests on at a hip.
const USED: &[&str] = &[
    "cut_corner",
    "roof_pitch",
    "corner_angle",
    "jack_side",
    "jack_every",
    "jack_start",
    "eave_overhang",
    "fascia_thick",
    "cut_stick",
    "hip_stick",
    "hip_plies",
    "seat_level",
    "tail_cut",
];
/// The same at a valley: its jacks have a ridge, and no seat.
const USED_AT_A_VALLEY: &[&str] = &[
    "cut_corner",
    "roof_pitch",
    "corner_angle",
    "jack_side",
    "jack_every",
    "jack_start",
    "cut_stick",
    "hip_stick",
    "hip_plies",
    "ridge_meets",
    "ridge_thick",
];

/// Spacings that are taken, whole inches.
const CLOSEST: u8 = 8;
const WIDEST: u8 = 48;

/// The most jacks that are listed.
const LISTED: usize = 40;

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let common = rafter(reading)?;
    let meeting = meeting(reading)?;
    let corner = corner(reading, meeting)?;
    let given = asked(reading, common, corner)?;
    is_seated(reading, given.common.pitch, given.common.depth)?;
    let answer = match jacks(&given) {
        Ok(answer) => answer,
        Err(problem) => {
            refuse(reading, &problem);
            return None;
        }
    };
    if answer.jacks.is_empty() {
        reading.refuse("jack_every", no_room(&given));
        return None;
    }
    let mut about = About::of(reading, if meeting == Meeting::Valley { USED_AT_A_VALLEY } else { USED });
    run_taken(reading, &mut about);
    other_pitch_taken(reading, &mut about);
    cautions(&mut about);
    Some(reply(reading, about, &given, &answer))
}

/// Why there is no jack, and the widest spacing by whole inches that has one.
fn no_room(given: &Jacks) -> String {
    let why = "No jack fits between the corner and the king common at this spacing.";
    let fits = |inches: &u8| {
        let spacing = Length::from_inches(f64::from(*inches));
        spacing < given.spacing && jacks(&Jacks { spacing, ..*given }).is_ok_and(|answer| !answer.jacks.is_empty())
    };
    match (CLOSEST..=WIDEST).rev().find(fits) {
        Some(inches) => format!("{why} Give {inches}\" or less."),
        None => format!("{why} None is needed there: the king common stands close to the corner."),
    }
}

/// The jacks; the run of roof B's commons is the one that rises as high.
fn asked(reading: &Reading, common: Common, corner: Corner) -> Option<Jacks> {
    let side = if reading.word("jack_side")? == "b" { Side::B } else { Side::A };
    let run = if side == Side::B { corner.run_across(Side::A, common.run) } else { common.run };
    let size = SawnSize::from_text(reading.word("hip_stick")?).ok()?;
    let plies: u8 = reading.word("hip_plies")?.parse().ok()?;
    Some(Jacks {
        corner,
        side,
        common: Common { pitch: corner.pitch(side), run, ..common },
        line_thickness: size.breadth() * f64::from(plies),
        spacing: reading.length("jack_every")?,
        start: if reading.word("jack_start")? == "king" { Start::KingCommon } else { Start::Corner },
    })
}

fn reply(reading: &Reading, mut about: About<'_>, given: &Jacks, answer: &JacksAnswer) -> QuickReply {
    let valley = given.corner.meeting() == Meeting::Valley;
    about.say(if valley {
        "Lengths are from the ridge cut to the valley, along the top edge."
    } else {
        "Lengths are from the heel's plumb line to the hip, along the top edge. The tail is that of the common."
    });
    about.say("Each is worked from the corner, and none from the one before it: what is rounded does not add up.");
    about.part(working(given, answer));
    let mouth = &answer.common.birdsmouth;
    let mut action = Vec::new();
    if !valley && !mouth.within_limit {
        action.push(too_deep(mouth));
    }
    action.extend(to_do(reading, given, answer));
    QuickReply {
        size: words::length(answer.common_difference),
        verdict: FROM_ONE_JACK_TO_THE_NEXT.to_owned(),
        forbidden: !valley && !mouth.works(),
        facts: facts(answer),
        by_code: if valley { Vec::new() } else { vec![seat_rule("Seat cut", mouth)] },
        tables: vec![list(answer)],
        action,
        drawn: drawn(given, answer).map_or(Drawn::Nothing, |drawn| Drawn::Layout(DrawnLayout::Hip(Box::new(drawn)))),
        about: about.finish(),
        ..QuickReply::default()
    }
}

fn to_do(reading: &Reading, given: &Jacks, answer: &JacksAnswer) -> Vec<String> {
    let stick = reading.get("cut_stick").map_or("", |stick| &stick.text);
    let longest = answer.jacks.iter().map(|jack| jack.stick.length).fold(Length::ZERO, Length::max);
    let many = answer.jacks.len();
    let jacks = if many == 1 { "1 jack".to_owned() } else { format!("{many} jacks") };
    let mut says = vec![format!(
        "{jacks} of {stick} on this side, and as many that lean the other way on a like corner. The longest is cut from {} of lumber.",
        words::length(stock_length(longest))
    )];
    says.push(format!(
        "Cheek: saw on the side, turned {}, blade at {}.",
        degrees(answer.cheek.from_square),
        degrees(answer.cheek.tilt)
    ));
    if answer.cheek.tilt.degrees() > SAW_TILTS {
        says.push(format!(
            "Most site saws do not tilt so far. From the top edge: turned {}, blade at {}.",
            degrees(answer.cheek_on_top.from_square),
            degrees(answer.cheek_on_top.tilt)
        ));
    }
    if given.line_thickness > Length::ZERO {
        says.push(format!(
            "Half of the {} takes {} off each, along the slope; it is taken off in the list.",
            if given.corner.meeting() == Meeting::Hip { "hip" } else { "valley" },
            words::inches(answer.shortening_along)
        ));
    }
    says
}

/// A blade that tilts farther than this is on few site saws, degrees; from memory, common practice.
const SAW_TILTS: f64 = 45.05;

fn facts(answer: &JacksAnswer) -> Vec<FactReply> {
    let mut facts = Vec::new();
    if let Some(first) = answer.jacks.first() {
        facts.push(length_fact("first_long_in", "the first, to its long point", first.long_point));
        facts.push(length_fact("first_short_in", "the first, to its short point", first.short_point));
    }
    facts.extend([
        length_fact("difference_in", "common difference", answer.common_difference),
        angle_fact("plumb_degrees", "plumb cut, the saw turned", answer.cheek.from_square),
        angle_fact("cheek_degrees", "cheek, the blade tilted", answer.cheek.tilt),
        angle_fact(
            "edge_line_degrees",
            "line of the cheek on the top edge, from its length",
            answer.cheek_on_top.from_axis(),
        ),
        length_fact("shortening_in", "shortened at the hip or valley, along the slope", answer.shortening_along),
        fact("jacks", "jacks on this side", answer.jacks.len() as f64, answer.jacks.len().to_string()),
    ]);
    facts
}

fn list(answer: &JacksAnswer) -> TableReply {
    let row = |(index, jack): (usize, &Jack)| {
        let lengths = [jack.along_eave, jack.long_point, jack.centre, jack.short_point].map(words::length);
        core::iter::once((index + 1).to_string()).chain(lengths).collect()
    };
    let mut notes =
        vec!["Each at its own place along the eave, from where the hip or valley passes the wall.".to_owned()];
    if answer.jacks.len() > LISTED {
        notes.push(format!("The first {LISTED} of {}.", answer.jacks.len()));
    }
    TableReply {
        heading: "Every jack".to_owned(),
        columns: ["jack", "stands at", "long point", "middle", "short point"].map(str::to_owned).to_vec(),
        rows: answer.jacks.iter().take(LISTED).enumerate().map(row).collect(),
        notes,
    }
}

fn working(given: &Jacks, answer: &JacksAnswer) -> Part {
    let mut part = Part::new("Jacks");
    let (plan, pitch) = (given.corner.plan_angle(given.side), given.corner.pitch(given.side).angle());
    part.step("d", "angle in plan between the eave and the line", "", (plan.degrees(), "°"), Basis::Arithmetic);
    part.step(
        "Δ",
        "common difference, s tan d / cos P",
        format!(
            "{} × tan {}° / cos {}°",
            figure(given.spacing.inches()),
            figure(plan.degrees()),
            figure(pitch.degrees())
        ),
        (answer.common_difference.inches(), "in"),
        Basis::Arithmetic,
    );
    part.step(
        "t",
        "shortening along the slope, half of the line's thickness / (cos d cos P)",
        format!(
            "{} / (2 cos {}° cos {}°)",
            figure(given.line_thickness.inches()),
            figure(plan.degrees()),
            figure(pitch.degrees())
        ),
        (answer.shortening_along.inches(), "in"),
        Basis::Arithmetic,
    );
    if let Some(first) = answer.jacks.first() {
        part.step("L_1", "the first, on its middle, shortened", "", (first.centre.inches(), "in"), Basis::Arithmetic);
    }
    part
}

/// The longest, and where all of them stand.
fn drawn(given: &Jacks, answer: &JacksAnswer) -> Option<DrawnHip> {
    let jack = answer.jacks.iter().max_by(|a, b| a.centre.inches().total_cmp(&b.centre.inches()))?;
    let stick = &jack.stick;
    let top = |spot| stick.at(spot, Edge::Top, Face::Right).unwrap_or(Length::ZERO);
    let (head, heel, tail) = (top(Spot::Head), top(Spot::Heel), top(Spot::Tail));
    let hip = given.corner.meeting() == Meeting::Hip;
    let along_top = if hip {
        let mut along = vec![(head, heel, words::length(heel - head))];
        if tail - heel > Length::from_inches(0.5) {
            along.push((heel, tail, words::length(tail - heel)));
        }
        along
    } else {
        vec![(head, tail, words::length(tail - head))]
    };
    let plumb = format!("plumb {}", degrees(answer.cheek.from_square));
    let cheek = vec![plumb.clone(), on_twelve(answer.cheek), format!("blade {}", degrees(answer.cheek.tilt))];
    let (low_end, high_end) = if hip {
        (
            vec![
                format!("seat {}", words::inches(given.common.seat)),
                format!("heel {}", words::inches(answer.common.birdsmouth.heel)),
            ],
            cheek,
        )
    } else {
        (cheek, vec![plumb])
    };
    Some(DrawnHip {
        cut: DrawnStick { stick: stick.clone(), along_top, low_end, high_end },
        plan: DrawnCornerPlan {
            is_valley: !hip,
            angle: given.corner.angle(),
            run: if given.side == Side::A {
                given.common.run
            } else {
                given.corner.run_across(Side::B, given.common.run)
            },
            plan_angles: (given.corner.plan_angle(Side::A), given.corner.plan_angle(Side::B)),
            jacks: answer.jacks.iter().map(|jack| jack.along_eave).collect(),
            of_b: given.side == Side::B,
        },
    })
}
