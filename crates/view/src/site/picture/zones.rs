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
    pen.margin(66.0, 30.0, 14.0);
    outlines(&mut pen, &feet);
    let roof: Vec<&PressureReply> = wind.pressures.iter().filter(|one| one.part == "roof").collect();
    let walls: Vec<&PressureReply> = wind.pressures.iter().filter(|one| one.part == "wall").collect();
    let most = roof.iter().chain(&walls).map(|one| one.outward_psf).fold(0.0, f64::max);
    let pull =
        |zones: &[&PressureReply], zone: &str| zones.iter().find(|one| one.zone == zone).map(|one| one.outward_psf);
    if !feet.is_flat() {
        for (zone, shape) in slope_zones(&feet) {
            if let Some(pull) = pull(&roof, zone) {
                wash(&mut pen, &shape, pull, most);
            }
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
    if house.is_flat() {
        inside((length / 2.0, house.width / 2.0, eave), "1", roof("1"));
        beside(pen, house, &[("3", roof("3"), 0.9), ("2", roof("2"), 0.5), ("5", walls("5"), -0.5)]);
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
    let edge: Vec<(&str, Option<f64>, f64)> = if house.is_hip {
        vec![("3", roof("3"), up), ("5", walls("5"), -0.5)]
    } else {
        vec![("3r", roof("3r"), 1.0 - up), ("2n", roof("2n"), 0.5), ("3e", roof("3e"), up), ("5", walls("5"), -0.5)]
    };
    beside(pen, house, &edge);
}

/// Names beside the left edge, with a line to each; a share below nothing lies on the wall.
fn beside(pen: &mut Pen, house: &Feet, edge: &[(&str, Option<f64>, f64)]) {
    let (reach, high, clear) = (pen.paper(36.0), pen.paper(22.0), pen.paper(4.0));
    let mut lowest = f64::MIN;
    for (zone, pull, up) in edge {
        let Some(pull) = pull else { continue };
        let inside = house.zone / 2.0;
        let point = if *up < 0.0 {
            (inside, 0.0, house.eave * -up)
        } else if house.is_flat() {
            (inside, house.width * up, house.eave)
        } else {
            on_slope(house, inside + house.hip_run() * up, *up)
        };
        let (x, y) = at(point);
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
