//! What is read as a number with its unit, and what is refused with which sentence.

use measure::{NumberError, read_number};

#[track_caller]
fn refuses(text: &str, units: &[&str], sentence: &str) {
    let problem = read_number(text, units).map_err(|problem| problem.to_string());
    assert_eq!(problem, Err(sentence.to_owned()), "{text:?}");
}

#[track_caller]
fn refuses_each(texts: &[&str], same_kind: fn(&NumberError) -> bool) {
    for text in texts {
        let problem = read_number(text, &["psf"]);
        assert!(problem.as_ref().is_err_and(same_kind), "{text:?}: {problem:?}");
    }
}

#[test]
fn a_number_alone_or_with_its_unit() {
    for (text, value) in [
        ("40", 40.0),
        ("40 psf", 40.0),
        ("40psf", 40.0),
        ("  40  PSF ", 40.0),
        ("0.5", 0.5),
        (".5 psf", 0.5),
        ("007", 7.0),
        ("0", 0.0),
        ("-5", -5.0),
        ("−5 psf", -5.0),
        ("123456789012345", 123_456_789_012_345.0),
    ] {
        assert_eq!(read_number(text, &["psf"]), Ok(value), "{text:?}");
    }
}

#[test]
fn zero_has_no_minus() {
    assert_eq!(read_number("-0", &[]).map(f64::to_bits), Ok(0.0_f64.to_bits()));
}

#[test]
fn units_with_marks_and_spaces() {
    let pitch = &["in 12", "/12", ":12"];
    for text in ["6", "6/12", "6:12", "6 in 12", "6 /12"] {
        assert_eq!(read_number(text, pitch), Ok(6.0), "{text:?}");
    }
    assert_eq!(read_number("19%", &["%"]), Ok(19.0));
    assert_eq!(read_number("250 lb/ft", &["plf", "lb/ft"]), Ok(250.0));
    assert_eq!(read_number("45°", &["°"]), Ok(45.0));
}

#[test]
fn commas_part_thousands() {
    for (text, value) in [
        ("1,200", 1200.0),
        ("1,200 psi", 1200.0),
        ("1,600,000 psi", 1_600_000.0),
        ("12,345.5", 12_345.5),
        ("-1,200", -1200.0),
    ] {
        assert_eq!(read_number(text, &["psi"]), Ok(value), "{text:?}");
    }
    refuses(
        "1,20",
        &[],
        "1,20 has a comma that does not part thousands. Write 1200 or 1,200, and decimals with a point: 0.5.",
    );
    refuses_each(&["12,00", "1,2000", "1200,300", ",200", "1,200,", "0,500", "1,,200", "1.200,5", "1,.5"], |problem| {
        matches!(problem, NumberError::Comma { .. })
    });
}

#[test]
fn another_unit_is_named_with_those_accepted() {
    refuses("40 kPa", &["psf"], "40 kPa is in kPa. Write the number alone or with psf.");
    refuses("40 psi", &["psf", "lb/ft2"], "40 psi is in psi. Write the number alone or with psf or lb/ft2.");
    refuses("40 x", &["a", "b", "c"], "40 x is in x. Write the number alone or with a, b or c.");
    refuses("40 psf", &[], "40 psf is in psf. Write the number alone.");
    refuses_each(&["40 psff", "40 ps f", "5'", "12%", "40 PSI", "7e"], |problem| {
        matches!(problem, NumberError::WrongUnit { .. })
    });
}

#[test]
fn what_is_not_one_number() {
    refuses("", &["psf"], "Nothing was typed. Write a number alone or with psf.");
    refuses(" \n", &[], "Nothing was typed. Write a number alone.");
    refuses(
        "about 40",
        &["psf"],
        "about 40 is not one number in digits. Write a number such as 40 or 0.5, alone or with psf.",
    );
    refuses_each(
        &[
            "NaN", "inf", "-inf", "infinity", "psf", "1/2", "1 2", "40 psf 2", "5.", "1.2.3", ".", "-", "- 5", "--5",
            "+5", "½", "٤",
        ],
        |problem| matches!(problem, NumberError::NotANumber { .. } | NumberError::WrongUnit { .. }),
    );
}

#[test]
fn powers_of_ten_and_endless_digits() {
    refuses("1e5", &["psf"], "1e5 is written with a power of ten. Write all its digits, alone or with psf.");
    refuses_each(&["1E5", "1.5e-3", "1e+5", "1e5 psf", "1 e5"], |problem| {
        matches!(problem, NumberError::PowerOfTen { .. })
    });
    refuses("1234567890123456", &[], "1234567890123456 has more than 15 digits. Write it with fewer.");
    refuses_each(&[&"9".repeat(400), "0.1234567890123456"], |problem| {
        matches!(problem, NumberError::TooManyDigits { .. })
    });
}
