//! An overlay (blind) valley: a roof that sits on the sheathing of a main roof, their eaves square to each other.

use measure::{Angle, Length, Slope};

use super::corner::{Corner, Meeting};
use super::cut::{Cut, Under};
use super::error::{RoofError, not_negative, positive};
use super::plane::{Side, Sides, rise};

/// A roof laid over a main roof.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Overlay {
    /// Pitch of the main roof.
    pub main: Slope,
    /// Pitch of the overlay.
    pub overlay: Slope,
    /// Half of the overlay's span.
    pub run: Length,
    /// Spacing of its rafters along its ridge.
    pub spacing: Length,
    /// Thickness of the flat sleepers under their feet; nothing where they stand on the sheathing.
    pub sleeper: Length,
}

/// An overlay roof, laid out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OverlayAnswer {
    /// How far its ridge runs into the main roof, level, from where its plate level meets it.
    pub reach: Length,
    /// The valley in plan, from the eave line of the overlay.
    pub valley_from_eave: Angle,
    /// Length of the valley along the main roof's plane.
    pub valley_length: Length,
    /// The foot of its jacks, on their side: a level cut, the blade tilted to the main roof.
    pub foot: Cut,
    /// The plumb cut at their ridge.
    pub head: Cut,
    /// From one jack to the next.
    pub common_difference: Length,
    /// Blade tilt that rips the upper edge of a sleeper into the overlay's plane.
    pub sleeper_rip: Angle,
    /// How far inside the valley line the sleeper's lower edge is snapped, in the plane of the main roof.
    pub sleeper_inset: Length,
    /// What a jack on a sleeper is shorter.
    pub sleeper_shortening: Length,
}

/// Lays out an overlay roof.
///
/// Source: planes in space; one worked sheet prints the sleeper's bevel of 9 and 12 in 12.
///
/// # Errors
/// Pitches that are no roof's, and sizes of nothing.
pub fn overlay(given: &Overlay) -> Result<OverlayAnswer, RoofError> {
    let Overlay { main, overlay, run, spacing, sleeper } = *given;
    let pitches = Sides { a: overlay, b: main };
    let corner = Corner::new(Meeting::Valley, pitches, Angle::from_degrees(90.0))?;
    positive("run of the overlay", run)?;
    positive("spacing", spacing)?;
    not_negative("thickness of the sleeper", sleeper)?;
    let (of_main, of_overlay) = (main.angle(), overlay.angle());
    let between = corner.backing(Side::A) + corner.backing(Side::B);
    let axis = corner.jack_axis(Side::A);
    let on_side = |plane| Cut::by_plane(Under::Side, axis, corner.eaves.a, plane);
    Ok(OverlayAnswer {
        reach: corner.run_across(Side::A, run),
        valley_from_eave: corner.plan_angle(Side::A),
        valley_length: corner.line_length(Side::A, run),
        foot: on_side(corner.normals.b),
        head: on_side(corner.inward.a),
        common_difference: rise(spacing, main) / of_overlay.sin(),
        sleeper_rip: Angle::from_degrees(90.0) - between,
        sleeper_inset: sleeper / between.tan(),
        sleeper_shortening: sleeper / (of_main.cos() * of_overlay.sin()),
    })
}
