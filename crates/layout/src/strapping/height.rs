//! Heights that close: the finished ceiling, and the wall boards under it.

use measure::Length;

use super::plane::Plane;

/// What hangs under the joists.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ceiling {
    /// Thickness of the strips; nothing where the board is on the joists.
    pub strip: Length,
    /// Thickness of the ceiling board.
    pub board: Length,
}

impl Ceiling {
    /// Both together.
    #[must_use]
    pub fn thickness(&self) -> Length {
        self.strip + self.board
    }
}

/// Height of the finished ceiling at a place across and along, where the laser or the string stands `datum` above the floor.
/// The face of the strips is a board's thickness higher.
#[must_use]
pub fn ceiling(plane: &Plane, [across, along]: [Length; 2], datum: Length, under: Ceiling) -> Length {
    datum + plane.height_at(across, along) - under.thickness()
}

/// Wall boards laid across the studs under a finished ceiling.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallBoards {
    /// All plates of the wall together, as measured: plates differ, and a sixteenth on each of three counts.
    pub plates: Length,
    /// What hangs under the joists.
    pub ceiling: Ceiling,
    /// The boards' widths together: 96 in for two of 48.
    pub boards: Length,
}

impl WallBoards {
    /// What is left at the floor with studs of this length; below zero where the boards do not fit.
    ///
    /// Source: arithmetic.
    #[must_use]
    pub fn gap(&self, stud: Length) -> Length {
        stud + self.plates - self.ceiling.thickness() - self.boards
    }

    /// The stud that leaves this gap at the floor.
    #[must_use]
    pub fn stud(&self, gap: Length) -> Length {
        self.boards + gap + self.ceiling.thickness() - self.plates
    }
}
