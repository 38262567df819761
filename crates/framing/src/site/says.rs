//! The sentences of a place.

use loads::house::House;
use loads::site::{LoadStandard, SiteWind};
use measure::Length;
use standards::asce7_16::chapter_26::Exposure;
use standards::asce7_16::chapter_26_7::{ExposureRule, Fetch, Stretch, SurfaceRoughness, exposure_rule};
use standards::asce7_16::chapter_26_8::Condition;
use standards::asce7_16::chapter_26_12::{Coast, DebrisSite};
use standards::ibc_2018::section_202::wind_borne_debris_region;
use standards::ibc_2018::section_1609_3::{nominal_speed, ultimate_speed};

use super::about::About;
use super::input;
use crate::reading::{Origin, Reading};
use crate::words;

const MILE: f64 = 5280.0;

/// What is to be known of the wind at a place.
pub(super) fn wind(about: &mut About<'_>, reading: &Reading, wind: &SiteWind, house: &House) {
    speed(about, reading, wind);
    exposure(about, reading, wind);
    ground(about, reading, wind);
    debris(about, reading, wind);
    around(about, reading);
    if reading.get("mean_roof_height").is_some_and(|value| value.origin != Origin::Assumed) {
        let of_house = house.mean_roof_height();
        if (of_house - wind.mean_roof_height).abs() > Length::from_feet(1.0) {
            let (typed, worked) = (words::length(wind.mean_roof_height), words::length(of_house));
            about.say(format!("Mean roof height: {typed} as typed; the house's outline gives {worked}."));
        }
    }
    if wind.standard == LoadStandard::Asce7Of22 {
        about.say("Roof covering: the zones of ASCE 7-16 stand in for those of 7-22, which are as high or lower.");
    }
    about.caution("Against uplift the roof's weight counts. Type what is surely there, and no more.");
    about.caution("The engineer's drawing wins, and so does the local code. The building official decides.");
    about.caution("A house of one rectangle is taken. Wings, dormers and parapets draw more wind at their corners.");
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
                "{} mph is slow for an ultimate speed on a coast. Was it given as a nominal one? Then the ultimate is \
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
    let Ok(rule) = exposure_rule(wind.mean_roof_height, &fetch) else { return };
    let found = rule.exposure();
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
    match input::hill_factor(reading, wind.mean_roof_height) {
        Some(Ok(factor)) if factor.factor > 1.0 => {
            about.say(format!(
                "The ground speeds the wind up: every pressure is {:.2} times that on level ground.",
                factor.factor
            ));
            about.caution(
                "Wood-frame tables of the code do not hold on the upper half of such ground: it needs an engineer.",
            );
        }
        Some(Ok(_)) => about.say("The house is too far from the crest for the ground to speed the wind up."),
        Some(Err(why)) => about.say(match why {
            Condition::Isolated | Condition::TwiceAsHigh | Condition::HighOnIt => {
                "The ground does not count: it does not stand out alone within 2 miles."
            }
            Condition::Steep => "The ground does not count: it rises less than a fifth of its half-way distance.",
            Condition::HighEnough => "The ground does not count: it is lower than 15 ft, or 60 ft in exposure B.",
        }),
        None => {}
    }
}

fn debris(about: &mut About<'_>, reading: &Reading, wind: &SiteWind) {
    if reading.word("hurricane_coast") != Some("yes") {
        if wind.speed.mph() >= 130.0 && reading.word("hurricane_coast").is_none() {
            about.ask("hurricane_coast", "Is it a hurricane coast? There the glass may need shutters.");
        }
        return;
    }
    let to_water = reading.number("salt_water").map(|miles| Length::from_feet(miles * MILE));
    let place = DebrisSite {
        coast: Coast::AtlanticOrGulf,
        speed: wind.speed,
        // Not said: on the shore, the worst.
        to_coast: to_water.unwrap_or_default(),
        open_water_at_coast: true,
    };
    if wind_borne_debris_region(&place) {
        about.say(
            "Wind-borne debris region (IBC 2018 1609.2): glass is made for it or covered. Panels of 7/16 in, to 8 ft long, \
             on fixed anchors, serve houses to 33 ft high.",
        );
        if reading.word("glass_protected") == Some("no") {
            about.say("The glass is not protected: count on a window that breaks, and on the wind inside.");
        }
    }
    if wind.exposure != Exposure::D && to_water.is_some_and(|distance| distance <= Length::from_feet(600.0)) {
        about.ask("exposure", "Open water within 600 ft counts as exposure D, on a hurricane coast too. Is there any?");
    }
}

fn around(about: &mut About<'_>, reading: &Reading) {
    if let Some(category) = reading.word("seismic_design_category")
        && category.starts_with(['D', 'E'])
    {
        about.outside(format!(
            "Seismic design category {category}: the shaking may govern over the wind. A licensed engineer decides on walls \
             and hold-downs."
        ));
    }
    let Some(miles) = reading.number("salt_water") else { return };
    let feet = miles * MILE;
    if feet <= 300.0 {
        about.say("Within 300 ft of salt water: stainless fasteners and connectors outdoors, of one metal throughout.");
    } else if feet <= 3000.0 {
        about.say(
            "Within 3,000 ft of salt water: stainless, or thick hot-dip galvanizing (G185) where it is not dry inside; never \
             electroplate; fastener and connector of one metal.",
        );
    }
}
