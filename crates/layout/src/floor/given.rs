//! What a floor is given as: joists, their ends, openings, walls and loads above, and sheets.

use measure::Length;
use standards::irc_2021::r502;

use crate::wall::Span;

/// What joists are made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum JoistKind {
    /// Sawn lumber: the code's rules for bridging and openings.
    Sawn,
    /// Wood I-joists and other engineered joists: their maker's papers for bridging, webs and loads.
    Engineered,
}

/// A joist.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Joist {
    /// What it is made of.
    pub kind: JoistKind,
    /// Thickness across; the flange's width of an I-joist.
    pub thickness: Length,
    /// Depth as measured.
    pub depth: Length,
    /// Depth by name, in inches: 10 of a 2x10. Only sawn joists are judged by it.
    pub nominal_depth: u8,
}

impl Joist {
    /// A sawn joist of 1-1/2 in.
    #[must_use]
    pub const fn sawn(nominal_depth: u8, depth: Length) -> Self {
        Self { kind: JoistKind::Sawn, thickness: Length::from_inches(1.5), depth, nominal_depth }
    }
}

/// How joists end at a side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum JoistEnd {
    /// On a plate, with a rim of this thickness over their ends.
    OnPlate {
        /// Thickness of the rim.
        rim: Length,
    },
    /// In hangers on the face of a beam or a ledger, short of it by so much: 1/16 to 1/8 in by the maker.
    InHangers {
        /// The gap.
        gap: Length,
    },
    /// Past their support by so much. Refused: it has a table of its own.
    Cantilever {
        /// How far.
        overhang: Length,
    },
}

impl JoistEnd {
    /// How far the joists stop before the side.
    pub(super) const fn stops_short(self) -> Length {
        match self {
            Self::OnPlate { rim } => rim,
            Self::InHangers { gap } => gap,
            Self::Cantilever { .. } => Length::ZERO,
        }
    }
}

/// A wall above that runs along the joists: two joists stand under it.
///
/// Source: IRC 2021 R502.4 (looked up).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallAbove {
    /// Its center, from the end at which the tape is hooked.
    pub centre: Length,
    /// Clear gap between the two where pipes run in it; then full-depth blocks stand no farther than 4 ft apart.
    pub spread: Option<Length>,
}

/// An opening in the floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FloorOpening {
    /// Clear between the trimmers.
    pub across: Span,
    /// Clear between the headers.
    pub along: Span,
    /// Plies of headers and trimmers, as drawn. None: as the code asks, [`FloorOpening::plies_of_the_code`].
    pub plies: Option<u8>,
}

impl FloorOpening {
    /// One header and one trimmer at each side up to 4 ft of header, two beyond.
    ///
    /// Source: IRC 2021 R502.10 (from memory).
    #[must_use]
    pub fn plies_of_the_code(&self) -> u8 {
        if self.across.width() <= r502::SINGLE_HEADER { 1 } else { 2 }
    }

    /// As drawn, or as the code asks.
    #[must_use]
    pub fn plies(&self) -> u8 {
        self.plies.unwrap_or_else(|| self.plies_of_the_code())
    }

    /// Along the joists from outside to outside of the headers.
    pub(super) fn with_headers(&self, thickness: Length) -> Span {
        let headers = thickness * f64::from(self.plies());
        Span::new(self.along.from - headers, self.along.to + headers)
    }

    /// Across the joists from outside to outside of the trimmers.
    pub(super) fn with_trimmers(&self, thickness: Length) -> Span {
        let trimmers = thickness * f64::from(self.plies());
        Span::new(self.across.from - trimmers, self.across.to + trimmers)
    }
}

/// A load that stands on the floor in one place, over a bearing: a post, a stack of jacks, a piece of bearing wall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PointLoad {
    /// Across the joists.
    pub across: Length,
    /// Along the joists.
    pub along: Length,
    /// Upright blocks under it.
    pub blocks: u8,
}

/// Sheets of a floor, long edges across the joists.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SheetSize {
    /// Short measure, by name.
    pub width: Length,
    /// Long measure, by name.
    pub length: Length,
    /// Gap at edges and ends.
    pub gap: Length,
    /// Made a gap short of their name.
    pub sized_for_spacing: bool,
}

impl SheetSize {
    /// 4 by 8 ft, 1/8 in apart and sized for it.
    ///
    /// Source: common practice; 1/8 in from memory. The maker's stamp wins.
    #[must_use]
    pub const fn usual() -> Self {
        Self {
            width: Length::from_feet(4.0),
            length: Length::from_feet(8.0),
            gap: Length::from_inches(1.0 / 8.0),
            sized_for_spacing: true,
        }
    }
}
