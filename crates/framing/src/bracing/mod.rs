//! Bracing: from what was typed to what is answered, one file a kind.
//!
//! Where to look: [`BracingKind`] has the kinds and their inputs; `frame` turns inputs into what walls are made of, `lists`
//! reads several values out of one input, and `ends` has what all walls say of their ends.

mod diaphragm;
mod diaphragm_chord;
mod diaphragm_collector;
mod ends;
mod frame;
mod hold_down;
mod lists;
mod perforated_wall;
mod shear_wall;
mod ties;
mod uplift;
mod wall_lines;
mod wall_lines_house;

use crate::field::{BRACING_FIELDS, BRACING_PLAN_FIELDS, FieldSpec};
use crate::quick::reply::QuickReply;
use crate::quick::{QuickKind, kinds};
use crate::reading::Reading;

/// A kind of check of Bracing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum BracingKind {
    /// Full-height pieces of wall, each held down at its own ends.
    ShearWall,
    /// A wall with openings that is held down at its two ends.
    PerforatedWall,
    /// What holds the ends of stacked walls down.
    HoldDown,
    /// The path of uplift from the rafters to the footing.
    Uplift,
    /// The push of the wind on a house, brought to its wall lines.
    WallLines,
    /// A floor or a roof that brings the wind to the wall lines.
    Diaphragm,
}

/// The verdict where there is not enough of a wall, or of what holds.
pub const NOT_ENOUGH: &str = "not enough";
/// The verdict where the hold-down's label says less than is asked of it.
pub const HOLD_DOWN_TOO_WEAK: &str = "the hold-down is too weak";
/// The verdict where the post at an end, or the plate under it, is pressed too hard.
pub const POST_TOO_SMALL: &str = "the post is too small";
/// The verdict where a push is told and nothing is judged.
pub const ON_THE_HARDEST_LINE: &str = "on the hardest line";

impl QuickKind for BracingKind {
    const ALL: &'static [Self] =
        &[Self::ShearWall, Self::PerforatedWall, Self::HoldDown, Self::Uplift, Self::WallLines, Self::Diaphragm];

    const OWN: &'static [&'static [FieldSpec]] = &[BRACING_FIELDS, BRACING_PLAN_FIELDS];

    fn id(self) -> &'static str {
        match self {
            Self::ShearWall => "shear_wall",
            Self::PerforatedWall => "perforated_wall",
            Self::HoldDown => "hold_down",
            Self::Uplift => "uplift",
            Self::WallLines => "wall_lines",
            Self::Diaphragm => "diaphragm",
        }
    }

    fn word(self) -> &'static str {
        match self {
            Self::ShearWall => "Shear wall",
            Self::PerforatedWall => "Wall with openings",
            Self::HoldDown => "Hold-downs",
            Self::Uplift => "Path of uplift",
            Self::WallLines => "Wall lines",
            Self::Diaphragm => "Floor or roof",
        }
    }

    fn fields(self) -> &'static [&'static str] {
        match self {
            Self::ShearWall => shear_wall::FIELDS,
            Self::PerforatedWall => perforated_wall::FIELDS,
            Self::HoldDown => hold_down::FIELDS,
            Self::Uplift => uplift::FIELDS,
            Self::WallLines => wall_lines::FIELDS,
            Self::Diaphragm => diaphragm::FIELDS,
        }
    }

    fn needs_place(self) -> bool {
        matches!(self, Self::Uplift | Self::WallLines)
    }

    fn answer(self, reading: &mut Reading) -> Option<QuickReply> {
        match self {
            Self::ShearWall => shear_wall::answer(reading),
            Self::PerforatedWall => perforated_wall::answer(reading),
            Self::HoldDown => hold_down::answer(reading),
            Self::Uplift => uplift::answer(reading),
            Self::WallLines => wall_lines::answer(reading),
            Self::Diaphragm => diaphragm::answer(reading),
        }
    }
}

kinds!(BracingKind: ShearWall, PerforatedWall, HoldDown, Uplift, WallLines, Diaphragm);
