//! Plumb, flat, and the faces of neighbours: what was measured, drawn larger than it is, by how much is said.

use framing::walk::words;
use measure::Length;

use super::pen::{Pen, rectangle, several};
use super::values::Values;
use crate::markup::Act;
use crate::model::State;
use crate::scene::{Ink, Scene, Weight};
use crate::walk::answer::state_of;
use crate::walk::typed::InHand;

/// What is out is drawn as so large a share of what it was measured over, so that it is seen.
const SHOWN_SHARE: f64 = 0.1;
const DISTANCES: &str = "distances";

/// What the level, the straightedge or the string showed.
pub(super) fn picture(values: Values<'_>, hand: InHand) -> Scene {
    if values.typed.text("looking_at") == "faces" || !values.typed.has("out") {
        return faces(values, hand);
    }
    let Some((out, over)) = values.length("out").zip(values.length("over")).filter(|(_, over)| *over > 0.0) else {
        return super::empty();
    };
    let times = exaggeration(out, over);
    if values.typed.text("looking_at") == "plumb" {
        plumb(values, out, over, times)
    } else {
        flat(values, out, over, times)
    }
}

/// How many times larger it is drawn: a whole number, 1 where it is seen as it is.
fn exaggeration(out: f64, over: f64) -> f64 {
    if out <= 0.0 { 1.0 } else { (over * SHOWN_SHARE / out).floor().clamp(1.0, 200.0) }
}

/// How large it is drawn, in words.
fn drawn(times: f64) -> String {
    if times > 1.0 { format!("drawn {times:.0} times as large as measured") } else { "drawn as measured".to_owned() }
}

fn ink(values: Values<'_>) -> Ink {
    match state_of(&values.reply.verdict) {
        State::Short => Ink::Short,
        State::AtLimit => Ink::AtLimit,
        _ => Ink::Ink,
    }
}

fn plumb(values: Values<'_>, out: f64, over: f64, times: f64) -> Scene {
    let shown = out * times;
    let thick = over * 0.04;
    let mut pen = Pen::new((0.0, 0.0), (shown + thick, over));
    pen.margin(60.0, 34.0, 16.0);
    pen.shape(vec![(0.0, over), (thick, over), (thick + shown, 0.0), (shown, 0.0)], Weight::Cut, ink(values), false);
    pen.line((0.0, over), (0.0, 0.0), Weight::Hidden, Ink::Chalk);
    let y = -pen.paper(14.0);
    pen.dimension((0.0, y), (shown, y), &figure(out), Some("out"));
    let x = -pen.paper(24.0);
    pen.dimension((x, over), (x, 0.0), &figure(over), Some("over"));
    pen.scene(format!(
        "A stud beside the plumb line: {} out in {}. The offset is {}.",
        figure(out),
        figure(over),
        drawn(times)
    ))
}

fn flat(values: Values<'_>, out: f64, over: f64, times: f64) -> Scene {
    let shown = out * times;
    let mut pen = Pen::new((0.0, 0.0), (over, shown));
    pen.margin(26.0, 24.0, 54.0);
    let edge = pen.paper(10.0);
    pen.shape(rectangle(0.0, -edge, over, 0.0), Weight::Seen, Ink::Chalk, false);
    // The surface falls away from the straightedge and comes back.
    let points =
        [(0.0, 0.0), (over * 0.25, shown * 0.75), (over * 0.5, shown), (over * 0.75, shown * 0.75), (over, 0.0)];
    for pair in points.windows(2) {
        pen.line(pair[0], pair[1], Weight::Cut, ink(values));
    }
    pen.dimension((over * 0.5, shown), (over * 0.5, 0.0), &figure(out), Some("out"));
    let y = shown + pen.paper(44.0);
    pen.dimension((0.0, y), (over, y), &figure(over), Some("over"));
    pen.scene(format!(
        "A straightedge of {} on the surface, and a gap of {}. The gap is {}.",
        figure(over),
        figure(out),
        drawn(times)
    ))
}

/// Each face at its distance from the string, the nearest one touching the paper's edge.
fn faces(values: Values<'_>, hand: InHand) -> Scene {
    const APART: f64 = 16.0;
    const FACE: f64 = 3.0;
    let distances: Vec<(usize, f64)> =
        values.lengths(DISTANCES).into_iter().enumerate().filter_map(|(index, at)| Some((index, at?))).collect();
    if distances.is_empty() {
        return super::empty();
    }
    let all = || distances.iter().map(|(_, at)| *at);
    let (least, most) = (all().fold(f64::MAX, f64::min), all().fold(0.0, f64::max));
    let times = exaggeration(most - least, APART * 5.0);
    let width = APART * distances.len() as f64;
    let deep = (most - least) * times;
    let mut pen = Pen::new((0.0, 0.0), (width, deep + FACE));
    pen.margin(12.0, 24.0, 30.0);
    let string = -pen.paper(12.0);
    pen.line((0.0, string), (width, string), Weight::Fine, Ink::Chalk);
    for (place, (index, at)) in distances.iter().enumerate() {
        let left = APART * place as f64;
        let top = (at - least) * times;
        let is_out = is_out(values, *index);
        let ink = if is_out { Ink::Short } else { Ink::Ink };
        let corners = rectangle(left + APART * 0.3, top, left + APART * 0.7, top + FACE);
        pen.shape(corners, Weight::Cut, ink, is_out);
        let y = deep + FACE + pen.paper(16.0);
        pen.label((left + APART / 2.0, y), &figure(*at));
        let act = Act::Reading(DISTANCES, *index);
        pen.pick((left, string), (left + APART, deep + FACE), act, format!("Face {}, {}", index + 1, figure(*at)));
    }
    let in_hand =
        if hand.field == DISTANCES { format!(" Face {} is in hand.", hand.reading + 1) } else { String::new() };
    pen.scene(format!(
        "{} below a string, at {} to {} from it. Steps are {}.{in_hand}",
        several(distances.len(), "face"),
        figure(least),
        figure(most),
        drawn(times)
    ))
}

/// Whether the step to this face from the one before is out.
fn is_out(values: Values<'_>, index: usize) -> bool {
    let at = format!("{index} to {}", index + 1);
    let steps = values.reply.checks.iter().filter(|check| check.at.as_deref() == Some(at.as_str()));
    steps.into_iter().any(|check| state_of(&check.verdict) == State::Short)
}

fn figure(inches: f64) -> String {
    words::length(Length::from_inches(inches))
}
