//! Nails through steel plates.

#![expect(clippy::unwrap_used, reason = "a panic in a test is the report")]

use fastening::{
    Driven, FasteningError, Joint, LoadDuration, NailConditions, SideMember, Wood, YieldMode, lateral_value, read_nail,
};
use lumber::Species;
use measure::{Length, Stress};
use standards::nds_2018::chapter_12::{PLATE_ULTIMATE, SHEET_ULTIMATE, gauge_thickness};

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

/// 16 gauge strap on a species.
fn strap(species: Species) -> Joint {
    let thickness = gauge_thickness(16).unwrap().value;
    Joint::face_nailed(SideMember::steel(SHEET_ULTIMATE, thickness), Wood::Lumber(species))
}

/// Source: NDS 2018 Table 12P, 16 gauge, 10d common, its equations worked by other means: SP 125.6, DF-L 116.1, HF
/// 102.1, SPF 100.1, SPF-S 88.3 lb.
#[test]
fn a_strap() {
    let nail = read_nail("10d common").unwrap().nail;
    let rows = [
        (Species::SouthernPine, 125.6),
        (Species::DouglasFirLarch, 116.1),
        (Species::HemFir, 102.1),
        (Species::SprucePineFir, 100.1),
        (Species::SprucePineFirSouth, 88.3),
    ];
    for (species, computed) in rows {
        // 1-1/2 in of penetration are over 10 diameters; the rest of the nail changes nothing.
        let found = lateral_value(nail, &strap(species)).unwrap();
        assert!((found.adjusted.pounds() - computed).abs() <= 0.05, "{species:?} {}", found.adjusted.pounds());
        assert_eq!((found.mode, found.side_strength.value.psi()), (YieldMode::IIIs, 61_875.0));
        let wind = NailConditions { duration: LoadDuration::TenMinutes, ..NailConditions::REFERENCE };
        let in_wind = lateral_value(nail, &Joint { conditions: wind, ..strap(species) }).unwrap();
        assert!((in_wind.adjusted / found.adjusted - 1.6).abs() < 1e-12);
    }
}

/// A thicker plate of the same steel is never weaker, up to the step to plate strength and past it.
#[test]
fn a_thicker_plate() {
    let nail = read_nail("16d common").unwrap().nail;
    let pounds = |thickness: f64| {
        let side = SideMember::steel(PLATE_ULTIMATE, inches(thickness));
        let joint = Joint { side, ..strap(Species::DouglasFirLarch) };
        lateral_value(nail, &joint).unwrap().adjusted.pounds()
    };
    let values: Vec<_> = (1..=40).map(|step| pounds(f64::from(step) / 40.0)).collect();
    assert!(values.windows(2).all(|pair| pair[1] >= pair[0] * (1.0 - 1e-12)), "{values:?}");
    assert!(values.last() > values.first());
}

#[test]
fn refused() {
    let nail = read_nail("10d common").unwrap().nail;
    let joint = strap(Species::SprucePineFir);
    let toe = lateral_value(nail, &Joint { driven: Driven::Toe, ..joint });
    assert_eq!(toe, Err(FasteningError::ToeNailThroughSteel));
    for side in
        [SideMember::steel(SHEET_ULTIMATE, inches(1.5)), SideMember::steel(Stress::from_psi(20_000.0), inches(0.06))]
    {
        let refused = lateral_value(nail, &Joint { side, ..joint }).unwrap_err();
        assert!(matches!(refused, FasteningError::OutsideLimits(_)), "{refused}");
    }
    let none = SideMember::steel(SHEET_ULTIMATE, Length::ZERO);
    assert!(lateral_value(nail, &Joint { side: none, ..joint }).is_err());
}
