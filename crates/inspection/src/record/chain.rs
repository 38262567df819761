//! What became of a deficiency: found, action, done, looked at again, signed.

use core::{error::Error, fmt};

use crate::remedy::{Remedy, Who};
use crate::verdict::Verdict;

/// One entry of the chain. Texts are as written down: a name, a date.
#[derive(Clone, Debug, PartialEq)]
pub enum Event {
    /// What is to be done, and who said yes.
    Action {
        /// The remedy.
        remedy: Remedy,
        /// Who said yes, with a name.
        agreed: Vec<(Who, String)>,
        /// When it will be looked at again.
        recheck_on: String,
    },
    /// It was done.
    Done {
        /// By whom.
        by: String,
        /// When.
        when: String,
    },
    /// It was looked at again.
    Rechecked {
        /// How it stands now.
        verdict: Verdict,
        /// Photos of it, in the same frame as the fault.
        evidence: Vec<super::Evidence>,
        /// By whom.
        by: String,
        /// When.
        when: String,
    },
    /// It was signed.
    Signed {
        /// By whom.
        by: String,
        /// When.
        when: String,
    },
}

/// How far a deficiency has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Stage {
    /// Found; nothing was agreed yet, or the last repair did not hold.
    Found,
    /// What is to be done is agreed.
    Agreed,
    /// It was done.
    Done,
    /// It was looked at again and is right.
    Right,
    /// It is signed.
    Signed,
}

/// An event that cannot come now.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ChainError {
    /// The events before it are missing.
    NotYet {
        /// How far it has come.
        stage: Stage,
    },
    /// Someone who must say yes has not.
    NotAgreedBy(Who),
    /// The new look has no photo.
    NoEvidence,
    /// No deficiency stands at this place of the list.
    NoSuchDeficiency(usize),
}

impl fmt::Display for ChainError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotYet { stage } => {
                let next = match stage {
                    Stage::Found => "Agree on what is to be done first.",
                    Stage::Agreed => "Enter that it was done first.",
                    Stage::Done => "Look at it again first.",
                    Stage::Right => "It is right: sign it.",
                    Stage::Signed => "It is signed. Open a new deficiency.",
                };
                write!(f, "This entry cannot come now. {next}")
            }
            Self::NotAgreedBy(who) => {
                let who = match who {
                    Who::Crew => "the crew",
                    Who::CodeOfficial => "the code official",
                    Who::Engineer => "the engineer",
                    Who::Maker => "the maker",
                };
                write!(f, "This remedy needs a yes from {who}. Enter who said it.")
            }
            Self::NoSuchDeficiency(index) => write!(f, "Deficiency {index} is not in the record."),
            Self::NoEvidence => f.write_str("A new look needs a photo. Add one in the same frame as the fault."),
        }
    }
}

impl Error for ChainError {}

/// A deficiency and what became of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Deficiency {
    item: usize,
    events: Vec<Event>,
}

impl Deficiency {
    /// A deficiency of an item of the record, by its place in the list.
    #[must_use]
    pub(super) const fn of_item(item: usize) -> Self {
        Self { item, events: Vec::new() }
    }

    /// The item it is of.
    #[must_use]
    pub const fn item(&self) -> usize {
        self.item
    }

    /// Every entry, in the order in which it was made.
    #[must_use]
    pub fn events(&self) -> &[Event] {
        &self.events
    }

    /// How far it has come.
    #[must_use]
    pub fn stage(&self) -> Stage {
        match self.events.last() {
            None => Stage::Found,
            Some(Event::Action { .. }) => Stage::Agreed,
            Some(Event::Done { .. }) => Stage::Done,
            Some(Event::Rechecked { verdict, .. }) if verdict.holds() => Stage::Right,
            Some(Event::Rechecked { .. }) => Stage::Found,
            Some(Event::Signed { .. }) => Stage::Signed,
        }
    }

    /// Whether it is signed.
    #[must_use]
    pub fn is_closed(&self) -> bool {
        self.stage() == Stage::Signed
    }

    /// Adds an entry. A new action may replace one that was agreed and not done; a repair that did not hold starts
    /// over; all of it stays in the list.
    ///
    /// # Errors
    /// The entries before it are missing; someone who must say yes has not; a new look has no photo.
    pub(super) fn add(&mut self, event: Event) -> Result<(), ChainError> {
        let stage = self.stage();
        let fits = matches!(
            (&event, stage),
            (Event::Action { .. }, Stage::Found | Stage::Agreed)
                | (Event::Done { .. }, Stage::Agreed)
                | (Event::Rechecked { .. }, Stage::Done)
                | (Event::Signed { .. }, Stage::Right)
        );
        if !fits {
            return Err(ChainError::NotYet { stage });
        }
        if let Event::Action { remedy, agreed, .. } = &event {
            let said = |who: &Who| agreed.iter().any(|(by, name)| by == who && !name.trim().is_empty());
            if let Some(missing) = remedy.who().iter().find(|who| !said(who)) {
                return Err(ChainError::NotAgreedBy(*missing));
            }
        }
        if matches!(&event, Event::Rechecked { evidence, .. } if evidence.is_empty()) {
            return Err(ChainError::NoEvidence);
        }
        self.events.push(event);
        Ok(())
    }
}
