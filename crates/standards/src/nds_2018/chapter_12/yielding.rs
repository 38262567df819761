//! §12.3.1: the yield limit equations of a dowel between two members, single shear.

use measure::{Force, Length, Stress};

use super::nail_diameter;
use crate::nds_2018::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};
use crate::{
    Source,
    Status::{LookedUp, PartlyLookedUp},
};

/// How a joint gives way. `m` is the main member, that holds the point; `s` the side member, under the head.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum YieldMode {
    /// `I_m`: the main member is crushed along the dowel.
    Im,
    /// `I_s`: the side member is crushed along the dowel.
    Is,
    /// `II`: the dowel stays straight and turns, crushing both.
    II,
    /// `III_m`: the dowel bends in the side member and turns in the main member.
    IIIm,
    /// `III_s`: the dowel bends in the main member and turns in the side member.
    IIIs,
    /// `IV`: the dowel bends in both.
    IV,
}

impl YieldMode {
    /// Every mode, in the order of the table.
    pub const ALL: [Self; 6] = [Self::Im, Self::Is, Self::II, Self::IIIm, Self::IIIs, Self::IV];

    /// As the table writes it: `IIIs`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Im => "Im",
            Self::Is => "Is",
            Self::II => "II",
            Self::IIIm => "IIIm",
            Self::IIIs => "IIIs",
            Self::IV => "IV",
        }
    }

    /// Its equation. That of `III_m` is partly from memory: two copies of its coefficient differ, and the one that
    /// agrees with mechanics is used.
    const fn source(self) -> Source {
        match self {
            Self::Im => nds("Eq. 12.3-1", LookedUp),
            Self::Is => nds("Eq. 12.3-2", LookedUp),
            Self::II => nds("Eq. 12.3-3", LookedUp),
            Self::IIIm => nds("Eq. 12.3-4", PartlyLookedUp),
            Self::IIIs => nds("Eq. 12.3-5", LookedUp),
            Self::IV => nds("Eq. 12.3-6", LookedUp),
        }
    }
}

/// How a dowel bears on one member.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DowelBearing {
    /// Length of the dowel in the member.
    pub length: Length,
    /// Dowel bearing strength `F_e` of the member.
    pub strength: Stress,
}

/// A dowel through one side member into one main member: a nail for [`yield_limits`], a bolt for
/// [`super::bolt_yield_limits`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SingleShear {
    /// Diameter `D`.
    pub diameter: Length,
    /// Bending yield strength `F_yb`.
    pub bending_yield: Stress,
    /// The main member: `ℓ_m` and `F_em`.
    pub main: DowelBearing,
    /// The side member: `ℓ_s` and `F_es`.
    pub side: DowelBearing,
}

/// The load of one mode.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct YieldValue {
    /// The mode.
    pub mode: YieldMode,
    /// Its reference lateral value, with the equation.
    pub value: Cited<Force>,
}

/// Every mode's load and what it was worked from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct YieldLimits {
    /// Reduction term `R_d`.
    pub reduction_term: Cited<f64>,
    /// `R_e = F_em / F_es`.
    pub strength_ratio: f64,
    /// `R_t = ℓ_m / ℓ_s`.
    pub length_ratio: f64,
    /// `k_1`, `k_2` and `k_3`.
    pub k: [f64; 3],
    /// The six loads, in the order of [`YieldMode::ALL`].
    pub values: [YieldValue; 6],
}

impl YieldLimits {
    /// The mode with the smallest load, and the reference lateral design value `Z` that it gives; the first of the
    /// table where two are equal.
    #[must_use]
    pub fn governing(&self) -> YieldValue {
        smallest(&self.values)
    }
}

/// The mode with the smallest load; the first of the table where two are equal.
pub(super) fn smallest(values: &[YieldValue; 6]) -> YieldValue {
    let [first, others @ ..] = values;
    others.iter().fold(*first, |least, other| if other.value.value < least.value.value { *other } else { least })
}

/// Reduction term `R_d` of a dowel under 1/4 in: `K_D`, 2.2 to 0.17 in, then `10 D + 0.5`.
///
/// Pure number. Source: NDS 2018 Table 12.3.1B (looked up).
///
/// # Errors
/// When the diameter is nothing, less, or 1/4 in and more.
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_12::reduction_term;
/// assert_eq!(reduction_term(Length::from_inches(0.131))?.value, 2.2);
/// assert!((reduction_term(Length::from_inches(0.192))?.value - 2.42).abs() < 1e-12);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn reduction_term(diameter: Length) -> Result<Cited<f64>, OutsideLimits> {
    let inches = nail_diameter(diameter)?;
    let value = if inches <= 0.17 { 2.2 } else { 10.0 * inches + 0.5 };
    Ok(Cited::new(value, nds("Table 12.3.1B", LookedUp)))
}

/// Reference lateral value of every yield mode of a dowel in single shear, no factor in it.
///
/// Takes the dowel and how it bears on each member; gives forces. The smallest is `Z`.
///
/// Source: NDS 2018 §12.3.1, Table 12.3.1A, Eq. 12.3-1 to 12.3-6 (looked up; the coefficient of `III_m` partly).
///
/// # Errors
/// When the diameter is nothing or 1/4 in and more, or a length or a strength is nothing or less.
///
/// ```
/// use measure::{Length, Stress};
/// use standards::nds_2018::chapter_12::{DowelBearing, SingleShear, YieldMode, yield_limits};
/// let (inches, psi) = (Length::from_inches, Stress::from_psi);
/// let common_16d_in_fir = yield_limits(&SingleShear {
///     diameter: inches(0.162),
///     bending_yield: psi(90_000.0),
///     main: DowelBearing { length: inches(2.0), strength: psi(4650.0) },
///     side: DowelBearing { length: inches(1.5), strength: psi(4650.0) },
/// })?;
/// let governing = common_16d_in_fir.governing();
/// assert_eq!(governing.mode, YieldMode::IV);
/// assert!((governing.value.value.pounds() - 141.0).abs() < 0.5);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn yield_limits(joint: &SingleShear) -> Result<YieldLimits, OutsideLimits> {
    let reduction_term = reduction_term(joint.diameter)?;
    let shear = Checked::new(joint)?;
    Ok(YieldLimits {
        reduction_term,
        strength_ratio: shear.re,
        length_ratio: shear.rt,
        k: shear.k,
        values: YieldMode::ALL.map(|mode| shear.value(mode, reduction_term.value)),
    })
}

/// The inputs as numbers of inches and psi, with the coefficients.
pub(super) struct Checked {
    d: f64,
    fyb: f64,
    lm: f64,
    fem: f64,
    ls: f64,
    fes: f64,
    re: f64,
    rt: f64,
    k: [f64; 3],
}

impl Checked {
    pub(super) fn new(joint: &SingleShear) -> Result<Self, OutsideLimits> {
        let d = joint.diameter.inches();
        let fyb = strength("F_yb", joint.bending_yield)?;
        let (lm, fem) = (length("bearing length ℓ_m", joint.main.length)?, strength("F_em", joint.main.strength)?);
        let (ls, fes) = (length("bearing length ℓ_s", joint.side.length)?, strength("F_es", joint.side.strength)?);
        let (re, rt) = (fem / fes, lm / ls);
        // `2 F_yb D² / (3 F_em ℓ²)`, the share of bending in k2 and k3.
        let bending = |bearing: f64| 2.0 * fyb * d * d / (3.0 * fem * bearing * bearing);
        let under_root = re + 2.0 * re * re * (1.0 + rt + rt * rt) + rt * rt * re * re * re;
        let k1 = (under_root.sqrt() - re * (1.0 + rt)) / (1.0 + re);
        let k2 = -1.0 + (2.0 * (1.0 + re) + bending(lm) * (1.0 + 2.0 * re)).sqrt();
        let k3 = -1.0 + (2.0 * (1.0 + re) / re + bending(ls) * (2.0 + re)).sqrt();
        Ok(Self { d, fyb, lm, fem, ls, fes, re, rt, k: [k1, k2, k3] })
    }

    /// The load of a mode, divided by its reduction term.
    pub(super) fn value(&self, mode: YieldMode, reduction_term: f64) -> YieldValue {
        let pounds = self.pounds(mode) / reduction_term;
        YieldValue { mode, value: Cited::new(Force::from_pounds(pounds), mode.source()) }
    }

    /// The load of a mode before it is divided by the reduction term.
    fn pounds(&self, mode: YieldMode) -> f64 {
        let &Self { d, fyb, lm, fem, ls, fes, re, k: [k1, k2, k3], .. } = self;
        match mode {
            YieldMode::Im => d * lm * fem,
            YieldMode::Is => d * ls * fes,
            YieldMode::II => k1 * d * ls * fes,
            YieldMode::IIIm => k2 * d * lm * fem / (1.0 + 2.0 * re),
            YieldMode::IIIs => k3 * d * ls * fem / (2.0 + re),
            YieldMode::IV => d * d * (2.0 * fem * fyb / (3.0 * (1.0 + re))).sqrt(),
        }
    }
}

fn length(what: &'static str, length: Length) -> Result<f64, OutsideLimits> {
    Limit {
        what,
        unit: "in",
        covers: "lengths over nothing",
        next_step: "Check the thickness of the members and the length of the fastener.",
        ..POSITIVE
    }
    .check(length.inches())
}

fn strength(what: &'static str, stress: Stress) -> Result<f64, OutsideLimits> {
    Limit { what, ..POSITIVE }.check(stress.psi())
}

const POSITIVE: Limit = Limit {
    what: "strength",
    unit: "psi",
    accepted: Accepted::MoreThan(0.0),
    covers: "strengths over nothing",
    source: nds("Table 12.3.1A", LookedUp),
    next_step: "Check what the members and the fastener are made of.",
};
