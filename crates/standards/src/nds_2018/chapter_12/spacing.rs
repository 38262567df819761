//! §12.1.6: distances that keep wood from splitting. The standard says only that they must; its commentary recommends
//! these.

use measure::Length;

use crate::Status::FromMemory;
use crate::nds_2018::{Cited, nds};

/// Whether a hole is bored for the nail.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Boring {
    /// Driven into whole wood.
    None,
    /// Into a hole of at most 75 % of the diameter (90 % in wood over 0.6 in specific gravity).
    PreBored,
}

/// Distances between nails, and from nails to edges and ends, in wood under a wood side member.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NailSpacings {
    /// To the edge of the piece.
    pub edge: Length,
    /// To an end that the load pulls toward.
    pub end_loaded: Length,
    /// To an end that the load pushes away from.
    pub end_unloaded: Length,
    /// In a row along the grain.
    pub along_grain: Length,
    /// In a row across the grain.
    pub across_grain: Length,
    /// Between rows whose nails stand side by side.
    pub rows_in_line: Length,
    /// Between rows whose nails are staggered.
    pub rows_staggered: Length,
}

/// Recommended distances for nails of a diameter.
///
/// Source: NDS 2018 Commentary Table C12.1.6.6 (that it exists was read; its cells are from memory).
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_12::{Boring, nail_spacings};
/// let found = nail_spacings(Length::from_inches(0.131), Boring::None).value;
/// assert!((found.along_grain.inches() - 1.965).abs() < 1e-12);
/// ```
#[must_use]
pub fn nail_spacings(diameter: Length, boring: Boring) -> Cited<NailSpacings> {
    let [edge, loaded, unloaded, along, across, in_line, staggered] = match boring {
        Boring::None => [2.5, 15.0, 10.0, 15.0, 10.0, 5.0, 2.5],
        Boring::PreBored => [2.5, 10.0, 5.0, 10.0, 5.0, 3.0, 2.5],
    };
    let spacings = NailSpacings {
        edge: diameter * edge,
        end_loaded: diameter * loaded,
        end_unloaded: diameter * unloaded,
        along_grain: diameter * along,
        across_grain: diameter * across,
        rows_in_line: diameter * in_line,
        rows_staggered: diameter * staggered,
    };
    Cited::new(spacings, nds("Commentary Table C12.1.6.6", FromMemory))
}
