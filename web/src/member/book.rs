//! The book of a member: the job's values, the kind that is looked at, and what follows.

use framing::member::MemberKind;
use leptos::prelude::*;
use view::member::{KIND, MemberScreen, SIZE};
use view::model::FieldId;

use crate::browser;
use crate::values::{Found, Values};

/// What was typed, and what follows from it.
#[derive(Clone, Copy)]
pub struct Book {
    /// The job's values, and how they are kept.
    pub values: Values,
    /// The kind that is looked at.
    pub kind: RwSignal<MemberKind>,
    /// The input in hand.
    pub hand: RwSignal<FieldId>,
    /// Everything that is shown.
    pub screen: Memo<MemberScreen>,
}

/// The kind that an address asks for: `#/member/joist`.
pub fn asked_for(hash: &str) -> Option<MemberKind> {
    hash.trim_start_matches('#').split('/').filter(|word| !word.is_empty()).nth(1).and_then(MemberKind::of)
}

impl Book {
    /// Lays out what was found.
    pub fn provide(found: &Found) -> Self {
        let values = Values::new(found);
        let first = asked_for(&browser::hash()).unwrap_or_else(|| values.fields.with_untracked(view::member::kind));
        let kind = RwSignal::new(first);
        let screen = Memo::new(move |before: Option<&MemberScreen>| {
            values.fields.with(|fields| view::member::screen(kind.get(), fields, before))
        });
        let book = Self { values, kind, hand: RwSignal::new(first.first()), screen };
        provide_context(book);
        book
    }

    /// Looks at another kind.
    pub fn look_at(self, kind: MemberKind) {
        if self.kind.get_untracked() == kind {
            return;
        }
        self.hand.set(kind.first());
        self.kind.set(kind);
        self.values.change(kind.first(), |fields| {
            fields.insert(KIND.to_owned(), kind.id().to_owned());
        });
        browser::replace_hash(&format!("#/member/{}", kind.id()));
        browser::to_top();
    }

    /// Writes a value; none clears it.
    pub fn write(self, field: FieldId, text: Option<String>) {
        let kind = self.kind.get_untracked();
        self.values.change(field, |fields| view::member::write(fields, kind, field, text, &crate::local_time::now()));
    }

    /// What was typed for an input.
    pub fn typed(self, field: FieldId) -> Option<String> {
        let key = view::member::own_key(self.kind.get(), field);
        self.values.fields.with(|fields| fields.get(&key).cloned())
    }

    /// Judges a size; none finds the smallest again.
    pub fn judge(self, size: Option<&str>) {
        self.write(SIZE, size.map(str::to_owned));
    }

    /// Takes one step back.
    pub fn undo(self) {
        if let Some(field) = self.values.undo() {
            let kind = self.values.fields.with_untracked(view::member::kind);
            if kind == self.kind.get_untracked() {
                self.hand.set(field);
            } else {
                self.hand.set(kind.first());
                self.kind.set(kind);
            }
        }
    }
}
