//! From what was understood of a place to quantities.

use loads::criteria::debris::{DebrisFinding, debris_region};
use loads::criteria::exposure::Surroundings;
use loads::criteria::openings::{BrokenGlass, WallOpenings, broken_glass};
use loads::criteria::topography::{RisingGround, Topography, TopographyFinding};
use loads::criteria::wind_speed::{GivenSpeed, SpeedKind};
use loads::criteria::{CodeEdition, SiteCriteria};
use loads::house::{House, RoofKind, WindDirection};
use loads::site::{LoadStandard, SiteLoads, SiteWind};
use loads::snow_on_roof::SnowInput;
use loads::weights::{self, Weighed};
use measure::{Area, AreaLoad, Length, Slope, Speed};
use standards::OutsideTable;
use standards::asce7_16::chapter_1::RiskCategory;
use standards::asce7_16::chapter_7_sloped::RoofStep;
use standards::asce7_16::chapter_26::{Enclosure, Exposure, ground_elevation_factor};
use standards::asce7_16::chapter_26_8::{Feature, FromCrest, LandForm};
use standards::asce7_16::chapter_26_12::{Coast, Openings};
use standards::asce7_16::chapter_30::roofs::{FlatZones, flat_zones};
use standards::ibc_2018::section_1609_3::ultimate_speed;
use standards::irc_2021::r301::{ExposureCategory, prescriptive_wind};
use standards::irc_2021::r301_2::{Dwelling, SeismicDesignCategory};

use crate::header::{snow_exposure, thermal};
use crate::reading::{Origin, Reading};

const MILE: Length = Length::from_feet(5280.0);
/// So near to salt water a place is on a coast, for the question whether a slow wind speed is a nominal one.
const ON_A_COAST: Length = Length::from_feet(20.0 * 5280.0);

fn is_typed(reading: &Reading, id: &str) -> bool {
    reading.get(id).is_some_and(|value| value.origin != Origin::Assumed)
}

/// The wind speed as it was given.
fn given_speed(reading: &Reading) -> Option<GivenSpeed> {
    let nominal = reading.word("speed_given_as") == Some("nominal");
    Some(GivenSpeed {
        speed: Speed::from_mph(reading.number("wind_speed")?),
        kind: if nominal { SpeedKind::Nominal } else { SpeedKind::Ultimate },
    })
}

/// The basic (ultimate) wind speed, converted where it was given as a nominal one.
#[must_use]
pub fn basic_speed(reading: &Reading) -> Option<Speed> {
    let GivenSpeed { speed, kind } = given_speed(reading)?;
    Some(if kind == SpeedKind::Nominal { ultimate_speed(speed) } else { speed })
}

/// Whether a speed looks as if it had been given the other way: too slow for an ultimate one.
#[must_use]
pub fn looks_nominal(reading: &Reading) -> bool {
    let coastal = coast(reading).is_some_and(|coast| coast != Coast::Elsewhere)
        || to_salt_water(reading).is_some_and(|distance| distance <= ON_A_COAST);
    is_typed(reading, "wind_speed") && given_speed(reading).is_some_and(|given| given.looks_nominal(coastal))
}

/// Where the place lies for hurricanes, where that was said.
#[must_use]
pub fn coast(reading: &Reading) -> Option<Coast> {
    Some(match reading.word("hurricane_coast")? {
        "yes" => Coast::AtlanticOrGulf,
        "hawaii" => Coast::Hawaii,
        "islands" => Coast::IslandTerritory,
        _ => Coast::Elsewhere,
    })
}

/// Distance to salt water.
#[must_use]
pub fn to_salt_water(reading: &Reading) -> Option<Length> {
    Some(MILE * reading.number("salt_water")?)
}

/// What wind-borne debris there is, where it was said on which coast the place lies.
#[must_use]
pub fn debris(reading: &Reading) -> Option<DebrisFinding> {
    // The water there may be open or not: the wider answer is taken.
    Some(debris_region(coast(reading)?, basic_speed(reading)?, to_salt_water(reading), true))
}

/// The seismic design category, where it was said.
#[must_use]
pub fn seismic(reading: &Reading) -> Option<SeismicDesignCategory> {
    let word = reading.word("seismic_design_category")?;
    SeismicDesignCategory::ALL.into_iter().find(|category| category.name() == word)
}

/// Kind of dwelling.
#[must_use]
pub fn dwelling(reading: &Reading) -> Dwelling {
    if reading.word("dwelling") == Some("townhouse") { Dwelling::Townhouse } else { Dwelling::Detached }
}

/// What the building department says of the place.
#[must_use]
pub fn criteria(reading: &Reading) -> Option<SiteCriteria> {
    Some(SiteCriteria {
        edition: match reading.word("edition")? {
            "2012" => CodeEdition::Irc2012,
            "2018" => CodeEdition::Irc2018,
            _ => CodeEdition::Irc2021,
        },
        dwelling: dwelling(reading),
        risk_category: risk_category(reading),
        wind_speed: given_speed(reading)?,
        in_wind_design_region: reading.word("wind_design_required") == Some("yes"),
        surroundings: Surroundings::Given(exposure(reading)?),
        topography: topography(reading).unwrap_or(Topography::Flat),
        ground_elevation: reading.feet("ground_elevation"),
        coast: coast(reading).unwrap_or(Coast::Elsewhere),
        to_coast: to_salt_water(reading),
        open_water_at_coast: true,
        to_salt_water: to_salt_water(reading),
        seismic: seismic(reading),
    })
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
        wing_of: None,
    })
}

/// The wing, where one is described: its ridge runs out from the house, and what was not said of its roof is as on the
/// house.
#[must_use]
pub fn wing(reading: &Reading) -> Option<House> {
    let house = house(reading)?;
    let pitch = reading.number("wing_roof_pitch").map(Slope::from_rise_in_twelve);
    Some(House {
        length: reading.length("wing_length")?,
        width: reading.length("wing_width")?,
        eave_height: reading.length("wing_eave_height")?,
        storeys: reading.word("wing_storeys")?.parse().ok()?,
        roof: reading.word("wing_roof_kind").map_or(house.roof, roof_kind),
        pitch: pitch.unwrap_or(house.pitch),
        wing_of: (reading.length("wing_gap")? <= Length::ZERO).then(|| house.least_dimension()),
        ..house
    })
}

/// The wind on the wing. Built against the house it is a part of that building, with the mean roof height of the higher.
#[must_use]
pub fn wind_on_wing(wind: &SiteWind, wing: &House) -> SiteWind {
    let own = wing.mean_roof_height();
    let mean_roof_height = if wing.wing_of.is_some() { own.max(wind.mean_roof_height) } else { own };
    SiteWind { mean_roof_height, ..*wind }
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

/// The exposure as the code names it.
#[must_use]
pub fn exposure_category(reading: &Reading) -> Option<ExposureCategory> {
    Some(match exposure(reading)? {
        Exposure::B => ExposureCategory::B,
        Exposure::C => ExposureCategory::C,
        Exposure::D => ExposureCategory::D,
    })
}

/// Why the code's own rules do not reach this wind; none where they do.
#[must_use]
pub fn past_the_code(reading: &Reading) -> Option<String> {
    let hurricane = matches!(reading.word("hurricane_coast"), Some("yes" | "hawaii" | "islands"));
    let reach = prescriptive_wind(basic_speed(reading)?, exposure_category(reading)?, hurricane);
    reach.err().map(|outside| outside.to_string())
}

/// The lie of the land; none where the ground was said to rise and is not measured yet.
#[must_use]
pub fn topography(reading: &Reading) -> Option<Topography> {
    let feature = match reading.word("hill")? {
        "bluff" => Feature::Escarpment,
        "ridge" => Feature::Ridge,
        "hill" => Feature::Hill,
        "valley" => return Some(Topography::Unusual),
        _ => return Some(Topography::Flat),
    };
    let (height, half_length) = (reading.feet("hill_height")?, reading.feet("hill_half_length")?);
    // What surrounds it is asked as one question; where it does not stand out, something as high is right beside it.
    let stands_out = reading.word("hill_alone") != Some("no");
    Some(Topography::Rising(RisingGround {
        land: LandForm { feature, height, half_length },
        side: if reading.word("hill_side") == Some("upwind") { FromCrest::Upwind } else { FromCrest::Downwind },
        distance: reading.feet("hill_distance")?,
        // How high the house stands on it shows in the factor's own second multiplier.
        position: None,
        clear_upwind: (!stands_out).then_some(Length::ZERO),
        highest_upwind: None,
    }))
}

/// The topographic factor at the mean roof height, with its reasons; none on level ground.
///
/// # Errors
/// Ground that no rule covers.
pub fn ground_finding(reading: &Reading, height: Length) -> Option<Result<TopographyFinding, OutsideTable>> {
    let land = topography(reading).filter(|land| *land != Topography::Flat)?;
    Some(land.factor_at(exposure(reading)?, height))
}

/// What breaks, and how open the house is then, by the areas of glass that were measured; none where none was.
#[must_use]
pub fn glass(reading: &Reading, house: &House) -> Option<Result<BrokenGlass, OutsideTable>> {
    const WALLS: [(&str, WindDirection); 4] = [
        ("glass_front", WindDirection::AcrossRidge),
        ("glass_back", WindDirection::AcrossRidge),
        ("glass_left", WindDirection::AlongRidge),
        ("glass_right", WindDirection::AlongRidge),
    ];
    if WALLS.iter().all(|(id, _)| reading.number(id).is_none()) {
        return None;
    }
    let walls = WALLS.map(|(id, facing)| WallOpenings {
        gross: house.wall_area(facing),
        open: Area::ZERO,
        breakable: Area::from_square_feet(reading.number(id).unwrap_or_default()),
    });
    Some(broken_glass(&walls, Openings { open: Area::ZERO, gross: house.length * house.width }))
}

/// How shut the house stays: as typed; else by what breaks where wind carries debris and the glass is not protected,
/// and where no glass was measured there, as if a wall of it broke.
#[must_use]
pub fn enclosure(reading: &Reading, house: &House) -> Option<Enclosure> {
    let typed = match reading.word("enclosure")? {
        "partially_open" => Enclosure::PartiallyOpen,
        "partially_enclosed" => Enclosure::PartiallyEnclosed,
        _ => Enclosure::Enclosed,
    };
    if is_typed(reading, "enclosure") || !glass_breaks(reading) {
        return Some(typed);
    }
    Some(match glass(reading, house) {
        Some(Ok(found)) => found.worst,
        Some(Err(_)) | None => Enclosure::PartiallyEnclosed,
    })
}

/// Whether the glass is to be counted as broken: unprotected where wind carries debris.
#[must_use]
pub fn glass_breaks(reading: &Reading) -> bool {
    reading.word("glass_protected") == Some("no") && debris(reading).is_some_and(|found| found.protection_wanted())
}

fn standard(reading: &Reading) -> LoadStandard {
    if reading.word("load_standard") == Some("asce7_22") { LoadStandard::Asce7Of22 } else { LoadStandard::Asce7Of16 }
}

/// The wind at the place. A factor for the ground that was typed stands over the one that its shape gives.
#[must_use]
pub fn wind(reading: &Reading, house: &House) -> Option<SiteWind> {
    let height = mean_roof_height(reading, house);
    let topographic_factor = if is_typed(reading, "topographic_factor") {
        reading.number("topographic_factor")?
    } else {
        // Ground that no rule covers was refused where it was said.
        ground_finding(reading, height).and_then(Result::ok).map_or(1.0, |found| found.factor)
    };
    Some(SiteWind {
        standard: standard(reading),
        speed: basic_speed(reading)?,
        exposure: exposure(reading)?,
        mean_roof_height: height,
        topographic_factor,
        ground_elevation_factor: ground_elevation_factor(reading.feet("ground_elevation")?),
        enclosure: enclosure(reading, house)?,
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
    /// Widths of the zones of a flat roof.
    pub flat_zones: FlatZones,
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
        zone_width: loads::wind::roof::zone_width(&house, mean_roof_height(reading, &house)),
        flat_zones: flat_zones(mean_roof_height(reading, &house)),
        roof: house.roof.name(),
    })
}
