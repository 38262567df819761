//! From what was understood of a place to quantities.

use loads::house::{House, RoofKind};
use loads::site::{LoadStandard, SiteLoads, SiteWind};
use loads::snow_on_roof::SnowInput;
use loads::weights::{self, Weighed};
use measure::{AreaLoad, Length, Slope, Speed};
use standards::asce7_16::chapter_1::RiskCategory;
use standards::asce7_16::chapter_7_sloped::RoofStep;
use standards::asce7_16::chapter_26::{Enclosure, Exposure, ground_elevation_factor};
use standards::asce7_16::chapter_26_8::{
    Condition, Feature, FromCrest, LandForm, Position, Setting, TopographicFactor, topographic_factor,
};
use standards::ibc_2018::section_1609_3::ultimate_speed;

use crate::header::{snow_exposure, thermal};
use crate::reading::{Origin, Reading};

/// The basic (ultimate) wind speed, converted where it was given as a nominal one.
#[must_use]
pub fn basic_speed(reading: &Reading) -> Option<Speed> {
    let given = Speed::from_mph(reading.number("wind_speed")?);
    let nominal = reading.word("speed_given_as") == Some("nominal");
    Some(if nominal { ultimate_speed(given) } else { given })
}

/// Slowest speed that may be one of the maps' on a coast; a slower one is asked about.
const COASTAL: Speed = Speed::from_mph(115.0);

/// Whether a speed looks as if it had been given the other way: too slow for an ultimate one on a coast.
#[must_use]
pub fn looks_nominal(reading: &Reading) -> bool {
    let coastal = reading.word("hurricane_coast") == Some("yes")
        || reading.number("salt_water").is_some_and(|miles| miles <= 20.0);
    let typed = reading.get("wind_speed").is_some_and(|value| value.origin != Origin::Assumed);
    let ultimate = reading.word("speed_given_as") != Some("nominal");
    typed && ultimate && coastal && basic_speed(reading).is_some_and(|speed| speed < COASTAL)
}

fn roof_kind(word: &str) -> RoofKind {
    match word {
        "hip" => RoofKind::Hip,
        "shed" => RoofKind::Shed,
        "gambrel" => RoofKind::Gambrel,
        "flat" => RoofKind::Flat,
        _ => RoofKind::Gable,
    }
}

/// The house.
#[must_use]
pub fn house(reading: &Reading) -> Option<House> {
    Some(House {
        length: reading.length("building_length")?,
        width: reading.length("house_width")?,
        eave_height: reading.length("eave_height")?,
        storeys: reading.word("storeys")?.parse().ok()?,
        roof: roof_kind(reading.word("roof_kind")?),
        pitch: Slope::from_rise_in_twelve(reading.number("roof_pitch")?),
        eave_overhang: reading.length("eave_overhang")?,
        rake_overhang: reading.length("rake_overhang")?,
    })
}

/// The mean roof height: as typed, or the house's.
#[must_use]
pub fn mean_roof_height(reading: &Reading, house: &House) -> Length {
    let typed = reading.get("mean_roof_height").filter(|value| value.origin != Origin::Assumed);
    typed.and_then(|value| value.number).map_or_else(|| house.mean_roof_height(), Length::from_inches)
}

/// The exposure.
#[must_use]
pub fn exposure(reading: &Reading) -> Option<Exposure> {
    Some(match reading.word("exposure")? {
        "B" => Exposure::B,
        "C" => Exposure::C,
        _ => Exposure::D,
    })
}

/// Rising ground and the house on it.
struct Ground {
    land: LandForm,
    side: FromCrest,
    distance: Length,
    stands_out: bool,
}

/// The ground's shape, where it was said to be more than level and is measured.
fn ground(reading: &Reading) -> Option<Ground> {
    let feature = match reading.word("hill")? {
        "bluff" => Feature::Escarpment,
        "ridge" => Feature::Ridge,
        "hill" => Feature::Hill,
        _ => return None,
    };
    let (height, half_length) = (reading.feet("hill_height")?, reading.feet("hill_half_length")?);
    Some(Ground {
        land: LandForm { feature, height, half_length },
        side: if reading.word("hill_side") == Some("upwind") { FromCrest::Upwind } else { FromCrest::Downwind },
        distance: reading.feet("hill_distance")?,
        stands_out: reading.word("hill_alone") != Some("no"),
    })
}

/// The topographic factor of the ground, at the mean roof height; or the condition that is not met, so that the ground
/// does not count. That the house stands high enough on it shows in the factor's own second multiplier.
#[must_use]
pub fn hill_factor(reading: &Reading, height: Length) -> Option<Result<TopographicFactor, Condition>> {
    let (ground, exposure) = (ground(reading)?, exposure(reading)?);
    if !ground.stands_out {
        return Some(Err(Condition::Isolated));
    }
    // What surrounds it was asked as one question above.
    let setting = Setting {
        clear_upwind: Length::from_feet(f64::from(u32::MAX)),
        highest_upwind: Length::ZERO,
        position: Position::UpperHalfOrNearCrest,
    };
    if let Some(unmet) = Condition::ALL.into_iter().find(|one| !one.is_met(&ground.land, &setting, exposure)) {
        return Some(Err(unmet));
    }
    topographic_factor(&ground.land, exposure, ground.side, ground.distance, height).ok().map(Ok)
}

fn enclosure(reading: &Reading) -> Option<Enclosure> {
    Some(match reading.word("enclosure")? {
        "partially_open" => Enclosure::PartiallyOpen,
        "partially_enclosed" => Enclosure::PartiallyEnclosed,
        _ => Enclosure::Enclosed,
    })
}

fn standard(reading: &Reading) -> LoadStandard {
    if reading.word("load_standard") == Some("asce7_22") { LoadStandard::Asce7Of22 } else { LoadStandard::Asce7Of16 }
}

/// The wind at the place. A factor for the ground that was typed stands over the one that its shape gives.
#[must_use]
pub fn wind(reading: &Reading, house: &House) -> Option<SiteWind> {
    let height = mean_roof_height(reading, house);
    let typed = reading.get("topographic_factor").filter(|value| value.origin != Origin::Assumed);
    let topographic_factor = match typed {
        Some(value) => value.number?,
        None => hill_factor(reading, height).and_then(Result::ok).map_or(1.0, |factor| factor.factor),
    };
    Some(SiteWind {
        standard: standard(reading),
        speed: basic_speed(reading)?,
        exposure: exposure(reading)?,
        mean_roof_height: height,
        topographic_factor,
        ground_elevation_factor: ground_elevation_factor(reading.feet("ground_elevation")?),
        enclosure: enclosure(reading)?,
    })
}

/// The importance factor of snow.
#[must_use]
pub fn risk_category(reading: &Reading) -> RiskCategory {
    match reading.word("risk_category") {
        Some("1") => RiskCategory::One,
        Some("3") => RiskCategory::Three,
        Some("4") => RiskCategory::Four,
        _ => RiskCategory::Two,
    }
}

/// What the snow on the roof follows from.
#[must_use]
pub fn snow(reading: &Reading, house: &House) -> Option<SnowInput> {
    let warm = reading.word("thermal")? == "heated";
    let thermal = thermal(reading.word("thermal")?).factor();
    let assumed = SiteLoads::assumed().snow.exposure;
    Some(SnowInput {
        standard: standard(reading),
        ground: AreaLoad::from_psf(reading.number("ground_snow")?),
        exposure: snow_exposure(reading, exposure(reading)?).unwrap_or(assumed),
        thermal,
        warm,
        importance: risk_category(reading).snow_importance_factor(),
        slippery: reading.word("roof_surface")? == "slippery",
        simple_rafters: reading.word("simple_rafters")? == "rafters",
        step: step(reading, house),
    })
}

/// The step down to the wing's roof, where the wing is lower.
fn step(reading: &Reading, house: &House) -> Option<RoofStep> {
    let height = house.eave_height - reading.length("wing_eave_height")?;
    (height > Length::ZERO).then_some(())?;
    Some(RoofStep {
        height,
        upper: house.length,
        lower: reading.length("wing_length")?,
        gap: reading.length("wing_gap").unwrap_or_default(),
    })
}

/// A weight: from its layers, where they were written, else as typed or assumed. Layers are on their own surface.
///
/// # Errors
/// A sentence, when a layer is not known.
pub fn layers(reading: &Reading, id: &str) -> Result<Vec<Weighed>, String> {
    reading.word(id).map_or(Ok(Vec::new()), |text| weights::weigh(text).map_err(|problem| problem.to_string()))
}

/// The house as it is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DrawnHouse {
    /// Along the ridge.
    pub length: Length,
    /// Square to it.
    pub width: Length,
    /// Height of the eave.
    pub eave_height: Length,
    /// Height of the ridge.
    pub ridge_height: Length,
    /// Length of the ridge.
    pub ridge_length: Length,
    /// Eave overhang.
    pub overhang: Length,
    /// Width of the zones along edges.
    pub zone_width: Length,
    /// Its roof: `gable`, `hip`, `one-slope`, `gambrel` or `flat`.
    pub roof: &'static str,
}

/// The house as it is drawn; none where an input of it is wrong.
#[must_use]
pub fn drawn(reading: &Reading) -> Option<DrawnHouse> {
    let house = house(reading)?;
    Some(DrawnHouse {
        length: house.length,
        width: house.width,
        eave_height: house.eave_height,
        ridge_height: house.ridge_height(),
        ridge_length: house.ridge_length(),
        overhang: house.eave_overhang,
        zone_width: loads::wind::roof::zone_width(&house),
        roof: house.roof.name(),
    })
}
