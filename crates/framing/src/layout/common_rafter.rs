//! A common rafter, read and answered.

use layout::roof::{
    BirdsmouthAnswer, Common, CommonAnswer, Edge, Face, Ridge, Spot, Tail, TailRule, along_slope, common,
};
use measure::Length;
use members::working::{Basis, Part};
use standards::irc_2021::r802_4;

use super::RIDGE_TO_HEEL;
use super::drawn::{DrawnLayout, DrawnRafterCut, DrawnStick};
use super::roof_inputs::{rafter, refuse, run_taken};
use super::say::{angle_fact, cautions, degrees, on_twelve};
use crate::quick::reply::{Drawn, QuickReply, RuleReply, TableReply};
use crate::quick::say::{down, fact, length_fact, rule};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

pub(super) const FIELDS: &[&str] = &[
    "house_width",
    "roof_pitch",
    "eave_overhang",
    "cut_run",
    "cut_stick",
    "ridge_meets",
    "ridge_thick",
    "ridge_deep",
    "ridge_seat",
    "seat_level",
    "fascia_thick",
    "tail_cut",
];

/// What the answer rests on, whatever the rafter meets.
const USED: &[&str] = &["roof_pitch", "eave_overhang", "cut_stick", "ridge_meets", "seat_level"];

/// What the answer rests on.
fn used(rafter: &Common) -> Vec<&'static str> {
    let at_ridge: &[&str] = match rafter.ridge {
        Ridge::NoBoard => &[],
        Ridge::Board { .. } | Ridge::BeamAtFace { .. } => &["ridge_thick", "ridge_deep"],
        Ridge::BeamUnder { .. } => &["ridge_thick", "ridge_deep", "ridge_seat"],
    };
    let of_tail: &[&str] = if rafter.overhang > Length::ZERO { &["fascia_thick", "tail_cut"] } else { &[] };
    [USED, at_ridge, of_tail].concat()
}

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let rafter = rafter(reading)?;
    match common(&rafter) {
        Ok(answer) => Some(reply(reading, About::of(reading, &used(&rafter)), &rafter, &answer)),
        Err(problem) => {
            refuse(reading, &problem);
            None
        }
    }
}

fn reply(reading: &Reading, mut about: About<'_>, rafter: &Common, answer: &CommonAnswer) -> QuickReply {
    run_taken(reading, &mut about);
    if rafter.overhang == Length::ZERO {
        about.say("No overhang: the tail is cut at the outer face of the plate.");
    }
    about.say("Lengths run along the top edge, from the ridge cut down. The plate's outer face is the face of the framing, without sheathing.");
    cautions(&mut about);
    about.part(working(rafter, answer));
    let mouth = &answer.birdsmouth;
    QuickReply {
        size: words::length(answer.actual),
        verdict: RIDGE_TO_HEEL.to_owned(),
        forbidden: !mouth.works() || answer.upper_birdsmouth.is_some_and(|upper| !upper.works()),
        facts: facts(answer),
        by_code: by_code(rafter, answer),
        tables: vec![marks(answer)],
        action: action(reading, rafter, answer),
        drawn: Drawn::Layout(DrawnLayout::Rafter(Box::new(drawn(rafter, answer)))),
        about: about.finish(),
        ..QuickReply::default()
    }
}

fn action(reading: &Reading, rafter: &Common, answer: &CommonAnswer) -> Vec<String> {
    let mut says = Vec::new();
    let mouth = &answer.birdsmouth;
    if !mouth.within_limit {
        says.push(too_deep(mouth));
    }
    if !mouth.bears {
        says.push("The seat is narrower than the code lets a rafter bear on wood: make it 1-1/2\" or more.".to_owned());
    }
    let stick = reading.get("cut_stick").map_or("", |stick| &stick.text);
    says.push(format!(
        "Take a {stick}, {} long. {} from the ridge cut to the plumb line of the heel, along the top edge.",
        words::length(answer.stock),
        words::length(answer.actual)
    ));
    if rafter.overhang > Length::ZERO {
        says.push(format!("Then {} on to the end of the tail.", words::length(answer.tail)));
    }
    if let Some(top) = answer.ridge.top {
        says.push(format!(
            "The top of the ridge stands {} above the plate, not {}: that is the rise alone.",
            words::length(top),
            words::length(answer.ridge.plain_rise)
        ));
    }
    if answer.ridge.covers_cut == Some(false) {
        says.push(format!(
            "The ridge is shallower than the cut that bears on it: take one {} deep or deeper.",
            crate::quick::say::up(answer.plumb_depth)
        ));
    }
    says
}

/// A seat that cuts too deep, and the nearest that does not.
pub(super) fn too_deep(mouth: &BirdsmouthAnswer) -> String {
    let how = format!(
        "The seat cuts {} into the rafter; a quarter of its depth is {}.",
        words::inches(mouth.notch),
        down(mouth.limit)
    );
    match mouth.nearest_seat {
        Some(seat) => format!("{how} Make the seat {} at the most, or take a deeper rafter.", down(seat)),
        None => format!(
            "{how} No seat that bears is shallow enough at this pitch: take a deeper rafter, or ask the engineer."
        ),
    }
}

fn facts(answer: &CommonAnswer) -> Vec<crate::quick::reply::FactReply> {
    let mouth = &answer.birdsmouth;
    let mut facts = vec![
        length_fact("overall_in", "the whole top edge", answer.overall_top),
        length_fact("actual_in", "ridge cut to the heel's plumb line, top edge", answer.actual),
        length_fact("tail_in", "from there to the end of the tail", answer.tail),
        length_fact("line_in", "to the middle of the ridge, before it is shortened", answer.line_length),
        length_fact("shortening_in", "shortened for the ridge, square off the plumb cut", answer.shortening),
        angle_fact("plumb_degrees", "plumb cut, the saw turned", answer.plumb_cut.from_square),
        angle_fact("level_degrees", "seat cut, the saw turned", answer.level_cut.from_square),
        length_fact(
            "above_plate_in",
            "height above plate (HAP): plumb, top edge over the plate's outer corner",
            mouth.height_above_plate,
        ),
        length_fact("heel_in", "heel cut, plumb", mouth.heel),
        length_fact("notch_in", "how deep the seat cuts, square to the edge", mouth.notch),
        length_fact("rise_in", "rise over the run", answer.rise),
    ];
    if let Some(top) = answer.ridge.top {
        facts.push(length_fact("ridge_top_in", "top of the ridge above the plate", top));
    }
    if let Some(post) = answer.ridge.post {
        facts.push(length_fact("ridge_bottom_in", "bottom of the ridge above the plate: the post", post));
    }
    facts.push(fact("stock_ft", "lumber to buy", answer.stock.feet(), words::length(answer.stock)));
    facts
}

fn by_code(rafter: &Common, answer: &CommonAnswer) -> Vec<RuleReply> {
    let mouth = &answer.birdsmouth;
    let mut rules = vec![seat_rule("Seat cut", mouth)];
    rules.extend(answer.upper_birdsmouth.as_ref().map(|upper| seat_rule("Seat on the beam", upper)));
    if let Some(rule) = tail_rule(rafter, mouth) {
        rules.push(rule);
    }
    rules
}

/// What the code says of a seat.
pub(super) fn seat_rule(heading: &str, mouth: &BirdsmouthAnswer) -> RuleReply {
    let mut says = vec![format!(
        "It takes {} out of the depth, square to the edge; a quarter of it, {}, is allowed. The trade's third would be {}: it is not what the code asks.",
        words::inches(mouth.notch),
        down(mouth.limit),
        down(mouth.trades_third)
    )];
    says.push(format!("The widest seat here is {}.", words::inches(mouth.widest_seat_on_tape)));
    says.push(format!("{}.", words::source(r802_4::SEAT_CUT)));
    says.push(format!("A rafter bears on 1-1/2\" of wood or more. {}.", words::source(r802_4::RAFTER_BEARING)));
    says.push("Whether the quarter binds a seat that bears up to its inner edge is disputed: it is applied here. Ask the building official.".to_owned());
    rule(heading, Some(mouth.works()), format!("{} of {}", words::inches(mouth.notch), down(mouth.limit)), says)
}

fn tail_rule(rafter: &Common, mouth: &BirdsmouthAnswer) -> Option<RuleReply> {
    let (holds, says) = match mouth.tail {
        TailRule::NoTail => return None,
        TailRule::Met => (Some(true), "Enough wood is left over the seat for the tail to hang on."),
        TailRule::TooLong => (None, "The tail is longer than this rule reaches: the quarter decides, or an engineer."),
        TailRule::DependsOnEdition => {
            (None, "3-1/2\" is left and 4\" is not: editions of the code differ. Ask the building official.")
        }
        TailRule::NotMet => (Some(false), "Less than 3-1/2\" of wood is left over the seat for the tail."),
    };
    let says = vec![
        says.to_owned(),
        format!("The tail hangs {} level.", words::length(rafter.overhang)),
        format!("{}.", words::source(r802_4::TAIL)),
    ];
    Some(rule("Tail", holds, format!("{} left", down(mouth.left)), says))
}

fn marks(answer: &CommonAnswer) -> TableReply {
    let row = |(what, spot, edge): (&str, Spot, Edge)| {
        let at = answer.stick.at(spot, edge, Face::Middle)?;
        Some(vec![what.to_owned(), words::length(at)])
    };
    let all = [
        ("ridge cut, top edge", Spot::Head, Edge::Top),
        ("ridge cut, bottom edge", Spot::Head, Edge::Bottom),
        ("plumb line over the beam, top edge", Spot::UpperHeel, Edge::Top),
        ("seat on the plate ends, bottom edge", Spot::Seat, Edge::Bottom),
        ("plumb line of the heel, top edge", Spot::Heel, Edge::Top),
        ("heel cut, bottom edge", Spot::Heel, Edge::Bottom),
        ("tail, top edge", Spot::Tail, Edge::Top),
        ("tail, bottom edge", Spot::Tail, Edge::Bottom),
    ];
    TableReply {
        heading: "Marks, from the far point of the ridge end".to_owned(),
        columns: ["mark", "along the stick"].map(str::to_owned).to_vec(),
        rows: all.into_iter().filter_map(row).collect(),
        notes: vec!["Hook the tape once and pull every mark from there. To the nearest sixteenth.".to_owned()],
    }
}

fn working(rafter: &Common, answer: &CommonAnswer) -> Part {
    let mut part = Part::new("Lengths and cuts");
    let slope = rafter.pitch.rise_in_twelve() / 12.0;
    let (run, mouth) = (rafter.run.inches(), &answer.birdsmouth);
    let cosine = rafter.pitch.angle().cos();
    let arithmetic = Basis::Arithmetic;
    part.step(
        "m",
        "rise on one of run",
        format!("{} / 12", figure(rafter.pitch.rise_in_twelve())),
        (slope, ""),
        Basis::Input("roof_pitch"),
    );
    part.step(
        "R",
        "level run to the middle of the ridge",
        "",
        (run, "in"),
        if rafter.run == Length::ZERO { arithmetic } else { Basis::Input("cut_run") },
    );
    part.step(
        "L",
        "line length, R√(1 + m²)",
        format!("{} × √(1 + {}²)", figure(run), figure(slope)),
        (answer.line_length.inches(), "in"),
        arithmetic,
    );
    part.step(
        "s",
        "shortening along the slope, half of the ridge / cos P",
        format!("{} / {}", figure(answer.shortening.inches()), figure(cosine)),
        (answer.shortening_along.inches(), "in"),
        arithmetic,
    );
    part.step(
        "L_a",
        "ridge cut to heel, L - s",
        format!("{} - {}", figure(answer.line_length.inches()), figure(answer.shortening_along.inches())),
        (answer.actual.inches(), "in"),
        arithmetic,
    );
    part.step(
        "o",
        "tail, overhang less fascia / cos P",
        format!("{} / {}", figure(rafter.overhang.inches()), figure(cosine)),
        (along_slope(rafter.overhang, rafter.pitch).inches(), "in"),
        arithmetic,
    );
    part.step(
        "n",
        "depth of the seat cut, b sin P",
        format!("{} × {}", figure(rafter.seat.inches()), figure(rafter.pitch.angle().sin())),
        (mouth.notch.inches(), "in"),
        arithmetic,
    );
    part.step(
        "D/4",
        "the most that the code allows",
        format!("{} / 4", figure(rafter.depth.inches())),
        (mouth.limit.inches(), "in"),
        Basis::Published(r802_4::SEAT_CUT),
    );
    part.step(
        "HAP",
        "height above plate, D / cos P - b m",
        format!(
            "{} / {} - {} × {}",
            figure(rafter.depth.inches()),
            figure(cosine),
            figure(rafter.seat.inches()),
            figure(slope)
        ),
        (mouth.height_above_plate.inches(), "in"),
        arithmetic,
    );
    part.step(
        "H",
        "where the top edges meet, above the plate: HAP + mR",
        format!("{} + {}", figure(mouth.height_above_plate.inches()), figure(answer.rise.inches())),
        (answer.ridge.peak.inches(), "in"),
        arithmetic,
    );
    part
}

fn drawn(rafter: &Common, answer: &CommonAnswer) -> DrawnRafterCut {
    let stick = &answer.stick;
    let top = |spot| stick.at(spot, Edge::Top, Face::Middle).unwrap_or(Length::ZERO);
    let (head, heel, tail) = (top(Spot::Head), top(Spot::Heel), top(Spot::Tail));
    let mut along_top = vec![(head, heel, words::length(answer.actual))];
    if rafter.overhang > Length::ZERO {
        along_top.push((heel, tail, words::length(answer.tail)));
        along_top.push((head, tail, words::length(answer.overall_top)));
    }
    let plumb = degrees(answer.plumb_cut.from_square);
    let mut low_end = Vec::new();
    if rafter.overhang > Length::ZERO {
        low_end.push(if rafter.tail == Tail::Square { "tail square".to_owned() } else { format!("tail {plumb}") });
    }
    low_end.push(format!("seat {}", words::inches(rafter.seat)));
    low_end.push(format!("heel {}", words::inches(answer.birdsmouth.heel)));
    DrawnRafterCut {
        cut: DrawnStick {
            stick: stick.clone(),
            along_top,
            low_end,
            high_end: vec![format!("plumb {plumb}"), on_twelve(answer.plumb_cut)],
        },
        run: rafter.run,
        overhang: rafter.overhang,
        slope: rafter.pitch.rise_in_twelve() / 12.0,
        seat: rafter.seat,
        above_plate: answer.birdsmouth.height_above_plate,
        ridge: answer.ridge.top.map(|top| {
            let (thick, deep) = match rafter.ridge {
                Ridge::Board { thickness: thick, depth }
                | Ridge::BeamAtFace { width: thick, depth }
                | Ridge::BeamUnder { width: thick, depth, .. } => (thick, depth),
                Ridge::NoBoard => (Length::ZERO, Length::ZERO),
            };
            (thick, deep, top)
        }),
        post: answer.ridge.post,
    }
}
