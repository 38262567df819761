//! What loads a house at its place, and what is assumed where nothing was given.

use measure::{AreaLoad, Length, LineLoad, Ratio, Speed};
use standards::asce7_16::{
    chapter_1::RiskCategory,
    chapter_4, chapter_7,
    chapter_26::{self, Enclosure, Exposure},
};
use standards::irc_2021::r301::{self, ExposureCategory, Occupancy};
use standards::{OutsideTable, Source, Status, asce7_22};

use crate::snow::{LowSlope, RoofSnow, given_roof_snow, roof_snow};

/// Live load of an attic.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AtticLive {
    /// Its size.
    pub load: AreaLoad,
    /// Whether it acts with dead load only: so in an attic without storage.
    pub acts_alone: bool,
}

impl AtticLive {
    /// The code's load for a use of the attic.
    #[must_use]
    pub const fn of(use_of_attic: Occupancy) -> Self {
        Self { load: use_of_attic.live_load(), acts_alone: use_of_attic.acts_alone() }
    }

    /// A load that was given: up to the 10 psf of an attic without storage it acts alone, more counts with other live
    /// loads.
    #[must_use]
    pub fn given(load: AreaLoad) -> Self {
        Self { load, acts_alone: load <= Occupancy::AtticWithoutStorage.live_load() }
    }
}

/// Weight of the wall that stands over a header.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum WallAbove {
    /// For each storey of wall that the header carries.
    PerStorey(LineLoad),
    /// Altogether, as given.
    Total(LineLoad),
}

/// What turns ground snow into roof snow.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SnowFactors {
    /// Exposure factor `C_e`.
    pub exposure: Ratio,
    /// Thermal factor `C_t`.
    pub thermal: Ratio,
    /// Importance factor `I_s`.
    pub importance: Ratio,
    /// Whether the least load of a low slope counts.
    pub low_slope: LowSlope,
}

/// Which edition of the load standard the code takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LoadStandard {
    /// ASCE 7-16.
    Asce7Of16,
    /// ASCE 7-22.
    Asce7Of22,
}

/// The wind at the place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SiteWind {
    /// The edition that the velocity pressure follows.
    pub standard: LoadStandard,
    /// Basic (ultimate) wind speed.
    pub speed: Speed,
    /// Exposure.
    pub exposure: Exposure,
    /// Mean roof height above ground.
    pub mean_roof_height: Length,
    /// Topographic factor `K_zt`: over 1 on a hill, a ridge or a bluff.
    pub topographic_factor: Ratio,
    /// Ground elevation factor `K_e`.
    pub ground_elevation_factor: Ratio,
    /// How open the house is.
    pub enclosure: Enclosure,
}

/// What loads a house at its place. Loads per area are on the level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SiteLoads {
    /// Roof dead load.
    pub roof_dead: AreaLoad,
    /// Ceiling dead load.
    pub ceiling_dead: AreaLoad,
    /// Attic live load.
    pub attic_live: AtticLive,
    /// Floor dead load.
    pub floor_dead: AreaLoad,
    /// Floor live load.
    pub floor_live: AreaLoad,
    /// Weight of walls above.
    pub wall_above: WallAbove,
    /// Roof live load.
    pub roof_live: AreaLoad,
    /// Ground snow load.
    pub ground_snow: AreaLoad,
    /// Roof snow load, where one was given; it replaces the one from the ground.
    pub given_roof_snow: Option<AreaLoad>,
    /// What turns ground snow into roof snow.
    pub snow: SnowFactors,
    /// Wind.
    pub wind: SiteWind,
}

impl SiteLoads {
    /// What is taken where nothing was given. Each value's reason is in [`ASSUMED`].
    #[must_use]
    pub const fn assumed() -> Self {
        Self {
            roof_dead: AreaLoad::from_psf(10.0),
            ceiling_dead: AreaLoad::from_psf(5.0),
            attic_live: AtticLive::of(Occupancy::AtticWithoutStorage),
            floor_dead: AreaLoad::from_psf(10.0),
            floor_live: Occupancy::OtherRooms.live_load(),
            wall_above: WallAbove::PerStorey(LineLoad::from_plf(80.0)),
            roof_live: chapter_4::ROOF_LIVE_LOAD,
            ground_snow: AreaLoad::from_psf(30.0),
            given_roof_snow: None,
            snow: SnowFactors {
                exposure: 1.0,
                thermal: chapter_7::ThermalCondition::ColdVentilatedRoof.factor(),
                importance: RiskCategory::Two.snow_importance_factor(),
                low_slope: LowSlope::Unknown,
            },
            wind: SiteWind {
                standard: LoadStandard::Asce7Of16,
                speed: Speed::from_mph(140.0),
                exposure: Exposure::D,
                mean_roof_height: Length::from_feet(25.0),
                topographic_factor: 1.0,
                ground_elevation_factor: 1.0,
                enclosure: Enclosure::Enclosed,
            },
        }
    }

    /// Snow on the roof: the given one, or the one from the ground.
    #[must_use]
    pub fn roof_snow(&self) -> RoofSnow {
        let SnowFactors { exposure, thermal, importance, low_slope } = self.snow;
        match self.given_roof_snow {
            Some(load) => given_roof_snow(load),
            None => roof_snow(self.ground_snow, exposure, thermal, importance, low_slope),
        }
    }
}

impl SiteWind {
    /// Velocity pressure coefficient at a height, by the edition.
    ///
    /// # Errors
    /// A height that the equation does not cover.
    pub fn velocity_pressure_coefficient(&self, height: Length) -> Result<Ratio, OutsideTable> {
        match self.standard {
            LoadStandard::Asce7Of16 => chapter_26::velocity_pressure_coefficient(self.exposure, height),
            LoadStandard::Asce7Of22 => asce7_22::velocity_pressure_coefficient(self.exposure, height),
        }
    }
}

/// The exposure as the residential code names it.
#[must_use]
pub const fn exposure_category(exposure: Exposure) -> ExposureCategory {
    match exposure {
        Exposure::B => ExposureCategory::B,
        Exposure::C => ExposureCategory::C,
        Exposure::D => ExposureCategory::D,
    }
}

/// Why a value of [`SiteLoads::assumed`] is what it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Assumed {
    /// Which input: the stable name it has in a check, or the field's name where a check does not ask for it.
    pub input: &'static str,
    /// The reason, as a sentence.
    pub reason: &'static str,
    /// What stands behind it.
    pub source: Source,
}

const PRACTICE: Source = Source::new("common practice", "", Status::CommonPractice);

/// The reason for each value of [`SiteLoads::assumed`].
pub const ASSUMED: &[Assumed] = &[
    Assumed {
        input: "roof_dead",
        reason: "Asphalt shingles, sheathing and rafters. Tile and slate weigh two to three times as much.",
        source: PRACTICE,
    },
    Assumed { input: "ceiling_dead", reason: "Gypsum board, joists and insulation.", source: PRACTICE },
    Assumed {
        input: "attic_live",
        reason: "An attic without storage. It acts with dead load only, never with another live load.",
        source: r301::ATTIC_ACTS_ALONE,
    },
    Assumed {
        input: "floor_dead",
        reason: "Joists, panel, gypsum board below, carpet or vinyl. Tile adds 5 psf.",
        source: Source::new("Residential Structural Design Guide", "dead load tables", Status::LookedUp),
    },
    Assumed {
        input: "floor_live",
        reason: "Rooms other than sleeping rooms, the larger of the two.",
        source: r301::LIVE_LOADS,
    },
    Assumed {
        input: "wall_above",
        reason: "Eight to nine feet of sided 2x6 wall a storey, at 9 psf. Stucco and brick weigh more.",
        source: Source::new("Residential Structural Design Guide", "dead load tables", Status::LookedUp),
    },
    Assumed {
        input: "roof_live",
        reason: "The most that is asked before any reduction for pitch or area.",
        source: chapter_4::ROOF_LIVE,
    },
    Assumed {
        input: "ground_snow",
        reason: "The lowest column of the code's header tables. The code official gives the site's own.",
        source: Source::new("IRC 2021", "Table R602.7(1)", Status::FromMemory),
    },
    Assumed {
        input: "roof_snow",
        reason: "From the ground snow for a vented attic over more than R-25, partly exposed. A heated roof takes a tenth \
                 less; an unheated garage or porch a tenth more.",
        source: chapter_7::FLAT_ROOF,
    },
    Assumed {
        input: "wind_speed",
        reason: "A windy coast. The drawings or the code official give the site's own.",
        source: PRACTICE,
    },
    Assumed { input: "exposure", reason: "Open water upwind: the strongest wind.", source: PRACTICE },
    Assumed { input: "mean_roof_height", reason: "A house of two storeys, halfway up its roof.", source: PRACTICE },
    Assumed {
        input: "topographic_factor",
        reason: "Level ground. On or behind a hill, a ridge or a bluff the wind is stronger: ask the engineer.",
        source: Source::new("ASCE 7-16", "26.8", Status::PartlyLookedUp),
    },
    Assumed {
        input: "ground_elevation_factor",
        reason: "Sea level, which is safe anywhere above it.",
        source: chapter_26::GROUND_ELEVATION,
    },
    Assumed {
        input: "enclosure",
        reason: "Doors and windows stay shut and whole. A large opening that fails lets the wind push from inside too.",
        source: chapter_26::INTERNAL_PRESSURE,
    },
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_assumed_value_has_one_reason() {
        for (index, one) in ASSUMED.iter().enumerate() {
            assert!(one.reason.ends_with('.') && one.reason.len() > 20, "{}", one.input);
            assert!(ASSUMED[index + 1..].iter().all(|other| other.input != one.input), "{}", one.input);
        }
        // Twelve inputs of a header check, and three of the wind that it does not ask for.
        assert_eq!(ASSUMED.len(), 15);
    }

    /// Source: ASCE 7-16 Table 7.3-1: the lowest exposure factor that a roof can have counted on without asking is
    /// that of terrain B or C, partly exposed.
    #[test]
    fn the_assumed_exposure_factor_is_that_of_a_partly_exposed_roof() {
        use standards::asce7_16::chapter_7::{RoofExposure, Terrain, exposure_factor};
        for terrain in [Terrain::B, Terrain::C] {
            assert_eq!(exposure_factor(terrain, RoofExposure::Partially), Ok(SiteLoads::assumed().snow.exposure));
        }
    }

    #[test]
    fn a_given_roof_snow_replaces_the_one_from_the_ground() {
        let site = SiteLoads { given_roof_snow: Some(AreaLoad::from_psf(25.0)), ..SiteLoads::assumed() };
        assert_eq!(site.roof_snow().load, AreaLoad::from_psf(25.0));
        assert!((SiteLoads::assumed().roof_snow().load.psf() - 0.7 * 1.1 * 30.0).abs() < 1e-9);
    }

    /// Source: IRC 2021 Table R301.5: 10 psf without storage, alone; 20 psf with limited storage, with other loads.
    #[test]
    fn an_attic_with_storage_counts_with_other_live_loads() {
        assert!(AtticLive::given(AreaLoad::from_psf(10.0)).acts_alone);
        assert!(!AtticLive::given(AreaLoad::from_psf(20.0)).acts_alone);
        assert_eq!(AtticLive::of(Occupancy::AtticWithLimitedStorage), AtticLive::given(AreaLoad::from_psf(20.0)));
    }
}
