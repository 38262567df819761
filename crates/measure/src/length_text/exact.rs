//! A number of inches as a quotient of whole numbers, so that nothing is lost before the one rounding to `f64`.

use crate::Length;

/// A number of zero or more, as a quotient of whole numbers.
///
/// With at most eleven digits in each number that is read, and [`super::MAX_READ_LENGTH`], both halves of a length stay
/// far under 2⁵³ when it becomes an `f64`: one division, correctly rounded. What is summed before the limit is
/// checked stays far under 2¹²⁷.
#[derive(Clone, Copy, Debug)]
pub(super) struct Exact {
    numerator: u128,
    denominator: u128,
}

impl Exact {
    pub(super) fn new(numerator: u64, denominator: u64) -> Self {
        Self { numerator: numerator.into(), denominator: denominator.into() }
    }

    pub(super) fn plus(self, other: Self) -> Self {
        Self {
            numerator: self.numerator * other.denominator + other.numerator * self.denominator,
            denominator: self.denominator * other.denominator,
        }
    }

    pub(super) fn times(self, other: Self) -> Self {
        Self { numerator: self.numerator * other.numerator, denominator: self.denominator * other.denominator }
    }

    /// Whether it is a whole number of parts of which `per_inch` make one.
    pub(super) fn is_on_a_mark(self, per_inch: u32) -> bool {
        (self.numerator * u128::from(per_inch)).is_multiple_of(self.denominator)
    }

    pub(super) fn is_at_least(self, whole: u64) -> bool {
        self.numerator >= u128::from(whole) * self.denominator
    }

    pub(super) fn is_more_than(self, whole: u64) -> bool {
        self.numerator > u128::from(whole) * self.denominator
    }

    pub(super) fn as_inches(self) -> Length {
        Length::from_inches(self.numerator as f64 / self.denominator as f64)
    }
}
