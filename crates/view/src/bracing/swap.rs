//! The nail at hand beside the one that was drawn, both through the same piece, and the pattern of each below.

use framing::quick::drawn_fasteners::{DrawnNail, DrawnRow, DrawnSwap};
use framing::quick::reply::QuickReply;
use framing::walk::words::length as fine;

use super::joint::nail;
use crate::markup::Act;
use crate::pen::{Pen, dot, rectangle};
use crate::scene::{Ink, Scene, Weight};

/// How much of each piece is drawn, and what lies between the two.
const WIDE: f64 = 3.0;
const BETWEEN: f64 = 1.0;
/// Length of line that a pattern is drawn on, as it is on the wall.
const LINE: f64 = 24.0;
/// The most nails of a number that are drawn one by one.
const NAILS: u32 = 24;

pub(super) fn picture(drawn: &DrawnSwap, reply: &QuickReply) -> Scene {
    let side = drawn.side.inches();
    let (required, found) = (&drawn.required.0, &drawn.found.0);
    let deepest = required.length.max(found.length).inches() - side;
    let bottom = deepest.max(0.5) + 0.5;
    let right = 2.0 * WIDE + BETWEEN;
    let mut pen = Pen::new((0.0, -side), (right, bottom + side));
    pen.margin(54.0, 48.0, 96.0);
    let sides = [(required, 0.0, "as drawn", "asked_nail"), (found, WIDE + BETWEEN, "at hand", "found_nail_as")];
    for (one, left, name, field) in sides {
        section(&mut pen, (one, side, bottom), left);
        pen.label((left + WIDE / 2.0, -side - pen.paper(32.0)), name);
        // Two names stand beside each other: the box's own words are short enough.
        pen.label((left + WIDE / 2.0, -side - pen.paper(13.0)), one.name.trim_end_matches(" in"));
        pen.pick((left, -side), (left + WIDE, bottom), Act::Bring(field), format!("The nail {name}"));
    }
    // A thin piece has no room for a figure along it.
    pen.label((-pen.paper(28.0), -side / 2.0), &fine(drawn.side));
    let first = bottom + pen.paper(28.0);
    row(&mut pen, (&drawn.required.1, right), first, Ink::Ink);
    let second = bottom + pen.paper(70.0);
    match &drawn.found.1 {
        Some(pattern) => row(&mut pen, (pattern, right), second, Ink::Chalk),
        None => pen.label((right / 2.0, second), "no pattern stands for it"),
    }
    pen.scene(alt(drawn, reply))
}

fn section(pen: &mut Pen, (one, side, bottom): (&DrawnNail, f64, f64), left: f64) {
    pen.shape(rectangle(left, 0.0, left + WIDE, bottom), Weight::Cut, Ink::Ink, true);
    pen.shape(rectangle(left, -side, left + WIDE, 0.0), Weight::Cut, Ink::Ink, false);
    let middle = left + WIDE / 2.0;
    let point = one.length.inches() - side;
    nail(pen, one, (middle, -side), (middle, point));
    if let Some(deep) = one.penetration {
        let x = left + WIDE * 0.8;
        pen.dimension((x, point.max(0.0)), (x, 0.0), &fine(deep), None);
    }
}

/// A pattern: nails along a line as on the wall, or so many side by side.
fn row(pen: &mut Pen, (row, right): (&DrawnRow, f64), y: f64, ink: Ink) {
    let scale = right / LINE;
    pen.line((0.0, y), (right, y), Weight::Fine, Ink::Ink);
    let radius = pen.paper(3.0);
    let places: Vec<f64> = match (row.spacing, row.count) {
        (Some(apart), _) => {
            let step = (apart.inches() * scale).max(radius);
            let count = (right / step + 1e-9).floor() as u32;
            (0..=count).map(|index| step * f64::from(index)).collect()
        }
        (None, Some(count)) => {
            let shown = count.clamp(1, NAILS);
            let step = right / f64::from(shown + 1);
            (1..=shown).map(|index| step * f64::from(index)).collect()
        }
        (None, None) => Vec::new(),
    };
    for x in &places {
        dot(pen, (*x, y), radius, ink, false);
    }
    pen.label((right / 2.0, y + pen.paper(15.0)), &row.pattern);
}

fn alt(drawn: &DrawnSwap, reply: &QuickReply) -> String {
    let (required, found) = (&drawn.required, &drawn.found);
    let stands = found.1.as_ref().map_or_else(|| "no pattern".to_owned(), |row| row.pattern.clone());
    format!(
        "Two nails through {}, side by side. As drawn: {}, {}. At hand: {}, {stands}. {}: {}. {}",
        drawn.side_is,
        required.0.name,
        required.1.pattern,
        found.0.name,
        reply.size,
        reply.verdict,
        reply.action.first().map_or("", String::as_str)
    )
}
