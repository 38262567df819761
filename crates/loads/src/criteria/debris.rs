//! Whether wind carries debris at a place, by both definitions.

use measure::{Length, Speed};
use standards::asce7_16::chapter_26_12::{self, Coast, DebrisSite, hurricane_prone};
use standards::ibc_2018::{section_202, section_1609_2::WindZone};

/// What the two definitions say of a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct DebrisFinding {
    /// In a hurricane-prone region.
    pub hurricane_prone: bool,
    /// In a wind-borne debris region by ASCE 7-16.
    pub by_asce_7: bool,
    /// In a wind-borne debris region by the IBC, whose definition is the wider one.
    pub by_building_code: bool,
    /// Wind zone of ASTM E1996 for the products that protect glazing; none outside both regions, and none under 130
    /// mph, where the code names no zone.
    pub zone: Option<WindZone>,
    /// Whether the distance to the coast was not given and the house taken as standing at the water.
    pub assumed_at_coast: bool,
}

impl DebrisFinding {
    /// Whether glazing is to be impact-resistant or protected: where either definition says so.
    #[must_use]
    pub const fn protection_wanted(&self) -> bool {
        self.by_asce_7 || self.by_building_code
    }
}

/// What the two definitions say. `speed` is the ultimate wind speed, of Risk Category II for a house.
#[must_use]
pub fn debris_region(coast: Coast, speed: Speed, to_coast: Option<Length>, open_water_at_coast: bool) -> DebrisFinding {
    let distance = to_coast.unwrap_or(Length::ZERO);
    // Where the distance is not known, neither is the water: the wider answer is taken.
    let open_water_at_coast = open_water_at_coast || to_coast.is_none();
    let site = DebrisSite { coast, speed, to_coast: distance, open_water_at_coast };
    let by_asce_7 = chapter_26_12::wind_borne_debris_region(&site);
    let by_building_code = section_202::wind_borne_debris_region(&site);
    DebrisFinding {
        hurricane_prone: hurricane_prone(coast, speed),
        by_asce_7,
        by_building_code,
        zone: if by_asce_7 || by_building_code { WindZone::at(speed, distance) } else { None },
        assumed_at_coast: to_coast.is_none(),
    }
}
