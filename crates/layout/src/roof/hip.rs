//! A hip or a valley rafter: its lengths, what takes from them, how its top lies in the planes, and its seat.

use measure::Length;

use super::birdsmouth::BirdsmouthAnswer;
use super::corner::{Corner, Meeting};
use super::cut::Cut;
use super::error::{RoofError, not_negative, positive};
use super::hip_space::{self, HipSeat};
use super::plane::{Side, Sides};
use super::stick::{Stick, stock_length};
use super::wall_offset::{Bearing, WallOffset};

/// What a hip or valley meets at the top.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum HipHead {
    /// The centre lines alone: nothing is taken off.
    Lines,
    /// A ridge board or a beam that runs along the eave of one plane.
    Ridge {
        /// The plane whose eave it runs along.
        along: Side,
        /// Its thickness.
        thickness: Length,
    },
    /// The corner between two commons at the end of a ridge, one of each plane.
    BetweenCommons {
        /// Thickness of the commons.
        thickness: Length,
    },
    /// A longer valley that it meets square in plan: equal pitches at a square corner.
    LongValley {
        /// Its thickness.
        thickness: Length,
    },
    /// The face of a post that it meets square.
    KingPost {
        /// The post, across its flats.
        across_flats: Length,
    },
}

/// How the top of a hip or valley is brought into the planes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TopEdge {
    /// Left square. A hip is dropped, centred, by the larger of its two drops; a valley is set with its centre on the
    /// line.
    Square,
    /// Left square, dropped and moved sideways so that both corners touch. A valley is set as [`TopEdge::Square`].
    SquareAndSlid,
    /// Backed: ripped to both planes.
    Backed,
}

/// A hip or valley rafter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hip {
    /// The planes that it lies between.
    pub corner: Corner,
    /// Level run of the commons of plane A, from the outer face of the plate to the centre line of the ridge.
    pub run_a: Length,
    /// Overhangs, level; nothing for none.
    pub overhangs: Sides<Length>,
    /// How high the commons' top edges stand above their plates. They may be of another depth than the hip: its seat is
    /// level with theirs.
    pub above_plate: Sides<Length>,
    /// Thickness of the hip or valley.
    pub thickness: Length,
    /// Depth of its stock.
    pub depth: Length,
    /// What it meets.
    pub head: HipHead,
    /// How its top is shaped.
    pub top: TopEdge,
}

/// A hip or valley rafter, laid out. Lengths are from the plumb line over the outer face of the wall that it bears on.
#[derive(Clone, Debug, PartialEq)]
pub struct HipAnswer {
    /// Where it passes the walls.
    pub walls: WallOffset,
    /// Level run to the centre of what it meets.
    pub run: Length,
    /// Rise over it.
    pub rise: Length,
    /// Length of the line.
    pub line_length: Length,
    /// What is taken off at the top, level along the hip.
    pub shortening: Length,
    /// The same along the slope.
    pub shortening_along: Length,
    /// From the heel's plumb line to the cut at the top, on the middle of the top edge.
    pub actual: Length,
    /// Level run of the tail.
    pub tail_run: Length,
    /// Its length.
    pub tail: Length,
    /// Plumb cut.
    pub plumb_cut: Cut,
    /// Level cut.
    pub level_cut: Cut,
    /// How far it is lowered, plumb; below zero the stock of a backed valley stands so much above the line.
    pub drop: Length,
    /// How far it is moved toward side B, level.
    pub toward_b: Length,
    /// Depth of the bevels at the side faces, square to the edge; none where the top stays square.
    pub ripped: Option<Sides<Length>>,
    /// Plumb height of the middle of its top edge above the plate, at the heel.
    pub above_plate: Length,
    /// Its seat.
    pub seat: HipSeat,
    /// How far ahead of each side face a plate corner under the middle stands: cope the heel so much, or cut it on the
    /// middle.
    pub cope: Sides<Length>,
    /// Next length that is sold.
    pub stock: Length,
    /// The stick with its marks. Looking up, plane A is on the right of a hip and on the left of a valley.
    pub stick: Stick,
}

impl HipAnswer {
    /// The birdsmouth, where it has one.
    #[must_use]
    pub const fn birdsmouth(&self) -> Option<&BirdsmouthAnswer> {
        match &self.seat {
            HipSeat::Cut { birdsmouth, .. } => Some(birdsmouth),
            HipSeat::Above(_) => None,
        }
    }
}

/// Lays out a hip or valley rafter. The fascia is level all round.
///
/// Source: planes in space; what a ridge takes off is half of its slanted thickness.
///
/// # Errors
/// Sizes of nothing, and what it meets leaving nothing of it.
pub fn hip(given: &Hip) -> Result<HipAnswer, RoofError> {
    given.is_whole()?;
    let corner = &given.corner;
    let walls = corner.wall_offset(given.overhangs, given.above_plate);
    let bears_on = given.side_of(walls.bearing);
    let whole_run = corner.run(Side::A, given.run_a + given.overhangs.a);
    let tail_run = corner.run(bears_on, given.overhangs.of(bears_on));
    let run = whole_run - tail_run;
    let shortening = given.shortening();
    if shortening >= run {
        return Err(RoofError::NothingLeft { what: given.name(), run, taken: shortening });
    }
    let (drop, toward_b) = given.lowered();
    let above_plate = given.above_plate.of(bears_on) - drop;
    let placed = hip_space::place(given, (whole_run, tail_run), (drop, toward_b), above_plate)?;
    Ok(HipAnswer {
        walls,
        run,
        rise: corner.rise(run),
        line_length: corner.along(run),
        shortening,
        shortening_along: corner.along(shortening),
        actual: corner.along(run - shortening),
        tail_run,
        tail: corner.along(tail_run),
        plumb_cut: placed.plumb_cut,
        level_cut: placed.level_cut,
        drop,
        toward_b,
        ripped: (given.top == TopEdge::Backed).then(|| corner.backing_depth(given.thickness)),
        above_plate,
        seat: placed.seat,
        cope: Sides::each(|side| given.thickness / 2.0 / corner.plan_angle(side).tan()),
        stock: stock_length(placed.stick.length),
        stick: placed.stick,
    })
}

impl Hip {
    pub(super) const fn name(&self) -> &'static str {
        match self.corner.meeting() {
            Meeting::Hip => "hip",
            Meeting::Valley => "valley",
        }
    }

    /// What is taken off at the top, level along the hip or valley.
    #[must_use]
    pub fn shortening(&self) -> Length {
        let corner = &self.corner;
        match self.head {
            HipHead::Lines => Length::ZERO,
            HipHead::Ridge { along, thickness } => corner.ridge_shortening(along, thickness),
            HipHead::BetweenCommons { thickness } => {
                corner.jack_shortening(Side::A, thickness).max(corner.jack_shortening(Side::B, thickness))
            }
            HipHead::LongValley { thickness: across } | HipHead::KingPost { across_flats: across } => across / 2.0,
        }
    }

    fn lowered(&self) -> (Length, Length) {
        let drops = self.corner.drop(self.thickness);
        let larger = drops.a.max(drops.b);
        match (self.corner.meeting(), self.top) {
            (Meeting::Hip, TopEdge::Square) => (larger, Length::ZERO),
            (Meeting::Hip, TopEdge::SquareAndSlid) => {
                let slid = self.corner.drop_and_slide(self.thickness);
                (slid.drop, slid.toward_b)
            }
            (Meeting::Valley, TopEdge::Backed) => (-larger, Length::ZERO),
            _ => (Length::ZERO, Length::ZERO),
        }
    }

    const fn side_of(&self, bearing: Bearing) -> Side {
        match bearing {
            Bearing::Corner => Side::A,
            Bearing::Wall(side) => side,
        }
    }

    fn is_whole(&self) -> Result<(), RoofError> {
        positive("run of the commons", self.run_a)?;
        positive("thickness of the hip or valley", self.thickness)?;
        positive("depth of the hip or valley", self.depth)?;
        for side in Side::BOTH {
            not_negative("overhang", self.overhangs.of(side))?;
            positive("height above plate", self.above_plate.of(side))?;
        }
        match self.head {
            HipHead::Lines => Ok(()),
            HipHead::Ridge { thickness, .. }
            | HipHead::BetweenCommons { thickness }
            | HipHead::LongValley { thickness }
            | HipHead::KingPost { across_flats: thickness } => positive("thickness of what it meets", thickness),
        }
    }

    /// Height of the plate of the wall it bears on, above the point where the planes meet over the fascia corner.
    pub(super) fn plate(&self, tail_run: Length, above_plate: Length, drop: Length) -> Length {
        self.corner.rise(tail_run) - drop - above_plate
    }
}
