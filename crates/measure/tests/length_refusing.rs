//! What is refused as a length, and with which sentence.

use measure::{LengthError, LengthUnit, read_length};

/// Refused whatever a bare number means, with the same sentence.
#[track_caller]
fn refuses(text: &str, sentence: &str) {
    for bare in [LengthUnit::Inches, LengthUnit::Feet] {
        let problem = read_length(text, bare).map_err(|problem| problem.to_string());
        assert_eq!(problem, Err(sentence.to_owned()), "{text:?}");
    }
}

#[track_caller]
fn refuses_each(texts: &[&str], same_kind: fn(&LengthError) -> bool) {
    for text in texts {
        let problem = read_length(text, LengthUnit::Inches);
        assert!(problem.as_ref().is_err_and(same_kind), "{text:?}: {problem:?}");
    }
}

#[test]
fn a_third_number_that_may_be_eighths_is_asked_about() {
    refuses("8-2-5", "8-2-5 ends in 5, which may be eighths or sixteenths. Write 8-2-5/8 or 8-2-5/16.");
    refuses("8-02-07", "8-02-07 ends in 7, which may be eighths or sixteenths. Write 8-2-7/8 or 8-2-7/16.");
    refuses("8-2-1", "8-2-1 ends in 1, which may be eighths or sixteenths. Write 8-2-1/8 or 8-2-1/16.");
    refuses(
        "8-2-16",
        "8-2-16 ends in 16. Without a slash, 8 to 15 are taken there as sixteenths: write the fraction out, such as \
         8-2-3/4.",
    );
}

#[test]
fn inches_after_feet_stay_under_twelve() {
    refuses(
        "8' 14\"",
        "8' 14\" has 14 inches after the feet. From 0 to less than 12 are taken there: carry the rest into the feet, \
         or write inches alone, such as 98 3/4 in.",
    );
    refuses_each(&["8' 12\"", "8-12", "8-14-3/4", "8' 12 1/2\"", "8' 12.0\"", "8-12-12", "2-12\""], |problem| {
        matches!(problem, LengthError::TooManyInches { .. })
    });
}

#[test]
fn fractions_that_no_tape_shows() {
    refuses(
        "6/12",
        "6/12 has the fraction 6/12. Fractions over 2, 4, 8, 16, 32 and 64 are taken, and a roof pitch is no length: \
         write a fraction like 1/2.",
    );
    refuses_each(&["1/3", "⅓", "8' 2-2/3\"", "3/1", "1/128", "12/12", "98 4/10", "8⅚"], |problem| {
        matches!(problem, LengthError::NotATapeFraction { .. })
    });
    refuses("98 5/4", "98 5/4 has the fraction 5/4. Fractions under one are taken: write 5/4 as 1-1/4.");
    refuses_each(&["4/4", "9/8\"", "8-2-16/16", "64/64"], |problem| {
        matches!(problem, LengthError::ImproperFraction { .. })
    });
    refuses(
        "3/0",
        "3/0 has a fraction over zero. Fractions over 2, 4, 8, 16, 32 and 64 are taken: write one like 3/4.",
    );
    refuses_each(&["0/0", "98 3/0\""], |problem| matches!(problem, LengthError::ZeroDenominator { .. }));
}

#[test]
fn slashes_out_of_place() {
    refuses("3/4/8", "3/4/8 has more than one slash. One fraction is taken: write a length such as 8' 2-3/4\".");
    refuses_each(&["3//4", "1/2 3/4", "8/2/3/4"], |problem| matches!(problem, LengthError::TwoSlashes { .. }));
    refuses("98 3/", "98 3/ has a slash without a whole number on each side. Write the fraction like 3/4.");
    refuses_each(&["/4", "3/", "/", "1.5/2", "1/2.0", "3/'", "½/4 /"], |problem| {
        matches!(problem, LengthError::UnfinishedFraction { .. } | LengthError::TwoSlashes { .. })
    });
}

#[test]
fn nothing_and_less_than_nothing() {
    refuses("", "Nothing was typed. Write a length such as 8' 2-3/4\" or 98 3/4.");
    refuses(" \t\n", "Nothing was typed. Write a length such as 8' 2-3/4\" or 98 3/4.");
    refuses("-5", "-5 is below zero. Zero and more are taken: write the length without the minus.");
    refuses_each(&["−5", "–8' 2\"", "- 98 3/4", "-0"], |problem| matches!(problem, LengthError::Negative { .. }));
}

#[test]
fn a_comma_is_refused() {
    refuses("1,200", "1,200 has a comma, which may mean thousands or decimals. Write 1200 or 8.5, without a comma.");
    refuses_each(&["8,5", "8', 2\"", ","], |problem| matches!(problem, LengthError::Comma { .. }));
}

#[test]
fn letters_and_other_characters() {
    refuses(
        "1e5",
        "1e5 has e in it, which is no unit of length here. Units taken are ft, in, mm, cm and m: write a length such \
         as 8' 2-3/4\" or 2496 mm.",
    );
    refuses_each(&["NaN", "inf", "infinity", "eight", "8 yd", "2x4", "8 ftin", "8 km"], |problem| {
        matches!(problem, LengthError::UnknownWord { .. })
    });
    refuses(
        "~8'",
        "~8' has the character '~' in it. Digits, fractions, ' and \", ft, in, mm, cm and m are taken: write a length \
         such as 8' 2-3/4\".",
    );
    refuses_each(&["+5", "6:12", "(8')", "8' 2\" ±1/8", "∞", "8\u{0}"], |problem| {
        matches!(problem, LengthError::UnknownCharacter { .. })
    });
}

#[test]
fn numbers_that_are_not_numbers() {
    refuses("98.", "98. has 98. where a number should be. Write decimals with one point and digits after it: 98.75.");
    refuses_each(&[".", "1.2.3", "8' 2.\"", "..", "1..2"], |problem| matches!(problem, LengthError::NotANumber { .. }));
    refuses(
        "98.7500000000",
        "98.7500000000 has a number of more than 11 digits. Write it with fewer: a tape shows no more.",
    );
    refuses_each(&["123456789012", "0.000000000001", "99999999999999999999999999999999999999999 mm"], |problem| {
        matches!(problem, LengthError::TooManyDigits { .. })
    });
}

#[test]
fn two_numbers_without_anything_between_them() {
    refuses(
        "8 2",
        "8 2 has two numbers and nothing that says which is feet. Write 8' 2\" for feet and inches, or 98 3/4 for \
         inches and a fraction.",
    );
    refuses_each(&["8 2 3/4", "8 2-3/4", "8 2\"", "8 2 3"], |problem| {
        matches!(problem, LengthError::WhichAreFeet { .. })
    });
}

#[test]
fn a_dash_that_may_be_a_minus() {
    refuses("98 - 3/4", "98 - 3/4 has a dash after a space, and nothing is subtracted here. Write 98-3/4 or 98 3/4.");
    refuses_each(&["98 -3/4", "8 - 2", "8' 2 - 3/4\"", "8-2 -12"], |problem| {
        matches!(problem, LengthError::LooseDash { .. })
    });
}

#[test]
fn metric_with_anything_else() {
    refuses(
        "1/2 m",
        "1/2 m is not one metric number. One number and one unit are taken: write 2496 mm, 249.6 cm or 2.496 m.",
    );
    refuses_each(&["2 m 496 mm", "8' 20 mm", "20 1/2 mm", "2-496 mm", "2 496 mm", "2496 mm 3/4"], |problem| {
        matches!(problem, LengthError::NotOneMetricNumber { .. })
    });
}

#[test]
fn more_than_a_thousand_feet_is_a_slip() {
    refuses(
        "1000' 0-1/64\"",
        "1000' 0-1/64\" is more than 1,000 ft. Lengths from 0 to 1,000 ft are taken: check the number and its unit.",
    );
    let problem = read_length("2496", LengthUnit::Feet).map_err(|problem| problem.to_string());
    assert_eq!(
        problem,
        Err("2496 ft is more than 1,000 ft. Lengths from 0 to 1,000 ft are taken: check the number and its unit."
            .to_owned())
    );
    refuses_each(&["12000.1", "12001", "304801 mm", "9999999999'", "9999999999' 11.999999999\""], |problem| {
        matches!(problem, LengthError::TooLong { .. })
    });
}

#[test]
fn parts_in_no_order_that_is_read() {
    refuses(
        "2\" 8'",
        "2\" 8' is in no order that is read. Write feet, then inches, then a fraction, such as 8' 2-3/4\", or inches \
         alone, such as 98 3/4 in.",
    );
    refuses_each(
        &[
            "'",
            "\"",
            "ft",
            "mm",
            "8' 2\" 3",
            "8' 2' ",
            "8\" \"",
            "8.5' 2\"",
            "8' 2 12",
            "3/4 8",
            "98.5 3/4",
            "8-",
            "8'-",
            "8--2",
            "8.5-2",
            "8-2.5",
            "8-'",
            "6 in 12",
            "8-2-3-4",
            "½ ½",
            "8 ft.5",
            "5 1/2' 3\"",
            "8' 3/4-2",
            "8' 2-.5",
        ],
        |problem| matches!(problem, LengthError::Unreadable { .. }),
    );
}

#[test]
fn a_long_text_is_cut_in_the_sentence() {
    let problem = read_length(&"8' ".repeat(1000), LengthUnit::Inches).map_err(|problem| problem.to_string());
    let given = format!("{}8…", "8' ".repeat(13));
    assert!(problem.is_err_and(|sentence| sentence.starts_with(&given) && sentence.len() < 250));
}
