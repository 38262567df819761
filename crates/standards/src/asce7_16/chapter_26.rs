//! Chapter 26: what all wind procedures share, from exposure to velocity pressure.

use measure::{AreaLoad, Length, Ratio, Speed, math};

use crate::{OutsideTable, Source, Status, asce7_16::DOCUMENT};

/// Eq. 26.10-1: velocity pressure.
pub const VELOCITY_PRESSURE: Source = Source::new(DOCUMENT, "Eq. 26.10-1", Status::LookedUp);
/// Table 26.10-1, note 1, with the constants of Table 26.11-1.
pub const VELOCITY_PRESSURE_COEFFICIENT: Source =
    Source::new(DOCUMENT, "Table 26.10-1 note 1, Table 26.11-1", Status::LookedUp);
/// Table 26.6-1: wind directionality factor.
pub const DIRECTIONALITY: Source = Source::new(DOCUMENT, "Table 26.6-1", Status::LookedUp);
/// Table 26.9-1: ground elevation factor.
pub const GROUND_ELEVATION: Source = Source::new(DOCUMENT, "Table 26.9-1", Status::LookedUp);
/// Table 26.13-1: internal pressure coefficients.
pub const INTERNAL_PRESSURE: Source = Source::new(DOCUMENT, "Table 26.13-1", Status::LookedUp);
/// Clause 26.5.1: the maps of basic wind speed. Their range is from memory.
pub const BASIC_WIND_SPEED: Source = Source::new(DOCUMENT, "26.5.1", Status::FromMemory);

/// Wind directionality factor `K_d` of buildings, main frame and cladding. Valid only with the combinations of
/// Chapter 2.
pub const DIRECTIONALITY_FACTOR: Ratio = 0.85;

/// The ground upwind, as the wind meets it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Exposure {
    /// Town, suburb or wood.
    B,
    /// Open country with scattered obstructions.
    C,
    /// Flat and bare ground, or water. Open water counts also on a hurricane coast.
    D,
}

/// Constants of the wind's profile over a kind of ground (Table 26.11-1).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TerrainConstants {
    /// Power-law exponent `alpha`.
    pub power: Ratio,
    /// Height `z_g` above which the ground no longer slows the wind.
    pub gradient_height: Length,
}

impl Exposure {
    /// Every exposure, from sheltered to open.
    pub const ALL: [Self; 3] = [Self::B, Self::C, Self::D];

    /// The letter.
    #[must_use]
    pub const fn letter(self) -> &'static str {
        match self {
            Self::B => "B",
            Self::C => "C",
            Self::D => "D",
        }
    }

    /// Constants of Table 26.11-1.
    #[must_use]
    pub const fn terrain_constants(self) -> TerrainConstants {
        let (power, feet) = match self {
            Self::B => (7.0, 1200.0),
            Self::C => (9.5, 900.0),
            Self::D => (11.5, 700.0),
        };
        TerrainConstants { power, gradient_height: Length::from_feet(feet) }
    }
}

/// Below this height the coefficient no longer falls.
const LEAST_HEIGHT: Length = Length::from_feet(15.0);

/// Velocity pressure coefficient `K_z = 2.01 (z / z_g)^(2 / alpha)`, with `z` not less than 15 ft.
///
/// At the mean roof height it is `K_h`. The printed table cuts some values (1.126 is printed 1.12); the equation is
/// used. The floor of 0.70 for Exposure B belongs to Chapter 28 alone and is not applied.
///
/// # Errors
/// When the height is not above the ground or is over `z_g`, where the equation ends.
pub fn velocity_pressure_coefficient(exposure: Exposure, height: Length) -> Result<Ratio, OutsideTable> {
    let TerrainConstants { power, gradient_height } = exposure.terrain_constants();
    if height <= Length::ZERO || height > gradient_height {
        return Err(OutsideTable {
            source: VELOCITY_PRESSURE_COEFFICIENT,
            given: format!("height {} ft above ground", height.feet()),
            covers: "heights above 0 and up to 700 ft or more",
            next_step: "Measure the mean roof height from the ground, halfway between eave and ridge.",
        });
    }
    Ok(2.01 * math::pow(height.max(LEAST_HEIGHT) / gradient_height, 2.0 / power))
}

/// Ground elevation factor `K_e` for the thinner air above sea level: `e^(-0.0000362 z)`, with `z` in feet. It may be
/// taken as 1.0 anywhere.
#[must_use]
pub fn ground_elevation_factor(elevation: Length) -> Ratio {
    math::pow(core::f64::consts::E, -0.000_036_2 * elevation.feet())
}

/// Velocity pressure `q_z = 0.00256 K_z K_zt K_d K_e V^2`, psf with `V` in mph, at strength level.
#[must_use]
pub fn velocity_pressure(speed: Speed, k_z: Ratio, k_zt: Ratio, k_d: Ratio, k_e: Ratio) -> AreaLoad {
    let mph = speed.mph();
    AreaLoad::from_psf(0.002_56 * k_z * k_zt * k_d * k_e * mph * mph)
}

/// Slowest basic wind speed on the maps of this edition.
pub const SLOWEST: Speed = Speed::from_mph(85.0);
/// Fastest basic wind speed on the maps of this edition.
pub const FASTEST: Speed = Speed::from_mph(200.0);

/// Whether a basic wind speed is one that the maps can give. An allowable-stress speed taken for a basic speed falls
/// below the range; so does a gust in metres per second.
///
/// # Errors
/// When the speed is under 85 or over 200 mph.
pub fn basic_wind_speed_is_mapped(speed: Speed) -> Result<(), OutsideTable> {
    if (SLOWEST..=FASTEST).contains(&speed) {
        return Ok(());
    }
    Err(OutsideTable {
        source: BASIC_WIND_SPEED,
        given: format!("wind speed {} mph", speed.mph()),
        covers: "basic (ultimate) wind speeds from 85 to 200 mph",
        next_step: "Use the ultimate speed on the drawings; the code official decides which speed the site has.",
    })
}

/// How much of the envelope is open, for the pressure inside.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Enclosure {
    /// Small openings only; glazing that can break in a debris region counts as open.
    Enclosed,
    /// The wall that the wind presses on is much more open than the rest.
    PartiallyEnclosed,
    /// None of the others.
    PartiallyOpen,
    /// Every wall at least 80 per cent open.
    Open,
}

impl Enclosure {
    /// Internal pressure coefficient `GC_pi` of Table 26.13-1; it acts both outward and inward, so it is used with
    /// either sign.
    #[must_use]
    pub const fn internal_pressure_coefficient(self) -> Ratio {
        match self {
            Self::Enclosed | Self::PartiallyOpen => 0.18,
            Self::PartiallyEnclosed => 0.55,
            Self::Open => 0.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Table 26.10-1 as printed. Looked up: B 15; C 15 to 40 and 60; D 15. The rest from memory.
    const PRINTED: [(f64, [&str; 3]); 7] = [
        (15.0, ["0.57", "0.85", "1.03"]),
        (20.0, ["0.62", "0.90", "1.08"]),
        (25.0, ["0.66", "0.94", "1.12"]),
        (30.0, ["0.70", "0.98", "1.16"]),
        (40.0, ["0.76", "1.04", "1.22"]),
        (50.0, ["0.81", "1.09", "1.27"]),
        (60.0, ["0.85", "1.13", "1.31"]),
    ];

    fn k_z(exposure: Exposure, feet: f64) -> f64 {
        velocity_pressure_coefficient(exposure, Length::from_feet(feet)).unwrap()
    }

    /// Source: ASCE 7-16 Table 26.10-1. The print rounds some cells and cuts others, so it lies at most half a unit of
    /// its last digit above the equation and less than one unit below it.
    #[test]
    fn coefficients_as_printed() {
        for (feet, row) in PRINTED {
            for (exposure, text) in Exposure::ALL.into_iter().zip(row) {
                let above_print = k_z(exposure, feet) - text.parse::<f64>().unwrap();
                assert!((-0.005..0.01).contains(&above_print), "{exposure:?} {feet} ft: {above_print}");
            }
        }
    }

    #[test]
    fn the_coefficient_is_level_to_15_ft_and_then_rises() {
        for exposure in Exposure::ALL {
            assert!((k_z(exposure, 3.0) - k_z(exposure, 15.0)).abs() < 1e-15);
            assert!((15..60).all(|feet| k_z(exposure, f64::from(feet)) < k_z(exposure, f64::from(feet) + 1.0)));
        }
        for feet in [10.0, 25.0, 60.0] {
            assert!(k_z(Exposure::B, feet) < k_z(Exposure::C, feet));
            assert!(k_z(Exposure::C, feet) < k_z(Exposure::D, feet));
        }
        assert!(velocity_pressure_coefficient(Exposure::B, Length::ZERO).is_err());
        assert!(velocity_pressure_coefficient(Exposure::D, Length::from_feet(701.0)).is_err());
    }

    /// Source: a university's homework solution on wind loads (ASCE 7-10, 115 mph, Exposure C): q printed at five
    /// heights with the table's own coefficients.
    #[test]
    fn published_velocity_pressures() {
        for (k_z, printed) in [(0.85, 24.46), (0.90, 25.90), (0.94, 27.05), (0.98, 28.20), (1.04, 29.93)] {
            let q = velocity_pressure(Speed::from_mph(115.0), k_z, 1.0, DIRECTIONALITY_FACTOR, 1.0).psf();
            assert!((q - printed).abs() <= 0.005, "{q} against {printed}");
        }
    }

    /// Source: ASCE Press guide to 7-16, chapter 8: 105 mph, Exposure B, mean roof height 12.1 ft, Kh 0.57 for cladding
    /// too (no floor of 0.70).
    #[test]
    fn the_guide_house_has_no_floor_of_070() {
        let k_h = k_z(Exposure::B, 12.1);
        assert!((k_h - 0.57).abs() <= 0.005, "{k_h}");
    }

    /// Source: ASCE 7-16 Table 26.9-1, printed to two places. At 4000 ft the equation gives 0.8652 and the print 0.86:
    /// like Table 26.10-1 it cuts some cells.
    #[test]
    fn elevation_factors_as_printed() {
        let printed = [1.0, 0.96, 0.93, 0.90, 0.86, 0.83, 0.80];
        for (thousands, printed) in printed.into_iter().enumerate() {
            let found = ground_elevation_factor(Length::from_feet(1000.0 * thousands as f64));
            assert!((-0.005..0.01).contains(&(found - printed)), "{thousands} thousand feet: {found}");
        }
    }

    #[test]
    fn pressure_grows_with_the_square_of_the_speed() {
        let q = |mph| velocity_pressure(Speed::from_mph(mph), 1.0, 1.0, DIRECTIONALITY_FACTOR, 1.0);
        assert!((q(180.0) / q(90.0) - 4.0).abs() < 1e-12);
    }

    #[test]
    fn speeds_off_the_maps_are_refused() {
        for mph in [84.9, 200.1, 0.0] {
            assert!(basic_wind_speed_is_mapped(Speed::from_mph(mph)).is_err(), "{mph}");
        }
        for mph in [85.0, 140.0, 200.0] {
            assert!(basic_wind_speed_is_mapped(Speed::from_mph(mph)).is_ok(), "{mph}");
        }
        let message = basic_wind_speed_is_mapped(Speed::from_mph(42.0)).unwrap_err().to_string();
        assert!(message.contains("42 mph") && message.contains("85 to 200") && message.contains("code official"));
    }
}
