//! Ends of a wall, where others meet it, and studs that stand for a load.

use measure::Length;

use super::Span;

/// Wallboard wants so much wood behind its edge in a corner. Source: common practice.
pub const BACKING: Length = Length::from_inches(1.0);
/// Blocks between corner or partition studs: at the bottom, the middle and the top. Source: common practice.
pub(super) const BLOCKS: u8 = 3;
/// Length of such a block.
pub(super) const BLOCK: Length = Length::from_inches(12.0);
/// Ladder blocks stand so far apart. Source: common practice.
pub const LADDER: Length = Length::from_inches(24.0);

/// How a wall ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum End {
    /// One stud: nothing meets here that needs backing, or this wall butts against another.
    OneStud,
    /// A corner of three studs, the third of which is the end stud of the wall that meets: two here, with blocks between.
    ThreeStuds {
        /// Thickness of the wall that meets, without its board.
        meets: Length,
    },
    /// A corner of two studs, one of each wall; clips hold the wallboard, which has no wood behind it here.
    TwoStudsAndClips,
    /// A corner with one stud turned flat for the wallboard, so that insulation reaches the outer stud.
    FlatStud {
        /// Thickness of the wall that meets, without its board.
        meets: Length,
    },
}

/// What backs the wallboard where an inner wall meets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Backing {
    /// A stud at each side of the inner wall, with blocks between.
    TwoStudsAndBlocks,
    /// Flat blocks from stud to stud, 24 in apart.
    Ladder,
    /// One stud turned flat, so wide.
    FlatStud(Length),
}

/// An inner wall that meets this one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Partition {
    /// Its center, from the plate's end.
    pub centre: Length,
    /// Its thickness, without its board.
    pub thickness: Length,
    /// What backs the wallboard.
    pub backing: Backing,
}

impl Partition {
    /// Where it meets.
    #[must_use]
    pub fn meets(&self) -> Span {
        Span::about(self.centre, self.thickness)
    }

    /// With the backing that the wallboard of both sides needs.
    #[must_use]
    pub fn with_backing(&self) -> Span {
        Span::about(self.centre, self.thickness + BACKING * 2.0)
    }
}

/// Studs nailed together under a load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Post {
    /// Center of the pack, from the plate's end.
    pub centre: Length,
    /// Studs in it: two are a doubled stud; under a beam as many as the beam is wide.
    pub plies: u8,
}

/// A piece of wall that is sheathed to brace, with a post for a hold-down at each end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Braced {
    /// Where its sheathing begins.
    pub from: Length,
    /// Where it ends.
    pub to: Length,
    /// Full-height studs of each post. Those that stand there already are counted.
    pub plies: u8,
}
