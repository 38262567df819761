//! §3.3.3: a deep beam whose compression edge can move sideways.

use measure::{Length, Stress};

use super::interaction_root;
use crate::nds_2018::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};
use crate::{
    Source,
    Status::{FromMemory, LookedUp},
};

/// How a beam is loaded and held sideways: the rows of Table 3.3.3.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum BendingCase {
    /// One span, uniform load.
    SimpleUniform,
    /// One span, point load at the centre, not held sideways there.
    SimpleCentreUnbraced,
    /// One span, point load at the centre, held sideways there.
    SimpleCentreBraced,
    /// One span, two equal point loads at the third points, held sideways there.
    ThirdPointsBraced,
    /// One span, three equal point loads at the quarter points, held sideways there.
    QuarterPointsBraced,
    /// One span, four equal point loads at the fifth points, held sideways there.
    FifthPointsBraced,
    /// One span, five equal point loads at the sixth points, held sideways there.
    SixthPointsBraced,
    /// One span, six equal point loads at the seventh points, held sideways there.
    SeventhPointsBraced,
    /// One span, seven or more equal point loads evenly spaced, held sideways there.
    SevenOrMoreBraced,
    /// One span, equal moments at both ends.
    EqualEndMoments,
    /// Cantilever, uniform load.
    CantileverUniform,
    /// Cantilever, point load at the free end.
    CantileverEndPoint,
    /// Any other single span or cantilever: the table's footnote 1, the safe choice when in doubt.
    AnyOther,
}

impl BendingCase {
    /// Every row of the table.
    pub const ALL: [Self; 13] = [
        Self::SimpleUniform,
        Self::SimpleCentreUnbraced,
        Self::SimpleCentreBraced,
        Self::ThirdPointsBraced,
        Self::QuarterPointsBraced,
        Self::FifthPointsBraced,
        Self::SixthPointsBraced,
        Self::SeventhPointsBraced,
        Self::SevenOrMoreBraced,
        Self::EqualEndMoments,
        Self::CantileverUniform,
        Self::CantileverEndPoint,
        Self::AnyOther,
    ];
}

/// Effective length `ℓ_e` of a bending member, for its sideways buckling.
///
/// Takes the distance between points of lateral support `ℓ_u` and the depth `d`, both more than nothing; gives a
/// length. A beam held along its whole compression edge needs none of this: `C_L` is 1 (§3.3.3.3).
///
/// Source: NDS 2018 Table 3.3.3 (looked up; equal end moments, and cantilevers of `ℓ_u/d` ≥ 7, from memory).
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_3::{BendingCase, effective_length};
/// let (unbraced, depth) = (Length::from_inches(96.0), Length::from_inches(7.25));
/// let effective = effective_length(BendingCase::SimpleCentreUnbraced, unbraced, depth);
/// assert!((effective.value.inches() - 153.27).abs() < 0.005);
/// ```
#[must_use]
pub fn effective_length(case: BendingCase, unbraced: Length, depth: Length) -> Cited<Length> {
    use BendingCase as C;
    const LOOKED_UP: Source = nds("Table 3.3.3", LookedUp);
    const FROM_MEMORY: Source = nds("Table 3.3.3", FromMemory);
    let long = unbraced.inches() >= 7.0 * depth.inches();
    let very_long = unbraced.inches() > 14.3 * depth.inches();
    let (length_share, depth_share, source) = match case {
        C::SimpleUniform if long => (1.63, 3.0, LOOKED_UP),
        C::SimpleUniform => (2.06, 0.0, LOOKED_UP),
        C::SimpleCentreUnbraced if long => (1.37, 3.0, LOOKED_UP),
        C::SimpleCentreUnbraced => (1.80, 0.0, LOOKED_UP),
        C::SimpleCentreBraced => (1.11, 0.0, LOOKED_UP),
        C::ThirdPointsBraced | C::FifthPointsBraced => (1.68, 0.0, LOOKED_UP),
        C::QuarterPointsBraced => (1.54, 0.0, LOOKED_UP),
        C::SixthPointsBraced => (1.73, 0.0, LOOKED_UP),
        C::SeventhPointsBraced => (1.78, 0.0, LOOKED_UP),
        C::SevenOrMoreBraced => (1.84, 0.0, LOOKED_UP),
        C::EqualEndMoments => (1.84, 0.0, FROM_MEMORY),
        C::CantileverUniform if long => (0.90, 3.0, FROM_MEMORY),
        C::CantileverUniform => (1.33, 0.0, LOOKED_UP),
        C::CantileverEndPoint if long => (1.44, 3.0, FROM_MEMORY),
        C::CantileverEndPoint => (1.87, 0.0, LOOKED_UP),
        C::AnyOther if very_long => (1.84, 0.0, LOOKED_UP),
        C::AnyOther if long => (1.63, 3.0, LOOKED_UP),
        C::AnyOther => (2.06, 0.0, LOOKED_UP),
    };
    Cited::new(length_share * unbraced + depth_share * depth, source)
}

/// Slenderness ratio `R_B` of a bending member, `√(ℓ_e d / b²)`.
///
/// Takes the effective length from [`effective_length`], the depth and the breadth; gives a pure number.
///
/// Source: NDS 2018 §3.3.3.6, Eq. 3.3-5; limit §3.3.3.7 (looked up).
///
/// # Errors
/// Over 50 the standard gives no number: the beam is too thin for its height and its bracing. Also when a length is
/// nothing or less.
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_3::slenderness_ratio;
/// let inches = Length::from_inches;
/// let ratio = slenderness_ratio(inches(153.27), inches(7.25), inches(3.5))?;
/// assert!((ratio.value - 9.524).abs() < 0.0005);
/// assert!(slenderness_ratio(inches(400.0), inches(11.25), inches(1.0)).is_err());
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn slenderness_ratio(
    effective_length: Length,
    depth: Length,
    breadth: Length,
) -> Result<Cited<f64>, OutsideLimits> {
    let ratio = (effective_length * depth / breadth / breadth).sqrt();
    Ok(Cited::new(BEAM_SLENDERNESS.check(ratio)?, nds("Eq. 3.3-5", LookedUp)))
}

const BEAM_SLENDERNESS: Limit = Limit {
    what: "slenderness ratio R_B",
    unit: "",
    accepted: Accepted::AtMost(50.0),
    covers: "slenderness ratios over 0, to 50",
    source: nds("§3.3.3.7", LookedUp),
    next_step: "Use a wider or a shallower piece, or hold its compression edge at closer points.",
};

/// Critical buckling stress `F_bE` of a bending member, `1.20 E'_min / R_B²`.
///
/// Takes `E'_min` about the weak axis and the slenderness ratio from [`slenderness_ratio`]; gives a stress.
///
/// Source: NDS 2018 §3.3.3.8 (looked up).
///
/// # Errors
/// When the slenderness ratio is not above 0 and at most 50.
pub fn critical_buckling_stress(e_min: Stress, slenderness: f64) -> Result<Cited<Stress>, OutsideLimits> {
    let ratio = BEAM_SLENDERNESS.check(slenderness)?;
    Ok(Cited::new(1.20 * e_min / (ratio * ratio), nds("§3.3.3.8", LookedUp)))
}

/// Beam stability factor `C_L`: what a deep beam loses because its compression edge can roll sideways.
///
/// Takes `F_bE` from [`critical_buckling_stress`] and `F_b*`, the bending design value with every factor but flat
/// use, volume (when it is at most 1) and this one; gives a pure number over 0 and at most 1.
///
/// Source: NDS 2018 §3.3.3.8, Eq. 3.3-6 (looked up).
///
/// # Errors
/// When either stress is nothing or less.
///
/// ```
/// use measure::Stress;
/// use standards::nds_2018::chapter_3::beam_stability_factor;
/// let factor = beam_stability_factor(Stress::from_psi(8202.0), Stress::from_psi(1625.0))?;
/// assert!((factor.value - 0.9880).abs() < 0.00005);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn beam_stability_factor(critical: Stress, fb_star: Stress) -> Result<Cited<f64>, OutsideLimits> {
    const C: f64 = 0.95;
    let q = positive("F_bE", critical)? / positive("F_b*", fb_star)?;
    Ok(Cited::new(interaction_root(q, C), EQ_3_3_6))
}

const EQ_3_3_6: Source = nds("Eq. 3.3-6", LookedUp);

fn positive(what: &'static str, stress: Stress) -> Result<Stress, OutsideLimits> {
    let limit = Limit {
        what,
        unit: "psi",
        accepted: Accepted::MoreThan(0.0),
        covers: "stresses over nothing",
        source: EQ_3_3_6,
        next_step: "Check the design values of the piece.",
    };
    limit.check(stress.psi()).map(Stress::from_psi)
}
