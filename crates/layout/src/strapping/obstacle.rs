//! Openings and beams: what they leave of a row, and the strips along their edges.

use measure::Length;

use super::error::{StrappingError, within};
use super::pieces::{Joints, Run, joined};
use super::set_out::{Row, SetOut};

/// A rectangle that strips do not cross: a stair, a hatch, a chimney, or a beam that stands below the joists.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Obstacle {
    /// From and to, across the joists, from the left wall.
    pub across: [Length; 2],
    /// From and to, along the joists, from the near wall.
    pub along: [Length; 2],
    /// Space that strips leave to it: nothing at an opening, what the chimney's rule asks at a chimney.
    pub clearance: Length,
}

/// A strip along an edge of an obstacle.
#[derive(Clone, Debug, PartialEq)]
pub struct Backing {
    /// Its centre line from the near wall.
    pub centre: Length,
    /// What it is made of: from the joist before the obstacle to the joist past it, where there are any.
    pub run: Run,
}

const CLEARANCE: [Length; 2] = [Length::ZERO, Length::from_inches(12.0)];
const SAME: Length = Length::from_inches(1e-9);

impl Obstacle {
    pub(super) fn check(&self, room: [Length; 2]) -> Result<(), StrappingError> {
        within("the space to an opening", self.clearance, CLEARANCE)?;
        for ([from, to], side) in [self.across, self.along].into_iter().zip(room) {
            within("the start of an opening", from, [Length::ZERO, side])?;
            within("the end of an opening", to, [from, side])?;
        }
        Ok(())
    }

    /// From and to with the space around it.
    fn kept_clear(&self, side: [Length; 2]) -> [Length; 2] {
        [side[0] - self.clearance, side[1] + self.clearance]
    }
}

/// What the obstacles leave of a run whose strip covers this band along the joists, from the left.
pub(super) fn clear([from, to]: [Length; 2], band: [Length; 2], obstacles: &[Obstacle]) -> Vec<[Length; 2]> {
    let meets = |obstacle: &&Obstacle| {
        let along = obstacle.kept_clear(obstacle.along);
        along[0] < band[1] - SAME && along[1] > band[0] + SAME
    };
    let mut blocked: Vec<[Length; 2]> =
        obstacles.iter().filter(meets).map(|obstacle| obstacle.kept_clear(obstacle.across)).collect();
    blocked.sort_unstable_by(|one, other| one[0].inches().total_cmp(&other[0].inches()));
    let (mut runs, mut start) = (Vec::new(), from);
    for [near, far] in blocked {
        if near > start + SAME {
            runs.push([start, near.min(to)]);
        }
        start = start.max(far);
    }
    if to > start + SAME {
        runs.push([start, to]);
    }
    runs
}

/// Strips along the two edges of each obstacle that run as the rows do, where no row lies within its own width of the edge.
/// The other two edges are the ends of rows. Where another obstacle is in the way, what it leaves is taken.
pub(super) fn backing(given: &SetOut, rows: &[Row]) -> Result<Vec<Backing>, StrappingError> {
    let width = given.strip.width;
    let mut found = Vec::new();
    for obstacle in &given.obstacles {
        let [near, far] = obstacle.kept_clear(obstacle.along);
        for (centre, inside) in [(near - width / 2.0, near >= width), (far + width / 2.0, given.along - far >= width)] {
            let served = rows.iter().any(|row| (row.centre - centre).abs() < (row.width + width) / 2.0 - SAME);
            if !inside || served {
                continue;
            }
            let run = between_joists(given, obstacle.kept_clear(obstacle.across));
            let band = [centre - width / 2.0, centre + width / 2.0];
            let joints = Joints { joists: &given.joists, stock: given.stock.length(), avoid: &[] };
            for part in clear(run, band, &given.obstacles) {
                found.push(Backing { centre, run: joined(part, &joints)? });
            }
        }
    }
    Ok(found)
}

/// From the outer face of the last joist before a stretch to that of the first one past it, within the room.
fn between_joists(given: &SetOut, [from, to]: [Length; 2]) -> [Length; 2] {
    let half = given.joist_thickness / 2.0;
    let ends = [given.clearance / 2.0, given.across - given.clearance / 2.0];
    let before = given.joists.iter().rev().find(|joist| **joist <= from + SAME).map_or(from, |joist| *joist - half);
    let past = given.joists.iter().find(|joist| **joist >= to - SAME).map_or(to, |joist| *joist + half);
    [before.max(ends[0]), past.min(ends[1])]
}
