//! Nails and species in short, and agreement with a printed value.

use measure::{Length, Stress};
use standards::nds_2018::{
    appendix_i::{NailSteel, bending_yield_strength},
    chapter_12::{
        DowelBearing, SingleShear, YieldLimits, YieldMode, assigned_specific_gravity, full_penetration,
        tabulated_dowel_bearing_strength, yield_limits,
    },
    supplement::SpeciesGroup,
};

/// In the order of the columns of every table below.
pub const SPECIES: [SpeciesGroup; 5] = [
    SpeciesGroup::SouthernPine,
    SpeciesGroup::DouglasFirLarch,
    SpeciesGroup::HemFir,
    SpeciesGroup::SprucePineFir,
    SpeciesGroup::SprucePineFirSouth,
];

pub fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

pub fn psi(value: f64) -> Stress {
    Stress::from_psi(value)
}

pub fn gravity(species: SpeciesGroup) -> f64 {
    assigned_specific_gravity(species).value
}

/// The bearing strength the tables of the standard are made with.
pub fn strength(species: SpeciesGroup) -> Stress {
    tabulated_dowel_bearing_strength(gravity(species)).unwrap().value
}

/// A low carbon nail with a bearing length of 10 diameters in the main member.
pub fn limits(diameter: f64, main: Stress, side_inches: f64, side: Stress) -> YieldLimits {
    let diameter = inches(diameter);
    yield_limits(&SingleShear {
        diameter,
        bending_yield: bending_yield_strength(diameter, NailSteel::LowCarbon).unwrap().value,
        main: DowelBearing { length: full_penetration(diameter).value, strength: main },
        side: DowelBearing { length: inches(side_inches), strength: side },
    })
    .unwrap()
}

#[track_caller]
pub fn near(found: f64, printed: f64, half_digit: f64) {
    assert!((found - printed).abs() <= half_digit * (1.0 + 1e-9), "found {found}, printed {printed}");
}

#[track_caller]
pub fn governs(found: &YieldLimits, mode: YieldMode, printed: f64, half_digit: f64) {
    let governing = found.governing();
    assert_eq!(governing.mode, mode);
    near(governing.value.value.pounds(), printed, half_digit);
}
