//! Floors against published figures and field cases; vectors of our own are marked so.

use layout::floor::{
    Bridging, Floor, FloorError, FloorNotice, FloorOpening, FloorPart, Hung, Joist, JoistEnd, JoistKind, LaidFloor,
    OnSides, PointLoad, SheetSize, Subfloor, WallAbove, bead_length, web_stiffener,
};
use layout::wall::{Layout, PullTo, Spacing, Span};
use measure::{Denominator, Length};

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

/// Binary noise of a few additions; a tape shows nothing under 1/64 in.
const NOISE: f64 = 1e-9;

#[track_caller]
fn equals(found: Length, expected: f64) {
    assert!((found.inches() - expected).abs() < NOISE, "{} against {expected}", found.inches());
}

fn span(from: f64, to: f64) -> Span {
    Span::new(inches(from), inches(to))
}

fn floor(length: f64, width: f64, spacing: Spacing) -> Floor {
    Floor::plain(inches(length), inches(width), Layout::usual(spacing), Joist::sawn(10, inches(9.25)))
}

fn whole_joists(laid: &LaidFloor) -> u32 {
    laid.count(FloorPart::Joist) + laid.count(FloorPart::EndJoist)
}

fn cut(laid: &LaidFloor, part: FloorPart) -> Vec<(f64, u32)> {
    laid.cuts.iter().filter(|cut| cut.piece == part).map(|cut| (cut.length.inches(), cut.count)).collect()
}

/// Source: the sheet's part C: joists = (length − 1.5)/spacing, rounded up, and one. A joist more stands where a
/// mark falls on the first 5/8 in of the end joist: there the end joist is more than 1/8 in off the mark, and the bay before
/// would be as much over the spacing. The formula counts none there.
#[test]
fn joists_by_the_formula() {
    for spacing in Spacing::ALL {
        for sixteenths in (24 * 16..=620 * 16).step_by(5) {
            let length = f64::from(sixteenths) / 16.0;
            let step = spacing.length().inches();
            let formula = ((length - 1.5) / step - NOISE).ceil() as u32 + 1;
            let marks_before = |at: f64| ((at - NOISE) / step).floor();
            let one_more = marks_before(length - 0.875) > marks_before(length - 1.5);
            let found = whole_joists(&floor(length, 168.0, spacing).lay_out().unwrap());
            assert_eq!(found, formula + u32::from(one_more), "{length} at {spacing}");
        }
    }
}

/// Source: the sheet's part C: a 48 in edge lands on a joist; 16 in: the 3rd, 6th and so on from the first; 19.2 and 96:
/// every 5th; 24: every 2nd. NAVEDTRA 14044's first pull.
#[test]
fn every_third_fifth_or_second_joist_takes_an_edge() {
    for (spacing, nth, edge) in
        [(Spacing::Sixteen, 3, 48.0), (Spacing::NineteenPointTwo, 5, 96.0), (Spacing::TwentyFour, 2, 48.0)]
    {
        let layout = Layout { pull_to: PullTo::Centre, ..Layout::usual(spacing) };
        let laid = Floor { layout, ..floor(480.0, 168.0, spacing) }.lay_out().unwrap();
        for sheet in 1..=4 {
            equals(laid.marks[nth * sheet].pull, edge * sheet as f64);
        }
    }
}

/// The tape at 19.2 in, near edges. Source: the sheet's B1 centers, less 3/4 in, each rounded from its own product.
#[test]
fn the_tape_at_nineteen_point_two() {
    let laid = floor(240.0, 168.0, Spacing::NineteenPointTwo).lay_out().unwrap();
    let read: Vec<String> =
        (1..=5).map(|mark| laid.marks[mark].pull.to_inches_fraction(Denominator::Sixteenth)).collect();
    assert_eq!(read, ["18-7/16\"", "37-5/8\"", "56-7/8\"", "76-1/16\"", "95-1/4\""]);
}

/// Source: the sheet's part C: 28 x 40 ft: 35 sheets by area, 7 rows of 5 are 35.
#[test]
fn sheets_of_a_floor() {
    let given = Floor { sheets: Some(SheetSize::usual()), ..floor(480.0, 336.0, Spacing::Sixteen) };
    let laid = given.lay_out().unwrap();
    let subfloor = laid.subfloor.unwrap();
    assert_eq!((subfloor.rows, subfloor.to_buy), (7, 35));
    assert_eq!(Subfloor::fewest(&given, &SheetSize::usual()), 35);
    assert_eq!(laid.notices, []);
    // Every other row starts with half a sheet, so no end joint is in line with its neighbour's.
    let joints = |row: usize| -> Vec<f64> {
        let of = subfloor.sheets.iter().filter(|sheet| sheet.row == row).skip(1);
        of.map(|sheet| sheet.across.from.inches() - 0.0625).collect()
    };
    assert_eq!(joints(0), [96.0, 192.0, 288.0, 384.0]);
    assert_eq!(joints(1), [48.0, 144.0, 240.0, 336.0, 432.0]);
    // Adhesive: 31 joists of 333, 4 rows with 4 joints and 3 with 5 of 48, and 6 tongues of 480.
    equals(subfloor.adhesive, 31.0 * 333.0 + 31.0 * 48.0 + 6.0 * 480.0);
}

/// Half a sheet ends between two joists at 19.2 in: rows are staggered by two spaces, 38.4 in, and all joints are on joists.
#[test]
fn stagger_at_nineteen_point_two() {
    let given = Floor { sheets: Some(SheetSize::usual()), ..floor(480.0, 336.0, Spacing::NineteenPointTwo) };
    let laid = given.lay_out().unwrap();
    assert_eq!(laid.notices, []);
    let second = laid.subfloor.unwrap().sheets.into_iter().filter(|sheet| sheet.row == 1).nth(1).unwrap();
    equals(second.across.from, 38.4 + 0.0625);
}

/// Source: the sheet's part C, all six cells, printed to a tenth of a foot: half of that.
#[test]
fn beads_from_a_tube() {
    for (ounces, quarter, three_eighths) in [(10.0, 30.6, 13.6), (28.0, 85.8, 38.1), (29.0, 88.8, 39.5)] {
        for (bead, printed) in [(0.25, quarter), (0.375, three_eighths)] {
            let feet = bead_length(ounces, inches(bead)).unwrap().feet();
            assert!((feet - printed).abs() <= 0.05 + NOISE, "{ounces} oz: {feet} against {printed}");
        }
    }
    assert_eq!(bead_length(0.0, inches(0.25)), None);
}

/// Source: the sheet's part C: a block is the spacing less a joist, 14-1/2 in at 16; as many as bays by rows; deeper than
/// 2x12 by name: rows at 8 ft. IRC 2021 R502.7.1.
#[test]
fn blocking() {
    let deep = Joist::sawn(14, inches(13.25));
    let given = Floor { joist: deep, ..floor(192.0, 240.0, Spacing::Sixteen) };
    // 237 in between rims: three spaces of no more than 96.
    assert_eq!(given.rows(), 2);
    let laid = given.lay_out().unwrap();
    // 12 bays; the end bays are 3/4 in narrower, for their joists stand inside of the marks.
    assert_eq!(cut(&laid, FloorPart::Block), [(14.5, 20), (13.75, 4)]);
    assert_eq!(floor(192.0, 240.0, Spacing::Sixteen).rows(), 0);
    let rows = Floor { bridging: Bridging::Rows(1), ..floor(192.0, 240.0, Spacing::Sixteen) };
    assert_eq!(rows.lay_out().unwrap().count(FloorPart::Block), 12);
    // An engineered joist follows its maker, however deep.
    let kind = JoistKind::Engineered;
    assert_eq!(Floor { joist: Joist { kind, ..deep }, ..given }.rows(), 0);
}

/// Source: IRC 2021 R502.10 (from memory): a header to 4 ft single, beyond it header and trimmers double; over 6 ft in
/// hangers; tails over 12 ft in hangers.
#[test]
fn openings_by_the_length_of_their_header() {
    let opening = |wide: f64, along: Span| FloorOpening { across: span(100.0, 100.0 + wide), along, plies: None };
    let with = |opening| Floor { openings: vec![opening], ..floor(480.0, 336.0, Spacing::Sixteen) }.lay_out().unwrap();
    let small = with(opening(48.0, span(60.0, 160.0)));
    assert_eq!((small.count(FloorPart::Header), small.count(FloorPart::Trimmer)), (2, 2));
    let large = with(opening(48.5, span(60.0, 160.0)));
    assert_eq!((large.count(FloorPart::Header), large.count(FloorPart::Trimmer)), (4, 4));
    assert_eq!(cut(&large, FloorPart::Header), [(48.5, 4)]);
    let count = |laid: &LaidFloor, hung: Hung| laid.hangers.iter().filter(|hanger| hanger.hung == hung).count();
    assert_eq!(count(&large, Hung::HeaderOnTrimmer), 0);
    // Tails from the far header at 163 to the far rim: 171.5, over 12 ft; the near ones are 55.5.
    assert_eq!(cut(&large, FloorPart::Tail), [(171.5, 3), (55.5, 3)]);
    assert_eq!(count(&large, Hung::TailOnHeader), 3);
    let long = with(opening(72.5, span(60.0, 200.0)));
    assert_eq!(count(&long, Hung::HeaderOnTrimmer), 4);
    assert_eq!(count(&long, Hung::TailOnHeader), 0);
    // Tails keep the layout's marks and are marked on both sides.
    let tails: Vec<f64> =
        long.marks.iter().filter(|mark| mark.part == FloorPart::Tail).map(|mark| mark.centre.inches()).collect();
    assert_eq!(tails, [112.0, 128.0, 144.0, 160.0]);
    assert!(long.marks.iter().all(|mark| mark.on == OnSides::Both));
}

/// Source: the sheet's part C: flush with a beam, a joist is the clear length less 1/16 to 1/8 in for each hanger.
#[test]
fn joists_in_hangers() {
    let hang = JoistEnd::InHangers { gap: inches(1.0 / 16.0) };
    let given = Floor { ends: [JoistEnd::OnPlate { rim: inches(1.5) }, hang], ..floor(144.0, 168.0, Spacing::Sixteen) };
    let laid = given.lay_out().unwrap();
    assert_eq!(cut(&laid, FloorPart::Joist), [(168.0 - 1.5 - 0.0625, 8)]);
    assert_eq!(laid.hangers.len(), 10);
    assert_eq!(laid.count(FloorPart::Rim), 1);
    assert!(laid.hangers.iter().all(|hanger| hanger.hung == Hung::JoistOnBeam));
}

/// Source: IRC 2021 R502.4: doubled under a wall; spread for pipes, blocks at 4 ft. Ours otherwise.
#[test]
fn joists_under_walls() {
    let wall = |centre: f64, spread: Option<f64>| WallAbove { centre: inches(centre), spread: spread.map(inches) };
    let given =
        Floor { walls_above: vec![wall(56.0, None), wall(104.0, Some(3.5))], ..floor(192.0, 171.0, Spacing::Sixteen) };
    let laid = given.lay_out().unwrap();
    assert_eq!(laid.count(FloorPart::WallJoist), 4);
    // 168 in between rims: four spaces of 42.
    assert_eq!(cut(&laid, FloorPart::WallBlock), [(3.5, 3)]);
    assert_eq!(laid.notices, []);
    let tight = Floor { walls_above: vec![wall(2.0, None)], ..floor(192.0, 171.0, Spacing::Sixteen) };
    let moved = FloorNotice::WallMoved { wall: 0, wanted: inches(2.0), stands: inches(3.0) };
    assert_eq!(tight.lay_out().unwrap().notices, [moved]);
}

/// Field case 69: 14 in joists at 19.2 in under a loaded wall: blocks of 14-1/16 in.
#[test]
fn squash_blocks() {
    let joist = Joist { kind: JoistKind::Engineered, thickness: inches(2.5), depth: inches(14.0), nominal_depth: 14 };
    let load = PointLoad { across: inches(60.0), along: inches(168.0), blocks: 2 };
    let given = Floor { joist, point_loads: vec![load], ..floor(240.0, 336.0, Spacing::NineteenPointTwo) };
    let laid = given.lay_out().unwrap();
    assert_eq!(cut(&laid, FloorPart::SquashBlock), [(14.0625, 2)]);
    equals(laid.squash_blocks[0].beside.unwrap(), 57.6);
}

/// Source: the sheet's part C: depth less two flanges less 1/8 in (from memory). Ours: 11-7/8 with flanges of 1-3/8.
#[test]
fn stiffeners() {
    equals(web_stiffener(inches(11.875), inches(1.375)).unwrap(), 9.0);
    assert_eq!(web_stiffener(inches(2.0), inches(1.0)), None);
}

/// What is refused, in sentences. Ours.
#[test]
fn what_is_refused() {
    let plain = floor(240.0, 168.0, Spacing::Sixteen);
    let refused = |floor: Floor| floor.lay_out().unwrap_err();
    let over = JoistEnd::Cantilever { overhang: inches(24.0) };
    assert_eq!(
        refused(Floor { ends: [over, over], ..plain.clone() }).to_string(),
        "Joists run 24\" past their support. A cantilever has a table of its own, for its length, its back span and what it \
         carries (IRC 2021 R502.3.3), and is not laid out here: follow the drawing."
    );
    let opening = |across: Span, along: Span| FloorOpening { across, along, plies: None };
    let with = |openings: Vec<FloorOpening>| Floor { openings, ..plain.clone() };
    let off = with(vec![opening(span(40.0, 80.0), span(1.0, 60.0))]);
    assert_eq!(refused(off), FloorError::OpeningOffFloor { opening: 0, least: inches(3.0), most: inches(165.0) });
    let at_end = with(vec![opening(span(2.0, 40.0), span(20.0, 60.0))]);
    let error = refused(at_end);
    assert_eq!(error, FloorError::OpeningMeets { opening: 0, from: inches(2.0), nearest: inches(3.0) });
    assert!(with(vec![opening(span(3.0, 41.0), span(20.0, 60.0))]).lay_out().is_ok());
    let two = with(vec![opening(span(40.0, 80.0), span(20.0, 60.0)), opening(span(70.0, 100.0), span(90.0, 120.0))]);
    assert_eq!(refused(two), FloorError::OpeningsOverlap { first: 0, second: 1 });
    let load = PointLoad { across: inches(50.0), along: inches(40.0), blocks: 1 };
    let in_opening = Floor { point_loads: vec![load], ..with(vec![opening(span(40.0, 80.0), span(20.0, 60.0))]) };
    assert!(refused(in_opening).to_string().starts_with("Load 1 stands off the floor or in an opening"));
    let wall = WallAbove { centre: inches(60.0), spread: None };
    let on_opening = Floor { walls_above: vec![wall], ..with(vec![opening(span(40.0, 80.0), span(20.0, 60.0))]) };
    assert_eq!(
        refused(on_opening),
        FloorError::WallAbove { wall: 0, given: inches(60.0), nearest: Some(inches(37.0)) }
    );
}

/// Two openings in one line share their trimmers, and the tails between them stand on no plate.
#[test]
fn two_openings_in_one_line() {
    let opening = |along| FloorOpening { across: span(100.0, 148.0), along, plies: None };
    let given = Floor {
        openings: vec![opening(span(40.0, 90.0)), opening(span(150.0, 200.0))],
        ..floor(240.0, 240.0, Spacing::Sixteen)
    };
    let laid = given.lay_out().unwrap();
    assert_eq!(laid.count(FloorPart::Trimmer), 2);
    assert_eq!(cut(&laid, FloorPart::Tail), [(57.0, 3), (37.0, 6)]);
}
