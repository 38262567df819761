//! The board that a stringer is cut from: what is left of it, and how long it is.

use measure::Length;
use standards::irc_2021::r311_7::StairLimit;
use standards::{Source, Status};

use super::check::{Check, Subject};
use super::flight::slope_length;

/// Least throat by common practice. From memory.
pub const PRACTICE_THROAT: StairLimit = StairLimit {
    value: Length::from_inches(3.5),
    source: Source::new("Common practice", "throat of a cut stringer", Status::CommonPractice),
};
/// Least throat by the wood industry's guide for decks. From memory.
pub const DECK_GUIDE_THROAT: StairLimit = StairLimit {
    value: Length::from_inches(5.0),
    source: Source::new("Prescriptive residential deck guide", "stair stringers", Status::FromMemory),
};
/// Stock is sold by lengths of this.
const STOCK_STEP: Length = Length::from_feet(2.0);

/// Wood left between the steps of a cut stringer and its lower edge, square to the edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Throat {
    /// What is left: `Db - r t / sqrt(r² + t²)`.
    pub left: Length,
    /// Against common practice.
    pub practice: Check,
    /// Against the guide for decks, which is stricter.
    pub deck_guide: Check,
    /// The board that just meets common practice.
    pub least_board: Length,
}

/// How deep a step is cut, square to the edge.
fn cut_depth(riser: Length, tread: Length) -> Length {
    riser * (tread / slope_length(riser, tread))
}

pub(super) fn throat(board: Length, riser: Length, tread: Length) -> Throat {
    let cut = cut_depth(riser, tread);
    let left = board - cut;
    Throat {
        left,
        practice: Check::at_least(Subject::Throat, left, PRACTICE_THROAT),
        deck_guide: Check::at_least(Subject::Throat, left, DECK_GUIDE_THROAT),
        least_board: cut + PRACTICE_THROAT.value,
    }
}

/// The length to order: a step for each riser and one depth of the board for the cuts at its ends, and the stock that has it.
/// Computed here, on the safe side.
pub(super) fn to_order(risers: u16, riser: Length, tread: Length, board: Length) -> [Length; 2] {
    let least = slope_length(riser, tread) * f64::from(risers) + board;
    [least, STOCK_STEP * (least / STOCK_STEP).ceil()]
}
