//! A header case, read and answered.

use loads::header::{HeaderSupport, Tributary};
use loads::site::{AtticLive, SiteLoads, WallAbove};
use lumber::{
    Conditions, EngineeredLabel, Grade, LabelInput, Member, Product, SawnSize, Species, candidates::header_candidates,
};
use measure::{AreaLoad, Length, LineLoad, Ratio, Stress};
use members::header::{
    Above, Closure, CodeEdition, DeflectionLimits, Gap, HeaderAnswer, HeaderInput, Wall, Wind, check_header,
};
use standards::asce7_16::chapter_7::{RoofExposure, Terrain, ThermalCondition, exposure_factor};
use standards::asce7_16::chapter_26::{Enclosure, Exposure, ground_elevation_factor};
use standards::asce7_16::chapter_30::WallZone;
use standards::nds_2018::chapter_2::ServiceMoisture;

use crate::HeaderCase;
use crate::field::HEADER_FIELDS;
use crate::reading::Reading;

/// A header case with what was understood of it and, where nothing is wrong with it, its answer.
#[derive(Clone, Debug, PartialEq)]
pub struct HeaderOutcome {
    /// What was understood.
    pub reading: Reading,
    /// The inputs as quantities, and the answer; none when an input is wrong.
    pub answered: Option<(HeaderInput, HeaderAnswer)>,
}

/// Reads and answers a header case. What it does not say comes from the job's site values, then from what is assumed.
#[must_use]
pub fn derive_header(case: &HeaderCase, site: &HeaderCase) -> HeaderOutcome {
    let mut reading = Reading::of(HEADER_FIELDS, case, site);
    let input = input(&mut reading);
    let answered = input.filter(|_| reading.problems().next().is_none()).map(|input| {
        let answer = check_header(&input);
        (input, answer)
    });
    HeaderOutcome { reading, answered }
}

/// The inputs as quantities; none where one of them is wrong. What is wrong between two inputs is said at the second.
fn input(reading: &mut Reading) -> Option<HeaderInput> {
    refuse_what_does_not_agree(reading);
    let support = HeaderSupport::from_id(reading.word("carries")?)?;
    let species = Species::from_text(reading.word("species")?).ok()?;
    let grade = Grade::from_text(reading.word("grade")?).ok()?;
    let labelled = labelled(reading);
    let building_width = reading.length("building_width")?;
    let input = HeaderInput {
        opening: reading.length("opening_width")?,
        support,
        tributary: tributary(reading, support)?,
        building_width,
        above: above(reading),
        closure: if reading.word("closure")? == "overhead_door" { Closure::OverheadDoor } else { Closure::FramedUnit },
        wall: wall(reading)?,
        species,
        grade,
        conditions: conditions(reading)?,
        plies_share_load: reading.word("plies_share_load")? == "yes",
        site: site_loads(reading)?,
        wind: wind(reading, support)?,
        limits: DeflectionLimits { live: reading.number("live_limit")?, total: reading.number("total_limit")? },
        chosen: chosen(reading, species, grade, labelled.as_ref()),
        labelled,
        edition: edition(reading.word("edition")?),
        gap: gap(reading),
    };
    Some(input)
}

fn refuse_what_does_not_agree(reading: &mut Reading) {
    if let Some(problem) = crate::site::speed_off_the_maps(reading) {
        reading.refuse("wind_speed", problem);
    }
    let (wall, head) = (reading.length("wall_height"), reading.length("head_height"));
    if let (Some(wall), Some(head)) = (wall, head) {
        let room = members::header::room_between(wall, head);
        if room < LEAST_ROOM {
            let written = |length: Length| length.to_feet_inches(measure::Denominator::Sixteenth);
            reading.refuse(
                "head_height",
                format!(
                    "Head height {} was given; in a wall of {} at most {} is taken: plates and the shallowest header stand above it.",
                    written(head),
                    written(wall),
                    written(head + room - LEAST_ROOM),
                ),
            );
        }
    }
    let (now, later) = (reading.number("moisture_now"), reading.number("moisture_in_service"));
    if let (Some(now), Some(later)) = (now, later)
        && later > now
        && reading.number("gap_at_jack").is_some()
    {
        reading
            .refuse("moisture_in_service", format!("{later} % was given; at most the {now} % it was set at is taken."));
    }
}

/// The shallowest header is a 2x4 on edge.
const LEAST_ROOM: Length = Length::from_inches(3.5);

fn tributary(reading: &Reading, support: HeaderSupport) -> Option<Tributary> {
    let overhang = reading.length("overhang")?;
    let mut tributary = Tributary::of_building(support, reading.length("building_width")?, overhang);
    if let Some(roof) = reading.length("roof_tributary") {
        tributary = tributary.with_roof(roof, overhang);
    }
    if let Some(floor) = reading.length("floor_tributary") {
        tributary = tributary.with_floor(floor);
    }
    Some(tributary)
}

fn above(reading: &Reading) -> Option<Above> {
    match reading.word("above")? {
        "framing_bears" => Some(Above::FramingBears),
        _ => Some(Above::CrippleStuds),
    }
}

fn wall(reading: &Reading) -> Option<Wall> {
    Some(Wall {
        height: reading.length("wall_height")?,
        head_height: reading.length("head_height")?,
        stud: SawnSize::from_text(reading.word("wall_studs")?).ok()?,
        spacing: reading.length("stud_spacing")?,
    })
}

fn conditions(reading: &Reading) -> Option<Conditions> {
    let service = if reading.word("service")? == "wet" { ServiceMoisture::Wet } else { ServiceMoisture::Dry };
    Some(Conditions { service, incised: reading.word("incised")? == "yes", ..Conditions::default() })
}

fn site_loads(reading: &Reading) -> Option<SiteLoads> {
    let psf = |id| reading.number(id).map(AreaLoad::from_psf);
    let mut site = SiteLoads::assumed();
    site.roof_dead = psf("roof_dead")?;
    site.ceiling_dead = psf("ceiling_dead")?;
    site.attic_live = AtticLive::given(psf("attic_live")?);
    site.floor_dead = psf("floor_dead")?;
    site.floor_live = psf("floor_live")?;
    site.roof_live = psf("roof_live")?;
    site.ground_snow = psf("ground_snow")?;
    site.given_roof_snow = psf("roof_snow");
    if let Some(total) = reading.number("wall_above") {
        site.wall_above = WallAbove::Total(LineLoad::from_plf(total));
    }
    site.wind.speed = crate::site::basic_speed(reading)?;
    site.wind.exposure = match reading.word("exposure")? {
        "B" => Exposure::B,
        "C" => Exposure::C,
        _ => Exposure::D,
    };
    site.wind.mean_roof_height = reading.length("mean_roof_height")?;
    site.wind.topographic_factor = reading.number("topographic_factor")?;
    site.wind.ground_elevation_factor = ground_elevation_factor(reading.feet("ground_elevation")?);
    site.wind.enclosure = match reading.word("enclosure")? {
        "partially_open" => Enclosure::PartiallyOpen,
        "partially_enclosed" => Enclosure::PartiallyEnclosed,
        _ => Enclosure::Enclosed,
    };
    site.snow.thermal = thermal(reading.word("thermal")?).factor();
    if let Some(exposure) = snow_exposure(reading, site.wind.exposure) {
        site.snow.exposure = exposure;
    }
    Some(site)
}

/// What is under the roof.
pub(crate) fn thermal(word: &str) -> ThermalCondition {
    match word {
        "heated" => ThermalCondition::Heated,
        "unheated" => ThermalCondition::Unheated,
        "freezing" => ThermalCondition::BelowFreezing,
        _ => ThermalCondition::ColdVentilatedRoof,
    }
}

/// The exposure factor for snow, where it was said what shelters the roof.
pub(crate) fn snow_exposure(reading: &Reading, exposure: Exposure) -> Option<Ratio> {
    let terrain = match exposure {
        Exposure::B => Terrain::B,
        Exposure::C => Terrain::C,
        Exposure::D => Terrain::D,
    };
    let roof = match reading.word("snow_exposure")? {
        "fully" => RoofExposure::Fully,
        "sheltered" => RoofExposure::Sheltered,
        _ => RoofExposure::Partially,
    };
    exposure_factor(terrain, roof).ok()
}

fn wind(reading: &Reading, support: HeaderSupport) -> Option<Wind> {
    if matches!(support, HeaderSupport::InteriorOneFloor | HeaderSupport::InteriorTwoFloors) {
        return Some(Wind::None);
    }
    if let Some(pressure) = reading.number("wind_pressure") {
        return Some(Wind::Given(AreaLoad::from_psf(pressure)));
    }
    let zone = if reading.word("near_corner")? == "no" { WallZone::Field } else { WallZone::Corner };
    Some(Wind::Site(zone))
}

fn edition(word: &str) -> CodeEdition {
    match word {
        "2018" => CodeEdition::Irc2018,
        "2012" => CodeEdition::Irc2012,
        _ => CodeEdition::Irc2021,
    }
}

fn gap(reading: &Reading) -> Option<Gap> {
    Some(Gap {
        opening: reading.length("gap_at_jack")?,
        moisture_when_set: reading.number("moisture_now")?,
        moisture_in_service: reading.number("moisture_in_service")?,
    })
}

const LABEL_FIELDS: [&str; 7] =
    ["label_breadth", "label_depth", "label_fb", "label_fv", "label_e", "label_fc_perp", "label_depth_exponent"];

/// The member typed in from its label: all of it or none; what is missing is said where it is missing.
fn labelled(reading: &mut Reading) -> Option<Member> {
    let begun = reading.word("label_name").is_some() || LABEL_FIELDS.iter().any(|id| reading.word(id).is_some());
    if !begun {
        return None;
    }
    let missing: Vec<&str> = LABEL_FIELDS.into_iter().filter(|id| reading.word(id).is_none()).collect();
    for id in &missing {
        reading.refuse(
            id,
            "Nothing was typed; a member from its label needs it. It is on the label or the supplier's sheet."
                .to_owned(),
        );
    }
    let stress = |id| reading.number(id).map(Stress::from_psi);
    let label = LabelInput {
        name: reading.word("label_name").unwrap_or("From its label").to_owned(),
        breadth: reading.length("label_breadth")?,
        depth: reading.length("label_depth")?,
        fb: stress("label_fb")?,
        fv: stress("label_fv")?,
        e: stress("label_e")?,
        fc_perp: stress("label_fc_perp")?,
        depth_exponent: reading.number("label_depth_exponent")?,
    };
    match EngineeredLabel::new(label) {
        Ok(label) => Some(Member::single(Product::Labelled(label))),
        Err(problem) => {
            reading.refuse("label_name", problem.to_string());
            None
        }
    }
}

fn chosen(reading: &mut Reading, species: Species, grade: Grade, labelled: Option<&Member>) -> Option<Member> {
    let size = reading.word("size")?.trim().to_owned();
    let plain = |name: &str| name.to_ascii_lowercase().replace([' ', '(', ')'], "");
    let found =
        header_candidates(species, grade).chain(labelled.cloned()).find(|member| plain(&member.name()) == plain(&size));
    if found.is_none() {
        reading.refuse(
            "size",
            format!("“{size}” was given; sizes such as 2-2x10, 4x12 or 2-1-3/4x11-7/8 LVL are taken. Choose one from the list."),
        );
    }
    found
}
