//! What a wall line gathers along itself: where there is no wall, the plate carries the floor's push on to one.

use measure::{Force, Length, LineLoad};
use standards::{OutsideTable, Source, Status};

/// A piece of wall in a line, with its share of the push.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallPiece {
    /// Where it begins, from the line's left end.
    pub from: Length,
    /// Where it ends.
    pub to: Length,
    /// What it is given, as [`crate::check_segmented`] shares it out.
    pub share: Force,
}

/// The force in the collector at one place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CollectorPoint {
    /// Where, from the line's left end.
    pub at: Length,
    /// Push that was gathered from the left and not given to a wall yet; below zero, a wall gave more than was gathered. It
    /// pulls or presses, as the wind blows.
    pub force: Force,
}

/// Statics of a plate beside a floor.
const COLLECTOR: Source = Source::new("SDPWS 2015", "4.2 and 4.3, collectors", Status::FromMemory);

/// The force along a collector, at the line's ends and at both ends of each wall; straight between, and nothing at both ends
/// of the line.
///
/// The floor pushes evenly along the whole `length`: by what the walls are given together, over that length.
///
/// Source: statics, `∫ (v_wall − v_diaphragm)`.
///
/// # Errors
/// Where there is no wall, or walls reach past the line's ends, overlap or stand out of order.
pub fn collect(length: Length, walls: &[WallPiece]) -> Result<Vec<CollectorPoint>, OutsideTable> {
    let outside = |given: String| OutsideTable {
        source: COLLECTOR,
        given,
        covers: "walls from left to right within their line, none over another",
        next_step: "Give the walls of the line as they stand.",
    };
    if walls.is_empty() || length <= Length::ZERO {
        return Err(outside(format!("a line {} ft long with {} walls", length.feet(), walls.len())));
    }
    let push: LineLoad = walls.iter().map(|wall| wall.share).sum::<Force>() / length;
    let (mut at, mut given) = (Length::ZERO, Force::ZERO);
    let mut points = Vec::with_capacity(2 * walls.len() + 2);
    for wall in walls {
        if wall.from < at || wall.to <= wall.from || wall.to > length {
            return Err(outside(format!(
                "a wall from {} to {} ft in a line {} ft long",
                wall.from.feet(),
                wall.to.feet(),
                length.feet()
            )));
        }
        points.push(CollectorPoint { at: wall.from, force: push * wall.from - given });
        given += wall.share;
        points.push(CollectorPoint { at: wall.to, force: push * wall.to - given });
        at = wall.to;
    }
    points.insert(0, CollectorPoint { at: Length::ZERO, force: Force::ZERO });
    points.push(CollectorPoint { at: length, force: push * length - given });
    points.dedup_by(|next, last| next.at == last.at);
    Ok(points)
}
