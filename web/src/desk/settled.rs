//! What lies below the fold follows a moment after the answer, so that a key is never held up by it.

use std::sync::Arc;

use leptos::prelude::*;
use view::model::HeaderScreen;

use crate::browser;

/// So long after the last change, milliseconds.
const MOMENT: i32 = 100;

/// The screen as it stood a moment ago; nothing until the first answer has been painted.
#[derive(Clone, Copy)]
pub struct Settled(RwSignal<Option<Arc<HeaderScreen>>>);

impl Settled {
    /// Follows the screen. The one effect that writes a signal: what it writes is late, not derived.
    pub fn follow(screen: Memo<HeaderScreen>) -> Self {
        let settled = RwSignal::new(None);
        let changes = StoredValue::new(0_u32);
        Effect::new(move |_| {
            screen.track();
            changes.update_value(|changes| *changes = changes.wrapping_add(1));
            let change = changes.get_value();
            let settle = move || {
                if changes.try_get_value() == Some(change) {
                    let _ = settled.try_set(Some(Arc::new(screen.get_untracked())));
                }
            };
            if settled.with_untracked(Option::is_none) {
                browser::after_paint(settle);
            } else {
                browser::after(MOMENT, settle);
            }
        });
        Self(settled)
    }

    /// A part of it, followed as it changes.
    pub fn part<T>(self, part: fn(&HeaderScreen) -> T) -> Memo<T>
    where
        T: Default + PartialEq + Send + Sync + 'static,
    {
        Memo::new(move |_| self.0.with(|screen| screen.as_deref().map(part).unwrap_or_default()))
    }
}
