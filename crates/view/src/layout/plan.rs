//! A corner of a roof in plan, to scale: walls, the hip or valley, the commons at its upper end, and the jacks.

use framing::layout::drawn::DrawnCornerPlan;
use framing::words;
use measure::{Angle, Length};

use crate::pen::Pen;
use crate::scene::{Ink, Scene, Weight};

/// Eave A runs to the right from the corner, eave B at the corner's angle from it; y grows downward.
struct Corner<'d> {
    drawn: &'d DrawnCornerPlan,
    peak: (f64, f64),
}

impl<'d> Corner<'d> {
    fn of(drawn: &'d DrawnCornerPlan) -> Self {
        let run = drawn.run.inches();
        Self { drawn, peak: (run / drawn.plan_angles.0.tan(), -run) }
    }

    /// A place along eave B.
    fn on_b(&self, along: f64) -> (f64, f64) {
        (along * self.drawn.angle.cos(), -along * self.drawn.angle.sin())
    }

    /// How far along eave B the commons of roof B at the peak stand.
    fn king_b(&self) -> f64 {
        self.peak.0 * self.drawn.angle.cos() - self.peak.1 * self.drawn.angle.sin()
    }

    /// Where a jack that stands so far along its eave meets the line.
    fn meets(&self, along: f64, of_b: bool) -> ((f64, f64), (f64, f64)) {
        let king = if of_b { self.king_b() } else { self.peak.0 };
        let share = if king > 0.0 { along / king } else { 0.0 };
        let foot = if of_b { self.on_b(along) } else { (along, 0.0) };
        (foot, (self.peak.0 * share, self.peak.1 * share))
    }
}

pub(super) fn picture(drawn: &DrawnCornerPlan) -> Scene {
    let corner = Corner::of(drawn);
    let (x, y) = corner.peak;
    let past = 0.18 * drawn.run.inches();
    let far_b = corner.on_b(corner.king_b() + past);
    let left = far_b.0.min(0.0);
    let right = x.max(far_b.0) + past;
    let top = y.min(far_b.1);
    let mut pen = Pen::new((left, top), (right - left, -top));
    pen.margin(40.0, 16.0, 30.0);
    pen.line((0.0, 0.0), (right, 0.0), Weight::Cut, Ink::Ink);
    pen.line((0.0, 0.0), far_b, Weight::Cut, Ink::Ink);
    pen.line((0.0, 0.0), corner.peak, Weight::Cut, Ink::Chalk);
    pen.line(corner.peak, (right, y), Weight::Seen, Ink::Ink);
    pen.line((x, 0.0), corner.peak, Weight::Seen, Ink::Ink);
    pen.line(corner.on_b(corner.king_b()), corner.peak, Weight::Seen, Ink::Ink);
    for jack in &drawn.jacks {
        let (foot, head) = corner.meets(jack.inches(), drawn.of_b);
        // A valley jack comes down from the ridge to the line.
        let (from, to) = if drawn.is_valley && !drawn.of_b { ((jack.inches(), y), head) } else { (foot, head) };
        pen.line(from, to, Weight::Fine, Ink::Ink);
    }
    let (below, above) = (pen.paper(12.0), pen.paper(14.0));
    let degrees = |angle: Angle| format!("{:.1}°", angle.degrees());
    let along = 0.42;
    pen.label((x * along + pen.paper(34.0), -pen.paper(10.0)), &degrees(drawn.plan_angles.0));
    let on_b = corner.on_b(corner.king_b() * along);
    pen.label((on_b.0 + pen.paper(28.0), on_b.1 - above), &degrees(drawn.plan_angles.1));
    pen.label((right - pen.paper(30.0), below), "A");
    pen.label((far_b.0 - pen.paper(14.0), far_b.1 + above), "B");
    pen.dimension((right - past * 0.4, 0.0), (right - past * 0.4, y), &words::length(drawn.run), Some("cut_run"));
    let king = Length::from_inches(x);
    let at = pen.paper(22.0);
    pen.dimension((0.0, at), (x, at), &words::length(king), None);
    pen.scene(alt(drawn))
}

fn alt(drawn: &DrawnCornerPlan) -> String {
    let line = if drawn.is_valley { "valley" } else { "hip" };
    let jacks = match drawn.jacks.len() {
        0 => String::new(),
        many => format!(" {many} jacks run to it on roof {}.", if drawn.of_b { "B" } else { "A" }),
    };
    format!(
        "The corner in plan, {:.0}° between the walls: the {line} leaves the eave of roof A at {:.1}° and that of roof B at {:.1}°. The commons of roof A have a run of {}.{jacks}",
        drawn.angle.degrees(),
        drawn.plan_angles.0.degrees(),
        drawn.plan_angles.1.degrees(),
        words::length(drawn.run)
    )
}
