//! One nail against another in the same joint: ratio, spacing and number.

use measure::{Length, Ratio};

use crate::{FasteningError, Joint, LateralValue, Nail, lateral_value};

/// Spacings are marked in halves of an inch; finer is not kept on a wall.
const PRACTICAL_STEP_INCHES: f64 = 0.5;

/// Two nails in one joint.
#[derive(Clone, Debug, PartialEq)]
pub struct Worth {
    /// What was found.
    pub found: LateralValue,
    /// What was asked for.
    pub required: LateralValue,
    /// Strength of one found nail over strength of one required nail.
    pub ratio: Ratio,
}

/// The spacing at which other nails give the same strength along a line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EquivalentSpacing {
    /// Unrounded: the required spacing times the ratio, and never over the required spacing. A drawn spacing is not
    /// opened up for a stronger nail.
    pub exact: Length,
    /// The next half inch below, or at it; none under half an inch.
    pub practical: Option<Length>,
}

/// How much of a required nail a found one is worth in a joint.
///
/// # Errors
/// When either nail has no value in the joint: see [`lateral_value`].
///
/// ```
/// use fastening::{Joint, SideMember, Wood, WoodPanel, read_nail, worth};
/// use lumber::Species;
/// use measure::Length;
///
/// let osb = SideMember::wood(Wood::Panel(WoodPanel::Osb), Length::from_inches(7.0 / 16.0));
/// let wall = Joint::face_nailed(osb, Wood::Lumber(Species::SprucePineFir));
/// let swap = worth(read_nail("2-3/8 x .113")?.nail, read_nail("8d common")?.nail, &wall)?;
/// assert!((swap.ratio - 0.778).abs() < 0.0005);
/// let at = swap.equivalent_spacing(Length::from_inches(4.0));
/// assert_eq!(at.practical, Some(Length::from_inches(3.0)));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn worth(found: Nail, required: Nail, joint: &Joint) -> Result<Worth, FasteningError> {
    let found = lateral_value(found, joint)?;
    let required = lateral_value(required, joint)?;
    let ratio = found.adjusted / required.adjusted;
    Ok(Worth { found, required, ratio })
}

impl Worth {
    /// Whether one found nail is worth one required nail.
    #[must_use]
    pub fn is_enough(&self) -> bool {
        self.ratio >= 1.0
    }

    /// The spacing of found nails that gives the strength of required nails at `required` on center.
    ///
    /// Strength only: whether the framing splits is for [`crate::edge_framing`] to say, and who agrees for
    /// [`crate::approval`].
    #[must_use]
    pub fn equivalent_spacing(&self, required: Length) -> EquivalentSpacing {
        spacing_worth(required, self.ratio)
    }

    /// How many found nails carry what `required` nails carry; never fewer than `required`. Whether the longer pattern
    /// fits is to be looked at.
    #[must_use]
    pub fn replacements(&self, required: u32) -> u32 {
        replacements(required, self.ratio)
    }
}

/// The spacing of nails of a ratio that is worth a required spacing, never a wider one.
pub(crate) fn spacing_worth(required: Length, ratio: Ratio) -> EquivalentSpacing {
    let exact = required * ratio.min(1.0);
    let steps = (exact.inches() / PRACTICAL_STEP_INCHES).floor();
    let practical = (steps >= 1.0).then(|| Length::from_inches(steps * PRACTICAL_STEP_INCHES));
    EquivalentSpacing { exact, practical }
}

/// How many nails of a ratio are worth so many required ones, never fewer.
pub(crate) fn replacements(required: u32, ratio: Ratio) -> u32 {
    // A cast of a number that is too large gives the largest there is.
    (f64::from(required) / ratio.min(1.0)).ceil() as u32
}
