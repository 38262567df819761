//! A load across the shank and along it at once.

use measure::{Angle, Force, Ratio, math};
use standards::nds_2018::{Cited, chapter_12::combined_lateral_and_withdrawal};

use crate::{FasteningError, LateralValue, UpliftValue};

/// What one nail carries under a load at an angle to the surface of the wood: 0° lies in the surface, 90° pulls
/// straight out.
///
/// Takes both values of the same nail in the same joint. The smaller of shank and head stands for the withdrawal value.
///
/// Source: NDS 2018 §12.4.2, Eq. 12.4-2 (from memory).
///
/// # Errors
/// When the angle is outside 0 to 90 degrees.
pub fn value_at_angle(
    lateral: &LateralValue,
    uplift: &UpliftValue,
    angle: Angle,
) -> Result<Cited<Force>, FasteningError> {
    Ok(combined_lateral_and_withdrawal(uplift.adjusted, lateral.adjusted, angle.degrees())?)
}

/// A pair of loads on one nail against what it carries under both.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CombinedCheck {
    /// The two loads as one.
    pub load: Force,
    /// Its angle from the surface of the wood.
    pub angle: Angle,
    /// What the nail carries at this angle.
    pub value: Cited<Force>,
    /// Load over value: 1 and less is enough. It is the sum of the two shares, each load over its own value.
    pub share: Ratio,
}

impl CombinedCheck {
    /// Whether the nail carries both.
    #[must_use]
    pub fn is_enough(&self) -> bool {
        self.share <= 1.0
    }
}

/// Checks one nail under a load across its shank and a pull along it.
///
/// Source: NDS 2018 §12.4.2, Eq. 12.4-2 (from memory).
///
/// # Errors
/// When a load is less than nothing or not a number.
pub fn check_combined(
    lateral: &LateralValue,
    uplift: &UpliftValue,
    across: Force,
    pull: Force,
) -> Result<CombinedCheck, FasteningError> {
    let across = load("Load across the shank", across)?;
    let pull = load("Pull along the shank", pull)?;
    let angle = Angle::from_degrees(math::atan2(pull, across).to_degrees());
    let load = Force::from_pounds((across * across + pull * pull).sqrt());
    let value = value_at_angle(lateral, uplift, angle)?;
    Ok(CombinedCheck { load, angle, value, share: load / value.value })
}

fn load(what: &'static str, given: Force) -> Result<f64, FasteningError> {
    let pounds = given.pounds();
    if pounds.is_finite() && pounds >= 0.0 { Ok(pounds) } else { Err(FasteningError::Load { what, given }) }
}
