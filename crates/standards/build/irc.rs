//! The tables of the IRC, from the printed text to Rust.

use std::{error::Error, fmt::Write as _, fs, path::Path};

/// Whatever stops the build, with its message.
pub type Failure = Box<dyn Error>;

/// What a header carries on an exterior wall, as the data names it, and the variant of `Supporting`.
const EXTERIOR: [(&str, &str); 5] = [
    ("roof_ceiling", "Supporting::RoofCeiling"),
    ("one_floor_center_bearing", "Supporting::OneFloorCenterBearing"),
    ("one_floor_clear_span", "Supporting::OneFloorClearSpan"),
    ("two_floors_center_bearing", "Supporting::TwoFloorsCenterBearing"),
    ("two_floors_clear_span", "Supporting::TwoFloorsClearSpan"),
];

/// The same on an interior wall, and the variant of `InteriorSupporting`.
const INTERIOR: [(&str, &str); 2] =
    [("one_floor", "InteriorSupporting::OneFloor"), ("two_floors", "InteriorSupporting::TwoFloors")];

const DEPTHS: [(&str, &str); 5] = [("4", "Four"), ("6", "Six"), ("8", "Eight"), ("10", "Ten"), ("12", "Twelve")];

/// A table of spans as the data names it, and the variant of `SpanTable`.
const SPAN_TABLES: [(&str, &str); 5] = [
    ("R502.3.1(2)", "FloorJoists40"),
    ("R802.5.1(2)", "CeilingJoists20"),
    ("R802.4.1(5)", "Rafters50"),
    ("R802.4.1(7)", "Rafters70"),
    ("2308.7.2(2)", "RaftersRoofLiveCeiling"),
];

const SPAN_SPECIES: [(&str, &str); 4] =
    [("DF-L", "DouglasFirLarch"), ("HF", "HemFir"), ("SP", "SouthernPine"), ("SPF", "SprucePineFir")];

const SPAN_GRADES: [(&str, &str); 4] = [("SS", "SelectStructural"), ("#1", "No1"), ("#2", "No2"), ("#3", "No3")];

/// Printed status, and the variant of `Status`.
pub const STATUSES: [(&str, &str); 4] = [
    ("looked-up", "LookedUp"),
    ("partly-looked-up", "PartlyLookedUp"),
    ("disputed", "Disputed"),
    ("from-memory", "FromMemory"),
];

const WIND_COLUMNS: [(&str, &str); 2] =
    [("to_115_b", "WindColumn::To115B"), ("under_140_b_or_130_c", "WindColumn::Under140BOr130C")];

/// Writes the generated tables into `out_dir`.
pub fn generate(out_dir: &Path) -> Result<(), Failure> {
    headers(out_dir, "irc_2021/table_r602_7_1", &EXTERIOR)?;
    headers(out_dir, "irc_2021/table_r602_7_2", &INTERIOR)?;
    headers(out_dir, "irc_2012/table_r502_5_1", &EXTERIOR)?;
    full_height_studs(out_dir, "irc_2021/table_r602_7_5", |row| {
        lookup(&WIND_COLUMNS, row.text("column")?).map(str::to_owned)
    })?;
    spans(out_dir, "irc_2021/spans")?;
    spans(out_dir, "ibc_2018/table_2308_7_2_2")?;
    full_height_studs(out_dir, "irc_2015/table_r602_7_5", |row| length_in_inches(row.number("stud_spacing_in")?))
}

fn headers(out_dir: &Path, table: &str, supports: &[(&str, &str)]) -> Result<(), Failure> {
    let mut out = String::from("&[\n");
    for row in rows(table)? {
        let (plies, depth) = row.text("size")?.split_once("-2x").ok_or("a size is not written 2-2x10")?;
        let plies: u8 = plies.parse()?;
        let snow = match row.optional("ground_snow_psf") {
            Some(text) => format!("Some(AreaLoad::from_psf({:?}))", text.parse::<f64>()?),
            None => "None".to_owned(),
        };
        let line_load = match row.optional("line_load_plf") {
            Some(text) => format!("Some(LineLoad::from_plf({:?}))", text.parse::<f64>()?),
            None => "None".to_owned(),
        };
        writeln!(
            out,
            "HeaderCell {{ supporting: {}, size: HeaderSize {{ plies: {plies}, depth: NominalDepth::{} }}, \
             ground_snow: {snow}, width: Length::from_feet({:?}), span: {}, jack_studs: {}, line_load: {line_load}, \
             status: Status::{} }},",
            lookup(supports, row.text("supporting")?)?,
            lookup(&DEPTHS, depth)?,
            row.number("width_ft")?,
            row.span()?,
            row.text("jack_studs")?.parse::<u8>()?,
            row.status()?,
        )?;
    }
    write_table(out_dir, table, &out)
}

fn spans(out_dir: &Path, table: &str) -> Result<(), Failure> {
    let mut out = String::from("&[\n");
    for row in rows(table)? {
        let spans = ["2x4", "2x6", "2x8", "2x10", "2x12"].map(|size| match row.optional(size) {
            None => Ok("None".to_owned()),
            Some(">26-0") => Ok("Some(PrintedSpan::Over26Feet)".to_owned()),
            Some(printed) => Ok::<_, Failure>(format!("Some(PrintedSpan::Of({}))", feet_and_inches(table, printed)?)),
        });
        writeln!(
            out,
            "SpanRow {{ table: SpanTable::{}, dead: AreaLoad::from_psf({:?}), species: SpanSpecies::{}, grade: \
             SpanGrade::{}, spacing: {}, spans: [{}], status: Status::{} }},",
            lookup(&SPAN_TABLES, row.text("table")?)?,
            row.number("dead_psf")?,
            lookup(&SPAN_SPECIES, row.text("species")?)?,
            lookup(&SPAN_GRADES, row.text("grade")?)?,
            length_in_inches(row.number("spacing_in")?)?,
            spans.into_iter().collect::<Result<Vec<_>, _>>()?.join(", "),
            row.status()?,
        )?;
    }
    write_table(out_dir, table, &out)
}

fn full_height_studs(
    out_dir: &Path,
    table: &str,
    column: impl Fn(&Row) -> Result<String, Failure>,
) -> Result<(), Failure> {
    let mut out = String::from("&[\n");
    for row in rows(table)? {
        writeln!(
            out,
            "FullHeightStudsCell {{ column: {}, span: {}, studs: {}, status: Status::{} }},",
            column(&row)?,
            row.span()?,
            row.text("full_height_studs")?.parse::<u8>()?,
            row.status()?,
        )?;
    }
    write_table(out_dir, table, &out)
}

/// Writes the rows as a slice.
pub fn write_table(out_dir: &Path, table: &str, rows: &str) -> Result<(), Failure> {
    Ok(fs::write(out_dir.join(format!("{}.rs", table.replace('/', "_"))), format!("{rows}]"))?)
}

/// A line of a data file, by the names of its columns.
pub struct Row {
    names: csv::StringRecord,
    values: csv::StringRecord,
    table: String,
}

impl Row {
    pub fn optional(&self, name: &str) -> Option<&str> {
        self.names.iter().zip(&self.values).find(|&(n, value)| n == name && !value.is_empty()).map(|(_, value)| value)
    }

    pub fn text(&self, name: &str) -> Result<&str, Failure> {
        self.optional(name).ok_or_else(|| format!("{}: {name} is missing", self.table).into())
    }

    pub fn number(&self, name: &str) -> Result<f64, Failure> {
        Ok(self.text(name)?.parse()?)
    }

    /// The column `span`, printed as feet-inches: `5-11`.
    fn span(&self) -> Result<String, Failure> {
        feet_and_inches(&self.table, self.text("span")?)
    }

    pub fn status(&self) -> Result<&'static str, Failure> {
        lookup(&STATUSES, self.text("status")?)
    }
}

/// Every line of a data file.
pub fn rows(table: &str) -> Result<Vec<Row>, Failure> {
    let path = format!("data/{table}.csv");
    let mut reader = csv::ReaderBuilder::new().comment(Some(b'#')).from_path(&path)?;
    let names = reader.headers()?.clone();
    reader.records().map(|values| Ok(Row { names: names.clone(), values: values?, table: table.to_owned() })).collect()
}

fn feet_and_inches(table: &str, printed: &str) -> Result<String, Failure> {
    let (feet, inches) = printed.split_once('-').ok_or("a span is not written 5-11")?;
    let (feet, inches): (u16, u16) = (feet.parse()?, inches.parse()?);
    if inches > 11 {
        return Err(format!("{table}: {feet}-{inches} has more than 11 inches").into());
    }
    length_in_inches(f64::from(feet * 12 + inches))
}

fn length_in_inches(inches: f64) -> Result<String, Failure> {
    Ok(format!("Length::from_inches({inches:?})"))
}

/// The Rust name of a printed one.
pub fn lookup<'a>(names: &[(&str, &'a str)], name: &str) -> Result<&'a str, Failure> {
    let found = names.iter().find(|&&(printed, _)| printed == name);
    found.map(|&(_, variant)| variant).ok_or_else(|| format!("{name} is not known").into())
}
