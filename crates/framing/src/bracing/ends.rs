//! What all walls say of their ends: the hold-down and the post that is pressed.

use bracing::Strength;
use measure::{Force, Length, LineLoad};
use members::check::Verdict;
use members::limit::Limit;
use members::upright::end_post::{EndPost, check_end_post};

use super::frame::{ends, marked, plate, seismic_assumed, wood};
use super::{HOLD_DOWN_TOO_WEAK, NOT_ENOUGH, POST_TOO_SMALL};
use crate::quick::reply::QuickReply;
use crate::quick::say::{check_reply, pounds, rule};
use crate::reading::Reading;
use crate::reply::CheckReply;
use crate::site::about::About;
use crate::words;

/// The hold-down by its label, as a limit.
const HOLD_DOWN: &str = "the hold-down";

/// What the combination is called that holds the ends.
pub(super) const PUSHED: &str = "0.6D + 0.6W";

/// What the hardest end must take.
#[derive(Clone, Copy)]
pub(super) struct Demand {
    /// Pull in the hold-down, dead load counted; none or less where dead load holds it.
    pub(super) tension: Force,
    /// What presses on the post, of the push alone.
    pub(super) compression: Force,
    /// Dead load that comes down the post.
    pub(super) dead: Force,
    /// Height of the wall.
    pub(super) height: Length,
}

/// A share of a capacity, as the answer has it.
pub(super) fn check(limit: &str, (demand, capacity, unit): (f64, f64, &str), combination: &str) -> CheckReply {
    CheckReply {
        limit: limit.to_owned(),
        ratio: demand / capacity,
        demand,
        capacity,
        unit: unit.to_owned(),
        combination: combination.to_owned(),
    }
}

/// Checks of the ends: the hold-down by its label, the post and the plate under it.
pub(super) fn checks(reading: &Reading, about: &mut About<'_>, demand: Demand) -> Vec<CheckReply> {
    let mut checks = Vec::new();
    let scheduled = marked(reading).and_then(|(_, hold_down)| hold_down);
    if let Some(scheduled) = &scheduled
        && reading.number("hold_down_label").is_none()
    {
        about.say(format!("The hold-down is {} of the schedule, {}.", scheduled.mark, pounds(scheduled.load)));
    }
    let typed = reading.number("hold_down_label").filter(|label| *label > 0.0);
    let label = typed.or_else(|| scheduled.map(|scheduled| scheduled.load.pounds()));
    match label {
        Some(label) if demand.tension > Force::ZERO => {
            checks.push(check(HOLD_DOWN, (demand.tension.pounds(), label, "lb"), PUSHED));
        }
        Some(_) => {}
        None if demand.tension > Force::ZERO => {
            let asks = format!("What does the hold-down carry? It must hold {}.", pounds(demand.tension));
            about.ask("hold_down_label", asks);
        }
        None => {}
    }
    let post = || {
        let (member, _) = ends(reading)?;
        let (conditions, plate) = (wood(reading)?.2, plate(reading)?);
        let Demand { compression: pressed, dead, height, .. } = demand;
        Some(check_end_post(&EndPost { member, conditions, height, plate, dead, pressed }))
    };
    match post() {
        Some(Ok(of_post)) => checks.extend(of_post.iter().map(check_reply)),
        Some(Err(sentence)) => about.outside(sentence),
        None => about.outside("The post at the ends was not worked: no table has this wood in this size.".to_owned()),
    }
    checks
}

/// What to do about the ends, from what was checked of them.
pub(super) fn action(demand: Demand, checks: &[CheckReply]) -> Vec<String> {
    let over = |limit: &str| checks.iter().find(|check| check.limit == limit).is_some_and(|check| check.ratio > 1.0);
    let pull = pounds(demand.tension);
    let mut says = Vec::new();
    if over(HOLD_DOWN) {
        says.push(format!("The hold-down is too weak: {pull} is asked of it. Take one that carries that."));
    }
    if over(Limit::PlateBearing.words()) {
        says.push("The plate is crushed under the post: nail more studs together there, or set it on a steel plate as the engineer says.".to_owned());
    }
    if over(Limit::Compression.words()) {
        says.push("The post at the ends is too weak for what presses on it: nail more studs together.".to_owned());
    }
    says.push(if demand.tension > Force::ZERO {
        format!("Hold each end down for {pull}, on through every floor to the footing.")
    } else {
        "Dead load holds its ends down in this push. Set the hold-downs that are drawn.".to_owned()
    });
    says
}

/// Puts the hardest share first and says the verdict.
pub(super) fn judge(reply: &mut QuickReply, checks: Vec<CheckReply>) {
    let governing = checks.iter().max_by(|a, b| a.ratio.total_cmp(&b.ratio));
    reply.ratio = governing.map(|check| check.ratio);
    reply.governs = governing.map(|check| check.limit.clone());
    reply.combination = governing.map(|check| check.combination.clone());
    let verdict = reply.ratio.map_or(Verdict::Outside, Verdict::of);
    let short = match reply.governs.as_deref() {
        Some(HOLD_DOWN) => HOLD_DOWN_TOO_WEAK,
        Some(limit) if limit == Limit::PlateBearing.words() || limit == Limit::Compression.words() => POST_TOO_SMALL,
        _ => NOT_ENOUGH,
    };
    reply.verdict = if verdict == Verdict::TooSmall { short } else { words::verdict(verdict) }.to_owned();
    reply.checks = checks;
}

/// Dead load that comes down the post at an end: of one stud bay.
pub(super) fn dead_on_post(reading: &Reading, dead: LineLoad) -> Force {
    dead * reading.length("brace_spacing").unwrap_or(Length::ZERO)
}

/// What the usual cautions add for walls, and that wind decides where nobody said otherwise.
pub(super) fn cautions(reading: &Reading, about: &mut About<'_>) {
    seismic_assumed(reading, about);
    crate::quick::say::cautions(about);
    about.caution("Wind alone is worked here. In earthquake country (Design Category C for houses in a row, D0 and up) an engineer designs the walls.");
    about.caution("Cut no stud, plate or panel of a braced wall, and drive no nail through the skin of a panel.");
}

/// Where it needs framing at panel joints that is wider than a stud.
pub(super) fn joints(reply: &mut QuickReply, strength: &Strength, nailing: &bracing::Nailing) {
    use standards::sdpws_2015::framing::{ADJOINING_EDGES, BOTH_FACES, needs_wide_joints};
    let reach = bracing::nail_length(nailing.fastener).map_or(Length::ZERO, |length| length - nailing.thickness);
    let wide = needs_wide_joints(nailing.fastener, nailing.edge, reach);
    let mut says = Vec::new();
    if wide {
        says.push("Where two panels meet, they meet on 3x framing, or on two studs nailed to each other for the shear of the joint. Edge nails are staggered.".to_owned());
    } else {
        says.push("Two panels may meet on one stud, with their nails 3/8\" from the edges.".to_owned());
    }
    says.push(format!("{}.", words::source(ADJOINING_EDGES)));
    let closer = |edge: Length| edge < Length::from_inches(6.0);
    let other = strength.second.as_ref().filter(|second| second.row.sheathing.is_wood_structural_panel());
    let other_closer = other.is_some_and(|second| second.row.edge.is_some_and(closer));
    let on_both = nailing.both_faces || other.is_some();
    if on_both && (closer(nailing.edge) || other_closer) {
        says.push("The joints of the two faces fall on different studs, or on 3x framing.".to_owned());
        says.push(format!("{}.", words::source(BOTH_FACES)));
    }
    if let Some(deep) = strength.row.penetration {
        let reaches = reach + Length::from_inches(1e-6) >= deep;
        let least = words::inches(deep);
        says.push(format!("Nails go {least} or more into the framing; these go {}.", words::inches(reach)));
        if !reaches {
            says.push("That is too short: take a longer nail, or ask the engineer.".to_owned());
        }
    }
    let figure = if wide { "3x, or two studs" } else { "one stud" };
    reply.by_code.push(rule("Framing at panel joints", None, figure, says));
}
