//! A row of studs in plan, true to scale: bays, sheet edges, openings, and the next stud on its mark.

use framing::walk::stud_spacing::{DrawnBay, DrawnRow, StudSpacingCase, drawn};
use framing::walk::{Verdict, words};
use measure::Length;

use super::pen::{Pen, crossed, rectangle, several};
use super::strip;
use crate::markup::Act;
use crate::model::FieldId;
use crate::scene::{Ink, Scene, Weight};
use crate::walk::typed::{InHand, Typed};

pub(super) const PULLS: FieldId = "pulls";
/// A wall longer than this is drawn as a part of it around the pull in hand, with the whole as a thin strip below.
const WHOLE_WALL: f64 = 168.0;
const PART: f64 = 126.0;
/// Heights over the plate at which bays are dimensioned in turn, so that their figures clear each other; pixels.
const LEVELS: [f64; 2] = [14.0, 38.0];
const ABOVE: f64 = 62.0;
/// Room below the plate, pixels: sheet edges and figures; and the strip, where there is one.
const BELOW: f64 = 58.0;
const SIDES: f64 = 14.0;
/// Studs of one pack that are drawn beside each other.
const MOST_DRAWN: u8 = 6;

/// The part of the wall that is drawn, inches from the plate's end.
#[derive(Clone, Copy)]
pub(super) struct Part {
    pub(super) from: f64,
    pub(super) to: f64,
}

impl Part {
    fn has(self, at: Length) -> bool {
        self.from <= at.inches() && at.inches() <= self.to
    }

    fn cut(self, at: Length) -> f64 {
        at.inches().clamp(self.from, self.to)
    }
}

/// The row as it was read so far.
pub(super) fn picture(typed: &Typed, hand: InHand) -> Scene {
    let row = drawn(&StudSpacingCase::of((&typed.texts, &typed.lists)));
    let end = end(&row);
    let part = part(&row, end, hand);
    let depth = row.depth.inches();
    let mut pen = Pen::new((part.from, 0.0), (part.to - part.from, depth));
    pen.margin(SIDES, ABOVE, BELOW);
    plates(&mut pen, &row, part, end);
    openings(&mut pen, &row, part);
    bays(&mut pen, &row, part, hand);
    edges(&mut pen, &row, part);
    studs(&mut pen, &row, part, hand);
    packs(&mut pen, &row, part);
    wrong(&mut pen, &row, part);
    next(&mut pen, &row, part, typed.list(PULLS).len());
    if part.to - part.from < end {
        strip::draw(&mut pen, &row, part, end);
    }
    pen.scene(alt(&row, end))
}

/// The far end of whatever is known of the wall.
fn end(row: &DrawnRow) -> f64 {
    let half = row.stud / 2.0;
    let studs = row.pulled.iter().map(|(_, centre)| *centre + half).chain(row.ends.iter().map(|end| *end + half));
    let openings = row.openings.iter().map(|(_, to)| *to);
    let known = studs.chain(openings).chain(row.plate).chain(row.next.map(|next| next + half));
    known.fold(row.required * 2.0, Length::max).inches()
}

/// The whole wall, or so much of it around the pull in hand as figures need.
fn part(row: &DrawnRow, end: f64, hand: InHand) -> Part {
    if end <= WHOLE_WALL {
        return Part { from: 0.0, to: end };
    }
    let in_hand = row.pulled.iter().find(|(reading, _)| hand.field == PULLS && *reading == hand.reading);
    let last = row.pulled.last().map(|(_, centre)| *centre);
    let middle = in_hand.map(|(_, centre)| *centre).or(row.next).or(last).unwrap_or(Length::ZERO);
    let from = (middle.inches() - PART / 2.0).clamp(0.0, end - PART);
    Part { from, to: from + PART }
}

fn plates(pen: &mut Pen, row: &DrawnRow, part: Part, end: f64) {
    let depth = row.depth.inches();
    for y in [0.0, depth] {
        pen.line((part.from, y), (part.to, y), Weight::Seen, Ink::Ink);
    }
    if part.from <= 0.0 {
        pen.line((0.0, 0.0), (0.0, depth), Weight::Cut, Ink::Ink);
    }
    if row.plate.is_some() && part.to >= end {
        pen.line((end, 0.0), (end, depth), Weight::Cut, Ink::Ink);
    }
}

fn openings(pen: &mut Pen, row: &DrawnRow, part: Part) {
    let depth = row.depth.inches();
    for (from, to) in row.openings.iter().map(|(from, to)| (part.cut(*from), part.cut(*to))) {
        if from < to {
            pen.line((from, 0.0), (to, depth), Weight::Hidden, Ink::Ink);
            pen.line((from, depth), (to, 0.0), Weight::Hidden, Ink::Ink);
        }
    }
}

/// Bays out of their limit in the ink of what is too far, each with its figure; and the bay before the pull in hand.
fn bays(pen: &mut Pen, row: &DrawnRow, part: Part, hand: InHand) {
    let (half, depth) = (row.stud.inches() / 2.0, row.depth.inches());
    let mut dimensioned = 0;
    for bay in row.bays.iter().filter(|bay| part.has(bay.from) || part.has(bay.to)) {
        let reading = reading_at(row, bay.to);
        let (from, to) = (part.cut(bay.from), part.cut(bay.to));
        let is_out = bay.verdict == Some(Verdict::Out);
        let (left, right) = ((bay.from.inches() + half).max(part.from), (bay.to.inches() - half).min(part.to));
        if is_out && left < right {
            pen.shape(rectangle(left, 0.0, right, depth), Weight::Seen, Ink::Short, true);
        }
        if let Some(reading) = reading {
            let label = format!("Bay of {} before pull {}", words::length(bay.to - bay.from), reading + 1);
            pick(pen, (from, to), depth, reading, label);
        }
        let in_hand = hand.field == PULLS && reading == Some(hand.reading);
        if (is_out || in_hand) && part.has(bay.from) && part.has(bay.to) {
            let y = -pen.paper(LEVELS[dimensioned % LEVELS.len()]);
            dimensioned += 1;
            let figure = words::length(bay.to - bay.from);
            pen.dimension((from, y), (to, y), &figure, in_hand.then_some(PULLS));
        }
    }
}

fn reading_at(row: &DrawnRow, centre: Length) -> Option<usize> {
    row.pulled.iter().find(|(_, pulled)| *pulled == centre).map(|(reading, _)| *reading)
}

/// A place as high as a thumb is wide.
fn pick(pen: &mut Pen, (from, to): (f64, f64), depth: f64, reading: usize, label: String) {
    const OVER: f64 = 12.0;
    let over = pen.paper(OVER);
    pen.pick((from, -over), (to, depth + over), Act::Reading(PULLS, reading), label);
}

/// Where two sheets meet: double lines outside the plate.
fn edges(pen: &mut Pen, row: &DrawnRow, part: Part) {
    let depth = row.depth.inches();
    let (apart, down, figure) = (pen.paper(1.5), pen.paper(14.0), pen.paper(26.0));
    for edge in row.edges.iter().filter(|edge| part.has(edge.at)) {
        let misses = edge.verdict == Some(Verdict::Out);
        let (at, ink) = (edge.at.inches(), if misses { Ink::Short } else { Ink::Ink });
        for side in [-apart, apart] {
            let x = (at + side).clamp(part.from, part.to);
            let top = if misses { 0.0 } else { depth };
            pen.line((x, top), (x, depth + down), Weight::Seen, ink);
        }
        pen.label((at, depth + figure), &words::length(edge.at));
    }
}

fn studs(pen: &mut Pen, row: &DrawnRow, part: Part, hand: InHand) {
    let (half, depth) = (row.stud.inches() / 2.0, row.depth.inches());
    let figure = pen.paper(46.0);
    let stands = |centre: Length| {
        let (left, right) = (centre.inches() - half, centre.inches() + half);
        (right > part.from && left < part.to).then(|| (left.max(part.from), right.min(part.to)))
    };
    for (left, right) in row.ends.iter().filter_map(|end| stands(*end)) {
        crossed(pen, left, 0.0, right, depth, Ink::Ink);
    }
    for (reading, centre) in &row.pulled {
        let Some((left, right)) = stands(*centre) else { continue };
        let in_hand = hand.field == PULLS && hand.reading == *reading;
        crossed(pen, left, 0.0, right, depth, if in_hand { Ink::Chalk } else { Ink::Ink });
        let at = words::length(*centre);
        if in_hand && part.has(*centre) {
            pen.label((centre.inches(), depth + figure), &at);
        }
        // A thumb does not find an inch and a half: the stud's place reaches into the bays beside it.
        let reach = row.required.inches() / 4.0;
        let ends = ((left - reach).max(part.from), (right + reach).min(part.to));
        pick(pen, ends, depth, *reading, format!("Pull {}, stud at {at}", reading + 1));
    }
}

/// The other studs of a pack beside the one that was pulled: those that were found, and dashed those that lack.
fn packs(pen: &mut Pen, row: &DrawnRow, part: Part) {
    let (thick, depth) = (row.stud.inches(), row.depth.inches());
    for (at, found, asked) in row.packs.iter().filter(|(at, ..)| part.has(*at)) {
        for other in 1..(*asked).min(MOST_DRAWN) {
            let left = at.inches() + thick * (f64::from(other) - 0.5);
            let right = left + thick;
            if right > part.to {
                break;
            }
            match found {
                Some(found) if other < *found => crossed(pen, left, 0.0, right, depth, Ink::Ink),
                Some(_) => pen.shape(rectangle(left, 0.0, right, depth), Weight::Seen, Ink::Short, true),
                None => pen.shape(rectangle(left, 0.0, right, depth), Weight::Hidden, Ink::Ink, false),
            }
        }
    }
}

/// What is wrong with a stud, in words under it.
fn wrong(pen: &mut Pen, row: &DrawnRow, part: Part) {
    let below = row.depth.inches() + pen.paper(46.0);
    for (at, what) in row.wrong.iter().filter(|(at, _)| part.has(*at)) {
        pen.label((at.inches(), below), what);
    }
}

/// Where the next stud stands if it is on its mark: dashed in chalk, and a tap takes it to hand.
fn next(pen: &mut Pen, row: &DrawnRow, part: Part, readings: usize) {
    let Some(next) = row.next.filter(|next| part.has(*next)) else { return };
    let (half, depth) = (row.stud.inches() / 2.0, row.depth.inches());
    let (left, right) = ((next.inches() - half).max(part.from), (next.inches() + half).min(part.to));
    pen.shape(rectangle(left, 0.0, right, depth), Weight::Hidden, Ink::Chalk, false);
    let reach = row.required.inches() / 4.0;
    let ends = ((left - reach).max(part.from), (right + reach).min(part.to));
    let label = format!("Next pull, {} if it stands on its mark", words::length(next));
    pick(pen, ends, depth, readings, label);
}

fn alt(row: &DrawnRow, end: f64) -> String {
    let studs = several(row.pulled.len(), "stud");
    let long = words::length(Length::from_inches(end));
    let mut alt = format!("A row of studs in plan, {studs} pulled, drawn over {long}.");
    let wide: Vec<&DrawnBay> = row.bays.iter().filter(|bay| bay.verdict == Some(Verdict::Out)).collect();
    if !wide.is_empty() {
        let of = |bay: &&DrawnBay| {
            let (from, to) = (words::length(bay.from), words::length(bay.to));
            format!("{} from {from} to {to}", words::length(bay.to - bay.from))
        };
        let asked = words::length(row.required);
        alt.push_str(&format!(" Bays too wide for {asked}: {}.", in_words(wide.iter().map(of).collect())));
    }
    let missed = row.edges.iter().filter(|edge| edge.verdict == Some(Verdict::Out));
    let missed: Vec<String> = missed.map(|edge| words::length(edge.at)).collect();
    if !missed.is_empty() {
        alt.push_str(&format!(" Sheet edges that miss a stud: at {}.", in_words(missed)));
    }
    for (at, found, asked) in &row.packs {
        let found = found.map_or_else(|| "not seen".to_owned(), |found| found.to_string());
        alt.push_str(&format!(" Pack at {}: {found} of {asked} studs.", words::length(*at)));
    }
    for (at, what) in &row.wrong {
        alt.push_str(&format!(" Stud at {}: {what}.", words::length(*at)));
    }
    if let Some(next) = row.next {
        alt.push_str(&format!(" The next stud on its mark is at {}.", words::length(next)));
    }
    alt
}

/// The first of several, and how many more there are.
fn in_words(all: Vec<String>) -> String {
    const SAID: usize = 8;
    match all.len().checked_sub(SAID) {
        Some(more) if more > 0 => format!("{} and {more} more", all[..SAID].join(", ")),
        _ => all.join(", "),
    }
}
