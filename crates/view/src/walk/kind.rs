//! What can be looked at on a walk.

use super::kinds;
use super::spec::Spec;
use crate::model::FieldId;

/// What is looked at. The order is the one of the cards.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// The studs of a wall by their pulls.
    StudSpacing,
    /// Nails along an edge or a stud, and how deep they were driven.
    Nailing,
    /// Anchor bolts of a sill plate, or a hold-down.
    HoldDownPoint,
    /// A notch, a hole or a cut.
    NotchFound,
    /// Plumb, flat, and the faces of neighbours.
    Flatness,
    /// The frame's moisture, visit by visit.
    Moisture,
}

impl Kind {
    /// Every kind.
    pub const ALL: [Self; 6] =
        [Self::StudSpacing, Self::Nailing, Self::HoldDownPoint, Self::NotchFound, Self::Flatness, Self::Moisture];

    /// Its stable name, the same as in the headless command.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::StudSpacing => "stud_spacing",
            Self::Nailing => "nailing",
            Self::HoldDownPoint => "hold_down_point",
            Self::NotchFound => "notch_found",
            Self::Flatness => "flatness",
            Self::Moisture => "moisture",
        }
    }

    /// The kind of a stable name; none for another text.
    #[must_use]
    pub fn at(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.name() == name)
    }

    /// Its word on a card.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::StudSpacing => "Stud spacing",
            Self::Nailing => "Nails",
            Self::HoldDownPoint => "Bolts, hold-downs, ties",
            Self::NotchFound => "Notches and holes",
            Self::Flatness => "Plumb and plane",
            Self::Moisture => "Moisture",
        }
    }

    /// Whether `could not be seen` is taken in an input.
    #[must_use]
    pub fn may_be_hidden(self, field: &str) -> bool {
        self.specs().iter().any(|spec| spec.id == field && spec.hidden)
    }

    /// Whether an input is a list: one text a reading.
    #[must_use]
    pub fn is_list(self, field: &str) -> bool {
        self.specs().iter().any(|spec| spec.id == field && spec.many)
    }

    /// The stable name of one of its inputs, as the screens hold it; the first where there is none of that name.
    #[must_use]
    pub fn field(self, name: &str) -> FieldId {
        let specs = self.specs();
        specs.iter().find(|spec| spec.id == name).or_else(|| specs.first()).map_or("", |spec| spec.id)
    }

    /// An input's label and what was typed in it, a choice in its words; none for a name that it does not have.
    #[must_use]
    pub fn said<'a>(self, name: &str, text: &'a str) -> Option<(&'static str, &'a str)> {
        let spec = self.specs().iter().find(|spec| spec.id == name)?;
        Some((spec.label, spec.words(text)))
    }

    /// Its inputs, in the order they are asked: what is measured first.
    pub(super) const fn specs(self) -> &'static [Spec] {
        match self {
            Self::StudSpacing => kinds::stud_spacing::SPECS,
            Self::Nailing => kinds::nailing::SPECS,
            Self::HoldDownPoint => kinds::hold_down_point::SPECS,
            Self::NotchFound => kinds::notch_found::SPECS,
            Self::Flatness => kinds::flatness::SPECS,
            Self::Moisture => kinds::moisture::SPECS,
        }
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use framing::walk::flatness::FlatnessCase;
    use framing::walk::hold_down_point::HoldDownPointCase;
    use framing::walk::judge;
    use framing::walk::moisture::MoistureCase;
    use framing::walk::nailing::NailingCase;
    use framing::walk::notch_found::NotchFoundCase;
    use framing::walk::stud_spacing::StudSpacingCase;

    use super::Kind;
    use crate::model::Entry;
    use crate::walk::spec::{HIDDEN, Spec};

    fn names(kind: Kind) -> [&'static [&'static str]; 2] {
        match kind {
            Kind::StudSpacing => [StudSpacingCase::TEXTS, StudSpacingCase::LISTS],
            Kind::Nailing => [NailingCase::TEXTS, NailingCase::LISTS],
            Kind::HoldDownPoint => [HoldDownPointCase::TEXTS, HoldDownPointCase::LISTS],
            Kind::NotchFound => [NotchFoundCase::TEXTS, NotchFoundCase::LISTS],
            Kind::Flatness => [FlatnessCase::TEXTS, FlatnessCase::LISTS],
            Kind::Moisture => [MoistureCase::TEXTS, MoistureCase::LISTS],
        }
    }

    fn refuses(kind: Kind, spec: &Spec, text: &str) -> bool {
        problem(kind, spec, text).is_some()
    }

    /// What the core says of a text in an input, where it refuses it.
    fn problem(kind: Kind, spec: &Spec, text: &str) -> Option<String> {
        let (mut texts, mut lists) = (BTreeMap::new(), BTreeMap::new());
        if spec.many {
            lists.insert(spec.id.to_owned(), vec![text.to_owned()]);
        } else {
            texts.insert(spec.id.to_owned(), text.to_owned());
        }
        let refused = judge(kind.name(), &texts, &lists).unwrap().err().unwrap_or_default();
        refused.into_iter().find(|refusal| refusal.field == spec.id).map(|refusal| refusal.problem)
    }

    #[test]
    fn every_input_of_the_core_is_asked_once() {
        for kind in Kind::ALL {
            let [texts, lists] = names(kind);
            assert_eq!(kind.specs().len(), texts.len() + lists.len(), "{kind:?}");
            for (names, many) in [(texts, false), (lists, true)] {
                for name in names {
                    let found = kind.specs().iter().filter(|spec| spec.id == *name && spec.many == many).count();
                    assert_eq!(found, 1, "{kind:?} {name}");
                }
            }
        }
    }

    #[test]
    fn every_choice_is_taken_by_the_core_and_every_condition_is_one_of_them() {
        for kind in Kind::ALL {
            for spec in kind.specs() {
                if let Entry::Choice(options) = spec.entry {
                    for (value, _) in options {
                        assert!(!refuses(kind, spec, value), "{kind:?} {} {value}", spec.id);
                    }
                }
                for (id, values) in spec.only {
                    let of = kind.specs().iter().find(|other| other.id == *id).unwrap();
                    let Entry::Choice(options) = of.entry else { unreachable!("{id}") };
                    for value in values.iter().filter(|value| !value.is_empty()) {
                        assert!(options.iter().any(|(stored, _)| stored == value), "{kind:?} {id} {value}");
                    }
                }
            }
        }
    }

    #[test]
    fn could_not_be_seen_is_offered_where_the_core_takes_it() {
        for kind in Kind::ALL {
            for spec in kind.specs().iter().filter(|spec| spec.hidden || spec.entry != Entry::Text) {
                assert_eq!(spec.hidden, !refuses(kind, spec, HIDDEN.0), "{kind:?} {}", spec.id);
            }
        }
    }

    #[test]
    fn tapes_reach_no_farther_than_the_core_takes() {
        for kind in Kind::ALL {
            for spec in kind.specs() {
                if let Entry::Length { least, most } = spec.entry {
                    assert!(least < most, "{kind:?} {}", spec.id);
                    // Deeper than the member is refused as well, but not for the tape's sake.
                    let problem = problem(kind, spec, &most.to_string()).unwrap_or_default();
                    assert!(!problem.contains("is taken"), "{kind:?} {} {most}: {problem}", spec.id);
                }
            }
        }
    }

    #[test]
    fn names_and_words_are_each_kinds_own() {
        for kind in Kind::ALL {
            assert_eq!(Kind::at(kind.name()), Some(kind));
            assert!(Kind::ALL.iter().filter(|other| other.word() == kind.word()).count() == 1, "{kind:?}");
            let labels: Vec<&str> = kind.specs().iter().map(|spec| spec.label).collect();
            for label in &labels {
                assert_eq!(labels.iter().filter(|other| *other == label).count(), 1, "{kind:?} {label}");
                assert!(label.len() <= 24, "{label} is too long for a chip");
            }
        }
        assert_eq!(Kind::at("roof"), None);
    }
}
