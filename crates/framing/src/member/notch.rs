//! A notch or a hole in a joist, a rafter or a stud: what the code allows there, and what the wood that is left carries.

use measure::{Denominator, Length, Rounding};
use members::flexure::{Cut, Piece};
use members::joist::{JoistInput, JoistOf, check_joist};
use standards::irc_2021::r502_8::{BESIDE_A_HOLE, end_notch_limit, hole_limit, notch_depth_limit, notch_length_limit};
use standards::irc_2021::r602_6::{HOLE_TO_FACE, StudIn, hole_limit as stud_hole, notch_limit as stud_notch};

use super::joist::{CUTS, cut, cut_rule};
use super::read::{limits, psf, sawn, wood};
use super::say::{cautions, down, length_fact, of_flexure, rule, unworked};
use crate::quick::reply::{Drawn, DrawnCut, QuickReply, RuleReply, TableReply};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words;

pub(super) const FIELDS: &[&str] = &[
    "cut_depth",
    "cut_kind",
    "notch_of",
    "cut_size",
    "cut_at",
    "cut_to_edge",
    "cut_length",
    "cut_edge",
    "joist_span",
    "joist_spacing",
    "floor_dead",
    "floor_live",
    "species",
    "grade",
    "service",
    "incised",
    "sag_limit",
    "total_sag_limit",
];

const USED: &[&str] = &[
    "notch_of",
    "cut_size",
    "cut_edge",
    "joist_span",
    "joist_spacing",
    "floor_dead",
    "floor_live",
    "species",
    "grade",
];

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let (species, grade, conditions) = wood(reading)?;
    let size = reading.word("cut_size")?.to_owned();
    let member = match sawn(&size, (species, grade)) {
        Ok(member) => member,
        Err(problem) => {
            reading.refuse("cut_size", problem);
            return None;
        }
    };
    let depth = member.section().depth;
    if reading.word("notch_of")? == "stud" {
        return Some(stud(reading, &member.name(), depth));
    }
    let span = reading.length("joist_span")?;
    let cut = cut(reading, span)?;
    if too_big(reading, cut.as_ref(), depth) {
        return None;
    }
    let reading = &*reading;
    let mut about = About::of(reading, USED);
    let input = JoistInput {
        of: JoistOf::Floor,
        span,
        second_span: None,
        cantilever: None,
        spacing: reading.length("joist_spacing")?,
        bearing: Length::from_inches(1.5),
        dead: psf(reading, "floor_dead")?,
        live: psf(reading, "floor_live")?,
        live_acts_alone: false,
        walls: Vec::new(),
        species,
        grade,
        conditions,
        limits: limits(reading, &mut about, (360.0, 240.0), "floors, IRC Table R301.7"),
        sheet: None,
        chosen: Some(Piece::Lumber(member.clone())),
        cut,
    };
    let input =
        if joist_is_tried(&member) { input } else { JoistInput { sheet: Some(Piece::Lumber(member)), ..input } };
    let answer = match check_joist(&input) {
        Ok(answer) => answer,
        Err(sentence) => return Some(unworked(about, sentence)),
    };
    let mut reply = of_flexure(&answer.flexure, (species, grade));
    let piece = answer.flexure.about().piece.clone();
    limit_facts(&mut reply, depth);
    match &cut {
        Some(cut) => {
            let rule = cut_rule(&piece, cut, span);
            reply.forbidden = rule.holds == Some(false);
            // A larger joist is no answer to a joist that is cut.
            reply.action.clear();
            if reply.forbidden {
                reply.action.push("The code does not allow this cut: head it off, sister it over its full length with a bearing at each end, or build what the engineer draws.".to_owned());
            }
            if reply.ratio.is_some_and(|ratio| ratio > 1.0) {
                reply
                    .action
                    .push("What is left of it does not carry the load: shore it until it is mended.".to_owned());
            }
            reply.by_code.push(rule);
        }
        None => {
            about.ask("cut_kind", "Is it a notch or a hole, how deep or wide, and where?");
            reply.by_code.push(rule(
                CUTS,
                None,
                "say what is cut",
                vec!["Type the cut to have it judged; the limits stand below.".to_owned()],
            ));
        }
    }
    reply.tables.push(limits_table(depth));
    cautions(&mut about);
    about.say("Engineered joists, trusses, LVL and glulam take no cut that their maker or designer has not allowed.");
    about.say("Away from its ends the standard gives no strength for a cut section: the shares shown are those of the wood that is left, and an engineer must agree.");
    about.say("A rafter is worked here on the level, as a joist of its run.");
    answer.flexure.working.iter().cloned().for_each(|part| about.part(part));
    reply.drawn = Drawn::Cut(DrawnCut { span, depth, cut, allowed: (notch_depth_limit(depth), hole_limit(depth)) });
    reply.about = about.finish();
    Some(reply)
}

fn joist_is_tried(member: &lumber::Member) -> bool {
    match member.product() {
        lumber::Product::Sawn(sawn) => member.plies() == 1 && sawn.size.nominal_thickness() == 2,
        _ => false,
    }
}

/// Refuses a cut that is larger than the member.
fn too_big(reading: &mut Reading, cut: Option<&Cut>, depth: Length) -> bool {
    let (taken, id) = match cut {
        Some(Cut::Notch { depth: notch, .. }) => (*notch, "cut_depth"),
        Some(Cut::Hole { diameter, to_edge, .. }) if *diameter >= depth => (*diameter + *to_edge, "cut_depth"),
        Some(Cut::Hole { diameter, to_edge, .. }) => (*diameter + *to_edge, "cut_to_edge"),
        None => return false,
    };
    if taken < depth {
        return false;
    }
    let (given, whole) = (words::length(taken), words::length(depth));
    reading.refuse(id, format!("{given} is cut or left aside of a member {whole} deep. Measure both again."));
    true
}

fn limit_facts(reply: &mut QuickReply, depth: Length) {
    for (name, what, limit) in [
        ("widest_hole_in", "widest hole", hole_limit(depth)),
        ("deepest_notch_in", "deepest notch in the outer thirds", notch_depth_limit(depth)),
        ("longest_notch_in", "longest notch", notch_length_limit(depth)),
        ("deepest_end_notch_in", "deepest notch at an end", end_notch_limit(depth)),
    ] {
        let mut fact = length_fact(name, what, limit);
        fact.written = down(limit);
        reply.facts.push(fact);
    }
}

fn limits_table(depth: Length) -> TableReply {
    let row = |what: &str, limit: Length| {
        vec![what.to_owned(), words::inches(limit.rounded(Denominator::Sixteenth, Rounding::Down))]
    };
    TableReply {
        heading: "Limits of this depth".to_owned(),
        columns: vec!["cut".to_owned(), "at the most".to_owned()],
        rows: vec![
            row("hole, 2\" from edges and other cuts", hole_limit(depth)),
            row("notch in the outer thirds, deep", notch_depth_limit(depth)),
            row("the same, long", notch_length_limit(depth)),
            row("notch at an end, deep", end_notch_limit(depth)),
            vec!["notch in the middle third".to_owned(), "none".to_owned()],
        ],
        notes: vec![format!("Wood beside a hole: {} at the least.", words::inches(BESIDE_A_HOLE))],
    }
}

/// A stud: the code's shares, for both kinds of wall.
fn stud(reading: &Reading, name: &str, width: Length) -> QuickReply {
    let mut about = About::of(reading, &["notch_of", "cut_size"]);
    let found = reading.length("cut_depth").filter(|_| reading.word("cut_kind").is_some());
    let is_hole = reading.word("cut_kind") == Some("hole");
    let limit = |stud_in| if is_hole { stud_hole(stud_in, width, false) } else { stud_notch(stud_in, width) };
    let doubled = stud_hole(StudIn::ExteriorOrBearing, width, true);
    let mut rules: Vec<RuleReply> = Vec::new();
    let share = found.map(|found| found / limit(StudIn::ExteriorOrBearing));
    for (heading, stud_in) in
        [("Outer or bearing wall", StudIn::ExteriorOrBearing), ("Wall that bears nothing", StudIn::NonbearingPartition)]
    {
        let allowed = limit(stud_in);
        let mut says = vec![format!(
            "{} {} at the most: {} % of {}.",
            if is_hole { "A hole of" } else { "A notch of" },
            down(allowed),
            words::figure(allowed / width * 100.0),
            words::length(width)
        )];
        if let Some(found) = found {
            says.push(format!("Found: {}, {} %.", words::length(found), words::figure(found / width * 100.0)));
        }
        if is_hole && stud_in == StudIn::ExteriorOrBearing {
            says.push(format!("In doubled studs, no more than two in a row: {}.", down(doubled)));
        }
        says.push(format!("{} of wood beside a hole, and no notch in the same place.", words::inches(HOLE_TO_FACE)));
        rules.push(rule(heading, found.map(|found| found <= allowed), down(allowed), says));
    }
    let over = share.is_some_and(|share| share > 1.0);
    if found.is_none() {
        about.ask("cut_kind", "Is it a notch or a hole, and how deep or wide?");
    }
    cautions(&mut about);
    about.say("A nail plate only guards a pipe from nails; it gives no strength back. What a cut stud still carries is worked under Stud.");
    let action = if over {
        vec![
            "Take it as cut through: a full-height stud beside it, nailed every 6 to 8\", or what the engineer draws."
                .to_owned(),
        ]
    } else {
        Vec::new()
    };
    let verdict = match share {
        None => "still to be said",
        Some(share) if share > 1.0 => "not allowed",
        Some(_) => "allowed",
    };
    let kind = if is_hole { "hole" } else { "notch" };
    QuickReply {
        verdict: verdict.to_owned(),
        size: name.to_owned(),
        ratio: share,
        governs: share.map(|_| format!("the code's limit for a {kind} in a bearing stud")),
        by_code: rules,
        forbidden: over,
        action,
        about: about.finish(),
        drawn: Drawn::Upright(crate::quick::reply::DrawnUpright {
            height: Length::from_inches(36.0),
            ply: (Length::from_inches(1.5), width),
            plies: 1,
            spacing: None,
            down: String::new(),
            wind: String::new(),
            nails: None,
            cut: found.map(|found| (found, is_hole)),
        }),
        ..QuickReply::default()
    }
}
