//! Chapter 8: structural composite lumber, laminated veneer lumber among it.

use measure::{Length, math};

use super::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};
use crate::Status::{FromMemory, LookedUp};

/// Volume factor `C_V` of structural composite lumber by its depth: `(12/d)^k`.
///
/// Takes the exponent `k` the maker publishes (0 to 0.2; 0.111 to 0.136 is usual) and the depth. Gives a pure number,
/// which may be over 1 for pieces under 12 in deep. Over 1 it is used together with `C_L`; at most 1, the lesser of
/// the two is used.
///
/// Source: NDS 2018 §8.3.6 (from memory; the form agrees with a published capacity table).
///
/// # Errors
/// When the exponent is outside 0 to 0.2, or the depth is nothing or less.
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_8::depth_factor;
/// let factor = depth_factor(1.0 / 9.0, Length::from_inches(11.25))?;
/// assert!((factor.value - 1.0072).abs() < 0.00005);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn depth_factor(exponent: f64, depth: Length) -> Result<Cited<f64>, OutsideLimits> {
    const REFERENCE_INCHES: f64 = 12.0;
    let exponent = EXPONENT.check(exponent)?;
    let depth = DEPTH.check(depth.inches())?;
    Ok(Cited::new(math::pow(REFERENCE_INCHES / depth, exponent), nds("§8.3.6", FromMemory)))
}

const EXPONENT: Limit = Limit {
    what: "depth exponent",
    unit: "",
    accepted: Accepted::Between(0.0, 0.2),
    covers: "exponents from 0 to 0.2",
    source: nds("§8.3.6", FromMemory),
    next_step: "Read the exponent on the maker's sheet: (12/d) raised to it.",
};
const DEPTH: Limit = Limit {
    what: "depth",
    unit: "in",
    accepted: Accepted::MoreThan(0.0),
    covers: "depths over 0",
    next_step: "Give the depth of the piece.",
    ..EXPONENT
};

/// Repetitive member factor `C_r` of structural composite lumber, 1.04 on `F_b`.
///
/// Under the same conditions as for sawn lumber. Source: NDS 2018 §8.3.7 (looked up).
#[must_use]
pub const fn repetitive_member_factor() -> Cited<f64> {
    Cited::new(1.04, nds("§8.3.7", LookedUp))
}
