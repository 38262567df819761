//! The path of uplift: of a wall with its roof sheathing and its panels, of a gable end, of a porch. Vectors of our own are
//! marked so; the others name where they stand.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::collections::BTreeMap;

use framing::bracing::{BracingKind, NOT_ENOUGH, TIES_ON_THE_WRONG_SIDE, counts_in_uplift};
use framing::check::check_line;
use framing::quick::reply::QuickReply;
use framing::quick::{NOT_ALLOWED, QuickKind as _, QuickOutcome, derive};
use framing::reply::CheckReply;
use framing::site::Nothing;
use proptest::prelude::*;

type Inputs<'a> = &'a [(&'a str, &'a str)];

fn outcome(fields: Inputs<'_>) -> QuickOutcome {
    let case: BTreeMap<String, String> =
        fields.iter().map(|(field, text)| ((*field).to_owned(), (*text).to_owned())).collect();
    derive(BracingKind::Uplift, &case, &Nothing)
}

fn answered(fields: Inputs<'_>) -> QuickReply {
    let outcome = outcome(fields);
    assert_eq!(outcome.refusals(), [], "{fields:?}");
    outcome.answered.unwrap()
}

fn with(fields: Inputs<'_>, more: Inputs<'_>) -> QuickReply {
    answered(&[fields, more].concat())
}

fn link<'a>(reply: &'a QuickReply, name: &str) -> &'a CheckReply {
    reply.checks.iter().find(|check| check.limit == name).unwrap()
}

fn asks(reply: &QuickReply, input: &str) -> bool {
    reply.about.questions.iter().any(|(of, _)| of == input)
}

fn says(reply: &QuickReply, text: &str) -> bool {
    reply.about.says.iter().chain(&reply.action).chain(&reply.about.outside).any(|says| says.contains(text))
}

#[track_caller]
fn near(found: f64, expected: f64) {
    assert!((found - expected).abs() < 1e-6, "{found} against {expected}");
}

const TRUSSES: Inputs<'_> = &[
    ("wind_speed", "130"),
    ("exposure", "B"),
    ("house_width", "28'"),
    ("roof_pitch", "4/12"),
    ("eave_overhang", "2'"),
    ("bolt_every", "12\""),
];
const STRAPPED: Inputs<'_> = &[("plate_tie", "5,000 lb"), ("sill_tie", "5,000 lb"), ("bolt_washer", "plate")];

/// Field case FC-37: trusses at 24 in over 28 ft, under 5:12, 130 mph, Exposure B: 334 lb by the table, 306 lb from 5:12 on.
/// However many toe nails there are, the code lets them take 200 lb.
#[test]
fn toe_nails_of_a_truss_past_their_limit() {
    let reply = with(TRUSSES, &[("rafter_tie", "20 16d common")]);
    near(link(&reply, "rafter to plate").capacity, 200.0);
    assert_eq!(reply.verdict, NOT_ENOUGH);
    let rule = |reply: &QuickReply, heading: &str| reply.by_code.iter().find(|rule| rule.heading == heading).cloned();
    assert_eq!(rule(&reply, "Table of ties").unwrap().figure, "334 lb each");
    let toe = rule(&reply, "Toe nails at the roof").unwrap();
    assert!(toe.holds == Some(false) && toe.says[0].starts_with("334 lb is more than the 200 lb"), "{toe:?}");
    let steeper = with(TRUSSES, &[("rafter_tie", "3 8d common"), ("roof_pitch", "5/12")]);
    assert!(rule(&steeper, "Toe nails at the roof").unwrap().says[0].starts_with("306 lb"));
    // A roof so heavy that nothing lifts it by the wind standard: the code's table, which counts 15 psf, still asks for a tie.
    let heavy = with(TRUSSES, &[("rafter_tie", "3 8d common"), ("roof_dead", "40")]);
    assert_eq!(heavy.verdict, NOT_ALLOWED);
    assert!(heavy.action[0].contains("set a tie"), "{:?}", heavy.action);
    // A drawing's uplift goes before the table's: 90 plf on trusses at 24 in is 180 lb.
    let drawn = with(TRUSSES, &[("rafter_tie", "8 16d common"), ("uplift_given", "90")]);
    assert_eq!(rule(&drawn, "Toe nails at the roof").unwrap().holds, Some(true));
    assert!(rule(&with(TRUSSES, &[("rafter_tie", "900 lb")]), "Toe nails at the roof").is_none());
}

/// Field case FC-37: a tie on the inside of the plate rolls it and leaves the sheathing out; the side is asked for.
#[test]
fn ties_on_the_inside_of_the_plate() {
    let tied = [TRUSSES, STRAPPED, &[("rafter_tie", "2,000 lb")]].concat();
    let asked = answered(&tied);
    assert!(asks(&asked, "rafter_tie_side") && !asks(&asked, "plate_tie_side"), "{:?}", asked.about.questions);
    let inside = with(&tied, &[("rafter_tie_side", "inside")]);
    assert_eq!(inside.verdict, TIES_ON_THE_WRONG_SIDE);
    assert!(asks(&inside, "plate_tie_side") && says(&inside, "they roll it"), "{:?}", inside.action);
    for (above, below, rolls) in [
        ("inside", "sheathed", true),
        ("sheathed", "inside", true),
        ("inside", "inside", false),
        ("sheathed", "sheathed", false),
    ] {
        let reply = with(&tied, &[("rafter_tie_side", above), ("plate_tie_side", below)]);
        assert_eq!(reply.verdict == TIES_ON_THE_WRONG_SIDE, rolls, "{above} over {below}: {}", reply.verdict);
    }
    // Panels are on the sheathed side, and nails in the end of a stud do not stop the roll.
    for below in ["panels", "3 16d common"] {
        let small =
            [("uplift_given", "40"), ("rafter_tie_side", "inside"), ("plate_tie", below), ("sill_tie", "panels")];
        assert_eq!(with(&tied, &small).verdict, TIES_ON_THE_WRONG_SIDE, "{below}");
    }
    assert_eq!(with(&tied, &[("rafter_tie", "100 lb"), ("rafter_tie_side", "inside")]).verdict, NOT_ENOUGH);
}

const PANELS: Inputs<'_> = &[
    ("uplift_given", "200"),
    ("rafter_tie", "900 lb"),
    ("plate_tie", "panels"),
    ("sill_tie", "Panels"),
    ("bolt_every", "16\""),
    ("bolt_washer", "plate"),
    ("species", "DF-L"),
    ("lap_panels", "7/16 8d 6"),
    ("lap_rows", "2"),
    ("lap_every", "4\""),
];

/// Source: SDPWS 2015 Table 4.4.1 (from memory): 8d at 6 in for the shear and two rows at 4 in, 864 plf, by half 432 plf; Table
/// 4.4.2 (from memory): without shear 2 x 624, by half 624 plf.
#[test]
fn panels_that_lap_the_plates() {
    let both = with(PANELS, &[("lap_shear", "200")]);
    for name in ["plate to stud", "stud to sill"] {
        near(link(&both, name).capacity, 432.0);
        near(link(&both, name).demand, 200.0);
    }
    assert!(both.verdict == "carries it" && says(&both, "take their shear too"), "{}", both.verdict);
    near(link(&with(PANELS, &[("lap_shear", "0")]), "plate to stud").capacity, 624.0);
    let not_said = answered(PANELS);
    assert!(asks(&not_said, "lap_shear") && !asks(&not_said, "plate_tie"), "{:?}", not_said.about.questions);
    assert_eq!(not_said.verdict, "Plate to stud?");
}

/// What the tables do not have may not count, and says why; without nails for uplift the schedule's nailing is path to 100 plf.
#[test]
fn panels_outside_the_tables() {
    for (field, text, why) in [
        ("lap_shear", "800", "a shear of 800 plf"),
        ("lap_every", "5\"", "nails at 5 in"),
        ("lap_panels", "7/16 8d 3", "shear nailing at 6 in"),
        ("lap_panels", "3/8 8d 6", "7/16 in and thicker"),
        ("bolt_every", "48\"", "bolts at 16 in or less"),
        ("bolt_washer", "cut", "plate washers"),
    ] {
        let mut fields: Vec<_> = PANELS.iter().copied().filter(|(of, _)| *of != field).collect();
        fields.extend([("lap_shear", "200")].into_iter().filter(|(of, _)| *of != field));
        fields.push((field, text));
        let reply = answered(&fields);
        assert_eq!(reply.verdict, NOT_ENOUGH, "{field} {text}");
        assert!(says(&reply, why), "{field} {text}: {:?}", reply.about.says);
    }
    let refused = outcome(&[PANELS, &[("lap_panels", "brick")]].concat()).refusals();
    assert!(refused.iter().any(|one| one.field == "lap_panels"), "{refused:?}");
    let schedule: Vec<_> = PANELS.iter().copied().filter(|(of, _)| !of.starts_with("lap")).collect();
    assert!(says(&answered(&schedule), "100 plf"));
}

const DECK: Inputs<'_> = &[("deck_nail", "8d common"), ("rafter_every", "24\""), ("deck_every", "6\"")];

/// Source: FEMA P-55 Volume II, Example 9.1, with the true penetration: an 8d common through 7/16 in into wood of 0.42 holds
/// 68.2 lb in wind. *Own*: 50 psf on 2 ft by 6 in is 50 lb.
#[test]
fn nails_of_the_roof_sheathing() {
    let reply = with(DECK, &[("deck_suction", "50"), ("species", "SPF")]);
    let nail = link(&reply, "sheathing to rafter");
    near(nail.demand, 50.0);
    assert!((nail.capacity - 68.2).abs() < 0.05, "{}", nail.capacity);
    assert!(reply.about.working.iter().any(|part| part.heading.contains("roof sheathing")));
    let ringed = with(DECK, &[("deck_suction", "50"), ("deck_shank", "ring")]);
    assert!(link(&ringed, "sheathing to rafter").capacity > nail.capacity);
    // Through thin plywood the head comes first: NDS 2018 12.2.5 (from memory), 690 pi D G² t with a head of 0.281 in.
    let thin =
        with(DECK, &[("deck_suction", "50"), ("deck_thick", "5/16"), ("species", "SP"), ("deck_panel", "plywood")]);
    let head = core::f64::consts::PI * 0.281 * 0.3125 * 690.0 * 0.42 * 0.42 * 1.6;
    assert!((link(&thin, "sheathing to rafter").capacity - head).abs() < 0.5, "{head}");
    assert!(asks(&answered(&[]), "deck_nail"));
    for (nail, field) in [("a long one", "deck_nail"), ("0.113 x 3/4", "deck_nail")] {
        let refused = outcome(&[("deck_nail", nail)]).refusals();
        assert!(refused.iter().any(|one| one.field == field), "{nail}: {refused:?}");
    }
}

/// Where nothing was typed the suction is Site's, the hardest of the roof and its overhangs; away from edges that of zone 1.
#[test]
fn the_suction_is_sites() {
    let line = check_line(r#"{"check":"wind","wind_speed":"120","exposure":"C"}"#);
    let site: serde_json::Value = serde_json::from_str(&line).unwrap();
    let most = |parts: &[&str], zone: Option<&str>| {
        let of = |one: &&serde_json::Value| {
            parts.contains(&one["part"].as_str().unwrap()) && zone.is_none_or(|zone| one["zone"] == zone)
        };
        let all = site["pressures"].as_array().unwrap().iter().filter(of);
        all.map(|one| one["outward_psf"].as_f64().unwrap()).fold(0.0, f64::max)
    };
    let fields = [DECK, &[("wind_speed", "120"), ("exposure", "C")]].concat();
    near(link(&answered(&fields), "sheathing to rafter").demand, most(&["roof", "overhang"], None));
    let field = with(&fields, &[("deck_zone", "field")]);
    near(link(&field, "sheathing to rafter").demand, most(&["roof"], Some("1")));
    let open = with(&fields, &[("open_side", "yes"), ("uplift_given", "90")]);
    assert!(asks(&open, "deck_suction") && says(&open, "engineer"), "{:?}", open.about.questions);
    assert!(open.fact("sheathing_to_rafter_lb").is_none());
}

/// *Own*: 40 psf on 18 in beyond a 30 ft roof adds 61.5 plf to what the drawing gives.
#[test]
fn an_eave_that_the_drawing_has_not_counted() {
    let eave = [("uplift_given", "100"), ("eave_lift", "40"), ("eave_overhang", "18\""), ("house_width", "30'")];
    near(answered(&eave).fact("uplift_plf").unwrap(), 161.5);
    assert!(with(&eave, &[("eave_overhang", "3'")]).reason.unwrap().contains("24 in"));
}

const GABLE: Inputs<'_> = &[
    ("uplift_of", "gable"),
    ("rake_lift", "54.8"),
    ("rake_roof_lift", "34.8"),
    ("roof_dead", "10"),
    ("roof_pitch", "6/12"),
    ("rake_overhang", "2'"),
    ("outlooker_back", "4'"),
    ("outlooker_every", "24\""),
];

/// *Own*: at 6 in 12 the square of the cosine is 0.8, so that 10 psf of roof take off 4.8 psf: 50 psf on 2 ft and 30 psf on 4 ft
/// behind it, outlookers at 24 in: 250 + 120 lb at the wall and 120 - 50 lb at the truss; a foot of wall 185 plf.
#[test]
fn a_gable_end_and_its_overhang() {
    let reply = with(GABLE, &[("outlooker_tie", "400 lb"), ("outlooker_inner_tie", "none"), ("plate_tie", "200 lb")]);
    near(reply.fact("outlooker_to_plate_lb").unwrap(), 370.0);
    near(reply.fact("outlooker_to_truss_lb").unwrap(), 70.0);
    near(reply.fact("uplift_plf").unwrap(), 185.0);
    near(link(&reply, "plate to stud").demand, 185.0 * 16.0 / 12.0);
    assert_eq!((reply.verdict.as_str(), reply.governs.as_deref()), (NOT_ENOUGH, Some("outlooker to truss")));
    assert!(reply.by_code.is_empty() && says(&reply, "not in the code's table"));
    assert!(asks(&reply, "rafter_tie_side") && asks(&reply, "sill_tie"));
    // Long overhangs press their inner ends down: 50 psf on 2 ft with nothing behind.
    let pressed = with(GABLE, &[("rake_roof_lift", "0"), ("outlooker_inner_tie", "none")]);
    near(pressed.fact("outlooker_to_truss_lb").unwrap(), 0.0);
    assert!(says(&pressed, "pressed down"));
}

/// No lift typed: Site's, on the area that an outlooker carries; its overhang takes both faces.
#[test]
fn a_gable_end_in_the_wind_of_the_place() {
    let at = |speed| answered(&[("uplift_of", "gable"), ("wind_speed", speed)]);
    let (less, more) = (at("120"), at("140"));
    assert!(less.fact("rake_psf") > Some(0.0) && more.fact("rake_psf") > less.fact("rake_psf"));
}

/// Past its limits no number is given, and who decides is said.
#[test]
fn gable_ends_that_no_rule_reaches() {
    for (field, text, why) in [
        ("rake_overhang", "25\"", "engineer"),
        ("outlooker_back", "18\"", "backspan"),
        ("rake_held", "ladder", "engineer"),
    ] {
        let reply = with(GABLE, &[(field, text)]);
        assert_eq!(reply.verdict, "not for this tool to decide", "{field} {text}");
        assert!(reply.facts.is_empty() && reply.reason.unwrap().contains(why), "{field} {text}");
    }
    let hip = answered(&[("uplift_of", "gable"), ("roof_kind", "hip")]);
    assert!(hip.reason.unwrap().contains("no gable end"));
}

const PORCH: Inputs<'_> = &[("uplift_of", "porch"), ("porch_uplift", "150"), ("porch_bays", "8', 10'")];

/// *Own*: bays of 8 and 10 ft under 150 plf, the beam cut: 600, 1,350 and 750 lb; 2,250 lb of footing hold the middle one. A
/// beam that runs through over two spans has (64 - 80 + 100) / 320 more there, 1,704.375 lb.
#[test]
fn posts_of_a_porch() {
    let held = [("post_top_tie", "1,400 lb"), ("post_base_tie", "1,500 lb"), ("porch_rafter_tie", "400 lb")];
    let cut = with(&[PORCH, &held].concat(), &[("porch_beam", "cut"), ("footing_weighs", "2,250")]);
    let posts: Vec<&str> = cut.tables[1].rows.iter().map(|row| row[1].as_str()).collect();
    assert_eq!(posts, ["600 lb", "1,350 lb", "750 lb"]);
    near(link(&cut, "weight of the footing").ratio, 1.0);
    near(link(&cut, "rafter to beam").demand, 300.0);
    assert_eq!(cut.verdict, "at the limit");
    let through = with(&[PORCH, &held].concat(), &[("footing_weighs", "2,250")]);
    near(link(&through, "beam to post").demand, 1704.375);
    assert_eq!((through.verdict.as_str(), through.governs.as_deref()), (NOT_ENOUGH, Some("weight of the footing")));
    assert!(says(&through, "2,841 lb of concrete and earth"), "{:?}", through.action);
}

/// Source: a beam over two like spans, any table of beams: the middle takes 1.25 w l. *Own*: 25 psf on 8 ft and 1 ft over the beam,
/// 25 x 81 / 16 plf; the house has the rest of 225 plf.
#[test]
fn a_porch_from_the_lift_on_its_roof() {
    let reply = answered(&[("uplift_of", "porch"), ("porch_lift", "25"), ("porch_bays", "8', 8'")]);
    near(reply.fact("uplift_plf").unwrap(), 126.5625);
    near(reply.fact("at_house_plf").unwrap(), 225.0 - 126.5625);
    near(reply.fact("post_lb").unwrap(), 126.5625 * 8.0 * 1.25);
    for input in ["porch_rafter_tie", "post_top_tie", "post_base_tie", "footing_weighs", "deck_nail"] {
        assert!(asks(&reply, input), "{input}");
    }
    let drawn = answered(&[("uplift_of", "porch"), ("post_pull", "900"), ("footing_weighs", "0")]);
    near(drawn.fact("footing_needs_lb").unwrap(), 1500.0);
    assert_eq!((drawn.verdict.as_str(), drawn.governs.as_deref()), (NOT_ENOUGH, Some("weight of the footing")));
}

/// The wind under an open porch is nobody's but an engineer's; so is a beam that runs through over unlike bays.
#[test]
fn porches_that_no_rule_reaches() {
    for (more, input) in [
        (&[("uplift_of", "porch")][..], "porch_lift"),
        (&[("uplift_of", "porch"), ("porch_uplift", "150"), ("porch_bays", "8', 10', 8'")], "post_pull"),
        (&[("uplift_of", "porch"), ("porch_lift", "30"), ("porch_deep", "4'"), ("porch_out", "3'")], "porch_lift"),
    ] {
        let reply = answered(more);
        assert_eq!(reply.verdict, "not for this tool to decide", "{more:?}");
        assert!(asks(&reply, input) && reply.facts.is_empty() && reply.reason.is_some(), "{more:?}");
    }
    let refused = outcome(&[("uplift_of", "porch"), ("porch_bays", "40'")]).refusals();
    assert!(refused.iter().any(|one| one.field == "porch_bays"), "{refused:?}");
}

/// Each input counts somewhere; what is not of the thing that is lifted is neither assumed nor asked.
#[test]
fn inputs_count_where_they_matter() {
    let cases: [Inputs<'_>; 4] = [
        &[
            ("uplift_given", "90"),
            ("rafter_tie", "500 lb"),
            ("plate_tie", "500 lb"),
            ("sill_tie", "panels"),
            ("uplift_storeys", "2"),
            ("uplift_opening", "6'"),
            ("lap_panels", "7/16 8d 6"),
            ("deck_nail", "8d common"),
            ("deck_shank", "ring"),
        ],
        &[],
        &[("uplift_of", "gable")],
        &[("uplift_of", "porch")],
    ];
    let counted = |id: &str| cases.iter().any(|case| counts_in_uplift(id, &outcome(case).reading));
    for id in BracingKind::Uplift.fields() {
        assert!(counted(id), "{id} counts nowhere");
    }
    for (id, case) in [("rafter_tie", 2), ("bolt_every", 3), ("wind_speed", 3), ("porch_bays", 1), ("rake_held", 0)] {
        assert!(!counts_in_uplift(id, &outcome(cases[case]).reading), "{id} in {:?}", cases[case]);
    }
}

fn any_case() -> impl Strategy<Value = Vec<(&'static str, &'static str)>> {
    let texts = prop::sample::select(vec![
        "wall",
        "gable",
        "porch",
        "inside",
        "sheathed",
        "panels",
        "none",
        "500 lb",
        "3 8d common",
        "8d common",
        "ring",
        "2",
        "ladder",
        "cut",
        "24",
        "6",
        "60",
        "7/16 8d 6",
        "yes",
    ]);
    let of = ["wall", "gable", "porch"].map(|of| ("uplift_of", of));
    let more = prop::collection::vec((prop::sample::select(BracingKind::Uplift.fields().to_vec()), texts), 0..10);
    (prop::sample::select(of.to_vec()), more).prop_map(|(of, more)| {
        let mut fields = vec![of];
        fields.extend(more.into_iter().filter(|(id, _)| *id != "uplift_of"));
        fields
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// The weakest link decides: no check is used more than the answer says. What is asked or assumed is there to be typed.
    #[test]
    fn the_weakest_link_decides(fields in any_case()) {
        let outcome = outcome(&fields);
        if let Some(reply) = &outcome.answered {
            let most = reply.checks.iter().map(|check| check.ratio).fold(0.0, f64::max);
            prop_assert!(reply.verdict == NOT_ENOUGH || most <= 1.0 + 1e-9, "{} {most}", reply.verdict);
            if let Some(ratio) = reply.ratio.filter(|_| !reply.checks.is_empty()) {
                prop_assert!((ratio - most).abs() < 1e-9, "{ratio} {most}");
            }
            let asked = reply.about.questions.iter().map(|(id, _)| id);
            for id in asked.chain(reply.about.assumed.iter().filter_map(|one| one.input.as_ref())) {
                prop_assert!(counts_in_uplift(id, &outcome.reading), "{id} {fields:?}");
            }
        }
    }

    /// More lift never makes a link stronger, and never lets one be used less.
    #[test]
    fn more_lift_is_never_easier(lift in 5.0..100.0_f64, more in 0.5..60.0_f64) {
        let ties = [("outlooker_tie", "400 lb"), ("outlooker_inner_tie", "300 lb"), ("plate_tie", "3 16d common"), ("sill_tie", "500 lb"),
            ("rafter_tie", "6 16d common"), ("post_top_tie", "900 lb"), ("post_base_tie", "900 lb"), ("footing_weighs", "1,000"),
            ("porch_rafter_tie", "3 8d common"), ("deck_nail", "8d common"), ("rake_roof_lift", "30")];
        for (of, input) in [("wall", "uplift_given"), ("wall", "deck_suction"), ("gable", "rake_lift"), ("porch", "porch_lift")] {
            let at = |lift: f64| {
                let lift = format!("{lift:.2}");
                with(&ties, &[("uplift_of", of), ("uplift_given", "120"), ("deck_suction", "20"), (input, lift.as_str())])
            };
            let (less, more) = (at(lift), at(lift + more));
            for check in &less.checks {
                let harder = more.checks.iter().find(|other| other.limit == check.limit);
                // The inner end of an outlooker is the one that the overhang presses down.
                if check.limit != "outlooker to truss" {
                    let harder = harder.unwrap();
                    prop_assert!(harder.ratio >= check.ratio - 1e-12 && harder.capacity <= check.capacity, "{of} {}", check.limit);
                }
            }
        }
    }
}
