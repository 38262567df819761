//! Heights of the treads on a story pole.

use measure::{Denominator, Length, Rounding};

use super::error::{StairError, count, size};

/// The height of one tread, or of the upper floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mark {
    /// The riser that ends there, from 1.
    pub riser: u16,
    /// Exact height above the lower finish floor.
    pub exact: Length,
    /// Where it is marked: the nearest sixteenth. The last is where the upper floor is.
    pub at: Length,
}

/// Marks of a flight: riser `k` of `n` ends at `k H / n`, each rounded by itself, so that it is within 1/32 in and the risers
/// between marks differ by no more than 1/16 in where the rise is whole sixteenths. Stepping off a rounded riser would
/// miss the floor.
///
/// ```
/// use layout::stair::marks;
/// use measure::Length;
///
/// let marks = marks(Length::from_inches(94.0), 13)?;
/// assert_eq!(marks[0].at.inches(), 7.25);
/// assert_eq!(marks[12].at.inches(), 94.0);
/// # Ok::<(), layout::stair::StairError>(())
/// ```
///
/// Source: arithmetic.
///
/// # Errors
/// A rise of nothing or over 100 ft; no riser, or more than 300.
pub fn marks(rise: Length, risers: u16) -> Result<Vec<Mark>, StairError> {
    size("rise", rise)?;
    let risers = count(risers.into(), 1)?;
    Ok((1..=risers).map(|riser| mark(rise, risers, riser)).collect())
}

fn mark(rise: Length, risers: u16, riser: u16) -> Mark {
    let exact = rise * f64::from(riser) / f64::from(risers);
    Mark { riser, exact, at: if riser == risers { rise } else { to_sixteenth(exact) } }
}

/// The nearest sixteenth.
pub(super) fn to_sixteenth(length: Length) -> Length {
    length.rounded(Denominator::Sixteenth, Rounding::Nearest)
}

/// The risers between marks as they are marked.
#[must_use]
pub fn risers_of(marks: &[Mark]) -> Vec<Length> {
    between(marks.iter().map(|mark| mark.at))
}

/// Differences of heights that begin at zero.
pub(super) fn between(heights: impl Iterator<Item = Length>) -> Vec<Length> {
    heights
        .scan(Length::ZERO, |below, height| {
            let riser = height - *below;
            *below = height;
            Some(riser)
        })
        .collect()
}
