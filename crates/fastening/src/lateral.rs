//! What one nail carries across its shank in a joint.

use measure::{Denominator, Force, Length, Rounding, Stress};
use standards::nds_2018::{
    Cited, OutsideLimits,
    appendix_i::{NailSteel, bending_yield_strength},
    chapter_11,
    chapter_12::{
        DowelBearing, SingleShear, YieldLimits, YieldMode, bearing_length_in_main_member, end_grain_factor_lateral,
        full_penetration, least_penetration, penetration_factor, toe_nail_factor_lateral, toe_nail_geometry,
        yield_limits,
    },
};

use crate::{Driven, FasteningError, Joint, Nail};

/// How far a nail goes into the members of a joint.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reach {
    /// Length that bears in the side member.
    pub side_bearing: Length,
    /// Penetration `p` into the main member, the point included.
    pub penetration: Length,
    /// The least that counts: 6 diameters.
    pub least: Cited<Length>,
    /// From here on the value is whole: 10 diameters.
    pub full: Cited<Length>,
}

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

/// An adjustment factor and its name: `C_D`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Factor {
    /// Its symbol.
    pub symbol: &'static str,
    /// Its value and source.
    pub factor: Cited<f64>,
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
/// was rolled.
///
/// Source: NDS 2018 §12.3.1, §12.5, Table 11.3.1; each number carries its own.
///
/// # Errors
/// When the nail reaches less than 6 diameters, a thickness is nothing or over 12 in, or the nail is thinner than
/// 0.099 in or 1/4 in and thicker.
///
/// ```
/// use fastening::{Joint, Nail, NailKind, SideMember, Wood, YieldMode, lateral_value};
/// use lumber::Species;
/// use measure::Length;
///
/// let spf = Wood::Lumber(Species::SprucePineFir);
/// let joint = Joint::face_nailed(SideMember { wood: spf, thickness: Length::from_inches(1.5) }, spf);
/// let nail = Nail::of_size(NailKind::Common, 16).ok_or("no 16d common")?;
/// let found = lateral_value(nail, &joint)?;
/// assert_eq!(found.mode, YieldMode::IV);
/// assert!((found.adjusted.pounds() - 120.0).abs() < 0.5);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn lateral_value(nail: Nail, joint: &Joint) -> Result<LateralValue, FasteningError> {
    let reach = reach(nail, joint)?;
    let side_strength = joint.side.wood.bearing_strength()?;
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
    let adjusted = factors.iter().fold(reference, |value, factor| value * factor.factor.value);
    Ok(LateralValue {
        nail,
        reference,
        adjusted,
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

/// The geometry of the nail in the joint, refused where it holds too little.
fn reach(nail: Nail, joint: &Joint) -> Result<Reach, FasteningError> {
    check_thicknesses(joint)?;
    let least = least_penetration(nail.diameter());
    let (side_bearing, into_main) = lengths(nail.length(), joint);
    let penetration = joint.main.thickness.map_or(into_main, |thickness| into_main.min(thickness));
    // A limit in decimals of an inch is not exact in binary; the standard's own check has the same allowance.
    let enough = least.value.inches() * (1.0 - 1e-9);
    if into_main.inches() < enough {
        return Err(FasteningError::TooShort { reaches: into_main, least: least.value, needed: needed(nail, joint) });
    }
    if penetration.inches() < enough {
        return Err(FasteningError::MainMemberTooThin { thickness: penetration, least: least.value });
    }
    Ok(Reach { side_bearing, penetration, least, full: full_penetration(nail.diameter()) })
}

/// Bearing length in the side member and length past it, the layer between taken off.
fn lengths(nail_length: Length, joint: &Joint) -> (Length, Length) {
    let through = joint.side.thickness;
    match joint.driven {
        Driven::Face | Driven::EndGrain => (through, nail_length - through - joint.layer_between),
        Driven::Toe => {
            let geometry = toe_nail_geometry(nail_length).value;
            (geometry.side_bearing.min(through), geometry.lateral_penetration - joint.layer_between)
        }
    }
}

/// The length, up to the next eighth of an inch, from which a nail of this diameter counts in the joint.
fn needed(nail: Nail, joint: &Joint) -> Length {
    let missing = least_penetration(nail.diameter()).value - lengths(nail.length(), joint).1;
    // A toe-nail gains cos 30° - 1/3 of each inch it is longer.
    let gained = match joint.driven {
        Driven::Face | Driven::EndGrain => 1.0,
        Driven::Toe => toe_nail_geometry(Length::from_inches(1.0)).value.lateral_penetration.inches(),
    };
    (nail.length() + missing / gained).rounded(Denominator::Eighth, Rounding::Up)
}

fn check_thicknesses(joint: &Joint) -> Result<(), FasteningError> {
    const THICKEST: Length = Length::from_inches(12.0);
    const WOOD: &str = "over 0, to 12 in,";
    let check = |what, given: Length, taken: bool, accepted| {
        if taken { Ok(()) } else { Err(FasteningError::Thickness { what, given, accepted }) }
    };
    let wood = |thickness: Length| thickness > Length::ZERO && thickness <= THICKEST;
    check("Side member thickness", joint.side.thickness, wood(joint.side.thickness), WOOD)?;
    if let Some(thickness) = joint.main.thickness {
        check("Main member thickness", thickness, wood(thickness), WOOD)?;
    }
    let between = joint.layer_between;
    let taken = between == Length::ZERO || wood(between);
    check("Layer between, thickness", between, taken, "0 to 12 in")
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
    let comes_through = lengths(nail.length(), joint).1 > reach.penetration;
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
