//! Bracing: from what was typed to what is answered, one file a kind.
//!
//! Where to look: [`BracingKind`] has the kinds and their inputs; `frame` turns inputs into what walls are made of and
//! `nail_joint` into a joint of nails, `lists` reads several values out of one input, and `ends` has what all walls say of
//! their ends.

mod anchor_bolts;
mod diaphragm;
mod diaphragm_chord;
mod diaphragm_collector;
mod drawn_and_worked;
mod ends;
mod faces;
mod frame;
mod hold_down;
mod layers;
mod lean;
mod level_joints;
pub(crate) mod lists;
mod nail;
mod nail_joint;
mod nail_schedule;
mod nail_swap;
mod perforated_wall;
mod salt;
mod schedule;
mod shear_wall;
mod straps;
mod ties;
mod uplift;
mod wall_lines;
mod wall_lines_house;

pub use uplift::counts as counts_in_uplift;

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
    /// The layers of a wall from the studs out.
    WallLayers,
    /// The engineer's schedule of panels and hold-downs.
    Schedule,
    /// The engineer's schedule and the worked alternative, wall by wall.
    DrawnAndWorked,
    /// One nail in a joint.
    Nail,
    /// The nail at hand in place of the one that was drawn.
    NailSwap,
    /// Anchor bolts along a bottom plate.
    AnchorBolts,
    /// The push of the wind on a house, brought to its wall lines.
    WallLines,
    /// A floor or a roof that brings the wind to the wall lines.
    Diaphragm,
}

/// The verdict where the layers of a wall brace it.
pub const BRACES: &str = "braces the wall";
/// The verdict where they do not.
pub const BRACES_NOTHING: &str = "braces nothing";
/// The verdict where what goes through the layers is too short.
pub const FASTENER_TOO_SHORT: &str = "too short a fastener";
/// The verdict where there is not enough of a wall, or of what holds.
pub const NOT_ENOUGH: &str = "not enough";
/// The verdict where the hold-down's label says less than is asked of it.
pub const HOLD_DOWN_TOO_WEAK: &str = "the hold-down is too weak";
/// The verdict where ties hold on the wrong side of the plate, which then rolls.
pub const TIES_ON_THE_WRONG_SIDE: &str = "ties on the wrong side";
/// The verdict where the post at an end, or the plate under it, is pressed too hard.
pub const POST_TOO_SMALL: &str = "the post is too small";
/// The verdict where the metal of a connector, or of its fasteners, does not last there.
pub const WRONG_METAL: &str = "wrong metal for this place";
/// The verdict where no load was given: the number is what one nail carries.
pub const ONE_NAIL: &str = "is what one nail carries across";
/// The verdict where something that was asked cannot be worked until an input is said.
pub const STILL_TO_SAY: &str = "still to be said";
/// The verdict where a nail reaches less than counts.
pub const TOO_SHORT: &str = "too short to count";
/// The verdict where nails would stand so close that the wood splits.
pub const SPLITS: &str = "splits the wood";
/// The verdict where the nail at hand stands for the other, in the pattern as drawn.
pub const WILL_DO: &str = "will do";
/// The verdict where it does in another number.
pub const WILL_DO_AT_NUMBER: &str = "will do at this number";
/// The verdict where it does at another spacing.
pub const WILL_DO_AT_SPACING: &str = "will do at this spacing";
/// The verdicts where someone must agree first.
pub const ONLY_IF: [&str; 4] = [
    "only if the engineer says so",
    "only if the building official says so",
    "only if the truss designer says so",
    "only if the maker of the part says so",
];

/// The verdict where every wall carries by the tables as the engineer drew it.
pub const CARRIED_AS_DRAWN: &str = "carried as drawn";
/// The verdict where the tables and the drawing part, or the drawing leaves something open: so many walls.
pub const TO_ASK_ABOUT: &str = "to ask the engineer about";

/// The verdict where a push is told and nothing is judged.
pub const ON_THE_HARDEST_LINE: &str = "on the hardest line";

impl QuickKind for BracingKind {
    const ALL: &'static [Self] = &[
        Self::ShearWall,
        Self::PerforatedWall,
        Self::HoldDown,
        Self::AnchorBolts,
        Self::Uplift,
        Self::Schedule,
        Self::DrawnAndWorked,
        Self::WallLines,
        Self::Diaphragm,
        Self::WallLayers,
        Self::Nail,
        Self::NailSwap,
    ];

    const OWN: &'static [&'static [FieldSpec]] = &[BRACING_FIELDS, BRACING_PLAN_FIELDS];

    const SHARED: &'static [&'static str] = &["schedule_lines"];

    fn id(self) -> &'static str {
        match self {
            Self::ShearWall => "shear_wall",
            Self::PerforatedWall => "perforated_wall",
            Self::HoldDown => "hold_down",
            Self::Uplift => "uplift",
            Self::WallLayers => "wall_layers",
            Self::Schedule => "schedule",
            Self::DrawnAndWorked => "drawn_and_worked",
            Self::Nail => "nail",
            Self::NailSwap => "nail_swap",
            Self::AnchorBolts => "anchor_bolts",
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
            Self::WallLayers => "Wall layers",
            Self::Schedule => "Schedule",
            Self::DrawnAndWorked => "Drawn and worked",
            Self::Nail => "Nail",
            Self::NailSwap => "Nail swap",
            Self::AnchorBolts => "Anchor bolts",
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
            Self::WallLayers => layers::FIELDS,
            Self::Schedule => schedule::FIELDS,
            Self::DrawnAndWorked => drawn_and_worked::FIELDS,
            Self::Nail => nail::FIELDS,
            Self::NailSwap => nail_swap::FIELDS,
            Self::AnchorBolts => anchor_bolts::FIELDS,
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
            Self::WallLayers => layers::answer(reading),
            Self::Schedule => schedule::answer(reading),
            Self::DrawnAndWorked => drawn_and_worked::answer(reading),
            Self::Nail => nail::answer(reading),
            Self::NailSwap => nail_swap::answer(reading),
            Self::AnchorBolts => anchor_bolts::answer(reading),
            Self::WallLines => wall_lines::answer(reading),
            Self::Diaphragm => diaphragm::answer(reading),
        }
    }
}

kinds!(
    BracingKind: ShearWall, PerforatedWall, HoldDown, Uplift, WallLayers, Schedule, DrawnAndWorked, Nail, NailSwap,
    AnchorBolts, WallLines, Diaphragm
);
