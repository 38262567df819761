//! §3.4: shear along the grain, and notches at the ends of beams.

use measure::{Force, Length, Stress};

use crate::nds_2018::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};
use crate::{
    Source,
    Status::{FromMemory, LookedUp, PartlyLookedUp},
};

/// Shear stress `f_v` at mid-depth of a rectangular member, `3V / (2bd)`.
///
/// Takes the shear force, the breadth and the depth (both more than nothing); gives a stress.
///
/// Source: NDS 2018 §3.4.2, Eq. 3.4-2 (looked up).
#[must_use]
pub fn rectangular_shear_stress(shear: Force, breadth: Length, depth: Length) -> Cited<Stress> {
    Cited::new(1.5 * shear / (breadth * depth), nds("Eq. 3.4-2", LookedUp))
}

/// The shear a point load near a support counts with.
///
/// Takes the shear the load would give, its distance `x` from the face of the support, and the depth `d`: within `d`
/// it counts as `x/d` of itself, farther away in full. Only for a beam that bears on its bottom with its full width
/// and is loaded on its top. It changes shear alone: reaction, bearing and moment keep the full load.
///
/// Source: NDS 2018 §3.4.3.1 (the condition looked up, the share from memory).
#[must_use]
pub fn shear_from_point_load_near_support(shear: Force, distance: Length, depth: Length) -> Cited<Force> {
    let share = (distance / depth).clamp(0.0, 1.0);
    Cited::new(shear * share, nds("§3.4.3.1", PartlyLookedUp))
}

/// Shear a beam can carry at a square notch in its tension side at the end: `V'_r = (2/3) F'_v b d_n (d_n/d)²`.
///
/// Takes the adjusted shear value, the breadth, the full depth and the depth left at the notch; gives a force. A
/// notch deeper than a quarter of the depth is not allowed in sawn lumber in the first place (§4.4.3).
///
/// Source: NDS 2018 §3.4.3.2, Eq. 3.4-3 (put together from its older linear form and the square term added to it).
///
/// # Errors
/// When the depth left is nothing, or more than the full depth.
///
/// ```
/// use measure::{Length, Stress};
/// use standards::nds_2018::chapter_3::tension_notch_shear;
/// let inches = Length::from_inches;
/// let shear = tension_notch_shear(Stress::from_psi(180.0), inches(1.5), inches(9.25), inches(7.25))?;
/// assert!((shear.value.pounds() - 801.7).abs() < 0.05);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn tension_notch_shear(
    fv: Stress,
    breadth: Length,
    depth: Length,
    depth_at_notch: Length,
) -> Result<Cited<Force>, OutsideLimits> {
    const SOURCE: Source = nds("Eq. 3.4-3", PartlyLookedUp);
    depth_left(depth, depth_at_notch, SOURCE)?;
    let share = depth_at_notch / depth;
    Ok(Cited::new(fv * (breadth * depth_at_notch) * (share * share) * (2.0 / 3.0), SOURCE))
}

/// Shear a beam can carry at a notch in its compression side at the end:
/// `V'_r = (2/3) F'_v b [d − ((d − d_n)/d_n) e]`.
///
/// Takes the adjusted shear value, the breadth, the full depth, the depth left, and the length `e` of the notch
/// inside the inner edge of the support. A notch longer than the depth left counts as a beam of that depth.
///
/// Source: NDS 2018 §3.4.3.2, Eq. 3.4-5 (from memory).
///
/// # Errors
/// When the depth left is nothing, or more than the full depth; when the notch length is negative.
pub fn compression_notch_shear(
    fv: Stress,
    breadth: Length,
    depth: Length,
    depth_at_notch: Length,
    notch_length: Length,
) -> Result<Cited<Force>, OutsideLimits> {
    const SOURCE: Source = nds("Eq. 3.4-5", FromMemory);
    depth_left(depth, depth_at_notch, SOURCE)?;
    let length = NOTCH_LENGTH.check(notch_length.inches()).map(Length::from_inches)?;
    let effective = if length > depth_at_notch {
        depth_at_notch
    } else {
        depth - length * ((depth - depth_at_notch) / depth_at_notch)
    };
    Ok(Cited::new(fv * (breadth * effective) * (2.0 / 3.0), SOURCE))
}

const NOTCH_LENGTH: Limit = Limit {
    what: "notch length",
    unit: "in",
    accepted: Accepted::Between(0.0, f64::MAX),
    covers: "notch lengths from 0",
    source: nds("Eq. 3.4-5", FromMemory),
    next_step: "Measure the notch from the inner edge of the support.",
};

fn depth_left(depth: Length, left: Length, source: Source) -> Result<f64, OutsideLimits> {
    let limit = Limit {
        what: "depth left at the notch",
        unit: "in",
        accepted: Accepted::AtMost(depth.inches()),
        covers: "depths over 0, to the full depth",
        source,
        next_step: "Give the depth that is left above or below the cut, not the depth of the cut.",
    };
    limit.check(left.inches())
}
