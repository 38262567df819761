//! What is refused, and what is said of walls that cannot be laid out well. All of our own.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use layout::wall::{
    Backing, Braced, End, Header, Heights, Lay, Layout, Notice, Opening, Part, Partition, Post, Sheets, Spacing, Wall,
    WallError,
};
use measure::Length;
use proptest::prelude::*;

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

fn wall(length: f64, spacing: Spacing) -> Wall {
    Wall::plain(inches(length), Layout::usual(spacing), Heights::usual(inches(92.625)))
}

fn opening(from: f64, width: f64) -> Opening {
    Opening {
        from: inches(from),
        width: inches(width),
        head: inches(82.5),
        sill: Some(inches(36.0)),
        sill_plates: 1,
        jacks: 1,
        kings: 1,
        header: Header { depth: inches(7.25), plies: 2, flat_plates: 0 },
    }
}

fn with(openings: Vec<Opening>) -> Wall {
    Wall { openings, ..wall(144.0, Spacing::Sixteen) }
}

#[track_caller]
fn refused(wall: &Wall) -> String {
    wall.lay_out().unwrap_err().to_string()
}

#[test]
fn openings_off_the_wall_or_over_each_other() {
    assert_eq!(
        refused(&with(vec![opening(120.0, 36.0)])),
        "Opening 1 runs from 120\" to 156\", and the wall from 0\" to 144\". Move it onto the wall or make it narrower."
    );
    assert_eq!(
        refused(&with(vec![opening(70.0, 30.0), opening(20.0, 48.0)])),
        "Openings 2 and 1 overlap, or their king and jack studs do. Opening 1 may begin at 74\" at the earliest: move it, or \
         make one opening of both."
    );
    // What the sentence names is taken.
    assert!(with(vec![opening(74.0, 30.0), opening(20.0, 48.0)]).lay_out().is_ok());
    assert_eq!(
        refused(&with(vec![opening(140.0, 2.0)])),
        "Opening 1 is 2\" wide. 3\" and more are taken: write the rough opening's width."
    );
}

#[test]
fn heights_that_cannot_be() {
    let high = Opening { head: inches(90.0), ..opening(40.0, 36.0) };
    assert_eq!(
        with(vec![high]).lay_out().unwrap_err(),
        WallError::Head { opening: 0, given: inches(90.0), most: inches(86.875) }
    );
    assert!(with(vec![Opening { head: inches(86.875), ..high }]).lay_out().is_ok());
    let low = Opening { sill: Some(inches(2.0)), ..opening(40.0, 36.0) };
    assert_eq!(
        refused(&with(vec![low])),
        "The sill of opening 1 is at 2\". From 3\", which is on the bottom plate, to under 82-1/2\", which is the opening's \
         top, are taken: move it."
    );
    for stud in [0.0, -3.0, 13.9, 289.0] {
        let heights = Heights::usual(inches(stud));
        let error = Wall { heights, ..wall(144.0, Spacing::Sixteen) }.lay_out().unwrap_err();
        assert_eq!(error, WallError::StudLength { given: inches(stud) });
    }
}

#[test]
fn posts_partitions_and_corners_without_room() {
    let post = Wall { posts: vec![Post { centre: inches(60.0), plies: 2 }], ..with(vec![opening(40.0, 36.0)]) };
    let Err(WallError::Post { nearest, .. }) = post.lay_out() else { panic!("a post in an opening") };
    assert_eq!(nearest, inches(80.5));
    assert!(Wall { posts: vec![Post { centre: nearest, plies: 2 }], ..post }.lay_out().is_ok());
    let meets = |centre: f64| Partition { centre: inches(centre), thickness: inches(3.5), backing: Backing::Ladder };
    let partition = Wall { partitions: vec![meets(45.0)], ..with(vec![opening(40.0, 36.0)]) };
    let Err(WallError::Partition { nearest, .. }) = partition.lay_out() else { panic!("a partition in an opening") };
    assert_eq!(nearest, inches(38.25));
    let braced = Braced { from: inches(30.0), to: inches(60.0), plies: 2 };
    let over = Wall { braced: vec![braced], ..with(vec![opening(40.0, 36.0)]) };
    assert!(refused(&over).starts_with("Braced piece 1 runs from 30\" to 60\"."));
    let corner =
        Wall { ends: [End::ThreeStuds { meets: inches(40.0) }, End::OneStud], ..wall(144.0, Spacing::Sixteen) };
    assert!(refused(&corner).starts_with("The wall that meets at a corner is 40\" thick"));
}

/// A partition stud that a king stands in the way of: said where no wood backs the board.
#[test]
fn bare_wallboard_is_said() {
    let partition = Partition { centre: inches(79.0), thickness: inches(3.5), backing: Backing::TwoStudsAndBlocks };
    let laid = Wall { partitions: vec![partition], ..with(vec![opening(40.0, 36.0)]) }.lay_out().unwrap();
    // The jack and the king stand from 76 to 79, and the board's near edge is at 77-1/4: they back it.
    assert_eq!(laid.count(Part::PartitionStud), 1);
    assert_eq!(laid.notices, []);
    let flat = Partition { centre: inches(84.0), backing: Backing::FlatStud(inches(3.5)), ..partition };
    let laid = Wall { partitions: vec![flat], ..with(vec![opening(40.0, 36.0)]) }.lay_out().unwrap();
    let bare = |near_side| Notice::NoBacking { partition: 0, near_side };
    assert_eq!(laid.notices, [bare(true), bare(false)]);
}

/// 48 in goes into 19.2 two and a half times: every other edge of upright sheets is in the air. Lying sheets are not.
#[test]
fn upright_sheets_at_nineteen_point_two() {
    let plain = wall(288.0, Spacing::NineteenPointTwo);
    let upright = Wall { sheets: Some(Sheets::usual(Lay::Upright, &plain)), ..plain.clone() }.lay_out().unwrap();
    let off: Vec<f64> = upright
        .notices
        .iter()
        .filter_map(|notice| match notice {
            Notice::JointOffStud { at, .. } => Some(at.inches()),
            _ => None,
        })
        .collect();
    assert_eq!(off, [48.0, 144.0, 240.0]);
    assert!(upright.notices[0].to_string().contains("at 19.2\" not every joint comes to a center"));
    let lying = Wall { sheets: Some(Sheets::usual(Lay::Lying, &plain)), ..plain }.lay_out().unwrap();
    assert!(
        !lying
            .notices
            .iter()
            .any(|notice| matches!(notice, Notice::JointOffStud { .. } | Notice::SheetsOffLayout { .. }))
    );
}

/// Full sheets with gaps creep by 1/8 in each. From the third joint on less than 1/2 in is left on a side: 3/4 − 5/16.
#[test]
fn full_sheets_creep() {
    let plain = wall(240.0, Spacing::Sixteen);
    let sheets = Sheets { sized_for_spacing: false, ..Sheets::usual(Lay::Upright, &plain) };
    let laid = Wall { sheets: Some(sheets), ..plain }.lay_out().unwrap();
    let off: Vec<f64> = laid
        .notices
        .iter()
        .filter_map(|notice| match notice {
            Notice::JointOffStud { at, .. } => Some(at.inches()),
            _ => None,
        })
        .collect();
    assert_eq!(off, [144.3125, 192.4375]);
}

/// Source of the rule: leftovers narrower than two bays are called out (common practice). 12 ft 8 in at 16 in leaves 8 in;
/// with the joint at 128 it is 24.
#[test]
fn a_narrow_leftover() {
    let plain = wall(152.0, Spacing::Sixteen);
    let laid = Wall { sheets: Some(Sheets::usual(Lay::Upright, &plain)), ..plain }.lay_out().unwrap();
    let narrow = laid.notices.iter().find(|notice| matches!(notice, Notice::NarrowSheet { .. })).unwrap();
    assert_eq!(
        *narrow,
        Notice::NarrowSheet {
            from: inches(144.0),
            to: inches(152.0),
            row: inches(0.0625),
            better: Some(inches(128.0))
        }
    );
    // Columns: the sheet's part F, whole sheets of 48 in, the last one cut.
    assert_eq!(laid.sheets.iter().filter(|sheet| sheet.row == 0).count(), 4);
}

/// Source: the sheet's part F: blocks under a level joint are as many as bays. 12 ft at 16 in: 10 studs, 9 bays.
#[test]
fn lying_sheets_take_blocks() {
    let plain = wall(144.0, Spacing::Sixteen);
    let laid = Wall { sheets: Some(Sheets::usual(Lay::Lying, &plain)), ..plain }.lay_out().unwrap();
    assert_eq!(laid.notices.iter().filter(|notice| matches!(notice, Notice::LevelJoint { .. })).count(), 1);
    assert_eq!(laid.count(Part::PanelBlock), 9);
    // The second row is staggered by three bays, so no joint is over another.
    let from =
        |row: usize| laid.sheets.iter().filter(|s| s.row == row).map(|s| s.along.from.inches()).collect::<Vec<_>>();
    assert_eq!(from(0), [0.0625, 96.0625]);
    assert_eq!(from(1), [0.0625, 48.0625]);
}

#[test]
fn short_cripples_and_long_plates() {
    let near = Opening { head: inches(86.0), ..opening(40.0, 36.0) };
    let laid = with(vec![near]).lay_out().unwrap();
    assert_eq!(laid.notices, [Notice::ShortCripple { opening: 0, length: inches(0.875), above: true }]);
    let tight = Opening { head: inches(86.875), ..near };
    assert_eq!(with(vec![tight]).lay_out().unwrap().count(Part::CrippleAbove), 0);
    let wide = Opening { width: inches(130.0), ..opening(20.0, 130.0) };
    let plates =
        Wall { plate_stock: inches(96.0), openings: vec![wide], ..wall(192.0, Spacing::Sixteen) }.lay_out().unwrap();
    assert!(plates.notices.iter().any(|notice| matches!(notice, Notice::PlateJoint { .. })));
}

proptest! {
    /// Nothing that can be typed panics or runs away; what is refused is refused in a sentence.
    #[test]
    fn anything_typed_is_answered(
        (length, stud, start) in (-10.0_f64..900.0, 10.0_f64..290.0, -17.0_f64..17.0),
        (from, width, head, sill, jacks, kings) in (-5.0_f64..300.0, 0.0_f64..90.0, 0.0_f64..120.0, 0.0_f64..60.0, 0_u8..4, 0_u8..4),
        (post, plies, thickness, stock, lap) in (-5.0_f64..400.0, 0_u8..5, 0.0_f64..11.0, 60.0_f64..300.0, -20.0_f64..20.0),
        (gap, bottom, top) in (-0.1_f64..1.1, -20.0_f64..20.0, 15.0_f64..300.0),
    ) {
        let layout = Layout { start: inches(start), ..Layout::usual(Spacing::Sixteen) };
        let plain = Wall::plain(inches(length), layout, Heights::usual(inches(stud)));
        let sheets = Sheets { gap: inches(gap), bottom: inches(bottom), top: inches(top), ..Sheets::usual(Lay::Lying, &plain) };
        let backing = Backing::FlatStud(inches(thickness));
        let given = Wall {
            openings: vec![Opening { head: inches(head), sill: Some(inches(sill)), jacks, kings, ..opening(from, width) }],
            posts: vec![Post { centre: inches(post), plies }],
            partitions: vec![Partition { centre: inches(post), thickness: inches(thickness), backing }],
            braced: vec![Braced { from: inches(post), to: inches(post + 48.0), plies }],
            ends: [End::FlatStud { meets: inches(thickness) }, End::ThreeStuds { meets: inches(thickness) }],
            plate_stock: inches(stock),
            laps: [inches(lap); 2],
            sheets: Some(sheets),
            ..plain
        };
        match given.lay_out() {
            Ok(laid) => prop_assert!(laid.notices.iter().all(|notice| notice.to_string().ends_with('.'))),
            Err(error) => prop_assert!(error.to_string().ends_with('.'), "{error}"),
        }
    }
}
