//! A floor that is laid out: joists and their marks, openings, blocks, hangers and panels.

use layout::floor::{Floor, FloorOpening, FloorPart, LaidFloor, bead_length};
use measure::Length;
use members::working::{Basis, Part};

use super::END_TO_END;
use super::drawn::DrawnLayout;
use super::drawn_joists::DrawnJoists;
use super::floor_inputs::{ReadFloor, mirrored, read, refuse};
use super::floor_tables::{cuts, hangers, panels, pulls};
use super::tape::{hook, verdict};
use crate::quick::reply::{Drawn, FactReply, QuickReply};
use crate::quick::say::{cautions, fact, length_fact};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure, inches};

pub(super) const FIELDS: &[&str] = &[
    "joists_long",
    "joists_deep",
    "joists_openings",
    "joists_every",
    "joists_hook",
    "joists_pull",
    "joists_beyond",
    "joists_stick",
    "joists_made_deep",
    "joists_flange",
    "joists_near",
    "joists_far",
    "joists_rim",
    "joists_hanger_gap",
    "joists_rows",
    "joists_walls",
    "joists_loads",
    "joists_stock",
    "joists_panels",
    "joists_gap",
    "joists_sized",
];

/// A common tube of adhesive, fluid ounces, and the bead that is drawn of it. Source: common practice.
const TUBE: (f64, Length) = (28.0, Length::from_inches(0.25));

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let given = read(reading)?;
    // What cannot be framed is said in places from the left end, as they were typed.
    let laid = match given.floor.lay_out() {
        Ok(laid) => laid,
        Err(problem) => {
            refuse(reading, &given, problem);
            return None;
        }
    };
    if !given.from_right {
        return Some(reply(reading, &given, given.floor.clone(), laid));
    }
    let floor = mirrored(&given.floor);
    match floor.lay_out() {
        Ok(laid) => Some(reply(reading, &given, floor, laid)),
        Err(problem) => {
            reading.refuse("joists_hook", format!("From the right end: {problem}"));
            None
        }
    }
}

/// What the answer rests on.
fn used(reading: &Reading) -> Vec<&'static str> {
    let is = |id: &str, word: &str| reading.word(id) == Some(word);
    let left_out = |id: &str| match id {
        "joists_made_deep" | "joists_flange" => !is("joists_stick", "made"),
        "joists_rim" | "joists_stock" => is("joists_near", "hangers") && is("joists_far", "hangers"),
        "joists_hanger_gap" => is("joists_near", "plate") && is("joists_far", "plate"),
        "joists_gap" | "joists_sized" => is("joists_panels", "no"),
        _ => false,
    };
    FIELDS.iter().copied().filter(|id| !left_out(id)).collect()
}

fn reply(reading: &Reading, given: &ReadFloor, floor: Floor, laid: LaidFloor) -> QuickReply {
    let mut about = About::of(reading, &used(reading));
    let end = if given.from_right { "right" } else { "left" };
    if floor.openings.iter().any(|opening| opening.plies.is_none()) {
        about.assume("joists_openings", "Of an opening whose line does not say it: one trimmer and one header up to 4' of header, two beyond (IRC R502.10, from memory).");
    }
    about.say(format!(
        "Every pull is from the {end} end of the plates; along the joists, lengths are from the near side."
    ));
    about.say("Engineered joists follow their maker's papers: bridging, webs, hangers, and what stands on them.");
    cautions(&mut about);
    about.caution(
        "Joists, headers and trimmers are sized in Members, and the drawing wins: here they are only laid out.",
    );
    about.part(working(&floor, &laid));
    let joists = whole_joists(&laid);
    QuickReply {
        size: format!("{joists} joists, {}", words::length(joist_length(&floor))),
        verdict: verdict(END_TO_END, laid.notices.len()),
        facts: facts(&floor, &laid),
        action: action(&floor, &laid, end),
        tables: [pulls(&laid, end), cuts(&laid)].into_iter().chain(hangers(&laid)).chain(panels(&laid, end)).collect(),
        drawn: Drawn::Layout(DrawnLayout::Joists(Box::new(DrawnJoists { floor, laid, from_right: given.from_right }))),
        about: about.finish(),
        ..QuickReply::default()
    }
}

/// What runs from side to side, doubled ones counted each.
fn whole_joists(laid: &LaidFloor) -> u32 {
    let whole = [FloorPart::EndJoist, FloorPart::Joist, FloorPart::WallJoist, FloorPart::Trimmer];
    whole.into_iter().map(|part| laid.count(part)).sum()
}

/// From joist end to joist end.
fn joist_length(floor: &Floor) -> Length {
    let short = floor.ends.iter().map(|end| match *end {
        layout::floor::JoistEnd::OnPlate { rim } => rim,
        layout::floor::JoistEnd::InHangers { gap } => gap,
        layout::floor::JoistEnd::Cantilever { .. } => Length::ZERO,
    });
    floor.width - short.sum()
}

/// Corner to corner, out to out.
fn diagonal(floor: &Floor) -> Length {
    let square = |side: Length| side.inches() * side.inches();
    Length::from_inches((square(floor.length) + square(floor.width)).sqrt())
}

fn facts(floor: &Floor, laid: &LaidFloor) -> Vec<FactReply> {
    let mut facts = Vec::new();
    let first = laid.marks.iter().find(|mark| mark.layout.is_some());
    facts.extend(first.map(|mark| length_fact("first_pull_in", "first pull on the layout", mark.pull)));
    let joists = whole_joists(laid);
    facts.push(fact("joists", "joists from side to side", f64::from(joists), joists.to_string()));
    facts.push(length_fact("joist_in", "each long", joist_length(floor)));
    facts.push(length_fact("diagonal_in", "both diagonals, out to out", diagonal(floor)));
    if let Some(subfloor) = &laid.subfloor {
        let (rows, sheets) = (subfloor.rows, subfloor.to_buy);
        facts.push(fact("rows", "rows of panels", rows as f64, rows.to_string()));
        facts.push(fact("panels", "panels to buy, openings not taken off", sheets as f64, sheets.to_string()));
        facts.push(length_fact(
            "adhesive_in",
            "adhesive, a line on every joist and in every tongue",
            subfloor.adhesive,
        ));
        if let Some(bead) = bead_length(TUBE.0, TUBE.1) {
            let tubes = (subfloor.adhesive / bead).ceil();
            facts.push(fact("tubes", "tubes of 28 fl oz, a 1/4\" bead", tubes, figure(tubes)));
        }
    }
    if !laid.hangers.is_empty() {
        facts.push(fact("hangers", "hangers", laid.hangers.len() as f64, laid.hangers.len().to_string()));
    }
    facts.extend(laid.squash_blocks.first().map(|block| length_fact("squash_block_in", "squash blocks", block.length)));
    facts
}

fn action(floor: &Floor, laid: &LaidFloor, end: &str) -> Vec<String> {
    let on_mark = |centre: Length, layout: Option<Length>| {
        layout.is_some_and(|layout| (centre - layout).abs() < Length::from_inches(1e-3))
    };
    let on_layout = laid.marks.iter().filter(|mark| on_mark(mark.centre, mark.layout)).map(|mark| mark.pull);
    let mut says = vec![hook(end, on_layout, floor.layout.pull_to)];
    says.extend(laid.notices.iter().map(ToString::to_string));
    says.extend(floor.openings.iter().map(framed));
    if let Some(block) = laid.squash_blocks.first() {
        let places: Vec<String> = laid.squash_blocks.iter().map(|block| inches(block.across)).collect();
        says.push(format!(
            "Squash blocks of {} under the loads at {}: 1/16\" longer than the joist is deep, so that they take the load first. Solid wood goes on down to the bearing. Photograph it before the ceiling closes.",
            inches(block.length),
            places.join(", ")
        ));
    }
    says.push(format!("Square the floor: both diagonals read {}, out to out.", words::length(diagonal(floor))));
    says
}

/// What an opening is framed with.
fn framed(opening: &FloorOpening) -> String {
    let plies = match opening.plies() {
        1 => "one trimmer at each side, single headers".to_owned(),
        more => format!("{more} trimmers at each side, headers of {more} plies"),
    };
    format!(
        "Opening from {} to {}, {} to {} in: {plies} {} long.",
        inches(opening.across.from),
        inches(opening.across.to),
        inches(opening.along.from),
        inches(opening.along.to),
        inches(opening.across.width())
    )
}

fn working(floor: &Floor, laid: &LaidFloor) -> Part {
    let mut part = Part::new("Lengths");
    let number = |length: Length| figure(length.inches());
    let (spacing, thickness) = (floor.layout.spacing.length(), floor.joist.thickness);
    part.step(
        "c_1",
        "first centre: one spacing from where the panels start",
        format!("{} - {}", number(spacing), number(floor.layout.start.abs())),
        ((spacing + floor.layout.start).inches(), "in"),
        Basis::Input("joists_every"),
    );
    let plain = ((floor.length - thickness) / spacing - 1e-9).ceil() + 1.0;
    part.step(
        "n",
        "joists of a plain floor, (length - one joist) / spacing, rounded up, and one",
        format!("({} - {}) / {}", number(floor.length), number(thickness), number(spacing)),
        (plain, ""),
        Basis::Arithmetic,
    );
    part.step(
        "l",
        "joist, out to out less its ends",
        format!("{} - {}", number(floor.width), number(floor.width - joist_length(floor))),
        (joist_length(floor).inches(), "in"),
        Basis::Input("joists_deep"),
    );
    if let Some(block) = laid.squash_blocks.first() {
        part.step(
            "b",
            "squash block, the joist's depth and 1/16 in",
            format!("{} + 1/16", number(floor.joist.depth)),
            (block.length.inches(), "in"),
            Basis::Arithmetic,
        );
    }
    part.step(
        "d",
        "diagonal, out to out",
        format!("√({}² + {}²)", number(floor.length), number(floor.width)),
        (diagonal(floor).inches(), "in"),
        Basis::Arithmetic,
    );
    part
}
