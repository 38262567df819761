//! Pieces of a wall as they stand, the marks on its plates, and the cut list.

use measure::Length;

use super::{Span, XSide};

/// What a piece is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Part {
    /// The plate on the floor.
    BottomPlate,
    /// The plate on the studs.
    TopPlate,
    /// The plate on the top plate, which laps corners and joints.
    VeryTopPlate,
    /// The stud at an end.
    EndStud,
    /// The second stud of a corner.
    CornerStud,
    /// A stud on the layout.
    Stud,
    /// A full-height stud beside an opening.
    King,
    /// A stud under a header's end.
    Jack,
    /// A stud of a post under a load.
    PostStud,
    /// A stud of a hold-down's post.
    HoldDownStud,
    /// A stud beside an inner wall.
    PartitionStud,
    /// A stud turned flat as backing.
    FlatStud,
    /// A short stud above a header.
    CrippleAbove,
    /// A short stud below a sill.
    CrippleBelow,
    /// A beam over an opening.
    Header,
    /// A flat plate under or over a header.
    HeaderPlate,
    /// The plate under a window.
    Sill,
    /// A block between the studs of a corner or a partition.
    Block,
    /// A flat block from stud to stud behind an inner wall.
    LadderBlock,
    /// A block under a level joint of the sheathing.
    PanelBlock,
}

impl Part {
    /// What it is called.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::BottomPlate => "bottom plate",
            Self::TopPlate => "top plate",
            Self::VeryTopPlate => "very top plate",
            Self::EndStud => "end stud",
            Self::CornerStud => "corner stud",
            Self::Stud => "stud",
            Self::King => "king stud",
            Self::Jack => "jack stud",
            Self::PostStud => "post stud",
            Self::HoldDownStud => "hold-down stud",
            Self::PartitionStud => "partition stud",
            Self::FlatStud => "flat stud",
            Self::CrippleAbove => "cripple above",
            Self::CrippleBelow => "cripple below",
            Self::Header => "header",
            Self::HeaderPlate => "header plate",
            Self::Sill => "sill",
            Self::Block => "block",
            Self::LadderBlock => "ladder block",
            Self::PanelBlock => "panel block",
        }
    }

    /// The letter on the plate: X a stud, K a king, J a jack, C a cripple, P a post, H a hold-down's post, B backing.
    /// None for what does not stand on a plate.
    #[must_use]
    pub const fn letter(self) -> Option<char> {
        match self {
            Self::EndStud | Self::Stud => Some('X'),
            Self::King => Some('K'),
            Self::Jack => Some('J'),
            Self::CrippleAbove | Self::CrippleBelow => Some('C'),
            Self::PostStud => Some('P'),
            Self::HoldDownStud => Some('H'),
            Self::CornerStud | Self::PartitionStud | Self::FlatStud => Some('B'),
            _ => None,
        }
    }

    /// Whether it reaches from plate to plate on edge.
    #[must_use]
    pub const fn is_full_height(self) -> bool {
        matches!(
            self,
            Self::EndStud
                | Self::CornerStud
                | Self::Stud
                | Self::King
                | Self::PostStud
                | Self::HoldDownStud
                | Self::PartitionStud
        )
    }
}

/// A piece of the elevation: a rectangle, seen from the side on which the tape's end is left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Piece {
    /// What it is.
    pub part: Part,
    /// Along the plate.
    pub along: Span,
    /// Upright, from the top of the subfloor.
    pub upright: Span,
    /// What it is cut to.
    pub length: Length,
    /// Plies behind each other.
    pub plies: u8,
}

impl Piece {
    pub(super) fn standing(part: Part, along: Span, upright: Span) -> Self {
        Self { part, along, upright, length: upright.width(), plies: 1 }
    }

    pub(super) fn lying(part: Part, along: Span, upright: Span) -> Self {
        Self { part, along, upright, length: along.width(), plies: 1 }
    }

    /// Whether both take up a piece of the same face.
    #[must_use]
    pub fn overlaps(&self, other: &Self) -> bool {
        self.along.overlaps(other.along) && self.upright.overlaps(other.upright)
    }
}

/// Which plates a mark stands on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OnPlates {
    /// Both.
    Both,
    /// The bottom plate alone: a jack, or a cripple below a sill with none above.
    Bottom,
    /// The top plate alone: a cripple over a door.
    Top,
}

/// A mark on the plates.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mark {
    /// What the tape reads there, exact, from the one end.
    pub pull: Length,
    /// On which side of the line the piece stands.
    pub x: XSide,
    /// Center of the piece.
    pub centre: Length,
    /// What stands there.
    pub part: Part,
    /// Which plates it is marked on.
    pub on: OnPlates,
    /// The layout center that it stands for; none of what is off the layout. It stands tight beside another piece where
    /// this is not its own center.
    pub layout: Option<Length>,
}

impl Mark {
    /// How far it stands off its layout center; zero on it, none of what is off the layout.
    #[must_use]
    pub fn off_layout(&self) -> Option<Length> {
        self.layout.map(|layout| self.centre - layout)
    }
}

/// A line of the cut list.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cut<P> {
    /// What is cut.
    pub piece: P,
    /// To which length, exact.
    pub length: Length,
    /// How many.
    pub count: u32,
}

/// Lengths that differ by less are one length: far below a saw's kerf.
const SAME_LENGTH: Length = Length::from_inches(1e-3);

/// Counts pieces of the same name and length, by name and then the longest first.
pub(crate) fn cut_list<P: Copy + Ord>(pieces: impl IntoIterator<Item = (P, Length, u8)>) -> Vec<Cut<P>> {
    let mut cuts: Vec<Cut<P>> = Vec::new();
    for (piece, length, count) in pieces {
        let same = |cut: &&mut Cut<P>| cut.piece == piece && (cut.length - length).abs() < SAME_LENGTH;
        match cuts.iter_mut().find(same) {
            Some(cut) => cut.count += u32::from(count),
            None => cuts.push(Cut { piece, length, count: u32::from(count) }),
        }
    }
    cuts.sort_by(|a, b| a.piece.cmp(&b.piece).then(b.length.inches().total_cmp(&a.length.inches())));
    cuts
}

/// Board feet of pieces of a nominal size: thickness by width in inches by length in feet, over twelve.
///
/// Source: a builders' pocketbook and EN5155 (looked up).
#[must_use]
pub fn board_feet(nominal_thickness: u8, nominal_width: u8, length: Length, count: u32) -> f64 {
    f64::from(count) * f64::from(nominal_thickness) * f64::from(nominal_width) * length.feet() / 12.0
}

/// Studs of a straight wall at 16 in by the pocketbook's rule, to hold beside the exact count: three for every four feet,
/// and one. Corners add two each.
///
/// Source: a builders' pocketbook of the early 1900s (looked up).
#[must_use]
pub fn studs_by_the_pocketbook(length: Length) -> f64 {
    length.feet() * 0.75 + 1.0
}
