//! What is drawn of a layout; lengths of the real thing, words as they stand beside them.

use layout::roof::Stick;
use measure::{Angle, Length};

use super::drawn_strapping::DrawnStrapping;

/// What is drawn of a layout.
#[derive(Clone, Debug, PartialEq)]
pub enum DrawnLayout {
    /// A stick on the horses, and the same in its roof.
    Rafter(Box<DrawnRafterCut>),
    /// A hip, a valley or a jack on the horses, and its corner in plan.
    Hip(Box<DrawnHip>),
    /// A ceiling with its strips, and one row of it from the side.
    Strapping(Box<DrawnStrapping>),
}

/// A stick with its marks.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnStick {
    /// The stick.
    pub stick: Stick,
    /// Dimensions along its top edge: from and to, from the farthest point of its upper end, and the words.
    pub along_top: Vec<(Length, Length, String)>,
    /// Words at its lower end, a line each.
    pub low_end: Vec<String>,
    /// Words at its upper end.
    pub high_end: Vec<String>,
}

/// A rafter, cut and in its place.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnRafterCut {
    /// The stick.
    pub cut: DrawnStick,
    /// Level run, outer face of the plate to the middle of the ridge.
    pub run: Length,
    /// Level overhang of the stick.
    pub overhang: Length,
    /// Rise on one of run.
    pub slope: f64,
    /// Width of the seat.
    pub seat: Length,
    /// Plumb height of its top edge over the plate's outer corner.
    pub above_plate: Length,
    /// Thickness, depth and top above the plate of the ridge; none without one.
    pub ridge: Option<(Length, Length, Length)>,
    /// Height of the post under the ridge.
    pub post: Option<Length>,
}

/// A hip, a valley or a jack, and where it lies.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnHip {
    /// The stick.
    pub cut: DrawnStick,
    /// Its corner.
    pub plan: DrawnCornerPlan,
}

/// A corner of a roof in plan.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnCornerPlan {
    /// Whether it is an inside corner.
    pub is_valley: bool,
    /// Between the walls.
    pub angle: Angle,
    /// Run of the commons of roof A.
    pub run: Length,
    /// Between the line and the eaves of A and of B.
    pub plan_angles: (Angle, Angle),
    /// Where jacks stand along an eave, from the corner.
    pub jacks: Vec<Length>,
    /// Whether they are those of roof B.
    pub of_b: bool,
}
