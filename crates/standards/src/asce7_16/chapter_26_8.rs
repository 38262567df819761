//! 26.8: how much faster the wind is over a hill, a ridge or an escarpment.

use measure::{Length, Ratio, math};

use super::{DOCUMENT, chapter_26::Exposure};
use crate::{OutsideTable, Source, Status};

/// 26.8.1: the five conditions. The limits of the last two were read in a standard built on this one; the first three
/// are from memory.
pub const CONDITIONS: Source = Source::new(DOCUMENT, "26.8.1", Status::PartlyLookedUp);
/// Eq. 26.8-1 and Fig. 26.8-1: the factor and its three multipliers.
pub const TOPOGRAPHIC_FACTOR: Source = Source::new(DOCUMENT, "Eq. 26.8-1, Fig. 26.8-1", Status::LookedUp);

/// Shape of the rising ground.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Feature {
    /// Long and falling on both sides.
    Ridge,
    /// Falling on one side, near level behind the crest: a bluff. The wind blows up its face.
    Escarpment,
    /// Round: falling on all sides.
    Hill,
}

/// Where something stands from the crest.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FromCrest {
    /// On the side that the wind comes from.
    Upwind,
    /// On the side that the wind goes to.
    Downwind,
}

/// Constants of Fig. 26.8-1.
struct Constants {
    /// `K_1` over `H / L_h`, for Exposure B, C and D.
    shape: [Ratio; 3],
    /// `gamma`: how fast the speed-up dies away with height.
    height_attenuation: Ratio,
    /// `mu` upwind and downwind of the crest: how far it reaches, in half-lengths.
    reach: [Ratio; 2],
}

impl Feature {
    /// Every feature.
    pub const ALL: [Self; 3] = [Self::Ridge, Self::Escarpment, Self::Hill];

    const fn constants(self) -> Constants {
        match self {
            Self::Ridge => Constants { shape: [1.30, 1.45, 1.55], height_attenuation: 3.0, reach: [1.5, 1.5] },
            Self::Escarpment => Constants { shape: [0.75, 0.85, 0.95], height_attenuation: 2.5, reach: [1.5, 4.0] },
            Self::Hill => Constants { shape: [0.95, 1.05, 1.15], height_attenuation: 4.0, reach: [1.5, 1.5] },
        }
    }

    /// `K_1 / (H / L_h)` of Fig. 26.8-1.
    #[must_use]
    pub const fn shape_factor(self, exposure: Exposure) -> Ratio {
        let [b, c, d] = self.constants().shape;
        match exposure {
            Exposure::B => b,
            Exposure::C => c,
            Exposure::D => d,
        }
    }

    /// Height attenuation factor `gamma` of Fig. 26.8-1.
    #[must_use]
    pub const fn height_attenuation(self) -> Ratio {
        self.constants().height_attenuation
    }

    /// Horizontal attenuation factor `mu` of Fig. 26.8-1: how far the speed-up reaches, in half-lengths.
    #[must_use]
    pub const fn horizontal_attenuation(self, side: FromCrest) -> Ratio {
        let [upwind, downwind] = self.constants().reach;
        match side {
            FromCrest::Upwind => upwind,
            FromCrest::Downwind => downwind,
        }
    }
}

/// Rising ground.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LandForm {
    /// Its shape.
    pub feature: Feature,
    /// Height `H` of the crest above the ground upwind.
    pub height: Length,
    /// Half-length `L_h`: level distance from the crest, upwind, to where the ground has fallen by half of `H`.
    pub half_length: Length,
}

/// Where a house stands on rising ground, for the third condition.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Position {
    /// In the upper half of a hill or a ridge, or near the crest of an escarpment.
    UpperHalfOrNearCrest,
    /// Lower, or well behind the crest.
    Elsewhere,
}

/// What surrounds rising ground, for the first three conditions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Setting {
    /// Distance upwind of the crest to the nearest feature of similar height.
    pub clear_upwind: Length,
    /// Height of the highest other feature within 2 miles upwind, above the same ground as `H`.
    pub highest_upwind: Length,
    /// Where the house stands.
    pub position: Position,
}

/// The five conditions of 26.8.1. The speed-up counts where all are met.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Condition {
    /// Isolated: no similar feature upwind within 100 heights or 2 miles, whichever is less.
    Isolated,
    /// At least twice as high as what lies within 2 miles upwind.
    TwiceAsHigh,
    /// The house is in the upper half, or near the crest of an escarpment.
    HighOnIt,
    /// `H / L_h` is at least 0.2.
    Steep,
    /// `H` is at least 15 ft in Exposures C and D, 60 ft in B.
    HighEnough,
}

impl Condition {
    /// All five, as the clause numbers them.
    pub const ALL: [Self; 5] = [Self::Isolated, Self::TwiceAsHigh, Self::HighOnIt, Self::Steep, Self::HighEnough];

    /// Whether it is met.
    #[must_use]
    pub fn is_met(self, land: &LandForm, setting: &Setting, exposure: Exposure) -> bool {
        match self {
            Self::Isolated => setting.clear_upwind >= (land.height * ISOLATED_HEIGHTS).min(TWO_MILES),
            Self::TwiceAsHigh => land.height >= setting.highest_upwind * 2.0,
            Self::HighOnIt => setting.position == Position::UpperHalfOrNearCrest,
            Self::Steep => land.height >= land.half_length * LEAST_STEEPNESS,
            Self::HighEnough => land.height >= least_height(exposure),
        }
    }
}

const ISOLATED_HEIGHTS: Ratio = 100.0;
const TWO_MILES: Length = Length::from_feet(2.0 * 5280.0);
const LEAST_STEEPNESS: Ratio = 0.2;
/// Steepness beyond which the shape no longer adds, and twice the height takes the half-length's place.
const STEEPEST: Ratio = 0.5;

/// Height of a feature from which the speed-up counts.
#[must_use]
pub const fn least_height(exposure: Exposure) -> Length {
    match exposure {
        Exposure::B => Length::from_feet(60.0),
        Exposure::C | Exposure::D => Length::from_feet(15.0),
    }
}

/// The topographic factor with what it is made of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TopographicFactor {
    /// `K_1`: shape and steepness.
    pub k_1: Ratio,
    /// `K_2`: 1 at the crest, 0 where the speed-up no longer reaches.
    pub k_2: Ratio,
    /// `K_3`: 1 at the ground, less above.
    pub k_3: Ratio,
    /// The half-length that was used: `2 H` where the ground is steeper than `H / L_h = 0.5`.
    pub half_length: Length,
    /// `K_zt = (1 + K_1 K_2 K_3)^2`.
    pub factor: Ratio,
}

/// Topographic factor `K_zt` where all five conditions are met: `K_1 = c H / L_h` with `H / L_h` not over 0.5,
/// `K_2 = 1 - |x| / (mu L_h)` and not under 0, `K_3 = e^(-gamma z / L_h)`. Ground steeper than `H / L_h = 0.5` takes
/// `2 H` for `L_h` in `K_2` and `K_3`. The caps are the figure's own notes.
///
/// `distance` is `x`, level from the crest to the house; `height_above_ground` is `z`, at the house.
///
/// # Errors
/// A valley (negative `H`), a half-length or a height that is none, a negative `x` or `z`.
///
/// ```
/// use measure::Length;
/// use standards::asce7_16::{chapter_26::Exposure, chapter_26_8::*};
/// let ft = Length::from_feet;
/// // A bluff of 50 ft, half of it within 60 ft; the house is 30 ft behind the crest, its mean roof height 13.5 ft.
/// let bluff = LandForm { feature: Feature::Escarpment, height: ft(50.0), half_length: ft(60.0) };
/// let found = topographic_factor(&bluff, Exposure::D, FromCrest::Downwind, ft(30.0), ft(13.5))?;
/// let parts = format!("{:.3} {:.3} {:.4}", found.k_1, found.k_2, found.k_3);
/// assert_eq!((parts.as_str(), format!("{:.3}", found.factor).as_str()), ("0.475 0.925 0.7136", "1.725"));
/// # Ok::<(), standards::OutsideTable>(())
/// ```
pub fn topographic_factor(
    land: &LandForm,
    exposure: Exposure,
    side: FromCrest,
    distance: Length,
    height_above_ground: Length,
) -> Result<TopographicFactor, OutsideTable> {
    let LandForm { feature, height, half_length: given } = *land;
    if height <= Length::ZERO || given <= Length::ZERO || distance.min(height_above_ground) < Length::ZERO {
        return Err(outside(land, distance, height_above_ground));
    }
    let half_length = if height > given * STEEPEST { height * 2.0 } else { given };
    let k_1 = feature.shape_factor(exposure) * (height / half_length);
    let reach = half_length * feature.horizontal_attenuation(side);
    let k_2 = (1.0 - distance / reach).max(0.0);
    let k_3 = math::pow(core::f64::consts::E, -feature.height_attenuation() * (height_above_ground / half_length));
    let speed_up = 1.0 + k_1 * k_2 * k_3;
    Ok(TopographicFactor { k_1, k_2, k_3, half_length, factor: speed_up * speed_up })
}

fn outside(land: &LandForm, distance: Length, height_above_ground: Length) -> OutsideTable {
    OutsideTable {
        source: TOPOGRAPHIC_FACTOR,
        given: format!(
            "rising ground of height {} ft and half-length {} ft, the house {} ft from the crest, {} ft above its ground",
            land.height.feet(),
            land.half_length.feet(),
            distance.feet(),
            height_above_ground.feet()
        ),
        covers: "a hill, a ridge or an escarpment that rises, with distances and heights that are not negative",
        next_step: "Measure them on a map with contours. For a valley or a gorge the engineer gives the factor.",
    }
}
