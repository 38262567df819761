//! Any object is answered or refused, on one line.

use framing::check::check_line;
use proptest::prelude::*;
use serde_json::{Value, json};

use crate::{KINDS, Names, ask};

/// Texts that are nearly right more often than chance would make them.
fn any_text() -> impl Strategy<Value = String> {
    prop_oneof![
        any::<String>(),
        "[0-9]{1,3}( [0-9]/[0-9]{1,2})?('|\"| mm)?",
        "[0-9]{1,2}[:x,-] ?[0-9]{1,2}( (of|to|x) [0-9.]{1,4})?",
        prop::sample::select(vec![
            "yes",
            "no",
            "none",
            "could not be seen",
            "tight",
            "missing",
            "cut",
            "3 x 3 x 0.229",
            "stud",
            "joist",
            "top_plate",
            "hold_down",
            "roof_tie",
            "strap",
            "tie",
            "toe_nails",
            "inside",
            "334 lb",
            "from_the_end",
            "centre_to_centre",
            "8d common",
            "3 x .131",
            "2x6",
            "faces",
            "64: 1 of 2",
            "32 to 71",
            "visit 1: 18, -, 22",
            "flush or proud",
            "lumber",
            "SPF",
        ])
        .prop_map(str::to_owned),
    ]
}

fn any_value() -> impl Strategy<Value = Value> {
    prop_oneof![
        4 => any_text().prop_map(Value::from),
        2 => prop::collection::vec(any_text(), 0..6).prop_map(Value::from),
        1 => prop_oneof![Just(Value::Null), any::<bool>().prop_map(Value::from), any::<f64>().prop_map(Value::from)],
    ]
}

/// An object of a kind: most values of the shape that their input has.
fn any_object() -> impl Strategy<Value = Value> {
    let one = |(kind, texts, lists): (&'static str, Names, Names)| {
        let text = prop::collection::hash_map(prop::sample::select(texts), any_text(), 0..8);
        let list = prop::collection::hash_map(0..lists.len().max(1), prop::collection::vec(any_text(), 0..6), 0..4);
        (text, list).prop_map(move |(text, list)| {
            let mut line = json!({ "check": kind });
            for (field, value) in text {
                line[field] = json!(value);
            }
            for (index, value) in list {
                if let Some(field) = lists.get(index) {
                    line[*field] = json!(value);
                }
            }
            line
        })
    };
    prop::sample::select(KINDS.to_vec()).prop_flat_map(one)
}

proptest! {
    #[test]
    fn any_case_is_answered_or_refused(line in any_object()) {
        let answer = ask(&line);
        prop_assert!(answer["verdict"].is_string() || !answer["refused"].as_array().unwrap().is_empty(), "{}", answer);
    }

    /// Nothing passes that has a check out, something unseen, or something left to others.
    #[test]
    fn nothing_passes_with_a_fault(line in any_object()) {
        let answer = ask(&line);
        let holds = |verdict: &Value| verdict == "within" || verdict == "at the limit";
        // An earlier visit with the meter may have been too wet.
        if holds(&answer["verdict"]) && line["check"] != "moisture" {
            prop_assert!(answer["checks"].as_array().unwrap().iter().all(|check| holds(&check["verdict"])));
            prop_assert_eq!(&answer["not_seen"], &json!([]));
            prop_assert_eq!(&answer["left_to"], &json!([]));
        }
    }

    /// What is out is named first, in words of its own.
    #[test]
    fn what_is_out_is_named(line in any_object()) {
        let answer = ask(&line);
        if answer["verdict"] == "out" && line["check"] != "moisture" {
            let word = answer["foremost"]["word"].as_str();
            prop_assert!(word.is_some_and(|word| !word.is_empty() && word != "within"), "{}", answer);
        }
    }

    #[test]
    fn any_object_is_answered_or_refused(
        kind in any_text(),
        fields in prop::collection::hash_map(any::<String>(), any_value(), 0..5),
    ) {
        let mut line = json!(fields);
        line["check"] = json!(format!("no {kind}"));
        let answer = ask(&line);
        prop_assert!(answer["refused"].is_array(), "{}", answer);
    }

    #[test]
    fn any_line_is_answered_with_one_line(line in any::<String>()) {
        let answer = check_line(&line);
        prop_assert!(!answer.contains('\n'));
        prop_assert!(serde_json::from_str::<Value>(&answer).is_ok());
    }
}
