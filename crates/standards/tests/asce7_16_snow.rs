//! Snow on sloped roofs against published examples.

use measure::{AreaLoad, Length, Slope};
use proptest::prelude::*;
use standards::asce7_16::chapter_7_sloped::{
    RoofStep, drift_height, rain_on_snow, sliding_snow, slope_factor, snow_density, step_drift, unbalanced,
    unbalanced_is_needed, unbalanced_on_rafters,
};

fn psf(load: f64) -> AreaLoad {
    AreaLoad::from_psf(load)
}

fn feet(length: f64) -> Length {
    Length::from_feet(length)
}

fn on_twelve(rise: f64) -> Slope {
    Slope::from_rise_in_twelve(rise)
}

/// Source: ASCE 7-16 Fig. 7.4-1 through two copies of its lines; 8 in 12, warm, also by a separate test: 0.91.
#[test]
fn slope_factors() {
    for (rise, thermal, slippery, printed) in [
        (6.0, 1.0, false, 1.000),
        (8.0, 1.0, false, 0.908),
        (12.0, 1.0, false, 0.625),
        (12.0, 1.1, false, 0.769),
        (12.0, 1.2, false, 1.000),
        (6.0, 1.0, true, 0.668),
    ] {
        let found = slope_factor(on_twelve(rise), thermal, slippery);
        assert!((found - printed).abs() <= 0.0006, "{rise} in 12, {thermal}: {found}");
    }
}

/// Source: ASCE 7-16 C7.6 Example 1: p_g 30, W 30 ft, 6 in 12: h_d 1.86 ft, 17.9 pcf, 23.5 psf over 7.01 ft.
#[test]
fn an_unbalanced_gable_of_the_commentary() {
    assert!((drift_height(feet(30.0), psf(30.0), 1.0).feet() - 1.86).abs() <= 0.005);
    assert!((snow_density(psf(30.0)).pcf() - 17.9).abs() <= 1e-9);
    let found = unbalanced(psf(21.0), on_twelve(6.0), feet(30.0), psf(30.0), 1.0);
    let surcharge = found.surcharge.unwrap();
    assert!((surcharge.peak.psf() - 23.5).abs() <= 0.05, "{}", surcharge.peak.psf());
    assert!((surcharge.width.feet() - 7.01).abs() <= 0.006, "{}", surcharge.width.feet());
    assert!((found.windward.psf() - 6.3).abs() < 1e-9);
    assert!(unbalanced_is_needed(on_twelve(0.5)) && unbalanced_is_needed(on_twelve(7.0)));
    assert!(!unbalanced_is_needed(on_twelve(0.4)) && !unbalanced_is_needed(on_twelve(7.1)));
    let rafters = unbalanced_on_rafters(psf(40.0), 1.0);
    assert_eq!((rafters.windward, rafters.leeward, rafters.surcharge), (AreaLoad::ZERO, psf(40.0), None));
}

/// Source: Snow Loads guide to ASCE 7-10, Example 6-2: p_g 30, p_s 25, 1/2 on 12, W 130 ft: windward 7.5, h_d 3.97 (cut
/// from 3.978), 14.5 psf more. The reach is not printed; the clause gives 52.0 ft.
#[test]
fn an_unbalanced_wide_gable_of_the_guide() {
    assert!((drift_height(feet(130.0), psf(30.0), 1.0).feet() - 3.97).abs() <= 0.01);
    let found = unbalanced(psf(25.0), on_twelve(0.5), feet(130.0), psf(30.0), 1.0);
    let surcharge = found.surcharge.unwrap();
    assert!((found.windward.psf() - 7.5).abs() < 1e-9 && (surcharge.peak.psf() - 14.5).abs() <= 0.05);
    assert!((surcharge.width.feet() - 52.0).abs() <= 0.05, "{}", surcharge.width.feet());
}

/// Source: an engineering firm's note on drifts in 7-16: p_g 25, p_f 17.5, upper roof 40 ft, step 4 ft, lower roof 30 ft:
/// 17.25 pcf, h_d 2.08 ft, 35.8 psf, 53.3 psf with the balanced load.
#[test]
fn a_roof_step_of_a_note() {
    let step = RoofStep { height: feet(4.0), upper: feet(40.0), lower: feet(30.0), gap: Length::ZERO };
    let found = step_drift(&step, psf(17.5), psf(25.0), 1.0).unwrap();
    assert!((snow_density(psf(25.0)).pcf() - 17.25).abs() < 1e-9);
    assert!((found.leeward.feet() - 2.08).abs() <= 0.005 && (found.surcharge.peak.psf() - 35.8).abs() <= 0.05);
    assert!((found.surcharge.peak.psf() + 17.5 - 53.3).abs() <= 0.05);
    assert!((found.surcharge.width.feet() - 8.31).abs() <= 0.005);
}

/// Source: ASCE 7-16 C7.7 Example 3: p_g 40, upper roof 100 ft, lower 170 ft, step 10 ft with h_b 1.4: leeward 3.8,
/// windward 0.75 x 4.8 = 3.6, width 15.2 ft, 72 psf with the density rounded to 19: 73.1 unrounded.
#[test]
fn a_roof_step_of_the_commentary() {
    let step = RoofStep { height: feet(10.0), upper: feet(100.0), lower: feet(170.0), gap: Length::ZERO };
    // h_b 1.4 ft of 19.2 pcf.
    let found = step_drift(&step, psf(1.4 * 19.2), psf(40.0), 1.0).unwrap();
    assert!((found.clear_height.feet() - 8.6).abs() < 1e-9);
    assert!((found.leeward.feet() - 3.807).abs() <= 0.0006 && (found.windward.feet() - 3.626).abs() <= 0.0006);
    assert!((found.surcharge.width.feet() - 15.23).abs() <= 0.006);
    assert!((found.surcharge.peak.psf() - 73.1).abs() <= 0.06, "{}", found.surcharge.peak.psf());
}

/// Source: a load-calculation sheet (7-16): p_g 20, p_f 15.12, step 31 ft, upper roof 300 ft: h_b 0.91, h_d 5.237,
/// width 20.947 ft. The sheet takes the whole step as clear height; here it is 30.09 ft, which changes nothing.
#[test]
fn a_long_upper_roof() {
    let step = RoofStep { height: feet(31.0), upper: feet(300.0), lower: feet(60.0), gap: Length::ZERO };
    let found = step_drift(&step, psf(15.12), psf(20.0), 1.0).unwrap();
    assert!((found.balanced_depth.feet() - 0.91).abs() <= 0.005);
    assert!((found.leeward.feet() - 5.237).abs() <= 0.0005 && (found.surcharge.width.feet() - 20.947).abs() <= 0.001);
    // A lower roof shorter than 8.73 ft holds the drift down.
    let short = step_drift(&RoofStep { lower: feet(6.0), ..step }, psf(15.12), psf(20.0), 1.0).unwrap();
    assert!((short.leeward.feet() - 3.6).abs() < 1e-9);
}

/// Between two rows of the figure the colder one counts: it keeps more snow.
#[test]
fn between_thermal_factors_the_colder_row_counts() {
    for (between, row) in [(1.05, 1.1), (1.15, 1.2), (1.3, 1.2)] {
        for slippery in [false, true] {
            let at = |thermal| slope_factor(on_twelve(12.0), thermal, slippery);
            assert!((at(between) - at(row)).abs() < 1e-12, "{between}");
        }
    }
}

#[test]
fn without_snow_nothing_drifts() {
    let step = RoofStep { height: feet(10.0), upper: feet(40.0), lower: feet(30.0), gap: Length::ZERO };
    assert_eq!(drift_height(feet(100.0), AreaLoad::ZERO, 1.0), Length::ZERO);
    let drift = step_drift(&step, AreaLoad::ZERO, AreaLoad::ZERO, 1.0);
    assert!(drift.is_none_or(|drift| drift.surcharge.peak == AreaLoad::ZERO));
}

/// A gap never makes the windward drift lighter than on roofs that touch.
#[test]
fn a_gap_does_not_take_the_windward_drift_away() {
    let step = RoofStep { height: feet(4.0), upper: feet(20.0), lower: feet(120.0), gap: Length::ZERO };
    let peak = |step: &RoofStep| step_drift(step, psf(21.0), psf(30.0), 1.0).unwrap().surcharge.peak;
    let apart = RoofStep { gap: feet(0.5), ..step };
    assert!((peak(&apart) / peak(&step) - 1.0).abs() < 1e-9);
}

/// Vectors made for this purpose: p_f 21, upper roof 14 ft eave to ridge: 7.84 psf over 15 ft.
#[test]
fn sliding_and_rain() {
    let step = RoofStep { height: feet(8.0), upper: feet(28.0), lower: feet(20.0), gap: Length::ZERO };
    let slides = sliding_snow(psf(21.0), on_twelve(6.0), false, feet(14.0), &step).unwrap();
    assert!((slides.peak.psf() - 7.84).abs() <= 0.005 && slides.width == feet(15.0));
    assert!(sliding_snow(psf(21.0), on_twelve(2.0), false, feet(14.0), &step).is_none());
    assert!(sliding_snow(psf(21.0), on_twelve(2.0), true, feet(14.0), &step).is_some());
    let apart = RoofStep { gap: feet(10.0), ..step };
    assert!(sliding_snow(psf(21.0), on_twelve(6.0), false, feet(14.0), &apart).is_none());
    assert_eq!(rain_on_snow(psf(20.0), on_twelve(0.05), feet(14.0)), Some(psf(5.0)));
    assert_eq!(rain_on_snow(psf(20.0), on_twelve(4.0), feet(14.0)), None);
    assert_eq!(rain_on_snow(psf(25.0), on_twelve(0.0), feet(14.0)), None);
}

proptest! {
    #[test]
    fn steeper_is_never_heavier(rise in 0.0..24.0_f64, thermal in 0.85..1.3_f64, slippery in any::<bool>()) {
        let at = |rise| slope_factor(on_twelve(rise), thermal, slippery);
        prop_assert!(at(rise + 0.5) <= at(rise));
        prop_assert!(slope_factor(on_twelve(rise), thermal, true) <= at(rise));
        prop_assert!(slope_factor(on_twelve(rise), thermal + 0.1, slippery) >= at(rise));
    }

    #[test]
    fn a_drift_grows_with_fetch_and_with_snow(fetch in 1.0..300.0_f64, ground in 1.0..70.0_f64, high in 2.0..20.0_f64) {
        let step = |upper| RoofStep { height: feet(high), upper: feet(upper), lower: feet(100.0), gap: Length::ZERO };
        let drift = |upper, ground: f64| {
            let drift = step_drift(&step(upper), psf(ground * 0.7), psf(ground), 1.0);
            drift.map_or(0.0, |drift| drift.surcharge.peak.psf() * drift.surcharge.width.feet())
        };
        prop_assert!(drift(fetch + 10.0, ground) >= drift(fetch, ground) - 1e-9);
        prop_assert!(drift_height(feet(fetch), psf(ground + 1.0), 1.0) > drift_height(feet(fetch), psf(ground), 1.0));
    }
}
