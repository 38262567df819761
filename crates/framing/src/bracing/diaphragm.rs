//! A floor or a roof that brings the wind to the wall lines at its two ends, read and answered.

use bracing::diaphragm::{
    Blocking, Diaphragm, DiaphragmAnswer, DiaphragmFraming, DiaphragmNailing, DiaphragmStrength, Held, Layout, Outline,
    check_diaphragm, diaphragm_nailings, diaphragm_strength, read_diaphragm,
};
use bracing::{nail_length, nail_words};
use measure::{Denominator, Force, Length, LengthUnit, read_length};
use members::check::Verdict;
use members::working::{Basis, Part};
use standards::sdpws_2015::diaphragm::{LIMITS, most};
use standards::sdpws_2015::table_4_2::{CLOSE_NAILS, LayoutCase, field_spacing};

use super::ends::check;
use super::{NOT_ENOUGH, diaphragm_chord, diaphragm_collector, frame};
use crate::quick::read::plf;
use crate::quick::reply::{Drawn, QuickReply, TriedReply};
use crate::quick::say::{fact, force_fact, pounds, rule, unworked};
use crate::reading::Reading;
use crate::site::about::About;
use crate::words::{self, figure};

pub(super) const FIELDS: &[&str] = &[
    "floor_span",
    "floor_deep",
    "floor_push",
    "floor_held",
    "plain_rectangle",
    "drawn_size",
    "framing_runs",
    "long_sides",
    "joints_staggered",
    "panel_least",
    "nailed_wet",
    "chord_plates",
    "brace_studs",
    "splice_at",
    "splice_nail",
    "end_line",
    "wall_high",
    "species",
    "grade",
    "provisions",
    "seismic_design_category",
];

const USED: &[&str] = &[
    "floor_span",
    "floor_deep",
    "floor_push",
    "floor_held",
    "plain_rectangle",
    "framing_runs",
    "long_sides",
    "joints_staggered",
    "nailed_wet",
    "chord_plates",
    "brace_studs",
    "splice_nail",
    "species",
    "grade",
    "provisions",
];

/// What its checks are called by.
const WIND: &str = "0.6W";
/// The limit of its panels.
const SHEAR: &str = "shear in the panels";
/// The limit of its shape.
const SHAPE: &str = "span over depth";

/// One nailing that was tried: its strength and what it answers.
struct Tried {
    nailing: DiaphragmNailing,
    found: Result<(DiaphragmStrength, DiaphragmAnswer), String>,
}

impl Tried {
    fn of(nailing: DiaphragmNailing, floor: &Diaphragm, frame: &DiaphragmFraming) -> Self {
        let found = diaphragm_strength(&nailing, frame)
            .and_then(|strength| check_diaphragm(floor, &strength).map(|answer| (strength, answer)));
        Self { nailing, found: found.map_err(|outside| outside.to_string()) }
    }

    fn used(&self) -> Option<f64> {
        self.found.as_ref().ok().map(|(_, answer)| answer.used)
    }
}

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let drawn = drawn_nailing(reading);
    let floor = floor(reading)?;
    let line = diaphragm_collector::end_line(reading, floor.width);
    let splice = diaphragm_chord::splice(reading, floor.length);
    if reading.problems().next().is_some() {
        return None;
    }
    let reading = &*reading;
    let layout = layout(reading)?;
    let frame = framing(reading, layout)?;
    let mut used = USED.to_vec();
    if drawn.is_none() {
        used.push("panel_least");
    }
    if line.is_some() {
        used.push("wall_high");
    }
    let mut about = About::of(reading, &used);
    frame::seismic_assumed(reading, &mut about);
    if let Some(sentence) = frame::earthquakes(reading) {
        return Some(unworked(about, sentence));
    }
    let thinnest = read_length(reading.word("panel_least")?, LengthUnit::Inches).ok()?.length;
    let mut nailings: Vec<DiaphragmNailing> = diaphragm_nailings(thinnest).collect();
    if let Some(drawn) = drawn.filter(|drawn| !nailings.contains(drawn)) {
        nailings.insert(0, drawn);
    }
    let all: Vec<Tried> = nailings.into_iter().map(|nailing| Tried::of(nailing, &floor, &frame)).collect();
    let smallest = all.iter().position(|one| one.used().is_some_and(|used| used <= 1.0));
    let judged = match drawn {
        Some(drawn) => all.iter().position(|one| one.nailing == drawn)?,
        // Where nothing carries it, what comes nearest.
        None => smallest.unwrap_or_else(|| nearest(&all)),
    };
    let one = all.get(judged)?;
    let (strength, answered) = match &one.found {
        Ok(found) => found,
        Err(sentence) => return Some(unworked(about, sentence.clone())),
    };
    let told = Told { reading, floor, layout, nailing: one.nailing, strength, answer: answered };
    let mut reply = reply(about, &told, diaphragm_chord::Asked { line, splice });
    reply.sizes = all.iter().map(tried_reply).collect();
    reply.smallest = smallest.map(|index| all[index].nailing.to_string()).into_iter().collect();
    Some(reply)
}

/// Panels and nails as drawn, where they were said; what is wrong with them is said.
fn drawn_nailing(reading: &mut Reading) -> Option<DiaphragmNailing> {
    let text = reading.word("drawn_size")?.to_owned();
    match read_diaphragm(&text) {
        Ok(nailing) => Some(nailing),
        Err(problem) => {
            reading.refuse("drawn_size", problem.to_string());
            None
        }
    }
}

fn floor(reading: &Reading) -> Option<Diaphragm> {
    Some(Diaphragm {
        length: reading.length("floor_span")?,
        width: reading.length("floor_deep")?,
        load: plf(reading, "floor_push"),
        held: if reading.word("floor_held")? == "both" { Held::AtBothEnds } else { Held::AtOneEnd },
        outline: if reading.word("plain_rectangle")? == "yes" { Outline::Rectangle } else { Outline::Irregular },
    })
}

fn layout(reading: &Reading) -> Option<Layout> {
    Some(Layout {
        across_framing: reading.word("long_sides")? == "across",
        staggered: reading.word("joints_staggered")? == "yes",
        framing_along_load: reading.word("framing_runs")? == "along",
    })
}

fn framing(reading: &Reading, layout: Layout) -> Option<DiaphragmFraming> {
    Some(DiaphragmFraming {
        specific_gravity: frame::wood(reading)?.0.specific_gravity().value,
        case: layout.case(),
        wet: reading.word("nailed_wet")? == "yes",
        edition: frame::edition(reading)?,
    })
}

/// Which of them is used the least.
fn nearest(all: &[Tried]) -> usize {
    let used = |one: &Tried| one.used().unwrap_or(f64::INFINITY);
    // Where all are refused, the last: it is blocked, and its limits are the widest.
    let least = all.iter().enumerate().rev().min_by(|(_, a), (_, b)| used(a).total_cmp(&used(b)));
    least.map_or(0, |(index, _)| index)
}

fn tried_reply(one: &Tried) -> TriedReply {
    let verdict = match one.used().map(Verdict::of) {
        Some(Verdict::TooSmall) => NOT_ENOUGH,
        Some(other) => words::verdict(other),
        None => words::verdict(Verdict::Outside),
    };
    TriedReply {
        size: one.nailing.to_string(),
        family: if one.nailing.blocking == Blocking::Unblocked { "Not blocked" } else { "Blocked" }.to_owned(),
        verdict: verdict.to_owned(),
        ratio: one.used(),
        governs: one.used().map(|_| SHEAR.to_owned()),
        reason: one.found.as_ref().err().cloned(),
    }
}

/// What the answer is told from.
pub(super) struct Told<'a> {
    pub(super) reading: &'a Reading,
    pub(super) floor: Diaphragm,
    pub(super) layout: Layout,
    pub(super) nailing: DiaphragmNailing,
    pub(super) strength: &'a DiaphragmStrength,
    pub(super) answer: &'a DiaphragmAnswer,
}

fn reply(mut about: About<'_>, told: &Told<'_>, asked: diaphragm_chord::Asked) -> QuickReply {
    let Told { strength, answer, .. } = told;
    let mut reply = QuickReply { size: told.nailing.to_string(), ..QuickReply::default() };
    let allowable = strength.allowable.line_load();
    let slender = (answer.ratio, most(strength.blocked), "");
    let checks = vec![
        check(SHEAR, (answer.unit_shear.plf(), allowable.plf(), "plf"), WIND),
        check(SHAPE, slender, &format!("to {}:1, {}", figure(slender.1), words::source(LIMITS))),
    ];
    judge(&mut reply, checks);
    reply.action = nail_it(told);
    reply.facts.push(fact("unit_shear_plf", "a foot of it beside the wall lines is given", answer.unit_shear.plf(), {
        format!("{} plf", figure(answer.unit_shear.plf().round()))
    }));
    let carries = format!("{} plf", figure(allowable.plf().floor()));
    reply.facts.push(fact("allowable_plf", "a foot of it so nailed carries", allowable.plf(), carries));
    reply.facts.push(force_fact("reaction_lb", "each wall line at its ends is given", answer.reaction));
    about.part(working(told));
    let mut drawn = diaphragm_chord::tell(&mut reply, &mut about, told, asked);
    drawn.push = format!("{} plf", figure(told.floor.load.plf()));
    drawn.reaction = pounds(answer.reaction);
    reply.drawn = Drawn::Floor(drawn);
    joints(&mut reply, told);
    crate::quick::say::cautions(&mut about);
    about.caution("Wind alone is worked here. In earthquake country (Design Category C for houses in a row, D0 and up) an engineer designs the floors and the walls.");
    about.say(format!(
        "The panels lie as {} of the tables to this wind. To the wind from the other side they lie otherwise: look at both.",
        case_words(told.layout.case())
    ));
    about.say("The push is even along the edge. What a wall line above stands on a floor comes besides, and is for an engineer.");
    reply.about = about.finish();
    reply
}

/// Puts the hardest share first and says the verdict.
fn judge(reply: &mut QuickReply, checks: Vec<crate::reply::CheckReply>) {
    let governing = checks.iter().max_by(|a, b| a.ratio.total_cmp(&b.ratio));
    reply.ratio = governing.map(|check| check.ratio);
    reply.governs = governing.map(|check| check.limit.clone());
    reply.combination = governing.map(|check| check.combination.clone());
    let verdict = reply.ratio.map_or(Verdict::Outside, Verdict::of);
    reply.verdict = if verdict == Verdict::TooSmall { NOT_ENOUGH } else { words::verdict(verdict) }.to_owned();
    reply.checks = checks;
}

const fn case_words(case: LayoutCase) -> &'static str {
    match case {
        LayoutCase::One => "case 1",
        LayoutCase::Two => "case 2",
        LayoutCase::Three => "case 3",
        LayoutCase::Four => "case 4",
        LayoutCase::Five => "case 5",
        LayoutCase::Six => "case 6",
    }
}

/// What to nail, in words a framer reads.
fn nail_it(told: &Told<'_>) -> Vec<String> {
    let Told { nailing, strength, answer, .. } = told;
    let thick = nailing.panel.thickness.to_inches_fraction(Denominator::ThirtySecond);
    let nails = nail_words(nailing.panel.fastener);
    let field = words::inches(field_spacing(Length::from_inches(24.0)));
    let (boundary, edges) = (words::inches(strength.row.boundary), words::inches(strength.edges));
    let case = told.layout.case();
    let mut says = Vec::new();
    if answer.used > 1.0 {
        says.push(
            "It is not enough: take heavier or closer nailing, set a wall line between, or ask an engineer.".to_owned(),
        );
    }
    says.push(match (strength.blocked, case) {
        (false, _) => format!(
            "Nail {thick} panels with {nails}, {edges} along every edge that lies on framing and {field} in the field. No blocking."
        ),
        (true, LayoutCase::Five | LayoutCase::Six) => format!(
            "Nail {thick} panels with {nails}, {boundary} along every edge and {field} in the field. Block every edge."
        ),
        (true, LayoutCase::Three | LayoutCase::Four) => format!(
            "Nail {thick} panels with {nails}, {boundary} along all four sides of it and along the joints that run through with the wind, {edges} along other edges and {field} in the field. Block every edge."
        ),
        (true, _) => format!(
            "Nail {thick} panels with {nails}, {boundary} along all four sides of it, {edges} along other edges and {field} in the field. Block every edge."
        ),
    });
    says.push(format!("Bring {} into the wall line at each end.", pounds(answer.reaction)));
    says
}

fn working(told: &Told<'_>) -> Part {
    let Told { floor, strength, answer, .. } = told;
    let mut part = Part::new("The floor or roof as a beam");
    let (load, span, deep) = (floor.load.plf(), floor.length.feet(), floor.width.feet());
    let reaction = format!("{} × {} / 2", figure(load), figure(span));
    part.step("R", "to each wall line", reaction, (answer.reaction.pounds(), "lb"), Basis::Arithmetic);
    let sheared = format!("{} / {}", figure(answer.reaction.pounds()), figure(deep));
    part.step("v", "on a foot of it beside them", sheared, (answer.unit_shear.plf(), "plf"), Basis::Arithmetic);
    let ratio = format!("{} / {}", figure(span), figure(deep));
    part.step("L/W", "span over depth", ratio, (answer.ratio, ""), Basis::Published(LIMITS));
    let row = strength.row;
    let thick = row.thickness.to_inches_fraction(Denominator::ThirtySecond);
    let meaning = format!("nominal unit shear for wind, {thick}, {}", case_words(told.layout.case()));
    part.step("v_w", meaning, "", (row.wind.plf(), "plf"), Basis::Published(row.source()));
    for factor in &strength.factors {
        part.step("", factor.what, "", (factor.value, ""), Basis::Published(factor.source));
    }
    let divided = strength.divided;
    let expression = format!("{} / {}", figure(strength.nominal.plf()), figure(divided.value));
    let value = (strength.allowable.line_load().plf(), "plf");
    part.step("v_a", divided.what, expression, value, Basis::Published(divided.source));
    part
}

/// Framing at panel joints, and whether the nails are long enough for the table.
fn joints(reply: &mut QuickReply, told: &Told<'_>) {
    let Told { nailing, strength, .. } = told;
    let reach = nail_length(nailing.panel.fastener).map_or(Length::ZERO, |length| length - nailing.panel.thickness);
    let wide = strength.row.framing > 2 || strength.row.needs_wide_joints(reach);
    let mut says = vec![
        if wide {
            "Where two panels meet, they meet on 3x framing, the nails staggered.".to_owned()
        } else {
            "Two panels may meet on one joist or rafter, with their nails 3/8\" from the edges.".to_owned()
        },
        format!("{}.", words::source(CLOSE_NAILS)),
    ];
    let least = strength.row.penetration;
    says.push(format!(
        "Nails go {} or more into the framing; these go {}.",
        words::inches(least),
        words::inches(reach)
    ));
    if reach + Length::from_inches(1e-6) < least {
        says.push("That is too short: take a longer nail, or ask the engineer.".to_owned());
    }
    reply.by_code.push(rule("Framing at panel joints", None, if wide { "3x" } else { "one joist" }, says));
}

/// How much a force is, whichever way it goes.
pub(super) fn size(force: Force) -> Force {
    if force < Force::ZERO { -force } else { force }
}
