//! What is asked of a member that bends.

use lumber::Conditions;
use measure::{Length, Ratio, Stress};
use standards::asce7_16::chapter_2::LoadCase;

use crate::beam::Load;
pub use crate::check::DeflectionLimits;

/// Kinds of load, as they come together in combinations.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Case {
    /// What is always there.
    Dead,
    /// Use of a floor, or of an attic with storage.
    Live,
    /// Live load of an attic without storage, which acts with dead load alone.
    LiveAlone,
    /// People and tools on the roof.
    RoofLive,
    /// Snow.
    Snow,
    /// Wind that presses, at strength level.
    WindDown,
    /// Wind that lifts, at strength level; its loads are negative.
    WindUp,
}

impl Case {
    /// All of them.
    pub const ALL: [Self; 7] =
        [Self::Dead, Self::Live, Self::LiveAlone, Self::RoofLive, Self::Snow, Self::WindDown, Self::WindUp];

    /// The load case of the combinations that it stands for.
    #[must_use]
    pub const fn of_combination(self) -> LoadCase {
        match self {
            Self::Dead => LoadCase::Dead,
            Self::Live | Self::LiveAlone => LoadCase::Live,
            Self::RoofLive => LoadCase::RoofLive,
            Self::Snow => LoadCase::Snow,
            Self::WindDown | Self::WindUp => LoadCase::Wind,
        }
    }

    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Dead => "dead",
            Self::Live => "live",
            Self::LiveAlone => "attic live, alone",
            Self::RoofLive => "roof live",
            Self::Snow => "snow",
            Self::WindDown => "wind, down",
            Self::WindUp => "wind, up",
        }
    }

    /// Share of it that stays on a span that a pattern leaves unloaded; none for a load that lies on all spans alike.
    ///
    /// Live loads are left off whole. Of snow half stays (ASCE 7-16 7.5, partial loading, from memory).
    #[must_use]
    pub const fn left_by_a_pattern(self) -> Option<Ratio> {
        match self {
            Self::Live | Self::LiveAlone | Self::RoofLive => Some(0.0),
            Self::Snow => Some(0.5),
            Self::Dead | Self::WindDown | Self::WindUp => None,
        }
    }
}

/// A load, and its kind.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Acting {
    /// Its kind.
    pub case: Case,
    /// The load, square to the member, positive down.
    pub load: Load,
}

/// Where the member rests.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bearing {
    /// The middle of it, from the member's left end.
    pub at: Length,
    /// Its length along the member.
    pub length: Length,
    /// What the wood or the metal below it bears, where that is less than the member.
    pub below: Option<Stress>,
}

/// How an edge is held sideways.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Held {
    /// All along, by sheathing or decking.
    Along,
    /// At points so far apart.
    Every(Length),
    /// At the supports alone.
    AtSupports,
}

/// How its two edges are held sideways.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Edges {
    /// The top edge.
    pub top: Held,
    /// The bottom edge.
    pub bottom: Held,
}

/// How its loads come to it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LoadedFrom {
    /// They lie on its top, and it rests on its bottom: what lies within its depth of a support is no shear.
    Top,
    /// They hang on its sides, or it hangs itself: all of it is shear.
    Sides,
}

/// A member that bends, as quantities.
#[derive(Clone, Debug, PartialEq)]
pub struct FlexureInput {
    /// Its length between the first and the last of what is drawn of it.
    pub length: Length,
    /// Where it rests, from left to right.
    pub bearings: Vec<Bearing>,
    /// What it carries besides itself.
    pub loads: Vec<Acting>,
    /// Share of its own weight that acts square to it: the cosine of its slope.
    pub own_weight_share: Ratio,
    /// How its edges are held.
    pub edges: Edges,
    /// How its loads come to it.
    pub loaded_from: LoadedFrom,
    /// Moisture, treatment, and whether it is one of many.
    pub conditions: Conditions,
    /// Three or more plies are nailed so that they share the load.
    pub plies_share_load: bool,
    /// Deflection limits.
    pub limits: DeflectionLimits,
}

impl FlexureInput {
    /// Whether a support is between two spans, not at an end.
    #[must_use]
    pub fn is_interior(&self, support: usize) -> bool {
        support > 0 && support + 1 < self.bearings.len()
    }
}
