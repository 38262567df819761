//! The roof figures of ASCE 7's cladding chapter, from the printed values to Rust.

use std::{fmt::Write as _, path::Path};

use super::irc::{Failure, Row, lookup, rows, write_table};

const ROOFS: [(&str, &str); 8] = [
    ("flat", "Flat"),
    ("gable_7_20", "GableTo20"),
    ("gable_20_27", "GableTo27"),
    ("gable_27_45", "GableTo45"),
    ("hip_7_20_high", "HipTo20High"),
    ("hip_7_20_low", "HipTo20Low"),
    ("hip_20_27", "HipTo27"),
    ("gable_hip_7_27", "To27"),
];

const SIGNS: [(&str, &str); 2] = [("+", "Inside"), ("-", "Outside")];

const ZONES: [(&str, &str); 10] = [
    ("all", "u16::MAX"),
    ("1p", "RoofZone::OnePrime.bit()"),
    ("1", "RoofZone::One.bit()"),
    ("2", "RoofZone::Two.bit()"),
    ("2e", "RoofZone::TwoE.bit()"),
    ("2n", "RoofZone::TwoN.bit()"),
    ("2r", "RoofZone::TwoR.bit()"),
    ("3", "RoofZone::Three.bit()"),
    ("3e", "RoofZone::ThreeE.bit()"),
    ("3r", "RoofZone::ThreeR.bit()"),
];

/// Writes the generated tables into `out_dir`.
pub fn generate(out_dir: &Path) -> Result<(), Failure> {
    for table in ["asce7_16/fig_30_3_2", "asce7_10/fig_30_4_2"] {
        let mut out = String::from("&[\n");
        for row in rows(table)? {
            writeln!(out, "{},", curve(&row)?)?;
        }
        write_table(out_dir, table, &out)?;
    }
    Ok(())
}

fn curve(row: &Row) -> Result<String, Failure> {
    let zones: Result<Vec<&str>, Failure> = row.text("zones")?.split(';').map(|zone| lookup(&ZONES, zone)).collect();
    let mut points = String::new();
    for point in 1..=3 {
        if let Some(area) = row.optional(&format!("area_{point}_sqft")) {
            let area: f64 = area.parse()?;
            let value: f64 = row.text(&format!("gcp_{point}"))?.parse()?;
            write!(points, "({area:?}, {value:?}), ")?;
        }
    }
    Ok(format!(
        "Curve {{ figure: Figure::{}, overhang: {}, zones: {}, toward: Toward::{}, points: &[{points}], \
         status: Status::{} }}",
        lookup(&ROOFS, row.text("roof")?)?,
        row.text("surface")? == "overhang",
        zones?.join(" | "),
        lookup(&SIGNS, row.text("sign")?)?,
        row.status()?,
    ))
}
