//! Rising ground, and why the topographic factor is what it is.

use measure::{Length, Ratio};
use standards::asce7_16::{
    chapter_26::Exposure,
    chapter_26_8::{
        Condition, FromCrest, LandForm, Position, Setting, TOPOGRAPHIC_FACTOR, TopographicFactor, topographic_factor,
    },
};
use standards::ibc_2018::section_1609_1::prescriptive_on_hill;
use standards::{OutsideTable, Source};

/// Clause of the factor.
pub const SOURCE: Source = TOPOGRAPHIC_FACTOR;

/// The lie of the land.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Topography {
    /// Level, or rolling gently.
    Flat,
    /// A hill, a ridge or a bluff, with the wind blowing up it.
    Rising(RisingGround),
    /// A valley, a gorge, several hills or mountains: no rule gives a factor.
    Unusual,
}

/// A hill, a ridge or a bluff and where the house stands on it. What is not known of the first three conditions is
/// taken as met.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RisingGround {
    /// Its shape and size.
    pub land: LandForm,
    /// The side of the crest that the house is on.
    pub side: FromCrest,
    /// Level distance from the crest to the house.
    pub distance: Length,
    /// Whether the house is high on it.
    pub position: Option<Position>,
    /// Distance upwind of the crest to the nearest feature of similar height.
    pub clear_upwind: Option<Length>,
    /// Height of the highest other feature within 2 miles upwind.
    pub highest_upwind: Option<Length>,
}

/// A topographic factor, and the reasons for it.
#[derive(Clone, Debug, PartialEq)]
pub struct TopographyFinding {
    /// `K_zt`; 1 on level ground and where a condition fails.
    pub factor: Ratio,
    /// What it is made of; none where it is 1 for one of those reasons.
    pub multipliers: Option<TopographicFactor>,
    /// Conditions of 26.8.1 that are not met.
    pub failed: Vec<Condition>,
    /// Conditions taken as met because nothing was said of them.
    pub assumed: Vec<Condition>,
}

impl RisingGround {
    /// The setting, with what is not known as the rules would have it worst.
    fn setting(&self) -> Setting {
        // Beyond this no rule looks: the larger of 100 heights and 2 miles.
        let farthest = (self.land.height * 100.0).max(Length::from_feet(2.0 * 5280.0));
        Setting {
            clear_upwind: self.clear_upwind.unwrap_or(farthest),
            highest_upwind: self.highest_upwind.unwrap_or(Length::ZERO),
            position: self.position.unwrap_or(Position::UpperHalfOrNearCrest),
        }
    }

    fn assumed(&self) -> Vec<Condition> {
        [
            (self.clear_upwind.is_none(), Condition::Isolated),
            (self.highest_upwind.is_none(), Condition::TwiceAsHigh),
            (self.position.is_none(), Condition::HighOnIt),
        ]
        .into_iter()
        .filter_map(|(unknown, condition)| unknown.then_some(condition))
        .collect()
    }
}

impl Topography {
    /// The topographic factor at a height above the ground at the house, with its reasons.
    ///
    /// # Errors
    /// Ground that the rule does not cover: a valley, a gorge, several hills; sizes that are none; negative distances.
    pub fn factor_at(&self, exposure: Exposure, height: Length) -> Result<TopographyFinding, OutsideTable> {
        let ground = match self {
            Self::Flat => {
                return Ok(TopographyFinding { factor: 1.0, multipliers: None, failed: vec![], assumed: vec![] });
            }
            Self::Unusual => return Err(unusual()),
            Self::Rising(ground) => ground,
        };
        // Asked first, so that an impossible size is refused also where a condition fails.
        let multipliers = topographic_factor(&ground.land, exposure, ground.side, ground.distance, height)?;
        let setting = ground.setting();
        let failed: Vec<_> = Condition::ALL
            .into_iter()
            .filter(|condition| !condition.is_met(&ground.land, &setting, exposure))
            .collect();
        let counts = failed.is_empty();
        Ok(TopographyFinding {
            factor: if counts { multipliers.factor } else { 1.0 },
            multipliers: counts.then_some(multipliers),
            failed,
            assumed: ground.assumed(),
        })
    }

    /// Whether prescriptive wood standards may be used on this ground.
    ///
    /// # Errors
    /// High on a steep, isolated hill; on ground that no rule covers.
    pub fn prescriptive(&self, exposure: Exposure) -> Result<(), OutsideTable> {
        match self {
            Self::Flat => Ok(()),
            Self::Unusual => Err(unusual()),
            Self::Rising(ground) => prescriptive_on_hill(&ground.land, &ground.setting(), exposure),
        }
    }
}

fn unusual() -> OutsideTable {
    OutsideTable {
        source: TOPOGRAPHIC_FACTOR,
        given: "a valley, a gorge, several hills or mountains".to_owned(),
        covers: "one hill, ridge or escarpment by itself",
        next_step: "The engineer gives the topographic factor there.",
    }
}
