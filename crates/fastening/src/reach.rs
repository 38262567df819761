//! How far a nail goes into the pieces of a joint; a nail that holds too little is refused here.

use measure::{Denominator, Length, Rounding};
use standards::nds_2018::{
    Cited,
    chapter_12::{ToeNailGeometry, full_penetration, least_penetration, toe_nail_geometry},
};

use crate::{Driven, FasteningError, Joint, Nail, SideMaterial};

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

/// The way of a nail of one length through a joint.
pub(crate) struct Way {
    /// Length that bears in the side member.
    pub side_bearing: Length,
    /// Length past it that counts, the layer between taken off.
    pub past_side: Length,
    /// How much of that an inch of nail more would give.
    gained_per_inch: f64,
}

/// The way across the shank: what counts is square to the face of the main member.
pub(crate) fn lateral_way(nail_length: Length, joint: &Joint) -> Way {
    match joint.driven {
        Driven::Face | Driven::EndGrain => straight(nail_length, joint),
        Driven::Toe => {
            let toe = |length| toe_nail_geometry(length).value;
            let ToeNailGeometry { side_bearing, lateral_penetration, .. } = toe(nail_length);
            Way {
                side_bearing: side_bearing.min(joint.side.thickness),
                past_side: lateral_penetration - joint.layer_between,
                gained_per_inch: toe(Length::from_inches(1.0)).lateral_penetration.inches(),
            }
        }
    }
}

/// The way along the shank: what counts is measured along the nail, which crosses a layer at its slant.
pub(crate) fn withdrawal_way(nail_length: Length, joint: &Joint) -> Way {
    let lateral = lateral_way(nail_length, joint);
    match joint.driven {
        Driven::Face | Driven::EndGrain => lateral,
        Driven::Toe => {
            let toe = |length| toe_nail_geometry(length).value.withdrawal_penetration;
            let cosine_of_30 = 3.0_f64.sqrt() / 2.0;
            let past_side = toe(nail_length) - joint.layer_between / cosine_of_30;
            Way { past_side, gained_per_inch: toe(Length::from_inches(1.0)).inches(), ..lateral }
        }
    }
}

fn straight(nail_length: Length, joint: &Joint) -> Way {
    let through = joint.side.thickness;
    let past_side = nail_length - through - joint.layer_between;
    Way { side_bearing: through, past_side, gained_per_inch: 1.0 }
}

/// The geometry of the nail in the joint, refused where it holds too little.
pub(crate) fn reach(nail: Nail, joint: &Joint) -> Result<Reach, FasteningError> {
    check_joint(joint)?;
    let way = lateral_way(nail.length(), joint);
    Ok(Reach {
        side_bearing: way.side_bearing,
        penetration: penetration(nail, joint, &way)?,
        least: least_penetration(nail.diameter()),
        full: full_penetration(nail.diameter()),
    })
}

/// The length in the main member, at least 6 diameters.
pub(crate) fn penetration(nail: Nail, joint: &Joint, way: &Way) -> Result<Length, FasteningError> {
    let least = least_penetration(nail.diameter()).value;
    let penetration = joint.main.thickness.map_or(way.past_side, |thickness| way.past_side.min(thickness));
    // A limit in decimals of an inch is not exact in binary; the standard's own check has the same allowance.
    let enough = least.inches() * (1.0 - 1e-9);
    if way.past_side.inches() < enough {
        let missing = (least - way.past_side) / way.gained_per_inch;
        let needed = (nail.length() + missing).rounded(Denominator::Eighth, Rounding::Up);
        return Err(FasteningError::TooShort { reaches: way.past_side, least, needed });
    }
    if penetration.inches() < enough {
        return Err(FasteningError::MainMemberTooThin { thickness: penetration, least });
    }
    Ok(penetration)
}

/// Refuses what no joint is: thicknesses of nothing, and a slanted nail through steel.
pub(crate) fn check_joint(joint: &Joint) -> Result<(), FasteningError> {
    if joint.driven == Driven::Toe && matches!(joint.side.material, SideMaterial::Steel { .. }) {
        return Err(FasteningError::ToeNailThroughSteel);
    }
    let side = joint.side.thickness;
    check_thickness("Side member thickness", side, is_wood_thickness(side), OF_WOOD)?;
    if let Some(main) = joint.main.thickness {
        check_thickness("Main member thickness", main, is_wood_thickness(main), OF_WOOD)?;
    }
    let between = joint.layer_between;
    let taken = between == Length::ZERO || is_wood_thickness(between);
    check_thickness("Layer between, thickness", between, taken, "0 to 12 in")
}

const OF_WOOD: &str = "over 0, to 12 in,";

fn is_wood_thickness(thickness: Length) -> bool {
    thickness > Length::ZERO && thickness <= Length::from_inches(12.0)
}

fn check_thickness(
    what: &'static str,
    given: Length,
    taken: bool,
    accepted: &'static str,
) -> Result<(), FasteningError> {
    if taken { Ok(()) } else { Err(FasteningError::Thickness { what, given, accepted }) }
}
