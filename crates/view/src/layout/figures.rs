//! Figures in a row that never lie on each other: those that are wanted first are taken first.

use crate::pen::Pen;
use crate::scene::Mark;

/// Pixels of a letter, about.
const LETTER: f64 = 8.5;
/// Pixels of paper below a drawing, for pulls that run up, and where their middle is.
pub(super) const PULLS: f64 = 84.0;
pub(super) const PULL_AT: f64 = 48.0;
/// Pixels beside and above a drawing with pulls, and what a phone then leaves it.
pub(super) const EDGE: f64 = 12.0;
pub(super) const ROOM: (f64, f64) = (280.0, 130.0);
/// Pixels that a figure which runs up takes sideways.
const UPRIGHT: f64 = 17.0;

/// Both measures of an opening in it, in a line, in two, or running up; nothing where there is no room.
pub(super) fn size(pen: &mut Pen, (left, top, right, bottom): (f64, f64, f64, f64), [width, height]: [String; 2]) {
    let long = |text: &str| LETTER * text.chars().count() as f64;
    let (across, up) = ((right - left) / pen.paper(1.0), (bottom - top) / pen.paper(1.0));
    let (x, y) = (f64::midpoint(left, right), f64::midpoint(top, bottom));
    let whole = format!("{width} x {height}");
    if long(&whole) <= across && UPRIGHT <= up {
        pen.label((x, y), &whole);
    } else if long(&width).max(long(&height)) <= across && 2.0 * UPRIGHT <= up {
        let half = pen.paper(UPRIGHT / 2.0);
        pen.label((x, y - half), &width);
        pen.label((x, y + half), &height);
    } else if long(&whole) <= up && UPRIGHT <= across {
        pen.marks.push(Mark::Label { at: (x, y), text: whole, upright: true });
    }
}

/// Figures that run up, side by side.
pub(super) struct Row {
    apart: f64,
    taken: Vec<(f64, String)>,
}

impl Row {
    pub(super) fn new(pen: &Pen) -> Self {
        Self { apart: pen.paper(UPRIGHT), taken: Vec::new() }
    }

    /// Takes a figure where it has room.
    pub(super) fn take(&mut self, x: f64, text: &str) {
        if self.taken.iter().all(|(other, _)| (x - other).abs() >= self.apart) {
            self.taken.push((x, text.to_owned()));
        }
    }

    pub(super) fn taken(self) -> Vec<(f64, String)> {
        self.taken
    }
}
