//! §3.5: deflection that grows with time.

use measure::Length;

use crate::Status::{FromMemory, LookedUp};
use crate::nds_2018::{Cited, nds};

/// How dry a member is when it is loaded and afterwards: what its creep depends on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Seasoning {
    /// Seasoned lumber, glulam, structural composite lumber or I-joists, dry in service.
    Seasoned,
    /// Unseasoned lumber, or any member wet in service; wood structural panels.
    UnseasonedOrWet,
}

/// Time-dependent deformation factor `K_cr`.
///
/// Pure number. Real creep scatters: a total from one to three times the first deflection has been measured.
///
/// Source: NDS 2018 §3.5.2 (looked up).
#[must_use]
pub const fn creep_factor(seasoning: Seasoning) -> Cited<f64> {
    let value = match seasoning {
        Seasoning::Seasoned => 1.5,
        Seasoning::UnseasonedOrWet => 2.0,
    };
    Cited::new(value, nds("§3.5.2", LookedUp))
}

/// Total deflection after years, `Δ_T = K_cr Δ_LT + Δ_ST`.
///
/// Takes `K_cr`, the first deflection under the load that stays (dead, and the live load that stays), and the first
/// deflection under the rest; gives a length.
///
/// Source: NDS 2018 §3.5.2, Eq. 3.5-1 (from memory).
#[must_use]
pub fn long_term_deflection(creep: f64, long_term: Length, short_term: Length) -> Cited<Length> {
    Cited::new(creep * long_term + short_term, nds("Eq. 3.5-1", FromMemory))
}
