//! Wind on a stretch of wall, as components and cladding, at allowable-stress level.

use measure::{Area, AreaLoad, Ratio};
use standards::OutsideTable;
use standards::asce7_16::{
    chapter_2::{Combination, LoadCase},
    chapter_26::{DIRECTIONALITY_FACTOR, basic_wind_speed_is_mapped, velocity_pressure},
    chapter_27,
    chapter_30::{Toward, WallZone, at_least_minimum, design_pressure, low_rise, wall_pressure_coefficient},
};

use crate::site::SiteWind;

/// Wind pressure on a stretch of wall, with the steps to it. Pressures are at strength level but for the two results.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallPressure {
    /// Toward the house, at allowable-stress level.
    pub inward: AreaLoad,
    /// Away from the house, at allowable-stress level; written without a sign.
    pub outward: AreaLoad,
    /// Velocity pressure coefficient at mean roof height, `K_h`.
    pub k_h: Ratio,
    /// Directionality factor `K_d`.
    pub k_d: Ratio,
    /// Velocity pressure at mean roof height, `q_h`.
    pub q_h: AreaLoad,
    /// Part of the wall.
    pub zone: WallZone,
    /// Effective wind area.
    pub area: Area,
    /// External coefficient `GC_p` toward the house.
    pub gc_p_inward: Ratio,
    /// External coefficient `GC_p` away from the house; negative.
    pub gc_p_outward: Ratio,
    /// Internal coefficient `GC_pi`, of either sign.
    pub gc_pi: Ratio,
    /// Strength-level pressure toward the house, the least pressure counted.
    pub inward_strength: AreaLoad,
    /// Strength-level pressure away from the house, the least pressure counted; without a sign.
    pub outward_strength: AreaLoad,
    /// Share of the strength-level pressure that allowable-stress design takes.
    pub asd_factor: Ratio,
}

impl WallPressure {
    /// The larger of the two results, whichever way it acts.
    #[must_use]
    pub const fn governing(&self) -> AreaLoad {
        self.inward.max(self.outward)
    }
}

/// Wind pressure on a stretch of wall, both ways, at allowable-stress level (`0.6 W`).
///
/// Toward the house the inside sucks and away from it the inside pushes: both signs of `GC_pi` are run and the worse
/// one kept. Source: ASCE 7-16 Chapters 26 and 30, Part 1.
///
/// # Errors
/// A wind speed under 85 or over 200 mph, a mean roof height over 60 ft, or none.
pub fn wall_pressure(wind: &SiteWind, zone: WallZone, area: Area) -> Result<WallPressure, OutsideTable> {
    basic_wind_speed_is_mapped(wind.speed)?;
    low_rise(wind.mean_roof_height)?;
    let k_h = wind.velocity_pressure_coefficient(wind.mean_roof_height)?;
    let k_d = DIRECTIONALITY_FACTOR;
    let q_h = velocity_pressure(wind.speed, k_h, wind.topographic_factor, k_d, wind.ground_elevation_factor);
    let gc_p_inward = wall_pressure_coefficient(zone, Toward::Inside, area);
    let gc_p_outward = wall_pressure_coefficient(zone, Toward::Outside, area);
    let gc_pi = wind.enclosure.internal_pressure_coefficient();
    let inward_strength = at_least_minimum(design_pressure(q_h, gc_p_inward, -gc_pi));
    let outward_strength = at_least_minimum(design_pressure(q_h, gc_p_outward, gc_pi));
    let asd_factor = Combination::DeadWind.factor(LoadCase::Wind);
    Ok(WallPressure {
        inward: inward_strength * asd_factor,
        outward: outward_strength * asd_factor,
        k_h,
        k_d,
        q_h,
        zone,
        area,
        gc_p_inward,
        gc_p_outward,
        gc_pi,
        inward_strength,
        outward_strength,
        asd_factor,
    })
}

/// Wind on an outer wall as a part of the main frame, at strength level: the windward wall by the directional procedure, with
/// the inside sucking. It is what acts together with loads from above; no less than 16 psf.
///
/// Source: ASCE 7-16 27.3.1, Fig. 27.3-1; least load 27.1.5. At mean roof height, which is on the safe side below it.
///
/// # Errors
/// As [`wall_pressure`].
pub fn main_frame_wall_pressure(wind: &SiteWind) -> Result<AreaLoad, OutsideTable> {
    basic_wind_speed_is_mapped(wind.speed)?;
    low_rise(wind.mean_roof_height)?;
    let k_h = wind.velocity_pressure_coefficient(wind.mean_roof_height)?;
    let q_h = velocity_pressure(
        wind.speed,
        k_h,
        wind.topographic_factor,
        DIRECTIONALITY_FACTOR,
        wind.ground_elevation_factor,
    );
    let gc_pi = wind.enclosure.internal_pressure_coefficient();
    Ok(chapter_27::design_pressure(q_h, chapter_27::WINDWARD_WALL, q_h, -gc_pi).max(chapter_27::LEAST_ON_WALLS))
}

#[cfg(test)]
mod tests {
    use measure::{Length, Speed};
    use standards::asce7_16::chapter_26::Exposure;

    use super::*;
    use crate::site::SiteLoads;

    fn wind(mph: f64, exposure: Exposure, height: f64) -> SiteWind {
        SiteWind {
            speed: Speed::from_mph(mph),
            exposure,
            mean_roof_height: Length::from_feet(height),
            ..SiteLoads::assumed().wind
        }
    }

    fn pressure(wind: &SiteWind, zone: WallZone, square_feet: f64) -> WallPressure {
        wall_pressure(wind, zone, Area::from_square_feet(square_feet)).unwrap()
    }

    /// Not published: the house of the loads sheet, 140 mph, Exposure D, mean roof height 13.5 ft, worked apart from this
    /// code. Strength level, psf, to two places.
    #[test]
    fn a_wall_at_the_shore_by_area() {
        let house = wind(140.0, Exposure::D, 13.5);
        for (area, inward, field, corner) in [
            (10.0, 51.85, 56.24, 69.42),
            (20.0, 49.51, 53.91, 64.75),
            (27.0, 48.50, 52.89, 62.73),
            (50.0, 46.42, 50.82, 58.58),
            (100.0, 44.09, 48.48, 53.91),
            (500.0, 38.67, 43.06, 43.06),
        ] {
            let (of_field, of_corner) =
                (pressure(&house, WallZone::Field, area), pressure(&house, WallZone::Corner, area));
            for (found, expected) in [
                (of_field.inward_strength, inward),
                (of_corner.inward_strength, inward),
                (of_field.outward_strength, field),
                (of_corner.outward_strength, corner),
            ] {
                assert!((found.psf() - expected).abs() <= 0.005, "{area} sq ft: {} against {expected}", found.psf());
            }
            assert!((of_corner.outward.psf() - 0.6 * of_corner.outward_strength.psf()).abs() < 1e-12);
        }
        assert!((pressure(&house, WallZone::Field, 10.0).q_h.psf() - 43.939).abs() <= 0.0005);
    }

    /// Not published, from the same sheet: a stud at 16 in in the corner strip carries 50.2 plf at allowable-stress level.
    #[test]
    fn a_stud_in_the_corner_strip() {
        let line =
            pressure(&wind(140.0, Exposure::D, 13.5), WallZone::Corner, 27.0).governing() * Length::from_inches(16.0);
        assert!((line.plf() - 50.2).abs() <= 0.05, "{}", line.plf());
    }

    /// Source: IRC 2018 Table R301.2(2) prints no pressure under 10 psf: 0.6 x 16 = 9.6 psf.
    #[test]
    fn the_least_pressure_holds_in_a_light_wind() {
        let calm = pressure(&wind(85.0, Exposure::B, 15.0), WallZone::Field, 500.0);
        assert!((calm.inward.psf() - 9.6).abs() < 1e-9);
    }

    #[test]
    fn more_wind_or_more_open_ground_never_presses_less() {
        for zone in [WallZone::Field, WallZone::Corner] {
            for mph in [85.0, 110.0, 140.0, 199.0] {
                let at = |exposure, mph| pressure(&wind(mph, exposure, 25.0), zone, 20.0);
                let [b, c, d] = Exposure::ALL.map(|exposure| at(exposure, mph));
                assert!(b.inward <= c.inward && c.inward < d.inward && b.outward < c.outward && c.outward < d.outward);
                assert!(at(Exposure::C, mph + 1.0).outward > c.outward);
            }
        }
        let ratio = pressure(&wind(180.0, Exposure::D, 25.0), WallZone::Corner, 20.0).outward
            / pressure(&wind(90.0, Exposure::D, 25.0), WallZone::Corner, 20.0).outward;
        assert!((ratio - 4.0).abs() < 1e-9);
    }

    #[test]
    fn outside_the_procedure_it_says_who_decides() {
        for (refused, named) in [
            (wind(84.0, Exposure::C, 20.0), "code official"),
            (wind(201.0, Exposure::C, 20.0), "code official"),
            (wind(140.0, Exposure::C, 61.0), "engineer"),
            (wind(140.0, Exposure::C, 0.0), "Measure the mean roof height"),
        ] {
            let message =
                wall_pressure(&refused, WallZone::Field, Area::from_square_feet(20.0)).unwrap_err().to_string();
            assert!(message.contains(named), "{message}");
        }
    }
}
