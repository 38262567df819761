//! How close nails may stand before the wood splits.

use measure::Length;
use standards::{
    Source, Status,
    nds_2018::{
        Cited,
        chapter_12::{Boring, nail_spacings},
    },
    technical_topic_tt_012,
};

use crate::{Nail, SpacingError};

/// Where two panels meet on framing: 2 in lumber is not enough for nails closer than 3 in.
const CLOSER_THAN_THREE: Source = Source::new("FEMA P-499", "nails closer than 3 in", Status::LookedUp);
/// The panel table's own words on framing at adjoining panel edges.
const ADJOINING_EDGES: Source = Source::new("SDPWS 2021", "§4.3.7.1", Status::FromMemory);

/// Diameter of the 8d common nail; the rule is printed for 8d and for 10d, and what is between counts as 10d.
const EIGHT_PENNY: Length = Length::from_inches(0.131);
/// Penetration over which a 10d nail at 3 in splits 2 in lumber.
const DEEP: Length = Length::from_inches(1.5);
const CLOSEST: Length = Length::from_inches(2.0);
const WIDEST: Length = Length::from_inches(12.0);
const THREE_INCHES: Length = Length::from_inches(3.0);
const NEXT_AFTER_THREE: Length = Length::from_inches(3.5);

/// Framing that takes the edge nails of two panels that meet on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum EdgeFraming {
    /// One piece 2 in thick (1-1/2 in dressed).
    TwoBy,
    /// One piece 3 in thick (2-1/2 in dressed), or two of 2 in nailed to each other for the shear of the joint; the
    /// edge nails staggered.
    ThreeByOrTwoStitched,
}

/// The least framing at a joint of two panels for nails along their edges.
///
/// Takes the nail, its penetration into the framing, and the spacing on center. Nails closer than 3 in, and nails
/// thicker than 8d (0.131 in) at 3 in or closer that go more than 1-1/2 in deep, need 3 in lumber or two stitched
/// pieces of 2 in, and stand staggered. Earthquake design in Categories D to F has one more case, by unit shear, which
/// is not here.
///
/// Source: SDPWS 2021 §4.3.7.1 (from memory); FEMA P-499 for the 3 in (looked up).
///
/// # Errors
/// When the spacing is under 2 in or over 12 in: the panel tables have no such nailing.
///
/// ```
/// use fastening::{EdgeFraming, edge_framing, read_nail};
/// use measure::Length;
///
/// let (inches, nail) = (Length::from_inches, read_nail("8d common")?.nail);
/// assert_eq!(edge_framing(nail, inches(2.06), inches(3.0))?.value, EdgeFraming::TwoBy);
/// assert_eq!(edge_framing(nail, inches(2.06), inches(2.0))?.value, EdgeFraming::ThreeByOrTwoStitched);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn edge_framing(nail: Nail, penetration: Length, spacing: Length) -> Result<Cited<EdgeFraming>, SpacingError> {
    if !(CLOSEST..=WIDEST).contains(&spacing) {
        return Err(SpacingError { given: spacing });
    }
    Ok(if spacing < THREE_INCHES {
        Cited::new(EdgeFraming::ThreeByOrTwoStitched, CLOSER_THAN_THREE)
    } else if spacing <= THREE_INCHES && is_deep_ten_penny(nail, penetration) {
        Cited::new(EdgeFraming::ThreeByOrTwoStitched, ADJOINING_EDGES)
    } else {
        Cited::new(EdgeFraming::TwoBy, ADJOINING_EDGES)
    })
}

fn is_deep_ten_penny(nail: Nail, penetration: Length) -> bool {
    nail.diameter() > EIGHT_PENNY && penetration > DEEP
}

/// The closest edge nails, in half inches, that a framing takes at a joint of two panels: the other side of
/// [`edge_framing`].
#[must_use]
pub fn least_edge_spacing(nail: Nail, penetration: Length, framing: EdgeFraming) -> Cited<Length> {
    match framing {
        EdgeFraming::ThreeByOrTwoStitched => Cited::new(CLOSEST, ADJOINING_EDGES),
        EdgeFraming::TwoBy if is_deep_ten_penny(nail, penetration) => Cited::new(NEXT_AFTER_THREE, ADJOINING_EDGES),
        EdgeFraming::TwoBy => Cited::new(THREE_INCHES, CLOSER_THAN_THREE),
    }
}

/// The closest nails in a row along the grain of lumber, no holes bored: 15 diameters.
///
/// Source: NDS 2018 Commentary Table C12.1.6.6 (from memory). It recommends; the standard asks only that nothing
/// splits.
#[must_use]
pub fn least_spacing_along_grain(nail: Nail) -> Cited<Length> {
    nail_spacings(nail.diameter(), Boring::None).map(|spacings| spacings.along_grain)
}

/// Whether nails may be added between edge nails of this spacing to make up for overdriven ones. At 4 in and closer
/// they may not: more of them can split the framing, and an engineer decides.
///
/// Source: Technical Topic TT-012A as restated by an engineer (looked up in part).
#[must_use]
pub fn nails_may_be_added(spacing: Length) -> Cited<bool> {
    let may = spacing > technical_topic_tt_012::NO_NAILS_ADDED_AT;
    Cited::new(may, technical_topic_tt_012::CLOSE_NAILING)
}
