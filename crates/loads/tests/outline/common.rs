//! Parts and houses in short.

use loads::outline::{Along, EaveHeight, HouseOutline, Overhangs, Part, PartShape, PlanPoint, Roof, Storey, Walls};
use measure::{Angle, Length, Slope};

pub fn ft(value: f64) -> Length {
    Length::from_feet(value)
}

pub fn pitch(rise: f64) -> Slope {
    Slope::from_rise_in_twelve(rise)
}

pub fn storey(wall_height: f64) -> Storey {
    Storey { floor_depth: ft(0.0), wall_height: ft(wall_height) }
}

pub fn part(length: f64, width: f64, eave: f64, roof: Roof) -> Part {
    Part {
        at: PlanPoint::ORIGIN,
        length: ft(length),
        width: ft(width),
        storeys: vec![storey(eave.min(8.0))],
        eave: EaveHeight::Measured(ft(eave)),
        roof,
        overhangs: Overhangs::NONE,
    }
}

pub fn house(parts: Vec<Part>) -> HouseOutline {
    HouseOutline { parts, front_faces: Angle::from_degrees(180.0), walls: Walls::Closed, parapet: None }
}

pub fn gable(rise: f64) -> Roof {
    Roof::Gable { ridge: Along::Length, pitches: [pitch(rise); 2] }
}

#[track_caller]
pub fn same(found: f64, expected: f64, what: &str) {
    assert!((found - expected).abs() <= 1e-9 * expected.abs().max(1.0), "{what}: {found} against {expected}");
}

/// The house of the loads sheet: 28 ft across the ridge, 40 ft along it, eave 10 ft, 6 in 12.
pub fn sheet_house() -> PartShape {
    part(40.0, 28.0, 10.0, gable(6.0)).shape().unwrap()
}
