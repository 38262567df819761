//! A stud or a king, read and answered.

use loads::wall_wind::{main_frame_wall_pressure, wall_pressure};
use lumber::candidates::stud_candidates;
use lumber::{Member, Product, Sawn, SawnSize};
use measure::{Length, LineLoad};
use members::flexure::{Case, Piece};
use members::limit::Limit;
use members::upright::stud::{StudAnswer, StudCut, StudInput, StudWind, check_stud};
use members::upright::{Held, Uprights};
use standards::asce7_16::chapter_30::{self, WallZone};
use standards::irc_2021::r301::DeflectionOf;
use standards::irc_2021::r602_3_5::StudSupporting;
use standards::irc_2021::r602_6::{SHARES, StudIn, hole_limit, notch_limit};
use standards::nds_2018::chapter_15::PlyFastening;

use super::read::{chosen, plf, wood};
use super::say::{Size, cautions, check_reply, down, force_fact, length_fact, of_sizes, pounds, rule, unworked};
use crate::quick::reply::{Drawn, DrawnUpright, QuickReply, RuleReply};
use crate::reading::{Origin, Reading};
use crate::site::about::About;
use crate::site::input;
use crate::words;

pub(super) const FIELDS: &[&str] = &[
    "stud_length",
    "wall_spacing",
    "stud_wall",
    "stud_carries",
    "stud_dead",
    "stud_live",
    "stud_snow",
    "stud_roof_live",
    "king_opening",
    "under_gable",
    "stud_sheathing",
    "wall_finish",
    "wind_speed",
    "exposure",
    "enclosure",
    "near_corner",
    "mean_roof_height",
    "species",
    "grade",
    "service",
    "incised",
    "drawn_size",
    "cut_kind",
    "cut_depth",
    "found_size",
    "found_spacing",
    "found_grade",
];

const USED: &[&str] = &[
    "stud_length",
    "wall_spacing",
    "stud_wall",
    "stud_carries",
    "stud_dead",
    "stud_live",
    "stud_snow",
    "stud_roof_live",
    "stud_sheathing",
    "wall_finish",
    "wind_speed",
    "exposure",
    "near_corner",
    "species",
    "grade",
    "service",
];

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let (species, grade, conditions) = wood(reading)?;
    let tried = stud_candidates(species, grade).map(Piece::Lumber);
    let chosen = chosen(reading, "drawn_size", tried, (species, grade)).and_then(|piece| piece.member().cloned());
    let outer = reading.word("stud_wall")? == "outer";
    let height = reading.length("stud_length")?;
    let spacing = reading.length("wall_spacing")?;
    let opening = reading.length("king_opening");
    let strip = opening.map_or(spacing, |opening| (opening + spacing) / 2.0);
    let wind = match outer.then(|| wind(reading, height, strip)) {
        None => None,
        Some(Ok(wind)) => Some(wind),
        Some(Err(problem)) => {
            reading.refuse("wind_speed", problem);
            return None;
        }
    };
    let sheathed = match reading.word("stud_sheathing")? {
        "yes" => Held::Along,
        "blocked" => Held::Every(height / 2.0),
        _ => Held::AtEnds,
    };
    let plate = SawnSize::new(2, 6)
        .ok()
        .map(|size| Member::single(Product::Sawn(Sawn { species, grade, size })))
        .and_then(|plate| plate.adjusted_stresses(&conditions, lumber::LoadDuration::TenYears).ok())
        .map(|strength| strength.fc_perp);
    let Some(plate) = plate else {
        reading.refuse(
            "grade",
            "No published value is held for plates of this wood. Choose another species or grade.".to_owned(),
        );
        return None;
    };
    let input = StudInput {
        stands: Uprights {
            height,
            along_depth: Held::AtEnds,
            across_breadth: sheathed,
            joined: Some(PlyFastening::Nailed),
        },
        spacing,
        opening,
        loads: [
            (Case::Dead, "stud_dead"),
            (Case::Live, "stud_live"),
            (Case::Snow, "stud_snow"),
            (Case::RoofLive, "stud_roof_live"),
        ]
        .map(|(case, id)| (case, plf(reading, id)))
        .to_vec(),
        wind,
        bow_limit: finish(reading.word("wall_finish")?, outer).span_over(),
        cut: cut(reading),
        plate,
        supporting: supporting(reading.word("stud_carries")?),
        species,
        grade,
        conditions,
        chosen,
    };
    let reading = &*reading;
    let about = About::of(reading, USED);
    let answer = match check_stud(&input) {
        Ok(answer) => answer,
        Err(sentence) => return Some(unworked(about, sentence)),
    };
    Some(reply(reading, about, &input, &answer))
}

/// The wind on a stud: as cladding by itself, and on the main frame with loads from above.
fn wind(reading: &Reading, height: Length, strip: Length) -> Result<StudWind, String> {
    let missing = || "The wind of the place is not known.".to_owned();
    let house = input::house(reading).ok_or_else(missing)?;
    let wind = input::wind(reading, &house).ok_or_else(missing)?;
    let zone = if reading.word("near_corner") == Some("no") { WallZone::Field } else { WallZone::Corner };
    let area = chapter_30::effective_wind_area(height, strip);
    let alone = wall_pressure(&wind, zone, area).map_err(|outside| outside.to_string())?;
    let with_loads = main_frame_wall_pressure(&wind).map_err(|outside| outside.to_string())?;
    Ok(StudWind { alone: alone.inward_strength.max(alone.outward_strength), with_loads })
}

fn finish(word: &str, outer: bool) -> DeflectionOf {
    match word {
        _ if !outer => DeflectionOf::InteriorWall,
        "flexible" => DeflectionOf::ExteriorWallFlexible,
        "brittle" => DeflectionOf::ExteriorWallBrittle,
        "stucco" => DeflectionOf::ExteriorWallPlaster,
        _ => DeflectionOf::ExteriorWallGypsumInside,
    }
}

fn cut(reading: &Reading) -> Option<StudCut> {
    let depth = reading.length("cut_depth")?;
    Some(if reading.word("cut_kind")? == "hole" { StudCut::Hole(depth) } else { StudCut::Notch(depth) })
}

fn supporting(word: &str) -> Option<StudSupporting> {
    Some(match word {
        "roof" => StudSupporting::RoofCeiling,
        "one_floor_roof" => StudSupporting::OneFloorAndRoof,
        "two_floors_roof" => StudSupporting::TwoFloorsAndRoof,
        "one_floor" => StudSupporting::OneFloorOnly,
        _ => return None,
    })
}

fn reply(reading: &Reading, mut about: About<'_>, input: &StudInput, answer: &StudAnswer) -> QuickReply {
    let size = |tried: &members::upright::Tried| Size {
        name: tried.member.name(),
        family: tried.member.family(),
        verdict: tried.verdict(),
        governing: tried.governing().copied(),
        outside: tried.outside.clone(),
        misfit: None,
    };
    let sizes: Vec<Size> = answer.tried.iter().map(size).collect();
    let mut reply = of_sizes(&sizes, answer.judged, &answer.smallest, (input.species, input.grade));
    let judged = &answer.tried[answer.judged];
    reply.checks = judged.checks.iter().map(check_reply).collect();
    if let Some((tallest, limit)) = answer.tallest {
        let mut fact = length_fact("tallest_in", format!("tallest, by {}", limit.words()), tallest);
        fact.written = down(tallest);
        reply.facts.push(fact);
    }
    reply.facts.push(force_fact("each_lb", "comes down on each", answer.most));
    reply.by_code = by_code(reading, input, answer);
    reply.forbidden = reply.by_code.iter().any(|rule| rule.heading == CUT && rule.holds == Some(false));
    if reply.forbidden {
        reply.action.insert(
            0,
            "The code does not allow this cut: a full-height stud beside it, or what the engineer draws.".to_owned(),
        );
    }
    says(&mut about, reading, input, judged);
    answer.working.iter().cloned().for_each(|part| about.part(part));
    reply.drawn = Drawn::Upright(drawn(input, answer));
    reply.about = about.finish();
    reply
}

const CUT: &str = "Notch or hole";

fn by_code(reading: &Reading, input: &StudInput, answer: &StudAnswer) -> Vec<RuleReply> {
    let mut rules = vec![table_rule(reading, input, answer)];
    if let Some(cut) = input.cut {
        rules.push(cut_rule(reading, answer, cut));
    }
    rules
}

fn table_rule(reading: &Reading, input: &StudInput, answer: &StudAnswer) -> RuleReply {
    let mut says = Vec::new();
    let outside_wind = input.wind.is_some().then(|| input::past_the_code(reading)).flatten();
    if let Some(why) = &outside_wind {
        says.push(why.clone());
    }
    match &answer.table {
        Err(why) => {
            says.push(why.clone());
            rule("Stud table", None, "not covered", says)
        }
        Ok(found) => {
            says.push(format!(
                "At most {} apart and {} high between supports.",
                words::inches(found.spacing),
                words::length(found.height)
            ));
            if input.spacing > Length::from_inches(16.0) && input.spacing < Length::from_inches(24.0) {
                says.push("A spacing between two rows is in the wider one's.".to_owned());
            }
            says.push(format!("{}.", words::source(found.source)));
            let holds = if outside_wind.is_some() { None } else { Some(input.spacing <= found.spacing) };
            rule("Stud table", holds, words::inches(found.spacing), says)
        }
    }
}

fn cut_rule(reading: &Reading, answer: &StudAnswer, cut: StudCut) -> RuleReply {
    let member = &answer.tried[answer.judged].member;
    let width = member.section().depth;
    let bears = reading.word("stud_wall") == Some("outer") || reading.word("stud_carries") != Some("nothing");
    let stud_in = if bears { StudIn::ExteriorOrBearing } else { StudIn::NonbearingPartition };
    let doubled = member.plies() > 1;
    let (found, limit, name) = match cut {
        StudCut::Notch(depth) => (depth, notch_limit(stud_in, width), "notch"),
        StudCut::Hole(diameter) => (diameter, hole_limit(stud_in, width, doubled), "hole"),
    };
    let share = found / width * 100.0;
    let says = vec![
        format!(
            "The {name} takes {} % of the stud; {} is allowed here, {}.",
            words::figure(share),
            down(limit),
            if doubled { "doubled" } else { "single" }
        ),
        "5/8\" of wood beside a hole, and no notch in the same place.".to_owned(),
        format!("{}.", words::source(SHARES)),
    ];
    rule(CUT, Some(found <= limit), down(limit), says)
}

fn says(about: &mut About<'_>, reading: &Reading, input: &StudInput, judged: &members::upright::Tried) {
    cautions(about);
    about.say("Wind on the stud by itself is worked as on cladding, without load from above; with loads from above, as on the main frame (common practice).");
    if input.opening.is_some() {
        about.say("A king takes the wind on half of the opening; jacks stop at the header and do not help it. It has no neighbour to lean on.");
    }
    if judged.checks.iter().any(|check| check.limit == Limit::Bow && check.share > 1.0) {
        about.say("It bows too far for the finish: a deeper stud helps more than a closer spacing.");
    }
    match reading.word("under_gable") {
        Some("platform") => about.say("A wall with a plate at the ceiling under a gable hinges there in the wind: the ceiling must hold it as a floor would, or the studs run in one piece to the roof. Brace it as drawn."),
        Some("balloon") => about.say("Studs in one piece from floor to roof: give the length of the longest as the stud length."),
        _ => {}
    }
    if reading.word("stud_sheathing") == Some("no") {
        about.say("Without sheathing or board a stud bows the thin way: do not load the wall before it is sheathed.");
    }
    let assumed = |id: &str| reading.get(id).is_some_and(|value| value.origin == Origin::Assumed);
    if input.wind.is_some() && assumed("wind_speed") {
        about.ask("wind_speed", "What is the basic wind speed of the place? Ask the building department.");
    }
    if assumed("stud_live") && assumed("stud_dead") {
        about.ask("stud_dead", "What comes down on the wall, along it?");
    }
    about.caution("Brace a wall before it is let go, both ways, until sheathing and floors hold it.");
}

fn drawn(input: &StudInput, answer: &StudAnswer) -> DrawnUpright {
    let member = &answer.tried[answer.judged].member;
    let section = member.section();
    let wind = input.wind.map_or_else(String::new, |wind| {
        let load: LineLoad = wind.alone * input.wind_strip() * loads::wind::asd_factor();
        format!("{} plf", words::figure(load.plf().ceil()))
    });
    DrawnUpright {
        height: input.stands.height,
        ply: (section.breadth / f64::from(member.plies()), section.depth),
        plies: member.plies(),
        spacing: Some(input.spacing),
        down: pounds(answer.most),
        wind,
        nails: None,
        cut: input.cut.map(|cut| match cut {
            StudCut::Notch(depth) => (depth, false),
            StudCut::Hole(diameter) => (diameter, true),
        }),
    }
}
