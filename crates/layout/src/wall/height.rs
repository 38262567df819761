//! Heights that close: studs, plates, finish floor, strapping and board between the subfloor and the finished ceiling.

use measure::Length;
use standards::{Source, Status};

/// Where the lengths of precut studs stand.
pub const PRECUT: Source = Source::new("Common practice", "precut studs", Status::FromMemory);
/// Studs as the mill cuts them for ceilings of 8, 9 and 10 ft, from [`PRECUT`].
pub const PRECUT_STUDS: [Length; 3] =
    [Length::from_inches(92.625), Length::from_inches(104.625), Length::from_inches(116.625)];

/// What a wall's frame is high of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Heights {
    /// Length of a stud.
    pub stud: Length,
    /// Thickness of each plate, as measured: three plates that are 1/16 in over make the wall 3/16 in higher.
    pub plate: Length,
    /// Plates on top: two, or one on an inner wall that carries nothing.
    pub top_plates: u8,
}

impl Heights {
    /// One plate below and two above, of 1-1/2 in.
    #[must_use]
    pub const fn usual(stud: Length) -> Self {
        Self { stud, plate: Length::from_inches(1.5), top_plates: 2 }
    }

    /// Studs for a frame so high, from the subfloor to the top of the plates.
    #[must_use]
    pub fn of_frame(height: Length, plate: Length, top_plates: u8) -> Self {
        Self { stud: height - plate * f64::from(top_plates + 1), plate, top_plates }
    }

    /// Studs for a ceiling.
    #[must_use]
    pub fn for_ceiling(finished: Length, ceiling: &Ceiling, plate: Length, top_plates: u8) -> Self {
        Self::of_frame(finished + ceiling.finish_floor + ceiling.below_plates(), plate, top_plates)
    }

    /// From the subfloor to the top of the plates.
    #[must_use]
    pub fn frame(&self) -> Length {
        self.stud_top() + self.plate * f64::from(self.top_plates)
    }

    /// From the subfloor to the top of the studs.
    #[must_use]
    pub fn stud_top(&self) -> Length {
        self.plate + self.stud
    }

    /// From the finish floor to the finished ceiling.
    #[must_use]
    pub fn finished(&self, ceiling: &Ceiling) -> Length {
        self.frame() - ceiling.below_plates() - ceiling.finish_floor
    }

    /// What is left at the subfloor under wallboard that hangs so far down from the ceiling's board; negative where it
    /// does not fit.
    #[must_use]
    pub fn board_gap(&self, ceiling: &Ceiling, wallboard: Length) -> Length {
        self.frame() - ceiling.below_plates() - wallboard
    }
}

/// What lies between the frame and the finished faces.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Ceiling {
    /// Finish floor on the subfloor.
    pub finish_floor: Length,
    /// Strapping under the joists; none where the board goes on the joists.
    pub strapping: Length,
    /// The ceiling's board.
    pub board: Length,
}

impl Ceiling {
    fn below_plates(&self) -> Length {
        self.strapping + self.board
    }
}

/// Top of a door's rough opening above the subfloor: the leaf and what stands above it, from the finish floor.
///
/// Source: common practice; clearance 2 to 2-1/2 in over the leaf (from memory). The maker's size wins.
#[must_use]
pub fn door_head(leaf: Length, clearance: Length, finish_floor: Length) -> Length {
    leaf + clearance + finish_floor
}
