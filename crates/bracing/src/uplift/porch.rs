//! Posts that hold a porch roof down.

use measure::{Force, Length, LineLoad};
use standards::OutsideTable;

use super::{STATICS, refusal};
use crate::segmented::OF_DEAD;

/// Uplift at the head of each post, from one end to the other: that of the half bays on its two sides. `uplift` is the net
/// uplift of a foot of beam, the beam's own weight counted at 0.6; the same passes at the foot of the post, less 0.6 of its
/// weight.
///
/// The beam is cut over each post. One that runs through lifts its middle posts more: the middle one of two like bays a
/// quarter more. Under an open porch wind pushes up as well: its uplift is not that of Table R802.11.
///
/// Source: statics.
///
/// # Errors
/// No bay, or one that is not over zero or is over 20 ft.
pub fn post_uplifts(uplift: LineLoad, bays: &[Length]) -> Result<Vec<Force>, OutsideTable> {
    let is_bay = |bay: &Length| *bay > Length::ZERO && *bay <= WIDEST_BAY;
    if bays.is_empty() || !bays.iter().all(is_bay) {
        let given = format!("bays of {:?} ft", bays.iter().map(|bay| bay.feet()).collect::<Vec<_>>());
        return Err(refusal(STATICS, given, "one bay or more, each to 20 ft", "Measure from post to post."));
    }
    let halves: Vec<Length> = bays.iter().map(|bay| *bay / 2.0).collect();
    let left = core::iter::once(Length::ZERO).chain(halves.iter().copied());
    let right = halves.iter().copied().chain(core::iter::once(Length::ZERO));
    let lifted = uplift.max(LineLoad::ZERO);
    Ok(left.zip(right).map(|(left, right)| lifted * (left + right)).collect())
}

const WIDEST_BAY: Length = Length::from_feet(20.0);

/// Weight of concrete, and of earth that surely lies on it, which holds so much uplift: 0.6 of it counts.
///
/// Source: combination 0.6D + 0.6W of ASCE 7-16 2.4.1.
#[must_use]
pub fn footing_weight(uplift: Force) -> Force {
    uplift.max(Force::ZERO) / OF_DEAD
}
