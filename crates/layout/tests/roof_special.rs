//! Doubled valleys, cripples, overlays, dormers, gable ends and other roofs against printed examples.

#![expect(clippy::expect_used, reason = "in a test a panic is the report")]

use layout::roof::{
    Common, Corner, CrippleEnd, CrippleStock, Edge, Face, GableDormer, Gambrel, Meeting, Overlay, Polygon, Ridge,
    RidgeEnds, RoofError, SheathedPlane, SheathingEnd, Shed, ShedDormer, Side, Sides, Stick, Tail, ThinnerFace, TwoPly,
    UnderHip, gable_dormer, gable_studs, gambrel, gambrel_in_half_circle, hip_depth, hip_ridge, hip_valley_cripple,
    overlay, pitch_for_same_ridge, polygon, ridge_difference, sheathing, shed, shed_dormer, two_ply, under_hip,
    unequal_walls, valley_cripple,
};
use measure::{Angle, Denominator, Length, Slope};

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

fn pitch(rise: f64) -> Slope {
    Slope::from_rise_in_twelve(rise)
}

fn corner(meeting: Meeting, a: f64, b: f64, degrees: f64) -> Corner {
    let pitches = Sides { a: pitch(a), b: pitch(b) };
    Corner::new(meeting, pitches, Angle::from_degrees(degrees)).expect("a corner")
}

#[track_caller]
fn prints(found: f64, printed: f64, half_digit: f64) {
    assert!((found - printed).abs() <= half_digit * 1.001, "{found}, printed {printed}");
}

fn rafter(rise: f64, run: f64, depth: f64) -> Common {
    Common {
        pitch: pitch(rise),
        run: inches(run),
        overhang: Length::ZERO,
        thickness: inches(1.5),
        depth: inches(depth),
        seat: inches(3.5),
        ridge: Ridge::NoBoard,
        tail: Tail::Plumb,
    }
}

/// Source: check values of a doubled valley, plies of 1.5 in at a square corner: plan angles, slope, rip angles and
/// rips, two and three decimals. Tolerance: half of the last digit.
#[test]
fn doubled_valleys() {
    for (a, b, plan, slope, rips, ripped) in [
        (8.0, 8.0, 45.00, 25.24, [23.09, 23.09], [0.640, 0.640]),
        (9.0, 12.0, 53.13, 30.96, [21.10, 34.45], [0.579, 1.029]),
        (6.0, 12.0, 63.43, 24.09, [11.54, 39.23], [0.306, 1.225]),
    ] {
        let corner = corner(Meeting::Valley, a, b, 90.0);
        let found = two_ply(&TwoPly { corner, ply: inches(1.5), depth_left: inches(9.25) }).expect("plies");
        prints(corner.plan_angle(Side::A).degrees(), plan, 0.005);
        prints(corner.slope().degrees(), slope, 0.005);
        for (side, rip, ripped) in [(Side::A, rips[0], ripped[0]), (Side::B, rips[1], ripped[1])] {
            let ply = found.plies.of(side);
            prints(ply.rip.degrees(), rip, 0.005);
            prints(ply.ripped.inches(), ripped, 0.0005);
            // The same rip on a plumb line, across the slope of the valley.
            prints(ply.ripped_plumb.inches() * corner.slope().cos(), ply.ripped.inches(), 1e-9);
            prints(ply.stock_depth.inches(), 9.25 + ply.ripped.inches(), 1e-9);
            // Along the valley for the ply's thickness across it: 1.125 and 2 at 9 and 12 in 12.
            let back = corner.run(side, inches(1.5)).inches();
            prints(ply.cheek_back.inches(), (back * back - 2.25).sqrt(), 1e-9);
            prints(ply.cheek.tilt.degrees() + corner.plan_angle(side).degrees(), 90.0, 1e-9);
        }
        assert_eq!(found.thinner, ThinnerFace::Joint);
        prints(found.outer_a_over_b.inches(), ripped[0] - ripped[1], 0.001);
        assert!(found.stock_depth() >= found.plies.b.stock_depth);
    }
    let hip = TwoPly { corner: corner(Meeting::Hip, 6.0, 12.0, 90.0), ply: inches(1.5), depth_left: inches(9.25) };
    assert_eq!(two_ply(&hip).expect("plies").thinner, ThinnerFace::Outer);
}

/// Source: a field case: 2x8 commons at 6 in 12 need 8.11 in (8-1/8); a 2x8 hip has 7.25 across and 7.69 plumb and
/// fails both readings, a 2x10 has 9.25 and 9.81 and passes both; at 12 in 12 they need 10.25 and a 2x10 has 11.33
/// plumb: the readings part. And a table of least depths by the plumb reading, two decimals.
#[test]
fn how_deep_a_hip_must_be() {
    let of = |rise, jack, hip| {
        let corner = corner(Meeting::Hip, rise, rise, 90.0);
        hip_depth(&corner, Sides { a: inches(jack), b: inches(jack) }, inches(hip)).expect("a depth")
    };
    let two_by_eight = of(6.0, 7.25, 7.25);
    prints(two_by_eight.needed.inches(), 8.11, 0.005);
    assert_eq!(two_by_eight.needed.to_inches_fraction(Denominator::Sixteenth), "8-1/8\"");
    prints(two_by_eight.plumb.inches(), 7.69, 0.005);
    assert!(!two_by_eight.covers_across && !two_by_eight.covers_plumb && two_by_eight.readings_agree());
    let two_by_ten = of(6.0, 7.25, 9.25);
    prints(two_by_ten.plumb.inches(), 9.81, 0.005);
    assert!(two_by_ten.covers_across && two_by_ten.covers_plumb);
    let steep = of(12.0, 7.25, 9.25);
    prints(steep.needed.inches(), 10.25, 0.005);
    prints(steep.plumb.inches(), 11.33, 0.005);
    assert!(!steep.covers_across && steep.covers_plumb && !steep.readings_agree());
    for (jack, rise, least, size) in
        [(5.5, 6.0, 5.80, "2x8"), (7.25, 8.0, 7.88, "2x10"), (9.25, 8.0, 10.06, "2x12"), (9.25, 12.0, 10.68, "2x12")]
    {
        let found = of(rise, jack, jack);
        prints((found.needed * (found.across / found.plumb)).inches(), least, 0.005);
        assert_eq!(found.next_plumb.expect("a size").nominal(), size);
    }
}

/// Source: an old cyclopedia of construction: at a square corner of equal pitches every hip-valley cripple runs the
/// length of plate. A naval training course: a valley cripple runs twice its distance from the crossing, and its
/// difference is twice the common one.
#[test]
fn cripples_at_a_square_corner() {
    let thickness = inches(1.5);
    let end = |meeting| CrippleEnd { corner: corner(meeting, 8.0, 8.0, 90.0), side: Side::A, thickness };
    let (hip, valley) = (end(Meeting::Hip), end(Meeting::Valley));
    let stock = CrippleStock { thickness, depth: inches(7.25) };
    let stretch = 208.0_f64.sqrt() / 12.0;
    for past in [0.0, 16.0, 32.0] {
        let found = hip_valley_cripple(&hip, &valley, stock, inches(72.0), inches(past)).expect("a cripple");
        prints(found.run.inches(), 72.0, 1e-9);
        prints(found.centre.inches(), (72.0 - 1.5 * 2.0_f64.sqrt()) * stretch, 1e-9);
        prints((found.faces[0] - found.faces[1]).inches(), 0.0, 1e-9);
        prints(found.cheeks[0].tilt.degrees(), 45.0, 1e-9);
        prints(found.stick.cuts[1].cut.tilt.degrees(), 45.0, 1e-9);
    }
    let at = |distance| valley_cripple(&valley, &valley, stock, inches(distance)).expect("a cripple");
    prints(at(16.0).run.inches(), 32.0, 1e-9);
    prints((at(32.0).line_length - at(16.0).line_length).inches(), 2.0 * 16.0 * stretch, 1e-9);
    // Where the lines are not parallel they differ by s (tan of one less tan of the other) over cos P.
    let steep = CrippleEnd { corner: corner(Meeting::Valley, 8.0, 12.0, 90.0), ..valley };
    let found = |past| hip_valley_cripple(&hip, &steep, stock, inches(72.0), inches(past)).expect("a cripple");
    let step = (found(16.0).centre - found(0.0).centre).inches();
    prints(step, 16.0 * (1.0 - 1.5) * stretch, 1e-9);
    // On the faces of the stick: what its marks say is what is told of it.
    for found in [found(16.0), at(32.0)] {
        let mut drawn =
            [Face::Left, Face::Right].map(|face| found.stick.edge_length(Edge::Top, face).expect("an edge"));
        drawn.sort_by(|a, b| a.inches().total_cmp(&b.inches()));
        let mut told = found.faces;
        told.sort_by(|a, b| a.inches().total_cmp(&b.inches()));
        prints(drawn[0].inches(), told[0].inches(), 1e-9);
        prints(drawn[1].inches(), told[1].inches(), 1e-9);
    }
    // On plane B the same cripple is mirrored: its left face is away from the crossing, and longer.
    let of_b = CrippleEnd { side: Side::B, ..valley };
    let mirrored = valley_cripple(&of_b, &of_b, stock, inches(32.0)).expect("a cripple");
    let on = |stick: &Stick, face| stick.edge_length(Edge::Top, face).expect("an edge").inches();
    prints(on(&mirrored.stick, Face::Left), on(&at(32.0).stick, Face::Right), 1e-9);
    assert!(on(&mirrored.stick, Face::Left) > on(&mirrored.stick, Face::Right));
    let refused = valley_cripple(&valley, &valley, stock, inches(0.5));
    assert!(matches!(refused, Err(RoofError::NothingLeft { .. })));
    let other = CrippleEnd { corner: corner(Meeting::Valley, 9.0, 9.0, 90.0), ..valley };
    let refused = hip_valley_cripple(&hip, &other, stock, inches(72.0), Length::ZERO);
    assert!(matches!(refused, Err(RoofError::OtherPitch { .. })));
}

/// Source: a worksheet (2014): 9 and 12 in 12, sleeper bevel 34.4499. The rest by hand: reach of a 12 in 12 overlay
/// with a run of 120 on 9 in 12 is 160; jacks 16 apart differ by 16 x 0.75 / sin 45; a level foot is 90 less the slope
/// from square.
#[test]
fn overlays() {
    let given = Overlay {
        main: pitch(9.0),
        overlay: pitch(12.0),
        run: inches(120.0),
        spacing: inches(16.0),
        sleeper: inches(1.5),
    };
    let found = overlay(&given).expect("an overlay");
    prints(found.sleeper_rip.degrees(), 34.4499, 0.00005);
    prints(found.reach.inches(), 160.0, 1e-9);
    prints(found.common_difference.inches(), 12.0 * 2.0_f64.sqrt(), 1e-9);
    prints(found.valley_from_eave.tan(), 0.75, 1e-9);
    prints(found.foot.tilt.degrees(), pitch(9.0).angle().degrees(), 1e-9);
    prints(found.foot.from_square.degrees(), 45.0, 1e-9);
    prints(found.head.from_square.degrees(), 45.0, 1e-9);
    prints(found.valley_length.inches(), (120.0_f64 * 120.0 * 2.0 + 160.0 * 160.0).sqrt(), 1e-9);
    prints(found.sleeper_shortening.inches(), 1.5 / (0.8 * 0.5_f64.sqrt()), 1e-9);
    prints(found.sleeper_inset.inches(), 1.5 / Angle::from_degrees(55.5501).tan(), 0.00001);
}

/// Source: a practitioner's drawing notes: eave fascia of a 10 in 12 dormer, square to its rafters, on a 7 in 12 roof:
/// blade tilt 33.57154, turn from square 52.78951.
#[test]
fn dormers() {
    let given =
        GableDormer { main: pitch(7.0), dormer: pitch(10.0), half_width: inches(42.0), face_height: inches(35.0) };
    let found = gable_dormer(&given).expect("a dormer");
    prints(found.fascia.tilt.degrees(), 33.571_54, 0.000_005);
    prints(found.fascia.from_square.degrees(), 52.789_51, 0.000_005);
    prints(found.plates.inches(), 60.0, 1e-9);
    prints(found.ridge.inches(), 120.0, 1e-9);
    // The valleys take the ridge from where the plates end: as far as the main roof rises with it.
    prints((found.ridge - found.plates).inches(), found.valley.run_across(Side::B, inches(42.0)).inches(), 1e-9);
    let shed = ShedDormer { main: pitch(12.0), shed: pitch(3.0), face_height: inches(72.0) };
    let found = shed_dormer(&shed).expect("a dormer");
    prints(found.run.inches(), 96.0, 1e-9);
    prints(found.between.degrees(), 45.0 - pitch(3.0).angle().degrees(), 1e-9);
    assert!(matches!(shed_dormer(&ShedDormer { shed: pitch(12.0), ..shed }), Err(RoofError::NeverMeets { .. })));
}

/// Source: a naval training course: 6 in 12, studs 24 in apart differ by 12 in, 16 in apart by 8.
#[test]
fn studs_of_a_gable_end() {
    let rafter = rafter(6.0, 144.0, 7.25);
    for (spacing, printed) in [(24.0, 12.0), (16.0, 8.0)] {
        let found = gable_studs(&rafter, inches(16.0), inches(spacing)).expect("studs");
        prints(found.common_difference.inches(), printed, 1e-9);
        prints((found.studs[1].length - found.studs[0].length).inches(), printed, 1e-9);
        prints(found.top_cut.degrees(), 26.57, 0.005);
        // Under the rafter, whose seat sinks it by its width times the slope.
        prints(found.studs[0].length.inches(), 8.0 - 1.75, 1e-9);
        assert!(found.studs.iter().all(|stud| stud.from_corner <= inches(144.0)));
    }
    assert_eq!(gable_studs(&rafter, inches(16.0), inches(16.0)).expect("studs").studs.len(), 9);
    assert!(matches!(gable_studs(&rafter, Length::ZERO, inches(0.1)), Err(RoofError::TooMany { .. })));
}

/// Source: octagon on the square: side 0.82843 of the middle to a side, hip on 12.99 (13 in print), jacks' tilt 67.5.
#[test]
fn octagons() {
    let given = Polygon { sides: 8, pitch: pitch(10.0), run: inches(120.0) };
    let found = polygon(&given).expect("an octagon");
    prints(found.side.inches() / 120.0, 0.82843, 0.000_005);
    prints(found.hip_run.inches() / 10.0, 12.99, 0.005);
    prints(found.corner.jack(Side::A).tilt.degrees(), 67.5, 1e-9);
    // The row of the solved corners with the same pitch: hip 163.922693.
    prints(found.hip_length.inches(), 163.922_693, 0.000_000_5);
    assert!(matches!(polygon(&Polygon { sides: 2, ..given }), Err(RoofError::Sides { .. })));
}

/// Source: inscribed angles: a knee at 45 degrees gives slopes of 67.5 and 22.5, at 60 degrees 60 and 15. The ridge is
/// on the circle.
#[test]
fn gambrels() {
    for (angle, lower, upper) in [(45.0, 67.5, 22.5), (60.0, 60.0, 15.0)] {
        let given = gambrel_in_half_circle(inches(144.0), Angle::from_degrees(angle)).expect("a gambrel");
        prints(given.lower.angle().degrees(), lower, 1e-9);
        prints(given.upper.angle().degrees(), upper, 1e-9);
        let found = gambrel(&given).expect("a gambrel");
        prints(found.height.inches(), 144.0, 1e-9);
        prints(found.knee_mitre.degrees(), (lower - upper) / 2.0, 1e-9);
        let (out, up) = (144.0 - given.knee.inches(), found.knee_height.inches());
        prints((out * out + up * up).sqrt(), 144.0, 1e-9);
    }
    let flat = Gambrel { lower: pitch(6.0), upper: pitch(9.0), knee: inches(60.0), run: inches(144.0) };
    assert!(matches!(gambrel(&flat), Err(RoofError::NeverMeets { .. })));
    assert!(matches!(gambrel_in_half_circle(inches(144.0), Angle::ZERO), Err(RoofError::KneeAngle { .. })));
}

/// By hand: 4 in 12 over 12 ft, upper heel on the inner face of a 5-1/2 in plate.
#[test]
fn sheds() {
    let given = Shed {
        pitch: pitch(4.0),
        width: inches(144.0),
        upper_heel_in: inches(5.5),
        overhangs: [inches(12.0), inches(6.0)],
    };
    let found = shed(&given).expect("a shed");
    prints(found.wall_difference.inches(), 138.5 / 3.0, 1e-9);
    prints(found.overall.inches(), 162.0 * 10.0_f64.sqrt() / 3.0, 1e-9);
    assert!(shed(&Shed { upper_heel_in: inches(150.0), ..given }).is_err());
}

/// Source: a trade journal's answer: walls 24 in apart in height, 6 in 12, span 24 ft: 48 in of run and a span of 28
/// ft. A carpentry textbook of 1916 for the ridge under hips. By hand: wings of 14 and 10 ft span at 6 in 12 differ by
/// 12 in.
#[test]
fn ridges() {
    let found = unequal_walls(pitch(6.0), Length::from_feet(24.0), inches(24.0)).expect("a roof");
    prints(found.further.inches(), 48.0, 1e-9);
    prints(found.span.feet(), 28.0, 1e-9);
    // Both sides climb to one ridge.
    prints(found.low_run.inches() / 2.0, 24.0 + found.high_run.inches() / 2.0, 1e-9);
    assert!(unequal_walls(pitch(6.0), inches(40.0), inches(24.0)).is_err());
    let differ = ridge_difference(pitch(6.0), inches(84.0), inches(60.0)).expect("a difference");
    prints(differ.inches(), 12.0, 1e-9);
    prints(
        pitch_for_same_ridge(pitch(8.0), inches(144.0), inches(96.0)).expect("a pitch").rise_in_twelve(),
        12.0,
        1e-9,
    );
    let ridge = |ends| hip_ridge(inches(480.0), inches(288.0), ends).expect("a ridge").inches();
    let thickness = inches(1.5);
    prints(ridge(RidgeEnds::Lines), 192.0, 1e-9);
    prints(ridge(RidgeEnds::Commons { thickness }), 193.5, 1e-9);
    prints(ridge(RidgeEnds::Hips { ridge: thickness, hip: thickness }), 193.5 + 1.5 * 2.0_f64.sqrt(), 1e-9);
    assert!(hip_ridge(inches(288.0), inches(288.0), RidgeEnds::Lines).is_err());
}

/// By hand at 12 in 12, hips at both ends of a 30 ft eave: each course loses 48 cos 45 at either end; the last is what
/// is left. A valley gives back what a hip takes.
#[test]
fn courses_of_sheathing() {
    let line = |meeting| Some(SheathingEnd { corner: corner(meeting, 12.0, 12.0, 90.0), side: Side::A });
    let given = SheathedPlane {
        pitch: pitch(12.0),
        eave: inches(360.0),
        slope_length: inches(180.0),
        ends: [line(Meeting::Hip), line(Meeting::Hip)],
        course: inches(48.0),
    };
    let found = sheathing(&given).expect("courses");
    let back = 48.0 * 0.5_f64.sqrt();
    assert_eq!(found.courses.len(), 4);
    prints(found.back[0].inches(), back, 1e-9);
    prints(found.courses[1].lower.inches(), 360.0 - 2.0 * back, 1e-9);
    prints(found.courses[3].width.inches(), 180.0 - 144.0, 1e-9);
    assert!(found.courses.windows(2).all(|pair| pair[0].upper == pair[1].lower));
    let parallel = sheathing(&SheathedPlane { ends: [line(Meeting::Hip), line(Meeting::Valley)], ..given });
    assert!(
        parallel.expect("courses").courses.iter().all(|course| (course.lower - course.upper).inches().abs() < 1e-9)
    );
    let gable = sheathing(&SheathedPlane { ends: [None, None], ..given }).expect("courses");
    assert_eq!(gable.cuts, [None, None]);
    prints(gable.courses[2].upper.inches(), 360.0, 1e-9);
    // Two hips that meet end the plane: 360 / (2 x 0.7071) up the slope.
    let point = sheathing(&SheathedPlane { slope_length: inches(900.0), ..given }).expect("courses");
    let last = point.courses.last().expect("a course");
    prints((last.from_eave + last.width).inches(), 360.0 / 2.0_f64.sqrt(), 1e-9);
    prints(last.upper.inches(), 0.0, 1e-9);
    let other = SheathedPlane { pitch: pitch(11.0), ..given };
    assert!(matches!(sheathing(&other), Err(RoofError::OtherPitch { .. })));
}

/// By hand, a valley at 12 in 12 whose slope is root one half: 120 in level along it rise 84.85; plumb depth of 11.25
/// in is 13.78.
#[test]
fn a_post_under_a_valley() {
    let given = UnderHip {
        corner: corner(Meeting::Valley, 12.0, 12.0, 90.0),
        depth: inches(11.25),
        above_plate: inches(8.0),
        from_heel: inches(120.0),
        seat: inches(3.5),
    };
    let found = under_hip(&given).expect("a post");
    let slope = 0.5_f64.sqrt();
    prints(found.bottom.inches(), 8.0 + 120.0 * slope - 11.25 * 1.5_f64.sqrt(), 1e-9);
    prints((found.top - found.bottom).inches(), 3.5 * slope, 1e-9);
    prints(found.notch.notch.inches(), 3.5 / 3.0_f64.sqrt(), 1e-9);
    // 2.02 in is within a quarter of 11.25, 2.81, and past a sixth, 1.88.
    assert!(found.notch.within_limit && !found.within_sixth);
    assert!(under_hip(&UnderHip { from_heel: inches(-1.0), ..given }).is_err());
}
