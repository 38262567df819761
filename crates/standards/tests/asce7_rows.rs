//! Every row of the load standard's tables that is held, against what the clauses here give.

#![expect(clippy::unwrap_used, clippy::panic, reason = "a panic in a test is the report")]

use std::collections::BTreeMap;

use measure::{Angle, Area, AreaLoad, Length, Slope};
use standards::asce7_16::chapter_1::RiskCategory;
use standards::asce7_16::chapter_7::{RoofExposure, Terrain, ThermalCondition, exposure_factor};
use standards::asce7_16::chapter_7_sloped::slope_factor;
use standards::asce7_16::chapter_26::{Enclosure, Exposure, ground_elevation_factor, velocity_pressure_coefficient};
use standards::asce7_16::chapter_26_8::{Feature, FromCrest};
use standards::asce7_16::chapter_27::{
    SIDE_WALL, STRIP_LEAST, WINDWARD_WALL, along_the_ridge, leeward_roof, leeward_wall, windward_roof,
};
use standards::asce7_16::chapter_28::{LEAST_K_H_IN_B, Surface, load_case_a, load_case_b};
use standards::asce7_16::chapter_30::{Toward, WallZone, wall_pressure_coefficient};
use standards::asce7_22;
use standards::irc_2021::r301_6::roof_live_load;

/// One row: table, three keys, the value as written.
struct Row<'t> {
    table: &'t str,
    keys: [&'t str; 3],
    value: &'t str,
}

impl Row<'_> {
    fn number(&self) -> f64 {
        self.value.parse().unwrap_or_else(|_| panic!("{} {:?}: {}", self.table, self.keys, self.value))
    }

    fn key(&self, which: usize) -> f64 {
        let digits: String = self.keys[which].chars().filter(|c| c.is_ascii_digit() || *c == '.').collect();
        digits.parse().unwrap_or_else(|_| panic!("{} {:?}", self.table, self.keys))
    }
}

fn exposure(letter: &str) -> Exposure {
    match letter {
        "B" => Exposure::B,
        "C" => Exposure::C,
        "D" => Exposure::D,
        _ => panic!("exposure {letter}"),
    }
}

/// What the clauses give, and how far the row may be from it: half of its last printed digit where nothing else is said.
fn found(row: &Row<'_>) -> (f64, f64) {
    let [first, second, third] = row.keys;
    match row.table {
        // Computed, to four places.
        "Kz" => (k_z(first, second, row.key(2)), 5e-5),
        // The print cuts some cells and rounds others.
        "Kz_printed" => (k_z(first, second, row.key(2)) - 0.0025, 0.0076),
        "Ke" => (ground_elevation_factor(Length::from_feet(row.key(1))) - 0.0025, 0.0076),
        "Cp_wall" => (wall(first, third), 1e-12),
        "Cp_roof_windward_neg" => (windward_roof(angle(row), row.key(0)).unwrap().suction, 1e-12),
        "Cp_roof_windward_pos" => (windward_roof(angle(row), row.key(0)).unwrap().push, 1e-12),
        "Cp_roof_leeward" => (leeward_roof(angle(row), row.key(0)).unwrap(), 1e-12),
        "Cp_roof_parallel" => (parallel(first, second), 1e-12),
        "Cp_1.3_area_factor" => (along_the_ridge(1.0, Area::from_square_feet(row.key(1)))[0].coefficient / -1.3, 1e-12),
        "GCpf" => (envelope(first, second, third), 1e-12),
        "GCpi" => (internal(first).internal_pressure_coefficient(), 1e-12),
        "GCp_wall_7-16" => (wall_cladding(first, second, row.key(2)), 1e-12),
        "Kzt_K1_over_H_Lh" => (feature(first).shape_factor(exposure(second)), 1e-12),
        "Kzt_gamma" => (feature(first).height_attenuation(), 1e-12),
        "Kzt_mu" => (feature(first).horizontal_attenuation(side(second)), 1e-12),
        // The ratio to Exposure B at 30 ft, from printed coefficients: two places, cut or rounded.
        "lambda_7-10_7-16_simplified" => (lambda(first, row.key(1)), 0.012),
        "Ct" => (thermal(first).factor(), 1e-12),
        "Is" => (risk(first).snow_importance_factor(), 1e-12),
        "Cs_point" => (curve(first, second, row.key(2)), 1e-9),
        "pm_max" => (asce7_22::minimum_snow_load(AreaLoad::from_psf(100.0)).psf(), 1e-12),
        "Lr_IRC_R301.6" => (roof_live(first, second), 1e-12),
        table => panic!("{table} is not compared"),
    }
}

fn k_z(edition: &str, letter: &str, feet: f64) -> f64 {
    let height = Length::from_feet(feet);
    match edition {
        "7-22" => asce7_22::velocity_pressure_coefficient(exposure(letter), height).unwrap(),
        _ => velocity_pressure_coefficient(exposure(letter), height).unwrap(),
    }
}

fn angle(row: &Row<'_>) -> Angle {
    Angle::from_degrees(row.key(1))
}

fn wall(surface: &str, ratio: &str) -> f64 {
    match surface {
        "windward" => WINDWARD_WALL,
        "side" => SIDE_WALL,
        _ => leeward_wall(ratio.parse().unwrap()),
    }
}

fn parallel(ratio: &str, strip: &str) -> f64 {
    let height_to_length = if ratio == "h/L<=0.5" { 0.5 } else { 1.0 };
    let strips = along_the_ridge(height_to_length, Area::from_square_feet(100.0)).map(|strip| strip.coefficient);
    match strip {
        "0-h/2" => strips[0],
        "h/2-h" | ">h/2" => strips[1],
        "h-2h" => strips[2],
        ">2h" => strips[3],
        _ => STRIP_LEAST,
    }
}

fn envelope(case: &str, degrees: &str, surface: &str) -> f64 {
    let of = match surface.trim_end_matches('E') {
        "1" => Surface::One,
        "2" => Surface::Two,
        "3" => Surface::Three,
        "4" => Surface::Four,
        "5" => Surface::Five,
        _ => Surface::Six,
    };
    let both =
        if case == "caseA" { load_case_a(of, Angle::from_degrees(degrees.parse().unwrap())) } else { load_case_b(of) };
    if surface.ends_with('E') { both.end } else { both.interior }
}

fn internal(enclosure: &str) -> Enclosure {
    match enclosure {
        "enclosed" => Enclosure::Enclosed,
        "partially_enclosed" => Enclosure::PartiallyEnclosed,
        "partially_open" => Enclosure::PartiallyOpen,
        _ => Enclosure::Open,
    }
}

fn wall_cladding(zone: &str, sign: &str, area: f64) -> f64 {
    let zone = if zone == "zone 4" { WallZone::Field } else { WallZone::Corner };
    let toward = if sign == "+" { Toward::Inside } else { Toward::Outside };
    wall_pressure_coefficient(zone, toward, Area::from_square_feet(area))
}

fn feature(name: &str) -> Feature {
    match name {
        "ridge" => Feature::Ridge,
        "escarpment" => Feature::Escarpment,
        _ => Feature::Hill,
    }
}

fn side(name: &str) -> FromCrest {
    if name == "upwind" { FromCrest::Upwind } else { FromCrest::Downwind }
}

fn lambda(letter: &str, feet: f64) -> f64 {
    let least = if letter == "B" { LEAST_K_H_IN_B } else { 0.0 };
    k_z("7-16", letter, feet).max(least) / LEAST_K_H_IN_B
}

fn thermal(condition: &str) -> ThermalCondition {
    match condition {
        "all other" => ThermalCondition::Heated,
        "unheated or open air" => ThermalCondition::Unheated,
        "kept below freezing" => ThermalCondition::BelowFreezing,
        "continuously heated greenhouse" => ThermalCondition::HeatedGreenhouse,
        _ => ThermalCondition::ColdVentilatedRoof,
    }
}

fn risk(category: &str) -> RiskCategory {
    match category {
        "1" => RiskCategory::One,
        "2" => RiskCategory::Two,
        "3" => RiskCategory::Three,
        _ => RiskCategory::Four,
    }
}

fn curve(thermal: &str, surface: &str, degrees: f64) -> f64 {
    let thermal: f64 = thermal.trim_start_matches(['<', '>', '=']).parse().unwrap();
    slope_factor(Slope::of_angle(Angle::from_degrees(degrees)), thermal, surface == "slippery")
}

fn roof_live(pitch: &str, area: &str) -> f64 {
    let rise = match pitch {
        "<4:12" => 3.0,
        ">=12:12" => 12.0,
        _ => 8.0,
    };
    let area = match area {
        "0-200 ft2" => 200.0,
        "201-600 ft2" => 600.0,
        _ => 601.0,
    };
    roof_live_load(Slope::from_rise_in_twelve(rise), Area::from_square_feet(area)).psf()
}

fn exposure_factor_of(row: &Row<'_>) -> Option<f64> {
    let terrain = match row.keys[1] {
        "B" => Terrain::B,
        "C" => Terrain::C,
        "D" => Terrain::D,
        "above tree line" => Terrain::AboveTreeLine,
        _ => Terrain::AlaskaWithoutTrees,
    };
    let roof = match row.keys[2] {
        "fully" => RoofExposure::Fully,
        "partially" => RoofExposure::Partially,
        _ => RoofExposure::Sheltered,
    };
    exposure_factor(terrain, roof).ok()
}

/// Rows that are no number of their own: constants inside an equation that the rows above come from, and the rule above
/// 60 degrees, which is written as a formula. Minimum snow of other risk categories is not a house's.
fn is_left_out(row: &Row<'_>) -> bool {
    row.table == "Kz_const" || row.value.contains("theta") || (row.table == "pm_max" && row.keys[1] != "II")
}

#[test]
fn every_row_is_what_the_clauses_give() {
    let mut compared: BTreeMap<&str, usize> = BTreeMap::new();
    for line in include_str!("data/asce7_rows.csv").lines().filter(|line| !line.starts_with('#')) {
        let [table, first, second, third, value, _status] = line.split(',').collect::<Vec<_>>()[..] else {
            panic!("{line}")
        };
        let mut row = Row { table, keys: [first, second, third], value };
        if is_left_out(&row) {
            continue;
        }
        *compared.entry(table).or_default() += 1;
        if table == "Ce" {
            assert_eq!(exposure_factor_of(&row), value.parse().ok(), "{line}");
            continue;
        }
        // These tables name the edition first, the others a key.
        if ["Ct", "Is"].contains(&table) {
            row.keys = [second, third, ""];
        }
        let (found, within) = found(&row);
        assert!((found - row.number()).abs() <= within, "{line}: {found}");
    }
    let rows: usize = compared.values().sum();
    assert!(rows >= 290 && compared.len() >= 20, "{rows} rows of {compared:?}");
}

/// What is said of checks that take the edition before: to 60 ft its velocity pressures are at most half a per cent less.
#[test]
fn the_edition_before_stands_in_within_half_a_per_cent() {
    for letter in ["B", "C", "D"] {
        for feet in 15..=60 {
            let ratio = k_z("7-22", letter, f64::from(feet)) / k_z("7-16", letter, f64::from(feet));
            assert!((0.97..=1.005).contains(&ratio), "{letter} {feet}: {ratio}");
        }
    }
}
