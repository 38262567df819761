//! A jack set in space: the stick with every mark where a plane meets it.

use measure::Length;

use super::common::Tail;
use super::corner::Meeting;
use super::jacks::Jacks;
use super::plane::{Side, ratio};
use super::space::{Plane, UP};
use super::stick::{Ends, Piece, Planes, Spot, Stick};

/// The jack at a place along its eave. The line passes over the wall line in the origin.
pub(super) fn stick(jacks: &Jacks, along_eave: Length, above_plate: Length) -> Option<Stick> {
    let Jacks { corner, side, common, .. } = jacks;
    let (inward, axis) = (corner.inward.of(*side), corner.jack_axis(*side));
    let slope = ratio(corner.pitch(*side));
    let over_plate = corner.eaves.of(*side).times(along_eave.inches()).plus(UP.times(above_plate.inches()));
    let top = |run: Length| over_plate.plus(inward.plus(UP.times(slope)).times(run.inches()));
    let piece = Piece::on_edge(over_plate, axis, common.thickness, common.depth);
    let line = face_of_line(jacks);
    let plumb_at = |run: Length| Plane::through(top(run), inward);
    let planes = |head, notches, tail| Planes { head: (head, Ends::Pointed), notches, tail: (tail, Ends::Pointed) };
    match corner.meeting() {
        Meeting::Hip => {
            let end = top(-common.overhang);
            let normal = if common.tail == Tail::Square { axis } else { inward };
            let notches = [(Spot::Heel, plumb_at(Length::ZERO)), (Spot::Seat, Plane { normal: UP, offset: 0.0 })];
            piece.stick(&planes(&[line], &notches, &[Plane::through(end, normal)]))
        }
        Meeting::Valley => {
            let ridge = plumb_at(common.run - common.ridge.shortening());
            piece.stick(&planes(&[ridge], &[], &[line]))
        }
    }
}

/// The side face of the hip or valley that the jacks of this plane meet.
fn face_of_line(jacks: &Jacks) -> Plane {
    let across = jacks.corner.across();
    let toward_b = match (jacks.corner.meeting(), jacks.side) {
        (Meeting::Hip, Side::B) | (Meeting::Valley, Side::A) => 1.0,
        (Meeting::Hip, Side::A) | (Meeting::Valley, Side::B) => -1.0,
    };
    Plane { normal: across, offset: toward_b * jacks.line_thickness.inches() / 2.0 }
}
