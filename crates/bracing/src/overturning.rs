//! What holds the ends of stacked walls down, storey by storey.

use measure::{Force, Length, LineLoad, Moment};

use crate::segmented::OF_DEAD;

/// One storey of a stacked wall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Storey {
    /// Push that comes in at its top, allowable stress design.
    pub force: Force,
    /// From its floor to the floor or roof above: the depth of the floor is part of the arm.
    pub height: Length,
    /// Dead load that surely stands on it.
    pub dead: LineLoad,
}

/// Tension at the foot of each storey, from the top down: all pushes above it turn the wall, 0.6 of all dead load above
/// holds it. None or less: dead load holds it.
///
/// The walls stand above each other, `length` long with this arm between what presses and what holds.
///
/// Source: statics; combination 0.6D + 0.6W of ASCE 7-16 2.4.1.
#[must_use]
pub fn overturning(storeys: &[Storey], length: Length, arm: Length) -> Vec<Force> {
    let (mut push, mut turned, mut dead) = (Force::ZERO, Moment::ZERO, LineLoad::ZERO);
    let mut tensions = Vec::with_capacity(storeys.len());
    for storey in storeys {
        push += storey.force;
        turned += push * storey.height;
        dead += storey.dead;
        let held = dead * OF_DEAD * length * (length / 2.0);
        // How often a pound at the arm.
        tensions.push(Force::from_pounds((turned - held) / (Force::from_pounds(1.0) * arm)));
    }
    tensions
}
