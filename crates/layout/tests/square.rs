//! Squaring against a value sheet and old rules; what is our own is marked so.

use layout::square::{
    Corner, Known, Lean, Measurement, Reading, Sides, SquareError, Tilt, angle_error, closing, diagonal, four_sided,
    level, out_of_square, plumb, right_angles, straightness, to_rectangle,
};
use layout::stair::Verdict;
use measure::{Angle, Denominator, Length};

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

fn feet(feet: f64) -> Length {
    Length::from_feet(feet)
}

#[track_caller]
fn near(found: Length, expected: f64, off: f64) {
    assert!((found.inches() - expected).abs() <= off, "{} against {expected}", found.inches());
}

fn rectangle(length: f64, width: f64) -> Sides {
    Sides { ab: inches(length), bc: inches(width), cd: inches(length), da: inches(width) }
}

/// Source: a value sheet: 40 x 28 ft has diagonals of 48 ft 9-15/16 in.
#[test]
fn a_diagonal_of_a_sheet() {
    let found = diagonal(feet(40.0), feet(28.0)).expect("a rectangle");
    assert_eq!(found.to_feet_inches(Denominator::Sixteenth), "48' 9-15/16\"");
    let solved = four_sided(&rectangle(480.0, 336.0), Known::Angle(Corner::C, Angle::from_degrees(90.0)));
    let solved = solved.expect("corners");
    near(solved.ac, found.inches(), 1e-9);
    near(solved.bd, found.inches(), 1e-9);
}

/// Source: a value sheet: 6-8-10, 9-12-15 and 12-16-20 are multiples, and the larger is the better; the corner is off by
/// `e c / (a b)`: for 1/16 in on 12-16-20 that is 0.0625 x 240 / (144 x 192) radians.
#[test]
fn multiples_of_three_four_five() {
    let found = right_angles(feet(16.0), feet(12.0)).expect("legs");
    let laid: Vec<_> = found.iter().map(|one| [one.first, one.second, one.between].map(Length::feet)).collect();
    assert_eq!(laid, [[16.0, 12.0, 20.0], [12.0, 9.0, 15.0], [8.0, 6.0, 10.0], [4.0, 3.0, 5.0]]);
    let radians: f64 = 0.0625 * 240.0 / (144.0 * 192.0);
    assert!((found[0].off_by_a_sixteenth.degrees() - radians.to_degrees()).abs() < 1e-12);
    assert!(found.windows(2).all(|pair| pair[0].off_by_a_sixteenth < pair[1].off_by_a_sixteenth));
    // The longer leg takes the 4, whichever it is.
    let turned = right_angles(feet(12.0), feet(16.0)).expect("legs");
    assert_eq!((turned[0].first, turned[0].second), (feet(12.0), feet(16.0)));
    // Short legs are laid off in inches.
    assert_eq!(right_angles(inches(40.0), inches(30.0)).expect("legs")[0].between, inches(50.0));
    assert!(matches!(right_angles(inches(3.5), inches(3.0)), Err(SquareError::LegsTooShort { .. })));
}

/// The exact angle and the short rule agree for small errors: second order only.
#[test]
fn a_corner_by_its_hypotenuse() {
    let of = |between: f64| angle_error(feet(6.0), feet(8.0), inches(between)).map(Angle::degrees);
    assert!(of(120.0).is_ok_and(|off| off.abs() < 1e-12));
    let rule = (0.125_f64 * 120.0 / (72.0 * 96.0)).to_degrees();
    assert!(of(120.125).is_ok_and(|off| (off - rule).abs() < rule * 0.002));
    assert!(of(119.875).is_ok_and(|off| (off + rule).abs() < rule * 0.002));
    assert!(of(168.0).is_err());
}

/// Source: a value sheet: L = 96, diagonals 144-1/4 and 143-3/4: the far side moves 3/8 in. Half the difference, the rule of
/// thumb, says 1/4.
#[test]
fn a_rectangle_out_of_square() {
    let of = |ac: f64, bd: f64| out_of_square(inches(96.0), None, inches(ac), inches(bd)).expect("a rectangle");
    let found = of(144.25, 143.75);
    assert_eq!((found.lean, found.moves, found.rule_of_thumb), (Lean::TowardsB, inches(0.375), inches(0.25)));
    assert_eq!(of(143.75, 144.25).lean, Lean::TowardsA);
    assert_eq!(of(144.0, 144.0).lean, Lean::None);
    // The same as the corners of the leaning shape, solved: C stands 3/8 past B.
    let sides = Sides { bc: found_side(&found), da: found_side(&found), ..rectangle(96.0, 1.0) };
    let solved = four_sided(&sides, Known::Ac(inches(144.25))).expect("corners");
    near(solved.bd, 143.75, 1e-9);
    near(solved.corners[2].along, 96.375, 1e-9);
    let moves = to_rectangle(&solved, inches(96.0), found_side(&found)).expect("a rectangle");
    near(moves[2].along, -0.375, 1e-9);
    near(moves[3].along, -0.375, 1e-9);
    assert_eq!((moves[0].by, moves[1].by), (Length::ZERO, Length::ZERO));
}

fn found_side(found: &layout::square::OutOfSquare) -> Length {
    found.width
}

/// A wall racked before it stands: 16 ft by 97-1/8 in, diagonals by Pythagoras of a top plate 1/2 in over.
#[test]
fn a_wall_racked_before_it_stands() {
    let (length, height, over): (f64, f64, f64) = (192.0, 97.125, 0.5);
    let along = |run: f64| inches((run * run + height * height - over * over).sqrt());
    let found = out_of_square(inches(length), Some(inches(height)), along(length + over), along(length - over));
    let found = found.expect("a wall");
    near(found.moves, over, 1e-9);
    assert!(found.width_error.is_some_and(|error| error.abs().inches() < 1e-9));
    near(found.square_diagonal, diagonal(inches(length), inches(height)).expect("a wall").inches(), 1e-12);
}

/// Diagonals that no rectangle of that length has are refused.
#[test]
fn diagonals_that_cannot_be() {
    let found = out_of_square(inches(96.0), None, inches(144.0), inches(40.0));
    assert!(matches!(found, Err(SquareError::DiagonalsTooFarApart { .. })), "{found:?}");
    let found = out_of_square(inches(96.0), None, inches(90.0), inches(90.0));
    assert!(matches!(found, Err(SquareError::DiagonalsTooFarApart { .. })), "{found:?}");
}

/// A kite and a trapezoid with diagonals known from right triangles.
#[test]
fn four_corners_by_right_triangles() {
    // A (0, 0), B (40, 0), C (28, 21), D (0, 21): all by Pythagoras; BC is sqrt(144 + 441), AC 35.
    let sides = Sides { ab: inches(40.0), bc: inches(585.0_f64.sqrt()), cd: inches(28.0), da: inches(21.0) };
    let bd = 2041.0_f64.sqrt();
    for known in [
        Known::Ac(inches(35.0)),
        Known::Bd(inches(bd)),
        Known::Angle(Corner::A, Angle::from_degrees(90.0)),
        Known::Angle(Corner::D, Angle::from_degrees(90.0)),
    ] {
        let found = four_sided(&sides, known).expect("corners");
        near(found.ac, 35.0, 1e-9);
        near(found.bd, bd, 1e-9);
        for (corner, [along, across]) in found.corners.iter().zip([[0.0, 0.0], [40.0, 0.0], [28.0, 21.0], [0.0, 21.0]])
        {
            near(corner.along, along, 1e-9);
            near(corner.across, across, 1e-9);
        }
        assert!((found.angles.iter().map(|angle| angle.degrees()).sum::<f64>() - 360.0).abs() < 1e-9);
        assert!((found.angles[0].degrees() - 90.0).abs() < 1e-9);
    }
}

/// Six measurements: closing error, and the one that slipped by a foot stands first.
#[test]
fn six_measurements() {
    let sides = rectangle(480.0, 336.0);
    let true_diagonal = diagonal(feet(40.0), feet(28.0)).expect("a rectangle");
    let good = closing(&sides, true_diagonal, true_diagonal, inches(0.125)).expect("corners");
    assert!(good.fits && good.error.abs().inches() < 1e-9);
    let slipped = closing(&sides, true_diagonal, true_diagonal - feet(1.0), inches(0.125)).expect("corners");
    assert!(!slipped.fits);
    near(slipped.error, -12.0, 1e-9);
    assert_eq!((slipped.fit[0].which, slipped.fit[0].slip), (Measurement::Bd, true));
    near(slipped.fit[0].change, 12.0, 1e-9);
}

/// What no corners can have is refused, and the one that does not fit is named: a diagonal in both its triangles, or a side in
/// both of its own.
#[test]
fn the_one_that_does_not_fit() {
    let sides = rectangle(96.0, 48.0);
    let d = inches(107.331_26);
    let which = |sides: &Sides, ac: Length, bd: Length| match closing(sides, ac, bd, inches(0.125)) {
        Err(SquareError::DoesNotFit { which, least, most, .. }) => Some((which, least.inches(), most.inches())),
        _ => None,
    };
    assert_eq!(which(&sides, inches(200.0), d), Some((Measurement::Ac, 48.0, 144.0)));
    assert_eq!(which(&sides, d, inches(20.0)), Some((Measurement::Bd, 48.0, 144.0)));
    let long = Sides { cd: inches(960.0), ..sides };
    let found = which(&long, d, d).expect("a side");
    assert_eq!(found.0, Measurement::Cd);
    near(inches(found.1), 107.331_26 - 48.0, 1e-9);
    assert!(four_sided(&sides, Known::Ac(inches(144.0))).is_err());
    // Sides exchanged so that a corner points inward.
    let dart = Sides { ab: inches(100.0), bc: inches(100.0), cd: inches(60.0), da: inches(60.0) };
    assert_eq!(four_sided(&dart, Known::Bd(inches(41.0))).map(|_| ()), Err(SquareError::PointsInward));
}

/// Source: common practice, from memory: 1/4 in in 8 ft.
#[test]
fn plumb_walls() {
    let verdict = |off: f64| plumb(inches(off), feet(8.0)).expect("a wall").verdict;
    assert_eq!(
        [0.1875, 0.25, -0.25, 0.3125].map(verdict),
        [Verdict::Within, Verdict::AtLimit, Verdict::AtLimit, Verdict::Out]
    );
    let tall = plumb(inches(0.5), feet(16.0)).expect("a wall");
    assert_eq!((tall.verdict, tall.in_eight_feet, tall.top_moves), (Verdict::AtLimit, inches(0.25), inches(-0.5)));
}

/// Source: common practice: a string off the ends by 1-1/2 in blocks, read at the middle and the quarters.
#[test]
fn a_wall_along_a_string() {
    let read = [(4.0, 1.5), (8.0, 1.25), (12.0, 1.625)].map(|(at, read)| (feet(at), inches(read)));
    let found = straightness(&read, inches(1.5)).expect("readings");
    assert_eq!(found.offsets.iter().map(|offset| offset.off.inches()).collect::<Vec<_>>(), [0.0, -0.25, 0.125]);
    assert_eq!(found.worst.at, feet(8.0));
}

/// Own: a sill read down from a laser: the least reading is the highest point.
#[test]
fn a_sill_is_levelled() {
    let points = [(0.0, 40.25), (8.0, 40.0), (16.0, 40.5)];
    let down = points.map(|(at, read)| ([feet(at), Length::ZERO], Reading::Down(inches(read))));
    let found = level(&down, Tilt::default()).expect("readings");
    assert_eq!((found.highest, found.lowest, found.out_of_level), (1, 2, inches(0.5)));
    assert_eq!(found.shims, [0.25, 0.0, 0.5].map(inches));
    // Read up from a line, the order turns.
    let up = points.map(|(at, read)| ([feet(at), Length::ZERO], Reading::Up(inches(read))));
    assert_eq!(level(&up, Tilt::default()).expect("readings").highest, 2);
    // A floor that falls 1/4 in a foot on purpose is even.
    let fall = Tilt { along: -1.0 / 48.0, across: 0.0 };
    let falls = [0.0, 4.0, 8.0].map(|at| ([feet(at), Length::ZERO], Reading::Down(inches(40.0 + at / 4.0))));
    let found = level(&falls, fall).expect("readings");
    assert!(found.shims.iter().all(|shim| shim.inches().abs() < 1e-9));
    assert!(level(&falls, Tilt { along: 0.3, across: 0.0 }).is_err());
    assert!(level(&falls[..1], fall).is_err());
}

/// Every refusal is a sentence or more, and says what to do.
#[test]
fn refusals_are_sentences() {
    let d = inches(107.0);
    let errors = [
        diagonal(Length::ZERO, d).unwrap_err(),
        four_sided(&rectangle(96.0, 48.0), Known::Angle(Corner::A, Angle::from_degrees(180.0))).unwrap_err(),
        four_sided(&rectangle(96.0, 48.0), Known::Bd(inches(200.0))).unwrap_err(),
        out_of_square(inches(96.0), None, inches(40.0), inches(40.0)).unwrap_err(),
        right_angles(inches(1.0), inches(1.0)).unwrap_err(),
        straightness(&[], d).unwrap_err(),
        plumb(feet(2000.0), d).unwrap_err(),
    ];
    for error in errors {
        let text = error.to_string();
        assert!(text.ends_with('.') && text.len() > 40, "{text}");
    }
}
