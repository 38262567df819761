//! Where a hip or valley passes the walls: over their corner, or beside it where pitches are unequal.

use measure::Length;

use super::corner::{Corner, Meeting};
use super::plane::{Side, Sides, rise};

/// What a hip or valley bears on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bearing {
    /// The corner of the walls.
    Corner,
    /// The wall under one plane, beside the corner.
    Wall(Side),
}

/// Where a hip or valley passes the walls when the fascia is level all round, and the two ways to bring it over the
/// corner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallOffset {
    /// Along each wall line from the corner to where the line passes over it. Above zero is on the wall for a hip and
    /// off it for a valley, whose walls run the other way.
    pub on: Sides<Length>,
    /// What it bears on.
    pub bearing: Bearing,
    /// How much higher the plate of A must be than that of B, so that the fascia is level.
    pub plate_a_over_b: Length,
    /// The overhangs that keep the line over the corner of level plates: A as it is and this one on B.
    pub overhang_b: Length,
    /// The other way: B as it is and this one on A.
    pub overhang_a: Length,
}

impl Corner {
    /// Where the line passes the walls, with these overhangs and these heights of the planes above their own plates.
    ///
    /// The planes meet over the fascia corner. So with one overhang all round a hip bears on the wall under the steeper
    /// roof, a valley on the wall under the flatter.
    #[must_use]
    pub fn wall_offset(&self, overhangs: Sides<Length>, above_plate: Sides<Length>) -> WallOffset {
        /// Offsets below the digits of a tape are none.
        const NONE: Length = Length::from_inches(1e-9);
        let (sin, cos) = (self.angle().sin(), self.angle().cos());
        let on = Sides::each(|side| {
            let (own, other) = (overhangs.of(side), overhangs.of(side.other()));
            own / self.plan_angle(side).tan() - (other + own * cos) / sin
        });
        let falls = |side| rise(overhangs.of(side), self.pitch(side));
        let level = above_plate.a - above_plate.b;
        let on_wall = match self.meeting() {
            Meeting::Hip => on.a,
            Meeting::Valley => -on.a,
        };
        let bearing = if on.a.abs() <= NONE {
            Bearing::Corner
        } else {
            Bearing::Wall(if on_wall > Length::ZERO { Side::A } else { Side::B })
        };
        WallOffset {
            on,
            bearing,
            plate_a_over_b: falls(Side::A) - falls(Side::B) - level,
            overhang_b: self.run_across(Side::A, overhangs.a),
            overhang_a: self.run_across(Side::B, overhangs.b),
        }
    }
}
