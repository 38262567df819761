//! What is drawn of a layout; lengths of the real thing, words as they stand beside them.

use layout::roof::Stick;
use measure::{Angle, Length};

use super::drawn_joists::DrawnJoists;
use super::drawn_plates::DrawnPlates;
use super::drawn_strapping::DrawnStrapping;

/// What is drawn of a layout.
#[derive(Clone, Debug, PartialEq)]
pub enum DrawnLayout {
    /// A stick on the horses, and the same in its roof.
    Rafter(Box<DrawnRafterCut>),
    /// A hip, a valley or a jack on the horses, and its corner in plan.
    Hip(Box<DrawnHip>),
    /// A plane with its sheets.
    Sheathing(Box<DrawnSheathing>),
    /// A wall, and its plate as it is marked.
    Plates(Box<DrawnPlates>),
    /// A floor in plan.
    Joists(Box<DrawnJoists>),
    /// A ceiling with its strips, and one row of it from the side.
    Strapping(Box<DrawnStrapping>),
}

/// A roof plane laid flat, its eave below.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnSheathing {
    /// Its eave.
    pub eave: Length,
    /// From the eave to its top, along the slope.
    pub slope: Length,
    /// Its courses, from the eave up.
    pub courses: Vec<DrawnCourse>,
    /// A sheet along the eave, and its gap.
    pub sheet: Length,
    /// The cut from the eave edge at the left end and at the right, in words; none at a gable.
    pub cuts: [Option<String>; 2],
    /// What stands at its ends: `hip`.
    pub ends: [&'static str; 2],
}

/// A course of sheets.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnCourse {
    /// Its lower edge, from the eave up the slope.
    pub from_eave: Length,
    /// Its width up the slope.
    pub width: Length,
    /// Where its lower and its upper edge begin, from the left end of the eave.
    pub left: [Length; 2],
    /// How long they are.
    pub lengths: [Length; 2],
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
