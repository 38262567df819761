//! The diagonal of a rectangle.

use measure::Length;

use super::error::{SquareError, size};

/// The longest side that is taken.
pub const MAX_SIDE: Length = Length::from_feet(1000.0);

/// Both diagonals of a rectangle: `sqrt(L² + W²)`.
///
/// ```
/// use layout::square::diagonal;
/// use measure::{Denominator, Length};
///
/// let found = diagonal(Length::from_feet(40.0), Length::from_feet(28.0))?;
/// assert_eq!(found.to_feet_inches(Denominator::Sixteenth), "48' 9-15/16\"");
/// # Ok::<(), layout::square::SquareError>(())
/// ```
///
/// # Errors
/// Sides of nothing or over 1,000 ft.
pub fn diagonal(length: Length, width: Length) -> Result<Length, SquareError> {
    Ok(third_side(size("length", length)?, size("width", width)?))
}

/// Hypotenuse of two legs.
pub(super) fn third_side(a: Length, b: Length) -> Length {
    Length::from_inches((a * a + b * b).square_inches().sqrt())
}
