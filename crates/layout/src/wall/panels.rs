//! Sheathing as it is given: what the sheets measure, how they lie, and where they begin and end.

use measure::Length;

use super::{Span, Wall};

/// Sheets higher than this above each other are no wall's.
const MOST_ROWS: f64 = 40.0;

/// How sheets lie.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lay {
    /// Long edges up, along the studs: joints one above the other.
    Upright,
    /// Long edges level, across the studs: joints staggered from row to row.
    Lying,
}

/// The sheathing of a wall. Heights stand above the top of the subfloor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sheets {
    /// How they lie.
    pub lay: Lay,
    /// Short measure, by name: 48 in.
    pub width: Length,
    /// Long measure, by name.
    pub length: Length,
    /// Gap at every edge.
    pub gap: Length,
    /// Made a gap short of their name, so that gaps do not add up. Sheets of the full measure creep off the studs.
    pub sized_for_spacing: bool,
    /// Where the lowest row begins; below zero where it laps the floor's rim.
    pub bottom: Length,
    /// Where the sheathing ends.
    pub top: Length,
}

impl Sheets {
    /// Sheets of 4 by 8 ft by name, 1/8 in apart and sized for it, over the whole frame.
    ///
    /// Source: common practice; 1/8 in from memory. The stamp wins.
    #[must_use]
    pub fn usual(lay: Lay, wall: &Wall) -> Self {
        Self {
            lay,
            width: Length::from_feet(4.0),
            length: Length::from_feet(8.0),
            gap: Length::from_inches(1.0 / 8.0),
            sized_for_spacing: true,
            bottom: Length::ZERO,
            top: wall.heights.frame(),
        }
    }

    /// Measure along the wall, by name.
    #[must_use]
    pub const fn along(&self) -> Length {
        match self.lay {
            Lay::Upright => self.width,
            Lay::Lying => self.length,
        }
    }

    /// Measure upright, by name.
    #[must_use]
    pub const fn upright(&self) -> Length {
        match self.lay {
            Lay::Upright => self.length,
            Lay::Lying => self.width,
        }
    }

    /// From joint to joint of sheets so long by name.
    pub(crate) fn pitch(&self, measure: Length) -> Length {
        if self.sized_for_spacing { measure } else { measure + self.gap }
    }

    /// A sheet between the middles of its joints. Sheets that are sized for it keep half a gap from the ends as well, so
    /// that each is as wide as it was made.
    pub(crate) fn edges(&self, from: Length, to: Length, run: Span, measure: Length) -> Span {
        let half_gap = self.gap / 2.0;
        let at_end = if self.sized_for_spacing { half_gap } else { Length::ZERO };
        let from = from + if from > run.from { half_gap } else { at_end };
        let to = to - if to < run.to { half_gap } else { at_end };
        Span::new(from, to.min(from + self.pitch(measure) - self.gap).max(from))
    }

    pub(super) fn can_be(&self, wall: &Wall) -> bool {
        let sized = wall.layout.spacing.length() <= self.width && self.width <= self.length;
        let gap = Length::ZERO <= self.gap && self.gap <= Length::from_inches(1.0);
        let rows = (self.top - self.bottom) / self.width;
        sized && gap && rows > 0.0 && rows <= MOST_ROWS
    }
}
