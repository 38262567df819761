//! Wet service, incising and load sharing.

use measure::Stress;

use crate::nds_2018::{Cited, nds};
use crate::{
    Source,
    Status::{FromMemory, LookedUp},
};

/// Wet service factors of one product.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WetServiceFactors {
    /// On `F_b`.
    pub fb: f64,
    /// On `F_t`.
    pub ft: f64,
    /// On `F_v`.
    pub fv: f64,
    /// On `F_c⊥`.
    pub fc_perp: f64,
    /// On `F_c`.
    pub fc: f64,
    /// On `E` and `E_min`.
    pub e: f64,
}

/// Wet service factor `C_M` of dimension lumber, 2 to 4 in thick, over 19 % moisture in service.
///
/// Takes `F_b C_F` and `F_c C_F`: up to 1,150 psi the bending value, and up to 750 psi the compression value, is not
/// cut. Gives pure numbers.
///
/// Source: NDS 2018 §4.3.3, NDS Supplement 2018 Tables 4A and 4B (looked up).
///
/// ```
/// use measure::Stress;
/// use standards::nds_2018::chapter_4::dimension_wet_service_factors;
/// let wet = dimension_wet_service_factors(Stress::from_psi(1200.0), Stress::from_psi(750.0)).value;
/// assert_eq!((wet.fb, wet.fc), (0.85, 1.0));
/// ```
#[must_use]
pub fn dimension_wet_service_factors(fb_times_cf: Stress, fc_times_cf: Stress) -> Cited<WetServiceFactors> {
    const UNCUT_BENDING: Stress = Stress::from_psi(1150.0);
    const UNCUT_COMPRESSION: Stress = Stress::from_psi(750.0);
    let fb = if fb_times_cf <= UNCUT_BENDING { 1.0 } else { 0.85 };
    let fc = if fc_times_cf <= UNCUT_COMPRESSION { 1.0 } else { 0.8 };
    let factors = WetServiceFactors { fb, ft: 1.0, fv: 0.97, fc_perp: 0.67, fc, e: 0.9 };
    Cited::new(factors, Source::new("NDS Supplement 2018", "Table 4A, wet service factor", LookedUp))
}

/// Wet service factor `C_M` of timbers 5 in and thicker.
///
/// Southern Pine timbers are printed for wet or dry and take none. Gives pure numbers.
///
/// Source: NDS 2018 §4.3.3, NDS Supplement 2018 Table 4D (looked up; Southern Pine from memory).
#[must_use]
pub const fn timber_wet_service_factors(southern_pine: bool) -> Cited<WetServiceFactors> {
    const PLACE: &str = "Table 4D, wet service factor";
    const NONE: WetServiceFactors = WetServiceFactors { fb: 1.0, ft: 1.0, fv: 1.0, fc_perp: 1.0, fc: 1.0, e: 1.0 };
    if southern_pine {
        return Cited::new(NONE, Source::new("NDS Supplement 2018", PLACE, FromMemory));
    }
    let factors = WetServiceFactors { fc_perp: 0.67, fc: 0.91, ..NONE };
    Cited::new(factors, Source::new("NDS Supplement 2018", PLACE, LookedUp))
}

/// Incising factors.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct IncisingFactors {
    /// On `E` and `E_min`.
    pub e: f64,
    /// On `F_b`, `F_t`, `F_c` and `F_v`.
    pub strength: f64,
    /// On `F_c⊥`.
    pub fc_perp: f64,
}

/// Incising factor `C_i` of dimension lumber slit for treatment.
///
/// For slits along the grain up to 0.4 in deep and 3/8 in long, up to 1,100 to the square foot. Gives pure numbers.
///
/// Source: NDS 2018 §4.3.8, Table 4.3.8 (looked up).
#[must_use]
pub const fn incising_factors() -> Cited<IncisingFactors> {
    Cited::new(IncisingFactors { e: 0.95, strength: 0.80, fc_perp: 1.00 }, nds("Table 4.3.8", LookedUp))
}

/// Repetitive member factor `C_r`, 1.15 on `F_b`: neighbours help a weak piece.
///
/// Only when all of this holds: dimension lumber 2 to 4 in thick; three or more pieces side by side; touching or up
/// to 24 in apart; joined by a floor, a roof, sheathing or another thing that spreads the load. Not for timbers or
/// glulam, nor for any other stress.
///
/// Source: NDS 2018 §4.3.9 (looked up).
#[must_use]
pub const fn repetitive_member_factor() -> Cited<f64> {
    Cited::new(1.15, nds("§4.3.9", LookedUp))
}
