//! The set-out of the strips: where they go, where they are joined, and what to buy.

use layout::strapping::{Row, Strapping, TakeOff};
use measure::Length;

use super::given::Given;
use crate::quick::reply::{FactReply, TableReply};
use crate::quick::say::{fact, length_fact};
use crate::words;

const SAME: Length = Length::from_inches(1e-6);

pub(super) fn headline(given: &Given, strapping: &Strapping) -> (String, String) {
    let joints = if strapping.joints > 0 { "with joints on joists" } else { "each in one piece" };
    (format!("{} rows", strapping.rows.len()), format!("at {}, {joints}", words::inches(given.room.spacing)))
}

pub(super) fn action(given: &Given, strapping: &Strapping, takes: &TakeOff) -> Vec<String> {
    let room = &given.room;
    let mut says = vec![where_they_go(strapping)];
    says.extend(joints(strapping));
    says.push(format!(
        "Take {} of {} {}: {} of {}. {} nails or screws.",
        several(takes.strips, "strip"),
        given.strip,
        words::length(room.stock.length()),
        several(takes.bundles, "bundle"),
        given.buy.bundle,
        takes.fasteners
    ));
    says.extend(beware(given, strapping));
    says
}

fn several(count: usize, thing: &str) -> String {
    if count == 1 { format!("1 {thing}") } else { format!("{count} {thing}s") }
}

fn where_they_go(strapping: &Strapping) -> String {
    let last = strapping.rows.len().saturating_sub(1);
    let inner: Vec<String> = (1..last).filter_map(|row| Some(words::inches(strapping.rows.get(row)?.centre))).collect();
    let between = match inner.as_slice() {
        [] => String::new(),
        [only] => format!(" Then one with its centre at {only} from that wall."),
        [first, second] => format!(" Then centres at {first} and {second}, both from that wall."),
        [first, second, ..] => format!(" Then centres at {first}, {second} and so on, all from that wall."),
    };
    format!("First strip tight to the near wall.{between} The last strip tight to the far wall.")
}

/// Joints of the first two rows, which the others repeat.
fn joints(strapping: &Strapping) -> Option<String> {
    let of = |(index, row): (usize, &Row)| {
        let on: Vec<String> =
            row.runs.iter().flat_map(|run| &run.joints).map(|joist| (joist + 1).to_string()).collect();
        (!on.is_empty()).then(|| {
            format!("row {} on {} {}", index + 1, if on.len() == 1 { "joist" } else { "joists" }, on.join(" and "))
        })
    };
    let named: Vec<String> = strapping.rows.iter().enumerate().filter_map(of).take(2).collect();
    (!named.is_empty())
        .then(|| format!("Joints on the middle of a joist: {}; the table has every row.", named.join(", ")))
}

/// What does not come out even.
fn beware(given: &Given, strapping: &Strapping) -> Vec<String> {
    let room = &given.room;
    let mut says = Vec::new();
    if let Some(last) = strapping.rows.last().filter(|last| room.strip.width - last.width > SAME) {
        says.push(format!("Rip the last strip to {}.", words::inches(last.width)));
    }
    if strapping.widest - room.spacing > SAME {
        says.push(format!(
            "Beside the far wall the rows are {} apart: a board at its limit takes one row more there.",
            words::inches(strapping.widest)
        ));
    }
    if !strapping.board_edges_land {
        says.push("Not every edge of 48\" boards from the near wall has a strip under it: take another spacing, or back the edges.".to_owned());
    }
    if !strapping.unstaggered.is_empty() {
        let rows: Vec<String> = strapping.unstaggered.iter().take(4).map(|row| (row + 1).to_string()).collect();
        says.push(format!(
            "Joints beside each other: no other joist is within reach at row {}. Longer strips part them.",
            rows.join(", ")
        ));
    }
    if strapping.rows.iter().flat_map(|row| &row.runs).any(|run| run.loose) {
        says.push("Fewer than two joists hold a strip: put in blocking.".to_owned());
    }
    says
}

pub(super) fn facts(given: &Given, strapping: &Strapping, takes: &TakeOff) -> Vec<FactReply> {
    let counted = |name: &str, what: &str, count: usize| fact(name, what, count as f64, count.to_string());
    vec![
        counted("rows", "rows of strips", strapping.rows.len()),
        counted("strips", "strips to buy", takes.strips),
        counted("strips_at_least", "no cutting needs fewer than", takes.at_least),
        counted("bundles", "bundles", takes.bundles),
        counted("pieces", "pieces, short ones counted", takes.pieces),
        counted("short_pieces", "short pieces along the walls", strapping.short_pieces.iter().map(Vec::len).sum()),
        counted("crossings", "where a strip crosses a joist", strapping.crossings),
        counted("joints", "joints on joists", strapping.joints),
        counted("fasteners", "nails or screws", takes.fasteners),
        length_fact("pieces_in", "all pieces, one after the other", takes.length),
        length_fact("waste_in", "left over, saw cuts in it", takes.waste),
        length_fact("widest_in", "widest from row to row", strapping.widest),
        counted("joists", "joists", given.room.joists.len()),
    ]
}

/// Every row with its pieces.
pub(super) fn rows(given: &Given, strapping: &Strapping) -> TableReply {
    let line = |(index, row): (usize, &Row)| {
        let pieces: Vec<String> =
            row.runs.iter().flat_map(|run| &run.pieces).map(|piece| words::length(*piece)).collect();
        let joints: Vec<String> =
            row.runs.iter().flat_map(|run| &run.joints).map(|joist| (joist + 1).to_string()).collect();
        let joints = if joints.is_empty() { "none".to_owned() } else { joints.join(", ") };
        vec![(index + 1).to_string(), words::inches(row.centre), pieces.join(" + "), joints]
    };
    let mut notes = vec!["Centres from the near wall, pieces from the left wall, joists counted from it.".to_owned()];
    let short = |name: &str, pieces: &[Length]| {
        let (first, inner) = (pieces.first()?, pieces.get(1).or(pieces.first())?);
        Some(format!(
            "Along the {name} wall {} short pieces: {} most of them, {} the first. Measure each.",
            pieces.len(),
            words::inches(*inner),
            words::inches(*first)
        ))
    };
    notes.extend(
        ["left", "right"].into_iter().zip(&strapping.short_pieces).filter_map(|(name, pieces)| short(name, pieces)),
    );
    TableReply {
        heading: format!("Rows of {}", given.strip),
        columns: ["row", "centre", "pieces", "joints on joist"].map(str::to_owned).to_vec(),
        rows: strapping.rows.iter().enumerate().map(line).collect(),
        notes,
    }
}
