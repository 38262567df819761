//! A schedule as CSV: the names of the columns first, then a mark a line. It becomes the lines that are read, and is written
//! from a schedule.

use super::write::inches;
use super::{HoldDownMark, PanelMark, Schedule};
use crate::Sheathing;
use crate::nailing_text::nail_short;

/// What a column holds.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Column {
    Mark,
    Panel,
    Nail,
    Edge,
    Boundary,
    Field,
    Faces,
    Lay,
    Studs,
    Post,
    Blocking,
    Plate,
    Sill,
    Bolts,
    Washer,
    HoldDown,
    What,
    Load,
    Rod,
    Gives,
}

/// Columns in the order in which they are written: the heading, and how a heading that is read may begin, with the word
/// before its cells in a line.
const COLUMNS: [(Column, &str, &[&str], &str); 20] = [
    (Column::Mark, "Mark", &["mark", "type", "id"], ""),
    (Column::Panel, "Panel", &["panel", "sheathing", "thickness"], ""),
    (Column::Nail, "Nail", &["nail"], ""),
    (Column::Edge, "Edge", &["edge"], ""),
    (Column::Boundary, "Boundary", &["bound"], "boundary"),
    (Column::Field, "Field", &["field"], "field"),
    (Column::Faces, "Faces", &["face", "side"], ""),
    (Column::Lay, "Lay", &["lay", "across"], ""),
    (Column::Studs, "Studs", &["stud"], "studs"),
    (Column::Post, "Post", &["post"], "post"),
    (Column::Blocking, "Blocking", &["block", "edge block"], "blocking"),
    (Column::Plate, "Plate", &["plate"], "plate"),
    (Column::Sill, "Sill", &["sill"], "sill"),
    (Column::Bolts, "Bolts", &["bolt"], "bolts"),
    (Column::Washer, "Washer", &["washer"], "washer"),
    (Column::HoldDown, "Hold-down", &["hold"], "hold-down"),
    (Column::What, "What", &["what"], ""),
    (Column::Load, "Load", &["load"], ""),
    (Column::Rod, "Rod", &["rod"], "rod"),
    (Column::Gives, "Gives", &["give"], "gives"),
];

/// Lines of a schedule: those of a CSV are put together from its cells, all others stand. The drawing's sheet may stand over
/// the names of the columns.
pub(super) fn as_lines(lines: Vec<(usize, String)>) -> Vec<(usize, String)> {
    let over = lines.first().is_some_and(|(_, line)| line.to_lowercase().starts_with("sheet ")) as usize;
    let Some((_, head)) = lines.get(over) else { return lines };
    let columns: Vec<Option<Column>> = cells(head).iter().map(|cell| column(cell)).collect();
    let has = |column: Column| columns.contains(&Some(column));
    let is_csv = !head.contains(':') && has(Column::Mark) && (has(Column::Panel) || has(Column::Load));
    if !is_csv {
        return lines;
    }
    let rows = lines.iter().skip(over + 1).map(|(line, text)| (*line, line_of(&columns, text)));
    lines.iter().take(over).cloned().chain(rows).collect()
}

/// The longest beginning that fits: `edge blocking` is no edge.
fn column(name: &str) -> Option<Column> {
    let name = name.trim().to_lowercase();
    let fits = COLUMNS.iter().flat_map(|(column, _, begins, _)| begins.iter().map(move |begin| (*column, *begin)));
    let fits = fits.filter(|(_, begin)| name.starts_with(begin));
    fits.max_by_key(|(_, begin)| begin.len()).map(|(column, _)| column)
}

/// Cells between commas or tabs; a comma within quotes parts nothing, and two quotes in a row are one.
fn cells(line: &str) -> Vec<String> {
    let parted_by = if line.contains('\t') { '\t' } else { ',' };
    let mut cells = vec![String::new()];
    let mut quoted = false;
    let mut letters = line.chars().peekable();
    while let Some(letter) = letters.next() {
        let Some(cell) = cells.last_mut() else { break };
        match letter {
            '"' if quoted && letters.peek() == Some(&'"') => {
                letters.next();
                cell.push('"');
            }
            '"' if quoted || cell.is_empty() => quoted = !quoted,
            letter if letter == parted_by && !quoted => cells.push(String::new()),
            letter => cell.push(letter),
        }
    }
    cells
}

/// What a row of cells says: `P1: 15/32 10d 3, field 12, studs 2x6`, or `HD1: hold-down 5000, rod 5/8`.
fn line_of(columns: &[Option<Column>], text: &str) -> String {
    let cells = cells(text);
    let cell = |wanted: Column| {
        let found = columns.iter().zip(&cells).find(|(column, _)| **column == Some(wanted));
        found.map(|(_, cell)| cell.trim()).filter(|cell| !cell.is_empty())
    };
    let first: Vec<&str> = match cell(Column::Load) {
        Some(load) => vec![cell(Column::What).unwrap_or("hold-down"), load],
        None => [Column::Panel, Column::Nail, Column::Edge].into_iter().filter_map(cell).collect(),
    };
    let mut line = format!("{}: {}", cell(Column::Mark).unwrap_or_default(), first.join(" "));
    for (column, _, _, word) in &COLUMNS {
        let Some(cell) = cell(*column) else { continue };
        let said = match column {
            Column::Mark | Column::Panel | Column::Nail | Column::Edge | Column::What | Column::Load => continue,
            Column::Faces => match cell.to_lowercase().as_str() {
                "2" | "both" | "both faces" | "two" => "both faces".to_owned(),
                _ => continue,
            },
            Column::Lay => match cell.to_lowercase().as_str() {
                "across" | "yes" => "across".to_owned(),
                _ => continue,
            },
            _ => format!("{word} {cell}"),
        };
        line.push_str(", ");
        line.push_str(&said);
    }
    line
}

impl Schedule {
    /// The schedule as CSV: the drawing's sheet where it is said, the names of the columns that are used, a mark a line. It
    /// reads back as it was.
    ///
    /// ```
    /// use bracing::schedule::read_schedule;
    /// let schedule = read_schedule("P1: 15/32 10d 3/12, boundary 3, sill 16d at 6, hold-down HD2\nHD2: hold-down 5,000 lb")?;
    /// let csv = schedule.to_csv();
    /// assert!(csv.starts_with("Mark,Panel,Nail,Edge,Boundary,Field,Sill,Hold-down,What,Load\n"));
    /// assert_eq!(read_schedule(&csv), Ok(schedule));
    /// # Ok::<(), Vec<bracing::schedule::ScheduleProblem>>(())
    /// ```
    #[must_use]
    pub fn to_csv(&self) -> String {
        let panels = self.panels.iter().map(|panel| COLUMNS.map(|(column, ..)| of_panel(panel, column)));
        let hold_downs = self.hold_downs.iter().map(|mark| COLUMNS.map(|(column, ..)| of_hold_down(mark, column)));
        let rows: Vec<[String; COLUMNS.len()]> = panels.chain(hold_downs).collect();
        let used = |index: usize| rows.iter().any(|row| !row[index].is_empty());
        let used: Vec<usize> = (0..COLUMNS.len()).filter(|index| used(*index)).collect();
        let line = |cells: &[String; COLUMNS.len()]| {
            let cells: Vec<String> = used.iter().map(|index| quoted(&cells[*index])).collect();
            cells.join(",")
        };
        let sheet = (!self.sheet.is_empty()).then(|| format!("sheet {}", self.sheet));
        let head = (!rows.is_empty()).then(|| line(&COLUMNS.map(|(_, heading, ..)| heading.to_owned())));
        let lines: Vec<String> = sheet.into_iter().chain(head).chain(rows.iter().map(line)).collect();
        lines.join("\n")
    }
}

fn of_panel(panel: &PanelMark, column: Column) -> String {
    let nailing = &panel.nailing;
    let said = |length: Option<measure::Length>| length.map_or_else(String::new, inches);
    match column {
        Column::Mark => panel.mark.clone(),
        Column::Panel if nailing.sheathing == Sheathing::StructuralI => {
            format!("{} Structural I", inches(nailing.thickness))
        }
        Column::Panel => inches(nailing.thickness),
        Column::Nail => nail_short(nailing.fastener).to_owned(),
        Column::Edge => inches(nailing.edge),
        Column::Boundary => said(panel.boundary),
        Column::Field => said(panel.field),
        Column::Faces => if nailing.both_faces { "both" } else { "" }.to_owned(),
        Column::Lay => if nailing.across_studs { "across" } else { "" }.to_owned(),
        Column::Studs => panel.studs.clone(),
        Column::Post => panel.post.clone(),
        Column::Blocking => match panel.blocked {
            Some(true) if !panel.blocking.is_empty() => panel.blocking.clone(),
            Some(true) => "blocked".to_owned(),
            Some(false) => "unblocked".to_owned(),
            None => String::new(),
        },
        Column::Plate => panel.plate.clone(),
        Column::Sill => panel.sill.clone(),
        Column::Bolts => {
            panel.bolts.map_or_else(String::new, |(thick, apart)| format!("{} at {}", inches(thick), inches(apart)))
        }
        Column::Washer => panel.washer.clone(),
        Column::HoldDown => panel.hold_down.clone(),
        Column::What | Column::Load | Column::Rod | Column::Gives => String::new(),
    }
}

fn of_hold_down(mark: &HoldDownMark, column: Column) -> String {
    let said = |length: Option<measure::Length>| length.map_or_else(String::new, inches);
    match column {
        Column::Mark => mark.mark.clone(),
        Column::What => if mark.strap { "strap" } else { "hold-down" }.to_owned(),
        Column::Load => format!("{}", mark.load.pounds()),
        Column::Rod => said(mark.rod),
        Column::Post => mark.post.clone(),
        Column::Gives => said(mark.gives),
        _ => String::new(),
    }
}

/// A cell that has a comma or a quote stands in quotes.
fn quoted(cell: &str) -> String {
    if cell.contains([',', '"']) { format!("\"{}\"", cell.replace('"', "\"\"")) } else { cell.to_owned() }
}
