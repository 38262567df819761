//! A roof plane laid flat, to scale: its courses and sheets from the eave up, and the cuts at its ends.

use framing::layout::drawn::{DrawnCourse, DrawnSheathing};
use framing::words;

use super::place::{Bounds, label_within};
use crate::pen::Pen;
use crate::scene::{Ink, Scene, Weight};

pub(super) fn picture(drawn: &DrawnSheathing) -> Scene {
    let (eave, slope) = (drawn.eave.inches(), drawn.slope.inches());
    let mut seen = Bounds::of((0.0, 0.0));
    seen.take((eave, -slope));
    let corners: Vec<[(f64, f64); 4]> = drawn.courses.iter().map(corners).collect();
    for point in corners.iter().flatten() {
        seen.take(*point);
    }
    let mut pen = seen.pen();
    pen.margin(40.0, 30.0, 50.0);
    for (index, (course, corners)) in drawn.courses.iter().zip(&corners).enumerate() {
        pen.shape(corners.to_vec(), Weight::Seen, Ink::Ink, false);
        joints(&mut pen, drawn, course, index % 2 == 1);
    }
    cuts(&mut pen, drawn, &corners);
    let y = pen.paper(40.0);
    pen.dimension((0.0, y), (eave, y), &words::length(drawn.eave), Some("sheathed_eave"));
    let x = eave.max(corners.iter().flatten().map(|point| point.0).fold(0.0, f64::max)) + pen.paper(16.0);
    pen.dimension((x, 0.0), (x, -slope), &words::length(drawn.slope), None);
    pen.scene(alt(drawn))
}

/// A course from its lower left corner round; y grows downward.
fn corners(course: &DrawnCourse) -> [(f64, f64); 4] {
    let (low, high) = (-course.from_eave.inches(), -(course.from_eave + course.width).inches());
    let [left, left_above] = course.left.map(|left| left.inches());
    let [lower, upper] = course.lengths.map(|length| length.inches());
    [(left, low), (left + lower, low), (left_above + upper, high), (left_above, high)]
}

/// The joints between sheets; every other course starts with half a sheet.
fn joints(pen: &mut Pen, drawn: &DrawnSheathing, course: &DrawnCourse, with_half: bool) {
    let sheet = drawn.sheet.inches();
    let [low_left, low_right, high_right, high_left] = corners(course);
    let (from, to) = (low_left.0.min(high_left.0), low_right.0.max(high_right.0));
    // The half of the first sheet is counted from the left end of the eave, so that joints break in every course.
    let first = if with_half { sheet / 2.0 } else { sheet };
    let mut x = first + (((from - first) / sheet).floor() + 1.0) * sheet;
    while x < to {
        let left = share_at(x, low_left, high_left, true);
        let right = share_at(x, low_right, high_right, false);
        let (start, end) = (left.0.max(right.0), left.1.min(right.1));
        let at = |share: f64| low_left.1 + share * (high_left.1 - low_left.1);
        if end > start {
            pen.line((x, at(start)), (x, at(end)), Weight::Fine, Ink::Ink);
        }
        x += sheet;
    }
}

/// Between which shares of a course's width a place lies inside of one of its ends.
fn share_at(x: f64, low: (f64, f64), high: (f64, f64), is_left: bool) -> (f64, f64) {
    let inside = |end: f64| if is_left { x >= end } else { x <= end };
    let run = high.0 - low.0;
    let crossing = if run.abs() > 1e-9 { ((x - low.0) / run).clamp(0.0, 1.0) } else { 0.0 };
    match (inside(low.0), inside(high.0)) {
        (true, true) => (0.0, 1.0),
        (true, false) => (0.0, crossing),
        (false, true) => (crossing, 1.0),
        (false, false) => (1.0, 0.0),
    }
}

/// The cut ends, each with its angle from the eave edge.
fn cuts(pen: &mut Pen, drawn: &DrawnSheathing, corners: &[[(f64, f64); 4]]) {
    let (Some(first), Some(last)) = (corners.first(), corners.last()) else { return };
    let ends = [(first[0], last[3]), (first[1], last[2])];
    for (((from, to), words), inward) in ends.into_iter().zip(&drawn.cuts).zip([1.0, -1.0]) {
        let Some(words) = words else { continue };
        pen.line(from, to, Weight::Cut, Ink::Chalk);
        let (x, y) = (from.0 + inward * pen.paper(30.0), pen.paper(10.0));
        label_within(pen, (x, y), words);
    }
}

fn alt(drawn: &DrawnSheathing) -> String {
    let end = |side: &str, index: usize| match &drawn.cuts[index] {
        Some(cut) => {
            format!(" At its {side} end, a {}, the sheets are cut at {cut} from the eave edge.", drawn.ends[index])
        }
        None => format!(" Its {side} end is square."),
    };
    let courses = match drawn.courses.len() {
        1 => "1 course".to_owned(),
        many => format!("{many} courses"),
    };
    format!(
        "The roof plane laid flat, its eave below: {} along the eave, {} up the slope, {courses} of sheets with broken joints.{}{}",
        words::length(drawn.eave),
        words::length(drawn.slope),
        end("left", 0),
        end("right", 1)
    )
}
