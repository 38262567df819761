//! What must hold of every header, whatever its numbers.

#![expect(clippy::unwrap_used, reason = "in a test a panic is the report")]

use loads::header::{HeaderSupport, Tributary};
use loads::site::SiteLoads;
use lumber::{Conditions, Grade, Member, Product, Sawn, SawnSize, ServiceMoisture, Species};
use measure::{AreaLoad, Length, Speed};
use members::header::{
    Above, Closure, CodeEdition, DeflectionLimits, HeaderInput, Tried, Wall, Wind, check_header, judge_size,
};
use proptest::prelude::*;
use standards::asce7_16::chapter_30::WallZone;

fn feet(feet: f64) -> Length {
    Length::from_feet(feet)
}

fn input(support: HeaderSupport, opening: f64, width: f64, snow: f64) -> HeaderInput {
    let mut site = SiteLoads::assumed();
    site.ground_snow = AreaLoad::from_psf(snow);
    HeaderInput {
        opening: feet(opening),
        support,
        tributary: Tributary::of_building(support, feet(width), feet(2.0)),
        building_width: feet(width),
        above: Some(Above::CrippleStuds),
        closure: Closure::FramedUnit,
        wall: Wall {
            height: feet(9.0),
            head_height: feet(6.875),
            stud: SawnSize::from_text("2x6").unwrap(),
            spacing: Length::from_inches(16.0),
        },
        species: Species::SprucePineFir,
        grade: Grade::No2,
        conditions: Conditions::default(),
        plies_share_load: true,
        site,
        wind: Wind::Site(WallZone::Field),
        limits: DeflectionLimits { live: 360.0, total: 240.0 },
        labelled: None,
        chosen: None,
        edition: CodeEdition::Irc2021,
        gap: None,
    }
}

fn size(plies: u8, width: u8, species: Species, grade: Grade) -> Member {
    let sawn = Sawn { species, grade, size: SawnSize::new(2, width).unwrap() };
    Member::new(Product::Sawn(sawn), plies).unwrap()
}

fn share(tried: &Tried) -> f64 {
    tried.governing().unwrap().share
}

/// The share of bending, shear, sag and wind: those that do not start over with one jack more.
fn along(tried: &Tried) -> Vec<f64> {
    use members::header::Limit::{Bending, LiveDeflection, Shear, Slenderness, TotalDeflection, Wind};
    let limits = [Bending, Shear, LiveDeflection, TotalDeflection, Wind, Slenderness];
    limits
        .into_iter()
        .filter_map(|limit| tried.checks.iter().find(|check| check.limit == limit))
        .map(|check| check.share)
        .collect()
}

prop_compose! {
    fn cases()(
        support in prop::sample::select(HeaderSupport::ALL.to_vec()),
        opening in 2.0..18.0_f64,
        width in 12.0..40.0_f64,
        snow in 0.0..90.0_f64,
        plies in 1..=4_u8,
        nominal in prop::sample::select(vec![6_u8, 8, 10, 12]),
    ) -> (HeaderInput, Member) {
        (input(support, opening, width, snow), size(plies, nominal, Species::SprucePineFir, Grade::No2))
    }
}

/// Not the least weaker: what rounding leaves is let pass.
fn never_better(before: &Tried, after: &Tried) -> bool {
    let (before, after) = (along(before), along(after));
    if before.len() != after.len() {
        // One of them is too slender to be worked at all.
        return true;
    }
    before.iter().zip(&after).all(|(before, after)| *after >= before * (1.0 - 1e-12))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn a_wider_opening_is_never_stronger((input, member) in cases(), more in 0.01..4.0_f64) {
        let wider = HeaderInput { opening: input.opening + feet(more), ..input.clone() };
        // With the same wind pressure: the code lowers it a little as the area grows.
        let steady = |input: HeaderInput| HeaderInput { wind: Wind::Given(AreaLoad::from_psf(25.0)), ..input };
        let before = judge_size(&steady(input), member.clone());
        let after = judge_size(&steady(wider), member);
        prop_assert!(never_better(&before, &after), "{before:?} {after:?}");
    }

    #[test]
    fn more_snow_is_never_better((input, member) in cases(), more in 0.0..60.0_f64) {
        let mut heavier = input.clone();
        heavier.site.ground_snow = input.site.ground_snow + AreaLoad::from_psf(more);
        prop_assert!(never_better(&judge_size(&input, member.clone()), &judge_size(&heavier, member)));
    }

    #[test]
    fn more_wind_is_never_better((input, member) in cases(), more in 0.0..59.0_f64) {
        let mut windier = input.clone();
        windier.site.wind.speed = input.site.wind.speed + Speed::from_mph(more);
        prop_assert!(never_better(&judge_size(&input, member.clone()), &judge_size(&windier, member)));
    }

    #[test]
    fn wet_wood_is_never_stronger((input, member) in cases()) {
        let wet = Conditions { service: ServiceMoisture::Wet, ..input.conditions };
        let wet = HeaderInput { conditions: wet, ..input.clone() };
        prop_assert!(never_better(&judge_size(&input, member.clone()), &judge_size(&wet, member)));
    }

    #[test]
    fn incised_wood_is_never_stronger((input, member) in cases()) {
        let incised = Conditions { incised: true, ..input.conditions };
        let incised = HeaderInput { conditions: incised, ..input.clone() };
        prop_assert!(never_better(&judge_size(&input, member.clone()), &judge_size(&incised, member)));
    }

    #[test]
    fn a_top_that_is_held_is_never_weaker((input, member) in cases()) {
        let held = HeaderInput { above: Some(Above::FramingBears), ..input.clone() };
        prop_assert!(never_better(&judge_size(&held, member.clone()), &judge_size(&input, member)));
    }

    #[test]
    fn one_ply_more_is_never_weaker((input, _) in cases(), plies in 1..=3_u8, nominal in prop::sample::select(vec![6_u8, 8, 10, 12])) {
        let of = |plies| judge_size(&input, size(plies, nominal, Species::SprucePineFir, Grade::No2));
        // The added ply's own weight is far less than what it carries, unless there is next to nothing to carry.
        prop_assume!(input.tributary.roof > Length::ZERO || input.tributary.floor > Length::ZERO);
        prop_assert!(share(&of(plies + 1)) <= share(&of(plies)) * (1.0 + 1e-12) || share(&of(plies + 1)) <= 1.0);
    }

    #[test]
    fn a_better_grade_is_never_weaker((input, _) in cases(), nominal in prop::sample::select(vec![6_u8, 8, 10, 12])) {
        let of = |grade| judge_size(&input, size(2, nominal, Species::DouglasFirLarch, grade));
        prop_assert!(never_better(&of(Grade::SelectStructural), &of(Grade::No2)));
        prop_assert!(never_better(&of(Grade::No2), &of(Grade::No3)));
    }

    #[test]
    fn the_answer_works_or_nothing_does((input, _) in cases()) {
        let answer = check_header(&input);
        let judged = &answer.tried[answer.judged];
        prop_assert_eq!(judged.works(), answer.tried.iter().any(Tried::works));
        for &index in &answer.smallest {
            let smallest = &answer.tried[index];
            let area = |tried: &Tried| tried.member.section().area.square_inches();
            for other in answer.tried.iter().filter(|other| other.family == smallest.family && other.works()) {
                prop_assert!(area(other) >= area(smallest));
            }
        }
    }

    #[test]
    fn the_reaction_is_half_the_load_on_the_span((input, _) in cases()) {
        let answer = check_header(&input);
        let jacks = answer.tried[answer.judged].jacks.unwrap_or(5);
        let ends = (1.5 * f64::from(jacks)).max(3.0);
        let expected = answer.line_load.plf() * (input.opening.inches() + ends) / 12.0 / 2.0;
        prop_assert!((answer.reaction.pounds() - expected).abs() <= 1e-9 * expected.abs());
    }
}

/// The same input gives the same answer, working and all.
#[test]
fn twice_the_same() {
    let input = input(HeaderSupport::OneFloorClearSpan, 7.5, 26.0, 40.0);
    assert_eq!(check_header(&input), check_header(&input));
}
