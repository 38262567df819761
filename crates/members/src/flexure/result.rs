//! What a check of a member that bends answers.

use lumber::Family;
use measure::{FlexuralRigidity, Force, Length, Ratio};

use super::input::Case;
use super::strength::Piece;
use crate::beam::Section;
use crate::check::{Check, Verdict, governing};
use crate::choose::Candidate;
use crate::limit::Limit;
use crate::working::Part;

/// A check, and where it was found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Traced {
    /// The check.
    pub check: Check<Limit>,
    /// Where along the member it governs.
    pub at: Length,
    /// Which way of the loads, counted from 0.
    pub way: usize,
}

/// One piece that was tried.
#[derive(Clone, Debug, PartialEq)]
pub struct Tried {
    /// The piece.
    pub piece: Piece,
    /// Its limits, with where each governs; empty where no published value is held or a rule was left.
    pub found: Vec<Traced>,
    /// Why there is no answer, as a sentence.
    pub outside: Option<String>,
    /// Why it cannot be used, whatever it carries.
    pub misfit: Option<String>,
    /// Its stiffness.
    pub rigidity: FlexuralRigidity,
    /// The way of the loads that bends it most, for the picture.
    pub picture: usize,
}

impl Tried {
    /// Its limits.
    #[must_use]
    pub fn checks(&self) -> Vec<Check<Limit>> {
        self.found.iter().map(|found| found.check).collect()
    }

    /// The limit that uses the greatest share.
    #[must_use]
    pub fn governing(&self) -> Option<Check<Limit>> {
        governing(&self.checks()).copied()
    }

    /// One limit.
    #[must_use]
    pub fn of(&self, limit: Limit) -> Option<&Traced> {
        self.found.iter().find(|found| found.check.limit == limit)
    }

    /// The verdict on its strength and stiffness.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        if self.outside.is_some() {
            return Verdict::Outside;
        }
        self.greatest().map_or(Verdict::Outside, Verdict::of)
    }

    fn greatest(&self) -> Option<Ratio> {
        self.found.iter().map(|found| found.check.share).reduce(f64::max)
    }
}

impl Candidate for Tried {
    fn family(&self) -> Family {
        self.piece.family()
    }

    fn area(&self) -> f64 {
        self.piece.area().square_inches()
    }

    fn works(&self) -> bool {
        self.verdict().holds() && self.misfit.is_none()
    }

    fn fits(&self) -> bool {
        self.misfit.is_none()
    }

    fn telling_share(&self) -> Ratio {
        self.greatest().unwrap_or(f64::INFINITY)
    }
}

/// What a support gives.
#[derive(Clone, Debug, PartialEq)]
pub struct SupportForce {
    /// Where it is.
    pub at: Length,
    /// Up, case by case, each on all spans; wind at strength level.
    pub by_case: Vec<(Case, Force)>,
    /// The most that it must hold up, in any combination.
    pub most: Force,
    /// The least; below zero it must be held down.
    pub least: Force,
}

/// The whole answer.
#[derive(Clone, Debug, PartialEq)]
pub struct FlexureAnswer {
    /// Every piece tried.
    pub tried: Vec<Tried>,
    /// Which of them the answer is about.
    pub judged: usize,
    /// The smallest of each family that works.
    pub smallest: Vec<usize>,
    /// What each support of the judged piece gives.
    pub forces: Vec<SupportForce>,
    /// Shear, moment and sag of the judged piece under the way that bends it most, from left to right.
    pub diagram: Vec<Section>,
    /// The working of the judged piece.
    pub working: Vec<Part>,
}

impl FlexureAnswer {
    /// The judged piece.
    #[must_use]
    pub fn about(&self) -> &Tried {
        &self.tried[self.judged]
    }
}
