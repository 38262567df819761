//! A nail: diameter and length. Nothing else names one.

use core::fmt;

use measure::{Denominator, Length};
use standards::nds_2018::appendix_l::{NailKind, NailSize, TABLE_L4, nail_size};

use crate::NailError;

/// Diameters that are taken, in inches: thinner is a pin, thicker a spike that is designed as a bolt.
const DIAMETERS: core::ops::RangeInclusive<f64> = 0.06..=0.375;
/// Lengths that are taken, in inches. No number is in both ranges, so that a pair says which is which.
const LENGTHS: core::ops::RangeInclusive<f64> = 0.75..=12.0;

/// A nail, by the diameter of its shank and its length.
///
/// `Display` writes it as the box does, `0.131 x 2-1/2 in`; [`crate::read_nail`] reads that back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nail {
    diameter: Length,
    length: Length,
}

impl Nail {
    /// A nail of a diameter from 0.06 to 0.375 in and a length from 3/4 to 12 in. Whether the standard has a value for
    /// it is for [`crate::lateral_value`] to say.
    ///
    /// # Errors
    /// Any other diameter or length.
    pub fn new(diameter: Length, length: Length) -> Result<Self, NailError> {
        let possible = DIAMETERS.contains(&diameter.inches()) && LENGTHS.contains(&length.inches());
        let nail = Self { diameter, length };
        if possible { Ok(nail) } else { Err(NailError::NoSuchNail { given: nail.to_string() }) }
    }

    /// A nail from two sizes in either order: boxes print both.
    pub(crate) fn from_either_order(one: Length, other: Length) -> Result<Self, NailError> {
        Self::new(one, other).or_else(|problem| Self::new(other, one).map_err(|_| problem))
    }

    /// A nail of the table of sizes; none where the table has none, as for 60d box.
    ///
    /// ```
    /// use fastening::{Nail, NailKind};
    /// let nail = Nail::of_size(NailKind::Common, 16).map(|nail| nail.to_string());
    /// assert_eq!(nail.as_deref(), Some("0.162 x 3-1/2 in"));
    /// ```
    #[must_use]
    pub fn of_size(kind: NailKind, penny: u8) -> Option<Self> {
        nail_size(kind, penny).map(Self::from_size)
    }

    pub(crate) const fn from_size(size: NailSize) -> Self {
        Self { diameter: size.diameter, length: size.length }
    }

    /// Diameter of the shank.
    #[must_use]
    pub const fn diameter(self) -> Length {
        self.diameter
    }

    /// Length, from under the head to the point.
    #[must_use]
    pub const fn length(self) -> Length {
        self.length
    }

    /// The sizes of the table that are this nail: none, one, or more, as 3-1/4 x 0.148 is 12d common.
    pub fn sizes(self) -> impl Iterator<Item = &'static NailSize> {
        TABLE_L4.iter().filter(move |size| Self::from_size(**size) == self)
    }
}

impl fmt::Display for Nail {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} x {} in", self.diameter.inches(), inches_text(self.length))
    }
}

/// `2-1/2`; decimals where no tape has the mark.
fn inches_text(length: Length) -> String {
    let finest = Denominator::SixtyFourth;
    let marks = length.inches() * f64::from(finest.per_inch());
    if marks.fract() == 0.0 && length > Length::ZERO {
        length.to_inches_fraction(finest).trim_end_matches('"').to_owned()
    } else {
        length.inches().to_string()
    }
}
