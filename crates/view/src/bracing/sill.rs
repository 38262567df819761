//! A bottom plate on its bolts, from above and from the side.

use framing::quick::drawn_fasteners::DrawnSill;
use framing::quick::reply::QuickReply;
use framing::walk::words::length as fine;
use framing::words;
use measure::Length;

use crate::markup::Act;
use crate::pen::{Pen, circle, dot, rectangle};
use crate::scene::{Ink, Mark, Scene, Weight};

/// The most bolts that are drawn one by one: more are a smear.
const BOLTS: usize = 40;

pub(super) fn picture(drawn: &DrawnSill, reply: &QuickReply) -> Scene {
    let long = drawn.length.inches();
    let mut pen = Pen::new((0.0, 0.0), (long, 0.0));
    // Across, the plate is drawn larger than along, so that the bolts are seen.
    let wide = pen.paper(34.0);
    let side = wide + pen.paper(108.0);
    let thick = pen.paper(10.0) * drawn.across.1.inches() / 1.5;
    let deep = pen.paper(42.0);
    pen.margin(30.0, 46.0, 214.0);
    let ink = if drawn.holds { Ink::Carries } else { Ink::Short };
    from_above(&mut pen, drawn, wide, ink);
    let below = wide + pen.paper(24.0);
    dimensions(&mut pen, drawn, below);
    from_the_side(&mut pen, drawn, (side, thick, deep));
    let y = -pen.paper(14.0);
    let (from, to) = ((long * 0.25, y), (long * 0.75, y));
    pen.marks.push(Mark::Arrow { from, to, figure: String::new(), ink: Ink::Chalk });
    pen.label((long / 2.0, y - pen.paper(14.0)), &drawn.push);
    pen.pick((0.0, 0.0), (long, wide), Act::Bring("bolt_drawn"), "The bolts as drawn".to_owned());
    pen.pick((0.0, side - thick), (long, side + deep), Act::Bring("sill_long"), "The plate".to_owned());
    pen.scene(alt(drawn, reply))
}

fn shown(drawn: &DrawnSill) -> impl Iterator<Item = f64> {
    let step = drawn.bolts.len().div_ceil(BOLTS).max(1);
    drawn.bolts.iter().step_by(step).map(|at| at.inches())
}

fn from_above(pen: &mut Pen, drawn: &DrawnSill, wide: f64, ink: Ink) {
    let long = drawn.length.inches();
    pen.shape(rectangle(0.0, 0.0, long, wide), Weight::Cut, Ink::Ink, true);
    for third in [wide / 3.0, wide * 2.0 / 3.0] {
        pen.line((0.0, third), (long, third), Weight::Hidden, Ink::Chalk);
    }
    let washer = pen.paper(if drawn.washer.1 { 7.0 } else { 5.5 });
    for x in shown(drawn) {
        let y = wide / 2.0;
        let outline = if drawn.washer.1 {
            rectangle(x - washer, y - washer, x + washer, y + washer)
        } else {
            circle((x, y), washer)
        };
        pen.shape(outline, Weight::Fine, ink, false);
        dot(pen, (x, y), pen.paper(2.6), ink, true);
    }
}

/// From the ends to their bolts, one space, and the whole.
fn dimensions(pen: &mut Pen, drawn: &DrawnSill, y: f64) {
    let long = drawn.length.inches();
    let (Some(first), Some(last)) = (drawn.bolts.first(), drawn.bolts.last()) else { return };
    pen.dimension((0.0, y), (first.inches(), y), &fine(*first), Some("sill_left_end"));
    if let [one, next, ..] = drawn.bolts.as_slice() {
        // Its figure may be wider than the space: it has a line of its own.
        let y = y + pen.paper(23.0);
        pen.dimension((one.inches(), y), (next.inches(), y), &words::length(*next - *one), Some("bolt_drawn"));
    }
    if drawn.bolts.len() > 1 {
        let right = drawn.length - *last;
        pen.dimension((last.inches(), y), (long, y), &fine(right), Some("sill_right_end"));
    }
    let below = y + pen.paper(46.0);
    pen.dimension((0.0, below), (long, below), &words::length(drawn.length), Some("sill_long"));
}

fn from_the_side(pen: &mut Pen, drawn: &DrawnSill, (top, thick, deep): (f64, f64, f64)) {
    let long = drawn.length.inches();
    pen.shape(rectangle(0.0, top, long, top + thick), Weight::Cut, Ink::Ink, true);
    let over = pen.paper(14.0);
    let floor = top + thick;
    pen.line((-over, floor), (long + over, floor), Weight::Cut, Ink::Ink);
    let half = pen.paper(1.2);
    let cap = pen.paper(5.0);
    for x in shown(drawn) {
        pen.line((x, top - cap), (x, floor + deep), Weight::Seen, Ink::Ink);
        pen.line((x, floor + deep), (x + cap, floor + deep), Weight::Seen, Ink::Ink);
        pen.shape(rectangle(x - cap, top - half, x + cap, top), Weight::Fine, Ink::Ink, false);
    }
    let at = long + pen.paper(16.0);
    pen.dimension((at, floor + deep), (at, floor), &fine(drawn.embedment), Some("bolt_deep"));
    if !drawn.uplift.is_empty() {
        for share in [0.2, 0.5, 0.8] {
            let (from, to) = ((long * share, top - pen.paper(2.0)), (long * share, top - pen.paper(18.0)));
            pen.marks.push(Mark::Arrow { from, to, figure: String::new(), ink: Ink::Chalk });
        }
        pen.label((long * 0.35, top - pen.paper(12.0)), &drawn.uplift);
    }
    pen.label((long / 2.0, floor + deep + pen.paper(18.0)), "concrete");
}

fn alt(drawn: &DrawnSill, reply: &QuickReply) -> String {
    let first = drawn.bolts.first().copied().unwrap_or(Length::ZERO);
    let last = drawn.bolts.last().map_or(Length::ZERO, |last| drawn.length - *last);
    let uplift = if drawn.uplift.is_empty() { String::new() } else { format!(" {} lifts it.", drawn.uplift) };
    format!(
        "A bottom plate {} long from above and from the side, on {}. The first bolt is {} from the left end, the last {} from the right. {} pushes along it.{uplift} {}: {}",
        words::length(drawn.length),
        reply.size,
        fine(first),
        fine(last),
        drawn.push,
        reply.verdict,
        reply.action.first().map_or("", String::as_str)
    )
}
