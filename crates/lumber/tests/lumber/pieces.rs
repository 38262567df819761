//! Names, sizes, sections, weights, values that are held and values that are not.

use crate::common::{DRY, REPETITIVE, WET, agrees, built_up, inches, psi, sawn, stresses};
use lumber::{
    Adjusted, AdjustedStresses, AdjustedValue, Conditions, EngineeredLabel, Family, Glulam, GlulamLayup, Grade,
    LabelInput, LoadDuration, LumberError, Lvl, LvlGrade, Member, Product, Sawn, SawnSize, Species,
    SustainedTemperature, candidates::header_candidates, species_and_grade,
};
use measure::{Length, Stress};

fn label() -> LabelInput {
    LabelInput {
        name: "Shop LVL".to_owned(),
        breadth: inches(1.75),
        depth: inches(11.875),
        fb: psi(2800.0),
        fv: psi(285.0),
        fc_perp: psi(750.0),
        e: psi(2_000_000.0),
        depth_exponent: 0.111,
    }
}

fn labelled(input: LabelInput) -> Member {
    Member::single(Product::Labelled(EngineeredLabel::new(input).unwrap()))
}

fn lvl(depth: f64, plies: u8) -> Member {
    let piece = Lvl::new(LvlGrade::E20Fb2600, Lvl::USUAL_BREADTH, inches(depth)).unwrap();
    Member::new(Product::Lvl(piece), plies).unwrap()
}

fn glulam(layup: GlulamLayup, breadth: f64, depth: f64) -> Member {
    Member::single(Product::Glulam(Glulam::new(layup, inches(breadth), inches(depth)).unwrap()))
}

#[test]
fn species_are_read_as_they_are_stamped_and_said() {
    let cases = [
        ("SPF", Species::SprucePineFir),
        ("S-P-F", Species::SprucePineFir),
        ("spruce-pine-fir", Species::SprucePineFir),
        ("S-P-F(S)", Species::SprucePineFirSouth),
        ("SPFs", Species::SprucePineFirSouth),
        ("Hem-Fir", Species::HemFir),
        ("DF", Species::DouglasFirLarch),
        ("D FIR-L", Species::DouglasFirLarch),
        ("Douglas Fir - Larch", Species::DouglasFirLarch),
        ("SYP", Species::SouthernPine),
        (" southern yellow pine ", Species::SouthernPine),
    ];
    for (text, species) in cases {
        assert_eq!(Species::from_text(text), Ok(species), "{text}");
    }
    for species in Species::ALL {
        assert_eq!(Species::from_text(species.name()), Ok(species));
        assert_eq!(Species::from_text(species.short_name()), Ok(species));
    }
    let problem = Species::from_text("oak").unwrap_err().to_string();
    assert!(problem.contains("\"oak\"") && Species::ALL.iter().all(|known| problem.contains(known.short_name())));
}

#[test]
fn grades_are_read_as_they_are_stamped_and_said() {
    let cases = [
        ("No. 2", Grade::No2),
        ("#2", Grade::No2),
        ("no.1/no.2", Grade::No2),
        ("No. 1 & Btr", Grade::No1AndBetter),
        ("SEL STR", Grade::SelectStructural),
        ("stud", Grade::Stud),
        ("STAND", Grade::Standard),
        ("Non-Dense Select Structural", Grade::NonDenseSelectStructural),
        ("No.2 Non-Dense", Grade::No2NonDense),
    ];
    for (text, grade) in cases {
        assert_eq!(Grade::from_text(text), Ok(grade), "{text}");
    }
    for grade in Grade::ALL {
        assert_eq!(Grade::from_text(grade.name()), Ok(grade));
    }
    assert!(Grade::from_text("No. 4").unwrap_err().to_string().contains("No. 3"));
}

#[test]
fn species_and_grade_are_read_together() {
    let cases = [
        ("SPF No. 2", (Species::SprucePineFir, Grade::No2)),
        ("#1 southern pine", (Species::SouthernPine, Grade::No1)),
        ("Hem-Fir, Select Structural", (Species::HemFir, Grade::SelectStructural)),
        ("Spruce-Pine-Fir (South) Stud", (Species::SprucePineFirSouth, Grade::Stud)),
    ];
    for (text, found) in cases {
        assert_eq!(species_and_grade(text), Ok(found), "{text}");
    }
    assert!(matches!(species_and_grade("oak No. 2"), Err(LumberError::UnknownSpecies { .. })));
    assert!(matches!(species_and_grade("SPF prime"), Err(LumberError::UnknownGrade { .. })));
    assert!(matches!(species_and_grade("SPF"), Err(LumberError::UnknownGrade { .. })));
    assert!(matches!(species_and_grade(""), Err(LumberError::UnknownSpecies { .. })));
}

#[test]
fn sizes_are_read_and_every_size_reads_its_own_name() {
    for text in ["2x10", "2 X 10", "2×10", "2 by 10", "2\"x10\""] {
        assert_eq!(SawnSize::from_text(text).map(SawnSize::nominal), Ok("2x10"), "{text}");
    }
    for size in SawnSize::all() {
        assert_eq!(SawnSize::from_text(size.nominal()), Ok(size));
    }
    for text in ["2x7", "10x2", "x", "2x", "2x10x3", "", "-2x10", "2x999"] {
        assert!(SawnSize::from_text(text).is_err(), "{text}");
    }
}

/// Section properties as printed for dressed sizes (NDS Supplement Table 1B, arithmetic).
#[test]
fn sections_of_dressed_sizes() {
    let rows = [
        ("2x4", ["5.250", "3.063", "5.359", "1.313", "0.984"]),
        ("2x10", ["13.875", "21.391", "98.932", "3.469", "2.602"]),
        ("4x12", ["39.375", "73.828", "415.283", "22.969", "40.195"]),
        ("6x6", ["30.250", "27.729", "76.255", "27.729", "76.255"]),
        ("6x10", ["50.875", "78.432", "362.749", "46.635", "128.247"]),
    ];
    for (size, row) in rows {
        let section = sawn(Species::DouglasFirLarch, Grade::No1, size).section();
        let computed = [
            section.area.square_inches(),
            section.section_modulus_strong.cubic_inches(),
            section.second_moment_strong.inches_fourth(),
            section.section_modulus_weak.cubic_inches(),
            section.second_moment_weak.inches_fourth(),
        ];
        computed.into_iter().zip(row).for_each(|(computed, printed)| agrees(computed, printed));
    }
}

#[test]
fn plies_add_up_and_slip_on_the_flat() {
    let one = sawn(Species::SprucePineFir, Grade::No2, "2x10").section();
    let three = built_up(Species::SprucePineFir, Grade::No2, "2x10", 3).section();
    assert_eq!(three.breadth, one.breadth * 3.0);
    assert_eq!(three.depth, one.depth);
    assert_eq!(three.section_modulus_strong, one.section_modulus_strong * 3.0);
    assert_eq!(three.section_modulus_weak, one.section_modulus_weak * 3.0);
    assert_eq!(three.second_moment_weak, one.second_moment_weak * 3.0);
}

/// Weight of dressed lumber at 15 % moisture, plf: computed from the weights of Wood Structural Design Data, 1992.
#[test]
fn weights() {
    let rows = [
        (Species::SouthernPine, ["1.34", "3.54", "7.71"]),
        (Species::DouglasFirLarch, ["1.23", "3.24", "7.06"]),
        (Species::HemFir, ["1.06", "2.81", "6.13"]),
        (Species::SprucePineFir, ["1.04", "2.75", "5.99"]),
        (Species::SprucePineFirSouth, ["0.90", "2.37", "5.17"]),
    ];
    for (species, row) in rows {
        for (size, printed) in ["2x4", "2x10", "6x6"].into_iter().zip(row) {
            agrees(sawn(species, Grade::No2, size).self_weight().plf(), printed);
        }
    }
    let pair = built_up(Species::SprucePineFir, Grade::No2, "2x10", 2);
    assert_eq!(pair.self_weight(), sawn(Species::SprucePineFir, Grade::No2, "2x10").self_weight() * 2.0);
}

#[test]
fn names_and_families() {
    let cases = [
        (built_up(Species::SprucePineFir, Grade::No2, "2x10", 2), "2-2x10", Family::BuiltUp2x),
        (sawn(Species::DouglasFirLarch, Grade::No1, "4x10"), "4x10", Family::Sawn4x),
        (sawn(Species::DouglasFirLarch, Grade::No1, "6x10"), "6x10", Family::Sawn6x),
        (lvl(11.875, 2), "2-1-3/4x11-7/8 LVL", Family::Lvl),
        (glulam(GlulamLayup::V4DouglasFir, 3.5, 12.0), "3-1/2x12 glulam", Family::Glulam),
        (labelled(label()), "1-3/4x11-7/8 Shop LVL", Family::Labelled),
    ];
    for (member, name, family) in cases {
        assert_eq!((member.name().as_str(), member.family()), (name, family));
    }
}

#[test]
fn plies_are_limited() {
    let product =
        Product::Sawn(Sawn { species: Species::SprucePineFir, grade: Grade::No2, size: SawnSize::new(2, 10).unwrap() });
    assert!(Member::new(product.clone(), 0).is_err());
    assert!(Member::new(product.clone(), 5).is_ok());
    assert_eq!(
        Member::new(product, 6).unwrap_err().to_string(),
        "6 plies were given; a member here has 1 to 5. Change the number of plies."
    );
}

#[test]
fn a_value_that_is_not_held_is_refused_by_name() {
    for (species, grade, size) in [
        (Species::HemFir, Grade::No1, "6x6"),
        (Species::SprucePineFirSouth, Grade::No2, "6x6"),
        (Species::SprucePineFir, Grade::No1AndBetter, "2x6"),
        (Species::SprucePineFir, Grade::Construction, "2x6"),
        (Species::SouthernPine, Grade::Construction, "2x3"),
        (Species::DouglasFirLarch, Grade::No2Dense, "2x6"),
        (Species::SouthernPine, Grade::No3, "6x6"),
    ] {
        let problem = sawn(species, grade, size).reference_values().unwrap_err();
        assert!(matches!(problem, LumberError::NoPublishedValue { .. }), "{problem}");
        let text = problem.to_string();
        assert!(text.contains(species.name()) && text.contains(grade.name()) && text.contains(size));
    }
}

#[test]
fn rows_are_shared_where_the_table_shares_them() {
    let fb = |species, grade, size| sawn(species, grade, size).reference_values().unwrap().fb.psi();
    assert_eq!(fb(Species::SprucePineFir, Grade::No1, "2x10"), 875.0);
    assert_eq!(fb(Species::SprucePineFir, Grade::No2, "2x10"), 875.0);
    assert_eq!(fb(Species::SprucePineFir, Grade::No1, "6x6"), 850.0);
    assert_eq!(fb(Species::SprucePineFir, Grade::No2, "6x6"), 500.0);
    assert_eq!(fb(Species::SouthernPine, Grade::Stud, "2x6"), 575.0);
    assert_eq!(fb(Species::SouthernPine, Grade::No2, "2x14"), 750.0);
    assert_eq!(fb(Species::DouglasFirLarch, Grade::No1, "6x8"), 1200.0);
    assert_eq!(fb(Species::DouglasFirLarch, Grade::No1, "6x10"), 1350.0);
    // Stud grade 8 in wide takes the No. 3 value and the No. 3 size factor: 525 x 1.2.
    let wide = stresses(&sawn(Species::DouglasFirLarch, Grade::Stud, "2x8"), DRY, LoadDuration::TenYears);
    agrees(wide.fb_star.psi(), "630");
}

#[test]
fn southern_pine_takes_its_own_size_factors() {
    let fb = |size| stresses(&sawn(Species::SouthernPine, Grade::No2, size), DRY, LoadDuration::TenYears).fb_star;
    assert_eq!(fb("2x10"), psi(800.0));
    agrees(fb("2x14").psi(), "675");
    agrees(fb("4x10").psi(), "880");
}

/// Every value of a working beside the number that the search used.
fn pairs(shown: &Adjusted, used: &AdjustedStresses) -> Vec<(AdjustedValue, Stress)> {
    let always = [
        (&shown.fb_star, used.fb_star),
        (&shown.fv, used.fv),
        (&shown.fc_perp, used.fc_perp),
        (&shown.e, used.e),
        (&shown.e_min, used.e_min),
        (&shown.e_weak, used.e_weak),
        (&shown.e_min_weak, used.e_min_weak),
    ];
    let held = [
        (&shown.fb_weak, used.fb_weak),
        (&shown.ft, used.ft),
        (&shown.fv_weak, used.fv_weak),
        (&shown.fc_star, used.fc_star),
    ];
    assert!(held.iter().all(|(shown, used)| shown.is_some() == used.is_some()));
    let held = held.into_iter().filter_map(|(shown, used)| Some((shown.as_ref()?, used?)));
    always.into_iter().chain(held).map(|(shown, used)| (shown.clone(), used)).collect()
}

/// The working's value is the number that the search used, to the last bit, and the product of what it lists.
#[test]
fn the_working_and_the_numbers_are_the_same() {
    let hot = SustainedTemperature::Over100To125F;
    let everything = Conditions { incised: true, repetitive: true, temperature: hot, ..WET };
    let species_and_grades = Species::ALL.into_iter().flat_map(|species| Grade::ALL.map(|grade| (species, grade)));
    let members = species_and_grades.flat_map(|(species, grade)| header_candidates(species, grade));
    let mut seen = 0;
    for member in members {
        for conditions in [DRY, REPETITIVE, WET, everything] {
            let Ok(basis) = member.design_basis(&conditions) else { continue };
            for duration in LoadDuration::ALL {
                for (shown, used) in pairs(&basis.adjusted(duration), &basis.stresses(duration)) {
                    let product =
                        shown.factors().iter().fold(shown.reference, |product, factor| product * factor.value);
                    assert_eq!((shown.value, product), (used, used), "{} {}", member.name(), shown.symbol);
                    seen += 1;
                }
            }
        }
    }
    assert!(seen > 100_000, "{seen}");
}

#[test]
fn a_working_lists_the_factors_that_apply() {
    let joist = sawn(Species::SprucePineFir, Grade::No2, "2x10");
    let shown = joist.adjusted(&REPETITIVE, LoadDuration::TwoMonths).unwrap();
    let listed: Vec<_> = shown.fb_star.factors().iter().map(|factor| (factor.symbol, factor.value)).collect();
    assert_eq!(listed, [("C_D", 1.15), ("C_F", 1.1), ("C_r", 1.15)]);
    assert_eq!((shown.fb_star.symbol, shown.fb_star.source.place), ("F_b*", "Table 4A"));
    assert!(shown.fc_perp.factors().is_empty());
    let flat: Vec<_> = shown.fb_weak.as_ref().unwrap().factors().iter().map(|factor| factor.symbol).collect();
    assert_eq!(flat, ["C_D", "C_F", "C_fu"]);
}

#[test]
fn engineered_pieces_have_their_own_factors() {
    let dry = |member: &Member| stresses(member, REPETITIVE, LoadDuration::TwoMonths);
    let composite = dry(&lvl(14.0, 1));
    agrees(composite.fb_star.psi(), "3109.6");
    assert_eq!((composite.fb_weak, composite.fv_weak), (None, None));
    let beam = glulam(GlulamLayup::V4DouglasFir, 5.5, 12.0);
    agrees(dry(&beam).fb_star.psi(), "2760.0");
    assert_eq!(dry(&beam).e_min_weak, psi(850_000.0));
    assert!(dry(&beam).fb_weak.unwrap() < dry(&beam).fb_star);
    let southern = glulam(GlulamLayup::V3SouthernPine, 5.5, 12.0);
    assert_eq!(dry(&southern).fv, psi(300.0) * 1.15);
    let incised = Conditions { incised: true, ..DRY };
    assert!(matches!(lvl(14.0, 1).design_basis(&WET), Err(LumberError::DryServiceOnly { .. })));
    assert!(matches!(lvl(14.0, 1).design_basis(&incised), Err(LumberError::NotIncised { .. })));
    assert!(matches!(beam.design_basis(&incised), Err(LumberError::NotIncised { .. })));
    assert!(beam.design_basis(&WET).is_ok());
}

#[test]
fn a_stringer_is_weaker_on_its_wide_face() {
    let beam = sawn(Species::DouglasFirLarch, Grade::No1, "6x10");
    let shown = beam.adjusted(&DRY, LoadDuration::TenYears).unwrap();
    agrees(shown.fb_weak.unwrap().value.psi(), "999.0");
    agrees(shown.e_weak.value.psi(), "1440000");
    let post = sawn(Species::DouglasFirLarch, Grade::No1, "6x6").adjusted(&DRY, LoadDuration::TenYears).unwrap();
    assert_eq!(post.fb_weak.unwrap().value, psi(1200.0));
}

#[test]
fn a_label_is_used_as_it_is_printed() {
    let member = labelled(label());
    let found = stresses(&member, DRY, LoadDuration::TenYears);
    assert_eq!((found.fv, found.fc_perp, found.e), (psi(285.0), psi(750.0), psi(2e6)));
    agrees(found.e_min.psi(), "1016000");
    assert!(found.fb_star > psi(2800.0), "11-7/8 in is under 12 in");
    assert_eq!((found.fb_weak, found.fc_star), (None, None));
    let more = EngineeredLabel::new(label()).unwrap();
    let more = more.with_fb_flat(psi(2400.0)).unwrap().with_fc(psi(2500.0)).unwrap();
    let found = stresses(&Member::single(Product::Labelled(more)), DRY, LoadDuration::TenYears);
    assert_eq!((found.fb_weak, found.fc_star), (Some(psi(2400.0)), Some(psi(2500.0))));
}

type Slip = fn(&mut LabelInput);

#[test]
fn a_slip_on_a_label_is_refused_with_its_range() {
    let slips: [(Slip, &str); 7] = [
        (|label| label.fb = psi(280.0), "Bending strength F_b 280 psi was given; 1000 to 4000 psi is accepted."),
        (|label| label.fv = psi(28.5), "Shear strength F_v 28.5 psi"),
        (|label| label.fc_perp = psi(75.0), "Bearing strength F_c⊥ 75 psi"),
        (|label| label.e = psi(2.0), "Modulus of elasticity E 2 psi"),
        (|label| label.depth_exponent = 0.5, "Depth exponent 0.5 was given; 0 to 0.2 is accepted."),
        (|label| label.depth = inches(118.75), "Depth 118.75 in"),
        (|label| label.name = "  ".to_owned(), "The name of an engineered piece has 1 to 60 characters."),
    ];
    for (slip, said) in slips {
        let mut input = label();
        slip(&mut input);
        let problem = EngineeredLabel::new(input).unwrap_err().to_string();
        assert!(problem.starts_with(said), "{problem}");
    }
    assert!(EngineeredLabel::new(label()).unwrap().with_fc(psi(9e9)).is_err());
    assert!(Lvl::new(LvlGrade::E20Fb2600, inches(1.75), inches(30.0)).is_err());
    assert!(Glulam::new(GlulamLayup::V4DouglasFir, inches(1.5), inches(12.0)).is_err());
    assert!(Lvl::new(LvlGrade::E20Fb2600, Length::from_inches(f64::MAX), inches(9.5)).is_err());
}

#[test]
fn header_candidates_hold_values_and_are_all_different() {
    let usual: Vec<_> = header_candidates(Species::DouglasFirLarch, Grade::No2).collect();
    assert_eq!(usual.len(), 16 + 8 + 24 + 14);
    let names: std::collections::BTreeSet<_> = usual.iter().map(Member::name).collect();
    assert_eq!(names.len(), usual.len());
    for species in Species::ALL {
        for grade in Grade::ALL {
            assert!(header_candidates(species, grade).all(|member| member.reference_values().is_ok()));
        }
    }
    let stud = header_candidates(Species::SprucePineFir, Grade::Stud);
    assert!(stud.into_iter().all(|member| member.family() != Family::Sawn6x));
}

/// Within a family of one number of plies, the list goes from weak to strong.
#[test]
fn header_candidates_ascend() {
    let all: Vec<_> = header_candidates(Species::SouthernPine, Grade::No2).collect();
    let strength = |member: &Member| -> (Stress, f64) {
        let found = stresses(member, DRY, LoadDuration::TenYears);
        (found.fb_star, (found.fb_star * member.section().section_modulus_strong).inch_pounds())
    };
    for family in Family::ALL {
        for plies in 1..=4 {
            let ladder = all.iter().filter(|member| member.family() == family && member.plies() == plies);
            let ladder: Vec<_> = ladder.collect();
            for pair in ladder.windows(2).filter(|pair| pair[0].section().breadth == pair[1].section().breadth) {
                assert!(strength(pair[0]).1 < strength(pair[1]).1, "{} {}", pair[0].name(), pair[1].name());
            }
        }
    }
}
