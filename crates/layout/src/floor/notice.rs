//! What cannot be laid out well on a floor, where it is, and the nearest thing that works.

use core::fmt;

use measure::{Denominator, Length};

use crate::wall::Spacing;

/// What is said of a floor that can be laid out, but not well; `Display` is a sentence.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FloorNotice {
    /// A joint between sheets without 1/2 in of wood on each side.
    JointOffJoist {
        /// Where it is.
        at: Length,
        /// Its row, from 0.
        row: usize,
    },
    /// Sheets whose length is no whole number of spacings.
    SheetsOffLayout {
        /// Their length.
        along: Length,
        /// The spacing.
        spacing: Spacing,
    },
    /// The last sheet of a row is narrower than two bays.
    NarrowSheet {
        /// Where it begins.
        from: Length,
        /// Where it ends.
        to: Length,
        /// Its row, from 0.
        row: usize,
    },
    /// A bay wider than the spacing and its tolerance.
    WideBay {
        /// Far face of the joist before it.
        from: Length,
        /// Near face of the joist after it.
        to: Length,
    },
    /// Joists under a wall that stand beside others and not in the middle under it.
    WallMoved {
        /// Which wall, from 0.
        wall: usize,
        /// The wall's center.
        wanted: Length,
        /// The joists' center.
        stands: Length,
    },
    /// A tail too short to nail.
    ShortTail {
        /// Its center across.
        at: Length,
        /// What it would be long.
        length: Length,
    },
}

fn inches(length: Length) -> String {
    length.to_inches_fraction(Denominator::Sixteenth)
}

impl fmt::Display for FloorNotice {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::JointOffJoist { at, row } => write!(
                f,
                "A joint of sheets at {} in row {} has less than 1/2\" of wood on a side. Add a joist or a block under it, or \
                 cut the sheet back to the joist before it.",
                inches(at),
                row + 1
            ),
            Self::SheetsOffLayout { along, spacing } => write!(
                f,
                "Sheets are {} long, and at {spacing} not every joint comes to a center. Sheets of 8 ft do: take those, or \
                 another spacing.",
                inches(along)
            ),
            Self::NarrowSheet { from, to, row } => write!(
                f,
                "The sheet from {} to {} in row {} is narrower than two bays. Cut the one before it at an earlier joist, so \
                 that both are wider.",
                inches(from),
                inches(to),
                row + 1
            ),
            Self::WideBay { from, to } => write!(
                f,
                "The bay from {} to {} is wider than the layout. Add a joist in it.",
                inches(from),
                inches(to)
            ),
            Self::WallMoved { wall, wanted, stands } => write!(
                f,
                "The joists under wall {} are wanted at {} and stand at {}, beside what is there. Move the wall, or ask \
                 whether that carries it.",
                wall + 1,
                inches(wanted),
                inches(stands)
            ),
            Self::ShortTail { at, length } => write!(
                f,
                "The tail joist at {} is {} long and splits. Set the header against the rim, or move the opening.",
                inches(at),
                inches(length)
            ),
        }
    }
}
