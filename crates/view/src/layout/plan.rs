//! A corner of a roof in plan, to scale: walls, the hip or valley, the commons at its upper end, and the jacks.

use framing::layout::drawn::DrawnCornerPlan;
use framing::words;
use measure::{Angle, Length};

use super::place::{Bounds, LETTER, label_within};
use crate::pen::Pen;
use crate::scene::{Ink, Scene, Weight};

type Point = (f64, f64);

/// Of the run, what is seen past the last common.
const PAST: f64 = 0.3;

/// Eave A runs to the right from the corner, eave B at the corner's angle from it; y grows downward. At a hip the walls
/// stand under these eaves. At a valley they run the other way from the corner: the wedge between them is outdoors, and
/// the ridges run from the upper end of the valley over the walls.
struct Corner<'d> {
    drawn: &'d DrawnCornerPlan,
    peak: Point,
}

fn plus(from: Point, to: Point) -> Point {
    (from.0 + to.0, from.1 + to.1)
}

fn minus(from: Point, to: Point) -> Point {
    (from.0 - to.0, from.1 - to.1)
}

fn times(point: Point, by: f64) -> Point {
    (point.0 * by, point.1 * by)
}

impl<'d> Corner<'d> {
    fn of(drawn: &'d DrawnCornerPlan) -> Self {
        let run = drawn.run.inches();
        Self { drawn, peak: (run / drawn.plan_angles.0.tan(), -run) }
    }

    /// A place along an eave, from the corner.
    fn eave(&self, of_b: bool, along: f64) -> Point {
        let angle = if of_b { self.drawn.angle } else { Angle::from_degrees(0.0) };
        (along * angle.cos(), -along * angle.sin())
    }

    /// How far along an eave the king common stands, square under the upper end.
    fn king(&self, of_b: bool) -> f64 {
        let one = self.eave(of_b, 1.0);
        self.peak.0 * one.0 + self.peak.1 * one.1
    }

    /// From an eave to its ridge, square to both.
    fn to_ridge(&self, of_b: bool) -> Point {
        minus(self.peak, self.eave(of_b, self.king(of_b)))
    }

    /// Both ends of a jack that stands so far along its eave.
    fn jack(&self, along: f64) -> (Point, Point) {
        let of_b = self.drawn.of_b;
        let (foot, king) = (self.eave(of_b, along), self.king(of_b));
        let on_line = times(self.peak, if king > 0.0 { along / king } else { 0.0 });
        // A valley jack comes down from the ridge to the line.
        let from = if self.drawn.is_valley { plus(foot, self.to_ridge(of_b)) } else { foot };
        (from, on_line)
    }

    /// The end of a wall that is seen.
    fn wall_end(&self, of_b: bool) -> Point {
        let past = PAST * self.drawn.run.inches();
        self.eave(of_b, if self.drawn.is_valley { -2.0 * past } else { self.king(of_b) + past })
    }

    /// Where the common beside the line stands, and where it comes to.
    fn common(&self, of_b: bool) -> (Point, Point) {
        if self.drawn.is_valley {
            ((0.0, 0.0), self.to_ridge(of_b))
        } else {
            (self.eave(of_b, self.king(of_b)), self.peak)
        }
    }

    /// The ends of the ridges that are seen: one along eave A at a hip, both at a valley.
    fn ridge_ends(&self) -> Vec<Point> {
        let past = PAST * self.drawn.run.inches();
        if self.drawn.is_valley {
            [false, true].map(|of_b| plus(self.wall_end(of_b), self.to_ridge(of_b))).to_vec()
        } else {
            vec![(self.peak.0 + past, self.peak.1)]
        }
    }

    /// The middle of the piece of roof between the line and the common beside it.
    fn middle(&self, of_b: bool) -> Point {
        let (foot, head) = self.common(of_b);
        let third = if self.drawn.is_valley { head } else { foot };
        times(plus(self.peak, third), 1.0 / 3.0)
    }
}

pub(super) fn picture(drawn: &DrawnCornerPlan) -> Scene {
    let corner = Corner::of(drawn);
    let sides = [false, true];
    let mut seen = Bounds::of((0.0, 0.0));
    seen.take(corner.peak);
    let commons = sides.map(|of_b| corner.common(of_b));
    let of_commons = commons.iter().flat_map(|(foot, head)| [*foot, *head]);
    for point in sides.map(|of_b| corner.wall_end(of_b)).into_iter().chain(corner.ridge_ends()).chain(of_commons) {
        seen.take(point);
    }
    let mut pen = seen.pen();
    pen.margin(46.0, 40.0, 54.0);
    for of_b in sides {
        pen.line((0.0, 0.0), corner.wall_end(of_b), Weight::Cut, Ink::Ink);
    }
    for end in corner.ridge_ends() {
        pen.line(corner.peak, end, Weight::Seen, Ink::Ink);
    }
    for (foot, head) in commons {
        pen.line(foot, head, Weight::Seen, Ink::Ink);
    }
    for jack in &drawn.jacks {
        let (from, to) = corner.jack(jack.inches());
        pen.line(from, to, Weight::Fine, Ink::Ink);
    }
    let line = if drawn.is_valley { Weight::Hidden } else { Weight::Cut };
    pen.line((0.0, 0.0), corner.peak, line, Ink::Chalk);
    labels(&mut pen, &corner);
    dimensions(&mut pen, &corner);
    pen.scene(alt(drawn))
}

/// The plan angle in each roof, and the roof's letter outside its wall.
fn labels(pen: &mut Pen, corner: &Corner<'_>) {
    let angles = corner.drawn.plan_angles;
    let [a, b] = apart(pen, [false, true].map(|of_b| corner.middle(of_b)));
    for (of_b, at, angle, name) in [(false, a, angles.0, "A"), (true, b, angles.1, "B")] {
        label_within(pen, at, &format!("{:.1}°", angle.degrees()));
        let (inward, end) = (corner.to_ridge(of_b), times(corner.wall_end(of_b), 0.85));
        let outward = times(inward, -pen.paper(14.0) / (inward.0 * inward.0 + inward.1 * inward.1).sqrt().max(1e-6));
        label_within(pen, plus(end, outward), name);
    }
}

/// Places of two figures, moved apart sideways where both would lie on each other.
fn apart(pen: &Pen, [a, b]: [Point; 2]) -> [Point; 2] {
    let (wide, high) = (pen.paper(5.2 * LETTER), pen.paper(20.0));
    let off = a.0 - b.0;
    if off.abs() >= wide || (a.1 - b.1).abs() >= high {
        return [a, b];
    }
    let more = (wide - off.abs()) / 2.0 * if off < 0.0 { -1.0 } else { 1.0 };
    [(a.0 + more, a.1), (b.0 - more, b.1)]
}

/// The run of the commons of roof A, and how far along its eave its king common stands.
fn dimensions(pen: &mut Pen, corner: &Corner<'_>) {
    let (king, peak) = (corner.peak.0, corner.peak.1);
    let run = words::length(corner.drawn.run);
    let x = if corner.drawn.is_valley { 0.8 * corner.wall_end(false).0 } else { corner.wall_end(false).0 };
    pen.dimension((x, 0.0), (x, peak), &run, Some("cut_run"));
    // Below the wall at a hip; over the ridge at a valley, where roof B lies below.
    let y = if corner.drawn.is_valley { peak - pen.paper(12.0) } else { pen.paper(46.0) };
    pen.dimension((0.0, y), (king, y), &words::length(Length::from_inches(king)), None);
}

fn alt(drawn: &DrawnCornerPlan) -> String {
    let line = if drawn.is_valley { "valley" } else { "hip" };
    let roof = if drawn.of_b { "B" } else { "A" };
    let jacks = match drawn.jacks.len() {
        0 => String::new(),
        1 => format!(" 1 jack runs to it on roof {roof}."),
        many => format!(" {many} jacks run to it on roof {roof}."),
    };
    format!(
        "The corner in plan, {:.0}° between the walls: the {line} lies {:.1}° from the eave of roof A and {:.1}° from that of roof B. The commons of roof A have a run of {}.{jacks}",
        drawn.angle.degrees(),
        drawn.plan_angles.0.degrees(),
        drawn.plan_angles.1.degrees(),
        words::length(drawn.run)
    )
}
