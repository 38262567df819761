//! Why a wall cannot be laid out as it was given.

use core::fmt;

use measure::{Denominator, Length};

/// Why a wall cannot be laid out; `Display` is a sentence that says what was given, what is taken and what to do.
/// Openings, partitions and posts are counted from 0 here and from 1 in the sentence.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum WallError {
    /// The wall is too short for two end pieces or longer than a tape's text.
    Length {
        /// What was given.
        given: Length,
        /// The shortest taken.
        least: Length,
        /// The longest taken.
        most: Length,
    },
    /// A stud of a length that no wall has.
    StudLength {
        /// What was given.
        given: Length,
    },
    /// A stud or a plate of no thickness, a wall with no or too many top plates, or boards too short to plate a wall.
    Lumber {
        /// What is wrong, in a sentence.
        problem: &'static str,
    },
    /// Sheets that start farther from the plate's end than one spacing.
    Start {
        /// What was given.
        given: Length,
        /// The farthest taken, either way.
        most: Length,
    },
    /// An opening that reaches past an end of the wall.
    OpeningOffWall {
        /// Which.
        opening: usize,
        /// Where it begins.
        from: Length,
        /// Where it ends.
        to: Length,
        /// The wall's length.
        wall: Length,
    },
    /// An opening whose kings and jacks meet what stands there.
    OpeningMeets {
        /// Which.
        opening: usize,
        /// Where it begins.
        from: Length,
        /// The nearest begin that is clear of what it meets.
        nearest: Length,
    },
    /// Two openings that overlap, or whose studs do.
    OpeningsOverlap {
        /// The one nearer to the plate's end.
        first: usize,
        /// The other.
        second: usize,
        /// Where the second may begin at the earliest.
        nearest: Length,
    },
    /// An opening narrower than the two cripples that carry its sill.
    OpeningWidth {
        /// Which.
        opening: usize,
        /// What was given.
        given: Length,
        /// The narrowest taken.
        least: Length,
    },
    /// An opening without kings or without a header.
    OpeningFrame {
        /// Which.
        opening: usize,
    },
    /// A header that does not fit under the plates.
    Head {
        /// Which opening.
        opening: usize,
        /// Where its top was wanted.
        given: Length,
        /// The highest that this header leaves.
        most: Length,
    },
    /// A sill below the bottom plate, or no lower than the head.
    Sill {
        /// Which opening.
        opening: usize,
        /// Where it was wanted.
        given: Length,
        /// The lowest.
        least: Length,
        /// The highest.
        most: Length,
    },
    /// An inner wall off this one, or one that meets it in an opening.
    Partition {
        /// Which.
        partition: usize,
        /// Where its center was wanted.
        given: Length,
        /// The nearest center that is clear.
        nearest: Length,
    },
    /// A post off the wall, in an opening, or in other studs.
    Post {
        /// Which.
        post: usize,
        /// Where its center was wanted.
        given: Length,
        /// The nearest center that is clear of what it meets.
        nearest: Length,
    },
    /// A braced piece that reaches past the wall, runs over an opening, or is too short for its posts.
    Braced {
        /// Which.
        piece: usize,
        /// Where it begins.
        from: Length,
        /// Where it ends.
        to: Length,
    },
    /// A corner that needs more than the wall has, or that no stud of this wall backs.
    Corner {
        /// Thickness of the wall that meets.
        meets: Length,
    },
    /// Sheets of no size, or that end where they start.
    Sheets,
}

fn inches(length: Length) -> String {
    length.to_inches_fraction(Denominator::Sixteenth)
}

impl fmt::Display for WallError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::Length { given, least, most } => write!(
                f,
                "The wall is {} long. From {} to {} are taken: write the plate's length.",
                inches(given),
                inches(least),
                most.to_feet_inches(Denominator::Sixteenth)
            ),
            Self::StudLength { given } => write!(
                f,
                "The studs come out {} long. From 14\" to 24 ft are taken: check the height, the plates and the ceiling. A \
                 lower wall is solid blocking.",
                inches(given)
            ),
            Self::Lumber { problem } => f.write_str(problem),
            Self::Start { given, most } => write!(
                f,
                "The sheets start {} from the plate's end. No more than one spacing of {} either way is taken: begin the \
                 layout at the sheet nearest to the end.",
                inches(given),
                inches(most)
            ),
            Self::OpeningOffWall { opening, from, to, wall } => write!(
                f,
                "Opening {} runs from {} to {}, and the wall from 0\" to {}. Move it onto the wall or make it narrower.",
                opening + 1,
                inches(from),
                inches(to),
                inches(wall)
            ),
            Self::OpeningMeets { opening, from, nearest } => write!(
                f,
                "Opening {} begins at {}, and its king and jack studs have no room beside what stands there. The nearest \
                 that has room beside it begins at {}: move it, or take away a stud that is not needed.",
                opening + 1,
                inches(from),
                inches(nearest)
            ),
            Self::OpeningsOverlap { first, second, nearest } => write!(
                f,
                "Openings {} and {} overlap, or their king and jack studs do. Opening {} may begin at {} at the earliest: \
                 move it, or make one opening of both.",
                first + 1,
                second + 1,
                second + 1,
                inches(nearest)
            ),
            Self::OpeningWidth { opening, given, least } => write!(
                f,
                "Opening {} is {} wide. {} and more are taken: write the rough opening's width.",
                opening + 1,
                inches(given),
                inches(least)
            ),
            Self::OpeningFrame { opening } => write!(
                f,
                "Opening {} has no king stud, no header, or a window without a sill. At least one king at each side, a \
                 header's depth and plies, and a sill plate under a window are taken: write them.",
                opening + 1
            ),
            Self::Head { opening, given, most } => write!(
                f,
                "The top of opening {} is at {}, and its header does not fit between there and the plates. The highest \
                 that this header leaves is {}, and the jacks need some height: lower it, take a shallower header, or \
                 lengthen the studs.",
                opening + 1,
                inches(given),
                inches(most)
            ),
            Self::Sill { opening, given, least, most } => write!(
                f,
                "The sill of opening {} is at {}. From {}, which is on the bottom plate, to under {}, which is the \
                 opening's top, are taken: move it.",
                opening + 1,
                inches(given),
                inches(least),
                inches(most)
            ),
            Self::Partition { partition, given, nearest } => write!(
                f,
                "Partition {} meets at {}, off the wall or in an opening. The nearest place clear of that is {}: move one \
                 of them.",
                partition + 1,
                inches(given),
                inches(nearest)
            ),
            Self::Post { post, given, nearest } => write!(
                f,
                "Post {} is centered at {}, off the wall, in an opening or in other studs. The nearest center clear of \
                 that is {}: move it only if its load moves with it.",
                post + 1,
                inches(given),
                inches(nearest)
            ),
            Self::Braced { piece, from, to } => write!(
                f,
                "Braced piece {} runs from {} to {}. It must lie on the wall, run over no opening, and have room for the \
                 studs of both posts: write where its sheathing begins and ends.",
                piece + 1,
                inches(from),
                inches(to)
            ),
            Self::Corner { meets } => write!(
                f,
                "The wall that meets at a corner is {} thick, and its backing has no room here. Write its thickness \
                 without board, or take a corner of two studs and clips.",
                inches(meets)
            ),
            Self::Sheets => f.write_str(
                "The sheets have no size, are narrower than one spacing, or have a gap over 1\". Write a width such as 48\", \
                 a length such as 96\", and where they begin and end in height.",
            ),
        }
    }
}

impl core::error::Error for WallError {}
