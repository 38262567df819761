//! What lies on a roof and what the wind does to it, for rafters, ridges, hips and valleys.

use loads::house::House;
use loads::snow_on_roof::{SnowOnRoof, snow_on_roof};
use loads::wind::roof::{RoofPressure, roof_pressures, zone_width};
use measure::{Area, AreaLoad, Length, Slope};
use members::rafter::{Lift, RoofLoads};
use members::working::{Basis, Part, figure};
use standards::asce7_16::chapter_30::roofs::RoofZone;
use standards::asce7_16::{chapter_7, chapter_30};

use super::read::psf;
use crate::reading::Reading;
use crate::site::about::About;
use crate::site::input;

/// A roof at its place.
pub(super) struct Roof {
    pub(super) pitch: Slope,
    pub(super) loads: RoofLoads,
    /// Snow on the lee side alone, and what is left on the other; both zero where none is worked.
    pub(super) unbalanced: (AreaLoad, AreaLoad),
    /// Wind that could not be worked, and why.
    pub(super) no_wind: Option<String>,
    /// Snow that could not be worked, and why.
    pub(super) no_snow: Option<String>,
    snow: SnowOnRoof,
    pressure: Option<RoofPressure>,
}

/// The roof for a member of this span that carries this strip. Snow is the heavier of balanced and unbalanced for a rafter.
pub(super) fn roof(reading: &Reading, span: Length, strip: Length, ceiling: bool) -> Option<Roof> {
    let house = input::house(reading)?;
    let (roof_dead, ceiling_dead) = crate::site::roof_and_ceiling(reading, &house)?;
    let hung = if ceiling { ceiling_dead } else { AreaLoad::ZERO };
    let snow = snow_on_roof(&input::snow(reading, &house)?, &house);
    let given = psf(reading, "roof_snow");
    let heaviest = given.or_else(|| snow.heaviest());
    let unbalanced = match (given, snow.unbalanced) {
        (None, Some((case, _))) => {
            (case.leeward + case.surcharge.map_or(AreaLoad::ZERO, |more| more.peak), case.windward)
        }
        _ => (AreaLoad::ZERO, AreaLoad::ZERO),
    };
    let area = chapter_30::effective_wind_area(span, strip);
    let near = reading.word("near_corner") != Some("no");
    let wind = wind(reading, &house, area, near);
    let pressure = wind.as_ref().ok().map(|wind| wind.hardest);
    let even = snow.balanced.max(snow.minimum.unwrap_or(AreaLoad::ZERO));
    let even = even.max(snow.rain.map_or(AreaLoad::ZERO, |rain| snow.balanced + rain));
    let loads = RoofLoads {
        dead: roof_dead + hung,
        snow: heaviest.unwrap_or(snow.balanced),
        snow_even: given.unwrap_or_else(|| even.max((unbalanced.0 + unbalanced.1) / 2.0)),
        roof_live: psf(reading, "roof_live")?,
        wind_down: pressure.map_or(AreaLoad::ZERO, |pressure| pressure.inward_strength),
        wind_up: wind.as_ref().map_or(Lift::default(), |wind| wind.lift),
        overhang_up: wind.as_ref().map_or(AreaLoad::ZERO, |wind| wind.overhang),
    };
    Some(Roof {
        pitch: house.pitch,
        loads,
        unbalanced,
        no_wind: wind.err(),
        no_snow: heaviest.is_none().then(|| {
            "A case of snow on this roof is not worked here by the later load standard: the balanced load stands in. An \
             engineer works the rest, or the drawing gives the roof's snow."
                .to_owned()
        }),
        snow,
        pressure,
    })
}

/// Wind on a rafter's way from eave to ridge.
struct Wind {
    /// The hardest of the zones that it runs through.
    hardest: RoofPressure,
    lift: Lift,
    overhang: AreaLoad,
}

/// Zones along a rafter beside a gable end, and along one between, each from the eave to the ridge: the first that the
/// roof's figure has.
const BESIDE_AN_END: [&[RoofZone]; 3] = [
    &[RoofZone::ThreeE, RoofZone::Three],
    &[RoofZone::TwoN, RoofZone::TwoR, RoofZone::Two],
    &[RoofZone::ThreeR, RoofZone::TwoR, RoofZone::Two],
];
const BETWEEN: [&[RoofZone]; 3] =
    [&[RoofZone::TwoE, RoofZone::Two], &[RoofZone::One], &[RoofZone::TwoR, RoofZone::One]];

/// The wind on a member of this area, beside a gable end or between.
fn wind(reading: &Reading, house: &House, area: Area, near: bool) -> Result<Wind, String> {
    let wind = input::wind(reading, house).ok_or_else(|| "The wind of the place is not known.".to_owned())?;
    let of =
        |overhang| roof_pressures(&wind, house, area, overhang).map(|(_, found)| found).map_err(|out| out.to_string());
    let pressures = of(false)?;
    let zones = if near { BESIDE_AN_END } else { BETWEEN };
    let find = |found: &[RoofPressure], zones: &[RoofZone]| {
        zones.iter().find_map(|zone| found.iter().find(|pressure| pressure.zone == *zone).copied())
    };
    let unknown = || "The wind on this roof is not worked here.".to_owned();
    let [eave, between, ridge] = zones.map(|zones| find(&pressures, zones).ok_or_else(unknown));
    let (eave, between, ridge) = (eave?, between?, ridge?);
    let hardest =
        [eave, between, ridge].into_iter().reduce(|a, b| if b.outward_strength > a.outward_strength { b } else { a });
    let over = find(&of(true)?, zones[0]).map_or(AreaLoad::ZERO, |pressure| pressure.outward_strength);
    Ok(Wind {
        hardest: hardest.ok_or_else(unknown)?,
        lift: Lift {
            eave: eave.outward_strength,
            between: between.outward_strength,
            ridge: ridge.outward_strength,
            zone: zone_width(house, wind.mean_roof_height),
        },
        overhang: over,
    })
}

impl Roof {
    /// What is said and asked of the roof.
    pub(super) fn say(&self, about: &mut About<'_>, reading: &Reading) {
        if let Some(why) = &self.no_wind {
            about.outside(format!("{why} Wind is not counted here: an engineer works it."));
        }
        if let Some(why) = &self.no_snow {
            about.outside(why.clone());
        }
        let assumed = |id: &str| reading.get(id).is_some_and(|value| value.origin == crate::reading::Origin::Assumed);
        if assumed("ground_snow") && reading.number("roof_snow").is_none() {
            about.ask("ground_snow", "What is the ground snow load of the place? Ask the building department.");
        }
        if assumed("wind_speed") && self.no_wind.is_none() {
            about.ask("wind_speed", "What is the basic wind speed of the place? Ask the building department.");
        }
        if assumed("roof_pitch") {
            about.ask("roof_pitch", "What is the pitch of the roof?");
        }
    }

    /// The steps to its loads.
    pub(super) fn part(&self) -> Part {
        let mut part = Part::new("Loads on the roof");
        let loads = &self.loads;
        part.step(
            "D",
            "roof, and what hangs on it, on the level",
            "",
            (loads.dead.psf(), "psf"),
            Basis::Input("roof_dead"),
        );
        part.step("L_r", "roof live load, on the level", "", (loads.roof_live.psf(), "psf"), Basis::Input("roof_live"));
        let expression = format!("balanced {}", figure(self.snow.balanced.psf()));
        part.step(
            "S",
            "heaviest snow on a rafter, on the level",
            expression,
            (loads.snow.psf(), "psf"),
            Basis::Published(chapter_7::FLAT_ROOF),
        );
        if let Some(pressure) = &self.pressure {
            let area = figure(pressure.area.square_feet());
            let zone = pressure.zone.name();
            let down = format!("zone {zone}, {area} sq ft, GC_p {}", figure(pressure.gc_p_inward));
            part.step(
                "W",
                "wind toward the roof, strength level",
                down,
                (loads.wind_down.psf(), "psf"),
                Basis::Published(pressure.source),
            );
            let up = format!("zone {zone}, {area} sq ft, GC_p {}", figure(pressure.gc_p_outward));
            part.step(
                "W",
                "wind away from it where it lifts hardest, strength level",
                up,
                (pressure.outward_strength.psf(), "psf"),
                Basis::Published(pressure.source),
            );
            let lift = loads.wind_up;
            let strips = format!(
                "{} at the eave, {} at the ridge, each over {}",
                figure(lift.eave.psf()),
                figure(lift.ridge.psf()),
                crate::words::length(lift.zone)
            );
            part.step(
                "W",
                "the same between the zones of eave and ridge",
                strips,
                (lift.between.psf(), "psf"),
                Basis::Published(pressure.source),
            );
            if loads.overhang_up > AreaLoad::ZERO {
                part.step(
                    "W",
                    "wind lifting an overhang, both faces",
                    "",
                    (loads.overhang_up.psf(), "psf"),
                    Basis::Published(pressure.source),
                );
            }
        }
        part
    }

    /// What presses and what lifts, for a picture.
    pub(super) fn arrows(&self) -> (String, String) {
        let most = self.loads.snow.max(self.loads.roof_live);
        let down = format!("{} + {} psf", figure(self.loads.dead.psf()), figure(most.psf()));
        let lift = self.loads.wind_up.between * loads::wind::asd_factor();
        let up = if lift > AreaLoad::ZERO { format!("{:.0} psf up", lift.psf().ceil()) } else { String::new() };
        (down, up)
    }
}
