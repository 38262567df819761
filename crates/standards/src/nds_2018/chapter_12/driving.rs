//! §12.5 and Figure 12A: nails into end grain, at a slant, and in a diaphragm.

use measure::Length;

use crate::Status::{FromMemory, LookedUp, PartlyLookedUp};
use crate::nds_2018::{Cited, nds};

/// End grain factor `C_eg` of a nail driven into the end of a piece, across the load: 0.67. Pulled out it holds
/// nothing (§12.2.3).
///
/// Pure number. Source: NDS 2018 §12.5.2 (about one third less was read; the number is from memory).
#[must_use]
pub const fn end_grain_factor_lateral() -> Cited<f64> {
    Cited::new(0.67, nds("§12.5.2", PartlyLookedUp))
}

/// Toe-nail factor `C_tn` across the load: 0.83. Source: NDS 2018 §12.5.4 (looked up).
#[must_use]
pub const fn toe_nail_factor_lateral() -> Cited<f64> {
    Cited::new(0.83, nds("§12.5.4", LookedUp))
}

/// Toe-nail factor `C_tn` in withdrawal: 0.67; the wet service factor then does not apply. Source: NDS 2018 §12.5.4
/// (looked up).
#[must_use]
pub const fn toe_nail_factor_withdrawal() -> Cited<f64> {
    Cited::new(0.67, nds("§12.5.4", LookedUp))
}

/// Wet service factor of a toe-nail in withdrawal: it does not apply, so 1. Source: NDS 2018 §12.5.4 (looked up).
#[must_use]
pub const fn toe_nail_wet_service_factor_withdrawal() -> Cited<f64> {
    Cited::new(1.0, nds("§12.5.4", LookedUp))
}

/// Diaphragm factor `C_di` of the nails that hold the sheathing of a diaphragm, across the load: 1.1. Source: NDS 2018
/// §12.5.3 (from memory).
#[must_use]
pub const fn diaphragm_factor() -> Cited<f64> {
    Cited::new(1.1, nds("§12.5.3", FromMemory))
}

/// Where a toe-nail lies in the two members.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ToeNailGeometry {
    /// Bearing length in the side member, `L/3`.
    pub side_bearing: Length,
    /// Penetration into the main member for lateral load, `L cos 30° − L/3`.
    pub lateral_penetration: Length,
    /// Length along the nail in the main member for withdrawal, `L − (L/3) / cos 30°`.
    pub withdrawal_penetration: Length,
}

/// A toe-nail driven at 30° to the face of the member, entered a third of its length from the end.
///
/// Takes the nail's length. Source: NDS 2018 Figure 12A (the angle and the third looked up, the lengths from memory).
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_12::toe_nail_geometry;
/// let found = toe_nail_geometry(Length::from_inches(2.5)).value;
/// assert!((found.lateral_penetration.inches() - 1.332).abs() < 0.0005);
/// ```
#[must_use]
pub fn toe_nail_geometry(nail_length: Length) -> Cited<ToeNailGeometry> {
    let cosine_of_30 = 3.0_f64.sqrt() / 2.0;
    let third = nail_length / 3.0;
    let geometry = ToeNailGeometry {
        side_bearing: third,
        lateral_penetration: nail_length * cosine_of_30 - third,
        withdrawal_penetration: nail_length - third / cosine_of_30,
    };
    Cited::new(geometry, nds("Figure 12A", PartlyLookedUp))
}
