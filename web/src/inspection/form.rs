//! One form of the walk: what is typed in it, and its inputs as they are given to the page.

use std::sync::Arc;

use job::walk::Draft;
use leptos::prelude::*;
use view::model::{Field, FieldId};

use super::drafts::Drafts;
use crate::browser;
use crate::fields::Pad;

/// So many steps can be taken back.
const STEPS_BACK: usize = 60;

/// Tells whether the input of that name is a list of readings.
type IsList = Box<dyn Fn(&str) -> bool + Send + Sync>;

/// A form and its draft.
#[derive(Clone, Copy)]
pub struct Form {
    /// What is typed in it.
    pub draft: RwSignal<Draft>,
    drafts: Drafts,
    is_list: StoredValue<IsList>,
    past: RwSignal<Vec<Draft>>,
    /// As it begins when nothing was typed in it.
    fresh: StoredValue<Draft>,
    /// Whether it was begun before and goes on.
    pub goes_on: bool,
}

impl Form {
    /// Opens the form of that name: with what was typed in it before, else as `begin` lays it out.
    pub fn open(
        drafts: Drafts,
        name: &str,
        begin: impl FnOnce(Draft) -> Draft,
        is_list: impl Fn(&str) -> bool + Send + Sync + 'static,
    ) -> Self {
        let fresh = begin(drafts.empty(name));
        let begun = drafts.of(name);
        Self {
            goes_on: begun.as_ref().is_some_and(|begun| begun.texts != fresh.texts || begun.lists != fresh.lists),
            draft: RwSignal::new(begun.unwrap_or_else(|| fresh.clone())),
            fresh: StoredValue::new(fresh),
            drafts,
            is_list: StoredValue::new(Box::new(is_list)),
            past: RwSignal::new(Vec::new()),
        }
    }

    /// Whether an input is a list of readings.
    pub fn is_list(self, field: &str) -> bool {
        self.is_list.with_value(|is_list| is_list(field))
    }

    /// What was typed in an input; of a list, the reading in hand.
    pub fn typed(self, field: &str) -> Option<String> {
        self.draft.with(|draft| {
            if self.is_list(field) {
                let readings = draft.lists.get(field)?;
                let reading = if draft.hand == field { draft.reading } else { readings.len() };
                readings.get(reading).cloned()
            } else {
                draft.texts.get(field).cloned()
            }
        })
    }

    /// Whether that reading of a list is the new one, and in hand.
    pub fn is_new(self, field: &str, reading: usize) -> bool {
        self.draft.with_untracked(|draft| {
            let readings = draft.lists.get(field).map_or(0, Vec::len);
            draft.hand == field && draft.reading == reading && reading == readings
        })
    }

    /// Writes an input, or the reading in hand of a list; none clears it.
    pub fn write(self, field: FieldId, text: Option<String>) {
        let text = text.filter(|text| !text.is_empty());
        let again = self.draft.with_untracked(|draft| draft.hand == field && self.typed(field).is_some());
        self.change(!again || text.is_none(), |draft| {
            if !self.is_list(field) {
                match text {
                    Some(text) => draft.texts.insert(field.to_owned(), text),
                    None => draft.texts.remove(field),
                };
                return;
            }
            if draft.hand != field {
                field.clone_into(&mut draft.hand);
                draft.reading = draft.lists.get(field).map_or(0, Vec::len);
            }
            view::walk::write_reading(&mut draft.lists, field, draft.reading, text);
        });
    }

    /// Adds a reading to a list and brings a new one to hand.
    pub fn add_reading(self, field: FieldId, text: String) {
        self.change(true, |draft| {
            let readings = draft.lists.entry(field.to_owned()).or_default();
            readings.push(text);
            draft.reading = readings.len();
            field.clone_into(&mut draft.hand);
        });
    }

    /// Writes a reading of a list whole and brings it to hand.
    pub fn write_reading(self, field: FieldId, reading: usize, text: String) {
        self.change(true, |draft| {
            view::walk::write_reading(&mut draft.lists, field, reading, Some(text));
            field.clone_into(&mut draft.hand);
            draft.reading = reading;
        });
    }

    /// Brings an input to hand; of a list, a new reading.
    pub fn bring(self, field: &str) {
        let reading = self.draft.with_untracked(|draft| draft.lists.get(field).map_or(0, Vec::len));
        self.bring_reading(field, reading);
    }

    /// Brings a reading of a list to hand.
    pub fn bring_reading(self, field: &str, reading: usize) {
        self.draft.update(|draft| {
            field.clone_into(&mut draft.hand);
            draft.reading = reading;
        });
        self.keep();
    }

    /// Changes the draft; a step that can be taken back, where it is one.
    pub fn change(self, is_step: bool, change: impl FnOnce(&mut Draft)) {
        if is_step {
            let before = self.draft.get_untracked();
            self.past.update(|past| {
                if past.len() == STEPS_BACK {
                    past.remove(0);
                }
                past.push(before);
            });
        }
        self.draft.update(change);
        self.keep();
    }

    fn keep(self) {
        self.drafts.touch(self.draft.get_untracked());
    }

    /// Starts over; it can be taken back.
    pub fn start_over(self) {
        let fresh = self.fresh.get_value();
        self.change(true, |draft| *draft = fresh);
    }

    /// Whether there is a step to take back.
    pub fn can_undo(self) -> bool {
        self.past.with(|past| !past.is_empty())
    }

    /// Takes one step back.
    pub fn undo(self) {
        let before = self.past.try_update(Vec::pop).flatten();
        if let Some(before) = before {
            self.draft.set(before);
            self.keep();
        }
    }

    /// The form is in the log: its draft goes.
    pub fn is_logged(self) {
        let name = self.draft.with_untracked(|draft| draft.form.clone());
        self.drafts.drop(&name);
    }

    /// Its inputs as they are given to the page.
    pub fn pad(self, fields: Signal<Arc<Vec<Field>>>, asked: Signal<Vec<FieldId>>) -> Pad {
        let hand = Memo::new(move |_| {
            self.draft.with(|draft| {
                fields.with(|fields| {
                    let held = fields.iter().find(|field| field.id == draft.hand).or_else(|| fields.first());
                    held.map_or("", |field| field.id)
                })
            })
        });
        Pad {
            fields,
            belongs: |_| true,
            hand: hand.into(),
            typing: RwSignal::new(false),
            bring: Callback::new(move |field: FieldId| {
                self.bring(field);
                browser::to_top();
            }),
            typed: Callback::new(move |field: FieldId| self.typed(field)),
            write: Callback::new(move |(field, text)| self.write(field, text)),
            asked,
            way_on: None,
            beside: None,
            pictures: |_, _, _| None,
        }
    }
}
