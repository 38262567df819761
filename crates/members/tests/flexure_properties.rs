//! What must hold of every member that bends, whatever it is.
#![expect(clippy::unwrap_used, reason = "a piece without a value is the report")]

use lumber::{Conditions, Grade, Member, Product, Sawn, SawnSize, ServiceMoisture, Species};
use measure::{FlexuralRigidity, Force, Length, LineLoad};
use members::beam::{Beam, Load, Solution};
use members::flexure::{
    Acting, Bearing, Case, DeflectionLimits, Edges, FlexureAnswer, FlexureInput, Held, LoadedFrom, Piece, check_flexure,
};
use members::limit::Limit;
use proptest::prelude::*;

fn pieces() -> Vec<Piece> {
    ["2x6", "2x8", "2x10", "2x12"]
        .into_iter()
        .map(|size| {
            let size = SawnSize::from_text(size).unwrap();
            Piece::Lumber(Member::single(Product::Sawn(Sawn { species: Species::HemFir, grade: Grade::No2, size })))
        })
        .collect()
}

fn input(spans: &[f64], overhang: f64, dead: f64, live: f64, up: f64) -> FlexureInput {
    let mut places = vec![Length::ZERO];
    for span in spans {
        places.push(*places.last().unwrap() + Length::from_feet(*span));
    }
    let length = *places.last().unwrap() + Length::from_feet(overhang);
    let along = |case, plf| Acting { case, load: Load::uniform(Length::ZERO, length, LineLoad::from_plf(plf)) };
    FlexureInput {
        length,
        bearings: places.into_iter().map(|at| Bearing { at, length: Length::from_inches(1.5), below: None }).collect(),
        loads: vec![along(Case::Dead, dead), along(Case::Live, live), along(Case::WindUp, -up)],
        own_weight_share: 1.0,
        edges: Edges { top: Held::Along, bottom: Held::AtSupports },
        loaded_from: LoadedFrom::Top,
        conditions: Conditions::default(),
        plies_share_load: true,
        limits: DeflectionLimits { live: 360.0, total: 240.0 },
    }
}

fn check(input: &FlexureInput) -> FlexureAnswer {
    check_flexure(input, pieces(), None, |_| None, |_, _| Ok(Vec::new())).unwrap()
}

fn worst(answer: &FlexureAnswer) -> Vec<f64> {
    answer.tried.iter().map(|tried| tried.checks().iter().map(|check| check.share).fold(0.0, f64::max)).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// More load, a longer span and wet wood never carry more.
    #[test]
    fn more_is_never_stronger(
        span in 4.0..18.0_f64, second in 4.0..18.0_f64, dead in 5.0..60.0_f64, live in 10.0..200.0_f64, up in 0.0..80.0_f64,
    ) {
        let base = input(&[span, second], 0.0, dead, live, up);
        let before = worst(&check(&base));
        let heavier = worst(&check(&input(&[span, second], 0.0, dead, live * 1.3, up)));
        let wet = Conditions { service: ServiceMoisture::Wet, ..Conditions::default() };
        let wetter = worst(&check(&FlexureInput { conditions: wet, ..base }));
        for index in 0..before.len() {
            prop_assert!(heavier[index] >= before[index] - 1e-12);
            prop_assert!(wetter[index] >= before[index] - 1e-12);
        }
        let one = worst(&check(&input(&[span], 0.0, dead, live, up)));
        let longer = worst(&check(&input(&[span * 1.1], 0.0, dead, live, up)));
        for index in 0..one.len() {
            prop_assert!(longer[index] >= one[index] - 1e-12);
        }
    }

    /// What every load case puts down comes up at the supports.
    #[test]
    fn reactions_hold_up_what_lies_on_it(
        span in 4.0..18.0_f64, second in 4.0..18.0_f64, overhang in 0.0..4.0_f64, dead in 5.0..60.0_f64, live in 10.0..200.0_f64,
    ) {
        let input = input(&[span, second], overhang, dead, live, 0.0);
        let answer = check(&input);
        let length = input.length.feet();
        let own = answer.about().piece.self_weight().plf();
        for (case, plf) in [(Case::Dead, dead + own), (Case::Live, live)] {
            let up: Force = answer.forces.iter().map(|force| force.by_case.iter().find(|(of, _)| *of == case).unwrap().1).sum();
            prop_assert!((up.pounds() - plf * length).abs() < 1e-6 * plf * length);
        }
    }

    /// A beam and its mirror are as strong.
    #[test]
    fn a_mirrored_beam_is_as_strong(span in 4.0..18.0_f64, second in 4.0..18.0_f64, live in 10.0..200.0_f64) {
        let one = worst(&check(&input(&[span, second], 0.0, 10.0, live, 0.0)));
        let other = worst(&check(&input(&[second, span], 0.0, 10.0, live, 0.0)));
        for (a, b) in one.iter().zip(&other) {
            prop_assert!((a - b).abs() < 1e-9 * a.max(1.0));
        }
    }

    /// Solutions of parts, added, are the solution of the whole.
    #[test]
    fn parts_add_up(
        span in 5.0..20.0_f64, second in 5.0..20.0_f64, even in -50.0..200.0_f64, force in -500.0..2000.0_f64,
        share in 0.05..0.95_f64, times in -2.0..2.0_f64,
    ) {
        let (first, second) = (Length::from_feet(span), Length::from_feet(second));
        let length = first + second;
        let beam = Beam::new(&[Length::ZERO, first, length], length, FlexuralRigidity::from_pound_square_inches(1e8)).unwrap();
        let loads = [
            vec![beam.uniform(LineLoad::from_plf(even))],
            vec![Load::point(length * share, Force::from_pounds(force))],
        ];
        let apart = beam.solve_apart(&loads).unwrap();
        let sum = Solution::sum([(1.0, &apart[0]), (times, &apart[1])]).unwrap();
        let together = beam
            .solve(&[loads[0][0], Load::point(length * share, Force::from_pounds(force * times))])
            .unwrap();
        let size = (even.abs() + force.abs() * (1.0 + times.abs())) * length.inches();
        for (a, b) in sum.stretches().iter().zip(together.stretches()) {
            let (a, b) = (a.extremes, b.extremes);
            prop_assert!((a.maximum_moment.value - b.maximum_moment.value).abs().inch_pounds() < 1e-9 * size);
            prop_assert!((a.minimum_moment.value - b.minimum_moment.value).abs().inch_pounds() < 1e-9 * size);
            prop_assert!((a.most_down.value - b.most_down.value).abs().inches() < 1e-9 * size);
        }
    }
}

/// Source: the coefficients of two equal spans under an even load (handbooks of beams): with live load on one span alone the
/// most sagging is 0.0957 w L² (one span loaded), the moment over the middle support with both loaded 0.125 w L².
#[test]
fn live_load_skips_a_span() {
    let answer = check(&FlexureInput { own_weight_share: 0.0, ..input(&[12.0, 12.0], 0.0, 0.0, 100.0, 0.0) });
    let modulus = 1.5 * 11.25 * 11.25 / 6.0;
    let moment = |limit: Limit| {
        let found = answer.tried.last().unwrap().of(limit).unwrap().check;
        found.demand * modulus / 12.0 / (100.0 * 144.0)
    };
    assert!((moment(Limit::Bending) - 0.0957).abs() < 0.0001, "{}", moment(Limit::Bending));
    assert!((moment(Limit::BendingTopInTension) - 0.125).abs() < 0.0001);
}
