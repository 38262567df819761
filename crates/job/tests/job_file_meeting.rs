//! A file is brought into the job that is here, or taken in as a job of its own: nothing is overwritten or lost.

mod logs;

use std::collections::{BTreeMap, BTreeSet};

use job::file::{CameIn, FileError, Here, JobFile, Met, as_copy, merge_file, read_job_file, write_job_file};
use job::walk::{Record, Walk, merge_logs};
use job::{Fields, Job, Part, PartBody};
use logs::{JOB, file, header, ids, parts, some_of};
use proptest::collection::vec;
use proptest::prelude::*;
use serde_json::Value;

/// Brings a file into another.
#[track_caller]
#[expect(clippy::expect_used, reason = "a helper of tests: a panic is the report")]
fn met(here: &JobFile, coming: &JobFile) -> Met {
    let photos = here.photos.keys().cloned().collect();
    let here = Here { job: &here.job, parts: &here.parts, log: &here.log, photos: &photos };
    merge_file(here, coming.clone(), &mut ids()).expect("the same job")
}

/// What is here after a file was brought in.
fn after(here: &JobFile, met: &Met) -> JobFile {
    let photos = here.photos.iter().chain(&met.photos).map(|(id, bytes)| (id.clone(), bytes.clone())).collect();
    JobFile { job: here.job.clone(), parts: met.parts.clone(), log: met.log.clone(), photos }
}

fn holding(parts: Vec<Part>) -> JobFile {
    JobFile { job: JOB.to_owned(), parts, ..JobFile::default() }
}

/// Two phones' files of one job: their logs are of one log, photos of one id are the same photo.
fn two_files() -> impl Strategy<Value = (JobFile, JobFile)> {
    let has = || vec(any::<bool>(), 30);
    (file(), parts(), has(), has()).prop_map(|(all, parts, one, other)| {
        let side = |parts: Vec<Part>, has: &[bool]| {
            let photos = all.photos.clone().into_iter().zip(has).filter(|(_, has)| **has).map(|(photo, _)| photo);
            JobFile { job: all.job.clone(), parts, log: some_of(&all.log, has), photos: photos.collect() }
        };
        (side(all.parts.clone(), &one), side(parts, &other))
    })
}

/// The body with nothing in it that a copy changes.
fn typed(body: &PartBody) -> (String, Fields) {
    match body {
        PartBody::Head { name } => (name.trim_end_matches(" (copy)").to_owned(), Fields::new()),
        PartBody::Site { fields } => (String::new(), fields.clone()),
        PartBody::Header(header) => (header.name.replace(" (from the file)", ""), header.fields.clone()),
    }
}

proptest! {
    #[test]
    fn taking_the_same_file_in_again_changes_nothing((here, coming) in two_files()) {
        let once = after(&here, &met(&here, &coming));
        let again = met(&once, &coming);
        prop_assert_eq!(again.came_in, CameIn::default());
        prop_assert_eq!(after(&once, &again), once);
    }

    #[test]
    fn both_orders_of_meeting_give_the_same_log_and_photos((one, other) in two_files()) {
        let (here, there) = (after(&one, &met(&one, &other)), after(&other, &met(&other, &one)));
        prop_assert_eq!(&here.log, &there.log);
        prop_assert_eq!(&here.photos, &there.photos);
        prop_assert_eq!(here.log, merge_logs(one.log, other.log));
    }

    #[test]
    fn nothing_of_either_side_is_lost((here, coming) in two_files()) {
        let met = met(&here, &coming);
        let kept = met.parts.iter().chain(&met.older).chain(&met.clashes);
        let kept: Vec<_> = kept.map(|part| typed(&part.body)).collect();
        for part in here.parts.iter().chain(&coming.parts) {
            prop_assert!(kept.contains(&typed(&part.body)));
        }
        for record in here.log.iter().chain(&coming.log) {
            prop_assert!(met.log.contains(record));
        }
        prop_assert!(coming.photos.keys().all(|id| here.photos.contains_key(id) || met.photos.contains_key(id)));
        prop_assert!(met.changed_records.is_empty());
    }

    #[test]
    fn what_came_in_is_counted((here, coming) in two_files()) {
        let met = met(&here, &coming);
        prop_assert_eq!(met.came_in.records, met.log.len() - here.log.len());
        prop_assert_eq!(met.came_in.photos, met.photos.len());
        prop_assert_eq!(met.came_in.new_parts + met.came_in.copies, met.parts.len() - here.parts.len());
    }

    #[test]
    fn a_file_taken_into_an_empty_place_gives_the_same_job(file in file()) {
        let bytes = write_job_file(&file).expect("a good job must be written");
        let coming = read_job_file(&bytes).expect("what was written must be read");
        let empty = holding(Vec::new());
        let here = after(&empty, &met(&empty, &coming));
        prop_assert_eq!(Job::from_parts(JOB, &here.parts), Job::from_parts(JOB, &file.parts));
        prop_assert_eq!(Walk::read(&here.log), Walk::read(&file.log));
        prop_assert_eq!(here.photos, file.photos);
    }

    #[test]
    fn a_copy_is_the_same_job_and_shares_no_id_with_it(file in file()) {
        let copy = as_copy(file.clone(), &mut ids());
        prop_assert_eq!(&read_job_file(&write_job_file(&copy).expect("a copy is a good job")).expect("reads"), &copy);
        prop_assert!(all_ids(&copy).is_disjoint(&all_ids(&file)));
        prop_assert_eq!(all_ids(&copy).len(), all_ids(&file).len());
        prop_assert_eq!(shape(&copy.log), shape(&file.log));
        prop_assert_eq!(copy.photos.values().collect::<BTreeSet<_>>(), file.photos.values().collect::<BTreeSet<_>>());
        let one = |part: &Part| (part.revision, typed(&part.body));
        let typed_in = |file: &JobFile| file.parts.iter().map(one).collect::<Vec<_>>();
        prop_assert_eq!(typed_in(&copy), typed_in(&file));
        let says_so = |part: &Part| !matches!(&part.body, PartBody::Head { name } if !name.ends_with(" (copy)"));
        prop_assert!(copy.parts.iter().all(says_so));
    }

    #[test]
    fn a_copy_of_a_log_with_holes_still_speaks_of_what_is_missing(file in file(), has in vec(any::<bool>(), 30)) {
        let holes = JobFile { log: some_of(&file.log, &has), ..file.clone() };
        prop_assert_eq!(shape(&as_copy(holes.clone(), &mut ids()).log), shape(&holes.log));
    }
}

/// Every id that is stored of a job: its own, and those of checks, records, walks, marks and photos.
fn all_ids(file: &JobFile) -> BTreeSet<String> {
    let checks = file.parts.iter().filter_map(|part| match &part.body {
        PartBody::Header(header) => Some(header.id.clone()),
        PartBody::Head { .. } | PartBody::Site { .. } => None,
    });
    let jobs = file.parts.iter().map(|part| &part.job).chain(file.log.iter().map(|record| &record.job));
    let records = file.log.iter().flat_map(|record| [record.id.clone(), record.walk.clone()]);
    let marks = Walk::read(&file.log).into_iter().flat_map(|walk| walk.marks).map(|mark| mark.id);
    let ids = checks.chain(jobs.cloned()).chain(records).chain(marks).chain(file.photos.keys().cloned());
    ids.chain([file.job.clone()]).collect()
}

/// A log with every id replaced by when it first turned up.
fn shape(log: &[Record]) -> Vec<Value> {
    let mut order = BTreeMap::new();
    let mut values: Vec<Value> = log.iter().filter_map(|record| serde_json::to_value(record).ok()).collect();
    values.iter_mut().for_each(|value| number_ids(value, &mut order));
    values
}

fn number_ids(value: &mut Value, order: &mut BTreeMap<String, usize>) {
    const IDS: [&str; 8] = ["id", "job", "walk", "mark", "look", "photo", "of", "record"];
    let Value::Object(pairs) = value else { return };
    for (key, value) in pairs {
        if let (true, Value::String(id)) = (IDS.contains(&key.as_str()), &mut *value) {
            let next = order.len();
            *id = order.entry(id.clone()).or_insert(next).to_string();
        } else {
            number_ids(value, order);
        }
    }
}

#[test]
fn a_file_of_another_job_is_refused() {
    let (here, coming) = (holding(Vec::new()), JobFile { job: "j2".to_owned(), ..JobFile::default() });
    let photos = BTreeSet::new();
    let here = Here { job: &here.job, parts: &[], log: &[], photos: &photos };
    assert_eq!(merge_file(here, coming, &mut ids()), Err(FileError::OtherJob { found: "j2".to_owned() }));
}

#[test]
fn of_two_revisions_the_later_one_stands_and_the_older_is_given_back() {
    let head =
        |revision: u32, name: &str| Part { revision, ..Part::new(JOB, PartBody::Head { name: name.to_owned() }) };
    let (older, later) = (head(2, "Beach house"), head(5, "House by the beach"));
    for (here, coming, came) in [(&older, &later, 1), (&later, &older, 0)] {
        let met = met(&holding(vec![here.clone()]), &holding(vec![coming.clone()]));
        assert_eq!((met.parts, met.older), (vec![later.clone()], vec![older.clone()]));
        assert_eq!(met.came_in.later_parts, came);
    }
}

#[test]
fn a_check_that_both_changed_is_kept_twice() {
    let side = |width: &str| {
        let fields = Fields::from([("opening_width".to_owned(), width.to_owned())]);
        holding(vec![Part { revision: 2, ..Part::new(JOB, header("h1", "Header 1", fields)) }])
    };
    let met = met(&side("6'"), &side("8'"));
    let job = Job::from_parts(JOB, &met.parts);
    let checks: Vec<_> =
        job.headers.iter().map(|h| (h.id.as_str(), h.name.as_str(), h.fields["opening_width"].as_str())).collect();
    assert_eq!(checks, [("h1", "Header 1", "6'"), ("new-1", "Header 1 (from the file)", "8'")]);
    assert_eq!(met.came_in, CameIn { copies: 1, ..CameIn::default() });
    assert!(met.clashes.is_empty() && met.older.is_empty());
}

#[test]
fn site_values_that_both_changed_are_given_back() {
    let site = |snow: &str| {
        let fields = Fields::from([("ground_snow".to_owned(), snow.to_owned())]);
        Part::new(JOB, PartBody::Site { fields })
    };
    let met = met(&holding(vec![site("30 psf")]), &holding(vec![site("20 psf")]));
    assert_eq!((met.parts, met.clashes), (vec![site("30 psf")], vec![site("20 psf")]));
    assert_eq!(met.came_in, CameIn::default());
}

#[test]
fn a_record_that_was_changed_by_hand_does_not_replace_the_one_here() {
    let log = logs::log_of(&[]);
    let mut changed = log.clone();
    changed[2].by = "somebody else".to_owned();
    let here = JobFile { log: log.clone(), ..holding(Vec::new()) };
    let met = met(&here, &JobFile { log: changed.clone(), ..holding(Vec::new()) });
    assert_eq!((met.log, met.changed_records), (log, vec![changed[2].clone()]));
    assert_eq!(met.came_in.records, 0);
}

#[test]
fn a_photo_that_is_here_stands() {
    let with =
        |bytes: &[u8]| JobFile { photos: BTreeMap::from([("p1".to_owned(), bytes.to_vec())]), ..holding(Vec::new()) };
    assert!(met(&with(b"here"), &with(b"coming")).photos.is_empty());
}
