//! The shape of a house of one part or more.

use measure::{Angle, Area, Length, SectionModulus};

use super::{
    edge::{EndZone, end_zone},
    part_shape::PartShape,
    point::{Along, PlanPoint, Rectangle, Side, TOUCHING, azimuth},
    profile::{area_under_both, area_under_highest},
};

/// Plan dimensions of a house for a direction of wind: of the rectangle around all parts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlanDimensions {
    /// `L`: along the wind.
    pub along_wind: Length,
    /// `B`: across the wind.
    pub across_wind: Length,
}

/// The shape of a house. Its parts do not overlap.
#[derive(Clone, Debug, PartialEq)]
pub struct HouseShape {
    parts: Vec<PartShape>,
    front_faces: Angle,
    around: Rectangle,
}

impl HouseShape {
    pub(super) fn new(parts: Vec<PartShape>, front_faces: Angle) -> Self {
        let empty = Rectangle { low: PlanPoint::ORIGIN, high: PlanPoint::ORIGIN };
        let around = parts.iter().map(PartShape::walls).reduce(|a, b| a.around(&b)).unwrap_or(empty);
        Self { parts, front_faces, around }
    }

    /// Its parts, the main part first.
    #[must_use]
    pub fn parts(&self) -> &[PartShape] {
        &self.parts
    }

    /// Mean roof height: the greatest of the parts', which is the harsher for all of them.
    #[must_use]
    pub fn mean_roof_height(&self) -> Length {
        self.parts.iter().map(PartShape::mean_roof_height).fold(Length::ZERO, Length::max)
    }

    /// Height of the highest point of all roofs.
    #[must_use]
    pub fn ridge_height(&self) -> Length {
        self.parts.iter().map(PartShape::ridge_height).fold(Length::ZERO, Length::max)
    }

    /// The lesser side of the rectangle around all parts; for a house with wings it is more than a part's, so that the
    /// edge strips are wider.
    #[must_use]
    pub fn least_plan_dimension(&self) -> Length {
        self.around.size(Along::Length).min(self.around.size(Along::Width))
    }

    /// Plan dimensions for wind from a side.
    #[must_use]
    pub fn plan_dimensions(&self, wind_from: Side) -> PlanDimensions {
        let along = [self.around.size(Along::Length), self.around.size(Along::Width)];
        let [across_wind, along_wind] = match wind_from.runs() {
            Along::Length => along,
            Along::Width => [along[1], along[0]],
        };
        PlanDimensions { along_wind, across_wind }
    }

    /// Edge strips of the whole house.
    #[must_use]
    pub fn end_zone(&self) -> EndZone {
        end_zone(self.least_plan_dimension(), self.mean_roof_height())
    }

    /// Where a side faces, clockwise from north: 0 up to 360 degrees. Wind from a side comes from there.
    #[must_use]
    pub fn azimuth(&self, side: Side) -> Angle {
        azimuth(self.front_faces, side)
    }

    /// The direction of a part's ridge, clockwise from north: 0 up to 180 degrees. None without such a part or ridge.
    #[must_use]
    pub fn ridge_azimuth(&self, part: usize) -> Option<Angle> {
        let side = match self.parts.get(part)?.ridge_along()? {
            Along::Length => Side::Right,
            Along::Width => Side::Front,
        };
        Some(Angle::from_degrees(self.azimuth(side).degrees().rem_euclid(180.0)))
    }

    /// What wind from a side sees of the whole house: parts behind others count once.
    #[must_use]
    pub fn silhouette(&self, wind_from: Side) -> Area {
        let profiles: Vec<_> = self.parts.iter().map(|part| part.seen_from(wind_from)).collect();
        area_under_highest(&profiles)
    }

    /// Area of a part's wall that is outdoors: without what a part beside it covers. None without such a part.
    #[must_use]
    pub fn wall_outdoors(&self, part: usize, side: Side) -> Option<Area> {
        let this = self.parts.get(part)?;
        let wall = this.wall(side);
        let line = |shape: &PartShape, side: Side| shape.walls().ends(side)[0];
        let beside = |other: &&PartShape| {
            let (here, there) = (line(this, side), line(other, side.opposite()));
            let gap = if side.runs() == Along::Length { here.y - there.y } else { here.x - there.x };
            gap.abs() < TOUCHING && this.walls().shared(&other.walls(), side.runs()) > Length::ZERO
        };
        let covered = self.parts.iter().filter(beside);
        let covered: Area = covered.map(|other| area_under_both(&wall.top, &other.wall(side.opposite()).top)).sum();
        Some(wall.area - covered)
    }

    /// Height of the highest roof surface at a point of the plan; none beside the house.
    #[must_use]
    pub fn height_at(&self, point: PlanPoint) -> Option<Length> {
        self.parts.iter().filter_map(|part| part.height_at(point)).reduce(Length::max)
    }

    /// Room from the ground to the roofs, in cubic inches.
    #[must_use]
    pub fn volume(&self) -> SectionModulus {
        self.parts.iter().fold(SectionModulus::ZERO, |sum, part| sum + part.volume())
    }
}
