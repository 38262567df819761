//! Wind on parts of the roof, as cladding: ASCE 7-16 Chapter 30, with the harsher of it and the edition before.

use measure::{Area, AreaLoad, Length, Ratio};
use standards::asce7_16::chapter_28::end_width;
use standards::asce7_16::chapter_30::roofs::{Roof, RoofShape, RoofZone, cautious_roof_pressure_coefficient};
use standards::asce7_16::chapter_30::{Toward, at_least_minimum, design_pressure, low_rise};
use standards::{OutsideTable, Source};

use super::{VelocityPressure, asd_factor, roof_is_covered, velocity_pressure_at};
use crate::house::{House, RoofKind};
use crate::site::SiteWind;

/// Pressure on a part of the roof, both ways.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoofPressure {
    /// The part.
    pub zone: RoofZone,
    /// Whether it is its overhang, both faces together.
    pub overhang: bool,
    /// Effective wind area.
    pub area: Area,
    /// Coefficient toward the house.
    pub gc_p_inward: Ratio,
    /// Coefficient away from it; negative.
    pub gc_p_outward: Ratio,
    /// Internal coefficient, of either sign.
    pub gc_pi: Ratio,
    /// Toward the house, at strength level, the least pressure counted.
    pub inward_strength: AreaLoad,
    /// Away from the house, at strength level, the least pressure counted; without a sign.
    pub outward_strength: AreaLoad,
    /// Toward the house at allowable-stress level.
    pub inward_asd: AreaLoad,
    /// Away from the house at allowable-stress level; without a sign.
    pub outward_asd: AreaLoad,
    /// Which edition gave the suction.
    pub source: Source,
}

/// The roof as the figures know it.
///
/// # Errors
/// A one-slope or a gambrel roof.
pub fn roof_of(house: &House, mean_roof_height: Length) -> Result<Roof, OutsideTable> {
    roof_is_covered(house)?;
    let shape = if house.roof == RoofKind::Hip { RoofShape::Hip } else { RoofShape::Gable };
    let height_to_breadth = mean_roof_height / house.least_dimension();
    Ok(Roof { shape, angle: house.angle(), height_to_breadth })
}

/// Width `a` of the zones along edges.
#[must_use]
pub fn zone_width(house: &House, mean_roof_height: Length) -> Length {
    end_width(house.least_dimension(), mean_roof_height)
}

/// Pressure on every part of the roof for an effective wind area.
///
/// # Errors
/// A wind off the maps, a house over 60 ft, a roof over 45 degrees, or one whose figure is not here.
pub fn roof_pressures(
    wind: &SiteWind,
    house: &House,
    area: Area,
    overhang: bool,
) -> Result<(VelocityPressure, Vec<RoofPressure>), OutsideTable> {
    let roof = roof_of(house, wind.mean_roof_height)?;
    low_rise(wind.mean_roof_height)?;
    let q_h = velocity_pressure_at(wind, wind.mean_roof_height, 0.0)?;
    let mut pressures = Vec::new();
    for zone in roof.zones()? {
        if overhang && *zone == RoofZone::OnePrime {
            continue;
        }
        pressures.push(roof_pressure(wind, &roof, q_h, *zone, area, overhang)?);
    }
    Ok((q_h, pressures))
}

fn roof_pressure(
    wind: &SiteWind,
    roof: &Roof,
    q_h: VelocityPressure,
    zone: RoofZone,
    area: Area,
    overhang: bool,
) -> Result<RoofPressure, OutsideTable> {
    let of = |toward| cautious_roof_pressure_coefficient(roof, zone, toward, area, overhang);
    let (inward, outward) = (of(Toward::Inside)?, of(Toward::Outside)?);
    let gc_pi = wind.enclosure.internal_pressure_coefficient();
    let inward_strength = at_least_minimum(design_pressure(q_h.pressure, inward.gc_p, -gc_pi));
    let outward_strength = at_least_minimum(design_pressure(q_h.pressure, outward.gc_p, gc_pi));
    Ok(RoofPressure {
        zone,
        overhang,
        area,
        gc_p_inward: inward.gc_p,
        gc_p_outward: outward.gc_p,
        gc_pi,
        inward_strength,
        outward_strength,
        inward_asd: inward_strength * asd_factor(),
        outward_asd: outward_strength * asd_factor(),
        source: outward.source,
    })
}
