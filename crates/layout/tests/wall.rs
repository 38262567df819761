//! Walls against published examples and field cases; vectors of our own are marked so.

use layout::wall::{
    Backing, Braced, Ceiling, End, Header, Heights, LaidWall, Layout, Notice, OnPlates, Opening, Part, Partition, Post,
    PullTo, RoughSize, Spacing, Span, Wall, WallError, XSide, board_feet, door_head, nails_in_sheet,
    studs_by_the_pocketbook,
};
use measure::{Denominator, Length, Rounding};

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

/// Binary noise of a few additions; a tape shows nothing under 1/64 in.
const NOISE: f64 = 1e-9;

#[track_caller]
fn equals(found: Length, expected: f64) {
    assert!((found.inches() - expected).abs() < NOISE, "{} against {expected}", found.inches());
}

fn wall(length: f64, spacing: Spacing) -> Wall {
    Wall::plain(inches(length), Layout::usual(spacing), Heights::usual(inches(92.625)))
}

fn window(from: f64, width: f64) -> Opening {
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

fn door(from: f64, width: f64) -> Opening {
    Opening { sill: None, ..window(from, width) }
}

fn centres(laid: &LaidWall, part: Part) -> Vec<f64> {
    laid.marks.iter().filter(|mark| mark.part == part).map(|mark| mark.centre.inches()).collect()
}

fn full_height(laid: &LaidWall) -> usize {
    laid.marks.iter().filter(|mark| mark.part.is_full_height()).count()
}

/// Source: stairs and layout sheet B1, derived there: 175-1/2 in at 16 in: 12 studs; first near edge 15-1/4 (NAVEDTRA 14044).
#[test]
fn the_sheet_s_plain_wall() {
    let laid = wall(175.5, Spacing::Sixteen).lay_out().unwrap();
    assert_eq!(full_height(&laid), 12);
    assert_eq!(laid.count(Part::Stud) + laid.count(Part::EndStud), 12);
    equals(laid.marks[0].pull, 0.0);
    for (number, mark) in laid.marks.iter().enumerate().skip(1).take(10) {
        equals(mark.pull, 16.0 * number as f64 - 0.75);
        assert_eq!(mark.x, XSide::Past);
    }
    equals(laid.marks[11].pull, 174.0);
    assert_eq!(laid.notices, Vec::new());
}

/// Source: a builders' pocketbook, example 33: 60 ft at 16 in: 60 − 15 + 1 = 46 studs; an exact layout has as many.
#[test]
fn sixty_feet_of_studs() {
    assert_eq!(full_height(&wall(720.0, Spacing::Sixteen).lay_out().unwrap()), 46);
    equals(inches(studs_by_the_pocketbook(Length::from_feet(60.0))), 46.0);
}

/// Source: the sheet's B1: 19.2 is 96/5; marks at 19-3/16, 38-3/8, 57-5/8, 76-13/16, 96, each rounded from its own product.
#[test]
fn the_tape_at_nineteen_point_two() {
    let layout = Layout { pull_to: PullTo::Centre, ..Layout::usual(Spacing::NineteenPointTwo) };
    let laid = Wall { layout, ..wall(400.0, Spacing::NineteenPointTwo) }.lay_out().unwrap();
    let text = |mark: usize| laid.marks[mark].pull.to_inches_fraction(Denominator::Sixteenth);
    let read: Vec<String> = (1..=5).map(text).collect();
    assert_eq!(read, ["19-3/16\"", "38-3/8\"", "57-5/8\"", "76-13/16\"", "96\""]);
    // A rounded step added up is 1/16 in short at each sheet: the mark is not made so.
    let added = 5.0 * inches(19.2).rounded(Denominator::Sixteenth, Rounding::Nearest);
    equals(added, 95.9375);
    for number in 1..=20 {
        equals(laid.marks[number].pull, 96.0 * number as f64 / 5.0);
        assert_eq!(laid.marks[number].x, XSide::Over);
    }
    equals(laid.marks[20].pull, 384.0);
}

/// The tape at 16 in, near and far edge. Source: irc_rules section 16, near edge 16k − 3/4; the far edge is a stud further.
#[test]
fn the_tape_at_sixteen_from_both_edges() {
    let near = wall(240.0, Spacing::Sixteen).lay_out().unwrap();
    let layout = Layout { pull_to: PullTo::FarEdge, ..Layout::usual(Spacing::Sixteen) };
    let far = Wall { layout, ..wall(240.0, Spacing::Sixteen) }.lay_out().unwrap();
    for number in 1..=14 {
        equals(near.marks[number].pull, 16.0 * number as f64 - 0.75);
        equals(far.marks[number].pull, 16.0 * number as f64 + 0.75);
        equals(far.marks[number].centre, near.marks[number].centre.inches());
        assert_eq!(far.marks[number].x, XSide::Short);
    }
    assert_eq!(near.marks[1].pull.to_inches_fraction(Denominator::Sixteenth), "15-1/4\"");
}

/// Source: NAVEDTRA 14044: 15-1/4 in of the second wall is measured from the outer face of the first wall's panel, here
/// 3-1/2 in of wall and 1/2 in of panel before this plate.
#[test]
fn the_second_wall_starts_from_the_first_one_s_panel() {
    let layout = Layout { start: inches(-4.0), ..Layout::usual(Spacing::Sixteen) };
    let laid = Wall { layout, ..wall(120.0, Spacing::Sixteen) }.lay_out().unwrap();
    equals(laid.marks[1].pull, 11.25);
    equals(laid.marks[2].pull, 27.25);
}

/// Field case 41: pulls from stud to stud crept by an inch each. Here each mark is a product, so the thousandth foot has no
/// drift; and 17 in is refused, with the nearest that is a layout.
#[test]
fn nothing_creeps_and_seventeen_is_no_layout() {
    let laid = wall(12_000.0, Spacing::Sixteen).lay_out().unwrap();
    equals(laid.marks[749].centre, 16.0 * 749.0);
    let refused = Spacing::of(inches(17.0)).unwrap_err();
    assert_eq!(refused.nearest, Spacing::Sixteen);
    assert_eq!(
        refused.to_string(),
        "A spacing of 17\" was given. 12, 16, 19.2 and 24 in are taken, for an 8 ft sheet ends on their centers: the \
         nearest is 16\"."
    );
    assert_eq!(Spacing::of(inches(19.1875)), Ok(Spacing::NineteenPointTwo));
}

/// Field case 43, every figure: gap 5/8 in, with strapping −1/8, stud 93-1/4; with plates of 1-9/16: 13/16, 1/16, 93-1/16.
/// The published answer of 7/8 and 1/8 needs plates about 1/12 in over size; the plate's thickness is asked for.
#[test]
fn precut_studs_and_a_strapped_ceiling() {
    let plain = Ceiling { board: inches(0.5), ..Ceiling::default() };
    let strapped = Ceiling { strapping: inches(0.75), ..plain };
    let sheets = inches(96.0);
    for (plate, without, with, stud) in [(1.5, 0.625, -0.125, 93.25), (1.5625, 0.8125, 0.0625, 93.0625)] {
        let heights = Heights { plate: inches(plate), ..Heights::usual(inches(92.625)) };
        equals(heights.board_gap(&plain, sheets), without);
        equals(heights.board_gap(&strapped, sheets), with);
        let wanted = Heights::for_ceiling(inches(96.5), &strapped, inches(plate), 2);
        equals(wanted.stud, stud);
        equals(wanted.finished(&strapped), 96.5);
    }
    // The same ceiling over 3/4 in of finish floor asks for studs as much longer.
    let floored = Ceiling { finish_floor: inches(0.75), ..strapped };
    equals(Heights::for_ceiling(inches(96.5), &floored, inches(1.5), 2).stud, 94.0);
}

/// Source: the sheet's B2, derived there: 92-5/8 gives 97-1/8, 104-5/8 gives 109-1/8; irc_rules section 16: 116-5/8 gives
/// 121-1/8, and strapping and board take 1-1/4 off.
#[test]
fn precut_studs_make_these_walls() {
    for (stud, frame) in layout::wall::PRECUT_STUDS.into_iter().zip([97.125, 109.125, 121.125]) {
        let heights = Heights::usual(stud);
        equals(heights.frame(), frame);
        let ceiling = Ceiling { strapping: inches(0.75), board: inches(0.5), ..Ceiling::default() };
        equals(heights.finished(&ceiling), frame - 1.25);
        equals(Heights::of_frame(inches(frame), inches(1.5), 2).stud, stud.inches());
    }
}

/// Source: the sheet's B2: header = RO + 3 in for each jack; jack = head − 1-1/2; cripple above = stud − jack − header;
/// cripple below = sill − plate − sill plate. Our vector: 82-1/2 head, 7-1/4 header, 36 sill, 92-5/8 studs.
#[test]
fn what_frames_a_window() {
    let given = Wall { openings: vec![window(40.0, 36.0)], ..wall(144.0, Spacing::Sixteen) };
    let laid = given.lay_out().unwrap();
    let length = |part: Part| laid.cuts.iter().find(|cut| cut.piece == part).unwrap().length;
    equals(length(Part::Header), 39.0);
    equals(length(Part::Jack), 81.0);
    equals(length(Part::CrippleAbove), 92.625 - 81.0 - 7.25);
    equals(length(Part::CrippleBelow), 33.0);
    equals(length(Part::Sill), 36.0);
    assert_eq!([Part::King, Part::Jack, Part::Header, Part::Sill].map(|part| laid.count(part)), [2, 2, 2, 1]);
    // Kings stand outside of the jacks; 48 and 64 stay where they were as cripples.
    assert_eq!(centres(&laid, Part::King), [37.75, 78.25]);
    assert_eq!(centres(&laid, Part::Jack), [39.25, 76.75]);
    // Two more carry the sill at its ends.
    assert_eq!(centres(&laid, Part::CrippleAbove), [48.0, 64.0]);
    assert_eq!(laid.count(Part::CrippleBelow), 4);
    assert!(laid.marks.iter().any(|mark| mark.centre == inches(48.0) && mark.on == OnPlates::Both));
    assert_eq!(laid.notices, Vec::new());
    assert_eq!(laid.carried_down, [Span::new(inches(38.5), inches(40.0)), Span::new(inches(76.0), inches(77.5))]);
}

/// Field case 3: a 16 ft door. Kings are given by number and each is full height; jacks stop at the header.
#[test]
fn a_wide_door_has_its_kings() {
    let wide = Opening { kings: 4, jacks: 2, head: inches(86.0), ..door(48.0, 192.0) };
    let heights = Heights::of_frame(inches(120.0), inches(1.5), 2);
    let laid = Wall { openings: vec![wide], heights, ..wall(288.0, Spacing::Sixteen) }.lay_out().unwrap();
    assert_eq!((laid.count(Part::King), laid.count(Part::Jack)), (8, 4));
    let cut = |part: Part| laid.cuts.iter().find(|cut| cut.piece == part).unwrap().length;
    equals(cut(Part::King), 115.5);
    equals(cut(Part::Jack), 84.5);
    equals(cut(Part::Header), 198.0);
    assert!(laid.marks.iter().filter(|m| m.part == Part::CrippleAbove).all(|m| m.on == OnPlates::Top));
}

/// Field case 61: 6 and 9 in beside a garage door. They are framed with the studs that fit; bracing is another room's.
#[test]
fn narrow_returns_are_framed() {
    let garage = Wall { openings: vec![door(6.0, 180.0)], ..wall(195.0, Spacing::Sixteen) };
    assert_eq!(garage.lay_out().unwrap().count(Part::King), 2);
    let tight = Wall { openings: vec![door(3.0, 180.0)], ..wall(195.0, Spacing::Sixteen) };
    let refused = tight.lay_out().unwrap_err();
    assert_eq!(refused, WallError::OpeningMeets { opening: 0, from: inches(3.0), nearest: inches(4.5) });
}

/// A layout stud that another stands in the way of keeps tight beside it, so that the sheet's edge has wood. Ours.
#[test]
fn a_layout_stud_stands_tight_beside_a_king() {
    // King from 47.75 to 49.25: 1/4 in before the sheet's edge at 48.
    let laid = Wall { openings: vec![door(50.75, 36.0)], ..wall(144.0, Spacing::Sixteen) }.lay_out().unwrap();
    let stud = laid.marks.iter().find(|mark| mark.layout == Some(inches(48.0))).unwrap();
    equals(stud.centre, 47.0);
    equals(stud.off_layout().unwrap(), -1.0);
    // King from 47-3/8, centered 1/8 in off: it serves the edge.
    let laid = Wall { openings: vec![door(50.375, 36.0)], ..wall(144.0, Spacing::Sixteen) }.lay_out().unwrap();
    assert!(laid.marks.iter().all(|mark| mark.layout != Some(inches(48.0))));
}

/// Corners, clips, inner walls, posts and hold-downs. Common practice; ours.
#[test]
fn ends_and_what_meets() {
    let three = End::ThreeStuds { meets: inches(3.5) };
    let flat = End::FlatStud { meets: inches(3.5) };
    let given = Wall {
        ends: [three, flat],
        partitions: vec![
            Partition { centre: inches(56.0), thickness: inches(3.5), backing: Backing::TwoStudsAndBlocks },
            Partition { centre: inches(104.0), thickness: inches(3.5), backing: Backing::Ladder },
        ],
        posts: vec![Post { centre: inches(72.0), plies: 3 }],
        braced: vec![Braced { from: inches(144.0), to: inches(192.0), plies: 2 }],
        ..wall(192.0, Spacing::Sixteen)
    };
    let laid = given.lay_out().unwrap();
    assert_eq!(centres(&laid, Part::CornerStud), [3.75]);
    assert_eq!(centres(&laid, Part::FlatStud), [192.0 - 3.25]);
    assert_eq!(centres(&laid, Part::PartitionStud), [53.5, 58.5]);
    assert_eq!(centres(&laid, Part::PostStud), [70.5, 72.0, 73.5]);
    // The end stud counts; the flat stud beside it does not, and is passed.
    assert_eq!(centres(&laid, Part::HoldDownStud), [144.75, 146.25, 192.0 - 5.75]);
    // Rungs 24 in apart in the one bay that the inner wall meets, 3-1/2 of them in the stud's height.
    assert_eq!(laid.count(Part::LadderBlock), 3);
    assert_eq!(laid.count(Part::Block), 6);
    assert_eq!(laid.notices, Vec::new());
    let clips = Wall { ends: [End::TwoStudsAndClips, End::OneStud], ..wall(96.0, Spacing::Sixteen) }.lay_out().unwrap();
    assert_eq!(clips.notices, [Notice::Clips { at: Length::ZERO }]);
}

/// Source: irc_rules section 16 and the sheet's B2: unit and clearance; two jambs and 1/2 in each way (NAVEDTRA 14044).
#[test]
fn rough_openings() {
    let rough = RoughSize::of_unit(inches(35.5), inches(47.5), inches(0.5), inches(0.5));
    equals(rough.width, 36.0);
    equals(rough.height, 48.0);
    equals(RoughSize::width_of_door(inches(36.0), inches(0.75), inches(0.5)), 38.5);
    equals(door_head(inches(80.0), inches(2.5), inches(0.75)), 83.25);
}

/// Source: the sheet's part F, all four rows, field at 12 in.
#[test]
fn nails_of_a_sheet() {
    for (supports, edge, perimeter, field, total) in
        [(16.0, 6.0, 48, 14, 62), (16.0, 4.0, 72, 14, 86), (16.0, 3.0, 96, 14, 110), (24.0, 6.0, 48, 7, 55)]
    {
        let nails = nails_in_sheet(inches(48.0), inches(96.0), inches(supports), inches(edge), inches(12.0)).unwrap();
        assert_eq!((nails.perimeter, nails.field, nails.total()), (perimeter, field, total));
    }
    assert_eq!(nails_in_sheet(inches(48.0), inches(96.0), inches(17.0), inches(6.0), inches(12.0)), None);
}

/// Source: a builders' pocketbook (examples 31): 50, 26, 30; EN5155 (32): 37-1/3. Example 34, joists by the foot: 2-1/2,
/// 1-2/3 and 2-1/2 board feet; its last total is cut off in print, not rounded.
#[test]
fn board_feet_of_the_books() {
    let near = |found: f64, expected: f64| assert!((found - expected).abs() < 0.01, "{found} against {expected}");
    let feet = Length::from_feet;
    near(board_feet(3, 10, feet(20.0), 1), 50.0);
    near(board_feet(2, 6, feet(26.0), 1), 26.0);
    near(board_feet(2, 10, feet(18.0), 1), 30.0);
    near(board_feet(1, 4, feet(8.0), 14), 37.333);
    near(board_feet(3, 10, feet(1063.91), 1), 2659.78);
    near(board_feet(2, 10, feet(979.5), 1), 1632.50);
    near(board_feet(3, 10, feet(292.75), 1), 731.87);
}

/// Source: IRC 2021 R602.3.2: joints of the two top plates 24 in apart. The cut lengths cover three plates and the laps.
#[test]
fn plates_lap_and_stagger() {
    let given = Wall { laps: [inches(3.5), inches(-3.5)], ..wall(480.0, Spacing::Sixteen) };
    let laid = given.lay_out().unwrap();
    let joints = |part: Part| -> Vec<f64> {
        let pieces: Vec<_> = laid.plates.iter().filter(|plate| plate.part == part).collect();
        pieces.windows(2).map(|pair| pair[0].along.to.inches()).collect()
    };
    assert_eq!(joints(Part::TopPlate), [192.0, 384.0]);
    for above in joints(Part::VeryTopPlate) {
        assert!(joints(Part::TopPlate).iter().all(|below| (above - below).abs() >= 24.0));
    }
    let all: f64 = laid.plates.iter().map(|plate| plate.along.width().inches()).sum();
    assert!((all - 3.0 * 480.0).abs() < NOISE);
    assert!(laid.plates.iter().all(|plate| plate.along.width() <= inches(192.0)));
}

/// Source: the sheet's part E: 3-4-5, any multiple. Studs of 93 in make a frame of 96 in without its very top plate; over
/// 128 in of plate both diagonals are 160.
#[test]
fn the_frame_s_diagonal() {
    let heights = Heights::usual(inches(93.0));
    equals(Wall { heights, ..wall(128.0, Spacing::Sixteen) }.lay_out().unwrap().diagonal, 160.0);
}

/// Two posts that each end 1/2 in past a mark, a bay apart, once left a bay 5/16 in over between them. Now the mark that has
/// less than 5/8 in of wood takes a stud tight beside the post. Ours.
#[test]
fn a_bay_between_two_posts_that_serve_marks() {
    let post = |centre: f64| Post { centre: inches(centre), plies: 1 };
    let given = Wall { posts: vec![post(111.75), post(128.0625)], ..wall(200.0, Spacing::Sixteen) };
    let laid = given.lay_out().unwrap();
    assert_eq!(laid.notices, []);
    let beside = laid.marks.iter().find(|mark| mark.layout == Some(inches(112.0))).unwrap();
    equals(beside.centre, 113.25);
    assert!(laid.marks.iter().all(|mark| mark.layout != Some(inches(128.0))));
}
