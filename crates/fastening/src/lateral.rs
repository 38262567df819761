//! What one nail carries across its shank in a joint.

use measure::{Force, Length, Stress};
use standards::nds_2018::{
    Cited, OutsideLimits,
    appendix_i::{NailSteel, bending_yield_strength},
    chapter_11,
    chapter_12::{
        DowelBearing, SingleShear, YieldLimits, YieldMode, bearing_length_in_main_member, end_grain_factor_lateral,
        penetration_factor, toe_nail_factor_lateral, yield_limits,
    },
};

use crate::{
    Driven, FasteningError, Joint, Nail, Reach,
    factor::{Factor, adjusted},
    reach::{lateral_way, reach},
};

/// How a penetration under 10 diameters was allowed for: both ways are worked, and the smaller value is used.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ShortPenetration {
    /// The penetration is 10 diameters or more: nothing is taken off.
    Full,
    /// The value of a full penetration, times `p / 10 D`.
    Share(Cited<f64>),
    /// The equations with the point left out of the bearing length.
    WithoutPoint(Cited<Length>),
}

/// What the number alone does not say.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Caution {
    /// Under 10 diameters in the main member: the value is reduced.
    ShortPenetration,
    /// A layer between the members also bends the nail, which no equation here counts.
    LayerBetween,
    /// The point comes out of the main member.
    PointComesThrough,
    /// A nail in end grain holds nothing when pulled out.
    NoWithdrawalFromEndGrain,
    /// Toe-nails split the end easily and hold little uplift: in a high wind a strap does.
    ToeNail,
}

/// What one nail carries across its shank, and every number behind it.
#[derive(Clone, Debug, PartialEq)]
pub struct LateralValue {
    /// The nail.
    pub nail: Nail,
    /// Reference lateral design value `Z`, penetration counted in, no other factor.
    pub reference: Force,
    /// Adjusted value `Z'`: `reference` times every factor.
    pub adjusted: Force,
    /// How the joint gives way first.
    pub mode: YieldMode,
    /// How far the nail goes.
    pub reach: Reach,
    /// How the penetration was allowed for.
    pub short_penetration: ShortPenetration,
    /// Dowel bearing strength of the side member, `F_es`.
    pub side_strength: Cited<Stress>,
    /// Dowel bearing strength of the main member, `F_em`.
    pub main_strength: Cited<Stress>,
    /// Bending yield strength of the nail, `F_yb`.
    pub bending_yield: Cited<Stress>,
    /// The dowel the yield equations were worked for.
    pub shear: SingleShear,
    /// Every yield mode, before the share for penetration.
    pub limits: YieldLimits,
    /// Every factor between `reference` and `adjusted`, those of 1 as well.
    pub factors: Vec<Factor>,
    /// What the number does not say.
    pub cautions: Vec<Caution>,
}

/// The lateral design value of one low-carbon steel nail in single shear, by the yield limit equations.
///
/// Takes the nail and the joint. Under 10 diameters of penetration the smaller of two values is used: the share
/// `p / 10 D` of a full one, and the equations with the point left out. A ring shank counts by the diameter before it
/// was rolled. What a steel plate itself carries is a check of its
/// own.
///
/// Source: NDS 2018 §12.3.1, §12.5, Table 11.3.1; each number carries its own.
///
/// # Errors
/// When the nail reaches less than 6 diameters, a thickness is nothing or over 12 in (steel: 1 in), a nail is driven at
/// a slant through steel, or the nail is thinner than 0.099 in or 1/4 in and thicker.
///
/// ```
/// use fastening::{Joint, Nail, NailKind, SideMember, Wood, YieldMode, lateral_value};
/// use lumber::Species;
/// use measure::Length;
///
/// let spf = Wood::Lumber(Species::SprucePineFir);
/// let joint = Joint::face_nailed(SideMember::wood(spf, Length::from_inches(1.5)), spf);
/// let nail = Nail::of_size(NailKind::Common, 16).ok_or("no 16d common")?;
/// let found = lateral_value(nail, &joint)?;
/// assert_eq!(found.mode, YieldMode::IV);
/// assert!((found.adjusted.pounds() - 120.0).abs() < 0.5);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn lateral_value(nail: Nail, joint: &Joint) -> Result<LateralValue, FasteningError> {
    let reach = reach(nail, joint)?;
    let side_strength = joint.side.bearing_strength()?;
    let main_strength = joint.main.wood.bearing_strength()?;
    let bending_yield = bending_yield_strength(nail.diameter(), NailSteel::LowCarbon)?;
    let shear = SingleShear {
        diameter: nail.diameter(),
        bending_yield: bending_yield.value,
        main: DowelBearing { length: reach.penetration, strength: main_strength.value },
        side: DowelBearing { length: reach.side_bearing, strength: side_strength.value },
    };
    let Yielding { shear, limits, reference, short_penetration } = smaller_value(shear, &reach)?;
    let factors = factors(joint);
    Ok(LateralValue {
        nail,
        reference,
        adjusted: adjusted(reference, &factors),
        mode: limits.governing().mode,
        cautions: cautions(nail, joint, &reach, short_penetration),
        reach,
        short_penetration,
        side_strength,
        main_strength,
        bending_yield,
        shear,
        limits,
        factors,
    })
}

/// The yield limits that give the smaller reference value, and that value.
struct Yielding {
    shear: SingleShear,
    limits: YieldLimits,
    reference: Force,
    short_penetration: ShortPenetration,
}

fn smaller_value(shear: SingleShear, reach: &Reach) -> Result<Yielding, OutsideLimits> {
    let of = |length: Length, share: f64, short_penetration| {
        let shear = SingleShear { main: DowelBearing { length, ..shear.main }, ..shear };
        let limits = yield_limits(&shear)?;
        let reference = limits.governing().value.value * share;
        Ok::<_, OutsideLimits>(Yielding { shear, limits, reference, short_penetration })
    };
    let share = penetration_factor(reach.penetration, shear.diameter)?;
    if share.value >= 1.0 {
        return of(reach.penetration, 1.0, ShortPenetration::Full);
    }
    let without_point = bearing_length_in_main_member(reach.penetration, shear.diameter)?;
    let of_share = of(reach.full.value, share.value, ShortPenetration::Share(share))?;
    let of_equations = of(without_point.value, 1.0, ShortPenetration::WithoutPoint(without_point))?;
    Ok(if of_equations.reference < of_share.reference { of_equations } else { of_share })
}

fn factors(joint: &Joint) -> Vec<Factor> {
    let conditions = joint.conditions;
    let wet = conditions.moisture.in_service;
    let mut factors = vec![
        Factor { symbol: "C_D", factor: chapter_11::load_duration_factor(conditions.duration) },
        Factor { symbol: "C_M", factor: chapter_11::wet_service_factor_lateral(conditions.moisture) },
        Factor { symbol: "C_t", factor: chapter_11::temperature_factor(conditions.temperature, wet) },
    ];
    match joint.driven {
        Driven::Face => {}
        Driven::EndGrain => factors.push(Factor { symbol: "C_eg", factor: end_grain_factor_lateral() }),
        Driven::Toe => factors.push(Factor { symbol: "C_tn", factor: toe_nail_factor_lateral() }),
    }
    factors
}

fn cautions(nail: Nail, joint: &Joint, reach: &Reach, short: ShortPenetration) -> Vec<Caution> {
    let comes_through = lateral_way(nail.length(), joint).past_side > reach.penetration;
    [
        (short != ShortPenetration::Full, Caution::ShortPenetration),
        (joint.layer_between > Length::ZERO, Caution::LayerBetween),
        (comes_through, Caution::PointComesThrough),
        (joint.driven == Driven::EndGrain, Caution::NoWithdrawalFromEndGrain),
        (joint.driven == Driven::Toe, Caution::ToeNail),
    ]
    .into_iter()
    .filter_map(|(holds, caution)| holds.then_some(caution))
    .collect()
}
