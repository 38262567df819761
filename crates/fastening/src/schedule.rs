//! Whether the code's fastening schedule has a nail for a connection.

use standards::irc_2021::r602_3_1::{ScheduleFastener, ScheduleRow, alternatives};

use crate::Nail;

/// The rows of the fastening schedule that a nail meets for a connection: those whose nail is neither thicker nor
/// longer. Each says how many, or how far apart.
///
/// `connection` is named as [`standards::irc_2021::r602_3_1::connections`] gives it.
///
/// Source: IRC 2021 Table R602.3(1); each row carries its status.
///
/// ```
/// use fastening::{listed, read_nail};
///
/// let gun = read_nail("3-1/4 x 0.131")?.nail;
/// let rows: Vec<_> = listed("top plate to top plate", gun).collect();
/// assert!(rows.iter().any(|row| row.spacing.map(|spacing| spacing.inches()) == Some(12.0)));
/// # Ok::<(), fastening::NailError>(())
/// ```
pub fn listed(connection: &str, nail: Nail) -> impl Iterator<Item = &'static ScheduleRow> {
    alternatives(connection).filter(move |row| match row.fastener {
        ScheduleFastener::Nail { length, diameter, .. } => nail.diameter() >= diameter && nail.length() >= length,
        ScheduleFastener::Other(_) => false,
    })
}
