//! §4.4: sideways support by rule of thumb, and notches.

use measure::Length;

use crate::Status::{LookedUp, PartlyLookedUp};
use crate::nds_2018::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};

/// What must hold a sawn beam sideways for `C_L` to be 1: the rows of §4.4.1.2, each with all that comes before it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LateralSupport {
    /// Nothing.
    None,
    /// Ends held by full-depth blocking, bridging, hangers, nailing or bolting.
    EndsHeld,
    /// Compression edge held in line over the full length, and ends held.
    CompressionEdgeHeld,
    /// Compression edge held, ends held, and blocking or bridging at most 8 ft apart.
    CompressionEdgeHeldAndBlocked,
    /// Both edges held in line over the full length, and ends held.
    BothEdgesHeld,
}

/// What must hold a sawn beam sideways for the beam stability factor to be 1.
///
/// Takes the nominal depth and breadth by name (12 and 2 for a 2x12); gives the support that is needed.
///
/// Source: NDS 2018 §4.4.1.2 (the steps and the kinds of support looked up; nominal sizes from memory).
///
/// # Errors
/// Over a ratio of 7 there is no rule of thumb: work `C_L` by §3.3.3.
///
/// ```
/// use standards::nds_2018::chapter_4::{LateralSupport, lateral_support_for_full_strength};
/// let joist = lateral_support_for_full_strength(10, 2)?;
/// assert_eq!(joist.value, LateralSupport::CompressionEdgeHeld);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn lateral_support_for_full_strength(
    nominal_depth: u8,
    nominal_breadth: u8,
) -> Result<Cited<LateralSupport>, OutsideLimits> {
    let ratio = DEPTH_TO_BREADTH.check(f64::from(nominal_depth) / f64::from(nominal_breadth))?;
    let support = match ratio {
        ..=2.0 => LateralSupport::None,
        ..=4.0 => LateralSupport::EndsHeld,
        ..=5.0 => LateralSupport::CompressionEdgeHeld,
        ..=6.0 => LateralSupport::CompressionEdgeHeldAndBlocked,
        _ => LateralSupport::BothEdgesHeld,
    };
    Ok(Cited::new(support, nds("§4.4.1.2", PartlyLookedUp)))
}

const DEPTH_TO_BREADTH: Limit = Limit {
    what: "nominal depth over nominal breadth",
    unit: "",
    accepted: Accepted::AtMost(7.0),
    covers: "ratios over 0, to 7",
    source: nds("§4.4.1.2", PartlyLookedUp),
    next_step: "Work the beam stability factor from the distance between braces instead.",
};

/// Deepest notch allowed at the end of a sawn beam: a quarter of its depth.
///
/// Source: NDS 2018 §4.4.3 (looked up).
#[must_use]
pub fn end_notch_depth_limit(depth: Length) -> Cited<Length> {
    Cited::new(depth / 4.0, nds("§4.4.3", LookedUp))
}
