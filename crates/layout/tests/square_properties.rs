//! What holds for every four corners.

use layout::square::{
    Known, Lean, Place, Reading, Sides, Tilt, closing, diagonal, four_sided, level, out_of_square, right_angles,
    to_rectangle,
};
use measure::Length;
use proptest::prelude::*;

/// Arithmetic on lengths to 100 ft: square roots of differences of squares lose half of the digits at worst.
const BITS: f64 = 1e-6;

fn inches(inches: f64) -> Length {
    Length::from_inches(inches)
}

prop_compose! {
    /// Corners that go round without one that points inward.
    fn corners()(
        b in 60.0..1200.0_f64,
        c in (60.0..1200.0_f64, 40.0..900.0_f64),
        d in (-30.0..30.0_f64, 40.0..900.0_f64),
    ) -> [Place; 4] {
        let place = |along, across| Place { along: inches(along), across: inches(across) };
        [Place::default(), place(b, 0.0), place(c.0, c.1), place(d.0, d.1)]
    }
}

fn turns_left(corners: &[Place; 4]) -> bool {
    (0..4).all(|at| {
        let [a, b, c] = [0, 1, 2].map(|on| corners[(at + on) % 4]);
        let turn = (b.along - a.along) * (c.across - b.across) - (b.across - a.across) * (c.along - b.along);
        turn.square_inches() > 50.0
    })
}

fn sides(corners: &[Place; 4]) -> Sides {
    let [a, b, c, d] = *corners;
    Sides { ab: a.to(b), bc: b.to(c), cd: c.to(d), da: d.to(a) }
}

proptest! {
    /// Both diagonals of a rectangle are alike, and make no lean.
    #[test]
    fn diagonals_of_a_rectangle_are_alike(length in 12.0..1200.0_f64, width in 12.0..1200.0_f64) {
        let across = diagonal(inches(length), inches(width)).unwrap();
        let sides = Sides { ab: inches(length), bc: inches(width), cd: inches(length), da: inches(width) };
        let found = four_sided(&sides, Known::Ac(across)).unwrap();
        prop_assert!((found.ac - found.bd).abs().inches() <= BITS);
        prop_assert!(found.angles.iter().all(|angle| (angle.degrees() - 90.0).abs() <= BITS));
        prop_assert_eq!(out_of_square(inches(length), None, across, across).unwrap().lean, Lean::None);
        let moves = to_rectangle(&found, inches(length), inches(width)).unwrap();
        prop_assert!(moves.iter().all(|one| one.by.inches() <= BITS));
    }

    /// Solved and measured again, the corners give back what was put in; so does the other diagonal.
    #[test]
    fn solving_and_measuring_gives_back(corners in corners().prop_filter("points inward", turns_left)) {
        let sides = sides(&corners);
        let [a, b, c, d] = corners;
        for known in [Known::Ac(a.to(c)), Known::Bd(b.to(d))] {
            let found = four_sided(&sides, known).unwrap();
            for (found, given) in found.corners.iter().zip(corners) {
                prop_assert!(found.to(given).inches() <= BITS * 1000.0, "{found:?} {given:?}");
            }
        }
        let closed = closing(&sides, a.to(c), b.to(d), inches(0.125)).unwrap();
        prop_assert!(closed.fits && closed.error.abs().inches() <= BITS * 1000.0);
        prop_assert!(closed.fit.iter().all(|fit| fit.change.abs().inches() <= BITS * 1000.0));
    }

    /// A rectangle pushed over is found to lean by as much, the right way.
    #[test]
    fn a_lean_is_found(length in 48.0..600.0_f64, width in 48.0..200.0_f64, over in 0.01..4.0_f64, to_b in any::<bool>()) {
        let height = (width * width - over * over).sqrt();
        let far = |run: f64| inches((run * run + height * height).sqrt());
        let (long, short) = (far(length + over), far(length - over));
        let (ac, bd) = if to_b { (long, short) } else { (short, long) };
        let found = out_of_square(inches(length), Some(inches(width)), ac, bd).unwrap();
        prop_assert_eq!(found.lean, if to_b { Lean::TowardsB } else { Lean::TowardsA });
        prop_assert!((found.moves - inches(over)).abs().inches() <= BITS);
        prop_assert!(found.width_error.unwrap().abs().inches() <= BITS);
    }

    /// Every multiple is a right triangle that fits its legs.
    #[test]
    fn multiples_are_right(first in 4.0..1200.0_f64, second in 4.0..1200.0_f64) {
        for one in right_angles(inches(first), inches(second)).unwrap() {
            prop_assert!(one.first <= inches(first) && one.second <= inches(second));
            let (a, b, c) = (one.first.inches(), one.second.inches(), one.between.inches());
            prop_assert!((a * a + b * b - c * c).abs() <= BITS);
        }
    }

    /// Shims bring every point to one height; none is below zero, and the highest has none.
    #[test]
    fn shims_make_level(heights in prop::collection::vec(-20.0..20.0_f64, 2..40)) {
        let points: Vec<_> = heights.iter().map(|height| ([Length::ZERO; 2], Reading::Up(inches(*height)))).collect();
        let found = level(&points, Tilt::default()).unwrap();
        let top = inches(heights[found.highest]);
        for (shim, height) in found.shims.iter().zip(&heights) {
            prop_assert!(*shim >= Length::ZERO);
            prop_assert!((inches(*height) + *shim - top).abs().inches() <= 1e-12);
        }
        prop_assert_eq!(found.shims[found.highest], Length::ZERO);
        prop_assert_eq!(found.shims[found.lowest], found.out_of_level);
    }
}
