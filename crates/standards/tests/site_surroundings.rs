//! Exposure, enclosure and corrosion: the rules at their limits.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

use measure::{Area, Length};
use proptest::prelude::*;
use standards::asce7_16::{
    chapter_26::{Enclosure, Exposure},
    chapter_26_7::{ExposureRule, Fetch, Stretch, SurfaceRoughness, exposure_rule},
    chapter_26_12::{Openings, enclosure},
};
use standards::irc_2021::r317_3::{Fastener, Protection, Treatment, fastener_may_be_in};
use standards::nfip_technical_bulletin_8::{COASTAL, CorrosionClass, MetalExposure, SHORE, corrosion_class};

use SurfaceRoughness::{B, C, D};

fn ft(value: f64) -> Length {
    Length::from_feet(value)
}

fn fetch(stretches: &[(SurfaceRoughness, f64)], beyond: SurfaceRoughness) -> Fetch {
    let stretches = stretches.iter().map(|&(roughness, feet)| Stretch { roughness, length: ft(feet) }).collect();
    Fetch { stretches, beyond }
}

fn rule(height: f64, stretches: &[(SurfaceRoughness, f64)], beyond: SurfaceRoughness) -> ExposureRule {
    exposure_rule(ft(height), &fetch(stretches, beyond)).unwrap()
}

/// Source: IBC 2018 1609.4.3 (federal compilation): 1,500 ft; 2,600 ft or 20 heights over 30 ft; 5,000 ft or 20
/// heights; within 600 ft or 20 heights. At the limit itself the harsher reading.
#[test]
fn exposures_at_their_limits() {
    use ExposureRule::{NearOpenGround, NeitherOfTheOthers, OpenFromTheHouse, SheltersHighHouse, SheltersLowHouse};
    for (height, stretches, beyond, expected) in [
        (30.0, &[(B, 1500.1)][..], C, SheltersLowHouse),
        (30.0, &[(B, 1500.0)], C, NeitherOfTheOthers),
        (30.1, &[(B, 2600.0)], C, NeitherOfTheOthers),
        (30.1, &[(B, 2600.1)], C, SheltersHighHouse),
        (30.1, &[], B, SheltersHighHouse),
        (140.0, &[(B, 2800.0)], C, NeitherOfTheOthers),
        (20.0, &[(B, 1000.0), (B, 600.0)], C, SheltersLowHouse),
        (20.0, &[(B, 1000.0), (C, 100.0)], B, NeitherOfTheOthers),
        (20.0, &[], D, OpenFromTheHouse),
        (20.0, &[(D, 5000.0)], B, OpenFromTheHouse),
        (20.0, &[(D, 4999.9)], B, NeitherOfTheOthers),
        (20.0, &[(D, 2500.0), (D, 2500.0)], C, OpenFromTheHouse),
        (20.0, &[(B, 600.0)], D, NearOpenGround),
        (20.0, &[(C, 600.1)], D, NeitherOfTheOthers),
        (35.0, &[(C, 700.0)], D, NearOpenGround),
        (20.0, &[(C, 300.0), (D, 5000.0)], B, NearOpenGround),
        (20.0, &[(C, 300.0), (D, 4000.0)], B, NeitherOfTheOthers),
        (20.0, &[(B, 1600.0)], D, SheltersLowHouse),
        (20.0, &[], C, NeitherOfTheOthers),
    ] {
        assert_eq!(rule(height, stretches, beyond), expected, "{height} ft, {stretches:?}, {beyond:?}");
    }
}

#[test]
fn ground_without_length_is_refused() {
    assert!(exposure_rule(ft(0.0), &Fetch::all(C)).is_err());
    let message = exposure_rule(ft(20.0), &fetch(&[(B, 0.0)], C)).unwrap_err().to_string();
    assert!(message.contains("shortest stretch 0 ft") && message.contains("map"), "{message}");
}

fn grounds() -> impl Strategy<Value = Vec<(SurfaceRoughness, f64)>> {
    prop::collection::vec((prop::sample::select(vec![B, C, D]), 1.0f64..4000.0), 0..6)
}

proptest! {
    /// A stretch cut in two is the same ground, and ground taken one step opener never shelters more.
    #[test]
    fn exposure_depends_on_the_ground_and_not_on_how_it_is_cut(
        height in 10.0f64..60.0,
        ground in grounds(),
        beyond in prop::sample::select(vec![B, C, D]),
        cut in any::<prop::sample::Index>(),
    ) {
        let before = rule(height, &ground, beyond).exposure();
        prop_assume!(!ground.is_empty());
        let index = cut.index(ground.len());
        let (roughness, feet) = ground[index];
        let mut halves = ground.clone();
        halves.splice(index..=index, [(roughness, feet / 2.0), (roughness, feet / 2.0)]);
        prop_assert_eq!(rule(height, &halves, beyond).exposure(), before);
        let mut opener = ground;
        opener[index].0 = if roughness == B { C } else { D };
        prop_assert!(rule(height, &opener, beyond).exposure() >= before);
    }
}

fn openings(open: f64, gross: f64) -> Openings {
    Openings { open: Area::from_square_feet(open), gross: Area::from_square_feet(gross) }
}

/// Source: ASCE 7-16 26.2 definitions, read in page text: 80 per cent; 1.10, 4 sq ft or 1 per cent, 20 per cent.
#[test]
fn enclosure_at_its_limits() {
    let roof = openings(0.0, 1200.0);
    let class = |open: [f64; 4]| enclosure(&open.map(|open| openings(open, 400.0)), &roof).unwrap();
    assert_eq!(class([0.0; 4]), Enclosure::Enclosed);
    assert_eq!(class([3.9, 3.9, 3.9, 3.9]), Enclosure::Enclosed);
    // At 4 sq ft, which is 1 per cent of the wall too, it is not enclosed any more.
    assert_eq!(class([4.0, 4.0, 4.0, 4.0]), Enclosure::PartiallyOpen);
    assert_eq!(class([60.0, 0.0, 0.0, 0.0]), Enclosure::PartiallyEnclosed);
    assert_eq!(class([60.0, 30.0, 20.0, 10.0]), Enclosure::PartiallyOpen);
    assert_eq!(class([66.1, 60.0, 0.0, 0.0]), Enclosure::PartiallyEnclosed);
    assert_eq!(class([66.0, 60.0, 0.0, 0.0]), Enclosure::PartiallyOpen);
    assert_eq!(class([320.0; 4]), Enclosure::Open);
    assert_eq!(class([319.9, 320.0, 320.0, 320.0]), Enclosure::PartiallyOpen);
    // Of a small wall 1 per cent is less than 4 sq ft: 100 sq ft takes 1 sq ft.
    let shed = [1.1, 0.0, 0.0, 0.0].map(|open| openings(open, 100.0));
    assert_eq!(enclosure(&shed, &roof), Ok(Enclosure::PartiallyEnclosed));
    // One wall that is open all over, under a roof without walls beside it, is open and not partially enclosed.
    assert_eq!(enclosure(&[openings(320.0, 400.0)], &roof), Ok(Enclosure::Open));
}

#[test]
fn openings_larger_than_their_wall_are_refused() {
    let roof = openings(0.0, 1000.0);
    let message = enclosure(&[openings(30.0, 20.0)], &roof).unwrap_err().to_string();
    assert!(message.contains("30 of 20 sq ft"), "{message}");
    assert!(enclosure(&[], &roof).is_err());
    assert!(enclosure(&[openings(1.0, 20.0)], &openings(0.0, 0.0)).is_err());
    assert!(enclosure(&[openings(-1.0, 20.0)], &roof).is_err());
}

/// Source: IRC R317.3.1, quoted by lumber suppliers and inspectors from the editions of 2003 to 2009.
#[test]
fn fasteners_in_treated_wood() {
    use Fastener::{HeavyBolt, NailOrRivet, Other};
    use Protection::{Copper, Electroplated, HotDipGalvanized, MechanicallyPlated, Plain, SiliconBronze, Stainless};
    for good in [HotDipGalvanized, Stainless, SiliconBronze, Copper] {
        assert!(fastener_may_be_in(NailOrRivet, good, Treatment::Other), "{good:?}");
    }
    for poor in [Plain, Electroplated, MechanicallyPlated, Protection::StandardGalvanized] {
        assert!(!fastener_may_be_in(NailOrRivet, poor, Treatment::Other), "{poor:?}");
        assert!(fastener_may_be_in(NailOrRivet, poor, Treatment::BorateDry), "{poor:?}");
        assert!(fastener_may_be_in(HeavyBolt, poor, Treatment::Other), "{poor:?}");
    }
    assert!(fastener_may_be_in(Other, MechanicallyPlated, Treatment::Other));
    assert!(!fastener_may_be_in(Other, Electroplated, Treatment::Other));
}

/// Source: NFIP Technical Bulletin 8, distances and classes from memory; and the field case of hangers under a raised
/// house 150 ft from salt water, sheltered from rain.
#[test]
fn metal_near_salt_water() {
    use CorrosionClass::{HotDipOrStainless, Stainless, Standard};
    assert_eq!(corrosion_class(ft(150.0), MetalExposure::PartlySheltered), Stainless);
    assert_eq!(MetalExposure::ALL.map(|exposure| corrosion_class(SHORE, exposure)), [Stainless; 4]);
    let farther = [HotDipOrStainless, Stainless, HotDipOrStainless, Standard];
    assert_eq!(MetalExposure::ALL.map(|exposure| corrosion_class(SHORE + ft(1.0), exposure)), farther);
    assert_eq!(MetalExposure::ALL.map(|exposure| corrosion_class(COASTAL, exposure)), farther);
    assert_eq!(MetalExposure::ALL.map(|exposure| corrosion_class(COASTAL + ft(1.0), exposure)), [Standard; 4]);
}

/// The exposure of a rule is the letter that it names.
#[test]
fn a_rule_names_its_exposure() {
    assert_eq!(ExposureRule::SheltersLowHouse.exposure(), Exposure::B);
    assert_eq!(ExposureRule::SheltersHighHouse.exposure(), Exposure::B);
    assert_eq!(ExposureRule::NeitherOfTheOthers.exposure(), Exposure::C);
    assert_eq!(ExposureRule::OpenFromTheHouse.exposure(), Exposure::D);
    assert_eq!(ExposureRule::NearOpenGround.exposure(), Exposure::D);
}
