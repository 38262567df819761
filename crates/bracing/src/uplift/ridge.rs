//! What pulls the rafters apart at the ridge when the roof is lifted.

use measure::{Force, Length, LineLoad, Ratio, Slope};
use standards::OutsideTable;
use standards::irc_2021::r802_4::{RIDGE_BEAM, RIDGE_BEAM_UNDER};

use super::{STATICS, refusal};

/// Tension across the ridge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RidgeTension {
    /// Along the ridge.
    pub along: LineLoad,
    /// In one strap.
    pub demand: Force,
}

const STEEPEST: Ratio = 12.0;
/// Run that a pitch is given in.
const RUN: Ratio = 12.0;

/// Tension `u / (2 tan a)` across the ridge of two like slopes that lean on each other, from the net uplift `u` at each wall,
/// and what a strap over every so many inches of it takes. An overhang in `u` makes it no less.
///
/// No collar tie is counted: one below the ridge takes more than a strap at it. Source: statics of a pair of rafters, hinged
/// at the walls and at the ridge.
///
/// # Errors
/// A pitch under 3 in 12, where the ridge is a beam, or over 12 in 12, where wind does not lift both slopes alike; a spacing
/// that is not over zero.
pub fn ridge_tension(uplift: LineLoad, pitch: Slope, spacing: Length) -> Result<RidgeTension, OutsideTable> {
    let rise = pitch.rise_in_twelve();
    if !(RIDGE_BEAM_UNDER..=STEEPEST).contains(&rise) {
        let next = "A flatter roof has a ridge beam, which is tied down itself; an engineer looks at a steeper one.";
        return Err(refusal(RIDGE_BEAM, format!("a pitch of {rise} in 12"), "pitches from 3 to 12 in 12", next));
    }
    if spacing <= Length::ZERO {
        let given = format!("straps at {} in", spacing.inches());
        return Err(refusal(STATICS, given, "spacings over zero", "Measure it again."));
    }
    let along = uplift.max(LineLoad::ZERO) * (RUN / (2.0 * rise));
    Ok(RidgeTension { along, demand: along * spacing })
}
