//! Openings: their rough size, what frames them, and the lengths that follow.

use measure::Length;

use super::{Heights, Span};

/// Pieces shorter than this split when they are nailed. Source: a superintendent's framing list (looked up): about 2 in.
pub const SHORTEST_CRIPPLE: Length = Length::from_inches(2.0);

/// A rough opening from the unit that goes in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoughSize {
    /// Across.
    pub width: Length,
    /// Upright.
    pub height: Length,
}

impl RoughSize {
    /// The unit's frame and its clearance, both sides together: commonly 1/2 to 2 in by the maker. The maker's size or the
    /// schedule wins.
    #[must_use]
    pub fn of_unit(width: Length, height: Length, clearance_across: Length, clearance_upright: Length) -> Self {
        Self { width: width + clearance_across, height: height + clearance_upright }
    }

    /// A leaf and its jambs: the leaf, two jambs, and shim space at each side.
    ///
    /// Source: NAVEDTRA 14044 (looked up): the unit, two jambs and 1/2 in each way.
    #[must_use]
    pub fn width_of_door(leaf: Length, jamb: Length, shim: Length) -> Length {
        leaf + jamb * 2.0 + shim * 2.0
    }
}

/// A header.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Header {
    /// Depth of each ply.
    pub depth: Length,
    /// Plies side by side.
    pub plies: u8,
    /// A flat plate under it or over it, as single-ply headers have on both sides.
    pub flat_plates: u8,
}

impl Header {
    /// Depth with its flat plates.
    #[must_use]
    pub fn whole_depth(&self, plate: Length) -> Length {
        self.depth + plate * f64::from(self.flat_plates)
    }
}

/// An opening. Heights stand above the top of the subfloor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Opening {
    /// Near side of the rough opening, from the plate's end.
    pub from: Length,
    /// Width of the rough opening.
    pub width: Length,
    /// Top of the rough opening, where the header or its flat plate begins.
    pub head: Length,
    /// Bottom of a window's rough opening, where the sill's top is; none of a door.
    pub sill: Option<Length>,
    /// Sill plates under a window.
    pub sill_plates: u8,
    /// Jack studs at each side. None where the header hangs on the kings in hardware.
    pub jacks: u8,
    /// King studs at each side. They take the wind of the opening, which jacks do not.
    pub kings: u8,
    /// The header.
    pub header: Header,
}

impl Opening {
    /// The rough opening.
    #[must_use]
    pub fn rough(&self) -> Span {
        Span::new(self.from, self.from + self.width)
    }

    /// Between the inner faces of the kings: what the header is long.
    #[must_use]
    pub fn between_kings(&self, stud: Length) -> Span {
        self.widened(stud * f64::from(self.jacks))
    }

    /// From outside to outside of the kings.
    #[must_use]
    pub fn framed(&self, stud: Length) -> Span {
        self.widened(stud * (f64::from(self.jacks) + f64::from(self.kings)))
    }

    fn widened(&self, each_side: Length) -> Span {
        Span::new(self.from - each_side, self.from + self.width + each_side)
    }

    /// Length of a jack: from the bottom plate to the header or its flat plate.
    #[must_use]
    pub fn jack(&self, heights: &Heights) -> Length {
        self.head - heights.plate
    }

    /// Length of a cripple above: zero where the header is tight under the plates, negative where it does not fit.
    #[must_use]
    pub fn cripple_above(&self, heights: &Heights) -> Length {
        heights.stud - self.jack(heights) - self.header.whole_depth(heights.plate)
    }

    /// Length of a cripple below the sill; none of a door.
    #[must_use]
    pub fn cripple_below(&self, heights: &Heights) -> Option<Length> {
        Some(self.sill? - heights.plate * (1.0 + f64::from(self.sill_plates)))
    }
}
