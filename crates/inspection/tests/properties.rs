//! What must hold for any reading.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

use inspection::anchor::{AnchorBolt, Nut, Sill, SillRequired, Washer, judge_sill};
use inspection::cuts::{CutStud, Doubled, StudCut, judge_cut_stud};
use inspection::moisture::{CloseInLimit, Day, Reading, Spot, Visit, judge_visits};
use inspection::nailing::{Driven, Line, Panel, judge_line, judge_overdriven};
use inspection::stud_spacing::{Edge, JudgedWall, Pulled, Pulls, Rule, Sheets, Wall, judge_spacing};
use inspection::{Check, MoistureContent, Origin, Required, Seen, Subject, Verdict};
use measure::Length;
use proptest::prelude::*;
use standards::irc_2021::r602_6::StudIn;

const WALL_SIXTEENTHS: i32 = 240 * 16;

fn sixteenths(count: i32) -> Length {
    Length::from_inches(f64::from(count) / 16.0)
}

fn judge(centres: &[i32]) -> JudgedWall {
    let rule = Rule::usual(Required::new(Length::from_inches(16.0), Origin::Typed), Vec::new());
    let wall = Wall {
        pulled: Pulled::new(Pulls::RunningToCentre, centres.iter().map(|centre| sixteenths(*centre))),
        stud: Length::from_inches(1.5),
        length: Some(sixteenths(WALL_SIXTEENTHS)),
        openings: Vec::new(),
        sheets: Some(Sheets::four_feet()),
    };
    judge_spacing(&wall, &rule).judged.unwrap()
}

/// Centres of studs in sixteenths, ascending, clear of the end studs.
fn studs() -> impl Strategy<Value = Vec<i32>> {
    let places = prop::collection::btree_set(64..WALL_SIXTEENTHS - 64, 1..20);
    places.prop_map(|places| places.into_iter().collect())
}

fn supported(edge: &Edge) -> bool {
    edge.verdict().is_some_and(Verdict::holds)
}

proptest! {
    #[test]
    fn mirrored_pulls_give_mirrored_bays(studs in studs()) {
        let mirrored: Vec<i32> = studs.iter().rev().map(|stud| WALL_SIXTEENTHS - stud).collect();
        let bays = |wall: JudgedWall| wall.bays.into_iter().map(|bay| (bay.spacing, bay.kind, bay.verdict()));
        let back: Vec<_> = bays(judge(&mirrored)).rev().collect();
        prop_assert_eq!(bays(judge(&studs)).collect::<Vec<_>>(), back);
    }

    // Sheets of 48 in divide the plate of 240 in, so the edges mirror as well.
    #[test]
    fn mirrored_pulls_give_mirrored_edges(studs in studs()) {
        let mirrored: Vec<i32> = studs.iter().rev().map(|stud| WALL_SIXTEENTHS - stud).collect();
        let edges = |wall: JudgedWall| wall.edges.into_iter().map(|edge| edge.verdict());
        prop_assert_eq!(edges(judge(&studs)).collect::<Vec<_>>(), edges(judge(&mirrored)).rev().collect::<Vec<_>>());
    }

    #[test]
    fn a_stud_more_never_takes_an_edge_away(studs in studs(), more in 64..WALL_SIXTEENTHS - 64) {
        let mut with = studs.clone();
        with.push(more);
        with.sort_unstable();
        with.dedup();
        let (before, after) = (judge(&studs), judge(&with));
        prop_assert_eq!(before.edges.len(), after.edges.len());
        for (before, after) in before.edges.iter().zip(&after.edges) {
            prop_assert!(!supported(before) || supported(after), "{before:?} {after:?}");
        }
        prop_assert!(after.widest <= before.widest);
    }

    #[test]
    fn what_is_to_be_added_cures_the_edges(studs in studs()) {
        let wall = judge(&studs);
        let mut cured = studs.clone();
        cured.extend(wall.edges.iter().filter_map(|edge| edge.add).map(|at| (at.inches() * 16.0) as i32));
        cured.sort_unstable();
        cured.dedup();
        prop_assert!(judge(&cured).edges.iter().all(supported));
    }

    #[test]
    fn a_larger_hole_is_never_better(width in 40..200_i32, one in 1..200_i32, more in 0..100_i32, row in 0..5_u8) {
        for stud_in in [StudIn::ExteriorOrBearing, StudIn::NonbearingPartition] {
            for doubled in [Doubled::Single, Doubled::Doubled { bored_in_a_row: Seen::Observed(row) }] {
                let judge = |diameter: i32| {
                    let to_face = Seen::Observed(sixteenths((width - diameter) / 2));
                    let cut =
                        StudCut::Hole { diameter: sixteenths(diameter), to_face, notch_beside: Seen::Observed(false) };
                    judge_cut_stud(&CutStud { width: sixteenths(width), stud_in, doubled, cut }).verdict()
                };
                prop_assert!(judge(one) <= judge(one + more));
            }
        }
    }

    #[test]
    fn a_deeper_notch_is_never_better(width in 40..200_i32, one in 1..200_i32, more in 0..100_i32) {
        let judge = |depth: i32| {
            let cut = StudCut::Notch { depth: sixteenths(depth) };
            let stud_in = StudIn::ExteriorOrBearing;
            judge_cut_stud(&CutStud { width: sixteenths(width), stud_in, doubled: Doubled::Single, cut }).verdict()
        };
        prop_assert!(judge(one) <= judge(one + more));
    }

    #[test]
    fn nothing_over_its_limit_passes(found in -1e4..1e4_f64, limit in -1e4..1e4_f64) {
        let (length, most) = (Length::from_inches(found), Length::from_inches(limit));
        let check = Check::at_most(Subject::Bow, length, most, Origin::Typed);
        prop_assert_eq!(check.verdict.holds(), found - limit <= 1e-9);
        let turned = Check::at_least(Subject::Bow, -length, -most, Origin::Typed);
        prop_assert_eq!(check.verdict, turned.verdict);
    }

    #[test]
    fn the_order_in_which_visits_are_given_does_not_matter(
        days in prop::collection::vec((0..6_i32, prop::collection::vec((0..4_u32, 80..300_u32), 0..5)), 0..6),
        turn in 0..6_usize,
    ) {
        let reading = |(spot, tenths): &(u32, u32)| Reading {
            spot: Spot(*spot),
            moisture: MoistureContent::from_percent(f64::from(*tenths) / 10.0),
        };
        let visit = |(day, readings): &(i32, Vec<(u32, u32)>)| Visit {
            day: Day(*day),
            readings: readings.iter().map(reading).collect(),
        };
        let visits: Vec<Visit> = days.iter().map(visit).collect();
        let mut turned = visits.clone();
        turned.rotate_left(turn.min(visits.len()));
        let limit = CloseInLimit::default().required();
        let (one, other) = (judge_visits(&visits, &limit), judge_visits(&turned, &limit));
        prop_assert_eq!(one.verdict, other.verdict);
        prop_assert_eq!(one.still_wet, other.still_wet);
    }

    #[test]
    fn a_wetter_reading_is_never_better(readings in prop::collection::vec(80..300_u32, 1..6), more in 0..100_u32) {
        let limit = CloseInLimit::default().required();
        let judge = |readings: &[u32]| {
            let reading = |(spot, tenths): (usize, &u32)| Reading {
                spot: Spot(spot as u32),
                moisture: MoistureContent::from_percent(f64::from(*tenths) / 10.0),
            };
            judge_visits(&[Visit { day: Day(0), readings: readings.iter().enumerate().map(reading).collect() }], &limit)
        };
        let mut wetter = readings.clone();
        wetter[0] += more;
        prop_assert!(judge(&readings).verdict <= judge(&wetter).verdict);
    }

    #[test]
    fn more_overdriven_nails_are_never_better(deep in 0..33_u32, too_deep in 0..8_u32, more in 0..8_u32) {
        let panel = Panel { perimeter_nails: 48, edge_spacing: Length::from_inches(6.0), dry_when_nailed: Some(true) };
        let judge = |deep, too_deep| judge_overdriven(&panel, Driven { deep, too_deep });
        for worse in [judge(deep + more, too_deep), judge(deep, too_deep + more)] {
            prop_assert!(judge(deep, too_deep).add <= worse.add);
            prop_assert!(judge(deep, too_deep).verdict <= worse.verdict);
        }
    }

    #[test]
    fn a_bolt_that_holds_never_harms(length in 100..2000_i32, places in prop::collection::vec(0..1000_i32, 1..6)) {
        let bolt = |per_mille: &i32| AnchorBolt {
            at: sixteenths(length * per_mille / 1000),
            diameter: Length::from_inches(0.5),
            embedment: Seen::Observed(Length::from_inches(8.0)),
            projection: Seen::Observed(Length::from_inches(3.0)),
            nut: Seen::Observed(Nut::Tight),
            washer: Seen::Observed(Washer::Cut),
            from_face: Seen::Observed(Length::from_inches(1.75)),
            stud_in_the_way: false,
        };
        let judge = |places: &[i32], nut: Seen<Nut>| {
            let mut bolts: Vec<AnchorBolt> = places.iter().map(bolt).collect();
            bolts[0].nut = nut;
            let (width, plates) = (Length::from_inches(3.5), Length::from_inches(1.5));
            let required = SillRequired::by_code();
            judge_sill(&Sill { length: sixteenths(length), width, plates, required, bolts }).piece.verdict()
        };
        let tight = judge(&places, Seen::Observed(Nut::Tight));
        let hidden = judge(&places, Seen::CouldNotBeSeen);
        let missing = judge(&places, Seen::Observed(Nut::Missing));
        prop_assert!(tight <= hidden && hidden <= missing, "{tight:?} {hidden:?} {missing:?}");
    }

    #[test]
    fn a_nail_that_missed_never_helps(
        (driven, missed) in (1..40_u32).prop_flat_map(|driven| (Just(driven), 0..driven)),
    ) {
        let judge = |missed| judge_line(&Line {
            of: Subject::EdgeNails,
            length: Length::from_inches(96.0),
            spacing: Required::new(Length::from_inches(6.0), Origin::Typed),
            driven,
            missed: Seen::Observed(missed),
            widest_gap: None,
        });
        let (one, worse) = (judge(missed), judge(missed + 1));
        prop_assert!(one.finding.verdict() <= worse.finding.verdict() && one.add <= worse.add);
        // Nailed again as said, the line has what was asked for.
        prop_assert!(one.hold.unwrap() + one.add >= one.asked);
        prop_assert_eq!(one.finding.verdict() == Verdict::Out, one.hold.unwrap() < one.asked);
    }
}
