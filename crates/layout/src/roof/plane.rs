//! A roof plane: its pitch, and the eave that it rises from.

use core::fmt;

use measure::{Length, Ratio, Slope};

use super::error::RoofError;
use super::space::{Plane, UP, Vector};

/// The steepest roof that is worked, some 80 degrees: what a pitch is read up to.
pub const STEEPEST: Slope = Slope::from_rise_in_twelve(68.0);

/// The flattest roof that is worked: a sixteenth in 12, the finest rise that is set on a square.
pub const FLATTEST: Slope = Slope::from_rise_in_twelve(1.0 / 16.0);

/// One of the two planes over a corner.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// The first.
    A,
    /// The second.
    B,
}

impl Side {
    /// Both.
    pub const BOTH: [Self; 2] = [Self::A, Self::B];

    /// The other one.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::A => Self::B,
            Self::B => Self::A,
        }
    }
}

impl fmt::Display for Side {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::A => "A",
            Self::B => "B",
        })
    }
}

/// The same thing for both planes over a corner.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Sides<T> {
    /// Of plane A.
    pub a: T,
    /// Of plane B.
    pub b: T,
}

impl<T: Copy> Sides<T> {
    /// That of one side.
    #[must_use]
    pub const fn of(&self, side: Side) -> T {
        match side {
            Side::A => self.a,
            Side::B => self.b,
        }
    }

    /// Worked out for A and for B.
    pub fn each(mut work: impl FnMut(Side) -> T) -> Self {
        Self { a: work(Side::A), b: work(Side::B) }
    }

    /// A and B in each other's place.
    #[must_use]
    pub const fn swapped(self) -> Self {
        Self { a: self.b, b: self.a }
    }
}

/// Refuses what is no pitch of a roof.
pub(super) fn pitched(given: Slope) -> Result<(), RoofError> {
    if given >= FLATTEST && given <= STEEPEST { Ok(()) } else { Err(RoofError::Pitch { given }) }
}

/// Rise over run: the tangent of the slope angle.
pub(super) fn ratio(pitch: Slope) -> Ratio {
    pitch.rise_in_twelve() / 12.0
}

/// Slope length over run: 1 on the level.
pub(super) fn stretch(pitch: Slope) -> Ratio {
    let ratio = ratio(pitch);
    (1.0 + ratio * ratio).sqrt()
}

/// Length along the slope of a level run: the run times `sqrt(1 + m^2)`, never a rounded unit length.
///
/// ```
/// use layout::roof::along_slope;
/// use measure::{Length, Slope};
///
/// let run = Length::from_feet(8.0);
/// assert!((along_slope(run, Slope::from_rise_in_twelve(7.0)).inches() - 111.1396).abs() < 0.00005);
/// ```
#[must_use]
pub fn along_slope(run: Length, pitch: Slope) -> Length {
    run * stretch(pitch)
}

/// Rise of a level run.
#[must_use]
pub fn rise(run: Length, pitch: Slope) -> Length {
    run * ratio(pitch)
}

/// The plane that rises at a pitch from an eave through a point; `inward` is level and square to the eave.
pub(super) fn rising(eave: Vector, inward: Vector, pitch: Slope) -> Plane {
    Plane::through(eave, UP.minus(inward.times(ratio(pitch))))
}
