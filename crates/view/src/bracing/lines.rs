//! A house in plan with its wall lines heavy, the wind on its face and what each line is given; the front is below.

use framing::quick::reply::{DrawnLines, QuickReply};
use framing::words;

use crate::markup::Act;
use crate::pen::{Pen, rectangle};
use crate::scene::{Ink, Mark, Scene, Weight};

/// Breadth of a wall line as it is drawn, in pixels of a phone: nobody sees six inches of a house.
const THICK: f64 = 5.0;
/// How far apart two figures beside each other are, so that both are read.
const APART: f64 = 74.0;
/// Height of a line of figures.
const LINE: f64 = 18.0;
/// Into so many rows figures that are close go.
const ROWS: usize = 3;
/// Between lines closer than this there is no room for a dimension's figure.
const ROOM: f64 = 44.0;
/// How many arrows the wind has.
const ARROWS: usize = 7;

pub(super) fn picture(drawn: &DrawnLines, reply: &QuickReply) -> Scene {
    let (length, width) = (drawn.length.inches(), drawn.width.inches());
    let mut pen = Pen::new((0.0, 0.0), (length, width));
    pen.margin(84.0, 72.0, 126.0);
    let draft = Draft { drawn, length, width };
    pen.shape(rectangle(0.0, 0.0, length, width), Weight::Fine, Ink::Ink, false);
    draft.others(&mut pen);
    draft.lines(&mut pen);
    draft.open_sides(&mut pen);
    draft.wind(&mut pen);
    draft.sizes(&mut pen);
    pen.scene(alt(drawn, reply))
}

fn alt(drawn: &DrawnLines, reply: &QuickReply) -> String {
    let (wind, side) = if drawn.across { ("across", "the left end") } else { ("along", "the front") };
    let line = |line: &framing::quick::reply::DrawnLine| {
        let given = if line.force.is_empty() { String::new() } else { format!(" is given {}", line.force) };
        format!("the one {} from {side}{given}", words::length(line.at))
    };
    let lines: Vec<String> = drawn.lines.iter().map(line).collect();
    format!(
        "Plan of a house {} by {}, the wind {wind} it, {} in all. Wall lines along that wind: {}. {}",
        words::length(drawn.length),
        words::length(drawn.width),
        drawn.push,
        lines.join("; "),
        reply.action.first().map_or("", String::as_str)
    )
}

struct Draft<'a> {
    drawn: &'a DrawnLines,
    length: f64,
    width: f64,
}

impl Draft<'_> {
    /// Where a line is on the paper: along the house from its left end, or from the front, which is below.
    fn on_paper(&self, along_the_wind: bool, inches: f64) -> f64 {
        if along_the_wind == self.drawn.across { inches } else { self.width - inches }
    }

    /// A line at a place, from side to side of the house, and what is brought to hand by it.
    fn line(&self, pen: &mut Pen, along_the_wind: bool, place: f64, (weight, ink, washed): (Weight, Ink, bool)) {
        let half = pen.paper(THICK / 2.0);
        let upright = along_the_wind == self.drawn.across;
        let corners = if upright {
            [place - half, 0.0, place + half, self.width]
        } else {
            [0.0, place - half, self.length, place + half]
        };
        let [left, top, right, bottom] = corners;
        pen.shape(rectangle(left, top, right, bottom), weight, ink, washed);
        let (id, name) =
            if upright { ("lines_across", "Lines across the house") } else { ("lines_along", "Lines along the house") };
        let reach = pen.paper(14.0);
        let (from, to) = if upright {
            ((left - reach, top), (right + reach, bottom))
        } else {
            ((left, top - reach), (right, bottom + reach))
        };
        pen.pick(from, to, Act::Bring(id), name.to_owned());
    }

    /// The lines that the wind blows square to: they are there, and take none of it.
    fn others(&self, pen: &mut Pen) {
        for at in &self.drawn.others {
            let place = self.on_paper(false, at.inches());
            self.line(pen, false, place, (Weight::Fine, Ink::Ink, false));
        }
    }

    fn lines(&self, pen: &mut Pen) {
        let mut sorted: Vec<_> = self.drawn.lines.iter().collect();
        sorted.sort_by(|a, b| self.on_paper(true, a.at.inches()).total_cmp(&self.on_paper(true, b.at.inches())));
        let mut rows = [f64::NEG_INFINITY; ROWS];
        for line in sorted {
            let place = self.on_paper(true, line.at.inches());
            let ink = if line.hardest { Ink::Chalk } else { Ink::Ink };
            self.line(pen, true, place, (Weight::Cut, ink, true));
            if !line.force.is_empty() {
                let apart = pen.paper(if self.drawn.across { APART } else { LINE });
                let row = rows.iter().position(|last| place - last >= apart).unwrap_or(ROWS - 1);
                rows[row] = place;
                self.given(pen, place, (&line.force, row), ink);
            }
        }
    }

    /// What a line gives back: an arrow against the wind at its far end, with its figure in a row of its own where the
    /// one beside it is close.
    fn given(&self, pen: &mut Pen, place: f64, (force, row): (&str, usize), ink: Ink) {
        let end = if self.drawn.across { self.width } else { self.length };
        let (near, far) = (end + pen.paper(4.0), end + pen.paper(26.0));
        let row = row as f64;
        let (from, to, at) = if self.drawn.across {
            ((place, far), (place, near), (place, far + pen.paper(12.0 + LINE * row)))
        } else {
            ((far, place), (near, place), (far + pen.paper(20.0), place + pen.paper(LINE / 2.0 * (row - 1.0))))
        };
        pen.marks.push(Mark::Arrow { from, to, figure: String::new(), ink });
        pen.label(at, force);
    }

    /// A side where no line stands is dashed and said.
    fn open_sides(&self, pen: &mut Pen) {
        let end = if self.drawn.across { self.length } else { self.width };
        for (open, at) in [(self.drawn.open.0, 0.0), (self.drawn.open.1, end)] {
            if !open {
                continue;
            }
            let place = self.on_paper(true, at);
            if self.drawn.across {
                pen.line((place, 0.0), (place, self.width), Weight::Hidden, Ink::Short);
                let inward = if place > 0.0 { -pen.paper(24.0) } else { pen.paper(24.0) };
                pen.label((place + inward, self.width / 2.0), "open");
            } else {
                pen.line((0.0, place), (self.length, place), Weight::Hidden, Ink::Short);
                let inward = if place > 0.0 { -pen.paper(14.0) } else { pen.paper(14.0) };
                pen.label((self.length / 2.0, place + inward), "open");
            }
        }
    }

    /// Arrows on the face, and the whole of the push.
    fn wind(&self, pen: &mut Pen) {
        let breadth = if self.drawn.across { self.length } else { self.width };
        let (tail, head) = (-pen.paper(30.0), -pen.paper(6.0));
        for index in 0..ARROWS {
            let at = breadth * (index as f64 + 0.5) / ARROWS as f64;
            let (from, to) = if self.drawn.across { ((at, tail), (at, head)) } else { ((tail, at), (head, at)) };
            pen.marks.push(Mark::Arrow { from, to, figure: String::new(), ink: Ink::Chalk });
        }
        let (middle, words) = (self.length / 2.0, format!("wind, {}", self.drawn.push));
        pen.label((middle, tail - pen.paper(if self.drawn.across { 12.0 } else { -8.0 })), &words);
        let id = if self.drawn.across { "pushes_across" } else { "pushes_along" };
        let reach = pen.paper(44.0);
        let to = if self.drawn.across { (self.length, 0.0) } else { (0.0, self.width) };
        let from = if self.drawn.across { (0.0, -reach) } else { (-reach, 0.0) };
        pen.pick(from, to, Act::Bring(id), "The push of the wind".to_owned());
    }

    /// From line to line, and the other side of the house whole.
    fn sizes(&self, pen: &mut Pen) {
        let mut places: Vec<f64> = self.drawn.lines.iter().map(|line| line.at.inches()).collect();
        let breadth = if self.drawn.across { self.length } else { self.width };
        places.extend([0.0, breadth]);
        places.sort_by(f64::total_cmp);
        places.dedup_by(|next, last| *next - *last < 1.0);
        let below = self.width + pen.paper(if self.drawn.across { 112.0 } else { 40.0 });
        let side = -pen.paper(if self.drawn.across { 22.0 } else { 58.0 });
        let roomy = pen.paper(ROOM);
        for pair in places.windows(2).filter(|pair| pair[1] - pair[0] >= roomy) {
            let words = words::length(measure::Length::from_inches(pair[1] - pair[0]));
            if self.drawn.across {
                pen.dimension((pair[0], below), (pair[1], below), &words, Some("lines_across"));
            } else {
                let (from, to) = (self.width - pair[0], self.width - pair[1]);
                pen.dimension((side, from), (side, to), &words, Some("lines_along"));
            }
        }
        if self.drawn.across {
            pen.dimension((side, self.width), (side, 0.0), &words::length(self.drawn.width), Some("house_width"));
        } else {
            let words = words::length(self.drawn.length);
            pen.dimension((0.0, below), (self.length, below), &words, Some("building_length"));
        }
    }
}
