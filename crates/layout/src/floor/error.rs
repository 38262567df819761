//! Why a floor cannot be laid out as it was given.

use core::fmt;

use measure::{Denominator, Length};

/// Why a floor cannot be laid out; `Display` is a sentence that says what was given, what is taken and what to do.
/// Openings, walls and loads are counted from 0 here and from 1 in the sentence.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FloorError {
    /// A floor too small for its end joists or rims, or longer than a tape's text.
    Size {
        /// Along the plates.
        length: Length,
        /// Along the joists.
        width: Length,
    },
    /// Joists, rims or boards that cannot be.
    Lumber {
        /// What is wrong, in a sentence.
        problem: &'static str,
    },
    /// Sheets that start farther from the end than one spacing.
    Start {
        /// What was given.
        given: Length,
        /// The farthest taken, either way.
        most: Length,
    },
    /// Joists that run past their support.
    Cantilever {
        /// How far.
        overhang: Length,
    },
    /// An opening that is off the floor, or that leaves no room for its headers.
    OpeningOffFloor {
        /// Which.
        opening: usize,
        /// Where its headers may be at the nearest side.
        least: Length,
        /// Where they may be at the far side.
        most: Length,
    },
    /// An opening of no size, or with no ply.
    OpeningSize {
        /// Which.
        opening: usize,
    },
    /// An opening whose trimmers meet other joists.
    OpeningMeets {
        /// Which.
        opening: usize,
        /// Where it begins.
        from: Length,
        /// The nearest begin that is clear of what it meets.
        nearest: Length,
    },
    /// Two openings that overlap, or of which one's trimmer or header runs through the other.
    OpeningsOverlap {
        /// One.
        first: usize,
        /// The other.
        second: usize,
    },
    /// No room for two joists under a wall.
    WallAbove {
        /// Which.
        wall: usize,
        /// Its center.
        given: Length,
        /// The nearest center with room, where there is one.
        nearest: Option<Length>,
    },
    /// A load off the floor, in an opening, or without blocks.
    PointLoad {
        /// Which.
        load: usize,
    },
    /// Sheets of no size.
    Sheets,
}

fn inches(length: Length) -> String {
    length.to_inches_fraction(Denominator::Sixteenth)
}

impl fmt::Display for FloorError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::Size { length, width } => write!(
                f,
                "The floor is {} by {}. From 12\" to 1,000 ft are taken each way: write it out to out, the plates' length \
                 first.",
                inches(length),
                inches(width)
            ),
            Self::Lumber { problem } => f.write_str(problem),
            Self::Start { given, most } => write!(
                f,
                "The sheets start {} from the end. No more than one spacing of {} either way is taken: begin the layout at \
                 the sheet nearest to the end.",
                inches(given),
                inches(most)
            ),
            Self::Cantilever { overhang } => write!(
                f,
                "Joists run {} past their support. A cantilever has a table of its own, for its length, its back span and \
                 what it carries (IRC 2021 R502.3.3), and is not laid out here: follow the drawing.",
                inches(overhang)
            ),
            Self::OpeningOffFloor { opening, least, most } => write!(
                f,
                "Opening {} is off the floor or leaves no room for its headers. Across the joists it must lie on the floor; \
                 along them it may lie from {} to {}: \
                 move it or make it shorter.",
                opening + 1,
                inches(least),
                inches(most)
            ),
            Self::OpeningSize { opening } => write!(
                f,
                "Opening {} has no size or no plies. 3\" and more each way, and 1 to 4 plies, are taken: write its clear \
                 measures between trimmers and headers.",
                opening + 1
            ),
            Self::OpeningMeets { opening, from, nearest } => write!(
                f,
                "Opening {} begins at {}, and its trimmers have no room beside the joists that stand there. The nearest that \
                 has room begins at {}: move it.",
                opening + 1,
                inches(from),
                inches(nearest)
            ),
            Self::OpeningsOverlap { first, second } => write!(
                f,
                "Openings {} and {} overlap, or a trimmer or header of one runs through the other. Move one of them, bring \
                 them into one line, or make one opening of both.",
                first + 1,
                second + 1
            ),
            Self::WallAbove { wall, given, nearest } => {
                write!(f, "Two joists under wall {} at {} have no room there. ", wall + 1, inches(given))?;
                match nearest {
                    Some(nearest) => write!(f, "The nearest place with room is {}: move the wall, or ask.", inches(nearest)),
                    None => f.write_str("No place on this floor has room: ask."),
                }
            }
            Self::PointLoad { load } => write!(
                f,
                "Load {} stands off the floor or in an opening, or has no blocks. Write where it stands, and 1 or more blocks.",
                load + 1
            ),
            Self::Sheets => f.write_str(
                "The sheets have no size, are shorter than one spacing, or have a gap over 1\". Write a width such as 48\" and a \
                 length such as 96\".",
            ),
        }
    }
}

impl core::error::Error for FloorError {}
