//! The book of Site: the job's values, and what follows from them.

use job::JobName;
use leptos::prelude::*;
use leptos::task::spawn_local;
use view::model::FieldId;
use view::site::{SiteScreen, Topic};

use crate::storage::{self, StoreError};
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
    /// The jobs on this phone, as they were read last.
    pub jobs: RwSignal<Vec<JobName>>,
    /// Why they could not be read.
    pub jobs_problem: RwSignal<Option<StoreError>>,
}

impl Book {
    /// Lays out what was found.
    pub fn provide(found: &Found) -> Self {
        let values = Values::new(found);
        let topic = RwSignal::new(Topic::default());
        let screen = Memo::new(move |before: Option<&SiteScreen>| {
            values.fields.with(|fields| view::site::screen(fields, topic.get(), before))
        });
        let book = Self {
            values,
            hand: RwSignal::new(view::site::FIRST),
            topic,
            screen,
            jobs: RwSignal::new(Vec::new()),
            jobs_problem: RwSignal::new(None),
        };
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

    /// Reads which jobs are on this phone.
    pub fn list_jobs(self) {
        spawn_local(async move {
            let found = storage::jobs().await;
            self.jobs_problem.set(found.as_ref().err().cloned());
            if let Ok(jobs) = found {
                self.jobs.set(jobs);
            }
        });
    }

    /// Takes one step back.
    pub fn undo(self) {
        if let Some(field) = self.values.undo() {
            self.hand.set(field);
        }
    }
}
