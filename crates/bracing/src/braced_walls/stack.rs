//! What must be in order among walls: their number, their names, and which stands on which.

use super::{BracedWall, MOST};

/// The most walls that stand on each other.
pub(super) const STOREYS: usize = 3;

fn same(one: &str, other: &str) -> bool {
    one.trim().eq_ignore_ascii_case(other.trim())
}

/// The wall that stands on this one.
pub(super) fn above<'w>(walls: &'w [BracedWall], wall: &BracedWall) -> Option<&'w BracedWall> {
    let under = wall.under.as_deref()?;
    walls.iter().find(|other| same(&other.name, under))
}

/// What is wrong with the name or the stack of a wall, as a sentence.
pub(super) fn problem(walls: &[BracedWall], index: usize) -> Option<String> {
    let (wall, before) = (walls.get(index)?, walls.get(..index)?);
    let name = &wall.name;
    if index == MOST {
        return Some(format!("to {MOST} walls are taken."));
    }
    if before.iter().any(|other| same(&other.name, name)) {
        return Some(format!("{name} stands in two lines; each wall is taken once."));
    }
    let under = wall.under.as_deref()?;
    if same(under, name) {
        return Some(format!("{name} cannot stand under itself; the name of the wall on it is taken."));
    }
    let Some(upper) = above(walls, wall) else {
        return Some(format!("no wall is called {under}; the name of another line is taken after under."));
    };
    let twice = before.iter().find(|other| other.under.as_deref().is_some_and(|other| same(other, under)));
    if let Some(twice) = twice {
        return Some(format!("{under} stands on {} as well; a wall stands on one wall.", twice.name));
    }
    if wall.push < upper.push {
        return Some(format!(
            "the push on {name} is less than that on {under}, which stands on it; all of the push is taken, what comes from above as well."
        ));
    }
    storeys_problem(walls, wall)
}

/// Rings and stacks that are too high.
fn storeys_problem(walls: &[BracedWall], wall: &BracedWall) -> Option<String> {
    // In a ring there is no top: as many are looked at as there are.
    let upper = core::iter::successors(above(walls, wall), |upper| above(walls, upper)).take(walls.len());
    let (count, ring) =
        upper.fold((1, false), |(count, ring), upper| (count + 1, ring || same(&upper.name, &wall.name)));
    if ring {
        return Some(format!("{} stands on itself by way of others; leave out one under.", wall.name));
    }
    let problem =
        format!("more than {STOREYS} walls stand on each other; to {STOREYS} are worked. An engineer designs more.");
    (count > STOREYS).then_some(problem)
}
