//! Where things stand on the paper of a layout: what is seen of them, and words kept on it.

use crate::pen::Pen;

/// Pixels of paper that a letter takes, about: the letters of the page on a picture that is drawn a little smaller.
pub(super) const LETTER: f64 = 12.0;

/// A rectangle around points.
pub(super) struct Bounds {
    low: (f64, f64),
    high: (f64, f64),
}

impl Bounds {
    pub(super) const fn of(point: (f64, f64)) -> Self {
        Self { low: point, high: point }
    }

    pub(super) fn take(&mut self, point: (f64, f64)) {
        self.low = (self.low.0.min(point.0), self.low.1.min(point.1));
        self.high = (self.high.0.max(point.0), self.high.1.max(point.1));
    }

    /// A pen for what is within.
    pub(super) fn pen(&self) -> Pen {
        Pen::new(self.low, (self.high.0 - self.low.0, self.high.1 - self.low.1))
    }
}

/// A word around a point, moved sideways as far as it must be to stay on the paper.
pub(super) fn label_within(pen: &mut Pen, (x, y): (f64, f64), text: &str) {
    let half = pen.paper(LETTER) * text.chars().count() as f64 / 2.0;
    let (left, right) = pen.sides();
    let x = if right - left > 2.0 * half { x.clamp(left + half, right - half) } else { (left + right) / 2.0 };
    pen.label((x, y), text);
}
