//! Two roof planes over a corner: the line where they meet, and every angle that follows from it.
//!
//! Equal and unequal pitches, square corners and others are one case: two planes in space. The eaves meet in the
//! origin, eave A runs along `x`, eave B at the corner's angle from it.

use measure::{Angle, Length, Ratio, Slope};

use super::cut::DIAGONAL_RUN;
use super::error::RoofError;
use super::plane::{Side, Sides, pitched, ratio, rising};
use super::space::{ORIGIN, UP, Vector};

/// How two planes meet over a corner.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Meeting {
    /// Outside corner: the roof is the lower of the two planes. Looking up the hip, plane A is on the right hand.
    Hip,
    /// Inside corner: the roof is the higher of the two. Looking up the valley, plane A is on the left hand.
    Valley,
}

/// Two roof planes over a corner with level eaves, and the hip or valley between them.
///
/// Source: two planes in space; closed forms of the trade agree (see the tests).
///
/// ```
/// use layout::roof::{Corner, Meeting, Side, Sides};
/// use measure::{Angle, Slope};
///
/// let pitches = Sides { a: Slope::from_rise_in_twelve(9.0), b: Slope::from_rise_in_twelve(12.0) };
/// let corner = Corner::new(Meeting::Hip, pitches, Angle::from_degrees(90.0))?;
/// assert!((corner.plan_angle(Side::A).degrees() - 53.1301).abs() < 0.00005);
/// assert!((corner.slope().degrees() - 30.9638).abs() < 0.00005);
/// # Ok::<(), layout::roof::RoofError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Corner {
    meeting: Meeting,
    pitches: Sides<Slope>,
    angle: Angle,
    /// Directions of the eaves, away from the corner.
    pub(super) eaves: Sides<Vector>,
    /// Level, square to the eaves, under the roof.
    pub(super) inward: Sides<Vector>,
    /// Upward normals of the planes.
    pub(super) normals: Sides<Vector>,
    /// The line where they meet, upward.
    pub(super) line: Vector,
}

impl Corner {
    /// Two pitches at a corner. The angle is that between the eaves in plan, under the roof at a hip and outdoors at a
    /// valley: 90 degrees at a square corner, 135 on an octagon.
    ///
    /// # Errors
    /// A pitch that is no roof's, an angle that is no corner, and two pitches so far apart at an obtuse corner that the
    /// line leans past the square of one eave.
    pub fn new(meeting: Meeting, pitches: Sides<Slope>, angle: Angle) -> Result<Self, RoofError> {
        pitched(pitches.a)?;
        pitched(pitches.b)?;
        if !(1.0..=179.0).contains(&angle.degrees()) {
            return Err(RoofError::CornerAngle { given: angle });
        }
        let (sin, cos) = (angle.sin(), angle.cos());
        let eaves = Sides { a: Vector::new(1.0, 0.0, 0.0), b: Vector::new(cos, sin, 0.0) };
        let inward = Sides { a: Vector::new(0.0, 1.0, 0.0), b: Vector::new(sin, -cos, 0.0) };
        let normals = Sides::each(|side| rising(ORIGIN, inward.of(side), pitches.of(side)).normal);
        let line = normals.a.cross(normals.b).unit().upward();
        for side in Side::BOTH {
            if line.dot(eaves.of(side)) <= 0.0 {
                return Err(RoofError::LeansPast { side, pitches, corner: angle });
            }
        }
        Ok(Self { meeting, pitches, angle, eaves, inward, normals, line })
    }

    /// Hip or valley.
    #[must_use]
    pub const fn meeting(&self) -> Meeting {
        self.meeting
    }

    /// Pitch of one plane.
    #[must_use]
    pub const fn pitch(&self, side: Side) -> Slope {
        self.pitches.of(side)
    }

    /// The angle between the eaves.
    #[must_use]
    pub const fn angle(&self) -> Angle {
        self.angle
    }

    /// A and B in each other's place.
    ///
    /// # Errors
    /// As [`Corner::new`]; none in a corner that is one.
    pub fn swapped(&self) -> Result<Self, RoofError> {
        Self::new(self.meeting, self.pitches.swapped(), self.angle)
    }

    /// Angle in plan between one eave and the hip or valley. Both add to the corner's angle; the steeper side has the
    /// smaller one.
    #[must_use]
    pub fn plan_angle(&self, side: Side) -> Angle {
        self.line.in_plan().angle_to(self.eaves.of(side))
    }

    /// Slope of the hip or valley: its plumb cut from square.
    #[must_use]
    pub fn slope(&self) -> Angle {
        self.line.between_lines(self.line.in_plan())
    }

    /// Rise of the hip or valley on 12 of its own run.
    #[must_use]
    pub fn rise_on_twelve(&self) -> Slope {
        Slope::from_rise_in_twelve(12.0 * self.rise_of_run())
    }

    /// Rise of the hip or valley on 16.97 of its own run: the pitch itself at a square corner of equal pitches.
    #[must_use]
    pub fn rise_on_diagonal(&self) -> Length {
        Length::from_inches(DIAGONAL_RUN * self.rise_of_run())
    }

    /// Level run of the hip or valley over a run of the commons of one side.
    #[must_use]
    pub fn run(&self, side: Side, common_run: Length) -> Length {
        common_run / self.plan_angle(side).sin()
    }

    /// Length of the hip or valley over a run of the commons of one side.
    #[must_use]
    pub fn line_length(&self, side: Side, common_run: Length) -> Length {
        self.along(self.run(side, common_run))
    }

    /// The run of the other side's commons that rises as high as this one's.
    #[must_use]
    pub fn run_across(&self, side: Side, common_run: Length) -> Length {
        common_run * (ratio(self.pitch(side)) / ratio(self.pitch(side.other())))
    }

    /// Length along the hip or valley of a level run of it.
    #[must_use]
    pub fn along(&self, level: Length) -> Length {
        level / self.slope().cos()
    }

    /// Rise over a level run of the hip or valley.
    #[must_use]
    pub fn rise(&self, level: Length) -> Length {
        level * self.rise_of_run()
    }

    /// Backing: the bevel of one plane on the top of the hip or valley, from square, in the section square to its
    /// length. A saw that rips along the edge is tilted so.
    #[must_use]
    pub fn backing(&self, side: Side) -> Angle {
        self.top().between_lines(self.normals.of(side))
    }

    /// The angle between the two planes, inside and under a hip.
    #[must_use]
    pub fn between_planes(&self) -> Angle {
        Angle::from_degrees(180.0) - self.normals.a.angle_to(self.normals.b)
    }

    /// How far a plane falls, plumb, for each inch level and square off the line.
    pub(super) fn fall(&self, side: Side) -> Ratio {
        ratio(self.pitch(side)) * self.across().dot(self.inward.of(side)).abs()
    }

    /// Level and square to the hip or valley, toward eave B: normal of its side faces.
    pub(super) fn across(&self) -> Vector {
        UP.cross(self.line.in_plan())
    }

    /// Normal of the square top edge.
    pub(super) fn top(&self) -> Vector {
        self.line.cross(self.across()).upward()
    }

    /// Upward along the commons and jacks of one side.
    pub(super) fn jack_axis(&self, side: Side) -> Vector {
        self.inward.of(side).plus(UP.times(ratio(self.pitch(side)))).unit()
    }

    fn rise_of_run(&self) -> Ratio {
        self.line.z / (self.line.x * self.line.x + self.line.y * self.line.y).sqrt()
    }
}
