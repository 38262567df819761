//! What holds of every floor.

use layout::floor::{
    Bridging, Floor, FloorNotice, FloorOpening, FloorPart, Joist, JoistEnd, PointLoad, SheetSize, WallAbove,
};
use layout::wall::{Layout, Spacing, Span};
use measure::Length;
use proptest::prelude::*;

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

/// Binary noise of a few additions; a tape shows nothing under 1/64 in.
const NOISE: f64 = 1e-6;

fn sixteenths(from: i32, to: i32) -> impl Strategy<Value = f64> {
    (from * 16..=to * 16).prop_map(|marks| f64::from(marks) / 16.0)
}

/// A floor with an opening and a wall above, rows of blocks, and sheets.
fn busy() -> impl Strategy<Value = Floor> {
    let places = (sixteenths(5, 90), sixteenths(12, 120), sixteenths(12, 60), sixteenths(20, 100));
    let along = (sixteenths(5, 60), sixteenths(24, 120), sixteenths(8, 100));
    (places, along, proptest::sample::select(Spacing::ALL.to_vec()), 0_u8..4, any::<bool>()).prop_map(
        |((from, wide, wall, rest), (near, long, far), spacing, rows, hung)| {
            let across = Span::new(inches(from), inches(from + wide));
            let opening = FloorOpening { across, along: Span::new(inches(near), inches(near + long)), plies: None };
            let joist = Joist::sawn(10, inches(9.25));
            let (length, width) = (inches(from + wide + wall + rest), inches(near + long + far));
            let hang = JoistEnd::InHangers { gap: inches(0.125) };
            let plain = Floor::plain(length, width, Layout::usual(spacing), joist);
            Floor {
                openings: vec![opening],
                walls_above: vec![WallAbove { centre: inches(from + wide + wall), spread: None }],
                bridging: Bridging::Rows(rows),
                sheets: Some(SheetSize::usual()),
                ends: if hung { [plain.ends[0], hang] } else { plain.ends },
                ..plain
            }
        },
    )
}

proptest! {
    /// Every end joint has 1/2 in of joist on each side, at every length and at all four spacings, and no bay is wider than
    /// the spacing by more than the trade's 1/4 in.
    #[test]
    fn sheets_end_on_joists_and_no_bay_is_wide(floor in busy()) {
        let laid = floor.lay_out().unwrap();
        let bad = |notice: &FloorNotice| {
            matches!(notice, FloorNotice::JointOffJoist { .. } | FloorNotice::WideBay { .. } | FloorNotice::SheetsOffLayout { .. })
        };
        prop_assert!(!laid.notices.iter().any(bad), "{:?}", laid.notices);
    }

    #[test]
    fn marks_rise_and_pieces_do_not_overlap(floor in busy()) {
        let laid = floor.lay_out().unwrap();
        for pair in laid.marks.windows(2) {
            prop_assert!(pair[0].pull.inches() + NOISE < pair[1].pull.inches());
        }
        for (at, piece) in laid.pieces.iter().enumerate() {
            for other in laid.pieces.iter().skip(at + 1) {
                prop_assert!(!piece.overlaps(other), "{piece:?} {other:?}");
            }
            for opening in &floor.openings {
                let clear = !(piece.across.overlaps(opening.across) && piece.along.overlaps(opening.along));
                prop_assert!(clear, "{piece:?}");
            }
        }
        let rims: f64 = laid.pieces.iter().filter(|p| p.part == FloorPart::Rim).map(|p| p.length.inches()).sum();
        let sides = floor.ends.iter().filter(|end| matches!(end, JoistEnd::OnPlate { .. })).count() as f64;
        prop_assert!((rims - sides * floor.length.inches()).abs() < NOISE);
    }

    /// A layout joist that is cut keeps its whole length less the opening and both headers.
    #[test]
    fn tails_and_headers_fill_the_joist(floor in busy()) {
        let laid = floor.lay_out().unwrap();
        let joist = laid.pieces.iter().find(|p| p.part == FloorPart::EndJoist).unwrap().length;
        let opening = floor.openings[0];
        let headers = inches(3.0) * f64::from(opening.plies());
        let mut tails: Vec<(f64, f64)> = Vec::new();
        for piece in laid.pieces.iter().filter(|p| p.part == FloorPart::Tail) {
            let at = piece.across.from.inches();
            match tails.iter_mut().find(|(other, _)| (other - at).abs() < NOISE) {
                Some((_, sum)) => *sum += piece.length.inches(),
                None => tails.push((at, piece.length.inches())),
            }
        }
        for (_, sum) in tails {
            let whole = sum + (opening.along.width() + headers).inches();
            prop_assert!((whole - joist.inches()).abs() < NOISE);
        }
    }

    /// Sheets bought cover the floor: never fewer than its area asks for.
    #[test]
    fn sheets_cover_the_floor(floor in busy()) {
        let subfloor = floor.lay_out().unwrap().subfloor.unwrap();
        let size = SheetSize::usual();
        prop_assert!(subfloor.to_buy >= layout::floor::Subfloor::fewest(&floor, &size));
        prop_assert!(subfloor.to_buy <= subfloor.sheets.len());
    }

    /// Nothing that can be typed panics or runs away.
    #[test]
    fn anything_typed_is_answered(
        (length, width, start) in (0.0_f64..900.0, 0.0_f64..500.0, -20.0_f64..20.0),
        (from, wide, near, long, plies) in (-5.0_f64..400.0, 0.0_f64..100.0, -5.0_f64..200.0, 0.0_f64..100.0, 0_u8..5),
        (wall, spread, load, blocks, rows) in (-5.0_f64..400.0, -1.0_f64..20.0, -5.0_f64..400.0, 0_u8..4, 0_u8..40),
        (thick, rim, stock, gap, sheet) in (0.0_f64..9.7, 0.0_f64..6.2, 60.0_f64..300.0, -0.1_f64..1.1, 40.0_f64..130.0),
    ) {
        let layout = Layout { start: inches(start), ..Layout::usual(Spacing::NineteenPointTwo) };
        let joist = Joist { thickness: inches(thick), ..Joist::sawn(10, inches(9.25)) };
        let floor = Floor {
            ends: [JoistEnd::OnPlate { rim: inches(rim) }, JoistEnd::InHangers { gap: inches(gap) }],
            openings: vec![FloorOpening {
                across: Span::new(inches(from), inches(from + wide)),
                along: Span::new(inches(near), inches(near + long)),
                plies: Some(plies),
            }],
            walls_above: vec![WallAbove { centre: inches(wall), spread: Some(inches(spread)) }],
            point_loads: vec![PointLoad { across: inches(load), along: inches(load), blocks }],
            bridging: Bridging::Rows(rows),
            rim_stock: inches(stock),
            sheets: Some(SheetSize { length: inches(sheet), gap: inches(gap), ..SheetSize::usual() }),
            ..Floor::plain(inches(length), inches(width), layout, joist)
        };
        match floor.lay_out() {
            Ok(laid) => prop_assert!(laid.notices.iter().all(|notice| notice.to_string().ends_with('.'))),
            Err(error) => prop_assert!(error.to_string().ends_with('.'), "{error}"),
        }
    }
}
