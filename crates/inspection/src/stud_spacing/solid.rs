//! Solid wood along a wall: studs that touch count as one piece.

use measure::Length;

/// Studs closer than this to each other count as touching.
const TOUCHING: Length = Length::from_inches(1.0 / 16.0);

/// A piece of solid wood, from and to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Solid {
    pub(super) from: Length,
    pub(super) to: Length,
}

/// The solid pieces along the wall. The centres ascend.
pub(super) fn solids(centres: &[Length], stud: Length) -> Vec<Solid> {
    let half = stud / 2.0;
    let mut solids: Vec<Solid> = Vec::new();
    for &centre in centres {
        let (from, to) = (centre - half, centre + half);
        match solids.last_mut() {
            Some(last) if from <= last.to + TOUCHING => last.to = last.to.max(to),
            _ => solids.push(Solid { from, to }),
        }
    }
    solids
}
