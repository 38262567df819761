//! A shed roof: one slope from a low wall to a high one.

use measure::{Length, Slope};

use super::error::{RoofError, not_negative, positive};
use super::plane::{along_slope, pitched, rise};

/// A shed roof over two walls, with birdsmouths of one height above plate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shed {
    /// Pitch.
    pub pitch: Slope,
    /// Level, from the outer face of the low wall to the outer face of the high wall.
    pub width: Length,
    /// Where the upper heel stands: from the outer face of the high wall in to it. Nothing for its outer face, the
    /// plate's width for its inner one.
    pub upper_heel_in: Length,
    /// Level overhangs past the low wall and past the outer face of the high one.
    pub overhangs: [Length; 2],
}

/// A shed roof, laid out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShedAnswer {
    /// Level run from heel to heel.
    pub run: Length,
    /// How much higher the high wall's plate is.
    pub wall_difference: Length,
    /// From heel to heel along the slope.
    pub line_length: Length,
    /// The whole top edge, both ends cut plumb.
    pub overall: Length,
}

/// Lays out a shed roof.
///
/// Source: geometry.
///
/// # Errors
/// A pitch that is no roof's, sizes of nothing, and an upper heel that is not between the walls.
pub fn shed(given: &Shed) -> Result<ShedAnswer, RoofError> {
    let Shed { pitch, width, upper_heel_in, overhangs } = *given;
    pitched(pitch)?;
    not_negative("distance to the upper heel", upper_heel_in)?;
    let [low, high] = overhangs;
    not_negative("overhang", low)?;
    not_negative("overhang", high)?;
    let run = width - upper_heel_in;
    positive("run from heel to heel", run)?;
    Ok(ShedAnswer {
        run,
        wall_difference: rise(run, pitch),
        line_length: along_slope(run, pitch),
        overall: along_slope(width + low + high, pitch),
    })
}
