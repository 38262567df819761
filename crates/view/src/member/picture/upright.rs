//! A stud in its wall, or a post with its nails: from the side, and in section.

use framing::quick::reply::{DrawnUpright, QuickReply};
use framing::words;
use measure::Length;

use crate::markup::Act;
use crate::pen::{Pen, circle, crossed, dot, rectangle};
use crate::scene::{Ink, Mark, Scene, Weight};

pub(super) fn picture(drawn: &DrawnUpright, reply: &QuickReply) -> Scene {
    let height = drawn.height.inches();
    let (ply, depth) = (drawn.ply.0.inches(), drawn.ply.1.inches());
    let breadth = ply * f64::from(drawn.plies);
    let beside = drawn.spacing.map_or(0.0, |spacing| spacing.inches());
    // Large in section at the right, since it is thin beside its height.
    let scale = (height * 0.32 / breadth.max(depth)).max(1.0);
    let width = breadth + beside * 2.0 + height * 0.63;
    let mut pen = Pen::new((-beside - breadth / 2.0, 0.0), (width, height));
    pen.margin(30.0, 58.0, 38.0);
    let wall = drawn.spacing.is_some();
    if wall {
        for x in [-beside, beside] {
            pen.shape(rectangle(x - 0.75, 0.0, x + 0.75, height), Weight::Fine, Ink::Ink, false);
        }
        for y in [-1.5, -3.0, height] {
            pen.shape(rectangle(-beside - 2.0, y, beside + 2.0, y + 1.5), Weight::Seen, Ink::Ink, false);
        }
    }
    for index in 0..drawn.plies {
        let left = -breadth / 2.0 + ply * f64::from(index);
        pen.shape(rectangle(left, 0.0, left + ply, height), Weight::Cut, Ink::Ink, true);
    }
    nails_along(&mut pen, drawn, breadth, height);
    if !drawn.down.is_empty() {
        let (tail, head) = (-pen.paper(32.0), -pen.paper(3.0) - if wall { 3.0 } else { 0.0 });
        pen.marks.push(Mark::Arrow {
            from: (0.0, tail - 3.0),
            to: (0.0, head),
            figure: drawn.down.clone(),
            ink: Ink::Ink,
        });
    }
    if !drawn.wind.is_empty() {
        let from = (breadth / 2.0 + pen.paper(44.0), height * 0.62);
        let to = (breadth / 2.0 + pen.paper(4.0), height * 0.62);
        pen.marks.push(Mark::Arrow { from, to, figure: String::new(), ink: Ink::Chalk });
        let at = (from.0 + pen.paper(4.0), from.1 + pen.paper(14.0));
        pen.label(at, &drawn.wind);
    }
    section(&mut pen, drawn, (beside + height * 0.42, height * 0.30), scale);
    let x = -beside - breadth / 2.0 - pen.paper(14.0);
    let first = if wall { "stud_length" } else { "post_height" };
    pen.dimension((x, 0.0), (x, height), &words::length(drawn.height), Some(first));
    if let Some(spacing) = drawn.spacing {
        let y = height + pen.paper(26.0);
        pen.dimension((0.0, y), (beside, y), &words::inches(spacing), Some("wall_spacing"));
    }
    pen.pick((-breadth, 0.0), (breadth, height), Act::Bring(first), "Its height".to_owned());
    let what = if wall { "A stud" } else { "A post" };
    let wind = if drawn.wind.is_empty() { String::new() } else { format!(" Wind across it: {}.", drawn.wind) };
    pen.scene(format!(
        "{what}, {}, {} high, from the side and in section. {} comes down on it.{wind}",
        reply.size,
        words::length(drawn.height),
        drawn.down
    ))
}

/// Nails on the face of a built-up post: hollow and filled by turns, as they come from opposite faces.
fn nails_along(pen: &mut Pen, drawn: &DrawnUpright, breadth: f64, height: f64) {
    let Some((_, spacing, end, _)) = drawn.nails else { return };
    let radius = pen.paper(2.5);
    let (mut y, mut turn) = (end.inches(), false);
    while y <= height - end.inches() * 0.9 {
        let x = if turn { -breadth * 0.25 } else { breadth * 0.25 };
        pen.shape(circle((x, y), radius), Weight::Seen, Ink::Ink, turn);
        turn = !turn;
        y += spacing.inches();
    }
}

/// The section, larger than life, with its cut and its nails.
fn section(pen: &mut Pen, drawn: &DrawnUpright, (left, top): (f64, f64), scale: f64) {
    let (ply, depth) = (drawn.ply.0.inches() * scale, drawn.ply.1.inches() * scale);
    let breadth = ply * f64::from(drawn.plies);
    for index in 0..drawn.plies {
        let x = left + ply * f64::from(index);
        crossed(pen, x, top, x + ply, top + depth, Ink::Ink);
    }
    if let Some((cut, is_hole)) = drawn.cut {
        let cut = cut.inches() * scale;
        if is_hole {
            let middle = top + depth / 2.0;
            pen.shape(
                rectangle(left, middle - cut / 2.0, left + breadth, middle + cut / 2.0),
                Weight::Seen,
                Ink::Chalk,
                true,
            );
        } else {
            pen.shape(rectangle(left, top, left + breadth, top + cut), Weight::Seen, Ink::Chalk, true);
        }
    }
    if let Some((rows, _, _, between)) = drawn.nails {
        let middle = top + depth / 2.0;
        let off = if rows > 1 { between.inches() * scale / 2.0 } else { 0.0 };
        let radius = pen.paper(3.0);
        for (y, from_left) in [(middle - off, true), (middle + off, false)] {
            let (from, to) =
                if from_left { (left, left + breadth * 0.9) } else { (left + breadth, left + breadth * 0.1) };
            pen.line((from, y), (to, y), Weight::Cut, Ink::Chalk);
            dot(pen, (from, y), radius, Ink::Chalk, true);
        }
    }
    let y = top + depth + pen.paper(24.0);
    pen.dimension((left, y), (left + breadth, y), &words::inches(Length::from_inches(breadth / scale)), None);
    let x = left + breadth + pen.paper(14.0);
    pen.dimension((x, top), (x, top + depth), &words::inches(drawn.ply.1), None);
}
