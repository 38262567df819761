//! Beams whose answers stand as closed forms in every statics handbook, and the refusals of what is no beam.
//!
//! Source of the formulas: beam equation and equilibrium; the usual tables of beam formulas (from memory, each one
//! exact and reached a second way by `beam_oracle`). The formulas are exact, so the tolerance is the rounding of the
//! arithmetic.
#![expect(clippy::unwrap_used, reason = "a beam that is refused here is the report")]

use measure::{FlexuralRigidity, Force, Length, LineLoad, Moment};
use members::beam::{Beam, BeamError, Load, Section, Solution, Support};

/// Relative; a few hundred operations of 1e-16 each.
const ROUNDING: f64 = 1e-12;

/// Span in inches, load in pounds per inch, force in pounds, stiffness in pound-square inches: no round numbers.
const L: f64 = 137.0;
const W: f64 = 8.3;
const P: f64 = 911.0;
const EI: f64 = 1.7e8;

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

fn ei() -> FlexuralRigidity {
    FlexuralRigidity::from_pound_square_inches(EI)
}

fn per_inch(value: f64) -> LineLoad {
    LineLoad::from_plf(value * 12.0)
}

fn point(at: f64, force: f64) -> Load {
    Load::point(inches(at), Force::from_pounds(force))
}

/// On simple supports at the places given.
fn beam(supports: &[f64], length: f64) -> Beam {
    let places: Vec<Length> = supports.iter().copied().map(inches).collect();
    Beam::new(&places, inches(length), ei()).unwrap()
}

/// Spans of length `L`, as many as asked for, all under `W`.
fn equal_spans(count: u8) -> Solution {
    let supports: Vec<f64> = (0..=count).map(|index| f64::from(index) * L).collect();
    let beam = beam(&supports, f64::from(count) * L);
    beam.solve(&[beam.uniform(per_inch(W))]).unwrap()
}

fn fixed(supports: Vec<Support>, loads: &[Load]) -> Solution {
    Beam::with_supports(supports, inches(L), ei()).unwrap().solve(loads).unwrap()
}

fn at(solution: &Solution, place: f64) -> Section {
    solution.just_left_of(inches(place)).unwrap()
}

#[track_caller]
fn check(found: f64, expected: f64) {
    assert!((found - expected).abs() <= ROUNDING * expected.abs(), "found {found}, expected {expected}");
}

#[track_caller]
fn check_forces(solution: &Solution, expected: &[f64]) {
    assert_eq!(solution.reactions().len(), expected.len());
    for (reaction, force) in solution.reactions().iter().zip(expected) {
        check(reaction.force.pounds(), *force);
    }
}

/// The moments over the supports between the first and the last, and the reactions, as shares of `w L²` and `w L`.
#[track_caller]
fn check_equal_spans(count: u8, moments: &[f64], forces: &[f64]) {
    let solution = equal_spans(count);
    check_forces(&solution, &forces.iter().map(|share| share * W * L).collect::<Vec<_>>());
    for (reaction, share) in solution.reactions()[1..].iter().zip(moments) {
        check(at(&solution, reaction.at.inches()).moment.inch_pounds(), share * W * L * L);
    }
}

#[test]
fn simple_span_uniform_load() {
    let solution = equal_spans(1);
    check_forces(&solution, &[W * L / 2.0, W * L / 2.0]);
    let extremes = solution.extremes();
    check(extremes.largest_shear.value.pounds(), W * L / 2.0);
    check(extremes.maximum_moment.value.inch_pounds(), W * L * L / 8.0);
    check(extremes.maximum_moment.at.inches(), L / 2.0);
    check(extremes.most_down.value.inches(), 5.0 * W * L * L * L * L / (384.0 * EI));
    check(extremes.most_down.at.inches(), L / 2.0);
    check(at(&solution, 0.0).slope, W * L * L * L / (24.0 * EI));
}

#[test]
fn simple_span_point_load_at_the_middle() {
    let solution = beam(&[0.0, L], L).solve(&[point(L / 2.0, P)]).unwrap();
    check_forces(&solution, &[P / 2.0, P / 2.0]);
    check(solution.extremes().maximum_moment.value.inch_pounds(), P * L / 4.0);
    check(solution.extremes().most_down.value.inches(), P * L * L * L / (48.0 * EI));
}

#[test]
fn simple_span_point_load_anywhere() {
    let (a, b) = (0.7 * L, L - 0.7 * L);
    let solution = beam(&[0.0, L], L).solve(&[point(a, P)]).unwrap();
    check_forces(&solution, &[P * b / L, P * a / L]);
    check(solution.extremes().largest_shear.value.pounds(), P * a / L);
    check(solution.extremes().maximum_moment.value.inch_pounds(), P * a * b / L);
    let down = solution.extremes().most_down;
    check(down.value.inches(), P * a * b * (a + 2.0 * b) * (3.0 * a * (a + 2.0 * b)).sqrt() / (27.0 * EI * L));
    check(down.at.inches(), (a * (a + 2.0 * b) / 3.0).sqrt());
}

#[test]
fn simple_span_triangular_load() {
    let solution =
        beam(&[0.0, L], L).solve(&[Load::linear(inches(0.0), inches(L), per_inch(0.0), per_inch(W))]).unwrap();
    check_forces(&solution, &[W * L / 6.0, W * L / 3.0]);
    let (moment, down) = (solution.extremes().maximum_moment, solution.extremes().most_down);
    check(moment.value.inch_pounds(), W * L * L / (9.0 * 3f64.sqrt()));
    check(moment.at.inches(), L / 3f64.sqrt());
    let x = L * (1.0 - (8f64 / 15.0).sqrt()).sqrt();
    check(down.at.inches(), x);
    let shape = 7.0 * L * L * L * L - 10.0 * L * L * x * x + 3.0 * x * x * x * x;
    check(down.value.inches(), W * x * shape / (360.0 * EI * L));
}

#[test]
fn simple_span_uniform_load_on_its_left_part() {
    let a = 0.4 * L;
    let solution = beam(&[0.0, L], L).solve(&[Load::uniform(inches(0.0), inches(a), per_inch(W))]).unwrap();
    let left = W * a * (2.0 * L - a) / (2.0 * L);
    check_forces(&solution, &[left, W * a * a / (2.0 * L)]);
    check(solution.extremes().maximum_moment.value.inch_pounds(), left * left / (2.0 * W));
    check(solution.extremes().maximum_moment.at.inches(), left / W);
    let deflection = W * a * a * (0.2 * L) * (4.0 * 0.8 * L * L - 2.0 * 0.64 * L * L - a * a) / (24.0 * EI * L);
    check(at(&solution, 0.8 * L).deflection.inches(), deflection);
}

#[test]
fn simple_span_moment_at_its_left_end() {
    let couple = Load::couple(inches(0.0), Moment::from_inch_pounds(5000.0));
    let solution = beam(&[0.0, L], L).solve(&[couple]).unwrap();
    check_forces(&solution, &[-5000.0 / L, 5000.0 / L]);
    check(at(&solution, 0.0).slope, 5000.0 * L / (3.0 * EI));
    check(at(&solution, L).slope, -5000.0 * L / (6.0 * EI));
    check(solution.extremes().most_down.value.inches(), 5000.0 * L * L / (9.0 * 3f64.sqrt() * EI));
    check(solution.extremes().most_down.at.inches(), L * (1.0 - 1.0 / 3f64.sqrt()));
}

#[test]
fn propped_cantilever_uniform_load() {
    let supports = vec![Support::simple(inches(0.0)), Support::fixed(inches(L))];
    let solution = fixed(supports, &[Load::uniform(inches(0.0), inches(L), per_inch(W))]);
    check_forces(&solution, &[3.0 * W * L / 8.0, 5.0 * W * L / 8.0]);
    check(solution.reactions()[1].moment.inch_pounds(), W * L * L / 8.0);
    let extremes = solution.extremes();
    check(extremes.minimum_moment.value.inch_pounds(), -W * L * L / 8.0);
    check(extremes.maximum_moment.value.inch_pounds(), 9.0 * W * L * L / 128.0);
    check(extremes.maximum_moment.at.inches(), 3.0 * L / 8.0);
    let x = L * (1.0 + 33f64.sqrt()) / 16.0;
    check(extremes.most_down.at.inches(), x);
    check(extremes.most_down.value.inches(), W * x * (L * L * L - 3.0 * L * x * x + 2.0 * x * x * x) / (48.0 * EI));
}

#[test]
fn beam_fixed_at_both_ends() {
    let supports = vec![Support::fixed(inches(0.0)), Support::fixed(inches(L))];
    let solution = fixed(supports.clone(), &[Load::uniform(inches(0.0), inches(L), per_inch(W))]);
    check(solution.reactions()[0].moment.inch_pounds(), -W * L * L / 12.0);
    check(solution.extremes().maximum_moment.value.inch_pounds(), W * L * L / 24.0);
    check(solution.extremes().most_down.value.inches(), W * L * L * L * L / (384.0 * EI));
    let solution = fixed(supports, &[point(L / 2.0, P)]);
    check(solution.reactions()[1].moment.inch_pounds(), P * L / 8.0);
    check(solution.extremes().most_down.value.inches(), P * L * L * L / (192.0 * EI));
}

#[test]
fn cantilever_held_at_its_left_end() {
    let supports = || vec![Support::fixed(inches(0.0))];
    let solution = fixed(supports(), &[Load::uniform(inches(0.0), inches(L), per_inch(W))]);
    check_forces(&solution, &[W * L]);
    check(solution.extremes().minimum_moment.value.inch_pounds(), -W * L * L / 2.0);
    check(solution.extremes().most_down.value.inches(), W * L * L * L * L / (8.0 * EI));
    let solution = fixed(supports(), &[point(L, P)]);
    check(solution.extremes().most_down.value.inches(), P * L * L * L / (3.0 * EI));
    let solution = fixed(supports(), &[Load::linear(inches(0.0), inches(L), per_inch(W), per_inch(0.0))]);
    check(solution.extremes().most_down.value.inches(), W * L * L * L * L / (30.0 * EI));
}

#[test]
fn two_to_five_equal_spans_uniform_load() {
    check_equal_spans(2, &[-1.0 / 8.0], &[3.0 / 8.0, 10.0 / 8.0, 3.0 / 8.0]);
    check_equal_spans(3, &[-0.1, -0.1], &[0.4, 1.1, 1.1, 0.4]);
    let forces = [11.0, 32.0, 26.0, 32.0, 11.0].map(|part| part / 28.0);
    check_equal_spans(4, &[-3.0 / 28.0, -2.0 / 28.0, -3.0 / 28.0], &forces);
    let forces = [15.0, 43.0, 37.0, 37.0, 43.0, 15.0].map(|part| part / 38.0);
    check_equal_spans(5, &[-4.0, -3.0, -3.0, -4.0].map(|part| part / 38.0), &forces);
}

#[test]
fn two_equal_spans_sag_as_two_propped_cantilevers() {
    let solution = equal_spans(2);
    for (stretch, x) in solution.stretches().iter().zip([3.0 * L / 8.0, 13.0 * L / 8.0]) {
        check(stretch.extremes.maximum_moment.value.inch_pounds(), 9.0 * W * L * L / 128.0);
        check(stretch.extremes.maximum_moment.at.inches(), x);
    }
    check(solution.extremes().minimum_moment.at.inches(), L);
}

#[test]
fn two_equal_spans_with_a_point_load_in_the_middle_of_each() {
    let solution = beam(&[0.0, L, 2.0 * L], 2.0 * L).solve(&[point(L / 2.0, P), point(1.5 * L, P)]).unwrap();
    check_forces(&solution, &[5.0 * P / 16.0, 22.0 * P / 16.0, 5.0 * P / 16.0]);
    check(solution.extremes().minimum_moment.value.inch_pounds(), -3.0 * P * L / 16.0);
}

#[test]
fn overhang_uniform_load() {
    let a = 0.3 * L;
    let beam = beam(&[0.0, L], L + a);
    let solution = beam.solve(&[beam.uniform(per_inch(W))]).unwrap();
    check_forces(&solution, &[W * (L * L - a * a) / (2.0 * L), W * (L + a) * (L + a) / (2.0 * L)]);
    let sum = (L + a) * (L - a);
    check(solution.extremes().maximum_moment.value.inch_pounds(), W * sum * sum / (8.0 * L * L));
    check(solution.extremes().minimum_moment.value.inch_pounds(), -W * a * a / 2.0);
    let end = W * a * (4.0 * a * a * L - L * L * L + 3.0 * a * a * a) / (24.0 * EI);
    check(at(&solution, L + a).deflection.inches(), end);
}

#[test]
fn overhang_with_a_point_load_at_its_end_lifts_the_far_support() {
    let a = 0.3 * L;
    let solution = beam(&[0.0, L], L + a).solve(&[point(L + a, P)]).unwrap();
    check_forces(&solution, &[-P * a / L, P * (L + a) / L]);
    let extremes = solution.extremes();
    check(extremes.most_down.value.inches(), P * a * a * (L + a) / (3.0 * EI));
    check(extremes.most_up.value.inches(), -P * a * L * L / (9.0 * 3f64.sqrt() * EI));
    check(extremes.most_up.at.inches(), L / 3f64.sqrt());
    check(extremes.largest_moment().value.inch_pounds(), P * a);
    check(extremes.largest_deflection().value.inches(), extremes.most_down.value.inches());
}

#[test]
fn a_load_right_over_a_support_bends_nothing() {
    let solution = beam(&[0.0, L], L).solve(&[point(L, P)]).unwrap();
    assert_eq!(solution.reactions()[1].force.pounds(), P);
    assert_eq!(solution.extremes().largest_moment().value, Moment::ZERO);
}

#[test]
fn a_diagram_has_as_many_points_as_asked_for() {
    let beam = beam(&[0.0, 96.0], 96.0);
    let places = |loads: &[Load]| -> Vec<f64> {
        beam.solve(loads).unwrap().diagram(3).iter().map(|section| section.at.inches()).collect()
    };
    assert_eq!(places(&[]), [0.0, 24.0, 48.0, 72.0, 96.0]);
    // Twice where the load acts: just left and just right of it.
    assert_eq!(places(&[point(48.0, P)]), [0.0, 12.0, 24.0, 36.0, 48.0, 48.0, 60.0, 72.0, 84.0, 96.0]);
}

#[track_caller]
fn check_refused(supports: &[f64], length: f64, words: &str) {
    let places: Vec<Length> = supports.iter().copied().map(inches).collect();
    assert_eq!(Beam::new(&places, inches(length), ei()).unwrap_err().to_string(), words);
}

#[test]
fn what_is_no_beam_is_refused_in_words() {
    check_refused(&[0.0, 0.0], 0.0, "The beam is 0 in long. Give a length above zero.");
    let few = "give two or more, or one that holds it against turning.";
    check_refused(&[], 96.0, &format!("The beam would fall with 0 support(s): {few}"));
    check_refused(&[48.0], 96.0, &format!("The beam would fall with 1 support(s): {few}"));
    let off = "Support 2 is at 97 in, but the beam runs from 0 to 96 in. Move it onto the beam.";
    check_refused(&[0.0, 97.0], 96.0, off);
    let order = "Support 2 is at 40 in, the one before it at 50 in. List them from left to right, no two in one place.";
    check_refused(&[50.0, 40.0], 96.0, order);
    let no_stiffness = Beam::simple_span(inches(96.0), FlexuralRigidity::ZERO).unwrap_err();
    assert_eq!(no_stiffness, BeamError::StiffnessNotPositive { given: FlexuralRigidity::ZERO });
    let endless = Beam::simple_span(inches(1.0) / 0.0, ei()).unwrap_err();
    assert_eq!(endless, BeamError::NotFinite { what: "length of the beam" });
}

#[test]
fn loads_and_places_off_the_beam_are_refused_in_words() {
    let beam = beam(&[0.0, 96.0], 96.0);
    let refused = |load| beam.solve(&[point(1.0, 1.0), load]).unwrap_err().to_string();
    let off = "Load 2 reaches 96.5 in, but the beam runs from 0 to 96 in. Move or cut the load.";
    assert_eq!(refused(point(96.5, P)), off);
    assert_eq!(refused(Load::uniform(inches(0.0), inches(96.5), per_inch(W))), off);
    let backwards = "Load 2 runs from 50 in to 50 in. Give it an end to the right of its start.";
    assert_eq!(refused(Load::uniform(inches(50.0), inches(50.0), per_inch(W))), backwards);
    let solution = beam.solve(&[]).unwrap();
    assert!(matches!(solution.just_left_of(inches(-0.1)), Err(BeamError::PlaceOffBeam { .. })));
    // The rounding of a sum is not a load off the beam.
    assert!(beam.solve(&[point(96.000_000_000_000_01, P)]).is_ok());
}

#[test]
fn results_beyond_numbers_are_refused() {
    let beam = Beam::simple_span(inches(1e40), ei()).unwrap();
    assert_eq!(beam.solve(&[beam.uniform(per_inch(1.0))]).unwrap_err(), BeamError::TooLarge);
    let refused = beam.solve(&[Load::point(inches(1.0), Force::from_pounds(1.0) / 0.0)]).unwrap_err();
    assert_eq!(refused, BeamError::NotFinite { what: "force of a load" });
}
