//! Notches and holes in studs, joists and top plates.

mod joist;
mod plate;
mod stud;

pub use joist::{CutJoist, Face, JoistCut, JoistKind, Place, judge_cut_joist};
pub use plate::{CutPlate, PlateAnswer, PlateIn, TieFound, TieNeeded, judge_cut_plate};
pub use stud::{CutStud, Doubled, StudCut, StudLimits, judge_cut_stud, stud_limits};
