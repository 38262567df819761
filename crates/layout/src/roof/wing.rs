//! A wing of a house: a rectangle in plan with a ridge, and a gable or a hip at each end.

use measure::{Length, Ratio, Slope};

use super::error::{RoofError, positive};
use super::plane::{pitched, ratio};

/// A place in plan: across the sheet to the right, and up it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlanPoint {
    /// To the right.
    pub x: Length,
    /// Up the sheet.
    pub y: Length,
}

/// Which way a plane falls on the sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Falls {
    /// To the left.
    Left,
    /// To the right.
    Right,
    /// Down the sheet.
    Down,
    /// Up the sheet.
    Up,
}

/// Which way a ridge runs on the sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RidgeRuns {
    /// Left and right.
    Across,
    /// Up and down.
    UpAndDown,
}

/// The end of a wing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum WingEnd {
    /// A gable wall.
    Gable,
    /// A hip with this pitch.
    Hip(Slope),
    /// It runs into the wing beyond, up to that wing's middle, and its planes die into the other's.
    Into,
}

/// A wing: outer faces of its walls, all on one plate height.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wing {
    /// Lower left corner on the sheet.
    pub from: PlanPoint,
    /// Upper right corner.
    pub to: PlanPoint,
    /// Which way its ridge runs.
    pub ridge: RidgeRuns,
    /// Pitch of both sides.
    pub pitch: Slope,
    /// Its ends: the left or lower one, and the right or upper one.
    pub ends: [WingEnd; 2],
}

/// A rectangle in inches: low and high, across and up.
pub(super) type Bounds = [[f64; 2]; 2];

/// A plane over a wing: it rises from one side of its rectangle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct WingPlane {
    pub(super) wing: usize,
    pub(super) falls: Falls,
    /// Rise for one inch of run, across and up the sheet.
    pub(super) rises: [Ratio; 2],
    /// Height over the sheet's corner.
    pub(super) at_corner: f64,
}

impl WingPlane {
    pub(super) const fn height(&self, at: [f64; 2]) -> f64 {
        self.at_corner + self.rises[0] * at[0] + self.rises[1] * at[1]
    }

    /// Whether both are one plane, to what arithmetic leaves.
    pub(super) fn is_same(&self, other: Self) -> bool {
        const ONE: f64 = 1e-9;
        let apart = [self.rises[0] - other.rises[0], self.rises[1] - other.rises[1], self.at_corner - other.at_corner];
        apart.iter().all(|apart| apart.abs() < ONE)
    }
}

impl Wing {
    pub(super) fn is_whole(&self) -> Result<(), RoofError> {
        pitched(self.pitch)?;
        positive("width of the wing", self.to.x - self.from.x)?;
        positive("length of the wing up the sheet", self.to.y - self.from.y)?;
        for end in self.ends {
            if let WingEnd::Hip(pitch) = end {
                pitched(pitch)?;
            }
        }
        Ok(())
    }

    pub(super) const fn bounds(&self) -> Bounds {
        [[self.from.x.inches(), self.to.x.inches()], [self.from.y.inches(), self.to.y.inches()]]
    }

    /// The axis its ridge runs along: 0 across the sheet, 1 up it.
    pub(super) const fn along(&self) -> usize {
        match self.ridge {
            RidgeRuns::Across => 0,
            RidgeRuns::UpAndDown => 1,
        }
    }

    /// Its planes, the first two on the sides; a gable end has none.
    pub(super) fn planes(&self, wing: usize) -> Vec<WingPlane> {
        let (along, bounds) = (self.along(), self.bounds());
        let plane = |axis: usize, far: bool, pitch: Slope| {
            let rise = if far { -ratio(pitch) } else { ratio(pitch) };
            let mut rises = [0.0; 2];
            rises[axis] = rise;
            let edge = bounds[axis][usize::from(far)];
            WingPlane { wing, falls: falls(axis, far), rises, at_corner: -rise * edge }
        };
        let sides = [false, true].map(|far| plane(1 - along, far, self.pitch));
        let ends = [false, true].into_iter().zip(self.ends).filter_map(|(far, end)| match end {
            WingEnd::Hip(pitch) => Some(plane(along, far, pitch)),
            WingEnd::Gable | WingEnd::Into => None,
        });
        sides.into_iter().chain(ends).collect()
    }
}

const fn falls(axis: usize, far: bool) -> Falls {
    match (axis, far) {
        (0, false) => Falls::Left,
        (0, true) => Falls::Right,
        (_, false) => Falls::Down,
        (_, true) => Falls::Up,
    }
}
