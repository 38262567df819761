//! R403.1.6: anchoring sill and bottom plates to the foundation.

use measure::Length;

use super::DOCUMENT;
use crate::{Source, Status};

/// R403.1.6: size, embedment, spacing and ends of anchor bolts.
pub const ANCHOR_BOLTS: Source = Source::new(DOCUMENT, "R403.1.6", Status::LookedUp);
/// R403.1.6: the bolt stands in the middle third of the plate. Read in a state's adoption.
pub const MIDDLE_THIRD: Source = Source::new(DOCUMENT, "R403.1.6", Status::LookedUp);
/// R403.1.6, exceptions for short plates.
pub const SHORT_PLATES: Source = Source::new(DOCUMENT, "R403.1.6 exceptions", Status::FromMemory);

/// Least diameter.
pub const DIAMETER: Length = Length::from_inches(0.5);
/// Least embedment in concrete or grouted cells.
pub const EMBEDMENT: Length = Length::from_inches(7.0);
/// Greatest spacing.
pub const SPACING: Length = Length::from_inches(72.0);
/// A bolt stands no farther than this from each end of a plate piece.
pub const FARTHEST_FROM_END: Length = Length::from_inches(12.0);
/// A bolt stands no nearer to the end of a plate piece than this many of its diameters.
pub const DIAMETERS_FROM_END: f64 = 7.0;
/// Bolts in each plate piece, at least.
pub const BOLTS_A_PIECE: u8 = 2;

const ONE_BOLT_TO: Length = Length::from_inches(24.0);
const NO_BOLT_TO: Length = Length::from_inches(12.0);

/// Nearest that a bolt of this diameter may stand to the end of a plate piece.
#[must_use]
pub fn nearest_to_end(diameter: Length) -> Length {
    diameter * DIAMETERS_FROM_END
}

/// Where across a plate of this width a bolt may stand: from and to, from either face.
///
/// ```
/// use measure::Length;
/// use standards::irc_2021::r403_1_6::middle_third;
///
/// let (from, to) = middle_third(Length::from_inches(4.5));
/// assert_eq!((from.inches(), to.inches()), (1.5, 3.0));
/// ```
#[must_use]
pub fn middle_third(width: Length) -> (Length, Length) {
    (width / 3.0, width * 2.0 / 3.0)
}

/// Bolts that a plate piece of this length needs, and where that is said.
///
/// To 24 in one bolt is enough; to 12 in none, where the piece is tied to its neighbours: both from memory.
#[must_use]
pub fn bolts_needed(piece: Length) -> (u8, Source) {
    if piece <= NO_BOLT_TO {
        (0, SHORT_PLATES)
    } else if piece <= ONE_BOLT_TO {
        (1, SHORT_PLATES)
    } else {
        (BOLTS_A_PIECE, ANCHOR_BOLTS)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: IRC R403.1.6 in a wood council's answer on sill anchorage: 1/2 in, 7 in, 6 ft, two a piece, within 12 in of
    /// the ends and not nearer than 7 diameters, which is 3-1/2 in.
    #[test]
    fn anchor_bolts_as_printed() {
        assert_eq!([DIAMETER.inches(), EMBEDMENT.inches(), SPACING.feet()], [0.5, 7.0, 6.0]);
        assert_eq!((FARTHEST_FROM_END.inches(), nearest_to_end(DIAMETER).inches()), (12.0, 3.5));
        assert_eq!(bolts_needed(Length::from_feet(8.0)).0, 2);
    }

    /// Source: IRC R403.1.6 exceptions, from memory.
    #[test]
    fn short_plates_need_fewer() {
        let needed = |inches| bolts_needed(Length::from_inches(inches));
        assert_eq!([needed(12.0).0, needed(12.1).0, needed(24.0).0, needed(24.1).0], [0, 1, 1, 2]);
        assert_eq!((needed(24.0).1.status, needed(24.1).1.status), (Status::FromMemory, Status::LookedUp));
    }
}
