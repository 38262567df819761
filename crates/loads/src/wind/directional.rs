//! The main frame by the directional procedure, ASCE 7-16 Chapter 27 Part 1.

use measure::{AreaLoad, Length, Ratio};
use standards::OutsideTable;
use standards::asce7_16::chapter_27::{
    SIDE_WALL, STRIP_LEAST, WINDWARD_WALL, along_the_ridge, design_pressure, leeward_roof, leeward_wall, windward_roof,
    windward_steps,
};

use super::{Push, VelocityPressure, gather, least_push, roof_is_covered, velocity_pressure_at};
use crate::house::{House, WindDirection};
use crate::site::SiteWind;

/// A surface of the house.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Face {
    /// The windward wall, to this height.
    WindwardWall(Length),
    /// The leeward wall.
    LeewardWall,
    /// The side walls.
    SideWalls,
    /// The windward slope, with its suction.
    WindwardRoofSuction,
    /// The windward slope, with its push, or its least suction.
    WindwardRoofPush,
    /// The leeward slope.
    LeewardRoof,
    /// A strip of roof, from so far behind the windward edge.
    RoofStrip(Length, Option<Length>),
    /// Any strip with the least suction.
    RoofLeast,
}

/// Pressure on a surface.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FacePressure {
    /// The surface.
    pub face: Face,
    /// Its coefficient `C_p`.
    pub c_p: Ratio,
    /// The velocity pressure that goes with it.
    pub q: AreaLoad,
    /// With the inside pushing outward.
    pub inside_pushes: AreaLoad,
    /// With the inside sucking.
    pub inside_sucks: AreaLoad,
}

/// What the procedure gives for one direction.
#[derive(Clone, Debug, PartialEq)]
pub struct Directional {
    /// The direction.
    pub direction: WindDirection,
    /// At mean roof height.
    pub q_h: VelocityPressure,
    /// Height over the plan's length along the wind.
    pub height_to_length: Ratio,
    /// The plan's length along the wind over its breadth across it.
    pub length_to_breadth: Ratio,
    /// Surface by surface.
    pub faces: Vec<FacePressure>,
    /// The push.
    pub push: Push,
}

/// Pressures and push for a direction.
///
/// # Errors
/// A wind off the maps, a roof whose figures are not here, or one over 60 degrees.
pub fn directional(wind: &SiteWind, house: &House, direction: WindDirection) -> Result<Directional, OutsideTable> {
    roof_is_covered(house)?;
    let height = wind.mean_roof_height;
    let q_h = velocity_pressure_at(wind, height, 0.0)?;
    let (height_to_length, length_to_breadth) =
        (height / house.along(direction), house.along(direction) / house.across(direction));
    let gc_pi = wind.enclosure.internal_pressure_coefficient();
    let face = |face, c_p, q: AreaLoad| FacePressure {
        face,
        c_p,
        q,
        inside_pushes: design_pressure(q, c_p, q_h.pressure, gc_pi),
        inside_sucks: design_pressure(q, c_p, q_h.pressure, -gc_pi),
    };
    let mut faces = Vec::new();
    for top in windward_steps(house.eave_height.max(height)) {
        let q_z = velocity_pressure_at(wind, top, 0.0)?;
        faces.push(face(Face::WindwardWall(top), WINDWARD_WALL, q_z.pressure));
    }
    let lee = leeward_wall(length_to_breadth);
    faces.push(face(Face::LeewardWall, lee, q_h.pressure));
    faces.push(face(Face::SideWalls, SIDE_WALL, q_h.pressure));
    for (surface, c_p) in roof_coefficients(house, height, direction)? {
        faces.push(face(surface, c_p, q_h.pressure));
    }
    let push = push(wind, house, direction, q_h, &faces)?;
    Ok(Directional { direction, q_h, height_to_length, length_to_breadth, faces, push })
}

fn roof_coefficients(
    house: &House,
    height: Length,
    direction: WindDirection,
) -> Result<Vec<(Face, Ratio)>, OutsideTable> {
    const SQUARE: f64 = 10.0;
    let height_to_length = height / house.along(direction);
    let hipped = house.roof == crate::house::RoofKind::Hip;
    let slopes_face_it = direction == WindDirection::AcrossRidge || hipped;
    if slopes_face_it && house.angle().degrees() >= SQUARE {
        let windward = windward_roof(house.angle(), height_to_length)?;
        return Ok(vec![
            (Face::WindwardRoofSuction, windward.suction),
            (Face::WindwardRoofPush, windward.push),
            (Face::LeewardRoof, leeward_roof(house.angle(), height_to_length)?),
        ]);
    }
    let along = house.along(direction);
    let first = (height * 0.5).min(along) * house.across(direction);
    let strips =
        along_the_ridge(height_to_length, first).into_iter().filter(|strip| height * strip.from_heights < along);
    let strips = strips.map(|strip| {
        let to = strip.to_heights.map(|to| height * to).filter(|to| *to < along);
        (Face::RoofStrip(height * strip.from_heights, to), strip.coefficient)
    });
    Ok(strips.chain([(Face::RoofLeast, STRIP_LEAST)]).collect())
}

/// The inside pushes on both walls alike, so that it is not in the push.
fn push(
    wind: &SiteWind,
    house: &House,
    direction: WindDirection,
    q_h: VelocityPressure,
    faces: &[FacePressure],
) -> Result<Push, OutsideTable> {
    let c_p = |wanted: Face| faces.iter().find(|face| face.face == wanted).map(|face| face.c_p);
    let lee = design_pressure(q_h.pressure, c_p(Face::LeewardWall).unwrap_or_default(), AreaLoad::ZERO, 0.0);
    // A height that is not covered was refused above; the wall is no higher than that.
    let windward = |height: Length| {
        velocity_pressure_at(wind, height.max(Length::from_feet(1.0)), 0.0).map_or(q_h.pressure, |q_z| q_z.pressure)
    };
    let wall = |height: Length| design_pressure(windward(height), WINDWARD_WALL, AreaLoad::ZERO, 0.0) - lee;
    let over_the_eave = house.eave_height + house.rise() / 2.0;
    let gable = wall(over_the_eave) * house.gable_area(direction);
    let on_roof =
        |face| c_p(face).map_or(AreaLoad::ZERO, |c_p| design_pressure(q_h.pressure, c_p, AreaLoad::ZERO, 0.0));
    let roof = (on_roof(Face::WindwardRoofPush) - on_roof(Face::LeewardRoof)) * house.roof_projection(direction);
    // Where the roof would make the push smaller it is left out (27.4.1).
    let roof = roof.max(measure::Force::ZERO);
    Ok(gather(house, direction, wall, gable, roof, least_push(house, direction)))
}
