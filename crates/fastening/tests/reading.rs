//! Nails as people write them, and what they are told when it cannot be a nail.

#![expect(clippy::unwrap_used, clippy::panic, reason = "a panic in a test is the report")]

use fastening::{Nail, NailError, NailKind, read_nail};
use measure::Length;
use proptest::prelude::*;

#[track_caller]
fn check(text: &str, diameter: f64, length: f64) {
    let found = read_nail(text).unwrap_or_else(|problem| panic!("{text}: {problem}")).nail;
    assert_eq!((found.diameter().inches(), found.length().inches()), (diameter, length), "{text}");
}

#[track_caller]
fn refused(text: &str, says: &str) {
    let said = read_nail(text).unwrap_err().to_string();
    assert!(said.contains(says), "{text}: {said}");
}

#[test]
fn diameter_and_length_in_either_order() {
    check("0.131 x 2-1/2", 0.131, 2.5);
    check("2-3/8 x .113", 0.113, 2.375);
    check(".113 x 2-3/8", 0.113, 2.375);
    check("3x131", 0.131, 3.0);
    check("131x3", 0.131, 3.0);
    check("3 1/4 x .131", 0.131, 3.25);
    check("2-1/2\" x 0.131\"", 0.131, 2.5);
    check("2 ½ in. x 0.131 in", 0.131, 2.5);
    check("3½ × .162", 0.162, 3.5);
    check("2-3/8x.113", 0.113, 2.375);
    check("dia. .131 x 3 in. long", 0.131, 3.0);
    check("3 * 0.148", 0.148, 3.0);
    check("0.131 by 3 inches", 0.131, 3.0);
    check("0.120 X 2.5", 0.12, 2.5);
    check("1/8 x 3", 0.125, 3.0);
    check("  3.25   x 120 ", 0.12, 3.25);
    check("(3 x 0.131)", 0.131, 3.0);
}

#[test]
fn millimetres_to_the_thousandth_of_an_inch() {
    check("3.3 x 64 mm", 0.13, 2.52);
    check("3.3mm x 64mm", 0.13, 2.52);
    check("64 mm x 3.3", 0.13, 2.52);
    check("2.9 mm x 2-1/2 in", 0.114, 2.5);
}

/// Source: NDS 2018 Table L4.
#[test]
fn penny_sizes_with_their_kind() {
    check("8d common", 0.131, 2.5);
    check("16D Common nails", 0.162, 3.5);
    check("8 penny box", 0.113, 2.5);
    check("16d sinkers", 0.148, 3.25);
    check("10d-box", 0.128, 3.0);
    check("common 10d", 0.148, 3.0);
    check("8d common (2-1/2 x 0.131)", 0.131, 2.5);
    check("0.131 x 2-1/2 8d common", 0.131, 2.5);
    check("8d (0.131)", 0.131, 2.5);
    check("8d common (.131)", 0.131, 2.5);
    check("10d 148", 0.148, 3.0);
    check("16d 3-1/4", 0.148, 3.25);
}

#[test]
fn the_echo_names_the_nail() {
    let echo = |text: &str| read_nail(text).unwrap().echo;
    assert_eq!(echo("3x131"), "0.131 x 3 in");
    assert_eq!(echo("2.5 x .131"), "0.131 x 2-1/2 in (8d common)");
    assert_eq!(echo("3-1/4 x .148"), "0.148 x 3-1/4 in (12d common, 16d sinker)");
}

/// What says nothing of the size is given back, so that the screen can say so.
#[test]
fn words_that_are_left_out() {
    let left_out = |text: &str| read_nail(text).unwrap().left_out;
    assert_eq!(left_out("3 x .131 ring shank"), ["ring", "shank"]);
    assert_eq!(left_out("hot-dip galv 8d common"), ["hot", "dip", "galv"]);
    assert_eq!(left_out("16d 3-1/4 x .131 gun nails"), ["gun", "16d"]);
    assert_eq!(left_out("2-3/8 x .113 cooler"), ["cooler"]);
    assert_eq!(left_out("8d common"), Vec::<String>::new());
}

/// A penny size alone is refused with what it can be.
#[test]
fn a_penny_size_alone() {
    let said = read_nail("16d").unwrap_err().to_string();
    assert_eq!(
        said,
        "16d is not one nail: it can be 16d common 0.162 x 3-1/2 in, 16d box 0.135 x 3-1/2 in, 16d sinker 0.148 x \
         3-1/4 in. Write diameter and length from the box, or measure one."
    );
    refused("8 penny nails", "8d sinker 0.113 x 2-3/8 in");
    refused("8d .113", "it can be 8d box 0.113 x 2-1/2 in, 8d sinker 0.113 x 2-3/8 in.");
    refused("16d 3-1/2", "it can be 16d common 0.162 x 3-1/2 in, 16d box 0.135 x 3-1/2 in.");
    refused("8d .120", "no nail of the table");
    refused("8d common (0.113)", "no nail of the table");
    refused("8d cooler .113", "differ by maker");
    refused("9d", "6d to 60d");
    refused("9d common", "6d to 60d");
    refused("60d box", "no nail of the table");
    refused("8d cooler", "differ by maker");
}

#[test]
fn what_is_no_nail() {
    refused("", "Nothing was typed");
    refused("   ", "Nothing was typed");
    refused("0.131", "is not a diameter and a length");
    refused("common", "is not a diameter and a length");
    refused("0.131 x", "is not a diameter and a length");
    refused("x", "is not a diameter and a length");
    refused("1 x 2 x 3", "is not a diameter and a length");
    refused("0.131 x 0.148", "is no nail");
    refused("2 x 4", "is no nail");
    refused("0.131 x 40", "is no nail");
    refused("0.5 x 3", "is no nail");
    refused("0.131 x 2-1/3", "Fractions over 2, 4, 8");
    refused("0.131 x 2-1/2 screw", "screw");
    refused("8d common box", "box");
    refused("8d common 3 x 0.131", "8d common is 0.131 x 2-1/2 in");
    refused("0,131 x 2", "has , in it");
    refused("0131 x 3", "is no nail");
    refused("8d 16d common", "has d in it");
    refused("0.131 x 3.", "has 3. where a number should be");
    refused("1..2 x .131", "where a number should be");
    refused("3 x -0.131", "is below zero");
    refused("3x-131", "is below zero");
    refused("d", "has d in it");
    refused("300d common", "has d in it");
    let long = "q".repeat(1000);
    assert!(read_nail(&long).unwrap_err().to_string().len() < 300);
}

/// What `Display` writes is read back as the same nail, whatever the table or the tape holds.
fn nails() -> impl Strategy<Value = Nail> {
    let length = prop_oneof![
        (48_u32..=768).prop_map(|marks| f64::from(marks) / 64.0),
        (750_u32..=12_000).prop_map(|thousandths| f64::from(thousandths) / 1000.0),
    ];
    ((60_u32..=375), length).prop_map(|(thousandths, length)| {
        Nail::new(Length::from_inches(f64::from(thousandths) / 1000.0), Length::from_inches(length)).unwrap()
    })
}

#[test]
fn every_size_of_the_table_reads_back() {
    for kind in NailKind::ALL {
        for nail in (0..=u8::MAX).filter_map(|penny| Nail::of_size(kind, penny)) {
            assert_eq!(read_nail(&nail.to_string()).unwrap().nail, nail);
        }
    }
    let said = Nail::new(Length::from_inches(0.5), Length::from_inches(3.0)).unwrap_err();
    assert_eq!(said, NailError::NoSuchNail { given: "0.5 x 3 in".to_owned() });
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn what_is_written_is_read_back(nail in nails()) {
        prop_assert_eq!(read_nail(&nail.to_string()).unwrap().nail, nail);
    }

    #[test]
    fn an_echo_is_read_back(nail in nails()) {
        let echo = read_nail(&nail.to_string()).unwrap().echo;
        // Two names in one echo are for people; one name must agree with the sizes.
        if !echo.contains(',') {
            prop_assert_eq!(read_nail(&echo).unwrap().nail, nail);
        }
    }

    #[test]
    fn no_text_panics(text in any::<String>()) {
        let _ = read_nail(&text).map_err(|problem| problem.to_string());
    }

    #[test]
    fn no_text_of_its_own_alphabet_panics(text in "([0-9]{1,3}|[ ./x×\"'()½⅛–-]|d|in|mm|box|common|ring|[a-zé]){0,16}") {
        match read_nail(&text) {
            Ok(found) => {
                prop_assert!(found.nail.diameter() < found.nail.length());
                prop_assert_eq!(read_nail(&found.nail.to_string()).unwrap().nail, found.nail);
            }
            Err(problem) => prop_assert!(problem.to_string().ends_with('.'), "{}", problem),
        }
    }
}
