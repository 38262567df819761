//! Where one is on the page, read from the part of the address after `#`: `#/inspection/look/3f2a/nailing`.

use leptos::prelude::*;

use crate::browser;
use crate::place::Place;
use crate::route::leave_for;
use crate::storage::settings;
use crate::worker::Work;

/// A part of the walk.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Spot {
    /// The walk at a glance.
    #[default]
    Walk,
    /// The walks of the job.
    Walks,
    /// What the drawing asks of a mark: of a new one, or of that one.
    Drawing(Option<String>),
    /// A mark.
    Mark(String),
    /// A look at a mark, by the name of its kind.
    Look(String, String),
    /// A look that corrects, or checks again, the one of that id.
    Again(String, bool),
    /// What was found, by the id of its first look.
    Found(String),
    /// A photo, to be drawn on.
    Photo(String),
    /// The head of the record.
    Heading,
    /// The record: to be read, signed, printed and handed over.
    Record,
}

/// The word for a mark that is not in the log yet.
const NEW: &str = "new";
const CORRECT: &str = "correct";
const CHECK: &str = "check";

impl Spot {
    /// Reads an address of this page; none for one of another.
    pub fn read(hash: &str) -> Option<Self> {
        let mut words = hash.trim_start_matches('#').split('/').filter(|word| !word.is_empty());
        let place = words.next().unwrap_or(Place::Inspection.address());
        if place != Place::Inspection.address() {
            return None;
        }
        let words: Vec<&str> = words.collect();
        Some(match words[..] {
            ["walks"] => Self::Walks,
            ["drawing", NEW] => Self::Drawing(None),
            ["drawing", mark] => Self::Drawing(Some(mark.to_owned())),
            ["mark", mark] => Self::Mark(mark.to_owned()),
            ["look", mark, kind] => Self::Look(mark.to_owned(), kind.to_owned()),
            [CORRECT, look] => Self::Again(look.to_owned(), false),
            [CHECK, look] => Self::Again(look.to_owned(), true),
            ["found", look] => Self::Found(look.to_owned()),
            ["photo", photo] => Self::Photo(photo.to_owned()),
            ["heading"] => Self::Heading,
            ["record"] => Self::Record,
            _ => Self::Walk,
        })
    }

    /// Its address.
    pub fn address(&self) -> String {
        let rest = match self {
            Self::Walk => String::new(),
            Self::Walks => "/walks".to_owned(),
            Self::Drawing(mark) => format!("/drawing/{}", mark.as_deref().unwrap_or(NEW)),
            Self::Mark(mark) => format!("/mark/{mark}"),
            Self::Look(mark, kind) => format!("/look/{mark}/{kind}"),
            Self::Again(look, mended) => format!("/{}/{look}", if *mended { CHECK } else { CORRECT }),
            Self::Found(look) => format!("/found/{look}"),
            Self::Photo(photo) => format!("/photo/{photo}"),
            Self::Heading => "/heading".to_owned(),
            Self::Record => "/record".to_owned(),
        };
        format!("#/{}{rest}", Place::Inspection.address())
    }
}

/// The way about: given to every component as a context.
#[derive(Clone, Copy)]
pub struct Way {
    spot: RwSignal<Spot>,
    work: Work,
}

impl Way {
    /// Follows the address from now on.
    pub fn provide(work: Work) -> Self {
        let spot = RwSignal::new(Spot::read(&browser::hash()).unwrap_or_default());
        settings::keep_last_place(Place::Inspection);
        browser::on_window("hashchange", move |_| {
            let hash = browser::hash();
            match Spot::read(&hash) {
                Some(now) => spot.set(now),
                None => leave_for(crate::route::Spot::read(&hash).place, work),
            }
        });
        let way = Self { spot, work };
        provide_context(way);
        way
    }

    /// Where one is.
    pub fn spot(self) -> Spot {
        self.spot.get()
    }

    /// Goes to a part of the walk.
    pub fn go(self, spot: &Spot) {
        browser::set_hash(&spot.address());
    }

    /// Goes there in place of here: the back key does not come back here.
    pub fn go_instead(self, spot: &Spot) {
        browser::replace_hash(&spot.address());
    }

    /// Goes to a place of the field book.
    pub fn go_to_place(self, place: Place) {
        if place == Place::Inspection {
            self.go(&Spot::Walk);
        } else {
            leave_for(place, self.work);
        }
    }
}
