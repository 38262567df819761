//! Keeps what is typed: a moment after each key, and at once when the page goes out of view.

use std::collections::BTreeMap;

use job::{Job, Part};
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::{Found, StoreError, change, journal, parts, settings};
use crate::browser;
use crate::desk::Desk;

/// So long after the last key typing is put away, milliseconds; the promise is half a second.
const MOMENT: i32 = 350;

/// Whether what is on the screen is kept.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Kept {
    /// On its way.
    Writing,
    /// Its transaction has completed.
    Safe,
    /// It is not, and why.
    Not(StoreError),
}

/// Keeps the job; part of the desk.
#[derive(Clone, Copy)]
pub struct Keeper {
    /// Whether what is on the screen is kept.
    pub state: RwSignal<Kept>,
    /// The job as it is stored.
    pub job: RwSignal<Job>,
    pub(super) parts: StoredValue<BTreeMap<String, Part>>,
    /// Grows with every key.
    keys: StoredValue<u32>,
    busy: StoredValue<bool>,
    window: StoredValue<String>,
}

/// Parts by their keys, put in one by one: collecting would bring a sort of its own into the app.
pub(super) fn by_key(parts: Vec<Part>) -> BTreeMap<String, Part> {
    let mut keyed = BTreeMap::new();
    keyed.extend(parts.into_iter().map(|part| (part.key().as_str().to_owned(), part)));
    keyed
}

impl Keeper {
    /// Starts from what was found.
    pub fn new(found: &Found) -> Self {
        let state = found.problem.clone().map_or(Kept::Safe, Kept::Not);
        let parts = by_key(found.parts.clone());
        let mut job = Job::from_parts(&found.job, &found.parts);
        if job.name.is_empty() {
            "Job 1".clone_into(&mut job.name);
        }
        Self {
            state: RwSignal::new(state),
            job: RwSignal::new(job),
            parts: StoredValue::new(parts),
            keys: StoredValue::new(0),
            busy: StoredValue::new(false),
            window: StoredValue::new(settings::window_id()),
        }
    }

    /// Something was typed.
    pub fn touch(self, desk: Desk) {
        self.keys.update_value(|keys| *keys = keys.wrapping_add(1));
        if !matches!(self.state.get_untracked(), Kept::Not(_)) {
            self.state.set(Kept::Writing);
        }
        let keys = self.keys.get_value();
        browser::after(MOMENT, move || {
            if self.keys.get_value() == keys {
                self.keep_now(desk);
            }
        });
    }

    /// Puts away what is on the screen, if it is not put away yet.
    pub fn keep_now(self, desk: Desk) {
        if self.busy.get_value() || self.state.get_untracked() == Kept::Safe {
            return;
        }
        self.busy.set_value(true);
        spawn_local(async move {
            let keys = self.keys.get_value();
            let done = self.put_away(desk).await;
            self.busy.set_value(false);
            match done {
                Err(problem) => self.state.set(Kept::Not(problem)),
                Ok(()) if self.keys.get_value() == keys => self.state.set(Kept::Safe),
                Ok(()) => self.keep_now(desk),
            }
        });
    }

    async fn put_away(self, desk: Desk) -> Result<(), StoreError> {
        let job = self.job.with_untracked(|job| job.id.clone());
        journal::write(&self.window.get_value(), &desk.typing(&job)).await?;
        change::keep_site(self, desk).await
    }

    /// Reads the parts again: another window may have changed them.
    pub fn read_again(self, desk: Desk) {
        spawn_local(async move {
            if let Ok(shelf) = parts::read_all(None).await {
                change::take_in(self, desk, shelf.parts);
            }
        });
    }

    pub(super) fn remember(self, part: Option<Part>) {
        if let Some(part) = part {
            self.parts.update_value(|parts| {
                parts.insert(part.key().as_str().to_owned(), part);
            });
        }
        let id = self.job.with_untracked(|job| job.id.clone());
        let parts: Vec<Part> = self.parts.with_value(|parts| parts.values().cloned().collect());
        self.job.set(Job::from_parts(&id, &parts));
        super::windows::tell_other_windows();
    }
}
