//! The tables of nails and nailing, of studs and of roof ties, from the printed text to Rust.

use std::{fmt::Write as _, path::Path};

use super::irc::{Failure, Row, STATUSES, lookup, rows, write_table};

const KINDS: [(&str, &str); 3] = [("common", "Common"), ("box", "Box"), ("sinker", "Sinker")];

const GROUPS: [(&str, &str); 4] = [("roof", "Roof"), ("wall", "Wall"), ("floor", "Floor"), ("sheathing", "Sheathing")];

const DRIVEN: [(&str, &str); 4] =
    [("face", "Face"), ("end", "End"), ("toe", "Toe"), ("blind_and_face", "BlindAndFace")];

const EXPOSURES: [(&str, &str); 2] = [("B", "B"), ("C", "C")];

/// Wind speeds of the table of roof ties, as the data names its columns.
const SPEEDS: [&str; 5] = ["110", "115", "120", "130", "140"];

/// Writes the generated tables into `out_dir`.
pub fn generate(out_dir: &Path) -> Result<(), Failure> {
    table(out_dir, "nds_2018/table_l4", nail_size)?;
    table(out_dir, "irc_2021/table_r602_3_1", schedule_row)?;
    table(out_dir, "irc_2021/table_r602_3_2", alternate_row)?;
    table(out_dir, "irc_2021/table_r602_3_3", sheathing_row)?;
    table(out_dir, "irc_2021/table_r602_3_5", stud_row)?;
    table(out_dir, "irc_2021/table_r802_11", uplift_row)
}

fn table(out_dir: &Path, name: &str, line: impl Fn(&Row) -> Result<String, Failure>) -> Result<(), Failure> {
    let mut out = String::from("&[\n");
    for row in rows(name)? {
        writeln!(out, "{},", line(&row)?)?;
    }
    write_table(out_dir, name, &out)
}

fn nail_size(row: &Row) -> Result<String, Failure> {
    Ok(format!(
        "NailSize {{ kind: NailKind::{}, penny: {}, length: {}, diameter: {}, head: {}, status: Status::{}, \
         head_status: Status::{} }}",
        lookup(&KINDS, row.text("kind")?)?,
        row.text("penny")?.trim_end_matches('d').parse::<u8>()?,
        inches(row.text("length_in")?)?,
        inches(row.text("diameter_in")?)?,
        inches(row.text("head_in")?)?,
        row.status()?,
        lookup(&STATUSES, row.text("head_status")?)?,
    ))
}

fn schedule_row(row: &Row) -> Result<String, Failure> {
    let fastener = fastener(row)?;
    let driven = row.optional("driven").map(|driven| lookup(&DRIVEN, driven)).transpose()?;
    Ok(format!(
        "ScheduleRow {{ item: {}, group: ScheduleGroup::{}, connection: {:?}, fastener: {fastener}, count: {}, \
         spacing: {}, field_spacing: {}, place: {:?}, driven: {}, status: Status::{}, note: {:?} }}",
        row.text("item")?.parse::<u8>()?,
        lookup(&GROUPS, row.text("group")?)?,
        row.text("connection")?,
        option(row.optional("count").map(|count| Ok(count.parse::<u8>()?.to_string())))?,
        optional_inches(row, "spacing_in")?,
        optional_inches(row, "field_spacing_in")?,
        row.optional("where").unwrap_or_default(),
        option(driven.map(|driven| Ok(format!("ScheduleDriven::{driven}"))))?,
        row.status()?,
        row.optional("note").unwrap_or_default(),
    ))
}

fn fastener(row: &Row) -> Result<String, Failure> {
    Ok(match row.optional("other") {
        Some(other) => format!("ScheduleFastener::Other({other:?})"),
        None => format!(
            "ScheduleFastener::Nail {{ size: {:?}, length: {}, diameter: {} }}",
            row.optional("size").unwrap_or_default(),
            inches(row.text("length_in")?)?,
            inches(row.text("diameter_in")?)?,
        ),
    })
}

fn alternate_row(row: &Row) -> Result<String, Failure> {
    let length = |name: &str| inches(row.text(name)?);
    Ok(format!(
        "AlternateRow {{ thinnest: {}, thickest: {}, fastener: {}, spacing: {}, field_spacing: {}, status: Status::{} }}",
        length("thinnest_in")?,
        length("thickest_in")?,
        fastener(row)?,
        length("spacing_in")?,
        length("field_spacing_in")?,
        row.status()?,
    ))
}

fn sheathing_row(row: &Row) -> Result<String, Failure> {
    let length = |name: &str| inches(row.text(name)?);
    let speed = |name: &str| Ok::<_, Failure>(format!("Speed::from_mph({:?})", row.number(name)?));
    Ok(format!(
        "WallSheathingRow {{ panel: {}, span_rating: {:?}, stud_spacing: {}, nail_size: {:?}, nail_length: {}, \
         nail_diameter: {}, penetration: {}, spacing: {}, field_spacing: {}, wind_speeds: [{}, {}, {}], \
         status: Status::{} }}",
        length("panel_in")?,
        row.text("span_rating")?,
        length("stud_spacing_in")?,
        row.text("size")?,
        length("length_in")?,
        length("diameter_in")?,
        length("penetration_in")?,
        length("spacing_in")?,
        length("field_spacing_in")?,
        speed("exposure_b_mph")?,
        speed("exposure_c_mph")?,
        speed("exposure_d_mph")?,
        row.status()?,
    ))
}

fn stud_row(row: &Row) -> Result<String, Failure> {
    let feet = |text: &str| Ok(format!("Length::from_feet({:?})", text.parse::<f64>()?));
    Ok(format!(
        "StudRow {{ size: {:?}, bearing_height: {}, spacings: [{}, {}, {}, {}], nonbearing_height: {}, \
         nonbearing_spacing: {}, status: Status::{} }}",
        row.text("size")?,
        option(row.optional("bearing_height_ft").map(feet))?,
        optional_inches(row, "roof_ceiling_in")?,
        optional_inches(row, "one_more_floor_in")?,
        optional_inches(row, "two_more_floors_in")?,
        optional_inches(row, "one_floor_only_in")?,
        feet(row.text("nonbearing_height_ft")?)?,
        inches(row.text("nonbearing_in")?)?,
        row.status()?,
    ))
}

fn uplift_row(row: &Row) -> Result<String, Failure> {
    let pounds = |pitch: &str| {
        let of = |speed: &str| Ok(format!("Force::from_pounds({:?})", row.number(&format!("{speed}_{pitch}"))?));
        Ok::<_, Failure>(SPEEDS.into_iter().map(of).collect::<Result<Vec<_>, Failure>>()?.join(", "))
    };
    Ok(format!(
        "UpliftRow {{ exposure: ExposureCategory::{}, spacing: {}, span: Length::from_feet({:?}), under_5: [{}], from_5: \
         [{}], status: Status::{} }}",
        lookup(&EXPOSURES, row.text("exposure")?)?,
        inches(row.text("spacing_in")?)?,
        row.number("span_ft")?,
        pounds("under")?,
        pounds("from")?,
        row.status()?,
    ))
}

fn optional_inches(row: &Row, name: &str) -> Result<String, Failure> {
    option(row.optional(name).map(inches))
}

fn option(value: Option<Result<String, Failure>>) -> Result<String, Failure> {
    Ok(value.transpose()?.map_or_else(|| "None".to_owned(), |value| format!("Some({value})")))
}

/// A printed number of inches: `2-1/2`, `7/16`, `0.131` or `16`.
pub fn inches(printed: &str) -> Result<String, Failure> {
    let (whole, fraction) = match printed.split_once('-') {
        Some((whole, fraction)) => (whole.parse::<f64>()?, fraction),
        None => (0.0, printed),
    };
    let rest = match fraction.split_once('/') {
        Some((top, bottom)) => top.parse::<f64>()? / bottom.parse::<f64>()?,
        None => fraction.parse::<f64>()?,
    };
    Ok(format!("Length::from_inches({:?})", whole + rest))
}
