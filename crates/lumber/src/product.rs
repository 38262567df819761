//! One piece: sawn lumber, laminated veneer lumber, glulam, or a piece typed in from its label.

use measure::Length;
use standards::nds_2018::supplement::{GlulamLayup, LvlGrade};

use crate::{EngineeredLabel, Grade, LumberError, SawnSize, Species};

/// A sawn piece.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Sawn {
    /// Species group.
    pub species: Species,
    /// Grade.
    pub grade: Grade,
    /// Size.
    pub size: SawnSize,
}

/// A piece of laminated veneer lumber of a generic class, on edge.
///
/// Makers differ: for real work type the piece in from its label.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lvl {
    grade: LvlGrade,
    breadth: Length,
    depth: Length,
}

impl Lvl {
    /// Breadth of one usual ply.
    pub const USUAL_BREADTH: Length = Length::from_inches(1.75);

    /// A piece of this class and size: 1-1/2 to 7 in broad, 3-1/2 to 24 in deep.
    ///
    /// # Errors
    /// When the size is outside that.
    pub fn new(grade: LvlGrade, breadth: Length, depth: Length) -> Result<Self, LumberError> {
        within("LVL breadth", breadth, 1.5, 7.0)?;
        within("LVL depth", depth, 3.5, 24.0)?;
        Ok(Self { grade, breadth, depth })
    }

    /// Its class.
    #[must_use]
    pub const fn grade(self) -> LvlGrade {
        self.grade
    }

    /// Its breadth.
    #[must_use]
    pub const fn breadth(self) -> Length {
        self.breadth
    }

    /// Its depth.
    #[must_use]
    pub const fn depth(self) -> Length {
        self.depth
    }

    /// Exponent of its depth factor `(12/d)^k`. Makers publish 0.111 to 0.136; a generic piece takes the end of that
    /// range which leaves it less: 1/9 under 12 in deep, where the factor is a gain, 0.136 above.
    #[must_use]
    pub fn depth_exponent(self) -> f64 {
        if self.depth.inches() > 12.0 { 0.136 } else { 1.0 / 9.0 }
    }
}

/// A glulam beam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Glulam {
    layup: GlulamLayup,
    breadth: Length,
    depth: Length,
}

impl Glulam {
    /// A beam of this lay-up and size: 2-1/2 to 10-3/4 in broad, 6 to 48 in deep.
    ///
    /// # Errors
    /// When the size is outside that.
    pub fn new(layup: GlulamLayup, breadth: Length, depth: Length) -> Result<Self, LumberError> {
        within("Glulam breadth", breadth, 2.5, 10.75)?;
        within("Glulam depth", depth, 6.0, 48.0)?;
        Ok(Self { layup, breadth, depth })
    }

    /// Its lay-up.
    #[must_use]
    pub const fn layup(self) -> GlulamLayup {
        self.layup
    }

    /// Its breadth.
    #[must_use]
    pub const fn breadth(self) -> Length {
        self.breadth
    }

    /// Its depth.
    #[must_use]
    pub const fn depth(self) -> Length {
        self.depth
    }
}

/// One piece that can be picked up.
#[derive(Clone, Debug, PartialEq)]
pub enum Product {
    /// Sawn lumber or a timber.
    Sawn(Sawn),
    /// Laminated veneer lumber of a generic class.
    Lvl(Lvl),
    /// Glulam.
    Glulam(Glulam),
    /// An engineered piece typed in from its label.
    Labelled(EngineeredLabel),
}

impl Product {
    /// Breadth of the piece on edge.
    #[must_use]
    pub const fn breadth(&self) -> Length {
        match self {
            Self::Sawn(sawn) => sawn.size.breadth(),
            Self::Lvl(lvl) => lvl.breadth,
            Self::Glulam(glulam) => glulam.breadth,
            Self::Labelled(label) => label.breadth(),
        }
    }

    /// Depth of the piece on edge.
    #[must_use]
    pub const fn depth(&self) -> Length {
        match self {
            Self::Sawn(sawn) => sawn.size.depth(),
            Self::Lvl(lvl) => lvl.depth,
            Self::Glulam(glulam) => glulam.depth,
            Self::Labelled(label) => label.depth(),
        }
    }
}

/// Gives the length back when it lies within the inches given.
pub(crate) fn within(what: &'static str, length: Length, low: f64, high: f64) -> Result<Length, LumberError> {
    let given = length.inches();
    if (low..=high).contains(&given) {
        return Ok(length);
    }
    Err(LumberError::OutsideRange { what, given, low, high, unit: "in" })
}
