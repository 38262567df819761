//! Appendix L, Table L4: what the penny sizes of nails are, made from `data/nds_2018/` at build time.
//!
//! A penny size is a name for a length; each kind of nail has its own diameter for it. It is not a specification.

use measure::Length;

use super::nds;
use crate::{Source, Status};

/// Kinds of nails of the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum NailKind {
    /// Common: the thickest.
    Common,
    /// Box: as long as a common, and thinner.
    Box,
    /// Sinker: a little shorter and thinner than a common.
    Sinker,
}

impl NailKind {
    /// Every kind.
    pub const ALL: [Self; 3] = [Self::Common, Self::Box, Self::Sinker];

    /// As it is said: `common`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Common => "common",
            Self::Box => "box",
            Self::Sinker => "sinker",
        }
    }
}

/// One size of one kind of nail, as printed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NailSize {
    /// Kind.
    pub kind: NailKind,
    /// Penny size: 8 for 8d.
    pub penny: u8,
    /// Length.
    pub length: Length,
    /// Diameter of the shank.
    pub diameter: Length,
    /// Diameter of the head.
    pub head: Length,
    /// How length and shank came here.
    pub status: Status,
    /// How the head came here.
    pub head_status: Status,
}

impl NailSize {
    /// The table, and how length and shank came here.
    #[must_use]
    pub const fn source(self) -> Source {
        nds("Table L4", self.status)
    }

    /// The table, and how the head came here.
    #[must_use]
    pub const fn head_source(self) -> Source {
        nds("Table L4", self.head_status)
    }
}

/// Table L4, every row: common, box and sinker nails, each from thin to thick.
pub const TABLE_L4: &[NailSize] = include!(concat!(env!("OUT_DIR"), "/nds_2018_table_l4.rs"));

/// One size of one kind; none when the table does not hold it, as there is no 60d box nail.
///
/// ```
/// use standards::nds_2018::appendix_l::{NailKind, nail_size};
/// let common_8d = nail_size(NailKind::Common, 8).map(|size| size.diameter.inches());
/// assert_eq!(common_8d, Some(0.131));
/// ```
#[must_use]
pub fn nail_size(kind: NailKind, penny: u8) -> Option<NailSize> {
    TABLE_L4.iter().copied().find(|size| size.kind == kind && size.penny == penny)
}
