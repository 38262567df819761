//! What lies below the fold follows a moment after the answer, one part a task, so that no key is held up by it.

use std::sync::Arc;

use leptos::prelude::*;
use view::model::HeaderScreen;

use crate::browser;

/// So long after the last change, milliseconds.
const MOMENT: i32 = 100;

/// So many parts follow one after the other.
const PARTS: usize = 13;

/// A part as it stood a moment ago; nothing until the first answer has been painted.
type Part = RwSignal<Option<Arc<HeaderScreen>>>;

/// The screen as it stood a moment ago, for each part of the page.
#[derive(Clone, Copy)]
pub struct Settled {
    begun: RwSignal<bool>,
    parts: [Part; PARTS],
}

impl Settled {
    /// Follows the screen. The one effect that writes signals: what it writes is late, not derived.
    pub fn follow(screen: Memo<HeaderScreen>) -> Self {
        let parts = core::array::from_fn(|_| RwSignal::new(None));
        let changes = StoredValue::new(0_u32);
        let begun = RwSignal::new(false);
        Effect::new(move |_| {
            if !begun.get() {
                return;
            }
            screen.track();
            changes.update_value(|changes| *changes = changes.wrapping_add(1));
            let change = changes.get_value();
            let settle = move || {
                if changes.try_get_value() == Some(change) {
                    settle_from(0, Arc::new(screen.get_untracked()), parts, move || {
                        changes.try_get_value() == Some(change)
                    });
                }
            };
            let first = parts[0].with_untracked(Option::is_none);
            browser::after(if first { 0 } else { MOMENT }, settle);
        });
        Self { begun, parts }
    }

    /// Begins, once what lies above the fold is on the screen.
    pub fn begin(self) {
        let _ = self.begun.try_set(true);
    }

    /// Whether the uppermost part stands, so that what is below it may be laid without being pushed down.
    pub fn stands(self) -> Memo<bool> {
        let part = self.parts[0];
        Memo::new(move |_| part.with(Option::is_some))
    }

    /// The markup of a part, counted from the top.
    pub fn part(self, place: usize, write: fn(&HeaderScreen) -> String) -> Signal<String> {
        let part = self.parts[place];
        Signal::derive(move || part.with(|screen| screen.as_deref().map(write).unwrap_or_default()))
    }
}

/// Settles one part, then the ones below it, as long as nothing has changed meanwhile.
fn settle_from(place: usize, screen: Arc<HeaderScreen>, parts: [Part; PARTS], still: impl Fn() -> bool + 'static) {
    let Some(part) = parts.get(place).filter(|_| still()) else { return };
    let _ = part.try_set(Some(screen.clone()));
    browser::after(0, move || settle_from(place + 1, screen, parts, still));
}
