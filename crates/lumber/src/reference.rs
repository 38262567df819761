//! Reference design values of a product: the row of the table, or the label.

use measure::Stress;
use standards::{
    Source,
    Status::{self, FromMemory},
    nds_2018::supplement::{self, DesignValues, GlulamAxis, GlulamLayup, PrintedGrade, SizeClass},
};

use crate::{EngineeredLabel, Grade, LumberError, Product, Sawn, SawnSize, Species};

/// Reference design values, before any factor. Strong is bending on the narrow face, weak on the wide face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReferenceValues {
    /// Bending on edge `F_b`.
    pub fb: Stress,
    /// Bending on the flat, where a value is held.
    pub fb_weak: Option<Stress>,
    /// Tension along the grain, where a value is held.
    pub ft: Option<Stress>,
    /// Shear on edge `F_v`.
    pub fv: Stress,
    /// Shear on the flat, where a value is held.
    pub fv_weak: Option<Stress>,
    /// Compression along the grain `F_c`, where a value is held.
    pub fc: Option<Stress>,
    /// Compression across the grain on edge `F_c⊥`.
    pub fc_perp: Stress,
    /// Modulus of elasticity on edge `E`.
    pub e: Stress,
    /// Modulus for stability on edge `E_min`.
    pub e_min: Stress,
    /// Modulus of elasticity on the flat.
    pub e_weak: Stress,
    /// Modulus for stability on the flat: the one that `C_L` asks for.
    pub e_min_weak: Stress,
    /// Where the values stand.
    pub source: Source,
    /// Where the values on the flat stand.
    pub weak_source: Source,
    /// What the row was read in and compared with.
    pub provenance: &'static str,
}

impl ReferenceValues {
    pub(crate) fn of(product: &Product) -> Result<Self, LumberError> {
        match product {
            Product::Sawn(sawn) => sawn_row(*sawn).map(Self::same_both_ways),
            Product::Lvl(lvl) => {
                let edge_only = Self::same_both_ways(supplement::lvl(lvl.grade()));
                Ok(Self { fb_weak: None, fv_weak: None, ..edge_only })
            }
            Product::Glulam(glulam) => glulam_values(glulam.layup()),
            Product::Labelled(label) => Ok(label_values(label)),
        }
    }

    const fn same_both_ways(row: &DesignValues) -> Self {
        Self {
            fb: row.fb,
            fb_weak: Some(row.fb),
            ft: Some(row.ft),
            fv: row.fv,
            fv_weak: Some(row.fv),
            fc: Some(row.fc),
            fc_perp: row.fc_perp,
            e: row.e,
            e_min: row.e_min,
            e_weak: row.e,
            e_min_weak: row.e_min,
            source: row.source,
            weak_source: row.source,
            provenance: row.provenance,
        }
    }
}

fn sawn_row(sawn: Sawn) -> Result<&'static DesignValues, LumberError> {
    let Sawn { species, grade, size } = sawn;
    size_class(sawn)
        .and_then(|class| supplement::sawn((species.group(), printed_grade(sawn)?, class)))
        .ok_or(LumberError::NoPublishedValue { species: species.name(), grade: grade.name(), size: size.nominal() })
}

fn size_class(sawn: Sawn) -> Option<SizeClass> {
    let Sawn { species, grade, size } = sawn;
    let width = size.nominal_width();
    match (species, size.is_timber(), grade.is_light_framing()) {
        (Species::SouthernPine, true, _) => Some(SizeClass::SouthernPineTimbers),
        (_, true, _) if size.is_beam_or_stringer() => Some(SizeClass::BeamsAndStringers),
        (_, true, _) => Some(SizeClass::PostsAndTimbers),
        (Species::SouthernPine, false, true) => (width == 4).then_some(SizeClass::SouthernPineFourWide),
        (Species::SouthernPine, false, false) => Some(southern_pine_class(size)),
        (_, false, true) => (width <= 4).then_some(SizeClass::TwoToFourWide),
        (_, false, false) => Some(SizeClass::TwoAndWider),
    }
}

const fn southern_pine_class(size: SawnSize) -> SizeClass {
    match size.nominal_width() {
        ..=4 => SizeClass::SouthernPineTwoToFourWide,
        5..=6 => SizeClass::SouthernPineFiveToSixWide,
        7..=8 => SizeClass::SouthernPineEightWide,
        9..=10 => SizeClass::SouthernPineTenWide,
        _ => SizeClass::SouthernPineTwelveWide,
    }
}

/// The printed row that a stamped grade is read in; none where a grade is not made.
fn printed_grade(sawn: Sawn) -> Option<PrintedGrade> {
    let dimension = !sawn.size.is_timber();
    let southern = sawn.species == Species::SouthernPine;
    Some(match sawn.grade {
        Grade::No1 | Grade::No2 if dimension && sawn.species == Species::SprucePineFir => PrintedGrade::No1No2,
        Grade::No3 | Grade::Stud if dimension && southern => PrintedGrade::No3AndStud,
        Grade::Stud if takes_no_3_values(sawn) => PrintedGrade::No3,
        Grade::DenseSelectStructural => PrintedGrade::DenseSelectStructural,
        Grade::SelectStructural => PrintedGrade::SelectStructural,
        Grade::NonDenseSelectStructural => PrintedGrade::NonDenseSelectStructural,
        Grade::No1AndBetter => PrintedGrade::No1AndBetter,
        Grade::No1Dense => PrintedGrade::No1Dense,
        Grade::No1 => PrintedGrade::No1,
        Grade::No1NonDense => PrintedGrade::No1NonDense,
        Grade::No2Dense => PrintedGrade::No2Dense,
        Grade::No2 => PrintedGrade::No2,
        Grade::No2NonDense => PrintedGrade::No2NonDense,
        Grade::No3 => PrintedGrade::No3,
        Grade::Stud => PrintedGrade::Stud,
        Grade::Construction => PrintedGrade::Construction,
        Grade::Standard => PrintedGrade::Standard,
        Grade::Utility => PrintedGrade::Utility,
    })
}

/// Stud grade 8 in and wider takes the No. 3 values and size factors (Table 4A, size factor).
pub(crate) fn takes_no_3_values(sawn: Sawn) -> bool {
    sawn.grade == Grade::Stud && !sawn.size.is_timber() && sawn.size.nominal_width() >= 8
}

fn glulam_values(layup: GlulamLayup) -> Result<ReferenceValues, LumberError> {
    let name = match layup {
        GlulamLayup::V4DouglasFir => "24F-V4 DF",
        GlulamLayup::V3SouthernPine => "24F-V3 SP",
    };
    let missing = LumberError::NoPublishedValue { species: "glulam", grade: name, size: "beams" };
    let strong = supplement::glulam((layup, GlulamAxis::AcrossWideFaces)).ok_or(missing.clone())?;
    // Both lay-ups belong to stress class 24F-1.8E, whose values along the laminations are the row held for one.
    let weak = supplement::glulam((GlulamLayup::V4DouglasFir, GlulamAxis::AlongWideFaces)).ok_or(missing)?;
    let weak_source = match layup {
        GlulamLayup::V4DouglasFir => weak.source,
        GlulamLayup::V3SouthernPine => {
            Source::new("NDS Supplement 2018", "Table 5A, stress class 24F-1.8E, y-y", FromMemory)
        }
    };
    Ok(ReferenceValues {
        fb_weak: Some(weak.fb),
        fv_weak: Some(weak.fv),
        e_weak: weak.e,
        e_min_weak: weak.e_min,
        weak_source,
        ..ReferenceValues::same_both_ways(strong)
    })
}

/// `E_min / E` of a published 2.0E laminated veneer lumber, 1,016,535 / 2,000,000. The general formula of NDS
/// Appendix D with a variation of 10 % gives 0.518 (from memory); the published one is the safer.
const E_MIN_SHARE: f64 = 0.508;

fn label_values(label: &EngineeredLabel) -> ReferenceValues {
    let source = Source::new("label or supplier's sheet", "as typed in", Status::LookedUp);
    let e_min = label.e * E_MIN_SHARE;
    ReferenceValues {
        fb: label.fb,
        fb_weak: label.fb_flat,
        ft: None,
        fv: label.fv,
        fv_weak: None,
        fc: label.fc,
        fc_perp: label.fc_perp,
        e: label.e,
        e_min,
        e_weak: label.e,
        e_min_weak: e_min,
        source,
        weak_source: source,
        provenance: "typed in from the label or the supplier's sheet; E_min = 0.508 E",
    }
}
