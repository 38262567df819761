//! R802.11 and R602.3.5: what lifts rafters and trusses off the wall, and how far that may go without a connector.
//!
//! What is here: every cell of Table R802.11 ([`TABLE_R802_11`]), what it asks of one tie ([`tie_uplift`]) and of a foot of
//! wall ([`wall_uplift`]) with its footnotes, and where the toe nails of the fastening schedule are enough
//! ([`toe_nails_accepted`]). Whether the code's own rules for wind reach the site at all is
//! [`prescriptive_wind_at`](super::r301_2::prescriptive_wind_at).

mod footnotes;
mod table;
mod toe_nails;

use measure::LineLoad;

use super::DOCUMENT;
use crate::{Source, Status};

pub use footnotes::{
    AWAY_FROM_CORNERS, CORNER, DEAD_COUNTED, EACH_WALL_ABOVE_SOURCE, FOR_EXPOSURE_D, HIGHEST_MEAN_ROOF, HIP_ROOF,
    HIP_ROOF_FROM, LARGEST_OVERHANG, PER_FOOT, Reduction, RoofShape, TiedRoof,
};
pub use table::{SPEEDS, STEEPER_FROM, TABLE_R802_11, TieUplift, UpliftRow, WallUplift, tie_uplift, wall_uplift};
pub use toe_nails::{TOE_NAIL_LIMIT, TOE_NAILS, ToeNailRule, toe_nails_accepted};

/// R602.3.5: where uplift at the top of a braced wall needs a path of its own. Read in the print of 2018.
pub const UPLIFT_PATH: Source = Source::new(DOCUMENT, "R602.3.5", Status::LookedUp);
/// Net uplift at the top of a wall to which the nailing of its panels is path enough.
pub const WALL_TOP_LIMIT: LineLoad = LineLoad::from_plf(100.0);
/// What each full wall above takes off.
pub const EACH_WALL_ABOVE: LineLoad = LineLoad::from_plf(60.0);
