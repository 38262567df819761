//! The wind on a house, answered.

use loads::house::{House, WindDirection};
use loads::site::SiteWind;
use loads::wall_wind::{WallPressure, wall_pressure};
use loads::wind::directional::directional;
use loads::wind::envelope::envelope;
use loads::wind::roof::{RoofPressure, roof_pressures, zone_width};
use loads::wind::uplift::{LoadCaseOf, RoofUplift, uplift};
use loads::wind::{Push, asd_factor};
use measure::{Area, AreaLoad, Length};
use standards::OutsideTable;
use standards::asce7_16::chapter_26::Enclosure;
use standards::asce7_16::chapter_27::LOAD_CASES;
use standards::asce7_16::chapter_30::roofs::{FLAT_WIDTHS, RoofZone, flat_zones};
use standards::asce7_16::chapter_30::{WALL_COEFFICIENTS, WallZone, effective_wind_area};
use standards::ibc_2018::section_1609_3::nominal_speed;

use super::about::About;
use super::input;
use super::reply::{LevelReply, PressureReply, PushReply, UpliftReply, WindReply, WingReply};
use super::working;
use crate::reading::Reading;
use crate::words;

/// The area for which a covering and its fasteners are given.
const SMALL: Area = Area::from_square_feet(10.0);

/// Answers the wind; none where an input is wrong.
#[must_use]
pub fn wind(reading: &Reading) -> Option<WindReply> {
    let house = input::house(reading)?;
    let wind = input::wind(reading, &house)?;
    let mut about = About::of(reading, super::OF_WIND);
    super::says::wind(&mut about, reading, &wind, &house);
    let mut reply = WindReply {
        speed_mph: wind.speed.mph(),
        nominal_mph: nominal_speed(wind.speed).mph(),
        exposure: wind.exposure.letter().to_owned(),
        mean_roof_height: words::length(wind.mean_roof_height),
        topographic_factor: wind.topographic_factor,
        end_width: words::length(zone_width(&house, wind.mean_roof_height)),
        ..WindReply::default()
    };
    working::velocity(&mut about, reading, &wind);
    if refused(&mut about, reading) {
        reply.about = about.finish();
        return Some(reply);
    }
    walls(&mut reply, &mut about, reading, &wind)?;
    working::cladding(&mut about, "", &wind, &reply.pressures);
    let body = body(&mut about, reading, "", &wind, &house)?;
    reply.pressures.extend(body.pressures);
    (reply.push, reply.uplift) = (body.push, body.uplift);
    cases(&mut about, &house);
    let wing_ids = ["wing_length", "wing_width", "wing_eave_height"];
    if wing_ids.iter().any(|id| reading.number(id).is_some())
        && let Some(missing) = wing_ids.into_iter().find(|id| reading.number(id).is_none())
    {
        about.ask(missing, "How long, how wide and how high is the wing? Its wind is worked once all three are there.");
    }
    if let Some(wing) = input::wing(reading) {
        reply.wing = Some(self::body(&mut about, reading, "Wing: ", &input::wind_on_wing(&wind, &wing), &wing)?);
    }
    reply.about = about.finish();
    Some(reply)
}

/// Which of the load cases count for a house of so many storeys.
pub(crate) fn cases(about: &mut About<'_>, house: &House) {
    if house.storeys <= 2 {
        about.say(format!(
            "Wind on a corner: three quarters of both pushes act together. Cases that twist the house do not count for light \
             frames to two storeys ({}).",
            words::source(LOAD_CASES)
        ));
    } else {
        about.outside(format!(
            "Given: three storeys. The cases of wind that twist a house are let off only to two storeys ({}). An engineer works \
             them; the push square to the walls is here.",
            words::source(LOAD_CASES)
        ));
    }
}

/// Buildings that no figure here covers; each is said with its reason.
pub(crate) fn refused(about: &mut About<'_>, reading: &Reading) -> bool {
    let refused = [
        (
            "open_side",
            "a building with a side without a wall",
            "Where the wind blows in under a roof and finds no wall, other figures hold.",
        ),
        (
            "parapet",
            "a building with a parapet",
            "A parapet is pushed from both sides, and its roof is pulled in another way.",
        ),
    ];
    let mut any = false;
    for (id, given, why) in refused {
        if reading.word(id) == Some("yes") {
            about.outside(format!(
                "Given: {given}. Here only closed houses with eaves are worked (ASCE 7-16 Chapters 27 to 30). {why} An engineer \
                 works the wind on it."
            ));
            any = true;
        }
    }
    any
}

/// Roof, push and lift of the house or of its wing, with their working under that name.
fn body(about: &mut About<'_>, reading: &Reading, name: &str, wind: &SiteWind, house: &House) -> Option<WingReply> {
    let pressures = roof(about, reading, wind, house)?;
    working::cladding(about, name, wind, &pressures);
    if pressures.iter().any(|one| one.zone == RoofZone::OnePrime.name()) {
        let zones = flat_zones(wind.mean_roof_height);
        about.say(format!(
            "{name}Zones of a roof to 7 degrees: corners {} wide and {} long, edges {} wide, the next strip to {} from the edge ({}).",
            words::length(to_inch(zones.corner)),
            words::length(to_inch(zones.edge)),
            words::length(to_inch(zones.edge)),
            words::length(to_inch(zones.inner)),
            words::source(FLAT_WIDTHS)
        ));
    }
    let push = pushes(about, wind, house);
    working::pushes(about, name, wind, house);
    let uplift = lift(about, reading, wind, house)?;
    working::lift(about, name, uplift.as_ref());
    Some(WingReply {
        mean_roof_height: words::length(wind.mean_roof_height),
        end_width: words::length(zone_width(house, wind.mean_roof_height)),
        pressures,
        push,
        uplift,
    })
}

/// To the next whole inch: no one lays zones out closer.
fn to_inch(length: Length) -> Length {
    Length::from_inches(length.inches().ceil())
}

const WALL_ZONES: [(WallZone, &str); 2] =
    [(WallZone::Corner, "beside a corner"), (WallZone::Field, "away from corners")];

fn walls(reply: &mut WindReply, about: &mut About<'_>, reading: &Reading, wind: &SiteWind) -> Option<()> {
    let stud = effective_wind_area(reading.length("stud_height")?, reading.length("studs_apart")?);
    let opening = reading.length("opening_wide")? * reading.length("opening_high")?;
    // A header carries the upper half of the opening.
    let header = effective_wind_area(reading.length("opening_wide")?, reading.length("opening_high")? / 2.0);
    for (part, area) in [("opening", opening), ("header", header), ("stud", stud), ("wall", SMALL)] {
        for (zone, place) in WALL_ZONES {
            match wall_pressure(wind, zone, area) {
                Ok(found) => {
                    reply.q_h_psf = Some(found.q_h.psf());
                    reply.pressures.push(wall(part, place, &found));
                }
                Err(outside) => about.outside(outside.to_string()),
            }
        }
    }
    let broken = SiteWind { enclosure: Enclosure::PartiallyEnclosed, ..*wind };
    if wind.enclosure != Enclosure::PartiallyEnclosed {
        let found = wall_pressure(&broken, WallZone::Corner, opening).ok();
        reply.if_glass_breaks = found.map(|found| wall("opening", "beside a corner, wind inside", &found));
    }
    Some(())
}

fn wall(part: &str, place: &str, found: &WallPressure) -> PressureReply {
    PressureReply {
        part: part.to_owned(),
        zone: found.zone.number().to_string(),
        place: place.to_owned(),
        area_sqft: found.area.square_feet(),
        inward_psf: Some(found.inward.psf()),
        outward_psf: found.outward.psf(),
        inward_strength_psf: Some(found.inward_strength.psf()),
        outward_strength_psf: found.outward_strength.psf(),
        source: words::source(WALL_COEFFICIENTS),
    }
}

/// Where a part of the roof is, in words.
fn roof_place(zone: RoofZone) -> &'static str {
    match zone {
        RoofZone::OnePrime => "in the middle",
        RoofZone::One => "away from edges",
        RoofZone::Two => "along edges",
        RoofZone::TwoE => "along the eave",
        RoofZone::TwoN => "along the rake",
        RoofZone::TwoR => "along the ridge",
        RoofZone::Three => "in corners",
        RoofZone::ThreeE => "at eave corners",
        RoofZone::ThreeR => "at ridge ends",
    }
}

/// Length of a rafter along its slope, wall to ridge.
fn rafter_length(house: &House) -> Length {
    house.width / 2.0 / house.angle().cos()
}

fn roof(about: &mut About<'_>, reading: &Reading, wind: &SiteWind, house: &House) -> Option<Vec<PressureReply>> {
    let mut pressures = Vec::new();
    let rafter = effective_wind_area(rafter_length(house), reading.length("rafters_apart")?);
    let kinds = [("roof", SMALL, false), ("rafter", rafter, false), ("overhang", SMALL, true)];
    for (part, area, overhang) in kinds {
        if overhang && house.eave_overhang.max(house.rake_overhang) <= Length::ZERO {
            continue;
        }
        match roof_pressures(wind, house, area, overhang) {
            Ok((_, found)) => pressures.extend(found.iter().map(|one| roof_part(part, one))),
            Err(outside) => about.outside(outside.to_string()),
        }
    }
    Some(pressures)
}

fn roof_part(part: &str, found: &RoofPressure) -> PressureReply {
    let inward = |psf: AreaLoad| (!found.overhang).then(|| psf.psf());
    PressureReply {
        part: part.to_owned(),
        zone: found.zone.name().to_owned(),
        place: roof_place(found.zone).to_owned(),
        area_sqft: found.area.square_feet(),
        inward_psf: inward(found.inward_asd),
        outward_psf: found.outward_asd.psf(),
        inward_strength_psf: inward(found.inward_strength),
        outward_strength_psf: found.outward_strength.psf(),
        source: words::source(found.source),
    }
}

pub(super) const fn direction_words(direction: WindDirection) -> &'static str {
    match direction {
        WindDirection::AcrossRidge => "across the ridge",
        WindDirection::AlongRidge => "along the ridge",
    }
}

fn pushes(about: &mut About<'_>, wind: &SiteWind, house: &House) -> Vec<PushReply> {
    let mut pushes: Vec<PushReply> = Vec::new();
    for direction in WindDirection::ALL {
        let first = pushes.len();
        for found in by_each_procedure(wind, house, direction) {
            match found {
                Ok((procedure, push)) => pushes.push(push_reply(procedure, &push)),
                Err(outside) => about.outside(outside.to_string()),
            }
        }
        let most = pushes[first..].iter().map(|push| push.total_lb).fold(0.0, f64::max);
        for push in &mut pushes[first..] {
            push.governs = push.total_lb >= most;
        }
    }
    pushes
}

/// The push of a direction by each procedure that is worked, with its name.
fn by_each_procedure(
    wind: &SiteWind,
    house: &House,
    direction: WindDirection,
) -> [Result<(&'static str, Push), OutsideTable>; 2] {
    let by_27 = directional(wind, house, direction).map(|found| ("directional", found.push));
    let by_28 = envelope(wind, house, direction).map(|found| ("envelope", found.push));
    [by_28, by_27]
}

/// The push of a direction by the procedure that governs, which is the one with the most in all; at strength level.
///
/// # Errors
/// Where neither procedure covers the house.
pub(crate) fn governing_push(
    wind: &SiteWind,
    house: &House,
    direction: WindDirection,
) -> Result<(&'static str, Push), OutsideTable> {
    let [by_28, by_27] = by_each_procedure(wind, house, direction);
    match (by_28, by_27) {
        (Ok(one), Ok(other)) => Ok(if other.1.total > one.1.total { other } else { one }),
        (Ok(found), Err(_)) | (Err(_), Ok(found)) => Ok(found),
        (Err(outside), Err(_)) => Err(outside),
    }
}

fn push_reply(procedure: &str, push: &Push) -> PushReply {
    let asd = asd_factor();
    PushReply {
        direction: direction_words(push.direction).to_owned(),
        procedure: procedure.to_owned(),
        levels: push
            .levels
            .iter()
            .map(|level| LevelReply {
                height: words::length(level.height),
                here_lb: (level.here * asd).pounds(),
                shear_below_lb: (level.shear_below * asd).pounds(),
            })
            .collect(),
        to_foundation_lb: (push.to_foundation * asd).pounds(),
        total_lb: (push.total * asd).pounds(),
        total_strength_lb: push.total.pounds(),
        overturning_ft_lb: (push.overturning * asd).foot_pounds(),
        least_governs: push.least_governs,
        governs: false,
    }
}

fn lift(about: &mut About<'_>, reading: &Reading, wind: &SiteWind, house: &House) -> Option<Option<UpliftReply>> {
    let (roof, ceiling) = super::gravity::roof_and_ceiling(reading, house)?;
    let apart = reading.length("rafters_apart")?;
    Some(match uplift(wind, house, roof, ceiling) {
        Ok(found) => Some(uplift_reply(&found, apart)),
        Err(outside) => {
            about.outside(outside.to_string());
            None
        }
    })
}

fn uplift_reply(found: &RoofUplift, apart: Length) -> UpliftReply {
    let name = |case: LoadCaseOf, end: bool| {
        let wind = if case == LoadCaseOf::A { "wind across the ridge" } else { "wind along the ridge" };
        format!("{wind}, {}", if end { "end strip" } else { "between" })
    };
    let case = |one: &loads::wind::uplift::Uplift| {
        (name(one.case, one.end), one.at_windward_wall.plf(), one.at_leeward_wall.plf())
    };
    UpliftReply {
        cases: found.cases.iter().map(case).collect(),
        dead_plf: found.dead.plf(),
        net_end_plf: found.net_asd_end.plf(),
        net_interior_plf: found.net_asd_interior.plf(),
        rafters_apart: words::inches(apart),
        rafter_end_lb: (found.net_asd_end * apart).pounds(),
        rafter_interior_lb: (found.net_asd_interior * apart).pounds(),
    }
}
