//! A beam, a girder, a trimmer or a header of a floor, read and answered.

use loads::site::SiteLoads;
use lumber::candidates::beam_candidates;
use measure::{AreaLoad, Force, Length, LineLoad};
use members::beam::Load;
use members::carrying_beam::{CarryingBeam, FlushSet, check_beam, flush_set};
use members::flexure::{Acting, Case, Edges, FlexureAnswer, Held, LoadedFrom, Piece};
use members::working::{Basis, Part, figure};
use standards::irc_2021::{r502, r502_6};

use super::more_loads;
use super::read::{LABEL_FIELDS, chosen, labelled, limits, plf, psf, sawn, spans, wood};
use super::say::{cautions, drawn_beam, fact, force_fact, held_down, length_fact, of_flexure, rule, unworked};
use crate::quick::reply::{Drawn, QuickReply, RuleReply};
use crate::reading::{Origin, Reading};
use crate::site::about::About;
use crate::words;

pub(super) const FIELDS: &[&str] = &[
    "beam_spans",
    "left_overhang",
    "right_overhang",
    "floor_strip",
    "floors_carried",
    "floor_dead",
    "floor_live",
    "walls_on_it",
    "roof_strip",
    "roof_dead",
    "roof_live",
    "ground_snow",
    "thermal",
    "roof_snow",
    "more_loads",
    "set",
    "flush_joists",
    "joists_proud",
    "joists_now",
    "joists_later",
    "strap",
    "rests_on",
    "beam_bearing",
    "top_held_every",
    "room_deep",
    "room_thick",
    "species",
    "grade",
    "service",
    "incised",
    "plies_share_load",
    "drawn_size",
    LABEL_FIELDS[0],
    LABEL_FIELDS[1],
    LABEL_FIELDS[2],
    LABEL_FIELDS[3],
    LABEL_FIELDS[4],
    LABEL_FIELDS[5],
    LABEL_FIELDS[6],
    LABEL_FIELDS[7],
    "sag_limit",
    "total_sag_limit",
    "found_size",
    "found_grade",
    "found_bearing",
];

const USED: &[&str] = &[
    "beam_spans",
    "floor_strip",
    "floors_carried",
    "floor_dead",
    "floor_live",
    "set",
    "rests_on",
    "beam_bearing",
    "top_held_every",
    "species",
    "grade",
    "service",
    "plies_share_load",
];

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let (input, flush) = input(reading)?;
    let reading = &*reading;
    let mut about = About::of(reading, USED);
    let limits = limits(reading, &mut about, (360.0, 240.0), "floors, IRC Table R301.7");
    let input = CarryingBeam { limits, ..input };
    let answer = match check_beam(&input) {
        Ok(answer) => answer,
        Err(sentence) => return Some(unworked(about, sentence)),
    };
    let mut reply = of_flexure(&answer, (input.species, input.grade));
    facts(&mut reply, &input, &answer, flush.as_ref());
    reply.by_code = by_code(&input, reading, flush.as_ref());
    reply.action.extend(held_down(&reply.supports, "it"));
    says(&mut about, reading, &input, flush.as_ref());
    about.part(strips_part(reading));
    answer.working.iter().cloned().for_each(|part| about.part(part));
    reply.drawn = Drawn::Beam(drawn_beam(&answer, (input.length(), input.places()), input.loads.clone()));
    reply.about = about.finish();
    Some(reply)
}

/// A flush beam: its joists' size by name, and how it is set among them once its own depth is known.
struct Flush {
    joists: String,
    depth: Length,
    proud: Length,
    moisture: (f64, f64),
    strap: Length,
}

impl Flush {
    fn set(&self, beam: Length) -> FlushSet {
        flush_set(beam, self.depth, self.proud, self.moisture, self.strap)
    }
}

fn input(reading: &mut Reading) -> Option<(CarryingBeam, Option<Flush>)> {
    let (species, grade, conditions) = wood(reading)?;
    let spans = spans(reading, "beam_spans")?;
    let overhangs =
        (reading.length("left_overhang").unwrap_or_default(), reading.length("right_overhang").unwrap_or_default());
    let length = spans.iter().copied().fold(overhangs.0 + overhangs.1, |sum, span| sum + span);
    let mut loads = strips(reading, length)?;
    if let Some(text) = reading.word("more_loads").map(str::to_owned) {
        match more_loads::read(&text, length) {
            Ok(more) => loads.extend(more),
            Err(problem) => {
                reading.refuse("more_loads", problem);
                return None;
            }
        }
    }
    let labelled = labelled(reading);
    let tried = beam_candidates(species, grade).map(Piece::Lumber).chain(labelled.clone());
    let chosen = chosen(reading, "drawn_size", tried, (species, grade));
    let is_flush = reading.word("set")? == "flush";
    let flush = if is_flush { Some(flush(reading, (species, grade))?) } else { None };
    let held = reading.length("top_held_every")?;
    let input = CarryingBeam {
        spans,
        overhangs,
        loads,
        bearing: reading.length("beam_bearing")?,
        // Wood of its own kind bears as much as it does, steel and masonry more.
        below: None,
        edges: Edges {
            top: if held > Length::ZERO { Held::Every(held) } else { Held::Along },
            bottom: Held::AtSupports,
        },
        loaded_from: if is_flush { LoadedFrom::Sides } else { LoadedFrom::Top },
        own_weight_share: 1.0,
        room: reading.length("room_deep"),
        breadth_room: reading.length("room_thick"),
        species,
        grade,
        conditions,
        plies_share_load: reading.word("plies_share_load")? == "yes",
        limits: members::check::DeflectionLimits { live: 360.0, total: 240.0 },
        labelled,
        chosen,
    };
    Some((input, flush))
}

fn flush(reading: &mut Reading, wood: (lumber::Species, lumber::Grade)) -> Option<Flush> {
    let name = reading.word("flush_joists")?.to_owned();
    match sawn(&name, wood) {
        Ok(joist) => Some(Flush {
            joists: joist.name(),
            depth: joist.section().depth,
            proud: reading.length("joists_proud")?,
            moisture: (reading.number("joists_now")?, reading.number("joists_later")?),
            strap: reading.length("strap")?,
        }),
        Err(problem) => {
            reading.refuse("flush_joists", problem);
            None
        }
    }
}

/// The strips of floor and roof that it carries, along all of it.
fn strips(reading: &Reading, length: Length) -> Option<Vec<Acting>> {
    let along = |case, load: LineLoad| Acting { case, load: Load::uniform(Length::ZERO, length, load) };
    let floors: f64 = reading.word("floors_carried")?.parse().ok()?;
    let floor = reading.length("floor_strip")? * floors;
    let roof = reading.length("roof_strip").unwrap_or_default();
    let mut loads = vec![
        along(Case::Dead, psf(reading, "floor_dead")? * floor + plf(reading, "walls_on_it")),
        along(Case::Live, psf(reading, "floor_live")? * floor),
    ];
    if roof > Length::ZERO {
        loads.push(along(Case::Dead, psf(reading, "roof_dead")? * roof));
        loads.push(along(Case::RoofLive, psf(reading, "roof_live")? * roof));
        loads.push(along(Case::Snow, roof_snow(reading)? * roof));
    }
    loads.retain(|one| !matches!(one.load, Load::Distributed { start, .. } if start == LineLoad::ZERO));
    Some(loads)
}

/// Snow on the roof: as given, else balanced from the ground's, as a header counts it.
fn roof_snow(reading: &Reading) -> Option<AreaLoad> {
    let mut site = SiteLoads::assumed();
    site.given_roof_snow = psf(reading, "roof_snow");
    site.ground_snow = psf(reading, "ground_snow")?;
    site.snow.thermal = crate::header::thermal(reading.word("thermal")?).factor();
    Some(site.roof_snow().load)
}

fn facts(reply: &mut QuickReply, input: &CarryingBeam, answer: &FlexureAnswer, flush: Option<&Flush>) {
    let most = answer.forces.iter().map(|force| force.most).fold(Force::ZERO, Force::max);
    reply.facts.push(force_fact("reaction_lb", "heaviest support", most));
    if input.loaded_from == LoadedFrom::Sides {
        let first = answer.forces.first().map_or(Force::ZERO, |force| force.most);
        reply.facts.push(force_fact("hanger_lb", "a hanger at its first end carries", first));
    }
    if let Some(flush) = flush {
        let set = flush.set(answer.about().piece.depth());
        let step = if set.step < Length::ZERO { "the joists hang below it" } else { "it hangs below the joists" };
        reply.facts.push(length_fact("step_in", step, set.step.abs()));
        let between = format!(
            "{:.2} in ({:.2} to {:.2})",
            set.drop.inches(),
            set.drop_between.0.inches(),
            set.drop_between.1.inches()
        );
        reply.facts.push(fact("drop_in", "the joists' tops drop as they dry", set.drop.inches(), between));
        reply.facts.push(length_fact("pack_in", "packing under the straps", set.pack));
    }
}

fn by_code(input: &CarryingBeam, reading: &Reading, flush: Option<&Flush>) -> Vec<RuleReply> {
    let masonry = reading.word("rests_on") == Some("masonry");
    let least = if masonry { r502_6::ON_MASONRY } else { r502_6::ON_WOOD };
    let says = vec![format!("{} at the least here. {}.", words::length(least), words::source(r502_6::BEARING))];
    let mut rules = vec![rule("Bearing", Some(input.bearing >= least), words::length(input.bearing), says)];
    if flush.is_some() {
        let says = vec![
            format!(
                "In a floor opening: a header over {} is doubled, over {} it hangs in hangers; tail joists over {} hang or sit on a ledger.",
                words::length(r502::SINGLE_HEADER),
                words::length(r502::HEADER_IN_HANGERS),
                words::length(r502::TAIL_IN_HANGERS)
            ),
            format!("{}.", words::source(r502::OPENINGS)),
        ];
        rules.push(rule("Openings in floors", None, "hangers", says));
    }
    rules
}

fn says(about: &mut About<'_>, reading: &Reading, input: &CarryingBeam, flush: Option<&Flush>) {
    cautions(about);
    if input.spans.len() > 1 {
        about.say("It runs on over its middle supports in one piece. Cut over a support it is two beams: work each span by itself. Live load is also left off spans, where that is harder on it.");
    }
    if let Some(flush) = flush {
        about.say(format!("It is set among {} in hangers: what a hanger must carry is the joist's own reaction, at its own spacing; see Joist.", flush.joists));
        about.say("Hangers are not packed up to fake a height: the joist sits on its seat.");
    }
    match reading.word("rests_on") {
        Some("steel") => about.say("Steel saddles and side plates are taken as supports as long as the bearing; they and their bolts are the engineer's or the maker's."),
        Some("masonry") => about.say("On masonry or concrete: an air space or a break against damp, and treated or dry wood."),
        _ => {}
    }
    if input.own_weight_share > 0.0 {
        about.say("Its own weight is counted. Plies are nailed or bolted together as the drawing or the maker says.");
    }
    let assumed = |id: &str| reading.get(id).is_some_and(|value| value.origin == Origin::Assumed);
    if assumed("beam_spans") {
        about.ask("beam_spans", "What are its spans, middle to middle of the supports?");
    }
    if assumed("floor_strip") {
        about.ask("floor_strip", "How wide a strip of floor does it carry?");
    }
    if reading.number("roof_strip").is_some() && reading.number("roof_snow").is_none() {
        about.say(
            "Snow on the roof is the balanced load from the ground's; a valley or a higher roof beside it brings more.",
        );
        if assumed("ground_snow") {
            about.ask("ground_snow", "What is the ground snow load of the place? Ask the building department.");
        }
    }
    about.caution("A beam without its posts' path to the footing is not finished: blocks through the floor, a footing under the last post.");
}

fn strips_part(reading: &Reading) -> Part {
    let mut part = Part::new("Strips");
    let strip = reading.length("floor_strip").unwrap_or_default();
    let floors: f64 = reading.word("floors_carried").and_then(|word| word.parse().ok()).unwrap_or_default();
    for (symbol, meaning, id) in [("D", "floor dead", "floor_dead"), ("L", "floor live", "floor_live")] {
        let load = psf(reading, id).unwrap_or_default();
        let expression = format!("{} × {} psf × {} ft", figure(floors), figure(load.psf()), figure(strip.feet()));
        part.step(symbol, meaning, expression, ((load * strip * floors).plf(), "plf"), Basis::Input(id));
    }
    if let Some(roof) = reading.length("roof_strip") {
        for (symbol, meaning, id) in
            [("D", "roof dead", "roof_dead"), ("L_r", "roof live", "roof_live"), ("S", "roof snow", "roof_snow")]
        {
            let load = if id == "roof_snow" { roof_snow(reading) } else { psf(reading, id) }.unwrap_or_default();
            let expression = format!("{} psf × {} ft", figure(load.psf()), figure(roof.feet()));
            part.step(symbol, meaning, expression, ((load * roof).plf(), "plf"), Basis::Input(id));
        }
    }
    part
}
