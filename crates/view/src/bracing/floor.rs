//! A floor or a roof in plan between its wall lines: panels as they are laid, the wind along one edge, and what runs in its
//! chords and its end line.

use framing::quick::reply::{DrawnFloor, QuickReply};
use framing::words;

use crate::markup::Act;
use crate::pen::{Pen, rectangle};
use crate::scene::{Ink, Mark, Scene, Weight};

/// A panel's long side and short side.
const PANEL: (f64, f64) = (96.0, 48.0);
/// The most panels that are drawn one way: more are a smear, and a corner says how they lie.
const MOST: usize = 10;
/// Joists or rafters are drawn so far apart.
const FRAMING: f64 = 24.0;
/// How many arrows the wind has.
const ARROWS: usize = 9;
/// Breadth of a wall as it is drawn, in pixels of a phone.
const WALL: f64 = 5.0;

pub(super) fn picture(drawn: &DrawnFloor, reply: &QuickReply) -> Scene {
    let (span, deep) = (drawn.span.inches(), drawn.deep.inches());
    let mut pen = Pen::new((0.0, 0.0), (span, deep));
    pen.margin(84.0, 84.0, 92.0);
    pen.shape(rectangle(0.0, 0.0, span, deep), Weight::Seen, Ink::Ink, true);
    framing(&mut pen, drawn, (span, deep));
    panels(&mut pen, drawn, (span, deep));
    chords(&mut pen, drawn, (span, deep));
    end_lines(&mut pen, drawn, (span, deep));
    wind(&mut pen, drawn, span);
    let (below, side) = (deep + pen.paper(76.0), span + pen.paper(40.0));
    pen.dimension((0.0, below), (span, below), &words::length(drawn.span), Some("floor_span"));
    pen.dimension((side, deep), (side, 0.0), &words::length(drawn.deep), Some("floor_deep"));
    pen.pick((0.0, 0.0), (span, deep), Act::Bring("long_sides"), "How the panels lie".to_owned());
    pen.scene(alt(drawn, reply))
}

fn alt(drawn: &DrawnFloor, reply: &QuickReply) -> String {
    let long = if drawn.layout.long_sides_along_load() { "along" } else { "across" };
    let joints = if drawn.layout.staggered { "staggered" } else { "in line" };
    let collector = drawn.collector.as_ref().map_or_else(String::new, |(at, most)| {
        format!(" The plate of the left end line carries {most} at {}.", words::length(*at))
    });
    format!(
        "Plan of a floor or roof {} between wall lines and {} deep, panels with their long sides {long} the wind, joints {joints}. {} pushes on its upper edge; each wall line is given {}; the chords along both long edges have {}.{collector} {}",
        words::length(drawn.span),
        words::length(drawn.deep),
        drawn.push,
        drawn.reaction,
        drawn.chord,
        reply.action.first().map_or("", String::as_str)
    )
}

/// The corner that shows how panels and framing lie: long sides across the paper or up it.
fn shown(drawn: &DrawnFloor, (span, deep): (f64, f64)) -> (f64, f64, f64, f64) {
    let (long, short) = PANEL;
    let (wide, high) = if drawn.layout.long_sides_along_load() { (short, long) } else { (long, short) };
    (wide, high, span.min(wide * MOST as f64), deep.min(high * MOST as f64))
}

/// Joists or rafters under the panels, as chalk lines.
fn framing(pen: &mut Pen, drawn: &DrawnFloor, of: (f64, f64)) {
    let (_, _, right, bottom) = shown(drawn, of);
    let along = drawn.layout.framing_along_load;
    let (end, mut at) = (if along { right } else { bottom }, FRAMING);
    while at < end - 1.0 {
        let (from, to) = if along { ((at, 0.0), (at, bottom)) } else { ((0.0, at), (right, at)) };
        pen.line(from, to, Weight::Hidden, Ink::Chalk);
        at += FRAMING;
    }
}

/// The joints of the panels, rows staggered or not.
fn panels(pen: &mut Pen, drawn: &DrawnFloor, of: (f64, f64)) {
    let (wide, high, right, bottom) = shown(drawn, of);
    // Rows run along the long sides.
    let upright = drawn.layout.long_sides_along_load();
    let (long, short, length, breadth) =
        if upright { (high, wide, bottom, right) } else { (wide, high, right, bottom) };
    let line = |pen: &mut Pen, (a, b): (f64, f64), (c, d): (f64, f64)| {
        let (from, to) = if upright { ((b, a), (d, c)) } else { ((a, b), (c, d)) };
        pen.line(from, to, Weight::Fine, Ink::Ink);
    };
    let (mut row, mut across) = (0_usize, 0.0);
    while across < breadth - 1.0 {
        let next = (across + short).min(breadth);
        let mut joint = if drawn.layout.staggered && row % 2 == 1 { long / 2.0 } else { long };
        while joint < length - 1.0 {
            line(pen, (joint, across), (joint, next));
            joint += long;
        }
        if next < breadth - 1.0 {
            line(pen, (0.0, next), (length, next));
        }
        (row, across) = (row + 1, next);
    }
}

/// What runs in the plates along both long edges: pressed where the wind comes, pulled on the other side.
fn chords(pen: &mut Pen, drawn: &DrawnFloor, (span, deep): (f64, f64)) {
    let (inner, outer) = (span * 0.32, span * 0.46);
    let (above, below) = (-pen.paper(8.0), deep + pen.paper(10.0));
    for edge in [0.0, deep] {
        pen.line((0.0, edge), (span, edge), Weight::Cut, Ink::Ink);
    }
    let mut arrow = |from: (f64, f64), to: (f64, f64)| {
        pen.marks.push(Mark::Arrow { from, to, figure: String::new(), ink: Ink::Chalk });
    };
    // Pressed together above, pulled apart below.
    arrow((inner, above), (outer, above));
    arrow((span - inner, above), (span - outer, above));
    arrow((outer, below), (inner, below));
    arrow((span - outer, below), (span - inner, below));
    pen.label((span / 2.0, -pen.paper(22.0)), &format!("pressed {}", drawn.chord));
    pen.label((span / 2.0, deep + pen.paper(26.0)), &format!("pulled {}", drawn.chord));
    let (tick, at) = (pen.paper(7.0), drawn.splice.inches());
    for edge in [0.0, deep] {
        pen.line((at - tick, edge + tick), (at + tick, edge - tick), Weight::Seen, Ink::Chalk);
    }
    let reach = pen.paper(16.0);
    pen.pick(
        (at - 2.0 * reach, deep - reach),
        (at + 2.0 * reach, deep + reach),
        Act::Bring("splice_at"),
        "The splice".to_owned(),
    );
}

/// Both wall lines with what they are given; the left one with its walls and its collector.
fn end_lines(pen: &mut Pen, drawn: &DrawnFloor, (span, deep): (f64, f64)) {
    let half = pen.paper(WALL);
    let whole = [(0.0, deep)];
    let walls: Vec<(f64, f64)> = drawn.walls.iter().map(|(from, to)| (from.inches(), to.inches().min(deep))).collect();
    let left = if walls.is_empty() { &whole[..] } else { &walls };
    for (from, to) in left {
        pen.shape(rectangle(-half, *from, half, *to), Weight::Cut, Ink::Ink, true);
    }
    pen.shape(rectangle(span - half, 0.0, span + half, deep), Weight::Cut, Ink::Ink, true);
    // Under something narrow the figures go outward, so that they do not meet.
    let outward = if span < pen.paper(150.0) { pen.paper(34.0) } else { 0.0 };
    for (at, figure) in [(0.0, -outward), (span, span + outward)] {
        let (tail, head) = (deep + pen.paper(40.0), deep + pen.paper(12.0));
        pen.marks.push(Mark::Arrow { from: (at, tail), to: (at, head), figure: String::new(), ink: Ink::Chalk });
        pen.label((figure, tail + pen.paper(12.0)), &drawn.reaction);
    }
    if let Some((at, most)) = &drawn.collector {
        let y = at.inches().min(deep);
        pen.line((-pen.paper(14.0), y), (half * 2.0, y), Weight::Seen, Ink::Chalk);
        pen.label((-pen.paper(46.0), y), most);
    }
    let reach = pen.paper(20.0);
    pen.pick((-reach, 0.0), (reach, deep), Act::Bring("end_line"), "Walls of the end line".to_owned());
}

/// The wind along the upper edge.
fn wind(pen: &mut Pen, drawn: &DrawnFloor, span: f64) {
    let (tail, head) = (-pen.paper(58.0), -pen.paper(34.0));
    for index in 0..ARROWS {
        let at = span * (index as f64 + 0.5) / ARROWS as f64;
        pen.marks.push(Mark::Arrow { from: (at, tail), to: (at, head), figure: String::new(), ink: Ink::Chalk });
    }
    pen.line((0.0, tail), (span, tail), Weight::Fine, Ink::Chalk);
    pen.label((span / 2.0, tail - pen.paper(12.0)), &drawn.push);
    pen.pick((0.0, tail - pen.paper(22.0)), (span, head), Act::Bring("floor_push"), "The push on its edge".to_owned());
}
