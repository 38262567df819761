//! Members against published worked examples, to half of the last digit printed.
//!
//! A wider tolerance stands with its reason.

use crate::common::{DRY, REPETITIVE, WET, agrees, inches, near, psi, sawn, stresses};
use lumber::{Grade, LoadDuration, Lvl, LvlGrade, Member, Product, Species};
use measure::{Force, Length, LineLoad, Stress};
use standards::nds_2018::{
    chapter_3::{
        BendingCase, ColumnMaterial, ColumnStage, StrongAxis, WeakAxis, beam_stability_factor, bearing_area_factor,
        bearing_stress, column_critical_stress, column_slenderness_ratio, column_stability_factor,
        combined_bending_compression, critical_buckling_stress, effective_length, rectangular_shear_stress,
        slenderness_ratio,
    },
    chapter_15::{BowDirection, PlyFastening, built_up_column_factor},
};

/// `F_cE` and `C_P` of a column of sawn lumber that bows over a length in the direction of a size.
fn column(e_min: Stress, fc_star: Stress, length: Length, size: Length) -> (Stress, f64) {
    let ratio = column_slenderness_ratio(length, size, ColumnStage::InService).unwrap().value;
    let critical = column_critical_stress(e_min, ratio).unwrap().value;
    (critical, column_stability_factor(critical, fc_star, ColumnMaterial::Sawn).unwrap().value)
}

/// `F_bE` and `C_L` of a beam with a point load at its middle and no brace between its ends.
fn point_load_beam(member: &Member, e_min: Stress, fb_star: Stress, span: Length) -> (Stress, f64) {
    let section = member.section();
    let effective = effective_length(BendingCase::SimpleCentreUnbraced, span, section.depth).value;
    let slenderness = slenderness_ratio(effective, section.depth, section.breadth).unwrap().value;
    let critical = critical_buckling_stress(e_min, slenderness).unwrap().value;
    (critical, beam_stability_factor(critical, fb_star).unwrap().value)
}

/// Missouri S&T CE 5260, Problem 4.30: 2x10 Hem-Fir No. 2 roof joist, snow.
#[test]
fn roof_joist_under_snow() {
    let joist = sawn(Species::HemFir, Grade::No2, "2x10");
    let found = stresses(&joist, REPETITIVE, LoadDuration::TwoMonths);
    agrees(found.fb_star.psi(), "1237");
    agrees(found.ft.unwrap().psi(), "664");
    agrees(found.fv.psi(), "173");
    agrees(found.fc_perp.psi(), "405");
    agrees(found.fc_star.unwrap().psi(), "1495");
}

/// Missouri S&T CE 5260, Problem 6.2: 4x8 Douglas Fir-Larch No. 1, 400 + 1,600 lb at the middle of 8 ft, dry and wet.
#[test]
fn roof_beam_with_a_point_load() {
    let beam = sawn(Species::DouglasFirLarch, Grade::No1, "4x8");
    let section = beam.section();
    let span = Length::from_feet(8.0);
    let bending = Force::from_pounds(2000.0) * span / 4.0 / section.section_modulus_strong;
    let shear = rectangular_shear_stress(Force::from_pounds(1000.0), section.breadth, section.depth).value;
    // The page divides by the tabulated 30.66 in³ of the 4x8: 1565.6 there, 1565.5 from the exact 30.661.
    near(bending.psi(), "1566", 0.55);
    agrees(shear.psi(), "59.1");
    let sag = |e: Stress| {
        let stiffness = (e * section.second_moment_strong).pound_square_inches();
        1600.0 * 96.0 * 96.0 * 96.0 / (48.0 * stiffness)
    };
    let dry = stresses(&beam, DRY, LoadDuration::SevenDays);
    agrees(dry.fb_star.psi(), "1625");
    agrees(dry.fv.psi(), "225");
    agrees(dry.e.psi() / 1e6, "1.70");
    agrees(sag(dry.e), "0.156");
    let wet = stresses(&beam, WET, LoadDuration::SevenDays);
    agrees(wet.fb_star.psi(), "1381");
    agrees(wet.fv.psi(), "218");
    agrees(wet.e.psi() / 1e6, "1.53");
    // The page divides by the tabulated 111.1 in⁴: 0.1735 there, 0.1734 from the exact 111.148.
    near(sag(wet.e), "0.1735", 0.0001);
    assert!(bending <= dry.fb_star && bending > wet.fb_star);
}

/// Missouri S&T CE 5260, Problem 6.5: the same beam without a brace.
#[test]
fn roof_beam_without_a_brace() {
    let beam = sawn(Species::DouglasFirLarch, Grade::No1, "4x8");
    let found = stresses(&beam, DRY, LoadDuration::SevenDays);
    let (critical, factor) = point_load_beam(&beam, found.e_min_weak, found.fb_star, inches(96.0));
    agrees(critical.psi(), "8202");
    agrees(factor, "0.9880");
}

/// Missouri S&T CE 5260, Problem 7.24: 2x4 Construction Hem-Fir studs; dead load and roof live load.
#[test]
fn construction_grade_studs() {
    let stud = sawn(Species::HemFir, Grade::Construction, "2x4");
    let at = |duration| stresses(&stud, DRY, duration);
    agrees(at(LoadDuration::Permanent).fc_star.unwrap().psi(), "1395");
    agrees(at(LoadDuration::SevenDays).fc_star.unwrap().psi(), "1938");
    assert_eq!(at(LoadDuration::Permanent).e_min, psi(470_000.0));
}

/// Missouri S&T CE 5260, Problem 7.32: 2x6 Douglas Fir-Larch No. 1 studs, 14 ft. Its `F_c*` use the 2x6 size factor.
#[test]
fn tall_exterior_studs() {
    let stud = sawn(Species::DouglasFirLarch, Grade::No1, "2x6");
    let rows = [
        (LoadDuration::Permanent, "1485"),
        (LoadDuration::TenYears, "1650"),
        (LoadDuration::SevenDays, "2063"),
        (LoadDuration::TenMinutes, "2640"),
    ];
    for (duration, printed) in rows {
        agrees(stresses(&stud, DRY, duration).fc_star.unwrap().psi(), printed);
    }
    let found = stresses(&stud, DRY, LoadDuration::TenYears);
    let (critical, _) = column(found.e_min, found.fc_star.unwrap(), Length::from_feet(14.0), inches(5.5));
    agrees(critical.psi(), "546.2");
}

/// Purdue CE 479 wood design example: 2x8 Douglas Fir-Larch No. 1, wet, snow.
#[test]
fn wet_joist_under_snow() {
    let found = stresses(&sawn(Species::DouglasFirLarch, Grade::No1, "2x8"), WET, LoadDuration::TwoMonths);
    agrees(found.fb_star.psi(), "1173");
    agrees(found.ft.unwrap().psi(), "932");
    agrees(found.fv.psi(), "201");
}

/// Calculation sheet filed with a city building department (2021), based on NDS 2018: 2x6 Spruce-Pine-Fir Stud grade,
/// 9 ft, 24 in apart, D 683, L 960, S 538 plf, 0.6 W 15 psf.
#[test]
fn bearing_wall_of_stud_grade() {
    let stud = sawn(Species::SprucePineFir, Grade::Stud, "2x6");
    let section = stud.section();
    let axial = |plf: f64| Force::from_pounds(plf * 2.0) / section.area;
    let wind =
        |psf: f64| Force::from_pounds(psf * 2.0 * 9.0) * Length::from_feet(9.0) / 8.0 / section.section_modulus_strong;
    let interaction = |plf: f64, psf: f64, duration| {
        let found = stresses(&stud, REPETITIVE, duration);
        let fc_star = found.fc_star.unwrap();
        let (critical, factor) = column(found.e_min, fc_star, inches(108.0), section.depth);
        let strong = StrongAxis { fb: wind(psf), fb_prime: found.fb_star, column_critical: critical };
        let both = combined_bending_compression(axial(plf), fc_star * factor, strong, None).unwrap();
        (both.interaction.value, axial(plf) / (fc_star * factor))
    };
    agrees(interaction(683.0, 15.0, LoadDuration::TenMinutes).0, "0.53");
    let with_snow = 683.0 + 0.75 * (960.0 + 538.0);
    agrees(interaction(with_snow, 0.75 * 15.0, LoadDuration::TenMinutes).0, "0.92");
    agrees(interaction(with_snow, 0.0, LoadDuration::TwoMonths).1, "0.72");
    agrees(interaction(683.0 + 960.0, 0.0, LoadDuration::TenYears).1, "0.71");
    let plate = |species| {
        let cross_grain = stresses(&sawn(species, Grade::No2, "2x6"), DRY, LoadDuration::TwoMonths).fc_perp;
        let factor = bearing_area_factor(section.breadth, inches(12.0)).unwrap().value;
        bearing_stress(Force::from_pounds(with_snow * 2.0), section.breadth, section.depth).value
            / (cross_grain * factor)
    };
    agrees(plate(Species::HemFir), "0.87");
    agrees(plate(Species::DouglasFirLarch), "0.56");
    let e = stresses(&stud, DRY, LoadDuration::TenMinutes).e;
    let load = LineLoad::from_plf(30.0).pounds_per_inch();
    let stiffness = (e * section.second_moment_strong).pound_square_inches();
    agrees(5.0 * load * 108.0 * 108.0 * 108.0 * 108.0 / (384.0 * stiffness), "0.18");
}

/// AWC Structural Wood Design Examples 2015/2018, E1.2a: 4x16 Douglas Fir-Larch Select Structural, 20 ft.
#[test]
fn deep_beam_without_a_brace() {
    let beam = sawn(Species::DouglasFirLarch, Grade::SelectStructural, "4x16");
    let section = beam.section();
    let found = stresses(&beam, DRY, LoadDuration::TenYears);
    agrees(section.area.square_inches(), "53.38");
    agrees(section.section_modulus_strong.cubic_inches(), "135.66");
    agrees(section.second_moment_strong.inches_fourth(), "1034");
    let span = Length::from_feet(20.0);
    let effective = effective_length(BendingCase::SimpleCentreUnbraced, span, section.depth).value;
    agrees(effective.inches(), "375");
    agrees(slenderness_ratio(effective, section.depth, section.breadth).unwrap().value, "21.6");
    let (critical, factor) = point_load_beam(&beam, found.e_min_weak, found.fb_star, span);
    agrees(critical.psi(), "1776");
    agrees(factor, "0.876");
    agrees((found.fb_star * factor).psi(), "1313");
}

/// AWC Structural Wood Design Examples 2015/2018, E1.8: 2x4 Southern Pine No. 2, 3 ft, bent both ways and pressed.
#[test]
fn beam_column_bent_both_ways() {
    let member = sawn(Species::SouthernPine, Grade::No2, "2x4");
    let section = member.section();
    let length = inches(36.0);
    let point = |pounds: f64| Force::from_pounds(pounds) * length / 4.0;
    // Duration; axial, strong and weak loads, lb; F_c*, C_P, F_c', F_b2', f_c, f_b1, f_b2, Eq. 3.9-3.
    let rows = [
        (LoadDuration::TenMinutes, 900.0, 120.0, 150.0, ["2320", "0.29", "673", "1936", "171", "353", "1029", "0.98"]),
        (LoadDuration::TwoMonths, 900.0, 0.0, 150.0, ["1667", "0.387", "646", "1392", "171", "0", "1029", "1.04"]),
        (LoadDuration::Permanent, 300.0, 0.0, 50.0, ["1305", "0.473", "617", "1089", "57", "0", "342.9", "0.35"]),
    ];
    for (duration, axial, strong, weak, printed) in rows {
        let found = stresses(&member, DRY, duration);
        let fc_star = found.fc_star.unwrap();
        let (critical_weak, factor) = column(found.e_min_weak, fc_star, length, section.breadth);
        let (critical_strong, _) = column(found.e_min, fc_star, length, section.depth);
        let (beam_critical, stability) = point_load_beam(&member, found.e_min_weak, found.fb_star, length);
        let fc = Force::from_pounds(axial) / section.area;
        let strong_axis = StrongAxis {
            fb: point(strong) / section.section_modulus_strong,
            fb_prime: found.fb_star * stability,
            column_critical: critical_strong,
        };
        let weak_axis = WeakAxis {
            fb: point(weak) / section.section_modulus_weak,
            fb_prime: found.fb_weak.unwrap(),
            column_critical: critical_weak,
            beam_critical,
        };
        let both = combined_bending_compression(fc, fc_star * factor, strong_axis, Some(weak_axis)).unwrap();
        let computed = [
            fc_star.psi(),
            factor,
            (fc_star * factor).psi(),
            weak_axis.fb_prime.psi(),
            fc.psi(),
            strong_axis.fb.psi(),
            weak_axis.fb.psi(),
            both.interaction.value,
        ];
        for (computed, printed) in computed.into_iter().zip(printed) {
            // 1667.5 is printed as 1667 and 0.3875 as 0.387: the set cuts the half digit off.
            let places = printed.split_once('.').map_or(0, |(_, decimals)| decimals.len());
            near(computed, printed, [0.51, 0.051, 0.0051, 0.00051][places]);
        }
        assert!(both.stability.unwrap().value < 1.0);
    }
    let found = stresses(&member, DRY, LoadDuration::TenMinutes);
    let (_, stability) = point_load_beam(&member, found.e_min_weak, found.fb_star, length);
    agrees(stability, "0.982");
    agrees((found.fb_star * stability).psi(), "1729");
}

/// AWC Structural Wood Design Examples 2015/2018, E1.7: 2x6 Southern Pine No. 1 stud, 9 ft. The printed answers start
/// from stresses rounded in MPa: they agree to 0.1 % and half of their last digit.
#[test]
fn southern_pine_stud_in_the_wind() {
    let stud = sawn(Species::SouthernPine, Grade::No1, "2x6");
    let section = stud.section();
    let moment = Force::from_pounds(25.0 * 4.0 * 9.0) * Length::from_feet(9.0) / 8.0;
    // Duration; axial load, lb; wind; C_P, F_c', F_b', ratio.
    let rows = [
        (LoadDuration::TenMinutes, 1400.0, true, ["0.4322", "1073.4", "2158.8", "0.8875"]),
        (LoadDuration::TwoMonths, 1400.0, false, ["0.5547", "990.1", "1551.7", "0.1714"]),
        (LoadDuration::Permanent, 560.0, false, ["0.6475", "904.5", "1214.3", "0.0750"]),
    ];
    for (duration, axial, windy, printed) in rows {
        let found = stresses(&stud, DRY, duration);
        let fc_star = found.fc_star.unwrap();
        let (critical, factor) = column(found.e_min, fc_star, inches(108.0), section.depth);
        let fc = Force::from_pounds(axial) / section.area;
        let strong = StrongAxis {
            fb: moment / section.section_modulus_strong,
            fb_prime: found.fb_star,
            column_critical: critical,
        };
        let both = combined_bending_compression(fc, fc_star * factor, strong, None).unwrap().interaction.value;
        let ratio = if windy { both } else { fc / (fc_star * factor) };
        for (computed, printed) in
            [factor, (fc_star * factor).psi(), found.fb_star.psi(), ratio].into_iter().zip(printed)
        {
            let places = printed.split_once('.').map_or(0, |(_, decimals)| decimals.len());
            near(computed, printed, 0.001 * computed + [0.5, 0.05, 0.005, 0.0005, 0.00005][places]);
        }
    }
}

/// Textbook "Structural Wood Design", Example 5.7: three nailed 2x6 Douglas Fir-Larch No. 1, 12 ft.
#[test]
fn nailed_three_ply_column() {
    let column_of_plies = crate::common::built_up(Species::DouglasFirLarch, Grade::No1, "2x6", 3);
    let section = column_of_plies.section();
    let found = stresses(&column_of_plies, DRY, LoadDuration::TenYears);
    let fc_star = found.fc_star.unwrap();
    let (_, solid) = column(found.e_min_weak, fc_star, inches(144.0), section.breadth);
    agrees(solid, "0.27988");
    let joined = built_up_column_factor(3, inches(1.5), PlyFastening::Nailed, BowDirection::AcrossPlies).unwrap().value;
    agrees(joined * solid, "0.16793");
}

/// Published LVL technical guide of 2014, page 5: 2900 Fb - 2.0E, 3-1/2 x 11-1/4.
#[test]
fn laminated_veneer_beam_capacities() {
    let beam = Member::single(Product::Lvl(Lvl::new(LvlGrade::E20Fb2900, inches(3.5), inches(11.25)).unwrap()));
    let section = beam.section();
    let found = stresses(&beam, DRY, LoadDuration::TenYears);
    agrees((found.fv * section.area).pounds() / 1.5, "7481");
    // The guide prints the moment to whole tens.
    near((found.fb_star * section.section_modulus_strong).foot_pounds(), "17970", 5.0);
    agrees(section.area.square_inches(), "39.4");
    agrees(section.section_modulus_strong.cubic_inches(), "73.8");
    agrees(section.second_moment_strong.inches_fourth(), "415");
    assert_eq!(beam.volume_factor(Length::from_feet(15.0)), None);
}

/// A trap in a forum thread: the size factor 1.5 of the other grades on a Stud-grade 2x4. The published 2,430 psi is
/// 36 % too high; with the Stud size factor it is 1,782 psi (1.5 is the wind factor of the stud).
#[test]
fn stud_grade_does_not_take_the_size_factor_of_the_other_grades() {
    let found = stresses(&sawn(Species::SprucePineFir, Grade::Stud, "2x4"), DRY, LoadDuration::TenMinutes);
    let with_wind_factor = found.fb_star.psi() * 1.5;
    agrees(with_wind_factor, "1782");
    assert!(with_wind_factor < 0.75 * 2430.0);
}
