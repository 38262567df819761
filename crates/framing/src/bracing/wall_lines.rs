//! The push of the wind on a house, brought to its wall lines, read and answered.

use bracing::wall_lines::{
    AT_A_SIDE, Direction, HouseAnswer, LineForce, OpenSide, StoreyLines, TRIBUTARY, wind_to_lines,
};
use measure::Force;
use members::check::Verdict;
use members::working::{Basis, Part};

use super::ON_THE_HARDEST_LINE;
use super::wall_lines_house::{self, Looked, Pushed, pushes_id};
use crate::quick::reply::{Drawn, DrawnLine, DrawnLines, QuickReply, TableReply};
use crate::quick::say::{capital, force_fact, length_fact, pounds, unworked};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

pub(super) const FIELDS: &[&str] = &[
    "push_direction",
    "lines_across",
    "lines_along",
    "pushes_across",
    "pushes_along",
    "plain_rectangle",
    "building_length",
    "house_width",
    "storeys",
    "eave_height",
    "roof_kind",
    "roof_pitch",
    "wind_speed",
    "exposure",
    "seismic_design_category",
];

/// What every answer rests on.
const USED: &[&str] = &["push_direction", "plain_rectangle", "building_length", "house_width"];
/// What it rests on besides where Site works the push out.
const OF_SITE: &[&str] =
    &["storeys", "eave_height", "roof_kind", "roof_pitch", "wind_speed", "exposure", "hill", "ground_elevation"];

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let looked = wall_lines_house::read(reading)?;
    let reading = &*reading;
    let by_site = reading.word(pushes_id(looked.wind)).is_none();
    let used: Vec<&str> = USED.iter().chain(if by_site { OF_SITE } else { &[] }).copied().collect();
    let mut about = About::of(reading, &used);
    wall_lines_house::taken(&mut about, reading);
    let pushed = match &looked.pushed {
        Ok(pushed) => pushed,
        Err(sentence) => {
            about.ask(pushes_id(looked.wind), "What does the drawing say pushes at each storey, from the top down?");
            return Some(unworked(about, sentence.clone()));
        }
    };
    let answer = match wind_to_lines(&looked.house) {
        Ok(answer) => answer,
        Err(outside) => return Some(unworked(about, outside.to_string())),
    };
    if by_site && let Some(outline) = crate::site::input::house(reading) {
        crate::site::cases(&mut about, &outline);
    }
    Some(reply(about, &looked, pushed, &answer))
}

/// A storey in words, counted from the ground.
const fn storey_words(from_top: usize, storeys: usize) -> &'static str {
    match (storeys - from_top, storeys) {
        (1, 1) => "the storey",
        (1, _) => "the first storey",
        (2, _) => "the second storey",
        _ => "the third storey",
    }
}

const fn wind_words(wind: Direction) -> &'static str {
    match wind {
        Direction::Crosswise => "across the house",
        Direction::Lengthwise => "along the house",
    }
}

/// Where a line stands, in words.
fn place(wind: Direction, line: &LineForce) -> String {
    let side = if wind == Direction::Crosswise { "the left end" } else { "the front" };
    format!("{} from {side}", words::length(line.at))
}

/// The line that is given the most: its storey and itself; of equals the lowest, and the first from the side.
fn hardest(storeys: &[StoreyLines]) -> Option<(usize, &LineForce)> {
    let all =
        storeys.iter().enumerate().flat_map(|(index, storey)| storey.lines.iter().rev().map(move |line| (index, line)));
    all.max_by(|(_, a), (_, b)| a.total().pounds().total_cmp(&b.total().pounds()))
}

fn reply(mut about: About<'_>, looked: &Looked, pushed: &Pushed, answer: &HouseAnswer) -> QuickReply {
    let of_wind = if looked.wind == Direction::Lengthwise { &answer.lengthwise } else { &answer.crosswise };
    let mut reply = QuickReply { drawn: Drawn::Lines(drawn(looked, of_wind.as_deref().ok())), ..QuickReply::default() };
    if let Err(outside) = of_wind {
        let open = answer.open_sides.iter().any(|side| side.wind == looked.wind);
        reply.size = if open { "Open side" } else { "No line below" }.to_owned();
        reply.action.push(outside.to_string());
    }
    turned(&mut reply, looked, &answer.open_sides);
    if let Ok(storeys) = of_wind {
        shared_out(&mut reply, &mut about, looked, pushed, storeys);
    }
    if of_wind.is_err() || !answer.open_sides.is_empty() {
        reply.verdict = words::verdict(Verdict::Outside).to_owned();
        reply.reason = reply.action.first().cloned();
    }
    crate::quick::say::cautions(&mut about);
    about.caution("Wind alone is worked here. In earthquake country (Design Category C for houses in a row, D0 and up) an engineer designs the walls.");
    about.caution("The wind blows from all four sides: look at the lines both ways.");
    about.say("Floors and roofs are taken to bend between the lines: each line takes the wind half-way to the next one, and what the line over it brings.");
    about.say("The lines stand through all storeys. A line that stops over a floor is for an engineer.");
    about.say("The half storey at the ground goes into the foundation, not into these lines.");
    reply.about = about.finish();
    reply
}

/// Figure, numbers, table and working where every side has its line.
fn shared_out(
    reply: &mut QuickReply,
    about: &mut About<'_>,
    looked: &Looked,
    pushed: &Pushed,
    storeys: &[StoreyLines],
) {
    let Some((level, line)) = hardest(storeys) else { return };
    let where_it_is = place(looked.wind, line);
    let storey = storey_words(level, storeys.len());
    reply.size = pounds(line.total());
    ON_THE_HARDEST_LINE.clone_into(&mut reply.verdict);
    reply.action.push(format!("The line {where_it_is} is given the most: {} in {storey}.", pounds(line.total())));
    reply.action.push("Give the walls of each line its own push, from the table, and hold their ends down.".to_owned());
    reply
        .action
        .push("The floor or roof between two lines must bring it there, and a plate that runs through.".to_owned());
    reply.facts.push(force_fact("hardest_lb", format!("the line {where_it_is}, {storey}"), line.total()));
    reply.facts.push(length_fact("hardest_at_in", "that line stands at", line.at));
    reply.facts.push(length_fact("hardest_tributary_in", "breadth of the face that comes to it", line.tributary));
    for (index, storey) in storeys.iter().enumerate() {
        let number = storeys.len() - index;
        let what = format!("all lines of {} together", storey_words(index, storeys.len()));
        reply.facts.push(force_fact(&format!("shear_{number}_lb"), what, storey.shear));
    }
    about.part(working(looked, pushed, storeys));
    reply.tables.push(table(looked, storeys));
}

/// What a side without a line does, and who must look at it.
fn turned(reply: &mut QuickReply, looked: &Looked, open: &[OpenSide]) {
    let storeys = looked.house.storeys.len();
    let mut last = None;
    for side in open {
        let storey = storey_words(side.storey, storeys);
        let reach = side.reach.map_or_else(
            || "no line at all".to_owned(),
            |reach| format!("no line within {} of one side", words::length(reach)),
        );
        let wind = wind_words(side.wind);
        let turns = format!("{}: wind {wind} finds {reach}. The floor turns.", capital(storey));
        if reply.action.last() != Some(&turns) {
            reply.action.push(turns);
        }
        // One line alone leaves two sides open, and turns the floor once.
        let first = last.replace((side.storey, side.wind)) != Some((side.storey, side.wind));
        let known = first && (side.wind == looked.wind || looked.other_known);
        if let Some(couple) = side.couple.filter(|couple| known && *couple > Force::from_pounds(0.5)) {
            let across = wind_words(side.wind.other());
            reply.action.push(format!(
                "That pushes one of the outermost lines {across} and pulls the other by {}, besides what any table gives.",
                pounds(couple)
            ));
            let what = format!("turning of {storey}, on the outermost lines {across}");
            reply.facts.push(force_fact(&format!("couple_{}_lb", storeys - side.storey), what, couple));
        }
    }
    if !open.is_empty() {
        reply.action.push("An engineer must look at every line of such a storey.".to_owned());
    }
}

fn working(looked: &Looked, pushed: &Pushed, storeys: &[StoreyLines]) -> Part {
    let mut part = Part::new(format!("Wind {}, brought to the lines", wind_words(looked.wind)));
    let breadth = looked.house.breadth(looked.wind);
    for (index, (storey, force)) in storeys.iter().zip(&pushed.forces).enumerate() {
        let name = storey_words(index, storeys.len());
        part.step("F", format!("at the top of {name}, allowable stress"), "", (force.pounds(), "lb"), pushed.source);
        let load = (*force / breadth).plf();
        let expression = format!("{} / {}", figure(force.pounds()), figure(breadth.feet()));
        part.step("w", format!("{name}: on a foot of its face"), expression, (load, "plf"), Basis::Arithmetic);
        for line in &storey.lines {
            let expression =
                format!("{} × {} + {}", figure(load), figure(line.tributary.feet()), figure(line.above.pounds()));
            let meaning = format!("{name}: the line {}", place(looked.wind, line));
            part.step("V", meaning, expression, (line.total().pounds(), "lb"), Basis::Published(TRIBUTARY));
        }
        let sum = storey.lines.iter().map(|line| figure(line.total().pounds())).collect::<Vec<_>>().join(" + ");
        part.step("ΣV", format!("{name}: all its lines"), sum, (storey.shear.pounds(), "lb"), Basis::Arithmetic);
    }
    part
}

fn table(looked: &Looked, storeys: &[StoreyLines]) -> TableReply {
    let mut rows = Vec::new();
    for (index, storey) in storeys.iter().enumerate() {
        let name = capital(storey_words(index, storeys.len()));
        for line in &storey.lines {
            rows.push(vec![
                format!("{name}, at {}", words::length(line.at)),
                words::length(line.tributary),
                pounds(line.own),
                pounds(line.above),
                pounds(line.total()),
            ]);
        }
        let of = |part: fn(&LineForce) -> Force| pounds(storey.lines.iter().map(part).sum());
        let breadth = words::length(looked.house.breadth(looked.wind));
        let all = [breadth, of(|line| line.own), of(|line| line.above), of(LineForce::total)];
        rows.push(core::iter::once(format!("{name}, in all")).chain(all).collect());
    }
    let from = if looked.wind == Direction::Crosswise { "left end" } else { "front" };
    TableReply {
        heading: format!("Wind {}, line by line", wind_words(looked.wind)),
        columns: ["line", "face", "its floor", "from above", "push"].map(str::to_owned).to_vec(),
        rows,
        notes: vec![format!(
            "Lines by how far they stand from the {from}. The lines of a storey come to its push; each figure is rounded up to a pound."
        )],
    }
}

fn drawn(looked: &Looked, storeys: Option<&[StoreyLines]>) -> DrawnLines {
    let (house, wind) = (&looked.house, looked.wind);
    let places = |runs| house.storeys.last().map(|storey| storey.places(runs)).unwrap_or_default();
    let lowest = storeys.and_then(<[_]>::last);
    let most = lowest.map_or(0.0, |storey| storey.lines.iter().map(|line| line.total().pounds()).fold(0.0, f64::max));
    let given = |index: usize| lowest.and_then(|storey| storey.lines.get(index)).map(LineForce::total);
    let line = |(index, at)| DrawnLine {
        at,
        force: given(index).map(pounds).unwrap_or_default(),
        hardest: given(index).is_some_and(|force| force.pounds() >= most),
    };
    let along = places(wind);
    let breadth = house.breadth(wind);
    let push = house.storeys.iter().map(|storey| storey.own_force(house, wind)).sum();
    DrawnLines {
        length: house.length,
        width: house.width,
        across: wind == Direction::Crosswise,
        open: (
            along.first().is_none_or(|first| *first > AT_A_SIDE),
            along.last().is_none_or(|last| *last < breadth - AT_A_SIDE),
        ),
        lines: along.into_iter().enumerate().map(line).collect(),
        others: places(wind.other()),
        push: pounds(push),
    }
}
