//! Chapter 7: snow. Only the balanced load of a flat roof is here; slope, drift, sliding and unbalanced snow are not.

use measure::{AreaLoad, Ratio};

use crate::{OutsideTable, Source, Status, asce7_16::DOCUMENT};

/// Eq. 7.3-1: flat roof snow load.
pub const FLAT_ROOF: Source = Source::new(DOCUMENT, "Eq. 7.3-1", Status::LookedUp);
/// Table 7.3-1: exposure factors.
pub const EXPOSURE_FACTORS: Source = Source::new(DOCUMENT, "Table 7.3-1", Status::LookedUp);
/// Table 7.3-2: thermal factors.
pub const THERMAL_FACTORS: Source = Source::new(DOCUMENT, "Table 7.3-2", Status::LookedUp);
/// Clause 7.3.4: the least load of a low-slope roof.
pub const MINIMUM: Source = Source::new(DOCUMENT, "7.3.4", Status::LookedUp);

/// The ground around the house, as Table 7.3-1 sorts it. B, C and D are the surface roughness of Chapter 26.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Terrain {
    /// Town, suburb or wood.
    B,
    /// Open country.
    C,
    /// Flat and bare ground, or water.
    D,
    /// Above the tree line in windswept mountains.
    AboveTreeLine,
    /// Alaska, where no trees stand within two miles.
    AlaskaWithoutTrees,
}

/// How open the roof lies to the wind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RoofExposure {
    /// Nothing higher shelters it on any side.
    Fully,
    /// Neither of the others.
    Partially,
    /// It stands close among conifers.
    Sheltered,
}

/// Exposure factor `C_e` of Table 7.3-1.
///
/// # Errors
/// Where the table has no value: a sheltered roof above the tree line or on treeless ground.
pub fn exposure_factor(terrain: Terrain, roof: RoofExposure) -> Result<Ratio, OutsideTable> {
    let row = match terrain {
        Terrain::B => [Some(0.9), Some(1.0), Some(1.2)],
        Terrain::C => [Some(0.9), Some(1.0), Some(1.1)],
        Terrain::D => [Some(0.8), Some(0.9), Some(1.0)],
        Terrain::AboveTreeLine | Terrain::AlaskaWithoutTrees => [Some(0.7), Some(0.8), None],
    };
    let [fully, partially, sheltered] = row;
    let factor = match roof {
        RoofExposure::Fully => fully,
        RoofExposure::Partially => partially,
        RoofExposure::Sheltered => sheltered,
    };
    factor.ok_or_else(|| OutsideTable {
        source: EXPOSURE_FACTORS,
        given: "a sheltered roof on ground without trees".to_owned(),
        covers: "fully and partially exposed roofs there",
        next_step: "Take the roof as partially exposed or ask the code official.",
    })
}

/// How warm the roof is kept from below.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ThermalCondition {
    /// A heated house whose roof is none of the others.
    Heated,
    /// Kept just above freezing, or a cold ventilated roof with more than R-25 between vented and heated space.
    ColdVentilatedRoof,
    /// Unheated or open: garage, porch, carport.
    Unheated,
    /// Kept below freezing on purpose.
    BelowFreezing,
    /// A greenhouse heated all winter, roof under R-2.
    HeatedGreenhouse,
}

impl ThermalCondition {
    /// Thermal factor `C_t` of Table 7.3-2.
    #[must_use]
    pub const fn factor(self) -> Ratio {
        match self {
            Self::Heated => 1.0,
            Self::ColdVentilatedRoof => 1.1,
            Self::Unheated => 1.2,
            Self::BelowFreezing => 1.3,
            Self::HeatedGreenhouse => 0.85,
        }
    }
}

/// Flat roof snow load `p_f = 0.7 C_e C_t I_s p_g`, on the level, at allowable-stress level.
///
/// `ground` is the ground snow load `p_g` of this edition's maps; a map of a later edition gives a larger kind of load
/// that does not belong in this equation.
#[must_use]
pub fn flat_roof_snow_load(
    exposure_factor: Ratio,
    thermal_factor: Ratio,
    importance_factor: Ratio,
    ground: AreaLoad,
) -> AreaLoad {
    ground * (0.7 * exposure_factor * thermal_factor * importance_factor)
}

/// Roofs flatter than this, in degrees, have the least snow load of 7.3.4 (monoslope, gable and hip).
pub const LOW_SLOPE_DEGREES: f64 = 15.0;

/// Least snow load `p_m` of a low-slope roof: `I_s p_g` where `p_g` is 20 psf or less, otherwise `20 I_s`. It is a
/// case of its own, never added to drift, sliding or unbalanced snow.
#[must_use]
pub fn minimum_snow_load(importance_factor: Ratio, ground: AreaLoad) -> AreaLoad {
    ground.min(AreaLoad::from_psf(20.0)) * importance_factor
}

#[cfg(test)]
mod tests {
    use super::*;

    fn flat(c_e: f64, c_t: f64, i_s: f64, p_g: f64) -> f64 {
        flat_roof_snow_load(c_e, c_t, i_s, AreaLoad::from_psf(p_g)).psf()
    }

    /// Sources: Snow Loads guide to ASCE 7-10, Example 4-3 (25.2); a textbook's Example 1.4 (8.06, its own C_e 0.8 and
    /// I 0.8); a note on snow drift in 7-16 (17.5); a verification test of an open finite-element library (21.0); a
    /// drift sheet for 7-16 (15.12); commentary of 7-05 with importance 1.15 (24.15).
    #[test]
    fn published_flat_roof_loads() {
        for (c_e, c_t, i_s, p_g, printed, half_digit) in [
            (1.0, 1.2, 1.0, 30.0, 25.2, 0.05),
            (0.8, 1.2, 0.8, 15.0, 8.06, 0.005),
            (1.0, 1.0, 1.0, 25.0, 17.5, 0.05),
            (1.0, 1.0, 1.0, 30.0, 21.0, 0.05),
            (0.9, 1.2, 1.0, 20.0, 15.12, 0.005),
            (1.0, 1.0, 1.15, 30.0, 24.15, 0.005),
        ] {
            assert!((flat(c_e, c_t, i_s, p_g) - printed).abs() <= half_digit, "{printed}");
        }
    }

    /// Source: Snow Loads guide to ASCE 7-10, Example 4-3: p_m 20 psf at p_g 30. The textbook's Example 1.4 prints 18
    /// at p_g 15, which needs I 1.2; with its own I 0.8 the clause gives 12.
    #[test]
    fn published_minimum_loads() {
        let least = |i_s, p_g| minimum_snow_load(i_s, AreaLoad::from_psf(p_g)).psf();
        assert!((least(1.0, 30.0) - 20.0).abs() < 1e-9);
        assert!((least(1.2, 15.0) - 18.0).abs() < 1e-9);
        assert!((least(0.8, 15.0) - 12.0).abs() < 1e-9);
    }

    /// Source: ASCE 7-16 Table 7.3-1, every cell.
    #[test]
    fn exposure_factors_as_printed() {
        use RoofExposure::{Fully, Partially, Sheltered};
        for (terrain, printed) in [
            (Terrain::B, [Some(0.9), Some(1.0), Some(1.2)]),
            (Terrain::C, [Some(0.9), Some(1.0), Some(1.1)]),
            (Terrain::D, [Some(0.8), Some(0.9), Some(1.0)]),
            (Terrain::AboveTreeLine, [Some(0.7), Some(0.8), None]),
            (Terrain::AlaskaWithoutTrees, [Some(0.7), Some(0.8), None]),
        ] {
            let found = [Fully, Partially, Sheltered].map(|roof| exposure_factor(terrain, roof).ok());
            assert_eq!(found, printed, "{terrain:?}");
        }
    }
}
