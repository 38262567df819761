//! The tables of a wall: the pull list, the cut list, and the panels with the lines to chalk on them.

use layout::wall::{Cut, LaidWall, Mark, OnPlates, Part, Sheet};
use measure::Length;

use super::tape::{side, table};
use crate::quick::reply::TableReply;
use crate::words::{self, inches};

/// So near to a panel's edge nothing is chalked.
const EDGE: Length = Length::from_inches(3.0 / 8.0);

/// Every mark, in the order of the tape.
pub(super) fn pulls(laid: &LaidWall, end: &str) -> TableReply {
    let notes = vec![
        "X a stud, K a king, J a jack, C a cripple, P a post, H a hold-down's post, B backing.".to_owned(),
        "To the nearest sixteenth, each from the end and none from the one before it.".to_owned(),
    ];
    let rows = laid.marks.iter().map(mark).collect();
    table(format!("Pulls from the {end} end"), &["pull", "in feet", "what", "X"], rows, notes)
}

fn mark(mark: &Mark) -> Vec<String> {
    let plates = match mark.on {
        OnPlates::Both => "",
        OnPlates::Bottom => ", bottom plate",
        OnPlates::Top => ", top plate",
    };
    let name = mark.part.name();
    let what =
        mark.part.letter().map_or_else(|| format!("{name}{plates}"), |letter| format!("{letter} {name}{plates}"));
    vec![inches(mark.pull), words::length(mark.pull), what, side(mark.x).to_owned()]
}

/// What to cut, piece by piece.
pub(super) fn cuts(laid: &LaidWall) -> TableReply {
    let row = |cut: &Cut<Part>| vec![cut.piece.name().to_owned(), inches(cut.length), cut.count.to_string()];
    let notes = vec!["Headers are counted ply by ply. Try one in its place before cutting the others.".to_owned()];
    table("Cut list".to_owned(), &["piece", "length", "count"], laid.cuts.iter().map(row).collect(), notes)
}

/// The panels, row by row; none where there are none.
pub(super) fn panels(laid: &LaidWall, end: &str) -> Option<TableReply> {
    if laid.sheets.is_empty() {
        return None;
    }
    let notes = vec![
        format!(
            "From the {end} end, the lowest row first. Chalk lines are from the panel's edge that is nearer to that end."
        ),
        "Cut out for an opening where one is named.".to_owned(),
    ];
    let columns = ["begins at", "row", "cut to", "chalk lines"];
    Some(table("Panels".to_owned(), &columns, laid.sheets.iter().map(panel).collect(), notes))
}

fn panel(sheet: &Sheet) -> Vec<String> {
    // A stud that a panel's edge is nailed to needs no line.
    let inside = EDGE..=sheet.along.width() - EDGE;
    let lines = sheet.lines.iter().filter(|line| inside.contains(&line.from_edge));
    let mut lines: Vec<String> = lines.map(|line| inches(line.from_edge)).collect();
    if !sheet.openings.is_empty() {
        let openings: Vec<String> = sheet.openings.iter().map(|opening| (opening + 1).to_string()).collect();
        lines.push(format!("around opening {}", openings.join(", ")));
    }
    let size = format!("{} x {}", inches(sheet.along.width()), inches(sheet.upright.width()));
    vec![inches(sheet.along.from), (sheet.row + 1).to_string(), size, lines.join(", ")]
}
