//! What one nail holds when it is pulled out along its shank.

use measure::{Force, Length, LineLoad};
use standards::nds_2018::{
    Cited, chapter_11,
    chapter_12::{
        NailShank, toe_nail_factor_withdrawal, toe_nail_wet_service_factor_withdrawal, withdrawal_per_length,
    },
};

use crate::{
    Caution, Driven, FasteningError, HoldsNoPull, Joint, Nail, Wood,
    factor::{Factor, adjusted},
    reach::{check_joint, penetration, withdrawal_way},
};

/// Shank of a nail, as it was sold.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum Shank {
    /// Smooth, bright or galvanized; also every deformed shank that is sold as neither of the two ring shanks below.
    #[default]
    Smooth,
    /// Smooth, stainless steel: it holds less than bright steel.
    SmoothStainless,
    /// Sold as roof sheathing ring shank (RSRS).
    RoofSheathingRing {
        /// How far the rings go up from the point: only rings hold as rings.
        ringed: Length,
    },
    /// Sold as post-frame ring shank.
    PostFrameRing {
        /// How far the rings go up from the point: only rings hold as rings.
        ringed: Length,
    },
}

impl Shank {
    /// The equation it has.
    const fn equation(self) -> NailShank {
        match self {
            Self::Smooth => NailShank::Smooth,
            Self::SmoothStainless => NailShank::SmoothStainless,
            Self::RoofSheathingRing { .. } | Self::PostFrameRing { .. } => NailShank::RingShank,
        }
    }

    /// How far its rings go; none of a smooth one.
    const fn ringed(self) -> Option<Length> {
        match self {
            Self::Smooth | Self::SmoothStainless => None,
            Self::RoofSheathingRing { ringed } | Self::PostFrameRing { ringed } => Some(ringed),
        }
    }
}

/// What one nail holds along its shank, and every number behind it.
#[derive(Clone, Debug, PartialEq)]
pub struct WithdrawalValue {
    /// The nail.
    pub nail: Nail,
    /// Its shank.
    pub shank: Shank,
    /// Specific gravity of the main member.
    pub specific_gravity: f64,
    /// Reference withdrawal value `W` per length.
    pub per_length: Cited<LineLoad>,
    /// Length `p` in the main member that counts, the point included; of a ring shank, its rings alone.
    pub penetration: Length,
    /// `W p`, no factor in it.
    pub reference: Force,
    /// Adjusted value `W' p`: `reference` times every factor.
    pub adjusted: Force,
    /// Every factor between the two, those of 1 as well.
    pub factors: Vec<Factor>,
    /// What the number does not say.
    pub cautions: Vec<Caution>,
}

/// The withdrawal design value of one nail from the side grain of lumber.
///
/// Takes the nail, its shank and the joint. A nail that reaches less than 6 diameters has no value, as across the shank:
/// the standard asks it of lateral loads, and here of both. The wet service factor does not apply to toe-nails. Of roof
/// sheathing ring shank nails in wood that changes its moisture nothing was read, and the factor of smooth nails is
/// used.
///
/// Source: NDS 2018 §12.2.3, §12.5.4, Table 11.3.1; each number carries its own. That only the ringed length counts is
/// from memory.
///
/// # Errors
/// When the nail is in end grain or in a wood panel, reaches less than 6 diameters, has rings longer than itself or none
/// of them in the main member, a thickness is nothing or over 12 in, or the nail is 1/4 in and thicker.
///
/// ```
/// use fastening::{Joint, Shank, SideMember, Wood, WoodPanel, read_nail, withdrawal_value};
/// use measure::Length;
///
/// // FEMA P-55 Volume II, Example 9.1, with the true penetration of 2.0625 in and no load duration.
/// let osb = SideMember::wood(Wood::Panel(WoodPanel::Osb), Length::from_inches(7.0 / 16.0));
/// let roof = Joint::face_nailed(osb, Wood::SpecificGravity(0.42));
/// let found = withdrawal_value(read_nail("8d common")?.nail, Shank::Smooth, &roof)?;
/// assert!((found.adjusted.pounds() * 1.6 - 68.2).abs() < 0.05);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn withdrawal_value(nail: Nail, shank: Shank, joint: &Joint) -> Result<WithdrawalValue, FasteningError> {
    if let Some(from) = holds_no_pull(joint) {
        return Err(FasteningError::NoWithdrawal(from));
    }
    check_joint(joint)?;
    let way = withdrawal_way(nail.length(), joint);
    let in_main = penetration(nail, joint, &way)?;
    let comes_through = way.past_side > in_main;
    let penetration = counted(nail, shank, in_main, way.past_side)?;
    let specific_gravity = joint.main.wood.specific_gravity();
    let per_length = withdrawal_per_length(specific_gravity, nail.diameter(), shank.equation())?;
    let reference = per_length.value * penetration;
    let factors = factors(shank, joint);
    let cautions = [(comes_through, Caution::PointComesThrough), (joint.driven == Driven::Toe, Caution::ToeNail)];
    Ok(WithdrawalValue {
        nail,
        shank,
        specific_gravity,
        per_length,
        penetration,
        reference,
        adjusted: adjusted(reference, &factors),
        factors,
        cautions: cautions.into_iter().filter_map(|(holds, caution)| holds.then_some(caution)).collect(),
    })
}

/// What the point is in, where that holds no nail that is pulled.
pub(crate) const fn holds_no_pull(joint: &Joint) -> Option<HoldsNoPull> {
    match (joint.driven, joint.main.wood) {
        (Driven::EndGrain, _) => Some(HoldsNoPull::EndGrain),
        (_, Wood::Panel(_)) => Some(HoldsNoPull::Panel),
        _ => None,
    }
}

/// The length in the main member that counts. What the point sticks out of it takes rings with it.
fn counted(nail: Nail, shank: Shank, in_main: Length, past_side: Length) -> Result<Length, FasteningError> {
    let Some(ringed) = shank.ringed() else { return Ok(in_main) };
    if ringed <= Length::ZERO || ringed > nail.length() {
        return Err(FasteningError::Rings { nail, given: ringed });
    }
    let sticks_out = past_side - in_main;
    if ringed <= sticks_out {
        return Err(FasteningError::RingsOutside { nail });
    }
    Ok(in_main.min(ringed - sticks_out))
}

fn factors(shank: Shank, joint: &Joint) -> Vec<Factor> {
    let conditions = joint.conditions;
    let wet = match (joint.driven, shank) {
        (Driven::Toe, _) => toe_nail_wet_service_factor_withdrawal(),
        (_, Shank::PostFrameRing { .. }) => chapter_11::wet_service_factor_post_frame(),
        _ => chapter_11::wet_service_factor_withdrawal(conditions.moisture),
    };
    let in_service = conditions.moisture.in_service;
    let mut factors = vec![
        Factor { symbol: "C_D", factor: chapter_11::load_duration_factor(conditions.duration) },
        Factor { symbol: "C_M", factor: wet },
        Factor { symbol: "C_t", factor: chapter_11::temperature_factor(conditions.temperature, in_service) },
    ];
    if joint.driven == Driven::Toe {
        factors.push(Factor { symbol: "C_tn", factor: toe_nail_factor_withdrawal() });
    }
    factors
}
