//! Adjustment factors: what stands between a reference value and the value that is used.

use measure::Force;
use standards::nds_2018::Cited;

/// An adjustment factor and its name: `C_D`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Factor {
    /// Its symbol.
    pub symbol: &'static str,
    /// Its value and source.
    pub factor: Cited<f64>,
}

/// A reference value times every factor.
pub(crate) fn adjusted(reference: Force, factors: &[Factor]) -> Force {
    factors.iter().fold(reference, |value, factor| value * factor.factor.value)
}
