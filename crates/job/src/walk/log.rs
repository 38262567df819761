//! Bringing logs together.

use std::collections::BTreeSet;

use super::record::Record;

/// Brings two logs of a job together. A record is never changed once it is added, so one that both hold is the same;
/// where a file was tampered with, the one that is already here stands. Gives the log in its own order: by number, then
/// by id.
#[must_use]
pub fn merge_logs(here: Vec<Record>, coming: Vec<Record>) -> Vec<Record> {
    let mut log: Vec<Record> = here.into_iter().chain(coming).collect();
    if has_doubles(&log) {
        let mut known: BTreeSet<String> = BTreeSet::new();
        log.retain(|record| known.insert(record.id.clone()));
    }
    log.sort_by(|a, b| (a.number, &a.id).cmp(&(b.number, &b.id)));
    log
}

/// Whether an id is there twice. A log is long and mostly without any, so nothing is copied to find out.
fn has_doubles(log: &[Record]) -> bool {
    let mut ids: Vec<&str> = log.iter().map(|record| record.id.as_str()).collect();
    ids.sort_unstable();
    ids.windows(2).any(|pair| pair[0] == pair[1])
}

/// The number of the next record of a log.
#[must_use]
pub fn next_number<'a>(log: impl IntoIterator<Item = &'a Record>) -> u32 {
    log.into_iter().map(|record| record.number).max().unwrap_or(0).saturating_add(1)
}
