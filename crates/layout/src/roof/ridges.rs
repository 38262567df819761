//! How ridges stand to each other, and how long a hip roof's ridge is.

use measure::{Length, Slope};

use super::error::{RoofError, positive};
use super::plane::{pitched, ratio, rise};

/// How much higher the ridge over the wider of two wings is; one pitch and one plate. Below zero where the first is
/// narrower.
///
/// Source: geometry.
///
/// # Errors
/// A pitch that is no roof's, runs of nothing.
pub fn ridge_difference(pitch: Slope, run: Length, other_run: Length) -> Result<Length, RoofError> {
    pitched(pitch)?;
    positive("run of the first wing", run)?;
    positive("run of the second wing", other_run)?;
    Ok(rise(run - other_run, pitch))
}

/// The pitch of a wing of another run whose ridge is as high.
///
/// Source: geometry.
///
/// # Errors
/// Runs of nothing, and a pitch that is, or becomes, no roof's.
pub fn pitch_for_same_ridge(pitch: Slope, run: Length, other_run: Length) -> Result<Slope, RoofError> {
    pitched(pitch)?;
    positive("run of the first wing", run)?;
    positive("run of the second wing", other_run)?;
    let other = pitch * (run / other_run);
    pitched(other)?;
    Ok(other)
}

/// A roof of one pitch over walls of unequal height.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UnequalWalls {
    /// How far out the low wall's level would meet the high side's plane.
    pub further: Length,
    /// The span that the roof has at the level of the low wall.
    pub span: Length,
    /// Run on the low side, to the ridge.
    pub low_run: Length,
    /// Run on the high side, to the ridge.
    pub high_run: Length,
}

/// One ridge over walls of unequal height, one pitch on both sides.
///
/// Source: a trade journal's answer on unequal walls; geometry.
///
/// # Errors
/// A pitch that is no roof's, a span of nothing, and walls so unequal that the ridge would stand past the high one.
pub fn unequal_walls(pitch: Slope, span: Length, difference: Length) -> Result<UnequalWalls, RoofError> {
    pitched(pitch)?;
    positive("span", span)?;
    positive("difference of the walls", difference)?;
    let further = difference / ratio(pitch);
    let whole = span + further;
    let low_run = whole / 2.0;
    let high_run = span - low_run;
    if high_run <= Length::ZERO {
        return Err(RoofError::Order { what: "span", given: span, least: further });
    }
    Ok(UnequalWalls { further, span: whole, low_run, high_run })
}

/// What the ends of a hip roof's ridge add to it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RidgeEnds {
    /// Nothing: the theoretical length.
    Lines,
    /// The hips meet the end commons: half of a common at each end (from memory, common practice).
    Commons {
        /// Thickness of the commons.
        thickness: Length,
    },
    /// The hips bear on the ridge's ends: its thickness and the slanted thickness of a hip.
    Hips {
        /// Thickness of the ridge.
        ridge: Length,
        /// Thickness of the hips.
        hip: Length,
    },
}

/// Length of the ridge of a hip roof of one pitch over a rectangle.
///
/// Source: a carpentry textbook of 1916 for hips that bear on the ridge; for end commons from memory.
///
/// # Errors
/// Sizes of nothing, and a rectangle that is not longer than wide: it comes to a point.
pub fn hip_ridge(length: Length, width: Length, ends: RidgeEnds) -> Result<Length, RoofError> {
    positive("width", width)?;
    if length <= width {
        return Err(RoofError::Order { what: "length of the building", given: length, least: width });
    }
    let theoretical = length - width;
    Ok(match ends {
        RidgeEnds::Lines => theoretical,
        RidgeEnds::Commons { thickness } => theoretical + thickness,
        RidgeEnds::Hips { ridge, hip } => theoretical + ridge + hip * 2.0_f64.sqrt(),
    })
}
