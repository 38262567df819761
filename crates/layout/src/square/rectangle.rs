//! Where each of four corners goes for a rectangle.

use measure::Length;

use super::error::{SquareError, size};
use super::four_sided::{Corner, FourSided, Place};

/// How one corner moves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Move {
    /// Which.
    pub corner: Corner,
    /// From A towards B; below zero the other way.
    pub along: Length,
    /// Square to that, away from AB; below zero towards it.
    pub across: Length,
    /// The whole way.
    pub by: Length,
    /// Where it goes.
    pub to: Place,
}

/// Says how every corner moves for a rectangle of this size. A stays, and so does the direction of AB.
///
/// Source: geometry.
///
/// # Errors
/// Sides of nothing or over 1,000 ft.
pub fn to_rectangle(found: &FourSided, length: Length, width: Length) -> Result<[Move; 4], SquareError> {
    let (length, width) = (size("length", length)?, size("width", width)?);
    let zero = Length::ZERO;
    let [a, b, c, d] = found.corners;
    let goes = |corner: Corner, is: Place, along: Length, across: Length| {
        let to = Place { along, across };
        Move { corner, along: to.along - is.along, across: to.across - is.across, by: is.to(to), to }
    };
    Ok([
        goes(Corner::A, a, zero, zero),
        goes(Corner::B, b, length, zero),
        goes(Corner::C, c, length, width),
        goes(Corner::D, d, zero, width),
    ])
}
