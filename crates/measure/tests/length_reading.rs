//! What is read as a length, and what is echoed.

use measure::{LengthUnit, read_length};

/// Reads with bare numbers as inches; compares inches exactly, and the echo.
#[track_caller]
fn reads(text: &str, inches: f64, echo: &str) {
    reads_as(text, LengthUnit::Inches, inches, echo);
}

#[track_caller]
fn reads_as(text: &str, bare: LengthUnit, inches: f64, echo: &str) {
    let read = read_length(text, bare).map(|read| (read.length.inches(), read.echo));
    assert_eq!(read, Ok((inches, echo.to_owned())), "{text:?}");
}

const EIGHT_TWO_AND_THREE_QUARTERS: f64 = 98.75;

#[test]
fn feet_inches_and_a_fraction() {
    for text in [
        "8' 2-3/4\"",
        "8'2-3/4\"",
        "8' 2 3/4\"",
        "8'-2 3/4\"",
        "8'-2-3/4\"",
        "8' - 2 3/4\"",
        "8' -2-3/4\"",
        "8' 2 3/4",
        "8' 2-3/4",
        "8-2-3/4",
        "8-2 3/4",
        "8-2-3/4\"",
        "8ft 2 3/4",
        "8ft2-3/4in",
        "8 ft 2-3/4 in",
        "8 ft. 2 3/4 in.",
        "8 Feet 2 3/4 Inches",
        "8 foot 2 3/4 inch",
        "  8 '  2   3 / 4  \"  ",
        "08' 02-3/4\"",
        "8'\u{A0}2\u{2009}3/4\"",
    ] {
        reads(text, EIGHT_TWO_AND_THREE_QUARTERS, "8' 2-3/4\"");
        reads_as(text, LengthUnit::Feet, EIGHT_TWO_AND_THREE_QUARTERS, "8' 2-3/4\"");
    }
}

#[test]
fn typographic_marks() {
    for text in [
        "8’ 2-3/4”",
        "8‘ 2-3/4“",
        "8′ 2-3/4″",
        "8´ 2-3/4''",
        "8` 2-3/4’’",
        "8’–2¾”",
        "8′ 2 ¾″",
        "8' 2-¾\"",
        "8‑2‑3⁄4",
        "8−2−3∕4",
    ] {
        reads(text, EIGHT_TWO_AND_THREE_QUARTERS, "8' 2-3/4\"");
    }
}

#[test]
fn one_character_fractions() {
    reads("½", 0.5, "1/2 in = 1/2\"");
    reads("2¼", 2.25, "2 1/4 in = 2-1/4\"");
    reads("2 ¾\"", 2.75, "2 3/4 in = 2-3/4\"");
    reads("2-⅛", 2.125, "2 1/8 in = 2-1/8\"");
    reads("2⅜", 2.375, "2 3/8 in = 2-3/8\"");
    reads("2⅝", 2.625, "2 5/8 in = 2-5/8\"");
    reads("2⅞", 2.875, "2 7/8 in = 2-7/8\"");
}

#[test]
fn parts_of_feet_and_inches() {
    reads("8 ft 2 in", 98.0, "8' 2\"");
    reads("8' 2", 98.0, "8' 2\"");
    reads("8' 2.75\"", 98.75, "8' 2.75\" = 8' 2-3/4\"");
    reads("8' 3/4\"", 96.75, "8' 0-3/4\"");
    reads("8'-0\"", 96.0, "8' 0\"");
    reads("0' 9-1/4\"", 9.25, "0' 9-1/4\" = 9-1/4\"");
    reads("8' 11-63/64\"", 107.984375, "8' 11-63/64\"");
    reads("8' 2-12/16\"", 98.75, "8' 2-12/16\" = 8' 2-3/4\"");
}

#[test]
fn two_numbers_with_a_dash_are_feet_and_inches() {
    reads("8-2", 98.0, "8' 2\"");
    reads("8-2\"", 98.0, "8' 2\"");
    reads_as("8-2", LengthUnit::Feet, 98.0, "8' 2\"");
    reads("6-0", 72.0, "6' 0\"");
    reads("8-11", 107.0, "8' 11\"");
}

#[test]
fn inches_with_a_mark() {
    reads("98 3/4\"", 98.75, "98 3/4 in = 8' 2-3/4\"");
    reads("98.75\"", 98.75, "98.75 in = 8' 2-3/4\"");
    reads("98.75 in", 98.75, "98.75 in = 8' 2-3/4\"");
    reads("3/4\"", 0.75, "3/4 in = 3/4\"");
    reads("92-5/8''", 92.625, "92 5/8 in = 7' 8-5/8\"");
    reads_as("98\"", LengthUnit::Feet, 98.0, "98 in = 8' 2\"");
}

#[test]
fn feet_with_a_mark() {
    reads("6'", 72.0, "6 ft = 6' 0\"");
    reads("8.23'", 98.76, "8.23 ft = about 8' 2-3/4\"");
    reads("8.5 ft", 102.0, "8.5 ft = 8' 6\"");
    reads("5 1/2'", 66.0, "5 1/2 ft = 5' 6\"");
    reads("3/4 ft", 9.0, "3/4 ft = 9\"");
}

#[test]
fn a_bare_number_is_echoed_with_what_it_was_taken_for() {
    reads("98 3/4", 98.75, "98 3/4 in = 8' 2-3/4\"");
    reads("98-3/4", 98.75, "98 3/4 in = 8' 2-3/4\"");
    reads("98.75", 98.75, "98.75 in = 8' 2-3/4\"");
    reads("98.750", 98.75, "98.750 in = 8' 2-3/4\"");
    reads("3/4", 0.75, "3/4 in = 3/4\"");
    reads(".5", 0.5, "0.5 in = 1/2\"");
    reads("16", 16.0, "16 in = 1' 4\"");
    reads_as("16", LengthUnit::Feet, 192.0, "16 ft = 16' 0\"");
    reads_as("24 1/2", LengthUnit::Feet, 294.0, "24 1/2 ft = 24' 6\"");
    reads_as("3/4", LengthUnit::Feet, 9.0, "3/4 ft = 9\"");
}

#[test]
fn zero_is_read_as_zero() {
    reads("0", 0.0, "0 in = 0\"");
    reads("0\"", 0.0, "0 in = 0\"");
    reads("0'", 0.0, "0 ft = 0\"");
    reads("0 mm", 0.0, "0 mm = 0\"");
    reads("0/16", 0.0, "0/16 in = 0\"");
    reads("0.0", 0.0, "0.0 in = 0\"");
}

#[test]
fn metric_is_one_number_and_echoes_feet_and_inches() {
    // 25.4 is 127/5, so 2496 mm is 12480/127 = 98.26771… in, and 0.26771 in is 4.28 sixteenths.
    reads("2496mm", 12_480.0 / 127.0, "2496 mm = about 8' 2-1/4\"");
    reads("2496 mm", 12_480.0 / 127.0, "2496 mm = about 8' 2-1/4\"");
    reads("249.6 cm", 12_480.0 / 127.0, "249.6 cm = about 8' 2-1/4\"");
    reads("2.496 m", 12_480.0 / 127.0, "2.496 m = about 8' 2-1/4\"");
    reads_as("2496 mm", LengthUnit::Feet, 12_480.0 / 127.0, "2496 mm = about 8' 2-1/4\"");
    reads("25.4 mm", 1.0, "25.4 mm = 1\"");
    reads("2.54 cm", 1.0, "2.54 cm = 1\"");
    reads("0.3048 m", 12.0, "0.3048 m = 1' 0\"");
    reads("38.1 millimetres", 1.5, "38.1 mm = 1-1/2\"");
    reads("1 meter", 5000.0 / 127.0, "1 m = about 3' 3-3/8\"");
}

#[test]
fn the_echo_is_as_fine_as_the_fraction_and_says_about_when_it_is_not_exact() {
    reads("98 1/32", 98.03125, "98 1/32 in = 8' 2-1/32\"");
    reads("98 1/64", 98.015625, "98 1/64 in = 8' 2-1/64\"");
    reads("98.7", 98.7, "98.7 in = about 8' 2-11/16\"");
    reads("0.01", 0.01, "0.01 in = about 0\"");
    reads("11.999", 11.999, "11.999 in = about 1' 0\"");
}

#[test]
fn every_decimal_is_the_nearest_float() {
    reads("0.1", 0.1, "0.1 in = about 1/8\"");
    reads("98.76", 98.76, "98.76 in = about 8' 2-3/4\"");
    reads("1234.567891", 1_234.567_891, "1234.567891 in = about 102' 10-9/16\"");
}

#[test]
fn a_third_number_of_eight_to_fifteen_is_sixteenths() {
    reads("8-2-12", 98.75, "8' 2-12/16\" = 8' 2-3/4\"");
    reads("8-02-12", 98.75, "8' 2-12/16\" = 8' 2-3/4\"");
    reads("8'-2-12", 98.75, "8' 2-12/16\" = 8' 2-3/4\"");
    reads("8-2-8", 98.5, "8' 2-8/16\" = 8' 2-1/2\"");
    reads("8-2-15", 98.9375, "8' 2-15/16\"");
    reads("8-2-0", 98.0, "8' 2\"");
    reads("8-00-00", 96.0, "8' 0\"");
}

#[test]
fn the_finest_mark_near_the_longest_length_has_few_enough_digits() {
    reads("11999.984375", 11_999.984_375, "11999.984375 in = 999' 11-63/64\"");
}

#[test]
fn the_edges_of_what_is_refused() {
    reads("8-2-5/16", 98.3125, "8' 2-5/16\"");
    reads("8' 11.99\"", 107.99, "8' 11.99\" = about 9' 0\"");
    reads("00000000000098", 98.0, "98 in = 8' 2\"");
    reads("1000'", 12_000.0, "1000 ft = 1000' 0\"");
    reads("304.8 m", 12_000.0, "304.8 m = 1000' 0\"");
}
