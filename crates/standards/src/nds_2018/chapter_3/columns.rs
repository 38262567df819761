//! §3.6 and §3.7: columns, posts and studs.

use measure::{Length, Stress};

use super::interaction_root;
use crate::nds_2018::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};
use crate::{
    Source,
    Status::{LookedUp, PartlyLookedUp},
};

/// What a column is made of: sets `c` in Eq. 3.7-1.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ColumnMaterial {
    /// Sawn lumber and timbers: 0.8.
    Sawn,
    /// Round timber poles and piles: 0.85.
    RoundTimber,
    /// Glulam, structural composite lumber, cross-laminated timber: 0.9.
    GluedOrComposite,
}

impl ColumnMaterial {
    const fn c(self) -> f64 {
        match self {
            Self::Sawn => 0.8,
            Self::RoundTimber => 0.85,
            Self::GluedOrComposite => 0.9,
        }
    }
}

/// When a slenderness limit is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ColumnStage {
    /// The finished frame: at most 50.
    InService,
    /// While the frame goes up: at most 75.
    DuringConstruction,
}

/// How the two ends of a column are held: Appendix G.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum EndCondition {
    /// Both ends free to turn, held in place: framing studs and posts.
    PinnedPinned,
    /// One end fixed, one free to turn.
    FixedPinned,
    /// Both ends fixed.
    FixedFixed,
    /// One end fixed, the other free: a flagpole.
    FixedFree,
    /// One end fixed, the other free to move sideways but not to turn.
    FixedGuided,
    /// One end free to turn, the other free to move sideways but not to turn.
    PinnedGuided,
}

/// Buckling length coefficient `K_e`: effective length over length.
///
/// Pure number. Source: NDS 2018 Appendix G, recommended values (the values looked up, which end condition each
/// belongs to from memory).
#[must_use]
pub const fn effective_length_factor(ends: EndCondition) -> Cited<f64> {
    let value = match ends {
        EndCondition::PinnedPinned => 1.0,
        EndCondition::FixedPinned => 0.8,
        EndCondition::FixedFixed => 0.65,
        EndCondition::FixedFree => 2.1,
        EndCondition::FixedGuided => 1.2,
        EndCondition::PinnedGuided => 2.4,
    };
    Cited::new(value, nds("Appendix G", PartlyLookedUp))
}

/// Slenderness ratio `ℓ_e/d` of a column about one axis.
///
/// Takes the effective length and the size of the section in the direction it would bend; gives a pure number. Take
/// the larger of the two axes. An axis that sheathing holds all along has no ratio: leave it out.
///
/// Source: NDS 2018 §3.7.1.3; limits §3.7.1.4 (looked up).
///
/// # Errors
/// Over 50 (75 while building) the standard gives no number: the column is too thin for its height.
pub fn column_slenderness_ratio(
    effective_length: Length,
    depth: Length,
    stage: ColumnStage,
) -> Result<Cited<f64>, OutsideLimits> {
    let limit = match stage {
        ColumnStage::InService => IN_SERVICE_SLENDERNESS,
        ColumnStage::DuringConstruction => COLUMN_SLENDERNESS,
    };
    Ok(Cited::new(limit.check(effective_length / depth)?, nds("§3.7.1.3", LookedUp)))
}

const COLUMN_SLENDERNESS: Limit = Limit {
    what: "column slenderness ℓ_e/d",
    unit: "",
    accepted: Accepted::AtMost(75.0),
    covers: "slenderness over 0, to 75 while building",
    source: nds("§3.7.1.4", LookedUp),
    next_step: "Use a thicker piece, or hold it sideways between its ends.",
};

const IN_SERVICE_SLENDERNESS: Limit =
    Limit { accepted: Accepted::AtMost(50.0), covers: "slenderness over 0, to 50", ..COLUMN_SLENDERNESS };

/// Critical buckling stress of a column about one axis, `F_cE = 0.822 E'_min / (ℓ_e/d)²`.
///
/// Takes `E'_min` for bending about that axis and the slenderness ratio; gives a stress.
///
/// Source: NDS 2018 §3.7.1.5 (looked up).
///
/// # Errors
/// When the slenderness is nothing, less, or over 75.
pub fn column_critical_stress(e_min: Stress, slenderness: f64) -> Result<Cited<Stress>, OutsideLimits> {
    let ratio = COLUMN_SLENDERNESS.check(slenderness)?;
    Ok(Cited::new(0.822 * e_min / (ratio * ratio), nds("§3.7.1.5", LookedUp)))
}

/// Column stability factor `C_P`: what a column loses because it can bow out.
///
/// Takes `F_cE` from [`column_critical_stress`], `F_c*` (the compression value with every factor but this one), and
/// the material; gives a pure number over 0 and at most 1. A column held all along both axes has 1 (§3.7.1.1).
///
/// Source: NDS 2018 §3.7.1.5, Eq. 3.7-1 (looked up).
///
/// # Errors
/// When either stress is nothing or less.
///
/// ```
/// use measure::Stress;
/// use standards::nds_2018::chapter_3::{ColumnMaterial, column_stability_factor};
/// let (critical, fc_star) = (Stress::from_psi(497.70), Stress::from_psi(1650.0));
/// let factor = column_stability_factor(critical, fc_star, ColumnMaterial::Sawn)?;
/// assert!((factor.value - 0.27988).abs() < 0.000_005);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn column_stability_factor(
    critical: Stress,
    fc_star: Stress,
    material: ColumnMaterial,
) -> Result<Cited<f64>, OutsideLimits> {
    let q = positive("F_cE", critical)? / positive("F_c*", fc_star)?;
    Ok(Cited::new(interaction_root(q, material.c()), EQ_3_7_1))
}

const EQ_3_7_1: Source = nds("Eq. 3.7-1", LookedUp);

fn positive(what: &'static str, stress: Stress) -> Result<Stress, OutsideLimits> {
    let limit = Limit {
        what,
        unit: "psi",
        accepted: Accepted::MoreThan(0.0),
        covers: "stresses over nothing",
        source: EQ_3_7_1,
        next_step: "Check the design values of the piece.",
    };
    limit.check(stress.psi()).map(Stress::from_psi)
}
