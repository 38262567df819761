//! The path of uplift: of a wall with its roof sheathing and its panels, of a gable end, of a porch. Vectors of our own are
//! marked so; the others name where they stand.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

#[path = "uplift/gable_and_porch.rs"]
mod gable_and_porch;
#[path = "uplift/wall.rs"]
mod wall;

use std::collections::BTreeMap;

use framing::bracing::{BracingKind, NOT_ENOUGH, counts_in_uplift};
use framing::quick::reply::QuickReply;
use framing::quick::{QuickKind as _, QuickOutcome, derive};
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
            ("salt_water", "0.5 miles"),
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
