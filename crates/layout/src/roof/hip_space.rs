//! A hip or valley set in space: its seat, and the stick with every mark where a plane meets it.

use measure::Length;

use super::birdsmouth::{Birdsmouth, BirdsmouthAnswer, birdsmouth};
use super::corner::Meeting;
use super::cut::Cut;
use super::error::RoofError;
use super::hip::{Hip, HipHead};
use super::plane::{Side, Sides};
use super::space::{Plane, UP, Vector};
use super::stick::{Ends, Piece, Planes, Spot, Stick};

/// How a hip or valley sits on its plate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum HipSeat {
    /// Notched, level with the seats of the commons.
    Cut {
        /// Level width of the seat, along the hip.
        seat: Length,
        /// What the notch takes of the wood.
        birdsmouth: BirdsmouthAnswer,
    },
    /// Its bottom edge stands so far above the plate at the heel: block it up, or take deeper stock.
    Above(Length),
}

pub(super) struct Placed {
    pub(super) stick: Stick,
    pub(super) seat: HipSeat,
    pub(super) plumb_cut: Cut,
    pub(super) level_cut: Cut,
}

/// Sets it over the fascia corner: whole run and that of its tail, drop and slide, and its height above the plate.
pub(super) fn place(
    hip: &Hip,
    (whole_run, tail_run): (Length, Length),
    (drop, toward_b): (Length, Length),
    above_plate: Length,
) -> Result<Placed, RoofError> {
    let corner = &hip.corner;
    let level = corner.line.in_plan();
    let top = corner.across().times(toward_b.inches()).minus(UP.times(drop.inches()));
    let piece = Piece::on_edge(top, corner.line, hip.thickness, hip.depth);
    let heel = Plane::through(level.times(tail_run.inches()), level);
    let plate = Plane::through(UP.times(hip.plate(tail_run, above_plate, drop).inches()), UP);
    let seat = seat(hip, above_plate)?;
    let notches = match seat {
        HipSeat::Cut { .. } => vec![(Spot::Heel, heel), (Spot::Seat, plate)],
        HipSeat::Above(_) => vec![(Spot::Heel, heel)],
    };
    let head = head(hip, level.times(whole_run.inches()));
    let tail = Sides::each(|side| Plane { normal: corner.inward.of(side), offset: 0.0 });
    let tail_ends = match corner.meeting() {
        Meeting::Hip => Ends::Pointed,
        Meeting::Valley => Ends::Notched,
    };
    let stick =
        piece.stick(&Planes { head: (&head, Ends::Pointed), notches: &notches, tail: (&[tail.a, tail.b], tail_ends) });
    let none = RoofError::NothingLeft { what: hip.name(), run: whole_run, taken: hip.shortening() };
    Ok(Placed { stick: stick.ok_or(none)?, seat, plumb_cut: piece.cut(heel), level_cut: piece.cut(plate) })
}

fn head(hip: &Hip, peak: Vector) -> Vec<Plane> {
    let corner = &hip.corner;
    let short_of =
        |direction: Vector, by: Length| Plane::through(peak.minus(direction.times(by.inches() / 2.0)), direction);
    let level = corner.line.in_plan();
    match hip.head {
        HipHead::Lines => vec![short_of(level, Length::ZERO)],
        HipHead::Ridge { along, thickness } => vec![short_of(corner.inward.of(along), thickness)],
        HipHead::BetweenCommons { thickness } => {
            Side::BOTH.map(|side| short_of(corner.eaves.of(side), thickness)).to_vec()
        }
        HipHead::LongValley { thickness: across } | HipHead::KingPost { across_flats: across } => {
            vec![short_of(level, across)]
        }
    }
}

fn seat(hip: &Hip, above_plate: Length) -> Result<HipSeat, RoofError> {
    let slope = hip.corner.slope();
    let heel = hip.depth / slope.cos() - above_plate;
    if heel <= Length::ZERO {
        return Ok(HipSeat::Above(-heel));
    }
    let seat = heel / slope.tan();
    let overhang = hip.overhangs.a.max(hip.overhangs.b);
    let pitch = hip.corner.rise_on_twelve();
    let birdsmouth = birdsmouth(&Birdsmouth { pitch, depth: hip.depth, seat, overhang })?;
    Ok(HipSeat::Cut { seat, birdsmouth })
}
