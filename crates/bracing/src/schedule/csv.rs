//! A schedule as CSV: the names of the columns first, then a mark a line. It becomes the lines that are read.

/// What a column holds, by how its name begins, and the word before its cells in a line.
const COLUMNS: [(&[&str], &str); 13] = [
    (&["mark", "type", "id"], ""),
    (&["panel", "sheathing", "thickness"], ""),
    (&["nail"], ""),
    (&["edge"], ""),
    (&["field"], "field"),
    (&["face", "side"], ""),
    (&["stud"], "studs"),
    (&["post"], "post"),
    (&["block"], ""),
    (&["plate"], "plate"),
    (&["bolt"], "bolts"),
    (&["washer"], "washer"),
    (&["hold"], "hold-down"),
];

/// Lines of a schedule: those of a CSV are put together from its cells, all others stand.
pub(super) fn as_lines(lines: Vec<(usize, String)>) -> Vec<(usize, String)> {
    let Some((_, head)) = lines.first() else { return lines };
    let columns: Vec<Option<usize>> = cells(head).iter().map(|cell| column(cell)).collect();
    let is_csv = !head.contains(':') && columns.contains(&Some(0)) && columns.contains(&Some(1));
    if !is_csv {
        return lines;
    }
    lines.into_iter().skip(1).map(|(line, text)| (line, line_of(&columns, &text))).collect()
}

fn column(name: &str) -> Option<usize> {
    let name = name.trim().to_lowercase();
    COLUMNS.iter().position(|(begins, _)| begins.iter().any(|begin| name.starts_with(begin)))
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

/// The line that a row of cells says: `P1: 15/32 10d 3, field 12, studs 2x6`.
fn line_of(columns: &[Option<usize>], text: &str) -> String {
    let cells = cells(text);
    let cell = |wanted: usize| {
        let found = columns.iter().zip(&cells).find(|(column, _)| **column == Some(wanted));
        found.map(|(_, cell)| cell.trim()).filter(|cell| !cell.is_empty())
    };
    let mut panel = Vec::new();
    panel.extend([1, 2, 3].into_iter().filter_map(cell));
    let mut line = format!("{}: {}", cell(0).unwrap_or_default(), panel.join(" "));
    for (index, (_, word)) in COLUMNS.iter().enumerate().skip(4) {
        let Some(cell) = cell(index) else { continue };
        let said = match index {
            5 => match cell.to_lowercase().as_str() {
                "2" | "both" | "both faces" | "two" => "both faces".to_owned(),
                _ => continue,
            },
            8 => match cell.to_lowercase().as_str() {
                "no" | "unblocked" => "unblocked".to_owned(),
                _ => "blocked".to_owned(),
            },
            _ => format!("{word} {cell}"),
        };
        line.push_str(", ");
        line.push_str(&said);
    }
    line
}
