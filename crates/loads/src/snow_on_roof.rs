//! Every case of snow that a house's roof is worked for.

use measure::{AreaLoad, Length, Ratio};
use standards::asce7_16::chapter_7::{LOW_SLOPE_DEGREES, flat_roof_snow_load, minimum_snow_load};
use standards::asce7_16::chapter_7_sloped::{
    RoofStep, SIMPLE_RAFTER_WIDTH, StepDrift, Surcharge, Unbalanced, ice_dam_load, rain_on_snow, sliding_snow,
    slope_factor, step_drift, unbalanced, unbalanced_is_needed, unbalanced_on_rafters,
};
use standards::asce7_22;

use crate::house::{House, RoofKind};
use crate::site::LoadStandard;

/// What the snow on a roof follows from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SnowInput {
    /// The edition.
    pub standard: LoadStandard,
    /// Ground snow load.
    pub ground: AreaLoad,
    /// Exposure factor.
    pub exposure: Ratio,
    /// Thermal factor.
    pub thermal: Ratio,
    /// Importance factor; not used in the later edition.
    pub importance: Ratio,
    /// Whether nothing holds the snow on the roof.
    pub slippery: bool,
    /// Whether rafters span eave to ridge in one piece.
    pub simple_rafters: bool,
    /// A lower roof beside or below it.
    pub step: Option<RoofStep>,
}

/// Snow on a house's roof, on the level. Cases do not act together, but for drift and sliding, which each lie on the
/// balanced load of the lower roof.
#[derive(Clone, Debug, PartialEq)]
pub struct SnowOnRoof {
    /// Flat-roof load `p_f`.
    pub flat: AreaLoad,
    /// Slope factor `C_s`.
    pub slope_factor: Ratio,
    /// Balanced load `p_s`.
    pub balanced: AreaLoad,
    /// Least load of a low slope, a case by itself.
    pub minimum: Option<AreaLoad>,
    /// Unbalanced, and whether by the plain rule for rafters.
    pub unbalanced: Option<(Unbalanced, bool)>,
    /// On the eaves of a warm roof, with dead load alone.
    pub ice_dam: AreaLoad,
    /// Rain on snow, added to the balanced load alone.
    pub rain: Option<AreaLoad>,
    /// Drift on the lower roof.
    pub drift: Option<StepDrift>,
    /// Snow that slides onto the lower roof.
    pub sliding: Option<Surcharge>,
}

impl SnowOnRoof {
    /// The heaviest even load on a rafter of the main roof, as if it lay on all of it.
    #[must_use]
    pub fn heaviest(&self) -> AreaLoad {
        let unbalanced = self.unbalanced.map_or(AreaLoad::ZERO, |(case, _)| {
            case.leeward + case.surcharge.map_or(AreaLoad::ZERO, |surcharge| surcharge.peak)
        });
        let rain = self.rain.map_or(AreaLoad::ZERO, |rain| self.balanced + rain);
        self.balanced.max(self.minimum.unwrap_or(AreaLoad::ZERO)).max(unbalanced).max(rain)
    }
}

/// Works every case out.
#[must_use]
pub fn snow_on_roof(input: &SnowInput, house: &House) -> SnowOnRoof {
    let later = input.standard == LoadStandard::Asce7Of22;
    let importance = if later { 1.0 } else { input.importance };
    let flat = flat_roof_snow_load(input.exposure, input.thermal, importance, input.ground);
    let slope_factor = match house.roof {
        RoofKind::Flat => 1.0,
        _ => slope_factor(house.pitch, input.thermal, input.slippery),
    };
    let balanced = flat * slope_factor;
    let low = house.angle().degrees() < LOW_SLOPE_DEGREES;
    let minimum = low.then(|| {
        if later { asce7_22::minimum_snow_load(input.ground) } else { minimum_snow_load(importance, input.ground) }
    });
    let eave_to_ridge = if house.roof == RoofKind::Shed { house.width } else { house.width / 2.0 };
    SnowOnRoof {
        flat,
        slope_factor,
        balanced,
        minimum,
        unbalanced: two_sided(house).then(|| on_two_sides(input, house, balanced, importance, eave_to_ridge)).flatten(),
        ice_dam: ice_dam_load(flat),
        rain: rain_on_snow(input.ground, house_slope(house), eave_to_ridge),
        drift: input.step.and_then(|step| step_drift(&step, flat, input.ground, importance)),
        sliding: input
            .step
            .and_then(|step| sliding_snow(flat, house_slope(house), input.slippery, eave_to_ridge, &step)),
    }
}

fn house_slope(house: &House) -> measure::Slope {
    if house.roof == RoofKind::Flat { measure::Slope::ZERO } else { house.pitch }
}

fn two_sided(house: &House) -> bool {
    matches!(house.roof, RoofKind::Gable | RoofKind::Hip) && unbalanced_is_needed(house.pitch)
}

fn on_two_sides(
    input: &SnowInput,
    house: &House,
    balanced: AreaLoad,
    importance: Ratio,
    eave_to_ridge: Length,
) -> Option<(Unbalanced, bool)> {
    if input.simple_rafters && eave_to_ridge <= SIMPLE_RAFTER_WIDTH {
        return Some((unbalanced_on_rafters(input.ground, importance), true));
    }
    // The later edition works the drift's height from the winter wind, whose maps are not here.
    (input.standard == LoadStandard::Asce7Of16)
        .then(|| (unbalanced(balanced, house.pitch, eave_to_ridge, input.ground, importance), false))
}

#[cfg(test)]
mod tests {
    use super::*;
    use measure::Slope;

    fn house(width: f64, rise: f64) -> House {
        House {
            length: Length::from_feet(40.0),
            width: Length::from_feet(width),
            eave_height: Length::from_feet(10.0),
            storeys: 1,
            roof: RoofKind::Gable,
            pitch: Slope::from_rise_in_twelve(rise),
            eave_overhang: Length::ZERO,
            rake_overhang: Length::ZERO,
        }
    }

    fn input(ground: f64, simple_rafters: bool) -> SnowInput {
        SnowInput {
            standard: LoadStandard::Asce7Of16,
            ground: AreaLoad::from_psf(ground),
            exposure: 1.0,
            thermal: 1.0,
            importance: 1.0,
            slippery: false,
            simple_rafters,
            step: None,
        }
    }

    /// Vectors made for this purpose: p_g 40, 14 ft eave to ridge, 6 in 12: balanced 28.0; on rafters 40.0 and nothing; on
    /// trusses 8.4, and 28.0 with 21.8 more over 6.05 ft. p_g 30, 25 ft: 21.0; 6.3; 21.0 more over 6.27 ft.
    #[test]
    fn a_small_house() {
        let rafters = snow_on_roof(&input(40.0, true), &house(28.0, 6.0));
        assert!((rafters.balanced.psf() - 28.0).abs() < 1e-9 && (rafters.heaviest().psf() - 40.0).abs() < 1e-9);
        for (ground, width, windward, leeward, peak, reach) in
            [(40.0, 28.0, 8.4, 28.0, 21.8, 6.05), (30.0, 50.0, 6.3, 21.0, 21.0, 6.27)]
        {
            let found = snow_on_roof(&input(ground, false), &house(width, 6.0));
            let (case, plain) = found.unbalanced.unwrap();
            let surcharge = case.surcharge.unwrap();
            assert!(
                !plain && (case.windward.psf() - windward).abs() < 1e-9 && (case.leeward.psf() - leeward).abs() < 1e-9
            );
            assert!((surcharge.peak.psf() - peak).abs() <= 0.05 && (surcharge.width.feet() - reach).abs() <= 0.006);
        }
    }

    #[test]
    fn steep_and_low_roofs() {
        let steep = snow_on_roof(&input(30.0, true), &house(28.0, 12.0));
        assert!(steep.unbalanced.is_none() && steep.minimum.is_none() && (steep.slope_factor - 0.625).abs() < 1e-9);
        let low = snow_on_roof(&input(30.0, true), &house(28.0, 1.0));
        assert_eq!(low.minimum, Some(AreaLoad::from_psf(20.0)));
        let later = SnowInput { standard: LoadStandard::Asce7Of22, ..input(63.0, true) };
        assert_eq!(snow_on_roof(&later, &house(28.0, 1.0)).minimum, Some(AreaLoad::from_psf(30.0)));
    }
}
