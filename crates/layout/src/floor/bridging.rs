//! Rows of blocking or bridging between joists.

use measure::Length;
use standards::irc_2021::r502;

use super::joists::between_ends;
use super::{Floor, FloorPart, FloorPiece, JoistKind};
use crate::wall::{NOISE, Span, solids};

/// How many rows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bridging {
    /// Sawn joists deeper than a 2x12: rows no farther apart than 8 ft. Shallower ones, and engineered ones, which follow
    /// their maker's papers: none.
    ///
    /// Source: IRC 2021 R502.7.1 (looked up).
    AsTheCodeAsks,
    /// So many, evenly.
    Rows(u8),
}

impl Floor {
    /// Rows of blocking.
    #[must_use]
    pub fn rows(&self) -> u32 {
        let deep = self.joist.kind == JoistKind::Sawn && self.joist.nominal_depth > r502::DEEPEST_WITHOUT_BRIDGING;
        match self.bridging {
            Bridging::Rows(rows) => u32::from(rows),
            Bridging::AsTheCodeAsks if deep => {
                let spaces = between_ends(self).width() / r502::BRIDGING_SPACING;
                ((spaces - 1e-9).ceil().max(1.0) as u32).saturating_sub(1)
            }
            Bridging::AsTheCodeAsks => 0,
        }
    }
}

/// Adds a block in each bay of each row. In an opening there is no bay.
pub(super) fn bridge(floor: &Floor, pieces: &mut Vec<FloorPiece>) {
    let ends = between_ends(floor);
    let rows = floor.rows();
    for row in 1..=rows {
        let at = ends.from + ends.width() * (f64::from(row) / f64::from(rows + 1));
        let along = Span::about(at, floor.joist.thickness);
        let there = pieces.iter().filter(|piece| piece.along.overlaps(along)).map(|piece| piece.across);
        let wood = solids(there.chain(voids(floor, at)));
        let bays = wood.windows(2).map(|pair| Span::new(pair[0].to, pair[1].from)).filter(|bay| bay.width() > NOISE);
        let block =
            |across: Span| FloorPiece { part: FloorPart::Block, across, along, length: across.width(), plies: 1 };
        let blocks: Vec<FloorPiece> = bays.map(block).collect();
        pieces.extend(blocks);
    }
}

fn voids(floor: &Floor, at: Length) -> impl Iterator<Item = Span> {
    floor.openings.iter().filter(move |opening| opening.along.from < at && at < opening.along.to).map(|o| o.across)
}
