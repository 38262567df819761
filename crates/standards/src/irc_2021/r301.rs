//! R301: live loads, deflection limits, and how far the code's own wind design reaches.

use measure::{AreaLoad, Ratio, Speed};

use super::DOCUMENT;
use crate::{OutsideTable, Source, Status};

/// Table R301.5: least uniformly distributed live loads.
pub const LIVE_LOADS: Source = Source::new(DOCUMENT, "Table R301.5", Status::LookedUp);
/// Table R301.5, note b: the 10 psf of an attic without storage need not act together with other live loads.
pub const ATTIC_ACTS_ALONE: Source = Source::new(DOCUMENT, "Table R301.5 note b", Status::LookedUp);
/// Table R301.7: allowable deflection. Read in the text of 2012; the cell of a rafter without ceiling is from memory.
pub const DEFLECTION: Source = Source::new(DOCUMENT, "Table R301.7", Status::PartlyLookedUp);
/// R301.2.1.1: where the code's own wind design ends.
pub const WIND_LIMITATIONS: Source = Source::new(DOCUMENT, "R301.2.1.1", Status::FromMemory);

/// What a floor or an attic is used for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Occupancy {
    /// Attic that no one lives or stores in: under 42 in high between joists and rafters.
    AtticWithoutStorage,
    /// Attic with limited storage.
    AtticWithLimitedStorage,
    /// Attic that is lived in or reached by fixed stairs.
    HabitableAttic,
    /// Sleeping rooms.
    SleepingRooms,
    /// All other rooms.
    OtherRooms,
}

impl Occupancy {
    /// Least live load of Table R301.5.
    #[must_use]
    pub const fn live_load(self) -> AreaLoad {
        AreaLoad::from_psf(match self {
            Self::AtticWithoutStorage => 10.0,
            Self::AtticWithLimitedStorage => 20.0,
            Self::HabitableAttic | Self::SleepingRooms => 30.0,
            Self::OtherRooms => 40.0,
        })
    }

    /// Whether the load acts with dead load only, never with another live load (note b).
    #[must_use]
    pub const fn acts_alone(self) -> bool {
        matches!(self, Self::AtticWithoutStorage)
    }
}

/// A member whose sag the code limits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DeflectionOf {
    /// Rafters steeper than 3 in 12 with no finished ceiling attached.
    RafterWithoutCeiling,
    /// Interior walls and partitions.
    InteriorWall,
    /// Floors.
    Floor,
    /// Ceilings with a brittle finish, such as plaster.
    BrittleCeiling,
    /// Ceilings with a flexible finish, such as gypsum board.
    FlexibleCeiling,
    /// All other structural members: headers among them.
    OtherMember,
    /// Exterior walls, wind, with plaster or stucco.
    ExteriorWallPlaster,
    /// Exterior walls, wind, with another brittle finish.
    ExteriorWallBrittle,
    /// Exterior walls, wind, with a flexible finish and gypsum board inside.
    ExteriorWallGypsumInside,
    /// Exterior walls, wind, with flexible finishes only.
    ExteriorWallFlexible,
    /// Lintels under masonry veneer.
    MasonryVeneerLintel,
}

impl DeflectionOf {
    /// The number under the span or height: 240 for `L/240`. For live load, roof live load or snow, or for wind on
    /// walls.
    #[must_use]
    pub const fn span_over(self) -> Ratio {
        match self {
            Self::ExteriorWallFlexible => 120.0,
            Self::RafterWithoutCeiling | Self::InteriorWall | Self::ExteriorWallGypsumInside => 180.0,
            Self::FlexibleCeiling | Self::OtherMember | Self::ExteriorWallBrittle => 240.0,
            Self::Floor | Self::BrittleCeiling | Self::ExteriorWallPlaster => 360.0,
            Self::MasonryVeneerLintel => 600.0,
        }
    }
}

/// Share of the allowable-stress wind load on components and cladding under which deflection is judged (note a).
pub const WIND_FOR_DEFLECTION: Ratio = 0.7;
/// Table R301.7, note a.
pub const WIND_FOR_DEFLECTION_SOURCE: Source = Source::new(DOCUMENT, "Table R301.7 note a", Status::LookedUp);

/// Kind of ground upwind, as R301.2.1.4 names it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ExposureCategory {
    /// Town, suburb or wood.
    B,
    /// Open country.
    C,
    /// Flat and bare ground, or water.
    D,
}

impl ExposureCategory {
    /// The letter.
    #[must_use]
    pub const fn letter(self) -> &'static str {
        match self {
            Self::B => "B",
            Self::C => "C",
            Self::D => "D",
        }
    }
}

/// Whether the code's own rules for wind reach a site: under 140 mph in Exposure B; under 130 mph in Exposure C or, in
/// any exposure, in the hurricane-prone part of the map. No limit is known here for Exposure D.
///
/// # Errors
/// Where the wind needs a design by another standard or by an engineer.
pub fn prescriptive_wind(
    wind_speed: Speed,
    exposure: ExposureCategory,
    hurricane_prone: bool,
) -> Result<(), OutsideTable> {
    let below = match exposure {
        ExposureCategory::B if !hurricane_prone => Speed::from_mph(140.0),
        ExposureCategory::B | ExposureCategory::C => Speed::from_mph(130.0),
        ExposureCategory::D => Speed::ZERO,
    };
    if wind_speed < below {
        return Ok(());
    }
    let place = if hurricane_prone { " in a hurricane-prone region" } else { "" };
    Err(OutsideTable {
        source: WIND_LIMITATIONS,
        given: format!("ultimate wind speed {} mph in Exposure {}{place}", wind_speed.mph(), exposure.letter()),
        covers: "under 140 mph in Exposure B, under 130 mph in Exposure C and in hurricane-prone regions",
        next_step: "The wind needs a design by an engineer or by a standard for strong wind; the code official says which.",
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: IRC 2021 Table R301.5, read in a city ordinance that prints it.
    #[test]
    fn live_loads_as_printed() {
        use Occupancy::{AtticWithLimitedStorage, AtticWithoutStorage, HabitableAttic, OtherRooms, SleepingRooms};
        let uses = [AtticWithoutStorage, AtticWithLimitedStorage, HabitableAttic, SleepingRooms, OtherRooms];
        assert_eq!(uses.map(|one| one.live_load().psf()), [10.0, 20.0, 30.0, 30.0, 40.0]);
        assert_eq!(uses.map(Occupancy::acts_alone), [true, false, false, false, false]);
    }

    /// Source: IRC Table R301.7, text of 2012 in a code change; the first is from memory, and read for 4 in 12 in a study
    /// text.
    #[test]
    fn deflection_limits_as_printed() {
        for (member, printed) in [
            (DeflectionOf::RafterWithoutCeiling, 180.0),
            (DeflectionOf::InteriorWall, 180.0),
            (DeflectionOf::Floor, 360.0),
            (DeflectionOf::BrittleCeiling, 360.0),
            (DeflectionOf::FlexibleCeiling, 240.0),
            (DeflectionOf::OtherMember, 240.0),
            (DeflectionOf::ExteriorWallPlaster, 360.0),
            (DeflectionOf::ExteriorWallBrittle, 240.0),
            (DeflectionOf::ExteriorWallFlexible, 120.0),
            (DeflectionOf::ExteriorWallGypsumInside, 180.0),
            (DeflectionOf::MasonryVeneerLintel, 600.0),
        ] {
            assert_eq!(member.span_over(), printed, "{member:?}");
        }
    }

    /// Source: IRC Table R301.7 note a, 0.7 of the allowable-stress load, beside IBC 2018 Table 1604.3 note f, 0.42 of the
    /// strength-level load: with 0.6 W they are the same.
    #[test]
    fn both_codes_judge_deflection_under_the_same_wind() {
        assert!((WIND_FOR_DEFLECTION * 0.6 - 0.42).abs() < 1e-12);
    }

    /// Source: IRC R301.2.1.1, from memory.
    #[test]
    fn the_code_s_own_wind_design_ends() {
        use ExposureCategory::{B, C, D};
        let reaches = |mph, exposure, hurricane| prescriptive_wind(Speed::from_mph(mph), exposure, hurricane).is_ok();
        assert!(reaches(139.9, B, false) && !reaches(140.0, B, false));
        assert!(reaches(129.9, B, true) && !reaches(130.0, B, true));
        assert!(reaches(129.9, C, false) && !reaches(130.0, C, false) && !reaches(130.0, C, true));
        assert!(!reaches(90.0, D, false));
        let message = prescriptive_wind(Speed::from_mph(150.0), C, true).unwrap_err().to_string();
        assert!(message.contains("150 mph in Exposure C in a hurricane-prone region") && message.contains("engineer"));
    }
}
