//! The book of a chapter of quick checks: the job's values, the kind that is looked at, and what follows.

use leptos::prelude::*;
use view::model::FieldId;
use view::quick::{QuickScreen, SIZE};

use super::Chapter;
use crate::browser;
use crate::values::{Found, Values};

/// What was typed, and what follows from it.
pub struct Book<K: Chapter> {
    /// The job's values, and how they are kept.
    pub values: Values,
    /// The kind that is looked at.
    pub kind: RwSignal<K>,
    /// The input in hand.
    pub hand: RwSignal<FieldId>,
    /// Everything that is shown.
    pub screen: Memo<QuickScreen<K>>,
}

impl<K: Chapter> Clone for Book<K> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<K: Chapter> Copy for Book<K> {}

/// The kind that an address asks for: `#/member/joist`.
pub fn asked_for<K: Chapter>(hash: &str) -> Option<K> {
    let mut words = hash.trim_start_matches('#').split('/').filter(|word| !word.is_empty());
    words.next().filter(|chapter| *chapter == K::CHAPTER)?;
    words.next().and_then(K::of)
}

impl<K: Chapter> Book<K> {
    /// Lays out what was found.
    pub fn new(found: &Found) -> Self {
        let values = Values::new(found);
        let first = asked_for(&browser::hash()).unwrap_or_else(|| values.fields.with_untracked(view::quick::kind::<K>));
        let kind = RwSignal::new(first);
        let screen = Memo::new(move |before: Option<&QuickScreen<K>>| {
            values.fields.with(|fields| view::quick::screen(kind.get(), fields, before))
        });
        Self { values, kind, hand: RwSignal::new(first.first()), screen }
    }

    /// Looks at another kind.
    pub fn look_at(self, kind: K) {
        if self.kind.get_untracked() == kind {
            return;
        }
        self.hand.set(kind.first());
        self.kind.set(kind);
        self.values.change(kind.first(), |fields| {
            fields.insert(view::quick::kind_key::<K>(), kind.id().to_owned());
        });
        browser::replace_hash(&format!("#/{}/{}", K::CHAPTER, kind.id()));
        browser::to_top();
    }

    /// Writes a value; none clears it.
    pub fn write(self, field: FieldId, text: Option<String>) {
        let kind = self.kind.get_untracked();
        self.values.change(field, |fields| view::quick::write(fields, kind, field, text, &crate::local_time::now()));
    }

    /// What was typed for an input.
    pub fn typed(self, field: FieldId) -> Option<String> {
        let key = view::quick::own_key(self.kind.get(), field);
        self.values.fields.with(|fields| fields.get(&key).cloned())
    }

    /// Judges a size; none finds the smallest again.
    pub fn judge(self, size: Option<&str>) {
        self.write(SIZE, size.map(str::to_owned));
    }

    /// Takes one step back.
    pub fn undo(self) {
        if let Some(field) = self.values.undo() {
            let kind = self.values.fields.with_untracked(view::quick::kind::<K>);
            if kind == self.kind.get_untracked() {
                self.hand.set(field);
            } else {
                self.hand.set(kind.first());
                self.kind.set(kind);
            }
        }
    }
}
