//! Set-out and take-off of strips against worked cases; vectors of our own are marked so.

#![expect(clippy::expect_used, reason = "in a test a panic is the report")]

use layout::strapping::{
    NAILS_A_CROSSING, ONE_BY_THREE, Obstacle, Row, SetOut, Stock, Strapping, StrappingError, TakeOffWish, rows,
    set_out, take_off,
};
use measure::Length;
use proptest::prelude::*;

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

/// Joists at a spacing, the first one's middle 3/4 in from the left wall, the last one against the right wall.
fn joists(across: f64, spacing: f64) -> Vec<Length> {
    let mut centres = vec![inches(0.75)];
    let mut count = 1.0;
    while spacing * count < across - 2.25 {
        centres.push(inches(spacing * count));
        count += 1.0;
    }
    centres.push(inches(across - 0.75));
    centres
}

fn room(across: f64, along: f64, spacing_of_joists: f64) -> SetOut {
    SetOut {
        across: inches(across),
        along: inches(along),
        joists: joists(across, spacing_of_joists),
        joist_thickness: inches(1.5),
        strip: ONE_BY_THREE,
        spacing: inches(16.0),
        clearance: inches(0.5),
        bearing: inches(0.75),
        stock: Stock::Sixteen,
        short_pieces: [false, false],
        obstacles: Vec::new(),
    }
}

fn buy(stock: Stock) -> TakeOffWish {
    TakeOffWish { stock, kerf: inches(0.125), bundle: 10, fasteners: NAILS_A_CROSSING.0 }
}

fn laid(given: &SetOut) -> Strapping {
    set_out(given).expect("it can be set out")
}

fn joint_places(given: &SetOut, row: &Row) -> Vec<f64> {
    row.runs.iter().flat_map(|run| &run.joints).map(|joint| given.joists[*joint].inches()).collect()
}

/// Source: strapping notes, rows = ceil((b − w) / 16) + 1 of 2-1/2 in strips: 10, 11, 11 and 11 in 144, 150, 156 and 160 in.
#[test]
fn rows_of_a_room() {
    for (along, count) in [(144.0, 10), (150.0, 11), (156.0, 11), (160.0, 11)] {
        let rows = rows(inches(along), inches(16.0), inches(2.5)).expect("a room");
        assert_eq!(rows.len(), count, "{along}");
        let first = rows.first().expect("a row");
        let last = rows.last().expect("a row");
        assert_eq!((first.centre - first.width / 2.0, last.centre + last.width / 2.0), (Length::ZERO, inches(along)));
    }
}

/// Source: the same notes and a field case: centres at whole spacings from the wall, so that 48, 96 … are the middle of a
/// strip. Vector of our own: at 19.2 in the edges land on none but those at 96.
#[test]
fn board_edges() {
    for spacing in [12.0, 16.0, 24.0] {
        let laid = laid(&SetOut { spacing: inches(spacing), ..room(180.0, 200.0, 16.0) });
        assert!(laid.board_edges_land);
        for edge in [48.0, 96.0, 144.0] {
            assert!(laid.rows.iter().any(|row| row.centre == inches(edge)), "{edge} at {spacing}");
        }
    }
    assert!(!laid(&SetOut { spacing: inches(19.2), ..room(180.0, 200.0, 16.0) }).board_edges_land);
}

/// Vector of our own: 147 in leaves 1-3/4 in past the strip at 144, and the last strip is ripped to it.
#[test]
fn a_last_strip_that_is_ripped() {
    let rows = rows(inches(147.0), inches(16.0), inches(2.5)).expect("a room");
    let last = rows.last().expect("a row");
    assert_eq!((rows.len(), last.width, last.centre), (11, inches(1.75), inches(146.125)));
}

/// Source: strapping notes: short pieces of 16 − 2-1/2 = 13-1/2 in between rows, 2 × (rows − 1) of them. Those beside the
/// two walls are shorter, as the strip at the wall stands in the room by its whole width.
#[test]
fn short_pieces_along_both_walls() {
    let laid = laid(&SetOut { short_pieces: [true, true], ..room(180.0, 144.0, 16.0) });
    let [left, right] = &laid.short_pieces;
    assert_eq!(left.len() + right.len(), 2 * (laid.rows.len() - 1));
    assert_eq!(left[1..8], [inches(13.5); 7]);
    assert_eq!([left[0], left[8]], [inches(12.25), inches(12.25)]);
}

/// Source: strapping notes: from joist to joist 16 ft strips are 12 spaces at 16 in, 10 at 19.2 and 8 at 24, with nothing
/// left; the first piece ends on the last joist not past 192 in. 19.2 is no binary fraction: to a billionth of an inch.
#[test]
fn whole_joist_spaces() {
    for (spacing, spaces) in [(16.0, 12), (19.2, 10), (24.0, 8)] {
        let given = room(600.0, 96.0, spacing);
        let first = &laid(&given).rows[0].runs[0];
        let spaces_of = first.joints.windows(2).map(|pair| pair[1] - pair[0]).collect::<Vec<_>>();
        assert_eq!(spaces_of, [spaces; 2], "{spacing}");
        assert!(first.pieces[1..3].iter().all(|piece| (piece.inches() - 192.0).abs() < 1e-9));
        assert!((given.joists[first.joints[0]].inches() - 192.0).abs() < 1e-9);
    }
}

/// Source: strapping notes: fasteners are 2 per crossing, crossings are rows × joists, splices add 2.
#[test]
fn fasteners_and_bundles() {
    let given = room(240.0, 144.0, 16.0);
    let laid = laid(&given);
    assert_eq!((laid.crossings, laid.joints), (10 * given.joists.len(), 10));
    let found = take_off(&laid, &buy(Stock::Sixteen)).expect("it was set out for it");
    assert_eq!(found.fasteners, 2 * (laid.crossings + laid.joints));
    // Two pieces a row; by hand, the odd rows are 191-3/4 and 47-3/4, the even ones 175-3/4 and 63-3/4: ten long ones, and
    // of the short ones four 47-3/4 or two of 63-3/4 and one of 47-3/4 come out of a strip.
    assert_eq!((found.pieces, found.strips, found.at_least, found.bundles), (20, 13, 13, 2));
    let used = found.length + found.waste;
    assert_eq!(used, inches(13.0 * 192.0));
}

/// Source: cutting-stock notes, the field trap: three pieces of 64 in do not come out of 192 in with a kerf of 1/8, three
/// of 63-7/8 do; here as rows of two rooms.
#[test]
fn a_kerf_counts() {
    for (across, strips) in [(64.5, 5), (64.375, 4)] {
        let laid = laid(&room(across, 144.0, 16.0));
        let found = take_off(&laid, &buy(Stock::Sixteen)).expect("it was set out for it");
        assert_eq!((found.pieces, found.strips), (10, strips), "{across}");
    }
}

/// Vector of our own: in 146 in the strip at 144 would lie in the last one, and the last one is tight to the wall: 144-3/4
/// from 128.
#[test]
fn the_widest_space() {
    assert_eq!(laid(&room(180.0, 144.0, 16.0)).widest, inches(16.0));
    assert_eq!(laid(&room(180.0, 146.0, 16.0)).widest, inches(16.75));
}

/// Vector of our own: an opening cuts the rows that meet it; its edge between two rows takes a strip from joist to joist;
/// its other edge has a row within a strip's width and takes none.
#[test]
fn around_an_opening() {
    let opening = Obstacle {
        across: [inches(64.75), inches(95.25)],
        along: [inches(40.0), inches(78.0)],
        clearance: Length::ZERO,
    };
    let given = SetOut { obstacles: vec![opening], ..room(180.0, 144.0, 16.0) };
    let laid = laid(&given);
    let cut: Vec<f64> = laid.rows.iter().filter(|row| row.runs.len() == 2).map(|row| row.centre.inches()).collect();
    assert_eq!(cut, [48.0, 64.0]);
    let [left, right] = laid.rows[3].runs.as_slice() else { panic!("two runs") };
    assert_eq!([left.to, right.from], [inches(64.75), inches(95.25)]);
    let backing: Vec<_> = laid.backing.iter().map(|one| (one.centre, one.run.from, one.run.to)).collect();
    assert_eq!(backing, [(inches(38.75), inches(63.25), inches(96.75))]);
}

/// Vector of our own: a beam along the joists parts every row, and nothing stands where it is.
#[test]
fn around_a_beam() {
    let beam = Obstacle {
        across: [inches(88.0), inches(91.5)],
        along: [Length::ZERO, inches(144.0)],
        clearance: inches(0.25),
    };
    let mut given = SetOut { obstacles: vec![beam], ..room(180.0, 144.0, 16.0) };
    given.joists.retain(|joist| *joist < inches(87.0) || *joist > inches(92.0));
    let laid = laid(&given);
    assert!(laid.backing.is_empty());
    for row in &laid.rows {
        let [left, right] = row.runs.as_slice() else { panic!("two runs") };
        assert_eq!([left.to, right.from], [inches(87.75), inches(91.75)]);
        assert!(!left.loose && !right.loose);
    }
}

#[test]
fn what_cannot_be_set_out_is_refused() {
    let usual = room(240.0, 144.0, 16.0);
    assert!(matches!(
        set_out(&SetOut { spacing: inches(30.0), ..usual.clone() }),
        Err(StrappingError::Outside { what: "the spacing of the rows", .. })
    ));
    assert_eq!(
        set_out(&SetOut { bearing: inches(1.0), ..usual.clone() }),
        Err(StrappingError::Bearing { needed: inches(1.0), there: inches(0.75) })
    );
    let few = SetOut { joists: vec![inches(10.0), inches(230.0)], ..usual.clone() };
    assert_eq!(set_out(&few), Err(StrappingError::OutOfReach { from: inches(0.25), stock: inches(192.0) }));
    let turned = SetOut { joists: vec![inches(32.0), inches(16.0)], ..usual.clone() };
    assert_eq!(set_out(&turned), Err(StrappingError::NotInOrder { what: "the joists", at: 2 }));
    let short = take_off(&laid(&usual), &buy(Stock::Eight));
    assert!(matches!(short, Err(StrappingError::Outside { what: "a piece", .. })));
}

fn any_room() -> impl Strategy<Value = SetOut> {
    let spacing = prop::sample::select(vec![12.0, 16.0, 19.2, 24.0]);
    let stock = prop::sample::select(Stock::ALL.to_vec());
    (60_u32..600, 40_u32..400, spacing.clone(), spacing, stock).prop_map(
        |(across, along, of_joists, of_rows, stock)| SetOut {
            spacing: inches(of_rows),
            stock,
            ..room(f64::from(across), f64::from(along), of_joists)
        },
    )
}

proptest! {
    /// Pieces cover each row from end to end, none is longer than the strips, and every joint is on a joist with its bearing
    /// on both sides. Lengths are sums of a few hundred numbers: to a billionth of an inch.
    #[test]
    fn pieces_cover_the_rows(given in any_room()) {
        let laid = laid(&given);
        for row in &laid.rows {
            let [run] = row.runs.as_slice() else { panic!("no obstacle, one run") };
            let length: Length = run.pieces.iter().copied().sum();
            prop_assert!((length - (given.across - given.clearance)).abs() < inches(1e-9));
            prop_assert!(run.pieces.iter().all(|piece| *piece <= given.stock.length() + inches(1e-9)));
            prop_assert_eq!(run.pieces.len(), run.joints.len() + 1);
            let mut at = run.from;
            for (piece, joint) in run.pieces.iter().zip(&run.joints) {
                at += *piece;
                prop_assert!((at - given.joists[*joint]).abs() < inches(1e-9));
            }
        }
    }

    /// No joint stands on the joist of a joint in the row before, but where it is said.
    #[test]
    fn joints_are_staggered(given in any_room()) {
        let laid = laid(&given);
        for (index, pair) in laid.rows.windows(2).enumerate() {
            let before = joint_places(&given, &pair[0]);
            let shared = joint_places(&given, &pair[1]).iter().any(|place| before.contains(place));
            prop_assert_eq!(shared, laid.unstaggered.contains(&(index + 1)));
        }
    }

    /// Strips are enough for the length, no fewer than the bound and no more than first fit is known for; bundles hold them.
    /// The bound of first fit is 11/9 of the fewest and 6/9, from the cutting-stock notes; it holds for the fewest, which is
    /// not known, and so is asked of twice the bound by volume, which no first fit passes.
    #[test]
    fn strips_are_enough(given in any_room(), bundle in 1_usize..20) {
        let laid = laid(&given);
        let found = take_off(&laid, &TakeOffWish { bundle, ..buy(given.stock) }).expect("it was set out for it");
        prop_assert!(found.waste >= inches(-1e-6) && found.strips >= found.at_least);
        prop_assert!(found.strips <= 2 * found.at_least);
        prop_assert!(found.bundles * bundle >= found.strips && (found.bundles - 1) * bundle < found.strips);
    }

    /// Rows never lie over each other, the first and last are tight to their walls, and none is farther from the next than
    /// the spacing and half a strip, the most that the last one is moved to its wall.
    #[test]
    fn rows_fill_the_room(along in 24.0_f64..600.0, spacing in 12.0_f64..24.0) {
        let rows = rows(inches(along), inches(spacing), inches(2.5)).expect("a room");
        for pair in rows.windows(2) {
            let between = pair[1].centre - pair[0].centre;
            prop_assert!(between >= (pair[0].width + pair[1].width) / 2.0 - inches(1e-9));
            prop_assert!(between <= inches(spacing + 1.25 + 1e-9));
        }
        let last = rows.last().expect("a row");
        prop_assert!((last.centre + last.width / 2.0 - inches(along)).abs() < inches(1e-9));
        prop_assert!(last.width >= inches(1.25 - 1e-9));
        let formula = ((along - 2.5) / spacing - 1e-9).ceil() as usize + 1;
        prop_assert_eq!(rows.len(), formula);
    }
}
