//! What must hold for every nail in every joint.
//!
//! Diameters are compared within a step of the table of bending yield strengths, and on one side of 10 diameters of
//! penetration: across either, the standard itself steps down.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

use fastening::{
    Driven, Joint, MainMember, Nail, NailConditions, ShortPenetration, SideMember, Wood, WoodPanel, lateral_value,
    worth,
};
use measure::Length;
use proptest::prelude::*;

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

fn joint(side: Wood, thickness: f64, main: f64) -> Joint {
    Joint::face_nailed(SideMember::wood(side, inches(thickness)), Wood::SpecificGravity(main))
}

fn pounds(diameter: f64, length: f64, joint: &Joint) -> Option<f64> {
    let nail = Nail::new(inches(diameter), inches(length)).unwrap();
    lateral_value(nail, joint).ok().map(|found| found.adjusted.pounds())
}

fn sides() -> impl Strategy<Value = (Wood, f64)> {
    let panels = (prop::sample::select(WoodPanel::ALL.to_vec()), 0.25..1.25_f64);
    let lumber = (0.35..0.6_f64, 0.75..2.5_f64);
    prop_oneof![
        panels.prop_map(|(panel, thickness)| (Wood::Panel(panel), thickness)),
        lumber.prop_map(|(gravity, thickness)| (Wood::SpecificGravity(gravity), thickness)),
    ]
}

fn driven() -> impl Strategy<Value = Driven> {
    prop::sample::select(vec![Driven::Face, Driven::EndGrain, Driven::Toe])
}

/// Two numbers, the smaller first.
fn ordered(range: core::ops::Range<f64>) -> impl Strategy<Value = (f64, f64)> {
    (range.clone(), range).prop_map(|(a, b)| (a.min(b), a.max(b)))
}

/// Two diameters of one step of bending yield strength, the smaller first.
fn diameters_of_one_step() -> impl Strategy<Value = (f64, f64)> {
    prop_oneof![ordered(0.099..0.142), ordered(0.1421..0.177), ordered(0.1771..0.236)]
}

/// No weaker, but for the last bits.
fn no_weaker(more: f64, less: f64) -> bool {
    more >= less * (1.0 - 1e-12)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    /// A longer nail is never weaker, and never refused where a shorter one is taken.
    #[test]
    fn longer_is_never_weaker(
        (side, thickness) in sides(), main in 0.35..0.6, diameter in 0.099..0.236, length in ordered(1.0..6.0),
        driven in driven(),
    ) {
        let joint = Joint { driven, ..joint(side, thickness, main) };
        if let Some(short) = pounds(diameter, length.0, &joint) {
            let long = pounds(diameter, length.1, &joint).unwrap();
            prop_assert!(no_weaker(long, short), "{} to {}", short, long);
        }
    }

    /// Denser wood on either side is never weaker.
    #[test]
    fn denser_is_never_weaker(
        thickness in 0.5..2.0, diameter in 0.099..0.236, length in 2.0..6.0, side in ordered(0.35..0.6),
        main in ordered(0.35..0.6),
    ) {
        let of = |side: f64, main: f64| pounds(diameter, length, &joint(Wood::SpecificGravity(side), thickness, main));
        if let Some(light) = of(side.0, main.0) {
            prop_assert!(no_weaker(of(side.1, main.0).unwrap(), light));
            prop_assert!(no_weaker(of(side.0, main.1).unwrap(), light));
        }
    }

    /// A thicker nail is never weaker within a step, when both go in whole.
    #[test]
    fn thicker_is_never_weaker(
        (side, thickness) in sides(), main in 0.35..0.6, diameters in diameters_of_one_step(), past in 0.0..3.0,
    ) {
        let length = thickness + 10.0 * diameters.1 + past;
        prop_assume!((0.75..=12.0).contains(&length));
        let joint = joint(side, thickness, main);
        let [thin, thick] = [diameters.0, diameters.1].map(|diameter| pounds(diameter, length, &joint).unwrap());
        prop_assert!(no_weaker(thick, thin), "{} to {}", thin, thick);
    }

    /// The yield value is the least of the modes, the reference value is it times the share, and no mode is nothing.
    #[test]
    fn the_weakest_mode_governs(
        (side, thickness) in sides(), main in 0.35..0.6, diameter in 0.099..0.236, length in 1.0..6.0,
        driven in driven(),
    ) {
        let joint = Joint { driven, ..joint(side, thickness, main) };
        let nail = Nail::new(inches(diameter), inches(length)).unwrap();
        let Ok(found) = lateral_value(nail, &joint) else { return Ok(()) };
        let modes = found.limits.values.map(|value| value.value.value.pounds());
        let least = modes.into_iter().fold(f64::INFINITY, f64::min);
        let governing = found.limits.governing();
        prop_assert!(least > 0.0);
        prop_assert_eq!(governing.value.value.pounds(), least);
        prop_assert_eq!(governing.mode, found.mode);
        let share = match found.short_penetration {
            ShortPenetration::Share(share) => share.value,
            ShortPenetration::Full | ShortPenetration::WithoutPoint(_) => 1.0,
        };
        prop_assert_eq!(found.reference.pounds(), least * share);
        prop_assert!(found.adjusted <= found.reference);
        let full = found.reach.penetration >= found.reach.full.value;
        prop_assert!(full == (found.short_penetration == ShortPenetration::Full) || (share - 1.0).abs() < 1e-6);
    }

    /// Where the main member is thin, a longer nail gains nothing and a thicker member does.
    #[test]
    fn a_thicker_main_member_is_never_weaker(
        (side, thickness) in sides(), main in 0.35..0.6, diameter in 0.099..0.236, length in 2.0..6.0,
        members in ordered(0.6..6.0),
    ) {
        let of = |member: f64| {
            let joint = joint(side, thickness, main);
            pounds(diameter, length, &Joint { main: MainMember { thickness: Some(inches(member)), ..joint.main }, ..joint })
        };
        if let Some(thin) = of(members.0) {
            prop_assert!(no_weaker(of(members.1).unwrap(), thin));
        }
    }

    /// The spacing gives back at least the strength that was asked for, on a half inch, and never a wider one.
    #[test]
    fn spacing_and_number_make_up_for_the_nail(
        (side, thickness) in sides(), main in 0.35..0.6, found in 0.099..0.2, required in 0.099..0.2,
        halves in 4_u32..=24, count in 1_u32..40,
    ) {
        let joint = joint(side, thickness, main);
        let nail = |diameter| Nail::new(inches(diameter), inches(5.0)).unwrap();
        let swap = worth(nail(found), nail(required), &joint).unwrap();
        let spacing = inches(f64::from(halves) / 2.0);
        let at = swap.equivalent_spacing(spacing);
        prop_assert!(at.exact <= spacing);
        if let Some(practical) = at.practical {
            prop_assert!(practical <= spacing && (practical.inches() * 2.0).fract() == 0.0);
            prop_assert!(no_weaker(swap.found.adjusted / practical.inches() / (swap.required.adjusted / spacing.inches()), 1.0 - 1e-8));
        }
        let nails = swap.replacements(count);
        prop_assert!(nails >= count);
        prop_assert!(f64::from(nails) * swap.ratio >= f64::from(count) * (1.0 - 1e-8));
        // One fewer would not do.
        prop_assert!(nails == count || f64::from(nails - 1) * swap.ratio < f64::from(count));
    }

    /// Lateral value scales with the factors alone: the same reference value under every condition.
    #[test]
    fn conditions_do_not_change_the_reference(
        (side, thickness) in sides(), main in 0.35..0.6, diameter in 0.099..0.236,
        duration in prop::sample::select(fastening::LoadDuration::ALL.to_vec()),
    ) {
        let plain = joint(side, thickness, main);
        let nail = Nail::new(inches(diameter), inches(5.0)).unwrap();
        let conditions = NailConditions { duration, ..NailConditions::REFERENCE };
        let [a, b] = [plain, Joint { conditions, ..plain }].map(|joint| lateral_value(nail, &joint).unwrap());
        prop_assert_eq!(a.reference, b.reference);
        prop_assert!((b.adjusted / a.adjusted - duration.factor().value.min(1.6)).abs() < 1e-12);
    }
}
