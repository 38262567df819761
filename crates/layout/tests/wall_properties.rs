//! What holds of every wall.

use layout::wall::{
    Backing, Braced, EDGE_BEARING, End, Header, Heights, LaidWall, Lay, Layout, Notice, OnPlates, Opening, Part,
    Partition, Post, SPACING_TOLERANCE, Sheets, Spacing, Span, Wall,
};
use measure::Length;
use proptest::prelude::*;

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

/// Binary noise of a few additions; a tape shows nothing under 1/64 in.
const NOISE: f64 = 1e-6;

fn spacing() -> impl Strategy<Value = Spacing> {
    proptest::sample::select(Spacing::ALL.to_vec())
}

/// Sixteenths, as a tape reads.
fn sixteenths(from: i32, to: i32) -> impl Strategy<Value = f64> {
    (from * 16..=to * 16).prop_map(|marks| f64::from(marks) / 16.0)
}

fn opening(from: f64, width: f64, sill: bool, jacks: u8) -> Opening {
    Opening {
        from: inches(from),
        width: inches(width),
        head: inches(82.5),
        sill: sill.then(|| inches(30.0)),
        sill_plates: 1,
        jacks,
        kings: 1,
        header: Header { depth: inches(7.25), plies: 2, flat_plates: 1 },
    }
}

fn plain(length: f64, spacing: Spacing) -> Wall {
    Wall::plain(inches(length), Layout::usual(spacing), Heights::usual(inches(92.625)))
}

/// Two openings and a post with room between them, corners at both ends, sheets over all.
fn busy() -> impl Strategy<Value = Wall> {
    let places = (sixteenths(14, 60), sixteenths(12, 72), sixteenths(12, 40), sixteenths(12, 72), sixteenths(10, 40));
    (places, spacing(), sixteenths(10, 80), any::<bool>(), 1_u8..3, any::<bool>()).prop_map(
        |((first, wide, post, next, after), spacing, rest, sill, jacks, lying)| {
            let one = opening(first, wide, sill, jacks);
            let post_at = first + wide + 3.0 + post;
            let two = opening(post_at + 3.0 + after, next, !sill, jacks);
            let length = post_at + 3.0 + after + next + rest + 8.0;
            let corner = End::ThreeStuds { meets: inches(3.5) };
            let wall = Wall {
                openings: vec![one, two],
                posts: vec![Post { centre: inches(post_at), plies: 2 }],
                ends: [corner, End::FlatStud { meets: inches(3.5) }],
                ..plain(length, spacing)
            };
            let lay = if lying || spacing == Spacing::NineteenPointTwo { Lay::Lying } else { Lay::Upright };
            Wall { sheets: Some(Sheets::usual(lay, &wall)), ..wall }
        },
    )
}

fn studs(laid: &LaidWall) -> Vec<Span> {
    let standing = laid.pieces.iter().filter(|piece| piece.part.is_full_height() || piece.part == Part::FlatStud);
    let mut spans: Vec<Span> = standing.map(|piece| piece.along).collect();
    spans.sort_by(|a, b| a.from.inches().total_cmp(&b.from.inches()));
    spans
}

proptest! {
    /// Upright 4 ft sheets on 12, 16 and 24 in, 8 ft sheets on all four: every joint has 1/2 in of stud on each side, or, of
    /// a strip narrower than that at the end, all of it.
    #[test]
    fn sheet_edges_land_on_studs(length in sixteenths(4, 600), spacing in spacing()) {
        let laid = plain(length, spacing).lay_out().unwrap();
        let sheet = if spacing == Spacing::NineteenPointTwo { 96.0 } else { 48.0 };
        let solids = joined(&studs(&laid));
        let mut joint = sheet;
        while joint < length - EDGE_BEARING.inches() {
            let bears = solids.iter().any(|wood| {
                wood.from.inches() + 0.5 <= joint + NOISE && joint + 0.5 <= wood.to.inches() + NOISE
            });
            prop_assert!(bears, "{joint} of {length}");
            joint += sheet;
        }
    }

    /// Clear between neighbours: the spacing less a stud, and no more than 1/8 in, half of the trade's tolerance, where
    /// the end stud serves a mark.
    #[test]
    fn no_bay_is_wider_than_the_spacing(length in sixteenths(4, 600), spacing in spacing()) {
        let laid = plain(length, spacing).lay_out().unwrap();
        for pair in studs(&laid).windows(2) {
            let most = spacing.length() - inches(1.5) + SPACING_TOLERANCE / 2.0;
            prop_assert!((pair[1].from - pair[0].to).inches() <= most.inches() + NOISE);
        }
    }

    /// With openings and posts too, outside of the openings.
    #[test]
    fn a_busy_wall_has_its_sheets_on_wood_and_no_wide_bay(wall in busy()) {
        let laid = wall.lay_out().unwrap();
        let bad = |notice: &Notice| matches!(notice, Notice::JointOffStud { .. } | Notice::WideBay { .. });
        prop_assert!(!laid.notices.iter().any(bad), "{:?}", laid.notices);
    }

    /// No two pieces of the elevation overlap, none leaves the frame, and bottom plate and doors fill the wall.
    #[test]
    fn pieces_do_not_overlap_and_the_plate_is_filled(wall in busy()) {
        let laid = wall.lay_out().unwrap();
        for (at, piece) in laid.pieces.iter().enumerate() {
            for other in laid.pieces.iter().skip(at + 1) {
                prop_assert!(!piece.overlaps(other), "{piece:?} {other:?}");
            }
            prop_assert!(piece.length.inches() > 0.0);
            prop_assert!(piece.upright.from.inches() >= -NOISE);
            prop_assert!(piece.upright.to.inches() <= wall.heights.frame().inches() + NOISE);
        }
        let of = |part: Part| -> f64 {
            laid.pieces.iter().filter(|p| p.part == part).map(|p| p.along.width().inches()).sum()
        };
        let doors: f64 = wall.openings.iter().filter(|o| o.sill.is_none()).map(|o| o.width.inches()).sum();
        prop_assert!((of(Part::BottomPlate) + doors - wall.length.inches()).abs() < NOISE);
        prop_assert!((of(Part::TopPlate) - wall.length.inches()).abs() < NOISE);
    }

    /// On each plate; a jack on the bottom one and a cripple over it on the top one may have one pull.
    #[test]
    fn marks_rise(wall in busy()) {
        let laid = wall.lay_out().unwrap();
        prop_assert!(laid.marks.windows(2).all(|pair| pair[0].pull <= pair[1].pull));
        for other in [OnPlates::Top, OnPlates::Bottom] {
            let plate: Vec<_> = laid.marks.iter().filter(|mark| mark.on != other).collect();
            for pair in plate.windows(2) {
                prop_assert!(pair[0].pull.inches() + NOISE < pair[1].pull.inches(), "{pair:?}");
            }
        }
    }

    /// From the other end the openings' pieces are the same, mirrored.
    #[test]
    fn a_mirrored_wall_has_mirrored_openings(wall in busy()) {
        let of = |laid: &LaidWall, part: Part| {
            let mut spans: Vec<Span> = laid.pieces.iter().filter(|p| p.part == part).map(|p| p.along).collect();
            spans.sort_by(|a, b| a.from.inches().total_cmp(&b.from.inches()));
            spans
        };
        let (one, other) = (wall.lay_out().unwrap(), wall.mirrored().lay_out().unwrap());
        for part in [Part::King, Part::Jack, Part::Header, Part::Sill, Part::PostStud, Part::CornerStud] {
            let back: Vec<Span> = of(&other, part).iter().rev().map(|span| span.mirrored(wall.length)).collect();
            let there = of(&one, part);
            prop_assert_eq!(back.len(), there.len());
            for (a, b) in back.iter().zip(&there) {
                prop_assert!((a.from - b.from).inches().abs() < NOISE && (a.to - b.to).inches().abs() < NOISE);
            }
        }
    }

    /// Each line of the cut list is a piece of that length, and none is lost.
    #[test]
    fn the_cut_list_holds_every_stick(wall in busy()) {
        let laid = wall.lay_out().unwrap();
        for part in [Part::Stud, Part::King, Part::CrippleAbove, Part::CrippleBelow, Part::Header, Part::PanelBlock] {
            let plies: u32 = laid.pieces.iter().filter(|p| p.part == part).map(|p| u32::from(p.plies)).sum();
            prop_assert_eq!(plies, laid.count(part));
        }
    }

    /// With every backing and a hold-down's post at each end of a braced piece, nothing overlaps; an inner wall between two
    /// studs and blocks, or on a ladder, has wood behind its wallboard at both sides wherever it meets.
    #[test]
    fn inner_walls_are_backed(length in sixteenths(96, 400), at in 0.0_f64..1.0, spacing in spacing(), kind in 0_u8..3, plies in 1_u8..4) {
        let backing = match kind {
            0 => Backing::TwoStudsAndBlocks,
            1 => Backing::Ladder,
            _ => Backing::FlatStud(inches(5.5)),
        };
        let centre = inches(1.75 + at * (length - 3.5));
        let wall = Wall {
            partitions: vec![Partition { centre, thickness: inches(3.5), backing }],
            braced: vec![Braced { from: Length::ZERO, to: inches(48.0), plies }],
            ends: [End::ThreeStuds { meets: inches(5.5) }, End::FlatStud { meets: inches(3.5) }],
            ..plain(length, spacing)
        };
        let laid = wall.lay_out().unwrap();
        for (at, piece) in laid.pieces.iter().enumerate() {
            for other in laid.pieces.iter().skip(at + 1) {
                prop_assert!(!piece.overlaps(other), "{piece:?} {other:?}");
            }
        }
        let wide = laid.notices.iter().any(|notice| matches!(notice, Notice::WideBay { .. }));
        prop_assert!(!wide);
        let free = centre > inches(55.0) && centre < wall.length - inches(12.0);
        let bare = laid.notices.iter().any(|notice| matches!(notice, Notice::NoBacking { .. }));
        prop_assert!(!(free && bare), "{:?}", laid.notices);
        let posts = laid.count(Part::HoldDownStud);
        prop_assert!(posts <= 2 * u32::from(plies));
    }

    /// Sheets of a row follow each other with their gap, from half a gap past the start to half a gap before the end, and none
    /// is wider than it was made.
    #[test]
    fn sheets_fill_their_rows(wall in busy()) {
        let laid = wall.lay_out().unwrap();
        let rows = laid.sheets.iter().map(|sheet| sheet.row).max().unwrap();
        for row in 0..=rows {
            let sheets: Vec<_> = laid.sheets.iter().filter(|sheet| sheet.row == row).collect();
            prop_assert_eq!(sheets[0].along.from, inches(1.0 / 16.0));
            // Where the rest is no wider than the gap, the last sheet ends that much before the end.
            let short = wall.length - sheets[sheets.len() - 1].along.to;
            prop_assert!(short.inches() > 1.0 / 16.0 - NOISE && short.inches() < 3.0 / 16.0 + NOISE);
            let made = if wall.sheets.unwrap().lay == Lay::Lying { 95.875 } else { 47.875 };
            prop_assert!(sheets.iter().all(|sheet| sheet.along.width().inches() < made + NOISE));
            for pair in sheets.windows(2) {
                let gap = (pair[1].along.from - pair[0].along.to).inches();
                prop_assert!((gap - 0.125).abs() < NOISE);
            }
            for line in sheets.iter().flat_map(|sheet| sheet.lines.windows(2)) {
                prop_assert!(line[0].from_end < line[1].from_end);
            }
        }
    }
}

fn joined(spans: &[Span]) -> Vec<Span> {
    let mut joined: Vec<Span> = Vec::new();
    for span in spans {
        match joined.last_mut() {
            Some(last) if span.from.inches() <= last.to.inches() + 1.0 / 16.0 => last.to = last.to.max(span.to),
            _ => joined.push(*span),
        }
    }
    joined
}
