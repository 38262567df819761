//! A hip or a valley rafter, read and answered.

use layout::roof::{
    Bearing, Birdsmouth, BirdsmouthAnswer, Common, Corner, Edge, Face, Hip, HipAnswer, HipDepth, HipHead, HipSeat,
    Meeting, RoofError, Side, Sides, Spot, TopEdge, TwoPly, birdsmouth, hip, hip_depth, two_ply,
};
use lumber::SawnSize;
use measure::Length;
use members::working::{Basis, Part};

use super::TOP_CUT_TO_HEEL;
use super::common_rafter::seat_rule;
use super::drawn::{DrawnCornerPlan, DrawnHip, DrawnLayout, DrawnStick};
use super::roof_inputs::{corner, is_seated, meeting, other_pitch_taken, rafter, refuse, run_taken};
use super::say::{angle_fact, cautions, degrees, on_diagonal};
use crate::quick::reply::{Drawn, FactReply, QuickReply, RuleReply, TableReply};
use crate::quick::say::{down, fact, length_fact, rule, up};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

pub(super) const FIELDS: &[&str] = &[
    "cut_corner",
    "roof_pitch",
    "cut_other_pitch",
    "corner_angle",
    "house_width",
    "cut_run",
    "eave_overhang",
    "fascia_thick",
    "hip_stick",
    "hip_plies",
    "cut_stick",
    "hip_top",
    "hip_meets",
    "ridge_meets",
    "ridge_thick",
    "ridge_deep",
    "ridge_seat",
    "seat_level",
    "tail_cut",
];

const USED: &[&str] = &[
    "cut_corner",
    "roof_pitch",
    "corner_angle",
    "eave_overhang",
    "fascia_thick",
    "hip_stick",
    "hip_plies",
    "cut_stick",
    "hip_top",
    "hip_meets",
    "seat_level",
];
/// The same where it comes to a ridge.
const USED_AT_A_RIDGE: &[&str] = &["ridge_thick"];

/// A hip or valley with what it is made of.
struct Read {
    common: Common,
    hip: Hip,
    ply: Length,
    plies: u8,
}

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let common = rafter(reading)?;
    let meeting = meeting(reading)?;
    let corner = corner(reading, meeting)?;
    is_seated(reading, corner.pitch(Side::B), common.depth)?;
    match found(reading, common, corner)? {
        Ok((read, answer, depth)) => {
            let at_ridge = matches!(read.hip.head, HipHead::Ridge { .. });
            let mut about = About::of(reading, &[USED, if at_ridge { USED_AT_A_RIDGE } else { &[] }].concat());
            run_taken(reading, &mut about);
            other_pitch_taken(reading, &mut about);
            cautions(&mut about);
            Some(reply(reading, about, &read, &answer, &depth))
        }
        Err(problem) => {
            refuse(reading, &problem);
            None
        }
    }
}

type Found = Result<(Read, HipAnswer, HipDepth), RoofError>;

fn found(reading: &Reading, common: Common, corner: Corner) -> Option<Found> {
    let size = SawnSize::from_text(reading.word("hip_stick")?).ok()?;
    let plies: u8 = reading.word("hip_plies")?.parse().ok()?;
    let top = match reading.word("hip_top")? {
        "backed" => TopEdge::Backed,
        "slid" => TopEdge::SquareAndSlid,
        _ => TopEdge::Square,
    };
    let thickness = reading.length("ridge_thick")?;
    let head = match reading.word("hip_meets")? {
        "ridge" => HipHead::Ridge { along: Side::A, thickness },
        "commons" => HipHead::BetweenCommons { thickness: common.thickness },
        "valley" => HipHead::LongValley { thickness: size.breadth() },
        _ => HipHead::Lines,
    };
    let work = || {
        let above_plate = heights(&common, &corner)?;
        let given = Hip {
            corner,
            run_a: common.run,
            overhangs: Sides { a: common.overhang, b: common.overhang },
            above_plate,
            thickness: size.breadth() * f64::from(plies),
            depth: size.depth(),
            head,
            top,
        };
        let depth = hip_depth(&corner, Sides { a: common.depth, b: common.depth }, size.depth())?;
        let answer = hip(&given)?;
        Ok((Read { common, hip: given, ply: size.breadth(), plies }, answer, depth))
    };
    Some(work())
}

/// How high the commons of both roofs stand over their plates, with the same seat.
fn heights(common: &Common, corner: &Corner) -> Result<Sides<Length>, RoofError> {
    let of = |side| {
        let pitch = corner.pitch(side);
        let seat = Birdsmouth { pitch, depth: common.depth, seat: common.seat, overhang: common.overhang };
        Ok(birdsmouth(&seat)?.height_above_plate)
    };
    Ok(Sides { a: of(Side::A)?, b: of(Side::B)? })
}

const fn name(corner: &Corner) -> &'static str {
    match corner.meeting() {
        Meeting::Hip => "hip",
        Meeting::Valley => "valley",
    }
}

fn reply(reading: &Reading, mut about: About<'_>, read: &Read, answer: &HipAnswer, depth: &HipDepth) -> QuickReply {
    let corner = &read.hip.corner;
    about.say("Roof A is the one whose pitch and run are given; roof B is around the corner. Lengths run along the middle of the square top edge, before it is backed.");
    about.say("How big it must be is in Members, under Hip, valley: this is where to cut it.");
    about.part(working(read, answer));
    let mouth = answer.birdsmouth();
    let mut by_code = vec![depth_rule(depth, corner)];
    by_code.extend(mouth.map(|mouth| seat_rule("Seat cut", mouth)));
    by_code.extend(plies(read));
    QuickReply {
        size: words::length(answer.actual),
        verdict: TOP_CUT_TO_HEEL.to_owned(),
        forbidden: mouth.is_some_and(|mouth| !mouth.works()) || !(depth.covers_plumb || depth.covers_across),
        facts: facts(read, answer),
        by_code,
        tables: vec![marks(answer)],
        action: action(reading, read, answer, depth),
        drawn: Drawn::Layout(DrawnLayout::Hip(Box::new(drawn(read, answer)))),
        about: about.finish(),
        ..QuickReply::default()
    }
}

fn action(reading: &Reading, read: &Read, answer: &HipAnswer, depth: &HipDepth) -> Vec<String> {
    let corner = &read.hip.corner;
    let mut says = Vec::new();
    if let Some(next) = depth.next_across.filter(|_| !depth.covers_across) {
        says.push(format!(
            "It is shallower than the cut end of its jacks, {}: take a {} or deeper.",
            up(depth.needed),
            next.nominal()
        ));
    }
    if let Some(mouth) = answer.birdsmouth().filter(|mouth| !mouth.within_limit) {
        says.push(sits_too_low(read, mouth));
    }
    let stick = reading.get("hip_stick").map_or("", |stick| &stick.text);
    let pieces = if read.plies == 1 { format!("Take a {stick}") } else { format!("Take two {stick}") };
    says.push(format!(
        "{pieces}, {} long. {} from the cut at its upper end to the plumb line of the heel, along the middle of the top edge.",
        words::length(answer.stock),
        words::length(answer.actual)
    ));
    says.push(top_edge(read, answer));
    says.push(bearing(answer, corner));
    if let HipSeat::Above(gap) = answer.seat {
        says.push(format!(
            "Its bottom edge stands {} above the plate: block it up, or take a deeper stick.",
            words::inches(gap)
        ));
    }
    let offset = answer.walls.plate_a_over_b;
    if offset.abs() > Length::from_inches(1.0 / 32.0) {
        let (high, low, by) = if offset > Length::ZERO { ("A", "B", offset) } else { ("B", "A", -offset) };
        says.push(format!(
            "For a fascia that is level all round, the plate under roof {high} stands {} higher than that under roof {low}; or give roof B an overhang of {} with both plates level.",
            words::inches(by),
            words::length(answer.walls.overhang_b)
        ));
    }
    says
}

/// A seat level with the commons' that cuts too deep, and the size that both sits and covers its jacks, where there is one.
fn sits_too_low(read: &Read, mouth: &BirdsmouthAnswer) -> String {
    let how = format!(
        "To sit level with the commons its seat cuts {} into it; a quarter of its depth, {}, is allowed.",
        words::inches(mouth.notch),
        down(mouth.limit)
    );
    let works = |size: &SawnSize| {
        let jacks = Sides { a: read.common.depth, b: read.common.depth };
        let covers = hip_depth(&read.hip.corner, jacks, size.depth()).is_ok_and(|depth| depth.covers_plumb);
        let sits = hip(&Hip { depth: size.depth(), ..read.hip });
        covers && sits.is_ok_and(|answer| answer.birdsmouth().is_some_and(BirdsmouthAnswer::works))
    };
    let other = SawnSize::all().filter(|size| size.nominal_thickness() == 2).find(works);
    match other {
        Some(size) => format!("{how} A {} is deep enough for its jacks and sits within the limit.", size.nominal()),
        None => format!(
            "{how} No sawn size both sits within that and covers the cut end of its jacks: ask the building official or the engineer how it bears before it is cut."
        ),
    }
}

fn top_edge(read: &Read, answer: &HipAnswer) -> String {
    let sixteenth = Length::from_inches(1.0 / 32.0);
    match (answer.ripped, read.hip.corner.meeting()) {
        (Some(ripped), meeting) => format!(
            "Rip its top edge to both roofs: {} on the side of A and {} on that of B. {} {} and {}.",
            degrees(read.hip.corner.backing(Side::A)),
            degrees(read.hip.corner.backing(Side::B)),
            match meeting {
                Meeting::Hip => "At the faces that takes off",
                Meeting::Valley => "The faces stand over the trough by",
            },
            words::inches(ripped.a),
            words::inches(ripped.b)
        ),
        (None, Meeting::Valley) => {
            "Leave its top edge square and set its middle on the line: the jacks plane in to the middle.".to_owned()
        }
        (None, Meeting::Hip) if answer.toward_b.abs() >= sixteenth => format!(
            "Drop it {} and move it {} toward roof {}: both corners of its top edge then touch.",
            words::inches(answer.drop),
            words::inches(answer.toward_b.abs()),
            if answer.toward_b > Length::ZERO { "B" } else { "A" }
        ),
        (None, Meeting::Hip) => format!("Drop it {}: cut the seat so much deeper.", words::inches(answer.drop)),
    }
}

fn bearing(answer: &HipAnswer, corner: &Corner) -> String {
    match answer.walls.bearing {
        Bearing::Corner => "It stands over the corner of the walls.".to_owned(),
        Bearing::Wall(side) => format!(
            "With one overhang all round it misses the corner: it bears on the wall under roof {side}, {} from the corner. With unequal pitches a {} does: leave it there.",
            words::length(answer.walls.on.of(side).abs()),
            name(corner)
        ),
    }
}

fn facts(read: &Read, answer: &HipAnswer) -> Vec<FactReply> {
    let corner = &read.hip.corner;
    let mut facts = vec![
        length_fact("whole_in", "farthest point to farthest point", answer.stick.length),
        length_fact("actual_in", "top cut to the heel's plumb line, middle of the top edge", answer.actual),
        length_fact("tail_in", "from there to the end of the tail", answer.tail),
        length_fact("line_in", "line length, before it is shortened", answer.line_length),
        length_fact("shortening_in", "shortened, level along it", answer.shortening),
        angle_fact("plumb_degrees", "plumb cut, the saw turned", answer.plumb_cut.from_square),
        angle_fact("level_degrees", "seat cut, the saw turned", answer.level_cut.from_square),
        angle_fact("plan_a_degrees", "in plan, from the eave of roof A", corner.plan_angle(Side::A)),
        angle_fact("plan_b_degrees", "in plan, from the eave of roof B", corner.plan_angle(Side::B)),
        angle_fact("backing_a_degrees", "backing to roof A", corner.backing(Side::A)),
        angle_fact("backing_b_degrees", "backing to roof B", corner.backing(Side::B)),
        length_fact(
            "drop_in",
            if answer.drop < Length::ZERO {
                "stands over the line before it is backed, plumb"
            } else {
                "dropped, plumb"
            },
            answer.drop.abs(),
        ),
        length_fact(
            "above_plate_in",
            "height above plate (HAP): plumb, middle of its top edge at the heel",
            answer.above_plate,
        ),
    ];
    if let HipSeat::Cut { seat, .. } = answer.seat {
        facts.push(length_fact("seat_in", "seat, level along it", seat));
    }
    let ends = answer.stick.cuts.iter().filter(|cut| matches!(cut.spot, Spot::Head | Spot::SecondHead));
    for (index, end) in ends.enumerate() {
        let what = format!("blade at the top cut{}", if index == 0 { "" } else { ", the other side" });
        facts.push(angle_fact(&format!("cheek_{}_degrees", index + 1), what, end.cut.tilt));
    }
    facts.push(fact("stock_ft", "lumber to buy", answer.stock.feet(), words::length(answer.stock)));
    facts
}

fn depth_rule(depth: &HipDepth, corner: &Corner) -> RuleReply {
    let mut says = vec![format!(
        "The cut end of its jacks is {} deep. This {} is {} deep square to its edge, {} measured plumb.",
        words::inches(depth.needed),
        name(corner),
        words::inches(depth.across),
        words::inches(depth.plumb)
    )];
    if !depth.readings_agree() {
        says.push("Officials read this both ways. Ask, or take the deeper.".to_owned());
    }
    says.push(format!("{}.", words::source(HipDepth::SOURCE)));
    let holds = if depth.readings_agree() { Some(depth.covers_across) } else { None };
    rule("Depth", holds, format!("{} of {}", words::inches(depth.across), up(depth.needed)), says)
}

/// How each of two plies is ripped to its own roof.
fn plies(read: &Read) -> Option<RuleReply> {
    if read.plies != 2 {
        return None;
    }
    let found = two_ply(&TwoPly { corner: read.hip.corner, ply: read.ply, depth_left: read.hip.depth }).ok()?;
    let of = |side| {
        let ply = found.plies.of(side);
        format!(
            "Ply of roof {side}: ripped at {}, {} across it. To keep {} at its thinner face it is ripped from stock {} deep.",
            degrees(ply.rip),
            words::inches(ply.ripped),
            words::inches(read.hip.depth),
            up(ply.stock_depth)
        )
    };
    let says = vec![
        of(Side::A),
        of(Side::B),
        "Each ply is ripped to its own roof over its whole thickness, and both are joined on the line.".to_owned(),
        "Strength is checked with the depth that is left at the thinner face.".to_owned(),
    ];
    Some(rule("Two plies", None, format!("{} and {}", degrees(found.plies.a.rip), degrees(found.plies.b.rip)), says))
}

fn marks(answer: &HipAnswer) -> TableReply {
    let row = |(what, spot, edge): (&str, Spot, Edge)| {
        let at = |face| answer.stick.at(spot, edge, face).map(words::length);
        Some(vec![what.to_owned(), at(Face::Left)?, at(Face::Middle)?, at(Face::Right)?])
    };
    let all = [
        ("top cut, top edge", Spot::Head, Edge::Top),
        ("top cut, bottom edge", Spot::Head, Edge::Bottom),
        ("seat ends, bottom edge", Spot::Seat, Edge::Bottom),
        ("heel's plumb line, top edge", Spot::Heel, Edge::Top),
        ("heel cut, bottom edge", Spot::Heel, Edge::Bottom),
        ("tail, top edge", Spot::Tail, Edge::Top),
        ("tail, bottom edge", Spot::Tail, Edge::Bottom),
    ];
    TableReply {
        heading: "Marks, from the far point of its upper end".to_owned(),
        columns: ["mark", "left face", "middle", "right face"].map(str::to_owned).to_vec(),
        rows: all.into_iter().filter_map(row).collect(),
        notes: vec!["Left and right as one looks up it. To the nearest sixteenth.".to_owned()],
    }
}

fn working(read: &Read, answer: &HipAnswer) -> Part {
    let corner = &read.hip.corner;
    let mut part = Part::new("Lengths and cuts");
    let mut step = |symbol, meaning: &str, expression: String, value: (f64, &'static str)| {
        part.step(symbol, meaning, expression, value, Basis::Arithmetic);
    };
    let slope = |side| corner.pitch(side).rise_in_twelve() / 12.0;
    let angle = corner.angle().degrees();
    let plan = corner.plan_angle(Side::A);
    step(
        "d_A",
        "angle in plan to eave A, tan d_A = m_B sin W / (m_A + m_B cos W)",
        format!("m_A = {}, m_B = {}, W = {}°", figure(slope(Side::A)), figure(slope(Side::B)), figure(angle)),
        (plan.degrees(), "°"),
    );
    step(
        "t",
        "its slope, tan t = m_A sin d_A",
        format!("{} × sin {}°", figure(slope(Side::A)), figure(plan.degrees())),
        (corner.slope().degrees(), "°"),
    );
    step("R_h", "its level run, from the wall to the middle of the ridge", String::new(), (answer.run.inches(), "in"));
    step(
        "L_h",
        "line length, R_h / cos t",
        format!("{} / cos {}°", figure(answer.run.inches()), figure(corner.slope().degrees())),
        (answer.line_length.inches(), "in"),
    );
    step("s", "shortening, level along it", String::new(), (answer.shortening.inches(), "in"));
    step(
        "L_a",
        "top cut to heel, (R_h - s) / cos t",
        format!(
            "({} - {}) / cos {}°",
            figure(answer.run.inches()),
            figure(answer.shortening.inches()),
            figure(corner.slope().degrees())
        ),
        (answer.actual.inches(), "in"),
    );
    for (side, symbol) in [(Side::A, "β_A"), (Side::B, "β_B")] {
        let words = format!(
            "sin t / tan d = sin {}° / tan {}°",
            figure(corner.slope().degrees()),
            figure(corner.plan_angle(side).degrees())
        );
        step(symbol, "backing, tan β = sin t / tan d", words, (corner.backing(side).degrees(), "°"));
    }
    step("k", "dropped, plumb", String::new(), (answer.drop.inches(), "in"));
    part
}

fn drawn(read: &Read, answer: &HipAnswer) -> DrawnHip {
    let (stick, corner) = (&answer.stick, &read.hip.corner);
    let top = |spot| stick.at(spot, Edge::Top, Face::Right).unwrap_or(Length::ZERO);
    let (head, heel, tail) = (top(Spot::Head), top(Spot::Heel), top(Spot::Tail));
    let mut along_top = vec![(head, heel, words::length(heel - head))];
    if tail - heel > Length::from_inches(0.5) {
        along_top.push((heel, tail, words::length(tail - heel)));
    }
    let mut low_end = Vec::new();
    if let HipSeat::Cut { seat, .. } = answer.seat {
        low_end.push(format!("seat {}", words::inches(seat)));
    }
    low_end.push(format!("HAP {}", words::inches(answer.above_plate)));
    let blades: Vec<String> = stick
        .cuts
        .iter()
        .filter(|cut| matches!(cut.spot, Spot::Head | Spot::SecondHead))
        .map(|cut| degrees(cut.cut.tilt))
        .collect();
    let high_end = vec![
        format!("plumb {}", degrees(answer.plumb_cut.from_square)),
        on_diagonal(answer.plumb_cut),
        format!("blade {}", blades.join(", ")),
    ];
    DrawnHip {
        cut: DrawnStick { stick: stick.clone(), along_top, low_end, high_end },
        plan: DrawnCornerPlan {
            is_valley: corner.meeting() == Meeting::Valley,
            angle: corner.angle(),
            run: read.common.run,
            plan_angles: (corner.plan_angle(Side::A), corner.plan_angle(Side::B)),
            jacks: Vec::new(),
            of_b: false,
        },
    }
}
