//! The table for a spreadsheet.

use job::walk::{Look, Walk};
use proptest::prelude::*;
use view::record::findings_csv;

use crate::log::{Log, OUT, said, studs, whole};

/// Reads a table back: rows of cells, as RFC 4180 has them.
fn read(table: &str) -> Vec<Vec<String>> {
    let (mut rows, mut row, mut cell) = (Vec::new(), Vec::new(), String::new());
    let (mut letters, mut quoted) = (table.chars().peekable(), false);
    while let Some(letter) = letters.next() {
        match letter {
            '"' if quoted && letters.peek() == Some(&'"') => {
                letters.next();
                cell.push('"');
            }
            '"' => quoted = !quoted,
            ',' if !quoted => row.push(std::mem::take(&mut cell)),
            '\r' if !quoted => {
                assert_eq!(letters.next(), Some('\n'));
                row.push(std::mem::take(&mut cell));
                rows.push(std::mem::take(&mut row));
            }
            other => cell.push(other),
        }
    }
    assert!(cell.is_empty() && row.is_empty() && !quoted, "the last line ends");
    rows
}

/// The rows without their head, and the cell of a column by its name.
fn table(walk: &Walk) -> (Vec<Vec<String>>, impl Fn(&[String], &str) -> String + use<>) {
    let mut rows = read(&findings_csv(walk, "Lot 7, north"));
    let head = rows.remove(0);
    let cell = move |row: &[String], name: &str| row[head.iter().position(|column| column == name).unwrap()].clone();
    (rows, cell)
}

#[test]
fn the_head_names_the_columns() {
    let rows = read(&findings_csv(&Log::begun().walk(), "Lot 7"));
    assert_eq!(rows.len(), 1);
    let first =
        ["mark", "place", "kind", "what", "required", "found", "margin", "verdict", "clause", "status", "origin"];
    assert_eq!(rows[0][..11], first);
    assert_eq!(rows[0][11..16], ["by", "at", "note", "correction of", "photos"]);
}

#[test]
fn a_look_has_a_row_for_each_check() {
    let (rows, cell) = table(&whole().walk());
    let of = |id: &str| rows.iter().filter(|row| cell(row, "look") == id).collect::<Vec<&Vec<String>>>();
    assert_eq!(of("a").len(), 4, "a bay each");
    let out = of("a").into_iter().find(|row| cell(row, "verdict") == "out").unwrap();
    let is = |name: &str, text: &str| assert_eq!(cell(out, name), text, "{name}");
    is("mark", "W1");
    is("place", "grid B, 16\" to 33-1/2\"");
    is("kind", "Stud spacing");
    is("what", "Stud spacing");
    is("found", "17-1/2\"");
    is("origin", "drawing S2.1, revision B");
    is("clause", "");
    is("status", "");
    is("by", "A. Framer");
    is("at", "2026-05-04T08:04:00-05:00");
    is("note", "by the door");
    is("photos", "p1");
    is("severity", "must be right before it is covered");
    is("stands", "a later look counts");
    is("job", "Lot 7, north");
    assert!(cell(out, "required").starts_with("at most 16\""));
    assert_eq!(cell(of("b")[0], "after mending"), "a");
    assert_eq!(cell(of("d")[0], "correction of"), "c");
    assert_eq!(cell(of("d")[0], "stands"), "yes");
    assert_eq!(cell(of("e")[0], "stands"), "crossed out: wrong wall");
}

/// Nothing compared: one row with the verdict.
#[test]
fn a_look_without_checks_has_a_row() {
    let (rows, cell) = table(&whole().walk());
    let unseen: Vec<&Vec<String>> = rows.iter().filter(|row| cell(row, "look") == "g").collect();
    assert_eq!(unseen.len(), 1);
    assert_eq!(cell(unseen[0], "verdict"), "could not be seen");
    assert_eq!((cell(unseen[0], "what"), cell(unseen[0], "found")), (String::new(), String::new()));
}

#[test]
fn a_published_limit_names_its_clause_and_how_it_came_here() {
    let mut log = Log::begun();
    let mut look = studs(&OUT);
    look.texts.remove("required_spacing");
    look.texts.insert("carries".to_owned(), "one_floor_and_roof".to_owned());
    log.look("a", look);
    let (rows, cell) = table(&log.walk());
    assert_eq!(cell(&rows[0], "origin"), "published");
    assert!(cell(&rows[0], "clause").contains("R602.3"), "{:?}", rows[0]);
    assert!(!cell(&rows[0], "status").is_empty());
}

#[test]
fn cells_that_a_spreadsheet_would_work_out_are_texts() {
    for (note, kept) in [
        ("=1+1", "'=1+1"),
        ("+cmd", "'+cmd"),
        ("-1/16 off", "'-1/16 off"),
        ("@SUM(A1)", "'@SUM(A1)"),
        ("\tx", "'\tx"),
        ("\rx", "'\rx"),
        ("-12", "-12"),
        ("+0.5", "+0.5"),
        ("-.5", "'-.5"),
        ("-", "'-"),
        ("1-1/2", "1-1/2"),
        ("a, \"b\"\nc", "a, \"b\"\nc"),
    ] {
        let mut log = Log::begun();
        log.look("a", Look { note: note.to_owned(), ..said("m1", "grid A", "within") });
        let (rows, cell) = table(&log.walk());
        assert_eq!(cell(&rows[0], "note"), kept);
    }
}

#[test]
fn commas_quotes_and_line_ends_are_quoted() {
    let mut log = Log::begun();
    log.look("a", Look { note: "one, \"two\"\r\nthree".to_owned(), ..said("m1", "grid A", "within") });
    let written = findings_csv(&log.walk(), "Lot 7");
    assert!(written.contains(",\"one, \"\"two\"\"\r\nthree\","), "{written}");
    assert!(written.ends_with("\r\n"));
}

proptest! {
    /// Any texts: every row has the head's columns, and no cell but a plain number begins as a formula.
    #[test]
    fn any_texts_stay_in_their_cells(note in any::<String>(), place in any::<String>(), says in any::<String>()) {
        let mut log = Log::begun();
        log.look("a", Look { note, says, ..said("m1", &place, "out") });
        let rows = read(&findings_csv(&log.walk(), "Lot 7"));
        for row in &rows {
            prop_assert_eq!(row.len(), rows[0].len());
            for cell in row.iter().filter(|cell| cell.starts_with(['=', '+', '-', '@', '\t', '\r'])) {
                prop_assert!(cell.parse::<f64>().is_ok(), "{}", cell);
            }
        }
    }
}
