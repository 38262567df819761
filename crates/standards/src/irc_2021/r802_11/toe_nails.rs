//! R802.11.1: where rafters and trusses need no tie beyond the nails of the fastening schedule.

use measure::{Force, Length, Slope, Speed};

use super::footnotes::TiedRoof;
use crate::irc_2021::{DOCUMENT, r301::ExposureCategory};
use crate::{Source, Status};

/// R802.11.1: the uplift to which the toe nails of the fastening schedule are enough. A digest of cities' handouts has the
/// same limit.
pub const TOE_NAILS: Source = Source::new(DOCUMENT, "R802.11.1", Status::FromMemory);
/// The most uplift at one roof-to-wall connection that toe nails alone may hold.
pub const TOE_NAIL_LIMIT: Force = Force::from_pounds(200.0);

const SPACING: Length = Length::from_inches(24.0);
const WIND_SPEED: Speed = Speed::from_mph(115.0);
const PITCH: Slope = Slope::from_rise_in_twelve(5.0);
const SPAN: Length = Length::from_feet(32.0);

/// By which of its two ways the clause accepts toe nails.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ToeNailRule {
    /// The uplift is 200 lb a connection or less.
    SmallUplift,
    /// To 115 mph in Exposure B, 5 in 12 or steeper, span to 32 ft.
    ShelteredRoof,
}

/// Whether rafters or trusses may be held by the toe nails of the fastening schedule alone, and by which way; none where
/// they need a tie. Takes the uplift on one connection, allowable stress design.
///
/// Source: IRC 2021 R802.11.1 (from memory).
#[must_use]
pub fn toe_nails_accepted(roof: &TiedRoof, spacing: Length, uplift: Force) -> Option<ToeNailRule> {
    if spacing > SPACING {
        return None;
    }
    if uplift <= TOE_NAIL_LIMIT {
        return Some(ToeNailRule::SmallUplift);
    }
    let sheltered = roof.exposure == ExposureCategory::B
        && roof.wind_speed <= WIND_SPEED
        && roof.pitch >= PITCH
        && roof.span <= SPAN;
    sheltered.then_some(ToeNailRule::ShelteredRoof)
}
