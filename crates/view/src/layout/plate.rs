//! The plate from above as it is marked, in rows that can be read on a phone: a line and a letter at each piece, the pulls
//! below it.

use framing::layout::drawn_plates::DrawnPlates;
use framing::words;
use layout::wall::{Mark as Pull, OnPlates, XSide};
use measure::Length;

use super::figures::Row;
use crate::pen::{Pen, rectangle};
use crate::scene::{Ink, Mark, Scene, Weight};

/// A row is about so long, inches, where five of them are enough.
const ROW: f64 = 144.0;
/// More rows than these are not read on a phone: longer walls have longer rows.
const MOST_ROWS: f64 = 5.0;
/// Pixels of a phone: the width of a row, of a plate in it, and of a row with its pulls.
const WIDTH: f64 = 300.0;
const PLATE: f64 = 14.0;
const HIGH: f64 = 94.0;
/// The middle of a pull below its plate's top.
const PULL_AT: f64 = 54.0;

/// This drawing is in pixels of a phone: along the plate to scale, across it not.
pub(super) fn picture(drawn: &DrawnPlates) -> Scene {
    let length = drawn.wall.length.inches();
    let rows = (length / ROW - 1e-9).ceil().clamp(1.0, MOST_ROWS);
    let each = length / rows;
    // A short plate is drawn as a row of 4 ft at the most, so that its studs stay thin.
    let scale = WIDTH / each.max(48.0);
    let mut pen = Pen::within((0.0, 0.0), (WIDTH, HIGH * rows), (WIDTH, HIGH * rows));
    pen.margin(10.0, 8.0, 0.0);
    for row in 0..rows as u32 {
        let from = each * f64::from(row);
        let strip = Strip { drawn, from, to: from + each, scale, top: HIGH * f64::from(row) };
        strip.draw(&mut pen);
    }
    pen.scene(alt(drawn, rows as u32))
}

/// A row of the plate, in the order of the tape.
struct Strip<'d> {
    drawn: &'d DrawnPlates,
    from: f64,
    to: f64,
    scale: f64,
    top: f64,
}

impl Strip<'_> {
    fn x(&self, at: f64) -> f64 {
        (at.clamp(self.from, self.to) - self.from) * self.scale
    }

    fn holds(&self, at: f64) -> bool {
        // What stands where two rows meet is told in the first.
        (at > self.from || self.from == 0.0 && at >= 0.0) && at <= self.to + 1e-6
    }

    fn draw(&self, pen: &mut Pen) {
        let (top, bottom) = (self.top, self.top + PLATE);
        pen.shape(rectangle(0.0, top, self.x(self.to), bottom), Weight::Cut, Ink::Ink, true);
        self.openings(pen);
        let mut row = Row::new(pen);
        for mark in &self.drawn.laid.marks {
            self.mark(pen, mark);
        }
        for at in self.wanted() {
            row.take(self.x(at.inches()), &words::inches(at));
        }
        for (x, text) in row.taken() {
            pen.marks.push(Mark::Label { at: (x, top + PULL_AT), text, upright: true });
        }
    }

    /// Openings are cut out of the plate, or have only cripples.
    fn openings(&self, pen: &mut Pen) {
        for opening in &self.drawn.wall.openings {
            let (from, to) = (opening.from.inches(), (opening.from + opening.width).inches());
            if to > self.from && from < self.to {
                let middle = self.top + PLATE / 2.0;
                let weight = if opening.sill.is_some() { Weight::Fine } else { Weight::Hidden };
                pen.line((self.x(from), middle), (self.x(to), middle), weight, Ink::Chalk);
            }
        }
    }

    /// The line at the pull, and an X or a slash over the piece.
    fn mark(&self, pen: &mut Pen, mark: &Pull) {
        if !self.holds(mark.pull.inches()) {
            return;
        }
        let half = self.drawn.wall.stud.thickness.inches() / 2.0;
        let pull = mark.pull.inches();
        let (from, to) = match mark.x {
            XSide::Past => (pull, pull + 2.0 * half),
            XSide::Over => (pull - half, pull + half),
            XSide::Short => (pull - 2.0 * half, pull),
        };
        let (left, right) = (self.x(from), self.x(to));
        let (top, bottom) = (self.top, self.top + PLATE);
        let line = self.x(pull);
        pen.line((line, top - 3.0), (line, bottom + 6.0), Weight::Seen, Ink::Ink);
        pen.line((left, top), (right, bottom), Weight::Fine, Ink::Ink);
        if mark.on == OnPlates::Both {
            pen.line((left, bottom), (right, top), Weight::Fine, Ink::Ink);
        }
    }

    /// Pulls that are written: edges of openings first, then the layout, then what else stands.
    fn wanted(&self) -> Vec<Length> {
        let marks = &self.drawn.laid.marks;
        let edges = self.drawn.wall.openings.iter().flat_map(|opening| [opening.from, opening.from + opening.width]);
        let ends = [Length::ZERO, self.drawn.wall.length].into_iter();
        let studs = marks.iter().filter(|mark| mark.layout.is_some()).map(|mark| mark.pull);
        let others = marks.iter().filter(|mark| mark.layout.is_none()).map(|mark| mark.pull);
        ends.chain(edges).chain(studs).chain(others).filter(|at| self.holds(at.inches())).collect()
    }
}

fn alt(drawn: &DrawnPlates, rows: u32) -> String {
    let pulls: Vec<String> =
        drawn.laid.marks.iter().map(|mark| format!("{} {}", words::inches(mark.pull), mark.part.name())).collect();
    let end = if drawn.from_right { "right" } else { "left" };
    let rows = if rows == 1 { "one row".to_owned() } else { format!("{rows} rows") };
    format!("The plate as it is marked, in {rows}, the tape from the {end} end: {}.", pulls.join(", "))
}
