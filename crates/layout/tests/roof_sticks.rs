//! Common rafters, hips and jacks against printed examples and field cases.

#![expect(clippy::expect_used, reason = "in a test a panic is the report")]

use layout::roof::{
    Bearing, Birdsmouth, Common, Corner, Edge, Face, Hip, HipAnswer, HipHead, HipSeat, Jacks, Meeting, Ridge,
    RidgeReading, RoofError, Side, Sides, Spot, Start, Tail, TailRule, TopEdge, birdsmouth, common, hip, jacks,
};
use measure::{Angle, Denominator, Length, Slope};

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

fn pitch(rise: f64) -> Slope {
    Slope::from_rise_in_twelve(rise)
}

fn on_tape(length: Length) -> String {
    length.to_feet_inches(Denominator::Sixteenth)
}

#[track_caller]
fn prints(found: Length, printed: f64, half_digit: f64) {
    assert!((found.inches() - printed).abs() <= half_digit * 1.001, "{}, printed {printed}", found.inches());
}

fn board() -> Ridge {
    Ridge::Board { thickness: inches(1.5), depth: inches(11.25) }
}

fn rafter(rise: f64, run: f64, depth: f64) -> Common {
    Common {
        pitch: pitch(rise),
        run: inches(run),
        overhang: inches(16.0),
        thickness: inches(1.5),
        depth: inches(depth),
        seat: inches(3.5),
        ridge: board(),
        tail: Tail::Plumb,
    }
}

/// Source: a naval training course (NAVEDTRA 14044, chapter 2): 7 in 12, span 16 ft: 111-1/8 in. A carpentry textbook
/// of 1916: 12 in 12, span 25 ft: 17 ft 8-1/8 in. An army course: 8 in 12, 20 ft wide: 144-1/4 exact (144.17 by its own
/// 14 5/12), 20 ft 8 in wide: 149. A cyclopedia: 6 in 12, run 11-1/4 ft: 12 ft 6-15/16 in. To the sixteenth.
#[test]
fn line_lengths() {
    for (rise, run, printed) in [
        (7.0, 96.0, "9' 3-1/8\""),
        (12.0, 150.0, "17' 8-1/8\""),
        (8.0, 120.0, "12' 0-1/4\""),
        (8.0, 124.0, "12' 5\""),
        (6.0, 135.0, "12' 6-15/16\""),
    ] {
        let found = common(&rafter(rise, run, 7.25)).expect("a rafter");
        assert_eq!(on_tape(found.line_length), printed, "{rise} in 12 over {run}");
    }
}

/// Source: a carpenters' guide: ridge 5 ft 4 in over a run of 8 ft is 8 in for a foot.
#[test]
fn rise_of_a_run() {
    prints(common(&rafter(8.0, 96.0, 7.25)).expect("a rafter").rise, 64.0, 1e-9);
}

/// Source: check values worked from the definitions: depth, pitch, seat, notch square to the edge, a quarter of the
/// depth, whether it passes, widest seat and height above plate, three decimals. Tolerance: half of the last digit.
#[test]
fn birdsmouths() {
    for (depth, rise, seat, notch, limit, passes, widest, above) in [
        (7.25, 8.0, 3.5, 1.941, 1.813, false, 3.268, 6.380),
        (9.25, 6.0, 3.5, 1.565, 2.313, true, 5.171, 8.592),
        (9.25, 6.0, 5.5, 2.460, 2.313, false, 5.171, 7.592),
        (11.25, 12.0, 3.5, 2.475, 2.813, true, 3.977, 12.410),
    ] {
        let given = Birdsmouth { pitch: pitch(rise), depth: inches(depth), seat: inches(seat), overhang: Length::ZERO };
        let found = birdsmouth(&given).expect("a seat");
        prints(found.notch, notch, 0.0005);
        prints(found.limit, limit, 0.0005);
        prints(found.widest_seat, widest, 0.0005);
        prints(found.height_above_plate, above, 0.0005);
        assert_eq!((found.within_limit, found.works()), (passes, passes));
    }
}

/// Source: a field case, seats nearly half way through: 2x8 at 6 in 12 with 3-1/2 and 5-1/2 in, 2x6 at 12 and 8 in 12
/// with 3-1/2 in. Depth of cut, verdict by a quarter of the depth alone, and the widest seat rounded down to a
/// sixteenth; exact limits 4.053, 1.944 and 2.479.
#[test]
fn seats_nearly_half_way_through() {
    for (depth, rise, seat, notch, passes, widest) in [
        (7.25, 6.0, 3.5, 1.57, true, "4\""),
        (7.25, 6.0, 5.5, 2.46, false, "4\""),
        (5.5, 12.0, 3.5, 2.47, false, "1-15/16\""),
        (5.5, 8.0, 3.5, 1.94, false, "2-7/16\""),
    ] {
        let given = Birdsmouth { pitch: pitch(rise), depth: inches(depth), seat: inches(seat), overhang: inches(16.0) };
        let found = birdsmouth(&given).expect("a seat");
        prints(found.notch, notch, 0.006);
        assert_eq!(found.within_limit, passes);
        assert_eq!(found.widest_seat_on_tape.to_inches_fraction(Denominator::SixtyFourth), widest);
        assert!(found.widest_seat_on_tape <= found.widest_seat, "a limit is never rounded into a pass");
        assert_eq!(found.nearest_seat, Some(if passes { inches(seat) } else { found.widest_seat_on_tape }));
    }
    let of = |depth, rise| {
        let seat = inches(3.5);
        birdsmouth(&Birdsmouth { pitch: pitch(rise), depth: inches(depth), seat, overhang: inches(16.0) })
    };
    // 3.56 in is left: enough for later editions and too little for earlier ones, so the official is asked.
    let shallow = of(5.5, 8.0).expect("a seat");
    prints(shallow.left, 3.56, 0.005);
    assert_eq!(shallow.tail, TailRule::DependsOnEdition);
    assert_eq!(of(7.25, 6.0).expect("a seat").tail, TailRule::Met);
    assert_eq!(of(5.5, 12.0).expect("a seat").tail, TailRule::NotMet);
    // 5-1/2 in on the 2x8 is over the trade's third as well: 2.42.
    prints(of(7.25, 6.0).expect("a seat").trades_third, 2.42, 0.005);
}

/// A 2x4 at 20 in 12 has no seat of 1-1/2 in within the limit: 3.5 / 4 / sin 59.04 is 1.02.
#[test]
fn a_stick_without_any_seat_that_works() {
    let given = Birdsmouth { pitch: pitch(20.0), depth: inches(3.5), seat: inches(3.5), overhang: inches(30.0) };
    let found = birdsmouth(&given).expect("a seat");
    assert_eq!((found.nearest_seat, found.tail), (None, TailRule::TooLong));
    prints(found.widest_seat, 1.0204, 0.0001);
    let deeper = birdsmouth(&Birdsmouth { depth: found.least_depth + inches(1e-9), ..given });
    assert!(deeper.expect("a seat").within_limit);
    let narrow = birdsmouth(&Birdsmouth { depth: inches(11.25), seat: inches(1.0), ..given }).expect("a seat");
    assert_eq!((narrow.bears, narrow.nearest_seat), (false, Some(inches(1.5))));
}

/// Source: a field case, a rafter pattern that is far too long. 4 in 12, run 200-3/4 in, ridge 4x10, seat 3-1/2. Line
/// length 17 ft 7-5/8 and rise 5 ft 6-15/16 are right, cut 17 ft 5-3/4; for 2x8 height above plate 6.48, ridge top 6 ft
/// 0-13/16, post 5 ft 3-9/16; 2x6 4.63 and 2x10 8.58. The post that was cut, 57-7/16, is short by 4-1/4, 6-1/8 and
/// 8-1/4. Tolerance: a sixteenth.
#[test]
fn a_pattern_that_is_too_long() {
    let of = |depth| {
        let ridge = Ridge::Board { thickness: inches(3.5), depth: inches(9.25) };
        common(&Common { ridge, ..rafter(4.0, 200.75, depth) }).expect("a rafter")
    };
    let found = of(7.25);
    assert_eq!(on_tape(found.line_length), "17' 7-5/8\"");
    assert_eq!(on_tape(found.rise), "5' 6-15/16\"");
    assert_eq!(on_tape(found.actual), "17' 5-3/4\"");
    prints(found.shortening, 1.75, 1e-9);
    assert_eq!(found.ridge.top.map(on_tape).as_deref(), Some("6' 0-13/16\""));
    assert_eq!(found.ridge.post.map(on_tape).as_deref(), Some("5' 3-9/16\""));
    for (depth, above, short) in [(5.5, 4.63, 4.25), (7.25, 6.48, 6.125), (9.25, 8.58, 8.25)] {
        let found = of(depth);
        prints(found.birdsmouth.height_above_plate, above, 0.005);
        prints(found.ridge.post.expect("a post") - inches(57.4375), short, 1.0 / 16.0);
        let reading = found.ridge.reading(inches(57.4375 + 9.25)).expect("a ridge");
        assert!(matches!(reading, RidgeReading::AtPlainRise { short: by } if (by.inches() - short).abs() < 1.0 / 16.0));
    }
    let top = found.ridge.top.expect("a ridge");
    assert_eq!(found.ridge.reading(top + inches(0.03)), Some(RidgeReading::Right));
    assert!(matches!(found.ridge.reading(top + inches(2.0)), Some(RidgeReading::Off(by)) if by.inches() > 1.9));
}

/// Marks of a common: vector of our own, worked by hand. 12 in 12, run 100, no ridge: the seat's inner end is 3.5 times
/// root 2 up the bottom edge from the heel, and a plumb cut sets the bottom edge back by the depth.
#[test]
fn marks_of_a_common() {
    let found = common(&Common { ridge: Ridge::NoBoard, ..rafter(12.0, 100.0, 7.25) }).expect("a rafter");
    let root = 2.0_f64.sqrt();
    let at = |spot, edge| found.stick.at(spot, edge, Face::Left).expect("a mark");
    prints(at(Spot::Head, Edge::Top), 0.0, 1e-9);
    prints(at(Spot::Head, Edge::Bottom), 7.25, 1e-9);
    prints(at(Spot::Heel, Edge::Top), 100.0 * root, 1e-9);
    prints(at(Spot::Heel, Edge::Bottom) - at(Spot::Seat, Edge::Bottom), 3.5 * root, 1e-9);
    prints(at(Spot::Tail, Edge::Top), 116.0 * root, 1e-9);
    prints(found.stick.length, 116.0 * root + 7.25, 1e-9);
    prints(found.overall_bottom, 116.0 * root, 1e-9);
    assert_eq!(found.stick.at(Spot::Seat, Edge::Top, Face::Left), None);
    assert_eq!(found.stock, Length::from_feet(16.0));
    assert!((found.plumb_cut.from_square.degrees() - 45.0).abs() < 1e-9);
    assert!((found.level_cut.from_square.degrees() - 45.0).abs() < 1e-9);
    assert!((found.plumb_cut.on_twelve().rise_in_twelve() - 12.0).abs() < 1e-9);
    // A square tail needs no more stock than the top edge, and its bottom corner stands in by D sin P, level.
    let square = common(&Common { ridge: Ridge::NoBoard, tail: Tail::Square, ..rafter(12.0, 100.0, 7.25) });
    prints(square.expect("a rafter").stick.length, 116.0 * root, 1e-9);
}

/// A beam under the ridge, worked by hand at 12 in 12: peak less half of the beam less what stands above the notch.
#[test]
fn structural_ridges() {
    let under = Ridge::BeamUnder { width: inches(5.5), depth: inches(11.25), seat: inches(2.5) };
    let found = common(&Common { ridge: under, ..rafter(12.0, 120.0, 11.25) }).expect("a rafter");
    let above = 11.25 * 2.0_f64.sqrt();
    let peak = above - 3.5 + 120.0;
    prints(found.ridge.peak, peak, 1e-9);
    prints(found.ridge.top.expect("a beam"), peak - 2.75 - (above - 2.5), 1e-9);
    prints(found.actual, 120.0 * 2.0_f64.sqrt(), 1e-9);
    assert!(found.upper_birdsmouth.expect("a second seat").works());
    assert!(found.stick.at(Spot::UpperSeat, Edge::Bottom, Face::Right).is_some());
    let face = Ridge::BeamAtFace { width: inches(3.5), depth: inches(14.0) };
    let found = common(&Common { ridge: face, ..rafter(12.0, 120.0, 11.25) }).expect("a rafter");
    prints(found.shortening, 1.75, 1e-9);
    // The plumb cut is 15.91 in, more than the beam is deep.
    assert_eq!(found.ridge.covers_cut, Some(false));
    let wide = Ridge::BeamUnder { width: inches(3.5), depth: inches(11.25), seat: inches(2.5) };
    let refused = common(&Common { ridge: wide, ..rafter(12.0, 120.0, 11.25) });
    assert!(matches!(refused, Err(RoofError::Order { .. })));
}

fn corner(meeting: Meeting, a: f64, b: f64, degrees: f64) -> Corner {
    let pitches = Sides { a: pitch(a), b: pitch(b) };
    Corner::new(meeting, pitches, Angle::from_degrees(degrees)).expect("a corner")
}

fn any_hip(corner: Corner) -> Hip {
    let above = common(&Common { pitch: corner.pitch(Side::A), ..rafter(8.0, 144.0, 7.25) }).expect("a rafter");
    let above = above.birdsmouth.height_above_plate;
    Hip {
        corner,
        run_a: inches(144.0),
        overhangs: Sides { a: inches(12.0), b: inches(12.0) },
        above_plate: Sides { a: above, b: above },
        thickness: inches(1.5),
        depth: inches(9.25),
        head: HipHead::Lines,
        top: TopEdge::Square,
    }
}

fn lay(given: &Hip) -> HipAnswer {
    hip(given).expect("a hip")
}

/// Source: closed forms of the trade at 8 in 12: half of the 45 degree thickness at a ridge and between commons (a
/// naval course), half the thickness square against a long valley; drop 0.354 with 1-1/2 in.
#[test]
fn what_a_hip_loses() {
    let hip = any_hip(corner(Meeting::Hip, 8.0, 8.0, 90.0));
    let thickness = inches(1.5);
    for (head, level) in [
        (HipHead::Lines, 0.0),
        (HipHead::Ridge { along: Side::A, thickness }, 1.0607),
        (HipHead::BetweenCommons { thickness }, 1.0607),
        (HipHead::LongValley { thickness }, 0.75),
        (HipHead::KingPost { across_flats: inches(5.5) }, 2.75),
    ] {
        let found = lay(&Hip { head, ..hip });
        prints(found.shortening, level, 0.00005);
        prints(found.line_length - found.actual, level / found.plumb_cut.from_square.cos(), 0.0001);
        let drawn = |spot| found.stick.at(spot, Edge::Top, Face::Middle).expect("a mark");
        prints(drawn(Spot::Heel) - drawn(Spot::Head), found.actual.inches(), 1e-9);
    }
    let found = lay(&hip);
    prints(found.drop, 0.354, 0.0005);
    prints(found.tail_run, 12.0 * 2.0_f64.sqrt(), 1e-9);
    assert_eq!(found.walls.bearing, Bearing::Corner);
    // At a square corner of one pitch the plate's corner stands half the thickness ahead of the faces.
    prints(found.cope.a, 0.75, 1e-9);
    assert_eq!(found.stick.cuts.len(), 5, "head, heel, seat and two cheeks of the tail");
}

/// The seat of a deeper hip is level with the commons': worked by hand at 8 in 12, commons 2x8 and hip 2x10, dropped
/// 0.3536. The plumb depth of the hip, 9.25 / cos 25.2394 = 10.2262, less 6.3801 - 0.3536 above the plate.
#[test]
fn a_seat_level_with_the_commons() {
    let hip = any_hip(corner(Meeting::Hip, 8.0, 8.0, 90.0));
    let found = lay(&hip);
    prints(found.above_plate, 6.3801 - 0.3536, 0.0002);
    let HipSeat::Cut { seat, birdsmouth } = found.seat else { panic!("it is notched") };
    prints(birdsmouth.heel, 10.2262 - 6.0265, 0.0003);
    prints(seat, birdsmouth.heel.inches() / (8.0 / 288.0_f64.sqrt()), 1e-9);
    assert_eq!(found.birdsmouth(), Some(&birdsmouth));
    assert!(!birdsmouth.within_limit, "a hip deeper than its commons by so much is over-cut");
    // Stock that is not as deep as what stands above the plate is blocked up.
    let shallow = lay(&Hip { depth: inches(5.0), ..hip });
    assert!(matches!(shallow.seat, HipSeat::Above(gap) if gap.inches() > 0.0));
    // Backed, it is not lowered.
    let backed = lay(&Hip { top: TopEdge::Backed, ..hip });
    prints(backed.above_plate, 6.3801, 0.0001);
    prints(backed.ripped.expect("bevels").a, found.drop.inches() * found.plumb_cut.from_square.cos(), 1e-9);
}

/// Source: worked example of unequal pitches: 12 and 6 in 12, overhang 12: the hip is 12 in along wall A, the valley 6
/// in along wall B, plate A 6 in higher.
#[test]
fn unequal_pitches_miss_the_corner() {
    let hip = lay(&any_hip(corner(Meeting::Hip, 12.0, 6.0, 90.0)));
    prints(hip.walls.on.a, 12.0, 1e-9);
    prints(hip.walls.plate_a_over_b, 6.0, 1e-9);
    assert_eq!(hip.walls.bearing, Bearing::Wall(Side::A));
    let valley = lay(&any_hip(corner(Meeting::Valley, 12.0, 6.0, 90.0)));
    prints(valley.walls.on.b, -6.0, 1e-9);
    assert_eq!(valley.walls.bearing, Bearing::Wall(Side::B));
    // The other way out: overhangs that fall alike bring it over the corner.
    let given = any_hip(corner(Meeting::Hip, 12.0, 6.0, 90.0));
    let b = hip.walls.overhang_b;
    prints(b, 24.0, 1e-9);
    let moved = lay(&Hip { overhangs: Sides { a: inches(12.0), b }, ..given });
    assert_eq!(moved.walls.bearing, Bearing::Corner);
    prints(moved.walls.plate_a_over_b, 0.0, 1e-9);
}

fn any_jacks(meeting: Meeting, a: f64, b: f64, degrees: f64) -> Jacks {
    let corner = corner(meeting, a, b, degrees);
    let common = rafter(a, 144.0, 7.25);
    let line_thickness = inches(1.5);
    Jacks { corner, side: Side::A, common, line_thickness, spacing: inches(16.0), start: Start::Corner }
}

/// Source: a naval training course: 8 in 12, 16 in apart: the first jack 19.23, the second twice that, 38.46; both to
/// the centre lines. Long and short points: half of the jack's thickness times 14.42/12 more and less.
#[test]
fn jacks_from_the_corner() {
    let found = jacks(&any_jacks(Meeting::Hip, 8.0, 8.0, 90.0)).expect("jacks");
    prints(found.jacks[0].line_length, 19.23, 0.005);
    prints(found.jacks[1].line_length, 38.46, 0.005);
    prints(found.common_difference, 19.23, 0.005);
    assert_eq!(found.jacks.len(), 8, "16 to 128 in; at 144 stands the king common");
    prints(found.shortening, 1.0607, 0.00005);
    for jack in &found.jacks {
        let point = 0.75 * 208.0_f64.sqrt() / 12.0;
        prints(jack.long_point - jack.centre, point, 1e-9);
        prints(jack.centre - jack.short_point, point, 1e-9);
        // Plane A is on the right of the hip, so the hip is on the left of the jack and the short point with it.
        let drawn = |face| {
            let at = |spot| jack.stick.at(spot, Edge::Top, face).expect("a mark");
            at(Spot::Heel) - at(Spot::Head)
        };
        prints(drawn(Face::Middle), jack.centre.inches(), 1e-9);
        let (left, right) = (drawn(Face::Left), drawn(Face::Right));
        prints(left.max(right), jack.long_point.inches(), 1e-9);
        prints(left.min(right), jack.short_point.inches(), 1e-9);
    }
}

/// From the king common the first hip jack is a common difference shorter than the common.
#[test]
fn jacks_from_the_king_common() {
    let given = any_jacks(Meeting::Hip, 9.0, 12.0, 90.0);
    let found = jacks(&Jacks { start: Start::KingCommon, ..given }).expect("jacks");
    prints(found.jacks[0].line_length + found.common_difference, 180.0, 1e-9);
    let gap = jacks(&Jacks { start: Start::Gap(inches(6.0)), ..given }).expect("jacks");
    // 6 in times tan 53.1301 over cos 36.8699: 10.
    prints(gap.jacks[0].line_length, 170.0, 1e-9);
    let same = jacks(&Jacks { start: Start::Gap(inches(16.0)), ..given }).expect("jacks");
    prints(same.jacks[0].centre, found.jacks[0].centre.inches(), 1e-9);
    assert!(matches!(jacks(&Jacks { start: Start::Gap(inches(17.0)), ..given }), Err(RoofError::Order { .. })));
}

/// A valley jack loses half of the ridge at the top and half of the slanted valley at the foot.
#[test]
fn valley_jacks() {
    let found = jacks(&any_jacks(Meeting::Valley, 8.0, 8.0, 90.0)).expect("jacks");
    let first = &found.jacks[0];
    prints(first.run, 144.0 - 16.0, 1e-9);
    prints(first.centre, (128.0 - 0.75 - 1.5 / 2.0_f64.sqrt()) * 208.0_f64.sqrt() / 12.0, 1e-9);
    prints(first.stick.edge_length(Edge::Top, Face::Middle).expect("an edge"), first.centre.inches(), 1e-9);
    assert!(found.jacks.windows(2).all(|pair| pair[1].centre < pair[0].centre));
}

#[test]
fn sticks_that_cannot_be_are_refused_in_sentences() {
    let rafter = rafter(8.0, 144.0, 7.25);
    let refused = [
        common(&Common { run: Length::ZERO, ..rafter }).err(),
        common(&Common { overhang: inches(-1.0), ..rafter }).err(),
        common(&Common { depth: inches(-7.25), ..rafter }).err(),
        common(&Common { seat: Length::ZERO, ..rafter }).err(),
        common(&Common { run: inches(4.0), ..rafter }).err(),
        common(&Common { ridge: Ridge::Board { thickness: Length::ZERO, depth: inches(9.25) }, ..rafter }).err(),
        jacks(&Jacks { spacing: Length::ZERO, ..any_jacks(Meeting::Hip, 8.0, 8.0, 90.0) }).err(),
        jacks(&Jacks { spacing: inches(0.01), ..any_jacks(Meeting::Hip, 8.0, 8.0, 90.0) }).err(),
        jacks(&Jacks { common: rafter, ..any_jacks(Meeting::Hip, 9.0, 8.0, 90.0) }).err(),
        hip(&Hip { run_a: Length::ZERO, ..any_hip(corner(Meeting::Hip, 8.0, 8.0, 90.0)) }).err(),
        hip(&Hip {
            head: HipHead::KingPost { across_flats: inches(900.0) },
            ..any_hip(corner(Meeting::Hip, 8.0, 8.0, 90.0))
        })
        .err(),
    ];
    for (which, refused) in refused.into_iter().enumerate() {
        let text = refused.unwrap_or_else(|| panic!("{which} is refused")).to_string();
        assert!(text.ends_with('.') && text.contains("ive "), "{which}: {text}");
    }
}
