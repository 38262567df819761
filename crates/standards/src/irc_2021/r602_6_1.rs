//! R602.6.1: top plates that are cut, drilled or notched for a pipe or a duct.

use measure::{Length, Ratio};

use super::DOCUMENT;
use crate::{Source, Status};

/// R602.6.1: the metal tie across a cut top plate. Tie and share were read in the print of 2018; its nails and its
/// reach past the opening in the text of a code change.
pub const TOP_PLATE_TIE: Source = Source::new(DOCUMENT, "R602.6.1", Status::PartlyLookedUp);
/// The clause before it was changed: 16d nails, and no tie where that side of the wall was sheathed with wood panels.
pub const OLDER_TEXT: Source = Source::new("IRC, editions before the change", "R602.6.1", Status::PartlyLookedUp);
/// A tie is asked for where more than this share of the plate's width is taken.
pub const CUT_SHARE: Ratio = 0.50;

/// The tie that a cut plate needs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlateTie {
    /// Least thickness of the galvanized steel: 16 gage.
    pub thickness: Length,
    /// Least width.
    pub width: Length,
    /// Least reach past each side of the opening.
    pub past_opening: Length,
    /// Nails on each side of the opening, at least.
    pub nails_each_side: u8,
    /// Diameter of those nails: 10d.
    pub nail_diameter: Length,
    /// Least length of those nails.
    pub nail_length: Length,
}

/// The tie of the 2021 edition.
pub const TIE: PlateTie = PlateTie {
    thickness: Length::from_inches(0.054),
    width: Length::from_inches(1.5),
    past_opening: Length::from_inches(6.0),
    nails_each_side: 8,
    nail_diameter: Length::from_inches(0.148),
    nail_length: Length::from_inches(1.5),
};

impl PlateTie {
    /// Least length of the tie across an opening.
    #[must_use]
    pub fn length_over(&self, opening: Length) -> Length {
        opening + self.past_opening * 2.0
    }
}

/// The most that may be taken from a plate of this width without a tie.
///
/// ```
/// use measure::Length;
/// use standards::irc_2021::r602_6_1::cut_limit;
///
/// assert_eq!(cut_limit(Length::from_inches(3.5)).inches(), 1.75);
/// ```
#[must_use]
pub fn cut_limit(width: Length) -> Length {
    width * CUT_SHARE
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: IRC R602.6.1 as quoted in a code change: 0.054 in (16 ga) by 1-1/2 in, 6 in past the opening, eight 10d
    /// (0.148 in) nails of 1-1/2 in each side.
    #[test]
    fn the_tie_as_printed() {
        assert_eq!([TIE.thickness.inches(), TIE.width.inches(), TIE.past_opening.inches()], [0.054, 1.5, 6.0]);
        assert_eq!((TIE.nails_each_side, TIE.nail_diameter.inches(), TIE.nail_length.inches()), (8, 0.148, 1.5));
        assert_eq!(TIE.length_over(Length::from_inches(3.5)).inches(), 15.5);
        assert_eq!(cut_limit(Length::from_inches(5.5)).inches(), 2.75);
    }
}
