//! The tables of the NDS Supplement, from the printed text to Rust.

use std::{error::Error, fmt::Write as _, fs, path::Path};

type Failure = Box<dyn Error>;

const DATA: &str = "data/nds_supplement_2018";

/// Printed species group, and the variant of `SpeciesGroup`.
const SPECIES: [(&str, &str); 5] = [
    ("Douglas Fir-Larch", "DouglasFirLarch"),
    ("Hem-Fir", "HemFir"),
    ("Spruce-Pine-Fir", "SprucePineFir"),
    ("Spruce-Pine-Fir (South)", "SprucePineFirSouth"),
    ("Southern Pine", "SouthernPine"),
];

/// Printed grade, and the variant of `PrintedGrade`.
const GRADES: [(&str, &str); 17] = [
    ("Dense Select Structural", "DenseSelectStructural"),
    ("Select Structural", "SelectStructural"),
    ("Non-Dense Select Structural", "NonDenseSelectStructural"),
    ("No.1 & Btr", "No1AndBetter"),
    ("No.1 Dense", "No1Dense"),
    ("No.1", "No1"),
    ("No.1 Non-Dense", "No1NonDense"),
    ("No.1/No.2", "No1No2"),
    ("No.2 Dense", "No2Dense"),
    ("No.2", "No2"),
    ("No.2 Non-Dense", "No2NonDense"),
    ("No.3", "No3"),
    ("No.3 and Stud", "No3AndStud"),
    ("Stud", "Stud"),
    ("Construction", "Construction"),
    ("Standard", "Standard"),
    ("Utility", "Utility"),
];

/// Printed size class, and the variant of `SizeClass`.
const SIZE_CLASSES: [(&str, &str); 11] = [
    ("2-4 in thick x 2 in and wider (apply CF)", "TwoAndWider"),
    ("2-4 in thick x 2-4 in wide (apply CF)", "TwoToFourWide"),
    ("2-4 in thick x 2-4 in wide (2x2 to 2x4)", "SouthernPineTwoToFourWide"),
    ("2-4 in thick x 4 in wide", "SouthernPineFourWide"),
    ("2-4 in thick x 5-6 in wide (2x5 2x6)", "SouthernPineFiveToSixWide"),
    ("2-4 in thick x 8 in wide (2x8)", "SouthernPineEightWide"),
    ("2-4 in thick x 10 in wide (2x10)", "SouthernPineTenWide"),
    ("2-4 in thick x 12 in wide (2x12; wider: x0.9)", "SouthernPineTwelveWide"),
    ("Posts & Timbers 5x5 and larger", "PostsAndTimbers"),
    ("Beams & Stringers 5x5 and larger (width more than 2 in over thickness)", "BeamsAndStringers"),
    ("Timbers 5x5 and larger (all shapes; wet or dry)", "SouthernPineTimbers"),
];

/// Printed product and grade of engineered wood, the table it goes to, and the key in that table.
const ENGINEERED: [(&str, &str, &str, &str); 6] = [
    (
        "Glulam 24F-V4 DF/DF",
        "24F-V4 (tension zone stressed in tension)",
        "GLULAM",
        "(GlulamLayup::V4DouglasFir, GlulamAxis::AcrossWideFaces)",
    ),
    (
        "Glulam 24F-V4 DF/DF",
        "24F-V4 (y-y axis values)",
        "GLULAM",
        "(GlulamLayup::V4DouglasFir, GlulamAxis::AlongWideFaces)",
    ),
    (
        "Glulam 24F-V3 SP/SP",
        "24F-V3 (tension zone stressed in tension)",
        "GLULAM",
        "(GlulamLayup::V3SouthernPine, GlulamAxis::AcrossWideFaces)",
    ),
    ("LVL generic", "1.9E-2600Fb", "LVL", "LvlGrade::E19Fb2600"),
    ("LVL generic", "2.0E-2600Fb", "LVL", "LvlGrade::E20Fb2600"),
    ("LVL generic", "2.0E-2900Fb", "LVL", "LvlGrade::E20Fb2900"),
];

/// The columns that become fields of `DesignValues`, in the order of the file.
const STRESSES: [(&str, &str); 7] = [
    ("fb_psi", "fb"),
    ("ft_psi", "ft"),
    ("fv_psi", "fv"),
    ("fc_perp_psi", "fc_perp"),
    ("fc_psi", "fc"),
    ("e_psi", "e"),
    ("emin_psi", "e_min"),
];

/// Writes `nds_supplement_2018.rs` into `out_dir`.
pub fn generate(out_dir: &Path) -> Result<(), Failure> {
    let mut text = design_values(&Sheet::read("reference_design_values.csv")?)?;
    text.push_str(&dressed_sizes(&Sheet::read("dressed_sizes.csv")?)?);
    fs::write(out_dir.join("nds_supplement_2018.rs"), text)?;
    Ok(())
}

/// A table as printed: every cell a string.
struct Sheet {
    name: &'static str,
    header: csv::StringRecord,
    rows: Vec<csv::StringRecord>,
}

impl Sheet {
    fn read(name: &'static str) -> Result<Self, Failure> {
        let mut reader = csv::Reader::from_path(Path::new(DATA).join(name))?;
        let header = reader.headers()?.clone();
        let rows = reader.records().collect::<Result<_, _>>()?;
        Ok(Self { name, header, rows })
    }

    fn cell<'a>(&self, row: &'a csv::StringRecord, column: &str) -> Result<&'a str, Failure> {
        let index = self.header.iter().position(|name| name == column);
        let cell = index.and_then(|index| row.get(index));
        cell.ok_or_else(|| format!("{}: no column {column} in {row:?}", self.name).into())
    }
}

fn design_values(sheet: &Sheet) -> Result<String, Failure> {
    let (mut sawn, mut glulam, mut lvl) = (Table::default(), Table::default(), Table::default());
    for row in &sheet.rows {
        let (species, grade) = (sheet.cell(row, "species")?, sheet.cell(row, "grade")?);
        let values = values_literal(sheet, row)?;
        let engineered = ENGINEERED.iter().find(|(product, name, ..)| (*product, *name) == (species, grade));
        match engineered {
            Some((.., "GLULAM", key)) => glulam.push(key, &values),
            Some((.., key)) => lvl.push(key, &values),
            None => sawn.push(&sawn_key(sheet, row)?, &values),
        }
    }
    Ok([
        sawn.partial("SAWN", "(SpeciesGroup, PrintedGrade, SizeClass)", "DesignValues", "sawn lumber and timbers"),
        glulam.partial("GLULAM", "(GlulamLayup, GlulamAxis)", "DesignValues", "structural glued laminated timber"),
        lvl.total("LVL", "LvlGrade", "DesignValues", "generic laminated veneer lumber"),
    ]
    .concat())
}

fn sawn_key(sheet: &Sheet, row: &csv::StringRecord) -> Result<String, Failure> {
    let species = variant(&SPECIES, sheet.cell(row, "species")?)?;
    let grade = variant(&GRADES, sheet.cell(row, "grade")?)?;
    let class = variant(&SIZE_CLASSES, sheet.cell(row, "size_class")?)?;
    Ok(format!("(SpeciesGroup::{species}, PrintedGrade::{grade}, SizeClass::{class})"))
}

fn values_literal(sheet: &Sheet, row: &csv::StringRecord) -> Result<String, Failure> {
    let mut text = String::from("DesignValues { ");
    for (column, field) in STRESSES {
        write!(text, "{field}: Stress::from_psi({:?}), ", number(sheet.cell(row, column)?)?)?;
    }
    write!(text, "specific_gravity: {:?}, ", number(sheet.cell(row, "sg")?)?)?;
    let class = sheet.cell(row, "size_class")?;
    write!(text, "size_class: {class:?}, source: {}, ", source_literal(sheet, row)?)?;
    write!(text, "provenance: {:?} }}", sheet.cell(row, "source")?)?;
    Ok(text)
}

fn dressed_sizes(sheet: &Sheet) -> Result<String, Failure> {
    let mut table = Table::default();
    for row in &sheet.rows {
        let nominal = sheet.cell(row, "nominal")?;
        let (thickness, width) = nominal.split_once('x').ok_or_else(|| format!("not a nominal size: {nominal}"))?;
        let (thickness, width): (u8, u8) = (thickness.parse()?, width.parse()?);
        let breadth = fraction(sheet.cell(row, "breadth_in")?)?;
        let depth = fraction(sheet.cell(row, "depth_in")?)?;
        let value = format!(
            "DressedSize {{ nominal: {nominal:?}, nominal_thickness: {thickness}, nominal_width: {width}, \
             breadth: Length::from_inches({breadth:?}), depth: Length::from_inches({depth:?}), source: {}, \
             provenance: {:?} }}",
            source_literal(sheet, row)?,
            sheet.cell(row, "source")?
        );
        table.push(&format!("({thickness}, {width})"), &value);
    }
    Ok(table.partial("DRESSED_SIZE", "(u8, u8)", "DressedSize", "a dressed size of sawn lumber"))
}

/// Rows of one generated table: the key as Rust, and the value as Rust.
#[derive(Default)]
struct Table {
    rows: Vec<(String, String)>,
}

impl Table {
    fn push(&mut self, key: &str, value: &str) {
        self.rows.push((key.to_owned(), value.to_owned()));
    }

    /// A static array in the order of the file.
    fn list(&self, name: &str, key: &str, value: &str, what: &str) -> String {
        let count = self.rows.len();
        let rows: String = self.rows.iter().map(|(key, value)| format!("    ({key}, {value}),\n")).collect();
        format!(
            "/// Every row held for {what}, in the order of the data file.\n\
             pub static {name}: [({key}, {value}); {count}] = [\n{rows}];\n\n"
        )
    }

    /// The array and a look-up that compiles to a jump rather than to comparisons.
    fn partial(&self, name: &str, key: &str, value: &str, what: &str) -> String {
        let arms: String = self.rows.iter().enumerate().fold(String::new(), |arms, (index, (key, _))| {
            format!("{arms}        {key} => Some(&{name}[{index}].1),\n")
        });
        let function = name.to_lowercase();
        format!(
            "{}/// The row for {what} with this key; `None` when no such row is held.\n\
             #[must_use]\n\
             pub const fn {function}(key: {key}) -> Option<&'static {value}> {{\n    match key {{\n{arms}        \
             _ => None,\n    }}\n}}\n\n",
            self.list(name, key, value, what)
        )
    }

    /// As [`Self::partial`], for a table that holds a row for every key.
    fn total(&self, name: &str, key: &str, value: &str, what: &str) -> String {
        let arms: String = self
            .rows
            .iter()
            .enumerate()
            .fold(String::new(), |arms, (index, (key, _))| format!("{arms}        {key} => &{name}[{index}].1,\n"));
        let function = name.to_lowercase();
        format!(
            "{}/// The row for {what} with this key.\n\
             #[must_use]\n\
             pub const fn {function}(key: {key}) -> &'static {value} {{\n    match key {{\n{arms}    }}\n}}\n\n",
            self.list(name, key, value, what)
        )
    }
}

fn variant(names: &[(&str, &'static str)], printed: &str) -> Result<&'static str, Failure> {
    let found = names.iter().find(|(name, _)| *name == printed);
    found.map(|(_, variant)| *variant).ok_or_else(|| format!("no variant for {printed:?}").into())
}

fn source_literal(sheet: &Sheet, row: &csv::StringRecord) -> Result<String, Failure> {
    let table = sheet.cell(row, "table")?;
    let (document, place) = match table.strip_prefix("NDS Supp 2018 ") {
        Some(place) => ("NDS Supplement 2018", place),
        None => (table, sheet.cell(row, "grade")?),
    };
    let status = match sheet.cell(row, "status")? {
        "looked-up" => "LookedUp",
        "partly-looked-up" => "PartlyLookedUp",
        "disputed" => "Disputed",
        "from-memory" => "FromMemory",
        other => return Err(format!("{}: unknown status {other:?}", sheet.name).into()),
    };
    Ok(format!("Source::new({document:?}, {place:?}, Status::{status})"))
}

fn number(printed: &str) -> Result<f64, Failure> {
    printed.parse().map_err(|_| format!("not a number: {printed:?}").into())
}

/// Reads `9-1/4`, `3/4` or `12`.
fn fraction(printed: &str) -> Result<f64, Failure> {
    let (whole, part) =
        printed.split_once('-').unwrap_or(if printed.contains('/') { ("0", printed) } else { (printed, "0/1") });
    let (over, under) = part.split_once('/').ok_or_else(|| format!("not a fraction: {printed:?}"))?;
    Ok(number(whole)? + number(over)? / number(under)?)
}
