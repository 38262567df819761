//! The plan of two flights and their landing.

use measure::Length;

use super::landing::{Landing, Turn};

/// A part of a stair seen from above. Along is up the lower flight, from its first riser; across is to the side that the stair
/// turns to, from the outer side of the lower flight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rectangle {
    /// Where it begins and ends along.
    pub along: [Length; 2],
    /// Where it begins and ends across.
    pub across: [Length; 2],
}

/// Lower flight, landing and upper flight, of these runs.
pub(super) fn plan(given: &Landing, lower: Length, upper: Length) -> [Rectangle; 3] {
    let zero = Length::ZERO;
    let (width, far) = (given.width, lower + given.depth);
    let below = Rectangle { along: [zero, lower], across: [zero, width] };
    let landing = |across: Length| Rectangle { along: [lower, far], across: [zero, across] };
    match given.turn {
        Turn::Straight => [below, landing(width), Rectangle { along: [far, far + upper], across: [zero, width] }],
        Turn::Quarter => {
            // The upper flight is as wide as the lower one, and begins at the far side of it.
            let above = Rectangle { along: [far - width, far], across: [width, width + upper] };
            [below, landing(width), above]
        }
        Turn::Half { gap } => {
            let across = width * 2.0 + gap;
            let above = Rectangle { along: [lower - upper, lower], across: [width + gap, across] };
            [below, landing(across), above]
        }
    }
}
