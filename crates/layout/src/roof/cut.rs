//! A cut on a stick: how far the saw is turned and how far its blade is tilted.

use measure::{Angle, Length, Ratio, Slope, math};

use super::space::Vector;

/// The run of a hip over 12 of common run, square corner and equal pitches: the square root of 288, 17 on the square.
pub const DIAGONAL_RUN: Ratio = 16.970_562_748_477_14;

/// Where the saw rides.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Under {
    /// On the wide side face of a rafter, plumb when it is up.
    Side,
    /// On the square top edge of a rafter.
    TopEdge,
    /// On the face that lies in the roof plane: sheathing, or a purlin's top.
    RoofFace,
    /// On the face of a purlin or fascia that stands square to the roof.
    SquareFace,
    /// On the face of a board that stands plumb.
    PlumbFace,
}

/// A plane cut through a stick.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cut {
    /// The face that the saw rides on.
    pub under: Under,
    /// How far the saw is turned from a cut square to the length: what a saw's scale reads.
    pub from_square: Angle,
    /// How far the blade leans from square to the face.
    pub tilt: Angle,
}

impl Cut {
    /// Angle between the line of the cut and the length of the stick: what a bevel set along the edge reads. With
    /// [`Cut::from_square`] it adds to 90 degrees.
    #[must_use]
    pub fn from_axis(self) -> Angle {
        Angle::from_degrees(90.0) - self.from_square
    }

    /// The turn as inches on 12, the way a square is set.
    #[must_use]
    pub fn on_twelve(self) -> Slope {
        Slope::of_angle(self.from_square)
    }

    /// The turn as inches on [`DIAGONAL_RUN`], the way a hip is set on 17.
    #[must_use]
    pub fn on_diagonal(self) -> Length {
        Length::from_inches(self.from_square.tan() * DIAGONAL_RUN)
    }

    /// The cut that a plane makes: on the face with this normal, along this axis, through the plane with this normal.
    pub(super) fn by_plane(under: Under, axis: Vector, face: Vector, plane: Vector) -> Self {
        let line = face.cross(plane);
        let from_axis = line.between_lines(axis);
        Self { under, from_square: Angle::from_degrees(90.0) - from_axis, tilt: leaning(face, plane) }
    }
}

/// How far a blade leans from square to a face: the arc sine of what the two unit normals share.
pub(super) fn leaning(face: Vector, plane: Vector) -> Angle {
    let shared = face.unit().dot(plane.unit()).abs();
    Angle::from_degrees(math::atan2(shared, face.unit().cross(plane.unit()).length()).to_degrees())
}
