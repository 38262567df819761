//! What must hold for every beam: balance, superposition, symmetry, reciprocity, continuity.
//!
//! Tolerances are rounding: a share of what the loads could do at most to the whole beam ([`Scale`]).
#![expect(clippy::unwrap_used, reason = "a beam that is refused here is the report")]

use measure::{FlexuralRigidity, Force, Length, LineLoad, Moment};
use members::beam::{Beam, Load, Restraint, Section, Solution, StretchKind, Support, simple_span_uniform};
use proptest::collection::vec;
use proptest::prelude::*;

const ROUNDING: f64 = 1e-12;

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

fn point(at: f64, force: f64) -> Load {
    Load::point(inches(at), Force::from_pounds(force))
}

/// A place as a share of the beam's length, or now and then right on one of the supports.
#[derive(Clone, Copy, Debug)]
enum Spot {
    Share(f64),
    Support(usize),
}

impl Spot {
    fn on(self, beam: &Beam) -> Length {
        match self {
            Self::Share(share) => beam.length() * share,
            Self::Support(index) => beam.supports()[index % beam.supports().len()].at,
        }
    }
}

#[derive(Clone, Copy, Debug)]
enum Sketch {
    Point(Spot, f64),
    Couple(Spot, f64),
    Distributed(Spot, Spot, f64, f64),
}

impl Sketch {
    fn on(self, beam: &Beam) -> Option<Load> {
        match self {
            Self::Point(at, force) => Some(Load::point(at.on(beam), Force::from_pounds(force))),
            Self::Couple(at, moment) => Some(Load::couple(at.on(beam), Moment::from_inch_pounds(moment))),
            Self::Distributed(one, other, start, end) => {
                let (from, to) = (one.on(beam).min(other.on(beam)), one.on(beam).max(other.on(beam)));
                (from < to).then(|| Load::linear(from, to, LineLoad::from_plf(start), LineLoad::from_plf(end)))
            }
        }
    }
}

fn spots() -> impl Strategy<Value = Spot> {
    prop_oneof![4 => (0.0..=1.0).prop_map(Spot::Share), 1 => (0usize..6).prop_map(Spot::Support)]
}

fn sketches() -> impl Strategy<Value = Sketch> {
    let plf = -200.0..1000.0;
    prop_oneof![
        (spots(), -500.0..3000.0).prop_map(|(at, force)| Sketch::Point(at, force)),
        (spots(), -9000.0..9000.0).prop_map(|(at, moment)| Sketch::Couple(at, moment)),
        (spots(), spots(), plf.clone(), plf)
            .prop_map(|(one, other, start, end)| Sketch::Distributed(one, other, start, end)),
    ]
}

prop_compose! {
    fn beams()(
        left in prop_oneof![Just(0.0), 1.0..48.0],
        spans in vec((24.0..240.0, prop::bool::weighted(0.15)), 1..=5),
        first_fixed in prop::bool::weighted(0.15),
        right in prop_oneof![Just(0.0), 1.0..48.0],
        ei in 1e7..1e9,
    ) -> Beam {
        let support = |at, fixed| if fixed { Support::fixed(inches(at)) } else { Support::simple(inches(at)) };
        let (mut at, mut supports) = (left, vec![support(left, first_fixed)]);
        for (span, fixed) in spans {
            at += span;
            supports.push(support(at, fixed));
        }
        Beam::with_supports(supports, inches(at + right), FlexuralRigidity::from_pound_square_inches(ei)).unwrap()
    }
}

prop_compose! {
    fn loaded_beams()(beam in beams(), sketches in vec(sketches(), 1..6)) -> (Beam, Vec<Load>) {
        let loads = sketches.into_iter().filter_map(|sketch| sketch.on(&beam)).collect();
        (beam, loads)
    }
}

/// A load's total force and where it acts, and its moment.
fn resultant(load: &Load) -> (f64, f64, f64) {
    match *load {
        Load::Point { at, force } => (force.pounds(), at.inches(), 0.0),
        Load::Couple { moment, .. } => (0.0, 0.0, moment.inch_pounds()),
        Load::Distributed { from, to, start, end } => {
            let (from, run) = (from.inches(), (to - from).inches());
            let (start, end) = (start.pounds_per_inch(), end.pounds_per_inch());
            let total = run * (start + end) / 2.0;
            let about_start = run * run * (start / 6.0 + end / 3.0);
            (total, from, about_start)
        }
    }
}

/// What the loads could do at most, by which rounding is judged.
struct Scale {
    force: f64,
    moment: f64,
    slope: f64,
    deflection: f64,
}

impl Scale {
    fn of(beam: &Beam, loads: &[Load]) -> Self {
        let length = beam.length().inches();
        let size = |load: &Load| match *load {
            Load::Point { force, .. } => force.pounds().abs(),
            // A couple is held by forces a support spacing apart, and none is closer than two feet here.
            Load::Couple { moment, .. } => moment.inch_pounds().abs() / 24.0,
            Load::Distributed { from, to, start, end } => {
                (to - from).inches() * start.pounds_per_inch().abs().max(end.pounds_per_inch().abs())
            }
        };
        let force = loads.iter().map(size).sum::<f64>();
        let moment = force * length;
        let slope = moment * length / beam.ei().pound_square_inches();
        Self { force, moment, slope, deflection: slope * length }
    }

    fn check(&self, one: &Section, other: &Section) -> Result<(), TestCaseError> {
        let pairs = [
            ("shear", one.shear.pounds(), other.shear.pounds(), self.force),
            ("moment", one.moment.inch_pounds(), other.moment.inch_pounds(), self.moment),
            ("slope", one.slope, other.slope, self.slope),
            ("deflection", one.deflection.inches(), other.deflection.inches(), self.deflection),
        ];
        for (name, one, other, scale) in pairs {
            prop_assert!((one - other).abs() <= ROUNDING * scale, "{name}: {one} and {other} at a scale of {scale}");
        }
        Ok(())
    }
}

fn left_and_right(solution: &Solution, at: Length) -> [Section; 2] {
    [solution.just_left_of(at).unwrap(), solution.just_right_of(at).unwrap()]
}

fn places(beam: &Beam) -> impl Iterator<Item = Length> {
    (0..=12).map(|index| beam.length() * (f64::from(index) / 12.0))
}

fn scaled(load: &Load, factor: f64) -> Load {
    match *load {
        Load::Point { at, force } => Load::Point { at, force: force * factor },
        Load::Couple { at, moment } => Load::Couple { at, moment: moment * factor },
        Load::Distributed { from, to, start, end } => {
            Load::Distributed { from, to, start: start * factor, end: end * factor }
        }
    }
}

fn mirrored(beam: &Beam, loads: &[Load]) -> (Beam, Vec<Load>) {
    let place = |at: Length| beam.length() - at;
    let load = |load: &Load| match *load {
        Load::Point { at, force } => Load::Point { at: place(at), force },
        Load::Couple { at, moment } => Load::Couple { at: place(at), moment: -moment },
        Load::Distributed { from, to, start, end } => {
            Load::Distributed { from: place(to), to: place(from), start: end, end: start }
        }
    };
    let supports = beam.supports().iter().rev().map(|support| Support { at: place(support.at), ..*support }).collect();
    (Beam::with_supports(supports, beam.length(), beam.ei()).unwrap(), loads.iter().map(load).collect())
}

proptest! {
    #[test]
    fn forces_and_moments_balance((beam, loads) in loaded_beams()) {
        let solution = beam.solve(&loads).unwrap();
        let scale = Scale::of(&beam, &loads);
        let (mut force, mut moment) = (0.0, 0.0);
        for (down, at, couple) in loads.iter().map(resultant) {
            force += down;
            moment += down * at + couple;
        }
        for reaction in solution.reactions() {
            force -= reaction.force.pounds();
            moment += reaction.moment.inch_pounds() - (reaction.force * reaction.at).inch_pounds();
        }
        prop_assert!(force.abs() <= ROUNDING * scale.force, "left over: {force} lb");
        prop_assert!(moment.abs() <= ROUNDING * scale.moment, "left over: {moment} in-lb");
    }

    #[test]
    fn loads_together_do_what_they_do_apart((beam, loads) in loaded_beams(), split in 0usize..6) {
        let (some, rest) = loads.split_at(split.min(loads.len()));
        let [all, some, rest] = [&loads[..], some, rest].map(|loads| beam.solve(loads).unwrap());
        let scale = Scale::of(&beam, &loads);
        for at in places(&beam) {
            let parts = left_and_right(&some, at).into_iter().zip(left_and_right(&rest, at));
            for (whole, (one, other)) in left_and_right(&all, at).iter().zip(parts) {
                let sum = Section {
                    at,
                    shear: one.shear + other.shear,
                    moment: one.moment + other.moment,
                    slope: one.slope + other.slope,
                    deflection: one.deflection + other.deflection,
                };
                scale.check(whole, &sum)?;
            }
        }
    }

    #[test]
    fn results_grow_with_the_loads((beam, loads) in loaded_beams(), factor in -3.0..3.0) {
        let more: Vec<Load> = loads.iter().map(|load| scaled(load, factor)).collect();
        let (once, more) = (beam.solve(&loads).unwrap(), beam.solve(&more).unwrap());
        let scale = Scale::of(&beam, &loads);
        for at in places(&beam) {
            let (one, other) = (once.just_left_of(at).unwrap(), more.just_left_of(at).unwrap());
            let expected = Section {
                shear: one.shear * factor,
                moment: one.moment * factor,
                slope: one.slope * factor,
                deflection: one.deflection * factor,
                ..other
            };
            scale.check(&other, &expected)?;
        }
    }

    #[test]
    fn a_mirrored_beam_gives_mirrored_results((beam, loads) in loaded_beams()) {
        let (twin, twin_loads) = mirrored(&beam, &loads);
        let (solution, twin) = (beam.solve(&loads).unwrap(), twin.solve(&twin_loads).unwrap());
        let scale = Scale::of(&beam, &loads);
        for (one, other) in solution.reactions().iter().zip(twin.reactions().iter().rev()) {
            prop_assert!((one.force - other.force).pounds().abs() <= ROUNDING * scale.force);
            prop_assert!((one.moment + other.moment).inch_pounds().abs() <= ROUNDING * scale.moment);
        }
        // Between the marks, where rounding of `length - at` cannot put a load on the other side.
        for share in [0.0171, 0.2113, 0.4337, 0.6161, 0.8819] {
            let at = beam.length() * share;
            let one = solution.just_left_of(at).unwrap();
            let other = twin.just_right_of(beam.length() - at).unwrap();
            scale.check(&one, &Section { shear: -other.shear, slope: -other.slope, ..other })?;
        }
    }

    /// A load here bends the beam there as much as the same load there bends it here.
    #[test]
    fn deflections_are_reciprocal(beam in beams(), one in 0.0..1.0, other in 0.0..1.0) {
        let [one, other]: [Length; 2] = [one, other].map(|share: f64| beam.length() * share);
        let [there, here] = [(one, other), (other, one)].map(|(at, seen)| {
            let solution = beam.solve(&[point(at.inches(), 1000.0)]).unwrap();
            solution.just_left_of(seen).unwrap().deflection
        });
        let scale = Scale::of(&beam, &[point(0.0, 1000.0)]).deflection;
        prop_assert!((there - here).inches().abs() <= ROUNDING * scale, "{there:?} and {here:?}");
    }

    #[test]
    fn the_beam_is_unbroken_and_rests_on_its_supports((beam, loads) in loaded_beams()) {
        let solution = beam.solve(&loads).unwrap();
        let scale = Scale::of(&beam, &loads);
        let sections = solution.diagram(0);
        for pair in sections.windows(2).filter(|pair| pair[0].at == pair[1].at) {
            scale.check(&pair[0], &Section { shear: pair[0].shear, moment: pair[0].moment, ..pair[1] })?;
        }
        for support in beam.supports() {
            for section in left_and_right(&solution, support.at) {
                prop_assert_eq!(section.deflection, Length::ZERO);
                prop_assert!(support.restraint == Restraint::Simple || section.slope.abs() <= ROUNDING * scale.slope);
            }
        }
    }

    /// Extremes are met where they are said to be, and no place in between goes beyond them.
    #[test]
    fn no_place_is_beyond_the_extremes((beam, loads) in loaded_beams()) {
        let solution = beam.solve(&loads).unwrap();
        let scale = Scale::of(&beam, &loads);
        let extremes = solution.extremes();
        for section in solution.diagram(17) {
            let (shear, moment) = (section.shear.abs().pounds(), section.moment.inch_pounds());
            let (force, bend) = (ROUNDING * scale.force, ROUNDING * scale.moment);
            let deflection = section.deflection.inches();
            prop_assert!(shear <= extremes.largest_shear.value.pounds() + force);
            prop_assert!(moment <= extremes.maximum_moment.value.inch_pounds() + bend);
            prop_assert!(moment >= extremes.minimum_moment.value.inch_pounds() - bend);
            prop_assert!(deflection <= extremes.most_down.value.inches() + ROUNDING * scale.deflection);
            prop_assert!(deflection >= extremes.most_up.value.inches() - ROUNDING * scale.deflection);
        }
        for extreme in [extremes.maximum_moment, extremes.minimum_moment] {
            let here = left_and_right(&solution, extreme.at).map(|section| section.moment - extreme.value);
            prop_assert!(here.iter().any(|off| off.abs().inch_pounds() <= ROUNDING * scale.moment), "{extreme:?}");
        }
        for extreme in [extremes.most_down, extremes.most_up] {
            let here = solution.just_left_of(extreme.at).unwrap().deflection - extreme.value;
            prop_assert!(here.inches().abs() <= ROUNDING * scale.deflection, "{extreme:?}");
        }
    }

    #[test]
    fn a_longer_simple_span_never_bends_less(
        span in 12.0..360.0,
        more in 0.0..60.0,
        plf in 1.0..2000.0,
        ei in 1e6..1e10,
    ) {
        let (load, ei) = (LineLoad::from_plf(plf), FlexuralRigidity::from_pound_square_inches(ei));
        let [short, long] = [span, span + more].map(|span| simple_span_uniform(load, inches(span), ei));
        prop_assert!(long.reaction >= short.reaction);
        prop_assert!(long.moment >= short.moment);
        prop_assert!(long.deflection >= short.deflection);
    }

    #[test]
    fn the_quick_way_agrees_with_the_general_one(span in 1.0..600.0, plf in -2000.0..2000.0, ei in 1e6..1e10) {
        let (load, ei) = (LineLoad::from_plf(plf), FlexuralRigidity::from_pound_square_inches(ei));
        let quick = simple_span_uniform(load, inches(span), ei);
        let beam = Beam::simple_span(inches(span), ei).unwrap();
        let general = beam.solve(&[beam.uniform(load)]).unwrap();
        let middle = general.just_left_of(inches(span / 2.0)).unwrap();
        let pairs = [
            (general.reactions()[0].force.pounds(), quick.reaction.pounds()),
            (general.reactions()[1].force.pounds(), quick.reaction.pounds()),
            (general.extremes().largest_shear.value.pounds(), quick.reaction.pounds().abs()),
            (middle.moment.inch_pounds(), quick.moment.inch_pounds()),
            (general.extremes().largest_moment().value.inch_pounds(), quick.moment.inch_pounds().abs()),
            (middle.deflection.inches(), quick.deflection.inches()),
            (general.extremes().largest_deflection().value.inches(), quick.deflection.inches().abs()),
        ];
        for (general, quick) in pairs {
            prop_assert!((general - quick).abs() <= ROUNDING * quick.abs(), "{general} and {quick}");
        }
    }

    #[test]
    fn stretches_cover_the_beam_once(beam in beams()) {
        let solution = beam.solve(&[]).unwrap();
        let stretches = solution.stretches();
        prop_assert_eq!(stretches[0].from, Length::ZERO);
        prop_assert_eq!(stretches[stretches.len() - 1].to, beam.length());
        prop_assert!(stretches.windows(2).all(|pair| pair[0].to == pair[1].from));
        let spans = stretches.iter().filter(|stretch| stretch.kind == StretchKind::Span).count();
        prop_assert_eq!(spans + 1, beam.supports().len());
    }

    #[test]
    fn a_diagram_runs_from_left_to_right_with_its_extremes((beam, loads) in loaded_beams(), between in 0u16..40) {
        let solution = beam.solve(&loads).unwrap();
        let sections = solution.diagram(between);
        prop_assert!(sections.windows(2).all(|pair| pair[0].at <= pair[1].at));
        prop_assert_eq!(sections[0].at, Length::ZERO);
        prop_assert_eq!(sections[sections.len() - 1].at, beam.length());
        let extremes = solution.extremes();
        prop_assert!(sections.iter().any(|section| section.moment == extremes.maximum_moment.value));
        prop_assert!(sections.iter().any(|section| section.moment == extremes.minimum_moment.value));
        prop_assert!(sections.iter().any(|section| section.deflection == extremes.most_down.value));
        prop_assert!(sections.iter().any(|section| section.shear.abs() == extremes.largest_shear.value));
    }
}
