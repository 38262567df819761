//! The main frame by the envelope procedure, ASCE 7-16 Chapter 28 Part 1.

use measure::{AreaLoad, Force, Length, Ratio};
use standards::OutsideTable;
use standards::asce7_16::chapter_26::Exposure;
use standards::asce7_16::chapter_28::{
    LEAST_K_H_IN_B, Surface, SurfaceCoefficients, end_width, load_case_a, load_case_b, low_rise,
};

use super::{Push, VelocityPressure, gather, least_push, roof_is_covered, velocity_pressure_at};
use crate::house::{House, WindDirection};
use crate::site::SiteWind;

/// What the procedure gives for one direction.
#[derive(Clone, Debug, PartialEq)]
pub struct Envelope {
    /// The direction.
    pub direction: WindDirection,
    /// At mean roof height.
    pub q_h: VelocityPressure,
    /// Width `a`; the end strip is twice as wide.
    pub end_width: Length,
    /// Push on the walls, windward and leeward together: away from the end, and in the end strip.
    pub walls: (AreaLoad, AreaLoad),
    /// Push on the roof, on the upright projection: away from the end, and in the end strip.
    pub roof: (AreaLoad, AreaLoad),
    /// The push.
    pub push: Push,
}

/// Velocity pressure of this procedure: in Exposure B under 30 ft its coefficient has a floor.
///
/// # Errors
/// A wind off the maps, a building that is not low, or a roof whose figure is not here.
pub fn velocity_pressure(wind: &SiteWind, house: &House) -> Result<VelocityPressure, OutsideTable> {
    roof_is_covered(house)?;
    low_rise(wind.mean_roof_height, house.least_dimension())?;
    let under_30 = wind.mean_roof_height < Length::from_feet(30.0);
    let least = if wind.exposure == Exposure::B && under_30 { LEAST_K_H_IN_B } else { 0.0 };
    velocity_pressure_at(wind, wind.mean_roof_height, least)
}

/// Push for a direction. The inside pushes on both walls alike, so that it is not in it.
///
/// # Errors
/// As [`velocity_pressure`].
pub fn envelope(wind: &SiteWind, house: &House, direction: WindDirection) -> Result<Envelope, OutsideTable> {
    let q_h = velocity_pressure(wind, house)?;
    let a = end_width(house.least_dimension(), wind.mean_roof_height);
    let (walls, roof) = match direction {
        WindDirection::AcrossRidge => {
            let of = |surface| load_case_a(surface, house.angle());
            (between(of(Surface::One), of(Surface::Four)), between(of(Surface::Two), of(Surface::Three)))
        }
        // A hip turned to the wind is its own load case A.
        WindDirection::AlongRidge if house.roof == crate::house::RoofKind::Hip => {
            let of = |surface| load_case_a(surface, house.angle());
            (between(of(Surface::One), of(Surface::Four)), between(of(Surface::Two), of(Surface::Three)))
        }
        WindDirection::AlongRidge => (between(load_case_b(Surface::Five), load_case_b(Surface::Six)), (0.0, 0.0)),
    };
    let pressure = |(interior, end): (Ratio, Ratio)| (q_h.pressure * interior, q_h.pressure * end);
    let (walls, roof) = (pressure(walls), pressure(roof));
    let push = push(house, direction, a, walls, roof);
    Ok(Envelope { direction, q_h, end_width: a, walls, roof, push })
}

fn between(windward: SurfaceCoefficients, leeward: SurfaceCoefficients) -> (Ratio, Ratio) {
    (windward.interior - leeward.interior, windward.end - leeward.end)
}

fn push(
    house: &House,
    direction: WindDirection,
    a: Length,
    walls: (AreaLoad, AreaLoad),
    roof: (AreaLoad, AreaLoad),
) -> Push {
    let breadth = house.across(direction);
    let strip = (a * 2.0).min(breadth);
    let share = strip / breadth;
    let mean = |(interior, end): (AreaLoad, AreaLoad)| interior * (1.0 - share) + end * share;
    let gable = gable_push(house, direction, strip, walls);
    let roof = (mean(roof) * house.roof_projection(direction)).max(Force::ZERO);
    gather(house, direction, |_| mean(walls), gable, roof, least_push(house, direction))
}

/// The gable's triangle: its corner in the end strip has the end's pressure.
fn gable_push(house: &House, direction: WindDirection, strip: Length, walls: (AreaLoad, AreaLoad)) -> Force {
    let whole = house.gable_area(direction);
    if whole <= measure::Area::ZERO {
        return Force::ZERO;
    }
    let in_strip = strip * (strip * (house.rise() / (house.width / 2.0))) * 0.5;
    walls.0 * (whole - in_strip) + walls.1 * in_strip
}
