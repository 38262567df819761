//! How a length is written, rounded, taken apart and said.

use Denominator::{Eighth, Sixteenth, SixtyFourth, ThirtySecond};
use measure::{Denominator, Length, LengthParts, Rounding};

#[track_caller]
fn writes(inches: f64, finest: Denominator, feet_inches: &str, inches_only: &str) {
    let length = Length::from_inches(inches);
    assert_eq!(length.to_feet_inches(finest), feet_inches, "{inches} in feet and inches");
    assert_eq!(length.to_inches_fraction(finest), inches_only, "{inches} in inches");
}

#[track_caller]
fn says(inches: f64, spoken: &str) {
    assert_eq!(Length::from_inches(inches).spoken(Sixteenth), spoken, "{inches}");
}

#[test]
fn feet_inches_and_a_fraction() {
    writes(98.75, Sixteenth, "8' 2-3/4\"", "98-3/4\"");
    writes(98.0, Sixteenth, "8' 2\"", "98\"");
    writes(72.0, Sixteenth, "6' 0\"", "72\"");
    writes(12.0, Sixteenth, "1' 0\"", "12\"");
    writes(96.75, Sixteenth, "8' 0-3/4\"", "96-3/4\"");
    writes(12_000.0, Sixteenth, "1000' 0\"", "12000\"");
}

#[test]
fn under_a_foot_stand_inches_alone() {
    writes(9.25, Sixteenth, "9-1/4\"", "9-1/4\"");
    writes(11.0, Sixteenth, "11\"", "11\"");
    writes(0.75, Sixteenth, "3/4\"", "3/4\"");
    writes(0.0, Sixteenth, "0\"", "0\"");
}

#[test]
fn fractions_are_reduced_and_go_to_the_finest_named() {
    writes(0.5, SixtyFourth, "1/2\"", "1/2\"");
    writes(98.0 + 5.0 / 64.0, SixtyFourth, "8' 2-5/64\"", "98-5/64\"");
    writes(98.0 + 5.0 / 64.0, ThirtySecond, "8' 2-3/32\"", "98-3/32\"");
    writes(98.0 + 5.0 / 64.0, Sixteenth, "8' 2-1/16\"", "98-1/16\"");
    writes(98.0 + 5.0 / 64.0, Eighth, "8' 2-1/8\"", "98-1/8\"");
    writes(98.0 + 3.0 / 64.0, Eighth, "8' 2\"", "98\"");
}

#[test]
fn halfway_goes_away_from_zero() {
    writes(1.0 / 32.0, Sixteenth, "1/16\"", "1/16\"");
    writes(3.0 / 32.0, Sixteenth, "1/8\"", "1/8\"");
    writes(-1.0 / 32.0, Sixteenth, "-1/16\"", "-1/16\"");
    writes(-98.78125, Sixteenth, "-8' 2-13/16\"", "-98-13/16\"");
}

#[test]
fn rounding_carries_into_inches_and_feet() {
    writes(15.0 / 16.0 + 1.0 / 16.0, Sixteenth, "1\"", "1\"");
    writes(0.97, Sixteenth, "1\"", "1\"");
    writes(11.0 + 31.0 / 32.0, Sixteenth, "1' 0\"", "12\"");
    writes(11.0 + 31.0 / 32.0, ThirtySecond, "11-31/32\"", "11-31/32\"");
    writes(95.999, Sixteenth, "8' 0\"", "96\"");
}

#[test]
fn below_zero_a_minus_stands_in_front_but_never_before_zero() {
    writes(-98.75, Sixteenth, "-8' 2-3/4\"", "-98-3/4\"");
    writes(-0.75, Sixteenth, "-3/4\"", "-3/4\"");
    writes(-0.01, Sixteenth, "0\"", "0\"");
    writes(-0.0, Sixteenth, "0\"", "0\"");
}

#[test]
fn what_arithmetic_broke_is_never_written_as_a_number() {
    for broken in [Length::ZERO / 0.0, Length::from_inches(1.0) / 0.0] {
        assert_eq!(broken.to_feet_inches(Sixteenth), "not a length");
        assert_eq!(broken.to_inches_fraction(Sixteenth), "not a length");
        assert_eq!(broken.spoken(Sixteenth), "not a length");
    }
}

#[test]
fn parts_for_typesetting() {
    let parts = |inches, finest| Length::from_inches(inches).parts(finest);
    let of =
        |negative, feet, inches, numerator, denominator| LengthParts { negative, feet, inches, numerator, denominator };
    assert_eq!(parts(98.75, Sixteenth), of(false, 8, 2, 3, 4));
    assert_eq!(parts(-98.75, SixtyFourth), of(true, 8, 2, 3, 4));
    assert_eq!(parts(72.0, Sixteenth), of(false, 6, 0, 0, 1));
    assert_eq!(parts(-0.001, Sixteenth), of(false, 0, 0, 0, 1));
    assert_eq!(parts(98.75, Sixteenth).whole_inches(), 98);
}

#[test]
fn rounding_in_the_direction_named() {
    let rounded = |inches, rounding| Length::from_inches(inches).rounded(Sixteenth, rounding).inches();
    assert_eq!(rounded(98.70, Rounding::Nearest), 98.6875);
    assert_eq!(rounded(98.70, Rounding::Up), 98.75);
    assert_eq!(rounded(98.70, Rounding::Down), 98.6875);
    assert_eq!(rounded(98.7499, Rounding::Down), 98.6875);
    assert_eq!(rounded(98.03125, Rounding::Nearest), 98.0625);
    for rounding in [Rounding::Nearest, Rounding::Up, Rounding::Down] {
        assert_eq!(rounded(98.75, rounding), 98.75, "a mark stays where it is");
    }
}

#[test]
fn rounding_below_zero_keeps_up_and_down() {
    let rounded = |rounding| Length::from_inches(-1.0 / 32.0).rounded(Sixteenth, rounding).inches();
    assert_eq!(rounded(Rounding::Nearest), -0.0625);
    assert_eq!(rounded(Rounding::Down), -0.0625);
    assert_eq!(rounded(Rounding::Up).to_bits(), 0.0_f64.to_bits(), "zero has no minus");
}

#[test]
fn said_in_feet_and_inches() {
    says(98.75, "eight feet two and three quarters inches");
    says(41.875, "three feet five and seven eighths inches");
    says(72.0, "six feet");
    says(98.0, "eight feet two inches");
    says(97.0, "eight feet one inch");
    says(12.0, "one foot");
    says(14.5, "one foot two and a half inches");
    says(96.75, "eight feet and three quarters of an inch");
    says(96.5, "eight feet and half an inch");
}

#[test]
fn said_in_inches() {
    says(9.25, "nine and a quarter inches");
    says(1.5, "one and a half inches");
    says(1.0, "one inch");
    says(0.5, "half an inch");
    says(0.25, "a quarter of an inch");
    says(0.125, "an eighth of an inch");
    says(0.6875, "eleven sixteenths of an inch");
    says(0.0, "zero inches");
    says(-9.25, "minus nine and a quarter inches");
    says(-0.01, "zero inches");
}

#[test]
fn said_to_the_finest_fraction_named() {
    let said = |inches, finest| Length::from_inches(inches).spoken(finest);
    assert_eq!(said(2.0 + 1.0 / 64.0, SixtyFourth), "two and a sixty-fourth inches");
    assert_eq!(said(2.0 + 63.0 / 64.0, SixtyFourth), "two and sixty-three sixty-fourths inches");
    assert_eq!(said(2.0 + 21.0 / 32.0, ThirtySecond), "two and twenty-one thirty-seconds inches");
    assert_eq!(said(2.0 + 1.0 / 64.0, Eighth), "two inches");
}

#[test]
fn numbers_are_said_in_words_to_999() {
    says(12.0 * 13.0, "thirteen feet");
    says(12.0 * 20.0, "twenty feet");
    says(12.0 * 21.0, "twenty-one feet");
    says(12.0 * 100.0, "one hundred feet");
    says(12.0 * 140.0, "one hundred forty feet");
    says(12.0 * 999.0, "nine hundred ninety-nine feet");
    says(12.0 * 1000.0, "1000 feet");
}
