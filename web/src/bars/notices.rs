//! What is to be told, one after the other, each until it is put away.

use leptos::prelude::*;

/// A sentence, and perhaps something to do about it.
#[derive(Clone)]
pub struct Notice {
    /// The sentence.
    pub words: String,
    /// A button's word and what it does.
    pub offer: Option<(&'static str, Callback<()>)>,
}

/// The sentences that are still to be read.
#[derive(Clone, Copy)]
pub struct Notices(RwSignal<Vec<Notice>>);

impl Default for Notices {
    fn default() -> Self {
        Self(RwSignal::new(Vec::new()))
    }
}

impl Notices {
    /// Says something.
    pub fn say(self, words: String) {
        self.add(Notice { words, offer: None });
    }

    /// Says something and offers to act on it.
    pub fn offer(self, words: String, label: &'static str, act: impl Fn() + Send + Sync + 'static) {
        self.add(Notice { words, offer: Some((label, Callback::new(move |()| act()))) });
    }

    fn add(self, notice: Notice) {
        self.0.update(|notices| {
            notices.retain(|known| known.words != notice.words);
            notices.push(notice);
        });
    }

    /// The latest.
    pub fn latest(self) -> Option<Notice> {
        self.0.with(|notices| notices.last().cloned())
    }

    /// Puts the latest away.
    pub fn put_away(self) {
        self.0.update(|notices| {
            notices.pop();
        });
    }
}
