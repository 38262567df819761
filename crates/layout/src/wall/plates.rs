//! Plates: where their joints fall, and what is left of the bottom plate at doors.

use measure::Length;
use standards::{Source, Status};

use super::studs::Standing;
use super::{NOISE, Notice, Part, Piece, Span, Wall};

/// Joints of the two top plates stand apart by [`JOINT_OFFSET`].
pub const PLATE_JOINTS: Source = Source::new("IRC 2021", "R602.3.2", Status::LookedUp);
/// The least offset of joints in the top plates. Some rules and good practice ask for 48 in.
pub const JOINT_OFFSET: Length = Length::from_inches(24.0);
/// No piece of a plate is left shorter than this where longer boards allow it. Source: common practice.
const SHORTEST_PLATE: Length = Length::from_feet(4.0);

/// A plate as it is cut and laid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlatePiece {
    /// Which plate.
    pub part: Part,
    /// From joint to joint; a lap runs below zero or past the wall's length.
    pub along: Span,
}

/// The plates with their joints on studs.
pub(super) fn plates(wall: &Wall, standing: &[Standing], notices: &mut Vec<Notice>) -> Vec<PlatePiece> {
    let studs: Vec<Length> =
        standing.iter().filter(|stood| stood.part.is_full_height()).map(|stood| stood.along.centre()).collect();
    let whole = Span::new(Length::ZERO, wall.length);
    let below = joints(whole, wall.plate_stock, &studs, &[]);
    let on_stud = |joint: &Length| studs.iter().any(|stud| (*stud - *joint).abs() < NOISE);
    notices.extend(below.iter().filter(|joint| !on_stud(joint)).map(|joint| Notice::PlateJoint { at: *joint }));
    let mut plates = cut(Part::BottomPlate, whole, &below);
    plates.extend(cut(Part::TopPlate, whole, &below));
    if wall.heights.top_plates == 2 {
        let lapped = Span::new(-wall.laps[0], wall.length + wall.laps[1]);
        plates.extend(cut(Part::VeryTopPlate, lapped, &joints(lapped, wall.plate_stock, &studs, &below)));
    }
    plates
}

fn cut(part: Part, whole: Span, joints: &[Length]) -> Vec<PlatePiece> {
    let ends: Vec<Length> = [whole.from].into_iter().chain(joints.iter().copied()).chain([whole.to]).collect();
    ends.windows(2).map(|pair| PlatePiece { part, along: Span::new(pair[0], pair[1]) }).collect()
}

/// Joints of a run cut from boards: each on the farthest stud that the board reaches and that is clear of the joints
/// below; where there is none, as far as it reaches.
pub(crate) fn joints(run: Span, stock: Length, studs: &[Length], below: &[Length]) -> Vec<Length> {
    let clear = |at: Length| below.iter().all(|joint| (*joint - at).abs() + NOISE >= JOINT_OFFSET);
    let (mut joints, mut from) = (Vec::new(), run.from);
    while run.to - from > stock + NOISE {
        let reach = from + stock;
        // A rest too short to lie still takes some of this board's length.
        let reach = if run.to - reach < SHORTEST_PLATE { reach.min(run.to - SHORTEST_PLATE) } else { reach };
        let on_stud =
            studs.iter().copied().filter(|stud| *stud > from + NOISE && *stud <= reach + NOISE && clear(*stud));
        let off_stud = || {
            let in_the_way = below.iter().find(|joint| (**joint - reach).abs() + NOISE < JOINT_OFFSET);
            in_the_way.map_or(reach, |joint| *joint - JOINT_OFFSET)
        };
        let at = on_stud.reduce(Length::max).unwrap_or_else(off_stud);
        // Boards of 6 ft and more reach past any joint's offset, so each joint is beyond the one before.
        if at <= from {
            break;
        }
        joints.push(at);
        from = at;
    }
    joints
}

/// The elevation of the plates, with the bottom plate cut out between the jacks of doors.
pub(super) fn as_they_stand(wall: &Wall, plates: &[PlatePiece]) -> Vec<Piece> {
    let (plate, top) = (wall.heights.plate, wall.heights.stud_top());
    let upright = |part: Part| match part {
        Part::BottomPlate => Span::new(Length::ZERO, plate),
        Part::TopPlate => Span::new(top, top + plate),
        _ => Span::new(top + plate, top + plate * 2.0),
    };
    let doors = || wall.openings.iter().filter(|opening| opening.sill.is_none()).map(|opening| opening.rough());
    let left = |laid: &PlatePiece| match laid.part {
        Part::BottomPlate => without(laid.along, doors()),
        _ => vec![laid.along],
    };
    let stand = |laid: &PlatePiece| {
        let part = laid.part;
        left(laid).into_iter().map(move |along| Piece::lying(part, along, upright(part)))
    };
    plates.iter().flat_map(stand).collect()
}

/// What is left of a span outside of others.
fn without(whole: Span, others: impl Iterator<Item = Span>) -> Vec<Span> {
    others.fold(vec![whole], |left, other| {
        let outside = |span: &Span| {
            let before = Span::new(span.from, span.to.min(other.from));
            let after = Span::new(span.from.max(other.to), span.to);
            [before, after]
        };
        let parts = left.iter().flat_map(outside);
        parts.filter(|part| part.width() > NOISE).collect()
    })
}
