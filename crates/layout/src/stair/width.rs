//! Clear width of a stair.

use measure::Length;

use super::check::{Check, Edition, Subject};
use super::error::{StairError, size};

/// Handrails of a stair.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rails {
    /// On one side.
    One,
    /// On both sides.
    Two,
}

/// Looks at the clear width above the handrails, and at and below them.
///
/// Source: IRC R311.7.1.
///
/// # Errors
/// A width of nothing or over 100 ft.
pub fn clear_width(above: Length, at_rails: Length, rails: Rails, edition: Edition) -> Result<[Check; 2], StairError> {
    size("clear width above the handrail", above)?;
    size("clear width at the handrail", at_rails)?;
    let limits = edition.limits();
    let lower = match rails {
        Rails::One => limits.width_one_rail,
        Rails::Two => limits.width_two_rails,
    };
    Ok([
        Check::at_least(Subject::WidthAboveRail, above, limits.width),
        Check::at_least(Subject::WidthAtRail, at_rails, lower),
    ])
}
