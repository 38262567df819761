//! Bracing in plan: wall lines and floors or roofs against published examples and vectors of our own, and what may be typed.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use std::collections::BTreeMap;

use framing::bracing::BracingKind;
use framing::check::check_line;
use framing::field::{BRACING_PLAN_FIELDS, Kind};
use framing::quick::reply::{Drawn, QuickReply};
use framing::quick::{QuickKind as _, derive};
use framing::site::Nothing;
use proptest::prelude::*;

type Case = BTreeMap<String, String>;

const KINDS: [BracingKind; 2] = [BracingKind::WallLines, BracingKind::Diaphragm];

fn case(fields: &[(&str, &str)]) -> Case {
    fields.iter().map(|(field, text)| ((*field).to_owned(), (*text).to_owned())).collect()
}

fn answered(kind: BracingKind, fields: &[(&str, &str)]) -> QuickReply {
    let outcome = derive(kind, &case(fields), &Nothing);
    assert_eq!(outcome.refusals(), [], "{} {fields:?}", kind.id());
    outcome.answered.unwrap()
}

fn near(reply: &QuickReply, name: &str, expected: f64, off: f64) {
    let found = reply.fact(name).unwrap_or(f64::NAN);
    assert!((found - expected).abs() <= off, "{name}: {found} against {expected}");
}

/// The figures of a working's steps that have this symbol.
fn steps(reply: &QuickReply, symbol: &str) -> Vec<f64> {
    let all = reply.about.working.iter().flat_map(|part| &part.steps);
    all.filter(|step| step.symbol == symbol).map(|step| step.value).collect()
}

/// What stands in the last column of a table's rows, in pounds.
fn last_column(reply: &QuickReply, of: impl Fn(&str) -> bool) -> Vec<f64> {
    let rows = reply.tables[0].rows.iter().filter(|row| of(&row[0]));
    rows.map(|row| row.last().unwrap().replace([',', 'l', 'b', ' '], "").parse().unwrap()).collect()
}

/// Source: a practice question for architects: a roof of 100 ft by 30 ft under 110 plf has chords of 4,583.33 lb. To the
/// printed hundredth. It is 3.33:1: only blocked panels are taken.
#[test]
fn the_chord_of_a_published_roof() {
    let of = [("floor_span", "100'"), ("floor_deep", "30'"), ("floor_push", "110 plf")];
    let reply = answered(BracingKind::Diaphragm, &of);
    near(&reply, "chord_lb", 4583.33, 0.005);
    near(&reply, "reaction_lb", 5500.0, 1e-9);
    near(&reply, "unit_shear_plf", 183.3, 0.05);
    assert!(reply.size.ends_with(", blocked"), "{}", reply.size);
    assert!(reply.sizes.iter().filter(|size| size.family == "Not blocked").all(|size| size.reason.is_some()));
    // At a quarter of the span the moment is three quarters of the most.
    let spliced = answered(BracingKind::Diaphragm, &[&of[..], &[("splice_at", "25'")]].concat());
    near(&spliced, "chord_at_splice_lb", 0.75 * 4583.33, 0.005);
    assert!(spliced.fact("splice_nails").unwrap() < reply.fact("splice_nails").unwrap());
}

/// Our own vector: 180 plf on 40 ft by 28 ft; chords of two 2x4 with E 1,400,000 psi, 7/16 in panels with 8d common at 4
/// and 6 in, G_a 8.5 kips/in; a wall of 10 ft at the end of its line. To the last digit that the vector is written with.
#[test]
fn our_own_floor_with_its_collector() {
    let of = [
        ("floor_span", "40'"),
        ("floor_deep", "28'"),
        ("floor_push", "180"),
        ("drawn_size", "7/16 8d 4/6 blocked"),
        ("brace_studs", "2x4"),
        ("end_line", "10', 18' open"),
    ];
    let reply = answered(BracingKind::Diaphragm, &of);
    near(&reply, "reaction_lb", 3600.0, 1e-9);
    near(&reply, "unit_shear_plf", 128.6, 0.05);
    near(&reply, "chord_lb", 1285.7, 0.05);
    near(&reply, "bow_in", 0.1638, 0.00005);
    near(&reply, "collector_lb", 2314.3, 0.05);
    // It closes: nothing is left at either end of the line.
    let along = steps(&reply, "F");
    assert!(along.first().unwrap().abs() < 1e-6 && along.last().unwrap().abs() < 1e-6, "{along:?}");
    // Own arithmetic: 141 lb is printed of a 16d common in two 2x of Douglas Fir-Larch, 120 lb in Spruce-Pine-Fir (NDS
    // Table 12N); the point comes out, so that 1.5 in of 10 × 0.162 in hold; times 1.6. Printed to a pound: off by 1.
    let each = steps(&reply, "Z'");
    assert!((each[0] - 1.6 * 120.0 * 1.5 / 1.62).abs() < 1.0, "{each:?}");
    near(&reply, "splice_nails", (1285.7_f64 / each[0]).ceil(), 1e-9);
    // A line that is walled from end to end carries nothing along itself.
    let whole = answered(BracingKind::Diaphragm, &[&of[..5], &[("end_line", "28'")]].concat());
    near(&whole, "collector_lb", 0.0, 1e-6);
}

/// The same floor with its wall in the middle of the line, or split: walls share as pieces of a shear wall do.
#[test]
fn the_collector_peaks_where_a_wall_begins() {
    let reply = answered(BracingKind::Diaphragm, &[("end_line", "9' open, 10', 9' open")]);
    near(&reply, "collector_lb", 180.0 * 40.0 / 2.0 / 28.0 * 9.0, 1e-6);
    let narrow = answered(BracingKind::Diaphragm, &[("end_line", "1', 27' open")]);
    assert!(narrow.fact("collector_lb").is_none());
    assert!(
        narrow.about.outside.iter().any(|says| says.contains("long enough to count")),
        "{:?}",
        narrow.about.outside
    );
    let unsaid = answered(BracingKind::Diaphragm, &[]);
    assert!(unsaid.about.questions.iter().any(|(field, _)| field == "end_line"), "{:?}", unsaid.about.questions);
}

/// Our own vector of two storeys: 1,800 lb at the roof and 1,500 lb at the floor to one of two lines, 9 ft storeys, a wall of
/// 6 ft: 2,484 and 7,164 lb at the ends with 120 and 150 plf on them. The vector's arm is the whole wall; here the rod is in
/// the wall's end and the pressed post has its thickness, which is taken off.
#[test]
fn two_storeys_down_to_the_hold_downs() {
    let of = [("push_direction", "along"), ("pushes_along", "3,600, 3,000")];
    let lines = answered(BracingKind::WallLines, &of);
    near(&lines, "hardest_lb", 3300.0, 1e-9);
    near(&lines, "shear_2_lb", 3600.0, 1e-9);
    near(&lines, "shear_1_lb", 6600.0, 1e-9);
    assert_eq!(last_column(&lines, |name| name.ends_with("at 28' 0\"")), [1800.0, 3300.0]);
    let ends = [
        ("storey_pushes", "1800, 1500"),
        ("storey_heights", "9'"),
        ("storey_deads", "120, 150"),
        ("wall_long", "6'"),
        ("rod_in", "0"),
        ("end_post", "2"),
    ];
    let ends = answered(BracingKind::HoldDown, &ends);
    let arm = 6.0 - 1.5 / 12.0;
    near(&ends, "tension_lb", 7164.0 * 6.0 / arm, 1e-6);
    assert!((steps(&ends, "T")[0] - 2484.0 * 6.0 / arm).abs() < 1e-6, "{:?}", steps(&ends, "T"));
}

/// By tributary width: 40 ft with lines at 0, 16 and 40 ft is 8, 20 and 12 ft of 180 plf.
#[test]
fn a_third_line_takes_what_is_between() {
    let of = [("lines_across", "40', 0, 16'"), ("pushes_across", "7200"), ("storeys", "1")];
    let reply = answered(BracingKind::WallLines, &of);
    assert_eq!(last_column(&reply, |name| name.contains(", at")), [1440.0, 3600.0, 2160.0]);
    near(&reply, "hardest_at_in", 16.0 * 12.0, 1e-9);
    assert_eq!((reply.size.as_str(), reply.verdict.as_str()), ("3,600 lb", "on the hardest line"));
}

/// What Site says of the push by storey is what comes to the lines, both ways.
#[test]
fn the_push_is_sites_and_the_lines_come_to_it() {
    let place = [("wind_speed", "150"), ("exposure", "C"), ("building_length", "48'"), ("house_width", "30'")];
    let mut line = serde_json::json!(case(&place));
    line["check"] = serde_json::json!("wind");
    let site: serde_json::Value = serde_json::from_str(&check_line(&line.to_string())).unwrap();
    for (direction, words, pushes) in
        [("across", "across the ridge", "pushes_across"), ("along", "along the ridge", "pushes_along")]
    {
        let of = [("push_direction", direction), ("lines_across", "0, 20', 48'"), ("lines_along", "0, 14', 30'")];
        let reply = answered(BracingKind::WallLines, &[&place[..], &of].concat());
        let governs = |push: &&serde_json::Value| push["direction"] == words && push["governs"] == true;
        let push = site["push"].as_array().unwrap().iter().find(governs).unwrap();
        let below: Vec<f64> =
            push["levels"].as_array().unwrap().iter().map(|level| level["shear_below_lb"].as_f64().unwrap()).collect();
        for (storey, shear) in (1..).zip(&below) {
            near(&reply, &format!("shear_{storey}_lb"), *shear, 1e-6);
        }
        assert_eq!(steps(&reply, "V").len(), 6, "{direction}");
        let lowest: f64 = steps(&reply, "V")[3..].iter().sum();
        assert!((lowest - below[0]).abs() < 1e-6, "{direction}: {lowest} against {below:?}");
        // The same numbers typed are the same answer.
        let mut each: Vec<f64> = below.iter().zip(below.iter().skip(1).chain([&0.0])).map(|(a, b)| a - b).collect();
        each.reverse();
        let typed = each.iter().map(|push| format!("{push:.3}")).collect::<Vec<_>>().join("; ");
        let again = answered(BracingKind::WallLines, &[&place[..], &of, &[(pushes, typed.as_str())]].concat());
        near(&again, "hardest_lb", reply.fact("hardest_lb").unwrap(), 0.01);
    }
}

/// A garage front without a wall: no number along it, the turning of it, and an engineer: 4,000 lb at half of 40 ft on lines
/// 28 ft apart.
#[test]
fn an_open_side_is_an_engineers() {
    let pushes = [("pushes_across", "4000"), ("pushes_along", "2800"), ("lines_across", "0")];
    let open = answered(BracingKind::WallLines, &pushes);
    assert_eq!((open.size.as_str(), open.verdict.as_str()), ("Open side", "not for this tool to decide"));
    assert!(open.fact("hardest_lb").is_none() && open.tables.is_empty());
    near(&open, "couple_1_lb", 4000.0 * 20.0 / 28.0, 1e-6);
    assert!(open.action.iter().any(|says| says.contains("engineer must look at every line")), "{:?}", open.action);
    let Drawn::Lines(drawn) = &open.drawn else { unreachable!("wall lines draw lines") };
    assert_eq!(drawn.open, (false, true));
    // Seen the other way its numbers stand, and are not all: the engineer is still asked.
    let other = answered(BracingKind::WallLines, &[&pushes[..], &[("push_direction", "along")]].concat());
    near(&other, "hardest_lb", 1400.0, 1e-9);
    assert_eq!(other.verdict, "not for this tool to decide");
    near(&other, "couple_1_lb", 4000.0 * 20.0 / 28.0, 1e-6);
    assert!(other.reason.unwrap().contains("The floor turns."));
}

/// What no rule here covers is refused with the core's own words, and says who can.
#[test]
fn outside_the_limits_there_is_no_number() {
    for (kind, of) in [
        (BracingKind::WallLines, ("seismic_design_category", "D0")),
        (BracingKind::WallLines, ("plain_rectangle", "no")),
        (BracingKind::WallLines, ("roof_kind", "gambrel")),
        (BracingKind::WallLines, ("parapet", "yes")),
        (BracingKind::WallLines, ("lines_across", "3', 40'")),
        (BracingKind::Diaphragm, ("plain_rectangle", "no")),
        (BracingKind::Diaphragm, ("floor_held", "one")),
        (BracingKind::Diaphragm, ("floor_span", "112' 1\"")),
        (BracingKind::Diaphragm, ("drawn_size", "1/4 10d 6 blocked")),
    ] {
        let reply = answered(kind, &[of]);
        assert_eq!(reply.verdict, "not for this tool to decide", "{of:?}");
        assert!(
            reply.fact("hardest_lb").is_none() && reply.fact("unit_shear_plf").is_none(),
            "{of:?}: {:?}",
            reply.facts
        );
        assert!(reply.reason.is_some() && !reply.action.is_empty(), "{of:?}");
    }
    // At the limit it is answered, one inch on it is not.
    assert_eq!(answered(BracingKind::Diaphragm, &[("floor_span", "112'")]).governs.as_deref(), Some("span over depth"));
    let asked = answered(BracingKind::WallLines, &[("roof_kind", "shed")]);
    assert!(asked.about.questions.iter().any(|(field, _)| field == "pushes_across"), "{:?}", asked.about.questions);
}

/// Bad texts at every input of these kinds alone are refused where they were typed, with what is taken.
#[test]
fn nonsense_is_refused_with_what_is_taken() {
    let of_name = |id: &str| -> &'static [&'static str] {
        match id {
            "pushes_across" | "pushes_along" => &["heavy", "-200", "4 kN", ",", "1; 2; 3; 4", "900000"],
            "lines_across" | "lines_along" => &["0', far", ",", "-4'", "0', 90'", "1,1,1,1,1,1,1,1,1,1,1,1,1"],
            "end_line" => &["10', wide", "open", "6' shut", "20', 20'", "0'", ","],
            _ => &[],
        }
    };
    for spec in BRACING_PLAN_FIELDS {
        let texts = match spec.kind {
            Kind::Name => of_name(spec.id),
            Kind::Length { .. } => &["-6'", "4000'", "wide", "6 psf", "NaN"],
            Kind::Number { .. } => &["-1", "1000000000", "heavy", "6'", "NaN"],
            Kind::Choice(_) => &["neither", "-"],
            Kind::Special { .. } | Kind::Size | Kind::Lines => &[],
        };
        assert!(!texts.is_empty(), "{} has no bad text here", spec.id);
        for (kind, text) in KINDS.iter().flat_map(|kind| texts.iter().map(move |text| (kind, text))) {
            if !kind.fields().contains(&spec.id) {
                continue;
            }
            let outcome = derive(*kind, &case(&[(spec.id, text)]), &Nothing);
            let refused = outcome.refusals();
            assert!(outcome.answered.is_none(), "{} took {text:?}", spec.id);
            assert!(refused.iter().all(|one| one.field == spec.id && one.problem.ends_with('.')), "{refused:?}");
            assert!(
                refused.iter().any(|one| one.problem.contains("taken") || one.problem.contains("Write")),
                "{text:?}: {refused:?}"
            );
        }
    }
    for (kind, of) in [
        (BracingKind::WallLines, [("pushes_across", "1000, 1000"), ("storeys", "1")]),
        (BracingKind::WallLines, [("pushes_along", "1000"), ("pushes_across", "1000, 900")]),
        (BracingKind::Diaphragm, [("splice_at", "21'"), ("floor_span", "40'")]),
        (BracingKind::Diaphragm, [("drawn_size", "7/16 8d 4 unblocked"), ("floor_span", "40'")]),
        (BracingKind::Diaphragm, [("drawn_size", "7/16 8d 4/6"), ("floor_span", "40'")]),
    ] {
        let refused = derive(kind, &case(&of), &Nothing).refusals();
        assert_eq!(refused.len(), 1, "{of:?}: {refused:?}");
        assert!(refused[0].problem.contains("given") && refused[0].problem.ends_with('.'), "{refused:?}");
    }
}

/// Panels with their long sides across the framing, staggered, and the framing along the wind carry the most where they are
/// not blocked: no other layout is better (Table 4.2C has two columns).
#[test]
fn no_layout_is_better_than_the_first() {
    let mut seen = Vec::new();
    for framing in ["along", "across"] {
        for long in ["across", "along"] {
            for staggered in ["yes", "no"] {
                let of = [
                    ("framing_runs", framing),
                    ("long_sides", long),
                    ("joints_staggered", staggered),
                    ("drawn_size", "7/16 8d 6"),
                ];
                seen.push(answered(BracingKind::Diaphragm, &of).fact("allowable_plf").unwrap());
            }
        }
    }
    assert!(seen[1..].iter().all(|other| *other < seen[0] && (*other - seen[1]).abs() < 1e-9), "{seen:?}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    /// In each direction the lines of a storey come to its push and to all above, wherever they stand.
    #[test]
    fn lines_come_to_the_push(top in 100.0..9000.0_f64, low in 0.0..9000.0_f64, inner in 2.0..26.0_f64, along in any::<bool>()) {
        let (direction, pushes) = if along { ("along", "pushes_along") } else { ("across", "pushes_across") };
        let lines = format!("0; {inner:.2}; {}", if along { 28 } else { 40 });
        let id = if along { "lines_along" } else { "lines_across" };
        let typed = format!("{top:.2}; {low:.2}");
        let reply = answered(BracingKind::WallLines, &[("push_direction", direction), (pushes, &typed), (id, &lines)]);
        let lines = steps(&reply, "V");
        let (upper, lower): (f64, f64) = (lines[..3].iter().sum(), lines[3..].iter().sum());
        // Pushes were typed to a hundredth of a pound.
        prop_assert!((upper - top).abs() < 0.011 && (lower - top - low).abs() < 0.021, "{lines:?}");
        prop_assert!((reply.fact("shear_1_lb").unwrap() - lower).abs() < 1e-6);
    }

    /// More push never uses less of a floor, and never needs fewer nails in its splices.
    #[test]
    fn more_push_on_a_floor_is_never_easier(push in 20.0..300.0_f64, more in 1.0..200.0_f64) {
        let of = |push: f64| {
            let push = format!("{push:.2}");
            answered(BracingKind::Diaphragm, &[("floor_push", &push), ("drawn_size", "15/32 10d 4/6 blocked")])
        };
        let (less, more) = (of(push), of(push + more));
        prop_assert!(more.checks[0].ratio > less.checks[0].ratio);
        prop_assert!(more.fact("splice_nails") >= less.fact("splice_nails"));
        prop_assert!(more.fact("bow_in") > less.fact("bow_in"));
    }
}
