//! A stick on the horses, its upper end at the right, the middle of it left out: as it is marked and cut.

use framing::layout::drawn::DrawnStick;
use framing::quick::reply::QuickReply;
use layout::roof::{Edge, Face, Spot, Stick};
use measure::Length;

use crate::pen::Pen;
use crate::scene::{Ink, Scene, Weight};

/// Of the wood left out a gap stands for it, in depths of the stick.
const GAP: f64 = 0.6;
/// Wood shown past the last mark on either side of the gap, in depths.
const PAST: f64 = 0.9;
/// Ends of both faces nearer to each other than this are one, inches.
const SAME: f64 = 1.0 / 64.0;
/// Pixels of paper that a letter takes, about.
const LETTER: f64 = 10.2;
/// Pixels between one row of dimensions and the next.
const ROW: f64 = 24.0;

/// Where a place along the stick is drawn: what lies between the marks of both ends is left out.
struct Broken {
    length: f64,
    low: f64,
    high: f64,
    gap: f64,
}

impl Broken {
    fn of(stick: &Stick) -> Self {
        let (length, depth) = (stick.length.inches(), stick.depth.inches());
        let from_tail: Vec<f64> = stick.marks.iter().map(|mark| length - mark.at.inches()).collect();
        let middle = length / 2.0;
        let low = from_tail.iter().copied().filter(|at| *at < middle).fold(0.0, f64::max) + PAST * depth;
        let high = from_tail.iter().copied().filter(|at| *at >= middle).fold(length, f64::min) - PAST * depth;
        if high - low > 2.0 * GAP * depth {
            Self { length, low, high, gap: GAP * depth }
        } else {
            Self { length, low: middle, high: middle, gap: 0.0 }
        }
    }

    fn is_broken(&self) -> bool {
        self.gap > 0.0
    }

    fn width(&self) -> f64 {
        self.low + self.gap + self.length - self.high
    }

    /// From the farthest point of the upper end to the drawing's left.
    fn x(&self, at: Length) -> f64 {
        let from_tail = self.length - at.inches();
        if from_tail <= self.low {
            from_tail
        } else if from_tail >= self.high {
            from_tail - self.high + self.low + self.gap
        } else {
            self.low + self.gap / 2.0
        }
    }
}

/// Draws it with its dimensions and the turn of each cut.
pub(super) fn picture(drawn: &DrawnStick, reply: &QuickReply) -> Scene {
    let stick = &drawn.stick;
    let (broken, depth) = (Broken::of(stick), stick.depth.inches());
    let mut pen = Pen::new((0.0, 0.0), (broken.width(), depth));
    let rows = drawn.low_end.len().max(drawn.high_end.len());
    pen.margin(14.0, 18.0 + ROW * drawn.along_top.len() as f64, 14.0 + 17.0 * rows as f64);
    outline(&mut pen, stick, &broken);
    for (row, (from, to, words)) in drawn.along_top.iter().enumerate() {
        let y = -pen.paper(12.0 + ROW * row as f64);
        pen.dimension((broken.x(*to), y), (broken.x(*from), y), words, None);
    }
    marked(&mut pen, drawn, &broken);
    pen.scene(alt(drawn, reply))
}

fn at(stick: &Stick, spot: Spot, edge: Edge) -> Option<Length> {
    stick.at(spot, edge, Face::Right)
}

/// The plate's corner, or the beam's: where the plumb line of a notch meets its level line.
fn corner(stick: &Stick, broken: &Broken, heel: Spot, seat: Spot) -> Option<[(f64, f64); 3]> {
    let depth = stick.depth.inches();
    let (top, foot) = (broken.x(at(stick, heel, Edge::Top)?), broken.x(at(stick, heel, Edge::Bottom)?));
    let end = broken.x(at(stick, seat, Edge::Bottom)?);
    let (across, down) = (foot - top, depth);
    let along = ((end - top) * across + depth * down) / (across * across + down * down);
    Some([(foot, depth), (top + across * along, down * along), (end, depth)])
}

fn outline(pen: &mut Pen, stick: &Stick, broken: &Broken) {
    let depth = stick.depth.inches();
    let end = |spot, edge| at(stick, spot, edge).map_or(0.0, |at| broken.x(at));
    let (tail_top, tail_foot) = (end(Spot::Tail, Edge::Top), end(Spot::Tail, Edge::Bottom));
    let (head_top, head_foot) = (end(Spot::Head, Edge::Top), end(Spot::Head, Edge::Bottom));
    let mut low = vec![(tail_top, 0.0), (tail_foot, depth)];
    let heel = corner(stick, broken, Spot::Heel, Spot::Seat);
    low.extend(heel.iter().flatten().filter(|point| point.0 >= tail_foot.min(tail_top)));
    let mut high = Vec::new();
    high.extend(corner(stick, broken, Spot::UpperHeel, Spot::UpperSeat).iter().flatten());
    high.extend([(head_foot, depth), (head_top, 0.0)]);
    if broken.is_broken() {
        let (left, right) = (broken.low, broken.low + broken.gap);
        low.extend([(left, depth), (left, 0.0)]);
        let mut other = vec![(right, 0.0), (right, depth)];
        other.extend(high);
        pen.shape(low, Weight::Cut, Ink::Ink, true);
        pen.shape(other, Weight::Cut, Ink::Ink, true);
        left_out(pen, (left + right) / 2.0, broken.gap / 4.0, depth);
    } else {
        low.extend(high);
        pen.shape(low, Weight::Cut, Ink::Ink, true);
    }
    far_face(pen, stick, broken);
    // The plumb line that the heel is marked by, over the whole face.
    if let (Some(top), Some(foot)) = (at(stick, Spot::Heel, Edge::Top), at(stick, Spot::Heel, Edge::Bottom)) {
        pen.line((broken.x(top), 0.0), (broken.x(foot), depth), Weight::Hidden, Ink::Chalk);
    }
}

/// The line for wood that is left out.
fn left_out(pen: &mut Pen, x: f64, wave: f64, depth: f64) {
    let points = [(0.0, -0.06), (0.0, 0.4), (wave, 0.44), (-wave, 0.56), (0.0, 0.6), (0.0, 1.06)];
    for pair in points.windows(2) {
        if let [from, to] = pair {
            pen.line((x + from.0, from.1 * depth), (x + to.0, to.1 * depth), Weight::Fine, Ink::Ink);
        }
    }
}

/// The ends of the face that is turned away, where a cheek makes them others than those of the near one.
fn far_face(pen: &mut Pen, stick: &Stick, broken: &Broken) {
    for spot in [Spot::Head, Spot::Tail] {
        let of = |edge| stick.at(spot, edge, Face::Left).map(|at| broken.x(at));
        let near = at(stick, spot, Edge::Top).map(|at| broken.x(at));
        let (Some(top), Some(foot), Some(near)) = (of(Edge::Top), of(Edge::Bottom), near) else { continue };
        if (top - near).abs() > SAME {
            pen.line((top, 0.0), (foot, stick.depth.inches()), Weight::Hidden, Ink::Ink);
        }
    }
}

/// Words under the stick: its lower end from the left, its upper end from the right.
fn marked(pen: &mut Pen, drawn: &DrawnStick, broken: &Broken) {
    let depth = drawn.stick.depth.inches();
    let below = |pen: &Pen, row: usize| depth + pen.paper(16.0 + 17.0 * row as f64);
    for (row, words) in drawn.low_end.iter().enumerate() {
        let y = below(pen, row);
        pen.label_from((0.0, y), words);
    }
    for (row, words) in drawn.high_end.iter().enumerate() {
        let (y, wide) = (below(pen, row), pen.paper(LETTER * words.chars().count() as f64));
        pen.label_from((broken.width() - wide, y), words);
    }
}

fn alt(drawn: &DrawnStick, reply: &QuickReply) -> String {
    let along: Vec<&str> = drawn.along_top.iter().map(|(_, _, words)| words.as_str()).collect();
    format!(
        "The stick on the horses, its upper end at the right, the middle left out. Along its top edge: {}. Lower end: {}. Upper end: {}. {} {}.",
        along.join(", "),
        drawn.low_end.join(", "),
        drawn.high_end.join(", "),
        reply.size,
        reply.verdict
    )
}
