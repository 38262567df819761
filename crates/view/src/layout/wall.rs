//! A wall that is laid out, seen from the side on which the tape's end is left, to scale.

use framing::layout::drawn_plates::DrawnPlates;
use framing::reading::Reading;
use framing::words;
use layout::wall::{Lay, Opening, Part, Piece, Sheet};
use measure::Length;

use super::figures::{EDGE, PULL_AT, PULLS, ROOM, Row, size};
use crate::pen::{Pen, crossed, rectangle};
use crate::scene::{Ink, Mark, Scene, Weight};

/// Whether an input has something to say of this wall.
pub(super) fn speaks(id: &str, reading: &Reading) -> bool {
    let is = |input: &str, words: &[&str]| reading.word(input).is_some_and(|word| words.contains(&word));
    match id {
        "plate_stud" => !is("plate_height_by", &["ceiling"]),
        "plate_ceiling" => is("plate_height_by", &["ceiling"]),
        "plate_header" => reading.word("plate_openings").is_some(),
        "plate_inner_thick" | "plate_backing" => reading.word("plate_inner").is_some(),
        "plate_meets" => {
            is("plate_left", &["three", "flat"])
                || is("plate_right", &["three", "flat"])
                || !is("plate_laps", &["even"])
        }
        "plate_panel_long" | "plate_gap" | "plate_sized" | "plate_below" => !is("plate_panels", &["none"]),
        _ => true,
    }
}

pub(super) fn picture(drawn: &DrawnPlates) -> Scene {
    let wall = &drawn.wall;
    let (length, height) = (wall.length.inches(), wall.heights.frame().inches());
    let left = drawn.laid.pieces.iter().map(|piece| drawn.span(piece).0).fold(0.0, f64::min);
    let right = drawn.laid.pieces.iter().map(|piece| drawn.span(piece).1).fold(length, f64::max);
    let lowest = wall.sheets.as_ref().map_or(0.0, |sheets| -sheets.bottom.inches()).max(0.0);
    let mut pen = Pen::within((left, -height), (right - left, height + lowest), ROOM);
    pen.margin(EDGE, EDGE, PULLS);
    for piece in &drawn.laid.pieces {
        stand(&mut pen, drawn, piece);
    }
    for sheet in &drawn.laid.sheets {
        edges(&mut pen, drawn, sheet);
    }
    for opening in &wall.openings {
        rough_size(&mut pen, drawn, opening);
    }
    pulls(&mut pen, drawn, lowest);
    pen.scene(alt(drawn))
}

/// Where the tape's lengths are drawn: from the left, whichever end it is hooked on.
pub(super) trait Placed {
    fn x(&self, at: Length) -> f64;

    /// From left to right.
    fn between(&self, from: Length, to: Length) -> (f64, f64) {
        let (a, b) = (self.x(from), self.x(to));
        (a.min(b), a.max(b))
    }
}

impl Placed for DrawnPlates {
    fn x(&self, at: Length) -> f64 {
        if self.from_right { (self.wall.length - at).inches() } else { at.inches() }
    }
}

trait Spanned {
    fn span(&self, piece: &Piece) -> (f64, f64);
}

impl Spanned for DrawnPlates {
    fn span(&self, piece: &Piece) -> (f64, f64) {
        self.between(piece.along.from, piece.along.to)
    }
}

fn stand(pen: &mut Pen, drawn: &DrawnPlates, piece: &Piece) {
    let (left, right) = drawn.span(piece);
    let (top, bottom) = (-piece.upright.to.inches(), -piece.upright.from.inches());
    match piece.part {
        Part::PostStud | Part::HoldDownStud => crossed(pen, left, top, right, bottom, Ink::Ink),
        Part::Header => pen.shape(rectangle(left, top, right, bottom), Weight::Cut, Ink::Ink, true),
        Part::King | Part::Jack | Part::EndStud | Part::Sill | Part::HeaderPlate => {
            pen.shape(rectangle(left, top, right, bottom), Weight::Cut, Ink::Ink, false);
        }
        _ => pen.shape(rectangle(left, top, right, bottom), Weight::Seen, Ink::Ink, false),
    }
}

/// Each panel keeps its own edges: where two meet, two lines stand side by side.
fn edges(pen: &mut Pen, drawn: &DrawnPlates, sheet: &Sheet) {
    let apart = pen.paper(0.8);
    let (left, right) = drawn.between(sheet.along.from, sheet.along.to);
    let (top, bottom) = (-sheet.upright.to.inches(), -sheet.upright.from.inches());
    if right - left <= 2.0 * apart || bottom - top <= 2.0 * apart {
        return;
    }
    let corners = rectangle(left + apart, top + apart, right - apart, bottom - apart);
    crate::pen::outline(pen, &corners, Weight::Fine, Ink::Chalk);
}

/// The rough size of an opening, in it, where there is room.
fn rough_size(pen: &mut Pen, drawn: &DrawnPlates, opening: &Opening) {
    let (left, right) = drawn.between(opening.from, opening.from + opening.width);
    let sill = opening.sill.unwrap_or(Length::ZERO);
    let measures = [opening.width, opening.head - sill].map(words::length);
    size(pen, (left, -opening.head.inches(), right, -sill.inches()), measures);
}

/// Ends and edges of openings first, then as many studs as find room.
fn pulls(pen: &mut Pen, drawn: &DrawnPlates, lowest: f64) {
    let wall = &drawn.wall;
    let edges = wall.openings.iter().flat_map(|opening| [opening.from, opening.from + opening.width]);
    let studs = drawn.laid.marks.iter().filter(|mark| mark.layout.is_some()).map(|mark| mark.pull);
    let wanted = [Length::ZERO, wall.length].into_iter().chain(edges).chain(studs);
    let mut row = Row::new(pen);
    for at in wanted {
        row.take(drawn.x(at), &words::inches(at));
    }
    let (from, to) = (lowest + pen.paper(3.0), lowest + pen.paper(10.0));
    for (x, text) in row.taken() {
        pen.line((x, from), (x, to), Weight::Fine, Ink::Ink);
        let at = (x, lowest + pen.paper(PULL_AT));
        pen.marks.push(Mark::Label { at, text, upright: true });
    }
}

fn alt(drawn: &DrawnPlates) -> String {
    let wall = &drawn.wall;
    let opening = |opening: &Opening| {
        let what = if opening.sill.is_some() { "window" } else { "door" };
        let (from, to) = (words::inches(opening.from), words::inches(opening.from + opening.width));
        format!(" A {what} from {from} to {to}.")
    };
    let openings: String = wall.openings.iter().map(opening).collect();
    let panels = match wall.sheets.as_ref().map(|sheets| sheets.lay) {
        None => String::new(),
        Some(Lay::Upright) => format!(" {} panels and pieces of them stand upright.", drawn.laid.sheets.len()),
        Some(Lay::Lying) => format!(" {} panels and pieces of them lie.", drawn.laid.sheets.len()),
    };
    format!(
        "The wall from the front, {} long and {} high, the tape hooked on its {} end.{openings}{panels}",
        words::length(wall.length),
        words::length(wall.heights.frame()),
        if drawn.from_right { "right" } else { "left" }
    )
}
