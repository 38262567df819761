//! The shape of one part of a house.

use measure::{Angle, Area, Length, SectionModulus, Slope};

use super::{
    Part,
    edge::{EndZone, end_zone},
    point::{Along, PlanPoint, Rectangle, Side},
    profile::Profile,
    roof::{Roof, RoofPlane},
    surface::{Pieces, RoofExtent, RoofFace, RoofLine, WallFace, wall_face},
};

/// Roof angle to which the eave height is the mean roof height: ASCE 7-16, 26.2.
const LOW_SLOPE: Angle = Angle::from_degrees(10.0);

/// What wind from one side sees of a part, on an upright plane square to the wind; overhangs are left out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Projection {
    /// The wall of that side, with its gable.
    pub wall: Area,
    /// The slopes that fall to that side.
    pub roof: Area,
}

/// The shape of one part, worked out from a description that was found possible.
#[derive(Clone, Debug, PartialEq)]
pub struct PartShape {
    part: Part,
    planes: Vec<RoofPlane>,
}

impl PartShape {
    pub(super) fn new(part: Part) -> Self {
        let planes = part.roof.planes(part.eave_height());
        Self { part, planes }
    }

    /// What it was worked out from.
    #[must_use]
    pub const fn part(&self) -> &Part {
        &self.part
    }

    pub(super) fn walls(&self) -> Rectangle {
        let Part { at, length, width, .. } = self.part;
        Rectangle { low: at, high: PlanPoint::new(at.x + length, at.y + width) }
    }

    fn covered(&self, extent: RoofExtent) -> Rectangle {
        let walls = self.walls();
        if extent == RoofExtent::Walls {
            return walls;
        }
        let over = |side| self.part.roof.overhang(side, &self.part.overhangs);
        Rectangle {
            low: PlanPoint::new(walls.low.x - over(Side::Left), walls.low.y - over(Side::Front)),
            high: PlanPoint::new(walls.high.x + over(Side::Right), walls.high.y + over(Side::Back)),
        }
    }

    fn pieces(&self, extent: RoofExtent) -> Pieces<'_> {
        Pieces::new(&self.planes, self.walls(), self.covered(extent))
    }

    /// Height of the eave: of the roof surface over the outside face of the wall, the lower one of a shed roof.
    #[must_use]
    pub fn eave_height(&self) -> Length {
        self.part.eave_height()
    }

    /// Height of the highest point of the roof.
    #[must_use]
    pub fn ridge_height(&self) -> Length {
        let corners = self.roof_faces(RoofExtent::Walls).into_iter().flat_map(|face| face.corners);
        corners.map(|corner| corner.z).fold(self.eave_height(), Length::max)
    }

    /// The steepest of its pitches; level for a flat roof.
    #[must_use]
    pub fn steepest_pitch(&self) -> Slope {
        self.part.roof.pitches().into_iter().fold(Slope::ZERO, Slope::max)
    }

    /// Mean roof height `h` (ASCE 7-16, 26.2): halfway between eave and ridge; the eave height where no slope is over
    /// 10 degrees. A shed roof has two eaves, so halfway between them is used at any slope, which is the harsher.
    #[must_use]
    pub fn mean_roof_height(&self) -> Length {
        let shed = matches!(self.part.roof, Roof::Shed { .. });
        if !shed && self.steepest_pitch().angle() <= LOW_SLOPE {
            return self.eave_height();
        }
        (self.eave_height() + self.ridge_height()) * 0.5
    }

    /// The lesser of length and width.
    #[must_use]
    pub const fn least_plan_dimension(&self) -> Length {
        self.part.length.min(self.part.width)
    }

    /// End zone of this part by itself.
    #[must_use]
    pub fn end_zone(&self) -> EndZone {
        end_zone(self.least_plan_dimension(), self.mean_roof_height())
    }

    /// Ground that the walls enclose.
    #[must_use]
    pub fn plan_area(&self) -> Area {
        self.part.length * self.part.width
    }

    /// Room from the ground to the roof, in cubic inches.
    #[must_use]
    pub fn volume(&self) -> SectionModulus {
        let middles = self.pieces(RoofExtent::Walls).middles();
        middles.into_iter().fold(SectionModulus::ZERO, |sum, (area, height)| sum + area * height)
    }

    /// Height of the roof surface at a point of the plan; none beside the walls.
    #[must_use]
    pub fn height_at(&self, point: PlanPoint) -> Option<Length> {
        let walls = self.walls();
        let heights = self.planes.iter().map(|plane| plane.height(&walls, point));
        if walls.holds(point) { heights.reduce(Length::min) } else { None }
    }

    /// The four corners of the walls on the plan, counter-clockwise from the front left.
    #[must_use]
    pub fn plan_corners(&self) -> [PlanPoint; 4] {
        self.walls().corners()
    }

    /// The slopes of its roof.
    #[must_use]
    pub fn roof_faces(&self, extent: RoofExtent) -> Vec<RoofFace> {
        self.pieces(extent).faces()
    }

    /// Ridges, hips, eaves, rakes and breaks of its roof.
    #[must_use]
    pub fn roof_lines(&self, extent: RoofExtent) -> Vec<RoofLine> {
        self.pieces(extent).lines()
    }

    /// Its wall on a side.
    #[must_use]
    pub fn wall(&self, side: Side) -> WallFace {
        let top = self.pieces(RoofExtent::Walls).wall_top(side);
        wall_face(side, top, &self.walls(), self.eave_height())
    }

    /// What wind from a side sees.
    #[must_use]
    pub fn projection(&self, from: Side) -> Projection {
        let facing = self.roof_faces(RoofExtent::Walls).into_iter().filter(|face| face.falls_to == from);
        Projection { wall: self.wall(from).area, roof: facing.map(|face| face.upright_area).sum() }
    }

    /// Its upper edge as it is seen from a side; the body is convex, so it is the hull of its corners.
    #[must_use]
    pub fn seen_from(&self, side: Side) -> Profile {
        let corners = self.roof_faces(RoofExtent::Walls).into_iter().flat_map(|face| face.corners);
        Profile::over(corners.map(|corner| (side.position(corner.plan()), corner.z)).collect())
    }

    /// The direction of its ridge; none where the roof has no ridge between two slopes.
    #[must_use]
    pub fn ridge_along(&self) -> Option<Along> {
        match self.part.roof {
            Roof::Gable { ridge, .. } | Roof::Gambrel { ridge, .. } => Some(ridge),
            Roof::Hip { front_and_back, left_and_right } => {
                // The higher of the two pairs, were it alone, is cut off by the other: the ridge is the lower pair's.
                let rise_of_front = self.part.width.inches() * front_and_back.rise_in_twelve();
                let rise_of_left = self.part.length.inches() * left_and_right.rise_in_twelve();
                match rise_of_front.total_cmp(&rise_of_left) {
                    core::cmp::Ordering::Less => Some(Along::Length),
                    core::cmp::Ordering::Greater => Some(Along::Width),
                    core::cmp::Ordering::Equal => None,
                }
            }
            Roof::Shed { .. } | Roof::Flat => None,
        }
    }
}
