//! The sentences of a place.

use loads::criteria::corrosion::{SAME_METAL, metal_wanted};
use loads::criteria::exposure::Surroundings;
use loads::criteria::openings::Broken;
use loads::criteria::seismic::bracing_for_wind_is_enough;
use loads::house::House;
use loads::site::{LoadStandard, SiteWind};
use measure::Length;
use standards::asce7_16::chapter_26::{Enclosure, Exposure};
use standards::asce7_16::chapter_26_7::{ExposureRule, Fetch, Stretch, SurfaceRoughness};
use standards::asce7_16::chapter_26_8::Condition;
use standards::asce7_16::chapter_26_12::Coast;
use standards::ibc_2018::section_1609_2::{PANEL_ROOF_HEIGHT, PROTECTION};
use standards::ibc_2018::section_1609_3::{nominal_speed, ultimate_speed};
use standards::nfip_technical_bulletin_8::{CorrosionClass, MetalExposure};

use super::about::About;
use super::input;
use crate::reading::{Origin, Reading};
use crate::words;

/// What is to be known of the wind at a place.
pub(super) fn wind(about: &mut About<'_>, reading: &Reading, wind: &SiteWind, house: &House) {
    speed(about, reading, wind);
    exposure(about, reading, wind);
    ground(about, reading, wind);
    debris(about, reading, wind);
    inside(about, reading, wind, house);
    beyond_tables(about, reading, wind);
    earthquakes(about, reading);
    metal(about, reading);
    if reading.get("mean_roof_height").is_some_and(|value| value.origin != Origin::Assumed) {
        let of_house = house.mean_roof_height();
        if (of_house - wind.mean_roof_height).abs() > Length::from_feet(1.0) {
            let (typed, worked) = (words::length(wind.mean_roof_height), words::length(of_house));
            about.say(format!("Mean roof height: {typed} as typed; the house's outline gives {worked}."));
        }
    }
    if wind.standard == LoadStandard::Asce7Of22 {
        about.say("Roof covering: the zones of ASCE 7-16 stand in for those of 7-22, which are as high or lower.");
        about.say(
            "Headers of this job are worked by ASCE 7-16: their wind is at most half a per cent less than that of 7-22, and the \
             ground snow counts in full where 7-22 takes 0.7 of it.",
        );
    }
    about.caution("Against uplift the roof's weight counts. Type what is surely there, and no more.");
    about.caution("The engineer's drawing wins, and so does the local code. The building official decides.");
    about.caution(if input::wing(reading).is_some() {
        "House and wing are each worked as if alone: what one shields of the other is not counted. Dormers and parapets draw \
         more wind at their corners."
    } else {
        "A house of one rectangle is taken. Wings, dormers and parapets draw more wind at their corners."
    });
    if let Some(wing) = input::wing(reading)
        && reading.word("wing_roof_kind").is_none()
    {
        about.assume("wing_roof_kind", &format!("Its roof: {}, as on the house.", wing.roof.name()));
    }
}

fn speed(about: &mut About<'_>, reading: &Reading, wind: &SiteWind) {
    if reading.get("wind_speed").is_some_and(|value| value.origin == Origin::Assumed) {
        about.ask("wind_speed", "What is the basic wind speed of the place? Ask the building department.");
    }
    if input::looks_nominal(reading) {
        let if_nominal = ultimate_speed(wind.speed).mph().round();
        about.ask(
            "speed_given_as",
            format!(
                "{} mph is slow for an ultimate speed. Was it given as a nominal one? Then the ultimate is \
                 {if_nominal} mph.",
                wind.speed.mph().round()
            ),
        );
    }
    if reading.word("speed_given_as") == Some("nominal") {
        about.say(format!(
            "Nominal {} mph is {} mph ultimate: what all of this is worked with.",
            nominal_speed(wind.speed).mph().round(),
            wind.speed.mph().round()
        ));
    }
}

fn exposure(about: &mut About<'_>, reading: &Reading, wind: &SiteWind) {
    let (rough, water) = (reading.feet("rough_upwind"), reading.feet("water_upwind"));
    if rough.is_none() && water.is_none() {
        return;
    }
    let stretch = |roughness, length: Option<Length>| {
        length.filter(|length| *length > Length::ZERO).map(|length| Stretch { roughness, length })
    };
    let stretches = [stretch(SurfaceRoughness::B, rough), stretch(SurfaceRoughness::D, water)];
    let fetch = Fetch { stretches: stretches.into_iter().flatten().collect(), beyond: SurfaceRoughness::C };
    let Ok(finding) = Surroundings::AllAround(fetch).governing(wind.mean_roof_height) else { return };
    let (found, Some(rule)) = (finding.exposure, finding.rule) else { return };
    let why = match rule {
        ExposureRule::SheltersLowHouse => "houses or woods reach more than 1,500 ft",
        ExposureRule::SheltersHighHouse => "houses or woods reach more than 2,600 ft and 20 heights",
        ExposureRule::OpenFromTheHouse => "open water or flats reach 5,000 ft and more from the house",
        ExposureRule::NearOpenGround => "the house is within 600 ft or 20 heights of wide open water or flats",
        ExposureRule::NeitherOfTheOthers => "neither woods nor open water reach far enough",
    };
    let letter = found.letter();
    let typed = reading.get("exposure").is_some_and(|value| value.origin != Origin::Assumed);
    match (found == wind.exposure, typed) {
        (true, _) => about.say(format!("Exposure {letter}: {why}.")),
        (false, true) => about.say(format!(
            "What stands upwind gives exposure {letter}: {why}. {} is typed, and is worked with.",
            wind.exposure.letter()
        )),
        (false, false) => about.ask("exposure", format!("What stands upwind gives exposure {letter}: {why}. Say so?")),
    }
}

fn ground(about: &mut About<'_>, reading: &Reading, wind: &SiteWind) {
    let shaped = reading.word("hill").is_some_and(|word| word != "flat");
    if !shaped {
        return;
    }
    let ids = ["hill_height", "hill_half_length", "hill_distance"];
    if let Some(missing) = ids.into_iter().find(|id| reading.number(id).is_none()) {
        about.ask(missing, "How high is it, how far to half-way down, and how far is the house from its crest?");
    }
    let Some(Ok(found)) = input::ground_finding(reading, wind.mean_roof_height) else { return };
    if let Some(unmet) = found.failed.first() {
        about.say(match unmet {
            Condition::Isolated | Condition::TwiceAsHigh | Condition::HighOnIt => {
                "The ground does not count: it does not stand out alone within 2 miles."
            }
            Condition::Steep => "The ground does not count: it rises less than a fifth of its half-way distance.",
            Condition::HighEnough => "The ground does not count: it is lower than 15 ft, or 60 ft in exposure B.",
        });
    } else if found.factor > 1.0 {
        about.say(format!(
            "The ground speeds the wind up: every pressure is {:.2} times that on level ground.",
            found.factor
        ));
        about.assume("hill", "The house is taken as high on it, whichever way the wind blows.");
    } else {
        about.say("The house is too far from the crest for the ground to speed the wind up.");
    }
}

fn debris(about: &mut About<'_>, reading: &Reading, wind: &SiteWind) {
    let Some(found) = input::debris(reading) else {
        if wind.speed.mph() >= 130.0 {
            about.ask("hurricane_coast", "Is it a hurricane coast? There the glass may need shutters.");
        }
        return;
    };
    if found.protection_wanted() {
        let zone = found.zone.map_or_else(String::new, |zone| format!(", wind zone {} of ASTM E1996", zone.number()));
        about.say(format!(
            "Wind-borne debris region ({}{zone}): the glass is made for it or covered.",
            words::source(PROTECTION)
        ));
        if wind.mean_roof_height <= PANEL_ROOF_HEIGHT {
            about.say("Panels of 7/16 in, to 8 ft long, on anchors that stay in the wall, may cover it.");
        }
        if found.assumed_at_coast {
            about.assume("salt_water", "The house stands at the water, for what the wind carries.");
        }
        if reading.word("glass_protected").is_none() {
            about.ask(
                "glass_protected",
                "Is the glass protected? If not, it counts as broken and the wind pushes from inside.",
            );
        }
    }
    let near = input::to_salt_water(reading).is_some_and(|distance| distance <= Length::from_feet(600.0));
    if wind.exposure != Exposure::D && near && input::coast(reading) != Some(Coast::Elsewhere) {
        about.ask("exposure", "Open water within 600 ft counts as exposure D, on a hurricane coast too. Is there any?");
    }
}

/// What a broken window does.
fn inside(about: &mut About<'_>, reading: &Reading, wind: &SiteWind, house: &House) {
    let measured = input::glass(reading, house).and_then(Result::ok);
    let worst = measured.map(|found| found.worst);
    let is_taken = reading.get("enclosure").is_some_and(|value| value.origin == Origin::Assumed);
    if is_taken && input::glass_breaks(reading) && wind.enclosure != Enclosure::Enclosed {
        about.assume("enclosure", "Doors and windows: a large one breaks, as the glass is not protected.");
    }
    let where_it_breaks = match measured.map(|found| found.broken) {
        Some(Broken::Wall(0 | 1)) => "in an eave wall",
        Some(Broken::Wall(_)) => "in an end wall",
        Some(Broken::All) => "all around",
        Some(Broken::Nothing) | None => "in one wall",
    };
    match (input::glass_breaks(reading), wind.enclosure) {
        (true, Enclosure::PartiallyEnclosed) => about.say(format!(
            "The glass is not protected: it is counted as broken {where_it_breaks}, and the wind pushes from inside as well."
        )),
        (true, _) => about.say("The glass is not protected and counts as broken, but not enough of it in one wall to matter."),
        (false, Enclosure::Enclosed) if worst == Some(Enclosure::PartiallyEnclosed) => about.say(format!(
            "Were the glass to break {where_it_breaks}, the wind would push from inside as well."
        )),
        _ => {}
    }
    if input::glass_breaks(reading) && measured.is_none() {
        about.ask("glass_front", "How much glass is in each wall? It decides whether a broken window opens the house.");
    }
}

/// Where the code's own tables for wind do not reach the house.
fn beyond_tables(about: &mut About<'_>, reading: &Reading, wind: &SiteWind) {
    let reasons =
        input::criteria(reading).and_then(|criteria| criteria.beyond_prescriptive(wind.mean_roof_height).ok());
    for reason in reasons.unwrap_or_default() {
        about.say(format!("The code's own tables for wind do not reach this house. {reason}"));
    }
}

fn earthquakes(about: &mut About<'_>, reading: &Reading) {
    let Some(category) = input::seismic(reading) else { return };
    match bracing_for_wind_is_enough(category, input::dwelling(reading)) {
        Ok(()) => about.say(format!("Seismic design category {}: bracing for wind is what counts.", category.name())),
        Err(outside) => about.outside(outside.to_string()),
    }
}

/// The metal of a class, in words.
pub(crate) const fn metal_of_class(class: CorrosionClass) -> &'static str {
    match class {
        CorrosionClass::Standard => "as the wood asks",
        CorrosionClass::HotDipOrStainless => "thick hot-dip galvanized (G185) or stainless",
        CorrosionClass::Stainless => "stainless",
    }
}

fn metal(about: &mut About<'_>, reading: &Reading) {
    let Some(distance) = input::to_salt_water(reading) else { return };
    let class =
        |exposure| metal_wanted(Some(distance), exposure).map_or(CorrosionClass::Stainless, |found| found.class);
    let wanted = metal_of_class;
    let outdoors = class(MetalExposure::BoldlyExposed);
    if outdoors == CorrosionClass::Standard {
        return;
    }
    about.say(format!(
        "Salt: fasteners and connectors outdoors {}; under cover outdoors {}; in vented attics and crawl spaces {}; dry \
         inside {}. Never electroplate.",
        wanted(outdoors),
        wanted(class(MetalExposure::PartlySheltered)),
        wanted(class(MetalExposure::VentedSpace)),
        wanted(class(MetalExposure::DryInside)),
    ));
    about.say(format!("A fastener and its connector are of one metal ({}).", words::source(SAME_METAL)));
}
