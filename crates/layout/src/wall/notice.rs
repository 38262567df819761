//! What cannot be laid out well, where it is, and the nearest thing that works.

use core::fmt;

use measure::{Denominator, Length};

use super::Spacing;

/// What is said of a wall that can be laid out, but not well; `Display` is a sentence.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Notice {
    /// A joint between sheets without 1/2 in of wood on each side.
    JointOffStud {
        /// Where it is.
        at: Length,
        /// Height of its row's bottom edge.
        row: Length,
    },
    /// Sheets whose measure along the wall is no whole number of spacings.
    SheetsOffLayout {
        /// Their measure along the wall.
        along: Length,
        /// The spacing.
        spacing: Spacing,
    },
    /// The last piece of a row is narrower than two bays.
    NarrowSheet {
        /// Where it begins.
        from: Length,
        /// Where it ends.
        to: Length,
        /// Height of its row's bottom edge.
        row: Length,
        /// A layout center for the joint that makes the narrower of the two pieces wider; none where none does.
        better: Option<Length>,
    },
    /// A bay wider than the spacing and its tolerance.
    WideBay {
        /// Far face of the piece before it.
        from: Length,
        /// Near face of the piece after it.
        to: Length,
    },
    /// A cripple too short to nail.
    ShortCripple {
        /// Which opening, from 0.
        opening: usize,
        /// What it would be long.
        length: Length,
        /// Above the header, or else below the sill.
        above: bool,
    },
    /// Wallboard without an inch of wood behind it where an inner wall meets.
    NoBacking {
        /// Which partition, from 0.
        partition: usize,
        /// At the side toward the plate's end, or else at the far side.
        near_side: bool,
    },
    /// Wallboard held by clips: no wood behind it in that corner.
    Clips {
        /// Which end.
        at: Length,
    },
    /// A joint of a plate that is on no stud.
    PlateJoint {
        /// Where it is.
        at: Length,
    },
    /// A level joint of the sheathing, with blocks in the bays.
    LevelJoint {
        /// Its height.
        at: Length,
    },
}

fn inches(length: Length) -> String {
    length.to_inches_fraction(Denominator::Sixteenth)
}

impl fmt::Display for Notice {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::JointOffStud { at, .. } => write!(
                f,
                "A joint of sheets at {} has less than 1/2\" of wood on a side. Add a stud centered there, or cut the sheet \
                 back to the stud before it.",
                inches(at)
            ),
            Self::SheetsOffLayout { along, spacing } => write!(
                f,
                "Sheets reach {} along the wall, and at {spacing} not every joint comes to a center. Sheets of 8 ft laid \
                 on their sides do; or add a stud at each joint that is named.",
                inches(along)
            ),
            Self::NarrowSheet { from, to, better, .. } => {
                write!(f, "The sheet from {} to {} is narrower than two bays. ", inches(from), inches(to))?;
                match better {
                    Some(joint) => write!(f, "With the joint at {} the narrower of the two is wider.", inches(joint)),
                    None => f.write_str(
                        "No joint on the layout makes it wider: start the sheets from the other end, or ask.",
                    ),
                }
            }
            Self::WideBay { from, to } => {
                write!(f, "The bay from {} to {} is wider than the layout. Add a stud in it.", inches(from), inches(to))
            }
            Self::ShortCripple { opening, length, above: true } => write!(
                f,
                "Cripples above opening {} are {} long and split. Fill it with flat plates, or set a deeper header tight \
                 under the plates.",
                opening + 1,
                inches(length)
            ),
            Self::ShortCripple { opening, length, above: false } => write!(
                f,
                "Cripples below opening {} are {} long and split. Fill it with flat plates.",
                opening + 1,
                inches(length)
            ),
            Self::NoBacking { partition, near_side } => write!(
                f,
                "Wallboard at the {} side of partition {} has less than 1\" of wood behind it. Nail a stud to what stands \
                 there, or turn to ladder blocks.",
                if near_side { "near" } else { "far" },
                partition + 1
            ),
            Self::Clips { at } => write!(
                f,
                "Wallboard in the corner at {} hangs on clips. Have them on hand before the board goes up.",
                inches(at)
            ),
            Self::PlateJoint { at } => write!(
                f,
                "A plate's joint at {} is on no stud. Take longer plates, or add a stud under it.",
                inches(at)
            ),
            Self::LevelJoint { at } => write!(
                f,
                "Sheets have a level joint {} above the subfloor. Where it braces, every bay takes a block behind it.",
                inches(at)
            ),
        }
    }
}
