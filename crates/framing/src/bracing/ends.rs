//! What all walls say of their ends: the hold-down, the post that is pressed, and how far the wall leans.

use bracing::Strength;
use measure::{Force, Length, LineLoad};
use members::check::Verdict;
use members::limit::Limit;
use members::upright::end_post::{EndPost, check_end_post};
use members::working::{Basis, Part};
use standards::sdpws_2015::deflection::{self, LeaningWall, three_terms};

use super::frame::{ends, marked, plate, seismic_assumed, wood};
use super::{HOLD_DOWN_TOO_WEAK, NOT_ENOUGH, POST_TOO_SMALL};
use crate::quick::reply::{FactReply, QuickReply};
use crate::quick::say::{check_reply, fact, pounds, rule};
use crate::reading::Reading;
use crate::reply::CheckReply;
use crate::site::about::About;
use crate::words::{self, figure};

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

/// How far the wall leans, by the equation in three terms; none where the table has no stiffness.
pub(super) fn lean(
    reading: &Reading,
    (strength, shear): (&Strength, LineLoad),
    (height, length): (Length, Length),
    tension: Force,
) -> Option<(Length, Part)> {
    let stiffness = strength.stiffness?;
    let (member, _) = ends(reading)?;
    let modulus = member.adjusted_stresses(&wood(reading)?.2, lumber::LoadDuration::TenMinutes).ok()?.e;
    let wall = LeaningWall { height, length, end_post: member.section().area, modulus };
    // A label prints what it gives at its own load; less load, less give.
    let share = match reading.number("hold_down_label") {
        Some(label) if label > 0.0 => (tension.pounds() / label).clamp(0.0, 1.0),
        _ => 1.0,
    };
    let gives = if tension > Force::ZERO { reading.length("hold_down_gives")? * share } else { Length::ZERO };
    let lean = three_terms(&wall, shear, stiffness, gives);
    let mut part = Part::new("How far it leans");
    let source = Basis::Published(deflection::THREE_TERMS);
    let (v, h, b) = (shear.plf(), height.feet(), length.feet());
    let area = wall.end_post.square_inches();
    let kips = stiffness.pounds_per_inch() / 1000.0;
    part.step(
        "Δ_b",
        "end posts stretched and pressed, 8vh³/(EAb)",
        format!("8 × {} × {}³ / ({} × {} × {})", figure(v), figure(h), figure(modulus.psi()), figure(area), figure(b)),
        (lean.bending.inches(), "in"),
        source,
    );
    let sheared = format!("{} × {} / (1,000 × {})", figure(v), figure(h), figure(kips));
    part.step("Δ_v", "panels and their nails, vh/(1000 G_a)", sheared, (lean.shear.inches(), "in"), source);
    let turned = format!("{} × {} / {}", figure(h), figure(gives.inches()), figure(b));
    part.step("Δ_a", "what gives at the hold-down, hΔ/b", turned, (lean.anchorage.inches(), "in"), source);
    part.step("δ", "in all", "", (lean.total().inches(), "in"), Basis::Arithmetic);
    Some((lean.total(), part))
}

/// The lean as a fact, with what it is of the height.
pub(super) fn lean_fact(lean: Length, height: Length) -> FactReply {
    let of_height = if lean > Length::ZERO { height / lean } else { f64::INFINITY };
    let written = format!("{}, the height over {}", words::inches(lean), figure(of_height.floor()));
    fact("lean_in", "it leans in this push", lean.inches(), written)
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
    if nailing.both_faces && nailing.edge < Length::from_inches(6.0) {
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
