//! A post, solid or built up, read and answered.

use fastening::read_nail;
use lumber::candidates::post_candidates;
use lumber::{Grade, LoadDuration, Member, Product, Sawn, SawnSize, Species};
use measure::{Denominator, Length, Rounding};
use members::flexure::{Case, Piece};
use members::upright::post::{PostAnswer, PostInput, check_post, plate_strength, wants_metal_plate};
use members::upright::{Held, Uprights};
use standards::nds_2018::appendix_l::{NailKind, TABLE_L4};
use standards::nds_2018::chapter_15::{COLUMN_NAILING, ColumnNailing, PlyFastening};

use super::read::{chosen, pounds as force, wood};
use super::say::{Size, cautions, check_reply, fact, force_fact, length_fact, of_sizes, pounds, rule, unworked};
use crate::quick::reply::{Drawn, DrawnUpright, QuickReply, RuleReply};
use crate::reading::{Origin, Reading};
use crate::site::about::About;
use crate::words;

pub(super) const FIELDS: &[&str] = &[
    "post_height",
    "post_dead",
    "post_live",
    "post_snow",
    "post_roof_live",
    "post_held_deep",
    "post_held_thin",
    "post_ends",
    "plies_joined",
    "post_nail",
    "species",
    "grade",
    "service",
    "incised",
    "drawn_size",
    "found_size",
    "found_grade",
];

const USED: &[&str] =
    &["post_height", "post_dead", "post_live", "post_ends", "plies_joined", "species", "grade", "service", "incised"];

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let (species, grade, conditions) = wood(reading)?;
    let tried = post_candidates(species, grade).map(Piece::Lumber);
    let chosen = chosen(reading, "drawn_size", tried, (species, grade)).and_then(|piece| piece.member().cloned());
    let nail = match reading.word("post_nail").map(str::to_owned) {
        None => None,
        Some(text) => match read_nail(&text) {
            Ok(read) => Some((read.nail.length(), read.nail.diameter())),
            Err(problem) => {
                reading.refuse("post_nail", problem.to_string());
                return None;
            }
        },
    };
    let reading = &*reading;
    let height = reading.length("post_height")?;
    let held = |id: &str| match reading.length(id) {
        None => Held::AtEnds,
        Some(apart) if apart <= Length::ZERO => Held::Along,
        Some(apart) => Held::Every(apart),
    };
    let joined = match reading.word("plies_joined")? {
        "bolted" => Some(PlyFastening::Bolted),
        "no" => None,
        _ => Some(PlyFastening::Nailed),
    };
    let stands =
        Uprights { height, along_depth: held("post_held_deep"), across_breadth: held("post_held_thin"), joined };
    let mut input = PostInput {
        stands,
        loads: [
            (Case::Dead, "post_dead"),
            (Case::Live, "post_live"),
            (Case::Snow, "post_snow"),
            (Case::RoofLive, "post_roof_live"),
        ]
        .map(|(case, id)| (case, force(reading, id)))
        .to_vec(),
        plate: plate((species, grade), reading),
        species,
        grade,
        conditions,
        nail,
        chosen,
    };
    let about = About::of(reading, USED);
    // The nail that is long enough for the judged post, where none was said.
    let first = match check_post(&input) {
        Ok(answer) => answer,
        Err(sentence) => return Some(unworked(about, sentence)),
    };
    if input.nail.is_none() {
        let member = &first.tried[first.judged].member;
        input.nail = long_enough(member).or(input.nail);
    }
    let answer = match check_post(&input) {
        Ok(answer) => answer,
        Err(sentence) => return Some(unworked(about, sentence)),
    };
    Some(reply(reading, about, &input, &answer))
}

/// Strength of the plate that its ends bear on, of the same wood; none where they bear on metal.
fn plate((species, grade): (Species, Grade), reading: &Reading) -> Option<measure::Stress> {
    if reading.word("post_ends")? == "metal" {
        return None;
    }
    let size = SawnSize::new(2, 6).ok()?;
    let member = Member::single(Product::Sawn(Sawn { species, grade, size }));
    let conditions = super::read::wood(reading)?.2;
    let strength = member.adjusted_stresses(&conditions, LoadDuration::TenYears).ok()?.fc_perp;
    Some(plate_strength(strength, Length::from_inches(3.5)))
}

/// The thinnest common nail that goes through every ply and three quarters of the last.
fn long_enough(member: &Member) -> Option<(Length, Length)> {
    let ply = member.section().breadth / f64::from(member.plies());
    let least = ply * (f64::from(member.plies()) - 0.25);
    let mut commons = TABLE_L4.iter().filter(|size| size.kind == NailKind::Common && size.length >= least);
    commons.next().map(|size| (size.length, size.diameter))
}

fn reply(reading: &Reading, mut about: About<'_>, input: &PostInput, answer: &PostAnswer) -> QuickReply {
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
    reply.facts.push(force_fact("most_lb", "comes down it", answer.most));
    if let Some(nailing) = &answer.nailing {
        match nailing {
            Ok(nailing) => {
                nailing_facts(&mut reply, &nailing.value);
                let rule = nailing_rule(&nailing.value, input);
                reply.forbidden = rule.holds == Some(false) && input.stands.joined.is_some();
                if reply.forbidden {
                    reply.action.insert(0, format!("The nail is too short: {} goes through every ply and three quarters of the last. Otherwise each ply stands by itself.", words::length(nailing.value.least_nail)));
                }
                reply.by_code.push(rule);
            }
            Err(outside) => reply.by_code.push(rule("Nailing", None, "not covered", vec![outside.clone()])),
        }
    }
    cautions(&mut about);
    about.say("It stands straight and is loaded down its middle. A beam on one edge of it, or wind across it, is not worked here.");
    about.say(
        "Carry it on down: solid through every floor, with blocks on end between joists, to a footing of its own.",
    );
    if wants_metal_plate(judged, input) {
        about.say("Its end grain is pressed over three quarters of its strength: a metal plate goes between (NDS 2018 3.10.1).");
    }
    let assumed = |id: &str| reading.get(id).is_some_and(|value| value.origin == Origin::Assumed);
    if assumed("post_live") {
        about.ask("post_live", "What comes down it? The reactions of the beam on it, by kind.");
    }
    about.caution("Shore what a post carries before it is taken away or changed.");
    answer.working.iter().cloned().for_each(|part| about.part(part));
    reply.drawn = Drawn::Upright(drawn(input, answer));
    reply.about = about.finish();
    reply
}

fn nailing_facts(reply: &mut QuickReply, nailing: &ColumnNailing) {
    let rows = f64::from(nailing.rows);
    reply.facts.push(length_fact("least_nail_in", "shortest nail", nailing.least_nail));
    reply.facts.push(fact("rows", "rows of nails", rows, words::figure(rows)));
    reply.facts.push(length_fact("nail_spacing_in", "at the most apart along a row", nailing.spacing.1));
    reply.facts.push(length_fact("nail_end_least_in", "from the ends, at the least", nailing.end.0));
    reply.facts.push(length_fact("nail_end_most_in", "from the ends, at the most", nailing.end.1));
}

fn nailing_rule(nailing: &ColumnNailing, input: &PostInput) -> RuleReply {
    let between = |(least, most): (Length, Length)| {
        let (least, most) = (
            words::inches(least.rounded(Denominator::Sixteenth, Rounding::Up)),
            words::inches(most.rounded(Denominator::Sixteenth, Rounding::Down)),
        );
        format!("{least} to {most}")
    };
    let nail = input.nail.map(|(length, diameter)| format!("{:.3} x {}", diameter.inches(), words::inches(length)));
    let long = input.nail.is_none_or(|(length, _)| length >= nailing.least_nail);
    let rows = if nailing.rows == 1 { "one row".to_owned() } else { format!("{} rows", nailing.rows) };
    let mut says = vec![
        format!("{rows}; {} apart along a row; {} from the ends.", between(nailing.spacing), between(nailing.end)),
        format!("{} to the edges; rows {} apart.", between(nailing.edge), between(nailing.between_rows)),
        "Nails beside each other are driven from opposite faces.".to_owned(),
        format!("{}.", words::source(COLUMN_NAILING)),
    ];
    if let Some(nail) = nail {
        says.insert(0, format!("{nail}: {}.", if long { "long enough" } else { "too short" }));
    }
    rule("Nailing", Some(long), words::length(nailing.least_nail), says)
}

fn drawn(input: &PostInput, answer: &PostAnswer) -> DrawnUpright {
    let member = &answer.tried[answer.judged].member;
    let section = member.section();
    let nails = answer.nailing.as_ref().and_then(|nailing| nailing.as_ref().ok()).map(|nailing| {
        let nailing = nailing.value;
        (nailing.rows, nailing.spacing.1, nailing.end.1, nailing.between_rows.0)
    });
    DrawnUpright {
        height: input.stands.height,
        ply: (section.breadth / f64::from(member.plies()), section.depth),
        plies: member.plies(),
        spacing: None,
        down: pounds(answer.most),
        wind: String::new(),
        nails,
        cut: None,
    }
}
