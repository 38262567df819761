//! The base units, the others that are read off, and the products and quotients between quantities.
//!
//! Expected values are worked by hand from the definitions: 12 in to a foot, 144 in² to a square foot, and 25.4 mm to
//! an inch (exact by definition). All numbers are chosen so that no step rounds, so they are compared exactly.

use measure::{
    Area, AreaLoad, Density, FlexuralRigidity, Force, Length, LineLoad, Moment, SecondMoment, SectionModulus, Stress,
};

#[test]
fn a_foot_is_twelve_inches() {
    assert_eq!(Length::from_feet(1.0), Length::from_inches(12.0));
    assert_eq!(Length::from_inches(102.0).feet(), 8.5);
    assert_eq!(Area::from_square_feet(1.0), Area::from_square_inches(144.0));
    assert_eq!(Area::from_square_inches(216.0).square_feet(), 1.5);
    assert_eq!(Moment::from_foot_pounds(1.0), Moment::from_inch_pounds(12.0));
    assert_eq!(Moment::from_inch_pounds(30.0).foot_pounds(), 2.5);
    assert_eq!(LineLoad::from_plf(60.0).pounds_per_inch(), 5.0);
}

#[test]
fn an_inch_is_25_4_millimetres() {
    assert_eq!(Length::from_millimetres(25.4), Length::from_inches(1.0));
    assert_eq!(Length::from_inches(1.0).millimetres(), 25.4);
    assert_eq!(Length::from_millimetres(304.8), Length::from_feet(1.0));
}

#[test]
fn sections_are_products_of_lengths() {
    let (b, d) = (Length::from_inches(1.5), Length::from_inches(8.0));
    assert_eq!(b * d, Area::from_square_inches(12.0));
    assert_eq!(b * d * d, SectionModulus::from_cubic_inches(96.0));
    assert_eq!(b * d * d * d, SecondMoment::from_inches_fourth(768.0));
    assert_eq!(b * d / b, d);
}

#[test]
fn stresses_times_sections_are_forces_moments_and_stiffness() {
    let stress = Stress::from_psi(1000.0);
    assert_eq!(stress * Area::from_square_inches(12.0), Force::from_pounds(12_000.0));
    assert_eq!(stress * SectionModulus::from_cubic_inches(16.0), Moment::from_inch_pounds(16_000.0));
    let modulus = Stress::from_psi(1_600_000.0);
    let rigidity = modulus * SecondMoment::from_inches_fourth(64.0);
    assert_eq!(rigidity, FlexuralRigidity::from_pound_square_inches(102_400_000.0));
}

#[test]
fn loads_over_a_width_and_a_length() {
    // 40 psf over 12 ft of trib width is 480 plf; 480 plf over 10 ft is 4,800 lb.
    let line = AreaLoad::from_psf(40.0) * Length::from_feet(12.0);
    assert_eq!(line, LineLoad::from_plf(480.0));
    assert_eq!(line * Length::from_feet(10.0), Force::from_pounds(4800.0));
    assert_eq!(AreaLoad::from_psf(40.0) * Area::from_square_feet(120.0), Force::from_pounds(4800.0));
    assert_eq!(Force::from_pounds(4800.0) / Length::from_feet(10.0), line);
    // 36 pcf in a section of 12 in² is a twelfth of 36: 3 plf.
    assert_eq!(Density::from_pcf(36.0) * Area::from_square_inches(12.0), LineLoad::from_plf(3.0));
}

#[test]
fn moments_and_what_divides_them() {
    let moment = Force::from_pounds(200.0) * Length::from_feet(5.0);
    assert_eq!(moment, Moment::from_foot_pounds(1000.0));
    assert_eq!(moment / Force::from_pounds(200.0), Length::from_feet(5.0));
    assert_eq!(moment / SectionModulus::from_cubic_inches(24.0), Stress::from_psi(500.0));
    assert_eq!(moment / Stress::from_psi(500.0), SectionModulus::from_cubic_inches(24.0));
    assert_eq!(Force::from_pounds(600.0) / Area::from_square_inches(12.0), Stress::from_psi(50.0));
    assert_eq!(Force::from_pounds(600.0) / Stress::from_psi(50.0), Area::from_square_inches(12.0));
}

#[test]
fn sums_differences_and_scale() {
    let (long, short) = (Length::from_inches(10.0), Length::from_inches(4.0));
    assert_eq!(long + short, Length::from_inches(14.0));
    assert_eq!(short - long, Length::from_inches(-6.0));
    assert_eq!((short - long).abs(), Length::from_inches(6.0));
    assert_eq!(-long, Length::from_inches(-10.0));
    assert_eq!(2.0 * short, short * 2.0);
    assert_eq!(long / 4.0, Length::from_inches(2.5));
    assert_eq!(long / short, 2.5);
    assert_eq!([long, short, short].into_iter().sum::<Length>(), Length::from_inches(18.0));
    let mut running = long;
    running += short;
    assert_eq!(running, Length::from_inches(14.0));
}

#[test]
fn the_larger_and_the_smaller() {
    let (more, less) = (Force::from_pounds(10.0), Force::from_pounds(-20.0));
    assert_eq!((more.max(less), less.max(more)), (more, more));
    assert_eq!((more.min(less), less.min(more)), (less, less));
}

#[test]
fn nothing_is_the_default() {
    assert_eq!(Length::default(), Length::ZERO);
    assert_eq!(Length::ZERO.inches(), 0.0);
}
