//! Chapter 4: live loads. Only the roof live load is here.

use measure::{Area, AreaLoad, Ratio, Slope};

use crate::{Source, Status, asce7_16::DOCUMENT};

/// Clause 4.8, Eq. 4.8-1: reduction of the roof live load.
pub const ROOF_LIVE: Source = Source::new(DOCUMENT, "4.8, Eq. 4.8-1", Status::LookedUp);

/// The roof live load before any reduction.
pub const ROOF_LIVE_LOAD: AreaLoad = AreaLoad::from_psf(20.0);
/// No reduction brings the roof live load below this.
pub const LEAST_ROOF_LIVE_LOAD: AreaLoad = AreaLoad::from_psf(12.0);

/// Factor `R_1` for the area that the member carries: 1 to 200 sq ft, falling to 0.6 at 600 sq ft.
#[must_use]
pub fn area_reduction(tributary: Area) -> Ratio {
    let area = tributary.square_feet();
    if area <= 200.0 {
        1.0
    } else if area < 600.0 {
        1.2 - 0.001 * area
    } else {
        0.6
    }
}

/// Factor `R_2` for the roof's pitch: 1 to 4 in 12, falling to 0.6 at 12 in 12.
#[must_use]
pub fn slope_reduction(slope: Slope) -> Ratio {
    let rise = slope.rise_in_twelve();
    if rise <= 4.0 {
        1.0
    } else if rise < 12.0 {
        1.2 - 0.05 * rise
    } else {
        0.6
    }
}

/// Reduced roof live load `L_r = 20 R_1 R_2`, from 12 to 20 psf, on the level.
#[must_use]
pub fn roof_live_load(tributary: Area, slope: Slope) -> AreaLoad {
    let reduced = ROOF_LIVE_LOAD * area_reduction(tributary) * slope_reduction(slope);
    reduced.max(LEAST_ROOF_LIVE_LOAD)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn psf(square_feet: f64, rise: f64) -> f64 {
        roof_live_load(Area::from_square_feet(square_feet), Slope::from_rise_in_twelve(rise)).psf()
    }

    /// Source: FEMA P-85 Appendix F: 24.5 sq ft, 30 degrees taken as 7 in 12; printed R2 0.85 and 17 psf.
    #[test]
    fn a_roof_of_seven_in_twelve() {
        assert!((slope_reduction(Slope::from_rise_in_twelve(7.0)) - 0.85).abs() < 0.005);
        assert!((psf(24.5, 7.0) - 17.0).abs() < 0.5);
    }

    /// Source: practitioner thread on roof live load reduction: 12 in 12 gives R2 0.6 and 12 psf.
    #[test]
    fn a_roof_of_twelve_in_twelve_is_at_the_floor_at_any_area() {
        assert!((psf(100.0, 12.0) - 12.0).abs() < 1e-9);
        assert!((psf(700.0, 12.0) - 12.0).abs() < 1e-9);
    }

    /// Source: ASCE 7-16 4.8 as worked beside the IRC table for 8 in 12 and 400 sq ft: 20 x 0.8 x 0.8 = 12.8 psf.
    #[test]
    fn both_reductions_multiply() {
        assert!((psf(400.0, 8.0) - 12.8).abs() < 0.05);
    }

    #[test]
    fn a_larger_area_or_a_steeper_roof_never_carries_more() {
        let areas = [0.0, 200.0, 201.0, 400.0, 599.0, 600.0, 2000.0];
        let rises = [0.0, 4.0, 4.5, 8.0, 11.9, 12.0, 24.0];
        for pair in areas.windows(2) {
            assert!(rises.iter().all(|&r| psf(pair[1], r) <= psf(pair[0], r)));
        }
        for pair in rises.windows(2) {
            assert!(areas.iter().all(|&a| psf(a, pair[1]) <= psf(a, pair[0])));
        }
    }
}
