//! A common rafter in its place, to scale: plate, ridge and the heights they stand at.

use framing::layout::drawn::DrawnRafterCut;
use framing::words;
use measure::Length;

use crate::pen::{Pen, crossed, rectangle};
use crate::scene::{Ink, Scene, Weight};

/// Thickness of a plate.
const PLATE: f64 = 1.5;

pub(super) fn picture(drawn: &DrawnRafterCut) -> Scene {
    let (run, over) = (drawn.run.inches(), drawn.overhang.inches());
    let (above, slope) = (drawn.above_plate.inches(), drawn.slope);
    // y grows downward; the plate's top is at nothing.
    let top = |x: f64| -(x * slope + above);
    let plumb = above + drawn.seat.inches() * slope;
    let bottom = |x: f64| top(x) + plumb;
    let half = drawn.ridge.map_or(0.0, |(thick, ..)| thick.inches() / 2.0);
    let right = run - half;
    let lowest = bottom(-over).max(3.0 * PLATE);
    let mut pen = Pen::new((-over, top(run)), (over + run + half, lowest - top(run)));
    pen.margin(46.0, 16.0, 70.0);
    let seat = drawn.seat.inches();
    let rafter = vec![
        (-over, top(-over)),
        (-over, bottom(-over)),
        (0.0, bottom(0.0)),
        (0.0, 0.0),
        (seat, 0.0),
        (right, bottom(right)),
        (right, top(right)),
    ];
    pen.shape(rafter, Weight::Cut, Ink::Ink, true);
    let wide = seat.max(3.5);
    crossed(&mut pen, 0.0, 0.0, wide, PLATE, Ink::Ink);
    crossed(&mut pen, 0.0, PLATE, wide, 2.0 * PLATE, Ink::Ink);
    if let Some((thick, deep, height)) = drawn.ridge {
        let (left, high) = (run - thick.inches() / 2.0, -height.inches());
        crossed(&mut pen, left, high, left + thick.inches(), high + deep.inches(), Ink::Ink);
        if let Some(post) = drawn.post {
            let foot = rectangle(run - 1.75, -post.inches(), run + 1.75, 0.0);
            pen.shape(foot, Weight::Hidden, Ink::Ink, false);
        }
        let x = run + half + pen.paper(18.0);
        pen.dimension((x, 0.0), (x, high), &words::length(height), None);
    }
    pen.line((0.0, 0.0), (run + pen.paper(18.0), 0.0), Weight::Hidden, Ink::Ink);
    let x = -over - pen.paper(16.0);
    pen.dimension((x, 0.0), (x, -above), &words::inches(drawn.above_plate), None);
    let y = lowest + pen.paper(20.0);
    pen.dimension((0.0, y), (run, y), &words::length(drawn.run), Some("cut_run"));
    if over > 0.0 {
        // A row lower: an overhang is narrower than its figure.
        let y = y + pen.paper(36.0);
        pen.dimension((-over, y), (0.0, y), &words::length(drawn.overhang), Some("eave_overhang"));
    }
    pen.scene(alt(drawn))
}

fn alt(drawn: &DrawnRafterCut) -> String {
    let ridge = drawn.ridge.map_or_else(
        || "It meets the rafter across.".to_owned(),
        |(_, _, top)| format!("The top of the ridge stands {} above the plate.", words::length(top)),
    );
    let post = drawn.post.map_or_else(String::new, |post: Length| {
        format!(" The post under it is {} long, from the height of the plate.", words::length(post))
    });
    format!(
        "The rafter in its place: run {}, its top edge {} over the plate's outer corner. {ridge}{post}",
        words::length(drawn.run),
        words::inches(drawn.above_plate)
    )
}
