//! Beams drawn at random and solved by a general finite element library.
//!
//! Source: `tests/oracle/fem_cases.json`, written by `tests/oracle/fem_oracle.py`, which says how: 200 beams of one to five
//! spans. Deflection and slope at every node and the reaction of every support, to 1e-6 of the largest of their kind in the
//! case: the library's own equations are solved to about 1e-9 of it.
#![expect(clippy::unwrap_used, reason = "a case that cannot be read or is refused is the report")]

use measure::{FlexuralRigidity, Force, Length, LineLoad, Moment};
use members::beam::{Beam, Load};
use serde_json::Value;

const CASES: &str = include_str!("../../../tests/oracle/fem_cases.json");
/// Of the largest value of a kind in a case.
const WITHIN: f64 = 1e-6;

fn number(value: &Value, key: &str) -> f64 {
    value[key].as_f64().unwrap()
}

fn inches(value: &Value, key: &str) -> Length {
    Length::from_inches(number(value, key))
}

fn load(value: &Value) -> Load {
    match value["kind"].as_str().unwrap() {
        "point" => Load::point(inches(value, "at"), Force::from_pounds(number(value, "force"))),
        "couple" => Load::couple(inches(value, "at"), Moment::from_inch_pounds(number(value, "moment"))),
        _ => {
            let [start, end] = ["start", "end"].map(|key| LineLoad::from_plf(number(value, key)));
            Load::linear(inches(value, "from"), inches(value, "to"), start, end)
        }
    }
}

#[track_caller]
fn check(case: usize, what: &str, pairs: &[(f64, f64)]) {
    let largest = pairs.iter().map(|(_, expected)| expected.abs()).fold(1e-9, f64::max);
    for (found, expected) in pairs {
        assert!((found - expected).abs() <= WITHIN * largest, "case {case}, {what}: {found} against {expected}");
    }
}

#[test]
fn every_case_agrees() {
    let file: Value = serde_json::from_str(CASES).unwrap();
    let cases = file["cases"].as_array().unwrap();
    assert_eq!(cases.len(), 200);
    for (index, case) in cases.iter().enumerate() {
        let beam = &case["beam"];
        let supports: Vec<Length> =
            beam["supports"].as_array().unwrap().iter().map(|at| Length::from_inches(at.as_f64().unwrap())).collect();
        let ei = FlexuralRigidity::from_pound_square_inches(number(beam, "ei"));
        let loads: Vec<Load> = case["loads"].as_array().unwrap().iter().map(load).collect();
        let solution = Beam::new(&supports, inches(beam, "length"), ei).unwrap().solve(&loads).unwrap();
        let forces = solution.reactions().iter().map(|reaction| reaction.force.pounds());
        let expected = case["reactions"].as_array().unwrap().iter().map(|force| force.as_f64().unwrap());
        check(index, "reactions", &forces.zip(expected).collect::<Vec<_>>());
        let nodes = case["nodes"].as_array().unwrap();
        let at = |node: &Value| solution.just_right_of(inches(node, "at")).unwrap();
        let sags: Vec<_> =
            nodes.iter().map(|node| (at(node).deflection.inches(), number(node, "deflection"))).collect();
        check(index, "deflection", &sags);
        let slopes: Vec<_> = nodes.iter().map(|node| (at(node).slope, number(node, "slope"))).collect();
        check(index, "slope", &slopes);
    }
}
