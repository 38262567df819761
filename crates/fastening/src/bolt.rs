//! What one bolt carries across its shank: a sill on concrete, or wood on wood.

use measure::{Angle, Force, Length, Stress};
use standards::nds_2018::{
    Cited, chapter_11,
    chapter_12::{
        BoltYieldLimits, DowelBearing, SingleShear, YieldMode, bolt_bearing_strength, bolt_bending_yield_strength,
        bolt_yield_limits, concrete_bearing_strength,
    },
};

use crate::{
    BoltError, NailConditions, Wood,
    bolt_place::{BoltPlace, geometry},
    factor::{Factor, adjusted},
};

/// Table 12E is for this embedment and deeper.
const EMBEDMENT: Length = Length::from_inches(6.0);
const THICKEST: Length = Length::from_inches(12.0);

/// A piece of lumber on a bolt.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoltedWood {
    /// What it is made of: lumber, or a specific gravity. A panel has no value here.
    pub wood: Wood,
    /// Its thickness along the bolt.
    pub thickness: Length,
    /// Angle between the load and its grain: 0 along it, as of a sill in a shear wall; 90 across it.
    pub load_to_grain: Angle,
    /// Where the bolt stands in it; none where that is not known yet, and then whole distances are taken.
    pub place: Option<BoltPlace>,
}

/// What the other half of the bolt is in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BoltMain {
    /// Concrete of 2,500 psi and more, cast around the bolt.
    Concrete {
        /// How deep the bolt is in it.
        embedment: Length,
    },
    /// Lumber.
    Wood(BoltedWood),
}

/// One bolt in single shear.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoltJoint {
    /// Diameter of the bolt.
    pub diameter: Length,
    /// The thinner piece: the sill.
    pub side: BoltedWood,
    /// What the other half is in.
    pub main: BoltMain,
    /// Load, moisture and heat.
    pub conditions: NailConditions,
}

/// What the number alone does not say.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum BoltCaution {
    /// The edge of the concrete and the pull on the bolt are a check of their own, by the concrete's standard.
    Concrete,
    /// No distances were given: ends, edges and spacing are to be looked at.
    DistancesNotGiven,
    /// Under the whole distances: the value is reduced.
    Close,
}

/// What one bolt carries across its shank, and every number behind it.
#[derive(Clone, Debug, PartialEq)]
pub struct BoltValue {
    /// Reference lateral design value `Z`, no factor in it.
    pub reference: Force,
    /// Adjusted value `Z'`: `reference` times every factor.
    pub adjusted: Force,
    /// How the joint gives way first.
    pub mode: YieldMode,
    /// Every yield mode.
    pub limits: BoltYieldLimits,
    /// Dowel bearing strength of the side member, `F_es`.
    pub side_strength: Cited<Stress>,
    /// Dowel bearing strength of the main member, `F_em`.
    pub main_strength: Cited<Stress>,
    /// Every factor between `reference` and `adjusted`, those of 1 as well.
    pub factors: Vec<Factor>,
    /// What the number does not say.
    pub cautions: Vec<BoltCaution>,
}

/// The lateral design value of one bolt in single shear, with a washer under head and nut.
///
/// Bolts stand alone or in one row; the group action factor of a row of many in slender pieces is not here. A bolt in
/// concrete bears on 6 in of it, however deep it is.
///
/// Source: NDS 2018 §12.3.1, §12.5.1, Tables 11.3.1 and 12E; each number carries its own.
///
/// # Errors
/// When the bolt is under 1/4 or over 1 in, a piece is a panel or has a thickness of nothing or over 12 in, a bolt in
/// concrete is less than 6 in deep, or a distance is under the least one.
///
/// ```
/// use fastening::{BoltJoint, Wood, bolt_value};
/// use lumber::Species;
/// use measure::Length;
///
/// let fir = Wood::Lumber(Species::DouglasFirLarch);
/// let sill = BoltJoint::sill(Length::from_inches(0.625), fir, Length::from_inches(1.5), Length::from_inches(7.0));
/// // NDS 2018 Table 12E: 930 lb.
/// assert!((bolt_value(&sill)?.reference.pounds() - 930.0).abs() < 5.0);
/// # Ok::<(), fastening::BoltError>(())
/// ```
pub fn bolt_value(joint: &BoltJoint) -> Result<BoltValue, BoltError> {
    let (side, side_strength) = bearing(&joint.side, joint.diameter)?;
    let (main, main_strength, angle) = main_bearing(joint)?;
    let bending_yield = bolt_bending_yield_strength().value;
    let shear = SingleShear { diameter: joint.diameter, bending_yield, main, side };
    let limits = bolt_yield_limits(&shear, angle)?;
    let governing = limits.governing();
    let geometry = smallest_geometry(joint)?;
    let factors = factors(joint, geometry);
    let cautions = [
        (matches!(joint.main, BoltMain::Concrete { .. }), BoltCaution::Concrete),
        (joint.pieces().any(|piece| piece.place.is_none()), BoltCaution::DistancesNotGiven),
        (geometry.is_some_and(|factor| factor.value < 1.0), BoltCaution::Close),
    ];
    let reference = governing.value.value;
    Ok(BoltValue {
        reference,
        adjusted: adjusted(reference, &factors),
        mode: governing.mode,
        limits,
        side_strength,
        main_strength,
        factors,
        cautions: cautions.into_iter().filter_map(|(holds, caution)| holds.then_some(caution)).collect(),
    })
}

impl BoltJoint {
    /// A sill on concrete, loaded along its grain, under reference conditions and with whole distances. Change what
    /// differs with `BoltJoint { conditions: …, ..joint }`.
    #[must_use]
    pub const fn sill(diameter: Length, wood: Wood, thickness: Length, embedment: Length) -> Self {
        Self {
            diameter,
            side: BoltedWood { wood, thickness, load_to_grain: Angle::ZERO, place: None },
            main: BoltMain::Concrete { embedment },
            conditions: NailConditions::REFERENCE,
        }
    }

    /// The pieces of wood on the bolt.
    fn pieces(&self) -> impl Iterator<Item = &BoltedWood> {
        let main = match &self.main {
            BoltMain::Concrete { .. } => None,
            BoltMain::Wood(piece) => Some(piece),
        };
        core::iter::once(&self.side).chain(main)
    }
}

fn bearing(piece: &BoltedWood, diameter: Length) -> Result<(DowelBearing, Cited<Stress>), BoltError> {
    let BoltedWood { wood, thickness, load_to_grain, .. } = *piece;
    if matches!(wood, Wood::Panel(_)) {
        return Err(BoltError::Panel);
    }
    if thickness <= Length::ZERO || thickness > THICKEST {
        return Err(BoltError::Thickness { given: thickness });
    }
    let strength = bolt_bearing_strength(wood.specific_gravity(), diameter, load_to_grain)?;
    Ok((DowelBearing { length: thickness, strength: strength.value }, strength))
}

/// How the bolt bears on the main member, and the largest angle between load and grain in either.
fn main_bearing(joint: &BoltJoint) -> Result<(DowelBearing, Cited<Stress>, Angle), BoltError> {
    let of_side = joint.side.load_to_grain;
    match joint.main {
        BoltMain::Concrete { embedment } if embedment < EMBEDMENT => Err(BoltError::Embedment { given: embedment }),
        BoltMain::Concrete { .. } => {
            let strength = concrete_bearing_strength();
            Ok((DowelBearing { length: EMBEDMENT, strength: strength.value }, strength, of_side))
        }
        BoltMain::Wood(piece) => {
            let (bearing, strength) = bearing(&piece, joint.diameter)?;
            Ok((bearing, strength, of_side.max(piece.load_to_grain)))
        }
    }
}

/// The geometry factor of the piece in which the bolt stands closest; none where no distances were given.
fn smallest_geometry(joint: &BoltJoint) -> Result<Option<Cited<f64>>, BoltError> {
    let mut smallest: Option<Cited<f64>> = None;
    for piece in joint.pieces() {
        let Some(place) = piece.place else { continue };
        let factor = geometry(&place, joint.diameter, piece.load_to_grain)?;
        if smallest.is_none_or(|least| factor.value < least.value) {
            smallest = Some(factor);
        }
    }
    Ok(smallest)
}

fn factors(joint: &BoltJoint, geometry: Option<Cited<f64>>) -> Vec<Factor> {
    let conditions = joint.conditions;
    let in_service = conditions.moisture.in_service;
    let mut factors = vec![
        Factor { symbol: "C_D", factor: chapter_11::load_duration_factor(conditions.duration) },
        Factor { symbol: "C_M", factor: chapter_11::wet_service_factor_bolt(in_service) },
        Factor { symbol: "C_t", factor: chapter_11::temperature_factor(conditions.temperature, in_service) },
    ];
    factors.extend(geometry.map(|factor| Factor { symbol: "C_Δ", factor }));
    factors
}
