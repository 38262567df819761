//! Pieces of a floor as they lie, and the marks on its plates.

use measure::Length;

use crate::wall::{Span, XSide};

/// What a piece is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FloorPart {
    /// Over the ends of the joists.
    Rim,
    /// The joist at an end.
    EndJoist,
    /// A joist on the layout.
    Joist,
    /// A joist under a wall above.
    WallJoist,
    /// A joist beside an opening.
    Trimmer,
    /// Across between trimmers.
    Header,
    /// A layout joist that ends at a header.
    Tail,
    /// A block in a row of blocking or bridging.
    Block,
    /// A block between two joists spread under a wall.
    WallBlock,
    /// An upright block under a load.
    SquashBlock,
}

impl FloorPart {
    /// What it is called.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Rim => "rim",
            Self::EndJoist => "end joist",
            Self::Joist => "joist",
            Self::WallJoist => "joist under a wall",
            Self::Trimmer => "trimmer",
            Self::Header => "header",
            Self::Tail => "tail joist",
            Self::Block => "block",
            Self::WallBlock => "block under a wall",
            Self::SquashBlock => "squash block",
        }
    }

    /// The letter on the plate: X a joist, D one of a double under a wall, T a trimmer, O a tail beside an opening. None for
    /// what does not stand on a plate.
    #[must_use]
    pub const fn letter(self) -> Option<char> {
        match self {
            Self::EndJoist | Self::Joist => Some('X'),
            Self::WallJoist => Some('D'),
            Self::Trimmer => Some('T'),
            Self::Tail => Some('O'),
            _ => None,
        }
    }
}

/// A piece of the plan: a rectangle, seen from above.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FloorPiece {
    /// What it is.
    pub part: FloorPart,
    /// Across the joists, along the plates.
    pub across: Span,
    /// Along the joists.
    pub along: Span,
    /// What it is cut to.
    pub length: Length,
    /// Plies side by side in it.
    pub plies: u8,
}

impl FloorPiece {
    /// Whether both take up a piece of the same floor.
    #[must_use]
    pub fn overlaps(&self, other: &Self) -> bool {
        self.across.overlaps(other.across) && self.along.overlaps(other.along)
    }
}

/// Which plates a mark stands on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OnSides {
    /// Both.
    Both,
    /// The near side alone.
    Near,
    /// The far side alone.
    Far,
}

/// A mark on the plates that carry the joists.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FloorMark {
    /// What the tape reads there, exact, from the one end.
    pub pull: Length,
    /// On which side of the line the piece stands.
    pub x: XSide,
    /// Center of the piece.
    pub centre: Length,
    /// What stands there.
    pub part: FloorPart,
    /// Which sides it is marked on.
    pub on: OnSides,
    /// The layout center that it stands for; none of what is off the layout.
    pub layout: Option<Length>,
}
