//! The whole of a long wall as a thin strip, with the part that is drawn above it.

use framing::walk::stud_spacing::DrawnRow;
use framing::walk::{Verdict, words};
use measure::Length;

use super::pen::{Pen, outline, rectangle};
use super::row::{PULLS, Part};
use crate::markup::Act;
use crate::scene::{Ink, Weight};

/// Height of the strip, and the room that it needs below the rest, pixels.
const HEIGHT: f64 = 12.0;
const DOWN: f64 = 88.0;
const ROOM: f64 = 60.0;

/// Draws it under the row. Along it the wall is drawn smaller, to fit; it has a figure of its own.
pub(super) fn draw(pen: &mut Pen, row: &DrawnRow, part: Part, end: f64) {
    let (top, bottom) = (row.depth.inches() + pen.paper(DOWN), row.depth.inches() + pen.paper(DOWN + HEIGHT));
    let scale = (part.to - part.from) / end.max(1.0);
    let x = |at: f64| part.from + at.clamp(0.0, end) * scale;
    pen.margin(0.0, 0.0, ROOM);
    pen.shape(rectangle(x(0.0), top, x(end), bottom), Weight::Seen, Ink::Ink, false);
    for bay in row.bays.iter().filter(|bay| bay.verdict == Some(Verdict::Out)) {
        let (from, to) = (x(bay.from.inches()), x(bay.to.inches()));
        pen.shape(rectangle(from, top, to, bottom), Weight::Fine, Ink::Short, true);
    }
    for (_, centre) in &row.pulled {
        pen.line((x(centre.inches()), top), (x(centre.inches()), bottom), Weight::Fine, Ink::Ink);
    }
    outline(pen, &rectangle(x(part.from), top, x(part.to), bottom), Weight::Cut, Ink::Chalk);
    let over = top - pen.paper(7.0);
    pen.dimension((x(0.0), over), (x(end), over), &words::length(Length::from_inches(end)), None);
    picks(pen, row, (top, bottom), (part, end));
}

/// A tap along the strip brings the first pull of that piece of the wall to hand.
fn picks(pen: &mut Pen, row: &DrawnRow, (top, bottom): (f64, f64), (part, end): (Part, f64)) {
    const PIECES: u32 = 6;
    let (whole, over) = (part.to - part.from, pen.paper(14.0));
    for piece in 0..PIECES {
        let share = |piece: u32| f64::from(piece) / f64::from(PIECES);
        let (from, to) = (end * share(piece), end * share(piece + 1));
        let first = row.pulled.iter().find(|(_, centre)| (from..=to).contains(&centre.inches()));
        let Some((reading, centre)) = first else { continue };
        let ends = (part.from + whole * share(piece), part.from + whole * share(piece + 1));
        let label = format!("The wall from {} on", words::length(*centre));
        pen.pick((ends.0, top - over), (ends.1, bottom + over), Act::Reading(PULLS, *reading), label);
    }
}
