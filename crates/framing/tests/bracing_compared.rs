//! The engineer's schedule beside what is worked out, wall by wall.

#![expect(clippy::unwrap_used, clippy::panic, reason = "in a test a panic is the report")]

use std::collections::BTreeMap;

use framing::bracing::{BracingKind, CARRIED_AS_DRAWN, STILL_TO_SAY, TO_ASK_ABOUT};
use framing::check::check_line;
use framing::quick::drawn_compared::DrawnPair;
use framing::quick::reply::{Drawn, QuickReply};
use framing::quick::{QuickOutcome, derive};
use framing::site::Nothing;
use proptest::prelude::*;

const KIND: BracingKind = BracingKind::DrawnAndWorked;

/// Douglas fir on studs at 16 in, so that the nails hold as the table has it and 7/16 in is taken as 15/32 in.
///
/// SDPWS 2015 Table 4.3A for wind, halved: 8d at 6, 4, 3, 2 in: 365, 532.5, 685, 895 plf; 15/32 in with 10d at 6, 4, 3, 2 in:
/// 435, 645, 840, 1,077.5 plf, of which 0.92 stays with hold-downs on the inner face by SDPWS 2021.
const SCHEDULE: &str = "sheet S2.1 rev B
W1: 7/16 8d 6/12, hold-down HD1
W2: 15/32 10d 3, hold-down HD2
W3: 7/16 8d 4, unblocked, hold-down HD2
W4: 7/16 8d 4
W5: 7/16 8d 4, hold-down HD9
W6: 15/32 structural i 10d 2, both faces, hold-down HD3
W7: 15/32 10d 5, hold-down HD1
HD1: hold-down 2,000 lb, rod 5/8
HD2: hold-down 9,000 lb
HD3: hold-down 40,000 lb";

fn outcome(walls: &str, more: &[(&str, &str)]) -> QuickOutcome {
    let usual = [("species", "DF-L"), ("schedule_lines", SCHEDULE), ("braced_walls", walls)];
    let fields = usual.iter().chain(more);
    let case: BTreeMap<String, String> = fields.map(|(id, text)| ((*id).to_owned(), (*text).to_owned())).collect();
    derive(KIND, &case, &Nothing)
}

fn of(walls: &str) -> QuickReply {
    let outcome = outcome(walls, &[]);
    assert_eq!(outcome.refusals(), [], "{walls}");
    outcome.answered.unwrap()
}

fn pairs(reply: &QuickReply) -> &[DrawnPair] {
    match &reply.drawn {
        Drawn::Compared(pairs) => pairs,
        other => panic!("{other:?}"),
    }
}

/// What a cell says, and the share that it ends with.
fn parted(cell: &str) -> [&str; 2] {
    let (text, share) = cell.rsplit_once(", ").filter(|(_, share)| share.ends_with(" %")).unwrap_or((cell, "—"));
    [text, share]
}

/// The first wall in the table of panels: drawn, its share, worked, its share.
fn panels(reply: &QuickReply) -> Vec<&str> {
    reply.tables[0].rows[0].iter().skip(1).flat_map(|cell| parted(cell)).collect()
}

/// The first wall in the table of ends: push, pull, drawn hold-down, its share.
fn ends(reply: &QuickReply) -> Vec<&str> {
    let row = &reply.tables[1].rows[0];
    let [text, share] = parted(&row[3]);
    vec![&row[1], &row[2], text, share]
}

fn near(found: Option<f64>, expected: f64) {
    assert!(found.is_some_and(|found| (found - expected).abs() < 1e-9), "{found:?} against {expected}");
}

/// 1,800 lb on two pieces of 4 ft is 225 plf of 365. Each end: 900 lb × 8 ft over 4 ft less 1.5 and 4.5 in, 3.5 ft.
#[test]
fn both_agree() {
    let reply = of("Front: w1, walls 4', 4', high 8', push 1,800 lb, dead 100 plf");
    assert_eq!((reply.size.as_str(), reply.verdict.as_str()), ("1 of 1 wall", CARRIED_AS_DRAWN));
    let pull = (900.0 * 8.0 - 0.6 * 100.0 * 16.0 / 2.0) / 3.5;
    near(reply.fact("hardest_pull_lb"), pull);
    near(reply.fact("hardest_drawn"), 225.0 / 365.0);
    near(reply.fact("hardest_worked"), 225.0 / 365.0);
    near(reply.ratio, pull / 2000.0);
    assert_eq!(reply.governs.as_deref(), Some("Front, HD1 at its ends"));
    assert_eq!(panels(&reply), ["W1: 7/16\" 8d at 6\"", "62 %", "7/16\" 8d at 6\"", "62 %"]);
    assert_eq!(ends(&reply), ["1,800 lb", "1,920 lb", "HD1: 2,000 lb", "96 %"]);
    assert_eq!(reply.action, ["Front (w1): both agree. Build the drawing."]);
    assert_eq!((pairs(&reply)[0].follows.as_str(), pairs(&reply)[0].asks), ("both agree", false));
    assert_eq!(pairs(&reply)[0].drawn.says, "96 %, ends");
    let agree = reply.fact("both_agree").zip(reply.fact("to_ask"));
    assert_eq!(agree, Some((1.0, 0.0)));
}

/// 540 plf of 0.92 × 840 = 772.8; worked is 15/32 in with 10d at 4 in, 0.92 × 645 = 593.4. (8d at 4 in is 532.5: too little.)
#[test]
fn the_drawing_asks_for_more() {
    let reply = of("Back: W2, walls 10', high 9', push 5,400 lb");
    assert_eq!(reply.verdict, CARRIED_AS_DRAWN);
    near(reply.fact("hardest_drawn"), 540.0 / 772.8);
    near(reply.fact("hardest_worked"), 540.0 / 593.4);
    assert_eq!(panels(&reply), ["W2: 15/32\" 10d at 3\"", "70 %", "15/32\" 10d at 4\"", "91 %"]);
    assert_eq!(reply.action, ["Back (W2): the drawing asks for more than is worked. Build the drawing."]);
    assert_eq!(reply.fact("drawing_asks_more"), Some(1.0));
    // Dead load holds its ends: 1,000 × 8 ft turns it, 0.6 × 400 × 10² / 2 = 12,000 ft-lb holds it.
    let held = of("Back: W1, walls 10', high 8', push 1,000 lb, dead 400 plf");
    assert!(
        held.action[0].contains("asks for more") && ends(&held)[1..] == ["0 lb", "as drawn", "—"],
        "{:?}",
        ends(&held)
    );
    assert_eq!(held.verdict, CARRIED_AS_DRAWN);
}

/// 450 plf of 365, and 450 × 8 ft × 10 ft over 9.5 ft at its ends.
#[test]
fn the_drawing_is_used_over_what_the_tables_have() {
    let reply = of("Front: W1, walls 10', high 8', push 4,500 lb\nBack: W1, walls 10', high 8', push 1,000 lb");
    assert_eq!((reply.size.as_str(), reply.verdict.as_str()), ("1 of 2 walls", TO_ASK_ABOUT));
    near(reply.fact("hardest_drawn"), 450.0 / 365.0);
    assert_eq!(panels(&reply), ["W1: 7/16\" 8d at 6\"", "124 %", "7/16\" 8d at 4\"", "85 %"]);
    let ask = "Front: W1 is used 124 % by the tables. Its ends pull 3,790 lb, and HD1 holds 2,000 lb. \
               Ask the engineer before nailing; the drawing stands until they change it.";
    assert_eq!(reply.action, [ask, "Back (W1): both agree. Build the drawing."]);
    // The panels carry, and what holds their ends does not: 3,000 × 8 / 9.5.
    let ends = of("Front: W1, walls 10', high 8', push 3,000 lb");
    near(ends.ratio, 3000.0 * 8.0 / 9.5 / 2000.0);
    assert!(ends.action[0].starts_with("Front: its ends pull 2,527 lb, and HD1 holds 2,000 lb. Ask the engineer"));
    assert_eq!((ends.verdict.as_str(), pairs(&ends)[0].drawn.says.as_str()), (TO_ASK_ABOUT, "127 %, ends"));
}

/// The strongest that is worked is 15/32 in with 10d at 2 in on both faces: 2 × 0.92 × 1,077.5 = 1,982.6 plf. 9,000 lb on
/// 3 ft at 9 ft (3:1, 2/3 counts) lacks 9,000 / 1,982.6 − 2 = 2.5395 ft.
#[test]
fn nothing_of_the_tables_carries_it() {
    let reply = of("Door: W2, walls 3', high 9', push 9,000 lb");
    assert_eq!((reply.verdict.as_str(), panels(&reply)[2]), (TO_ASK_ABOUT, "none carries"));
    let says = &reply.action[0];
    assert!(says.contains("2' 6-1/2\" more full-height wall is missing"), "{says}");
    assert!(says.contains("portal frame or steel frame") && says.contains("the drawing stands"), "{says}");
    let missing: Vec<f64> = reply.about.working[0]
        .steps
        .iter()
        .filter(|step| step.meaning.contains("missing"))
        .map(|step| step.value)
        .collect();
    assert!(missing.len() == 1 && (missing[0] - (9000.0 / (2.0 * 0.92 * 1077.5) - 2.0)).abs() < 1e-9, "{missing:?}");
    // Past 3.5:1 nothing counts: no share is given, and all of the push lacks its wall.
    let narrow = of("Door: W1, walls 9\", 1', high 8', push 900 lb");
    assert_eq!(panels(&narrow), ["W1: 7/16\" 8d at 6\"", "—", "none carries", "—"]);
    assert_eq!(ends(&narrow)[1..], ["—", "—", "—"]);
    assert!(narrow.ratio.is_none() && narrow.checks.is_empty() && narrow.action[0].contains("portal frame"));
    assert_eq!(pairs(&narrow)[0].drawn.says, "nothing counts");
    let unnamed = of("Door: walls 1', high 8', push 900 lb");
    assert!(unnamed.action[0].ends_with("Ask the engineer."), "{:?}", unnamed.action);
}

/// What carries as it is drawn is never said to be missing: Structural I is not among what is worked, and 1,982.6 plf is the
/// most that is. Source: Table 4.3A, Structural I 15/32 in with 10d at 2 in: 2,435 plf, both faces, 0.92, halved: 2,240.2.
#[test]
fn a_drawing_may_carry_what_nothing_worked_does() {
    let reply = of("Front: W6, walls 10', high 9', push 21,000 lb");
    assert_eq!((reply.verdict.as_str(), panels(&reply)[2]), (CARRIED_AS_DRAWN, "none carries"));
    near(reply.fact("hardest_drawn"), 2100.0 / (2435.0 * 0.92));
    assert!(reply.action[0].contains("the drawing asks for more"), "{:?}", reply.action);
}

/// What the drawing leaves open is asked.
#[test]
fn what_the_drawing_does_not_say_is_asked() {
    let on = "walls 8', high 8', push 2,000 lb";
    for (mark, says, drawn) in [
        ("", "Side: the drawing does not name this wall. Ask the engineer how it is nailed and held.", "not named"),
        ("W9, ", "Side: no line of the schedule gives W9. Look on the drawing", "W9: not in the schedule"),
        (
            "W3, ",
            "Side: W3 has no number by the tables. Panels with unblocked edges",
            "W3: 7/16\" 8d at 4\", unblocked, not worked",
        ),
        ("W7, ", "Side: W7 has no number by the tables. Given: ", "W7: 15/32\" 10d at 5\", not worked"),
        ("W4, ", "Side: its ends pull 2,134 lb, and W4 names no hold-down. Look on", "W4: 7/16\" 8d at 4\""),
        ("W5, ", "Side: its ends pull 2,134 lb, and no line of the schedule gives HD9.", "W5: 7/16\" 8d at 4\""),
    ] {
        let reply = of(&format!("Side: {mark}{on}"));
        assert_eq!((reply.size.as_str(), reply.verdict.as_str()), ("1 of 1 wall", TO_ASK_ABOUT), "{mark}");
        assert!(reply.action[0].starts_with(says), "{:?}", reply.action);
        assert_eq!(panels(&reply)[0], drawn);
        // What is worked stands beside it: 250 of 365 plf.
        near(reply.fact("hardest_worked"), 250.0 / 365.0);
        assert!(pairs(&reply)[0].asks && pairs(&reply)[0].follows.contains("ask"));
    }
}

/// The lower wall is held for what the upper one brings: 1,000 lb × 8 ft + 2,500 lb × (9 ft + 12 in) on 5 ft of two, less
/// 0.6 of 180 plf, over 4.5 ft.
#[test]
fn pulls_of_the_wall_above_come_down() {
    let walls = "Front above: W1, walls 5', 5', high 8', push 2,000 lb\n\
                 Front below: W2, walls 5', 5', high 9', push 5,000 lb, dead 180 plf, under Front above";
    let reply = outcome(walls, &[("floor_between", "12")]).answered.unwrap();
    let pull = (1000.0 * 8.0 + 2500.0 * 10.0 - 0.6 * 180.0 * 25.0 / 2.0) / 4.5;
    near(reply.fact("hardest_pull_lb"), pull);
    assert!(
        reply
            .about
            .says
            .iter()
            .any(|says| says.starts_with("Of the 5,000 lb on Front below, 2,000 lb come from Front above"))
    );
    assert!(reply.about.assumed.iter().all(|one| one.input.as_deref() != Some("floor_between")));
    let assumed = |walls: &str| {
        let reply = of(walls);
        reply.about.assumed.iter().any(|one| one.input.as_deref() == Some("floor_between"))
    };
    assert!(assumed(walls) && !assumed("Front: W1, walls 5', high 8', push 900"));
    // Where pieces do not stand above each other nothing is added up, and that is asked.
    let apart = of(&walls.replace("W1, walls 5', 5'", "W1, walls 10'"));
    assert!(
        apart.action[0].starts_with("Front below: what pulls at its ends is not worked: the pieces of the wall on it")
    );
    assert_eq!(apart.size, "1 of 2 walls");
}

#[test]
fn nothing_typed_is_still_to_be_said() {
    let outcome = derive(KIND, &BTreeMap::new(), &Nothing);
    let reply = outcome.answered.unwrap();
    assert_eq!((reply.size.as_str(), reply.verdict.as_str()), ("No wall yet", STILL_TO_SAY));
    let asked: Vec<&str> = reply.about.questions.iter().map(|(id, _)| id.as_str()).collect();
    assert_eq!(asked, ["braced_walls", "schedule_lines"]);
}

/// Both inputs are refused line by line, where they were typed.
#[test]
fn lines_that_are_not_understood_are_refused_where_they_stand() {
    for walls in ["Front walls 4'", "Front: W1, walls 4', high 8', push 900, under Front", "a: walls 4', high 8'"] {
        let refused = outcome(walls, &[]).refusals();
        assert!(refused.len() == 1 && refused[0].field == "braced_walls", "{refused:?}");
        assert!(refused[0].problem.starts_with("Line 1: ") && refused[0].problem.ends_with('.'), "{refused:?}");
    }
    let both = outcome("Front: W1", &[("schedule_lines", "W1: brick")]).refusals();
    assert_eq!(both.iter().map(|one| one.field.as_str()).collect::<Vec<_>>(), ["braced_walls", "schedule_lines"]);
}

/// From Seismic Design Category D0 on there is no number, as with a shear wall.
#[test]
fn where_earthquakes_decide_there_is_no_number() {
    let walls = "Front: W1, walls 4', high 8', push 900";
    let outside = outcome(walls, &[("seismic_design_category", "D0")]).answered.unwrap();
    assert_eq!(outside.verdict, "not for this tool to decide");
    assert!(outside.facts.is_empty() && outside.tables.is_empty() && outside.action[0].contains("D0"));
    let inside = outcome(walls, &[("seismic_design_category", "C")]).answered.unwrap();
    assert!(!inside.facts.is_empty());
}

/// Every share of it is that of the wall by itself.
#[test]
fn a_wall_is_as_by_itself() {
    let reply = of("Front: W2, walls 3', 4', 6', high 9', push 4,000 lb, dead 120 plf");
    let alone: BTreeMap<String, String> = [
        ("species", "DF-L"),
        ("schedule_lines", SCHEDULE),
        ("drawn_size", "W2"),
        ("wall_pieces", "3', 4', 6'"),
        ("wall_high", "9'"),
        ("wall_push", "4,000"),
        ("wall_dead", "120"),
    ]
    .map(|(id, text)| (id.to_owned(), text.to_owned()))
    .into();
    let alone = derive(BracingKind::ShearWall, &alone, &Nothing).answered.unwrap();
    let both = |reply: &QuickReply| reply.checks.iter().take(2).map(|check| check.ratio).collect::<Vec<_>>();
    for (found, expected) in both(&reply).into_iter().zip(both(&alone)) {
        near(Some(found), expected);
    }
    assert_eq!(alone.smallest[0], panels(&reply)[2]);
}

#[test]
fn the_command_answers_it() {
    let line = r#"{"check":"drawn_and_worked","braced_walls":"Front: W1, walls 4', high 8', push 900"}"#;
    let answer: serde_json::Value = serde_json::from_str(&check_line(line)).unwrap();
    assert_eq!((&answer["check"], &answer["size"]), (&"drawn_and_worked".into(), &"1 of 1 wall".into()));
}

/// Marks, each heavier than the one before it.
const HEAVIER: &str = "A: 7/16 8d 6\nB: 7/16 8d 4\nC: 7/16 8d 3\nD: 15/32 10d 2\nE: 15/32 10d 2, both faces";

proptest! {
    #![proptest_config(ProptestConfig::with_cases(150))]

    /// More wall never uses more of what is drawn; a heavier mark neither; and what is worked always carries.
    #[test]
    fn more_wall_and_heavier_marks_never_use_more(
        long in 3.0..16.0_f64, more in 0.0..6.0_f64, high in 8.0..10.0_f64, push in 300.0..9000.0_f64, mark in 0..4_usize,
    ) {
        let marks = ["A", "B", "C", "D", "E"];
        let used = |mark: &str, long: f64| {
            let walls = format!("Front: {mark}, walls {long:.2}, 5, high {high:.2}, push {push:.1}");
            let reply = outcome(&walls, &[("schedule_lines", HEAVIER)]).answered.unwrap();
            (reply.fact("hardest_drawn").unwrap(), reply.fact("hardest_worked"))
        };
        let (drawn, worked) = used(marks[mark], long);
        prop_assert!(used(marks[mark], long + more).0 <= drawn + 1e-9);
        prop_assert!(used(marks[mark + 1], long).0 <= drawn + 1e-9);
        prop_assert!(worked.is_none_or(|worked| worked <= 1.0), "{worked:?}");
    }

    /// Whatever stands in its lines is answered or refused, and an answer has finite numbers.
    #[test]
    fn any_lines_are_answered_or_refused(
        lines in prop::collection::vec("(A|B|C)[1-3]: (W[1-9], )?walls [1-9]{1,2}(' [1-9]\")?(, [2-9]'){0,2}, high [4-9]', push [1-9][0-9]{2,4}(, dead [0-9]{1,3})?(, under (A|B|C)[1-3])?", 0..5),
        across in any::<bool>(), rod in 0..24_u32,
    ) {
        let rod = rod.to_string();
        let more = [("panels_lie", if across { "across" } else { "along" }), ("rod_in", rod.as_str())];
        let outcome = outcome(&lines.join("\n"), &more);
        let refused = outcome.refusals();
        match outcome.answered {
            Some(reply) => {
                prop_assert!(reply.facts.iter().all(|fact| fact.value.is_finite()), "{:?}", reply.facts);
                prop_assert!(reply.checks.iter().all(|check| check.ratio.is_finite()), "{:?}", reply.checks);
                prop_assert_eq!(reply.action.is_empty(), lines.is_empty());
                let steps = reply.about.working.iter().flat_map(|part| &part.steps);
                prop_assert!(steps.into_iter().all(|step| step.value.is_finite() && !step.source.is_empty()));
            }
            None => prop_assert!(refused.iter().all(|one| one.field == "braced_walls") && !refused.is_empty()),
        }
    }
}
