//! The tables of a floor: the pull list, the cut list, hangers with squash blocks, and the panels.

use layout::floor::{FloorMark, FloorPart, FloorSheet, Hung, LaidFloor, OnSides};
use layout::wall::Cut;

use super::tape::{side, table};
use crate::quick::reply::TableReply;
use crate::words::{self, inches};

/// Every mark, in the order of the tape.
pub(super) fn pulls(laid: &LaidFloor, end: &str) -> TableReply {
    let notes = vec![
        "X a joist, D one of two under a wall, T a trimmer, O a tail.".to_owned(),
        "To the nearest sixteenth, each from the end and none from the one before it.".to_owned(),
    ];
    let rows = laid.marks.iter().map(mark).collect();
    table(format!("Pulls from the {end} end"), &["pull", "in feet", "what", "X"], rows, notes)
}

fn mark(mark: &FloorMark) -> Vec<String> {
    let sides = match mark.on {
        OnSides::Both => "",
        OnSides::Near => ", near side",
        OnSides::Far => ", far side",
    };
    let name = mark.part.name();
    let what = mark.part.letter().map_or_else(|| format!("{name}{sides}"), |letter| format!("{letter} {name}{sides}"));
    vec![inches(mark.pull), words::length(mark.pull), what, side(mark.x).to_owned()]
}

/// What to cut, piece by piece.
pub(super) fn cuts(laid: &LaidFloor) -> TableReply {
    let row =
        |cut: &Cut<FloorPart>| vec![cut.piece.name().to_owned(), words::length(cut.length), cut.count.to_string()];
    let notes = vec!["Headers are counted ply by ply.".to_owned()];
    table("Cut list".to_owned(), &["piece", "length", "count"], laid.cuts.iter().map(row).collect(), notes)
}

/// What hangs; none where nothing does.
pub(super) fn hangers(laid: &LaidFloor) -> Option<TableReply> {
    let all = [
        (Hung::JoistOnBeam, "joist on a beam or a ledger"),
        (Hung::HeaderOnTrimmer, "header over 6' on a trimmer"),
        (Hung::TailOnHeader, "tail over 12' on a header"),
    ];
    let row = |(hung, what): (Hung, &str)| {
        let count = laid.hangers.iter().filter(|hanger| hanger.hung == hung).count();
        (count > 0).then(|| vec![what.to_owned(), count.to_string()])
    };
    let rows: Vec<Vec<String>> = all.into_iter().filter_map(row).collect();
    let notes = vec![
        "By IRC R502.10, from memory; the hanger's label and the drawing win. Doubled joists are counted each."
            .to_owned(),
    ];
    (!rows.is_empty()).then(|| table("Hangers".to_owned(), &["what hangs", "count"], rows, notes))
}

/// The panels, row by row; none where there are none.
pub(super) fn panels(laid: &LaidFloor, end: &str) -> Option<TableReply> {
    let subfloor = laid.subfloor.as_ref()?;
    let row = |sheet: &FloorSheet| {
        let size = format!("{} x {}", inches(sheet.across.width()), inches(sheet.along.width()));
        vec![(sheet.row + 1).to_string(), inches(sheet.across.from), size]
    };
    let notes = vec![
        format!("From the {end} end, the row at the near side first. Chalk each row's line before its glue."),
        "Openings are cut out where they come.".to_owned(),
    ];
    let rows = subfloor.sheets.iter().map(row).collect();
    Some(table("Panels".to_owned(), &["row", "begins at", "cut to"], rows, notes))
}
