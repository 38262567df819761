//! Loads along a header, against published and recomputed cases.

use loads::{
    combination::AsdCombination,
    header::{CaseLoads, HeaderSupport, LoadOf, LoadPart, MadeOf, Tributary, line_loads},
    site::{AtticLive, SiteLoads, SnowFactors, WallAbove},
    snow::LowSlope,
};
use measure::{AreaLoad, Length, LineLoad};
use standards::asce7_16::chapter_2::{Combination, LoadCase};

fn feet(feet: f64) -> Length {
    Length::from_feet(feet)
}

fn psf(psf: f64) -> AreaLoad {
    AreaLoad::from_psf(psf)
}

fn agrees(found: LineLoad, printed: f64, half_digit: f64) {
    assert!((found.plf() - printed).abs() <= half_digit, "{} against {printed}", found.plf());
}

/// The site of the field case on an enlarged door opening.
fn door_opening() -> SiteLoads {
    SiteLoads {
        roof_dead: psf(15.0),
        ceiling_dead: psf(0.0),
        attic_live: AtticLive::given(psf(0.0)),
        wall_above: WallAbove::PerStorey(LineLoad::from_plf(75.0)),
        ground_snow: psf(55.0),
        // The case takes a heated roof: 0.7 x 55.
        snow: SnowFactors { thermal: 1.0, ..SiteLoads::assumed().snow },
        ..SiteLoads::assumed()
    }
}

/// Source: field case FC-01, an enlarged door opening: 20 ft building, 1 ft overhang, 55 psf ground snow; D 340, L 400,
/// S 423.5 and 957.6 plf.
#[test]
fn one_clear_span_floor_and_roof() {
    let tributary = Tributary::of_building(HeaderSupport::OneFloorClearSpan, feet(20.0), feet(1.0));
    let found = line_loads(&tributary, &door_opening());
    agrees(found.cases.dead, 340.0, 0.5);
    agrees(found.cases.live, 400.0, 0.5);
    agrees(found.cases.snow, 423.5, 0.05);
    agrees(AsdCombination::of(Combination::DeadLiveSnow).total(&found.cases), 957.6, 0.05);
    let roof = found.parts[0];
    let made_of = MadeOf::Strip { intensity: psf(15.0), width: feet(11.0), times: 1 };
    assert_eq!((roof.what, roof.case, roof.made_of), (LoadOf::RoofDead, LoadCase::Dead, made_of));
    assert!(found.parts.iter().all(|part| part.load > LineLoad::ZERO), "{:?}", found.parts);
}

/// Source: practitioner's question on header loads: trusses of 28 ft, 40 psf snow and 15 psf dead give 770 plf; the
/// same with a 2 ft overhang 880.
#[test]
fn trusses_of_28_ft() {
    let site = SiteLoads { given_roof_snow: Some(psf(40.0)), ..door_opening() };
    for (overhang, printed) in [(0.0, 770.0), (2.0, 880.0)] {
        let tributary = Tributary::of_building(HeaderSupport::RoofCeiling, feet(28.0), feet(overhang));
        let loads = line_loads(&tributary, &site).cases;
        agrees(AsdCombination::of(Combination::DeadSnow).total(&loads), printed, 0.5);
    }
}

/// Source: a university's building program, calculating loads on headers: 14 ft of roof, snow 50 and dead 15 psf: 700
/// and 210, together 910 plf.
#[test]
fn a_given_strip_of_roof() {
    let site = SiteLoads { given_roof_snow: Some(psf(50.0)), ..door_opening() };
    let tributary =
        Tributary::of_building(HeaderSupport::RoofCeiling, feet(30.0), feet(2.0)).with_roof(feet(14.0), feet(2.0));
    assert_eq!(tributary.ceiling, feet(12.0));
    let loads = line_loads(&tributary, &site).cases;
    agrees(loads.snow, 700.0, 0.5);
    agrees(loads.dead, 210.0, 0.5);
    agrees(AsdCombination::of(Combination::DeadSnow).total(&loads), 910.0, 0.5);
}

/// Strips of a 24 ft building with a 2 ft overhang, by hand: roof, ceiling, each floor, floors, storeys of wall.
#[test]
fn strips_by_support() {
    for (support, [roof, ceiling, floor], [floors, walls_above]) in [
        (HeaderSupport::RoofCeiling, [14.0, 12.0, 0.0], [0, 0]),
        (HeaderSupport::OneFloorCenterBearing, [14.0, 12.0, 6.0], [1, 1]),
        (HeaderSupport::OneFloorClearSpan, [14.0, 12.0, 12.0], [1, 1]),
        (HeaderSupport::TwoFloorsCenterBearing, [14.0, 12.0, 6.0], [2, 2]),
        (HeaderSupport::TwoFloorsClearSpan, [14.0, 12.0, 12.0], [2, 2]),
        (HeaderSupport::FloorOnly, [0.0, 0.0, 12.0], [1, 1]),
        (HeaderSupport::InteriorOneFloor, [0.0, 0.0, 12.0], [1, 0]),
        (HeaderSupport::InteriorTwoFloors, [0.0, 0.0, 12.0], [2, 1]),
        (HeaderSupport::GableEnd, [0.0, 0.0, 0.0], [0, 1]),
    ] {
        let [roof, ceiling, floor] = [roof, ceiling, floor].map(feet);
        let expected = Tributary { roof, ceiling, floor, floors, walls_above };
        assert_eq!(Tributary::of_building(support, feet(24.0), feet(2.0)), expected, "{support:?}");
        assert_eq!(HeaderSupport::from_id(support.id()), Some(support));
    }
    assert_eq!(HeaderSupport::from_id("roof"), None);
}

/// Source: IRC 2018 Table R602.7(2), whose columns work back to 50 psf on half the building, 600 plf at 24 ft, and with
/// two floors to 1320 plf: 1200 and a wall of 120.
#[test]
fn an_inner_bearing_wall() {
    let site = SiteLoads { wall_above: WallAbove::PerStorey(LineLoad::from_plf(120.0)), ..SiteLoads::assumed() };
    let total = |support| {
        let tributary = Tributary::of_building(support, feet(24.0), feet(2.0));
        AsdCombination::of(Combination::DeadLive).total(&line_loads(&tributary, &site).cases)
    };
    agrees(total(HeaderSupport::InteriorOneFloor), 600.0, 0.5);
    agrees(total(HeaderSupport::InteriorTwoFloors), 1320.0, 0.5);
}

#[test]
fn a_given_wall_weight_is_the_whole_of_it() {
    let site = SiteLoads { wall_above: WallAbove::Total(LineLoad::from_plf(90.0)), ..SiteLoads::assumed() };
    for support in [HeaderSupport::RoofCeiling, HeaderSupport::TwoFloorsClearSpan] {
        let found = line_loads(&Tributary::of_building(support, feet(24.0), feet(2.0)), &site);
        let wall: Vec<&LoadPart> = found.parts.iter().filter(|part| part.what == LoadOf::Wall).collect();
        assert_eq!(wall.len(), 1);
        assert_eq!((wall[0].load, wall[0].made_of), (LineLoad::from_plf(90.0), MadeOf::Given));
    }
}

/// Source: IRC 2021 Table R301.5: an attic without storage acts alone, one with storage counts as live load.
#[test]
fn an_attic_by_its_use() {
    let tributary = Tributary::of_building(HeaderSupport::RoofCeiling, feet(24.0), feet(2.0));
    let cases = |load| {
        let site = SiteLoads { attic_live: AtticLive::given(psf(load)), ..SiteLoads::assumed() };
        line_loads(&tributary, &site).cases
    };
    assert_eq!((cases(10.0).live, cases(10.0).attic_alone), (LineLoad::ZERO, LineLoad::from_plf(120.0)));
    assert_eq!((cases(20.0).live, cases(20.0).attic_alone), (LineLoad::from_plf(240.0), LineLoad::ZERO));
}

#[test]
fn parts_add_up_and_a_wider_building_or_more_snow_never_weighs_less() {
    let of = |support, width, ground| {
        let mut site = SiteLoads { ground_snow: psf(ground), ..SiteLoads::assumed() };
        site.snow.low_slope = LowSlope::No;
        line_loads(&Tributary::of_building(support, feet(width), feet(2.0)), &site)
    };
    let each = |loads: &CaseLoads| [loads.dead, loads.live, loads.roof_live, loads.snow, loads.attic_alone];
    for support in HeaderSupport::ALL {
        for (width, ground) in [(12.0, 0.0), (12.0, 30.0), (24.0, 50.0), (36.0, 70.0)] {
            let here = of(support, width, ground);
            let parts: LineLoad = here.parts.iter().map(|part| part.load).sum();
            agrees(parts, each(&here.cases).into_iter().sum::<LineLoad>().plf(), 1e-9);
            for more in [of(support, width + 1.0, ground), of(support, width, ground + 1.0)] {
                let pairs = each(&here.cases).into_iter().zip(each(&more.cases));
                assert!(pairs.into_iter().all(|(less, more)| less <= more), "{support:?} {width} {ground}");
            }
        }
    }
}
