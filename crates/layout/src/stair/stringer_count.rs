//! How many stringers carry a stair of one width.

use measure::{Denominator, Length, Rounding};
use standards::{Source, Status};

use super::check::NOISE;
use super::error::{StairError, size};

/// A tread board and the widest spacing of stringers under it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TreadBoard {
    /// Thickness of the board.
    pub thickness: Length,
    /// Widest spacing, on center.
    pub spacing: Length,
}

const fn board(thickness: f64, spacing: f64) -> TreadBoard {
    TreadBoard { thickness: Length::from_inches(thickness), spacing: Length::from_inches(spacing) }
}

/// Wood treads and their stringers by common practice; from memory. The code has no number for stairs indoors.
pub const TREAD_BOARDS: [TreadBoard; 3] = [board(0.75, 16.0), board(1.0625, 18.0), board(1.5, 24.0)];
/// Where the spacings stand.
const PRACTICE: Source = Source::new("Common practice", "spacing of stringers", Status::CommonPractice);
/// The wood industry's guide for decks has cut stringers no farther apart than this. From memory.
const DECK_GUIDE_SPACING: Length = Length::from_inches(18.0);

/// Stringers of a stair.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StringerCount {
    /// How many.
    pub stringers: u16,
    /// How far apart they are then, spread evenly over the width.
    pub spacing: Length,
    /// The widest that the tread board takes.
    pub widest: Length,
    /// How many a deck has by the guide, where cut stringers are 18 in apart at most.
    pub on_a_deck: u16,
    /// Who says so.
    pub source: Source,
}

/// Counts the stringers under treads of one thickness: as many as keep within the spacing, and one more.
///
/// # Errors
/// A width of nothing or over 100 ft; a board thinner than 3/4 in.
pub fn stringer_count(width: Length, tread_thickness: Length) -> Result<StringerCount, StairError> {
    size("width of the stair", width)?;
    let takes = |board: &&TreadBoard| tread_thickness >= board.thickness - NOISE;
    let Some(board) = TREAD_BOARDS.iter().rev().find(takes) else {
        let given = tread_thickness.rounded(Denominator::SixtyFourth, Rounding::Down);
        return Err(StairError::TreadBoardTooThin { given, least: TREAD_BOARDS[0].thickness });
    };
    let spaces = |spacing: Length| ((width - NOISE) / spacing).ceil().max(1.0);
    let bays = spaces(board.spacing);
    Ok(StringerCount {
        stringers: bays as u16 + 1,
        spacing: width / bays,
        widest: board.spacing,
        on_a_deck: spaces(board.spacing.min(DECK_GUIDE_SPACING)) as u16 + 1,
        source: PRACTICE,
    })
}
