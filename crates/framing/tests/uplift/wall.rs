//! A wall under rafters: its ties and their sides, its panels, its roof sheathing, its eave.

use framing::bracing::{NOT_ENOUGH, TIES_ON_THE_WRONG_SIDE};
use framing::check::check_line;
use framing::quick::NOT_ALLOWED;
use framing::quick::reply::QuickReply;

use crate::{Inputs, answered, asks, link, near, outcome, says, with};

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
