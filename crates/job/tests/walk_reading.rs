//! What stands now is read from the whole log, in whatever order it comes.

mod logs;

use std::collections::BTreeMap;
use std::sync::Arc;

use job::walk::{Because, Mark, Point, Record, RecordBody, Step, Walk};
use logs::{begun, drawn, follow_up, follows, log, look, mark, photo, record, struck};
use proptest::prelude::*;

/// Reads a log of one walk.
#[track_caller]
fn read(log: &[Record]) -> Walk {
    let mut walks = Walk::read(log);
    assert_eq!(walks.len(), 1);
    walks.remove(0)
}

/// A walk, a mark, a look, and what the test adds, numbered on.
fn walk_with(more: impl IntoIterator<Item = (&'static str, RecordBody)>) -> Vec<Record> {
    let first = [("w", begun()), ("a", mark("m1", "W1")), ("b", RecordBody::Look(Arc::new(look("m1", "first"))))];
    (1..).zip(first.into_iter().chain(more)).map(|(number, (id, body))| record(id, number, body)).collect()
}

#[track_caller]
fn only_mark(walk: &Walk) -> &Mark {
    assert_eq!(walk.marks.len(), 1);
    &walk.marks[0]
}

#[track_caller]
fn only_point(walk: &Walk) -> &Point {
    let mark = only_mark(walk);
    assert_eq!(mark.points.len(), 1);
    &mark.points[0]
}

/// How many records of each kind are read, over all places.
fn counted(walk: &Walk) -> BTreeMap<&'static str, usize> {
    let points = || walk.points().map(|(_, point)| point);
    let of_marks: usize = walk.marks.iter().map(|mark| mark.photos.len()).sum();
    BTreeMap::from([
        ("headings", walk.headings.len()),
        ("marks", walk.marks.iter().map(|mark| mark.versions.len()).sum()),
        ("looks", points().map(|point| point.looks.len()).sum()),
        ("photos", of_marks + points().map(|point| point.photos.len()).sum::<usize>()),
        ("follow_ups", points().map(|point| point.follow_ups.len()).sum()),
        ("signatures", walk.signatures.len()),
    ])
}

fn kind(record: &Record) -> Option<&'static str> {
    match record.body {
        RecordBody::Heading { .. } => Some("headings"),
        RecordBody::Mark(_) => Some("marks"),
        RecordBody::Look(_) => Some("looks"),
        RecordBody::Photo(_) => Some("photos"),
        RecordBody::FollowUp { .. } => Some("follow_ups"),
        RecordBody::Signed(_) => Some("signatures"),
        RecordBody::Begun { .. } | RecordBody::Drawn { .. } | RecordBody::Struck { .. } => None,
    }
}

proptest! {
    #[test]
    fn the_order_of_the_log_does_not_matter(
        (log, shuffled) in log().prop_flat_map(|log| (Just(log.clone()), Just(log).prop_shuffle()))
    ) {
        prop_assert_eq!(Walk::read(&shuffled), Walk::read(&log));
    }

    #[test]
    fn every_record_of_a_whole_log_is_read_once(log in log()) {
        let read = counted(&read(&log));
        for (name, count) in read {
            prop_assert_eq!(log.iter().filter(|record| kind(record) == Some(name)).count(), count, "{}", name);
        }
    }

    #[test]
    fn a_log_with_holes_reads_the_same_in_any_order_and_makes_nothing_up(
        (log, holes) in log().prop_flat_map(|log| {
            let len = log.len();
            (Just(log), proptest::sample::subsequence((0..len).collect::<Vec<_>>(), 0..=len))
        })
    ) {
        let with_holes: Vec<Record> = holes.iter().map(|at| log[*at].clone()).collect();
        let backwards: Vec<Record> = with_holes.iter().rev().cloned().collect();
        let walks = Walk::read(&with_holes);
        prop_assert_eq!(&Walk::read(&backwards), &walks);
        for (name, count) in walks.iter().flat_map(counted) {
            prop_assert!(with_holes.iter().filter(|record| kind(record) == Some(name)).count() >= count);
        }
    }
}

#[test]
fn a_correction_keeps_the_first_look() {
    let walk = read(&walk_with([
        ("c", follows("b", Because::Corrected, look("m1", "second"))),
        ("d", follows("c", Because::Mended, look("m1", "third"))),
    ]));
    let point = only_point(&walk);
    let notes: Vec<&str> = point.looks.iter().map(|look| look.what.note.as_str()).collect();
    assert_eq!(notes, ["first", "second", "third"]);
    assert_eq!(point.first().map(|look| look.id.as_str()), Some("b"));
    assert_eq!(point.now().map(|look| look.id.as_str()), Some("d"));
    assert!(point.was_mended());
}

#[test]
fn a_struck_record_is_still_there_with_its_reason() {
    let walk = read(&walk_with([
        ("c", follows("b", Because::Mended, look("m1", "second"))),
        ("d", struck("c", "wrong stud")),
    ]));
    let point = only_point(&walk);
    assert_eq!(point.looks[1].struck.as_deref(), Some("wrong stud"));
    assert_eq!(point.now().map(|look| look.id.as_str()), Some("b"));
    assert!(!point.was_mended());
}

#[test]
fn a_point_of_which_every_look_is_struck_has_none_that_counts() {
    let walk = read(&walk_with([("c", struck("b", "not my wall"))]));
    assert_eq!(only_point(&walk).now(), None);
    assert_eq!(only_point(&walk).looks.len(), 1);
}

#[test]
fn the_last_version_of_a_mark_that_is_not_struck_counts() {
    let wrong = walk_with([("c", mark("m1", "W2")), ("d", struck("c", "other wall"))]);
    let walk = read(&wrong);
    assert_eq!((only_mark(&walk).name(), only_mark(&walk).versions.len()), ("W1", 2));
    assert!(!only_mark(&walk).is_struck());
    let all = wrong.into_iter().chain([record("e", 9, struck("a", "no such wall"))]).collect::<Vec<_>>();
    let walk = read(&all);
    assert_eq!(only_mark(&walk).name(), "W2");
    assert!(only_mark(&walk).is_struck());
}

#[test]
fn a_struck_heading_and_a_struck_signature_do_not_count() {
    let heading = |plan: &str| RecordBody::Heading { fields: [("plan".to_owned(), plan.to_owned())].into() };
    let (name, title, closing) = ("A. Framer".to_owned(), String::new(), String::new());
    let signed = RecordBody::Signed(job::walk::Signature { name, title, closing, strokes: Vec::new() });
    let mut log = walk_with([("c", heading("sheet 1")), ("d", heading("sheet 2")), ("e", signed)]);
    assert_eq!((&*read(&log).heading()["plan"], read(&log).is_signed()), ("sheet 2", true));
    log.push(record("f", 8, struck("d", "old sheet")));
    log.push(record("g", 9, struck("e", "too early")));
    assert_eq!((&*read(&log).heading()["plan"], read(&log).is_signed()), ("sheet 1", false));
    assert_eq!((read(&log).headings.len(), read(&log).signatures.len()), (2, 1));
}

#[test]
fn follow_ups_photos_and_drawings_land_where_they_belong() {
    let walk = read(&walk_with([
        ("c", mark("m2", "garage left")),
        ("d", RecordBody::Look(Arc::new(look("m2", "other")))),
        ("e", follows("b", Because::Corrected, look("m1", "second"))),
        ("f", photo("m2", "p-mark")),
        ("g", photo("e", "p-look")),
        ("h", drawn("p-look", 5)),
        ("i", drawn("p-look", 9)),
        ("j", drawn("p-mark", 3)),
        ("k", follow_up("e", Step::Agreed, "nail it")),
    ]));
    let (first, second) = (&walk.marks[0], &walk.marks[1]);
    let [(of_look, strokes)] = first.points[0].photos.as_slice() else { panic!("one photo of the point") };
    assert_eq!((of_look.what.photo.as_str(), strokes), ("p-look", &vec![vec![(0, 0), (9, 9)]]));
    let [(of_mark, strokes)] = second.photos.as_slice() else { panic!("one photo of the mark") };
    assert_eq!((of_mark.what.photo.as_str(), strokes), ("p-mark", &vec![vec![(0, 0), (3, 3)]]));
    assert_eq!(first.points[0].follow_ups[0].what, (Step::Agreed, "nail it".to_owned()));
    assert!(first.photos.is_empty() && second.points[0].photos.is_empty() && second.points[0].follow_ups.is_empty());
}

#[test]
fn a_struck_drawing_leaves_the_one_before_it() {
    let walk = read(&walk_with([
        ("c", photo("b", "p1")),
        ("d", drawn("p1", 5)),
        ("e", drawn("p1", 9)),
        ("f", struck("e", "wrong stud")),
    ]));
    assert_eq!(only_point(&walk).photos[0].1, vec![vec![(0, 0), (5, 5)]]);
}

#[test]
fn a_photo_that_is_moved_to_another_place_takes_its_drawing_with_it() {
    let walk = read(&walk_with([
        ("c", photo("b", "p1")),
        ("d", drawn("p1", 5)),
        ("e", struck("c", "of the mark")),
        ("f", photo("m1", "p1")),
    ]));
    assert_eq!(only_mark(&walk).photos[0].1, vec![vec![(0, 0), (5, 5)]]);
    assert_eq!(only_point(&walk).photos[0].0.struck.as_deref(), Some("of the mark"));
}

#[test]
fn a_record_of_something_missing_is_passed_over_and_all_else_reads() {
    let whole = walk_with([("c", photo("b", "p1"))]);
    let strays = [
        RecordBody::Look(Arc::new(look("gone", ""))),
        photo("gone", "p2"),
        drawn("gone", 5),
        follow_up("gone", Step::Done, ""),
        follow_up("m1", Step::Done, "a mark is no look"),
        struck("gone", ""),
    ];
    for stray in strays {
        let log: Vec<Record> = whole.iter().cloned().chain([record("x", 9, stray)]).collect();
        assert_eq!(Walk::read(&log), Walk::read(&whole));
    }
    let other_walk = Record { walk: "gone".to_owned(), ..record("x", 9, mark("m9", "W9")) };
    let log: Vec<Record> = whole.iter().cloned().chain([other_walk]).collect();
    assert_eq!(Walk::read(&log), Walk::read(&whole));
}

#[test]
fn a_look_that_follows_a_missing_one_stands_until_that_one_comes() {
    let mut log = walk_with([("c", follows("b", Because::Corrected, look("m1", "second")))]);
    let first = log.remove(2);
    assert_eq!(only_point(&read(&log)).looks.len(), 1);
    log.push(first);
    assert_eq!(only_point(&read(&log)).looks.len(), 2);
}

#[test]
fn a_log_without_its_beginning_reads_as_no_walk() {
    assert!(Walk::read(&walk_with([])[1..]).is_empty());
}
