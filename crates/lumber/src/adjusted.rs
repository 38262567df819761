//! Adjusted design values, with or without the factors that made them.

use measure::Stress;
use standards::{Source, nds_2018::Cited};

/// One adjustment factor as a working prints it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Factor {
    /// Its symbol: `C_D`.
    pub symbol: &'static str,
    /// What it stands for: `load duration`.
    pub name: &'static str,
    /// The factor, a pure number.
    pub value: f64,
    /// Where it stands.
    pub source: Source,
}

/// A design value with the factors that made it.
#[derive(Clone, Debug, PartialEq)]
pub struct AdjustedValue {
    /// Its symbol: `F_b*`.
    pub symbol: &'static str,
    /// The reference value, before the factors.
    pub reference: Stress,
    /// The product.
    pub value: Stress,
    /// Where the reference value stands.
    pub source: Source,
    factors: Vec<Factor>,
}

impl AdjustedValue {
    /// The factors, in the order of the standard's table of them. One that does not apply here is not in it.
    #[must_use]
    pub fn factors(&self) -> &[Factor] {
        &self.factors
    }
}

/// Adjusted design values of a member at one load duration: [`Adjusted`] or [`AdjustedStresses`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AdjustedSet<V> {
    /// Bending on edge `F_b*`: every factor but `C_L`. A volume factor over 1 is in it; one of at most 1 is not, see
    /// [`crate::Member::volume_factor`].
    pub fb_star: V,
    /// Bending on the flat `F'_b2`, where a value is held.
    pub fb_weak: Option<V>,
    /// Tension along the grain `F'_t`, where a value is held.
    pub ft: Option<V>,
    /// Shear on edge `F'_v`.
    pub fv: V,
    /// Shear on the flat, where a value is held.
    pub fv_weak: Option<V>,
    /// Compression along the grain `F_c*`: every factor but `C_P`; where a value is held.
    pub fc_star: Option<V>,
    /// Compression across the grain `F'_c⊥`, without a bearing area factor.
    pub fc_perp: V,
    /// Modulus of elasticity on edge `E'`, for deflection.
    pub e: V,
    /// Modulus for stability on edge `E'_min`, for columns that bow on edge.
    pub e_min: V,
    /// Modulus of elasticity on the flat.
    pub e_weak: V,
    /// Modulus for stability on the flat, for `C_L` and for columns that bow on the flat.
    pub e_min_weak: V,
}

/// Adjusted design values with every factor and source.
pub type Adjusted = AdjustedSet<AdjustedValue>;

/// Adjusted design values as numbers alone.
pub type AdjustedStresses = AdjustedSet<Stress>;

/// A product in the making: the number alone, or the number with its factors. Both multiply in the same order, so
/// that both are the same number to the last bit.
pub(crate) trait Chain: Sized {
    fn start(symbol: &'static str, reference: Stress, source: Source) -> Self;
    fn times(self, symbol: &'static str, name: &'static str, factor: Cited<f64>) -> Self;

    fn maybe(self, symbol: &'static str, name: &'static str, factor: Option<Cited<f64>>) -> Self {
        match factor {
            Some(factor) => self.times(symbol, name, factor),
            None => self,
        }
    }
}

impl Chain for Stress {
    fn start(_: &'static str, reference: Stress, _: Source) -> Self {
        reference
    }

    fn times(self, _: &'static str, _: &'static str, factor: Cited<f64>) -> Self {
        self * factor.value
    }
}

impl Chain for AdjustedValue {
    fn start(symbol: &'static str, reference: Stress, source: Source) -> Self {
        Self { symbol, reference, value: reference, source, factors: Vec::new() }
    }

    fn times(mut self, symbol: &'static str, name: &'static str, factor: Cited<f64>) -> Self {
        self.value = self.value * factor.value;
        self.factors.push(Factor { symbol, name, value: factor.value, source: factor.source });
        self
    }
}
