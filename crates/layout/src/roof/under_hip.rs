//! A beam or post under a hip or valley, away from the corner: how high it stands, and the notch over it.

use measure::Length;
use standards::irc_2021::r502_8;

use super::birdsmouth::{Birdsmouth, BirdsmouthAnswer, birdsmouth};
use super::corner::Corner;
use super::error::{RoofError, not_negative};

/// A hip or valley, and where along it something stands under it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UnderHip {
    /// The planes.
    pub corner: Corner,
    /// Depth of the hip or valley; of a ripped ply, at its thinner face.
    pub depth: Length,
    /// Plumb height of the middle of its top edge above the plate, at the heel.
    pub above_plate: Length,
    /// Level along it, from the heel to the near face of the beam or post.
    pub from_heel: Length,
    /// Level width of the seat there, from that face up the slope.
    pub seat: Length,
}

/// What stands under a hip or valley.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UnderHipAnswer {
    /// Bottom edge above the plate at the near face, before the notch.
    pub bottom: Length,
    /// Top of the beam or post above the plate.
    pub top: Length,
    /// The notch over it, held against the limit for the end of a member.
    pub notch: BirdsmouthAnswer,
    /// Whether it is within a sixth of the depth, the limit away from the ends. In the middle third of the span none
    /// may be.
    pub within_sixth: bool,
}

/// Finds the height of a beam or post under a hip or valley.
///
/// Source: geometry; limits as [`birdsmouth`], and R802.7.1 for the sixth.
///
/// # Errors
/// Sizes of nothing, and a distance below nothing.
pub fn under_hip(given: &UnderHip) -> Result<UnderHipAnswer, RoofError> {
    let UnderHip { corner, depth, above_plate, from_heel, seat } = *given;
    not_negative("distance from the heel", from_heel)?;
    let pitch = corner.rise_on_twelve();
    let notch = birdsmouth(&Birdsmouth { pitch, depth, seat, overhang: Length::ZERO })?;
    let bottom = above_plate + corner.rise(from_heel) - depth / corner.slope().cos();
    Ok(UnderHipAnswer {
        bottom,
        top: bottom + corner.rise(seat),
        within_sixth: notch.notch <= r502_8::notch_depth_limit(depth),
        notch,
    })
}
