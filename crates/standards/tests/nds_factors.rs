//! Adjustment factors of NDS 2018 and its Supplement, row by row as printed.

use measure::{Length, Stress};
use standards::{
    Status,
    nds_2018::{
        chapter_2::{LoadDuration, ServiceMoisture, SustainedTemperature, temperature_factors},
        chapter_3::{ColumnStage, Seasoning, column_slenderness_ratio, creep_factor, long_term_deflection},
        chapter_4::{
            LateralSupport, SizeFactorGrade, TimberGrade, dimension_wet_service_factors, end_notch_depth_limit,
            flat_use_factor, incising_factors, lateral_support_for_full_strength, repetitive_member_factor,
            size_factors, southern_pine_size_factors, timber_size_factor, timber_wet_service_factors,
            wide_face_factors,
        },
        chapter_5::{self, GlulamWood},
        chapter_8,
        chapter_15::{BowDirection, PlyFastening, built_up_column_factor},
    },
};

fn inches(value: f64) -> Length {
    Length::from_inches(value)
}

/// Table 2.3.2.
#[test]
fn load_duration() {
    let printed = [0.9, 1.0, 1.15, 1.25, 1.6, 2.0];
    assert_eq!(LoadDuration::ALL.map(|duration| duration.factor().value), printed);
    assert_eq!(LoadDuration::Impact.factor().source.status, Status::FromMemory);
    let names: std::collections::BTreeSet<_> = LoadDuration::ALL.map(LoadDuration::name).into();
    assert_eq!(names.len(), LoadDuration::ALL.len());
}

/// Table 2.3.3.
#[test]
fn temperature() {
    use {ServiceMoisture as M, SustainedTemperature as T};
    let rows = [
        (T::UpTo100F, M::Dry, (1.0, 1.0)),
        (T::UpTo100F, M::Wet, (1.0, 1.0)),
        (T::Over100To125F, M::Dry, (0.9, 0.8)),
        (T::Over100To125F, M::Wet, (0.9, 0.7)),
        (T::Over125To150F, M::Dry, (0.9, 0.7)),
        (T::Over125To150F, M::Wet, (0.9, 0.5)),
    ];
    for (temperature, service, printed) in rows {
        let found = temperature_factors(temperature, service).value;
        assert_eq!((found.tension_and_modulus, found.others), printed);
    }
}

/// Table 4A, size factor: Select Structural to No. 3. Width, `F_b` 2 and 3 in thick, `F_b` 4 in thick, `F_t`, `F_c`.
#[test]
fn size_factors_of_the_structural_grades() {
    let rows = [
        (2, 1.5, 1.5, 1.5, 1.15),
        (3, 1.5, 1.5, 1.5, 1.15),
        (4, 1.5, 1.5, 1.5, 1.15),
        (5, 1.4, 1.4, 1.4, 1.1),
        (6, 1.3, 1.3, 1.3, 1.1),
        (8, 1.2, 1.3, 1.2, 1.05),
        (10, 1.1, 1.2, 1.1, 1.0),
        (12, 1.0, 1.1, 1.0, 1.0),
        (14, 0.9, 1.0, 0.9, 0.9),
        (16, 0.9, 1.0, 0.9, 0.9),
    ];
    for (width, thin, thick, ft, fc) in rows {
        for (thickness, fb) in [(2, thin), (3, thin), (4, thick)] {
            let found = size_factors(SizeFactorGrade::Structural, thickness, width).unwrap().value;
            assert_eq!((found.fb, found.ft, found.fc), (fb, ft, fc), "{thickness}x{width}");
        }
    }
}

/// Table 4A, size factor: the other grades, and what the table does not hold.
#[test]
fn size_factors_of_the_other_grades() {
    use SizeFactorGrade as G;
    let found = |grade, thickness, width| {
        size_factors(grade, thickness, width).map(|found| (found.value.fb, found.value.ft, found.value.fc))
    };
    assert_eq!(found(G::Stud, 2, 4), Ok((1.1, 1.1, 1.05)));
    assert_eq!(found(G::Stud, 2, 6), Ok((1.0, 1.0, 1.0)));
    assert_eq!(found(G::ConstructionOrStandard, 2, 4), Ok((1.0, 1.0, 1.0)));
    assert_eq!(found(G::Utility, 2, 4), Ok((1.0, 1.0, 1.0)));
    assert_eq!(found(G::Utility, 2, 3), Ok((0.4, 0.4, 0.6)));
    for (grade, thickness, width) in [
        (G::Stud, 2, 8),
        (G::ConstructionOrStandard, 2, 6),
        (G::Utility, 2, 6),
        (G::Utility, 4, 3),
        (G::Structural, 6, 6),
        (G::Structural, 1, 4),
        (G::Structural, 2, 1),
    ] {
        assert!(found(grade, thickness, width).is_err(), "{grade:?} {thickness}x{width}");
    }
}

/// Table 4B, size factor.
#[test]
fn size_factors_of_southern_pine() {
    let rows = [
        (2, 4, 1.0, 1.0),
        (2, 12, 1.0, 1.0),
        (2, 14, 0.9, 0.9),
        (4, 6, 1.0, 1.0),
        (4, 8, 1.1, 1.0),
        (4, 12, 1.1, 1.0),
        (4, 14, 0.9 * 1.1, 0.9),
    ];
    for (thickness, width, fb, others) in rows {
        let found = southern_pine_size_factors(thickness, width).value;
        assert_eq!((found.fb, found.ft, found.fc), (fb, others, others), "{thickness}x{width}");
    }
}

/// Table 4D: no cut up to 12 in; the wide face of Beams & Stringers.
#[test]
fn factors_of_timbers() {
    assert_eq!(timber_size_factor(inches(12.0)).value, 1.0);
    assert!(timber_size_factor(inches(12.01)).value < 1.0);
    let faces = [TimberGrade::SelectStructural, TimberGrade::No1, TimberGrade::No2].map(|g| wide_face_factors(g).value);
    assert_eq!(faces.map(|found| (found.fb, found.e)), [(0.86, 1.0), (0.74, 0.90), (1.0, 1.0)]);
}

/// Tables 4A and 4B, flat use factor. Width, 2 and 3 in thick, 4 in thick.
#[test]
fn flat_use() {
    let rows = [
        (2, 1.0, None),
        (3, 1.0, None),
        (4, 1.1, Some(1.0)),
        (5, 1.1, Some(1.05)),
        (6, 1.15, Some(1.05)),
        (8, 1.15, Some(1.05)),
        (10, 1.2, Some(1.1)),
        (14, 1.2, Some(1.1)),
    ];
    for (width, thin, thick) in rows {
        assert_eq!(flat_use_factor(2, width).unwrap().value, thin, "2x{width}");
        assert_eq!(flat_use_factor(3, width).unwrap().value, thin, "3x{width}");
        assert_eq!(flat_use_factor(4, width).ok().map(|found| found.value), thick, "4x{width}");
    }
    assert!(flat_use_factor(6, 6).is_err());
}

/// Wet service factors: `F_b, F_t, F_v, F_c⊥, F_c, E`.
#[test]
fn wet_service() {
    let psi = Stress::from_psi;
    let row = |found: standards::nds_2018::chapter_4::WetServiceFactors| {
        [found.fb, found.ft, found.fv, found.fc_perp, found.fc, found.e]
    };
    let dimension = |fb, fc| row(dimension_wet_service_factors(psi(fb), psi(fc)).value);
    assert_eq!(dimension(1150.1, 750.1), [0.85, 1.0, 0.97, 0.67, 0.8, 0.9]);
    assert_eq!(dimension(1150.0, 750.0), [1.0, 1.0, 0.97, 0.67, 1.0, 0.9]);
    assert_eq!(row(timber_wet_service_factors(false).value), [1.0, 1.0, 1.0, 0.67, 0.91, 1.0]);
    assert_eq!(row(timber_wet_service_factors(true).value), [1.0; 6]);
    assert_eq!(row(chapter_5::wet_service_factors().value), [0.8, 0.8, 0.875, 0.53, 0.73, 0.833]);
}

/// Table 4.3.8, §4.3.9, §8.3.7.
#[test]
fn incising_and_load_sharing() {
    let found = incising_factors().value;
    assert_eq!((found.e, found.strength, found.fc_perp), (0.95, 0.80, 1.00));
    assert_eq!(repetitive_member_factor().value, 1.15);
    assert_eq!(chapter_8::repetitive_member_factor().value, 1.04);
}

/// §4.4.1.2: depth over breadth and what must hold the beam.
#[test]
fn lateral_support() {
    use LateralSupport as S;
    let rows = [
        ((4, 2), S::None),
        ((8, 4), S::None),
        ((6, 2), S::EndsHeld),
        ((8, 2), S::EndsHeld),
        ((10, 2), S::CompressionEdgeHeld),
        ((12, 2), S::CompressionEdgeHeldAndBlocked),
        ((14, 2), S::BothEdgesHeld),
    ];
    for ((depth, breadth), support) in rows {
        assert_eq!(lateral_support_for_full_strength(depth, breadth).unwrap().value, support, "{breadth}x{depth}");
    }
    assert!(lateral_support_for_full_strength(16, 2).is_err());
    assert!(lateral_support_for_full_strength(10, 0).is_err());
    assert_eq!(end_notch_depth_limit(inches(9.25)).value.inches(), 2.3125);
}

/// §3.5.2.
#[test]
fn creep() {
    let [dry, wet] = [Seasoning::Seasoned, Seasoning::UnseasonedOrWet].map(|seasoning| creep_factor(seasoning).value);
    assert_eq!((dry, wet), (1.5, 2.0));
    assert_eq!(long_term_deflection(dry, inches(0.2), inches(0.1)).value, 1.5 * inches(0.2) + inches(0.1));
}

/// §15.3.2 and its limits.
#[test]
fn built_up_columns() {
    use {BowDirection as B, PlyFastening as F};
    let factor = |plies, thickness, fastening, bow| {
        built_up_column_factor(plies, inches(thickness), fastening, bow).map(|found| found.value)
    };
    assert_eq!(factor(2, 1.5, F::Nailed, B::AcrossPlies), Ok(0.6));
    assert_eq!(factor(5, 1.5, F::Bolted, B::AcrossPlies), Ok(0.75));
    assert_eq!(factor(3, 1.5, F::Nailed, B::AlongPlies), Ok(1.0));
    assert!(factor(1, 1.5, F::Nailed, B::AlongPlies).is_err());
    assert!(factor(6, 1.5, F::Nailed, B::AlongPlies).is_err());
    assert!(factor(3, 1.25, F::Nailed, B::AlongPlies).is_err());
}

/// Volume factors at the sizes they start from, and past their limits.
#[test]
fn volume_factors() {
    let glulam = |length, depth, breadth| {
        chapter_5::volume_factor(GlulamWood::Other, Length::from_feet(length), inches(depth), inches(breadth))
            .map(|found| found.value)
    };
    assert_eq!(glulam(21.0, 12.0, 5.125), Ok(1.0));
    assert_eq!(glulam(10.0, 12.0, 3.5), Ok(1.0));
    assert_eq!(glulam(40.0, 30.0, 12.25), glulam(40.0, 30.0, 10.75));
    assert!(glulam(0.0, 12.0, 5.125).is_err());
    assert_eq!(chapter_8::depth_factor(0.136, inches(12.0)).unwrap().value, 1.0);
    assert!(chapter_8::depth_factor(0.21, inches(12.0)).is_err());
    assert!(chapter_8::depth_factor(0.136, Length::ZERO).is_err());
    assert_eq!(chapter_5::flat_use_factor(inches(12.0)).value, 1.0);
}

/// A refusal says what was given, what is covered, where that stands, and what to do.
#[test]
fn a_refusal_is_two_sentences_with_a_next_step() {
    let ratio = column_slenderness_ratio(inches(180.25), inches(3.5), ColumnStage::InService);
    assert_eq!(
        ratio.unwrap_err().to_string(),
        "Given: column slenderness ℓ_e/d 51.5. NDS 2018 §3.7.1.4 covers slenderness over 0, to 50. Use a thicker \
         piece, or hold it sideways between its ends."
    );
    assert!(column_slenderness_ratio(inches(180.25), inches(3.5), ColumnStage::DuringConstruction).is_ok());
    let angle = standards::nds_2018::chapter_3::hankinson(
        Stress::from_psi(1.0),
        Stress::from_psi(1.0),
        measure::Angle::from_degrees(120.0),
    );
    assert!(angle.unwrap_err().to_string().starts_with("Given: angle to the grain 120 degrees. "));
}
