//! The one mathematics library, against values known in closed form.

use core::f64::consts::{FRAC_PI_4, FRAC_PI_6, LN_2, PI, SQRT_2};

use measure::math;

/// A few units in the last place of numbers near one: what a good library may be off by.
const LAST_PLACES: f64 = 4.0 * f64::EPSILON;

#[track_caller]
fn agrees(computed: f64, known: f64) {
    assert!((computed - known).abs() <= LAST_PLACES * known.abs().max(1.0), "computed {computed}, known {known}");
}

#[test]
fn powers_and_logarithms() {
    agrees(math::pow(2.0, 0.5), SQRT_2);
    agrees(math::pow(2.0, 10.0), 1024.0);
    agrees(math::ln(2.0), LN_2);
    agrees(math::log10(1000.0), 3.0);
}

#[test]
fn angles_are_in_radians() {
    agrees(math::sin(FRAC_PI_6), 0.5);
    agrees(math::cos(PI / 3.0), 0.5);
    agrees(math::tan(FRAC_PI_4), 1.0);
}

#[test]
fn the_angle_of_a_rise_and_a_run_is_in_its_quadrant() {
    agrees(math::atan2(1.0, 1.0), FRAC_PI_4);
    agrees(math::atan2(1.0, -1.0), 3.0 * FRAC_PI_4);
    agrees(math::atan2(-1.0, 1.0), -FRAC_PI_4);
}
