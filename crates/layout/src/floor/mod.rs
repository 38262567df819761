//! Floors: joists, what doubles and trims them, and the sheets on top.
//!
//! Start at [`Floor::lay_out`]. Joists are marked along the plates from the one end at which the tape is hooked; across
//! that, along the joists, lengths run from the near side. Layout joists keep their centers: at an opening they become
//! tails on the same marks.
//!
//! *Absent on purpose*: spans and sizes, which are given; cantilevers, which have tables of their own.

mod adhesive;
mod bridging;
mod check;
mod error;
mod given;
mod hangers;
mod joists;
mod notice;
mod piece;
mod subfloor;

pub use adhesive::{bead_length, web_stiffener};
pub use bridging::Bridging;
pub use error::FloorError;
pub use given::{FloorOpening, Joist, JoistEnd, JoistKind, PointLoad, SheetSize, WallAbove};
pub use hangers::{Hanger, Hung, SquashBlocks};
pub use notice::FloorNotice;
pub use piece::{FloorMark, FloorPart, FloorPiece, OnSides};
pub use subfloor::{FloorSheet, Subfloor};

use measure::Length;

use crate::wall::{Cut, Layout, PullTo, cut_list};
use joists::Line;

/// A floor to be laid out.
#[derive(Clone, Debug, PartialEq)]
pub struct Floor {
    /// Along the plates, out to out: across the joists.
    pub length: Length,
    /// Along the joists, out to out of the rims or between the faces that hangers hang on.
    pub width: Length,
    /// Spacing, where the sheets start, and what the pulls are taken to.
    pub layout: Layout,
    /// The joists.
    pub joist: Joist,
    /// How joists end at the near side and at the far one.
    pub ends: [JoistEnd; 2],
    /// Walls above that run along the joists.
    pub walls_above: Vec<WallAbove>,
    /// Openings, in any order.
    pub openings: Vec<FloorOpening>,
    /// Blocking or bridging between the joists.
    pub bridging: Bridging,
    /// Posts, stacks of jacks and the like that stand on the floor over a bearing.
    pub point_loads: Vec<PointLoad>,
    /// Length of the boards that rims are cut from.
    pub rim_stock: Length,
    /// Sheets on top.
    pub sheets: Option<SheetSize>,
}

impl Floor {
    /// A plain floor on plates: 1-1/2 in rims from 16 ft boards, bridging as the code asks, nothing in it.
    #[must_use]
    pub const fn plain(length: Length, width: Length, layout: Layout, joist: Joist) -> Self {
        let rim = JoistEnd::OnPlate { rim: Length::from_inches(1.5) };
        Self {
            length,
            width,
            layout,
            joist,
            ends: [rim, rim],
            walls_above: Vec::new(),
            openings: Vec::new(),
            bridging: Bridging::AsTheCodeAsks,
            point_loads: Vec::new(),
            rim_stock: Length::from_feet(16.0),
            sheets: None,
        }
    }

    /// Lays the floor out.
    ///
    /// # Errors
    /// When the floor cannot be framed as given: see [`FloorError`].
    ///
    /// # Example
    /// ```
    /// use layout::floor::{Floor, FloorPart, Joist};
    /// use layout::wall::{Layout, Spacing};
    /// use measure::Length;
    ///
    /// let floor = Floor::plain(
    ///     Length::from_feet(40.0),
    ///     Length::from_feet(14.0),
    ///     Layout::usual(Spacing::Sixteen),
    ///     Joist::sawn(10, Length::from_inches(9.25)),
    /// );
    /// let laid = floor.lay_out()?;
    /// assert_eq!(laid.count(FloorPart::Joist) + laid.count(FloorPart::EndJoist), 31);
    /// # Ok::<(), layout::floor::FloorError>(())
    /// ```
    pub fn lay_out(&self) -> Result<LaidFloor, FloorError> {
        check::check(self)?;
        let mut notices = Vec::new();
        let lines = joists::lines(self, &mut notices)?;
        let mut pieces = joists::pieces(self, &lines, &mut notices);
        bridging::bridge(self, &mut pieces);
        let squash_blocks = hangers::squash_blocks(self, &lines);
        let subfloor = subfloor::subfloor(self, &lines, &mut notices);
        let cut = pieces.iter().map(|piece| (piece.part, piece.length, piece.plies));
        let squash = squash_blocks.iter().map(|blocks| (FloorPart::SquashBlock, blocks.length, blocks.count));
        Ok(LaidFloor {
            marks: marks(self, &lines),
            cuts: cut_list(cut.chain(squash)),
            hangers: hangers::hangers(self, &pieces),
            pieces,
            squash_blocks,
            subfloor,
            notices,
        })
    }
}

/// A floor laid out.
#[derive(Clone, Debug, PartialEq)]
pub struct LaidFloor {
    /// The marks, rising from the end at which the tape is hooked.
    pub marks: Vec<FloorMark>,
    /// Every piece as it lies, seen from above. No two overlap.
    pub pieces: Vec<FloorPiece>,
    /// What to cut: by piece, the longest first.
    pub cuts: Vec<Cut<FloorPart>>,
    /// Where something hangs in a hanger.
    pub hangers: Vec<Hanger>,
    /// Upright blocks under point loads.
    pub squash_blocks: Vec<SquashBlocks>,
    /// The sheets, where there are any.
    pub subfloor: Option<Subfloor>,
    /// What cannot be laid out well.
    pub notices: Vec<FloorNotice>,
}

impl LaidFloor {
    /// How many pieces of a kind are cut.
    #[must_use]
    pub fn count(&self, part: FloorPart) -> u32 {
        self.cuts.iter().filter(|cut| cut.piece == part).map(|cut| cut.count).sum()
    }
}

fn marks(floor: &Floor, lines: &[Line]) -> Vec<FloorMark> {
    let mark = |line: &Line| {
        let pull = match floor.layout.pull_to {
            PullTo::NearEdge => line.across.from,
            PullTo::Centre => line.across.centre(),
            PullTo::FarEdge => line.across.to,
        };
        let (centre, x) = (line.across.centre(), floor.layout.pull_to.x());
        let on = joists::on_sides(floor, line)?;
        Some(FloorMark { pull, x, centre, part: line.part, on, layout: line.layout })
    };
    lines.iter().filter_map(mark).collect()
}
