//! A cut joist from its side: where the code allows cuts, and where this one is.

use framing::quick::reply::DrawnCut;
use framing::words;
use measure::{Denominator, Length, Rounding};
use members::flexure::{Cut, Edge};

use crate::markup::Act;
use crate::pen::{Pen, circle, rectangle};
use crate::scene::{Ink, Scene, Weight};

/// The depth is drawn so many times larger than the length, so that a cut is seen.
const TALLER: f64 = 5.0;

pub(super) fn picture(drawn: &DrawnCut) -> Scene {
    let span = drawn.span.inches();
    let scale = TALLER.min(span * 0.5 / drawn.depth.inches());
    let depth = drawn.depth.inches() * scale;
    let mut pen = Pen::new((0.0, 0.0), (span, depth));
    pen.margin(24.0, 40.0, 58.0);
    pen.shape(rectangle(0.0, 0.0, span, depth), Weight::Cut, Ink::Ink, false);
    // The middle third, where no notch is allowed, hatched.
    let (from, to) = (span / 3.0, span * 2.0 / 3.0);
    for x in [from, to] {
        pen.line((x, 0.0), (x, depth), Weight::Hidden, Ink::Ink);
    }
    let beside = 2.0 * scale;
    if beside * 2.0 < depth {
        pen.line((0.0, beside), (span, beside), Weight::Hidden, Ink::Ink);
        pen.line((0.0, depth - beside), (span, depth - beside), Weight::Hidden, Ink::Ink);
    }
    let above = -pen.paper(10.0);
    pen.label((span / 2.0, above), "no notch in the middle third");
    for x in [0.0, span] {
        let half = span * 0.02;
        pen.shape(
            vec![(x, depth), (x + half, depth + half * 1.6), (x - half, depth + half * 1.6)],
            Weight::Seen,
            Ink::Ink,
            false,
        );
    }
    cut(&mut pen, drawn, depth, scale);
    let y = depth + pen.paper(28.0);
    pen.dimension((0.0, y), (span, y), &words::length(drawn.span), Some("joist_span"));
    let down = |length: Length| words::inches(length.rounded(Denominator::Sixteenth, Rounding::Down));
    let y = depth + pen.paper(48.0);
    pen.label((span / 2.0, y), &format!("hole to {}, notch to {}", down(drawn.allowed.1), down(drawn.allowed.0)));
    pen.pick((0.0, 0.0), (span, depth), Act::Bring("cut_at"), "Where the cut is".to_owned());
    pen.scene(alt(drawn))
}

fn cut(pen: &mut Pen, drawn: &DrawnCut, depth: f64, scale: f64) {
    let (at, figure) = match drawn.cut {
        None => return,
        Some(Cut::Notch { at, length, depth: notch, edge, .. }) => {
            let (left, right) = (at.inches(), (at + length).inches().max(at.inches() + pen.paper(4.0)));
            let deep = notch.inches() * scale;
            let (top, bottom) = if edge == Edge::Top { (0.0, deep) } else { (depth - deep, depth) };
            pen.shape(rectangle(left, top, right, bottom), Weight::Cut, Ink::Chalk, true);
            (at, format!("{} deep", words::inches(notch)))
        }
        Some(Cut::Hole { at, diameter, to_edge }) => {
            // Drawn as wide as it is long, so that it stays round: its place between the edges is to scale.
            let radius = diameter.inches() * scale / 2.0;
            let middle = to_edge.inches() * scale + radius;
            pen.shape(circle((at.inches(), middle), radius), Weight::Cut, Ink::Chalk, true);
            (at, format!("{} hole", words::inches(diameter)))
        }
    };
    let y = -pen.paper(30.0);
    let half = pen.paper(40.0);
    let x = at.inches().clamp(half, (drawn.span.inches() - half).max(half));
    pen.label((x, y), &format!("{figure} at {}", words::length(at)));
}

fn alt(drawn: &DrawnCut) -> String {
    let cut = match drawn.cut {
        None => "No cut was said yet.".to_owned(),
        Some(Cut::Notch { at, depth, edge, .. }) => {
            let edge = if edge == Edge::Top { "top" } else { "bottom" };
            format!("A notch {} deep in its {edge}, {} from the bearing.", words::inches(depth), words::length(at))
        }
        Some(Cut::Hole { at, diameter, to_edge }) => format!(
            "A hole of {}, {} from the edge, {} from the bearing.",
            words::inches(diameter),
            words::inches(to_edge),
            words::length(at)
        ),
    };
    format!(
        "A joist {} deep over {}, its depth drawn larger. {cut}",
        words::inches(drawn.depth),
        words::length(drawn.span)
    )
}
