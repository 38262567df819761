//! What a broken window does to the pressure inside a house.

use measure::Area;
use standards::OutsideTable;
use standards::asce7_16::{
    chapter_26::Enclosure,
    chapter_26_12::{Openings, enclosure},
};

/// Openings of one wall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallOpenings {
    /// Area of the wall, openings and all.
    pub gross: Area,
    /// What is always open: vents, a breezeway.
    pub open: Area,
    /// What opens when it breaks: glass without protection, a garage door without a wind rating.
    pub breakable: Area,
}

impl WallOpenings {
    fn whole(&self) -> Openings {
        Openings { open: self.open, gross: self.gross }
    }

    fn broken(&self) -> Openings {
        Openings { open: self.open + self.breakable, gross: self.gross }
    }
}

/// What breaks in the worst case.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Broken {
    /// Nothing changes the class for the worse.
    Nothing,
    /// Everything breakable in one wall, by its place in the list.
    Wall(usize),
    /// Everything breakable in every wall.
    All,
}

/// How open a house is whole, and at worst when something breaks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BrokenGlass {
    /// Everything whole.
    pub whole: Enclosure,
    /// The class with the largest internal pressure coefficient.
    pub worst: Enclosure,
    /// What breaks for it.
    pub broken: Broken,
}

impl BrokenGlass {
    /// Whether a broken window raises the pressure inside.
    #[must_use]
    pub fn matters(&self) -> bool {
        self.broken != Broken::Nothing
    }
}

/// The class of a house whole, with each wall's breakable openings broken by themselves, and with all broken; the worst
/// of them by its internal pressure coefficient.
///
/// # Errors
/// As [`enclosure`]: an opening larger than its wall, a wall without area, no wall; a negative breakable area.
pub fn broken_glass(walls: &[WallOpenings], roof: Openings) -> Result<BrokenGlass, OutsideTable> {
    let class = |breaks: &dyn Fn(usize) -> bool| {
        let state = |(index, wall): (usize, &WallOpenings)| if breaks(index) { wall.broken() } else { wall.whole() };
        let walls: Vec<_> = walls.iter().enumerate().map(state).collect();
        enclosure(&walls, &roof)
    };
    // A negative breakable area would close what is open: it is handed on as an opening by itself, which is refused.
    if let Some(wall) = walls.iter().find(|wall| wall.breakable < Area::ZERO) {
        enclosure(&[Openings { open: wall.breakable, gross: wall.gross }], &roof)?;
    }
    let whole = class(&|_| false)?;
    let mut found = BrokenGlass { whole, worst: whole, broken: Broken::Nothing };
    let each = (0..walls.len()).map(|wall| (Broken::Wall(wall), class(&|index| index == wall)));
    for (broken, class) in each.chain([(Broken::All, class(&|_| true))]) {
        let class = class?;
        if class.internal_pressure_coefficient() > found.worst.internal_pressure_coefficient() {
            found = BrokenGlass { whole, worst: class, broken };
        }
    }
    Ok(found)
}
