//! One row of a strapped ceiling from the side, heights exaggerated: joists, shims, and the strip in one straight line.

use framing::layout::drawn_strapping::DrawnSide;
use framing::words;
use measure::Length;

use crate::pen::{Pen, rectangle};
use crate::scene::{Ink, Scene, Weight};

/// Pixels that the heights in it may take together.
const HIGH: f64 = 70.0;
/// Pixels of a joist that are shown.
const JOIST: f64 = 34.0;
/// Pixels that a figure needs.
const FIGURE: f64 = 58.0;
/// Heights are never drawn larger than so many times.
const MOST_TIMES: f64 = 60.0;

pub(super) fn picture(drawn: &DrawnSide, across: Length, thick: Length) -> Scene {
    let wide = across.inches();
    let pixel = Pen::new((0.0, 0.0), (wide, 0.0)).paper(1.0);
    let gaps = drawn.joists.iter().filter_map(|(_, gap)| *gap).fold(Length::ZERO, Length::max);
    let tilt = drawn.backs[0].max(drawn.backs[1]);
    let real = (gaps + tilt + drawn.strip).inches();
    let times = (HIGH * pixel / real.max(1e-6)).clamp(1.0, MOST_TIMES).floor();
    let side = Side { drawn, wide, times };
    // y grows downward: the plane is at nothing where it is lowest.
    let top = -(gaps + tilt).inches() * times - JOIST * pixel;
    let bottom = drawn.strip.inches() * times;
    let mut pen = Pen::new((0.0, top), (wide, bottom - top));
    pen.margin(24.0, 26.0, 34.0);
    let half = (thick.inches() / 2.0).max(pen.paper(1.5));
    for (centre, gap) in &drawn.joists {
        side.joist(&mut pen, (centre.inches(), half), *gap, top);
    }
    side.strip(&mut pen);
    side.figures(&mut pen, bottom);
    let title = format!("row {}, heights × {times:.0}", drawn.row);
    pen.label((wide / 2.0, top - pen.paper(13.0)), &title);
    pen.scene(side.alt())
}

struct Side<'d> {
    drawn: &'d DrawnSide,
    wide: f64,
    times: f64,
}

impl Side<'_> {
    /// Where the strip's back is drawn.
    fn back(&self, x: f64) -> f64 {
        let [left, right] = self.drawn.backs.map(Length::inches);
        let share = if self.wide > 0.0 { x / self.wide } else { 0.0 };
        -(left + (right - left) * share) * self.times
    }

    fn joist(&self, pen: &mut Pen, (centre, half): (f64, f64), gap: Option<Length>, top: f64) {
        let (left, right) = ((centre - half).max(0.0), (centre + half).min(self.wide));
        let back = self.back(centre);
        let Some(gap) = gap else {
            pen.line((left, top), (left, back), Weight::Hidden, Ink::Ink);
            pen.line((right, top), (right, back), Weight::Hidden, Ink::Ink);
            return;
        };
        let under = back - gap.inches() * self.times;
        pen.shape(rectangle(left, top, right, under), Weight::Seen, Ink::Ink, false);
        if gap > Length::ZERO {
            let corners = vec![(left, under), (right, under), (right, self.back(right)), (left, self.back(left))];
            pen.shape(corners, Weight::Cut, Ink::Chalk, true);
        }
    }

    fn strip(&self, pen: &mut Pen) {
        let thick = self.drawn.strip.inches() * self.times;
        let (left, right) = (self.back(0.0), self.back(self.wide));
        let corners = vec![(0.0, left), (self.wide, right), (self.wide, right + thick), (0.0, left + thick)];
        pen.shape(corners, Weight::Cut, Ink::Ink, true);
    }

    /// What stands under each joist, as far as there is room; the thickest always.
    fn figures(&self, pen: &mut Pen, bottom: f64) {
        let mut known: Vec<(f64, Length)> =
            self.drawn.joists.iter().filter_map(|(at, gap)| Some((at.inches(), (*gap)?))).collect();
        known.sort_by(|one, other| other.1.inches().total_cmp(&one.1.inches()));
        let mut written: Vec<f64> = Vec::new();
        for (x, gap) in known {
            if written.iter().all(|other| (x - other).abs() >= pen.paper(FIGURE)) {
                pen.label((x, bottom + pen.paper(16.0)), &words::inches(gap));
                written.push(x);
            }
        }
    }

    fn alt(&self) -> String {
        let gap = |(index, (_, gap)): (usize, &(Length, Option<Length>))| {
            let gap = gap.map_or_else(|| "not known".to_owned(), words::inches);
            format!("joist {} {gap}", index + 1)
        };
        let gaps: Vec<String> = self.drawn.joists.iter().enumerate().map(gap).collect();
        format!(
            "Row {} from the side, its heights drawn {:.0} times too large: the strip is one straight line, and between it and the joists is left: {}.",
            self.drawn.row,
            self.times,
            gaps.join(", ")
        )
    }
}
