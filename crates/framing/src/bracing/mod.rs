//! Bracing: from what was typed to what is answered, one file a kind.
//!
//! Where to look: [`BracingKind`] has the kinds and their inputs; `frame` turns inputs into what walls are made of, `lists`
//! reads several values out of one input, and `ends` has what all walls say of their ends.

mod ends;
mod frame;
mod hold_down;
mod layers;
mod lists;
mod perforated_wall;
mod schedule;
mod shear_wall;
mod ties;
mod uplift;

use crate::field::{BRACING_FIELDS, FieldSpec};
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
    /// The layers of a wall from the studs out.
    WallLayers,
    /// The engineer's schedule of panels and hold-downs.
    Schedule,
}

/// The verdict where the layers of a wall brace it.
pub const BRACES: &str = "braces the wall";
/// The verdict where they do not.
pub const BRACES_NOTHING: &str = "braces nothing";
/// The verdict where a fastener is too short.
pub const TOO_SHORT: &str = "too short a fastener";
/// The verdict where there is not enough of a wall, or of what holds.
pub const NOT_ENOUGH: &str = "not enough";
/// The verdict where the hold-down's label says less than is asked of it.
pub const HOLD_DOWN_TOO_WEAK: &str = "the hold-down is too weak";
/// The verdict where the post at an end, or the plate under it, is pressed too hard.
pub const POST_TOO_SMALL: &str = "the post is too small";

impl QuickKind for BracingKind {
    const ALL: &'static [Self] =
        &[Self::ShearWall, Self::PerforatedWall, Self::HoldDown, Self::Uplift, Self::WallLayers, Self::Schedule];

    const OWN: &'static [FieldSpec] = BRACING_FIELDS;

    const SHARED: &'static [&'static str] = &["schedule_lines"];

    fn id(self) -> &'static str {
        match self {
            Self::ShearWall => "shear_wall",
            Self::PerforatedWall => "perforated_wall",
            Self::HoldDown => "hold_down",
            Self::Uplift => "uplift",
            Self::WallLayers => "wall_layers",
            Self::Schedule => "schedule",
        }
    }

    fn word(self) -> &'static str {
        match self {
            Self::ShearWall => "Shear wall",
            Self::PerforatedWall => "Wall with openings",
            Self::HoldDown => "Hold-downs",
            Self::Uplift => "Path of uplift",
            Self::WallLayers => "Wall layers",
            Self::Schedule => "Schedule",
        }
    }

    fn fields(self) -> &'static [&'static str] {
        match self {
            Self::ShearWall => shear_wall::FIELDS,
            Self::PerforatedWall => perforated_wall::FIELDS,
            Self::HoldDown => hold_down::FIELDS,
            Self::Uplift => uplift::FIELDS,
            Self::WallLayers => layers::FIELDS,
            Self::Schedule => schedule::FIELDS,
        }
    }

    fn needs_place(self) -> bool {
        matches!(self, Self::Uplift)
    }

    fn answer(self, reading: &mut Reading) -> Option<QuickReply> {
        match self {
            Self::ShearWall => shear_wall::answer(reading),
            Self::PerforatedWall => perforated_wall::answer(reading),
            Self::HoldDown => hold_down::answer(reading),
            Self::Uplift => uplift::answer(reading),
            Self::WallLayers => layers::answer(reading),
            Self::Schedule => schedule::answer(reading),
        }
    }
}

kinds!(BracingKind: ShearWall, PerforatedWall, HoldDown, Uplift, WallLayers, Schedule);
