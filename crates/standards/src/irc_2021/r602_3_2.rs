//! Table R602.3(2): other fasteners that a structural panel may have in place of those of the schedule. Made from
//! `data/irc_2021/` at build time.

use measure::Length;

use super::{DOCUMENT, r602_3_1::ScheduleFastener};
use crate::{Source, Status};

/// One fastener that panels of a thickness may have.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AlternateRow {
    /// The thinnest panel of the row.
    pub thinnest: Length,
    /// The thickest panel of the row.
    pub thickest: Length,
    /// The fastener; a nail has no name here.
    pub fastener: ScheduleFastener,
    /// On center along the edges of the panel.
    pub spacing: Length,
    /// On center at the supports between.
    pub field_spacing: Length,
    /// How the row came here.
    pub status: Status,
}

impl AlternateRow {
    /// The table, and how the row came here.
    #[must_use]
    pub const fn source(&self) -> Source {
        Source::new(DOCUMENT, "Table R602.3(2)", self.status)
    }
}

/// Table R602.3(2), every row.
pub const TABLE_R602_3_2: &[AlternateRow] = include!(concat!(env!("OUT_DIR"), "/irc_2021_table_r602_3_2.rs"));

/// Every fastener of the table for a panel of a thickness; none between the thicknesses that are printed.
///
/// Source: IRC 2021 Table R602.3(2) (from memory).
///
/// ```
/// use measure::Length;
/// use standards::irc_2021::r602_3_2::alternate_attachments;
/// assert_eq!(alternate_attachments(Length::from_inches(0.4375)).count(), 3);
/// assert_eq!(alternate_attachments(Length::from_inches(0.5625)).count(), 0);
/// ```
pub fn alternate_attachments(panel: Length) -> impl Iterator<Item = &'static AlternateRow> {
    let is_panel = panel > Length::ZERO;
    TABLE_R602_3_2.iter().filter(move |row| is_panel && row.thinnest <= panel && panel <= row.thickest)
}
