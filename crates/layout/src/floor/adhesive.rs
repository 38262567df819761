//! Beads of adhesive from a tube, and stiffeners of I-joists.

use measure::Length;

/// A US fluid ounce: a gallon of 231 cubic inches has 128.
const CUBIC_INCHES_IN_FLUID_OUNCE: f64 = 231.0 / 128.0;

/// How long a round bead a tube of so many fluid ounces gives. None where either is nothing.
///
/// Source: volume over the bead's area.
#[must_use]
pub fn bead_length(fluid_ounces: f64, bead: Length) -> Option<Length> {
    let diameter = bead.inches();
    if !(fluid_ounces > 0.0 && fluid_ounces <= 1e4 && diameter >= 1.0 / 16.0) {
        return None;
    }
    let area = core::f64::consts::PI / 4.0 * diameter * diameter;
    Some(Length::from_inches(fluid_ounces * CUBIC_INCHES_IN_FLUID_OUNCE / area))
}

/// A web stiffener stands 1/8 in short of the flanges.
///
/// Source: common practice, from memory; the maker's papers win.
const STIFFENER_GAP: Length = Length::from_inches(1.0 / 8.0);

/// Height of a web stiffener in an I-joist: its depth less two flanges and the gap. None where nothing is left.
#[must_use]
pub fn web_stiffener(depth: Length, flange: Length) -> Option<Length> {
    let height = depth - flange * 2.0 - STIFFENER_GAP;
    (flange > Length::ZERO && height > Length::ZERO).then_some(height)
}
