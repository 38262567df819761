//! What holds the ends of stacked walls down, storey by storey, read and answered.

use bracing::{Ends, Storey, overturning};
use measure::{Force, Length, LineLoad};
use members::working::{Basis, Part};

use super::ends::{self, Demand, PUSHED};
use super::straps::{self, Straps};
use super::{frame, lists, salt};
use crate::quick::reply::{Drawn, DrawnPiece, DrawnWall, QuickReply, TableReply};
use crate::quick::say::{force_fact, pounds, unworked};
use crate::reading::Reading;
use crate::reply::CheckReply;
use crate::site::about::About;
use crate::words::{self, figure};

pub(super) const FIELDS: &[&str] = &[
    "storey_pushes",
    "storey_heights",
    "storey_deads",
    "wall_long",
    "end_post",
    "rod_in",
    "hold_down_label",
    "strap_labels",
    "strap_nails",
    "strap_gauge",
    "brace_studs",
    "brace_spacing",
    "species",
    "grade",
    "seismic_design_category",
    "salt_water",
    "metal_where",
    "metal_tie",
    "metal_nails",
];

/// The most storeys that are worked.
const STOREYS: usize = 3;

pub(super) fn answer(reading: &mut Reading) -> Option<QuickReply> {
    let pushes = lists::forces(reading, "storey_pushes")?;
    let heights = lists::lengths(reading, "storey_heights", (4.0, 24.0))?;
    let deads = lists::line_loads(reading, "storey_deads")?;
    if pushes.len() > STOREYS {
        let problem = format!("{} storeys were given; to three are worked. An engineer designs more.", pushes.len());
        reading.refuse("storey_pushes", problem);
        return None;
    }
    let heights = one_or_each(reading, ("storey_heights", &heights), pushes.len())?;
    let deads = one_or_each(reading, ("storey_deads", &deads), pushes.len())?;
    let straps = straps::straps(reading, pushes.len().saturating_sub(1))?;
    let reading = &*reading;
    let length = reading.length("wall_long")?;
    let (_, ends) = frame::ends(reading)?;
    let about = About::of(reading, FIELDS);
    if let Some(sentence) = frame::earthquakes(reading) {
        return Some(unworked(about, sentence));
    }
    let storeys: Vec<Storey> = pushes
        .into_iter()
        .zip(heights)
        .zip(deads)
        .map(|((force, height), dead)| Storey { force, height, dead })
        .collect();
    if ends.arm(length) <= Length::ZERO {
        let least = words::length(ends.post / 2.0 + ends.hold_down);
        return Some(unworked(about, format!("The wall is too short for its posts: its length must be over {least}.")));
    }
    Some(reply(reading, about, (&storeys, &straps), (length, ends)))
}

/// One value for all storeys, or one for each.
fn one_or_each<T: Copy>(reading: &mut Reading, (id, values): (&'static str, &[T]), storeys: usize) -> Option<Vec<T>> {
    match values {
        [one] => Some(vec![*one; storeys]),
        each if each.len() == storeys => Some(each.to_vec()),
        other => {
            let problem = format!(
                "{} values were given for {storeys} storeys; one for all, or one for each, is taken.",
                other.len()
            );
            reading.refuse(id, problem);
            None
        }
    }
}

/// What presses on the post at the foot of the last storey, of all pushes and before dead load.
fn pressed(storeys: &[Storey], (length, ends): (Length, Ends)) -> Force {
    let without: Vec<Storey> = storeys.iter().map(|storey| Storey { dead: LineLoad::ZERO, ..*storey }).collect();
    overturning(&without, length, ends.arm(length)).last().copied().unwrap_or(Force::ZERO)
}

fn reply(
    reading: &Reading,
    mut about: About<'_>,
    (storeys, straps): (&[Storey], &Straps),
    wall: (Length, Ends),
) -> QuickReply {
    let (length, ends) = wall;
    let tensions = overturning(storeys, length, ends.arm(length));
    let at_foot = tensions.last().copied().unwrap_or(Force::ZERO);
    let dead = storeys.iter().fold(LineLoad::ZERO, |sum, storey| sum + storey.dead);
    let demand = Demand {
        tension: at_foot,
        compression: pressed(storeys, wall),
        dead: ends::dead_on_post(reading, dead),
        height: storeys.last().map_or(Length::ZERO, |storey| storey.height),
    };
    let mut reply = QuickReply { size: pounds(at_foot.max(Force::ZERO)), ..QuickReply::default() };
    let mut checks = ends::checks(reading, &mut about, demand);
    let pulls = at_floors(&tensions);
    checks.extend(straps.checks(&pulls));
    if !straps.are_known() && pulls.iter().any(|(_, pull)| *pull > Force::ZERO) {
        about.ask("strap_labels", "What do the straps between the storeys carry?");
    }
    ends::judge(&mut reply, checks);
    let unknown = reading.number("hold_down_label").is_none() && at_foot > Force::ZERO;
    if unknown && reply.ratio.is_none_or(|ratio| ratio <= 1.0) {
        reply.verdict = "to hold at each end".to_owned();
    }
    reply.facts.push(force_fact("tension_lb", "each end at the footing is held down for", at_foot.max(Force::ZERO)));
    reply.facts.push(force_fact("compression_lb", "the post at the other end is pressed by", demand.compression));
    reply.action = straps.action(&pulls);
    reply.action.extend(action(&pulls, (demand, &reply.checks)));
    about.part(working(storeys, &tensions, wall));
    straps.working().into_iter().for_each(|part| about.part(part));
    reply.tables.push(table(storeys, &tensions));
    ends::cautions(reading, &mut about);
    about.say("The posts stand above each other. Where they do not, a beam or blocking carries the upper one, and that is not worked here.");
    about.say("Solid blocking under every post, through the floor, takes what presses.");
    about.say("What lifts the roof is not in it: add that where the same post and hold-down take it.");
    salt::say(reading, &mut reply, &mut about);
    about.say("How the anchor sits in the concrete is for the engineer or its maker's report.");
    reply.drawn = Drawn::Wall(drawn(reading, storeys, &tensions, wall));
    reply.about = about.finish();
    reply
}

/// Where a storey is, in words.
const fn level(index: usize, count: usize) -> &'static str {
    match (count - index, count) {
        (1, _) => "at the footing",
        (2, 2) => "between the storeys",
        (2, _) => "at the second floor",
        _ => "at the third floor",
    }
}

/// What pulls on the strap at each floor, from the top down.
fn at_floors(tensions: &[Force]) -> Vec<(&'static str, Force)> {
    let floors = tensions.iter().take(tensions.len().saturating_sub(1)).enumerate();
    floors.map(|(index, tension)| (level(index, tensions.len()), *tension)).collect()
}

fn action(pulls: &[(&'static str, Force)], (demand, checks): (Demand, &[CheckReply])) -> Vec<String> {
    let mut says = ends::action(demand, checks);
    let straps = pulls.iter().filter(|(_, pull)| *pull > Force::ZERO);
    says.extend(straps.map(|(place, pull)| format!("Strap or rod {place}: {} at each end.", pounds(*pull))));
    says
}

fn working(storeys: &[Storey], tensions: &[Force], (length, ends): (Length, Ends)) -> Part {
    let mut part = Part::new("Turning over, from the top down");
    let arm = ends.arm(length);
    let expression = format!(
        "{} − {} / 2 − {}",
        figure(length.inches()),
        figure(ends.post.inches()),
        figure(ends.hold_down.inches())
    );
    part.step(
        "d",
        "from the hold-down to the middle of the pressed post",
        expression,
        (arm.inches(), "in"),
        Basis::Arithmetic,
    );
    let (mut push, mut moment, mut dead) = (0.0, 0.0, 0.0);
    for (index, (storey, tension)) in storeys.iter().zip(tensions).enumerate() {
        let place = level(index, storeys.len());
        push += storey.force.pounds();
        moment += push * storey.height.feet();
        dead += storey.dead.plf();
        let meaning = format!("{place}: pushes above it turn the wall");
        part.step("M", meaning, "Σ V h", (moment, "ft-lb"), Basis::Arithmetic);
        let expression = format!(
            "({} − 0.6 × {} × {}² / 2) / {}",
            figure(moment),
            figure(dead),
            figure(length.feet()),
            figure(arm.feet())
        );
        part.step(
            "T",
            format!("{place}: pull at each end, {PUSHED}"),
            expression,
            (tension.pounds(), "lb"),
            Basis::Arithmetic,
        );
    }
    part
}

fn table(storeys: &[Storey], tensions: &[Force]) -> TableReply {
    let row = |(index, (storey, tension)): (usize, (&Storey, &Force))| {
        let place = level(index, storeys.len());
        vec![crate::quick::say::capital(place), pounds(storey.force), pounds((*tension).max(Force::ZERO))]
    };
    TableReply {
        heading: "Storey by storey".to_owned(),
        columns: ["where", "push above", "held down for"].map(str::to_owned).to_vec(),
        rows: storeys.iter().zip(tensions).enumerate().map(row).collect(),
        notes: Vec::new(),
    }
}

fn drawn(reading: &Reading, storeys: &[Storey], tensions: &[Force], (length, ends): (Length, Ends)) -> DrawnWall {
    let words = |tension: &Force| if *tension > Force::ZERO { pounds(*tension) } else { String::new() };
    DrawnWall {
        storeys: storeys.iter().map(|storey| (storey.height, pounds(storey.force))).collect(),
        pieces: vec![DrawnPiece { length, counts: true, left: String::new(), right: String::new() }],
        openings: Vec::new(),
        studs: reading.length("brace_spacing").unwrap_or(Length::from_inches(16.0)),
        nails: None,
        post: ends.post,
        holds: tensions.iter().map(words).collect(),
        level_joints: Vec::new(),
        blocked: true,
    }
}
