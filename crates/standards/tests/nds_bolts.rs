//! Bolts and steel side plates by NDS 2018 chapter 12, row by row.
//!
//! Tables that are called computed were worked from the same equations by other means and kept to one decimal; printed
//! cells, which round to 10 lb, are from memory where named.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

use measure::{Angle, Length, Stress};
use standards::nds_2018::{
    appendix_i::{NailSteel, bending_yield_strength},
    chapter_2::ServiceMoisture,
    chapter_11::{wet_service_factor_bolt, wet_service_factor_post_frame},
    chapter_12::{
        BoltLoad, Distance, DowelBearing, PLATE_ULTIMATE, SHEET_ULTIMATE, SingleShear, YieldMode,
        assigned_specific_gravity, bolt_bearing_strength, bolt_bending_yield_strength, bolt_distances,
        bolt_reduction_term, bolt_yield_limits, concrete_bearing_strength, full_penetration, gauge_thickness,
        geometry_factor, steel_bearing_strength, tabulated_dowel_bearing_strength, yield_limits,
    },
    supplement::SpeciesGroup,
};

/// In the order of the columns of every table below.
const SPECIES: [SpeciesGroup; 5] = [
    SpeciesGroup::SouthernPine,
    SpeciesGroup::DouglasFirLarch,
    SpeciesGroup::HemFir,
    SpeciesGroup::SprucePineFir,
    SpeciesGroup::SprucePineFirSouth,
];

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

fn degrees(value: f64) -> Angle {
    Angle::from_degrees(value)
}

#[track_caller]
fn near(found: f64, printed: f64, half_digit: f64) {
    assert!((found - printed).abs() <= half_digit * (1.0 + 1e-9), "found {found}, printed {printed}");
}

fn bears(species: SpeciesGroup, diameter: f64, angle: f64, thickness: f64) -> DowelBearing {
    let gravity = assigned_specific_gravity(species).value;
    let strength = bolt_bearing_strength(gravity, inches(diameter), degrees(angle)).unwrap().value;
    DowelBearing { length: inches(thickness), strength }
}

fn pounds(diameter: f64, angle: f64, side: DowelBearing, main: DowelBearing) -> f64 {
    let bending_yield = bolt_bending_yield_strength().value;
    let shear = SingleShear { diameter: inches(diameter), bending_yield, main, side };
    bolt_yield_limits(&shear, degrees(angle)).unwrap().governing().value.value.pounds()
}

/// Source: NDS 2018 Table 12E, wood sill on concrete, 6 in embedment; computed. Columns SP, DF-L, HF, SPF, SPF-S.
#[test]
fn sills_on_concrete() {
    let rows = [
        (1.5, 0.5, 0.0, [683.5, 648.0, 594.7, 587.9, 542.6]),
        (1.5, 0.5, 90.0, [411.1, 381.3, 343.8, 337.4, 292.5]),
        (1.5, 0.625, 0.0, [971.9, 928.4, 862.7, 854.3, 798.0]),
        (1.5, 0.625, 90.0, [579.6, 525.0, 421.9, 412.5, 328.1]),
        (1.5, 0.75, 0.0, [1326.0, 1274.4, 1195.9, 1185.8, 1117.7]),
        (1.5, 0.75, 90.0, [663.8, 585.0, 461.2, 450.0, 360.0]),
        (2.5, 0.5, 0.0, [786.6, 766.2, 732.1, 727.4, 693.9]),
        (2.5, 0.5, 90.0, [522.1, 471.7, 409.3, 398.7, 344.3]),
        (2.5, 0.625, 0.0, [1229.1, 1184.9, 1071.4, 1056.9, 960.9]),
        (2.5, 0.625, 90.0, [670.5, 613.0, 540.1, 533.3, 470.5]),
    ];
    let concrete = DowelBearing { length: inches(6.0), strength: concrete_bearing_strength().value };
    let found = |species, thickness, diameter, angle| {
        pounds(diameter, angle, bears(species, diameter, angle, thickness), concrete)
    };
    for (thickness, diameter, angle, row) in rows {
        for (species, computed) in SPECIES.into_iter().zip(row) {
            near(found(species, thickness, diameter, angle), computed, 0.05);
        }
    }
    // Printed cells, from memory: 1/2 in DF-L 650 and HF 590, 5/8 in DF-L 930.
    near(found(SpeciesGroup::DouglasFirLarch, 1.5, 0.5, 0.0), 650.0, 5.0);
    near(found(SpeciesGroup::HemFir, 1.5, 0.5, 0.0), 590.0, 5.0);
    near(found(SpeciesGroup::DouglasFirLarch, 1.5, 0.625, 0.0), 930.0, 5.0);
}

/// Source: NDS 2018 Table 12A, 1-1/2 in side member, one species, along the grain; computed. Printed cells, from memory:
/// 1/2 in in 1-1/2 in 530, 480, 410, 410.
#[test]
fn wood_on_wood() {
    let rows = [
        (0.5, 1.5, [531.0, 483.0, 414.0, 406.0]),
        (0.5, 3.5, [659.0, 615.0, 550.0, 542.0]),
        (0.625, 1.5, [663.0, 604.0, 518.0, 507.0]),
        (0.625, 3.5, [935.0, 878.0, 794.0, 783.0]),
    ];
    let found = |species, diameter, main| {
        pounds(diameter, 0.0, bears(species, diameter, 0.0, 1.5), bears(species, diameter, 0.0, main))
    };
    for (diameter, main, row) in rows {
        for (species, computed) in SPECIES.into_iter().zip(row) {
            near(found(species, diameter, main), computed, 0.5);
        }
    }
    for (species, printed) in SPECIES.into_iter().zip([530.0, 480.0, 410.0, 410.0]) {
        near(found(species, 0.5, 1.5), printed, 5.0);
    }
}

/// Source: NDS 2018 Table 12.3.3: DF-L, 1/2 in, 5600 along and 3150 across the grain. By hand, Hankinson at 45 degrees:
/// 5600 x 3150 / (0.5 (5600 + 3150)) = 4032.
#[test]
fn bearing_under_bolts() {
    let psi = |angle| bolt_bearing_strength(0.50, inches(0.5), degrees(angle)).unwrap().value.psi();
    near(psi(0.0), 5600.0, 1e-6);
    near(psi(90.0), 3150.0, 1e-6);
    near(psi(45.0), 4032.0, 1e-6);
    for (gravity, diameter, angle) in [(0.30, 0.5, 0.0), (0.5, 0.24, 0.0), (0.5, 1.01, 0.0), (0.5, 0.5, 90.1)] {
        assert!(bolt_bearing_strength(gravity, inches(diameter), degrees(angle)).is_err());
    }
}

/// Source: NDS 2018 Table 12.3.1B: 4, 3.6 and 3.2 times `K_θ`, which is 1.25 across the grain.
#[test]
fn reduction_terms() {
    let terms = YieldMode::ALL.map(|mode| bolt_reduction_term(mode, 1.25).value);
    assert_eq!(terms, [5.0, 5.0, 4.5, 4.0, 4.0, 4.0]);
    let concrete = DowelBearing { length: inches(6.0), strength: concrete_bearing_strength().value };
    let shear = SingleShear {
        diameter: inches(0.5),
        bending_yield: Stress::from_psi(45_000.0),
        main: concrete,
        side: bears(SpeciesGroup::HemFir, 0.5, 45.0, 1.5),
    };
    assert_eq!(bolt_yield_limits(&shear, degrees(45.0)).unwrap().angle_factor.value, 1.125);
    for shear in [SingleShear { diameter: inches(0.2), ..shear }, SingleShear { diameter: inches(1.1), ..shear }] {
        assert!(bolt_yield_limits(&shear, degrees(0.0)).is_err());
    }
    assert!(bolt_yield_limits(&shear, degrees(-1.0)).is_err());
}

/// Source: NDS 2018 Tables 12.5.1A to 12.5.1C (from memory), in diameters.
#[test]
fn distances_of_bolts() {
    let rows = [
        (BoltLoad::TowardEnd, [7.0, 3.5], [1.5, 1.5]),
        (BoltLoad::AwayFromEnd, [4.0, 2.0], [1.5, 1.5]),
        (BoltLoad::AcrossGrain, [4.0, 2.0], [4.0, 1.5]),
    ];
    assert_eq!(rows.map(|(load, ..)| load), BoltLoad::ALL);
    for (load, end, edges) in rows {
        let found = bolt_distances(inches(1.0), load).value;
        assert_eq!([found.end.full, found.end.least].map(Length::inches), end);
        assert_eq!([found.loaded_edge, found.unloaded_edge].map(Length::inches), edges);
        assert_eq!([found.in_row.full, found.in_row.least].map(Length::inches), [4.0, 3.0]);
    }
    let end = Distance { full: inches(3.5), least: inches(1.75) };
    let factor = |found| geometry_factor(inches(found), end).map(|factor| factor.value);
    assert_eq!([1.74, 1.75, 2.625, 3.5, 9.0].map(factor), [None, Some(0.5), Some(0.75), Some(1.0), Some(1.0)]);
}

/// Source: NDS 2018 Table 11.3.3 (bolts from memory, post-frame ring shank looked up).
#[test]
fn moisture() {
    assert_eq!([ServiceMoisture::Dry, ServiceMoisture::Wet].map(|m| wet_service_factor_bolt(m).value), [1.0, 0.7]);
    assert_eq!(wet_service_factor_post_frame().value, 1.0);
}

/// Source: NDS 2018 Appendix I.2: 61,850 psi of sheet and 87,000 psi of plate, as the footnote of Table 12P prints them
/// (from memory), to 50 psi.
#[test]
fn bearing_of_steel() {
    let psi = |thickness, ultimate| steel_bearing_strength(inches(thickness), ultimate).map(|found| found.value.psi());
    near(psi(0.239, SHEET_ULTIMATE).unwrap(), 61_850.0, 25.0);
    near(psi(0.25, PLATE_ULTIMATE).unwrap(), 87_000.0, 25.0);
    for (thickness, ultimate) in [(0.0, 45_000.0), (1.01, 45_000.0), (0.06, 35_000.0), (0.06, 101_000.0)] {
        assert!(psi(thickness, Stress::from_psi(ultimate)).is_err());
    }
}

/// Source: NDS 2018 Table 12P, gauges (from memory). A thicker plate has the smaller number.
#[test]
fn gauges() {
    let rows = [
        (3, 0.239),
        (7, 0.179),
        (10, 0.134),
        (11, 0.120),
        (12, 0.105),
        (14, 0.075),
        (16, 0.060),
        (18, 0.048),
        (20, 0.036),
    ];
    for (gauge, thickness) in rows {
        assert_eq!(gauge_thickness(gauge).map(|found| found.value.inches()), Some(thickness));
    }
    assert_eq!(gauge_thickness(13), None);
}

/// Source: NDS 2018 Table 12P, its equations; computed. Columns SP, DF-L, HF, SPF, SPF-S.
#[test]
fn nails_through_steel() {
    use YieldMode::{IIIm, IIIs, IV};
    let rows = [
        (0.036, 0.131, [101.8, 93.9, 82.4, 80.7, 71.0]),
        (0.036, 0.148, [123.2, 113.6, 99.6, 97.6, 85.8]),
        (0.036, 0.162, [147.5, 136.0, 119.1, 116.7, 102.6]),
        (0.060, 0.131, [104.4, 96.5, 84.9, 83.3, 73.5]),
        (0.060, 0.148, [125.6, 116.1, 102.1, 100.1, 88.3]),
        (0.060, 0.162, [149.6, 138.2, 121.5, 119.1, 105.0]),
        (0.105, 0.131, [115.6, 107.3, 94.9, 93.1, 82.5]),
        (0.105, 0.148, [137.3, 127.3, 112.6, 110.4, 97.8]),
        (0.105, 0.162, [160.9, 149.2, 131.8, 129.2, 114.4]),
        (0.250, 0.131, [145.5, 133.8, 116.8, 114.4, 99.2]),
        (0.250, 0.148, [176.2, 162.0, 141.5, 138.5, 121.4]),
        (0.250, 0.162, [211.1, 194.1, 169.5, 166.0, 145.4]),
    ];
    for (thickness, diameter, row) in rows {
        let (steel, nail) = (inches(thickness), inches(diameter));
        let ultimate = if thickness < 0.25 { SHEET_ULTIMATE } else { PLATE_ULTIMATE };
        for (species, computed) in SPECIES.into_iter().zip(row) {
            let gravity = assigned_specific_gravity(species).value;
            let governing = yield_limits(&SingleShear {
                diameter: nail,
                bending_yield: bending_yield_strength(nail, NailSteel::LowCarbon).unwrap().value,
                main: DowelBearing {
                    length: full_penetration(nail).value,
                    strength: tabulated_dowel_bearing_strength(gravity).unwrap().value,
                },
                side: DowelBearing { length: steel, strength: steel_bearing_strength(steel, ultimate).unwrap().value },
            })
            .unwrap()
            .governing();
            near(governing.value.value.pounds(), computed, 0.05);
            assert!(if thickness < 0.25 { governing.mode == IIIs } else { [IIIm, IV].contains(&governing.mode) });
        }
    }
}
