//! Worked answers as an engineer reads them, kept so that a change in any step is seen and explained.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::fmt::Write;

use framing::{HeaderCase, derive_header, reply};

fn worked(fields: &[(&str, &str)]) -> String {
    let mut case = HeaderCase::default();
    for (field, text) in fields {
        assert!(case.set(field, Some((*text).to_owned())), "no input {field}");
    }
    let reply = reply(&derive_header(&case, &HeaderCase::default())).unwrap();
    let mut text = String::new();
    let ratio = reply.ratio.unwrap_or(f64::NAN);
    writeln!(text, "{} {} {:.4} {}", reply.size, reply.verdict, ratio, reply.governs.unwrap_or_default()).unwrap();
    for part in reply.working {
        writeln!(text, "\n{}", part.heading).unwrap();
        for step in part.steps {
            let (symbol, value) = (step.symbol, members::working::figure(step.value));
            writeln!(
                text,
                "  {symbol:6} {} | {} = {value} {} | {}",
                step.meaning, step.expression, step.unit, step.source
            )
            .unwrap();
        }
    }
    text
}

#[test]
fn two_floors_with_framing_on_it() {
    insta::assert_snapshot!(worked(&[
        ("opening_width", "5'"),
        ("carries", "two_floors_center_bearing"),
        ("above", "framing_bears"),
        ("building_width", "28'"),
        ("ground_snow", "40 psf"),
        ("wind_speed", "130 mph"),
        ("exposure", "C"),
        ("near_corner", "no"),
        ("species", "DF-L"),
    ]));
}

#[test]
fn unbraced_engineered_header_over_an_overhead_door() {
    insta::assert_snapshot!(worked(&[
        ("opening_width", "16' 3\""),
        ("closure", "overhead_door"),
        ("above", "cripple_studs"),
        ("wall_height", "10' 1-1/8\""),
        ("head_height", "7'"),
        ("ground_snow", "25 psf"),
    ]));
}

#[test]
fn wet_southern_pine_in_a_gable() {
    insta::assert_snapshot!(worked(&[
        ("opening_width", "6'"),
        ("carries", "gable_end"),
        ("species", "SP"),
        ("service", "wet"),
        ("above", "cripple_studs"),
        ("size", "2-2x10"),
    ]));
}
