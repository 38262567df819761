//! The topographic factor against the figure, and its five conditions.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

use measure::Length;
use proptest::prelude::*;
use standards::asce7_16::{
    chapter_26::Exposure,
    chapter_26_8::{
        Condition, Feature, FromCrest, LandForm, Position, Setting, TopographicFactor, least_height, topographic_factor,
    },
};
use standards::ibc_2018::section_1609_1::prescriptive_on_hill;

fn ft(value: f64) -> Length {
    Length::from_feet(value)
}

fn land(feature: Feature, height: f64, half_length: f64) -> LandForm {
    LandForm { feature, height: ft(height), half_length: ft(half_length) }
}

fn at(land: &LandForm, exposure: Exposure, side: FromCrest, x: f64, z: f64) -> TopographicFactor {
    topographic_factor(land, exposure, side, ft(x), ft(z)).unwrap()
}

/// Source: ASCE 7-16 Fig. 26.8-1, the notes' table of constants; looked up in an open library that states the figure,
/// and the columns of B and D in two standards built on this one.
#[test]
fn constants_as_printed() {
    for (feature, shape, height, upwind, downwind) in [
        (Feature::Ridge, [1.30, 1.45, 1.55], 3.0, 1.5, 1.5),
        (Feature::Escarpment, [0.75, 0.85, 0.95], 2.5, 1.5, 4.0),
        (Feature::Hill, [0.95, 1.05, 1.15], 4.0, 1.5, 1.5),
    ] {
        assert_eq!(Exposure::ALL.map(|exposure| feature.shape_factor(exposure)), shape, "{feature:?}");
        assert_eq!(feature.height_attenuation(), height);
        assert_eq!(feature.horizontal_attenuation(FromCrest::Upwind), upwind);
        assert_eq!(feature.horizontal_attenuation(FromCrest::Downwind), downwind);
    }
}

/// Source: ASCE 7-16 Fig. 26.8-1, `K_1` in Exposure C as an open library prints it; two places, so half of the last
/// digit.
#[test]
fn first_multiplier_as_printed() {
    const STEEPNESS: [f64; 7] = [0.20, 0.25, 0.30, 0.35, 0.40, 0.45, 0.50];
    for (feature, printed) in [
        (Feature::Ridge, [0.29, 0.36, 0.43, 0.51, 0.58, 0.65, 0.72]),
        (Feature::Escarpment, [0.17, 0.21, 0.26, 0.30, 0.34, 0.38, 0.43]),
        (Feature::Hill, [0.21, 0.26, 0.32, 0.37, 0.42, 0.47, 0.53]),
    ] {
        for (steepness, printed) in STEEPNESS.into_iter().zip(printed) {
            let k_1 = at(&land(feature, 100.0 * steepness, 100.0), Exposure::C, FromCrest::Upwind, 0.0, 0.0).k_1;
            assert!((k_1 - printed).abs() <= 0.005 + 1e-9, "{feature:?} {steepness}: {k_1} against {printed}");
        }
    }
}

/// Not published: a house behind a bluff worked by hand, `H` 50 ft, `L_h` 60 ft, 30 ft behind the crest, 13.5 ft high,
/// Exposure D: 0.475, 0.925, 0.7136, 1.725. Without the `2 H` of steep ground it would be 1.530: unsafe.
#[test]
fn a_house_behind_a_bluff() {
    let bluff = land(Feature::Escarpment, 50.0, 60.0);
    let found = at(&bluff, Exposure::D, FromCrest::Downwind, 30.0, 13.5);
    assert!((found.k_1 - 0.475).abs() <= 5e-4 && (found.k_2 - 0.925).abs() <= 5e-4);
    assert!((found.k_3 - 0.7136).abs() <= 5e-5 && (found.factor - 1.725).abs() <= 5e-4);
    assert!((found.half_length - ft(100.0)).abs() < ft(1e-9));
}

/// Source: ASCE 7-16 Fig. 26.8-1 note on `H / L_h` over 0.5: at 0.5 itself both forms are the same, so there is no
/// step.
#[test]
fn steep_ground_takes_twice_the_height_without_a_step() {
    for feature in Feature::ALL {
        let factor =
            |half_length| at(&land(feature, 50.0, half_length), Exposure::C, FromCrest::Downwind, 20.0, 20.0).factor;
        assert!((factor(100.0) - factor(99.999_999)).abs() < 1e-6, "{feature:?}");
        assert!((factor(99.0) - factor(10.0)).abs() < 1e-12, "{feature:?}");
    }
}

const NEAR_LIMITS: Setting =
    Setting { clear_upwind: Length::from_feet(2000.0), highest_upwind: Length::from_feet(10.0), position: HIGH };
const HIGH: Position = Position::UpperHalfOrNearCrest;

fn failed(land: &LandForm, setting: &Setting, exposure: Exposure) -> Vec<Condition> {
    Condition::ALL.into_iter().filter(|condition| !condition.is_met(land, setting, exposure)).collect()
}

/// Source: ASCE 7-16 26.8.1; limits of the last two conditions read in a standard built on this one, the rest from
/// memory.
#[test]
fn each_condition_at_its_limit() {
    let low = land(Feature::Hill, 20.0, 100.0);
    assert_eq!(failed(&low, &NEAR_LIMITS, Exposure::C), []);
    let less = |change: fn(&mut Setting)| {
        let mut setting = NEAR_LIMITS;
        change(&mut setting);
        failed(&low, &setting, Exposure::C)
    };
    assert_eq!(less(|setting| setting.clear_upwind = ft(1999.9)), [Condition::Isolated]);
    assert_eq!(less(|setting| setting.highest_upwind = ft(10.1)), [Condition::TwiceAsHigh]);
    assert_eq!(less(|setting| setting.position = Position::Elsewhere), [Condition::HighOnIt]);
    assert_eq!(failed(&land(Feature::Hill, 20.0, 100.1), &NEAR_LIMITS, Exposure::C), [Condition::Steep]);
    assert_eq!(failed(&low, &NEAR_LIMITS, Exposure::B), [Condition::HighEnough]);
    // 100 heights of a high hill are more than 2 miles, which then are enough.
    let setting = Setting { clear_upwind: ft(10_560.0), ..NEAR_LIMITS };
    assert_eq!(failed(&land(Feature::Ridge, 200.0, 400.0), &setting, Exposure::D), []);
    assert_eq!(Exposure::ALL.map(|exposure| least_height(exposure).feet()), [60.0, 15.0, 15.0]);
}

/// Source: IBC 2018 1609.1.1.1, read in a federal compilation: 60 ft in B, 30 ft in C, over 10 per cent, 50 heights or
/// a mile.
#[test]
fn prescriptive_wood_stops_on_a_high_hill() {
    let setting = Setting { clear_upwind: ft(5280.0), ..NEAR_LIMITS };
    let stops = |land: LandForm, setting: Setting, exposure| prescriptive_on_hill(&land, &setting, exposure).is_err();
    let hill = |height, half_length| land(Feature::Ridge, height, half_length);
    assert!(stops(hill(30.0, 100.0), setting, Exposure::C) && !stops(hill(29.9, 100.0), setting, Exposure::C));
    assert!(stops(hill(60.0, 100.0), setting, Exposure::B) && !stops(hill(59.9, 100.0), setting, Exposure::B));
    assert!(stops(hill(30.0, 100.0), setting, Exposure::D));
    assert!(!stops(hill(40.0, 200.0), setting, Exposure::C) && stops(hill(40.0, 199.0), setting, Exposure::C));
    assert!(!stops(hill(40.0, 100.0), Setting { clear_upwind: ft(5279.0), ..setting }, Exposure::C));
    assert!(!stops(hill(40.0, 100.0), Setting { position: Position::Elsewhere, ..setting }, Exposure::C));
    let message = prescriptive_on_hill(&hill(45.0, 90.0), &setting, Exposure::C).unwrap_err().to_string();
    assert!(message.contains("45 ft") && message.contains("engineer"), "{message}");
}

#[test]
fn a_valley_and_impossible_distances_are_refused() {
    let hill = land(Feature::Hill, 50.0, 100.0);
    for (land, x, z) in [
        (land(Feature::Ridge, -50.0, 100.0), 0.0, 15.0),
        (land(Feature::Ridge, 0.0, 100.0), 0.0, 15.0),
        (land(Feature::Ridge, 50.0, 0.0), 0.0, 15.0),
        (hill, -1.0, 15.0),
        (hill, 0.0, -1.0),
    ] {
        let message = topographic_factor(&land, Exposure::C, FromCrest::Upwind, ft(x), ft(z)).unwrap_err().to_string();
        assert!(message.contains("engineer"), "{message}");
    }
}

proptest! {
    #[test]
    fn the_factor_falls_with_height_and_distance_and_is_never_under_one(
        feature in prop::sample::select(Feature::ALL.to_vec()),
        exposure in prop::sample::select(Exposure::ALL.to_vec()),
        side in prop::sample::select(vec![FromCrest::Upwind, FromCrest::Downwind]),
        height in 1.0f64..500.0,
        half_length in 1.0f64..3000.0,
        x in 0.0f64..5000.0,
        z in 0.0f64..60.0,
        farther in 0.1f64..500.0,
    ) {
        let land = land(feature, height, half_length);
        let here = at(&land, exposure, side, x, z);
        let higher = at(&land, exposure, side, x, z + farther);
        let beyond = at(&land, exposure, side, x + farther, z);
        prop_assert!(here.factor >= 1.0 && higher.factor >= 1.0 && beyond.factor >= 1.0);
        prop_assert!(higher.factor <= here.factor && beyond.factor <= here.factor);
        // Strictly, where the speed-up still reaches; the bound keeps clear of the last bits of a tiny one.
        prop_assert!(here.k_2 * here.k_3 < 1e-6 || (higher.factor < here.factor && beyond.factor < here.factor));
        prop_assert!(here.k_1 <= 1.55 * 0.5 + 1e-12 && here.k_2 <= 1.0 && here.k_3 <= 1.0);
    }
}
