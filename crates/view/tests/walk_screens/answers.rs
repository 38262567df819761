//! What each kind answers, by the field cases of the core.

use view::model::State;
use view::walk::{Kind, LookScreen};

use crate::{sentences, seventeen, shown};

#[track_caller]
fn is(screen: &LookScreen, state: State, figure: &str, word: &str) {
    let answer = &screen.answer;
    assert_eq!((answer.state, answer.figure.as_str(), answer.word.as_str()), (state, figure, word), "{answer:?}");
    assert!(screen.current);
}

/// Source: field case FC-41.
#[test]
fn studs_at_seventeen_inches_are_too_far_apart() {
    let screen = seventeen();
    is(&screen, State::Short, "17\"", "too far apart");
    assert_eq!(screen.answer.share_text, "Stud spacing: 1\" over 16\"");
    assert!(screen.answer.share.unwrap() > 1.0);
    assert_eq!(screen.verdict, "out");
    assert_eq!(screen.summary, "17\": too far apart. Stud spacing: 1\" over 16\".");
    let action = screen.answer.action.join(" ");
    assert!(action.contains("centred at 48\".") && action.contains("First the engineer must say yes."), "{action}");
    let bay = &screen.checks[0];
    assert_eq!((bay.state, bay.found.as_str(), bay.margin.as_str()), (State::Short, "17\"", "1\" over"));
    // What is out is told first.
    let out = screen.checks.iter().filter(|check| check.state == State::Short).count();
    assert!(out > 1 && screen.checks[..out].iter().all(|check| check.state == State::Short));
    assert!(screen.facts.iter().any(|(what, value, _)| what.starts_with("Studs to add") && value == "48\", 96\""));
}

#[test]
fn a_wall_on_its_layout_is_within() {
    let screen = shown(
        Kind::StudSpacing,
        &[("required_spacing", "16"), ("pulled", "from_the_end"), ("drawing", "S2.1")],
        &[("pulls", &["16", "32", "48", "64"])],
    );
    is(&screen, State::Carries, "16\"", "within");
    assert!(screen.answer.share.unwrap() < 1.0);
    assert_eq!(screen.answer.action, Vec::<String>::new());
    let bay = screen.checks.iter().find(|check| check.subject == "Stud spacing").unwrap();
    assert_eq!(bay.clause, "drawing S2.1");
}

/// Source: field case FC-23: 12 of 17 nails missed in 8 ft at 6 in: 5 hold.
#[test]
fn shiners_say_what_spacing_is_left() {
    let screen = shown(
        Kind::Nailing,
        &[("line", "edge"), ("line_length", "8'"), ("edge_spacing", "6"), ("driven", "17"), ("missed", "12")],
        &[],
    );
    is(&screen, State::Short, "24\"", "too few hold");
    assert_eq!(screen.answer.share_text, "Edge nails that hold: 12 short");
    assert!(screen.answer.action[0].starts_with("Drive 12 good nails"), "{:?}", screen.answer.action);
    assert!(screen.says[0].contains("29.4 %"), "{:?}", screen.says);
}

/// Source: field case FC-21: 14 of 48 edge nails too deep, 7 to add.
#[test]
fn overdriven_nails_are_too_deep() {
    let screen = shown(Kind::Nailing, &[("overdriven", "14"), ("edge_spacing", "6"), ("panel_dry", "yes")], &[]);
    is(&screen, State::Short, "14 of 48", "too deep");
    assert!(screen.answer.action.iter().any(|what| what.starts_with("Add 7 nails")), "{:?}", screen.answer.action);
}

/// Source: field case FC-35: a missing nut in the middle leaves 84 in between bolts that hold.
#[test]
fn a_missing_nut_leaves_bolts_too_far_apart() {
    let screen = shown(
        Kind::HoldDownPoint,
        &[("plate", "2x4"), ("plate_length", "8'"), ("stud_in_the_way", "no")],
        &[
            ("bolts", &["6", "48", "90"]),
            ("diameters", &["1/2"]),
            ("embedments", &["7-1/4", "7-1/4", "7-1/4"]),
            ("projections", &["2-1/2", "2-1/2", "2-1/2"]),
            ("nuts", &["tight", "missing", "tight"]),
            ("washers", &["cut", "cut", "cut"]),
            ("from_faces", &["1-3/4", "1-3/4", "1-3/4"]),
        ],
    );
    is(&screen, State::Short, "84\"", "too far apart");
    assert!(screen.says.iter().any(|says| says.contains("bolt 2 at 48")), "{:?}", screen.says);
}

/// Source: field case FC-31: a nut that is loose is plainly wrong; no number says so.
#[test]
fn a_loose_nut_is_not_tight() {
    let screen = shown(
        Kind::HoldDownPoint,
        &[("looking_at", "hold_down"), ("thread", "flush or proud"), ("off_the_post", "no")],
        &[("nuts", &["loose"])],
    );
    is(&screen, State::Short, "Nut", "not tight");
    assert_eq!(screen.answer.share, None);
    assert!(screen.answer.action.iter().any(|what| what == "Tighten the nut."), "{:?}", screen.answer.action);
    let low = shown(
        Kind::HoldDownPoint,
        &[("looking_at", "hold_down"), ("thread", "1/4"), ("off_the_post", "no")],
        &[("nuts", &["tight"])],
    );
    is(&low, State::Short, "1/4\"", "not engaged");
}

/// Source: field case FC-37: 334 lb on toe nails that hold 200; a tie inside the wall.
#[test]
fn a_roof_tie_in_the_trades_words() {
    let held = |held: &[(&str, &str)]| {
        let tie = [("looking_at", "roof_tie"), ("required_uplift", "334"), ("tie_spacing", "24")];
        shown(Kind::HoldDownPoint, &[&tie[..], held].concat(), &[])
    };
    let toed = held(&[("held_by", "toe_nails")]);
    is(&toed, State::Short, "200 of 334 lb", "too weak");
    assert_eq!(toed.answer.share_text, "Uplift on the connection: 134 lb over");
    assert!(toed.facts.iter().any(|(what, value, _)| what.contains("wall's top") && value.starts_with("167 plf")));
    let inside = held(&[("held_by", "tie"), ("tie_side", "inside"), ("listed_uplift", "500 lb")]);
    is(&inside, State::Short, "Side of the tie", "inside the wall");
    assert!(inside.answer.action.iter().any(|what| what == "Nail a tie to the sheathed side."));
    let good = held(&[("held_by", "tie"), ("tie_side", "sheathed"), ("listed_uplift", "500 lb")]);
    is(&good, State::Carries, "334 lb", "within");
    let few = [("held_by", "tie"), ("tie_side", "sheathed"), ("listed_uplift", "500"), ("fasteners", "7")];
    is(&held(&[&few[..], &[("required_nails", "10")]].concat()), State::Short, "7", "too few nails");
    assert_eq!(held(&[]).answer.word, "still to be measured");
}

/// Source: common practice: the side of a strap that has fewer nails is counted.
#[test]
fn a_strap_in_the_trades_words() {
    let strap = |found, flat| {
        let strap = [("looking_at", "strap"), ("required_nails", "14"), ("fasteners", found), ("lies_flat", flat)];
        shown(Kind::HoldDownPoint, &strap, &[])
    };
    is(&strap("12", "yes"), State::Short, "12", "too few nails");
    is(&strap("14", "yes"), State::Carries, "14", "within");
    let bowed = strap("14", "no");
    is(&bowed, State::Short, "How the strap lies", "not flat and straight");
    assert!(bowed.answer.action.iter().any(|what| what.contains("the maker must say yes")), "{:?}", bowed.answer);
    assert_eq!(strap("14", "could not be seen").answer.word, "could not be seen");
}

/// Source: field case FC-39: a 3 in hole in a 4 in stud; 1.6 in is the most.
#[test]
fn a_hole_too_wide_is_told_with_its_clause() {
    let screen = shown(
        Kind::NotchFound,
        &[("member", "stud"), ("member_width", "4"), ("hole_diameter", "3"), ("wall", "exterior_or_bearing")],
        &[],
    );
    is(&screen, State::Short, "3\"", "too wide");
    assert_eq!(screen.checks[0].limit, "at most 1-9/16\" (1.6 in)");
    assert!(screen.checks[0].clause.starts_with("IRC 2021 R602.6"), "{:?}", screen.checks[0]);
    assert!(screen.answer.action.iter().any(|what| what.contains("the engineer must say yes")));
    let engineered = shown(Kind::NotchFound, &[("member", "engineered"), ("hole_diameter", "3")], &[]);
    assert_eq!(engineered.answer.state, State::Outside);
    assert_eq!(engineered.answer.word, "not for this tool to decide");
    assert_eq!(engineered.left_to[0].1, "maker");
}

/// Source: the lists of tolerances in `inspection::plane`.
#[test]
fn a_wall_out_of_plumb() {
    let screen = shown(Kind::Flatness, &[("looking_at", "plumb"), ("out", "1/4"), ("over", "8'")], &[]);
    is(&screen, State::Short, "1/4\"", "out of plumb");
    let at_limit = shown(Kind::Flatness, &[], &[("distances", &["1", "1-1/8"])]);
    is(&at_limit, State::AtLimit, "1/8\"", "at the limit");
    assert!((at_limit.answer.share.unwrap() - 1.0).abs() < 1e-9);
}

/// Source: field case FC-57: 22 % where 18 are the most.
#[test]
fn a_plate_too_wet() {
    let screen = shown(
        Kind::Moisture,
        &[("meter", "pin meter"), ("species_setting", "SPF")],
        &[("places", &["plate", "stud low", "stud high"]), ("visits", &["22, 19, 17"])],
    );
    is(&screen, State::Short, "22 %", "too wet");
    assert_eq!(screen.answer.share_text, "Moisture content, visit 1, plate: 4 points over");
}

/// Nothing typed is no answer; what was hidden is one.
#[test]
fn what_was_not_measured_and_what_was_hidden_are_told_apart() {
    for kind in Kind::ALL {
        let nothing = shown(kind, &[], &[]);
        is(&nothing, State::NotKnown, kind.word(), "still to be measured");
        assert_eq!((nothing.answer.share, nothing.verdict.as_str()), (None, "could not be seen"));
        assert!(!nothing.questions.is_empty(), "{kind:?}");
    }
    let hidden = shown(
        Kind::Nailing,
        &[("line_length", "8'"), ("edge_spacing", "6"), ("driven", "17"), ("missed", "could not be seen")],
        &[],
    );
    assert_eq!((hidden.answer.state, hidden.answer.word.as_str()), (State::NotKnown, "could not be seen"));
    assert_eq!(hidden.not_seen, ["Edge nails that hold."]);
}

#[test]
fn a_doubtful_pull_is_no_answer() {
    let pulls: &[&str] = &["16", "32", "84", "64", "80"];
    let screen = shown(Kind::StudSpacing, &[("required_spacing", "16")], &[("pulls", pulls)]);
    assert_eq!((screen.answer.state, screen.answer.word.as_str()), (State::NotKnown, "a reading is asked about"));
}

#[test]
fn sentences_are_plain() {
    let screens = [
        seventeen(),
        shown(Kind::StudSpacing, &[("carries", "two_floors_and_roof")], &[("pulls", &["16", "32", "84", "hay"])]),
        shown(Kind::StudSpacing, &[], &[("pulls", &["16", "33"]), ("doubles", &["33: 1 of 2"])]),
        shown(Kind::Nailing, &[("found_nail", "2-3/8 x .113"), ("required_nail", "8d common")], &[]),
        shown(Kind::Nailing, &[("driven", "17"), ("missed", "12"), ("line_length", "8'")], &[]),
        shown(Kind::HoldDownPoint, &[("plate_length", "8'")], &[("bolts", &["6", "48"]), ("nuts", &["loose"])]),
        shown(Kind::HoldDownPoint, &[("looking_at", "hold_down"), ("thread", "no")], &[]),
        shown(Kind::HoldDownPoint, &[("held_by", "tie"), ("tie_side", "inside")], &[]),
        shown(Kind::HoldDownPoint, &[("held_by", "toe_nails"), ("required_uplift", "334"), ("tie_spacing", "24")], &[]),
        shown(Kind::HoldDownPoint, &[("lies_flat", "no"), ("fasteners", "12"), ("listed_uplift", "900")], &[]),
        shown(Kind::NotchFound, &[("member", "top_plate"), ("hole_diameter", "3"), ("tie", "none")], &[]),
        shown(Kind::NotchFound, &[("member", "joist"), ("notch_depth", "1")], &[]),
        shown(Kind::Flatness, &[("out", "1"), ("over", "32")], &[]),
        shown(Kind::Moisture, &[], &[("visits", &["May: 22, -"])]),
    ];
    for screen in &screens {
        for sentence in sentences(screen) {
            assert!(!sentence.contains('!') && !sentence.to_lowercase().contains("please"), "{sentence}");
            assert!(sentence.ends_with('.') || sentence.ends_with('?'), "{sentence}");
            assert!(!sentence.contains("  ") && !sentence.contains(".."), "{sentence}");
        }
    }
}
