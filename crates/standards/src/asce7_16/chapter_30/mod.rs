//! Chapter 30: components and cladding of low-rise buildings, Part 1. Walls are here, roofs in [`roofs`].

pub mod roofs;

use measure::{Area, AreaLoad, Length, Ratio, math};

use crate::{OutsideTable, Source, Status, asce7_16::DOCUMENT};

/// Fig. 30.3-1: external pressure coefficients of walls.
pub const WALL_COEFFICIENTS: Source = Source::new(DOCUMENT, "Fig. 30.3-1", Status::LookedUp);
/// Eq. 30.3-1: design pressure.
pub const DESIGN_PRESSURE: Source = Source::new(DOCUMENT, "Eq. 30.3-1", Status::LookedUp);
/// Clause 26.2: effective wind area.
pub const EFFECTIVE_WIND_AREA: Source = Source::new(DOCUMENT, "26.2", Status::LookedUp);
/// Clause 30.2.2: least design pressure.
pub const MINIMUM: Source = Source::new(DOCUMENT, "30.2.2", Status::FromMemory);
/// Clause 30.3: the height to which Part 1 reaches.
pub const LOW_RISE: Source = Source::new(DOCUMENT, "30.3", Status::LookedUp);

/// Design pressures are never less than this, in or out, at strength level.
pub const MINIMUM_PRESSURE: AreaLoad = AreaLoad::from_psf(16.0);

/// The tallest mean roof height that Part 1 covers.
pub const TALLEST: Length = Length::from_feet(60.0);

/// A part of a wall.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WallZone {
    /// Zone 4: away from the corners.
    Field,
    /// Zone 5: the strip beside a corner, where the suction is greatest.
    Corner,
}

impl WallZone {
    /// The figure's number for it.
    #[must_use]
    pub const fn number(self) -> u8 {
        match self {
            Self::Field => 4,
            Self::Corner => 5,
        }
    }
}

/// Which way the wind loads the outside face.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Toward {
    /// Pressure, toward the building: coefficients are positive.
    Inside,
    /// Suction, away from the building: coefficients are negative.
    Outside,
}

/// Areas between which the coefficients fall, in a straight line over the logarithm of the area.
const SMALL: Area = Area::from_square_feet(10.0);
const LARGE: Area = Area::from_square_feet(500.0);

/// External pressure coefficient `GC_p` of a wall (Fig. 30.3-1).
///
/// The reduction of one tenth that the figure allows on walls under roofs of 10 degrees or less is not taken.
#[must_use]
pub fn wall_pressure_coefficient(zone: WallZone, toward: Toward, effective_wind_area: Area) -> Ratio {
    let (small, large) = match (toward, zone) {
        (Toward::Inside, _) => (1.0, 0.7),
        (Toward::Outside, WallZone::Field) => (-1.1, -0.8),
        (Toward::Outside, WallZone::Corner) => (-1.4, -0.8),
    };
    let area = effective_wind_area.max(SMALL).min(LARGE);
    small + (large - small) * math::log10(area / SMALL) / math::log10(LARGE / SMALL)
}

/// Effective wind area: the span times the strip the member carries, the strip taken as no less than a third of the
/// span. The pressure still loads only the real strip.
#[must_use]
pub fn effective_wind_area(span: Length, strip: Length) -> Area {
    span * strip.max(span / 3.0)
}

/// Design pressure `p = q_h (GC_p - GC_pi)`, positive toward the building, before the least pressure of 30.2.2.
#[must_use]
pub fn design_pressure(q_h: AreaLoad, gc_p: Ratio, gc_pi: Ratio) -> AreaLoad {
    q_h * (gc_p - gc_pi)
}

/// A design pressure's size, with the least pressure of 30.2.2.
#[must_use]
pub fn at_least_minimum(pressure: AreaLoad) -> AreaLoad {
    pressure.abs().max(MINIMUM_PRESSURE)
}

/// Whether Part 1 covers a building of this mean roof height.
///
/// # Errors
/// When the height is over 60 ft.
pub fn low_rise(mean_roof_height: Length) -> Result<(), OutsideTable> {
    if mean_roof_height <= TALLEST {
        return Ok(());
    }
    Err(OutsideTable {
        source: LOW_RISE,
        given: format!("mean roof height {} ft", mean_roof_height.feet()),
        covers: "mean roof heights to 60 ft",
        next_step: "An engineer works the wind on a taller building.",
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn gc_p(zone: WallZone, toward: Toward, square_feet: f64) -> f64 {
        wall_pressure_coefficient(zone, toward, Area::from_square_feet(square_feet))
    }

    /// Source: ASCE 7-16 Fig. 30.3-1, the end points, and the equations that an open library prints for it: 1.1766 -
    /// 0.1766 log A; -1.2766 + 0.1766 log A; -1.7532 + 0.3532 log A. Four printed places over log A to 2.7 leave
    /// 0.00005 (1 + 2.7).
    #[test]
    fn wall_coefficients_as_printed() {
        use {Toward::*, WallZone::*};
        for (zone, toward, at_10, constant, slope, at_500) in [
            (Field, Inside, 1.0, 1.1766, -0.1766, 0.7),
            (Corner, Inside, 1.0, 1.1766, -0.1766, 0.7),
            (Field, Outside, -1.1, -1.2766, 0.1766, -0.8),
            (Corner, Outside, -1.4, -1.7532, 0.3532, -0.8),
        ] {
            for (area, end) in [(1.0, at_10), (10.0, at_10), (500.0, at_500), (900.0, at_500)] {
                assert!((gc_p(zone, toward, area) - end).abs() < 1e-12, "{zone:?} {toward:?} {area}");
            }
            for area in [11.0, 20.0, 27.0, 50.0, 100.0, 300.0, 499.0] {
                let printed = constant + slope * math::log10(area);
                assert!((gc_p(zone, toward, area) - printed).abs() < 0.000_19, "{zone:?} {toward:?} {area}");
            }
        }
    }

    #[test]
    fn a_larger_area_never_draws_more_pressure() {
        for zone in [WallZone::Field, WallZone::Corner] {
            for area in 1..600 {
                let (one, next) = (f64::from(area), f64::from(area + 1));
                assert!(gc_p(zone, Toward::Inside, next) <= gc_p(zone, Toward::Inside, one));
                assert!(gc_p(zone, Toward::Outside, next) >= gc_p(zone, Toward::Outside, one));
            }
        }
    }

    /// Source: the definition worked for a 9 ft stud at 16 in: 9 x 3 = 27 sq ft.
    #[test]
    fn a_stud_counts_a_third_of_its_span() {
        let stud = effective_wind_area(Length::from_feet(9.0), Length::from_inches(16.0));
        assert!((stud.square_feet() - 27.0).abs() < 1e-9);
        let wide = effective_wind_area(Length::from_feet(9.0), Length::from_feet(5.0));
        assert!((wide.square_feet() - 45.0).abs() < 1e-9);
    }

    #[test]
    fn the_least_pressure_holds_either_way() {
        assert!((at_least_minimum(AreaLoad::from_psf(-9.0)).psf() - 16.0).abs() < 1e-12);
        assert!((at_least_minimum(AreaLoad::from_psf(-31.0)).psf() - 31.0).abs() < 1e-12);
    }

    #[test]
    fn tall_buildings_are_refused() {
        assert!(low_rise(Length::from_feet(60.0)).is_ok());
        let message = low_rise(Length::from_feet(61.0)).unwrap_err().to_string();
        assert!(message.contains("61 ft") && message.contains("60 ft") && message.contains("engineer"), "{message}");
    }
}
