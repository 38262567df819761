//! The post at an end of a braced wall, pressed by the wind on the house.

use lumber::{Conditions, Member};
use measure::{Force, Length, Stress};
use standards::asce7_16::chapter_2::Combination;
use standards::nds_2018::chapter_15::PlyFastening;

use super::column::{Held, Strengths, Uprights, column};
use crate::check::Check;
use crate::limit::Limit;

/// An end post, as quantities.
#[derive(Clone, Debug, PartialEq)]
pub struct EndPost {
    /// The post: its plies nailed to each other, the panels nailed to it all along.
    pub member: Member,
    /// Moisture and treatment.
    pub conditions: Conditions,
    /// Its length.
    pub height: Length,
    /// Strength of the plate that it stands on, across the grain.
    pub plate: Stress,
    /// Dead load that comes down it.
    pub dead: Force,
    /// What presses on it: 0.6 of the wind, allowable stress design.
    pub pressed: Force,
}

/// Checks it as a column that its panels keep from bowing along the wall, and the plate under it. Combination D + 0.6W.
///
/// # Errors
/// A sentence, where this wood has no published value or a rule is left.
pub fn check_end_post(post: &EndPost) -> Result<Vec<Check<Limit>>, String> {
    let combination = Combination::DeadWind;
    let duration = loads::combination::load_duration(combination.shortest_case());
    let stands = Uprights {
        height: post.height,
        along_depth: Held::AtEnds,
        across_breadth: Held::Along,
        joined: Some(PlyFastening::Nailed),
    };
    let strengths = Strengths::of(&post.member, &post.conditions)?;
    let column = column(&post.member, strengths.at(duration), &stands)?;
    let stress = (post.dead + post.pressed) / post.member.section().area;
    let check = |limit, strength: Stress| Check::new(limit, (stress.psi(), strength.psi(), "psi"), combination);
    Ok(vec![check(Limit::Compression, column.fc_prime), check(Limit::PlateBearing, post.plate)])
}
