//! Roof ties and straps that were found on a site.

use serde_json::{Value, json};

use crate::{answered, ask, check, fact, has_remedy, texts, who};

const KIND: &str = "hold_down_point";

/// A case with further inputs.
fn with(case: &Value, more: &Value) -> Value {
    let mut case = case.clone();
    for (name, value) in more.as_object().unwrap() {
        case[name] = value.clone();
    }
    case
}

fn inputs_asked(answer: &Value) -> Vec<String> {
    texts(&answer["questions"], "input")
}

/// Source: field case FC-37: 334 lb, more than the 200 lb of toe nails; 167 plf at the wall's top, trusses at 24 in.
#[test]
fn toe_nails_under_a_roof_that_lifts() {
    let toed = json!({"looking_at": "roof_tie", "held_by": "toe_nails", "required_uplift": "334 lb",
                      "tie_spacing": "24", "full_walls_above": "0"});
    let answer = answered(KIND, toed.clone());
    assert_eq!(answer["verdict"], "out");
    assert_eq!(check(&answer, "Uplift on the connection", None)["margin"], "134 lb over");
    assert_eq!(answer["by_how_much"], "Uplift on the connection: 134 lb over");
    assert_eq!(
        (&answer["foremost"]["found"], &answer["foremost"]["word"]),
        (&json!("200 of 334 lb"), &json!("too weak"))
    );
    assert_eq!(fact(&answer, "Uplift at the wall's top"), "167 plf, at most 100 plf by the panels' nails alone");
    assert_eq!(who(&answer, "Add a tie"), ["crew"]);
    assert_eq!(who(&answer, "Carry the uplift on down"), ["engineer"]);
    let says = answer["says"].as_array().unwrap();
    assert_eq!(says.iter().filter(|says| says.as_str().unwrap().starts_with("Look at the ")).count(), 5);
    // Under two full walls 47 plf is left, and the path ends there.
    let under_two = answered(KIND, with(&toed, &json!({"full_walls_above": "2"})));
    assert!(fact(&under_two, "Uplift at the wall's top").starts_with("47 plf"));
    assert!(!has_remedy(&under_two, "Carry the uplift") && !under_two["says"].to_string().contains("Look at"));
    // The uplift at the wall's top is no fault of the connection.
    let light =
        json!({"looking_at": "roof_tie", "held_by": "toe_nails", "required_uplift": "150", "tie_spacing": "12"});
    let light = answered(KIND, light);
    assert_eq!(light["verdict"], "within");
    assert!(fact(&light, "Uplift at the wall's top").starts_with("150 plf") && has_remedy(&light, "Carry the uplift"));
    assert!(texts(&light["assumed"], "says").iter().any(|says| says.starts_with("Full walls above: 0")));
}

/// Source: field case FC-37: a tie on the inside rolls the plate.
#[test]
fn a_tie_inside_the_wall() {
    let tie = json!({"looking_at": "roof_tie", "held_by": "tie", "tie_side": "inside", "required_uplift": "334",
                     "listed_uplift": "500", "tie_spacing": "24", "drawing": "S4"});
    let inside = answered(KIND, tie.clone());
    assert_eq!(inside["verdict"], "out");
    assert_eq!((&inside["foremost"]["word"], &inside["by_how_much"]), (&json!("inside the wall"), &Value::Null));
    assert!(inside["says"].to_string().contains("side without sheathing"), "{inside}");
    assert_eq!(who(&inside, "Nail a tie to the sheathed side"), ["crew"]);
    assert_eq!(fact(&inside, "Where the tie goes"), "on the sheathed side");
    assert_eq!(check(&inside, "Uplift on the connection", None)["clause"]["source"], "typed by you");
    let sheathed = answered(KIND, with(&tie, &json!({"tie_side": "sheathed"})));
    assert_eq!(sheathed["verdict"], "within");
    let hidden = answered(KIND, with(&tie, &json!({"tie_side": "could not be seen"})));
    assert_eq!(hidden["verdict"], "could not be seen");
    let weak = json!({"tie_side": "sheathed", "listed_uplift": "300", "required_nails": "10", "fasteners": "8"});
    let weak = answered(KIND, with(&tie, &weak));
    assert_eq!(check(&weak, "Nails of the connection", None)["margin"], "2 short");
    assert_eq!(check(&weak, "Nails of the connection", None)["clause"]["source"], "drawing S4");
    assert!(has_remedy(&weak, "Drive 2 nails more") && has_remedy(&weak, "Add a tie that is listed"));
}

/// Source: common practice: the side with fewer nails counts; a strap that bows is its maker's or the engineer's.
#[test]
fn a_strap_with_two_nails_missing() {
    let strap = json!({"looking_at": "strap", "required_nails": "14", "fasteners": "12", "lies_flat": "yes"});
    let short = answered(KIND, strap.clone());
    assert_eq!((&short["verdict"], &short["foremost"]["word"]), (&json!("out"), &json!("too few nails")));
    assert_eq!(short["by_how_much"], "Nails of the strap, each side: 2 short");
    assert_eq!(who(&short, "Drive 2 nails more in its empty holes"), ["crew"]);
    let full = answered(KIND, with(&strap, &json!({"fasteners": "14"})));
    assert_eq!((&full["verdict"], &full["questions"]), (&json!("within"), &json!([])));
    let bowed = answered(KIND, with(&strap, &json!({"fasteners": "14", "lies_flat": "no"})));
    assert_eq!(bowed["verdict"], "out");
    assert_eq!(
        (who(&bowed, "Ask the maker"), who(&bowed, "Ask for a detail")),
        (vec!["maker".into()], vec!["engineer".into()])
    );
    let clause = &bowed["facts"][0]["clause"];
    assert_eq!(
        (&bowed["facts"][0]["value"], &clause["status"]),
        (&json!("flat and straight"), &json!("common practice"))
    );
    let weak = json!({"fasteners": "14", "required_uplift": "1250", "listed_uplift": "1200"});
    let weak = answered(KIND, with(&strap, &weak));
    assert_eq!((&weak["verdict"], &weak["foremost"]["found"]), (&json!("out"), &json!("1200 of 1250 lb")));
}

/// Half of it typed: asked for the rest, and nothing passes.
#[test]
fn half_filled_asks() {
    let tie = answered(KIND, json!({"looking_at": "roof_tie"}));
    assert_eq!(tie["verdict"], "could not be seen");
    assert_eq!(inputs_asked(&tie), ["required_uplift", "held_by", "tie_spacing"]);
    let half = answered(KIND, json!({"held_by": "tie", "required_uplift": "334"}));
    assert_eq!(half["verdict"], "could not be seen");
    assert_eq!(inputs_asked(&half), ["tie_side", "listed_uplift", "tie_spacing"]);
    assert!(!half["facts"].to_string().contains("wall's top"), "{half}");
    assert!(texts(&half["assumed"], "says")[0].starts_with("Looked at: a roof tie"), "{half}");
    let strap = answered(KIND, json!({"lies_flat": "yes", "required_uplift": "900"}));
    assert_eq!(strap["verdict"], "could not be seen");
    assert_eq!(inputs_asked(&strap), ["required_nails", "fasteners", "listed_uplift"]);
    // An uplift alone does not tell what was looked at.
    let uplift = answered(KIND, json!({"required_uplift": "334"}));
    assert!(texts(&uplift["assumed"], "says")[0].starts_with("Looked at: anchor bolts"), "{uplift}");
}

#[test]
fn refusals_name_their_field() {
    for (field, given, taken) in [
        ("held_by", "staples", "tie, toe_nails"),
        ("tie_side", "left", "sheathed, inside"),
        ("full_walls_above", "3", "0, 1, 2"),
        ("lies_flat", "nearly", "yes, no"),
        ("required_uplift", "60000 lb", "from 1 lb to 50000 lb"),
        ("listed_uplift", "2 kN", "lb"),
        ("tie_spacing", "20'", "from 4\" to 12' 0\""),
    ] {
        // Refused whatever is looked at.
        for looking_at in ["anchor_bolt", "hold_down", "roof_tie", "strap"] {
            let answer = ask(&json!({"check": KIND, "looking_at": looking_at, field: given}));
            let refused = answer["refused"].as_array().unwrap();
            assert_eq!((refused.len(), &refused[0]["field"]), (1, &json!(field)), "{answer}");
            assert!(refused[0]["problem"].as_str().unwrap().contains(taken), "{answer}");
        }
    }
}
