//! Small sections of a house: what comes down on the header, as a picture beside the words.

use crate::scene::{Ink, Mark, Scene, Weight};

struct House {
    storeys_above: u8,
    roof: bool,
    centre_wall: bool,
    header: Place,
}

#[derive(PartialEq)]
enum Place {
    OuterWall,
    InnerWall,
    Gable,
}

const HALF: f64 = 60.0;
const STOREY: f64 = 44.0;
const RISE: f64 = 34.0;
const EAVE: f64 = 10.0;

/// The picture of a support, by the value that chooses it; none for a value it does not know.
pub(super) fn picture(support: &str, words: &str) -> Option<Scene> {
    let house = house(support)?;
    let floors = if house.header == Place::Gable { 0 } else { house.storeys_above };
    let top = if house.roof { -RISE - STOREY * f64::from(floors) } else { STOREY - STOREY * f64::from(floors) };
    let mut marks = Vec::new();
    walls(&mut marks, &house, floors);
    if house.roof {
        roof(&mut marks, floors, house.header == Place::Gable);
    }
    header(&mut marks, &house);
    Some(Scene {
        left: -HALF - EAVE - 6.0,
        top: top - 6.0,
        width: 2.0 * (HALF + EAVE + 6.0),
        height: STOREY - top + 12.0,
        marks,
        alt: format!("Section of a house: {words}."),
    })
}

fn house(support: &str) -> Option<House> {
    let (storeys_above, roof, centre_wall, header) = match support {
        "roof_ceiling" => (0, true, false, Place::OuterWall),
        "one_floor_center_bearing" => (1, true, true, Place::OuterWall),
        "one_floor_clear_span" => (1, true, false, Place::OuterWall),
        "two_floors_center_bearing" => (2, true, true, Place::OuterWall),
        "two_floors_clear_span" => (2, true, false, Place::OuterWall),
        "floor_only" => (1, false, false, Place::OuterWall),
        "interior_one_floor" => (1, false, true, Place::InnerWall),
        "interior_two_floors" => (2, false, true, Place::InnerWall),
        "gable_end" => (0, true, false, Place::Gable),
        _ => return None,
    };
    Some(House { storeys_above, roof, centre_wall, header })
}

fn line(from: (f64, f64), to: (f64, f64), weight: Weight) -> Mark {
    Mark::Line { from, to, weight, ink: Ink::Ink }
}

fn walls(marks: &mut Vec<Mark>, house: &House, floors: u8) {
    let top = -STOREY * f64::from(floors);
    // Without a roof the picture ends at the level of its uppermost floor.
    let wall_top = if house.roof { top } else { top + STOREY };
    for x in [-HALF, HALF] {
        marks.push(line((x, STOREY), (x, wall_top), Weight::Seen));
    }
    if house.centre_wall {
        marks.push(line((0.0, STOREY), (0.0, -STOREY * f64::from(floors.saturating_sub(1))), Weight::Seen));
    }
    for floor in 0..floors {
        let level = -STOREY * f64::from(floor);
        marks.push(line((-HALF, level), (HALF, level), Weight::Cut));
    }
    if house.roof && house.header != Place::Gable {
        marks.push(line((-HALF, top), (HALF, top), Weight::Fine));
    }
    marks.push(line((-HALF - EAVE, STOREY), (HALF + EAVE, STOREY), Weight::Fine));
}

fn roof(marks: &mut Vec<Mark>, floors: u8, gable: bool) {
    let eave = -STOREY * f64::from(floors);
    let drop = EAVE * RISE / HALF;
    marks.push(line((-HALF - EAVE, eave + drop), (0.0, eave - RISE), Weight::Cut));
    marks.push(line((HALF + EAVE, eave + drop), (0.0, eave - RISE), Weight::Cut));
    if gable {
        for x in [-40.0, -20.0, 0.0, 20.0, 40.0_f64] {
            marks.push(line((x, 0.0), (x, -RISE * (1.0 - x.abs() / HALF)), Weight::Fine));
        }
    }
}

/// The header is the small black block at the head of the lowest wall.
fn header(marks: &mut Vec<Mark>, house: &House) {
    let (left, right) = match house.header {
        Place::OuterWall => (-HALF - 4.0, -HALF + 4.0),
        Place::InnerWall => (-4.0, 4.0),
        Place::Gable => (-18.0, 18.0),
    };
    marks.push(Mark::Shape {
        points: vec![(left, 4.0), (right, 4.0), (right, 13.0), (left, 13.0)],
        weight: Weight::Cut,
        ink: Ink::Chalk,
        washed: true,
        field: None,
    });
}
