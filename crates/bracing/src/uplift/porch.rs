//! Posts that hold a porch roof down.

use measure::{AreaLoad, Force, Length, LineLoad, Ratio};
use standards::OutsideTable;

use super::{STATICS, refusal};
use crate::segmented::OF_DEAD;

/// Uplift at the head of each post, from one end to the other: that of the half bays on its two sides. `uplift` is the net
/// uplift of a foot of beam, the beam's own weight counted at 0.6; the same passes at the foot of the post, less 0.6 of its
/// weight.
///
/// The beam is cut over each post; [`through_uplifts`] has one that runs through. Under an open porch wind pushes up as well: its uplift is not that of Table R802.11.
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

/// The same under a beam that runs through over its posts. Of two bays the middle post takes what statics of two spans give,
/// `(l² - l r + r²) / 4 l r` more than its half bays; of more bays, alike, each post inside a quarter more, which is what the
/// hardest of them takes at most. The ends are taken as if the beam were cut, which is more than they take.
///
/// Source: statics of a beam of one section on posts that do not give.
///
/// # Errors
/// As [`post_uplifts`], and three bays or more that differ by over an inch.
pub fn through_uplifts(uplift: LineLoad, bays: &[Length]) -> Result<Vec<Force>, OutsideTable> {
    let mut posts = post_uplifts(uplift, bays)?;
    let more = match bays {
        [left, right] => {
            let (left, right) = (left.feet(), right.feet());
            (left * left - left * right + right * right) / (4.0 * left * right)
        }
        _ => {
            alike(bays)?;
            A_QUARTER
        }
    };
    let inside = 1..posts.len() - 1;
    for post in posts.get_mut(inside).into_iter().flatten() {
        *post = *post * (1.0 + more);
    }
    Ok(posts)
}

const A_QUARTER: Ratio = 0.25;

fn alike(bays: &[Length]) -> Result<(), OutsideTable> {
    let widest = bays.iter().copied().fold(Length::ZERO, Length::max);
    if bays.iter().all(|bay| widest - *bay <= Length::from_inches(1.0)) {
        return Ok(());
    }
    let given = "a beam that runs through three bays or more that are not alike".to_owned();
    let next = "The engineer gives the pull at each post; or cut the beam over its posts.";
    Err(refusal(STATICS, given, "two bays, or more that are alike to an inch", next))
}

/// Net uplift of a foot of a porch's beam, and of a foot of the house's wall, from the net lift on the roof, both faces together:
/// a rafter from the wall to the beam, `deep` apart, that stands out over the beam. That of the wall is below zero where the
/// overhang presses it down.
///
/// Source: statics.
///
/// # Errors
/// A depth that is not over zero, or is over 20 ft; an overhang below zero, or over a half of the depth.
pub fn porch_beam_uplift(lift: AreaLoad, deep: Length, out: Length) -> Result<(LineLoad, LineLoad), OutsideTable> {
    if deep <= Length::ZERO || deep > WIDEST_BAY || out < Length::ZERO || out > deep / 2.0 {
        let given = format!("a porch {} ft deep that stands out {} ft", deep.feet(), out.feet());
        let covers = "porches to 20 ft deep that stand out over their beam by half of that or less";
        return Err(refusal(STATICS, given, covers, "Measure it again, or ask the engineer."));
    }
    let whole = deep + out;
    let at_beam = lift * whole * (whole / (deep * 2.0));
    Ok((at_beam, lift * whole - at_beam))
}

const WIDEST_BAY: Length = Length::from_feet(20.0);

/// Weight of concrete, and of earth that surely lies on it, which holds so much uplift: 0.6 of it counts.
///
/// Source: combination 0.6D + 0.6W of ASCE 7-16 2.4.1.
#[must_use]
pub fn footing_weight(uplift: Force) -> Force {
    uplift.max(Force::ZERO) / OF_DEAD
}
