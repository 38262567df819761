//! Beams drawn at random and solved exactly, in rational numbers, by a general mathematics library.
//!
//! Source: `tests/oracle/beam_cases.json`, written by `tests/oracle/beam_oracle.py`, which says how. The numbers there
//! are exact results rounded to the nearest double, so what is left is the rounding of our own arithmetic.
#![expect(clippy::unwrap_used, reason = "a case that cannot be read or is refused is the report")]

use measure::{FlexuralRigidity, Force, Length, LineLoad, Moment};
use members::beam::{Beam, Load, Section, Solution, Support};
use serde_json::Value;

const CASES: &str = include_str!("../../../tests/oracle/beam_cases.json");

/// Of each value itself.
const OF_VALUE: f64 = 1e-9;
/// Of the largest value of its kind in the case, for values that are small because large ones cancel.
const OF_LARGEST: f64 = 1e-12;

fn number(value: &Value, key: &str) -> f64 {
    value[key].as_f64().unwrap()
}

fn inches(value: &Value, key: &str) -> Length {
    Length::from_inches(number(value, key))
}

fn list<'a>(value: &'a Value, key: &str) -> &'a [Value] {
    value[key].as_array().unwrap()
}

fn read_support(value: &Value) -> Support {
    let at = inches(value, "at");
    if value["fixed"].as_bool().unwrap() { Support::fixed(at) } else { Support::simple(at) }
}

fn read_load(value: &Value) -> Load {
    match value["kind"].as_str().unwrap() {
        "point" => Load::point(inches(value, "at"), Force::from_pounds(number(value, "force"))),
        "couple" => Load::couple(inches(value, "at"), Moment::from_inch_pounds(number(value, "moment"))),
        "distributed" => {
            let [start, end] = ["start", "end"].map(|key| LineLoad::from_plf(number(value, key)));
            Load::linear(inches(value, "from"), inches(value, "to"), start, end)
        }
        other => unreachable!("a load of the kind {other}"),
    }
}

fn solve(case: &Value) -> Solution {
    let beam = &case["beam"];
    let supports = list(beam, "supports").iter().map(read_support).collect();
    let ei = FlexuralRigidity::from_pound_square_inches(number(beam, "ei"));
    let loads: Vec<Load> = list(case, "loads").iter().map(read_load).collect();
    Beam::with_supports(supports, inches(beam, "length"), ei).unwrap().solve(&loads).unwrap()
}

/// Compares the values of one kind in one case: what it is, found, expected.
struct Kind {
    name: &'static str,
    pairs: Vec<(f64, f64)>,
}

impl Kind {
    fn check(&self, case: usize) {
        let largest = self.pairs.iter().map(|(_, expected)| expected.abs()).fold(0.0, f64::max);
        for (found, expected) in &self.pairs {
            let tolerance = OF_VALUE * expected.abs() + OF_LARGEST * largest;
            let name = self.name;
            assert!((found - expected).abs() <= tolerance, "case {case}, {name}: found {found}, expected {expected}");
        }
    }
}

fn kind<T>(name: &'static str, found: &[T], expected: &[Value], read: impl Fn(&T) -> f64) -> Kind {
    assert_eq!(found.len(), expected.len(), "{name}");
    let pairs = found.iter().zip(expected).map(|(found, expected)| (read(found), number(expected, name))).collect();
    Kind { name, pairs }
}

fn sections(solution: &Solution, expected: &[Value]) -> Vec<Section> {
    let section = |value: &Value| match value["side"].as_str().unwrap() {
        "left" => solution.just_left_of(inches(value, "at")).unwrap(),
        _ => solution.just_right_of(inches(value, "at")).unwrap(),
    };
    expected.iter().map(section).collect()
}

fn kinds(solution: &Solution, case: &Value) -> Vec<Kind> {
    let (reactions, stretches) = (solution.reactions(), solution.stretches());
    let forces = list(case, "reactions");
    let extremes = list(case, "stretches");
    let places = list(case, "sections");
    let found = sections(solution, places);
    vec![
        kind("force", reactions, forces, |reaction| reaction.force.pounds()),
        kind("moment", reactions, forces, |reaction| reaction.moment.inch_pounds()),
        kind("shear", &found, places, |section| section.shear.pounds()),
        kind("moment", &found, places, |section| section.moment.inch_pounds()),
        kind("slope", &found, places, |section| section.slope),
        kind("deflection", &found, places, |section| section.deflection.inches()),
        kind("largest_shear", stretches, extremes, |stretch| stretch.extremes.largest_shear.value.pounds()),
        kind("maximum_moment", stretches, extremes, |stretch| stretch.extremes.maximum_moment.value.inch_pounds()),
        kind("minimum_moment", stretches, extremes, |stretch| stretch.extremes.minimum_moment.value.inch_pounds()),
        kind("most_down", stretches, extremes, |stretch| stretch.extremes.most_down.value.inches()),
        kind("most_up", stretches, extremes, |stretch| stretch.extremes.most_up.value.inches()),
    ]
}

#[test]
fn every_case_agrees() {
    let file: Value = serde_json::from_str(CASES).unwrap();
    let cases = list(&file, "cases");
    assert_eq!(cases.len(), 80);
    for (index, case) in cases.iter().enumerate() {
        let solution = solve(case);
        for kind in kinds(&solution, case) {
            kind.check(index);
        }
    }
}
