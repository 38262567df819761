//! A hip or valley of two plies, each ripped to its own plane and joined on the plumb plane through the line.

use measure::{Angle, Length};

use super::corner::{Corner, Meeting};
use super::cut::Cut;
use super::error::{RoofError, positive};
use super::plane::{Side, Sides};

/// A hip or valley of two plies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TwoPly {
    /// The planes that it lies between.
    pub corner: Corner,
    /// Thickness of one ply.
    pub ply: Length,
    /// Depth that must be left at the thinner face of each ply: what a strength check is given, unless the plies are
    /// proved to work together.
    pub depth_left: Length,
}

/// One ply, ripped to the plane of its own side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ply {
    /// Tilt of the saw that rips it.
    pub rip: Angle,
    /// From one face to the other, square to the edge: the outer face stands higher in a valley and lower in a hip.
    pub ripped: Length,
    /// The same, plumb.
    pub ripped_plumb: Length,
    /// Depth of the stock it is ripped from.
    pub stock_depth: Length,
    /// Its cut against a ridge along the eave of its own side.
    pub cheek: Cut,
    /// From the cut at the joint to the cut at the outer face, level along the line, against that ridge.
    pub cheek_back: Length,
}

/// Both plies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TwoPlyAnswer {
    /// That of plane A and that of plane B.
    pub plies: Sides<Ply>,
    /// Both thicknesses: what jacks are shortened for.
    pub thickness: Length,
    /// With joints of one depth, how much higher the outer face of A stands than that of B; below zero, lower.
    pub outer_a_over_b: Length,
    /// The face that is left thinner.
    pub thinner: ThinnerFace,
}

/// The face of a ply that ripping leaves less deep.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ThinnerFace {
    /// The one at the joint: valleys.
    Joint,
    /// The outer one: hips.
    Outer,
}

/// Rips both plies of a hip or valley. Where both bear on one ridge, both take the cheek of that ridge's eave.
///
/// Source: geometry of two planes in the section square to the line.
///
/// # Errors
/// Sizes of nothing.
pub fn two_ply(given: &TwoPly) -> Result<TwoPlyAnswer, RoofError> {
    let TwoPly { corner, ply, depth_left } = *given;
    positive("thickness of a ply", ply)?;
    positive("depth that is left", depth_left)?;
    let plies = Sides::each(|side| {
        let rip = corner.backing(side);
        let ripped = ply * rip.tan();
        Ply {
            rip,
            ripped,
            ripped_plumb: ply * corner.fall(side),
            stock_depth: depth_left + ripped,
            cheek: corner.cheek(side),
            cheek_back: ply / corner.plan_angle(side).tan(),
        }
    });
    let (thinner, outer) = match corner.meeting() {
        Meeting::Hip => (ThinnerFace::Outer, plies.b.ripped - plies.a.ripped),
        Meeting::Valley => (ThinnerFace::Joint, plies.a.ripped - plies.b.ripped),
    };
    Ok(TwoPlyAnswer { plies, thickness: ply * 2.0, outer_a_over_b: outer, thinner })
}

impl TwoPlyAnswer {
    /// Stock that is deep enough for both.
    #[must_use]
    pub fn stock_depth(&self) -> Length {
        let [a, b] = Side::BOTH.map(|side| self.plies.of(side).stock_depth);
        a.max(b)
    }
}
