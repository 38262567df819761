//! A wall against a string along its top plates.

use measure::Length;

use super::error::{SquareError, reading, readings};

/// The most readings along one string.
const MOST: usize = 1000;

/// One reading.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Offset {
    /// Where, from the beginning of the string.
    pub at: Length,
    /// From the wall to the string as it was read.
    pub read: Length,
    /// Less the gauge block: how far the wall is from the string's line; above zero it is too far back, below zero it
    /// stands out.
    pub off: Length,
}

/// A wall's readings.
#[derive(Clone, Debug, PartialEq)]
pub struct Straight {
    /// Every reading, as given.
    pub offsets: Vec<Offset>,
    /// The one that is farthest off, either way.
    pub worst: Offset,
}

/// Works out how far a wall is from a string that stands off its ends by a gauge block. Three places do as a rule: the middle and
/// the quarters.
///
/// Source: common practice.
///
/// # Errors
/// No reading, or more than 1,000; one over 1,000 ft.
pub fn straightness(read: &[(Length, Length)], gauge: Length) -> Result<Straight, SquareError> {
    readings(read.len(), 1, MOST)?;
    reading("gauge block", gauge)?;
    let offset = |&(at, read): &(Length, Length)| {
        let (at, read) = (reading("place", at)?, reading("offset", read)?);
        Ok(Offset { at, read, off: read - gauge })
    };
    let offsets = read.iter().map(offset).collect::<Result<Vec<_>, _>>()?;
    let farther = |a: &&Offset, b: &&Offset| a.off.abs().inches().total_cmp(&b.off.abs().inches());
    // The first of several alike.
    let none = SquareError::Readings { given: 0, least: 1, most: MOST };
    let worst = *offsets.iter().rev().max_by(farther).ok_or(none)?;
    Ok(Straight { offsets, worst })
}
