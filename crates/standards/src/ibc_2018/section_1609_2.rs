//! 1609.2: glazing where wind carries debris.

use measure::{Length, Speed};

use super::DOCUMENT;
use crate::asce7_16::chapter_26_12::ONE_MILE;
use crate::{OutsideTable, Source, Status};

/// 1609.2: protection of openings; glazing is impact-resistant or protected.
pub const PROTECTION: Source = Source::new(DOCUMENT, "1609.2", Status::LookedUp);
/// 1609.2, exception 1: wood structural panels as protection of one- and two-family dwellings.
pub const PANELS: Source = Source::new(DOCUMENT, "1609.2 exception 1", Status::LookedUp);
/// Table 1609.2: how far the fastening schedule of those panels reaches.
pub const PANEL_FASTENING: Source = Source::new(DOCUMENT, "Table 1609.2", Status::LookedUp);
/// 1609.2.2: the wind zones of ASTM E1996 in ultimate wind speeds.
pub const WIND_ZONES: Source = Source::new(DOCUMENT, "1609.2.2", Status::LookedUp);

/// Height above grade to which glazing is tested with the large missile.
pub const LARGE_MISSILE_TO: Length = Length::from_feet(30.0);
/// Least thickness of a wood structural panel over glazing.
pub const PANEL_THICKNESS: Length = Length::from_inches(7.0 / 16.0);
/// Longest span of such a panel.
pub const PANEL_SPAN: Length = Length::from_feet(8.0);
/// Largest mean roof height of a house that such panels may protect.
pub const PANEL_ROOF_HEIGHT: Length = Length::from_feet(33.0);
/// Largest mean roof height for the panels' fastening schedule.
pub const SCHEDULE_ROOF_HEIGHT: Length = Length::from_feet(45.0);
/// Largest nominal (allowable-stress) wind speed for the panels' fastening schedule.
pub const SCHEDULE_NOMINAL_SPEED: Speed = Speed::from_mph(140.0);

/// Wind zone of ASTM E1996, by which a product's test is chosen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum WindZone {
    /// 130 mph or more, under 140.
    One,
    /// 140 mph or more, under 150, more than a mile from the coast.
    Two,
    /// 150 to 160 mph, or 140 to 160 mph within a mile of the coast.
    Three,
    /// Over 160 mph.
    Four,
}

impl WindZone {
    /// The zone of a place by its ultimate wind speed and its distance to the coast; none under 130 mph.
    #[must_use]
    pub fn at(speed: Speed, to_coast: Length) -> Option<Self> {
        let mph = Speed::from_mph;
        if speed > mph(160.0) {
            Some(Self::Four)
        } else if speed >= mph(150.0) || (speed >= mph(140.0) && to_coast <= ONE_MILE) {
            Some(Self::Three)
        } else if speed >= mph(140.0) {
            Some(Self::Two)
        } else if speed >= mph(130.0) {
            Some(Self::One)
        } else {
            None
        }
    }

    /// Its number.
    #[must_use]
    pub const fn number(self) -> u8 {
        match self {
            Self::One => 1,
            Self::Two => 2,
            Self::Three => 3,
            Self::Four => 4,
        }
    }
}

/// Whether wood structural panels, at least 7/16 in thick, may protect the glazing of a one- or two-family dwelling.
/// They are cut and drilled beforehand, and fastened for the pressure on cladding.
///
/// # Errors
/// A mean roof height over 33 ft or a span over 8 ft; also sizes that are none.
pub fn panels_may_protect(mean_roof_height: Length, span: Length) -> Result<(), OutsideTable> {
    let fits = mean_roof_height <= PANEL_ROOF_HEIGHT && span <= PANEL_SPAN;
    if fits && mean_roof_height.min(span) > Length::ZERO {
        return Ok(());
    }
    Err(OutsideTable {
        source: PANELS,
        given: format!("panels that span {} ft, mean roof height {} ft", span.feet(), mean_roof_height.feet()),
        covers: "panels to 8 ft on houses with a mean roof height to 33 ft",
        next_step: "Use impact-resistant glazing or a tested shutter.",
    })
}

/// Whether the code's fastening schedule of such panels reaches a house.
///
/// # Errors
/// A mean roof height over 45 ft or a nominal wind speed over 140 mph.
pub fn panel_schedule_reaches(mean_roof_height: Length, nominal_speed: Speed) -> Result<(), OutsideTable> {
    if mean_roof_height <= SCHEDULE_ROOF_HEIGHT && nominal_speed <= SCHEDULE_NOMINAL_SPEED {
        return Ok(());
    }
    Err(OutsideTable {
        source: PANEL_FASTENING,
        given: format!(
            "nominal wind speed {:.1} mph, mean roof height {} ft",
            nominal_speed.mph(),
            mean_roof_height.feet()
        ),
        covers: "nominal wind speeds to 140 mph and mean roof heights to 45 ft",
        next_step: "An engineer designs the panels' fasteners, or a tested shutter takes their place.",
    })
}
