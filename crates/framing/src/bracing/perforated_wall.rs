//! A wall with openings that is held down at its two ends, read and answered; beside it the same wall in pieces.

use bracing::{
    Nailing, Opening, PerforatedAnswer, PerforatedWall, SegmentedWall, Strength, check_perforated, check_segmented,
};
use measure::{Force, Length};
use members::working::{Basis, Part};
use standards::sdpws_2015::{aspect, perforated, table_4_3};

use super::ends::{self, Demand, PUSHED, check};
use super::shear_wall::{nail_it, strength_part, strongest, tried, tried_reply};
use super::{faces, frame, lean, level_joints, lists};
use crate::quick::read::{plf, pounds as force};
use crate::quick::reply::{Drawn, DrawnOpening, DrawnPiece, DrawnWall, QuickReply, TableReply};
use crate::quick::say::{fact, force_fact, pounds, rule, unworked};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure, percent};

pub(super) const FIELDS: &[&str] = &[
    "wall_pieces",
    "wall_openings",
    "wall_high",
    "wall_push",
    "wall_dead",
    "drawn_size",
    "schedule_lines",
    "end_post",
    "rod_in",
    "held_on",
    "hold_down_label",
    "hold_down_gives",
    "brace_studs",
    "brace_spacing",
    "panels_lie",
    "sheet_long",
    "other_face",
    "nailed_wet",
    "species",
    "grade",
    "provisions",
    "seismic_design_category",
];

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let pieces = lists::lengths(reading, "wall_pieces", (0.5, 100.0))?;
    let openings = lists::openings(reading, "wall_openings")?;
    let drawn = frame::drawn(reading);
    frame::other_face(reading);
    if reading.problems().next().is_some() {
        return None;
    }
    let reading = &*reading;
    let framing = frame::framing(reading)?;
    let height = reading.length("wall_high")?;
    let wall = PerforatedWall { height, pieces, openings, shear: force(reading, "wall_push") };
    let about = About::of(reading, FIELDS);
    if let Some(sentence) = frame::earthquakes(reading) {
        return Some(unworked(about, sentence));
    }
    let all = tried(reading, drawn, &framing, (wall.height, &wall.pieces));
    let checked = |strength: &Strength| check_perforated(&wall, strength).map_err(|outside| outside.to_string());
    let used = |one: &super::shear_wall::Tried| one.strength.as_ref().ok().and_then(|strength| checked(strength).ok());
    let smallest = all.iter().position(|one| used(one).is_some_and(|answer| answer.used <= 1.0));
    let judged = match drawn {
        Some(drawn) => all.iter().position(|one| one.nailing == drawn)?,
        None => smallest.unwrap_or_else(|| strongest(&all)),
    };
    let about_it = &all[judged];
    let answered =
        about_it.strength.as_ref().map_err(Clone::clone).and_then(|strength| Ok((strength, checked(strength)?)));
    let mut reply = match answered {
        Ok((strength, answer)) => {
            let instead = smallest.map(|index| all[index].nailing);
            reply(reading, about, (&wall, &answer), (about_it.nailing, strength, instead))
        }
        Err(sentence) => return Some(unworked(about, sentence)),
    };
    reply.sizes = all.iter().map(|one| tried_reply(one, used(one).map(|answer| answer.used))).collect();
    reply.smallest = smallest.map(|index| all[index].nailing.to_string()).into_iter().collect();
    Some(reply)
}

fn reply(
    reading: &Reading,
    mut about: About<'_>,
    (wall, answer): (&PerforatedWall, &PerforatedAnswer),
    (nailing, strength, instead): (Nailing, &Strength, Option<Nailing>),
) -> QuickReply {
    let mut reply = QuickReply { size: nailing.to_string(), ..QuickReply::default() };
    let (whole, tension) = (whole(wall), tension(reading, wall, answer));
    let dead = ends::dead_on_post(reading, plf(reading, "wall_dead"));
    let demand = Demand { tension, compression: answer.end_force, dead, height: wall.height };
    let mut checks = vec![check("shear in the panels", (wall.shear.pounds(), answer.capacity.pounds(), "lb"), PUSHED)];
    checks.extend(ends::checks(reading, &mut about, demand));
    ends::judge(&mut reply, checks);
    let uplift = answer.plate_uplift.plf().ceil();
    reply.facts.push(force_fact("tension_lb", "each end of the wall is held down for", tension.max(Force::ZERO)));
    reply.facts.push(force_fact("compression_lb", "the end of every piece is pressed by", answer.end_force));
    let each = format!("{} plf", figure(uplift));
    reply.facts.push(fact("plate_uplift_plf", "the bottom plate lifts and shears between the ends", uplift, each));
    reply.facts.push(force_fact("capacity_lb", "the wall carries", answer.capacity));
    reply.facts.push(fact("opening_factor", "opening factor", answer.factor, figure(answer.factor)));
    reply.action = if answer.used > 1.0 {
        let mut says = vec!["The wall carries too little so nailed.".to_owned()];
        says.extend(instead.map(|nailing| format!("Nail it {nailing} instead.")));
        says.push("Or hold down every piece at its own ends, as below, or make the openings lower.".to_owned());
        says.push("Or have an engineer design a portal frame or a steel frame there.".to_owned());
        says
    } else {
        vec![nail_it(reading, &nailing, true)]
    };
    reply.action.extend(level_joints::action(reading, wall.height, true));
    let ends_say = ends::action(demand, &reply.checks);
    reply.action.extend(ends_say);
    reply.action.push(format!(
        "Under every full-height piece bolt or nail the bottom plate for {} plf of shear and {} plf of uplift.",
        figure(uplift),
        figure(uplift)
    ));
    reply.needs.push(in_pieces(reading, wall, strength));
    about.part(strength_part(strength));
    about.part(openings_part(wall, answer));
    if let Some(lean) =
        lean::lean(reading, &nailing, (strength, answer.unit_shear), (wall.height, answer.counted), tension)
    {
        lean::say(&mut reply, &mut about, lean, wall.height);
    }
    faces::say(reading, &mut reply, &mut about, strength);
    ends::joints(&mut reply, strength, &nailing);
    reply.tables.push(factors_table(answer, whole));
    ends::cautions(reading, &mut about);
    about.say("Panels close the wall above and below every opening, but where open is written; the sheathing is the same all along.");
    about.say("The top plate, or a strap, brings the push to every piece: nothing of it is cut between the ends.");
    about.say("No strap runs around the openings and none is counted on: that is another design, and an engineer's.");
    reply.drawn = Drawn::Wall(drawn(reading, wall, (nailing, tension)));
    reply.about = about.finish();
    reply
}

/// Length from end to end.
fn whole(wall: &PerforatedWall) -> Length {
    let openings = wall.openings.iter().map(|opening| opening.width);
    wall.pieces.iter().copied().chain(openings).fold(Length::ZERO, |sum, one| sum + one)
}

/// Pull at each end, with what dead load takes off it: half of the wall's stands on each end.
fn tension(reading: &Reading, wall: &PerforatedWall, answer: &PerforatedAnswer) -> Force {
    let held = plf(reading, "wall_dead") * bracing::OF_DEAD * whole(wall) / 2.0;
    answer.end_force - held
}

/// The same wall with every piece held down at its own ends.
fn in_pieces(reading: &Reading, wall: &PerforatedWall, strength: &Strength) -> crate::quick::reply::RuleReply {
    let ends = frame::ends(reading).map(|(_, ends)| ends);
    let answer = ends.map(|ends| {
        let dead = plf(reading, "wall_dead");
        let wall = SegmentedWall { height: wall.height, pieces: wall.pieces.clone(), shear: wall.shear, dead, ends };
        check_segmented(&wall, strength)
    });
    let Some(answer) = answer.filter(|answer| answer.capacity > Force::ZERO) else {
        return rule("In pieces", None, "nothing counts", Vec::new());
    };
    let counted = answer.pieces.iter().filter(|piece| piece.factor > 0.0).count();
    let most = answer.pieces.iter().map(|piece| piece.tension).fold(Force::ZERO, Force::max);
    rule(
        "The same wall in pieces",
        None,
        pounds(answer.capacity),
        vec![
            format!(
                "With a hold-down at both ends of each piece, {} of them, the same nails carry {}: {} used.",
                counted * 2,
                pounds(answer.capacity),
                percent(answer.used)
            ),
            format!("The hardest end is then held down for {}.", pounds(most)),
        ],
    )
}

fn openings_part(wall: &PerforatedWall, answer: &PerforatedAnswer) -> Part {
    let mut part = Part::new("The openings");
    let source = Basis::Published(perforated::LIMITS);
    let counted = answer.counted.feet();
    part.step("ΣL", "full-height length that counts", "", (counted, "ft"), source);
    part.step("C_o", "opening factor by the tallest opening", "", (answer.factors.0, ""), source);
    part.step("C_o", "opening factor by the area of all", "", (answer.factors.1, ""), source);
    let expression = format!("{} / ({} × {})", figure(wall.shear.pounds()), figure(answer.factor), figure(counted));
    part.step("v_max", "the hardest unit shear", expression, (answer.unit_shear.plf(), "plf"), Basis::Arithmetic);
    let expression = format!("{} × {}", figure(answer.unit_shear.plf()), figure(wall.height.feet()));
    part.step("T", "pull at each end, before dead load", expression, (answer.end_force.pounds(), "lb"), source);
    part
}

fn factors_table(answer: &PerforatedAnswer, whole: Length) -> TableReply {
    let row = |what: &str, much: String| vec![what.to_owned(), much];
    TableReply {
        heading: "How the openings count".to_owned(),
        columns: ["what", "how much"].map(str::to_owned).to_vec(),
        rows: vec![
            row("Whole length", words::length(whole)),
            row("Full height that counts", words::length(answer.counted)),
            row("Factor by the tallest", figure(answer.factors.0)),
            row("Factor by the area", figure(answer.factors.1)),
        ],
        notes: vec!["The smaller factor is used. The 2021 edition has an equation of its own, which was not read; the smaller of these two stands for it.".to_owned()],
    }
}

fn drawn(reading: &Reading, wall: &PerforatedWall, (nailing, tension): (Nailing, Force)) -> DrawnWall {
    let studs = reading.length("brace_spacing").unwrap_or(Length::from_inches(16.0));
    let pull = if tension > Force::ZERO { pounds(tension) } else { String::new() };
    let last = wall.pieces.len().saturating_sub(1);
    let at = |here: bool| if here { pull.clone() } else { String::new() };
    let counts = |length: Length| aspect::ratio(wall.height, length, nailing.sheathing, true).is_ok();
    let piece = |(index, length): (usize, &Length)| DrawnPiece {
        length: *length,
        counts: counts(*length),
        left: at(index == 0),
        right: at(index == last),
    };
    let opening =
        |of: &Opening| DrawnOpening { width: of.width, height: of.height.min(wall.height), sheathed: of.sheathed };
    DrawnWall {
        storeys: vec![(wall.height, pounds(wall.shear))],
        pieces: wall.pieces.iter().enumerate().map(piece).collect(),
        openings: wall.openings.iter().map(opening).collect(),
        studs,
        nails: Some((nailing.edge, table_4_3::field_spacing(nailing.thickness, studs))),
        post: frame::ends(reading).map_or(Length::from_inches(3.0), |(_, ends)| ends.post),
        holds: Vec::new(),
        level_joints: level_joints::of(reading, wall.height),
        blocked: true,
    }
}
