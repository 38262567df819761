//! Points, directions, planes and lines in space, in inches: the plain numbers under every cut of a roof.
//!
//! `x` and `y` lie level, `z` is plumb up. Nothing here knows of wood.

use measure::{Angle, math};

/// A point, or a direction with its length.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Vector {
    pub(super) x: f64,
    pub(super) y: f64,
    pub(super) z: f64,
}

/// Plumb up.
pub(super) const UP: Vector = Vector::new(0.0, 0.0, 1.0);
/// Where the eaves of a corner meet, and every other start.
pub(super) const ORIGIN: Vector = Vector::new(0.0, 0.0, 0.0);

impl Vector {
    pub(super) const fn new(x: f64, y: f64, z: f64) -> Self {
        Self { x, y, z }
    }

    pub(super) const fn plus(self, other: Self) -> Self {
        Self::new(self.x + other.x, self.y + other.y, self.z + other.z)
    }

    pub(super) const fn minus(self, other: Self) -> Self {
        self.plus(other.times(-1.0))
    }

    pub(super) const fn times(self, factor: f64) -> Self {
        Self::new(self.x * factor, self.y * factor, self.z * factor)
    }

    pub(super) const fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y + self.z * other.z
    }

    pub(super) const fn cross(self, other: Self) -> Self {
        Self::new(
            self.y * other.z - self.z * other.y,
            self.z * other.x - self.x * other.z,
            self.x * other.y - self.y * other.x,
        )
    }

    pub(super) fn length(self) -> f64 {
        self.dot(self).sqrt()
    }

    /// The same direction, one long. No direction stays none.
    pub(super) fn unit(self) -> Self {
        let length = self.length();
        if length > 0.0 { self.times(1.0 / length) } else { self }
    }

    /// Turned round if need be, so that it points up.
    pub(super) const fn upward(self) -> Self {
        if self.z < 0.0 { self.times(-1.0) } else { self }
    }

    /// Its shadow on the level, one long.
    pub(super) fn in_plan(self) -> Self {
        Self::new(self.x, self.y, 0.0).unit()
    }

    /// The angle between two directions, 0 to 180 degrees.
    pub(super) fn angle_to(self, other: Self) -> Angle {
        Angle::from_degrees(math::atan2(self.cross(other).length(), self.dot(other)).to_degrees())
    }

    /// The angle between two lines that point nowhere, 0 to 90 degrees.
    pub(super) fn between_lines(self, other: Self) -> Angle {
        Angle::from_degrees(math::atan2(self.cross(other).length(), self.dot(other).abs()).to_degrees())
    }
}

/// A plane: every point whose shadow on the normal is the offset.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Plane {
    /// One long.
    pub(super) normal: Vector,
    pub(super) offset: f64,
}

impl Plane {
    pub(super) fn through(point: Vector, normal: Vector) -> Self {
        let normal = normal.unit();
        Self { normal, offset: normal.dot(point) }
    }
}

/// A line that has no ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Line {
    pub(super) through: Vector,
    pub(super) along: Vector,
}

impl Line {
    /// How far along the line, from its point, a plane is met; none where they never meet.
    pub(super) fn meets(self, plane: Plane) -> Option<f64> {
        /// Two directions closer to square than this are parallel for a saw: an inch in some hundred thousand miles.
        const PARALLEL: f64 = 1e-12;
        let closing = plane.normal.dot(self.along);
        (closing.abs() > PARALLEL).then(|| (plane.offset - plane.normal.dot(self.through)) / closing)
    }
}
