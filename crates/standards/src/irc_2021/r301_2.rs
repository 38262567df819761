//! R301.2: where the code's own rules stop for wind and for earthquakes.

use measure::Speed;

use super::{
    DOCUMENT,
    r301::{ExposureCategory, prescriptive_wind},
};
use crate::{OutsideTable, Source, Status};

/// Figure R301.2.1.1: regions where the wind needs a design whatever the speed.
pub const WIND_DESIGN_REGION: Source =
    Source::new(DOCUMENT, "Figure R301.2.1.1, wind design required", Status::FromMemory);
/// R301.2.2: seismic provisions, by seismic design category.
pub const SEISMIC: Source = Source::new(DOCUMENT, "R301.2.2", Status::FromMemory);

/// Whether the code's own rules for wind reach a site: not in a region that the map marks "wind design required", and
/// within the speeds of [`prescriptive_wind`].
///
/// # Errors
/// Where the wind needs a design by another standard or by an engineer.
pub fn prescriptive_wind_at(
    in_wind_design_region: bool,
    wind_speed: Speed,
    exposure: ExposureCategory,
    hurricane_prone: bool,
) -> Result<(), OutsideTable> {
    if in_wind_design_region {
        return Err(OutsideTable {
            source: WIND_DESIGN_REGION,
            given: "a place that the map marks \"wind design required\"".to_owned(),
            covers: "the rest of the map",
            next_step: "The wind needs a design by an engineer or by a standard for strong wind; the code official says \
                        which.",
        });
    }
    prescriptive_wind(wind_speed, exposure, hurricane_prone)
}

/// How strong an earthquake may be at a place, as the residential code divides it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum SeismicDesignCategory {
    /// Least.
    A,
    /// Low.
    B,
    /// Moderate: the code's rules for earthquakes hold for townhouses.
    C,
    /// The first of three for which the code's rules hold for every house.
    D0,
    /// The second.
    D1,
    /// The third.
    D2,
    /// Beyond the code's own rules.
    E,
}

impl SeismicDesignCategory {
    /// Every category, from least to most.
    pub const ALL: [Self; 7] = [Self::A, Self::B, Self::C, Self::D0, Self::D1, Self::D2, Self::E];

    /// As it is written: `D0`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::A => "A",
            Self::B => "B",
            Self::C => "C",
            Self::D0 => "D0",
            Self::D1 => "D1",
            Self::D2 => "D2",
            Self::E => "E",
        }
    }
}

/// Kind of dwelling.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dwelling {
    /// One- or two-family house that stands by itself.
    Detached,
    /// One of a row.
    Townhouse,
}

/// What the code asks for earthquakes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SeismicProvisions {
    /// Nothing of its own.
    None,
    /// Its own rules of R301.2.2.
    Prescriptive,
    /// A design by the building code.
    DesignRequired,
}

/// What the code asks for earthquakes of a dwelling: nothing in A and B, and of a detached one in C; its own rules for
/// a townhouse in C and for all in D0 to D2; a design in E.
#[must_use]
pub const fn seismic_provisions(category: SeismicDesignCategory, dwelling: Dwelling) -> SeismicProvisions {
    use SeismicDesignCategory::{A, B, C, D0, D1, D2, E};
    match (category, dwelling) {
        (A | B, _) | (C, Dwelling::Detached) => SeismicProvisions::None,
        (C, Dwelling::Townhouse) | (D0 | D1 | D2, _) => SeismicProvisions::Prescriptive,
        (E, _) => SeismicProvisions::DesignRequired,
    }
}
