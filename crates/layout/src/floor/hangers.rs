//! Hangers, and upright blocks that take a load past the joists.

use measure::Length;
use standards::irc_2021::r502;

use super::joists::{Line, between_ends};
use super::{Floor, FloorPart, FloorPiece, JoistEnd};
use crate::wall::{NOISE, Span};

/// What hangs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Hung {
    /// A joist, a trimmer or a tail on the face of a beam or a ledger.
    JoistOnBeam,
    /// A header over 6 ft on a trimmer. Source: IRC 2021 R502.10 (from memory).
    HeaderOnTrimmer,
    /// A tail over 12 ft on a header: in a hanger, or on a 2x2 ledger. Source: IRC 2021 R502.10 (from memory).
    TailOnHeader,
}

/// A hanger.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hanger {
    /// What hangs in it.
    pub hung: Hung,
    /// Which piece.
    pub part: FloorPart,
    /// Across the joists: the middle of a joist, or the trimmer's face that a header meets.
    pub across: Length,
    /// Along the joists: the face that a joist meets, or the middle of a header.
    pub along: Length,
    /// Plies that it takes.
    pub plies: u8,
}

/// Every hanger: joist ends at a beam, then headers, then tails. Doubled joists are listed ply by ply.
pub(super) fn hangers(floor: &Floor, pieces: &[FloorPiece]) -> Vec<Hanger> {
    let ends = between_ends(floor);
    let at_beam = pieces.iter().filter(|piece| runs_along(piece.part)).flat_map(|piece| {
        let sides = [(floor.ends[0], piece.along.from, ends.from), (floor.ends[1], piece.along.to, ends.to)];
        let hung = sides
            .into_iter()
            .filter(|(end, to, side)| matches!(end, JoistEnd::InHangers { .. }) && (*to - *side).abs() < NOISE);
        hung.map(|(_, along, _)| hanger(Hung::JoistOnBeam, piece, piece.across.centre(), along)).collect::<Vec<_>>()
    });
    let headers = pieces.iter().filter(|piece| piece.part == FloorPart::Header);
    let long_headers = headers.filter(|piece| piece.length > r502::HEADER_IN_HANGERS).flat_map(|piece| {
        [piece.across.from, piece.across.to]
            .map(|across| hanger(Hung::HeaderOnTrimmer, piece, across, piece.along.centre()))
    });
    let tails = pieces.iter().filter(|piece| piece.part == FloorPart::Tail);
    let long_tails = tails.filter(|piece| piece.length > r502::TAIL_IN_HANGERS).flat_map(|piece| {
        let (Span { from, to }, across) = (piece.along, piece.across.centre());
        let at_header = [(from, ends.from), (to, ends.to)].into_iter().filter(|(at, side)| (*at - *side).abs() > NOISE);
        at_header.map(|(along, _)| hanger(Hung::TailOnHeader, piece, across, along)).collect::<Vec<_>>()
    });
    at_beam.chain(long_headers).chain(long_tails).collect()
}

const fn runs_along(part: FloorPart) -> bool {
    matches!(part, FloorPart::EndJoist | FloorPart::Joist | FloorPart::WallJoist | FloorPart::Trimmer | FloorPart::Tail)
}

const fn hanger(hung: Hung, piece: &FloorPiece, across: Length, along: Length) -> Hanger {
    Hanger { hung, part: piece.part, across, along, plies: piece.plies }
}

/// A block stands so much above its joist, so that it takes the load first.
///
/// Source: a joist maker's detail (looked up); the maker's papers win, IRC 2021 R502.8.2 and R502.11 (from memory).
const PROUD: Length = Length::from_inches(1.0 / 16.0);

/// Blocks under one load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SquashBlocks {
    /// Where the load stands, across the joists.
    pub across: Length,
    /// Where it stands, along the joists.
    pub along: Length,
    /// The joist that they stand beside: the nearest one.
    pub beside: Option<Length>,
    /// What each is cut to: the joist's depth and 1/16 in.
    pub length: Length,
    /// How many.
    pub count: u8,
}

pub(super) fn squash_blocks(floor: &Floor, lines: &[Line]) -> Vec<SquashBlocks> {
    let of = |load: &super::PointLoad| {
        let runs_there = |line: &&Line| line.runs.iter().any(|run| run.from <= load.along && load.along <= run.to);
        let off = |line: &Line| (line.across.centre() - load.across).abs().inches();
        // Past the joists' ends the block stands between them at the rim.
        let whole = lines.iter().filter(|line| line.part != FloorPart::Tail || runs_there(line));
        let beside = whole.min_by(|a, b| off(a).total_cmp(&off(b))).map(|line| line.across.centre());
        let (across, along, count) = (load.across, load.along, load.blocks);
        SquashBlocks { across, along, beside, length: floor.joist.depth + PROUD, count }
    };
    floor.point_loads.iter().map(of).collect()
}
