//! What a record of a visit must hold, so that an engineer and a town both accept it.
//!
//! Texts are what someone wrote down; nothing here reads them. Entries are added and never erased. Nothing here says
//! that a wall conforms: that sentence is its signer's.

mod chain;
mod heading;
mod item;
mod measurements;
mod sign_off;

pub use chain::{ChainError, Deficiency, Event, Stage};
pub use heading::{CodeSections, Heading, Lack, Observer, Paper};
pub use item::{Evidence, Item, ItemLack, View};
pub use measurements::{Measurements, Remeasured};
pub use sign_off::{Closing, Open, SignError, SignOff};

use crate::finding::Finding;
use crate::observed::Seen;
use crate::verdict::Verdict;

/// A record of one visit.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Record {
    heading: Heading,
    items: Vec<Item>,
    deficiencies: Vec<Deficiency>,
    sign_off: Option<SignOff>,
}

impl Record {
    /// Where, when, who, and what it was compared with.
    #[must_use]
    pub const fn heading(&self) -> &Heading {
        &self.heading
    }

    /// What was looked at, one by one.
    #[must_use]
    pub fn items(&self) -> &[Item] {
        &self.items
    }

    /// What was out, with what became of it.
    #[must_use]
    pub fn deficiencies(&self) -> &[Deficiency] {
        &self.deficiencies
    }

    /// The signature, if it is signed.
    #[must_use]
    pub const fn signed(&self) -> Option<&SignOff> {
        self.sign_off.as_ref()
    }

    fn unsigned(&self) -> Result<(), SignError> {
        if self.sign_off.is_some() { Err(SignError::AlreadySigned) } else { Ok(()) }
    }

    /// Writes the head.
    ///
    /// # Errors
    /// It is signed.
    pub fn set_heading(&mut self, heading: Heading) -> Result<(), SignError> {
        self.unsigned()?;
        self.heading = heading;
        Ok(())
    }

    /// Lists an item, and says at which place of the list it is.
    ///
    /// # Errors
    /// It is signed.
    pub fn add_item(&mut self, item: Item) -> Result<usize, SignError> {
        self.unsigned()?;
        self.items.push(item);
        Ok(self.items.len() - 1)
    }

    /// Adds a look at an item with its photos. A look that finds it out opens a deficiency, if none is open.
    ///
    /// # Errors
    /// It is signed, or there is no such item.
    pub fn look(
        &mut self,
        item: usize,
        look: Remeasured<Seen<Finding>>,
        evidence: impl IntoIterator<Item = Evidence>,
    ) -> Result<(), SignError> {
        self.unsigned()?;
        let listed = self.items.get_mut(item).ok_or(SignError::NoSuchItem(item))?;
        let out = look.value.as_ref().observed().is_some_and(|finding| finding.verdict() == Verdict::Out);
        listed.look(look);
        evidence.into_iter().for_each(|evidence| listed.add_evidence(evidence));
        let open = self.deficiencies.iter().any(|deficiency| deficiency.item() == item && !deficiency.is_closed());
        if out && !open {
            self.deficiencies.push(Deficiency::of_item(item));
        }
        Ok(())
    }

    /// Adds an entry to what becomes of a deficiency. That goes on after the record is signed.
    ///
    /// # Errors
    /// The entry cannot come now, or there is no such deficiency.
    pub fn follow_up(&mut self, deficiency: usize, event: Event) -> Result<(), ChainError> {
        self.deficiencies.get_mut(deficiency).ok_or(ChainError::NoSuchDeficiency(deficiency))?.add(event)
    }

    /// Everything that is still open: what the heading lacks, items with something missing, deficiencies not closed.
    #[must_use]
    pub fn open(&self) -> Vec<Open> {
        let heading = self.heading.lacks().into_iter().map(Open::Heading);
        let items = self.items.iter().enumerate();
        let items = items.flat_map(|(index, item)| item.lacks().into_iter().map(move |lack| Open::Item(index, lack)));
        let chains = self.deficiencies.iter().enumerate().filter(|(_, deficiency)| !deficiency.is_closed());
        heading.chain(items).chain(chains.map(|(index, _)| Open::Deficiency(index))).collect()
    }

    /// Signs the record. The closing words are the signer's choice; open deficiencies are listed in the letter and do
    /// not hinder it, but what the heading or an item lacks does.
    ///
    /// # Errors
    /// It is signed already, or it lacks something.
    pub fn sign(&mut self, sign_off: SignOff) -> Result<(), SignError> {
        self.unsigned()?;
        let lacking: Vec<Open> = self.open().into_iter().filter(|open| !matches!(open, Open::Deficiency(_))).collect();
        if !lacking.is_empty() {
            return Err(SignError::Lacks(lacking));
        }
        self.sign_off = Some(sign_off);
        Ok(())
    }
}
