//! Table R602.3(1): the fastening schedule, made from `data/irc_2021/` at build time.
//!
//! A connection may be made with any one of the fasteners that are listed for it. The schedule is for the code's own
//! framing; what an engineer drew goes before it.

use measure::Length;

use super::DOCUMENT;
use crate::{Source, Status};

/// The parts of the schedule.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ScheduleGroup {
    /// Roof framing.
    Roof,
    /// Wall framing.
    Wall,
    /// Floor framing.
    Floor,
    /// Panels and boards on the framing.
    Sheathing,
}

/// How a fastener is driven.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ScheduleDriven {
    /// Straight through the face of one piece into the side of the other.
    Face,
    /// Straight into the end of a piece.
    End,
    /// At a slant through the side of a piece, near its end.
    Toe,
    /// Once hidden in the edge, and through the face.
    BlindAndFace,
}

/// What is driven.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ScheduleFastener {
    /// A nail.
    Nail {
        /// The name printed beside it: `16d common`; empty where only length and diameter are printed.
        size: &'static str,
        /// Length.
        length: Length,
        /// Diameter of the shank.
        diameter: Length,
    },
    /// A staple or a screw, as printed.
    Other(&'static str),
}

/// One fastener that a connection may have.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ScheduleRow {
    /// Item of the table.
    pub item: u8,
    /// Its part.
    pub group: ScheduleGroup,
    /// What is joined to what.
    pub connection: &'static str,
    /// The fastener.
    pub fastener: ScheduleFastener,
    /// How many: at the connection, or at each step of `spacing`; none where they run along it one by one.
    pub count: Option<u8>,
    /// On center along the connection; of a panel along its edges.
    pub spacing: Option<Length>,
    /// Of a panel, on center at the supports between its edges.
    pub field_spacing: Option<Length>,
    /// Where, as printed; empty where nothing is.
    pub place: &'static str,
    /// How it is driven; none for panels.
    pub driven: Option<ScheduleDriven>,
    /// How the row came here.
    pub status: Status,
    /// What else is known of it; empty where nothing is.
    pub note: &'static str,
}

impl ScheduleRow {
    /// The table, and how the row came here.
    #[must_use]
    pub const fn source(&self) -> Source {
        Source::new(DOCUMENT, "Table R602.3(1)", self.status)
    }
}

/// Table R602.3(1), every row.
pub const TABLE_R602_3_1: &[ScheduleRow] = include!(concat!(env!("OUT_DIR"), "/irc_2021_table_r602_3_1.rs"));

/// Every connection of an item, in the order of the table, each once.
///
/// ```
/// use standards::irc_2021::r602_3_1::connections;
/// let plates_to_studs: Vec<_> = connections(17).collect();
/// assert_eq!(plates_to_studs, ["top or bottom plate to stud: toe nailed", "top or bottom plate to stud: end nailed"]);
/// ```
pub fn connections(item: u8) -> impl Iterator<Item = &'static str> {
    // The rows of a connection stand together.
    let mut last = "";
    TABLE_R602_3_1.iter().filter(move |row| row.item == item).filter_map(move |row| {
        let new = row.connection != last;
        last = row.connection;
        new.then_some(row.connection)
    })
}

/// What a connection may be made with: any one of these. `connection` is as [`connections`] gives it.
pub fn alternatives(connection: &str) -> impl Iterator<Item = &'static ScheduleRow> {
    TABLE_R602_3_1.iter().filter(move |row| row.connection == connection)
}

/// Every connection whose name has all the words of a text, in the order of the table, each once: `plate stud`. Case
/// does not matter; a text without a word finds nothing.
///
/// ```
/// use standards::irc_2021::r602_3_1::{alternatives, find_connections};
/// let found: Vec<_> = find_connections("Ceiling joist PLATE").collect();
/// assert!(found.contains(&"ceiling joist to top plate"));
/// assert!(found.iter().all(|connection| alternatives(connection).count() > 0));
/// ```
pub fn find_connections(text: &str) -> impl Iterator<Item = &'static str> {
    const LAST_ITEM: u8 = 40;
    let words: Vec<_> = text.split_whitespace().map(str::to_lowercase).collect();
    (1..=LAST_ITEM).flat_map(connections).filter(move |connection| {
        let name = connection.to_lowercase();
        !words.is_empty() && words.iter().all(|word| name.contains(word))
    })
}
