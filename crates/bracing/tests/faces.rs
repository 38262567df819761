//! Both faces of a wall, and walls whose level joints lie on nothing.

#![expect(clippy::expect_used, reason = "in a test a panic is the report")]

use bracing::{
    Edition, Ends, Framing, Joined, LevelJoints, Nailing, OtherFace, SegmentedWall, ShearFastener, Sheathing, Strength,
    check_line, check_perforated, check_segmented, nailings, read_other_face, strength,
};
use measure::{Force, Length, LineLoad};
use proptest::prelude::*;
use standards::Status;
use standards::sdpws_2015::table_4_3::{SHEAR_WALLS, ShearWallRow, ShearWallTable};

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

fn feet(feet: f64) -> Length {
    Length::from_feet(feet)
}

fn eights(edge: f64) -> Nailing {
    Nailing {
        sheathing: Sheathing::Sheathing,
        thickness: inches(7.0 / 16.0),
        fastener: ShearFastener::Common8d,
        edge: inches(edge),
        across_studs: false,
        both_faces: false,
    }
}

/// Douglas fir, so that no factor is in the way.
fn frame(studs: f64) -> Framing {
    Framing {
        specific_gravity: 0.5,
        studs: inches(studs),
        wet: false,
        hold_downs_inside: false,
        edition: Edition::Of2015,
        joints: LevelJoints::Blocked,
        other_face: OtherFace::Bare,
    }
}

fn with(frame: Framing, other: &str) -> Framing {
    Framing { other_face: read_other_face(other).expect("it is written as it is read"), ..frame }
}

fn plf(strength: &Strength) -> f64 {
    strength.nominal.plf()
}

fn of(nailing: &Nailing, frame: &Framing) -> Strength {
    strength(nailing, frame).expect("the tables have it")
}

/// Own arithmetic on Tables 4.3A and 4.3C: 670 plf of 7/16 in with 8d at 6 in on studs at 24 in, and 150 of 1/2 in board;
/// SDPWS 2015 4.3.3.3.2 exception (from memory): in wind they are added.
#[test]
fn board_on_the_other_face_is_added_in_wind() {
    let both = of(&eights(6.0), &with(frame(24.0), "gypsum 1/2 5d cooler 7"));
    assert_eq!(plf(&both), 670.0 + 150.0);
    assert_eq!(both.allowable.line_load().plf(), 410.0);
    let second = both.second.expect("it counts");
    assert_eq!((second.joined, second.source.status), (Joined::Added, Status::FromMemory));
    // The wood that nails enter is the panels' footnote alone: 0.92 of 670, and all of 150.
    let spruce = Framing { specific_gravity: 0.42, ..with(frame(24.0), "gypsum 1/2 5d cooler 7") };
    assert!((plf(&of(&eights(6.0), &spruce)) - (0.92 * 670.0 + 150.0)).abs() < 1e-9);
    // The lean counts the panels alone: no rule for the board's stiffness was read.
    assert_eq!(both.stiffness, both.panels_stiffness);
}

/// SDPWS 2015 4.3.3.3.1 (from memory): the same panels nailed alike are twice one face, and nailed otherwise go by their
/// stiffnesses: 980/22 × (15 + 22) = 1,648.2 plf.
#[test]
fn the_same_panels_nailed_otherwise_go_by_stiffness() {
    let alike = of(&eights(6.0), &with(frame(24.0), "7/16 8d 6"));
    let both = of(&Nailing { both_faces: true, ..eights(6.0) }, &frame(24.0));
    assert!((plf(&alike) - plf(&both)).abs() < 1e-9);
    assert_eq!(alike.stiffness, both.stiffness);
    let otherwise = of(&eights(6.0), &with(frame(24.0), "7/16 8d 4"));
    assert!((plf(&otherwise) - 1648.2).abs() < 0.05, "{}", plf(&otherwise));
    assert_eq!(otherwise.second.map(|second| second.joined), Some(Joined::ByStiffness));
}

/// SDPWS 2015 4.3.3.3.2 (from memory): other panels are twice the weaker face, or the stronger alone. 15/32 in with 10d at
/// 4 in is 1,290 plf and 7/16 in with 8d at 6 in 670: 1,340. With 10d at 2 in it is 2,155, which is more than that.
#[test]
fn other_panels_are_twice_the_weaker_or_the_stronger_alone() {
    let other = with(frame(24.0), "15/32 10d 4");
    let twice = of(&eights(6.0), &other);
    assert_eq!((plf(&twice), twice.second.map(|second| second.joined)), (1340.0, Some(Joined::TwiceTheWeaker)));
    let alone = of(&eights(6.0), &with(frame(24.0), "15/32 10d 2"));
    assert_eq!((plf(&alone), alone.second.map(|second| second.joined)), (2155.0, Some(Joined::StrongerAlone)));
}

/// Board on a wall whose panels are on both faces lies over one of them: nothing of it counts.
#[test]
fn layers_on_one_face_are_never_added() {
    let both = Nailing { both_faces: true, ..eights(6.0) };
    let bare = of(&both, &frame(16.0));
    assert_eq!(of(&both, &with(frame(16.0), "gypsum 1/2 5d cooler 4")), bare);
}

/// Every row of wallboard of Table 4.3C, by what is typed: row by row.
#[test]
fn every_row_of_wallboard_is_found() {
    let rows = SHEAR_WALLS.iter().filter(|row| row.sheathing == Sheathing::Wallboard);
    let mut count = 0;
    for row in rows {
        let inches = |length: Option<Length>| length.map_or(0.0, Length::inches);
        let thick = if row.thickness.inches() < 0.6 { "1/2" } else { "5/8" };
        let nail = match row.fastener {
            ShearFastener::Cooler5d => "5d cooler",
            ShearFastener::Cooler6d => "6d cooler",
            _ => "screws",
        };
        let blocked = if row.blocked == Some(true) { " blocked" } else { "" };
        let text = format!("gypsum {thick} {nail} {}/{}{blocked}", inches(row.edge), inches(row.field));
        let found = of(&eights(6.0), &with(frame(row.studs.inches()), &text)).second.expect("it counts");
        assert_eq!(found.shear, row.wind, "{text}: {:?}", found.row);
        count += 1;
    }
    assert_eq!(count, 17);
}

#[test]
fn what_no_table_has_is_refused() {
    for other in [
        "gypsum 1/2 screws 8/16",
        "gypsum 1/2 6d cooler 7",
        "gypsum 5/8 5d cooler 7",
        "gypsum 3/8 5d cooler 7",
        "gypsum 1/2 5d cooler 5",
        "7/16 8d 5",
    ] {
        let refused = strength(&eights(6.0), &with(frame(16.0), other)).expect_err(other).to_string();
        assert!(refused.contains("Table 4.3"), "{other}: {refused}");
    }
    // Board that is not blocked, with screws, has no row at 24 in.
    assert!(strength(&eights(6.0), &with(frame(24.0), "gypsum 1/2 screws 8/12")).is_err());
}

#[test]
fn lines_that_are_not_understood_say_what_is_taken() {
    for text in [
        "gypsum",
        "gypsum 1/2",
        "gypsum 1/2 cooler 7",
        "gypsum 1/2 5d cooler",
        "gypsum 1/2 screws 8",
        "plaster",
        "gypsum 1/2 5d cooler 0",
    ] {
        let says = read_other_face(text).expect_err(text).to_string();
        assert!(says.contains("gypsum 1/2 5d cooler 7") && says.ends_with('.'), "{says}");
    }
    assert_eq!(read_other_face("none"), Ok(OtherFace::Bare));
}

fn line(height: f64, pieces: &[f64], shear: f64) -> SegmentedWall {
    SegmentedWall {
        height: feet(height),
        pieces: pieces.iter().copied().map(feet).collect(),
        shear: Force::from_pounds(shear),
        dead: LineLoad::ZERO,
        ends: Ends { post: Length::ZERO, hold_down: Length::ZERO },
    }
}

/// Board counts to 2:1, and to 1.5:1 where it is not blocked (SDPWS 2015 Table 4.3.4, from memory): a piece that is
/// narrower takes it from the whole line.
#[test]
fn board_does_not_count_in_a_line_with_a_narrow_piece() {
    let own = of(&eights(6.0), &frame(24.0));
    let unblocked = of(&eights(6.0), &with(frame(24.0), "gypsum 1/2 5d cooler 7"));
    let capacity = |strength: &Strength, pieces: &[f64]| check_segmented(&line(9.0, pieces, 1000.0), strength).capacity;
    assert_eq!(capacity(&unblocked, &[5.9, 8.0]), capacity(&own, &[5.9, 8.0]));
    assert!(capacity(&unblocked, &[6.1, 8.0]) > capacity(&own, &[6.1, 8.0]));
    // A piece past the limit of the panels counts for nothing and asks nothing of the board.
    assert!(capacity(&unblocked, &[2.0, 8.0]) > capacity(&own, &[2.0, 8.0]));
    let blocked = of(&eights(6.0), &with(frame(16.0), "gypsum 1/2 5d cooler 7 blocked"));
    assert!(capacity(&blocked, &[5.9, 8.0]) > capacity(&of(&eights(6.0), &frame(16.0)), &[5.9, 8.0]));
}

fn open(studs: f64, field: f64) -> Framing {
    Framing { joints: LevelJoints::Unblocked { field: inches(field) }, ..frame(studs) }
}

/// Table 4.3.3.2 row by row (from memory), on 670 plf of 7/16 in with 8d at 6 in.
#[test]
fn level_joints_on_nothing_row_by_row() {
    for (studs, factors) in [(12.0, [1.0, 0.8]), (16.0, [0.8, 0.6]), (20.0, [0.6, 0.5]), (24.0, [0.5, 0.4])] {
        for (field, factor) in [6.0, 12.0].into_iter().zip(factors) {
            for edge in [6.0, 4.0, 2.0] {
                let found = of(&eights(edge), &open(studs, field));
                assert!((plf(&found) - factor * 670.0).abs() < 1e-9, "{studs} {field} {edge}: {}", plf(&found));
                // So much of the stiffness, too: 15 kips an inch.
                let stiffness = found.stiffness.expect("the table has it").pounds_per_inch();
                assert!((stiffness - factor * 15_000.0).abs() < 1e-6);
                assert!(found.as_thicker.is_none(), "it is a share of the wall on studs at 24 in");
            }
        }
    }
}

#[test]
fn level_joints_on_nothing_have_limits_of_their_own() {
    let found = of(&eights(6.0), &open(16.0, 12.0));
    let pieces = check_segmented(&line(8.0, &[3.9, 4.0], 500.0), &found).pieces;
    assert!(pieces[0].ratio.is_err() && pieces[1].ratio.is_ok(), "2:1");
    assert!(check_line(&line(16.0, &[9.0], 500.0), &eights(6.0), &open(16.0, 12.0)).is_ok());
    assert!(check_line(&line(16.1, &[9.0], 500.0), &eights(6.0), &open(16.0, 12.0)).is_err(), "16 ft");
    assert!(check_line(&line(16.1, &[9.0], 500.0), &eights(6.0), &frame(16.0)).is_ok());
    let perforated = bracing::PerforatedWall {
        height: feet(8.0),
        pieces: vec![feet(8.0), feet(8.0)],
        openings: vec![bracing::Opening { width: feet(3.0), height: feet(4.0), sheathed: true }],
        shear: Force::from_pounds(500.0),
    };
    assert!(check_perforated(&perforated, &found).is_err(), "no rule for one was read");
}

fn panels() -> Vec<Nailing> {
    let row = |row: &&ShearWallRow| row.table == ShearWallTable::A && row.sheathing.is_wood_structural_panel();
    let nailing = |row: &ShearWallRow| Nailing {
        sheathing: row.sheathing,
        thickness: row.thickness,
        fastener: row.fastener,
        edge: row.edge.expect("panels have one"),
        across_studs: false,
        both_faces: false,
    };
    SHEAR_WALLS.iter().filter(row).map(nailing).collect()
}

/// Every wood panel of Table 4.3A with every other behind it: never less than either alone, never more than both.
#[test]
fn a_second_face_never_lowers_and_never_more_than_adds() {
    let frame = frame(24.0);
    for one in panels() {
        for other in panels() {
            let alone = |nailing: &Nailing| plf(&of(nailing, &frame));
            let both = plf(&of(&one, &Framing { other_face: OtherFace::Panels(other), ..frame }));
            let (first, second) = (alone(&one), alone(&other));
            assert!(both >= first.max(second) - 1e-9, "{one} {other}: {both}");
            assert!(both <= first + second + 1e-9, "{one} {other}: {both}");
        }
    }
}

proptest! {
    /// A line of pieces is never worse for a second face, and never better for joints on nothing.
    #[test]
    fn a_line_is_never_worse_for_board_and_never_better_unblocked(
        pieces in prop::collection::vec(2.0_f64..16.0, 1..5),
        studs in prop::sample::select(vec![12.0, 16.0, 24.0]),
        field in prop::sample::select(vec![6.0, 12.0]),
        board in prop::sample::select(vec!["gypsum 1/2 5d cooler 7", "gypsum 1/2 5d cooler 4", "gypsum 5/8 6d cooler 7", "gypsum 5/8 6d cooler 4"]),
        which in 0_usize..12,
    ) {
        let nailing = nailings().nth(which).expect("so many are offered");
        let wall = line(9.0, &pieces, 1000.0);
        let capacity = |frame: &Framing| check_segmented(&wall, &of(&nailing, frame)).capacity.pounds();
        let plain = capacity(&frame(studs));
        prop_assert!(capacity(&with(frame(studs), board)) >= plain - 1e-9);
        prop_assert!(capacity(&open(studs, field)) <= plain + 1e-9);
    }

    /// Whatever is typed is read or refused; what is read is written and reads back.
    #[test]
    fn other_faces_read_back(text in "(gypsum|drywall)? ?(1/2|5/8|7/16)? ?(5d|6d|8d)? ?(cooler|screws|4)? ?[0-9]{0,2}(/[0-9]{1,2})? ?(blocked)?") {
        if let Ok(read) = read_other_face(&text) {
            prop_assert_eq!(read_other_face(&read.to_string()), Ok(read));
        }
    }
}
