//! The engineer's schedule of panels and hold-downs, as it is typed from the drawing.
//!
//! One mark a line: `P1: 15/32 10d 3/12, studs 2x6, post 3, blocked, hold-down HD2` or `HD2: hold-down 5,000 lb, rod 5/8`; and a
//! line for the drawing, `sheet S2.1 rev B`. The same as CSV, with the names of the columns in the first line. Written out,
//! as lines or as CSV ([`Schedule::to_csv`]), it reads back as it was.
//!
//! *Invariant*: a schedule wins over anything that is computed; nothing of it is changed here, and what is not understood
//! is said line by line.

mod csv;
mod read;
mod write;

pub use read::{ScheduleProblem, read_schedule};

use measure::{Force, Length};

use crate::strength::Nailing;

/// What the drawing says of its braced walls.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Schedule {
    /// The drawing's sheet, with its revision; empty while it is not said.
    pub sheet: String,
    /// Panels by their marks.
    pub panels: Vec<PanelMark>,
    /// Hold-downs by their marks.
    pub hold_downs: Vec<HoldDownMark>,
}

/// A wall that is nailed alike everywhere it has this mark.
#[derive(Clone, Debug, PartialEq)]
pub struct PanelMark {
    /// The mark on the drawing.
    pub mark: String,
    /// Panels and nails.
    pub nailing: Nailing,
    /// Spacing along the edges that lie on the wall's own boundary, where it is another than along the panels' edges.
    pub boundary: Option<Length>,
    /// Spacing in the field, where it is said.
    pub field: Option<Length>,
    /// Studs: `2x6`; empty where it is not said.
    pub studs: String,
    /// Studs together at each end, or the post's size.
    pub post: String,
    /// Whether all edges are blocked.
    pub blocked: Option<bool>,
    /// What blocks the edges: `2x4 flat`; empty where it is not said.
    pub blocking: String,
    /// Nails of the plates: `16d at 4`.
    pub plate: String,
    /// Nails of the sill, or of the bottom plate into what is below it: `16d at 6`.
    pub sill: String,
    /// Anchor bolts: diameter and spacing.
    pub bolts: Option<(Length, Length)>,
    /// Washers: `3x3x1/4`.
    pub washer: String,
    /// The mark of the hold-down at its ends.
    pub hold_down: String,
}

/// A hold-down, or a strap between storeys.
#[derive(Clone, Debug, PartialEq)]
pub struct HoldDownMark {
    /// The mark on the drawing.
    pub mark: String,
    /// Whether it is a strap between storeys.
    pub strap: bool,
    /// What it must hold, or holds, as the drawing gives it.
    pub load: Force,
    /// Its rod or bolt.
    pub rod: Option<Length>,
    /// The post that it is fastened to.
    pub post: String,
    /// How far it gives at that load.
    pub gives: Option<Length>,
}

impl Schedule {
    /// The panels of that mark, whatever its letters' case.
    #[must_use]
    pub fn panel(&self, mark: &str) -> Option<&PanelMark> {
        self.panels.iter().find(|panel| panel.mark.eq_ignore_ascii_case(mark.trim()))
    }

    /// The hold-down of that mark.
    #[must_use]
    pub fn hold_down(&self, mark: &str) -> Option<&HoldDownMark> {
        self.hold_downs.iter().find(|hold_down| hold_down.mark.eq_ignore_ascii_case(mark.trim()))
    }

    /// Hold-downs that panels name and no line gives.
    pub fn missing_hold_downs(&self) -> impl Iterator<Item = (&str, &str)> {
        let named = self.panels.iter().filter(|panel| !panel.hold_down.is_empty());
        named
            .filter(|panel| self.hold_down(&panel.hold_down).is_none())
            .map(|panel| (panel.mark.as_str(), panel.hold_down.as_str()))
    }
}
