//! The book of Site: the job's values, and what follows from them.

use leptos::prelude::*;
use view::model::FieldId;
use view::site::{SiteScreen, Topic};

use crate::values::{Found, Values};

/// What was typed, what follows from it, and what is looked at.
#[derive(Clone, Copy)]
pub struct Book {
    /// The job's values, and how they are kept.
    pub values: Values,
    /// The input in hand.
    pub hand: RwSignal<FieldId>,
    /// What is looked at.
    pub topic: RwSignal<Topic>,
    /// Everything that is shown.
    pub screen: Memo<SiteScreen>,
}

impl Book {
    /// Lays out what was found.
    pub fn provide(found: &Found) -> Self {
        let values = Values::new(found);
        let topic = RwSignal::new(Topic::default());
        let screen = Memo::new(move |before: Option<&SiteScreen>| {
            values.fields.with(|fields| view::site::screen(fields, topic.get(), before))
        });
        let book = Self { values, hand: RwSignal::new(view::site::FIRST), topic, screen };
        provide_context(book);
        book
    }

    /// Writes a value; none clears it.
    pub fn write(self, field: FieldId, text: Option<String>) {
        self.values.change(field, |fields| view::site::write(fields, field, text, &crate::local_time::now()));
    }

    /// Says who gave a value.
    pub fn give(self, field: FieldId, by: &str) {
        self.values.change(field, |fields| view::site::give(fields, field, by, &crate::local_time::now()));
    }

    /// Takes one step back.
    pub fn undo(self) {
        if let Some(field) = self.values.undo() {
            self.hand.set(field);
        }
    }
}
