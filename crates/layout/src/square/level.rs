//! Readings at points against one plane: the highest, the lowest, and a shim at each.

use measure::{Length, Ratio};

use super::error::{SquareError, reading, readings};

/// The most points that are taken.
const MOST: usize = 1000;
/// The steepest fall that is taken.
const STEEPEST: Ratio = 0.25;

/// What a point was read as.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reading {
    /// Height above a line or a floor: more is higher.
    Up(Length),
    /// Down from a laser or a string, or on a rod that stands on the point: more is lower.
    Down(Length),
}

impl Reading {
    fn height(self) -> Result<Length, SquareError> {
        match self {
            Self::Up(height) => reading("height", height),
            Self::Down(down) => reading("reading", down).map(|down| -down),
        }
    }
}

/// How much the plane rises along each direction of the plan; level where both are nothing.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Tilt {
    /// Rise over length along.
    pub along: Ratio,
    /// Rise over length across.
    pub across: Ratio,
}

/// Points beside a plane.
#[derive(Clone, Debug, PartialEq)]
pub struct Levelled {
    /// Which point is highest, from 0; the first of several alike. The plane lies on it.
    pub highest: usize,
    /// Which is lowest.
    pub lowest: usize,
    /// How far the lowest is under the highest.
    pub out_of_level: Length,
    /// The shim at each point, in the order that was given: none is below zero.
    pub shims: Vec<Length>,
}

/// Brings points up to one plane of a known tilt through the highest of them.
///
/// Source: geometry. A plane of any tilt through joists is a ceiling's, and is looked for under strapping.
///
/// # Errors
/// Fewer than two points, or more than 1,000; a reading or a place over 1,000 ft; a fall of more than 1 in 4.
pub fn level(points: &[([Length; 2], Reading)], tilt: Tilt) -> Result<Levelled, SquareError> {
    readings(points.len(), 2, MOST)?;
    if !(tilt.along.abs() <= STEEPEST && tilt.across.abs() <= STEEPEST) {
        return Err(SquareError::Tilt);
    }
    let over_plane = |&([along, across], read): &([Length; 2], Reading)| {
        let (along, across) = (reading("place", along)?, reading("place", across)?);
        Ok(read.height()? - along * tilt.along - across * tilt.across)
    };
    let heights = points.iter().map(over_plane).collect::<Result<Vec<_>, _>>()?;
    let (highest, lowest) = extremes(&heights);
    let top = heights[highest];
    Ok(Levelled {
        highest,
        lowest,
        out_of_level: top - heights[lowest],
        shims: heights.iter().map(|height| top - *height).collect(),
    })
}

/// Where the highest and the lowest are; the first of several alike.
fn extremes(heights: &[Length]) -> (usize, usize) {
    let (mut highest, mut lowest) = (0, 0);
    for (index, height) in heights.iter().enumerate() {
        if *height > heights[highest] {
            highest = index;
        }
        if *height < heights[lowest] {
            lowest = index;
        }
    }
    (highest, lowest)
}
