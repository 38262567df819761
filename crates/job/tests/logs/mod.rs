//! Logs and files for the tests: invented walks in which every record speaks of one that was there before it.
#![allow(dead_code, reason = "each file of tests uses what it needs of it")]

use std::collections::BTreeMap;
use std::sync::Arc;

use job::file::JobFile;
use job::walk::{Because, Follows, Lists, Look, MarkVersion, Photo, Record, RecordBody, Signature, Step};
use job::{Fields, Part, PartBody, SavedHeader};
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::Index;

pub const JOB: &str = "j1";

pub fn record(id: &str, number: u32, body: RecordBody) -> Record {
    Record::new(id.to_owned(), JOB, "w", number, body)
}

pub fn begun() -> RecordBody {
    RecordBody::Begun { name: "Walk 1".to_owned() }
}

pub fn mark(mark: &str, name: &str) -> RecordBody {
    RecordBody::Mark(MarkVersion { mark: mark.to_owned(), name: name.to_owned(), fields: Fields::new() })
}

pub fn look(mark: &str, note: &str) -> Look {
    Look {
        mark: mark.to_owned(),
        place: "third bay".to_owned(),
        kind: "stud_spacing".to_owned(),
        texts: Fields::new(),
        lists: Lists::from([("pulls".to_owned(), vec!["16".to_owned(), "33".to_owned()])]),
        verdict: "out".to_owned(),
        says: String::new(),
        severity: String::new(),
        note: note.to_owned(),
        follows: None,
    }
}

pub fn follows(before: &str, because: Because, look: Look) -> RecordBody {
    let follows = Follows { look: before.to_owned(), because, why: "read the tape wrong".to_owned() };
    RecordBody::Look(Arc::new(Look { follows: Some(follows), ..look }))
}

pub fn photo(of: &str, photo: &str) -> RecordBody {
    let (of, photo) = (of.to_owned(), photo.to_owned());
    let (shows, caption) = ("close".to_owned(), String::new());
    RecordBody::Photo(Photo { of, photo, width: 800, height: 600, shows, tape_in_view: true, caption })
}

pub fn drawn(photo: &str, to: u16) -> RecordBody {
    RecordBody::Drawn { photo: photo.to_owned(), strokes: vec![vec![(0, 0), (to, to)]] }
}

pub fn follow_up(look: &str, step: Step, says: &str) -> RecordBody {
    RecordBody::FollowUp { look: look.to_owned(), step, says: says.to_owned() }
}

pub fn struck(record: &str, why: &str) -> RecordBody {
    RecordBody::Struck { record: record.to_owned(), why: why.to_owned() }
}

/// One thing that somebody does on a walk: which, with which of the things before it, in which words, and whether the
/// phone knew of the record before.
pub type Act = (u8, Index, String, bool);

pub fn acts() -> impl Strategy<Value = Vec<Act>> {
    vec((0_u8..9, any::<Index>(), ".{0,8}", any::<bool>()), 0..25)
}

pub fn log() -> impl Strategy<Value = Vec<Record>> {
    acts().prop_map(|acts| log_of(&acts))
}

/// The log that these acts leave, beginning with a walk, a mark, a look and a photo.
pub fn log_of(acts: &[Act]) -> Vec<Record> {
    let mut log = vec![
        record("w", 1, begun()),
        record("r0", 2, mark("m0", "W1")),
        record("r1", 3, RecordBody::Look(Arc::new(look("m0", "")))),
        record("r2", 4, photo("r1", "p0")),
    ];
    let (mut marks, mut looks, mut photos) = (vec!["m0".to_owned()], vec!["r1".to_owned()], vec!["p0".to_owned()]);
    let mut number = 4;
    for (at, (kind, which, words, knew)) in acts.iter().enumerate() {
        let id = format!("s{at:03}");
        number += u32::from(*knew);
        let (a_mark, a_look, a_photo) = (which.get(&marks), which.get(&looks), which.get(&photos));
        let body = match kind {
            0 => RecordBody::Heading { fields: Fields::from([("plan".to_owned(), words.clone())]) },
            1 => mark(a_mark, words),
            2 => mark(&format!("m{id}"), words),
            3 => RecordBody::Look(Arc::new(look(a_mark, words))),
            4 => follows(a_look, Because::Mended, look("m0", words)),
            5 => photo(if *knew { a_look } else { a_mark }, &format!("p{id}")),
            6 => drawn(a_photo, 7),
            7 => follow_up(a_look, Step::Agreed, words),
            _ => struck(which.get(&log).id.as_str(), words),
        };
        match kind {
            2 => marks.push(format!("m{id}")),
            3 | 4 => looks.push(id.clone()),
            5 => photos.push(format!("p{id}")),
            _ => {}
        }
        log.push(record(&id, number, body));
    }
    let strokes = vec![vec![(1, 2)]];
    let (name, title, closing) = ("A. Framer".to_owned(), String::new(), "as_seen".to_owned());
    log.push(record("z", number + 1, RecordBody::Signed(Signature { name, title, closing, strokes })));
    log
}

/// The part of a log that one phone has.
pub fn some_of(log: &[Record], has: &[bool]) -> Vec<Record> {
    let has = has.iter().chain(std::iter::repeat(&true));
    log.iter().zip(has).filter(|(_, has)| **has).map(|(record, _)| record.clone()).collect()
}

pub fn fields() -> impl Strategy<Value = Fields> {
    proptest::collection::btree_map("[a-z_]{1,8}", any::<String>(), 0..4)
}

pub fn header(id: &str, name: &str, fields: Fields) -> PartBody {
    let (id, name) = (id.to_owned(), name.to_owned());
    PartBody::Header(SavedHeader { id, name, fields, answer: String::new(), saved_at: String::new() })
}

/// The parts of a job, each once, in a few revisions.
pub fn parts() -> impl Strategy<Value = Vec<Part>> {
    let one = (0_usize..5, 1_u32..4, "[A-D]", fields());
    vec(one, 0..6).prop_map(|all| {
        let part = |(which, revision, name, fields): (usize, u32, String, Fields)| {
            let body = match which {
                0 => PartBody::Head { name },
                1 => PartBody::Site { fields },
                _ => header(&format!("h{which}"), &name, fields),
            };
            Part { revision, ..Part::new(JOB, body) }
        };
        let by_key: BTreeMap<_, _> = all.into_iter().map(part).map(|part| (part.key(), part)).collect();
        by_key.into_values().collect()
    })
}

pub fn file() -> impl Strategy<Value = JobFile> {
    let photos = proptest::collection::btree_map("p[a-z0-9-]{1,8}", vec(any::<u8>(), 0..60), 0..4);
    (parts(), log(), photos).prop_map(|(parts, log, photos)| JobFile { job: JOB.to_owned(), parts, log, photos })
}

/// Gives ids that no test has.
pub fn ids() -> impl FnMut() -> String {
    let mut given = 0_u32;
    move || {
        given += 1;
        format!("new-{given}")
    }
}
