//! The row of studs as it is drawn, the next stud on its mark, single studs, and what the screens name first.

use framing::walk::stud_spacing::{StudSpacingCase, drawn, next_on_layout};
use framing::walk::{Verdict, which_reading, words};
use measure::Length;
use proptest::prelude::*;
use serde_json::json;

use crate::{answered, ask, check, has_remedy, texts};

fn row(pulls: &[&str], more: &[(&str, &str)]) -> StudSpacingCase {
    let mut line = json!({ "pulls": pulls });
    for (field, text) in more {
        line[*field] = json!(text);
    }
    serde_json::from_value(line).unwrap()
}

fn next(pulls: &[&str], more: &[(&str, &str)]) -> Option<f64> {
    next_on_layout(&row(pulls, more)).map(Length::inches)
}

#[test]
fn the_next_stud_stands_on_its_mark() {
    assert_eq!(next(&[], &[]), Some(16.0));
    assert_eq!(next(&["16", "32"], &[]), Some(48.0));
    // A stud that drifted is no mark: the next one belongs where the layout has it.
    assert_eq!(next(&["16", "33"], &[]), Some(48.0));
    assert_eq!(next(&["3/4", "16"], &[]), Some(32.0), "the end stud stands on no mark");
    assert_eq!(next(&["13", "29"], &[]), Some(45.0), "a layout that runs from the first stud");
    assert_eq!(next(&["15-1/4"], &[("pulled_to", "near_edge")]), Some(31.25));
    assert_eq!(next(&["16-3/4"], &[("pulled_to", "far_edge")]), Some(32.75));
    assert_eq!(next(&["24"], &[("required_spacing", "24")]), Some(48.0));
    assert_eq!(next(&["16", "17"], &[("pulled", "centre_to_centre")]), Some(16.0));
    assert_eq!(next(&["16", "hay"], &[]), Some(32.0), "what cannot be read is passed over");
    assert_eq!(next(&["16", "32"], &[("plate_length", "48")]), None, "past the plate's end");
    assert_eq!(next(&["16"], &[("plate_length", "48")]), Some(32.0));
}

/// Source: field case FC-41: 17 against 16, edges at 48 and 96 in the air.
#[test]
fn the_row_is_drawn_as_it_is_judged() {
    let row = drawn(&row(&["16", "33", "50", "67", "84", "101"], &[("required_spacing", "16"), ("studs", "2x6")]));
    assert_eq!((row.stud.inches(), row.depth.inches()), (1.5, 5.5));
    assert_eq!(row.pulled[1], (1, Length::from_inches(33.0)));
    assert_eq!(row.ends, [Length::from_inches(0.75)]);
    let out = row.bays.iter().filter(|bay| bay.verdict == Some(Verdict::Out)).count();
    assert_eq!((row.bays.len(), out), (6, 5));
    let edges: Vec<(f64, Option<Verdict>)> = row.edges.iter().map(|edge| (edge.at.inches(), edge.verdict)).collect();
    assert_eq!(edges, [(48.0, Some(Verdict::Out)), (96.0, Some(Verdict::Out))]);
    assert_eq!(row.add.iter().map(|at| at.inches()).collect::<Vec<_>>(), [48.0, 96.0]);
}

#[test]
fn a_pull_that_cannot_be_read_leaves_the_others_their_numbers() {
    let row = drawn(&row(&["16", "hay", "48"], &[]));
    let pulled: Vec<(usize, f64)> = row.pulled.iter().map(|(reading, at)| (*reading, at.inches())).collect();
    assert_eq!(pulled, [(0, 16.0), (2, 48.0)]);
}

#[test]
fn bowed_and_notched_studs() {
    let wall = |studs: &[&str], limit: Option<&str>| {
        json!({"pulls": ["16", "32", "48"], "required_spacing": "16", "studs": "2x4", "bow_limit": limit,
               "studs_found": studs})
    };
    let bowed = answered("stud_spacing", wall(&["32: bowed 3/8"], None));
    assert_eq!(bowed["verdict"], "out");
    assert_eq!(check(&bowed, "Bow of the stud", Some("at 32\""))["margin"], "1/8\" over");
    assert!(texts(&bowed["assumed"], "says").iter().any(|says| says.contains("1/4\" (the strictest list for a wall")));
    assert!(has_remedy(&bowed, "Straighten the stud"));
    assert_eq!(bowed["foremost"]["word"], "bowed too far");
    assert_eq!(answered("stud_spacing", wall(&["32: bowed 3/8"], Some("1/2")))["verdict"], "within");
    // Source: IRC R602.6: a quarter of 3-1/2 in is 7/8 in.
    let notched = answered("stud_spacing", wall(&["48: notched 1"], None));
    assert_eq!(check(&notched, "Notch depth", Some("at 48\""))["limit"], "at most 7/8\"");
    assert_eq!(notched["verdict"], "out");
    let hidden = answered("stud_spacing", wall(&["48: notched could not be seen"], None));
    assert_eq!(
        (&hidden["verdict"], &hidden["not_seen"]),
        (&json!("could not be seen"), &json!(["at 48\": Notch depth."]))
    );
    for wrong in ["48", "48: twisted 1", "48: bowed", "hay: bowed 1"] {
        let refused = ask(&json!({"check": "stud_spacing", "studs_found": [wrong]}));
        assert_eq!(refused["refused"][0]["field"], "studs_found", "{wrong}: {refused}");
    }
}

#[test]
fn a_sheet_may_lap_past_the_plates_end() {
    let wall = |sheet: serde_json::Value| {
        let mut line = json!({"pulls": ["16", "32", "48", "64"], "required_spacing": "16"});
        line.as_object_mut().unwrap().extend(sheet.as_object().unwrap().clone());
        line
    };
    let lapped = answered("stud_spacing", wall(json!({"sheet_past_end": "3-1/2"})));
    assert!(lapped["says"].to_string().contains("Sheet edge at 44-1/2"), "{lapped}");
    let both = ask(&{
        let mut line = wall(json!({"sheet_past_end": "3-1/2", "sheet_start": "16"}));
        line["check"] = json!("stud_spacing");
        line
    });
    assert_eq!(both["refused"][0]["field"], "sheet_past_end");
}

/// Source: field case FC-23's count, along a boundary nailed at 3 in: 33 nails in 8 ft.
#[test]
fn a_boundary_is_a_line_of_its_own() {
    let line = json!({"line": "boundary", "line_length": "8'", "edge_spacing": "6", "boundary_spacing": "3",
                      "driven": "33", "missed": "19"});
    let answer = answered("nailing", line);
    assert_eq!(check(&answer, "Edge nails that hold", None)["limit"], "at least 33");
    // 14 that hold leave 13 spaces in 96 in: 7.38 in, written up to the sixteenth.
    assert_eq!(answer["foremost"]["found"], "7-7/16\"");
    assert_eq!(answer["foremost"]["word"], "too few hold");
    let asks = answered("nailing", json!({"line": "boundary", "line_length": "8'", "driven": "17", "missed": "0"}));
    assert!(asks["assumed"].to_string().contains("Boundary nail spacing: 6"), "{asks}");
}

#[test]
fn bolts_thinner_than_drawn_are_out() {
    let sill = |asked: &str| {
        json!({"bolts": ["6", "48", "90"], "plate_length": "8'", "diameters": ["1/2"], "drawing": "S2.1",
               "required_bolt_diameter": asked})
    };
    let thin = answered("hold_down_point", sill("5/8"));
    assert_eq!(thin["verdict"], "out");
    assert!(thin["checks"].as_array().unwrap().iter().any(|check| check["clause"]["source"] == "drawing S2.1"));
    assert_eq!(thin["foremost"]["word"], "too small");
    assert_ne!(answered("hold_down_point", sill("1/2"))["verdict"], "out");
}

/// A dash is a bolt that nobody looked at: asked about, never passed.
#[test]
fn a_bolt_that_was_not_looked_at_is_not_passed() {
    let sill = json!({"bolts": ["6", "48"], "nuts": ["tight", "-"], "diameters": ["1/2", "-"]});
    let answer = answered("hold_down_point", sill);
    assert_eq!(answer["verdict"], "could not be seen");
    assert!(answer["not_seen"].to_string().contains("bolt 2 at 48"), "{answer}");
}

/// What was confirmed is the text that was asked about: typed otherwise, the pull is asked about again.
#[test]
fn a_pull_that_is_typed_again_is_asked_about_again() {
    let verdict = |pulls: &[&str], confirmed: &str| {
        let wall =
            json!({"pulls": pulls, "pulled": "from_the_end", "required_spacing": "16", "confirmed": [confirmed]});
        answered("stud_spacing", wall)["verdict"].as_str().unwrap().to_owned()
    };
    assert_eq!(verdict(&["16", "17", "32", "48"], "2: 17"), "within");
    assert_eq!(verdict(&["16", "17-1/8", "32", "48"], "2: 17"), "could not be seen");
    assert_eq!(verdict(&["16", "32", "48"], "2: 17"), "within");
    assert_eq!(verdict(&["16", "32", "48"], "9: 17"), "within", "that pull is there no longer");
    let wrong = ask(&json!({"check": "stud_spacing", "pulls": ["16"], "confirmed": ["two: 17"]}));
    assert_eq!(wrong["refused"][0]["field"], "confirmed");
}

#[test]
fn a_problem_names_its_reading() {
    let refused = ask(&json!({"check": "hold_down_point", "bolts": ["6", "48"], "washers": ["cut", "thick"]}));
    let problem = refused["refused"][0]["problem"].as_str().unwrap();
    assert_eq!(which_reading(problem).0, Some(2), "{problem}");
    for (problem, number) in [("Reading 12: no.", Some(12)), ("Reading aloud: no.", None), ("16 is wide.", None)] {
        assert_eq!(which_reading(problem).0, number);
    }
    assert_eq!(which_reading("Reading 3: wide.").1, "wide.");
}

#[test]
fn a_verdict_is_found_by_its_words() {
    for verdict in [Verdict::Within, Verdict::AtLimit, Verdict::NotSeen, Verdict::NotDecided, Verdict::Out] {
        assert_eq!(words::verdict_of(words::verdict(verdict)), Some(verdict));
    }
    assert_eq!(words::verdict_of("fine"), None);
}

/// The share that is used is over 1 exactly when it is out.
#[test]
fn what_is_within_uses_no_more_than_its_limit() {
    let share = |pull: &str| {
        let answer = answered("stud_spacing", json!({"pulls": ["16", pull], "required_spacing": "16"}));
        (answer["foremost"]["share"].as_f64().unwrap(), answer["verdict"].as_str().unwrap().to_owned())
    };
    let (within, verdict) = share("32-1/8");
    assert!(within < 1.0 && verdict == "within", "{within} {verdict}");
    let (at_limit, verdict) = share("32-1/4");
    assert!((at_limit - 1.0).abs() < 1e-9 && verdict == "at the limit", "{at_limit} {verdict}");
    let (out, verdict) = share("33");
    assert!(out > 1.0 && verdict == "out", "{out} {verdict}");
}

proptest! {
    /// Studs that are logged as they are offered stand on their marks: nothing is out but what the sheets ask.
    #[test]
    fn what_is_offered_is_on_the_layout(spacing in prop::sample::select(vec!["12", "16", "19-3/16", "24"]), studs in 1_usize..30) {
        let mut pulls: Vec<String> = Vec::new();
        for _ in 0..studs {
            let typed: Vec<&str> = pulls.iter().map(String::as_str).collect();
            let offered = next_on_layout(&row(&typed, &[("required_spacing", spacing)])).unwrap();
            pulls.push(words::length(offered));
        }
        let line = json!({"pulls": pulls, "required_spacing": spacing, "sheathed": "no"});
        let answer = answered("stud_spacing", line);
        prop_assert_eq!(&answer["verdict"], "within", "{}", answer);
    }

    /// Any texts: a row is drawn of finite places, and what is offered lies past the last pull.
    #[test]
    fn any_row_is_drawn(pulls in prop::collection::vec("[0-9]{1,3}( 1/2)?|-[0-9]|hay", 0..12)) {
        let case = StudSpacingCase { pulls: Some(pulls), ..StudSpacingCase::default() };
        let row = drawn(&case);
        let last = row.pulled.iter().map(|(_, at)| at.inches()).fold(0.0, f64::max);
        prop_assert!(row.next.unwrap().inches() > last);
    }
}
