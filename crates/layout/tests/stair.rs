//! Flights, stringers, wells and turns against published examples and a value sheet; what is our own is marked so.

use layout::stair::{
    Check, Edition, Finish, Flight, Floors, Landing, Run, StairError, Stringer, Top, Turn, Verdict, Well, Winders,
    choices, first_guess, headroom, landing, marks, nearest_landing, risers_of, stringer, stringer_count, temporary,
    well, winders, with_risers,
};
use measure::{Angle, Denominator, Length};

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

#[track_caller]
fn near(found: Length, expected: f64, off: f64) {
    assert!((found.inches() - expected).abs() <= off, "{} against {expected}", found.inches());
}

fn sixteenths(length: Length) -> String {
    length.to_inches_fraction(Denominator::Sixteenth)
}

fn floors(measured: f64, bottom: f64, top: f64) -> Floors {
    let finish = |thickness: f64| if thickness > 0.0 { Finish::ToCome(inches(thickness)) } else { Finish::Laid };
    Floors { measured: inches(measured), bottom: finish(bottom), top: finish(top) }
}

fn flight(rise: f64, tread: f64) -> Flight {
    Flight { floors: floors(rise, 0.0, 0.0), run: Run::OfTread(inches(tread)), edition: Edition::Of2018 }
}

/// The stringer of the value sheet: Hs = 108-1/2, ft = 3/4, fb = 1/4, tt = 1, n = 15.
fn sheet_stringer() -> Stringer {
    Stringer {
        floors: floors(108.5, 0.25, 0.75),
        risers: 15,
        tread: inches(10.0),
        tread_thickness: inches(1.0),
        nosing: inches(1.0),
        riser_board: inches(0.75),
        board: inches(11.25),
        top: Top::RiserBelowFloor,
    }
}

/// Source: a builders' training manual, "Stairway layout": 8 ft 11 in, 107 / 7 = 15 risers of 7.1333 in, which is 7-1/8 to a
/// sixteenth; 15 of those miss the floor by 1/8 in. With the code's limit alone 14 risers of 7.6429 in do. Half of the last
/// printed digit.
#[test]
fn a_manuals_flight() {
    assert_eq!(first_guess(inches(107.0)), 15);
    let found = with_risers(&flight(107.0, 10.0), 15).expect("a flight");
    near(found.riser, 7.1333, 0.000_05);
    assert_eq!(sixteenths(found.riser), "7-1/8\"");
    let all = choices(&flight(107.0, 10.0)).expect("a flight");
    assert_eq!(all.fewest, 14);
    near(all.within[0].riser, 7.6429, 0.000_05);
    let stepped_off: f64 = 15.0 * 7.125;
    near(inches(107.0 - stepped_off), 0.125, 0.0);
    near(marks(inches(107.0), 15).expect("marks")[14].at, 107.0, 0.0);
}

/// Source: an old cyclopedia of carpentry: 10 ft 3 in with 17 risers is 7 4/17 in, and 16 treads of 9-1/2 in run 12 ft 8 in. The
/// tread is inferred from the run. Both are exact but for the last bits; a tread of 9-1/2 in is out by today's code.
#[test]
fn a_cyclopedias_flight() {
    let found = with_risers(&flight(123.0, 9.5), 17).expect("a flight");
    near(found.riser, 7.0 + 4.0 / 17.0, 1e-12);
    assert_eq!(found.treads, 16);
    near(found.total_run, 152.0, 1e-9);
    assert_eq!(found.tread_check.verdict, Verdict::Out);
    assert!(!found.holds());
    let of_run = Flight { run: Run::InAll(inches(152.0)), ..flight(123.0, 10.0) };
    near(with_risers(&of_run, 17).expect("a flight").tread, 9.5, 1e-12);
}

/// Source: arithmetic on a value sheet: 108 in takes 14 risers of 7-5/7 in; 13 would be 8.31.
#[test]
fn nine_feet() {
    let all = choices(&flight(108.0, 10.0)).expect("a flight");
    assert_eq!(all.fewest, 14);
    near(all.within[0].riser, 7.0 + 5.0 / 7.0, 1e-12);
    let thirteen = with_risers(&flight(108.0, 10.0), 13).expect("a flight");
    near(thirteen.riser, 8.31, 0.005);
    assert_eq!(thirteen.riser_check.verdict, Verdict::Out);
    assert!(all.within.iter().all(layout::stair::Choice::holds));
    near(all.shortest_run, 130.0, 0.0);
}

/// A riser of exactly 7-3/4 in needs no more risers, and stands at its limit: 108.5 / 14.
#[test]
fn a_riser_at_its_limit() {
    let all = choices(&flight(108.5, 10.0)).expect("a flight");
    assert_eq!(all.fewest, 14);
    assert_eq!(all.within[0].riser_check.verdict, Verdict::AtLimit);
    let over = choices(&flight(108.5625, 10.0)).expect("a flight");
    assert_eq!(over.fewest, 15);
}

/// Source: a carpenters' course: two risers and a tread 24 to 25, riser and tread 17 to 19, their product about 75.
#[test]
fn comfort_sums() {
    let of = |rise, tread| with_risers(&flight(rise, tread), 15).expect("a flight").comfort;
    let good = of(112.5, 10.0);
    near(good.two_risers_and_tread, 25.0, 1e-12);
    near(good.riser_and_tread, 17.5, 1e-12);
    assert!((good.riser_times_tread.square_inches() - 75.0).abs() < 1e-9);
    assert!(good.walks_well);
    assert!(!of(75.0, 10.0).walks_well);
    assert!(!of(112.5, 11.0).walks_well);
}

/// A run too short for any number: the list is empty, and the shortest run is given. 108 in: 13 treads of 10.
#[test]
fn a_run_too_short() {
    let short = Flight { run: Run::InAll(inches(129.0)), ..flight(108.0, 10.0) };
    let found = choices(&short).expect("a flight");
    assert!(found.within.is_empty());
    near(found.shortest_run, 130.0, 0.0);
    let enough = Flight { run: Run::InAll(found.shortest_run), ..short };
    let found = choices(&enough).expect("a flight");
    assert_eq!(found.within.iter().map(|choice| choice.risers).collect::<Vec<_>>(), [14]);
    assert_eq!(found.within[0].tread_check.verdict, Verdict::AtLimit);
}

/// Source: IRC R311.7.3, 151 in, from memory; the older 147 in is said besides.
#[test]
fn one_flights_greatest_height() {
    let of = |rise| choices(&flight(rise, 10.0)).map(|all| (all.flight_rise.verdict, all.over_before_2018));
    assert_eq!(of(147.0), Ok((Verdict::Within, false)));
    assert_eq!(of(150.0), Ok((Verdict::Within, true)));
    assert_eq!(of(151.0), Ok((Verdict::AtLimit, true)));
    assert_eq!(of(151.0625), Ok((Verdict::Out, true)));
}

/// Source: a value sheet: H = 94, n = 13: nine risers of 7-1/4 and four of 7-3/16, 94 exactly; stepping off 7-1/4 gives 94-1/4.
#[test]
fn marks_of_a_sheet() {
    let risers = risers_of(&marks(inches(94.0), 13).expect("marks"));
    let count = |size: f64| risers.iter().filter(|riser| **riser == inches(size)).count();
    assert_eq!((count(7.25), count(7.1875)), (9, 4));
    near(risers.iter().copied().sum(), 94.0, 0.0);
    near(inches(7.25) * 13.0, 94.25, 0.0);
}

/// Source: a value sheet: throat of a 2x12 with 7-1/2 and 10 is 5.25, of a 2x10 3.25, which fails both limits.
#[test]
fn throats_of_a_sheet() {
    let of = |board: f64| {
        let given = Stringer { floors: floors(112.5, 0.0, 0.0), board: inches(board), ..sheet_stringer() };
        stringer(&given).expect("a stringer").throat
    };
    let (twelve, ten) = (of(11.25), of(9.25));
    near(twelve.left, 5.25, 1e-12);
    assert_eq!([twelve.practice.verdict, twelve.deck_guide.verdict], [Verdict::Within; 2]);
    near(ten.left, 3.25, 1e-12);
    assert_eq!([ten.practice.verdict, ten.deck_guide.verdict], [Verdict::Out; 2]);
    near(ten.least_board, 9.5, 1e-12);
}

/// Source: a value sheet: H = 109, r = 7.2667 (7-1/4), first cut 6.5167 (6-1/2), last 7.5167 (7-1/2) below the upper subfloor,
/// sum 108.5. Half of the last printed digit.
#[test]
fn cuts_of_a_sheet() {
    let found = stringer(&sheet_stringer()).expect("a stringer");
    near(found.rise, 109.0, 0.0);
    near(found.riser, 7.2667, 0.000_05);
    near(found.first_cut, 6.5167, 0.000_05);
    near(found.last_below_floor, 7.5167, 0.000_05);
    let texts = [found.riser, found.first_cut, found.last_below_floor].map(sixteenths);
    assert_eq!(texts, ["7-1/4\"", "6-1/2\"", "7-1/2\""]);
    near(found.first_cut + found.riser * 13.0 + found.last_below_floor, 108.5, 1e-9);
    near(found.tread_board, 11.0, 0.0);
    assert_eq!(found.steps.len(), 14);
    near(found.run, 140.0, 0.0);
}

/// On a finish floor that is in, the first cut is `r - tt`: measured so, fb is nothing.
#[test]
fn a_stringer_on_a_finish_floor() {
    let found = stringer(&Stringer { floors: floors(108.0, 0.0, 0.0), ..sheet_stringer() }).expect("a stringer");
    near(found.first_cut, 6.2, 1e-12);
    near(found.last_below_floor, 8.2, 1e-9);
}

/// Geometry of the drawn stringer, by Pythagoras: 7-1/2 and 10 is 12-1/2 along the edge.
#[test]
fn points_of_a_stringer() {
    let given = Stringer { floors: floors(112.5, 0.0, 0.0), ..sheet_stringer() };
    let found = stringer(&given).expect("a stringer");
    for (index, step) in found.steps.iter().enumerate() {
        let before = index as f64;
        near(step.along, 12.5 * before, 1e-9);
        near(step.corner.run, 10.0 * before, 1e-9);
        near(step.corner.height, 6.5 + 7.5 * before, 1e-9);
        near(step.inside.run, 10.0 * (before + 1.0), 1e-9);
    }
    // 11.25 / 0.8 = 14.0625 plumb through the board, less one riser at the top; the foot by similar triangles.
    near(found.top_cut, 14.0625 - 7.5, 1e-9);
    near(found.foot, (14.0625 - 6.5) * 10.0 / 7.5, 1e-9);
    near(found.bearing_depth, 112.5 - (6.5 + 14.0 * 7.5 - 14.0625), 1e-9);
    near(found.line, 175.0, 1e-9);
    // 15 x 12.5 + 11.25 = 198.75, which is a board of 18 ft.
    near(found.to_order, 198.75, 1e-9);
    near(found.stock, 216.0, 0.0);
    assert_eq!(found.outline.len(), 2 * 14 + 3);
}

/// One tread more where the top is level with the floor: the last cut is the tread's thickness less the finish below it.
#[test]
fn a_stringer_level_with_the_floor() {
    let found = stringer(&Stringer { top: Top::LevelWithFloor, ..sheet_stringer() }).expect("a stringer");
    assert_eq!(found.steps.len(), 15);
    near(found.run, 150.0, 0.0);
    near(found.last_below_floor, 1.0 - 0.75, 1e-9);
}

/// Source: a value sheet: with temporary treads as thick as the finished ones the first riser is `r + fb`, the last `r - ft`. The
/// cuts are as they are marked: each within 1/32, a riser within 1/16.
#[test]
fn temporary_treads_of_a_sheet() {
    let found = temporary(&sheet_stringer(), inches(1.0), Edition::Of2018).expect("risers");
    let riser = 109.0 / 15.0;
    near(found.risers[0], riser + 0.25, 1.0 / 32.0);
    near(found.risers[14], riser - 0.75, 1.0 / 32.0);
    for middle in &found.risers[1..14] {
        near(*middle, riser, 1.0 / 16.0);
    }
    near(found.risers.iter().copied().sum(), 108.5, 0.0);
    assert_eq!(found.code.variation.verdict, Verdict::Out);
    // tt - (fb + ft) / 2, which leaves both ends (fb - ft) / 2 off: within what the code takes, and what a crew may use.
    assert_eq!(found.evenest, Some(inches(0.5)));
    let even = temporary(&sheet_stringer(), inches(0.5), Edition::Of2018).expect("risers");
    near(even.code.spread, 0.25, 1.0 / 16.0);
    assert!(even.code.holds());
}

/// Source: a value sheet: 7-1/2 and 10, floor 12-1/4 thick: a well of 123 in. The framing adds both finishes.
#[test]
fn a_well_of_a_sheet() {
    let given = Well {
        riser: inches(7.5),
        tread: inches(10.0),
        risers: 15,
        floor_thickness: inches(12.25),
        header_finish: inches(0.5),
        top_finish: inches(1.75),
        edition: Edition::Of2018,
    };
    let found = well(&given).expect("a well");
    assert_eq!(found.length, Some(inches(123.0)));
    assert_eq!(found.framing, Some(inches(125.25)));
    let under = |distance| headroom(&given, inches(distance)).expect("headroom");
    let at = under(123.0);
    assert_eq!((at.check.verdict, at.longer_by, at.on_lower_floor), (Verdict::AtLimit, None, false));
    let short = under(115.0);
    near(short.check.found, 74.0, 1e-12);
    assert_eq!((short.check.verdict, short.longer_by), (Verdict::Out, Some(inches(8.0))));
    let past = under(141.0);
    assert!(past.on_lower_floor);
    near(past.check.found, 112.5 - 12.25, 1e-12);
    // A lower floor without headroom of its own: no well mends it.
    let low = Well { risers: 12, ..given };
    assert_eq!(well(&low).expect("a well").length, None);
    // A well is no longer than the flight: past that one stands on the floor.
    let thick = Well { floor_thickness: inches(30.0), ..given };
    assert_eq!(well(&thick).expect("a well").length, Some(inches(140.0)));
}

/// Source: a value sheet: the landing's top is a whole number of risers, its frame less its finish, its runs (n1 - 1) t and
/// (n2 - 1) t. The rise is that of the marks above.
#[test]
fn a_landing_in_an_l() {
    let given = Landing {
        floors: floors(108.5, 0.25, 0.75),
        risers: 15,
        on_riser: 7,
        tread: inches(10.0),
        width: inches(40.0),
        depth: inches(38.0),
        finish: Finish::ToCome(inches(0.75)),
        turn: Turn::Quarter,
        edition: Edition::Of2021,
    };
    let found = landing(&given).expect("a landing");
    near(found.height, 7.0 * 109.0 / 15.0, 1e-9);
    assert_eq!(sixteenths(found.mark), "50-7/8\"");
    near(found.frame, 7.0 * 109.0 / 15.0 - 0.75, 1e-9);
    near(found.frame_above_floor, 7.0 * 109.0 / 15.0 - 0.5, 1e-9);
    assert_eq!((found.lower.treads, found.upper.treads), (6, 7));
    near(found.lower.run, 60.0, 0.0);
    near(found.upper.run, 70.0, 0.0);
    // As deep as the stair is wide where it turns; straight on 36 in do.
    assert_eq!(found.depth.verdict, Verdict::Out);
    let straight = landing(&Landing { turn: Turn::Straight, ..given }).expect("a landing");
    assert_eq!(straight.depth.verdict, Verdict::Within);
    assert_eq!(nearest_landing(&given.floors, 15, inches(52.0)), Ok(7));
    // The three parts meet in plan: straight, L and U.
    let half = Turn::Half { gap: inches(4.0) };
    for turn in [Turn::Straight, Turn::Quarter, half] {
        let [below, on, above] = landing(&Landing { turn, ..given }).expect("a landing").plan;
        assert_eq!(below.along[1], on.along[0]);
        let meets = match turn {
            Turn::Straight => (on.along[1], above.along[0]),
            Turn::Quarter => (on.across[1], above.across[0]),
            Turn::Half { .. } => (on.along[0], above.along[1]),
        };
        assert_eq!(meets.0, meets.1);
    }
}

/// Source: a value sheet, three winders of 30 degrees: chord, depth square to a nosing and narrow end by radius. Half of the last
/// printed digit. At 11.6 the sheet's 6.00 is 6.0046.
#[test]
fn winders_of_a_sheet() {
    let rows =
        [(6.0, 9.32, 9.00, 3.11), (7.5, 10.09, 9.75, 3.88), (9.0, 10.87, 10.50, 4.66), (11.6, 12.22, 11.80, 6.00)];
    for (radius, chord, square, narrow) in rows {
        let found = winders(&three(radius)).expect("winders");
        near(found.chord, chord, 0.005);
        near(found.at_walk_line.found, square, 0.005);
        near(found.narrow_end.found, narrow, 0.005);
        // The sheet's "p >= 11.59" to half its digit.
        near(found.least_radius, 11.59, 0.005);
        assert_eq!(found.holds(), radius > 11.59);
    }
}

fn three(radius: f64) -> Winders {
    Winders {
        winders: 3,
        turn: Angle::from_degrees(90.0),
        narrow_radius: inches(radius),
        width: inches(36.0),
        edition: Edition::Of2018,
    }
}

/// The least radius just works, and the most winders that work are no more than that.
#[test]
fn winders_that_work() {
    let least = winders(&three(6.0)).expect("winders").least_radius;
    let at = winders(&Winders { narrow_radius: least, ..three(6.0) }).expect("winders");
    assert_eq!(at.narrow_end.verdict, Verdict::AtLimit);
    assert_eq!(at.most_that_work, Some(3));
    // Two of 45 degrees: 6 / (2 sin 22.5) = 7.84.
    let nine = winders(&three(9.0)).expect("winders");
    assert_eq!(nine.most_that_work, Some(2));
    assert_eq!(winders(&three(6.0)).expect("winders").most_that_work, None);
    assert_eq!(at.lines.len(), 4);
    near(at.lines[3].narrow[1], at.least_radius.inches(), 1e-9);
    near(at.lines[3].wide[0], 0.0, 1e-9);
}

/// Source: a value sheet: boards of 3/4, 1-1/16 and 1-1/2 in take stringers at 16, 18 and 24 in; the count is the spaces and one.
#[test]
fn stringers_under_treads() {
    let of =
        |width, board| stringer_count(inches(width), inches(board)).map(|found| (found.stringers, found.on_a_deck));
    assert_eq!(of(36.0, 0.75), Ok((4, 4)));
    assert_eq!(of(36.0, 1.0625), Ok((3, 3)));
    assert_eq!(of(48.0, 1.5), Ok((3, 4)));
    assert_eq!(of(36.0, 1.0), Ok((4, 4)));
    assert!(matches!(of(36.0, 0.5), Err(StairError::TreadBoardTooThin { .. })));
}

/// Every refusal is a sentence or more, and says what to do.
#[test]
fn refusals_are_sentences() {
    let good = sheet_stringer();
    let errors = [
        choices(&flight(-1.0, 10.0)).unwrap_err(),
        choices(&flight(108.0, 0.0)).unwrap_err(),
        choices(&flight(13_000.0, 10.0)).unwrap_err(),
        Floors { bottom: Finish::ToCome(inches(9.0)), ..floors(8.0, 0.0, 0.0) }.rise().unwrap_err(),
        with_risers(&flight(108.0, 10.0), 1).unwrap_err(),
        stringer(&Stringer { tread_thickness: inches(8.0), ..good }).unwrap_err(),
        stringer(&Stringer { board: inches(5.5), ..good }).unwrap_err(),
        stringer(&Stringer { nosing: inches(-1.0), ..good }).unwrap_err(),
        winders(&Winders { winders: 1, ..three(6.0) }).unwrap_err(),
        winders(&Winders { turn: Angle::from_degrees(200.0), ..three(6.0) }).unwrap_err(),
        stringer_count(inches(36.0), inches(0.5)).unwrap_err(),
        marks(inches(94.0), 0).unwrap_err(),
    ];
    for error in errors {
        let text = error.to_string();
        assert!(text.ends_with('.') && text.len() > 40, "{text}");
    }
}

/// Each check names the clause of its edition.
#[test]
fn checks_name_their_clause() {
    let riser = |edition| -> Check {
        with_risers(&Flight { edition, ..flight(108.0, 10.0) }, 14).expect("a flight").riser_check
    };
    assert_eq!(riser(Edition::Of2018).source.document, "IRC 2018");
    assert_eq!(riser(Edition::Of2021).source.document, "IRC 2021");
    assert_eq!(riser(Edition::Of2021).source.place, "R311.7.5.1");
}
