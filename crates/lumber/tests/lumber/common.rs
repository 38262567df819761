//! Shared by the tests: members by name, and agreement with print.

use lumber::{Conditions, Grade, LoadDuration, Member, Product, Sawn, SawnSize, ServiceMoisture, Species};
use measure::{Length, Stress, math};

/// Asserts that a computed number prints as it was published: within half of the last digit.
#[track_caller]
pub fn agrees(computed: f64, printed: &str) {
    let places = printed.split_once('.').map_or(0, |(_, decimals)| decimals.len());
    let half_digit = 0.5 * math::pow(10.0, -f64::from(u8::try_from(places).unwrap()));
    near(computed, printed, half_digit);
}

#[track_caller]
pub fn near(computed: f64, printed: &str, tolerance: f64) {
    let off = (computed - printed.parse::<f64>().unwrap()).abs();
    assert!(off <= tolerance * (1.0 + 1e-9), "computed {computed}, printed {printed}");
}

pub fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

pub fn psi(value: f64) -> Stress {
    Stress::from_psi(value)
}

pub fn sawn(species: Species, grade: Grade, size: &str) -> Member {
    built_up(species, grade, size, 1)
}

pub fn built_up(species: Species, grade: Grade, size: &str, plies: u8) -> Member {
    let size = SawnSize::from_text(size).unwrap();
    Member::new(Product::Sawn(Sawn { species, grade, size }), plies).unwrap()
}

pub const DRY: Conditions = Conditions {
    service: ServiceMoisture::Dry,
    incised: false,
    repetitive: false,
    temperature: lumber::SustainedTemperature::UpTo100F,
};
pub const WET: Conditions = Conditions { service: ServiceMoisture::Wet, ..DRY };
pub const REPETITIVE: Conditions = Conditions { repetitive: true, ..DRY };

pub fn stresses(member: &Member, conditions: Conditions, duration: LoadDuration) -> lumber::AdjustedStresses {
    member.adjusted_stresses(&conditions, duration).unwrap()
}
