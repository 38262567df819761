//! The inputs of one place: which there are, which is in hand, and where what is typed goes.

use std::sync::Arc;

use leptos::prelude::*;
use view::model::{Field, FieldId};
use view::scene::Scene;

/// The small picture of an option, where it has one: of an input, a value and its words.
pub type OptionPicture = fn(FieldId, &str, &str) -> Option<Scene>;

/// Given to the inputs.
#[derive(Clone, Copy)]
pub struct Pad {
    /// All inputs, in order.
    pub fields: Signal<Arc<Vec<Field>>>,
    /// Which of them belong to this place.
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
    /// The inputs that the place asks for first.
    pub asked: Signal<Vec<FieldId>>,
    /// What comes next, in words, and how to go there, where that is not the next input of the list.
    pub way_on: Option<(Signal<Option<String>>, Callback<()>)>,
    /// What stands beside the line in hand, where something does. It is told whether the line holds anything.
    pub beside: Option<Callback<Memo<bool>, AnyView>>,
    /// The pictures of options.
    pub pictures: OptionPicture,
}

impl Pad {
    /// Looks at one of its inputs.
    pub fn look<T: Default>(self, id: FieldId, look: impl FnOnce(&Field) -> T) -> T {
        self.fields.with(|fields| fields.iter().find(|field| field.id == id).map(look).unwrap_or_default())
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
        self.fields.with(|fields| look(&mut fields.iter().filter(|field| (self.belongs)(field))))
    }

    /// The input of that name.
    pub fn named(self, name: &str) -> Option<FieldId> {
        untrack(move || self.fields.with(|fields| fields.iter().find(|field| field.id == name).map(|field| field.id)))
    }

    /// Brings the input of that name to hand.
    pub fn bring_named(self, name: &str) {
        if let Some(id) = self.named(name) {
            self.bring.run(id);
        }
    }

    /// What comes next in words.
    pub fn next_in_words(self) -> Option<String> {
        let own = self.way_on.and_then(|(words, _)| words.get());
        own.or_else(|| self.next().map(|(_, label)| label.to_owned()))
    }

    /// The input that comes next: what is asked first, then the order of the list, round to its start.
    fn next(self) -> Option<(FieldId, &'static str)> {
        let here = self.hand.get();
        let asked = self.asked.with(|asked| asked.iter().copied().find(|id| *id != here));
        self.look_at_all(|fields| {
            let fields: Vec<&Field> = fields.collect();
            let place = fields.iter().position(|field| field.id == here).map_or(0, |place| place + 1);
            let after = fields.get(place).or_else(|| fields.first()).map(|field| field.id);
            let next = asked.or(after)?;
            fields.iter().find(|field| field.id == next).map(|field| (field.id, field.label))
        })
    }

    /// Goes on to what comes next.
    pub fn go_on(self) {
        if let Some((words, go)) = self.way_on
            && words.with_untracked(Option::is_some)
        {
            go.run(());
        } else if let Some((next, _)) = untrack(move || self.next()) {
            self.bring.run(next);
        }
    }
}
