//! What is refused, with its field, and what is asked where nothing was said.

use framing::check::schema;
use serde_json::{Value, json};

use crate::{KINDS, answered, ask, texts};

/// Nothing said: an answer that asks, and passes nothing.
#[test]
fn an_empty_line_of_each_kind_asks() {
    for (kind, texts, lists) in KINDS {
        let nothing = answered(kind, json!({}));
        assert_eq!(nothing["verdict"], "could not be seen", "{kind}");
        assert!(!nothing["questions"].as_array().unwrap().is_empty(), "{kind}");
        assert_eq!(nothing["by_how_much"], Value::Null, "{kind}");
        // A text that is empty was not typed.
        for field in texts {
            assert_eq!(answered(kind, json!({ *field: "  " })), nothing, "{kind} {field}");
        }
        for field in lists {
            let empty = ask(&json!({"check": kind, *field: [""]}));
            let is_kept_words = *field == "places";
            assert_eq!(empty["refused"][0]["field"].as_str(), (!is_kept_words).then_some(*field), "{kind} {empty}");
        }
    }
}

/// Inputs that are kept as they are written.
const WORDS: [&str; 7] =
    ["drawing", "drawing_revision", "adhesive_lot", "cleaning_watched_by", "meter", "species_setting", "places"];

/// Negative, absurd, not a number and in a wrong unit: refused at its field with a sentence.
#[test]
fn nonsense_is_refused_at_its_field() {
    for (kind, texts, lists) in KINDS {
        let typed = texts.iter().map(|field| (*field, false)).chain(lists.iter().map(|field| (*field, true)));
        for (field, list) in typed.filter(|(field, _)| !WORDS.contains(field)) {
            for nonsense in ["-6", "40000'", "wide", "6 psf", "NaN", "1e3", "1/0", "6' 14\""] {
                let value = if list { json!([nonsense]) } else { json!(nonsense) };
                let answer = ask(&json!({"check": kind, field: value}));
                let refusal = &answer["refused"][0];
                assert_eq!(refusal["field"], field, "{kind} {field} {nonsense}: {answer}");
                let problem = refusal["problem"].as_str().unwrap();
                assert!(problem.ends_with('.') || problem.ends_with('?'), "{problem}");
            }
        }
    }
}

/// Zero is refused wherever a thing of no size makes no sense.
#[test]
fn zero_is_refused_where_nothing_is_so_small() {
    for (kind, field) in [
        ("stud_spacing", "required_spacing"),
        ("stud_spacing", "sheet_length"),
        ("stud_spacing", "stud_thickness"),
        ("nailing", "edge_spacing"),
        ("nailing", "line_length"),
        ("nailing", "panel_width"),
        ("nailing", "required_nail"),
        ("hold_down_point", "plate_width"),
        ("hold_down_point", "required_embedment"),
        ("hold_down_point", "required_uplift"),
        ("hold_down_point", "listed_uplift"),
        ("hold_down_point", "tie_spacing"),
        ("notch_found", "notch_depth"),
        ("notch_found", "hole_diameter"),
        ("notch_found", "member_width"),
        ("flatness", "over"),
        ("moisture", "limit"),
    ] {
        let answer = ask(&json!({"check": kind, field: "0"}));
        assert_eq!(answer["refused"][0]["field"], field, "{answer}");
    }
}

#[test]
fn a_refusal_says_what_was_given_and_what_is_taken() {
    let problem = |line: Value| ask(&line)["refused"][0]["problem"].as_str().unwrap().to_owned();
    let said = problem(json!({"check": "stud_spacing", "pulls": ["16", "wide"]}));
    assert!(said.starts_with("Reading 2: ") && said.contains("wide"), "{said}");
    let said = problem(json!({"check": "stud_spacing", "required_spacing": "90"}));
    assert_eq!(said, "Required spacing 90 in = 7' 6\" was given; from 4\" to 4' 0\" is taken.");
    let said = problem(json!({"check": "stud_spacing", "pulled": "sideways"}));
    assert_eq!(said, "“sideways” was given; one of these is taken: from_the_end, centre_to_centre.");
    let said = problem(json!({"check": "nailing", "driven": "2.5"}));
    assert_eq!(said, "Nails driven 2.5 was given; whole numbers are taken.");
    let said = problem(json!({"check": "nailing", "driven": "5", "missed": "6", "line_length": "8'"}));
    assert!(said.starts_with("More nails missed"), "{said}");
    let said = problem(json!({"check": "notch_found", "size": "2x4", "hole_diameter": "5"}));
    assert_eq!(said, "5\" was given; the member is 3-1/2\" there. Measure both again.");
    let said = problem(json!({"check": "stud_spacing", "pulls": vec!["16"; 201]}));
    assert!(said.starts_with("201 were given; to 200 are taken"), "{said}");
}

/// Shapes that are not the input's, names that are none, and kinds that are none.
#[test]
fn wrong_shapes_are_refused_at_their_field() {
    let refused = |line: Value| ask(&line)["refused"][0].clone();
    let field = |line: Value| refused(line)["field"].as_str().unwrap().to_owned();
    assert_eq!(field(json!({"check": "stud_spacing", "pulls": "16"})), "pulls");
    assert_eq!(field(json!({"check": "stud_spacing", "pulls": ["16", 33]})), "pulls");
    assert_eq!(field(json!({"check": "stud_spacing", "required_spacing": ["16"]})), "required_spacing");
    assert_eq!(field(json!({"check": "nailing", "required_spacing": "16"})), "required_spacing");
    let kinds = refused(json!({"check": "roof"}));
    assert_eq!(kinds["field"], "check");
    for (kind, _, _) in KINDS {
        assert!(kinds["problem"].as_str().unwrap().contains(kind), "{kinds}");
    }
    assert!(kinds["problem"].as_str().unwrap().contains("header"), "{kinds}");
    // Null is nothing said.
    assert_eq!(answered("moisture", json!({"visits": null}))["verdict"], "could not be seen");
}

#[test]
fn what_was_read_is_echoed() {
    let answer = answered("stud_spacing", json!({"pulls": ["1-4", "2' 9\""], "pulled": "from_the_end"}));
    let echoes: Vec<(&Value, &Value)> =
        answer["read"].as_array().unwrap().iter().map(|read| (&read["typed"], &read["understood"])).collect();
    assert_eq!(echoes[0], (&json!("1-4"), &json!("1' 4\"")));
    assert_eq!(echoes[1], (&json!("2' 9\""), &json!("2' 9\"")));
    assert!(texts(&answer["assumed"], "says").iter().any(|says| says.starts_with("Required spacing: 16\"")));
}

#[test]
fn the_schema_names_every_kind_and_input() {
    let schema = schema();
    for (kind, texts, lists) in KINDS {
        assert!(schema.contains(&format!("\"{kind}\"")), "{kind}");
        for field in texts.iter().chain(lists) {
            assert!(schema.contains(&format!("\"{field}\"")), "{kind} {field}");
        }
    }
    serde_json::from_str::<Value>(&schema).unwrap();
}
