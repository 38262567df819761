//! Guards, handrails and open risers.

use measure::Length;
use standards::irc_2021::r311_7::HANDRAIL_FROM_RISERS;

use super::check::{Check, Edition, NOISE, Subject};
use super::error::{StairError, size, thickness};

/// Whether a floor or a stair so high above what is below it has a guard.
///
/// Source: IRC R312.1.1.
#[must_use]
pub fn needs_guard(drop: Length, edition: Edition) -> bool {
    drop > edition.limits().guard_from.value + NOISE
}

/// Whether a flight has a handrail.
///
/// Source: IRC R311.7.8.
#[must_use]
pub const fn needs_handrail(risers: u16) -> bool {
    risers >= HANDRAIL_FROM_RISERS
}

/// The height of a handrail above the line of nosings: not too low, not too high.
///
/// Source: IRC R311.7.8.1.
///
/// # Errors
/// A height of nothing.
pub fn handrail(height: Length, edition: Edition) -> Result<[Check; 2], StairError> {
    size("height of the handrail", height)?;
    let limits = edition.limits();
    Ok([
        Check::at_least(Subject::Handrail, height, limits.handrail_lowest),
        Check::at_most(Subject::Handrail, height, limits.handrail_highest),
    ])
}

/// The height of a guard above the floor, or on the open side of a stair above the line of nosings.
///
/// Source: IRC R312.1.2.
///
/// # Errors
/// A height of nothing.
pub fn guard(height: Length, on_stair: bool, edition: Edition) -> Result<Check, StairError> {
    size("height of the guard", height)?;
    let limits = edition.limits();
    Ok(Check::at_least(Subject::Guard, height, if on_stair { limits.guard_on_stair } else { limits.guard }))
}

/// The widest opening in a guard: a ball of the limit does not pass.
///
/// Source: IRC R312.1.3.
///
/// # Errors
/// An opening below nothing.
pub fn guard_opening(opening: Length, on_stair: bool, edition: Edition) -> Result<Check, StairError> {
    thickness("opening in the guard", opening)?;
    let limits = edition.limits();
    let ball = if on_stair { limits.guard_on_stair_ball } else { limits.guard_ball };
    Ok(Check::at_most(Subject::GuardOpening, opening, ball))
}

/// The widest ball that passes the triangle of riser, tread and bottom rail.
///
/// Source: IRC R312.1.3.
///
/// # Errors
/// An opening below nothing.
pub fn triangle_opening(opening: Length, edition: Edition) -> Result<Check, StairError> {
    thickness("opening under the bottom rail", opening)?;
    Ok(Check::at_most(Subject::GuardOpening, opening, edition.limits().guard_triangle_ball))
}

/// The gap of an open riser.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OpenRiser {
    /// Between two treads, against the ball.
    pub gap: Check,
    /// The least bar that closes it enough; none where it is narrow enough.
    pub filler: Option<Length>,
}

/// Looks at a riser without a board; none where its tread is low enough that the gap is free.
///
/// Source: IRC R311.7.5.1.
///
/// # Errors
/// A riser of nothing, a tread as thick as the riser, a height below nothing.
pub fn open_riser(
    riser: Length,
    tread_thickness: Length,
    above_floor: Length,
    edition: Edition,
) -> Result<Option<OpenRiser>, StairError> {
    size("riser", riser)?;
    thickness("thickness of the treads", tread_thickness)?;
    thickness("height above the floor below", above_floor)?;
    let gap = size("gap between the treads", riser - tread_thickness)?;
    let limits = edition.limits();
    if above_floor <= limits.open_riser_from.value + NOISE {
        return Ok(None);
    }
    let gap = Check::at_most(Subject::OpenRiser, gap, limits.open_riser_ball);
    Ok(Some(OpenRiser { filler: (!gap.holds()).then_some(-gap.margin), gap }))
}
