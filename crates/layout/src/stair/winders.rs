//! Winders: treads that turn about one pivot, and the least radius at the narrow side that works.

use measure::{Angle, Length, Ratio};

use super::check::{Check, Edition, Subject};
use super::error::{StairError, size, thickness};

/// More winders than this in one turn are not worked.
const MOST: u8 = 12;

/// Winders of one turn, all of one angle; their nosings point at one pivot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Winders {
    /// How many treads turn.
    pub winders: u8,
    /// What they turn by together: 90 degrees for a quarter.
    pub turn: Angle,
    /// From the pivot to the clear edge of the narrow side.
    pub narrow_radius: Length,
    /// Clear width of the stair.
    pub width: Length,
    /// The code that they are held to.
    pub edition: Edition,
}

/// A nosing from above. The pivot is the origin; along is the direction of the first nosing from it, across square to that,
/// into the turn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WinderLine {
    /// Its angle from the first nosing.
    pub angle: Angle,
    /// At the narrow side: along and across.
    pub narrow: [Length; 2],
    /// At the walk line.
    pub walk: [Length; 2],
    /// At the wide side, where that is round.
    pub wide: [Length; 2],
}

/// Winders laid out.
#[derive(Clone, Debug, PartialEq)]
pub struct WindersAnswer {
    /// What one turns by.
    pub each: Angle,
    /// From the pivot to the walk line.
    pub walk_radius: Length,
    /// Depth at the walk line along the chord from nosing to nosing.
    pub chord: Length,
    /// Depth at the walk line square to one nosing, which is less: what the code is held to here, to be safe.
    pub at_walk_line: Check,
    /// Depth at the narrow end.
    pub narrow_end: Check,
    /// The least radius at the narrow side that meets both.
    pub least_radius: Length,
    /// The most winders in the same turn that meet both with the radius as it is; none where not even one does.
    pub most_that_work: Option<u8>,
    /// Its nosings, one more than winders.
    pub lines: Vec<WinderLine>,
}

impl WindersAnswer {
    /// Whether the code takes them.
    #[must_use]
    pub const fn holds(&self) -> bool {
        self.at_walk_line.holds() && self.narrow_end.holds()
    }
}

/// Lays out winders.
///
/// Source: geometry; IRC R311.7.4, R311.7.5.2.1: from memory but for how even they are to be.
///
/// # Errors
/// No winder or more than twelve, one that turns by 90 degrees or more, a turn over 180 degrees, a radius below nothing, a width
/// of nothing.
pub fn winders(given: &Winders) -> Result<WindersAnswer, StairError> {
    thickness("radius of the narrow side", given.narrow_radius)?;
    size("width of the stair", given.width)?;
    if !(given.turn > Angle::ZERO && given.turn <= Angle::from_degrees(180.0)) {
        return Err(StairError::WinderTurn);
    }
    let one = One::of(given, given.winders).ok_or(StairError::Winders { given: given.winders })?;
    let limits = given.edition.limits();
    let at = |count: &u8| One::of(given, *count).is_some_and(|one| one.least_radius(given) <= given.narrow_radius);
    Ok(WindersAnswer {
        each: one.each,
        walk_radius: one.walk_radius,
        chord: one.walk_radius * one.chord(),
        at_walk_line: Check::at_least(
            Subject::WinderAtWalkLine,
            one.walk_radius * one.each.sin(),
            limits.winder_at_walk_line,
        ),
        narrow_end: Check::at_least(
            Subject::WinderNarrowEnd,
            given.narrow_radius * one.chord(),
            limits.winder_anywhere,
        ),
        least_radius: one.least_radius(given),
        most_that_work: (1..=MOST).rev().find(at),
        lines: (0..=given.winders).map(|number| line(given, one.walk_radius, one.each * f64::from(number))).collect(),
    })
}

struct One {
    each: Angle,
    walk_radius: Length,
}

impl One {
    fn of(given: &Winders, count: u8) -> Option<Self> {
        let each = (1..=MOST).contains(&count).then(|| given.turn / f64::from(count))?;
        let walk_radius = given.narrow_radius + given.edition.limits().walk_line.value;
        (each < Angle::from_degrees(90.0)).then_some(Self { each, walk_radius })
    }

    /// Chord of a radius of one.
    fn chord(&self) -> Ratio {
        (self.each / 2.0).sin() * 2.0
    }

    fn least_radius(&self, given: &Winders) -> Length {
        let limits = given.edition.limits();
        let by_walk_line = limits.winder_at_walk_line.value / self.each.sin() - limits.walk_line.value;
        let by_narrow_end = limits.winder_anywhere.value / self.chord();
        by_walk_line.max(by_narrow_end)
    }
}

fn line(given: &Winders, walk_radius: Length, angle: Angle) -> WinderLine {
    let at = |radius: Length| [radius * angle.cos(), radius * angle.sin()];
    let wide = given.narrow_radius + given.width;
    WinderLine { angle, narrow: at(given.narrow_radius), walk: at(walk_radius), wide: at(wide) }
}
