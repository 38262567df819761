//! Logs to read walks from.

use std::collections::BTreeMap;
use std::sync::Arc;

use job::walk::{Because, Follows, Lists, Look, MarkVersion, Photo, Record, RecordBody, Signature, Step, Stroke, Walk};

/// A log that is added to record by record, a minute between two of them.
#[derive(Default)]
pub struct Log {
    pub records: Vec<Record>,
}

/// Texts by their names.
pub fn fields(pairs: &[(&str, &str)]) -> BTreeMap<String, String> {
    pairs.iter().map(|(name, text)| ((*name).to_owned(), (*text).to_owned())).collect()
}

/// Studs pulled from the end of the plate, with 16 inches asked for on a drawing.
pub fn studs(pulls: &[&str]) -> Look {
    let pulls = pulls.iter().map(|pull| (*pull).to_owned()).collect();
    let texts = [
        ("pulled", "from_the_end"),
        ("required_spacing", "16\""),
        ("drawing", "S2.1"),
        ("drawing_revision", "B"),
        ("sheathed", "no"),
    ];
    judged(Look {
        mark: "m1".to_owned(),
        place: "grid B".to_owned(),
        kind: "stud_spacing".to_owned(),
        texts: fields(&texts),
        lists: Lists::from([("pulls".to_owned(), pulls)]),
        verdict: String::new(),
        says: String::new(),
        severity: String::new(),
        note: String::new(),
        follows: None,
    })
}

/// The look with the answer of this version kept.
pub fn judged(look: Look) -> Look {
    let reply = framing::walk::judge(&look.kind, &look.texts, &look.lists).unwrap().unwrap();
    Look { verdict: reply.verdict, says: reply.by_how_much.unwrap_or_default(), ..look }
}

pub const RIGHT: [&str; 4] = ["16", "32", "48", "64"];
pub const OUT: [&str; 4] = ["16", "33-1/2", "48", "64"];

/// A look whose answer is given, for lists where only that matters.
pub fn said(mark: &str, place: &str, verdict: &str) -> Look {
    let (mark, place, verdict) = (mark.to_owned(), place.to_owned(), verdict.to_owned());
    Look { mark, place, verdict, ..studs(&RIGHT) }
}

/// The same look after an earlier one.
pub fn after(look: Look, earlier: &str, because: Because, why: &str) -> Look {
    let follows = Follows { look: earlier.to_owned(), because, why: why.to_owned() };
    Look { follows: Some(follows), ..look }
}

impl Log {
    /// A walk begun, with one mark.
    pub fn begun() -> Self {
        let mut log = Self::default();
        log.add("w1", RecordBody::Begun { name: "Walk 1".to_owned() });
        log.mark("m1", "W1");
        log
    }

    pub fn add(&mut self, id: &str, body: RecordBody) {
        let number = self.records.len() as u32 + 1;
        let mut record = Record::new(id.to_owned(), "j1", "w1", number, body);
        record.at = format!("2026-05-04T{:02}:{:02}:00-05:00", 8 + number / 60, number % 60);
        record.by = "A. Framer".to_owned();
        self.records.push(record);
    }

    pub fn mark(&mut self, id: &str, name: &str) {
        let version = MarkVersion { mark: id.to_owned(), name: name.to_owned(), fields: fields(&[]) };
        self.add(&format!("{id}-v{}", self.records.len()), RecordBody::Mark(version));
    }

    pub fn heading(&mut self, pairs: &[(&str, &str)]) {
        self.add(&format!("h{}", self.records.len()), RecordBody::Heading { fields: fields(pairs) });
    }

    pub fn look(&mut self, id: &str, look: Look) {
        self.add(id, RecordBody::Look(Arc::new(look)));
    }

    pub fn strike(&mut self, record: &str, why: &str) {
        let body = RecordBody::Struck { record: record.to_owned(), why: why.to_owned() };
        self.add(&format!("x{}", self.records.len()), body);
    }

    pub fn follow_up(&mut self, look: &str, step: Step, says: &str) {
        let body = RecordBody::FollowUp { look: look.to_owned(), step, says: says.to_owned() };
        self.add(&format!("f{}", self.records.len()), body);
    }

    pub fn photo(&mut self, id: &str, of: &str, caption: &str, strokes: Vec<Stroke>) {
        let photo = Photo {
            of: of.to_owned(),
            photo: id.to_owned(),
            width: 1600,
            height: 1200,
            shows: "close".to_owned(),
            tape_in_view: true,
            caption: caption.to_owned(),
        };
        self.add(&format!("r-{id}"), RecordBody::Photo(photo));
        if !strokes.is_empty() {
            self.add(&format!("d-{id}"), RecordBody::Drawn { photo: id.to_owned(), strokes });
        }
    }

    pub fn signed(&mut self, name: &str, closing: &str) {
        let signature = Signature {
            name: name.to_owned(),
            title: "Site supervisor".to_owned(),
            closing: closing.to_owned(),
            strokes: vec![vec![(1000, 5000), (9000, 2500)]],
        };
        self.add(&format!("s{}", self.records.len()), RecordBody::Signed(signature));
    }

    pub fn walk(&self) -> Walk {
        Walk::read(&self.records).remove(0)
    }
}

/// A head of which nothing is missing.
pub const WHOLE_HEAD: [(&str, &str); 14] = [
    ("project", "House on lot 7"),
    ("address", "Lot 7"),
    ("permit", "B-120"),
    ("date", "2026-05-04"),
    ("start", "8:00"),
    ("end", "10:30"),
    ("weather", "Dry, 58 F"),
    ("observer_name", "A. Framer"),
    ("observer_title", "Site supervisor"),
    ("papers", "S2.1 rev B, approved"),
    ("code_edition", "IRC 2021"),
    ("code_sections", "R602.3, R403.1.6"),
    ("components", "walls, anchors"),
    ("not_visible", "all was seen"),
];

/// A walk with a mend, a correction, a struck look, a photo with lines, and something hidden.
pub fn whole() -> Log {
    let mut log = Log::begun();
    log.heading(&WHOLE_HEAD);
    log.look("a", Look { severity: "before_cover".to_owned(), note: "by the door".to_owned(), ..studs(&OUT) });
    log.photo("p1", "a", "Wide bay", vec![vec![(0, 0), (5000, 10_000)], vec![(7, 8)]]);
    log.follow_up("a", Step::Agreed, "Add a stud at 24\"; B. Engineer said yes");
    log.follow_up("a", Step::Done, "Added");
    log.look("b", after(studs(&RIGHT), "a", Because::Mended, "a stud was added"));
    log.look("c", Look { place: "grid C".to_owned(), ..studs(&OUT) });
    log.look(
        "d",
        Look { place: "grid C".to_owned(), ..after(studs(&RIGHT), "c", Because::Corrected, "read 33-1/2 for 32") },
    );
    log.look("e", Look { place: "grid D".to_owned(), ..studs(&OUT) });
    log.strike("e", "wrong wall");
    log.look("f", Look { place: "grid E".to_owned(), ..studs(&OUT) });
    log.look("g", Look { place: "grid F".to_owned(), ..studs(&[]) });
    log
}
