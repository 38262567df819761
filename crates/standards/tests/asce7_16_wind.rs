//! Wind clauses against adopted codes, published tables and worked examples.

use measure::{Angle, Area, AreaLoad, Slope, Speed};
use proptest::prelude::*;
use standards::asce7_16::chapter_26::{DIRECTIONALITY_FACTOR, velocity_pressure};
use standards::asce7_16::chapter_27;
use standards::asce7_16::chapter_28::{LEAST_K_H_IN_B, simplified_pressures};
use standards::asce7_16::chapter_30::roofs::{
    Roof, RoofShape, RoofZone, cautious_roof_pressure_coefficient, roof_pressure_coefficient,
};
use standards::asce7_16::chapter_30::{Toward, design_pressure};

/// Table 26.10-1, Exposure C.
const K_H_AS_PRINTED: [(&str, f64); 5] = [("15", 0.85), ("20", 0.90), ("25", 0.94), ("30", 0.98), ("60", 1.13)];
const TEN: Area = Area::from_square_feet(10.0);

fn lines(text: &str) -> impl Iterator<Item = Vec<&str>> {
    text.lines().filter(|line| !line.starts_with('#')).map(|line| line.split(',').collect())
}

fn zone(name: &str) -> Option<RoofZone> {
    let all = [
        ("1p", RoofZone::OnePrime),
        ("1", RoofZone::One),
        ("2", RoofZone::Two),
        ("2e", RoofZone::TwoE),
        ("2n", RoofZone::TwoN),
        ("2r", RoofZone::TwoR),
        ("3", RoofZone::Three),
        ("3e", RoofZone::ThreeE),
        ("3r", RoofZone::ThreeR),
    ];
    all.into_iter().find(|(known, _)| *known == name).map(|(_, zone)| zone)
}

fn roof(shape: RoofShape, degrees: f64, height_to_breadth: f64) -> Roof {
    Roof { shape, angle: Angle::from_degrees(degrees), height_to_breadth }
}

fn suction(roof: &Roof, zone: RoofZone, square_feet: f64) -> Option<f64> {
    let area = Area::from_square_feet(square_feet);
    Some(roof_pressure_coefficient(roof, zone, Toward::Outside, area, false).ok()?.gc_p)
}

/// Source: an adopted code's roof test protocols (2020), 175 mph, Exposure C, every row but the table whose numbers are
/// an overhang's, with the height coefficients as printed. In whole psf, some cut toward zero, some by 0.9.
#[test]
fn small_area_suctions_of_an_adopted_code() {
    let mut rows = 0;
    for row in lines(include_str!("data/adopted_code_175_mph.csv")) {
        let [of, feet, zones, printed] = row[..] else { panic!("{row:?}") };
        let roof = match &of[..2] {
            "T1" => roof(RoofShape::Gable, 15.0, 0.5),
            "T2" => roof(RoofShape::Gable, 24.0, 0.5),
            "T3" => roof(RoofShape::Gable, 40.0, 0.5),
            "T7" => roof(RoofShape::Hip, 15.0, 0.9),
            "T9" => roof(RoofShape::Hip, 45.0, 0.5),
            _ => roof(RoofShape::Gable, 2.0, 0.5),
        };
        let (_, k_h) = K_H_AS_PRINTED.into_iter().find(|(known, _)| *known == feet).unwrap();
        let q_h = velocity_pressure(Speed::from_mph(175.0), k_h, 1.0, DIRECTIONALITY_FACTOR, 1.0) * 0.6;
        for name in zones.split(';') {
            // The figures' smallest areas: some curves are level to 2 or 4 sq ft only.
            let gc_p = suction(&roof, zone(name).unwrap(), 1.0).unwrap();
            let found = design_pressure(q_h, gc_p, 0.18).psf();
            let printed: f64 = printed.parse().unwrap();
            assert!((found - printed).abs() <= 0.9, "{of} {feet} ft zone {name}: {found:.1} against {printed}");
            rows += 1;
        }
    }
    assert!(rows > 90, "{rows}");
}

/// Source: the simplified pressures of Chapter 28 Part 2, 272 values; computed, to 0.1 psf. The tolerance is the last
/// printed digit and the half of one that rounding leaves.
#[test]
fn simplified_pressures_follow_from_the_coefficients() {
    let mut rows = 0;
    for row in lines(include_str!("data/simplified_pressures.csv")) {
        let [mph, angle, zone, printed] = row[..] else { panic!("{row:?}") };
        let q_30 =
            velocity_pressure(Speed::from_mph(mph.parse().unwrap()), LEAST_K_H_IN_B, 1.0, DIRECTIONALITY_FACTOR, 1.0);
        let degrees = match angle {
            "0-5" => 5.0,
            "20" => 20.0,
            _ => 30.0,
        };
        let found = simplified_pressures(q_30, Angle::from_degrees(degrees));
        // The second case of steep roofs has the internal pressure the other way.
        let inside = if angle.ends_with("case2") { q_30 * 0.36 } else { AreaLoad::ZERO };
        let of = |at: usize| found.vertical[at] + inside;
        let found = match zone {
            "A" => found.horizontal[0],
            "B" => found.horizontal[1],
            "C" => found.horizontal[2],
            "D" => found.horizontal[3],
            "E" => of(0),
            "F" => of(1),
            "G" => of(2),
            "H" => of(3),
            "EOH" => found.overhang[0],
            _ => found.overhang[1],
        };
        let printed: f64 = printed.parse().unwrap();
        assert!((found.psf() - printed).abs() <= 0.06, "{mph} {angle} {zone}: {} against {printed}", found.psf());
        rows += 1;
    }
    assert_eq!(rows, 272);
}

/// Source: ASCE 7-16 Table 27.5-2, Exposure C, 160 mph, 160 ft: the windward slope with h/L 1 (case 1) and 0.25 (case 2),
/// and the leeward slope; printed to 0.1 psf. The row of 3 in 12 is left out: it lies by the -1.3 that its area may
/// reduce, and 3.3 psf from straight interpolation on the lee.
#[test]
fn roofs_of_a_published_table() {
    let (q_h, inside) = (77.83, 0.18);
    for (rise, windward_1, windward_2, leeward_1, leeward_2) in [
        (4.0, -66.5, 23.0, -53.7, -23.6),
        (5.0, -53.4, 30.7, -53.7, -25.7),
        (6.0, -42.9, 33.9, -53.7, -25.7),
        (9.0, -24.8, 40.5, -53.7, -25.7),
        (12.0, -14.0, 40.5, -53.7, -25.7),
    ] {
        let angle = Slope::from_rise_in_twelve(rise).angle();
        let p = |c_p: f64, inside: f64| q_h * (0.85 * c_p + inside);
        let (tall, low) =
            (chapter_27::windward_roof(angle, 1.0).unwrap(), chapter_27::windward_roof(angle, 0.25).unwrap());
        let lee = |ratio| chapter_27::leeward_roof(angle, ratio).unwrap();
        for (found, printed) in [
            (p(tall.suction, -inside), windward_1),
            (p(low.push, inside), windward_2),
            (p(lee(1.0), -inside), leeward_1),
            (p(lee(0.25), inside), leeward_2),
        ] {
            assert!((found - printed).abs() <= 0.11, "{rise} in 12: {found:.2} against {printed}");
        }
    }
}

/// Source: IRC 2018 Table R301.2(2), 180 mph, Exposure B, 30 ft, allowable-stress level (ASCE 7-10 coefficients), printed
/// to 0.1 psf: flat roofs and roofs over 7 to 27 degrees, zone 1.
#[test]
fn the_edition_before_by_a_code_table() {
    let q = 29.61;
    let before = standards::asce7_10::chapter_30::roof_pressure_coefficient;
    for (degrees, name, square_feet, printed) in [
        (3.0, "1", 10.0, -35.0),
        (3.0, "1", 20.0, -34.1),
        (3.0, "2", 10.0, -58.7),
        (3.0, "3", 10.0, -88.3),
        (3.0, "3", 50.0, -53.1),
        (3.0, "3", 100.0, -37.9),
        (18.0, "1", 10.0, -32.0),
        (18.0, "1", 50.0, -29.9),
    ] {
        let roof = roof(RoofShape::Gable, degrees, 0.5);
        let area = Area::from_square_feet(square_feet);
        let gc_p = before(&roof, zone(name).unwrap(), Toward::Outside, area, false).unwrap().gc_p;
        let found = q * (gc_p - 0.18);
        assert!((found - printed).abs() <= 0.15, "{degrees} {name} {square_feet}: {found:.2} against {printed}");
    }
}

/// Source: a county's plan-review handout (ASCE 7-10, 150 mph, 10 sq ft, allowable stress): one storey of 15 ft and two of
/// 30 ft in Exposure C, q 24.970 and 28.788 psf; printed to 0.1 psf, its own q rounded: within 0.25.
#[test]
fn the_edition_before_by_a_handout() {
    let before = standards::asce7_10::chapter_30::roof_pressure_coefficient;
    for (q, degrees, printed) in [
        (20.563, 3.0, [-24.3, -40.8, -61.4]),
        (20.563, 18.0, [-22.2, -38.7, -57.3]),
        (20.563, 35.0, [-24.3, -28.4, -28.4]),
        (24.970, 3.0, [-29.6, -49.4, -74.3]),
        (24.970, 18.0, [-26.9, -46.9, -69.4]),
        (24.970, 35.0, [-29.6, -34.4, -34.4]),
        (28.788, 3.0, [-34.1, -57.2, -86.0]),
    ] {
        for (zone, printed) in [RoofZone::One, RoofZone::Two, RoofZone::Three].into_iter().zip(printed) {
            let roof = roof(RoofShape::Gable, degrees, 0.5);
            let gc_p = before(&roof, zone, Toward::Outside, TEN, false).unwrap().gc_p;
            let found = q * (gc_p - 0.18);
            assert!((found - printed).abs() <= 0.25, "{degrees} {zone:?}: {found:.2} against {printed}");
        }
    }
}

/// The edges of a gable roof at 10 sq ft: corners pull harder than edges, edges harder than the field.
#[test]
fn corners_edges_field() {
    for degrees in [3.0, 10.0, 25.0, 40.0] {
        for shape in [RoofShape::Gable, RoofShape::Hip] {
            let roof = roof(shape, degrees, 0.9);
            let most = |of: &[RoofZone]| {
                let zones = roof.zones().unwrap();
                of.iter()
                    .filter(|zone| zones.contains(zone))
                    .map(|zone| suction(&roof, *zone, 10.0).unwrap())
                    .fold(0.0, f64::min)
            };
            let corner = most(&[RoofZone::Three, RoofZone::ThreeE, RoofZone::ThreeR]);
            let edge = most(&[RoofZone::Two, RoofZone::TwoE, RoofZone::TwoN, RoofZone::TwoR]);
            let field = most(&[RoofZone::One]);
            assert!(corner <= edge && edge <= field, "{shape:?} {degrees}: {corner} {edge} {field}");
        }
    }
}

#[test]
fn steep_roofs_and_zones_of_other_figures_are_refused() {
    let steep = roof(RoofShape::Gable, 46.0, 0.5);
    assert!(roof_pressure_coefficient(&steep, RoofZone::One, Toward::Outside, TEN, false).is_err());
    let hip = roof(RoofShape::Hip, 30.0, 0.5);
    let message = roof_pressure_coefficient(&hip, RoofZone::TwoN, Toward::Outside, TEN, false).unwrap_err().to_string();
    assert!(message.contains("2n"), "{message}");
}

proptest! {
    /// A larger area never draws more, but for the field of a low hip roof's overhang, whose printed curve does.
    #[test]
    fn larger_areas_draw_less(degrees in 0.5..45.0_f64, hip in any::<bool>(), ratio in 0.2..1.2_f64, area in 1.0..900.0_f64) {
        let roof = roof(if hip { RoofShape::Hip } else { RoofShape::Gable }, degrees, ratio);
        for zone in roof.zones().unwrap() {
            for overhang in [false, true] {
                if hip && overhang && *zone == RoofZone::One {
                    continue;
                }
                let at = |square_feet: f64| {
                    let area = Area::from_square_feet(square_feet);
                    roof_pressure_coefficient(&roof, *zone, Toward::Outside, area, overhang).unwrap().gc_p
                };
                prop_assert!(at(area * 1.1) >= at(area) - 1e-12, "{zone:?} {overhang}");
            }
        }
    }

    /// The cautious value is never milder than either edition's.
    #[test]
    fn the_cautious_value_is_the_harsher(degrees in 0.5..45.0_f64, hip in any::<bool>(), area in 1.0..900.0_f64) {
        let roof = roof(if hip { RoofShape::Hip } else { RoofShape::Gable }, degrees, 0.6);
        let area = Area::from_square_feet(area);
        for zone in roof.zones().unwrap() {
            for toward in [Toward::Inside, Toward::Outside] {
                let now = roof_pressure_coefficient(&roof, *zone, toward, area, false).unwrap().gc_p;
                let cautious = cautious_roof_pressure_coefficient(&roof, *zone, toward, area, false).unwrap();
                prop_assert!(cautious.gc_p.abs() >= now.abs());
                let before = standards::asce7_10::chapter_30::roof_pressure_coefficient(&roof, *zone, toward, area, false);
                prop_assert!(before.is_none_or(|before| cautious.gc_p.abs() >= before.gc_p.abs()));
            }
        }
    }
}
