//! Chapter 5: structural glued laminated timber.

use measure::{Length, math};

use super::{
    Cited, OutsideLimits,
    chapter_4::WetServiceFactors,
    limits::{Accepted, Limit},
    nds,
};
use crate::{
    Source,
    Status::{FromMemory, LookedUp},
};

/// Wood of a glulam: sets the exponent of its volume factor.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum GlulamWood {
    /// Southern Pine: 1/20.
    SouthernPine,
    /// Every other: 1/10.
    Other,
}

/// Volume factor `C_V` of glulam bent about its strong axis:
/// `(21/L)^(1/x) (12/d)^(1/x) (5.125/b)^(1/x)`, at most 1.
///
/// Takes the wood, the length between points of zero moment, the depth and the breadth; a breadth over 10.75 in
/// counts as 10.75. Gives a pure number. It is not multiplied with `C_L`: the lesser of the two is used (§5.3.6).
///
/// Source: NDS 2018 §5.3.6, Eq. 5.3-1 (looked up).
///
/// # Errors
/// When a length is nothing or less.
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_5::{GlulamWood, volume_factor};
/// let (span, depth) = (Length::from_feet(20.0), Length::from_inches(19.25));
/// let factor = volume_factor(GlulamWood::SouthernPine, span, depth, Length::from_inches(5.0))?;
/// assert!((factor.value - 0.9802).abs() < 0.00005);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn volume_factor(
    wood: GlulamWood,
    length: Length,
    depth: Length,
    breadth: Length,
) -> Result<Cited<f64>, OutsideLimits> {
    const WIDEST_INCHES: f64 = 10.75;
    let exponent = match wood {
        GlulamWood::SouthernPine => 1.0 / 20.0,
        GlulamWood::Other => 1.0 / 10.0,
    };
    let length = VOLUME_LENGTH.check(length.feet())?;
    let depth = VOLUME_DEPTH.check(depth.inches())?;
    let breadth = VOLUME_BREADTH.check(breadth.inches())?.min(WIDEST_INCHES);
    let volume = (21.0 / length) * (12.0 / depth) * (5.125 / breadth);
    Ok(Cited::new(math::pow(volume, exponent).min(1.0), EQ_5_3_1))
}

const EQ_5_3_1: Source = nds("Eq. 5.3-1", LookedUp);

const VOLUME_LENGTH: Limit = Limit {
    what: "length between points of zero moment",
    unit: "ft",
    accepted: Accepted::MoreThan(0.0),
    covers: "sizes over 0",
    source: EQ_5_3_1,
    next_step: "Give the span of a simple beam.",
};
const VOLUME_DEPTH: Limit =
    Limit { what: "depth of the glulam", unit: "in", next_step: "Give the depth of the piece.", ..VOLUME_LENGTH };
const VOLUME_BREADTH: Limit =
    Limit { what: "breadth of the glulam", next_step: "Give the breadth of the piece.", ..VOLUME_DEPTH };

/// Flat use factor `C_fu` of glulam loaded along the wide faces of its laminations: `(12/d_y)^(1/9)`, at least 1.
///
/// Takes the size of the section along those faces: its breadth, when it stands on edge. Gives a pure number.
///
/// Source: NDS 2018 §5.3.7 (from memory; the printed 1.10 for 5-1/8 in looked up).
#[must_use]
pub fn flat_use_factor(along_laminations: Length) -> Cited<f64> {
    const FULL: Length = Length::from_inches(12.0);
    let value = if along_laminations < FULL { math::pow(FULL / along_laminations, 1.0 / 9.0) } else { 1.0 };
    Cited::new(value, nds("§5.3.7", FromMemory))
}

/// Wet service factor `C_M` of glulam, 16 % moisture and over.
///
/// Pure numbers. Source: NDS 2018 §5.3.3, NDS Supplement 2018 Table 5A (looked up).
#[must_use]
pub const fn wet_service_factors() -> Cited<WetServiceFactors> {
    let factors = WetServiceFactors { fb: 0.8, ft: 0.8, fv: 0.875, fc_perp: 0.53, fc: 0.73, e: 0.833 };
    Cited::new(factors, Source::new("NDS Supplement 2018", "Table 5A, wet service factor", LookedUp))
}
