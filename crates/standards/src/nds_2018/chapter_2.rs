//! Chapter 2: design values for structural members, the factors every wood product shares.

use super::{Cited, nds};
use crate::{
    Source,
    Status::{FromMemory, LookedUp},
};

/// How long a load lasts over the life of a frame, added up: the columns of Table 2.3.2.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LoadDuration {
    /// Dead load.
    Permanent,
    /// Occupancy live load.
    TenYears,
    /// Snow.
    TwoMonths,
    /// Construction load and roof live load.
    SevenDays,
    /// Wind or earthquake.
    TenMinutes,
    /// Impact. Not for connections, nor for lumber treated under pressure with water-borne preservatives or fire
    /// retardants.
    Impact,
}

impl LoadDuration {
    /// Every duration, longest first.
    pub const ALL: [Self; 6] =
        [Self::Permanent, Self::TenYears, Self::TwoMonths, Self::SevenDays, Self::TenMinutes, Self::Impact];

    /// Load duration factor `C_D`: wood carries more for a short time than for ever.
    ///
    /// Pure number. One combination takes the factor of the shortest load in it; every combination is checked, since
    /// a smaller load with a smaller factor can govern. It never multiplies `F_c⊥`, `E` or `E_min`.
    ///
    /// Source: NDS 2018 §2.3.2, Table 2.3.2 (read in published worked examples; impact from memory).
    ///
    /// ```
    /// use standards::nds_2018::chapter_2::LoadDuration;
    /// assert_eq!(LoadDuration::TwoMonths.factor().value, 1.15);
    /// ```
    #[must_use]
    pub const fn factor(self) -> Cited<f64> {
        const TABLE: Source = nds("Table 2.3.2", LookedUp);
        match self {
            Self::Permanent => Cited::new(0.9, TABLE),
            Self::TenYears => Cited::new(1.0, TABLE),
            Self::TwoMonths => Cited::new(1.15, TABLE),
            Self::SevenDays => Cited::new(1.25, TABLE),
            Self::TenMinutes => Cited::new(1.6, TABLE),
            Self::Impact => Cited::new(2.0, nds("Table 2.3.2", FromMemory)),
        }
    }

    /// The duration as the table names it.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Permanent => "permanent",
            Self::TenYears => "ten years",
            Self::TwoMonths => "two months",
            Self::SevenDays => "seven days",
            Self::TenMinutes => "ten minutes",
            Self::Impact => "impact",
        }
    }
}

/// Moisture of the wood in service.
///
/// Dry is at most 19 % for sawn lumber and under 16 % for glulam (§4.1.4, §5.1.4).
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ServiceMoisture {
    /// Under a roof, within a wall or a floor.
    #[default]
    Dry,
    /// In the weather, in the ground, or in a wet room.
    Wet,
}

/// Temperature the wood is held at for long: the columns of Table 2.3.3.
///
/// Above 150 °F the table ends. A roof heated by the sun for part of the day counts as up to 100 °F.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SustainedTemperature {
    /// Up to 100 °F.
    #[default]
    UpTo100F,
    /// Over 100 °F, up to 125 °F.
    Over100To125F,
    /// Over 125 °F, up to 150 °F.
    Over125To150F,
}

/// A row of Table 2.3.3.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TemperatureFactors {
    /// On `F_t`, `E` and `E_min`.
    pub tension_and_modulus: f64,
    /// On `F_b`, `F_v`, `F_c` and `F_c⊥`.
    pub others: f64,
}

/// Temperature factor `C_t`: wood kept hot is weaker.
///
/// Pure numbers. Source: NDS 2018 §2.3.3, Table 2.3.3 (looked up).
///
/// ```
/// use standards::nds_2018::chapter_2::{ServiceMoisture, SustainedTemperature, temperature_factors};
/// let hot_and_wet = temperature_factors(SustainedTemperature::Over125To150F, ServiceMoisture::Wet);
/// assert_eq!(hot_and_wet.value.others, 0.5);
/// ```
#[must_use]
pub const fn temperature_factors(
    temperature: SustainedTemperature,
    service: ServiceMoisture,
) -> Cited<TemperatureFactors> {
    use {ServiceMoisture as M, SustainedTemperature as T};
    let (tension_and_modulus, others) = match (temperature, service) {
        (T::UpTo100F, _) => (1.0, 1.0),
        (T::Over100To125F, M::Dry) => (0.9, 0.8),
        (T::Over100To125F, M::Wet) => (0.9, 0.7),
        (T::Over125To150F, M::Dry) => (0.9, 0.7),
        (T::Over125To150F, M::Wet) => (0.9, 0.5),
    };
    Cited::new(TemperatureFactors { tension_and_modulus, others }, nds("Table 2.3.3", LookedUp))
}
