//! Tables of shims: row by row, and the pieces that each thickness is made of.

use std::collections::BTreeMap;

use layout::strapping::{Known, Shim, ShimPlan};
use measure::Length;

use super::shimmed::Shimmed;
use crate::quick::reply::TableReply;
use crate::words;

/// Joists side by side in a table.
const ABREAST: usize = 6;

pub(super) fn tables(shimmed: &Shimmed) -> Vec<TableReply> {
    let mut tables = by_row(shimmed, &shimmed.plan, "Shims");
    tables.extend(stacks(shimmed));
    if let Some(better) = shimmed.planing.as_ref().and_then(|planing| planing.better.as_ref()) {
        tables.extend(by_row(shimmed, &better.plan, "Shims, with planing"));
    }
    tables
}

/// The shims row by row, so many joists side by side.
fn by_row(shimmed: &Shimmed, plan: &ShimPlan, heading: &str) -> Vec<TableReply> {
    let cells: BTreeMap<(usize, usize), String> = shimmed
        .under_strips(plan)
        .filter_map(|shim| Some(((shimmed.strip(shim.at)?, shim.at.joist), cell(shim))))
        .collect();
    let rows: Vec<usize> = shimmed.reads.strips.iter().copied().flatten().collect();
    let joists: Vec<usize> = (0..shimmed.reads.readings.joists().len()).collect();
    let part = |joists: &[usize]| {
        let (from, to) = (joists.first().map_or(0, |joist| joist + 1), joists.last().map_or(0, |joist| joist + 1));
        let columns = joists.iter().map(|joist| (joist + 1).to_string());
        let line = |row: &usize| {
            let of = |joist: &usize| cells.get(&(*row, *joist)).cloned().unwrap_or_else(|| "-".to_owned());
            core::iter::once(format!("row {}", row + 1)).chain(joists.iter().map(of)).collect()
        };
        TableReply {
            heading: format!("{heading}, joists {from} to {to}"),
            columns: core::iter::once("joist".to_owned()).chain(columns).collect(),
            rows: rows.iter().map(line).collect(),
            notes: vec![
                "Inches. 0: the strip lies on the joist. ?: not read, on the line between two readings. -: not known."
                    .to_owned(),
            ],
        }
    };
    joists.chunks(ABREAST).map(part).collect()
}

fn cell(shim: &Shim) -> String {
    let inches = |length: Length| words::inches(length).trim_end_matches('"').to_owned();
    let thickness = if shim.exact < Length::from_inches(-1.0 / 32.0) {
        format!("plane {}", inches(-shim.exact))
    } else {
        inches(shim.thickness)
    };
    if shim.known == Known::Interpolated { format!("{thickness}?") } else { thickness }
}

/// Every thickness, how many of it, and its pieces.
fn stacks(shimmed: &Shimmed) -> Option<TableReply> {
    let mut counts: BTreeMap<i64, (usize, &Shim)> = BTreeMap::new();
    for shim in shimmed.under_strips(&shimmed.plan).filter(|shim| shim.thickness > Length::ZERO) {
        counts.entry((shim.thickness.inches() * 16.0).round() as i64).or_insert((0, shim)).0 += 1;
    }
    if counts.is_empty() {
        return None;
    }
    let row = |(count, shim): &(usize, &Shim)| {
        let made = shim.stack.as_deref().map_or_else(|| "nothing at hand".to_owned(), stacked);
        vec![words::inches(shim.thickness), count.to_string(), made]
    };
    Some(TableReply {
        heading: "Shims to make".to_owned(),
        columns: ["thickness", "how many", "made of"].map(str::to_owned).to_vec(),
        rows: counts.values().map(row).collect(),
        notes: Vec::new(),
    })
}

/// The pieces of a stack, the thickest first.
pub(super) fn stacked(stack: &[Length]) -> String {
    stack.iter().map(|piece| words::inches(*piece)).collect::<Vec<_>>().join(" + ")
}
