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
    /// Thermal factor, of the earlier edition's table.
    pub thermal: Ratio,
    /// Whether the roof is warm from below, so that ice may build up at its eaves.
    pub warm: bool,
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
    /// Thermal factor that was used.
    pub thermal: Ratio,
    /// Importance factor that was used.
    pub importance: Ratio,
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
    pub ice_dam: Option<AreaLoad>,
    /// Rain on snow, added to the balanced load alone.
    pub rain: Option<AreaLoad>,
    /// Drift on the lower roof.
    pub drift: Option<StepDrift>,
    /// Snow that slides onto the lower roof.
    pub sliding: Option<Surcharge>,
    /// Whether a case must be worked that cannot be worked here: then the heaviest is not known.
    pub is_open: bool,
}

impl SnowOnRoof {
    /// The heaviest even load on a rafter of the main roof, as if it lay on all of it; none while a case is open.
    #[must_use]
    pub fn heaviest(&self) -> Option<AreaLoad> {
        if self.is_open {
            return None;
        }
        let unbalanced = self.unbalanced.map_or(AreaLoad::ZERO, |(case, _)| {
            case.leeward + case.surcharge.map_or(AreaLoad::ZERO, |surcharge| surcharge.peak)
        });
        let rain = self.rain.map_or(AreaLoad::ZERO, |rain| self.balanced + rain);
        Some(self.balanced.max(self.minimum.unwrap_or(AreaLoad::ZERO)).max(unbalanced).max(rain))
    }
}

/// Thermal factor of a vented or unheated roof in the later edition, which is also the most that a heated one has there:
/// its table by R-value and snow is not here.
const LATER_THERMAL_FACTOR: Ratio = 1.2;

/// Works every case out.
///
/// A warm roof counts as slippery only over so much insulation, which is not asked here: its slope takes nothing off for
/// being slippery. Drifts of the later edition, unbalanced snow by drift among them, follow from a winter wind whose maps
/// are not here, and so does its rain on nearly flat roofs: they are left open.
#[must_use]
pub fn snow_on_roof(input: &SnowInput, house: &House) -> SnowOnRoof {
    let later = input.standard == LoadStandard::Asce7Of22;
    let (importance, thermal) =
        if later { (1.0, input.thermal.max(LATER_THERMAL_FACTOR)) } else { (input.importance, input.thermal) };
    let flat = flat_roof_snow_load(input.exposure, thermal, importance, input.ground);
    let slope_factor = match house.roof {
        RoofKind::Flat => 1.0,
        _ => slope_factor(house.pitch, thermal, input.slippery && !input.warm),
    };
    let balanced = flat * slope_factor;
    let low = house.angle().degrees() < LOW_SLOPE_DEGREES;
    let minimum = low.then(|| {
        if later { asce7_22::minimum_snow_load(input.ground) } else { minimum_snow_load(importance, input.ground) }
    });
    let eave_to_ridge = if house.roof == RoofKind::Shed { house.width } else { house.width / 2.0 };
    let (unbalanced, unbalanced_is_open) = unbalanced_case(input, house, balanced, importance, eave_to_ridge);
    let nearly_flat = house_slope(house).rise_in_twelve() < NEARLY_FLAT;
    let some_snow = input.ground > AreaLoad::ZERO;
    SnowOnRoof {
        thermal,
        importance,
        flat,
        slope_factor,
        balanced,
        minimum,
        unbalanced,
        ice_dam: input.warm.then(|| ice_dam_load(flat)),
        rain: rain_on_snow(input.ground, house_slope(house), eave_to_ridge).filter(|_| !later),
        drift: input.step.filter(|_| !later).and_then(|step| step_drift(&step, flat, input.ground, importance)),
        sliding: input
            .step
            .and_then(|step| sliding_snow(flat, house_slope(house), input.slippery, eave_to_ridge, &step)),
        is_open: some_snow && (unbalanced_is_open || (later && nearly_flat)),
    }
}

/// Rise on twelve under which rain stays in the snow.
const NEARLY_FLAT: f64 = 0.5;

fn house_slope(house: &House) -> measure::Slope {
    if house.roof == RoofKind::Flat { measure::Slope::ZERO } else { house.pitch }
}

fn two_sided(house: &House) -> bool {
    matches!(house.roof, RoofKind::Gable | RoofKind::Hip) && unbalanced_is_needed(house.pitch)
}

/// The unbalanced case, and by which rule; and whether there is one that cannot be worked here.
fn unbalanced_case(
    input: &SnowInput,
    house: &House,
    balanced: AreaLoad,
    importance: Ratio,
    eave_to_ridge: Length,
) -> (Option<(Unbalanced, bool)>, bool) {
    if !two_sided(house) || input.ground <= AreaLoad::ZERO {
        return (None, false);
    }
    if input.simple_rafters && eave_to_ridge <= SIMPLE_RAFTER_WIDTH {
        return (Some((unbalanced_on_rafters(input.ground, importance), true)), false);
    }
    if input.standard == LoadStandard::Asce7Of22 {
        return (None, true);
    }
    (Some((unbalanced(balanced, house.pitch, eave_to_ridge, input.ground, importance), false)), false)
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
            wing_of: None,
        }
    }

    fn input(ground: f64, simple_rafters: bool) -> SnowInput {
        SnowInput {
            standard: LoadStandard::Asce7Of16,
            ground: AreaLoad::from_psf(ground),
            exposure: 1.0,
            thermal: 1.0,
            warm: true,
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
        assert!(
            (rafters.balanced.psf() - 28.0).abs() < 1e-9 && (rafters.heaviest().unwrap().psf() - 40.0).abs() < 1e-9
        );
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

    /// Source: ASCE 7-16 7.4: a warm slippery roof takes the slippery line over vented, alone.
    #[test]
    fn a_warm_metal_roof_is_not_let_off_without_its_insulation() {
        let warm = snow_on_roof(&SnowInput { slippery: true, ..input(30.0, true) }, &house(28.0, 6.0));
        assert!((warm.slope_factor - 1.0).abs() < 1e-12 && warm.ice_dam == Some(warm.flat * 2.0));
        let cold = SnowInput { slippery: true, warm: false, thermal: 1.1, ..input(30.0, true) };
        let cold = snow_on_roof(&cold, &house(28.0, 6.0));
        assert!(cold.slope_factor < 1.0 && cold.ice_dam.is_none());
    }

    #[test]
    fn what_the_later_edition_needs_and_is_not_here_is_left_open() {
        let step = RoofStep {
            height: Length::from_feet(8.0),
            upper: Length::from_feet(40.0),
            lower: Length::from_feet(20.0),
            gap: Length::ZERO,
        };
        let later = |simple_rafters| SnowInput {
            standard: LoadStandard::Asce7Of22,
            step: Some(step),
            ..input(63.0, simple_rafters)
        };
        let trusses = snow_on_roof(&later(false), &house(28.0, 6.0));
        assert!(trusses.is_open && trusses.heaviest().is_none() && trusses.drift.is_none());
        let rafters = snow_on_roof(&later(true), &house(28.0, 6.0));
        assert!((rafters.heaviest().unwrap().psf() - 63.0).abs() < 1e-9);
        // 0.7 of 1.2 and of the ground's snow.
        assert!((rafters.flat.psf() - 0.7 * 1.2 * 63.0).abs() < 1e-9);
        assert!(snow_on_roof(&later(true), &house(28.0, 0.25)).heaviest().is_none());
    }

    #[test]
    fn without_snow_there_is_none() {
        let none = snow_on_roof(&input(0.0, false), &house(28.0, 6.0));
        assert!(none.unbalanced.is_none() && none.heaviest() == Some(AreaLoad::ZERO));
    }
}
