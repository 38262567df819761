//! A wall cut through from above: the stud, its layers, and what is nailed through them.

use framing::quick::reply::{DrawnLayers, QuickReply};
use measure::{Denominator, Length};

use crate::markup::Act;
use crate::pen::{Pen, rectangle};
use crate::scene::{Ink, Mark, Scene, Weight};

/// How much of the stud is shown, and how wide it is: 1-1/2 in.
const STUD: (f64, f64) = (3.5, 1.5);
/// How much of the wall is shown along it.
const ALONG: f64 = 5.0;
/// So thin a layer is drawn this thick, that it is seen.
const SEEN: f64 = 0.08;

pub(super) fn picture(drawn: &DrawnLayers, reply: &QuickReply) -> Scene {
    let thick = |thickness: Length| thickness.inches().max(SEEN);
    let out: f64 = drawn.layers.iter().map(|(_, thickness)| thick(*thickness)).sum();
    let mut pen = Pen::new((-STUD.0, 0.0), (STUD.0 + out, ALONG));
    pen.margin(12.0, 12.0, 16.0 + 22.0 * drawn.layers.len() as f64);
    stud(&mut pen);
    let mut left = 0.0;
    let mut faces = Vec::new();
    for (index, (name, thickness)) in drawn.layers.iter().enumerate() {
        let right = left + thick(*thickness);
        layer(&mut pen, name, (left, right), drawn.panel == Some(index) && drawn.braces);
        let y = ALONG + pen.paper(16.0 + 22.0 * index as f64);
        let middle = (left + right) / 2.0;
        pen.line((middle, ALONG * 0.92), (middle, y), Weight::Fine, Ink::Ink);
        let text = if thickness.inches() > 0.0 {
            format!("{name} {}", thickness.to_inches_fraction(Denominator::ThirtySecond))
        } else {
            name.clone()
        };
        // The words stand to the left of their line, so that the next line passes them by.
        pen.label_from((-STUD.0, y), &text);
        pen.line(
            (middle, y),
            (-STUD.0 + pen.paper(6.0 + 9.6 * text.chars().count() as f64), y),
            Weight::Fine,
            Ink::Ink,
        );
        left = right;
        faces.push(right);
    }
    if let Some(face) = drawn.panel.and_then(|panel| faces.get(panel)) {
        let ink = if drawn.panel_nail_reaches == Some(false) { Ink::Short } else { Ink::Ink };
        nail(&mut pen, (*face, ALONG * 0.30), drawn.panel_nail, ink);
    }
    if let Some((at, least, is)) = drawn.outer
        && let Some(face) = faces.get(at)
    {
        let ink = if is.is_some_and(|is| is.inches() + 1e-9 < least.inches()) { Ink::Short } else { Ink::Chalk };
        nail(&mut pen, (*face, ALONG * 0.70), is.unwrap_or(least), ink);
    }
    pen.pick((-STUD.0, 0.0), (out, ALONG), Act::Bring("wall_layers"), "Its layers".to_owned());
    let names: Vec<&str> = drawn.layers.iter().map(|(name, _)| name.as_str()).collect();
    let first = reply.action.first().map_or("", String::as_str);
    pen.scene(format!("A wall cut through, from the studs out: {}. {first}", names.join(", ")))
}

fn stud(pen: &mut Pen) {
    let (top, bottom) = ((ALONG - STUD.1) / 2.0, (ALONG + STUD.1) / 2.0);
    // Wide enough for both nails, as where a stud is doubled.
    let (top, bottom) = (top - STUD.1 / 2.0, bottom + STUD.1 / 2.0);
    pen.shape(rectangle(-STUD.0, top, 0.0, bottom), Weight::Cut, Ink::Ink, false);
    pen.line((-STUD.0, top), (0.0, bottom), Weight::Fine, Ink::Ink);
    pen.line((-STUD.0, bottom), (0.0, top), Weight::Fine, Ink::Ink);
}

/// One layer; what insulates is hatched, what braces is washed.
fn layer(pen: &mut Pen, name: &str, (left, right): (f64, f64), braces: bool) {
    pen.shape(rectangle(left, 0.0, right, ALONG), Weight::Seen, Ink::Ink, braces);
    if matches!(name, "foam" | "insulated panel" | "insulating board") {
        let step = (right - left).max(0.25);
        let mut y = 0.0;
        while y + step <= ALONG {
            pen.line((left, y), (right, y + step), Weight::Fine, Ink::Ink);
            y += step;
        }
    }
}

/// A nail from its head inward.
fn nail(pen: &mut Pen, (face, y): (f64, f64), length: Length, ink: Ink) {
    let point = (face - length.inches()).max(-STUD.0);
    let head = pen.paper(5.0);
    pen.marks.push(Mark::Line { from: (face, y - head), to: (face, y + head), weight: Weight::Cut, ink });
    pen.marks.push(Mark::Line { from: (face, y), to: (point, y), weight: Weight::Cut, ink });
    let text = length.to_inches_fraction(Denominator::ThirtySecond);
    pen.label((point + pen.paper(20.0), y - pen.paper(13.0)), &text);
}
