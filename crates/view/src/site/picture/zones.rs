//! Wind on parts: the zones of the front slope and of the walls, to scale, each with its number and its pull.

use framing::site::DrawnHouse;
use framing::site::reply::{PressureReply, WindReply};

use super::Feet;
use super::solid::{Point, at, corners, outlines, pen};
use crate::pen::{Pen, outline};
use crate::scene::{Ink, Scene, Weight};
use crate::site::answer::whole;

/// Pulls over this share of the hardest are washed as the hardest, and over that one as hard.
const HARDEST: f64 = 0.85;
const HARD: f64 = 0.6;

/// The zones of the roof and the walls.
pub(super) fn picture(house: &DrawnHouse, wind: &WindReply) -> Scene {
    let feet = Feet::of(house);
    let mut pen = pen(&feet);
    pen.margin(92.0, 30.0, 14.0);
    outlines(&mut pen, &feet);
    let roof: Vec<&PressureReply> = wind.pressures.iter().filter(|one| one.part == "roof").collect();
    let walls: Vec<&PressureReply> = wind.pressures.iter().filter(|one| one.part == "wall").collect();
    let most = roof.iter().chain(&walls).map(|one| one.outward_psf).fold(0.0, f64::max);
    let pull =
        |zones: &[&PressureReply], zone: &str| zones.iter().find(|one| one.zone == zone).map(|one| one.outward_psf);
    let on_roof = if has_flat_zones(&roof) { flat_zones(&feet) } else { slope_zones(&feet) };
    for (zone, shape) in on_roof {
        if let Some(pull) = pull(&roof, zone) {
            wash(&mut pen, &shape, pull, most);
        }
    }
    for (zone, shape) in wall_zones(&feet) {
        if let Some(pull) = pull(&walls, zone) {
            wash(&mut pen, &shape, pull, most);
        }
    }
    labels(&mut pen, &feet, &|zone| pull(&roof, zone), &|zone| pull(&walls, zone));
    pen.scene(alt(&roof, &walls))
}

fn wash(pen: &mut Pen, shape: &[Point], pull: f64, most: f64) {
    let ink = match pull / most {
        share if share >= HARDEST => Ink::Short,
        share if share >= HARD => Ink::AtLimit,
        _ => Ink::Ink,
    };
    if ink == Ink::Ink {
        outline(pen, &corners(shape), Weight::Fine, ink);
    } else {
        pen.shape(corners(shape), Weight::Fine, ink, true);
    }
}

/// A point of the front slope: along the ridge in feet, and its share of the way up.
fn on_slope(house: &Feet, x: f64, up: f64) -> Point {
    (x, house.width / 2.0 * up, house.eave + (house.ridge - house.eave) * up)
}

/// Whether the roof has the zones of a flat one.
fn has_flat_zones(roof: &[&PressureReply]) -> bool {
    roof.iter().any(|one| one.zone == "1'")
}

/// The zones of a flat roof: corners in the shape of an L, a strip along each edge, the strip behind it, the middle. A
/// roof that is nearly flat is drawn as if it were.
fn flat_zones(house: &Feet) -> Vec<(&'static str, Vec<Point>)> {
    let (length, width) = (house.length, house.width);
    let [corner, edge, inner] = house.flat.map(|wide| wide.min(width / 2.0).min(length / 2.0));
    let rectangle = |x: (f64, f64), y: (f64, f64)| {
        [(x.0, y.0), (x.1, y.0), (x.1, y.1), (x.0, y.1)].map(|(x, y)| (x, y, house.eave)).to_vec()
    };
    let mut zones = vec![
        ("1'", rectangle((inner, length - inner), (inner, width - inner))),
        ("1", rectangle((edge, length - edge), (edge, inner))),
        ("1", rectangle((edge, length - edge), (width - inner, width - edge))),
        ("1", rectangle((edge, inner), (inner, width - inner))),
        ("1", rectangle((length - inner, length - edge), (inner, width - inner))),
        ("2", rectangle((edge, length - edge), (0.0, edge))),
        ("2", rectangle((edge, length - edge), (width - edge, width))),
        ("2", rectangle((0.0, edge), (edge, width - edge))),
        ("2", rectangle((length - edge, length), (edge, width - edge))),
    ];
    let ends = |far: bool, whole: f64, from: f64, to: f64| if far { (whole - to, whole - from) } else { (from, to) };
    for (right, back) in [(false, false), (true, false), (false, true), (true, true)] {
        let across = |from, to| ends(right, length, from, to);
        let deep = |from, to| ends(back, width, from, to);
        zones.push(("3", rectangle(across(0.0, edge), deep(0.0, corner))));
        zones.push(("3", rectangle(across(0.0, corner), deep(corner, edge))));
        zones.push(("2", rectangle(across(corner, edge), deep(corner, edge))));
    }
    zones.retain(|(_, shape)| is_open(shape));
    zones
}

/// Whether a shape has any area.
fn is_open(shape: &[Point]) -> bool {
    const LEAST: f64 = 0.05;
    let wide = |pick: fn(&Point) -> f64| {
        let values = shape.iter().map(pick);
        values.clone().fold(f64::MIN, f64::max) - values.fold(f64::MAX, f64::min)
    };
    wide(|point| point.0) > LEAST && wide(|point| point.1) > LEAST
}

/// The zones of the front slope: a strip along each edge, as wide on the level.
fn slope_zones(house: &Feet) -> Vec<(&'static str, Vec<Point>)> {
    let (a, length) = (house.zone.min(house.length / 2.0), house.length);
    let up = (a / (house.width / 2.0)).min(0.5);
    if house.is_hip {
        return hip_zones(house, a, up);
    }
    let part = |x0: f64, x1: f64, low: f64, high: f64| {
        [(x0, low), (x1, low), (x1, high), (x0, high)].map(|(x, up)| on_slope(house, x, up)).to_vec()
    };
    let mut zones = Vec::new();
    for (from, to, [low, mid, high]) in
        [(0.0, a, ["3e", "2n", "3r"]), (a, length - a, ["2e", "1", "2r"]), (length - a, length, ["3e", "2n", "3r"])]
    {
        zones.push((low, part(from, to, 0.0, up)));
        zones.push((mid, part(from, to, up, 1.0 - up)));
        zones.push((high, part(from, to, 1.0 - up, 1.0)));
    }
    zones
}

/// A hip's front slope: the eave with its corners, and what is left, whose hips and ridge pull as 2r.
fn hip_zones(house: &Feet, a: f64, up: f64) -> Vec<(&'static str, Vec<Point>)> {
    let (run, length) = (house.hip_run(), house.length);
    let edge = |up: f64| run * up;
    let inner = |up: f64| edge(up) + a;
    let quad = |points: [(f64, f64); 4]| points.map(|(x, up)| on_slope(house, x, up)).to_vec();
    let right = |x: f64| length - x;
    vec![
        ("3", quad([(0.0, 0.0), (a, 0.0), (edge(up) + a, up), (edge(up), up)])),
        ("2e", quad([(a, 0.0), (right(a), 0.0), (right(inner(up)), up), (inner(up), up)])),
        ("3", quad([(right(0.0), 0.0), (right(a), 0.0), (right(edge(up) + a), up), (right(edge(up)), up)])),
        ("2r", quad([(edge(up), up), (inner(up), up), (inner(1.0 - up), 1.0 - up), (edge(1.0 - up), 1.0 - up)])),
        (
            "2r",
            quad([
                (right(edge(up)), up),
                (right(inner(up)), up),
                (right(inner(1.0 - up)), 1.0 - up),
                (right(edge(1.0 - up)), 1.0 - up),
            ]),
        ),
        (
            "1",
            quad([
                (inner(up), up),
                (right(inner(up)), up),
                (right(inner(1.0 - up)), 1.0 - up),
                (inner(1.0 - up), 1.0 - up),
            ]),
        ),
        (
            "2r",
            quad([
                (edge(1.0 - up), 1.0 - up),
                (right(edge(1.0 - up)), 1.0 - up),
                (right(edge(1.0)), 1.0),
                (edge(1.0), 1.0),
            ]),
        ),
    ]
}

/// The zones of the front wall and of the end wall, below the eave.
fn wall_zones(house: &Feet) -> Vec<(&'static str, Vec<Point>)> {
    let (a, eave) = (house.zone, house.eave);
    let front = |from: f64, to: f64| vec![(from, 0.0, 0.0), (to, 0.0, 0.0), (to, 0.0, eave), (from, 0.0, eave)];
    let length = house.length;
    let end =
        |from: f64, to: f64| vec![(length, from, 0.0), (length, to, 0.0), (length, to, eave), (length, from, eave)];
    let (a_front, a_end) = (a.min(length / 2.0), a.min(house.width / 2.0));
    vec![
        ("5", front(0.0, a_front)),
        ("4", front(a_front, length - a_front)),
        ("5", front(length - a_front, length)),
        ("5", end(0.0, a_end)),
        ("4", end(a_end, house.width - a_end)),
        ("5", end(house.width - a_end, house.width)),
    ]
}

/// What a zone is called, and how hard it is pulled.
fn name(zone: &str, pull: f64) -> String {
    format!("{zone}: −{}", whole(pull))
}

fn labels(pen: &mut Pen, house: &Feet, roof: &dyn Fn(&str) -> Option<f64>, walls: &dyn Fn(&str) -> Option<f64>) {
    let Feet { length, eave, zone, .. } = *house;
    let down = pen.paper(6.0);
    let mut inside = |point: Point, zone: &str, pull: Option<f64>| {
        if let Some(pull) = pull {
            let (x, y) = at(point);
            pen.label((x, y + down), &name(zone, pull));
        }
    };
    inside((length / 2.0, 0.0, eave / 2.0), "4", walls("4"));
    if roof("1'").is_some() {
        let [corner, edge, inner] = house.flat.map(|wide| wide.min(house.width / 2.0));
        if inner * 2.0 < house.width {
            inside((length / 2.0, house.width / 2.0, eave), "1'", roof("1'"));
        }
        let far = |deep: f64| house.width - deep;
        let edges = [
            ("3", roof("3"), (edge / 2.0, far(corner / 2.0), eave)),
            ("1", roof("1"), (f64::midpoint(edge, inner), far(f64::midpoint(edge, inner)), eave)),
            ("2", roof("2"), (edge / 2.0, house.width / 2.0, eave)),
            ("5", walls("5"), (zone / 2.0, 0.0, eave / 2.0)),
        ];
        beside(pen, &edges);
        return;
    }
    inside(on_slope(house, length / 2.0, 0.5), "1", roof("1"));
    let up = (zone / house.width).min(0.25);
    let over_ridge = at(on_slope(house, length / 2.0, 1.0));
    if let Some(pull) = roof("2r") {
        let lift = pen.paper(10.0);
        pen.label((over_ridge.0, over_ridge.1 - lift), &name("2r", pull));
    }
    if let Some(pull) = roof("2e") {
        let point = at((length / 2.0, 0.0, eave));
        let below = pen.paper(16.0);
        let eave_strip = at(on_slope(house, length / 2.0, up));
        pen.line(eave_strip, (point.0, point.1 + below * 0.3), Weight::Fine, Ink::Ink);
        pen.label((point.0, point.1 + below), &name("2e", pull));
    }
    let edge = |up: f64| on_slope(house, zone / 2.0 + house.hip_run() * up, up);
    let mut edges = if house.is_hip {
        vec![("3", roof("3"), edge(up))]
    } else {
        vec![("3r", roof("3r"), edge(1.0 - up)), ("2n", roof("2n"), edge(0.5)), ("3e", roof("3e"), edge(up))]
    };
    edges.push(("5", walls("5"), (zone / 2.0, 0.0, eave / 2.0)));
    beside(pen, &edges);
}

/// Names beside the left edge, with a line to a point of each.
fn beside(pen: &mut Pen, edge: &[(&str, Option<f64>, Point)]) {
    let (reach, high, clear) = (pen.paper(48.0), pen.paper(22.0), pen.paper(4.0));
    let mut lowest = f64::MIN;
    for (zone, pull, point) in edge {
        let Some(pull) = pull else { continue };
        let (x, y) = at(*point);
        let left = at((0.0, 0.0, 0.0)).0;
        // Two names never lie on each other.
        let level = y.max(lowest + high);
        lowest = level;
        pen.line((x, y), (left - clear, level - clear), Weight::Fine, Ink::Ink);
        pen.label((left - reach, level), &name(zone, *pull));
    }
}

fn alt(roof: &[&PressureReply], walls: &[&PressureReply]) -> String {
    let list = |of: &[&PressureReply]| {
        of.iter()
            .map(|one| format!("zone {}, {}, {}", one.zone, one.place, whole(one.outward_psf)))
            .collect::<Vec<_>>()
            .join("; ")
    };
    let mut alt = "The house with its zones, pull in psf at allowable stress.".to_owned();
    if !roof.is_empty() {
        alt.push_str(&format!(" Roof: {}.", list(roof)));
    }
    alt.push_str(&format!(" Walls: {}.", list(walls)));
    alt
}
