//! Two phones add to one walk: their logs meet without losing a record, whichever comes first.

mod logs;

use std::collections::BTreeSet;

use job::walk::{Record, merge_logs, next_number, open_record};
use logs::{log, some_of};
use proptest::collection::vec;
use proptest::prelude::*;

fn ids(log: &[Record]) -> BTreeSet<&str> {
    log.iter().map(|record| record.id.as_str()).collect()
}

proptest! {
    #[test]
    fn which_log_comes_first_does_not_matter(
        log in log(), one in vec(any::<bool>(), 30), other in vec(any::<bool>(), 30)
    ) {
        let (one, other) = (some_of(&log, &one), some_of(&log, &other));
        prop_assert_eq!(merge_logs(one.clone(), other.clone()), merge_logs(other, one));
    }

    #[test]
    fn three_logs_meet_in_any_grouping(
        log in log(), has in vec((any::<bool>(), any::<bool>(), any::<bool>()), 30)
    ) {
        let one = some_of(&log, &has.iter().map(|has| has.0).collect::<Vec<_>>());
        let two = some_of(&log, &has.iter().map(|has| has.1).collect::<Vec<_>>());
        let three = some_of(&log, &has.iter().map(|has| has.2).collect::<Vec<_>>());
        let left = merge_logs(merge_logs(one.clone(), two.clone()), three.clone());
        prop_assert_eq!(left, merge_logs(one, merge_logs(two, three)));
    }

    #[test]
    fn meeting_again_changes_nothing(log in log(), one in vec(any::<bool>(), 30), other in vec(any::<bool>(), 30)) {
        let (one, other) = (some_of(&log, &one), some_of(&log, &other));
        let met = merge_logs(one, other.clone());
        prop_assert_eq!(&merge_logs(met.clone(), other), &met);
        prop_assert_eq!(&merge_logs(met.clone(), met.clone()), &met);
    }

    #[test]
    fn every_record_of_both_is_there_once_and_as_it_was(
        log in log(), one in vec(any::<bool>(), 30), other in vec(any::<bool>(), 30)
    ) {
        let (one, other) = (some_of(&log, &one), some_of(&log, &other));
        let met = merge_logs(one.clone(), other.clone());
        for record in one.iter().chain(&other) {
            prop_assert!(met.contains(record));
        }
        prop_assert_eq!(met.len(), ids(&one).union(&ids(&other)).count());
        prop_assert!(met.is_sorted_by_key(|record| (record.number, record.id.clone())));
    }

    #[test]
    fn where_a_record_was_tampered_with_the_one_here_stands(log in log(), by in "[a-z]{1,5}") {
        let here = merge_logs(log.clone(), Vec::new());
        let coming = log.into_iter().map(|record| Record { by: by.clone(), number: 9, ..record }).collect();
        prop_assert_eq!(merge_logs(here.clone(), coming), here);
    }

    #[test]
    fn the_next_number_is_above_all(log in log()) {
        let next = next_number(&log);
        prop_assert!(log.iter().all(|record| record.number < next));
    }

    #[test]
    fn a_record_is_read_back_as_written(log in log()) {
        for record in log {
            prop_assert_eq!(open_record(record.to_json().as_bytes()), Ok(record));
        }
    }

    #[test]
    fn any_bytes_open_or_give_a_reason_and_themselves_back(
        log in log(), at in any::<prop::sample::Index>(), byte in any::<u8>()
    ) {
        let mut bytes = at.get(&log).to_json().into_bytes();
        let place = at.index(bytes.len());
        bytes[place] = byte;
        if let Err(error) = open_record(&bytes) {
            prop_assert_eq!(error.bytes(), &bytes[..]);
        }
    }
}

#[test]
fn the_first_number_is_one_and_the_last_one_is_not_passed() {
    assert_eq!(next_number(&[]), 1);
    assert_eq!(next_number(&[logs::record("w", u32::MAX, logs::begun())]), u32::MAX);
}
