//! The end of the record.

use core::{error::Error, fmt};

use super::heading::Lack;
use super::item::ItemLack;

/// How the letter closes. The signer chooses; a town may refuse the softer form.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Closing {
    /// "In general conformance": what engineers write.
    InGeneralConformance,
    /// "Is in conformance": what some towns demand.
    IsInConformance,
    /// Neither: what was seen and what was not, and no more.
    ObservationsOnly,
}

/// The signature.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SignOff {
    /// Who signs.
    pub name: String,
    /// When, as written down.
    pub date: String,
    /// Whether the letter is sealed.
    pub sealed: bool,
    /// The closing that the signer chose.
    pub closing: Closing,
}

/// Something that is still open.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Open {
    /// The head lacks something.
    Heading(Lack),
    /// An item, by its place in the list, lacks something.
    Item(usize, ItemLack),
    /// A deficiency is not signed.
    Deficiency(usize),
}

/// Why a record cannot be written to or signed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SignError {
    /// It is signed.
    AlreadySigned,
    /// No item stands at this place of the list.
    NoSuchItem(usize),
    /// It lacks something.
    Lacks(Vec<Open>),
}

impl fmt::Display for SignError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::AlreadySigned => f.write_str("The record is signed. Make a new record for a new visit."),
            Self::NoSuchItem(item) => write!(f, "Item {item} is not in the record. List it first."),
            Self::Lacks(open) => {
                write!(f, "The record lacks {} entries. Fill them in, or say what could not be seen.", open.len())
            }
        }
    }
}

impl Error for SignError {}
