//! Chapter 7, sloped roofs: slope factor, unbalanced snow, drifts, sliding, ice dams, rain on snow.

use measure::{AreaLoad, Density, Length, LineLoad, Ratio, Slope, math};

use crate::{Source, Status, asce7_16::DOCUMENT};

/// Fig. 7.4-1: slope factor.
pub const SLOPE_FACTOR: Source = Source::new(DOCUMENT, "Fig. 7.4-1", Status::LookedUp);
/// Eq. 7.7-1: snow density.
pub const DENSITY: Source = Source::new(DOCUMENT, "Eq. 7.7-1", Status::LookedUp);
/// Fig. 7.6-1: height of a drift.
pub const DRIFT_HEIGHT: Source = Source::new(DOCUMENT, "Fig. 7.6-1", Status::LookedUp);
/// Clause 7.6.1: unbalanced snow on gable and hip roofs.
pub const UNBALANCED: Source = Source::new(DOCUMENT, "7.6.1", Status::LookedUp);
/// Clause 7.7.1: drifts on lower roofs.
pub const DRIFT: Source = Source::new(DOCUMENT, "7.7.1", Status::LookedUp);
/// Clause 7.7.2: drifts on lower roofs across a gap.
pub const DRIFT_ACROSS: Source = Source::new(DOCUMENT, "7.7.2", Status::LookedUp);
/// Clause 7.9: sliding snow.
pub const SLIDING: Source = Source::new(DOCUMENT, "7.9", Status::LookedUp);
/// Clause 7.10: rain on snow.
pub const RAIN_ON_SNOW: Source = Source::new(DOCUMENT, "7.10", Status::LookedUp);
/// Clause 7.4.5: ice dams. Whether only the outer 5 ft of a deep eave is meant differs by edition: all of it is taken.
pub const ICE_DAM: Source = Source::new(DOCUMENT, "7.4.5", Status::Disputed);

/// The first slope, in degrees, at which a roof carries less than all of the snow, and the one at which it carries none.
fn slope_limits(thermal_factor: Ratio, slippery: bool) -> (f64, f64) {
    // Between the figure's rows the colder one counts, which keeps more snow.
    let from = match (slippery, thermal_factor) {
        (true, ..=1.0) => 5.0,
        (true, ..=1.1) => 10.0,
        (true, _) => 15.0,
        (false, ..=1.0) => 30.0,
        (false, ..=1.1) => 37.5,
        (false, _) => 45.0,
    };
    (from, 70.0)
}

/// Slope factor `C_s`: 1 on low slopes, falling straight to nothing at 70 degrees.
///
/// A surface is slippery where nothing holds the snow and there is room below for it to slide into; a warm one only over
/// where vented.
#[must_use]
pub fn slope_factor(slope: Slope, thermal_factor: Ratio, slippery: bool) -> Ratio {
    let (from, to) = slope_limits(thermal_factor, slippery);
    (1.0 - (slope.angle().degrees() - from) / (to - from)).clamp(0.0, 1.0)
}

/// Density of snow on a roof `0.13 p_g + 14`, at most 30 pcf.
#[must_use]
pub fn snow_density(ground: AreaLoad) -> Density {
    Density::from_pcf((0.13 * ground.psf() + 14.0).min(30.0))
}

/// The shortest fetch that a drift is worked with.
pub const LEAST_FETCH: Length = Length::from_feet(20.0);

/// Height of a drift `h_d = sqrt(I_s) (0.43 l_u^(1/3) (p_g + 10)^(1/4) - 1.5)`, feet, for a fetch of so much roof upwind;
/// a fetch under 20 ft counts as 20 ft. Without snow there is no drift.
#[must_use]
pub fn drift_height(fetch: Length, ground: AreaLoad, importance_factor: Ratio) -> Length {
    if ground <= AreaLoad::ZERO {
        return Length::ZERO;
    }
    let feet = 0.43 * math::pow(fetch.max(LEAST_FETCH).feet(), 1.0 / 3.0) * math::pow(ground.psf() + 10.0, 0.25) - 1.5;
    Length::from_feet(feet.max(0.0) * importance_factor.sqrt())
}

/// A load that is even over a width, or that falls straight to nothing over it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surcharge {
    /// At its heaviest.
    pub peak: AreaLoad,
    /// How far it reaches.
    pub width: Length,
}

/// Unbalanced snow on a gable or hip roof.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unbalanced {
    /// On the windward slope, even.
    pub windward: AreaLoad,
    /// On the leeward slope, even.
    pub leeward: AreaLoad,
    /// More on the leeward slope, even, from the ridge down.
    pub surcharge: Option<Surcharge>,
}

/// Whether unbalanced snow is worked: from 1/2 on 12 to 7 on 12.
#[must_use]
pub fn unbalanced_is_needed(slope: Slope) -> bool {
    (0.5..=7.0).contains(&slope.rise_in_twelve())
}

/// Widest roof, eave to ridge, whose simple rafters take the plain form.
pub const SIMPLE_RAFTER_WIDTH: Length = Length::from_feet(20.0);

/// Unbalanced snow on rafters that span eave to ridge in one piece, to 20 ft: all of the ground's snow on the lee side.
#[must_use]
pub fn unbalanced_on_rafters(ground: AreaLoad, importance_factor: Ratio) -> Unbalanced {
    Unbalanced { windward: AreaLoad::ZERO, leeward: ground * importance_factor, surcharge: None }
}

/// Unbalanced snow on any other gable or hip: a drift below the ridge. `width` is eave to ridge, level.
#[must_use]
pub fn unbalanced(
    sloped: AreaLoad,
    slope: Slope,
    width: Length,
    ground: AreaLoad,
    importance_factor: Ratio,
) -> Unbalanced {
    let height = drift_height(width, ground, importance_factor);
    let run_for_one = 12.0 / slope.rise_in_twelve();
    let peak = AreaLoad::from_psf(height.feet() * snow_density(ground).pcf() / run_for_one.sqrt());
    let reach = (height * (8.0 / 3.0 * run_for_one.sqrt())).min(width);
    Unbalanced { windward: sloped * 0.3, leeward: sloped, surcharge: Some(Surcharge { peak, width: reach }) }
}

/// A step from a higher roof down to a lower one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoofStep {
    /// From the lower roof's surface up to the higher one's eave.
    pub height: Length,
    /// Length of the upper roof, square to the step.
    pub upper: Length,
    /// Length of the lower roof.
    pub lower: Length,
    /// Level gap between them.
    pub gap: Length,
}

/// The drift below a step, with the steps to it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StepDrift {
    /// Depth of the balanced snow, `h_b`.
    pub balanced_depth: Length,
    /// Clear height above it, `h_c`.
    pub clear_height: Length,
    /// Height of the leeward drift.
    pub leeward: Length,
    /// Height of the windward drift: three quarters of its own fetch's.
    pub windward: Length,
    /// The drift: heaviest at the wall, nothing at its end.
    pub surcharge: Surcharge,
}

/// The drift on a lower roof; none where there is no room for one, or the gap is too wide.
///
/// `balanced` is the balanced load of the lower roof. The leeward drift is no higher than 0.6 of the lower roof's length.
#[must_use]
pub fn step_drift(
    step: &RoofStep,
    balanced: AreaLoad,
    ground: AreaLoad,
    importance_factor: Ratio,
) -> Option<StepDrift> {
    const LEAST_ROOM: f64 = 0.2;
    let density = snow_density(ground);
    let balanced_depth = Length::from_feet(balanced.psf() / density.pcf());
    let clear_height = step.height - balanced_depth;
    if clear_height <= Length::ZERO || clear_height / balanced_depth < LEAST_ROOM {
        return None;
    }
    let leeward = drift_height(step.upper, ground, importance_factor).min(step.lower * 0.6);
    let windward = drift_height(step.lower, ground, importance_factor) * 0.75;
    let (height, width) = if step.gap > Length::ZERO {
        // The windward drift is worked as if the roofs touched, which is the heavier: what the clause makes of it is
        // from memory.
        let (across, against) = (across_a_gap(step, leeward)?, against_the_wall(windward, clear_height));
        if against.0 > across.0 { against } else { across }
    } else {
        against_the_wall(leeward.max(windward), clear_height)
    };
    let peak = AreaLoad::from_psf(height.feet() * density.pcf());
    Some(StepDrift { balanced_depth, clear_height, leeward, windward, surcharge: Surcharge { peak, width } })
}

fn against_the_wall(height: Length, clear: Length) -> (Length, Length) {
    if height <= clear {
        return (height, height * 4.0);
    }
    (clear, (height * (height / clear) * 4.0).min(clear * 8.0))
}

/// Roofs within 20 ft of each other, and within six times the step.
fn across_a_gap(step: &RoofStep, leeward: Length) -> Option<(Length, Length)> {
    let reach = step.height * 6.0 - step.gap;
    let near = step.gap < Length::from_feet(20.0) && reach > Length::ZERO;
    near.then(|| (leeward.min(reach / 6.0), (leeward * 6.0).min(reach)))
}

/// How far sliding snow spreads from the upper eave.
pub const SLIDING_REACH: Length = Length::from_feet(15.0);

/// Snow that slides from an upper roof onto a lower one: even, from the upper eave outward. None where it does not slide,
/// or falls short. `width` is eave to ridge of the upper roof.
#[must_use]
pub fn sliding_snow(
    flat: AreaLoad,
    upper_slope: Slope,
    slippery: bool,
    width: Length,
    step: &RoofStep,
) -> Option<Surcharge> {
    let least = if slippery { 0.25 } else { 2.0 };
    let reaches = step.gap <= Length::ZERO || (step.height > step.gap && step.gap < SLIDING_REACH);
    if upper_slope.rise_in_twelve() <= least || !reaches {
        return None;
    }
    let all: LineLoad = flat * width * 0.4;
    let peak = AreaLoad::from_psf(all.plf() / SLIDING_REACH.feet());
    Some(Surcharge { peak, width: SLIDING_REACH - step.gap })
}

/// Load on the overhang of a warm roof's eave, `2 p_f`, with dead load alone.
#[must_use]
pub fn ice_dam_load(flat: AreaLoad) -> AreaLoad {
    flat * 2.0
}

/// Rain on snow: 5 psf more on the balanced load where there is little snow and hardly any slope. `width` is eave to
/// ridge.
#[must_use]
pub fn rain_on_snow(ground: AreaLoad, slope: Slope, width: Length) -> Option<AreaLoad> {
    let little = ground > AreaLoad::ZERO && ground <= AreaLoad::from_psf(20.0);
    (little && slope.angle().degrees() < width.feet() / 50.0).then(|| AreaLoad::from_psf(5.0))
}
