//! What drawings have in common: a pen that knows how large figures are.

use core::f64::consts::TAU;

use measure::math;

use crate::markup::Act;
use crate::model::FieldId;
use crate::scene::{Ink, Mark, Scene, Weight};

/// Pixels that a picture is wide on a phone in the hand, its edges left out: figures keep their size there.
const PHONE: f64 = 300.0;

/// A drawing in the making. Lengths of paper, which figures need, are in pixels of a phone.
pub(crate) struct Pen {
    left: f64,
    right: f64,
    top: f64,
    bottom: f64,
    pixel: f64,
    pub(crate) marks: Vec<Mark>,
}

impl Pen {
    /// A drawing of something so many inches wide from its left end, and so many high.
    pub(crate) fn new((left, top): (f64, f64), (width, height): (f64, f64)) -> Self {
        // Something narrow and high is scaled by its height.
        let pixel = width.max(height * 1.5).max(1e-3) / PHONE;
        Self { left, top, right: left + width, bottom: top + height, pixel, marks: Vec::new() }
    }

    /// A drawing of something so large, in a room of so many pixels that its margins leave free.
    pub(crate) fn within((left, top): (f64, f64), (width, height): (f64, f64), (across, down): (f64, f64)) -> Self {
        let pixel = (width / across).max(height / down).max(1e-3);
        Self { left, top, right: left + width, bottom: top + height, pixel, marks: Vec::new() }
    }

    /// So many pixels of a phone, in inches of the drawing.
    pub(crate) fn paper(&self, pixels: f64) -> f64 {
        pixels * self.pixel
    }

    /// Leaves so many pixels free around what is drawn: left and right, above, below.
    pub(crate) fn margin(&mut self, sides: f64, above: f64, below: f64) {
        let (sides, above, below) = (self.paper(sides), self.paper(above), self.paper(below));
        self.left -= sides;
        self.right += sides;
        self.top -= above;
        self.bottom += below;
    }

    /// The left and the right edge of the paper.
    pub(crate) const fn sides(&self) -> (f64, f64) {
        (self.left, self.right)
    }

    pub(crate) fn line(&mut self, from: (f64, f64), to: (f64, f64), weight: Weight, ink: Ink) {
        self.marks.push(Mark::Line { from, to, weight, ink });
    }

    pub(crate) fn shape(&mut self, points: Vec<(f64, f64)>, weight: Weight, ink: Ink, washed: bool) {
        self.marks.push(Mark::Shape { points, weight, ink, washed, field: None });
    }

    pub(crate) fn dimension(&mut self, from: (f64, f64), to: (f64, f64), figure: &str, field: Option<FieldId>) {
        self.marks.push(Mark::Dimension { from, to, figure: figure.to_owned(), field });
    }

    pub(crate) fn label(&mut self, at: (f64, f64), text: &str) {
        self.marks.push(Mark::Label { at, text: text.to_owned(), upright: false });
    }

    /// A word that begins here.
    pub(crate) fn label_from(&mut self, from: (f64, f64), text: &str) {
        self.marks.push(Mark::Words { from, text: text.to_owned() });
    }

    /// A place that brings a reading to hand.
    pub(crate) fn pick(&mut self, from: (f64, f64), to: (f64, f64), act: Act<'_>, label: String) {
        self.marks.push(Mark::Pick { from, to, act: act.to_string(), label });
    }

    /// The finished drawing, which says the same in words.
    pub(crate) fn scene(self, alt: String) -> Scene {
        let Self { left, right, top, bottom, marks, .. } = self;
        Scene { left, top, width: right - left, height: bottom - top, marks, alt }
    }
}

/// The corners of a rectangle.
pub(crate) fn rectangle(left: f64, top: f64, right: f64, bottom: f64) -> Vec<(f64, f64)> {
    vec![(left, top), (right, top), (right, bottom), (left, bottom)]
}

/// A circle, as a polygon of so many sides that nobody sees them.
pub(crate) fn circle((x, y): (f64, f64), radius: f64) -> Vec<(f64, f64)> {
    const SIDES: u32 = 16;
    let at = |side: u32| f64::from(side) * TAU / f64::from(SIDES);
    (0..SIDES).map(|side| (x + radius * math::cos(at(side)), y + radius * math::sin(at(side)))).collect()
}

/// A nail or a bolt: hollow, or filled so that it is told without colour.
pub(crate) fn dot(pen: &mut Pen, (x, y): (f64, f64), radius: f64, ink: Ink, filled: bool) {
    pen.shape(circle((x, y), radius), Weight::Seen, ink, filled);
    if filled {
        let inner = radius * 0.55;
        pen.line((x - inner, y), (x + inner, y), Weight::Cut, ink);
        pen.line((x, y - inner), (x, y + inner), Weight::Cut, ink);
    }
}

/// An outline through which what lies below is seen.
pub(crate) fn outline(pen: &mut Pen, corners: &[(f64, f64)], weight: Weight, ink: Ink) {
    let next = corners.iter().cycle().skip(1);
    for (from, to) in corners.iter().zip(next) {
        pen.line(*from, *to, weight, ink);
    }
}

/// An end of cut lumber: a rectangle crossed corner to corner.
pub(crate) fn crossed(pen: &mut Pen, left: f64, top: f64, right: f64, bottom: f64, ink: Ink) {
    pen.shape(rectangle(left, top, right, bottom), Weight::Cut, ink, false);
    pen.line((left, top), (right, bottom), Weight::Fine, ink);
    pen.line((left, bottom), (right, top), Weight::Fine, ink);
}

/// Several of a thing in words: `1 stud`, `3 studs`.
pub(crate) fn several(count: usize, thing: &str) -> String {
    if count == 1 { format!("1 {thing}") } else { format!("{count} {thing}s") }
}
