//! One nail in a joint, read and answered.

use fastening::{
    CombinedCheck, FasteningError, Joint, LateralValue, NailSpec, UpliftValue, WithdrawalValue, check_combined,
    lateral_value, uplift_value, withdrawal_value,
};
use measure::{Force, Length};
use members::check::Verdict;

mod working;

use super::ends::check;
use super::nail_joint::{self, carried};
use super::{NOT_ENOUGH, ONE_NAIL, STILL_TO_SAY, TOO_SHORT};
use crate::quick::drawn_fasteners::DrawnJoint;
use crate::quick::reply::{Drawn, QuickReply};
use crate::quick::say::{cautions, pounds, unworked};
use crate::reading::Reading;
use crate::reply::CheckReply;
use crate::site::about::About;
use crate::walk::words::nail_caution;
use crate::words::{self, figure};

pub(super) const FIELDS: &[&str] = &[
    "nail_as",
    "nail_side",
    "nail_side_thick",
    "nail_gauge",
    "nail_driven",
    "nail_count",
    "nail_across",
    "nail_pull",
    "nail_shank",
    "nail_ringed",
    "nail_head",
    "nail_lasts",
    "species",
    "nailed_wet",
    "service",
];

const USED: &[&str] = &[
    "nail_as",
    "nail_side",
    "nail_gauge",
    "nail_driven",
    "nail_shank",
    "nail_ringed",
    "nail_lasts",
    "species",
    "nailed_wet",
    "service",
];

/// Loads on all nails together.
struct Loads {
    nails: u32,
    across: Option<Force>,
    pull: Option<Force>,
}

/// What was worked of one nail.
struct Worked {
    spec: NailSpec,
    joint: Joint,
    side: nail_joint::Side,
    lateral: LateralValue,
    withdrawal: Result<WithdrawalValue, FasteningError>,
    uplift: Result<UpliftValue, FasteningError>,
}

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let spec = nail_joint::spec(reading, "nail_as", "nail_shank")?;
    let spec = nail_joint::with_head(reading, spec)?;
    nail_joint::check_rings(reading, &spec)?;
    let loads = Loads {
        nails: whole(reading)?,
        across: reading.number("nail_across").map(Force::from_pounds),
        pull: reading.number("nail_pull").map(Force::from_pounds),
    };
    let reading = &*reading;
    let (joint, side) = nail_joint::joint(reading, nail_joint::conditions(reading)?)?;
    let mut used = nail_joint::used(reading, USED, nail_joint::is_ringed(&spec));
    if loads.across.or(loads.pull).is_some() {
        used.push("nail_count");
    }
    let mut about = About::of(reading, &used);
    nail_joint::say_of_side(&mut about, &side);
    let lateral = match lateral_value(spec.nail, &joint) {
        Ok(lateral) => lateral,
        Err(problem) => return Some(without_value(about, (&spec, &joint, &side), &problem)),
    };
    let withdrawal = withdrawal_value(spec.nail, spec.shank, &joint);
    let uplift = uplift_value(&spec, &joint);
    Some(reply(about, &Worked { spec, joint, side, lateral, withdrawal, uplift }, &loads))
}

/// How many nails: whole ones.
fn whole(reading: &mut Reading) -> Option<u32> {
    let count = reading.number("nail_count")?;
    if count.fract() == 0.0 {
        // From 1 to 1,000, as the input takes it.
        return Some(count as u32);
    }
    reading
        .refuse("nail_count", format!("{} nails were given; a whole number is taken, from 1 to 1,000.", figure(count)));
    None
}

fn without_value(
    mut about: About<'_>,
    (spec, joint, side): (&NailSpec, &Joint, &nail_joint::Side),
    problem: &FasteningError,
) -> QuickReply {
    let Some(short) = nail_joint::too_short(problem) else { return unworked(about, problem.to_string()) };
    cautions(&mut about);
    QuickReply {
        verdict: TOO_SHORT.to_owned(),
        size: spec.nail.to_string(),
        governs: Some("how deep it goes".to_owned()),
        reason: Some(short.clone()),
        action: vec![short],
        drawn: Drawn::Joint(drawn(spec, joint, side, None)),
        about: about.finish(),
        ..QuickReply::default()
    }
}

fn reply(mut about: About<'_>, worked: &Worked, loads: &Loads) -> QuickReply {
    let lateral = worked.lateral.adjusted;
    let mut reply = QuickReply { size: carried(lateral), ..QuickReply::default() };
    let both = both_at_once(worked, loads);
    reply.checks = checks(worked, loads, both.as_ref());
    judge(&mut reply, worked, loads, &mut about);
    working::facts(&mut reply, worked, both.as_ref());
    reply.tables.push(working::modes(&worked.lateral));
    about.part(working::lateral(&worked.lateral));
    if let Ok(withdrawal) = &worked.withdrawal {
        about.part(working::pull(withdrawal, worked.uplift.as_ref().ok()));
    }
    if let Some(both) = &both {
        about.part(working::both(both));
    }
    let of_pull = worked.withdrawal.iter().flat_map(|withdrawal| &withdrawal.cautions);
    let mut said = Vec::new();
    for caution in worked.lateral.cautions.iter().chain(of_pull) {
        if !said.contains(caution) {
            said.push(*caution);
            about.say(nail_caution(*caution));
        }
    }
    if matches!(worked.joint.side.material, fastening::SideMaterial::Steel { .. }) {
        about.say("What the strap itself carries is on its label, and is not worked here.");
    }
    about.say("Ends, edges and spacing are wide enough that nothing splits: 15 diameters to a loaded end, 2-1/2 to an edge (from memory).");
    cautions(&mut about);
    about.caution("Go by diameter and length from the box. A penny size names no diameter.");
    reply.drawn = Drawn::Joint(loaded(worked, loads, &reply));
    reply.about = about.finish();
    reply
}

/// Both loads on one nail at once, where both were given and both have a value.
fn both_at_once(worked: &Worked, loads: &Loads) -> Option<CombinedCheck> {
    let one = |load: Option<Force>| load.map(|load| load / f64::from(loads.nails)).filter(|load| *load > Force::ZERO);
    let (across, pull) = (one(loads.across)?, one(loads.pull)?);
    check_combined(&worked.lateral, worked.uplift.as_ref().ok()?, across, pull).ok()
}

const PULLED_OUT: &str = "pulled out";
const HEAD: &str = "the head pulled through";
const ACROSS: &str = "across the nail";
const BOTH: &str = "both at once";

fn checks(worked: &Worked, loads: &Loads, both: Option<&CombinedCheck>) -> Vec<CheckReply> {
    let one = |load: Option<Force>| load.map(|load| load / f64::from(loads.nails)).filter(|load| *load > Force::ZERO);
    let against =
        |name: &str, load: Force, value: Force| check(name, (load.pounds(), value.pounds(), "lb"), "one nail");
    let mut checks = Vec::new();
    if let Some(across) = one(loads.across) {
        checks.push(against(ACROSS, across, worked.lateral.adjusted));
    }
    if let Some(pull) = one(loads.pull) {
        checks.extend(worked.withdrawal.iter().map(|shank| against(PULLED_OUT, pull, shank.adjusted)));
        let head = worked.uplift.iter().filter_map(|uplift| uplift.pull_through.as_ref());
        checks.extend(head.map(|head| against(HEAD, pull, head.adjusted)));
    }
    checks.extend(both.map(|both| against(BOTH, both.load, both.value.value)));
    checks
}

fn judge(reply: &mut QuickReply, worked: &Worked, loads: &Loads, about: &mut About<'_>) {
    let given = |load: Option<Force>| load.filter(|load| *load > Force::ZERO);
    if given(loads.across).or(given(loads.pull)).is_none() {
        ONE_NAIL.clone_into(&mut reply.verdict);
        about.ask("nail_across", "What goes across the nails? Until you say, the answer is what one carries.");
        reply.action =
            vec![format!("One nail carries {} across. Count the nails for your load, or give the load.", reply.size)];
        return;
    }
    let governing = reply.checks.iter().max_by(|a, b| a.ratio.total_cmp(&b.ratio)).cloned();
    if let Some(governing) = governing {
        reply.ratio = Some(governing.ratio);
        reply.verdict = match Verdict::of(governing.ratio) {
            Verdict::TooSmall => NOT_ENOUGH,
            verdict => words::verdict(verdict),
        }
        .to_owned();
        reply.action = enough(&governing, loads);
        reply.governs = Some(governing.limit);
    }
    reply.size =
        if loads.nails == 1 { "1 nail".to_owned() } else { format!("{} nails", figure(f64::from(loads.nails))) };
    if given(loads.pull).is_some()
        && let Err(problem) = &worked.uplift
    {
        not_pulled(reply, problem, about);
    }
}

/// What to do: how many nails the hardest check needs.
fn enough(governing: &CheckReply, loads: &Loads) -> Vec<String> {
    let needed = (governing.ratio * f64::from(loads.nails) - 1e-9).ceil().max(1.0);
    if governing.ratio > 1.0 {
        vec![
            format!("{} is too much for them: it takes {} such nails.", crate::quick::say::capital(&governing.limit), figure(needed)),
            "Add nails only where the wood takes them without splitting; else use a thicker or longer nail, a strap or a tie.".to_owned(),
        ]
    } else {
        vec!["They carry it. Drive every one of them into solid wood, heads flush with the face.".to_owned()]
    }
}

/// A pull that has no value: nothing holds it, or something must be said first.
fn not_pulled(reply: &mut QuickReply, problem: &FasteningError, about: &mut About<'_>) {
    reply.reason = Some(problem.to_string());
    reply.action.insert(0, problem.to_string());
    match problem {
        FasteningError::NoWithdrawal(_) => {
            NOT_ENOUGH.clone_into(&mut reply.verdict);
            reply.governs = Some(PULLED_OUT.to_owned());
            reply.ratio = None;
        }
        // What is over already stays over, whatever the head holds.
        _ if reply.ratio.is_some_and(|ratio| ratio > 1.0) => {}
        FasteningError::HeadNotKnown { .. } => {
            STILL_TO_SAY.clone_into(&mut reply.verdict);
            about.ask("nail_head", "How wide is the head across? The pull cannot be judged without it.");
        }
        _ => {
            words::verdict(Verdict::Outside).clone_into(&mut reply.verdict);
            about.outside(problem.to_string());
        }
    }
}

fn drawn(spec: &NailSpec, joint: &Joint, side: &nail_joint::Side, penetration: Option<Length>) -> DrawnJoint {
    use standards::nds_2018::chapter_12::{full_penetration, least_penetration};
    let diameter = spec.nail.diameter();
    DrawnJoint {
        nail: nail_joint::drawn_nail(spec, penetration),
        side: joint.side.thickness,
        side_is: side.words.clone(),
        main_is: "framing".to_owned(),
        driven: nail_joint::drawn_driven(joint.driven),
        marks: (least_penetration(diameter).value, full_penetration(diameter).value),
        across: String::new(),
        pull: String::new(),
        holds: None,
    }
}

fn loaded(worked: &Worked, loads: &Loads, reply: &QuickReply) -> DrawnJoint {
    let each =
        |load: Option<Force>| load.filter(|load| *load > Force::ZERO).map(|load| pounds(load / f64::from(loads.nails)));
    let across = each(loads.across);
    let pull = each(loads.pull);
    let outside = words::verdict(Verdict::Outside);
    let holds = match reply.verdict.as_str() {
        ONE_NAIL | STILL_TO_SAY => None,
        verdict if verdict == outside => None,
        verdict => Some(verdict != NOT_ENOUGH),
    };
    DrawnJoint {
        across: match across {
            None if pull.is_none() => carried(worked.lateral.adjusted),
            across => across.unwrap_or_default(),
        },
        pull: pull.unwrap_or_default(),
        holds,
        ..drawn(&worked.spec, &worked.joint, &worked.side, Some(worked.lateral.reach.penetration))
    }
}
