//! What must hold for every nail that is pulled, and for every swap.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

use fastening::{
    Driven, Joint, Nail, NailSpec, Pattern, Shank, SideMember, Wood, check_combined, lateral_value, swap, uplift_value,
    value_at_angle, withdrawal_value,
};
use measure::{Angle, Force, Length};
use proptest::prelude::*;

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

fn nail(diameter: f64, length: f64) -> Nail {
    Nail::new(inches(diameter), inches(length)).unwrap()
}

fn spec(diameter: f64, length: f64) -> NailSpec {
    NailSpec { head: Some(inches(diameter * 2.2)), ..NailSpec::smooth(nail(diameter, length)) }
}

fn joint(side: f64, thickness: f64, main: f64) -> Joint {
    let side = SideMember::wood(Wood::SpecificGravity(side), inches(thickness));
    Joint::face_nailed(side, Wood::SpecificGravity(main))
}

fn shanks() -> impl Strategy<Value = Shank> {
    prop_oneof![
        Just(Shank::Smooth),
        Just(Shank::SmoothStainless),
        (0.7..1.0_f64).prop_map(|ringed| Shank::RoofSheathingRing { ringed: inches(ringed) }),
        (0.7..1.0_f64).prop_map(|ringed| Shank::PostFrameRing { ringed: inches(ringed) }),
    ]
}

fn driven() -> impl Strategy<Value = Driven> {
    prop::sample::select(vec![Driven::Face, Driven::Toe])
}

/// Two numbers, the smaller first.
fn ordered(range: core::ops::Range<f64>) -> impl Strategy<Value = (f64, f64)> {
    (range.clone(), range).prop_map(|(a, b)| (a.min(b), a.max(b)))
}

/// No weaker, but for the last bits.
fn no_weaker(more: f64, less: f64) -> bool {
    more >= less * (1.0 - 1e-12)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    /// A longer nail is never weaker in withdrawal, and never refused where a shorter one is taken.
    #[test]
    fn longer_is_never_weaker(
        thickness in 0.375..2.0, main in 0.35..0.6, diameter in 0.099..0.236, length in ordered(1.0..6.0),
        shank in shanks(), driven in driven(),
    ) {
        let joint = Joint { driven, ..joint(0.5, thickness, main) };
        let of = |length| withdrawal_value(nail(diameter, length), shank, &joint).ok().map(|found| found.adjusted.pounds());
        if let Some(short) = of(length.0) {
            prop_assert!(no_weaker(of(length.1).unwrap(), short));
        }
    }

    /// Denser wood is never weaker, in the main member for the shank and in the side member for the head; nor is a
    /// thicker nail, nor a wider head.
    #[test]
    fn denser_and_thicker_are_never_weaker(
        thickness in 0.375..2.0, side in ordered(0.35..0.6), main in ordered(0.35..0.6), diameter in ordered(0.099..0.236),
        shank in shanks(), head in ordered(0.25..0.5),
    ) {
        let of = |side: f64, main: f64, diameter: f64, head: f64| {
            let spec = NailSpec { nail: nail(diameter, 5.0), shank, head: Some(inches(head)) };
            uplift_value(&spec, &joint(side, thickness, main)).unwrap()
        };
        let least = of(side.0, main.0, diameter.0, head.0);
        for more in [
            of(side.1, main.0, diameter.0, head.0),
            of(side.0, main.1, diameter.0, head.0),
            of(side.0, main.0, diameter.1, head.0),
            of(side.0, main.0, diameter.0, head.1),
        ] {
            prop_assert!(no_weaker(more.adjusted.pounds(), least.adjusted.pounds()));
        }
        let head = least.pull_through.as_ref().unwrap().adjusted;
        prop_assert_eq!(least.adjusted, least.withdrawal.adjusted.min(head));
    }

    /// A value at an angle is never over the larger of the two pure ones, nor under the smaller one by more than the
    /// root of 2: the shares of the two loads add up, so that a nail alike in both ways is weakest at 45 degrees.
    #[test]
    fn combined(
        thickness in 0.375..2.0, main in 0.35..0.6, diameter in 0.099..0.236, degrees in 0.0..90.0_f64,
        across in 0.0..200.0_f64, pull in 0.0..200.0_f64,
    ) {
        let joint = joint(0.5, thickness, main);
        let lateral = lateral_value(nail(diameter, 5.0), &joint).unwrap();
        let uplift = uplift_value(&spec(diameter, 5.0), &joint).unwrap();
        let (z, w) = (lateral.adjusted.pounds(), uplift.adjusted.pounds());
        let at = value_at_angle(&lateral, &uplift, Angle::from_degrees(degrees)).unwrap().value.pounds();
        prop_assert!(at <= z.max(w) * (1.0 + 1e-12), "{} {} {}", at, z, w);
        prop_assert!(at >= z.min(w) / 2.0_f64.sqrt() * (1.0 - 1e-12), "{} {} {}", at, z, w);
        let found = check_combined(&lateral, &uplift, Force::from_pounds(across), Force::from_pounds(pull)).unwrap();
        prop_assert!((found.share - (across / z + pull / w)).abs() < 1e-9);
    }

    /// Nails of a swap carry at least what was drawn, both ways, and never stand wider or fewer.
    #[test]
    fn swaps_carry_what_was_drawn(
        thickness in 0.375..2.0, main in 0.35..0.6, found in 0.099..0.2, required in 0.099..0.2, halves in 4_u32..=24,
        count in 1_u32..40, lengths in (4.0..6.0_f64, 4.0..6.0_f64),
    ) {
        let joint = joint(0.5, thickness, main);
        let (found, required) = (spec(found, lengths.0), spec(required, lengths.1));
        let drawn = inches(f64::from(halves) / 2.0);
        let line = swap(&found, &required, Pattern::OnCenter(drawn), &joint).unwrap();
        let pair = line.uplift.as_ref().unwrap();
        if let Some(Pattern::OnCenter(apart)) = line.pattern {
            prop_assert!(apart <= drawn);
            let more = drawn / apart;
            prop_assert!(more * line.lateral.ratio >= 1.0 - 1e-9 && more * pair.ratio >= 1.0 - 1e-9);
        }
        let joint_of = swap(&found, &required, Pattern::Count(count), &joint).unwrap();
        let Some(Pattern::Count(nails)) = joint_of.pattern else { panic!("no number") };
        let (nails, drawn) = (f64::from(nails), f64::from(count));
        prop_assert!(nails >= drawn);
        prop_assert!(nails * joint_of.ratio >= drawn * (1.0 - 1e-9));
        prop_assert!(nails == drawn || (nails - 1.0) * joint_of.ratio < drawn);
    }
}
