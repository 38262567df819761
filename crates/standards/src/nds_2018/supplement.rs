//! NDS Supplement 2018: dressed sizes and reference design values, made from the text under
//! `data/nds_supplement_2018/` at build time.
//!
//! Every row keeps the source and the status it has in the text. What the tables do not hold is `None`: no row is
//! made up from its neighbours.

use measure::{Length, Stress};

use crate::{Source, Status};

/// Species groups as the tables name them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SpeciesGroup {
    /// Douglas Fir-Larch.
    DouglasFirLarch,
    /// Hem-Fir.
    HemFir,
    /// Spruce-Pine-Fir.
    SprucePineFir,
    /// Spruce-Pine-Fir (South).
    SprucePineFirSouth,
    /// Southern Pine.
    SouthernPine,
}

/// Grades as the tables print them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PrintedGrade {
    /// Dense Select Structural (Southern Pine).
    DenseSelectStructural,
    /// Select Structural.
    SelectStructural,
    /// Non-Dense Select Structural (Southern Pine).
    NonDenseSelectStructural,
    /// No.1 & Btr.
    No1AndBetter,
    /// No.1 Dense (Southern Pine).
    No1Dense,
    /// No.1.
    No1,
    /// No.1 Non-Dense (Southern Pine).
    No1NonDense,
    /// No.1/No.2, one row (Spruce-Pine-Fir dimension lumber).
    No1No2,
    /// No.2 Dense (Southern Pine).
    No2Dense,
    /// No.2.
    No2,
    /// No.2 Non-Dense (Southern Pine).
    No2NonDense,
    /// No.3.
    No3,
    /// No.3 and Stud, one row (Southern Pine).
    No3AndStud,
    /// Stud.
    Stud,
    /// Construction.
    Construction,
    /// Standard.
    Standard,
    /// Utility.
    Utility,
}

/// Size classes as the tables print them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SizeClass {
    /// 2 to 4 in thick, 2 in and wider; a size factor applies.
    TwoAndWider,
    /// 2 to 4 in thick, 2 to 4 in wide; a size factor applies.
    TwoToFourWide,
    /// Southern Pine 2 to 4 in thick, 2 to 4 in wide.
    SouthernPineTwoToFourWide,
    /// Southern Pine 2 to 4 in thick, 4 in wide (Construction, Standard, Utility).
    SouthernPineFourWide,
    /// Southern Pine 2 to 4 in thick, 5 to 6 in wide.
    SouthernPineFiveToSixWide,
    /// Southern Pine 2 to 4 in thick, 8 in wide.
    SouthernPineEightWide,
    /// Southern Pine 2 to 4 in thick, 10 in wide.
    SouthernPineTenWide,
    /// Southern Pine 2 to 4 in thick, 12 in wide; wider takes 0.9 of it.
    SouthernPineTwelveWide,
    /// Posts & Timbers: 5x5 and larger, width up to 2 in over thickness.
    PostsAndTimbers,
    /// Beams & Stringers: 5 in and thicker, width more than 2 in over thickness.
    BeamsAndStringers,
    /// Southern Pine timbers 5x5 and larger of every shape, wet or dry.
    SouthernPineTimbers,
}

/// Glulam lay-ups held.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum GlulamLayup {
    /// 24F-V4, Douglas fir throughout.
    V4DouglasFir,
    /// 24F-V3, Southern Pine throughout.
    V3SouthernPine,
}

/// The way a glulam is loaded.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum GlulamAxis {
    /// Across the wide faces of the laminations: the usual beam, bent about x-x.
    AcrossWideFaces,
    /// Along the wide faces of the laminations: bent about y-y.
    AlongWideFaces,
}

/// Generic classes of laminated veneer lumber, loaded on edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LvlGrade {
    /// 1.9E-2600Fb.
    E19Fb2600,
    /// 2.0E-2600Fb.
    E20Fb2600,
    /// 2.0E-2900Fb.
    E20Fb2900,
}

/// One row of reference design values, as printed: no factor is in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DesignValues {
    /// Bending `F_b`.
    pub fb: Stress,
    /// Tension along the grain `F_t`.
    pub ft: Stress,
    /// Shear along the grain `F_v`.
    pub fv: Stress,
    /// Compression across the grain `F_c⊥`.
    pub fc_perp: Stress,
    /// Compression along the grain `F_c`.
    pub fc: Stress,
    /// Modulus of elasticity `E`.
    pub e: Stress,
    /// Modulus of elasticity for stability `E_min`.
    pub e_min: Stress,
    /// Specific gravity `G`, oven-dry: a pure number.
    pub specific_gravity: f64,
    /// Size class as printed.
    pub size_class: &'static str,
    /// The table, and how the row came here.
    pub source: Source,
    /// What the row was read in and compared with.
    pub provenance: &'static str,
}

/// One row of Table 1A: the size of a piece by its name.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DressedSize {
    /// The name: `2x10`.
    pub nominal: &'static str,
    /// First number of the name.
    pub nominal_thickness: u8,
    /// Second number of the name.
    pub nominal_width: u8,
    /// Dressed thickness, dry.
    pub breadth: Length,
    /// Dressed width, dry.
    pub depth: Length,
    /// The table, and how the row came here.
    pub source: Source,
    /// What the row was read in and compared with.
    pub provenance: &'static str,
}

include!(concat!(env!("OUT_DIR"), "/nds_supplement_2018.rs"));
