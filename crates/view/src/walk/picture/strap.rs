//! A strap in elevation, across the joint of two pieces.

use super::pen::{Pen, dot, rectangle};
use super::values::Values;
use crate::scene::{Ink, Mark, Scene, Weight};

/// Width of the two pieces, length of each, and the joint between them; inches.
const PIECE: (f64, f64) = (3.5, 8.0);
const JOINT: f64 = 0.25;
const HEIGHT: f64 = 2.0 * PIECE.1 + JOINT;
/// The strap: its edges, and how far it stays from the pieces' ends.
const STRAP: (f64, f64) = (0.75, 2.75);
const END: f64 = 1.0;
/// More nails on a side would lie on one another.
const MOST: u32 = 40;

/// Drawn before anything is known of it, so that it shows what is looked at.
pub(super) fn picture(values: Values<'_>) -> Scene {
    let mut pen = Pen::new((0.0, 0.0), (PIECE.0, HEIGHT));
    pen.margin(44.0, 70.0, 12.0);
    for top in [0.0, PIECE.1 + JOINT] {
        pen.shape(rectangle(0.0, top, PIECE.0, top + PIECE.1), Weight::Seen, Ink::Ink, false);
    }
    strap(&mut pen, values.text("lies_flat"));
    let counts = (values.count("fasteners"), values.count("required_nails"));
    nails(&mut pen, counts);
    let uplift = values.pounds("required_uplift");
    if let Some(uplift) = &uplift {
        let (x, tail, head) = (PIECE.0 / 2.0, -pen.paper(24.0), -pen.paper(64.0));
        pen.marks.push(Mark::Arrow { from: (x, tail), to: (x, head), figure: uplift.clone(), ink: Ink::Ink });
    }
    pen.scene(alt(values, counts, uplift.as_deref()))
}

/// Straight from end to end; out of its line at the joint where it does not lie so; dashed where nobody saw it.
fn strap(pen: &mut Pen, lies_flat: &str) {
    const BOW: f64 = 0.3;
    let middle = HEIGHT / 2.0;
    let (bow, weight, ink) = match lies_flat {
        "yes" => (0.0, Weight::Seen, Ink::Ink),
        "no" => (BOW, Weight::Seen, Ink::Short),
        _ => (0.0, Weight::Hidden, Ink::Ink),
    };
    let (left, right) = STRAP;
    let down = [(left, END), (left + bow, middle), (left, HEIGHT - END)];
    let up = [(right, HEIGHT - END), (right + bow, middle), (right, END)];
    pen.shape([down, up].concat(), weight, ink, false);
}

/// Those of the side that was counted: filled where they are in, hollow where they are missing.
fn nails(pen: &mut Pen, (found, required): (Option<u32>, Option<u32>)) {
    let Some(found) = found else { return };
    let all = required.unwrap_or_default().max(found);
    if all > MOST {
        return;
    }
    let (top, rows) = (PIECE.1 + JOINT + END, f64::from(all.div_ceil(2).max(1)));
    let step = (PIECE.1 - 2.0 * END) / rows;
    let radius = (step * 0.4).min(0.35);
    for nail in 0..all {
        let x = PIECE.0 / 2.0 + if nail % 2 == 0 { -0.5 } else { 0.5 };
        let y = top + step * (f64::from(nail / 2) + 0.5);
        let is_in = nail < found;
        dot(pen, (x, y), radius, if is_in { Ink::Ink } else { Ink::Short }, is_in);
    }
}

fn alt(values: Values<'_>, (found, required): (Option<u32>, Option<u32>), uplift: Option<&str>) -> String {
    let lies = match values.text("lies_flat") {
        "yes" => "flat and straight",
        "no" => "not flat and straight",
        _ => "not seen how it lies",
    };
    let nails = match (found, required) {
        (Some(found), Some(required)) => format!("{found} of {required} nails on the side that has fewer"),
        (Some(found), None) => format!("{found} nails on the side that has fewer"),
        (None, _) => "its nails were not counted".to_owned(),
    };
    let uplift = uplift.map(|uplift| format!(" The uplift: {uplift}.")).unwrap_or_default();
    format!("A strap across a joint, {lies}, not to scale; {nails}.{uplift}")
}
