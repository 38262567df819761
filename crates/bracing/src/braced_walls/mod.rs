//! The walls that brace a house, one by one: what the drawing calls each of them, its pieces, its push, and the wall that
//! stands on it.
//!
//! One wall a line: `Front below: W3, walls 3' 0", 3' 0", 4' 0", high 9' 0", push 5,400 lb, dead 180 plf, under Front above`.
//! Written out it reads back. Or they are filled by whoever knows the house, and looked at by [`BracedWalls::new`].
//!
//! *Invariant*: each wall has a name of its own, and no more than three stand on each other, each on one wall alone, with
//! no less push below than above.

mod pull;
mod read;
mod stack;
mod write;

use core::fmt;

use measure::{Force, Length, LineLoad};

pub use pull::{EndsError, Pull, pulls};
pub use read::read_braced_walls;

use crate::segmented::{Ends, SegmentedWall};

/// A wall of full-height pieces.
#[derive(Clone, Debug, PartialEq)]
pub struct BracedWall {
    /// Its own name: `Front below`.
    pub name: String,
    /// Its mark on the drawing's schedule; none where the drawing says nothing of it.
    pub mark: Option<String>,
    /// Length of each full-height piece, from the left.
    pub pieces: Vec<Length>,
    /// Height, under the bottom plate to the top of the top plates.
    pub height: Length,
    /// All the push along it, allowable stress design: what the wall on it brings is counted.
    pub push: Force,
    /// Dead load that surely stands on it, what is on the wall above left out.
    pub dead: LineLoad,
    /// Name of the wall that stands on it.
    pub under: Option<String>,
}

impl BracedWall {
    /// The same wall as a line of pieces that are held down at their ends.
    #[must_use]
    pub fn segmented(&self, ends: Ends) -> SegmentedWall {
        let Self { height, pieces, push, dead, .. } = self;
        SegmentedWall { height: *height, pieces: pieces.clone(), shear: *push, dead: *dead, ends }
    }
}

/// The walls of a house, whose names and stacks are in order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct BracedWalls(Vec<BracedWall>);

/// What is wrong with a wall.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BracedWallProblem {
    /// The line, or the wall's place where none was read, from one.
    pub line: usize,
    /// What is wrong with it, as a sentence.
    pub problem: String,
}

impl fmt::Display for BracedWallProblem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Line {}: {}", self.line, self.problem)
    }
}

impl core::error::Error for BracedWallProblem {}

/// The most walls that are taken.
const MOST: usize = 24;

impl BracedWalls {
    /// Takes walls that were filled by whoever knows the house.
    ///
    /// # Errors
    /// Every wall whose name or stack is not in order, with what is wrong with it; its line is its place among them.
    ///
    /// ```
    /// use bracing::braced_walls::{BracedWalls, read_braced_walls};
    /// let read = read_braced_walls("Front: P1, walls 4', 6', high 8', push 2,400 lb")?;
    /// assert_eq!(BracedWalls::new(read.as_slice().to_vec()), Ok(read));
    /// # Ok::<(), Vec<bracing::braced_walls::BracedWallProblem>>(())
    /// ```
    pub fn new(walls: Vec<BracedWall>) -> Result<Self, Vec<BracedWallProblem>> {
        Self::of_lines(walls.into_iter().enumerate().map(|(index, wall)| (index + 1, wall)).collect())
    }

    /// Walls with the lines that they stand in.
    fn of_lines(walls: Vec<(usize, BracedWall)>) -> Result<Self, Vec<BracedWallProblem>> {
        let (lines, walls): (Vec<usize>, Vec<BracedWall>) = walls.into_iter().unzip();
        let problems: Vec<BracedWallProblem> = lines
            .into_iter()
            .enumerate()
            .filter_map(|(index, line)| Some(BracedWallProblem { line, problem: stack::problem(&walls, index)? }))
            .collect();
        if problems.is_empty() { Ok(Self(walls)) } else { Err(problems) }
    }

    /// The walls, in their order.
    #[must_use]
    pub fn as_slice(&self) -> &[BracedWall] {
        &self.0
    }

    /// The walls that stand on a wall and it itself, from the top down.
    #[must_use]
    pub fn stack<'w>(&'w self, wall: &'w BracedWall) -> Vec<&'w BracedWall> {
        let mut stack = vec![wall];
        while let Some(above) = stack.last().and_then(|last| stack::above(&self.0, last))
            && stack.len() < stack::STOREYS
        {
            stack.push(above);
        }
        stack.reverse();
        stack
    }
}
