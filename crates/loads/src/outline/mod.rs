//! What a house looks like from outside: one or more rectangles with their storeys and roofs, and what follows exactly.
//!
//! What is here: the description ([`HouseOutline`], [`Part`], [`Roof`]), its check ([`OutlineError`]), the shape of one
//! part ([`PartShape`]) and of the house ([`HouseShape`]), with corners as points for a picture.
//!
//! A plan is seen from above with its front at the bottom: `x` runs along the front to the right, `y` to the back.
//! Heights are above the ground. A roof is taken as a surface without thickness; it passes over the outside face of a
//! wall at the eave height.
//!
//! *Invariant*: nothing is rounded and nothing is taken that was not given. Overhangs are no part of the closed body;
//! what includes them says so. Where the roof of one part runs into another's is not worked: each part has its own
//! roof.

mod edge;
mod error;
mod house_shape;
mod part_shape;
mod point;
mod polygon;
mod profile;
mod roof;
mod surface;
mod validate;

pub use edge::{END_ZONE, EndZone, end_zone};
pub use error::OutlineError;
pub use house_shape::{HouseShape, PlanDimensions};
pub use part_shape::{PartShape, Projection};
pub use point::{Along, PlanPoint, Point, Side};
pub use profile::Profile;
pub use roof::{Overhangs, Roof};
pub use surface::{RoofExtent, RoofFace, RoofLine, RoofLineKind, WallFace};

use measure::{Angle, Length};

/// One storey of wall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Storey {
    /// Depth of the floor under it: joists and deck. None on a slab.
    pub floor_depth: Length,
    /// Height of its wall, from the floor to the top of the plates.
    pub wall_height: Length,
}

/// How the height of the eave is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum EaveHeight {
    /// Measured: from the ground to the roof surface over the outside face of the wall.
    Measured(Length),
    /// From the storeys: the foundation, each floor and wall, and the heel.
    FromStoreys {
        /// From the ground to the underside of the lowest floor, or to the top of the slab.
        foundation: Length,
        /// From the top of the plates up to the roof surface over the outside face of the wall.
        heel: Length,
    },
}

/// A rectangle of a house, with its roof.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Its front left corner on the plan.
    pub at: PlanPoint,
    /// Its size along the front.
    pub length: Length,
    /// Its size from front to back.
    pub width: Length,
    /// Its storeys, the lowest first.
    pub storeys: Vec<Storey>,
    /// Where the eave is; the lower one of a shed roof.
    pub eave: EaveHeight,
    /// Its roof.
    pub roof: Roof,
    /// How far the roof reaches beyond the walls.
    pub overhangs: Overhangs,
}

/// How the walls of a building close it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Walls {
    /// All around.
    Closed,
    /// One side or more without a wall: a carport, an open porch. Refused.
    OpenSided,
}

/// What a house looks like from outside.
#[derive(Clone, Debug, PartialEq)]
pub struct HouseOutline {
    /// The main part first, then the wings.
    pub parts: Vec<Part>,
    /// Where the front faces, clockwise from north.
    pub front_faces: Angle,
    /// How the walls close it.
    pub walls: Walls,
    /// Height of a parapet above the roof, where there is one. Refused.
    pub parapet: Option<Length>,
}

impl Part {
    /// Height of the eave above the ground.
    #[must_use]
    pub fn eave_height(&self) -> Length {
        match self.eave {
            EaveHeight::Measured(height) => height,
            EaveHeight::FromStoreys { foundation, heel } => foundation + self.storeys_height() + heel,
        }
    }

    /// Height of all its floors and walls.
    fn storeys_height(&self) -> Length {
        self.storeys.iter().map(|storey| storey.floor_depth + storey.wall_height).sum()
    }

    /// Its shape, worked out.
    ///
    /// # Errors
    /// A size that no wood house has, or sizes that contradict each other. The part is named as the first.
    pub fn shape(&self) -> Result<PartShape, OutlineError> {
        validate::part(0, self)?;
        Ok(PartShape::new(self.clone()))
    }
}

impl HouseOutline {
    /// Its shape, worked out.
    ///
    /// # Errors
    /// A parapet, an open side, no part, parts that overlap or stand apart, or a part as in [`Part::shape`].
    pub fn shape(&self) -> Result<HouseShape, OutlineError> {
        validate::house(self)?;
        Ok(HouseShape::new(self.parts.iter().cloned().map(PartShape::new).collect(), self.front_faces))
    }
}
