//! The engineer's schedule: typed, pasted, written out and read back.

use bracing::ShearFastener;
use bracing::schedule::read_schedule;
use measure::Length;
use proptest::prelude::*;

const TYPED: &str = "sheet S2.1 rev B
P1: 7/16 8d 6/12, studs 2x6, post 2, blocked, plate 16d at 6, bolts 5/8 at 48, hold-down HD1
P2: 15/32 structural i 10d 3, both faces, across, boundary 2, blocking 2x4 flat, sill 16d at 4, studs 2x6, post 3, washer 3x3x1/4, hold-down HD2

HD1: hold-down 2,500 lb, rod 5/8, gives 1/8
HD2: hold-down 9,000 lb, rod 7/8, post 6x6
ST1: strap 1500";

const PASTED: &str = "Mark,Sheathing,Nail,Edge,Field,Faces,Studs,Posts,Blocking,Bolts,Hold-down
P1,7/16,8d,6,12,1,2x6,2,yes,5/8 at 48,HD1
P2,\"15/32\",10d,3,12,2,2x6,3,,,HD2";

#[test]
fn a_schedule_is_typed_line_by_line() {
    let schedule = read_schedule(TYPED).unwrap();
    assert_eq!(schedule.sheet, "S2.1 rev B");
    assert_eq!((schedule.panels.len(), schedule.hold_downs.len()), (2, 3));
    let (one, two) = (&schedule.panels[0], &schedule.panels[1]);
    assert_eq!((one.nailing.fastener, one.field), (ShearFastener::Common8d, Some(Length::from_inches(12.0))));
    assert_eq!((one.plate.as_str(), one.blocked), ("16d at 6", Some(true)));
    assert_eq!(one.bolts, Some((Length::from_inches(0.625), Length::from_inches(48.0))));
    assert!(two.nailing.both_faces && two.nailing.to_string().contains("Structural I"));
    assert_eq!(schedule.hold_down(&two.hold_down).map(|found| found.load.pounds()), Some(9000.0));
    assert!(schedule.hold_down("st1").is_some_and(|found| found.strap));
    assert_eq!(schedule.missing_hold_downs().count(), 0);
}

#[test]
fn a_schedule_is_pasted_from_a_table() {
    let schedule = read_schedule(PASTED).unwrap();
    assert_eq!(schedule.panels.len(), 2);
    assert_eq!(
        schedule.panels[0].to_string(),
        read_schedule(TYPED).unwrap().panels[0].to_string().replace(", plate 16d at 6", "")
    );
    assert!(schedule.panels[1].nailing.both_faces && schedule.panels[1].blocked.is_none());
    let missing: Vec<_> = schedule.missing_hold_downs().collect();
    assert_eq!(missing, [("P1", "HD1"), ("P2", "HD2")]);
    assert_eq!(read_schedule(&PASTED.replace(',', "\t")).unwrap(), schedule);
}

#[test]
fn written_out_it_reads_back() {
    for text in [TYPED, PASTED, "", "sheet A1"] {
        let schedule = read_schedule(text).unwrap();
        assert_eq!(read_schedule(&schedule.to_string()).unwrap(), schedule, "{schedule}");
        assert_eq!(read_schedule(&schedule.to_csv()).unwrap(), schedule, "{}", schedule.to_csv());
    }
}

/// A boundary beside edge and field, what blocks the edges, and the nails of the sill.
#[test]
fn boundary_blocking_and_sill_are_read() {
    let schedule = read_schedule(TYPED).unwrap();
    let two = &schedule.panels[1];
    assert_eq!(two.boundary, Some(Length::from_inches(2.0)));
    assert_eq!((two.blocking.as_str(), two.blocked, two.sill.as_str()), ("2x4 flat", Some(true), "16d at 4"));
    let pasted = "Type,Thickness,Nails,Boundary nailing,Edge nailing,Edge blocking,Sill nailing\nA,15/32,10d,2,3,2x4 flat,16d at 4";
    let pasted = read_schedule(pasted).unwrap();
    let one = &pasted.panels[0];
    assert_eq!((one.boundary, one.nailing.edge), (two.boundary, two.nailing.edge));
    assert_eq!((&one.blocking, one.blocked, &one.sill), (&two.blocking, two.blocked, &two.sill));
    for (cell, blocked) in [("yes", Some(true)), ("no", Some(false)), ("", None)] {
        let text = format!("Mark,Panel,Nail,Edge,Blocking\nA,7/16,8d,4,{cell}");
        assert_eq!(read_schedule(&text).unwrap().panels[0].blocked, blocked, "{cell}");
    }
}

/// Every line that is wrong is said, by its number, with what is taken.
#[test]
fn what_is_not_understood_is_said_line_by_line() {
    let problems = read_schedule(
        "P1: 7/16 8d 6\nP1: 7/16 8d 4\nfoo\nP3: 7/16 8d 4, glue\nHD: hold-down heavy\nP4:\nP5: 7/16 8d 4, bolts 5/8",
    )
    .unwrap_err();
    let lines: Vec<usize> = problems.iter().map(|problem| problem.line).collect();
    assert_eq!(lines, [2, 3, 4, 5, 6, 7]);
    assert!(problems.iter().all(|problem| problem.problem.ends_with('.')), "{problems:?}");
    assert!(problems[0].to_string().starts_with("Line 2: P1 stands in two lines"), "{problems:?}");
    let many = "x".repeat(3) + &(0..80).map(|index| format!("\nP{index}: 7/16 8d 4")).collect::<String>();
    assert!(read_schedule(&many).is_err());
}

proptest! {
    /// Whatever is pasted is read or refused; what is read is written and reads back.
    #[test]
    fn anything_may_be_pasted(text in "[A-Za-z0-9:,;/ \"\n.-]{0,200}") {
        if let Ok(schedule) = read_schedule(&text) {
            prop_assert_eq!(read_schedule(&schedule.to_csv()), Ok(schedule.clone()), "{}", schedule.to_csv());
            prop_assert_eq!(read_schedule(&schedule.to_string()), Ok(schedule));
        }
    }

    /// Nearly right lines, too.
    #[test]
    fn nearly_right_lines(lines in prop::collection::vec(
        "P[0-9]{1,2}: (7/16|15/32|3/8) (structural i )?(6d|8d|10d) [1-7](/[0-9]{1,2})?(, (both faces|across|field 12|studs 2x[46]|post [2-4]|blocked|unblocked|blocking 2x4 flat|boundary [2-6]|sill 16d at 6|plate 16d at 4|bolts (1/2|5/8) at [1-9]{2}|washer 3x3|hold-down HD[1-3]|glue)){0,4}", 0..6)) {
        if let Ok(schedule) = read_schedule(&lines.join("\n")) {
            prop_assert_eq!(read_schedule(&schedule.to_csv()), Ok(schedule.clone()), "{}", schedule.to_csv());
            prop_assert_eq!(read_schedule(&schedule.to_string()), Ok(schedule));
        }
    }
}
