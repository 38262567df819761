//! The house as a solid, seen from above a corner: the eave wall in front, the gable end to the right.

use framing::site::DrawnHouse;
use framing::site::reply::WindReply;

use super::Feet;
use crate::pen::Pen;
use crate::scene::{Ink, Mark, Scene, Weight};
use crate::site::answer::grouped;

/// A point of the house: along the ridge, across it from the front wall, up; feet.
pub(super) type Point = (f64, f64, f64);

/// Where a point falls on the sheet.
pub(super) fn at((x, y, z): Point) -> (f64, f64) {
    (0.92 * x + 0.42 * y, -0.95 * z + 0.14 * x - 0.30 * y)
}

/// Corners on the sheet.
pub(super) fn corners(points: &[Point]) -> Vec<(f64, f64)> {
    points.iter().map(|point| at(*point)).collect()
}

/// A pen for the whole house.
pub(super) fn pen(house: &Feet) -> Pen {
    let all = corners(&[
        (0.0, 0.0, 0.0),
        (house.length, 0.0, 0.0),
        (house.length, house.width, 0.0),
        (0.0, house.width, house.eave),
        (0.0, house.width / 2.0, house.ridge),
        (house.length, house.width, house.eave),
        (house.length, house.width / 2.0, house.ridge),
    ]);
    let of = |pick: fn(&(f64, f64)) -> f64| {
        let values = all.iter().map(pick);
        (values.clone().fold(f64::MAX, f64::min), values.fold(f64::MIN, f64::max))
    };
    let ((left, right), (top, bottom)) = (of(|point| point.0), of(|point| point.1));
    Pen::new((left, top), (right - left, bottom - top))
}

/// The four corners of the front slope, from the eave's left round.
pub(super) fn front_slope(house: &Feet) -> [Point; 4] {
    let (run, half) = (house.hip_run(), house.width / 2.0);
    [
        (0.0, 0.0, house.eave),
        (house.length, 0.0, house.eave),
        (house.length - run, half, house.ridge),
        (run, half, house.ridge),
    ]
}

/// Outlines of what is seen: front wall, end wall, front slope.
pub(super) fn outlines(pen: &mut Pen, house: &Feet) {
    let Feet { length, width, eave, ridge, .. } = *house;
    let wall = [(0.0, 0.0, 0.0), (length, 0.0, 0.0), (length, 0.0, eave), (0.0, 0.0, eave)];
    pen.shape(corners(&wall), Weight::Cut, Ink::Ink, false);
    let mut end = vec![(length, 0.0, 0.0), (length, width, 0.0), (length, width, eave)];
    if !house.is_hip && !house.is_flat() {
        end.push((length, width / 2.0, ridge));
    }
    end.push((length, 0.0, eave));
    pen.shape(corners(&end), Weight::Cut, Ink::Ink, false);
    if house.is_flat() {
        let top = [(0.0, 0.0, eave), (length, 0.0, eave), (length, width, eave), (0.0, width, eave)];
        pen.shape(corners(&top), Weight::Cut, Ink::Ink, false);
        return;
    }
    pen.shape(corners(&front_slope(house)), Weight::Cut, Ink::Ink, false);
    if house.is_hip {
        let end = [(length, 0.0, eave), (length, width, eave), (length - house.hip_run(), width / 2.0, ridge)];
        pen.shape(corners(&end), Weight::Cut, Ink::Ink, false);
    }
}

/// The push on the house in both directions.
pub(super) fn push(house: &DrawnHouse, wind: &WindReply) -> Scene {
    let feet = Feet::of(house);
    let mut pen = pen(&feet);
    pen.margin(84.0, 16.0, 40.0);
    outlines(&mut pen, &feet);
    let force = |direction: &str| {
        wind.push.iter().find(|push| push.governs && push.direction == direction).map(|push| grouped(push.total_lb))
    };
    let reach = pen.paper(48.0);
    let mut alt = format!("The house with its {} roof.", house.roof);
    let mid = |point: Point| at(point);
    if let Some(pounds) = force("across the ridge") {
        let to = mid((feet.length * 0.5, 0.0, feet.eave * 0.6));
        let from = (to.0 - reach * 0.5, to.1 + reach * 1.1);
        arrow(&mut pen, from, to, &format!("{pounds} lb"));
        alt.push_str(&format!(" The wind across the ridge pushes with {pounds} lb."));
    }
    if let Some(pounds) = force("along the ridge") {
        let to = mid((feet.length, feet.width * 0.5, feet.eave * 0.6));
        let from = (to.0 + reach * 0.85, to.1 + reach * 0.5);
        arrow(&mut pen, from, to, &format!("{pounds} lb"));
        alt.push_str(&format!(" The wind along the ridge pushes with {pounds} lb."));
    }
    pen.scene(alt)
}

pub(super) fn arrow(pen: &mut Pen, from: (f64, f64), to: (f64, f64), figure: &str) {
    pen.marks.push(Mark::Arrow { from, to, figure: figure.to_owned(), ink: Ink::Chalk });
}
