//! How far a nail must reach into the main member: §12.1.6 and the footnotes of Tables 12N to 12R.

use measure::Length;

use super::nail_diameter;
use crate::Status::LookedUp;
use crate::nds_2018::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};

const LEAST_DIAMETERS: f64 = 6.0;
const FULL_DIAMETERS: f64 = 10.0;
const TIP_DIAMETERS: f64 = 2.0;

/// Least penetration of a nail into the main member, the tip included: 6 diameters. Less counts for nothing.
///
/// Source: NDS 2018 §12.1.6.4 (looked up).
#[must_use]
pub fn least_penetration(diameter: Length) -> Cited<Length> {
    Cited::new(diameter * LEAST_DIAMETERS, nds("§12.1.6.4", LookedUp))
}

/// Penetration from which a nail has the value of the tables: 10 diameters.
///
/// Source: NDS 2018 Tables 12N to 12R, footnote on penetration (looked up).
#[must_use]
pub fn full_penetration(diameter: Length) -> Cited<Length> {
    Cited::new(diameter * FULL_DIAMETERS, nds("Tables 12N to 12R, footnote", LookedUp))
}

/// What a value of the tables is multiplied by for its penetration: `p / 10 D`, and 1 from 10 diameters on.
///
/// Pure number. Source: NDS 2018 Tables 12N to 12R, footnote on penetration (looked up).
///
/// # Errors
/// Under 6 diameters there is no value; a diameter of nothing or of 1/4 in and more.
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_12::penetration_factor;
/// let short = penetration_factor(Length::from_inches(1.25), Length::from_inches(0.162))?;
/// assert!((short.value - 1.25 / 1.62).abs() < 1e-12);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn penetration_factor(penetration: Length, diameter: Length) -> Result<Cited<f64>, OutsideLimits> {
    let diameters = in_diameters(penetration, diameter)?;
    let share = if is_full(diameters) { 1.0 } else { diameters / FULL_DIAMETERS };
    Ok(Cited::new(share, full_penetration(diameter).source))
}

/// Bearing length `ℓ_m` of a nail in the main member for the yield equations: the penetration, less 2 diameters for
/// the tip where it is under 10 diameters.
///
/// Source: NDS 2018 §12.3.5 (looked up).
///
/// # Errors
/// As [`penetration_factor`].
pub fn bearing_length_in_main_member(penetration: Length, diameter: Length) -> Result<Cited<Length>, OutsideLimits> {
    let tip = if is_full(in_diameters(penetration, diameter)?) { Length::ZERO } else { diameter * TIP_DIAMETERS };
    Ok(Cited::new(penetration - tip, nds("§12.3.5", LookedUp)))
}

fn in_diameters(penetration: Length, diameter: Length) -> Result<f64, OutsideLimits> {
    let diameters = penetration.inches() / nail_diameter(diameter)?;
    PENETRATION.check(diameters + ROUNDING)?;
    Ok(diameters)
}

fn is_full(diameters: f64) -> bool {
    diameters + ROUNDING >= FULL_DIAMETERS
}

/// Decimals of an inch are not exact in binary: 6 × 0.113 must count as 6 diameters.
const ROUNDING: f64 = 1e-9;

const PENETRATION: Limit = Limit {
    what: "penetration",
    unit: "diameters",
    accepted: Accepted::Between(LEAST_DIAMETERS, f64::MAX),
    covers: "penetrations of 6 diameters and more",
    source: nds("§12.1.6.4", LookedUp),
    next_step: "Use a longer nail, or a thinner side member.",
};
