//! The tables of shear walls and of diaphragms, from the printed text to Rust.

use std::{fmt::Write as _, path::Path};

use super::fasteners::inches;
use super::irc::{Failure, Row, STATUSES, lookup, rows, write_table};

const TABLES: [(&str, &str); 4] = [("4.3A", "A"), ("4.3B", "B"), ("4.3C", "C"), ("4.3D", "D")];

const SHEATHINGS: [(&str, &str); 17] = [
    ("structural_i", "StructuralI"),
    ("sheathing", "Sheathing"),
    ("plywood_siding", "PlywoodSiding"),
    ("particleboard", "Particleboard"),
    ("fiberboard", "Fiberboard"),
    ("structural_i_over_gypsum", "StructuralIOverGypsum"),
    ("sheathing_over_gypsum", "SheathingOverGypsum"),
    ("wallboard", "Wallboard"),
    ("wallboard_two_ply", "WallboardTwoPly"),
    ("gypsum_sheathing_narrow", "GypsumSheathingNarrow"),
    ("gypsum_sheathing", "GypsumSheathing"),
    ("gypsum_lath_and_plaster", "GypsumLathAndPlaster"),
    ("cement_plaster", "CementPlaster"),
    ("horizontal_lumber", "HorizontalLumber"),
    ("diagonal_lumber", "DiagonalLumber"),
    ("double_diagonal_lumber", "DoubleDiagonalLumber"),
    ("vertical_siding", "VerticalSiding"),
];

const FASTENERS: [(&str, &str); 12] = [
    ("6d common", "Common6d"),
    ("8d common", "Common8d"),
    ("10d common", "Common10d"),
    ("6d casing", "Casing6d"),
    ("8d casing", "Casing8d"),
    ("roofing 1-1/2", "RoofingShort"),
    ("roofing 1-3/4", "RoofingLong"),
    ("5d cooler", "Cooler5d"),
    ("6d cooler", "Cooler6d"),
    ("6d and 8d cooler", "Cooler6dUnder8d"),
    ("drywall screw", "DrywallScrew"),
    ("lath", "Lath"),
];

/// Writes the generated table into `out_dir`.
pub fn generate(out_dir: &Path) -> Result<(), Failure> {
    const NAME: &str = "sdpws_2015/table_4_3";
    let mut out = String::from("&[\n");
    for row in rows(NAME)? {
        writeln!(out, "{},", shear_wall(&row)?)?;
    }
    write_table(out_dir, NAME, &out)?;
    diaphragms(out_dir)
}

const DIAPHRAGM_TABLES: [(&str, &str); 3] = [("4.2A", "A"), ("4.2B", "B"), ("4.2C", "C")];

const CASES: [(&str, &str); 3] = [("all", "All"), ("1", "One"), ("2-6", "TwoToSix")];

fn diaphragms(out_dir: &Path) -> Result<(), Failure> {
    const NAME: &str = "sdpws_2015/table_4_2";
    let mut out = String::from("&[\n");
    for row in rows(NAME)? {
        writeln!(out, "{},", diaphragm(&row)?)?;
    }
    write_table(out_dir, NAME, &out)
}

fn diaphragm(row: &Row) -> Result<String, Failure> {
    Ok(format!(
        "DiaphragmRow {{ table: DiaphragmTable::{}, grade: Sheathing::{}, fastener: ShearFastener::{}, penetration: {}, \
         thickness: {}, framing: {}, lines: {}, cases: Cases::{}, boundary: {}, edge: {}, seismic: {}, wind: {}, osb: \
         {}, plywood: {}, status: Status::{}, stiffness_status: Status::{} }}",
        lookup(&DIAPHRAGM_TABLES, row.text("table")?)?,
        lookup(&SHEATHINGS, row.text("grade")?)?,
        lookup(&FASTENERS, row.text("fastener")?)?,
        inches(row.text("penetration_in")?)?,
        inches(row.text("thickness_in")?)?,
        row.text("framing_in")?.parse::<u8>()?,
        row.text("lines")?.parse::<u8>()?,
        lookup(&CASES, row.text("cases")?)?,
        inches(row.text("boundary_in")?)?,
        inches(row.text("edge_in")?)?,
        shear(row.number("seismic_plf")?),
        shear(row.number("wind_plf")?),
        stiffness(row.optional("osb_kip_in"))?,
        stiffness(row.optional("plywood_kip_in"))?,
        row.status()?,
        lookup(&STATUSES, row.text("stiffness_status")?)?,
    ))
}

fn shear_wall(row: &Row) -> Result<String, Failure> {
    Ok(format!(
        "ShearWallRow {{ table: ShearWallTable::{}, sheathing: Sheathing::{}, thickness: {}, fastener: \
         ShearFastener::{}, penetration: {}, edge: {}, field: {}, blocked: {}, studs: {}, seismic: {}, wind: {}, osb: \
         {}, plywood: {}, status: Status::{}, stiffness_status: Status::{} }}",
        lookup(&TABLES, row.text("table")?)?,
        lookup(&SHEATHINGS, row.text("sheathing")?)?,
        inches(row.text("thickness_in")?)?,
        lookup(&FASTENERS, row.text("fastener")?)?,
        length(row.optional("penetration_in"))?,
        length(row.optional("edge_in"))?,
        length(row.optional("field_in"))?,
        match row.optional("blocked") {
            None => "None",
            Some("yes") => "Some(true)",
            Some("no") => "Some(false)",
            Some(other) => return Err(format!("blocked is {other}").into()),
        },
        inches(row.text("studs_in")?)?,
        shear(row.number("seismic_plf")?),
        shear(row.number("wind_plf")?),
        stiffness(row.optional("osb_kip_in"))?,
        stiffness(row.optional("plywood_kip_in"))?,
        row.status()?,
        lookup(&STATUSES, row.text("stiffness_status")?)?,
    ))
}

fn length(printed: Option<&str>) -> Result<String, Failure> {
    printed.map_or_else(|| Ok("None".to_owned()), |printed| Ok(format!("Some({})", inches(printed)?)))
}

fn shear(plf: f64) -> String {
    format!("NominalUnitShear::from_plf({plf:?})")
}

fn stiffness(printed: Option<&str>) -> Result<String, Failure> {
    let Some(printed) = printed else { return Ok("None".to_owned()) };
    Ok(format!("Some(ApparentShearStiffness::from_kips_per_inch({:?}))", printed.parse::<f64>()?))
}
