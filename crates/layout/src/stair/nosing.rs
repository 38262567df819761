//! Nosings: how far a tread stands out past its riser.

use measure::Length;

use super::check::{Check, Edition, NOISE, Subject};
use super::error::{StairError, size, thickness};

/// Nosings beside the code.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nosing {
    /// Whether one is asked for: solid risers, and a tread under 11 in.
    pub required: bool,
    /// Against the least; none where no nosing is required.
    pub least: Option<Check>,
    /// Against the most; none where there is none.
    pub most: Option<Check>,
}

/// Looks at a nosing.
///
/// Source: IRC R311.7.5.3, from memory.
///
/// # Errors
/// A projection below nothing, a tread of nothing.
pub fn nosing(projection: Length, tread: Length, solid_risers: bool, edition: Edition) -> Result<Nosing, StairError> {
    thickness("projection of the nosing", projection)?;
    size("run of a tread", tread)?;
    let limits = edition.limits();
    let required = solid_risers && tread < limits.tread_without_nosing.value - NOISE;
    let least = required.then(|| Check::at_least(Subject::Nosing, projection, limits.nosing_least));
    let stands_out = projection > Length::ZERO;
    let most = stands_out.then(|| Check::at_most(Subject::Nosing, projection, limits.nosing_most));
    Ok(Nosing { required, least, most })
}
