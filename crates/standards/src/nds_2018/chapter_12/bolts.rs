//! §12.3 for bolts: bearing that depends on the grain, and the yield limits with their own reduction terms.

use measure::{Angle, Length, Stress, math};

use super::{
    SPECIFIC_GRAVITY,
    yielding::{Checked, SingleShear, YieldMode, YieldValue, smallest},
};
use crate::Status::{FromMemory, LookedUp, PartlyLookedUp};
use crate::nds_2018::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};

/// Bending yield strength `F_yb` of a bolt: 45,000 psi. Source: NDS 2018 Table I1 and the footnote of Tables 12A to
/// 12E (partly looked up).
#[must_use]
pub const fn bolt_bending_yield_strength() -> Cited<Stress> {
    Cited::new(Stress::from_psi(45_000.0), nds("Table I1", PartlyLookedUp))
}

/// Dowel bearing strength `F_e` of concrete of 2,500 psi and more: 7,500 psi. Source: NDS 2018 Table 12E footnote
/// (looked up in a university course).
#[must_use]
pub const fn concrete_bearing_strength() -> Cited<Stress> {
    Cited::new(Stress::from_psi(7500.0), nds("Table 12E", LookedUp))
}

/// Dowel bearing strength of wood under a bolt, at an angle between the load and the grain: along the grain
/// `11,200 G`, across it `6,100 G^1.45 / √D`, each to the nearest 50 psi as Table 12.3.3 prints them, and between
/// the two by Hankinson's formula.
///
/// Takes the specific gravity, the diameter of the bolt, and the angle.
///
/// Source: NDS 2018 Table 12.3.3 and its footnote 2, §12.3.4 (looked up; another copy prints 1.84 for the exponent
/// 1.45, and its values agree with no table).
///
/// # Errors
/// When the specific gravity is under 0.31 or over 0.73, the diameter under 1/4 or over 1 in, or the angle outside 0 to
/// 90 degrees.
///
/// ```
/// use measure::{Angle, Length};
/// use standards::nds_2018::chapter_12::bolt_bearing_strength;
/// let half = Length::from_inches(0.5);
/// assert_eq!(bolt_bearing_strength(0.50, half, Angle::from_degrees(0.0))?.value.psi(), 5600.0);
/// assert_eq!(bolt_bearing_strength(0.50, half, Angle::from_degrees(90.0))?.value.psi(), 3150.0);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn bolt_bearing_strength(
    specific_gravity: f64,
    diameter: Length,
    load_to_grain: Angle,
) -> Result<Cited<Stress>, OutsideLimits> {
    let gravity = SPECIFIC_GRAVITY.check(specific_gravity)?;
    let inches = BOLT_DIAMETER.check(diameter.inches())?;
    let angle = Angle::from_degrees(LOAD_TO_GRAIN.check(load_to_grain.degrees())?);
    let parallel = printed(11_200.0 * gravity);
    let perpendicular = printed(6100.0 * math::pow(gravity, 1.45) / inches.sqrt());
    let (sine, cosine) = (angle.sin(), angle.cos());
    let psi = parallel * perpendicular / (parallel * sine * sine + perpendicular * cosine * cosine);
    Ok(Cited::new(Stress::from_psi(psi), nds("Table 12.3.3", LookedUp)))
}

/// To the nearest 50 psi.
fn printed(psi: f64) -> f64 {
    const PRINTED_STEP: f64 = 50.0;
    (psi / PRINTED_STEP).round() * PRINTED_STEP
}

/// Every mode's load of a bolt and what it was divided by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoltYieldLimits {
    /// `K_θ = 1 + 0.25 θ / 90`, of the largest angle between load and grain in any member.
    pub angle_factor: Cited<f64>,
    /// The six loads, in the order of [`YieldMode::ALL`].
    pub values: [YieldValue; 6],
}

impl BoltYieldLimits {
    /// The mode with the smallest load, and the reference lateral design value `Z` that it gives.
    #[must_use]
    pub fn governing(&self) -> YieldValue {
        smallest(&self.values)
    }
}

/// Reduction term `R_d` of a bolt in a mode: `4 K_θ` in `I`, `3.6 K_θ` in `II`, `3.2 K_θ` in `III` and `IV`.
///
/// Source: NDS 2018 Table 12.3.1B (looked up).
#[must_use]
pub fn bolt_reduction_term(mode: YieldMode, angle_factor: f64) -> Cited<f64> {
    let of_mode = match mode {
        YieldMode::Im | YieldMode::Is => 4.0,
        YieldMode::II => 3.6,
        YieldMode::IIIm | YieldMode::IIIs | YieldMode::IV => 3.2,
    };
    Cited::new(of_mode * angle_factor, nds("Table 12.3.1B", LookedUp))
}

/// Reference lateral value of every yield mode of a bolt in single shear, no factor in it.
///
/// Takes the bolt and how it bears on each member, and the largest angle between load and grain in either.
///
/// Source: NDS 2018 §12.3.1, Tables 12.3.1A and 12.3.1B (looked up; the coefficient of `III_m` partly).
///
/// # Errors
/// When the diameter is under 1/4 or over 1 in, the angle is outside 0 to 90 degrees, or a length or a strength is
/// nothing or less.
pub fn bolt_yield_limits(joint: &SingleShear, load_to_grain: Angle) -> Result<BoltYieldLimits, OutsideLimits> {
    BOLT_DIAMETER.check(joint.diameter.inches())?;
    let degrees = LOAD_TO_GRAIN.check(load_to_grain.degrees())?;
    let angle_factor = Cited::new(1.0 + 0.25 * degrees / 90.0, nds("Table 12.3.1B", LookedUp));
    let shear = Checked::new(joint)?;
    let value = |mode| shear.value(mode, bolt_reduction_term(mode, angle_factor.value).value);
    Ok(BoltYieldLimits { angle_factor, values: YieldMode::ALL.map(value) })
}

const BOLT_DIAMETER: Limit = Limit {
    what: "bolt diameter",
    unit: "in",
    accepted: Accepted::Between(0.25, 1.0),
    covers: "bolts 1/4 to 1 in thick",
    source: nds("§12.1.3.1", FromMemory),
    next_step: "Use a bolt of these sizes, or ask the engineer.",
};
const LOAD_TO_GRAIN: Limit = Limit {
    what: "angle between load and grain",
    unit: "degrees",
    accepted: Accepted::Between(0.0, 90.0),
    covers: "angles from 0 to 90 degrees",
    source: nds("§12.3.4", LookedUp),
    next_step: "Give the angle between the load and the grain: 0 along it, 90 across it.",
};
