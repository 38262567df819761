//! Bolts of sills and of wood on wood. The rows of the tables themselves are tested where the equations are.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

use fastening::{
    BoltCaution, BoltError, BoltJoint, BoltMain, BoltPlace, BoltedWood, ConnectionMoisture, LoadDuration,
    NailConditions, ServiceMoisture, Wood, WoodPanel, bolt_value, needed_distances,
};
use lumber::Species;
use measure::{Angle, Length};
use proptest::prelude::*;

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

fn sill(species: Species, diameter: f64) -> BoltJoint {
    BoltJoint::sill(inches(diameter), Wood::Lumber(species), inches(1.5), inches(7.0))
}

fn across(joint: BoltJoint) -> BoltJoint {
    BoltJoint { side: BoltedWood { load_to_grain: Angle::from_degrees(90.0), ..joint.side }, ..joint }
}

fn pounds(joint: &BoltJoint) -> f64 {
    bolt_value(joint).unwrap().adjusted.pounds()
}

const WHOLE: BoltPlace = BoltPlace {
    end: Length::from_inches(12.0),
    toward_end: true,
    loaded_edge: Length::from_inches(2.75),
    unloaded_edge: Length::from_inches(2.75),
    in_row: None,
};

/// Source: NDS 2018 Table 12E, 1-1/2 in sill; computed to one decimal. Species SP, DF-L, HF, SPF, SPF-S.
#[test]
fn sills() {
    let species = [
        Species::SouthernPine,
        Species::DouglasFirLarch,
        Species::HemFir,
        Species::SprucePineFir,
        Species::SprucePineFirSouth,
    ];
    let rows = [
        (0.5, [683.5, 648.0, 594.7, 587.9, 542.6], [411.1, 381.3, 343.8, 337.4, 292.5]),
        (0.625, [971.9, 928.4, 862.7, 854.3, 798.0], [579.6, 525.0, 421.9, 412.5, 328.1]),
        (0.75, [1326.0, 1274.4, 1195.9, 1185.8, 1117.7], [663.8, 585.0, 461.2, 450.0, 360.0]),
    ];
    for (diameter, parallel, perpendicular) in rows {
        for ((species, parallel), perpendicular) in species.into_iter().zip(parallel).zip(perpendicular) {
            let joint = sill(species, diameter);
            for (joint, computed) in [(joint, parallel), (across(joint), perpendicular)] {
                let found = bolt_value(&joint).unwrap();
                assert!(
                    (found.reference.pounds() - computed).abs() <= 0.05 * (1.0 + 1e-9),
                    "{} {computed}",
                    found.reference.pounds()
                );
                assert_eq!(found.cautions, [BoltCaution::Concrete, BoltCaution::DistancesNotGiven]);
            }
        }
    }
}

/// Source: NDS 2018 §11.3.2 and Table 11.3.3: wind 1.6, wet in service 0.7.
#[test]
fn factors() {
    let joint = sill(Species::HemFir, 0.625);
    let wet = ConnectionMoisture { at_fabrication: ServiceMoisture::Dry, in_service: ServiceMoisture::Wet };
    let conditions = NailConditions { duration: LoadDuration::TenMinutes, moisture: wet, ..NailConditions::REFERENCE };
    let ratio = pounds(&BoltJoint { conditions, ..joint }) / pounds(&joint);
    assert!((ratio - 1.6 * 0.7).abs() < 1e-12);
}

/// Source: NDS 2018 Tables 12.5.1A to 12.5.1C (from memory), by hand for a 1/2 in bolt: 7 D are 3.5 in, so 2.8 in from
/// the end leave 0.8; 4 D between bolts are 2 in, so 1.5 in leave 0.75.
#[test]
fn distances() {
    let joint = sill(Species::DouglasFirLarch, 0.5);
    let placed = |piece, place| BoltedWood { place: Some(place), ..piece };
    let of = |place| bolt_value(&BoltJoint { side: placed(joint.side, place), ..joint });
    let share = |place| of(place).unwrap().adjusted.pounds() / pounds(&joint);
    assert!((share(WHOLE) - 1.0).abs() < 1e-12);
    assert_eq!(of(WHOLE).unwrap().cautions, [BoltCaution::Concrete]);
    let near_end = BoltPlace { end: inches(2.8), ..WHOLE };
    assert!((share(near_end) - 0.8).abs() < 1e-12);
    assert_eq!(of(near_end).unwrap().cautions, [BoltCaution::Concrete, BoltCaution::Close]);
    let away = BoltPlace { toward_end: false, ..near_end };
    assert!((share(away) - 1.0).abs() < 1e-12);
    assert!((share(BoltPlace { in_row: Some(inches(1.5)), ..near_end }) - 0.75).abs() < 1e-12);
    for (place, least) in [
        (BoltPlace { end: inches(1.74), ..WHOLE }, "1.75 in"),
        (BoltPlace { in_row: Some(inches(1.4)), ..WHOLE }, "1.5 in"),
        (BoltPlace { unloaded_edge: inches(0.7), ..WHOLE }, "0.75 in"),
    ] {
        let refused = of(place).unwrap_err().to_string();
        assert!(refused.contains(least), "{refused}");
    }
    // Across the grain, 4 D to the loaded edge: a bolt in the middle of a 2x4 sill has 1-3/4 in, 2 in are needed.
    let middle = BoltPlace { loaded_edge: inches(1.75), unloaded_edge: inches(1.75), ..WHOLE };
    let refused = bolt_value(&BoltJoint { side: placed(across(joint).side, middle), ..joint }).unwrap_err();
    assert!(matches!(refused, BoltError::TooClose { .. }));
    assert!(of(middle).is_ok());
    // Wood on wood at a right angle: each piece by its own grain. The side is pushed toward its end, 2.8 of 3.5 in; the
    // main member is pushed across its grain, where 2 in to the end do.
    let main = BoltedWood { place: Some(BoltPlace { end: inches(2.0), ..WHOLE }), ..across(joint).side };
    let crossed =
        |side: BoltedWood, main| bolt_value(&BoltJoint { side, main: BoltMain::Wood(main), ..joint }).unwrap();
    let both = crossed(placed(joint.side, near_end), main);
    assert!((both.adjusted / both.reference - 0.8).abs() < 1e-12);
    assert_eq!(both.cautions, [BoltCaution::Close]);
    let one = crossed(joint.side, main);
    assert_eq!((one.adjusted, one.cautions), (one.reference, vec![BoltCaution::DistancesNotGiven]));
    // Between along and across, the longer of both.
    let slant = needed_distances(inches(1.0), Angle::from_degrees(30.0), true).value;
    assert_eq!([slant.end.full, slant.loaded_edge].map(Length::inches), [7.0, 4.0]);
}

#[test]
fn refused() {
    let joint = sill(Species::HemFir, 0.5);
    let text = |joint| bolt_value(&joint).unwrap_err().to_string();
    let shallow = BoltMain::Concrete { embedment: inches(5.9) };
    assert!(text(BoltJoint { main: shallow, ..joint }).contains("5.9 in deep"));
    let panel = BoltedWood { wood: Wood::Panel(WoodPanel::Osb), ..joint.side };
    assert_eq!(bolt_value(&BoltJoint { side: panel, ..joint }), Err(BoltError::Panel));
    for thickness in [0.0, 12.1] {
        let side = BoltedWood { thickness: inches(thickness), ..joint.side };
        assert!(text(BoltJoint { side, ..joint }).contains("over 0, to 12 in"));
    }
    assert!(text(BoltJoint { diameter: inches(1.25), ..joint }).contains("1/4 to 1 in"));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(500))]

    /// A thicker bolt, and a load nearer to the grain, are never weaker in the same sill.
    #[test]
    fn thicker_and_along(
        gravity in 0.35..0.6_f64, thickness in 1.5..3.5_f64, thin in 0.5..0.75_f64, more in 0.0..0.25_f64,
        angle in 0.0..90.0_f64, turned in 0.0..90.0_f64,
    ) {
        let of = |diameter: f64, angle: f64| {
            let joint = BoltJoint::sill(inches(diameter), Wood::SpecificGravity(gravity), inches(thickness), inches(7.0));
            let side = BoltedWood { load_to_grain: Angle::from_degrees(angle), ..joint.side };
            pounds(&BoltJoint { side, ..joint })
        };
        prop_assert!(of(thin + more, 0.0) >= of(thin, 0.0) * (1.0 - 1e-12));
        prop_assert!(of(thin, angle.min(turned)) >= of(thin, angle.max(turned)) * (1.0 - 1e-12));
    }

    /// Wood on wood: which of two like pieces is called the main member changes nothing.
    #[test]
    fn either_piece_may_be_the_main_one(
        gravity in 0.35..0.6_f64, one in 1.5..3.5_f64, other in 1.5..3.5_f64, diameter in 0.25..1.0_f64,
        angle in 0.0..90.0_f64,
    ) {
        let piece = |thickness: f64| BoltedWood {
            wood: Wood::SpecificGravity(gravity),
            thickness: inches(thickness),
            load_to_grain: Angle::from_degrees(angle),
            place: None,
        };
        let of = |side, main| pounds(&BoltJoint {
            diameter: inches(diameter),
            side,
            main: BoltMain::Wood(main),
            conditions: NailConditions::REFERENCE,
        });
        let [a, b] = [of(piece(one), piece(other)), of(piece(other), piece(one))];
        prop_assert!((a - b).abs() <= 1e-9 * a, "{} {}", a, b);
    }
}
