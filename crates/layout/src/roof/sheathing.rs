//! Sheathing of one plane: the courses up the slope, their lengths, and the cuts at hips and valleys.

use measure::{Length, Slope};

use super::corner::{Corner, Meeting};
use super::cut::Cut;
use super::error::{RoofError, positive};
use super::plane::{Side, pitched};

/// The most courses on one plane.
const MOST: usize = 200;

/// A hip or valley at one end of a plane.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SheathingEnd {
    /// The planes that meet there.
    pub corner: Corner,
    /// Which of them this one is.
    pub side: Side,
}

/// A plane that is sheathed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SheathedPlane {
    /// Pitch.
    pub pitch: Slope,
    /// Length along the eave edge.
    pub eave: Length,
    /// From the eave edge to the ridge, along the slope.
    pub slope_length: Length,
    /// Both ends; none is a gable, square to the eave.
    pub ends: [Option<SheathingEnd>; 2],
    /// Width of a course up the slope: 48 in of a sheet laid along the eave, and its gap.
    pub course: Length,
}

/// One course.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Course {
    /// Its lower edge, from the eave edge up the slope.
    pub from_eave: Length,
    /// Its width up the slope; less than the others' at the ridge.
    pub width: Length,
    /// Length along its lower edge.
    pub lower: Length,
    /// Length along its upper edge.
    pub upper: Length,
}

/// A plane's courses.
#[derive(Clone, Debug, PartialEq)]
pub struct SheathingAnswer {
    /// From the eave up.
    pub courses: Vec<Course>,
    /// The cut at each end; none at a gable.
    pub cuts: [Option<Cut>; 2],
    /// How far each end's cut stands in across one whole course: below zero it runs out, at a valley.
    pub back: [Length; 2],
}

/// Lays out the courses of a plane. Where two hips meet under the ridge, the plane ends there.
///
/// Source: geometry in the roof plane.
///
/// # Errors
/// Sizes of nothing, a line of another pitch than the plane, and more than 200 courses.
pub fn sheathing(given: &SheathedPlane) -> Result<SheathingAnswer, RoofError> {
    given.is_whole()?;
    let back_for_one = given.ends.map(|end| end.map_or(0.0, SheathingEnd::back_for_one));
    let closing: f64 = back_for_one.iter().sum();
    let length_at = |up: Length| (given.eave - up * closing).max(Length::ZERO);
    let top = if closing > 0.0 { given.slope_length.min(given.eave / closing) } else { given.slope_length };
    if top / given.course >= MOST as f64 {
        return Err(RoofError::TooMany { what: "courses", most: MOST });
    }
    /// A last strip thinner than any saw's cut is none.
    const A_STRIP: Length = Length::from_inches(1e-6);
    let starts = (0..MOST as u32).map(|count| given.course * f64::from(count));
    let course = |from_eave: Length| {
        let width = given.course.min(top - from_eave);
        Course { from_eave, width, lower: length_at(from_eave), upper: length_at(from_eave + width) }
    };
    Ok(SheathingAnswer {
        courses: starts.take_while(|start| *start < top - A_STRIP).map(course).collect(),
        cuts: given.ends.map(|end| end.map(|end| end.corner.sheathing(end.side))),
        back: back_for_one.map(|back| given.course * back),
    })
}

impl SheathedPlane {
    fn is_whole(&self) -> Result<(), RoofError> {
        pitched(self.pitch)?;
        positive("length of the eave", self.eave)?;
        positive("length of the slope", self.slope_length)?;
        positive("width of a course", self.course)?;
        for SheathingEnd { corner, side } in self.ends.into_iter().flatten() {
            let plane = corner.pitch(side);
            if (plane - self.pitch).rise_in_twelve().abs() > 1e-9 {
                return Err(RoofError::OtherPitch { side, given: self.pitch, plane });
            }
        }
        Ok(())
    }
}

impl SheathingEnd {
    /// How far in for one inch up the slope.
    fn back_for_one(self) -> f64 {
        let Self { corner, side } = self;
        let back = corner.pitch(side).angle().cos() / corner.plan_angle(side).tan();
        if corner.meeting() == Meeting::Hip { back } else { -back }
    }
}
