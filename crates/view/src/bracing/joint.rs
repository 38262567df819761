//! One nail in its joint, cut through: how deep it goes, 6 and 10 of its diameters, and what pulls at it.

use framing::quick::drawn_fasteners::{DrawnDriven, DrawnJoint, DrawnNail};
use framing::quick::reply::QuickReply;
use framing::walk::words::length as fine;
use measure::math;

use crate::markup::Act;
use crate::pen::{Pen, rectangle};
use crate::scene::{Ink, Mark, Scene, Weight};

/// Wood that is drawn past the point.
const PAST: f64 = 0.75;
/// Half of what is drawn of the pieces.
const HALF: f64 = 2.9;
/// Slant of a toe nail.
const SLANT: f64 = core::f64::consts::FRAC_PI_6;

pub(super) fn picture(drawn: &DrawnJoint, reply: &QuickReply) -> Scene {
    let (side, long) = (drawn.side.inches(), drawn.nail.length.inches());
    let slanted = drawn.driven == DrawnDriven::Toe;
    // A toe nail goes in a third of its length above the face of the main piece, on the end of the other.
    let (top, depth) = if slanted {
        let above = long / 3.0;
        (-above, long * math::cos(SLANT) - above)
    } else {
        (-side, long - side)
    };
    let bottom = depth.max(drawn.marks.1.inches()) + PAST;
    let above = if slanted { top - 0.5 } else { top };
    let mut pen = Pen::new((-HALF, above), (2.0 * HALF, bottom - above));
    pen.margin(66.0, 44.0, 22.0);
    pieces(&mut pen, drawn, (above, bottom));
    let (head, point) = if slanted {
        let run = long * math::sin(SLANT);
        let entry = -run / 3.0;
        ((entry, top), (entry + run, depth))
    } else {
        ((0.0, top), (0.0, depth))
    };
    nail(&mut pen, &drawn.nail, head, point);
    marks(&mut pen, drawn, depth);
    loads(&mut pen, drawn, above);
    pen.pick((-HALF, above), (HALF, bottom), Act::Bring("nail_as"), "The nail".to_owned());
    pen.scene(alt(drawn, reply))
}

fn pieces(pen: &mut Pen, drawn: &DrawnJoint, (above, bottom): (f64, f64)) {
    pen.shape(rectangle(-HALF, 0.0, HALF, bottom), Weight::Cut, Ink::Ink, true);
    let side = drawn.side.inches();
    if drawn.driven == DrawnDriven::Toe {
        // The piece that stands on the other, its end cut square.
        pen.shape(rectangle(-0.75, above, HALF, 0.0), Weight::Cut, Ink::Ink, false);
    } else {
        pen.shape(rectangle(-HALF, -side, HALF, 0.0), Weight::Cut, Ink::Ink, false);
        let x = -HALF - pen.paper(12.0);
        pen.dimension((x, 0.0), (x, -side), &fine(drawn.side), Some("nail_side_thick"));
    }
    // Grain: along the face, or into the end.
    let grain = if drawn.driven == DrawnDriven::End {
        [-1.8, -1.2, 1.2, 1.8].map(|x| ((x, 0.1), (x, bottom)))
    } else {
        [0.3, 0.6, 0.8, 0.95].map(|share| ((-HALF, bottom * share), (-0.4, bottom * share)))
    };
    for (from, to) in grain {
        pen.line(from, to, Weight::Fine, Ink::Ink);
    }
    let beside = HALF * 0.56;
    pen.label((beside, above / 2.0), &drawn.side_is);
    pen.label((beside, bottom - pen.paper(10.0)), &drawn.main_is);
}

/// A nail from its head to its point: shank, head, point.
pub(super) fn nail(pen: &mut Pen, nail: &DrawnNail, head: (f64, f64), point: (f64, f64)) {
    let (dx, dy) = (point.0 - head.0, point.1 - head.1);
    let long = (dx * dx + dy * dy).sqrt().max(1e-6);
    let (ux, uy) = (dx / long, dy / long);
    let at = |along: f64, across: f64| (head.0 + ux * along - uy * across, head.1 + uy * along + ux * across);
    let half = nail.diameter.inches() / 2.0;
    let taper = (nail.diameter.inches() * 1.5).min(long / 2.0);
    let shank = vec![at(0.0, -half), at(long - taper, -half), at(long, 0.0), at(long - taper, half), at(0.0, half)];
    pen.shape(shank, Weight::Seen, Ink::Ink, true);
    let wide = nail.head.map_or(half * 2.0, |head| head.inches() / 2.0);
    let thick = half.min(0.06);
    let cap = vec![at(-thick, -wide), at(0.0, -wide), at(0.0, wide), at(-thick, wide)];
    pen.shape(cap, Weight::Cut, Ink::Ink, nail.head.is_some());
}

/// The lines of 6 and 10 diameters, and how deep the nail goes.
fn marks(pen: &mut Pen, drawn: &DrawnJoint, depth: f64) {
    for (of, text) in [(drawn.marks.0, "6 D"), (drawn.marks.1, "10 D")] {
        let y = of.inches();
        pen.line((-HALF, y), (HALF, y), Weight::Hidden, Ink::Chalk);
        pen.label((-HALF - pen.paper(if drawn.marks.1 == of { 22.0 } else { 18.0 }), y), text);
    }
    let x = HALF + pen.paper(22.0);
    let figure = drawn.nail.penetration.map_or_else(|| "too little".to_owned(), fine);
    if depth > 0.0 {
        pen.dimension((x, depth), (x, 0.0), &figure, Some("nail_as"));
    } else {
        pen.label((x, pen.paper(10.0)), &figure);
    }
}

/// What goes across the nail and what pulls it; the ink says whether it carries.
fn loads(pen: &mut Pen, drawn: &DrawnJoint, above: f64) {
    let ink = match drawn.holds {
        None => Ink::Chalk,
        Some(true) => Ink::Carries,
        Some(false) => Ink::Short,
    };
    if !drawn.across.is_empty() {
        let y = above / 2.0;
        let (from, to) = ((-HALF - pen.paper(8.0), y), (-HALF + pen.paper(38.0), y));
        pen.marks.push(Mark::Arrow { from, to, figure: String::new(), ink });
        // Over the arrow, and where the side piece is thin, over that as well.
        let over = if above > -0.6 { above - pen.paper(10.0) } else { y - pen.paper(14.0) };
        pen.label((-HALF + pen.paper(52.0), over), &drawn.across);
    }
    if !drawn.pull.is_empty() {
        let (from, to) = ((0.0, above - pen.paper(4.0)), (0.0, above - pen.paper(32.0)));
        pen.marks.push(Mark::Arrow { from, to, figure: String::new(), ink });
        pen.label((pen.paper(34.0), above - pen.paper(24.0)), &drawn.pull);
    }
}

fn alt(drawn: &DrawnJoint, reply: &QuickReply) -> String {
    let how = match drawn.driven {
        DrawnDriven::Face => "straight into side grain",
        DrawnDriven::End => "into end grain",
        DrawnDriven::Toe => "at a slant",
    };
    let deep = drawn
        .nail
        .penetration
        .map_or_else(|| "too little to count".to_owned(), |deep| format!("{} into the framing", fine(deep)));
    let pull = if drawn.pull.is_empty() { String::new() } else { format!(" {} pulls it.", drawn.pull) };
    let across = match (drawn.across.is_empty(), drawn.holds) {
        (true, _) => String::new(),
        (false, None) if drawn.pull.is_empty() => format!(" It carries {} across.", drawn.across),
        (false, _) => format!(" {} goes across it.", drawn.across),
    };
    format!(
        "A nail {} through {}, {how}: it goes {deep}; 6 diameters are {}, 10 are {}.{across}{pull} {}",
        drawn.nail.name,
        drawn.side_is,
        fine(drawn.marks.0),
        fine(drawn.marks.1),
        reply.action.first().map_or("", String::as_str)
    )
}
