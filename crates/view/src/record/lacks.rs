//! What the record still lacks, in sentences.

use job::walk::{Look, Mark, Photo, Point, Walk};

use super::heading::heading_lacks;
use super::words::{counted, state_of};
use crate::markup::Act;
use crate::model::{FieldId, State};

/// What a sentence is about.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Of {
    /// An input of the head.
    Heading(FieldId),
    /// A mark, by its id.
    Mark(String),
}

impl Of {
    /// What a tap on the sentence does.
    #[must_use]
    pub fn act(&self) -> Act<'_> {
        match self {
            Self::Heading(field) => Act::Bring(field),
            Self::Mark(id) => Act::Open(id),
        }
    }
}

/// Something that is still to be written down or looked at.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Lacking {
    /// What it is about.
    pub of: Of,
    /// In a sentence.
    pub says: String,
}

/// Everything that the record lacks: the head first, then the marks. Deficiencies are no lack: they are in the record.
pub(super) fn lacks(walk: &Walk) -> Vec<Lacking> {
    let heading =
        heading_lacks(&walk.heading()).into_iter().map(|(field, says)| Lacking { of: Of::Heading(field), says });
    let marks = walk.marks.iter().filter(|mark| !mark.is_struck());
    heading.chain(marks.flat_map(of_mark)).collect()
}

fn of_mark(mark: &Mark) -> Vec<Lacking> {
    let standing: Vec<(&Point, &Look)> =
        mark.points.iter().filter_map(|point| Some((point, point.now()?.what.as_ref()))).collect();
    let name = mark.name();
    let lacking = |says: String| Lacking { of: Of::Mark(mark.id.clone()), says };
    if standing.is_empty() {
        return vec![lacking(format!("{name}: nothing was looked at yet."))];
    }
    let seen: Vec<&(&Point, &Look)> =
        standing.iter().filter(|(_, look)| state_of(&look.verdict) != State::NotKnown).collect();
    let no_place = standing.iter().filter(|(_, look)| look.place.trim().is_empty()).count();
    let no_tape = seen.iter().filter(|(point, _)| !has_photo(point, |photo| photo.tape_in_view)).count();
    let nails = seen.iter().filter(|(_, look)| look.kind == "nailing");
    let one_face = nails.filter(|(point, _)| !is_of_both_faces(point)).count();
    let all = [
        (no_place, "without a place on the mark"),
        (no_tape, "without a photo with a tape or a rule in view"),
        (one_face, "at nails without photos from inside and outside"),
    ];
    let held = all.into_iter().filter(|(count, _)| *count > 0);
    held.map(|(count, without)| lacking(format!("{name}: {} {without}.", counted(count, "look", "looks")))).collect()
}

fn has_photo(point: &Point, is_one: impl Fn(&Photo) -> bool) -> bool {
    point.photos.iter().any(|(photo, _)| photo.struck.is_none() && is_one(&photo.what))
}

fn is_of_both_faces(point: &Point) -> bool {
    ["inside", "outside"].iter().all(|face| has_photo(point, |photo| photo.shows == *face))
}
