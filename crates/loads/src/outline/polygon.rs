//! Cutting a rectangle of the plan into the pieces over which each plane of a roof is the lowest.

use measure::{Area, Length};

use super::{
    point::{PlanPoint, Rectangle, Side},
    roof::RoofPlane,
};

/// What an edge of a piece borders on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Border {
    /// The rectangle's own side.
    Side(Side),
    /// Another plane, by its place in the list.
    Plane(usize),
}

/// A corner, and what the edge from it to the next borders on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Corner {
    pub at: PlanPoint,
    pub border: Border,
}

/// Edges shorter than this are no edges: the last bits of the arithmetic are smaller by far, and a saw cut larger by
/// far.
const NOTHING: Length = Length::from_inches(1e-6);

/// The piece of `covered` over which the plane is the lowest, counter-clockwise; empty where it is not.
pub(super) fn piece(planes: &[RoofPlane], index: usize, walls: &Rectangle, covered: &Rectangle) -> Vec<Corner> {
    let sides = Side::ALL.into_iter().zip(covered.corners());
    let mut corners: Vec<_> = sides.map(|(side, at)| Corner { at, border: Border::Side(side) }).collect();
    for (other, plane) in planes.iter().enumerate() {
        if other != index {
            let above = |at| planes[index].height(walls, at) - plane.height(walls, at);
            corners = cut(&corners, above, Border::Plane(other));
        }
    }
    corners
}

/// The part of a convex polygon where `above` is not positive; `above` is linear.
fn cut(corners: &[Corner], above: impl Fn(PlanPoint) -> Length, border: Border) -> Vec<Corner> {
    let mut kept = Vec::with_capacity(corners.len() + 1);
    for (index, here) in corners.iter().enumerate() {
        let next = corners[(index + 1) % corners.len()].at;
        let (from, to) = (above(here.at), above(next));
        let crossing = || {
            let share = from / (from - to);
            let between = |a: Length, b: Length| a + (b - a) * share;
            PlanPoint::new(between(here.at.x, next.x), between(here.at.y, next.y))
        };
        match (from <= Length::ZERO, to <= Length::ZERO) {
            (true, true) => kept.push(*here),
            (true, false) => kept.extend([*here, Corner { at: crossing(), border }]),
            (false, true) => kept.push(Corner { at: crossing(), ..*here }),
            (false, false) => {}
        }
    }
    without_short_edges(&kept)
}

fn without_short_edges(corners: &[Corner]) -> Vec<Corner> {
    let long = |index: usize| {
        let (a, b) = (corners[index].at, corners[(index + 1) % corners.len()].at);
        (a.x - b.x).abs().max((a.y - b.y).abs()) > NOTHING
    };
    let kept: Vec<_> = (0..corners.len()).filter(|&index| long(index)).map(|index| corners[index]).collect();
    if kept.len() < 3 { Vec::new() } else { kept }
}

/// Area and centroid of a convex polygon.
pub(super) fn area_and_centroid(corners: &[PlanPoint]) -> (Area, PlanPoint) {
    let Some(&origin) = corners.first() else { return (Area::ZERO, PlanPoint::ORIGIN) };
    let (mut area, mut x, mut y) = (Area::ZERO, Length::ZERO, Length::ZERO);
    // Weighted by each triangle's share as it is added, so that no third power of a length is needed.
    for pair in corners[1..].windows(2) {
        let &[a, b] = pair else { continue };
        let triangle = ((a.x - origin.x) * (b.y - origin.y) - (a.y - origin.y) * (b.x - origin.x)) * 0.5;
        area += triangle;
        if area > Area::ZERO {
            let share = triangle / area;
            x += ((origin.x + a.x + b.x) / 3.0 - x) * share;
            y += ((origin.y + a.y + b.y) / 3.0 - y) * share;
        }
    }
    (area, PlanPoint::new(x, y))
}
