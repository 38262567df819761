//! One thing that was looked at.

use super::measurements::{Measurements, Remeasured};
use crate::finding::Finding;
use crate::observed::Seen;
use crate::required::Origin;
use crate::verdict::Verdict;

/// What a photo shows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum View {
    /// The place: the address or the grid in view.
    #[default]
    Wide,
    /// The thing itself.
    Close,
    /// The thing from inside the wall.
    Inside,
    /// The thing from outside.
    Outside,
}

/// A photo or a sketch: a name under which the job keeps it, and what can be seen in it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Evidence {
    /// The job's name for it.
    pub name: String,
    /// What it shows.
    pub view: View,
    /// Whether a tape or a rule is in view.
    pub scale_in_view: bool,
}

/// One item of the record. Looks and evidence are added and never taken away.
#[derive(Clone, Debug, PartialEq)]
pub struct Item {
    place: String,
    required: String,
    origin: Origin,
    both_faces: bool,
    looks: Measurements<Seen<Finding>>,
    evidence: Vec<Evidence>,
}

/// What an item lacks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ItemLack {
    /// Its place.
    Place,
    /// What is required.
    Required,
    /// It was not looked at.
    NotObserved,
    /// A photo with a scale.
    PhotoWithScale,
    /// A photo from inside or from outside.
    PhotoOfBothFaces,
}

impl Item {
    /// An item that was not looked at yet: its one place (level, grid line, wall, stud or truss), what is required in
    /// the words of the drawing or the clause, and where that is said.
    #[must_use]
    pub fn new(place: impl Into<String>, required: impl Into<String>, origin: impl Into<Origin>) -> Self {
        Self {
            place: place.into(),
            required: required.into(),
            origin: origin.into(),
            both_faces: false,
            looks: Measurements::new(Seen::NotObserved),
            evidence: Vec::new(),
        }
    }

    /// The same item, to be photographed from inside and from outside: nails and clips.
    #[must_use]
    pub fn from_both_faces(self) -> Self {
        Self { both_faces: true, ..self }
    }

    /// Its place.
    #[must_use]
    pub fn place(&self) -> &str {
        &self.place
    }

    /// What is required.
    #[must_use]
    pub fn required(&self) -> &str {
        &self.required
    }

    /// Where that is said.
    #[must_use]
    pub const fn origin(&self) -> &Origin {
        &self.origin
    }

    /// Photos and sketches.
    #[must_use]
    pub fn evidence(&self) -> &[Evidence] {
        &self.evidence
    }

    /// Every look, in its order; the first stands for the item as it was listed.
    #[must_use]
    pub const fn looks(&self) -> &Measurements<Seen<Finding>> {
        &self.looks
    }

    /// Adds a look.
    pub(super) fn look(&mut self, look: Remeasured<Seen<Finding>>) {
        self.looks.remeasure(look);
    }

    /// Adds a photo or a sketch.
    pub(super) fn add_evidence(&mut self, evidence: Evidence) {
        self.evidence.push(evidence);
    }

    /// What was found first, whatever was found later.
    #[must_use]
    pub fn first_found(&self) -> Option<&Finding> {
        self.looks.later().iter().find_map(|look| look.value.as_ref().observed())
    }

    /// How it stands now. A hidden item is *not seen*, whatever was expected of it.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        self.looks.now().as_ref().observed().map_or(Verdict::NotSeen, Finding::verdict)
    }

    /// What is still to be written down. What could not be seen needs no photo.
    #[must_use]
    pub fn lacks(&self) -> Vec<ItemLack> {
        let held = |text: &str| !text.trim().is_empty();
        let observed = matches!(self.looks.now(), Seen::Observed(_));
        let looked_at = observed || matches!(self.looks.now(), Seen::CouldNotBeSeen);
        let with_scale = self.evidence.iter().any(|evidence| evidence.scale_in_view && held(&evidence.name));
        let shows = |view| self.evidence.iter().any(|evidence| evidence.view == view && held(&evidence.name));
        let both = shows(View::Inside) && shows(View::Outside);
        let all = [
            (held(&self.place), ItemLack::Place),
            (held(&self.required), ItemLack::Required),
            (looked_at, ItemLack::NotObserved),
            (!observed || with_scale, ItemLack::PhotoWithScale),
            (!observed || !self.both_faces || both, ItemLack::PhotoOfBothFaces),
        ];
        all.into_iter().filter_map(|(held, lack)| (!held).then_some(lack)).collect()
    }
}
