//! Appendix I, Table I1: how hard the steel of a nail is to bend.

use measure::{Length, Stress};

use super::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};
use crate::{Source, Status::LookedUp};

/// Steel of a nail.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum NailSteel {
    /// Low to medium carbon steel: bright, galvanized, and every nail not sold as hardened.
    #[default]
    LowCarbon,
    /// Hardened steel.
    Hardened,
}

/// The upper end of a row in inches, itself in the row, and the strength in psi.
type Row = (f64, f64);

const LOW_CARBON: [Row; 6] =
    [(0.142, 100_000.0), (0.177, 90_000.0), (0.236, 80_000.0), (0.273, 70_000.0), (0.344, 60_000.0), (0.375, 45_000.0)];
const HARDENED: [Row; 3] = [(0.142, 130_000.0), (0.192, 115_000.0), (0.207, 100_000.0)];

const TABLE: Source = nds("Table I1", LookedUp);

/// Bending yield strength `F_yb` of a nail.
///
/// Takes the diameter of the shank; a deformed shank too goes by the diameter before it was deformed. Gives a stress
/// in steps: a nail a little past a step is of weaker steel than one a little before it.
///
/// Source: NDS 2018 Appendix I, Table I1 (looked up).
///
/// # Errors
/// Low carbon: under 0.099 in or over 0.375 in. Hardened: under 0.120 in or over 0.207 in.
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::appendix_i::{NailSteel, bending_yield_strength};
/// let common_16d = bending_yield_strength(Length::from_inches(0.162), NailSteel::LowCarbon)?;
/// assert_eq!(common_16d.value.psi(), 90_000.0);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn bending_yield_strength(diameter: Length, steel: NailSteel) -> Result<Cited<Stress>, OutsideLimits> {
    let (limit, rows): (_, &[Row]) = match steel {
        NailSteel::LowCarbon => (LOW_CARBON_DIAMETER, &LOW_CARBON),
        NailSteel::Hardened => (HARDENED_DIAMETER, &HARDENED),
    };
    let inches = limit.check(diameter.inches())?;
    // Thicker rows are weaker: the strongest row that reaches the diameter is its own.
    let psi = rows.iter().filter(|&&(upper, _)| inches <= upper).fold(0.0, |psi, row| f64::max(psi, row.1));
    Ok(Cited::new(Stress::from_psi(psi), TABLE))
}

const LOW_CARBON_DIAMETER: Limit = Limit {
    what: "nail diameter",
    unit: "in",
    accepted: Accepted::Between(0.099, 0.375),
    covers: "nails 0.099 to 0.375 in thick",
    source: TABLE,
    next_step: "Measure the shank again, or use a nail of a listed size.",
};
const HARDENED_DIAMETER: Limit = Limit {
    accepted: Accepted::Between(0.120, 0.207),
    covers: "hardened nails 0.120 to 0.207 in thick",
    ..LOW_CARBON_DIAMETER
};
