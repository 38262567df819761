//! Appendix I.2 and Table 12P: steel side plates, how hard they are to crush and how thick their gauges are.

use measure::{Length, Stress};

use crate::Status::{FromMemory, PartlyLookedUp};
use crate::nds_2018::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};

/// Ultimate strength `F_u` of ASTM A653 Grade 33 sheet, of which straps and light plates are made: 45,000 psi (from
/// memory).
pub const SHEET_ULTIMATE: Stress = Stress::from_psi(45_000.0);

/// Ultimate strength `F_u` of ASTM A36 plate: 58,000 psi (from memory).
pub const PLATE_ULTIMATE: Stress = Stress::from_psi(58_000.0);

/// Thickness from which steel counts as plate.
const PLATE_INCHES: f64 = 0.25;

/// Dowel bearing strength `F_e` of a steel side plate: `1.5 F_u` from 1/4 in, `1.375 F_u` of thinner sheet.
///
/// Takes the thickness and the ultimate strength `F_u`. Both coefficients are already divided by the largest
/// load duration factor, 1.6, so that a joint takes the factor as in wood (from memory).
///
/// Source: NDS 2018 Appendix I.2 (the coefficients looked up in a university course, the ends of `F_u` from memory).
///
/// # Errors
/// When the thickness is nothing or over 1 in, or the strength is under 36,000 or over 100,000 psi.
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_12::{SHEET_ULTIMATE, steel_bearing_strength};
/// let strap = steel_bearing_strength(Length::from_inches(0.06), SHEET_ULTIMATE)?;
/// assert_eq!(strap.value.psi(), 61_875.0);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn steel_bearing_strength(thickness: Length, ultimate: Stress) -> Result<Cited<Stress>, OutsideLimits> {
    let inches = THICKNESS.check(thickness.inches())?;
    let psi = ULTIMATE.check(ultimate.psi())?;
    let coefficient = if inches >= PLATE_INCHES { 1.5 } else { 1.375 };
    Ok(Cited::new(Stress::from_psi(coefficient * psi), nds("Appendix I.2", PartlyLookedUp)))
}

/// Gauges of Table 12P and their thickness in inches (from memory).
const GAUGES: [(u8, f64); 9] =
    [(3, 0.239), (7, 0.179), (10, 0.134), (11, 0.120), (12, 0.105), (14, 0.075), (16, 0.060), (18, 0.048), (20, 0.036)];

/// Thickness of a gauge of steel side plate as Table 12P has it; none for a gauge that it does not hold.
///
/// A strap is sold by a least thickness that is a little under its gauge, as 16 gauge by 0.054 in (IRC R602.6.1): give
/// that where it is known.
///
/// Source: NDS 2018 Table 12P (from memory).
#[must_use]
pub fn gauge_thickness(gauge: u8) -> Option<Cited<Length>> {
    let found = GAUGES.iter().find(|&&(of, _)| of == gauge);
    found.map(|&(_, inches)| Cited::new(Length::from_inches(inches), nds("Table 12P", FromMemory)))
}

const THICKNESS: Limit = Limit {
    what: "thickness of the steel plate",
    unit: "in",
    accepted: Accepted::AtMost(1.0),
    covers: "steel plates over 0, to 1 in thick",
    source: nds("Table 12P", FromMemory),
    next_step: "Measure the plate again, or ask the engineer.",
};
const ULTIMATE: Limit = Limit {
    what: "ultimate strength of the steel F_u",
    unit: "psi",
    accepted: Accepted::Between(36_000.0, 100_000.0),
    covers: "steels of 36,000 to 100,000 psi",
    source: nds("Appendix I.2", FromMemory),
    next_step: "Ask the maker of the plate for its ultimate strength.",
};
