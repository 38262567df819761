//! Cuts that follow from a corner: jacks, cheeks, sheathing, purlins, fascia, and what backing or dropping takes off.

use measure::{Angle, Length};

use super::corner::Corner;
use super::cut::{Cut, Under};
use super::plane::{Side, Sides, stretch};

/// A hip lowered and moved sideways, so that both of its square corners touch their planes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DropAndSlide {
    /// Plumb, down.
    pub drop: Length,
    /// Level, toward side B; below zero toward A. It moves away from the side that falls faster across it.
    pub toward_b: Length,
}

impl Corner {
    /// Plumb cut of the hip or valley with its cheek against a ridge, beam or wall that runs along one eave.
    #[must_use]
    pub fn cheek(&self, side: Side) -> Cut {
        Cut::by_plane(Under::Side, self.line, self.across(), self.inward.of(side))
    }

    /// The same cut seen on the square top edge.
    #[must_use]
    pub fn cheek_on_top(&self, side: Side) -> Cut {
        Cut::by_plane(Under::TopEdge, self.line, self.top(), self.inward.of(side))
    }

    /// Line of the same cut on a top that is already backed to that side's plane.
    #[must_use]
    pub fn cheek_on_backed(&self, side: Side) -> Cut {
        Cut::by_plane(Under::RoofFace, self.line, self.normals.of(side), self.inward.of(side))
    }

    /// Cut of a jack of one side against the hip or valley, on the jack's side: its own plumb cut, the blade tilted by
    /// the plan angle itself.
    #[must_use]
    pub fn jack(&self, side: Side) -> Cut {
        Cut::by_plane(Under::Side, self.jack_axis(side), self.eaves.of(side), self.across())
    }

    /// The same cut with the saw on the jack's top edge, for blades that do not tilt so far.
    #[must_use]
    pub fn jack_on_top(&self, side: Side) -> Cut {
        Cut::by_plane(Under::TopEdge, self.jack_axis(side), self.normals.of(side), self.across())
    }

    /// Cut of sheathing along the hip or valley; its axis is the eave. [`Cut::from_axis`] is the angle at the eave
    /// edge.
    #[must_use]
    pub fn sheathing(&self, side: Side) -> Cut {
        Cut::by_plane(Under::RoofFace, self.eaves.of(side), self.normals.of(side), self.across())
    }

    /// Blade tilt of two sheets that meet in a true mitre.
    #[must_use]
    pub fn sheathing_mitre(&self) -> Angle {
        (self.backing(Side::A) + self.backing(Side::B)) / 2.0
    }

    /// Cut of a purlin, or of a fascia square to the rafters, on the face that stands square to the roof.
    #[must_use]
    pub fn purlin(&self, side: Side) -> Cut {
        Cut::by_plane(Under::SquareFace, self.eaves.of(side), self.jack_axis(side), self.across())
    }

    /// Cut of a plumb fascia or frieze in the plane of the hip or valley.
    #[must_use]
    pub fn plumb_fascia(&self, side: Side) -> Cut {
        Cut::by_plane(Under::PlumbFace, self.eaves.of(side), self.inward.of(side), self.across())
    }

    /// Blade tilt of two plumb, level fascias that meet in equal mitres. Where pitches are unequal it is not that of
    /// [`Corner::plumb_fascia`]: the tail is then cut to fit.
    #[must_use]
    pub fn fascia_mitre(&self) -> Angle {
        Angle::from_degrees(90.0) - self.angle() / 2.0
    }

    /// Step in length from one jack of a side to the next.
    #[must_use]
    pub fn common_difference(&self, side: Side, spacing: Length) -> Length {
        self.jack_run(side, spacing) * stretch(self.pitch(side))
    }

    /// Level run of a jack that stands so far from the corner along its eave.
    #[must_use]
    pub fn jack_run(&self, side: Side, along_eave: Length) -> Length {
        along_eave * self.plan_angle(side).tan()
    }

    /// What the thickness of the hip or valley takes off a jack, level.
    #[must_use]
    pub fn jack_shortening(&self, side: Side, thickness: Length) -> Length {
        thickness / 2.0 / self.plan_angle(side).cos()
    }

    /// What a ridge or beam that runs along one eave takes off the hip or valley, level along it: half of its thickness
    /// on the slant.
    #[must_use]
    pub fn ridge_shortening(&self, side: Side, thickness: Length) -> Length {
        thickness / 2.0 / self.plan_angle(side).sin()
    }

    /// How far an unbacked hip of this thickness, centred on its line, is lowered so that the corner of one side lies
    /// in its plane. Lowered by the larger, the other corner of an unequal hip stays low.
    #[must_use]
    pub fn drop(&self, thickness: Length) -> Sides<Length> {
        Sides::each(|side| thickness / 2.0 * self.fall(side))
    }

    /// Lowered and moved sideways, so that both corners touch.
    #[must_use]
    pub fn drop_and_slide(&self, thickness: Length) -> DropAndSlide {
        let (a, b) = (self.fall(Side::A), self.fall(Side::B));
        let half = thickness / 2.0;
        DropAndSlide { drop: thickness * (a * b / (a + b)), toward_b: half * ((a - b) / (a + b)) }
    }

    /// What backing takes off (hip) or leaves standing (valley) at a side face, square to the edge.
    #[must_use]
    pub fn backing_depth(&self, thickness: Length) -> Sides<Length> {
        Sides::each(|side| thickness / 2.0 * self.backing(side).tan())
    }
}
