//! What the building department gives: wind speeds, exposure, rising ground, openings, debris, metal, earthquakes.

use loads::criteria::{
    CodeEdition, SiteCriteria,
    corrosion::{is_of_class, metal_wanted, same_metal},
    debris::debris_region,
    exposure::{Sector, Surroundings},
    openings::{Broken, WallOpenings, broken_glass},
    seismic::bracing_for_wind_is_enough,
    topography::{RisingGround, Topography},
    wind_speed::{GivenSpeed, SpeedKind},
};
use measure::{Angle, Area, Length, Speed};
use standards::asce7_16::{
    chapter_1::RiskCategory,
    chapter_26::{Enclosure, Exposure},
    chapter_26_7::{ExposureRule, Fetch, Stretch, SurfaceRoughness},
    chapter_26_8::{Condition, Feature, FromCrest, LandForm, Position},
    chapter_26_12::{Coast, ONE_MILE, Openings},
};
use standards::ibc_2018::section_1609_2::WindZone;
use standards::irc_2021::r301_2::{Dwelling, SeismicDesignCategory};
use standards::irc_2021::r317_3::Protection;
use standards::nfip_technical_bulletin_8::{CorrosionClass, MetalExposure};
use standards::{Source, Status};

fn ft(value: f64) -> Length {
    Length::from_feet(value)
}

fn given(mph: f64, kind: SpeedKind) -> GivenSpeed {
    GivenSpeed { speed: Speed::from_mph(mph), kind }
}

/// Source: field case FC-53, changed maps: 120, 130, 140, 160, 170 mph are 93, 101, 108, 124, 132 nominal, to half a
/// mile per hour. Back from the whole numbers the ultimate speed is off by no more than 0.5 / sqrt(0.6) = 0.65.
#[test]
fn a_speed_is_shown_as_both_kinds() {
    for (ultimate, nominal) in [(120.0, 93.0), (130.0, 101.0), (140.0, 108.0), (160.0, 124.0), (170.0, 132.0)] {
        let from_ultimate = given(ultimate, SpeedKind::Ultimate).both_kinds().unwrap();
        assert!((from_ultimate.nominal.mph() - nominal).abs() <= 0.5);
        let from_nominal = given(nominal, SpeedKind::Nominal).both_kinds().unwrap();
        assert!((from_nominal.ultimate.mph() - ultimate).abs() <= 0.65);
        assert_eq!((from_ultimate.ultimate.mph(), from_nominal.nominal.mph()), (ultimate, nominal));
        assert_eq!((from_ultimate.given, from_nominal.given), (SpeedKind::Ultimate, SpeedKind::Nominal));
    }
}

#[test]
fn speeds_off_the_maps_are_refused_in_either_kind() {
    let reads = |mph, kind| given(mph, kind).both_kinds().is_ok();
    assert!(reads(85.0, SpeedKind::Ultimate) && !reads(84.9, SpeedKind::Ultimate));
    assert!(reads(200.0, SpeedKind::Ultimate) && !reads(200.1, SpeedKind::Ultimate));
    assert!(reads(66.0, SpeedKind::Nominal) && !reads(65.0, SpeedKind::Nominal));
    assert!(reads(154.9, SpeedKind::Nominal) && !reads(155.0, SpeedKind::Nominal));
    let message = given(160.0, SpeedKind::Nominal).both_kinds().unwrap_err().to_string();
    assert!(message.contains("nominal wind speed 160 mph, which is 206.6 mph ultimate"), "{message}");
    assert!(message.contains("code official"), "{message}");
}

#[test]
fn a_low_speed_is_asked_about_and_never_changed() {
    let asks = |mph, coast| given(mph, SpeedKind::Ultimate).looks_nominal(coast);
    assert!(asks(114.9, true) && !asks(115.0, true));
    assert!(asks(94.9, false) && !asks(95.0, false));
    assert!(!given(90.0, SpeedKind::Nominal).looks_nominal(true));
    assert_eq!(given(110.0, SpeedKind::Ultimate).both_kinds().unwrap().ultimate.mph(), 110.0);
}

/// Source: IRC 2012 and 2015, Figure R301.2(4)A, from memory.
#[test]
fn the_map_of_2012_has_nominal_speeds() {
    assert_eq!(CodeEdition::Irc2012.speed_kind(), SpeedKind::Nominal);
    for edition in [CodeEdition::Irc2015, CodeEdition::Irc2018, CodeEdition::Irc2021, CodeEdition::Irc2024] {
        assert_eq!(edition.speed_kind(), SpeedKind::Ultimate);
    }
}

/// Water to the southeast, 400 ft off beyond a strip of houses; wood everywhere else.
fn on_the_bay() -> Surroundings {
    let strip = Stretch { roughness: SurfaceRoughness::B, length: ft(400.0) };
    let toward = |sector| {
        if sector == Sector::Southeast {
            Fetch { stretches: vec![strip], beyond: SurfaceRoughness::D }
        } else {
            Fetch::all(SurfaceRoughness::B)
        }
    };
    Surroundings::BySector(Box::new(Sector::ALL.map(toward)))
}

#[test]
fn the_worst_direction_governs() {
    let found = on_the_bay().governing(ft(25.0)).unwrap();
    assert_eq!((found.exposure, found.rule), (Exposure::D, Some(ExposureRule::NearOpenGround)));
    assert_eq!(found.sector, Some(Sector::Southeast));
    let all = Surroundings::AllAround(Fetch::all(SurfaceRoughness::C)).governing(ft(25.0)).unwrap();
    assert_eq!((all.exposure, all.rule), (Exposure::C, Some(ExposureRule::NeitherOfTheOthers)));
    let stated = Surroundings::Given(Exposure::B).governing(ft(25.0)).unwrap();
    assert_eq!((stated.exposure, stated.rule, stated.sector), (Exposure::B, None, None));
    assert!(on_the_bay().governing(ft(0.0)).is_err());
}

/// Source: IBC 2018 1609.4: two sectors of 45 degrees, one to each side of the wind's direction. The water lies between
/// 135 and 180 degrees, so it counts for wind from over 90 to under 225.
#[test]
fn a_direction_takes_the_sectors_within_45_degrees() {
    let exposure = |degrees| {
        let from = Angle::from_degrees(degrees);
        on_the_bay().from_direction(from, ft(25.0)).unwrap().exposure
    };
    for degrees in [90.1, 135.0, 157.5, 180.0, 224.9, 360.0 + 150.0, -200.0] {
        assert_eq!(exposure(degrees), Exposure::D, "{degrees}");
    }
    for degrees in [0.0, 45.0, 90.0, 225.0, 270.0, 359.0, -10.0] {
        assert_eq!(exposure(degrees), Exposure::B, "{degrees}");
    }
}

fn bluff() -> RisingGround {
    RisingGround {
        land: LandForm { feature: Feature::Escarpment, height: ft(50.0), half_length: ft(60.0) },
        side: FromCrest::Downwind,
        distance: ft(30.0),
        position: Some(Position::UpperHalfOrNearCrest),
        clear_upwind: Some(ft(20_000.0)),
        highest_upwind: Some(ft(10.0)),
    }
}

/// Not published: the bluff of the loads sheet, worked by hand, 1.725 to three places.
#[test]
fn a_house_behind_a_bluff() {
    let found = Topography::Rising(bluff()).factor_at(Exposure::D, ft(13.5)).unwrap();
    assert!((found.factor - 1.725).abs() <= 5e-4, "{}", found.factor);
    assert!(found.failed.is_empty() && found.assumed.is_empty());
    assert!((found.multipliers.unwrap().k_2 - 0.925).abs() < 1e-12);
}

#[test]
fn a_factor_of_one_has_its_reason() {
    let found = |ground, exposure| Topography::Rising(ground).factor_at(exposure, ft(13.5)).unwrap();
    let low = found(bluff(), Exposure::B);
    assert_eq!((low.factor, low.failed, low.multipliers), (1.0, vec![Condition::HighEnough], None));
    let behind = found(RisingGround { position: Some(Position::Elsewhere), ..bluff() }, Exposure::D);
    assert_eq!((behind.factor, behind.failed), (1.0, vec![Condition::HighOnIt]));
    let crowded = RisingGround { clear_upwind: Some(ft(100.0)), highest_upwind: Some(ft(40.0)), ..bluff() };
    assert_eq!(found(crowded, Exposure::D).failed, [Condition::Isolated, Condition::TwiceAsHigh]);
    let flat = Topography::Flat.factor_at(Exposure::D, ft(13.5)).unwrap();
    assert_eq!((flat.factor, flat.failed), (1.0, vec![]));
}

#[test]
fn what_is_not_known_of_a_hill_is_taken_as_met_and_said() {
    let unknown = RisingGround { position: None, clear_upwind: None, highest_upwind: None, ..bluff() };
    let found = Topography::Rising(unknown).factor_at(Exposure::D, ft(13.5)).unwrap();
    assert!((found.factor - 1.725).abs() <= 5e-4);
    assert_eq!(found.assumed, [Condition::Isolated, Condition::TwiceAsHigh, Condition::HighOnIt]);
    assert!(Topography::Rising(unknown).prescriptive(Exposure::D).is_err());
}

#[test]
fn ground_that_no_rule_covers_goes_to_the_engineer() {
    let message = Topography::Unusual.factor_at(Exposure::C, ft(20.0)).unwrap_err().to_string();
    assert!(message.contains("gorge") && message.contains("engineer"), "{message}");
    assert!(Topography::Unusual.prescriptive(Exposure::C).is_err());
    let mut valley = bluff();
    valley.land.height = ft(-50.0);
    assert!(Topography::Rising(valley).factor_at(Exposure::C, ft(20.0)).is_err());
    // An impossible size is refused also where a condition fails.
    let mut low = bluff();
    low.distance = ft(-1.0);
    assert!(Topography::Rising(low).factor_at(Exposure::B, ft(20.0)).is_err());
}

/// The factor falls with height and with distance, and is never under 1, whatever the conditions say.
#[test]
fn the_factor_falls_and_is_never_under_one() {
    for feature in Feature::ALL {
        for exposure in Exposure::ALL {
            for (height, half_length) in [(20.0, 50.0), (60.0, 100.0), (60.0, 400.0), (150.0, 90.0)] {
                let land = LandForm { feature, height: ft(height), half_length: ft(half_length) };
                let at = |x: f64, z: f64| {
                    let ground = RisingGround { land, distance: ft(x), ..bluff() };
                    Topography::Rising(ground).factor_at(exposure, ft(z)).unwrap().factor
                };
                for step in 0..20 {
                    let (x, z) = (f64::from(step) * 25.0, f64::from(step) * 3.0);
                    assert!(at(x, 15.0) >= 1.0 && at(10.0, z) >= 1.0);
                    assert!(at(x + 25.0, 15.0) <= at(x, 15.0) && at(10.0, z + 3.0) <= at(10.0, z));
                }
            }
        }
    }
}

fn wall(gross: f64, open: f64, breakable: f64) -> WallOpenings {
    let area = Area::from_square_feet;
    WallOpenings { gross: area(gross), open: area(open), breakable: area(breakable) }
}

fn roof() -> Openings {
    Openings { open: Area::ZERO, gross: Area::from_square_feet(1300.0) }
}

/// Source: ASCE 7-16 26.2 and Table 26.13-1: an enclosed house whose 63 sq ft garage door fails is partially enclosed,
/// and the internal coefficient goes from 0.18 to 0.55.
#[test]
fn a_broken_garage_door_opens_the_house() {
    let walls = [wall(400.0, 0.0, 30.0), wall(280.0, 0.0, 63.0), wall(400.0, 0.0, 0.0), wall(280.0, 0.0, 0.0)];
    let found = broken_glass(&walls, roof()).unwrap();
    assert_eq!((found.whole, found.worst), (Enclosure::Enclosed, Enclosure::PartiallyEnclosed));
    assert!(found.matters());
    // The window in the first wall does it as well as the door; the first that does is named.
    assert_eq!(found.broken, Broken::Wall(0));
    let coefficients = [found.whole, found.worst].map(Enclosure::internal_pressure_coefficient);
    assert_eq!(coefficients, [0.18, 0.55]);
}

/// Small vents in every wall and nothing that breaks: enclosed whatever happens.
#[test]
fn protected_glass_changes_nothing() {
    let walls = [wall(400.0, 1.0, 0.0), wall(280.0, 1.0, 0.0), wall(400.0, 1.0, 0.0), wall(280.0, 1.0, 0.0)];
    let found = broken_glass(&walls, roof()).unwrap();
    assert_eq!((found.whole, found.worst, found.broken), (Enclosure::Enclosed, Enclosure::Enclosed, Broken::Nothing));
    assert!(!found.matters());
}

#[test]
fn a_house_that_is_open_whole_gets_no_worse() {
    let walls = [wall(400.0, 60.0, 20.0), wall(280.0, 0.0, 0.0), wall(400.0, 0.0, 0.0), wall(280.0, 0.0, 0.0)];
    let found = broken_glass(&walls, roof()).unwrap();
    assert_eq!((found.whole, found.worst), (Enclosure::PartiallyEnclosed, Enclosure::PartiallyEnclosed));
    assert!(!found.matters());
}

#[test]
fn more_glass_than_wall_is_refused() {
    assert!(broken_glass(&[wall(100.0, 0.0, 101.0)], roof()).is_err());
    assert!(broken_glass(&[wall(100.0, 50.0, -1.0)], roof()).is_err());
    assert!(broken_glass(&[], roof()).is_err());
}

/// Source: IBC 2018 202 and 1609.2.2 (federal compilation), ASCE 7-16 26.12.3.1.
#[test]
fn both_definitions_of_the_debris_region_are_shown() {
    let at =
        |mph, to_coast, open_water| debris_region(Coast::AtlanticOrGulf, Speed::from_mph(mph), to_coast, open_water);
    let bay = at(135.0, Some(ft(2000.0)), false);
    assert!(!bay.by_asce_7 && bay.by_building_code && bay.protection_wanted() && bay.hurricane_prone);
    assert_eq!(bay.zone, Some(WindZone::One));
    let inland = at(135.0, Some(ONE_MILE * 2.0), true);
    assert!(!inland.protection_wanted() && inland.zone.is_none());
    let strong = at(165.0, Some(ONE_MILE * 2.0), false);
    assert!(strong.by_asce_7 && strong.by_building_code);
    assert_eq!(strong.zone, Some(WindZone::Four));
    let unknown = at(145.0, None, false);
    assert!(unknown.assumed_at_coast && unknown.by_asce_7);
    assert_eq!(unknown.zone, Some(WindZone::Three));
    assert!(at(131.0, None, false).by_asce_7);
}

/// Source: field case of hangers under a raised house, 150 ft from salt water and sheltered from rain: stainless;
/// standard galvanizing rusted through.
#[test]
fn hangers_under_a_raised_house_are_stainless() {
    let found = metal_wanted(Some(ft(150.0)), MetalExposure::PartlySheltered).unwrap();
    assert_eq!(found.class, CorrosionClass::Stainless);
    assert!(is_of_class(Protection::Stainless, found.class));
    assert!(!is_of_class(Protection::HotDipGalvanized, found.class));
    assert!(!is_of_class(Protection::StandardGalvanized, CorrosionClass::HotDipOrStainless));
    assert!(is_of_class(Protection::HotDipGalvanized, CorrosionClass::HotDipOrStainless));
    assert!(!same_metal(Protection::Stainless, Protection::HotDipGalvanized));
    assert!(same_metal(Protection::HotDipGalvanized, Protection::StandardGalvanized));
    assert!(!same_metal(Protection::Copper, Protection::SiliconBronze));
    assert!(!same_metal(Protection::Plain, Protection::Electroplated));
}

#[test]
fn an_unknown_distance_is_taken_as_the_shore() {
    let unknown = metal_wanted(None, MetalExposure::BoldlyExposed).unwrap();
    assert_eq!((unknown.class, unknown.assumed_at_shore), (CorrosionClass::Stainless, true));
    assert_eq!(metal_wanted(Some(ft(100.0)), MetalExposure::DryInside).unwrap().source.status, Status::Disputed);
    let Source { status, .. } = metal_wanted(Some(ft(1000.0)), MetalExposure::DryInside).unwrap().source;
    assert_eq!(status, Status::FromMemory);
    assert!(metal_wanted(Some(ft(-10.0)), MetalExposure::BoldlyExposed).is_err());
    // Nearer never asks for less.
    for exposure in MetalExposure::ALL {
        let class = |feet| metal_wanted(Some(ft(feet)), exposure).unwrap().class;
        assert!(class(300.0) >= class(301.0) && class(3000.0) >= class(3001.0));
    }
}

/// Source: IRC R301.2.2, from memory.
#[test]
fn earthquakes_are_recorded_to_c_and_warned_of_beyond() {
    use SeismicDesignCategory::{A, B, C, D0, D1, D2, E};
    for category in [A, B, C] {
        assert_eq!(bracing_for_wind_is_enough(category, Dwelling::Detached), Ok(()));
    }
    for category in [D0, D1, D2, E] {
        let message = bracing_for_wind_is_enough(category, Dwelling::Detached).unwrap_err().to_string();
        assert!(message.contains(category.name()) && message.contains("engineer"), "{message}");
    }
    assert!(bracing_for_wind_is_enough(C, Dwelling::Townhouse).is_err());
}

fn site() -> SiteCriteria {
    SiteCriteria {
        edition: CodeEdition::Irc2021,
        dwelling: Dwelling::Detached,
        risk_category: RiskCategory::Two,
        wind_speed: given(140.0, SpeedKind::Ultimate),
        in_wind_design_region: false,
        surroundings: on_the_bay(),
        topography: Topography::Rising(bluff()),
        ground_elevation: None,
        coast: Coast::AtlanticOrGulf,
        to_coast: Some(ft(400.0)),
        open_water_at_coast: true,
        to_salt_water: Some(ft(400.0)),
        seismic: Some(SeismicDesignCategory::B),
    }
}

#[test]
fn the_criteria_of_a_house_on_a_bluff_over_the_bay() {
    let wind = site().wind(ft(13.5)).unwrap();
    assert!((wind.speed.nominal.mph() - 108.0).abs() <= 0.5);
    assert_eq!(wind.exposure.exposure, Exposure::D);
    assert!((wind.topography.factor - 1.725).abs() <= 5e-4);
    assert_eq!(wind.ground_elevation_factor, 1.0);
    assert!(wind.debris.protection_wanted());
    let high = SiteCriteria { ground_elevation: Some(ft(5000.0)), ..site() };
    // Source: ASCE 7-16 Table 26.9-1: 0.83 at 5,000 ft, to two places.
    assert!((high.wind(ft(13.5)).unwrap().ground_elevation_factor - 0.83).abs() <= 0.005);
}

#[test]
fn all_reasons_why_the_code_s_tables_do_not_reach_are_told() {
    let reasons = site().beyond_prescriptive(ft(13.5)).unwrap();
    let places: Vec<_> = reasons.iter().map(|reason| reason.source.place).collect();
    assert_eq!(places, ["R301.2.1.1", "1609.1.1.1"]);
    let calm = SiteCriteria {
        wind_speed: given(115.0, SpeedKind::Ultimate),
        surroundings: Surroundings::Given(Exposure::B),
        topography: Topography::Flat,
        ..site()
    };
    assert_eq!(calm.beyond_prescriptive(ft(20.0)), Ok(vec![]));
    let marked = SiteCriteria { in_wind_design_region: true, ..calm };
    assert_eq!(marked.beyond_prescriptive(ft(20.0)).unwrap().len(), 1);
    assert!(SiteCriteria { wind_speed: given(60.0, SpeedKind::Ultimate), ..site() }.wind(ft(20.0)).is_err());
}
