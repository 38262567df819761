//! Saving the check on the desk, opening a saved one, starting a new one.

use framing::HeaderCase;
use job::SavedHeader;
use leptos::prelude::*;

use super::case_fields::{from_fields, to_fields};
use super::{Desk, FIRST};
use crate::local_time;

impl Desk {
    /// The check as it would be saved: every value that it is worked from, the job's among them.
    pub fn as_saved(self, id: String, name: String) -> SavedHeader {
        let mut fields = self.start_fields();
        fields.extend(self.case.with_untracked(to_fields));
        let answer = self.screen.with_untracked(|screen| {
            let answer = &screen.answer;
            let stale = if screen.current { "" } else { " (not updated)" };
            let share = if answer.share_text.is_empty() { String::new() } else { format!(": {}", answer.share_text) };
            format!("{} {}{share}{stale}", answer.figure, answer.word)
        });
        SavedHeader { id, name, fields, answer, saved_at: local_time::now() }
    }

    /// The saved check that this one comes from, whether opened or just saved.
    pub fn comes_from(self) -> Option<SavedHeader> {
        self.opened.get_untracked().or_else(|| self.last_saved.get_untracked())
    }

    /// Opens a saved check. Values that are the job's anyway follow the job; others stay with the check.
    pub fn open(self, header: SavedHeader) {
        self.settle();
        self.remember_before(None);
        let site = self.start_fields();
        let mut own = header.fields.clone();
        own.retain(|name, text| site.get(name) != Some(text));
        self.case.set(from_fields(&own));
        self.hand.set(FIRST);
        self.last_saved.set(None);
        self.opened.set(Some(header));
        self.keeper.touch(self);
    }

    /// The check on the desk was saved under that name.
    pub fn saved(self, header: SavedHeader) {
        if self.opened.with_untracked(Option::is_some) {
            self.opened.set(Some(header));
        } else {
            self.settle();
            self.last_saved.set(Some(header));
        }
    }

    /// A saved check was removed: nothing on the desk comes from it any more.
    pub fn forget_saved(self, gone: &SavedHeader) {
        for place in [self.opened, self.last_saved] {
            if place.with_untracked(|header| header.as_ref().is_some_and(|header| header.id == gone.id)) {
                place.set(None);
            }
        }
    }

    /// Clears the desk for a new check; the job's values stay.
    pub fn start_new(self) {
        self.settle();
        self.remember_before(None);
        self.case.set(HeaderCase::default());
        self.hand.set(FIRST);
        self.opened.set(None);
        self.last_saved.set(None);
        self.keeper.touch(self);
    }
}
