//! Snow on a roof, from snow on the ground. The balanced load only: no drift, no sliding, no unbalanced gable.

use measure::{AreaLoad, Ratio};
use standards::asce7_16::chapter_7;

/// Whether the roof is flatter than 15 degrees, where a least load holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LowSlope {
    /// Flatter than 15 degrees.
    Yes,
    /// 15 degrees or steeper.
    No,
    /// Not known: the least load is counted, to be safe.
    Unknown,
}

/// Which load set the snow on a roof.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RoofSnowBasis {
    /// The flat-roof load `p_f` from the ground.
    FlatRoof,
    /// The least load `p_m` of a low-slope roof.
    Minimum,
    /// A roof snow load that was given.
    Given,
}

/// Snow on a roof, on the level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoofSnow {
    /// The load to use.
    pub load: AreaLoad,
    /// Which one it is.
    pub basis: RoofSnowBasis,
    /// `p_f`; none when the roof's load was given.
    pub flat_roof: Option<AreaLoad>,
    /// `p_m`; none where it does not apply.
    pub minimum: Option<AreaLoad>,
}

/// Snow on a roof: the larger of `p_f = 0.7 C_e C_t I_s p_g` and, on a low slope, the least load `p_m`.
///
/// `C_s` is taken as 1: the pitch takes nothing off. Source: ASCE 7-16 7.3 and 7.3.4.
#[must_use]
pub fn roof_snow(
    ground: AreaLoad,
    exposure_factor: Ratio,
    thermal_factor: Ratio,
    importance_factor: Ratio,
    low_slope: LowSlope,
) -> RoofSnow {
    let flat = chapter_7::flat_roof_snow_load(exposure_factor, thermal_factor, importance_factor, ground);
    let minimum = (low_slope != LowSlope::No).then(|| chapter_7::minimum_snow_load(importance_factor, ground));
    let (load, basis) = match minimum {
        Some(least) if least > flat => (least, RoofSnowBasis::Minimum),
        _ => (flat, RoofSnowBasis::FlatRoof),
    };
    RoofSnow { load, basis, flat_roof: Some(flat), minimum }
}

/// Snow on a roof as the drawing gives it.
#[must_use]
pub const fn given_roof_snow(load: AreaLoad) -> RoofSnow {
    RoofSnow { load, basis: RoofSnowBasis::Given, flat_roof: None, minimum: None }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn snow(ground: f64, thermal: f64, low_slope: LowSlope) -> RoofSnow {
        roof_snow(AreaLoad::from_psf(ground), 1.0, thermal, 1.0, low_slope)
    }

    /// Source: Snow Loads guide to ASCE 7-10, Example 4-3: half in 12, p_f 25.2 governs over the 20 psf least load.
    #[test]
    fn the_flat_roof_load_governs_over_the_minimum() {
        let found = snow(30.0, 1.2, LowSlope::Yes);
        assert!((found.load.psf() - 25.2).abs() <= 0.05);
        assert_eq!(found.basis, RoofSnowBasis::FlatRoof);
        assert_eq!(found.minimum, Some(AreaLoad::from_psf(20.0)));
    }

    /// Source: field case of an enlarged door opening: 55 psf on the ground, 38.5 on the roof.
    #[test]
    fn ground_snow_is_not_roof_snow() {
        assert!((snow(55.0, 1.0, LowSlope::Unknown).load.psf() - 38.5).abs() <= 0.05);
    }

    #[test]
    fn the_minimum_governs_a_low_slope_with_little_snow() {
        for low_slope in [LowSlope::Yes, LowSlope::Unknown] {
            let found = snow(20.0, 1.0, low_slope);
            assert_eq!((found.load, found.basis), (AreaLoad::from_psf(20.0), RoofSnowBasis::Minimum));
        }
        let steep = snow(20.0, 1.0, LowSlope::No);
        assert!((steep.load.psf() - 14.0).abs() < 1e-9);
        assert_eq!((steep.basis, steep.minimum), (RoofSnowBasis::FlatRoof, None));
    }
}
