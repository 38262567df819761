//! §3.9: bending together with tension or compression.

use measure::Stress;

use crate::nds_2018::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};
use crate::{Source, Status::LookedUp};

/// Bending on the narrow face, about the strong axis: index 1 in the equations.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StrongAxis {
    /// Bending stress `f_b1`.
    pub fb: Stress,
    /// Adjusted bending value `F'_b1`, with `C_L` (and the lesser of it and `C_V` for glulam).
    pub fb_prime: Stress,
    /// `F_cE1`: critical buckling stress of the column in the plane of this bending.
    pub column_critical: Stress,
}

/// Bending on the wide face, about the weak axis: index 2 in the equations.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeakAxis {
    /// Bending stress `f_b2`.
    pub fb: Stress,
    /// Adjusted bending value `F'_b2`.
    pub fb_prime: Stress,
    /// `F_cE2`: critical buckling stress of the column in the plane of this bending.
    pub column_critical: Stress,
    /// `F_bE`: critical buckling stress of the member as a beam, Eq. 3.3-6.
    pub beam_critical: Stress,
}

/// What §3.9.2 asks of a member in compression and bending.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CombinedCompression {
    /// Eq. 3.9-3: carries when at most 1.
    pub interaction: Cited<f64>,
    /// Eq. 3.9-4: carries when under 1. Only with bending on the wide face.
    pub stability: Option<Cited<f64>>,
}

/// What §3.9.1 asks of a member in tension and bending.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CombinedTension {
    /// Eq. 3.9-1, the edge in tension: carries when at most 1.
    pub tension_edge: Cited<f64>,
    /// Eq. 3.9-2, the edge in compression: carries when at most 1.
    pub compression_edge: Cited<f64>,
}

/// Bending and axial compression:
/// `(f_c/F'_c)² + f_b1/(F'_b1 [1 − f_c/F_cE1]) + f_b2/(F'_b2 [1 − f_c/F_cE2 − (f_b1/F_bE)²])`.
///
/// Takes the compression stress and its adjusted value `F'_c` (with the `C_P` of the axis that governs), the strong
/// axis, and the weak axis when there is bending about it. Gives pure numbers.
///
/// Source: NDS 2018 §3.9.2, Eq. 3.9-3 and Eq. 3.9-4 (looked up).
///
/// # Errors
/// When the compression stress reaches `F_cE1` or `F_cE2`, when `f_b1` reaches `F_bE`, or when Eq. 3.9-4 reaches 1:
/// the member buckles, and the equation has no meaning.
///
/// ```
/// use measure::Stress;
/// use standards::nds_2018::chapter_3::{StrongAxis, combined_bending_compression};
/// let psi = Stress::from_psi;
/// let strong = StrongAxis { fb: psi(777.5), fb_prime: psi(2392.0), column_critical: psi(546.2) };
/// let found = combined_bending_compression(psi(129.3), psi(520.6), strong, None)?;
/// assert!((found.interaction.value - 0.488).abs() < 0.0005);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn combined_bending_compression(
    fc: Stress,
    fc_prime: Stress,
    strong: StrongAxis,
    weak: Option<WeakAxis>,
) -> Result<CombinedCompression, OutsideLimits> {
    let axial = fc / fc_prime;
    let strong_share = fc / below("f_c", fc, strong.column_critical, "compression below the buckling stress F_cE1")?;
    let bending = strong.fb / strong.fb_prime / (1.0 - strong_share);
    let (about_weak, stability) = match weak {
        None => (0.0, None),
        Some(weak) => {
            let used = weak_axis_use(fc, strong.fb, weak)?;
            (weak.fb / weak.fb_prime / (1.0 - used), Some(Cited::new(used, EQ_3_9_4)))
        }
    };
    let interaction = Cited::new(axial * axial + bending + about_weak, nds("Eq. 3.9-3", LookedUp));
    Ok(CombinedCompression { interaction, stability })
}

const EQ_3_9_4: Source = nds("Eq. 3.9-4", LookedUp);

/// `f_c/F_cE2 + (f_b1/F_bE)²`, under 1.
fn weak_axis_use(fc: Stress, fb1: Stress, weak: WeakAxis) -> Result<f64, OutsideLimits> {
    let axial = fc / below("f_c", fc, weak.column_critical, "compression below the buckling stress F_cE2")?;
    let rolling = fb1 / bending_below(fb1, weak.beam_critical)?;
    let limit = Limit {
        what: "f_c/F_cE2 + (f_b1/F_bE)²",
        unit: "",
        accepted: Accepted::LessThan(1.0),
        covers: "sums below 1",
        source: EQ_3_9_4,
        next_step: BUCKLES,
    };
    limit.check(axial + rolling * rolling)
}

const BUCKLES: &str = "Use a larger piece, or hold it sideways at closer points.";

/// A bending stress and what is allowed of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BendingStress {
    /// The stress that is there.
    pub actual: Stress,
    /// The adjusted design value.
    pub allowed: Stress,
}

/// Bending about both axes with no axial load: Eq. 3.9-3 with `f_c` nothing,
/// `f_b1/F'_b1 + f_b2/(F'_b2 [1 − (f_b1/F_bE)²])`.
///
/// Takes bending on the narrow face, bending on the wide face, and the critical buckling stress `F_bE` of the member
/// as a beam; none where its compression edge is held all along, so that it cannot roll. Gives a pure number: carries
/// when at most 1.
///
/// Source: NDS 2018 §3.9.2, Eq. 3.9-3 (looked up).
///
/// # Errors
/// When `f_b1` reaches `F_bE`: the member rolls over, and the equation has no meaning.
///
/// ```
/// use measure::Stress;
/// use standards::nds_2018::chapter_3::{BendingStress, two_way_bending};
/// let psi = Stress::from_psi;
/// let strong = BendingStress { actual: psi(400.0), allowed: psi(1000.0) };
/// let weak = BendingStress { actual: psi(300.0), allowed: psi(1000.0) };
/// let share = two_way_bending(strong, weak, Some(psi(800.0)))?;
/// assert!((share.value - (0.4 + 0.3 / 0.75)).abs() < 1e-12);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn two_way_bending(
    strong: BendingStress,
    weak: BendingStress,
    beam_critical: Option<Stress>,
) -> Result<Cited<f64>, OutsideLimits> {
    let rolling = match beam_critical {
        None => 0.0,
        Some(critical) => strong.actual / bending_below(strong.actual, critical)?,
    };
    let about_weak = weak.actual / weak.allowed / (1.0 - rolling * rolling);
    Ok(Cited::new(strong.actual / strong.allowed + about_weak, nds("Eq. 3.9-3", LookedUp)))
}

fn bending_below(stress: Stress, critical: Stress) -> Result<Stress, OutsideLimits> {
    below("f_b1", stress, critical, "bending below the buckling stress F_bE")
}

/// Gives the critical stress back when the stress is below it.
fn below(what: &'static str, stress: Stress, critical: Stress, covers: &'static str) -> Result<Stress, OutsideLimits> {
    let limit = Limit {
        what,
        unit: "psi",
        accepted: Accepted::LessThan(critical.psi()),
        covers,
        source: nds("§3.9.2", LookedUp),
        next_step: BUCKLES,
    };
    limit.check(stress.psi())?;
    Ok(critical)
}

/// Bending and axial tension: `f_t/F'_t + f_b/F_b*` and `(f_b − f_t)/F_b**`.
///
/// Takes the tension stress and its adjusted value, the bending stress, `F_b*` (without `C_L`) and `F_b**` (without
/// `C_V`), all more than nothing; gives pure numbers. Source: NDS 2018 §3.9.1, Eq. 3.9-1 and Eq. 3.9-2 (looked up).
#[must_use]
pub fn combined_bending_tension(
    ft: Stress,
    ft_prime: Stress,
    fb: Stress,
    fb_star: Stress,
    fb_double_star: Stress,
) -> CombinedTension {
    CombinedTension {
        tension_edge: Cited::new(ft / ft_prime + fb / fb_star, nds("Eq. 3.9-1", LookedUp)),
        compression_edge: Cited::new((fb - ft) / fb_double_star, nds("Eq. 3.9-2", LookedUp)),
    }
}
