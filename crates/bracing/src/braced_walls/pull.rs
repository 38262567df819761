//! What pulls at the ends of a wall's pieces, with the walls that stand on it.

use core::fmt;

use measure::{Force, Length, LineLoad};

use super::BracedWall;
use crate::overturning::{Storey, overturning};
use crate::segmented::{Ends, Segment, check_segmented};
use crate::strength::Strength;

/// Why no pull can be given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EndsError {
    /// Pieces of one storey do not stand on pieces of the same length.
    PiecesDiffer,
    /// A piece is too short for its post and its rod.
    TooShort,
}

impl fmt::Display for EndsError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::PiecesDiffer => {
                "the pieces of the wall on it are not as long as its own, and pulls add up only where they stand above each other"
            }
            Self::TooShort => "a piece is too short for its post and its rod",
        })
    }
}

impl core::error::Error for EndsError {}

/// What pulls at the ends of a piece, and how it comes about.
#[derive(Clone, Debug, PartialEq)]
pub struct Pull {
    /// What each storey brings to the piece, from the top down, the floor in its height.
    pub storeys: Vec<Storey>,
    /// Its length.
    pub length: Length,
    /// From the hold-down to the middle of the pressed post.
    pub arm: Length,
    /// What holds its end down; none or less where dead load holds it.
    pub tension: Force,
}

/// Pulls at the ends of the pieces that count of the last wall of a stack, from the top down: the pushes above it turn it
/// with its own, 0.6 of all dead load holds it.
///
/// A piece of each wall is given its share by its length and what its narrowness leaves of it, however it is nailed; so any
/// `strength` of wood panels gives the same pull. `floor` is what lies between two walls and is part of the arm.
///
/// Source: statics, as [`overturning`]; shares by SDPWS 2015 4.3.3.4.1.
///
/// # Errors
/// Where pieces do not stand above each other, or one is too short for what is at its ends.
pub fn pulls(stack: &[&BracedWall], strength: &Strength, ends: Ends, floor: Length) -> Result<Vec<Pull>, EndsError> {
    let shares: Vec<Vec<Segment>> =
        stack.iter().map(|wall| check_segmented(&wall.segmented(ends), strength).pieces).collect();
    let pull = |(index, piece): (usize, &Segment)| {
        let (length, arm) = (piece.length, ends.arm(piece.length));
        if arm <= Length::ZERO {
            return Err(EndsError::TooShort);
        }
        let storeys = storeys(stack, &shares, (index, length), floor)?;
        let tension = overturning(&storeys, length, arm).last().copied().unwrap_or(Force::ZERO);
        Ok(Pull { storeys, length, arm, tension })
    };
    let lowest = shares.last().into_iter().flatten().enumerate();
    lowest.filter(|(_, piece)| piece.factor > 0.0).map(pull).collect()
}

impl Pull {
    /// All push in each storey with its height: what turns the piece about its foot is their product, added up.
    #[must_use]
    pub fn turning(&self) -> Vec<(Force, Length)> {
        let add = |push: &mut Force, storey: &Storey| {
            *push += storey.force;
            Some((*push, storey.height))
        };
        self.storeys.iter().scan(Force::ZERO, add).collect()
    }

    /// Dead load of all storeys.
    #[must_use]
    pub fn dead(&self) -> LineLoad {
        self.storeys.iter().fold(LineLoad::ZERO, |sum, storey| sum + storey.dead)
    }
}

/// The storeys of one piece, each with what it brings of its own.
fn storeys(
    stack: &[&BracedWall],
    shares: &[Vec<Segment>],
    (index, length): (usize, Length),
    floor: Length,
) -> Result<Vec<Storey>, EndsError> {
    let count = shares.last().map_or(0, Vec::len);
    let mut from_above = Force::ZERO;
    let mut storeys = Vec::with_capacity(stack.len());
    for (level, (wall, pieces)) in stack.iter().zip(shares).enumerate() {
        let piece = pieces.get(index).filter(|piece| pieces.len() == count && is_as_long(piece.length, length));
        let piece = piece.ok_or(EndsError::PiecesDiffer)?;
        // The floor is part of the arm of what comes from above it.
        let height = if level > 0 { wall.height + floor } else { wall.height };
        storeys.push(Storey { force: piece.share - from_above, height, dead: wall.dead });
        from_above = piece.share;
    }
    Ok(storeys)
}

/// Alike to the finest mark of a tape.
fn is_as_long(one: Length, other: Length) -> bool {
    (one - other).inches().abs() < 1.0 / 64.0
}
