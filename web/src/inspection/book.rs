//! The book of a job's walks: the log as it is kept, and what stands by it.

use std::sync::Arc;

use job::Job;
use job::walk::{Look, Photo, Record, RecordBody, Walk, merge_logs, next_number};
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::start::Found;
use crate::bars::Notices;
use crate::browser;
use crate::local_time;
use crate::storage::{self, Kept, PhotoBytes, StoreError, settings};

/// The input of the record's head that says who looks.
const WHO: &str = "observer_name";

/// The log, what stands by it, and how it is kept.
#[derive(Clone, Copy)]
pub struct Book {
    /// The job that the walks belong to.
    pub job: RwSignal<Job>,
    /// Whether what was done last is kept.
    pub state: RwSignal<Kept>,
    /// What is to be told.
    pub notices: Notices,
    log: StoredValue<Vec<Record>>,
    walks: RwSignal<Vec<Arc<Walk>>>,
    chosen: RwSignal<Option<String>>,
}

impl Book {
    /// Lays out what was found, and takes its records: a long log is not copied.
    pub fn provide(found: &mut Found) -> Self {
        let state = found.problem.clone().map_or(Kept::Safe, Kept::Not);
        let book = Self {
            job: RwSignal::new(found.job.clone()),
            state: RwSignal::new(state),
            notices: Notices::default(),
            log: StoredValue::new(Vec::new()),
            walks: RwSignal::new(Vec::new()),
            chosen: RwSignal::new(settings::last_walk(&found.job.id)),
        };
        book.take_in(std::mem::take(&mut found.records));
        for sentence in &found.refused {
            book.notices.say(sentence.clone());
        }
        provide_context(book);
        provide_context(book.notices);
        book
    }

    /// Takes records into the log and reads what stands.
    fn take_in(self, coming: Vec<Record>) {
        self.log.update_value(|log| *log = merge_logs(std::mem::take(log), coming));
        let walks = self.log.with_value(|log| Walk::read(log));
        self.walks.set(walks.into_iter().map(Arc::new).collect());
    }

    /// Every walk, in the order in which they began.
    pub fn walks(self) -> Vec<Arc<Walk>> {
        self.walks.get()
    }

    /// The walk that is looked at: the chosen one, else the last.
    pub fn walk(self) -> Option<Arc<Walk>> {
        let chosen = self.chosen.get();
        self.walks.with(|walks| {
            let found = walks.iter().find(|walk| Some(&walk.id) == chosen.as_ref());
            found.or_else(|| walks.last()).cloned()
        })
    }

    /// Chooses the walk that is looked at.
    pub fn choose(self, walk: &str) {
        self.job.with_untracked(|job| settings::keep_last_walk(&job.id, walk));
        self.chosen.set(Some(walk.to_owned()));
    }

    /// How many records the log holds.
    pub fn log_length(self) -> usize {
        self.log.with_value(Vec::len)
    }

    /// The look of that id, crossed out or not.
    pub fn look(self, id: &str) -> Option<Look> {
        self.log.with_value(|log| {
            log.iter().find(|record| record.id == id).and_then(|record| match &record.body {
                RecordBody::Look(look) => Some(Look::clone(look)),
                _ => None,
            })
        })
    }

    /// Whether anything was looked at in this job.
    pub fn has_looks(self) -> bool {
        self.log.with_value(|log| log.iter().any(|record| matches!(record.body, RecordBody::Look(_))))
    }

    /// Asks the browser to keep the job, and tells what it said.
    pub fn ask_to_last(self) {
        spawn_local(async move {
            let lasting = storage::ask_to_last().await;
            self.notices.say(format!("The first look is kept on this phone. {}", lasting.sentence()));
        });
    }

    fn record(self, walk: Option<&str>, body: RecordBody) -> Record {
        let id = browser::new_id();
        let walk = walk.unwrap_or(&id).to_owned();
        let number = self.log.with_value(|log| next_number(log));
        let job = self.job.with_untracked(|job| job.id.clone());
        let by = untrack(move || self.walk()).map(|walk| walk.heading()).and_then(|head| head.get(WHO).cloned());
        Record { at: local_time::now(), by: by.unwrap_or_default(), ..Record::new(id, &job, &walk, number, body) }
    }

    /// Begins a walk and goes on when it is kept.
    pub fn begin(self, then: impl FnOnce() + 'static) {
        let name = format!("Walk {}", self.walks.with_untracked(Vec::len) + 1);
        let record = self.record(None, RecordBody::Begun { name });
        let id = record.id.clone();
        self.keep(record, None, move |_| {
            self.choose(&id);
            then();
        });
    }

    /// Adds a record to the walk that is looked at and goes on, with its id, when it is kept.
    pub fn add(self, body: RecordBody, then: impl FnOnce(&str) + 'static) {
        if let Some(walk) = untrack(move || self.walk()) {
            self.keep(self.record(Some(&walk.id), body), None, then);
        }
    }

    /// Adds a photo with its bytes.
    pub fn add_photo(self, photo: Photo, bytes: PhotoBytes, then: impl FnOnce(&str) + 'static) {
        if let Some(walk) = untrack(move || self.walk()) {
            let id = photo.photo.clone();
            self.keep(self.record(Some(&walk.id), RecordBody::Photo(photo)), Some((id, bytes)), then);
        }
    }

    fn keep(self, record: Record, photo: Option<(String, PhotoBytes)>, then: impl FnOnce(&str) + 'static) {
        self.state.set(Kept::Writing);
        spawn_local(async move {
            let kept = match &photo {
                Some((id, bytes)) => storage::add_photo(&record, id, bytes).await,
                None => storage::add(std::slice::from_ref(&record)).await,
            };
            match kept {
                Ok(()) => {
                    let id = record.id.clone();
                    self.take_in(vec![record]);
                    self.state.set(Kept::Safe);
                    storage::tell_other_windows();
                    then(&id);
                }
                Err(problem) => self.trouble(problem),
            }
        });
    }

    /// It is not kept, and stays on the screen as it was typed.
    pub fn trouble(self, problem: StoreError) {
        self.notices.say(problem.sentence());
        self.state.set(Kept::Not(problem));
    }

    /// Reads the log again: another window may have added to it.
    pub fn read_again(self) {
        spawn_local(async move {
            let job = self.job.with_untracked(|job| job.id.clone());
            if let Ok(found) = storage::read_log(&job).await
                && found.records.len() != self.log.with_value(Vec::len)
            {
                self.take_in(found.records);
            }
        });
    }
}
