//! A gambrel: two slopes on each side, steep below the knee and flatter above.

use measure::{Angle, Length, Ratio, Slope};

use super::error::{RoofError, positive};
use super::plane::{along_slope, pitched, rise};

/// One side of a gambrel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gambrel {
    /// Pitch below the knee.
    pub lower: Slope,
    /// Pitch above it.
    pub upper: Slope,
    /// Level, from the outer face of the plate to the knee.
    pub knee: Length,
    /// Level, from the outer face of the plate to the ridge.
    pub run: Length,
}

/// A gambrel, laid out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GambrelAnswer {
    /// Length of the lower rafter's line.
    pub lower_length: Length,
    /// Length of the upper rafter's line.
    pub upper_length: Length,
    /// Height of the knee.
    pub knee_height: Length,
    /// Height of the ridge.
    pub height: Length,
    /// Mitre of each rafter at the knee, from square, where they meet in line. On a plate there both are cut plumb and
    /// level.
    pub knee_mitre: Angle,
}

/// Lays out a gambrel.
///
/// Source: geometry.
///
/// # Errors
/// Pitches that are no roof's or steeper above than below, a knee that is not between plate and ridge.
pub fn gambrel(given: &Gambrel) -> Result<GambrelAnswer, RoofError> {
    let Gambrel { lower, upper, knee, run } = *given;
    pitched(lower)?;
    pitched(upper)?;
    positive("run to the knee", knee)?;
    if upper > lower {
        return Err(RoofError::NeverMeets { lower, upper });
    }
    let above = run - knee;
    positive("run from knee to ridge", above)?;
    Ok(GambrelAnswer {
        lower_length: along_slope(knee, lower),
        upper_length: along_slope(above, upper),
        knee_height: rise(knee, lower),
        height: rise(knee, lower) + rise(above, upper),
        knee_mitre: (lower.angle() - upper.angle()) / 2.0,
    })
}

/// The gambrel whose plate, knee and ridge lie on a half circle over the span. `knee_angle` is how high the radius to
/// the knee stands above level: 45 degrees is the usual one.
///
/// Source: inscribed angles.
///
/// # Errors
/// A radius that stands at 0 or 90 degrees or past them, and a run of nothing.
pub fn gambrel_in_half_circle(run: Length, knee_angle: Angle) -> Result<Gambrel, RoofError> {
    positive("run", run)?;
    if !(knee_angle.degrees() > 0.0 && knee_angle.degrees() < 90.0) {
        return Err(RoofError::KneeAngle { given: knee_angle });
    }
    let from_level = |degrees: Ratio| Slope::of_angle(Angle::from_degrees(degrees) - knee_angle / 2.0);
    let given = Gambrel { lower: from_level(90.0), upper: from_level(45.0), knee: run * (1.0 - knee_angle.cos()), run };
    pitched(given.lower)?;
    Ok(given)
}
