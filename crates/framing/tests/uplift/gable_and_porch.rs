//! A gable end with its overhang, and the posts of a porch.

use framing::bracing::NOT_ENOUGH;

use crate::{Inputs, answered, asks, link, near, outcome, says, with};

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
