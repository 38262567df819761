//! §12.2 and §12.4: nails pulled out along the shank, heads pulled through the sheathing, and both loads at once.

use core::f64::consts::PI;

use measure::{Force, Length, LineLoad, math};

use super::{SPECIFIC_GRAVITY, nail_diameter};
use crate::Status::{FromMemory, LookedUp};
use crate::nds_2018::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};

/// Shank and steel of a nail, as far as they change how it holds in withdrawal.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum NailShank {
    /// Smooth, bright or galvanized carbon steel: Eq. 12.2-3, looked up.
    Smooth,
    /// Smooth, stainless steel: Eq. 12.2-4, from memory.
    SmoothStainless,
    /// Roof sheathing and post-frame ring shank: Eq. 12.2-5, from memory, agrees with one printed value.
    RingShank,
}

/// Reference withdrawal value `W` per length of nail in the main member, the tip included, from side grain.
///
/// Takes the specific gravity of the main member and the shank diameter. From end grain a nail holds nothing.
///
/// Source: NDS 2018 §12.2.3, Eq. 12.2-3 to 12.2-5; see [`NailShank`] for how each came here.
///
/// # Errors
/// When the specific gravity is under 0.31 or over 0.73, or the diameter is nothing or 1/4 in and more.
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_12::{NailShank, withdrawal_per_length};
/// let pine = withdrawal_per_length(0.55, Length::from_inches(0.148), NailShank::Smooth)?;
/// assert!((pine.value.pounds_per_inch() - 46.0).abs() < 0.5);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn withdrawal_per_length(
    specific_gravity: f64,
    diameter: Length,
    shank: NailShank,
) -> Result<Cited<LineLoad>, OutsideLimits> {
    let gravity = SPECIFIC_GRAVITY.check(specific_gravity)?;
    let inches = nail_diameter(diameter)?;
    let (factor, source) = match shank {
        NailShank::Smooth => (1380.0 * math::pow(gravity, 2.5), nds("Eq. 12.2-3", LookedUp)),
        NailShank::SmoothStainless => (465.0 * math::pow(gravity, 1.5), nds("Eq. 12.2-4", FromMemory)),
        NailShank::RingShank => (1800.0 * gravity * gravity, nds("Eq. 12.2-5", FromMemory)),
    };
    let an_inch = Length::from_inches(1.0);
    Ok(Cited::new(Force::from_pounds(factor * inches) / an_inch, source))
}

/// Reference value `W_H` at which a round head pulls through the side member.
///
/// Takes the diameter of the head, the thickness of the side member under it and its specific gravity. An overdriven
/// head has less under it.
///
/// Source: NDS 2018 §12.2.5, Eq. 12.2-6a and 12.2-6b (from memory; agree with one printed value).
///
/// # Errors
/// When the head or the thickness is nothing or less, or the specific gravity is under 0.31 or over 0.73.
pub fn head_pull_through(
    head: Length,
    thickness: Length,
    specific_gravity: f64,
) -> Result<Cited<Force>, OutsideLimits> {
    let gravity = SPECIFIC_GRAVITY.check(specific_gravity)?;
    let head = HEAD.check(head.inches())?;
    let thickness = Limit { what: "thickness under the head", ..HEAD }.check(thickness.inches())?;
    let (pounds, source) = if thickness <= 2.5 * head {
        (690.0 * PI * head * gravity * gravity * thickness, nds("Eq. 12.2-6a", FromMemory))
    } else {
        (1725.0 * PI * head * head * gravity * gravity, nds("Eq. 12.2-6b", FromMemory))
    };
    Ok(Cited::new(Force::from_pounds(pounds), source))
}

const HEAD: Limit = Limit {
    what: "diameter of the head",
    unit: "in",
    accepted: Accepted::MoreThan(0.0),
    covers: "lengths over nothing",
    source: nds("§12.2.5", FromMemory),
    next_step: "Measure the head, and the sheathing that is left under it.",
};

/// Design value `Z'_α` of a nail under a load at an angle to the surface of the wood:
/// `(W'p) Z' / ((W'p) cos α + Z' sin α)`.
///
/// Takes the adjusted withdrawal value of the whole nail `W'p`, its adjusted lateral value `Z'`, and the angle from
/// the surface in degrees, 0 to 90.
///
/// Source: NDS 2018 §12.4.2, Eq. 12.4-2 (from memory).
///
/// # Errors
/// When a value is nothing or less, or the angle is outside 0 to 90 degrees.
pub fn combined_lateral_and_withdrawal(
    withdrawal: Force,
    lateral: Force,
    angle_degrees: f64,
) -> Result<Cited<Force>, OutsideLimits> {
    let pulled = VALUE.check(withdrawal.pounds())?;
    let across = VALUE.check(lateral.pounds())?;
    let radians = LOAD_ANGLE.check(angle_degrees)?.to_radians();
    let pounds = pulled * across / (pulled * math::cos(radians) + across * math::sin(radians));
    Ok(Cited::new(Force::from_pounds(pounds), VALUE.source))
}

const VALUE: Limit = Limit {
    what: "design value of the nail",
    unit: "lb",
    accepted: Accepted::MoreThan(0.0),
    covers: "values over nothing",
    source: nds("Eq. 12.4-2", FromMemory),
    next_step: "Check the nail and what it is driven into.",
};
const LOAD_ANGLE: Limit = Limit {
    what: "angle of the load",
    unit: "degrees",
    accepted: Accepted::Between(0.0, 90.0),
    covers: "angles from 0 to 90 degrees",
    next_step: "Give the angle between the load and the surface of the wood.",
    ..VALUE
};
