//! What holds for every length and every text.

use std::collections::BTreeSet;

use measure::{Denominator, Length, LengthError, LengthUnit, MAX_READ_LENGTH, Rounding, read_length, read_number};
use proptest::prelude::*;

/// Marks of the finest fraction in the longest length that is read: 1,000 ft of sixty-fourths.
const MOST_MARKS: u32 = 12_000 * 64;

fn any_denominator() -> impl Strategy<Value = Denominator> {
    prop::sample::select(Denominator::ALL.as_slice())
}

/// A length on a mark of the fraction, from zero to the longest that is read.
fn length_on_a_mark() -> impl Strategy<Value = (Denominator, Length)> {
    (any_denominator(), 0..=MOST_MARKS).prop_map(|(finest, marks)| {
        let per_inch = finest.per_inch();
        (finest, Length::from_inches(f64::from(marks * per_inch / 64) / f64::from(per_inch)))
    })
}

/// Text of the characters that lengths have, so that most of the grammar is reached.
fn nearly_a_length() -> impl Strategy<Value = String> {
    let part = prop::sample::select(
        [
            "8",
            "2",
            "12",
            "0",
            "3/4",
            "5/16",
            "1/3",
            "98.75",
            ".5",
            "'",
            "\"",
            "''",
            " ",
            "-",
            " - ",
            "/",
            ".",
            ",",
            "¾",
            "⅓",
            "′",
            "″",
            "ft",
            "in",
            "in.",
            "mm",
            "cm",
            "m",
            "e5",
            "9999999999",
            "99999999999999999999",
            "\u{A0}",
            "–",
        ]
        .as_slice(),
    );
    prop::collection::vec(part, 0..9).prop_map(|parts| parts.concat())
}

fn read(text: &str) -> Result<f64, LengthError> {
    read_length(text, LengthUnit::Inches).map(|read| read.length.inches())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn what_is_written_is_read_back_exactly((finest, length) in length_on_a_mark()) {
        prop_assert_eq!(read(&length.to_feet_inches(finest)), Ok(length.inches()));
        prop_assert_eq!(read(&length.to_inches_fraction(finest)), Ok(length.inches()));
    }

    #[test]
    fn below_zero_is_written_as_the_same_length_after_a_minus((finest, length) in length_on_a_mark()) {
        prop_assume!(length > Length::ZERO);
        for (below, above) in [
            ((-length).to_feet_inches(finest), length.to_feet_inches(finest)),
            ((-length).to_inches_fraction(finest), length.to_inches_fraction(finest)),
        ] {
            prop_assert_eq!(&below, &format!("-{}", above));
            prop_assert!(matches!(read(&below), Err(LengthError::Negative { .. })), "{}", below);
        }
    }

    #[test]
    fn the_right_side_of_an_exact_echo_reads_as_the_same_length((_, length) in length_on_a_mark()) {
        let typed = format!("{}", length.inches());
        let read_back = read_length(&typed, LengthUnit::Inches);
        prop_assert!(read_back.is_ok(), "{}: {:?}", typed, read_back);
        if let Ok(reading) = read_back {
            prop_assert_eq!(reading.length, length);
            let right = reading.echo.rsplit(" = ").next().unwrap_or_default();
            prop_assert_eq!(read(right), Ok(length.inches()), "{}", reading.echo);
        }
    }

    #[test]
    fn parts_are_reduced_and_in_range(inches in -20_000.0..20_000.0, finest in any_denominator()) {
        let parts = Length::from_inches(inches).parts(finest);
        prop_assert!(parts.inches < 12);
        prop_assert!(parts.numerator < parts.denominator);
        prop_assert!(parts.denominator.is_power_of_two() && parts.denominator <= finest.per_inch());
        prop_assert!(parts.numerator % 2 == 1 || (parts.numerator, parts.denominator) == (0, 1));
        prop_assert!(!parts.negative || inches < 0.0);
    }

    #[test]
    fn parts_add_up_to_the_nearest_mark(inches in -20_000.0..20_000.0, finest in any_denominator()) {
        let length = Length::from_inches(inches);
        let parts = length.parts(finest);
        let fraction = f64::from(parts.numerator) / f64::from(parts.denominator);
        let sum = parts.whole_inches() as f64 + fraction;
        let signed = if parts.negative { -sum } else { sum };
        prop_assert_eq!(signed, length.rounded(finest, Rounding::Nearest).inches());
        // Inches are at most 20,000 and marks are binary, so the subtraction is exact to the last bit of `inches`.
        prop_assert!((signed - inches).abs() <= 0.5 / f64::from(finest.per_inch()));
    }

    #[test]
    fn rounding_keeps_its_side(inches in -20_000.0..20_000.0, finest in any_denominator()) {
        let length = Length::from_inches(inches);
        let mark = 1.0 / f64::from(finest.per_inch());
        let up = length.rounded(finest, Rounding::Up);
        let down = length.rounded(finest, Rounding::Down);
        prop_assert!(down <= length && length <= up);
        prop_assert!((up - length).inches() < mark && (length - down).inches() < mark);
        for rounded in [up, down] {
            prop_assert_eq!(rounded.rounded(finest, Rounding::Nearest), rounded, "it is on a mark");
        }
    }

    #[test]
    fn spoken_is_never_empty_and_has_no_marks(inches in -20_000.0..20_000.0, finest in any_denominator()) {
        let spoken = Length::from_inches(inches).spoken(finest);
        prop_assert!(!spoken.is_empty());
        prop_assert!(!spoken.contains(['\'', '"', '/']), "{}", spoken);
        prop_assert!(spoken.contains("inch") || spoken.contains("foot") || spoken.contains("feet"), "{}", spoken);
    }

    #[test]
    fn writing_any_finite_length_does_not_panic(inches in prop::num::f64::ANY, finest in any_denominator()) {
        prop_assume!(inches.is_finite());
        let length = Length::from_inches(inches);
        prop_assert!(length.to_feet_inches(finest).ends_with('"'));
        prop_assert!(length.to_inches_fraction(finest).ends_with('"'));
        prop_assert!(!length.spoken(finest).is_empty());
        prop_assert!(length.rounded(finest, Rounding::Down) <= length);
    }

    #[test]
    fn any_text_is_read_or_refused_with_a_sentence(text in any::<String>()) {
        is_read_or_refused_with_a_sentence(&text)?;
    }

    #[test]
    fn nearly_a_length_is_read_or_refused_with_a_sentence(text in nearly_a_length()) {
        is_read_or_refused_with_a_sentence(&text)?;
    }

    #[test]
    fn spaces_around_a_text_change_nothing(text in nearly_a_length()) {
        prop_assume!(!text.starts_with(char::is_whitespace));
        prop_assert_eq!(read(&format!("{text}  ")).ok(), read(&text).ok());
        prop_assert_eq!(read(&format!(" {text}")).ok(), read(&text).ok());
    }

    #[test]
    fn any_text_is_a_finite_number_or_refused_with_a_sentence(text in "[-−]?[0-9.,]{0,20}( ?[a-z%/]{0,4})?|.*") {
        match read_number(&text, &["psf", "%"]) {
            Ok(value) => prop_assert!(value.is_finite()),
            Err(problem) => prop_assert!(problem.to_string().ends_with('.')),
        }
    }

    #[test]
    fn a_number_is_read_as_it_is_written(value in -1.0e9..1.0e9_f64) {
        let typed = format!("{value:.4}");
        prop_assert_eq!(read_number(&typed, &[]).ok(), typed.parse().ok());
    }
}

/// Every sixty-fourth to fifteen feet, so that each number of inches and each fraction meets none, one and many feet.
#[test]
fn no_two_lengths_sound_or_look_the_same() {
    let marks = 0..15 * 12 * 64_u32;
    let lengths = || marks.clone().map(|mark| Length::from_inches(f64::from(mark) / 64.0));
    let finest = Denominator::SixtyFourth;
    let spoken: BTreeSet<_> = lengths().map(|length| length.spoken(finest)).collect();
    let feet_inches: BTreeSet<_> = lengths().map(|length| length.to_feet_inches(finest)).collect();
    let inches: BTreeSet<_> = lengths().map(|length| length.to_inches_fraction(finest)).collect();
    for different in [spoken.len(), feet_inches.len(), inches.len()] {
        assert_eq!(different, marks.len());
    }
}

fn is_read_or_refused_with_a_sentence(text: &str) -> Result<(), TestCaseError> {
    for bare in [LengthUnit::Inches, LengthUnit::Feet] {
        match read_length(text, bare) {
            Ok(reading) => {
                prop_assert!((Length::ZERO..=MAX_READ_LENGTH).contains(&reading.length), "{:?}", reading);
                prop_assert!(reading.echo.ends_with('"'), "{:?}", reading);
            }
            Err(problem) => {
                let sentence = problem.to_string();
                prop_assert!(sentence.ends_with('.') && sentence.contains(' '), "{}", sentence);
                prop_assert!(sentence.len() < 400, "{}", sentence);
            }
        }
    }
    Ok(())
}
