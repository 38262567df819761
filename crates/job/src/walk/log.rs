//! Bringing logs together.

use std::collections::{BTreeMap, BTreeSet};

use super::record::Record;

/// Brings two logs of a job together. A record is never changed once it is added, so one that both hold is the same;
/// where a file was tampered with, the one that is already here stands. Gives the log in its own order: by number, then
/// by id.
#[must_use]
pub fn merge_logs(here: Vec<Record>, coming: Vec<Record>) -> Vec<Record> {
    let mut known: BTreeSet<String> = BTreeSet::new();
    let mut in_order: BTreeMap<(u32, String), Record> = BTreeMap::new();
    for record in here.into_iter().chain(coming) {
        if known.insert(record.id.clone()) {
            in_order.insert((record.number, record.id.clone()), record);
        }
    }
    in_order.into_values().collect()
}

/// The number of the next record of a log.
#[must_use]
pub fn next_number<'a>(log: impl IntoIterator<Item = &'a Record>) -> u32 {
    log.into_iter().map(|record| record.number).max().unwrap_or(0).saturating_add(1)
}
