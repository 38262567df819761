//! The inputs of one place: which there are, which is in hand, and where what is typed goes.

use leptos::prelude::*;
use view::model::{Field, FieldId, HeaderScreen};

/// Given to the inputs.
#[derive(Clone, Copy)]
pub struct Pad {
    /// What is shown.
    pub screen: Memo<HeaderScreen>,
    /// Which of its inputs belong to this place.
    pub belongs: fn(&Field) -> bool,
    /// The one in hand.
    pub hand: Signal<FieldId>,
    /// Whether the line in hand is being typed into.
    pub typing: RwSignal<bool>,
    /// Brings one to hand.
    pub bring: Callback<FieldId>,
    /// What was typed for an input.
    pub typed: Callback<FieldId, Option<String>>,
    /// Takes what was typed; none clears it.
    pub write: Callback<(FieldId, Option<String>)>,
    /// Whether the place asks its questions first.
    pub asks: bool,
}

impl Pad {
    /// Looks at one of its inputs.
    pub fn look<T: Default>(self, id: FieldId, look: impl FnOnce(&Field) -> T) -> T {
        self.screen.with(|screen| screen.fields.iter().find(|field| field.id == id).map(look).unwrap_or_default())
    }

    /// The same, followed as it changes.
    pub fn follow<T>(self, id: FieldId, look: fn(&Field) -> T) -> Memo<T>
    where
        T: Default + PartialEq + Send + Sync + 'static,
    {
        Memo::new(move |_| self.look(id, look))
    }

    /// Looks at all of its inputs, in order.
    pub fn look_at_all<T>(self, look: impl FnOnce(&mut dyn Iterator<Item = &Field>) -> T) -> T {
        self.screen.with(|screen| look(&mut screen.fields.iter().filter(|field| (self.belongs)(field))))
    }

    /// The one that comes next: what is asked first, then the order of the list, round to its start.
    pub fn next(self) -> Option<(FieldId, &'static str)> {
        let here = self.hand.get();
        let asked = self.screen.with(|screen| {
            let asked = screen.questions.iter().map(|(id, _)| *id).find(|id| *id != here);
            asked.filter(|_| self.asks)
        });
        self.look_at_all(|fields| {
            let fields: Vec<&Field> = fields.collect();
            let place = fields.iter().position(|field| field.id == here).map_or(0, |place| place + 1);
            let after = fields.get(place).or_else(|| fields.first()).map(|field| field.id);
            let next = asked.or(after)?;
            fields.iter().find(|field| field.id == next).map(|field| (field.id, field.label))
        })
    }

    /// Brings the next one to hand.
    pub fn go_on(self) {
        if let Some((next, _)) = untrack(move || self.next()) {
            self.bring.run(next);
        }
    }
}
