//! The faces and lines of a part's surface.

use measure::{Area, Length, Slope};

use super::{
    point::{PlanPoint, Point, Rectangle, Side},
    polygon::{Border, Corner, area_and_centroid, piece},
    profile::Profile,
    roof::{RoofPlane, rise},
};

/// How much of a roof is meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RoofExtent {
    /// What lies over the walls: it closes the body of the house.
    Walls,
    /// With the overhangs.
    Overhangs,
}

/// One slope of a roof.
#[derive(Clone, Debug, PartialEq)]
pub struct RoofFace {
    /// The side that it falls to; the front for a flat roof.
    pub falls_to: Side,
    /// Its pitch.
    pub pitch: Slope,
    /// Its corners, counter-clockwise from above.
    pub corners: Vec<Point>,
    /// Its area along the slope.
    pub area: Area,
    /// Its area on the level.
    pub plan_area: Area,
    /// Its area on an upright plane square to its fall: what wind from the side that it falls to sees.
    pub upright_area: Area,
}

/// A wall, from the ground to the roof.
#[derive(Clone, Debug, PartialEq)]
pub struct WallFace {
    /// Its side.
    pub side: Side,
    /// Its corners, counter-clockwise from outside.
    pub corners: Vec<Point>,
    /// Its top: places along the plan's `x` or `y`, and heights.
    pub top: Profile,
    /// Its area, openings and all.
    pub area: Area,
    /// What of the area is above the eave height: the gable, or the wedge under a shed roof.
    pub above_eave: Area,
}

/// Kind of line where two faces of a roof meet, or where a roof ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RoofLineKind {
    /// Level, with the roof falling from it: between two slopes, or the high end of a shed roof.
    Ridge,
    /// Between two slopes, falling.
    Hip,
    /// Level, where a slope turns steeper: of a gambrel roof.
    PitchBreak,
    /// The level lower end of a slope; any end of a flat roof.
    Eave,
    /// The sloping end of a slope.
    Rake,
}

/// A line of a roof. One rectangle has no valley.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoofLine {
    /// Its kind.
    pub kind: RoofLineKind,
    /// One end.
    pub from: Point,
    /// The other end.
    pub to: Point,
}

impl RoofLine {
    /// Its true length.
    #[must_use]
    pub fn length(&self) -> Length {
        let (x, y, z) = (self.to.x - self.from.x, self.to.y - self.from.y, self.to.z - self.from.z);
        Length::from_inches((x * x + y * y + z * z).square_inches().sqrt())
    }
}

/// Heights closer than this are the same: far above the last bits of the arithmetic, far below a mark of the tape.
const LEVEL: Length = Length::from_inches(1e-6);

/// A roof cut into its pieces.
pub(super) struct Pieces<'a> {
    planes: &'a [RoofPlane],
    walls: Rectangle,
    pieces: Vec<Vec<Corner>>,
}

impl<'a> Pieces<'a> {
    /// The pieces over `covered`.
    pub fn new(planes: &'a [RoofPlane], walls: Rectangle, covered: Rectangle) -> Self {
        let pieces = (0..planes.len()).map(|index| piece(planes, index, &walls, &covered)).collect();
        Self { planes, walls, pieces }
    }

    fn point(&self, plane: usize, at: PlanPoint) -> Point {
        at.at_height(self.planes[plane].height(&self.walls, at))
    }

    /// Each piece as a face.
    pub fn faces(&self) -> Vec<RoofFace> {
        let indexed = self.pieces.iter().enumerate();
        indexed.filter(|(_, piece)| !piece.is_empty()).map(|(index, piece)| self.face(index, piece)).collect()
    }

    fn face(&self, index: usize, piece: &[Corner]) -> RoofFace {
        let RoofPlane { falls_to, pitch, .. } = self.planes[index];
        let plan: Vec<_> = piece.iter().map(|corner| corner.at).collect();
        let (plan_area, _) = area_and_centroid(&plan);
        let rise = rise(pitch);
        RoofFace {
            falls_to,
            pitch,
            corners: plan.iter().map(|&at| self.point(index, at)).collect(),
            area: plan_area * (1.0 + rise * rise).sqrt(),
            plan_area,
            upright_area: plan_area * rise,
        }
    }

    /// Each piece's plan area with the height of its middle: the room under it is their product.
    pub fn middles(&self) -> Vec<(Area, Length)> {
        let middle = |(index, piece): (usize, &Vec<Corner>)| {
            let plan: Vec<_> = piece.iter().map(|corner| corner.at).collect();
            let (area, centroid) = area_and_centroid(&plan);
            (area, self.planes[index].height(&self.walls, centroid))
        };
        self.pieces.iter().enumerate().map(middle).collect()
    }

    /// Every edge once, with the plane that it belongs to.
    fn edges(&self) -> impl Iterator<Item = (usize, Border, PlanPoint, PlanPoint)> + '_ {
        self.pieces.iter().enumerate().flat_map(|(index, piece)| {
            piece.iter().enumerate().filter_map(move |(corner, here)| {
                let next = piece[(corner + 1) % piece.len()].at;
                let twice = matches!(here.border, Border::Plane(other) if other < index);
                (!twice).then_some((index, here.border, here.at, next))
            })
        })
    }

    /// The lines of the roof.
    pub fn lines(&self) -> Vec<RoofLine> {
        self.edges()
            .map(|(plane, border, from, to)| {
                let (from, to) = (self.point(plane, from), self.point(plane, to));
                RoofLine { kind: self.kind(plane, border, (from.z - to.z).abs() < LEVEL), from, to }
            })
            .collect()
    }

    fn kind(&self, plane: usize, border: Border, level: bool) -> RoofLineKind {
        let RoofPlane { falls_to, pitch, .. } = self.planes[plane];
        match border {
            Border::Plane(_) if !level => RoofLineKind::Hip,
            Border::Plane(other) if self.planes[other].falls_to == falls_to => RoofLineKind::PitchBreak,
            Border::Plane(_) => RoofLineKind::Ridge,
            Border::Side(side) if level && side == falls_to.opposite() && pitch > Slope::ZERO => RoofLineKind::Ridge,
            Border::Side(_) if level => RoofLineKind::Eave,
            Border::Side(_) => RoofLineKind::Rake,
        }
    }

    /// The top of the wall on a side, where the pieces end over it.
    pub fn wall_top(&self, side: Side) -> Profile {
        let on_side = self.edges().filter(|&(_, border, ..)| border == Border::Side(side));
        let ends = on_side.flat_map(|(plane, _, from, to)| [self.point(plane, from), self.point(plane, to)]);
        Profile::new(ends.map(|point| (side.position(point.plan()), point.z)).collect())
    }
}

/// The wall under a top.
pub(super) fn wall_face(side: Side, top: Profile, walls: &Rectangle, eave: Length) -> WallFace {
    let [start, end] = walls.ends(side);
    let on_line = |u: Length| match side {
        Side::Front | Side::Back => PlanPoint::new(u, start.y),
        Side::Left | Side::Right => PlanPoint::new(start.x, u),
    };
    let mut upper: Vec<_> = top.heights().iter().map(|&(u, z)| on_line(u).at_height(z)).collect();
    // The top goes back from the wall's end to its start.
    if side.position(end) > side.position(start) {
        upper.reverse();
    }
    let mut corners = vec![start.at_height(Length::ZERO), end.at_height(Length::ZERO)];
    corners.extend(upper);
    let (area, above_eave) = (top.area_above(Length::ZERO), top.area_above(eave));
    WallFace { side, corners, top, area, above_eave }
}
