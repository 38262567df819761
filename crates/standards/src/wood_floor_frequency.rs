//! How lively a wood floor is: the natural frequency of a bare joist, a published rule that no code prints.
//!
//! The rule came from tests of wood floors of solid joists, I-joists and trusses in the 1990s. The limit was read on an
//! engineers' page, and its worked example is reproduced in the tests; the equation is from memory.

use measure::{FlexuralRigidity, Force, Length, Ratio};

use crate::{Source, Status};

/// The rule.
pub const RULE: Source = Source::new("tests of wood floors, 1990s", "least natural frequency", Status::PartlyLookedUp);
/// The least frequency of a floor that few complain of, cycles a second.
pub const LEAST_HERTZ: Ratio = 15.0;
/// What lies on a bare floor without people: joists, panel and board. Read on the same page.
pub const BARE_FLOOR_PSF: Ratio = 7.0;

/// Natural frequency of a simple span under its own dead weight, cycles a second: `1.57 √(386 E I / (W L³))`, with the
/// weight on the joist in pounds and lengths in inches.
#[must_use]
pub fn natural_frequency(ei: FlexuralRigidity, weight: Force, span: Length) -> Ratio {
    const HALF_PI: f64 = core::f64::consts::FRAC_PI_2;
    const GRAVITY_INCHES: f64 = 386.0;
    let span = span.inches();
    HALF_PI * (GRAVITY_INCHES * ei.pound_square_inches() / (weight.pounds() * span * span * span)).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: an engineers' page on floor frequency: 2x10, E 1.4 million psi, 19 ft, 133 lb on the joist: 9.1 Hz.
    #[test]
    fn the_published_example() {
        let ei = FlexuralRigidity::from_pound_square_inches(1.4e6 * 1.5 * 9.25 * 9.25 * 9.25 / 12.0);
        let found = natural_frequency(ei, Force::from_pounds(133.0), Length::from_feet(19.0));
        assert!((found - 9.1).abs() < 0.05, "{found}");
    }
}
