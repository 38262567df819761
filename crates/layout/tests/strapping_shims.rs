//! Shims against published and worked cases; vectors of our own are marked so.

#![expect(clippy::expect_used, reason = "in a test a panic is the report")]

use layout::strapping::{
    Aim, Below, Ceiling, Crossing, Datum, Hides, JoistWood, Known, PlaningWish, Readings, ShimPlan, ShimSizes,
    ShimWish, Side, StrappingError, WallBoards, beam_below, ceiling, hides, planing, shims,
};
use measure::Length;
use standards::irc_2021::r502_8;

const LASER: Datum = Datum { side: Side::Below, level: true };
/// Heights are worked in parts of 4096 to the inch; sixteenths are whole in them, sums and quotients exact to an `f64`.
const EXACT: f64 = 1e-9;

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

fn all(places: &[f64]) -> Vec<Length> {
    places.iter().map(|place| inches(*place)).collect()
}

fn every(step: f64, count: u32) -> Vec<Length> {
    (0..count).map(|index| inches(step * f64::from(index))).collect()
}

fn wish(aim: Aim) -> ShimWish {
    ShimWish { aim, steepest: None, sizes: ShimSizes::common(), thickest: inches(0.75) }
}

fn by_row(rows: &[&[f64]], unit: f64) -> Vec<Vec<Option<Length>>> {
    rows.iter()
        .map(|row| row.iter().map(|reading| (!reading.is_nan()).then(|| inches(reading * unit))).collect())
        .collect()
}

const GAP: f64 = f64::NAN;

fn thicknesses(plan: &ShimPlan) -> Vec<f64> {
    plan.shims.iter().map(|shim| shim.thickness.inches()).collect()
}

/// The grid of 9 joists and 4 rows of the strapping notes, in sixteenths.
fn uneven() -> Readings {
    let rows: [&[f64]; 4] = [
        &[6.0, 5.0, 8.0, 3.0, 6.0, 2.0, 5.0, 7.0, 6.0],
        &[5.0, 4.0, 7.0, 1.0, 4.0, 0.0, 4.0, 6.0, 7.0],
        &[6.0, 3.0, 6.0, 2.0, 3.0, 1.0, 5.0, 7.0, 8.0],
        &[7.0, 5.0, 8.0, 4.0, 5.0, 3.0, 6.0, 8.0, 9.0],
    ];
    Readings::new(LASER, &every(16.0, 9), &every(48.0, 4), &by_row(&rows, 1.0 / 16.0)).expect("a grid")
}

/// Source: strapping notes, worked case of 9 joists and 4 rows: level 11.375 in of shim in all (182 sixteenths), 0.5625 the
/// greatest; flat with the least in all 9.125 and 0.5625, on 0.09375 − 0.001953125 x + 0.0013020833 y; flat with the least
/// greatest 0.508333. Level and totals are exact; printed to six places, the last is met to half of its last.
#[test]
fn the_worked_grid() {
    let level = shims(&uneven(), &wish(Aim::Level)).expect("it is level");
    assert!((level.total.inches() - 11.375).abs() < EXACT && (level.greatest.inches() - 0.5625).abs() < EXACT);

    let total = shims(&uneven(), &wish(Aim::LeastTotal)).expect("it is flat");
    assert!((total.total.inches() - 9.125).abs() < EXACT, "{}", total.total.inches());

    let greatest = shims(&uneven(), &wish(Aim::LeastGreatest)).expect("it is flat");
    assert!((greatest.greatest.inches() - 0.508_333).abs() < 5e-7, "{}", greatest.greatest.inches());
    assert!(greatest.total >= total.total && greatest.greatest <= total.greatest);
    for plan in [level, total, greatest] {
        assert!(plan.off_plane <= inches(1.0 / 32.0) && plan.open.is_empty() && plan.doubts.is_empty());
    }
}

/// Source: the same case. The plane of the least total is its own there: printed with ten places, of slopes an inch.
#[test]
fn the_worked_grids_plane() {
    let plan = shims(&uneven(), &wish(Aim::LeastTotal)).expect("it is flat");
    let [across, along] = plan.plane.slopes();
    assert!((plan.plane.height_at(Length::ZERO, Length::ZERO).inches() - 0.09375).abs() < EXACT);
    assert!((across + 0.001_953_125).abs() < 5e-11 && (along - 0.001_302_083_3).abs() < 5e-11);
    assert!((plan.greatest.inches() - 0.5625).abs() < EXACT && plan.touches.len() >= 3);
}

fn one_row() -> Readings {
    let row: [&[f64]; 1] = [&[1.25, 1.625, 1.375, 2.0, 1.125, 1.5]];
    Readings::new(LASER, &every(16.0, 6), &every(16.0, 1), &by_row(&row, 1.0)).expect("a row")
}

/// Source: field case of an uneven ceiling strapped to level: readings 1-1/4 to 2 in over a laser 96 in above the floor;
/// shims 1/8, 1/2, 1/4, 7/8, 0, 3/8, of which 7/8 is thicker than the strip; strip faces at 96-3/8, ceiling at 95-7/8.
#[test]
fn an_uneven_ceiling_to_level() {
    let plan = shims(&one_row(), &wish(Aim::Level)).expect("it is level");
    assert_eq!(thicknesses(&plan), [0.125, 0.5, 0.25, 0.875, 0.0, 0.375]);
    let thick: Vec<bool> = plan.shims.iter().map(|shim| shim.too_thick).collect();
    assert_eq!(thick, [false, false, false, true, false, false]);
    assert_eq!(plan.shims[3].stack, Some(all(&[0.75, 0.125])));
    assert_eq!(plan.touches, [Crossing { row: 0, joist: 4 }]);
    assert!(plan.doubts.is_empty());
    let at = |board| ceiling(&plan.plane, [Length::ZERO; 2], inches(96.0), Ceiling { strip: inches(0.75), board });
    assert_eq!([at(Length::ZERO), at(inches(0.5))], [inches(96.375), inches(95.875)]);
}

/// Vector of our own: read downwards from a laser above, the same ceiling has the same shims.
#[test]
fn read_from_above() {
    let row: [&[f64]; 1] = [&[6.75, 6.375, 6.625, 6.0, 6.875, 6.5]];
    let above = Datum { side: Side::Above, level: true };
    let readings = Readings::new(above, &every(16.0, 6), &every(16.0, 1), &by_row(&row, 1.0)).expect("a row");
    let plan = shims(&readings, &wish(Aim::Level)).expect("it is level");
    assert_eq!(thicknesses(&plan), [0.125, 0.5, 0.25, 0.875, 0.0, 0.375]);
}

/// Vector of our own: between two readings of a joist the shim is interpolated and marked; past them it is left open, and
/// no reading of another joist is taken for it.
#[test]
fn what_was_not_read() {
    let rows: [&[f64]; 3] = [&[1.0, 1.0, 1.25], &[1.0, GAP, 1.25], &[1.0, 1.5, GAP]];
    let readings = Readings::new(LASER, &every(16.0, 3), &every(16.0, 3), &by_row(&rows, 1.0)).expect("a grid");
    let plan = shims(&readings, &wish(Aim::Level)).expect("it is level");
    assert_eq!(plan.open, [Crossing { row: 2, joist: 2 }]);
    let between: Vec<_> = plan.shims.iter().filter(|shim| shim.known == Known::Interpolated).collect();
    assert_eq!(between.len(), 1);
    assert_eq!((between[0].at, between[0].thickness), (Crossing { row: 1, joist: 1 }, inches(0.25)));
}

/// Vector of our own: a tape held at its 1 in mark is asked about, and counts as it stands.
#[test]
fn a_burned_inch_is_asked_about() {
    let rows: [&[f64]; 5] = [&[2.0, 2.0], &[2.0, 2.0625], &[2.0625, 3.0625], &[2.0, 2.0], &[2.125, 2.0625]];
    let readings = Readings::new(LASER, &every(16.0, 2), &every(16.0, 5), &by_row(&rows, 1.0)).expect("a grid");
    let plan = shims(&readings, &wish(Aim::Level)).expect("it is level");
    let at = Crossing { row: 2, joist: 1 };
    assert_eq!(plan.doubts.iter().map(|doubt| (doubt.at, doubt.by_an_inch)).collect::<Vec<_>>(), [(at, true)]);
    let there = plan.shims.iter().find(|shim| shim.at == at).expect("it is kept");
    assert_eq!(there.thickness, inches(1.0625));
}

/// Vector of our own: with eighths only, an odd sixteenth goes to the eighth beside it; with quarters only there is no
/// stack within 1/16 in of 1/8, and none is named.
#[test]
fn shims_at_hand() {
    let row: [&[f64]; 1] = [&[1.0, 1.3125, 1.125]];
    let readings = Readings::new(LASER, &every(16.0, 3), &every(16.0, 1), &by_row(&row, 1.0)).expect("a row");
    let with = |sizes: &[f64]| {
        let sizes = ShimSizes::new(&all(sizes)).expect("sizes");
        shims(&readings, &ShimWish { sizes, ..wish(Aim::Level) }).expect("it is level")
    };
    let eighths = with(&[0.125, 0.25]);
    assert_eq!(thicknesses(&eighths), [0.0, 0.375, 0.125]);
    assert_eq!(eighths.off_plane, inches(1.0 / 16.0));
    let quarters = with(&[0.25]);
    assert_eq!(quarters.shims.iter().map(|shim| shim.stack.is_some()).collect::<Vec<_>>(), [true, true, false]);
}

#[test]
fn what_tells_of_no_plane_is_refused() {
    let slanting: [&[f64]; 3] = [&[1.0, GAP, GAP], &[GAP, 1.5, GAP], &[GAP, GAP, 1.25]];
    let slanting = Readings::new(LASER, &every(16.0, 3), &every(16.0, 3), &by_row(&slanting, 1.0)).expect("a grid");
    assert_eq!(shims(&slanting, &wish(Aim::LeastTotal)), Err(StrappingError::InOneLine));
    assert!(shims(&slanting, &wish(Aim::Level)).is_ok());

    let string = Datum { side: Side::Below, level: false };
    let row: [&[f64]; 1] = [&[1.0, 2.0]];
    let string = Readings::new(string, &every(16.0, 2), &every(16.0, 1), &by_row(&row, 1.0)).expect("a row");
    assert_eq!(shims(&string, &wish(Aim::Level)), Err(StrappingError::NotLevel));
    // Two readings in a row lie on one line: flat takes no shim.
    assert_eq!(shims(&string, &wish(Aim::BestFit)).map(|plan| plan.to_set()), Ok(0));

    let none = Readings::new(LASER, &every(16.0, 1), &every(16.0, 1), &[vec![None]]);
    assert_eq!(none, Err(StrappingError::NoReadings));
    let short = Readings::new(LASER, &every(16.0, 2), &every(16.0, 1), &[vec![None]]);
    assert_eq!(short, Err(StrappingError::RowLength { row: 1, given: 1, joists: 2 }));
    assert!(matches!(ShimSizes::new(&all(&[0.1])), Err(StrappingError::ShimSize { .. })));
}

/// Vector of our own, by hand: rising 1 in over 96 in across, held to 1/8 in over 120, the right end is shimmed by
/// 1 − 0.1 = 0.9 in less: the plane rises by 0.1 in, its slope limit rounded down by less than a millionth.
#[test]
fn a_tilt_that_is_limited() {
    let rows: [&[f64]; 2] = [&[1.0, 2.0], &[1.0, 2.0]];
    let joists = all(&[0.0, 96.0]);
    let readings = Readings::new(LASER, &joists, &every(16.0, 2), &by_row(&rows, 1.0)).expect("a grid");
    for aim in [Aim::LeastTotal, Aim::LeastGreatest, Aim::BestFit] {
        let wish = ShimWish { steepest: Some(0.125 / 120.0), ..wish(aim) };
        let plan = shims(&readings, &wish).expect("it is flat");
        assert!((plan.greatest.inches() - 0.9).abs() < 1e-4, "{aim:?} {}", plan.greatest.inches());
    }
}

fn planing_wish(wood: JoistWood) -> PlaningWish {
    PlaningWish { wood, strip_width: inches(2.5), shims_a_cut: 3 }
}

/// Eleven joists and five rows on a 10 ft span; joist 5 hangs low at some rows.
fn one_low(low: [f64; 5]) -> Readings {
    let row = |low: f64| (0..11).map(|joist| Some(inches(if joist == 5 { 1.0 - low } else { 1.0 }))).collect();
    let rows = all(&[8.0, 24.0, 60.0, 96.0, 112.0]);
    Readings::new(LASER, &every(16.0, 11), &rows, &low.map(row)).expect("a grid")
}

fn two_by_ten() -> JoistWood {
    JoistWood::Sawn { nominal_thickness: 2, depth: inches(9.25), bearings: all(&[0.0, 120.0]).try_into().expect("two") }
}

/// Vector of our own: one joist 1/4 in low near a bearing would have all others shimmed; it is planed there, outside the
/// middle third.
#[test]
fn one_low_joist_is_planed() {
    let readings = one_low([0.25, 0.0, 0.0, 0.0, 0.0]);
    let found = planing(&readings, &wish(Aim::Level), &planing_wish(two_by_ten())).expect("it is level");
    let better = found.better.expect("one cut against fifty shims");
    assert_eq!((found.work_without, better.work, better.joists), (54, 3, vec![5]));
    assert_eq!(better.cuts.iter().map(|cut| (cut.at.row, cut.off)).collect::<Vec<_>>(), [(0, inches(0.25))]);
    assert!(found.refused.is_empty() && better.plan.to_set() == 0);
}

/// Vector of our own: of two joists as low as each other neither alone is worth planing, and both are.
#[test]
fn two_low_joists_are_planed_together() {
    let low = |joist: usize, by: f64| if joist == 3 || joist == 7 { 1.0 - by } else { 1.0 };
    let row = |by: f64| (0..11).map(|joist| Some(inches(low(joist, by)))).collect();
    let rows = all(&[8.0, 24.0, 60.0, 96.0, 112.0]);
    let by_row = [0.25, 0.0, 0.0, 0.0, 0.0].map(row);
    let readings = Readings::new(LASER, &every(16.0, 11), &rows, &by_row).expect("a grid");
    let found = planing(&readings, &wish(Aim::Level), &planing_wish(two_by_ten())).expect("it is level");
    assert_eq!(found.better.map(|better| (better.work, better.joists)), Some((6, vec![3, 7])));
}

/// Source: IRC R502.8.1: a notch in a 9-1/4 in joist to 1.54 in, none in the middle third of the span; R502.8.2: none in an
/// engineered joist but by its maker.
#[test]
fn planing_past_the_rule_is_refused() {
    let asked = |low, wood| planing(&one_low(low), &wish(Aim::Level), &planing_wish(wood)).expect("it is level");
    let middle = asked([0.0, 0.0, 0.25, 0.0, 0.0], two_by_ten());
    let deep = asked([1.5625, 0.0, 0.0, 0.0, 0.0], two_by_ten());
    let engineered = asked([0.25, 0.0, 0.0, 0.0, 0.0], JoistWood::Engineered);
    for (found, source) in
        [(middle, r502_8::SAWN_JOISTS), (deep, r502_8::SAWN_JOISTS), (engineered, r502_8::ENGINEERED)]
    {
        assert!(found.better.is_none());
        let [refused] = found.refused.as_slice() else { panic!("one joist: {:?}", found.refused) };
        assert_eq!((refused.joist, refused.why.source), (5, source));
        assert!(refused.why.next_step.contains("ask the"));
    }
    // 1-1/2 in is within a sixth of 9-1/4 in.
    assert!(asked([1.5, 0.0, 0.0, 0.0, 0.0], two_by_ten()).better.is_some());
}

/// Source: field case of an engineered beam 11-7/8 in deep among joists of 11-1/4 in: a step of 5/8 in with tops flush,
/// which a strip of 3/4 in clears by 1/8; 1-1/8 in with the joists 1/2 in proud, for which it is 3/8 in short.
#[test]
fn a_beam_deeper_than_the_joists() {
    let found = |proud| {
        let beam = beam_below(inches(11.875), inches(11.25), inches(proud));
        (beam, hides(&Below { beam, ..Below::default() }, inches(0.75), Length::ZERO))
    };
    assert_eq!(found(0.0), (inches(0.625), Hides::By(inches(0.125))));
    let short = Hides::ProudBy { proud: inches(0.375), pack: inches(0.375), strip: inches(1.125) };
    assert_eq!(found(0.5), (inches(1.125), short));
}

/// Vector of our own: a saddle adds to its beam, a hanger beside it does not, and a shim that is there counts.
#[test]
fn saddles_and_hangers() {
    let below = Below { beam: inches(0.625), hanger: inches(0.125), saddle: inches(0.25) };
    assert_eq!(below.lowest(), inches(0.875));
    assert_eq!(hides(&below, inches(0.75), inches(0.125)), Hides::By(Length::ZERO));
    let short = Hides::ProudBy { proud: inches(0.0625), pack: inches(0.125), strip: inches(0.8125) };
    assert_eq!(hides(&below, inches(0.75), inches(0.0625)), short);
}

/// Source: field case of precut studs, 92-5/8 in, and two 48 in boards under a 1/2 in ceiling: with plates of 1-1/2 in, 5/8
/// in is left without strips and −1/8 with them, and 93-1/4 in studs leave 1/2; with plates of 1-9/16 in +13/16, +1/16 and
/// 93-1/16. All are arithmetic in sixteenths, exact.
#[test]
fn precut_studs_and_a_strapped_ceiling() {
    for (plate, bare, strapped, stud) in [(1.5, 0.625, -0.125, 93.25), (1.5625, 0.8125, 0.0625, 93.0625)] {
        let wall = |strip| WallBoards {
            plates: inches(plate) * 3.0,
            ceiling: Ceiling { strip: inches(strip), board: inches(0.5) },
            boards: inches(96.0),
        };
        let gap = |strip| wall(strip).gap(inches(92.625));
        assert_eq!([gap(0.0), gap(0.75)], [inches(bare), inches(strapped)]);
        assert_eq!(wall(0.75).stud(inches(0.5)), inches(stud));
    }
}

/// Source: the same case: the published answer of 7/8 in without strips and 1/8 in with them needs a frame of 97-3/8 in, so
/// plates that are 1/12 in over size each.
#[test]
fn the_published_gap_needs_thicker_plates() {
    let ceiling = |strip| Ceiling { strip: inches(strip), board: inches(0.5) };
    let wall = |strip| WallBoards { plates: inches(97.375 - 92.625), ceiling: ceiling(strip), boards: inches(96.0) };
    let gap = |strip| wall(strip).gap(inches(92.625));
    assert_eq!([gap(0.0), gap(0.75)], [inches(0.875), inches(0.125)]);
    assert!((wall(0.0).plates.inches() / 3.0 - 1.5 - 1.0 / 12.0).abs() < EXACT);
}
