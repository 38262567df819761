//! What is being typed on a walk: one draft a form, kept a moment after each key, until it goes into the log.

use std::collections::BTreeMap;

use job::walk::Draft;
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::book::Book;
use super::start::Found;
use crate::browser;
use crate::local_time;
use crate::storage::{self, Kept, settings};

/// So long after the last key typing is put away, milliseconds; the promise is half a second.
const MOMENT: i32 = 350;

/// The drafts, by their forms.
#[derive(Clone, Copy)]
pub struct Drafts {
    book: Book,
    kept: StoredValue<BTreeMap<String, Draft>>,
    /// Typed and not put away yet.
    waiting: StoredValue<BTreeMap<String, Draft>>,
    keys: StoredValue<u32>,
    window: StoredValue<String>,
}

impl Drafts {
    /// Starts from what was found.
    pub fn provide(book: Book, found: &Found) -> Self {
        let mut kept = BTreeMap::new();
        kept.extend(found.drafts.iter().map(|draft| (draft.form.clone(), draft.clone())));
        let drafts = Self {
            book,
            kept: StoredValue::new(kept),
            waiting: StoredValue::new(BTreeMap::new()),
            keys: StoredValue::new(0),
            window: StoredValue::new(settings::window_id()),
        };
        provide_context(drafts);
        drafts
    }

    /// The draft of a form, if something was typed in it.
    pub fn of(self, form: &str) -> Option<Draft> {
        self.kept.with_value(|kept| kept.get(form).cloned())
    }

    /// A draft of a form with nothing in it.
    pub fn empty(self, form: &str) -> Draft {
        Draft::new(&self.book.job.with_untracked(|job| job.id.clone()), form)
    }

    /// Something was typed.
    pub fn touch(self, draft: Draft) {
        let draft = Draft { at: local_time::now(), ..draft };
        self.kept.update_value(|kept| {
            kept.insert(draft.form.clone(), draft.clone());
        });
        self.waiting.update_value(|waiting| {
            waiting.insert(draft.form.clone(), draft);
        });
        self.keys.update_value(|keys| *keys = keys.wrapping_add(1));
        if !matches!(self.book.state.get_untracked(), Kept::Not(_)) {
            self.book.state.set(Kept::Writing);
        }
        let keys = self.keys.get_value();
        browser::after(MOMENT, move || {
            if self.keys.get_value() == keys {
                self.put_away();
            }
        });
    }

    /// Puts away what waits.
    pub fn put_away(self) {
        let waiting = self.waiting.with_value(BTreeMap::clone);
        if waiting.is_empty() {
            return;
        }
        self.waiting.set_value(BTreeMap::new());
        spawn_local(async move {
            for (form, draft) in waiting {
                if let Err(problem) = storage::keep_draft(&draft, &self.window.get_value()).await {
                    // It waits for the next key, unless something newer does.
                    self.waiting.update_value(|waiting| {
                        waiting.entry(form).or_insert(draft);
                    });
                    self.book.state.set(Kept::Not(problem));
                    return;
                }
            }
            if self.waiting.with_value(BTreeMap::is_empty) {
                self.book.state.set(Kept::Safe);
            }
        });
    }

    /// What was typed in a form is in the log now.
    pub fn drop(self, form: &str) {
        self.kept.update_value(|kept| {
            kept.remove(form);
        });
        self.waiting.update_value(|waiting| {
            waiting.remove(form);
        });
        let form = form.to_owned();
        spawn_local(async move {
            // Left behind it would be offered again, which loses nothing.
            let _ = storage::drop_drafts(&form).await;
        });
    }
}
