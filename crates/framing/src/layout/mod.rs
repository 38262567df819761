//! Layout: from what was typed to what is marked and cut, one file a kind.
//!
//! Where to look: [`LayoutKind`] has the kinds and their inputs; [`drawn`] what is drawn of them; `say` writes angles and
//! marks as a carpenter reads them, `lined` reads several lines, and `tape` has what walls and floors say alike.

mod common_rafter;
pub mod drawn;
pub mod drawn_joists;
pub mod drawn_plates;
pub mod drawn_strapping;
mod floor_inputs;
mod floor_layout;
mod floor_tables;
mod hip_valley;
mod jack;
mod lined;
mod roof_inputs;
mod say;
mod sheathing;
mod strapping;
mod tape;
mod wall_inputs;
mod wall_layout;
mod wall_openings;
mod wall_steps;
mod wall_tables;

use crate::field::{FLOOR_LAYOUT_FIELDS, FieldSpec, ROOF_LAYOUT_FIELDS, STRAPPING_FIELDS, WALL_LAYOUT_FIELDS};
use crate::quick::reply::QuickReply;
use crate::quick::{QuickKind, kinds};
use crate::reading::Reading;

/// A kind of layout.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum LayoutKind {
    /// A common rafter with its birdsmouth, and the ridge that it reaches.
    CommonRafter,
    /// A hip or a valley rafter.
    HipValleyCuts,
    /// The jacks along a hip or a valley.
    Jack,
    /// The sheets of one roof plane.
    RoofSheathing,
    /// The plates of a wall, and what stands on them.
    WallLayout,
    /// The joists of a floor, and the panels on them.
    FloorLayout,
    /// Strips across the joists of a ceiling, and the shims behind them.
    Strapping,
}

/// What the length of a common rafter is.
pub const RIDGE_TO_HEEL: &str = "from ridge cut to heel, along the top edge";
/// What the length of a hip or valley is.
pub const TOP_CUT_TO_HEEL: &str = "from top cut to heel, along the middle";
/// What the common difference is.
pub const FROM_ONE_JACK_TO_THE_NEXT: &str = "from one jack to the next";
/// What the count of sheets is.
pub const SHEETS_TO_BUY: &str = "to buy for this side, without spares";
/// What the studs of a wall are.
pub const PLATE_TO_PLATE: &str = "from plate to plate";
/// What the joists of a floor are.
pub const END_TO_END: &str = "from end to end";

impl QuickKind for LayoutKind {
    const ALL: &'static [Self] = &[
        Self::CommonRafter,
        Self::HipValleyCuts,
        Self::Jack,
        Self::RoofSheathing,
        Self::WallLayout,
        Self::FloorLayout,
        Self::Strapping,
    ];

    const OWN: &'static [&'static [FieldSpec]] =
        &[ROOF_LAYOUT_FIELDS, WALL_LAYOUT_FIELDS, FLOOR_LAYOUT_FIELDS, STRAPPING_FIELDS];

    fn id(self) -> &'static str {
        match self {
            Self::CommonRafter => "common_rafter",
            Self::HipValleyCuts => "hip_valley_cuts",
            Self::Jack => "jack",
            Self::RoofSheathing => "roof_sheathing",
            Self::WallLayout => "wall_layout",
            Self::FloorLayout => "floor_layout",
            Self::Strapping => "strapping",
        }
    }

    fn word(self) -> &'static str {
        match self {
            Self::CommonRafter => "Common rafter",
            Self::HipValleyCuts => "Hip, valley",
            Self::Jack => "Jack rafters",
            Self::RoofSheathing => "Roof sheathing",
            Self::WallLayout => "Wall layout",
            Self::FloorLayout => "Floor layout",
            Self::Strapping => "Ceiling strapping",
        }
    }

    fn fields(self) -> &'static [&'static str] {
        match self {
            Self::CommonRafter => common_rafter::FIELDS,
            Self::HipValleyCuts => hip_valley::FIELDS,
            Self::Jack => jack::FIELDS,
            Self::RoofSheathing => sheathing::FIELDS,
            Self::WallLayout => wall_layout::FIELDS,
            Self::FloorLayout => floor_layout::FIELDS,
            Self::Strapping => strapping::FIELDS,
        }
    }

    fn answer(self, reading: &mut Reading) -> Option<QuickReply> {
        match self {
            Self::CommonRafter => common_rafter::answer(reading),
            Self::HipValleyCuts => hip_valley::answer(reading),
            Self::Jack => jack::answer(reading),
            Self::RoofSheathing => sheathing::answer(reading),
            Self::WallLayout => wall_layout::answer(reading),
            Self::FloorLayout => floor_layout::answer(reading),
            Self::Strapping => strapping::answer(reading),
        }
    }
}

kinds!(LayoutKind: CommonRafter, HipValleyCuts, Jack, RoofSheathing, WallLayout, FloorLayout, Strapping);
