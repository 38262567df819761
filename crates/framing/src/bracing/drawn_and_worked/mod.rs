//! The engineer's schedule beside what is worked out, wall by wall; the drawing wins, and nothing of it is replaced.
//!
//! Where to look: `compare` puts both columns of one wall together and judges them, `says` has what follows in words,
//! `steps` the working, `shown` the tables and the bars.

mod compare;
mod says;
mod shown;
mod steps;

use bracing::braced_walls::BracedWalls;
use bracing::schedule::Schedule;
use measure::Force;

use super::ends::{self, PUSHED, check};
use super::schedule::{WHAT_IT_SAYS, say_sheet};
use super::{CARRIED_AS_DRAWN, STILL_TO_SAY, TO_ASK_ABOUT, frame};
use crate::quick::reply::{Drawn, FactReply, QuickReply};
use crate::quick::say::{fact, force_fact, pounds, unworked};
use crate::reading::Reading;
use crate::reply::CheckReply;
use crate::site::about::About;
use crate::words::percent;
use compare::{By, Compared, Held};

pub(super) const FIELDS: &[&str] = &[
    "braced_walls",
    "schedule_lines",
    "floor_between",
    "end_post",
    "rod_in",
    "held_on",
    "brace_studs",
    "brace_spacing",
    "panels_lie",
    "nailed_wet",
    "species",
    "grade",
    "provisions",
    "seismic_design_category",
];

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let walls = frame::braced_walls(reading);
    let schedule = frame::schedule(reading);
    if reading.problems().next().is_some() {
        return None;
    }
    let (walls, schedule, reading) = (walls?, schedule.unwrap_or_default(), &*reading);
    let is_stacked = walls.as_slice().iter().any(|wall| wall.under.is_some());
    let used: Vec<&str> = FIELDS.iter().copied().filter(|id| is_stacked || *id != "floor_between").collect();
    let about = About::of(reading, &used);
    if let Some(sentence) = frame::earthquakes(reading) {
        return Some(unworked(about, sentence));
    }
    let by = By::of(reading, &schedule)?;
    let all: Vec<Compared<'_>> = walls.as_slice().iter().map(|wall| by.compare(&walls, wall)).collect();
    Some(reply(reading, about, &by, (&walls, &all)))
}

fn reply(
    reading: &Reading,
    mut about: About<'_>,
    by: &By<'_>,
    (walls, all): (&BracedWalls, &[Compared<'_>]),
) -> QuickReply {
    let mut reply = QuickReply { drawn: Drawn::Compared(all.iter().map(shown::pair).collect()), ..judged(all) };
    ask_what_is_missing(&mut about, by.schedule, all);
    if !all.is_empty() {
        reply.facts = facts(all);
        reply.action = says::action(all);
        reply.tables = shown::tables(all);
    }
    for part in steps::parts(by, all) {
        about.part(part);
    }
    say_what_is_compared(&mut about, by.schedule, walls);
    ends::cautions(reading, &mut about);
    reply.about = about.finish();
    reply
}

/// How many walls carry as they are drawn, or are to be asked about, and what is used the hardest.
fn judged(all: &[Compared<'_>]) -> QuickReply {
    let (count, ask) = (all.len(), all.iter().filter(|one| one.asks()).count());
    let of = |some: usize| format!("{some} of {count} wall{}", if count == 1 { "" } else { "s" });
    let (size, verdict) = match (count, ask) {
        (0, _) => ("No wall yet".to_owned(), STILL_TO_SAY),
        (_, 0) => (of(count), CARRIED_AS_DRAWN),
        (_, ask) => (of(ask), TO_ASK_ABOUT),
    };
    let checks: Vec<CheckReply> = all.iter().flat_map(checks).collect();
    let hardest = checks.iter().max_by(|one, other| one.ratio.total_cmp(&other.ratio)).cloned();
    QuickReply {
        size,
        verdict: verdict.to_owned(),
        ratio: hardest.as_ref().map(|check| check.ratio),
        combination: hardest.as_ref().map(|check| check.combination.clone()),
        governs: hardest.map(|check| check.limit),
        checks,
        ..QuickReply::default()
    }
}

/// The shares of what is drawn: its panels, and what holds their ends.
fn checks(one: &Compared<'_>) -> Vec<CheckReply> {
    let name = &one.wall.name;
    let mut checks = Vec::new();
    if let Some(drawn) = one.drawn().filter(|drawn| drawn.capacity > Force::ZERO) {
        let demand = (one.wall.push.pounds(), drawn.capacity.pounds(), "lb");
        checks.push(check(&format!("{name}, {}", one.mark()), demand, PUSHED));
    }
    if let (Held::By(hold_down, _), Some(pull)) = (&one.held, one.tension()) {
        let demand = (pull.pounds(), hold_down.load.pounds(), "lb");
        checks.push(check(&format!("{name}, {} at its ends", hold_down.mark), demand, PUSHED));
    }
    checks
}

fn facts(all: &[Compared<'_>]) -> Vec<FactReply> {
    let count = |name: &str, what: &str, count: usize| fact(name, what, count as f64, count.to_string());
    let ask = all.iter().filter(|one| one.asks()).count();
    let more = all.iter().filter(|one| !one.asks() && one.asks_more()).count();
    let mut facts = vec![
        count("walls", "walls", all.len()),
        count("both_agree", "both agree", all.len() - ask - more),
        count("drawing_asks_more", "the drawing asks for more", more),
        count("to_ask", "to ask the engineer about", ask),
    ];
    let hardest = |of: fn(&Compared<'_>) -> Option<f64>| all.iter().filter_map(of).max_by(f64::total_cmp);
    let share = |name: &str, what: &str, share: f64| fact(name, what, share, percent(share));
    let drawn = hardest(|one| one.drawn().and_then(|column| column.used));
    facts.extend(drawn.map(|used| share("hardest_drawn", "hardest share of drawn panels", used)));
    let held = hardest(|one| one.hold_down_share());
    facts.extend(held.map(|used| share("hardest_hold_down", "hardest share of a drawn hold-down", used)));
    let worked = hardest(|one| one.worked.as_ref().and_then(|column| column.used));
    facts.extend(worked.map(|used| share("hardest_worked", "hardest share of worked panels", used)));
    let pull = hardest(|one| one.tension().map(Force::pounds));
    facts.extend(pull.map(|pull| force_fact("hardest_pull_lb", "hardest pull at an end", Force::from_pounds(pull))));
    facts
}

fn ask_what_is_missing(about: &mut About<'_>, schedule: &Schedule, all: &[Compared<'_>]) {
    if all.is_empty() {
        about
            .ask("braced_walls", "Which walls are braced? Type a wall a line, with its mark, its pieces and its push.");
    }
    if schedule.panels.is_empty() {
        about.ask("schedule_lines", WHAT_IT_SAYS);
    }
}

fn say_what_is_compared(about: &mut About<'_>, schedule: &Schedule, walls: &BracedWalls) {
    for wall in walls.as_slice() {
        if let [.., above, _] = walls.stack(wall).as_slice() {
            about.say(format!(
                "Of the {} on {}, {} come from {}; the dead loads of both are added up against its pull.",
                pounds(wall.push),
                wall.name,
                pounds(above.push),
                above.name
            ));
        }
    }
    say_sheet(about, schedule);
    about.say("Worked are the lightest panels and nails that carry, on the same pieces with every edge blocked: to compare with and to ask with. The drawing wins, and nothing of it is replaced.");
    about.say("All marks are taken to be blocked where the schedule does not say otherwise, with posts and rods at the ends as typed here.");
    about.say("The post that is pressed and how far a wall leans are not in it: look at the wall by itself.");
}
