//! The last visit's readings as bars, place by place, with the limit across them.

use framing::walk::words::percent;
use measure::read_number;

use super::pen::{Pen, rectangle, several};
use super::values::Values;
use crate::markup::Act;
use crate::model::State;
use crate::scene::{Ink, Scene, Weight};
use crate::walk::answer::state_of;

const VISITS: &str = "visits";
/// Per cent is drawn as inches; a bar stands on so much paper.
const PLACE: f64 = 12.0;
const BAR: f64 = 7.0;
/// No bar is drawn higher.
const MOST: f64 = 40.0;

/// The last visit, as it was written: each reading that can be read with its place, from 0.
struct Visit<'a> {
    name: &'a str,
    readings: Vec<(usize, f64)>,
    places: usize,
}

fn visit(text: &str) -> Visit<'_> {
    let (name, numbers) = text.rsplit_once(':').unwrap_or(("", text));
    let read = |(place, text): (usize, &str)| Some((place, read_number(text.trim(), &["%"]).ok()?));
    Visit {
        name: name.trim(),
        readings: numbers.split(',').enumerate().filter_map(read).collect(),
        places: numbers.split(',').count(),
    }
}

/// The last visit; nothing before one was read.
pub(super) fn picture(values: Values<'_>) -> Scene {
    let visits = values.typed.list(VISITS);
    let Some(last) = visits.last().map(|text| visit(text)) else { return super::empty() };
    let limit = values.text("limit").trim_end_matches('%').trim().parse().unwrap_or(18.0);
    let high = last.readings.iter().map(|(_, percent)| percent.min(MOST)).fold(limit, f64::max);
    let width = PLACE * last.places.max(1) as f64;
    let mut pen = Pen::new((0.0, 0.0), (width, high));
    pen.margin(34.0, 24.0, 26.0);
    pen.line((0.0, high), (width, high), Weight::Seen, Ink::Ink);
    for ((place, reading), state) in last.readings.iter().zip(states(values, last.readings.len())) {
        bar(&mut pen, *place, *reading, high, state);
    }
    pen.line((0.0, high - limit), (width, high - limit), Weight::Hidden, Ink::Chalk);
    let x = -pen.paper(18.0);
    pen.label((x, high - limit), &percent(limit));
    let act = Act::Reading(VISITS, visits.len() - 1);
    pen.pick((0.0, 0.0), (width, high), act, "The last visit".to_owned());
    pen.scene(alt(values, &last, visits.len(), limit))
}

fn bar(pen: &mut Pen, place: usize, reading: f64, high: f64, state: State) {
    let left = PLACE * place as f64 + (PLACE - BAR) / 2.0;
    let top = high - reading.min(MOST);
    pen.shape(rectangle(left, top, left + BAR, high), Weight::Cut, ink(state), state == State::Short);
    let (over, under) = (pen.paper(10.0), pen.paper(14.0));
    pen.label((left + BAR / 2.0, top - over), &percent(reading));
    pen.label((left + BAR / 2.0, high + under), &(place + 1).to_string());
}

fn alt(values: Values<'_>, visit: &Visit<'_>, number: usize, limit: f64) -> String {
    let names = values.typed.list("places");
    let said = |(place, reading): &(usize, f64)| {
        let name = names.get(*place).map_or_else(|| format!("place {}", place + 1), |name| name.trim().to_owned());
        format!("{} {name}, {}", place + 1, percent(*reading))
    };
    let said: Vec<String> = visit.readings.iter().map(said).collect();
    let name = if visit.name.is_empty() { format!("Visit {number}") } else { visit.name.to_owned() };
    let (readings, limit) = (several(said.len(), "reading"), percent(limit));
    format!("{name}: {readings} as bars, the limit {limit} dashed across: {}.", said.join("; "))
}

/// How each reading of the last visit stands: its checks come last.
fn states(values: Values<'_>, readings: usize) -> Vec<State> {
    let checks = &values.reply.checks;
    checks[checks.len().saturating_sub(readings)..].iter().map(|check| state_of(&check.verdict)).collect()
}

const fn ink(state: State) -> Ink {
    match state {
        State::Short => Ink::Short,
        State::AtLimit => Ink::AtLimit,
        _ => Ink::Ink,
    }
}
