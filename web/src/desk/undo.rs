//! One step back, as often as needed.

use framing::HeaderCase;
use job::{Fields, SavedHeader};
use leptos::prelude::*;
use view::model::FieldId;

use super::Desk;

/// So many steps are remembered.
const STEPS: usize = 50;

/// The desk before a change.
#[derive(Clone)]
pub struct Snapshot {
    case: HeaderCase,
    site: Fields,
    hand: FieldId,
    opened: Option<SavedHeader>,
    /// The input that was about to change; none for a larger step.
    changed: Option<FieldId>,
}

impl Desk {
    /// Remembers the desk before a change. Keys in one input after another are one step.
    pub fn remember_before(self, changed: Option<FieldId>) {
        let same = self
            .past
            .with_untracked(|past| changed.is_some() && past.last().is_some_and(|step| step.changed == changed));
        if same {
            return;
        }
        let step = Snapshot {
            case: self.case.get_untracked(),
            site: self.site.get_untracked(),
            hand: changed.unwrap_or(self.hand.get_untracked()),
            opened: self.opened.get_untracked(),
            changed,
        };
        self.past.update(|past| {
            if past.len() == STEPS {
                past.remove(0);
            }
            past.push(step);
        });
    }

    /// Whether there is a step to go back.
    pub fn can_undo(self) -> bool {
        self.past.with(|past| !past.is_empty())
    }

    /// Goes one step back.
    pub fn undo(self) {
        let step = self.past.try_update(Vec::pop).flatten();
        if let Some(step) = step {
            self.case.set(step.case);
            self.site.set(step.site);
            self.opened.set(step.opened);
            self.hand.set(step.hand);
            self.keeper.touch(self);
        }
    }
}
