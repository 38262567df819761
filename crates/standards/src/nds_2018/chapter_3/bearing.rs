//! §3.10: bearing across the grain, and at an angle to it.

use measure::{Angle, Force, Length, Stress, math};

use crate::Status::{FromMemory, LookedUp};
use crate::nds_2018::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};

/// Bearing stress across the grain, `f_c⊥ = R / (b ℓ_b)`.
///
/// Takes the reaction, the breadth and the bearing length (both more than nothing); gives a stress.
///
/// Source: NDS 2018 §3.10.2 (looked up).
#[must_use]
pub fn bearing_stress(reaction: Force, breadth: Length, bearing_length: Length) -> Cited<Stress> {
    Cited::new(reaction / (breadth * bearing_length), nds("§3.10.2", LookedUp))
}

/// Bearing area factor `C_b = (ℓ_b + 0.375) / ℓ_b`: a short bearing away from the end is helped by the fibres beside
/// it.
///
/// Takes the bearing length along the grain and its distance to the nearer end of the member. Shorter than 6 in and
/// at least 3 in from the end it is the equation; everywhere else, the end of a header on its jack stud among them,
/// it is 1.
///
/// Source: NDS 2018 §3.10.4, Eq. 3.10-2 (looked up).
///
/// # Errors
/// When the bearing length is nothing or less.
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_3::bearing_area_factor;
/// let stud_on_plate = bearing_area_factor(Length::from_inches(1.5), Length::from_inches(12.0))?;
/// assert_eq!(stud_on_plate.value, 1.25);
/// let at_the_end = bearing_area_factor(Length::from_inches(1.5), Length::ZERO)?;
/// assert_eq!(at_the_end.value, 1.0);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn bearing_area_factor(bearing_length: Length, distance_to_end: Length) -> Result<Cited<f64>, OutsideLimits> {
    const SHORT_INCHES: f64 = 6.0;
    const NEAR_END_INCHES: f64 = 3.0;
    const ADDED_INCHES: f64 = 0.375;
    let length = BEARING_LENGTH.check(bearing_length.inches())?;
    let helped = length < SHORT_INCHES && distance_to_end.inches() >= NEAR_END_INCHES;
    let value = if helped { (length + ADDED_INCHES) / length } else { 1.0 };
    Ok(Cited::new(value, nds("Eq. 3.10-2", LookedUp)))
}

const BEARING_LENGTH: Limit = Limit {
    what: "bearing length",
    unit: "in",
    accepted: Accepted::MoreThan(0.0),
    covers: "bearing lengths over 0",
    source: nds("Eq. 3.10-2", LookedUp),
    next_step: "Give the length of the seat along the member.",
};

/// Bearing value at an angle to the grain, the Hankinson formula:
/// `F'_θ = F_c* F'_c⊥ / (F_c* sin²θ + F'_c⊥ cos²θ)`.
///
/// Takes `F_c*` along the grain, `F'_c⊥` across it, and the angle between the load and the grain, 0 to 90 degrees.
///
/// Source: NDS 2018 §3.10.3, Eq. 3.10-1 (from memory).
///
/// # Errors
/// When the angle is outside 0 to 90 degrees, or a stress is nothing or less.
///
/// ```
/// use measure::{Angle, Stress};
/// use standards::nds_2018::chapter_3::hankinson;
/// let seat = hankinson(Stress::from_psi(1150.0), Stress::from_psi(425.0), Angle::from_degrees(60.0))?;
/// assert!((seat.value.psi() - 504.5).abs() < 0.05);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn hankinson(fc_star: Stress, fc_perp: Stress, load_to_grain: Angle) -> Result<Cited<Stress>, OutsideLimits> {
    let radians = GRAIN_ANGLE.check(load_to_grain.degrees())?.to_radians();
    let along = ALONG.check(fc_star.psi())?;
    let across = ACROSS.check(fc_perp.psi())?;
    let (sin, cos) = (math::sin(radians), math::cos(radians));
    let value = along * across / (along * (sin * sin) + across * (cos * cos));
    Ok(Cited::new(Stress::from_psi(value), nds("Eq. 3.10-1", FromMemory)))
}

const GRAIN_ANGLE: Limit = Limit {
    what: "angle to the grain",
    unit: "degrees",
    accepted: Accepted::Between(0.0, 90.0),
    covers: "angles from 0 to 90 degrees",
    source: nds("Eq. 3.10-1", FromMemory),
    next_step: "Give the smaller angle between the load and the length of the piece.",
};

const ALONG: Limit = Limit {
    what: "F_c*",
    unit: "psi",
    accepted: Accepted::MoreThan(0.0),
    covers: "stresses over nothing",
    source: nds("Eq. 3.10-1", FromMemory),
    next_step: "Check the design values of the piece.",
};
const ACROSS: Limit = Limit { what: "F'_c⊥", ..ALONG };
