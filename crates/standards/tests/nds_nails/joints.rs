//! Published joints, every mode of them, and penetration.

use standards::nds_2018::chapter_12::{
    DowelBearing, SingleShear, YieldMode, bearing_length_in_main_member, dowel_bearing_strength, full_penetration,
    least_penetration, penetration_factor, yield_limits,
};

use crate::common::{governs, inches, near, psi};

/// Source: the same, every mode of 8d common through 7/16 OSB into SPF, penetration 2.0625 in; computed.
#[test]
fn every_mode_of_one_joint() {
    let found = yield_limits(&SingleShear {
        diameter: inches(0.131),
        bending_yield: psi(100_000.0),
        main: DowelBearing { length: inches(2.0625), strength: psi(3350.0) },
        side: DowelBearing { length: inches(0.4375), strength: psi(4650.0) },
    })
    .unwrap();
    let printed = [411.4, 121.1, 144.4, 152.9, 67.5, 88.9];
    for (value, printed) in found.values.iter().zip(printed) {
        near(value.value.value.pounds(), printed, 0.05);
    }
    assert_eq!(found.values.map(|value| value.mode), YieldMode::ALL);
    let names: std::collections::BTreeSet<_> = YieldMode::ALL.map(YieldMode::name).into();
    assert_eq!(names.len(), 6);
}

/// Source: hand calculation of a canopy roof's sheathing nails, published with every number: 8d common, 3/4 in
/// Structural I deck of G 0.50 on SPF of G 0.42, exact bearing strengths.
#[test]
fn sheathing_nail_of_a_published_calculation() {
    let (fes, fem) = (dowel_bearing_strength(0.50).unwrap().value, dowel_bearing_strength(0.42).unwrap().value);
    near(fes.psi(), 4636.7, 0.05);
    near(fem.psi(), 3364.2, 0.05);
    let found = yield_limits(&SingleShear {
        diameter: inches(0.131),
        bending_yield: psi(100_000.0),
        main: DowelBearing { length: inches(1.75), strength: fem },
        side: DowelBearing { length: inches(0.75), strength: fes },
    })
    .unwrap();
    for (k, printed) in found.k.into_iter().zip([0.6099, 0.9296, 1.5307]) {
        near(k, printed, 0.000_05);
    }
    for (value, printed) in found.values.iter().zip([350.57, 207.07, 126.29, 132.95, 84.38, 88.93]) {
        near(value.value.value.pounds(), printed, 0.005);
    }
    governs(&found, YieldMode::IIIs, 84.38, 0.005);
    near(found.governing().value.value.pounds() * 1.6, 135.0, 0.05);
}

/// Source: AWC Structural Wood Design Examples, nail in single shear: 10d common through 3/4 in, G 0.50, exact bearing
/// strengths. Every mode but the governing one is computed.
#[test]
fn nail_of_the_design_examples() {
    let fe = dowel_bearing_strength(0.50).unwrap().value;
    let found = yield_limits(&SingleShear {
        diameter: inches(0.148),
        bending_yield: psi(90_000.0),
        main: DowelBearing { length: inches(2.25), strength: fe },
        side: DowelBearing { length: inches(0.75), strength: fe },
    })
    .unwrap();
    governs(&found, YieldMode::IIIs, 105.10, 0.005);
    for (value, computed) in found.values.iter().zip([701.8, 233.9, 233.9, 243.7, 105.1, 117.4]) {
        near(value.value.value.pounds(), computed, 0.05);
    }
}

/// Source: field case of a truss repair, 1-1/2 in side member, SPF, exact bearing strengths: 16d common 119.8 lb, 0.148
/// in 100.0 lb, mode IV; computed.
#[test]
fn nails_of_a_truss_repair() {
    let fe = dowel_bearing_strength(0.42).unwrap().value;
    for (diameter, length, computed) in [(0.162, 2.0, 119.8), (0.148, 1.5, 100.0)] {
        let found = yield_limits(&SingleShear {
            diameter: inches(diameter),
            bending_yield: psi(90_000.0),
            main: DowelBearing { length: inches(length), strength: fe },
            side: DowelBearing { length: inches(1.5), strength: fe },
        })
        .unwrap();
        governs(&found, YieldMode::IV, computed, 0.05);
    }
}

/// Source: structural engineers' mailing list, 2009: 16d common through a 2x plate and 3/4 in sheathing, `C_D` 1.6.
/// The equations with the tip left out give 135.0 lb before `C_D` (computed).
#[test]
fn short_penetration_of_a_published_example() {
    let (penetration, diameter) = (inches(1.25), inches(0.162));
    near(least_penetration(diameter).value.inches(), 0.972, 0.0005);
    near(full_penetration(diameter).value.inches(), 1.62, 0.005);
    let factor = penetration_factor(penetration, diameter).unwrap().value;
    near(factor * 1.6 * 141.0, 174.0, 0.5);
    let bearing = bearing_length_in_main_member(penetration, diameter).unwrap().value;
    let found = yield_limits(&SingleShear {
        diameter,
        bending_yield: psi(90_000.0),
        main: DowelBearing { length: bearing, strength: psi(4650.0) },
        side: DowelBearing { length: inches(1.5), strength: psi(4650.0) },
    })
    .unwrap();
    governs(&found, YieldMode::IIIm, 135.0, 0.05);
}

/// A nail that reaches exactly 6 or exactly 10 diameters is within the rule; one that does not is refused.
#[test]
fn penetration_at_its_limits() {
    for diameter in [0.099, 0.113, 0.120, 0.131, 0.148, 0.162] {
        let d = inches(diameter);
        assert!((penetration_factor(d * 6.0, d).unwrap().value - 0.6).abs() < 1e-9);
        assert!(penetration_factor(d * 5.999, d).is_err());
        assert_eq!(bearing_length_in_main_member(d * 10.0, d).unwrap().value, d * 10.0);
        assert_eq!(penetration_factor(d * 30.0, d).unwrap().value, 1.0);
    }
    // Written in decimals, 10 x 0.113 in divides to a little under 10 diameters, and 6 x 0.099 to a little under 6.
    for (penetration, diameter) in [(1.13, 0.113), (1.63, 0.163)] {
        assert_eq!(penetration_factor(inches(penetration), inches(diameter)).unwrap().value, 1.0);
        let bearing = bearing_length_in_main_member(inches(penetration), inches(diameter)).unwrap().value;
        assert_eq!(bearing, inches(penetration));
    }
    assert!(penetration_factor(inches(0.594), inches(0.099)).is_ok());
    let refused = penetration_factor(inches(0.5), inches(0.131)).unwrap_err().to_string();
    assert!(refused.contains("penetration 3.817 diameters") && refused.contains("longer nail"), "{refused}");
    assert!(penetration_factor(inches(3.0), inches(0.25)).is_err());
}
