//! 1609.1.1.1: hills on which prescriptive wood construction stops.

use measure::{Length, Ratio};

use super::DOCUMENT;
use crate::asce7_16::{
    chapter_26::Exposure,
    chapter_26_8::{LandForm, Position, Setting},
};
use crate::{OutsideTable, Source, Status};

/// 1609.1.1.1: applicability of prescriptive standards. It names Exposures B and C; in D the limit of C is used.
pub const ON_HILLS: Source = Source::new(DOCUMENT, "1609.1.1.1", Status::LookedUp);

const STEEPER_THAN: Ratio = 0.10;
const CLEAR_HEIGHTS: Ratio = 50.0;
const ONE_MILE: Length = Length::from_feet(5280.0);

/// Whether prescriptive wood standards may be used on rising ground. They stop in the upper half of a hill, ridge or
/// escarpment where all of these hold: it is 60 ft or higher in Exposure B, 30 ft in C; its average slope is over 10
/// per cent, which is `H / 2` over `L_h`; and nothing similar stands upwind within 50 heights or a mile, whichever is
/// more.
///
/// # Errors
/// Where they stop.
pub fn prescriptive_on_hill(land: &LandForm, setting: &Setting, exposure: Exposure) -> Result<(), OutsideTable> {
    let high = land.height
        >= match exposure {
            Exposure::B => Length::from_feet(60.0),
            Exposure::C | Exposure::D => Length::from_feet(30.0),
        };
    let steep = land.height * 0.5 > land.half_length * STEEPER_THAN;
    let clear = setting.clear_upwind >= (land.height * CLEAR_HEIGHTS).max(ONE_MILE);
    if !(high && steep && clear && setting.position == Position::UpperHalfOrNearCrest) {
        return Ok(());
    }
    Err(OutsideTable {
        source: ON_HILLS,
        given: format!(
            "a house high on ground that rises {} ft, half of it in {} ft, in Exposure {}",
            land.height.feet(),
            land.half_length.feet(),
            exposure.letter()
        ),
        covers: "houses not in the upper half of high, steep, isolated ground",
        next_step: "Tables for wood houses in strong wind do not count here: an engineer designs it.",
    })
}
