//! One kind of nail for another in a whole joint: number and spacing, across the shank and along it, and what splits.

use measure::{Length, Ratio};
use standards::nds_2018::{
    Cited,
    chapter_12::{Boring, NailSpacings, nail_spacings},
};

use crate::{
    EdgeFraming, FasteningError, Joint, NailSpec, Shank, UpliftValue, Worth, edge_framing,
    error::thousandths,
    least_edge_spacing, least_spacing_along_grain, uplift_value,
    withdrawal::holds_no_pull,
    worth,
    worth::{replacements, spacing_worth},
};

const WIDEST: Length = Length::from_inches(48.0);
const MOST: u32 = 1000;

/// How many nails, or how far apart.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Pattern {
    /// On center along a line: one row.
    OnCenter(Length),
    /// So many in the joint.
    Count(u32),
}

/// The pull that each of two nails holds in one joint.
#[derive(Clone, Debug, PartialEq)]
pub struct UpliftPair {
    /// What was found.
    pub found: UpliftValue,
    /// What was asked for.
    pub required: UpliftValue,
    /// Strength of one found nail over strength of one required nail.
    pub ratio: Ratio,
}

/// Which strength decides the pattern.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SwapGoverns {
    /// Across the shank.
    Lateral,
    /// Along it: shank or head.
    Uplift,
}

/// How a nail of a sheathed wall, floor or roof differs from the one that was drawn. The tables of panels are tests with
/// the nail that they name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Difference {
    /// Thinner, or thicker: a thicker one splits what the other does not.
    Diameter,
    /// Shorter.
    Length,
    /// Smooth for ringed, stainless for bright, or the other way round.
    Shank,
    /// A narrower head, or one that nobody measured.
    Head,
}

/// What the wood takes of the new pattern.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Room {
    /// The nails stand far enough apart.
    Enough,
    /// Where two panels meet, the framing must be 3x or two stitched 2x, and the nails staggered.
    ThickerFraming(Cited<EdgeFraming>),
    /// Too close: the wood splits. The least spacing is given.
    TooClose(Cited<Length>),
    /// A number of nails was asked for: they fit where these distances are kept.
    KeepDistances(Cited<NailSpacings>),
}

/// Nails found in place of nails drawn, in one joint.
#[derive(Clone, Debug, PartialEq)]
pub struct Swap {
    /// Both across the shank.
    pub lateral: Worth,
    /// Both along it; none where no nail of the joint holds a pull, as in end grain, or where none was asked for.
    pub uplift: Option<UpliftPair>,
    /// The smaller of the two ratios.
    pub ratio: Ratio,
    /// Which one it is.
    pub governs: SwapGoverns,
    /// The pattern of found nails that carries what was drawn, both ways: never fewer, and never wider apart. None
    /// where they would stand under half an inch apart.
    pub pattern: Option<Pattern>,
    /// What the wood takes of it; none where there is no pattern.
    pub room: Option<Room>,
    /// In a panel joint, how the nails differ; empty of framing.
    pub differences: Vec<Difference>,
}

impl Swap {
    /// Whether the found nails may stand in the new pattern, as far as is known here: there is one, the wood takes it,
    /// and panel nails are like for like, unless the engineer says yes to what differs. Who must agree besides is for
    /// [`crate::approval`].
    #[must_use]
    pub fn may_stand(&self, engineer_agrees: bool) -> bool {
        let fits = self.room.is_some_and(|room| !matches!(room, Room::TooClose(_)));
        fits && (engineer_agrees || self.differences.is_empty())
    }
}

/// The pattern of the nails at hand that carries what the drawn nails carry, across the shank and along it.
///
/// Takes both nails, the pattern that was drawn, and the joint. Panel nails are on center along an edge; a row in lumber
/// runs along the grain.
///
/// Source: NDS 2018 chapters 11 and 12 for the strengths; SDPWS 2021 §4.3.7.1 and FEMA P-499 for panel edges; NDS
/// Commentary Table C12.1.6.6 for rows in lumber. Each number carries its own.
///
/// # Errors
/// When either nail has no value in the joint, a head is not known, the pattern is no pattern, or panel nails are drawn
/// outside 2 to 12 in on center.
///
/// ```
/// use fastening::{Joint, NailSpec, Pattern, SideMember, Wood, read_nail, swap};
/// use lumber::Species;
/// use measure::Length;
///
/// let spf = Wood::Lumber(Species::SprucePineFir);
/// let joint = Joint::face_nailed(SideMember::wood(spf, Length::from_inches(1.5)), spf);
/// let of = |text| Ok::<_, fastening::NailError>(NailSpec::smooth(read_nail(text)?.nail));
/// let found = swap(&of("12d common")?, &of("16d common")?, Pattern::Count(10), &joint)?;
/// // Across the shank 12 would do (field case of a truss repair); along it 13 are needed.
/// assert_eq!((found.lateral.replacements(10), found.pattern), (12, Some(Pattern::Count(13))));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn swap(found: &NailSpec, required: &NailSpec, pattern: Pattern, joint: &Joint) -> Result<Swap, FasteningError> {
    let lateral = worth(found.nail, required.nail, joint)?;
    check(pattern, &lateral, joint)?;
    let uplift = uplift_pair(found, required, joint)?;
    weighed((found, required), pattern, joint, (lateral, uplift))
}

/// The same where nothing pulls the joint apart: across the shank alone. No head need be known.
///
/// # Errors
/// As [`swap`], but for what concerns heads and pulls.
///
/// ```
/// use fastening::{Joint, NailSpec, Pattern, SideMember, Wood, read_nail, swap_across};
/// use lumber::Species;
/// use measure::Length;
///
/// let spf = Wood::Lumber(Species::SprucePineFir);
/// let joint = Joint::face_nailed(SideMember::wood(spf, Length::from_inches(1.5)), spf);
/// let of = |text| Ok::<_, fastening::NailError>(NailSpec::smooth(read_nail(text)?.nail));
/// let found = swap_across(&of("0.148 x 3")?, &of("16d common")?, Pattern::Count(10), &joint)?;
/// assert_eq!(found.pattern, Some(Pattern::Count(12)));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn swap_across(
    found: &NailSpec,
    required: &NailSpec,
    pattern: Pattern,
    joint: &Joint,
) -> Result<Swap, FasteningError> {
    let lateral = worth(found.nail, required.nail, joint)?;
    check(pattern, &lateral, joint)?;
    weighed((found, required), pattern, joint, (lateral, None))
}

fn weighed(
    (found, required): (&NailSpec, &NailSpec),
    pattern: Pattern,
    joint: &Joint,
    (lateral, uplift): (Worth, Option<UpliftPair>),
) -> Result<Swap, FasteningError> {
    let (ratio, governs) = match &uplift {
        Some(pair) if pair.ratio < lateral.ratio => (pair.ratio, SwapGoverns::Uplift),
        _ => (lateral.ratio, SwapGoverns::Lateral),
    };
    let pattern = worth_of(pattern, ratio);
    let room = pattern.map(|pattern| room(pattern, &lateral, joint)).transpose()?;
    let differences = if joint.side.is_panel() { differences(found, required) } else { Vec::new() };
    Ok(Swap { lateral, uplift, ratio, governs, pattern, room, differences })
}

fn check(drawn: Pattern, lateral: &Worth, joint: &Joint) -> Result<(), FasteningError> {
    match drawn {
        Pattern::Count(1..=MOST) => Ok(()),
        Pattern::Count(given) => Err(FasteningError::Pattern { given: format!("{given} nails") }),
        Pattern::OnCenter(apart) if joint.side.is_panel() => {
            edge_framing(lateral.required.nail, lateral.required.reach.penetration, apart)?;
            Ok(())
        }
        Pattern::OnCenter(apart) if apart > Length::ZERO && apart <= WIDEST => Ok(()),
        Pattern::OnCenter(given) => Err(FasteningError::Pattern { given: format!("{} on center", thousandths(given)) }),
    }
}

fn uplift_pair(found: &NailSpec, required: &NailSpec, joint: &Joint) -> Result<Option<UpliftPair>, FasteningError> {
    if holds_no_pull(joint).is_some() {
        return Ok(None);
    }
    let (found, required) = (uplift_value(found, joint)?, uplift_value(required, joint)?);
    let ratio = found.adjusted / required.adjusted;
    Ok(Some(UpliftPair { found, required, ratio }))
}

fn worth_of(drawn: Pattern, ratio: Ratio) -> Option<Pattern> {
    match drawn {
        Pattern::OnCenter(apart) => spacing_worth(apart, ratio).practical.map(Pattern::OnCenter),
        Pattern::Count(count) => Some(Pattern::Count(replacements(count, ratio))),
    }
}

fn room(pattern: Pattern, lateral: &Worth, joint: &Joint) -> Result<Room, FasteningError> {
    let (nail, penetration) = (lateral.found.nail, lateral.found.reach.penetration);
    let apart = match pattern {
        Pattern::OnCenter(apart) => apart,
        Pattern::Count(_) => return Ok(Room::KeepDistances(nail_spacings(nail.diameter(), Boring::None))),
    };
    if joint.side.is_panel() {
        let least = least_edge_spacing(nail, penetration, EdgeFraming::ThreeByOrTwoStitched);
        if apart < least.value {
            return Ok(Room::TooClose(least));
        }
        let framing = edge_framing(nail, penetration, apart)?;
        return Ok(match framing.value {
            EdgeFraming::TwoBy => Room::Enough,
            EdgeFraming::ThreeByOrTwoStitched => Room::ThickerFraming(framing),
        });
    }
    let least = least_spacing_along_grain(nail);
    Ok(if apart < least.value { Room::TooClose(least) } else { Room::Enough })
}

fn differences(found: &NailSpec, required: &NailSpec) -> Vec<Difference> {
    let heads = (found.head(), required.head());
    let same_head = matches!(heads, (Ok(found), Ok(required)) if found >= required);
    [
        (found.nail.diameter() != required.nail.diameter(), Difference::Diameter),
        (found.nail.length() < required.nail.length(), Difference::Length),
        (!is_same_shank(found.shank, required.shank), Difference::Shank),
        (!same_head, Difference::Head),
    ]
    .into_iter()
    .filter_map(|(holds, difference)| holds.then_some(difference))
    .collect()
}

/// The same kind; of a ring shank, with rings at least as long.
fn is_same_shank(found: Shank, required: Shank) -> bool {
    use Shank::{PostFrameRing, RoofSheathingRing};
    match (found, required) {
        (RoofSheathingRing { ringed: found }, RoofSheathingRing { ringed: required })
        | (PostFrameRing { ringed: found }, PostFrameRing { ringed: required }) => found >= required,
        _ => found == required,
    }
}
