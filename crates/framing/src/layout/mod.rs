//! Layout: from what was typed to what is marked and cut, one file a kind.
//!
//! Where to look: [`LayoutKind`] has the kinds and their inputs; [`drawn`] what is drawn of them; `say` writes angles and
//! marks as a carpenter reads them.

mod common_rafter;
pub mod drawn;
pub mod drawn_strapping;
mod hip_valley;
mod jack;
mod roof_inputs;
mod say;
mod strapping;

use crate::field::{FieldSpec, ROOF_LAYOUT_FIELDS, STRAPPING_FIELDS};
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
    /// Strips across the joists of a ceiling, and the shims behind them.
    Strapping,
}

/// What the length of a common rafter is.
pub const RIDGE_TO_HEEL: &str = "from ridge cut to heel, along the top edge";
/// What the length of a hip or valley is.
pub const TOP_CUT_TO_HEEL: &str = "from top cut to heel, along the middle";
/// What the common difference is.
pub const FROM_ONE_JACK_TO_THE_NEXT: &str = "from one jack to the next";

impl QuickKind for LayoutKind {
    const ALL: &'static [Self] = &[Self::CommonRafter, Self::HipValleyCuts, Self::Jack, Self::Strapping];

    const OWN: &'static [&'static [FieldSpec]] = &[ROOF_LAYOUT_FIELDS, STRAPPING_FIELDS];

    fn id(self) -> &'static str {
        match self {
            Self::CommonRafter => "common_rafter",
            Self::HipValleyCuts => "hip_valley_cuts",
            Self::Jack => "jack",
            Self::Strapping => "strapping",
        }
    }

    fn word(self) -> &'static str {
        match self {
            Self::CommonRafter => "Common rafter",
            Self::HipValleyCuts => "Hip, valley",
            Self::Jack => "Jack rafters",
            Self::Strapping => "Ceiling strapping",
        }
    }

    fn fields(self) -> &'static [&'static str] {
        match self {
            Self::CommonRafter => common_rafter::FIELDS,
            Self::HipValleyCuts => hip_valley::FIELDS,
            Self::Jack => jack::FIELDS,
            Self::Strapping => strapping::FIELDS,
        }
    }

    fn answer(self, reading: &mut Reading) -> Option<QuickReply> {
        match self {
            Self::CommonRafter => common_rafter::answer(reading),
            Self::HipValleyCuts => hip_valley::answer(reading),
            Self::Jack => jack::answer(reading),
            Self::Strapping => strapping::answer(reading),
        }
    }
}

kinds!(LayoutKind: CommonRafter, HipValleyCuts, Jack, Strapping);
