//! A page laid part by part, each in a task of its own, so that no touch has to wait for all of it.

use leptos::prelude::*;

use crate::browser;

/// How many parts of a page are laid.
#[derive(Clone, Copy)]
pub struct Laid(RwSignal<usize>);

impl Laid {
    /// Lays so many parts from now on, one after the other, and then goes on with `done`, when the last is painted.
    pub fn begin(parts: usize, done: impl FnOnce() + 'static) -> Self {
        let laid = RwSignal::new(0);
        browser::after(0, move || lay(laid, parts, done));
        Self(laid)
    }

    /// A part, counted from 1: nothing until it is its turn.
    pub fn part(self, place: usize, part: impl Fn() -> AnyView + Send + Sync + 'static) -> AnyView {
        let has_come = Memo::new(move |_| self.0.get() >= place);
        (move || has_come.get().then(&part)).into_any()
    }
}

fn lay(laid: RwSignal<usize>, parts: usize, done: impl FnOnce() + 'static) {
    let Some(now) = laid.try_get_untracked().filter(|_| !laid.is_disposed()) else { return };
    if now == parts {
        browser::after_paint(done);
        return;
    }
    laid.set(now + 1);
    browser::after(0, move || lay(laid, parts, done));
}
