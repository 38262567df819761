//! Figures in a row that never lie on each other: those that are wanted first are taken first.

use crate::pen::Pen;

/// Pixels of a letter, about.
const LETTER: f64 = 8.0;
/// Pixels that a figure which runs up takes sideways.
pub(super) const UPRIGHT: f64 = 17.0;

/// Whether a word has room in so many inches of the drawing.
pub(super) fn fits(pen: &Pen, text: &str, room: f64) -> bool {
    pen.paper(LETTER * (text.chars().count() as f64 + 1.0)) <= room
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
