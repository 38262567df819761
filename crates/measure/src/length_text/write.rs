//! From a length to what a carpenter reads, and the rounding that goes with it.

use super::{Denominator, Rounding};
use crate::Length;

const INCHES_PER_FOOT: u64 = 12;
/// Written where arithmetic went wrong, so that no wrong number is read off.
pub(super) const NOT_A_LENGTH: &str = "not a length";

/// A length taken apart for writing or for typesetting its fraction.
///
/// The fraction is reduced (`3/4`, never `12/16`), and is `0/1` when there is none. `negative` is never set for zero.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LengthParts {
    /// Whether the length is below zero; the other parts have no sign.
    pub negative: bool,
    /// Whole feet.
    pub feet: u64,
    /// Whole inches beyond the feet: 0 to 11.
    pub inches: u32,
    /// Top of the fraction of an inch; 0 when there is none.
    pub numerator: u32,
    /// Bottom of the fraction of an inch; 1 when there is none, else 2 to 64.
    pub denominator: u32,
}

impl LengthParts {
    /// Whole inches, with those in the feet.
    #[must_use]
    pub const fn whole_inches(self) -> u64 {
        self.feet * INCHES_PER_FOOT + self.inches as u64
    }

    const fn sign(self) -> &'static str {
        if self.negative { "-" } else { "" }
    }

    /// `2-3/4`, `2`, or `3/4` when there are no whole inches and `bare_fraction` is set.
    fn inches_text(self, whole: u64, bare_fraction: bool) -> String {
        let Self { numerator, denominator, .. } = self;
        match (whole, numerator) {
            (whole, 0) => whole.to_string(),
            (0, _) if bare_fraction => format!("{numerator}/{denominator}"),
            (whole, _) => format!("{whole}-{numerator}/{denominator}"),
        }
    }
}

impl Length {
    /// Taken apart, rounded to the nearest fraction named; halfway goes away from zero.
    ///
    /// The length must be finite. Feet stop at about 3·10¹⁶, the most that the whole numbers hold.
    #[must_use]
    pub fn parts(self, finest: Denominator) -> LengthParts {
        debug_assert!(self.inches().is_finite());
        let per_inch = finest.per_inch();
        let marks = (self.inches().abs() * f64::from(per_inch)).round() as u64;
        let whole_inches = marks / u64::from(per_inch);
        let numerator = (marks % u64::from(per_inch)) as u32;
        // The bottom is a power of two, so only twos can be shared; zero shares all of them.
        let shared = 1 << numerator.trailing_zeros().min(per_inch.trailing_zeros());
        LengthParts {
            negative: self.inches() < 0.0 && marks > 0,
            feet: whole_inches / INCHES_PER_FOOT,
            inches: (whole_inches % INCHES_PER_FOOT) as u32,
            numerator: numerator / shared,
            denominator: per_inch / shared,
        }
    }

    /// Rounded to a mark of the fraction named, in the direction named.
    ///
    /// [`Rounding::Up`] never gives less and [`Rounding::Down`] never gives more than the length itself, below zero
    /// too: -1/32" goes up to 0" and down to -1/16".
    ///
    /// # Example
    /// ```
    /// use measure::{Denominator, Length, Rounding};
    ///
    /// let longest = Length::from_inches(98.3);
    /// let safe = longest.rounded(Denominator::Sixteenth, Rounding::Down);
    /// assert_eq!(safe.to_feet_inches(Denominator::Sixteenth), "8' 2-1/4\"");
    /// ```
    #[must_use]
    pub fn rounded(self, finest: Denominator, rounding: Rounding) -> Self {
        let per_inch = f64::from(finest.per_inch());
        let marks = self.inches() * per_inch;
        if !marks.is_finite() {
            return self;
        }
        let marks = match rounding {
            Rounding::Nearest => marks.round(),
            Rounding::Up => marks.ceil(),
            Rounding::Down => marks.floor(),
        };
        // Adding zero turns -0 into 0.
        Self::from_inches(marks / per_inch + 0.0)
    }

    /// Written as feet, inches and a fraction: `8' 2-3/4"`, to the nearest fraction named.
    ///
    /// Whole feet keep their inches (`6' 0"`, `8' 0-3/4"`), under a foot stand inches alone (`9-1/4"`, `3/4"`), and
    /// zero is `0"`. Below zero, a minus stands in front.
    #[must_use]
    pub fn to_feet_inches(self, finest: Denominator) -> String {
        if !self.inches().is_finite() {
            return NOT_A_LENGTH.to_owned();
        }
        let parts = self.parts(finest);
        let inches = parts.inches_text(parts.inches.into(), parts.feet == 0);
        match parts.feet {
            0 => format!("{}{inches}\"", parts.sign()),
            feet => format!("{}{feet}' {inches}\"", parts.sign()),
        }
    }

    /// Written as inches and a fraction: `98-3/4"`, to the nearest fraction named.
    #[must_use]
    pub fn to_inches_fraction(self, finest: Denominator) -> String {
        if !self.inches().is_finite() {
            return NOT_A_LENGTH.to_owned();
        }
        let parts = self.parts(finest);
        format!("{}{}\"", parts.sign(), parts.inches_text(parts.whole_inches(), true))
    }
}
