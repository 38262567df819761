//! A rectangle that leans: what its far side moves, and which way.

use measure::Length;

use super::diagonal::third_side;
use super::error::{SquareError, size};

/// Which way the far side, C and D, stands too far.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lean {
    /// Square: both diagonals are the same.
    None,
    /// Past B: diagonal A to C is the longer one. C and D move back, from C towards D.
    TowardsB,
    /// Past A: diagonal B to D is the longer one. C and D move from D towards C.
    TowardsA,
}

/// What a rectangle's two diagonals tell.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OutOfSquare {
    /// Which way it leans.
    pub lean: Lean,
    /// How far both far corners move along their side: `(d1² - d2²) / 4L`, exact where opposite sides are alike.
    pub moves: Length,
    /// Half of the difference of the diagonals: the usual rule of thumb.
    pub rule_of_thumb: Length,
    /// Both diagonals once it is square.
    pub square_diagonal: Length,
    /// The width that the diagonals and the length give.
    pub width: Length,
    /// Measured width less that: what the measurements do not close by; none where no width was given.
    pub width_error: Option<Length>,
}

/// Works out how a rectangle leans, from its length A to B and its diagonals. Side AB stays; a framed wall lies on its bottom plate
/// AB and its top plate moves.
///
/// Source: geometry of the parallelogram.
///
/// # Errors
/// Lengths of nothing or over 1,000 ft, or that no such shape has.
pub fn out_of_square(
    length: Length,
    width: Option<Length>,
    ac: Length,
    bd: Length,
) -> Result<OutOfSquare, SquareError> {
    size("length", length)?;
    size("diagonal A to C", ac)?;
    size("diagonal B to D", bd)?;
    let width = width.map(|width| size("width", width)).transpose()?;
    let (longer, shorter) = (ac.max(bd), ac.min(bd));
    let shift = (longer * longer - shorter * shorter) / (length * 4.0);
    // Both diagonals squared are twice both sides squared; what the length leaves of it is the width's.
    let own_width = (longer * longer + shorter * shorter) / 2.0 - length * length;
    if own_width.square_inches() <= (shift * shift).square_inches() {
        return Err(SquareError::DiagonalsTooFarApart { longer, shorter, side: length });
    }
    let own_width = Length::from_inches(own_width.square_inches().sqrt());
    Ok(OutOfSquare {
        lean: lean(ac, bd),
        moves: shift,
        rule_of_thumb: (longer - shorter) / 2.0,
        square_diagonal: third_side(length, width.unwrap_or(own_width)),
        width: own_width,
        width_error: width.map(|width| width - own_width),
    })
}

fn lean(ac: Length, bd: Length) -> Lean {
    if ac > bd {
        Lean::TowardsB
    } else if bd > ac {
        Lean::TowardsA
    } else {
        Lean::None
    }
}
