//! What stands now, read from the whole log.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::record::{Because, Look, MarkVersion, Photo, Record, RecordBody, Signature, Step, Stroke};
use crate::document::Fields;

/// Something that was added, with who added it and when.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry<T> {
    /// The record's id.
    pub id: String,
    /// Who, as typed.
    pub by: String,
    /// The phone's own time.
    pub at: String,
    /// Why it was crossed out, if it was.
    pub struck: Option<String>,
    /// What was added.
    pub what: T,
}

/// A look that was added. It is shared with its record: a log is long, and looks are not small.
pub type LookEntry = Entry<Arc<Look>>;

/// A walk as it stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Walk {
    /// Its id.
    pub id: String,
    /// How it began: its name.
    pub begun: Entry<String>,
    /// The head, every version; the last one that is not crossed out counts.
    pub headings: Vec<Entry<Fields>>,
    /// The marks, in the order in which they were first typed.
    pub marks: Vec<Mark>,
    /// Signatures, in their order.
    pub signatures: Vec<Entry<Signature>>,
}

/// A mark and what was looked at there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mark {
    /// Its id.
    pub id: String,
    /// Every version; the last one that is not crossed out counts. There is at least one.
    pub versions: Vec<Entry<MarkVersion>>,
    /// What was looked at, in its order.
    pub points: Vec<Point>,
    /// Photos of the mark itself.
    pub photos: Vec<(Entry<Photo>, Vec<Stroke>)>,
}

/// One thing that was looked at: the first look, and those that corrected it or checked it again.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Point {
    /// Every look, in its order. There is at least one, and the first is never changed.
    pub looks: Vec<LookEntry>,
    /// Photos of any of them.
    pub photos: Vec<(Entry<Photo>, Vec<Stroke>)>,
    /// What became of what was found.
    pub follow_ups: Vec<Entry<(Step, String)>>,
}

impl Point {
    /// What counts now: the last look that is not crossed out.
    #[must_use]
    pub fn now(&self) -> Option<&LookEntry> {
        self.looks.iter().rev().find(|look| look.struck.is_none())
    }

    /// The first look.
    #[must_use]
    pub fn first(&self) -> Option<&LookEntry> {
        self.looks.first()
    }

    /// Whether what counts now was measured after something was mended.
    #[must_use]
    pub fn was_mended(&self) -> bool {
        let because = self.now().and_then(|look| look.what.follows.as_ref());
        because.is_some_and(|follows| follows.because == Because::Mended)
    }
}

impl Mark {
    /// What is required now: the last version that is not crossed out, or the last one where all are.
    #[must_use]
    pub fn now(&self) -> Option<&MarkVersion> {
        let standing = self.versions.iter().rev().find(|version| version.struck.is_none());
        standing.or(self.versions.last()).map(|version| &version.what)
    }

    /// Its name.
    #[must_use]
    pub fn name(&self) -> &str {
        self.now().map_or("", |version| &version.name)
    }

    /// Whether every version of it is crossed out.
    #[must_use]
    pub fn is_struck(&self) -> bool {
        self.versions.iter().all(|version| version.struck.is_some())
    }
}

impl Walk {
    /// Every walk of a log, in the order in which they began. The log may be in any order; a record of which the one
    /// it speaks of is missing is passed over and stays in the log. A look that follows a missing one still stands on
    /// its mark, as a point of its own: a finding is never lost for want of an earlier one.
    #[must_use]
    pub fn read(log: &[Record]) -> Vec<Self> {
        let mut in_order: Vec<&Record> = log.iter().collect();
        in_order.sort_by(|a, b| (a.number, &a.id).cmp(&(b.number, &b.id)));
        let mut reading = Reading::default();
        reading.look_ahead(&in_order);
        in_order.into_iter().for_each(|record| reading.take(record));
        reading.walks
    }

    /// The head as it stands.
    #[must_use]
    pub fn heading(&self) -> Fields {
        self.headings
            .iter()
            .rev()
            .find(|version| version.struck.is_none())
            .map(|version| version.what.clone())
            .unwrap_or_default()
    }

    /// Whether it is signed.
    #[must_use]
    pub fn is_signed(&self) -> bool {
        self.signatures.iter().any(|signature| signature.struck.is_none())
    }

    /// Every thing that was looked at, with its mark.
    pub fn points(&self) -> impl Iterator<Item = (&Mark, &Point)> {
        self.marks.iter().flat_map(|mark| mark.points.iter().map(move |point| (mark, point)))
    }
}

/// Where a record's thing stands, so that later records find it.
#[derive(Clone, Copy)]
enum Place {
    Mark(usize, usize),
    Point(usize, usize, usize),
}

/// The log as far as it was read.
#[derive(Default)]
struct Reading<'a> {
    walks: Vec<Walk>,
    struck: BTreeMap<&'a str, &'a str>,
    walk_places: BTreeMap<&'a str, usize>,
    /// By the id of a mark or of a look.
    places: BTreeMap<&'a str, Place>,
    /// By the id of a photo: the last drawing that is not crossed out.
    drawn: BTreeMap<&'a str, &'a [Stroke]>,
}

impl<'a> Reading<'a> {
    /// What tells of other records, whichever place those have: what is crossed out, then what is drawn.
    fn look_ahead(&mut self, in_order: &[&'a Record]) {
        for record in in_order {
            if let RecordBody::Struck { record, why } = &record.body {
                self.struck.insert(record, why);
            }
        }
        let stands = in_order.iter().filter(|record| !self.struck.contains_key(record.id.as_str()));
        self.drawn.extend(stands.filter_map(|record| match &record.body {
            RecordBody::Drawn { photo, strokes } => Some((photo.as_str(), strokes.as_slice())),
            _ => None,
        }));
    }

    fn entry<T>(&self, record: &Record, what: T) -> Entry<T> {
        let struck = self.struck.get(record.id.as_str()).map(|why| (*why).to_owned());
        Entry { id: record.id.clone(), by: record.by.clone(), at: record.at.clone(), struck, what }
    }

    fn take(&mut self, record: &'a Record) {
        if let RecordBody::Begun { name } = &record.body {
            let begun = self.entry(record, name.clone());
            self.walk_places.insert(&record.id, self.walks.len());
            let id = record.id.clone();
            self.walks.push(Walk { id, begun, headings: Vec::new(), marks: Vec::new(), signatures: Vec::new() });
            return;
        }
        let Some(walk) = self.walk_places.get(record.walk.as_str()).copied() else { return };
        match &record.body {
            RecordBody::Begun { .. } | RecordBody::Struck { .. } | RecordBody::Drawn { .. } => {}
            RecordBody::Heading { fields } => {
                let heading = self.entry(record, fields.clone());
                self.walks[walk].headings.push(heading);
            }
            RecordBody::Signed(signature) => {
                let signature = self.entry(record, signature.clone());
                self.walks[walk].signatures.push(signature);
            }
            RecordBody::Mark(version) => self.mark(walk, record, version),
            RecordBody::Look(look) => self.look(record, look),
            RecordBody::Photo(photo) => self.photo(record, photo),
            RecordBody::FollowUp { look, step, says } => {
                let entry = self.entry(record, (*step, says.clone()));
                if let Some(point) = self.point(look) {
                    point.follow_ups.push(entry);
                }
            }
        }
    }

    fn mark(&mut self, walk: usize, record: &Record, version: &'a MarkVersion) {
        let entry = self.entry(record, version.clone());
        if let Some(Place::Mark(walk, mark)) = self.places.get(version.mark.as_str()).copied() {
            self.walks[walk].marks[mark].versions.push(entry);
            return;
        }
        let marks = &mut self.walks[walk].marks;
        self.places.insert(&version.mark, Place::Mark(walk, marks.len()));
        marks.push(Mark { id: version.mark.clone(), versions: vec![entry], points: Vec::new(), photos: Vec::new() });
    }

    fn look(&mut self, record: &'a Record, look: &'a Arc<Look>) {
        let entry = self.entry(record, Arc::clone(look));
        let before = look.follows.as_ref().and_then(|follows| self.places.get(follows.look.as_str()).copied());
        if let Some(place @ Place::Point(walk, mark, point)) = before {
            self.walks[walk].marks[mark].points[point].looks.push(entry);
            self.places.insert(&record.id, place);
            return;
        }
        let Some(Place::Mark(walk, mark)) = self.places.get(look.mark.as_str()).copied() else { return };
        let points = &mut self.walks[walk].marks[mark].points;
        self.places.insert(&record.id, Place::Point(walk, mark, points.len()));
        points.push(Point { looks: vec![entry], photos: Vec::new(), follow_ups: Vec::new() });
    }

    fn photo(&mut self, record: &Record, photo: &Photo) {
        let entry = self.entry(record, photo.clone());
        let Some(place) = self.places.get(photo.of.as_str()).copied() else { return };
        let drawn = self.drawn.get(photo.photo.as_str()).map_or_else(Vec::new, |strokes| strokes.to_vec());
        self.photos(place).push((entry, drawn));
    }

    fn photos(&mut self, place: Place) -> &mut Vec<(Entry<Photo>, Vec<Stroke>)> {
        match place {
            Place::Mark(walk, mark) => &mut self.walks[walk].marks[mark].photos,
            Place::Point(walk, mark, point) => &mut self.walks[walk].marks[mark].points[point].photos,
        }
    }

    fn point(&mut self, look: &str) -> Option<&mut Point> {
        match self.places.get(look).copied()? {
            Place::Point(walk, mark, point) => Some(&mut self.walks[walk].marks[mark].points[point]),
            Place::Mark(..) => None,
        }
    }
}
