//! 3-4-5 and its multiples.

use measure::{Angle, Length, math};

use super::diagonal::third_side;
use super::error::{SquareError, size};

/// What a multiple is counted in.
const FOOT: Length = Length::from_feet(1.0);
/// The same where a leg is too short for feet.
const INCH: Length = Length::from_inches(1.0);
/// No more are listed; the largest are the best.
const LISTED: u16 = 8;

/// A right triangle to be laid off at a corner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RightAngle {
    /// How often 3-4-5 is taken.
    pub times: u16,
    /// What is laid off on the first leg.
    pub first: Length,
    /// What is laid off on the second leg.
    pub second: Length,
    /// What must then be between the two marks.
    pub between: Length,
    /// What the corner is off if that is out by 1/16 in.
    pub off_by_a_sixteenth: Angle,
}

/// Multiples of 3-4-5 that fit two legs, the largest first: the larger, the truer. Feet are taken where they fit, else inches; the
/// leg that is longer takes the 4.
///
/// Source: geometry; common practice.
///
/// # Errors
/// Legs of nothing or over 1,000 ft, or too short for 3 and 4 in.
pub fn right_angles(first: Length, second: Length) -> Result<Vec<RightAngle>, SquareError> {
    size("first leg", first)?;
    size("second leg", second)?;
    let (longer, shorter) = (first.max(second), first.min(second));
    let most = |unit: Length| (shorter / (unit * 3.0)).min(longer / (unit * 4.0)).floor() as u16;
    let (unit, most) = [FOOT, INCH]
        .into_iter()
        .map(|unit| (unit, most(unit)))
        .find(|(_, most)| *most > 0)
        .ok_or(SquareError::LegsTooShort { longer, shorter })?;
    let multiple = |times: u16| {
        let part = |of: f64| unit * (of * f64::from(times));
        let (three, four, between) = (part(3.0), part(4.0), part(5.0));
        let (on_first, on_second) = if first >= second { (four, three) } else { (three, four) };
        let off = error_of(on_first, on_second, Length::from_inches(1.0 / 16.0));
        RightAngle { times, first: on_first, second: on_second, between, off_by_a_sixteenth: off }
    };
    let last = most.saturating_sub(LISTED) + 1;
    Ok((last..=most).rev().map(multiple).collect())
}

/// What a corner is off a right angle, from two legs and what was measured between their ends; below zero where it is less than 90
/// degrees.
///
/// Source: geometry: near a right angle `e c / (a b)` radians for an error `e`; worked exactly here.
///
/// # Errors
/// Lengths of nothing or over 1,000 ft; a length between the ends that the legs do not reach.
pub fn angle_error(first: Length, second: Length, between: Length) -> Result<Angle, SquareError> {
    let (a, b, c) = (size("first leg", first)?, size("second leg", second)?, size("length between the ends", between)?);
    let (least, most) = ((a - b).abs(), a + b);
    if c <= least || c >= most {
        let which = super::measured::Measurement::Between;
        return Err(SquareError::DoesNotFit { which, given: c, least, most });
    }
    let cosine = (a * a + b * b - c * c) / (a * b * 2.0);
    Ok(corner_of(cosine) - Angle::from_degrees(90.0))
}

/// The angle whose cosine this is, from 0 to 180 degrees.
pub(super) fn corner_of(cosine: f64) -> Angle {
    let sine = (1.0 - cosine * cosine).max(0.0).sqrt();
    Angle::from_degrees(math::atan2(sine, cosine).to_degrees())
}

fn error_of(a: Length, b: Length, error: Length) -> Angle {
    Angle::from_degrees((error * third_side(a, b) / (a * b)).to_degrees())
}
