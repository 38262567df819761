//! Arithmetic done twice: no published answer with all its inputs was found for these.

use crate::common::{DRY, agrees, built_up, inches, near, sawn, stresses};
use lumber::{Glulam, GlulamLayup, Grade, LoadDuration, Lvl, LvlGrade, Member, Product, Species};
use measure::{Force, Length};
use standards::nds_2018::{
    chapter_3::{
        BendingCase, ColumnMaterial, ColumnStage, beam_stability_factor, column_critical_stress,
        column_slenderness_ratio, column_stability_factor, critical_buckling_stress, effective_length,
        rectangular_shear_stress, slenderness_ratio,
    },
    chapter_15::{BowDirection, PlyFastening, built_up_column_factor},
};

/// What a column carries that bows over a length in the direction of a size, in pounds.
fn carries(member: &Member, length: f64, across_plies: bool) -> f64 {
    let section = member.section();
    let found = stresses(member, DRY, LoadDuration::TenYears);
    let fc_star = found.fc_star.unwrap();
    let (size, e_min) = if across_plies { (section.breadth, found.e_min_weak) } else { (section.depth, found.e_min) };
    let ratio = column_slenderness_ratio(inches(length), size, ColumnStage::InService).unwrap().value;
    let critical = column_critical_stress(e_min, ratio).unwrap().value;
    let factor = column_stability_factor(critical, fc_star, ColumnMaterial::Sawn).unwrap().value;
    let bow = if across_plies { BowDirection::AcrossPlies } else { BowDirection::AlongPlies };
    let joined = match member.plies() {
        1 => 1.0,
        plies => built_up_column_factor(plies, inches(1.5), PlyFastening::Nailed, bow).unwrap().value,
    };
    (fc_star * factor * joined * section.area).pounds()
}

#[test]
fn nailed_columns() {
    let three = built_up(Species::SprucePineFir, Grade::No2, "2x6", 3);
    agrees(carries(&three, 96.0, true), "10778");
    agrees(carries(&three, 96.0, false), "22519");
    let two = built_up(Species::SprucePineFir, Grade::No2, "2x6", 2);
    agrees(carries(&two, 96.0, true), "3735");
    agrees(carries(&two, 96.0, false), "15012");
}

#[test]
fn posts_4x4() {
    let rows = [
        (Species::SprucePineFir, Grade::No2, ["14884", "9470", "6092", "4956", "4092", "2907"]),
        (Species::DouglasFirLarch, Grade::No1, ["19264", "11783", "7479", "6068", "5001", "3545"]),
        (Species::SouthernPine, Grade::No2, ["16152", "9757", "6169", "5001", "4120", "2919"]),
    ];
    for (species, grade, row) in rows {
        for (feet, printed) in [3.0, 6.0, 8.0, 9.0, 10.0, 12.0].into_iter().zip(row) {
            agrees(carries(&sawn(species, grade, "4x4"), feet * 12.0, false), printed);
        }
    }
}

#[test]
fn posts_6x6() {
    let rows = [
        (Species::SouthernPine, Grade::No2, ["14069", "12725", "11001"]),
        (Species::SprucePineFir, Grade::No2, ["13112", "11620", "9806"]),
        (Species::DouglasFirLarch, Grade::No1, ["24795", "20918", "16823"]),
    ];
    for (species, grade, row) in rows {
        for (feet, printed) in [8.0, 10.0, 12.0].into_iter().zip(row) {
            agrees(carries(&sawn(species, grade, "6x6"), feet * 12.0, false), printed);
        }
    }
}

/// A header of two 2x10, 6-1/4 ft, 900 plf: too small in bending, well in shear.
#[test]
fn header_of_two_2x10() {
    let header = built_up(Species::SprucePineFir, Grade::No2, "2x10", 2);
    let section = header.section();
    let found = stresses(&header, DRY, LoadDuration::TenYears);
    let moment = Force::from_pounds(900.0 * 6.25) * Length::from_feet(6.25) / 8.0;
    agrees((moment / section.section_modulus_strong).psi(), "1232.7");
    agrees(found.fb_star.psi(), "962.5");
    let shear = Force::from_pounds(900.0 * (6.25 / 2.0 - 9.25 / 12.0));
    agrees(rectangular_shear_stress(shear, section.breadth, section.depth).value.psi(), "114.5");
    agrees(found.fv.psi(), "135");
    agrees(found.fc_perp.psi(), "425");
    let stiffness = (found.e * section.second_moment_strong).pound_square_inches();
    agrees(5.0 * 75.0 * 75.0 * 75.0 * 75.0 * 75.0 / (384.0 * stiffness), "0.112");
}

#[test]
fn a_single_2x10_without_a_brace() {
    let beam = sawn(Species::SprucePineFir, Grade::No2, "2x10");
    let section = beam.section();
    let found = stresses(&beam, DRY, LoadDuration::TenYears);
    let effective = effective_length(BendingCase::SimpleUniform, Length::from_feet(10.0), section.depth).value;
    agrees(effective.inches(), "223.35");
    let slenderness = slenderness_ratio(effective, section.depth, section.breadth).unwrap().value;
    agrees(slenderness, "30.30");
    let critical = critical_buckling_stress(found.e_min_weak, slenderness).unwrap().value;
    agrees(critical.psi(), "666.5");
    agrees(beam_stability_factor(critical, found.fb_star).unwrap().value, "0.6367");
}

/// Published glulam shear and moment table (volume factor at 21 ft): `V = 2/3 F_v A`, `M = F_b C_V S`.
#[test]
fn glulam_capacities_as_published() {
    let rows = [(3.125, "6625", "15000"), (5.125, "10865", "24600"), (6.75, "14310", "31520")];
    for (breadth, shear, moment) in rows {
        let glulam = Glulam::new(GlulamLayup::V4DouglasFir, inches(breadth), inches(12.0)).unwrap();
        let beam = Member::single(Product::Glulam(glulam));
        let (found, section) = (stresses(&beam, DRY, LoadDuration::TenYears), beam.section());
        // The table prints to whole fives and tens.
        near((found.fv * section.area).pounds() / 1.5, shear, 2.5);
        let volume = beam.volume_factor(Length::from_feet(21.0)).unwrap().value;
        near((found.fb_star * volume * section.section_modulus_strong).foot_pounds(), moment, 5.0);
    }
}

/// A deep generic LVL takes the steeper exponent as a factor to compare with `C_L`; a shallow one the gentler, within
/// its bending value.
#[test]
fn generic_lvl_takes_the_worse_exponent() {
    let lvl = |depth| Lvl::new(LvlGrade::E20Fb2600, Lvl::USUAL_BREADTH, inches(depth)).unwrap();
    let member = |depth| Member::single(Product::Lvl(lvl(depth)));
    let fb = |depth| stresses(&member(depth), DRY, LoadDuration::TenYears).fb_star.psi();
    let span = Length::from_feet(12.0);
    agrees(fb(18.0), "2600.0");
    agrees(member(18.0).volume_factor(span).unwrap().value, "0.9463");
    agrees(fb(9.5), "2668.4");
    assert_eq!(member(9.5).volume_factor(span), None);
}
