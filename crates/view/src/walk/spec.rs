//! What the screen knows of an input: its label, how it is filled, and when it matters.

use super::typed::Typed;
use crate::model::{Entry, FieldId, Group};

/// An input that must be one of some values; an empty value stands for nothing said.
pub(super) type Condition = (FieldId, &'static [&'static str]);

/// One input.
#[derive(Clone, Debug)]
pub(super) struct Spec {
    pub(super) id: FieldId,
    pub(super) label: &'static str,
    pub(super) help: &'static str,
    pub(super) entry: Entry,
    pub(super) group: Group,
    /// Whether it is a list: one text a reading.
    pub(super) many: bool,
    /// Whether `could not be seen` is taken.
    pub(super) hidden: bool,
    /// What must be chosen for it to matter.
    pub(super) only: &'static [Condition],
}

impl Spec {
    /// An input that is one text and always matters.
    pub(super) const fn new(id: FieldId, label: &'static str, help: &'static str, entry: Entry, group: Group) -> Self {
        Self { id, label, help, entry, group, many: false, hidden: false, only: &[] }
    }

    /// The same as a list.
    pub(super) const fn list(self) -> Self {
        Self { many: true, ..self }
    }

    /// The same where it may be hidden.
    pub(super) const fn hidden(self) -> Self {
        Self { hidden: true, ..self }
    }

    /// The same where it matters only if other inputs are so.
    pub(super) const fn only(self, only: &'static [Condition]) -> Self {
        Self { only, ..self }
    }

    /// Whether it is shown: it matters, or something was typed in it.
    pub(super) fn is_shown(&self, typed: &Typed) -> bool {
        let holds = |(id, values): &Condition| values.contains(&typed.text(id));
        self.only.iter().all(holds) || if self.many { !typed.list(self.id).is_empty() } else { typed.has(self.id) }
    }

    /// The words of a value that is chosen; the value itself where it is none of the few.
    pub(super) fn words<'a>(&self, value: &'a str) -> &'a str
    where
        'static: 'a,
    {
        let Entry::Choice(options) = self.entry else { return value };
        options.iter().find(|(stored, _)| *stored == value).map_or(value, |(_, words)| words)
    }
}

/// A length in inches.
pub(super) const fn inches(least: f64, most: f64) -> Entry {
    Entry::Length { least, most }
}

/// A count.
pub(super) const COUNT: Entry = Entry::Number { unit: "" };

/// A force in pounds.
pub(super) const POUNDS: Entry = Entry::Number { unit: "lb" };

/// Yes or no.
pub(super) const YES_NO: Entry = Entry::Choice(&[("yes", "yes"), ("no", "no")]);

/// What is written where a thing is hidden.
pub(super) const HIDDEN: (&str, &str) = ("could not be seen", "could not be seen");

/// Yes, no, or hidden.
pub(super) const YES_NO_HIDDEN: Entry = Entry::Choice(&[("yes", "yes"), ("no", "no"), HIDDEN]);
