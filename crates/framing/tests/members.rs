//! Members beside the header: what may be typed, and what is said of the rest.

use std::collections::BTreeMap;

use framing::check::check_line;
use framing::field::{Kind, MEMBER_FIELDS, Unsaid};
use framing::member::MemberKind;
use framing::quick::{QuickKind as _, derive};
use framing::reading::Origin;
use framing::site::Nothing;
use proptest::prelude::*;

/// Texts that are nearly right more often than chance would make them.
fn any_text() -> impl Strategy<Value = String> {
    prop_oneof![
        any::<String>(),
        "[0-9]{1,3}( [0-9]/[0-9]{1,2})?('|\"| mm| lb| plf| psf| psi)?",
        "[0-9]{1,2}' ?[0-9]{0,2}(, [0-9]{1,2}')?",
        "(D|L|Lr|S|W|-W) [0-9]{1,4}( to [0-9]{1,4})? (plf|lb)( at [0-9]{1,2}'| from [0-9]' to [0-9]{1,2}')?",
        prop::sample::select(vec![
            "yes",
            "no",
            "0",
            "1",
            "2",
            "notch",
            "hole",
            "top",
            "bottom",
            "plate",
            "raised",
            "ridge",
            "floor",
            "ceiling",
            "flush",
            "dropped",
            "outer",
            "inner",
            "nothing",
            "hip",
            "valley",
            "2x4",
            "2x10",
            "2-2x12",
            "6x6",
            "3-2x6",
            "No. 3",
            "SP",
            "HF",
            "stud",
            "6/12",
            "0/12",
            "24/12",
            "1/12",
            "wet",
            "0.207 x 4-1/2",
            "16d",
            "B",
            "D",
            "asce7_22",
            "shed",
            "flat",
            "2-1-3/4x11-7/8 LVL",
        ])
        .prop_map(str::to_owned),
    ]
}

/// A case of a kind: some of its inputs, each with some text.
fn any_case() -> impl Strategy<Value = (MemberKind, Case)> {
    prop::sample::select(MemberKind::ALL.to_vec()).prop_flat_map(|kind| {
        let text = prop::collection::btree_map(prop::sample::select(kind.fields().to_vec()), any_text(), 0..6);
        text.prop_map(move |of| (kind, of.into_iter().map(|(field, text)| (field.to_owned(), text)).collect()))
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    /// Whatever is typed is answered or refused; an answer has finite numbers, and a refusal names its input.
    #[test]
    fn any_case_is_answered_or_refused((kind, case) in any_case()) {
        let outcome = derive(kind, &case, &Nothing);
        match &outcome.answered {
            Some(reply) => {
                prop_assert!(reply.facts.iter().all(|fact| fact.value.is_finite()), "{:?}", reply.facts);
                prop_assert!(reply.checks.iter().all(|check| check.ratio.is_finite()), "{:?}", reply.checks);
                prop_assert!(!reply.verdict.is_empty());
            }
            None => prop_assert!(!outcome.refusals().is_empty(), "{} {case:?}", kind.id()),
        }
        let mut line = serde_json::json!(case);
        line["check"] = serde_json::json!(kind.id());
        let answer = check_line(&line.to_string());
        prop_assert!(serde_json::from_str::<serde_json::Value>(&answer).is_ok());
    }
}

type Case = BTreeMap<String, String>;

fn case(fields: &[(&str, &str)]) -> Case {
    fields.iter().map(|(field, text)| ((*field).to_owned(), (*text).to_owned())).collect()
}

#[test]
fn every_input_is_described_once_and_belongs_to_a_kind() {
    for (index, spec) in MEMBER_FIELDS.iter().enumerate() {
        assert!(MEMBER_FIELDS[index + 1..].iter().all(|other| other.id != spec.id), "{} twice", spec.id);
        assert!(MemberKind::ALL.iter().any(|kind| kind.fields().contains(&spec.id)), "{} is of no kind", spec.id);
        assert!(MemberKind::is_own(spec.id));
    }
    for kind in MemberKind::ALL.iter().copied() {
        for (index, id) in kind.fields().iter().enumerate() {
            assert!(MemberKind::field(id).is_some(), "{} has no {id}", kind.id());
            assert!(!kind.fields()[index + 1..].contains(id), "{} has {id} twice", kind.id());
        }
        assert_eq!(MemberKind::of(kind.id()), Some(kind));
    }
}

/// Nothing typed, and every kind answers, says what it assumed, and cautions.
#[test]
fn the_shortest_path_answers() {
    for kind in MemberKind::ALL.iter().copied() {
        let outcome = derive(kind, &Nothing, &Nothing);
        assert_eq!(outcome.refusals(), [], "{}", kind.id());
        let reply = outcome.answered.unwrap();
        assert!(!reply.verdict.is_empty() && !reply.size.is_empty(), "{}", kind.id());
        assert!(!reply.about.assumed.is_empty() && reply.about.cautions.len() >= 2, "{}", kind.id());
    }
}

/// Every assumed value is one that would be taken if it were typed, and changes nothing.
#[test]
fn what_is_assumed_may_be_typed() {
    for kind in MemberKind::ALL.iter().copied() {
        let before = derive(kind, &Nothing, &Nothing).answered.unwrap();
        for spec in kind.fields().iter().filter_map(|id| MemberKind::field(id)) {
            if let Unsaid::Assumed(text, why) = spec.unsaid {
                let outcome = derive(kind, &case(&[(spec.id, text)]), &Nothing);
                assert_eq!(outcome.refusals(), [], "{} {}", kind.id(), spec.id);
                assert_eq!(outcome.reading.get(spec.id).unwrap().origin, Origin::Typed);
                assert!(!why.is_empty());
                // Where it is not typed the house gives it.
                if spec.id != "mean_roof_height" {
                    assert_eq!(outcome.answered.unwrap().ratio, before.ratio, "{} {}", kind.id(), spec.id);
                }
            }
        }
    }
}

/// Texts that no input of a kind takes.
fn nonsense(kind: Kind) -> &'static [&'static str] {
    match kind {
        Kind::Length { .. } => &["-6'", "4000'", "wide", "6 psf", "NaN", "1e3", "1/0"],
        Kind::Number { .. } => &["-1", "1000000000000", "heavy", "6'", "NaN", "1e3", "40 kg"],
        Kind::Special { .. } => &["-4", "steep", "6/10", "90/12"],
        Kind::Choice(_) => &["neither", "-"],
        Kind::Size => &["9-2x40", "two by ten"],
        Kind::Name | Kind::Lines => &[],
    }
}

#[test]
fn nonsense_is_refused_where_it_was_typed() {
    for kind in MemberKind::ALL.iter().copied() {
        for spec in kind.fields().iter().filter_map(|id| MemberKind::field(id)) {
            for text in nonsense(spec.kind) {
                let outcome = derive(kind, &case(&[(spec.id, text)]), &Nothing);
                let refused = outcome.refusals();
                assert!(outcome.answered.is_none(), "{} took {text:?} for {}", kind.id(), spec.id);
                assert!(
                    refused.iter().any(|one| one.field == spec.id),
                    "{} {} {text:?}: {refused:?}",
                    kind.id(),
                    spec.id
                );
                assert!(refused.iter().all(|one| one.problem.ends_with('.')), "{refused:?}");
            }
        }
    }
}

/// Lists that are written out say what is wrong with them.
#[test]
fn lists_and_names_are_refused_with_a_reason() {
    for (kind, field, text) in [
        (MemberKind::Beam, "beam_spans", "12', far"),
        (MemberKind::Beam, "beam_spans", "1',2',3',4',5',6'"),
        (MemberKind::Beam, "beam_spans", "400'"),
        (MemberKind::Beam, "more_loads", "L 300 lb at 40'"),
        (MemberKind::Beam, "more_loads", "heavy"),
        (MemberKind::Ridge, "ridge_spans", ","),
        (MemberKind::HipValley, "jack_size", "9x9"),
        (MemberKind::Post, "post_nail", "16d"),
        (MemberKind::Notch, "cut_size", "11x40"),
        (MemberKind::Joist, "found_grade", "clear"),
        (MemberKind::Joist, "found_size", "2by"),
    ] {
        let outcome = derive(kind, &case(&[(field, text)]), &Nothing);
        let refused = outcome.refusals();
        assert!(refused.iter().any(|one| one.field == field && one.problem.len() > 20), "{field} {text}: {refused:?}");
        assert!(outcome.answered.is_none());
    }
}

/// What belongs together is asked where it is missing.
#[test]
fn what_is_missing_is_said_where_it_is_missing() {
    for (kind, fields, missing) in [
        (MemberKind::Joist, &[("sheet_depth", "11-7/8")][..], "sheet_moment"),
        (MemberKind::Joist, &[("wall_dead", "300")][..], "wall_at"),
        (MemberKind::Joist, &[("cut_kind", "hole"), ("cut_depth", "2")][..], "cut_at"),
        (MemberKind::Joist, &[("cut_kind", "hole"), ("cut_depth", "2"), ("cut_at", "3'")][..], "cut_to_edge"),
        (MemberKind::Rafter, &[("ties", "raised")][..], "tie_height"),
        (MemberKind::Beam, &[("label_depth", "11-7/8")][..], "label_fb"),
    ] {
        let refused = derive(kind, &case(fields), &Nothing).refusals();
        assert!(refused.iter().any(|one| one.field == missing), "{missing}: {refused:?}");
    }
}

/// What the job has is used, and what is typed for one member stands over it.
#[test]
fn the_job_fills_in() {
    let job = case(&[("species", "SP"), ("ground_snow", "70"), ("house_width", "24'"), ("roof_pitch", "8/12")]);
    let outcome = derive(MemberKind::Rafter, &Nothing, &job);
    assert_eq!(outcome.reading.get("species").unwrap().origin, Origin::Site);
    let reply = outcome.answered.unwrap();
    assert!((reply.fact("rise_in").unwrap() - 12.0 * 8.0).abs() < 1e-9);
    let own = derive(MemberKind::Rafter, &case(&[("rafter_run", "10'")]), &job).answered.unwrap();
    assert!((own.fact("rise_in").unwrap() - 10.0 * 8.0).abs() < 1e-9);
}

/// Longer, wider apart, heavier: never stronger.
#[test]
fn more_is_never_stronger() {
    for (kind, field, texts) in [
        (MemberKind::Joist, "joist_span", ["10'", "13'", "16'", "19'"]),
        (MemberKind::Joist, "joist_spacing", ["12", "16", "19.2", "24"]),
        (MemberKind::Joist, "floor_live", ["30", "40", "60", "100"]),
        (MemberKind::Beam, "beam_spans", ["8'", "10'", "12'", "14'"]),
        (MemberKind::Rafter, "rafter_run", ["6'", "9'", "12'", "15'"]),
        (MemberKind::Rafter, "ground_snow", ["10", "30", "50", "90"]),
        (MemberKind::Ridge, "ridge_spans", ["8'", "12'", "16'", "20'"]),
        (MemberKind::HipValley, "hip_run", ["6'", "9'", "12'", "15'"]),
        (MemberKind::Stud, "stud_length", ["8'", "9'", "10'", "12'"]),
        (MemberKind::Stud, "wind_speed", ["100", "120", "150", "180"]),
        (MemberKind::Post, "post_height", ["4'", "8'", "12'", "14'"]),
        (MemberKind::Post, "post_live", ["1000", "3000", "9000", "20000"]),
    ] {
        let size = match kind {
            MemberKind::Beam | MemberKind::Ridge | MemberKind::HipValley => "3-2x12",
            MemberKind::Stud => "2x6",
            MemberKind::Post => "4x4",
            _ => "2x10",
        };
        let mut before = 0.0;
        for text in texts {
            let reply = derive(kind, &case(&[(field, text), ("drawn_size", size)]), &Nothing).answered.unwrap();
            let ratio = reply.ratio.unwrap_or(f64::INFINITY);
            assert!(ratio >= before, "{} {field} {text}: {ratio} under {before}", kind.id());
            before = ratio;
        }
    }
}

/// Rafters without ties hang on the ridge that its own page sizes.
#[test]
fn the_ridge_of_rafters_without_ties_is_the_one_of_its_own_page() {
    let answer =
        |line: &str| -> serde_json::Value { serde_json::from_str(&check_line(line)).expect("an answer is JSON") };
    for spans in ["9'", "12', 14'"] {
        let rafter = answer(&format!(r#"{{"check":"rafter","ties":"ridge","ridge_spans":"{spans}"}}"#));
        let ridge = answer(&format!(r#"{{"check":"ridge","ridge_spans":"{spans}","loaded_from":"sides"}}"#));
        assert_eq!(rafter["needs"][0]["figure"], ridge["size"], "{rafter:#}");
        let post = ridge["facts"].as_array().and_then(|facts| facts.iter().find(|fact| fact["name"] == "post_lb"));
        let written = post.and_then(|post| post["written"].as_str()).expect("a ridge says what its posts carry");
        let says = rafter["needs"][0]["says"].to_string();
        assert!(says.contains(written), "{says} without {written}");
    }
    let tied = answer(r#"{"check":"rafter","ties":"plate"}"#);
    assert_eq!(tied["needs"].as_array().map(Vec::len), Some(0));
}

/// A rafter that only a lifting wind rolls is answered with the blocking that it needs; one that is drawn has to do without
/// until someone says so.
#[test]
fn blocking_is_assumed_for_a_rafter_that_is_not_drawn_yet() {
    let answer =
        |line: &str| -> serde_json::Value { serde_json::from_str(&check_line(line)).expect("an answer is JSON") };
    let free = answer(r#"{"check":"rafter"}"#);
    assert_eq!(free["verdict"], "carries it");
    let first = free["action"][0].as_str().unwrap_or_default();
    assert!(first.starts_with("Block between the rafters every"), "{first}");
    assert!(free["assumed"].to_string().contains("Bottom edges held every"), "{free:#}");
    let size = free["size"].as_str().expect("a size carries it");
    let drawn = answer(&format!(r#"{{"check":"rafter","drawn_size":"{size}"}}"#));
    assert_eq!(drawn["verdict"], "too small");
    assert!(drawn["action"].to_string().contains(&format!("{size} carries it")), "{drawn:#}");
    let typed = answer(&format!(r#"{{"check":"rafter","drawn_size":"{size}","blocked_every":"5'"}}"#));
    assert_eq!(typed["verdict"], "carries it");
}
