//! Wind on a house: on its parts as cladding, on its main frame by two procedures, and what lifts the roof.
//!
//! Pressures are at strength level unless a name says `asd`; `0.6 W` brings them to allowable stress. A pressure is
//! positive toward the surface.

pub mod directional;
pub mod envelope;
pub mod roof;
pub mod uplift;

use measure::{AreaLoad, Force, Length, Ratio};
use standards::OutsideTable;
use standards::asce7_16::chapter_2::{Combination, LoadCase};
use standards::asce7_16::chapter_26::{DIRECTIONALITY_FACTOR, basic_wind_speed_is_mapped, velocity_pressure};
use standards::{Source, Status};

use crate::house::{House, RoofKind, WindDirection};
use crate::site::SiteWind;

/// The share of a strength-level wind that allowable-stress design takes.
#[must_use]
pub const fn asd_factor() -> Ratio {
    Combination::DeadWind.factor(LoadCase::Wind)
}

/// Velocity pressure at a height, with its coefficient.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct VelocityPressure {
    /// The height.
    pub height: Length,
    /// Velocity pressure coefficient `K_z`.
    pub coefficient: Ratio,
    /// Velocity pressure `q_z`.
    pub pressure: AreaLoad,
}

/// Velocity pressure at a height; `least` is the least coefficient.
///
/// # Errors
/// A wind speed off the maps, or a height that the equation does not cover.
pub fn velocity_pressure_at(wind: &SiteWind, height: Length, least: Ratio) -> Result<VelocityPressure, OutsideTable> {
    basic_wind_speed_is_mapped(wind.speed)?;
    let coefficient = wind.velocity_pressure_coefficient(height)?.max(least);
    let pressure = velocity_pressure(
        wind.speed,
        coefficient,
        wind.topographic_factor,
        DIRECTIONALITY_FACTOR,
        wind.ground_elevation_factor,
    );
    Ok(VelocityPressure { height, coefficient, pressure })
}

/// Whether the figures of the main frame cover a roof.
///
/// # Errors
/// A one-slope or a gambrel roof.
pub fn roof_is_covered(house: &House) -> Result<(), OutsideTable> {
    match house.roof {
        RoofKind::Gable | RoofKind::Hip | RoofKind::Flat => Ok(()),
        RoofKind::Shed | RoofKind::Gambrel => Err(OutsideTable {
            source: Source::new("ASCE 7-16", "Figs. 27.3-1, 28.3-1 and 30.3-2", Status::LookedUp),
            given: format!("a {} roof", house.roof.name()),
            covers: "flat, gable and hip roofs here",
            next_step: "An engineer works the wind on it. Walls are worked here all the same.",
        }),
    }
}

/// The wind's push at one level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LevelPush {
    /// Height of the level.
    pub height: Length,
    /// What comes in at this level.
    pub here: Force,
    /// All of it from here up: what the walls below this level must carry.
    pub shear_below: Force,
}

/// The wind's push on a house, level by level from the lowest, at strength level.
#[derive(Clone, Debug, PartialEq)]
pub struct Push {
    /// The direction.
    pub direction: WindDirection,
    /// Level by level.
    pub levels: Vec<LevelPush>,
    /// The half storey that goes straight to the foundation.
    pub to_foundation: Force,
    /// What the roof adds at the highest level; nothing where it would make the push smaller.
    pub from_roof: Force,
    /// The least push that the clause asks for, and whether it governs.
    pub least: Force,
    /// Whether the least push governs.
    pub least_governs: bool,
    /// All of it, the half storey at the foundation too.
    pub total: Force,
    /// Moment of it about the ground, foot-pounds.
    pub overturning: measure::Moment,
}

/// Gathers wall pressures into levels. `wall` gives the push on a wall per area at a height; `above_eave` what acts over
/// the eave, on gable triangles and on the roof.
fn gather(
    house: &House,
    direction: WindDirection,
    wall: impl Fn(Length) -> AreaLoad,
    gable: Force,
    from_roof: Force,
    least: Force,
) -> Push {
    let levels = house.levels();
    let breadth = house.across(direction);
    let storey = levels.first().copied().unwrap_or(house.eave_height);
    let between = |from: Length, to: Length| strip_force(&wall, breadth, from, to);
    let to_foundation = between(Length::ZERO, storey / 2.0);
    let mut pushes: Vec<LevelPush> = levels
        .iter()
        .map(|height| {
            let top = (*height + storey / 2.0).min(house.eave_height);
            let here = between(*height - storey / 2.0, top);
            LevelPush { height: *height, here, shear_below: Force::ZERO }
        })
        .collect();
    if let Some(roof) = pushes.last_mut() {
        roof.here = roof.here + gable + from_roof;
    }
    let total = pushes.iter().map(|push| push.here).fold(to_foundation, |sum, push| sum + push);
    let least_governs = least > total;
    let scale = if least_governs { least / total } else { 1.0 };
    let mut above = Force::ZERO;
    for push in pushes.iter_mut().rev() {
        push.here = push.here * scale;
        above += push.here;
        push.shear_below = above;
    }
    let overturning =
        pushes.iter().map(|push| push.here * push.height).fold(measure::Moment::ZERO, |sum, one| sum + one);
    Push {
        direction,
        levels: pushes,
        to_foundation: to_foundation * scale,
        from_roof: from_roof * scale,
        least,
        least_governs,
        total: total * scale,
        overturning,
    }
}

/// The push on a strip of wall, by steps of a foot or less: the pressure grows with height.
fn strip_force(wall: &impl Fn(Length) -> AreaLoad, breadth: Length, from: Length, to: Length) -> Force {
    const STEP: Length = Length::from_feet(1.0);
    let height = (to - from).max(Length::ZERO);
    let steps = (height / STEP).ceil().max(1.0);
    let step = height / steps;
    let mut sum = Force::ZERO;
    let mut at = 0.0;
    while at < steps {
        sum += wall(from + step * (at + 0.5)) * (step * breadth);
        at += 1.0;
    }
    sum
}

/// Least push of a direction: 16 psf on walls and 8 psf on roofs, on the upright projection.
fn least_push(house: &House, direction: WindDirection) -> Force {
    use standards::asce7_16::chapter_27::{LEAST_ON_ROOFS, LEAST_ON_WALLS};
    LEAST_ON_WALLS * house.wall_area(direction) + LEAST_ON_ROOFS * house.roof_projection(direction)
}
