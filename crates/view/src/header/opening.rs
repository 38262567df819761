//! The opening drawn to scale: header, jacks, kings and cripples, with the figures that matter.

use crate::scene::{Ink, Mark, Scene, Weight};

/// What the drawing needs, in inches.
pub(super) struct OpeningDrawing {
    pub(super) opening: f64,
    pub(super) wall_height: f64,
    pub(super) head_height: f64,
    pub(super) header_depth: f64,
    pub(super) jacks: u8,
    pub(super) kings: u8,
    pub(super) spacing: f64,
    pub(super) ink: Ink,
    pub(super) load: String,
    pub(super) reaction: String,
    pub(super) opening_figure: String,
    pub(super) head_figure: String,
    pub(super) wall_figure: String,
    pub(super) alt: String,
}

const PLY: f64 = 1.5;
const TOP_PLATES: f64 = 3.0;
/// Room around the wall for figures, as a share of the wall's height.
const MARGIN: f64 = 0.17;

/// Draws it.
pub(super) fn draw(drawing: &OpeningDrawing) -> Scene {
    let side = PLY * f64::from(drawing.jacks + drawing.kings);
    let field = (drawing.spacing - PLY).clamp(4.0, 14.5);
    let half = drawing.opening / 2.0 + side + field + PLY;
    let room = drawing.wall_height * MARGIN;
    let mut marks = Vec::new();
    plates(&mut marks, drawing, half);
    studs(&mut marks, drawing, half);
    cripples(&mut marks, drawing);
    header(&mut marks, drawing);
    loads(&mut marks, drawing, room);
    figures(&mut marks, drawing, half, room);
    Scene {
        left: -half - room * 1.1,
        top: -room,
        width: 2.0 * half + room * 2.2,
        height: drawing.wall_height + room * 2.1,
        marks,
        alt: drawing.alt.clone(),
    }
}

fn rectangle(left: f64, top: f64, right: f64, bottom: f64) -> Vec<(f64, f64)> {
    vec![(left, top), (right, top), (right, bottom), (left, bottom)]
}

fn seen(points: Vec<(f64, f64)>, field: Option<&'static str>) -> Mark {
    Mark::Shape { points, weight: Weight::Seen, ink: Ink::Ink, washed: false, field }
}

fn plates(marks: &mut Vec<Mark>, drawing: &OpeningDrawing, half: f64) {
    let (height, jamb) = (drawing.wall_height, drawing.opening / 2.0);
    marks.push(seen(rectangle(-half, 0.0, half, PLY), Some("wall_height")));
    marks.push(seen(rectangle(-half, PLY, half, TOP_PLATES), Some("wall_height")));
    for (left, right) in [(-half, -jamb), (jamb, half)] {
        marks.push(seen(rectangle(left, height - PLY, right, height), None));
    }
    // Whether a door or a window fills it is not asked: the plate in the opening is drawn as hidden.
    for y in [height - PLY, height] {
        marks.push(Mark::Line { from: (-jamb, y), to: (jamb, y), weight: Weight::Hidden, ink: Ink::Ink });
    }
}

fn studs(marks: &mut Vec<Mark>, drawing: &OpeningDrawing, half: f64) {
    let foot = drawing.wall_height - PLY;
    let head = drawing.wall_height - drawing.head_height;
    let jamb = drawing.opening / 2.0;
    let mut stand = |inner: f64, top: f64, field: Option<&'static str>| {
        marks.push(seen(rectangle(inner, top, inner + PLY, foot), field));
        marks.push(seen(rectangle(-inner - PLY, top, -inner, foot), field));
    };
    for jack in 0..drawing.jacks {
        stand(jamb + PLY * f64::from(jack), head, Some("head_height"));
    }
    for king in 0..drawing.kings {
        stand(jamb + PLY * f64::from(drawing.jacks + king), TOP_PLATES, Some("wall_studs"));
    }
    stand(half - PLY, TOP_PLATES, Some("stud_spacing"));
}

/// Cripples keep the wall's layout; it is drawn from the middle, since the wall's own end is not known.
fn cripples(marks: &mut Vec<Mark>, drawing: &OpeningDrawing) {
    let header_top = drawing.wall_height - drawing.head_height - drawing.header_depth;
    if header_top - TOP_PLATES < PLY {
        return;
    }
    let end = drawing.opening / 2.0 + PLY * f64::from(drawing.jacks);
    let count = (end / drawing.spacing).floor();
    let mut middle = -count * drawing.spacing;
    while middle <= end {
        let points = rectangle(middle - PLY / 2.0, TOP_PLATES, middle + PLY / 2.0, header_top);
        marks.push(seen(points, Some("above")));
        middle += drawing.spacing;
    }
}

fn header(marks: &mut Vec<Mark>, drawing: &OpeningDrawing) {
    let bottom = drawing.wall_height - drawing.head_height;
    let top = bottom - drawing.header_depth;
    let end = drawing.opening / 2.0 + PLY * f64::from(drawing.jacks);
    marks.push(Mark::Shape {
        points: rectangle(-end, top, end, bottom),
        weight: Weight::Cut,
        ink: drawing.ink,
        washed: true,
        field: Some("size"),
    });
}

fn loads(marks: &mut Vec<Mark>, drawing: &OpeningDrawing, room: f64) {
    let end = drawing.opening / 2.0 + PLY * f64::from(drawing.jacks);
    let (tail, head) = (-room * 0.45, -room * 0.06);
    let arrows = 5_u8;
    for place in 0..arrows {
        let x = -end + 2.0 * end * f64::from(place) / f64::from(arrows - 1);
        marks.push(Mark::Arrow { from: (x, tail), to: (x, head), figure: String::new(), ink: Ink::Ink });
    }
    marks.push(Mark::Line { from: (-end, tail), to: (end, tail), weight: Weight::Fine, ink: Ink::Ink });
    marks.push(Mark::Label { at: (0.0, -room * 0.72), text: drawing.load.clone(), upright: false });
    let jack_middle = drawing.opening / 2.0 + PLY * f64::from(drawing.jacks) / 2.0;
    let (tail, head) = (drawing.wall_height + room * 0.5, drawing.wall_height + room * 0.06);
    for (x, figure) in [(-jack_middle, drawing.reaction.clone()), (jack_middle, drawing.reaction.clone())] {
        marks.push(Mark::Arrow { from: (x, tail), to: (x, head), figure, ink: Ink::Ink });
    }
}

fn figures(marks: &mut Vec<Mark>, drawing: &OpeningDrawing, half: f64, room: f64) {
    let head = drawing.wall_height - drawing.head_height;
    let jamb = drawing.opening / 2.0;
    let level = head + drawing.head_height * 0.32;
    marks.push(Mark::Dimension {
        from: (-jamb, level),
        to: (jamb, level),
        figure: drawing.opening_figure.clone(),
        field: Some("opening_width"),
    });
    let left = -half - room * 0.65;
    marks.push(Mark::Dimension {
        from: (left, drawing.wall_height),
        to: (left, head),
        figure: drawing.head_figure.clone(),
        field: Some("head_height"),
    });
    let outside = half + room * 0.65;
    marks.push(Mark::Dimension {
        from: (outside, drawing.wall_height),
        to: (outside, 0.0),
        figure: drawing.wall_figure.clone(),
        field: Some("wall_height"),
    });
}
