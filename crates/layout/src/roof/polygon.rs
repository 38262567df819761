//! Roofs over regular polygons: octagons, and bays that are part of one.

use measure::{Angle, Length, Slope};

use super::corner::{Corner, Meeting};
use super::error::{RoofError, positive};
use super::plane::{Side, Sides};

/// A hipped roof over a regular polygon, or over as many of its sides as a bay has.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Polygon {
    /// Sides of the whole polygon: 8 of an octagon.
    pub sides: u8,
    /// Pitch.
    pub pitch: Slope,
    /// Level, from the middle to the outer face of one plate: run of the commons.
    pub run: Length,
}

/// Such a roof, laid out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PolygonAnswer {
    /// Every corner of it.
    pub corner: Corner,
    /// Length of one side.
    pub side: Length,
    /// From the middle to a corner, level: run of the hips.
    pub hip_run: Length,
    /// Length of a hip's line.
    pub hip_length: Length,
}

/// Lays out a roof over a regular polygon. Its hips meet in the middle: on a post, each is cut square and loses half of
/// what the post measures across its flats.
///
/// Source: geometry of the regular polygon.
///
/// # Errors
/// Fewer than three sides or more than 100, sizes of nothing, a pitch that is no roof's.
pub fn polygon(given: &Polygon) -> Result<PolygonAnswer, RoofError> {
    let Polygon { sides, pitch, run } = *given;
    if !(3..=100).contains(&sides) {
        return Err(RoofError::Sides { given: sides });
    }
    positive("run of the commons", run)?;
    let each = Angle::from_degrees(360.0 / f64::from(sides));
    let corner = Corner::new(Meeting::Hip, Sides { a: pitch, b: pitch }, Angle::from_degrees(180.0) - each)?;
    Ok(PolygonAnswer {
        corner,
        side: 2.0 * run * (each / 2.0).tan(),
        hip_run: corner.run(Side::A, run),
        hip_length: corner.line_length(Side::A, run),
    })
}
