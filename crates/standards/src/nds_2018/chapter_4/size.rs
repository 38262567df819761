//! Size factors and flat use: what a piece's width does to its design values.

use measure::{Length, math};

use crate::nds_2018::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};
use crate::{
    Source,
    Status::{FromMemory, LookedUp},
};

/// Groups of grades that share a column of size factors in Table 4A.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SizeFactorGrade {
    /// Select Structural, No.1 & Btr, No.1, No.2, No.3.
    Structural,
    /// Stud.
    Stud,
    /// Construction and Standard.
    ConstructionOrStandard,
    /// Utility.
    Utility,
}

/// Size factors of one width.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SizeFactors {
    /// On `F_b`.
    pub fb: f64,
    /// On `F_t`.
    pub ft: f64,
    /// On `F_c`.
    pub fc: f64,
}

impl SizeFactors {
    const fn new(fb: f64, ft: f64, fc: f64) -> Self {
        Self { fb, ft, fc }
    }
}

const SUPPLEMENT: &str = "NDS Supplement 2018";
const TABLE_4A: Source = Source::new(SUPPLEMENT, "Table 4A, size factor", LookedUp);

/// Size factor `C_F` of dimension lumber other than Southern Pine.
///
/// Takes the group of grades and the nominal thickness (2 to 4 in) and width (2 in and wider) by name, as in `2x10`:
/// steps of the table, never interpolated. Gives pure numbers.
///
/// Source: NDS 2018 §4.3.6.1, NDS Supplement 2018 Table 4A (looked up).
///
/// # Errors
/// When the thickness is not 2 to 4; when Stud is 8 or wider (it takes the No.3 values and size factors); when
/// Construction, Standard or Utility is wider than 4; Utility narrower than 4 in 4 in thickness.
///
/// ```
/// use standards::nds_2018::chapter_4::{SizeFactorGrade, size_factors};
/// assert_eq!(size_factors(SizeFactorGrade::Structural, 2, 10)?.value.fb, 1.1);
/// assert_eq!(size_factors(SizeFactorGrade::Stud, 2, 4)?.value.fb, 1.1);
/// assert!(size_factors(SizeFactorGrade::Stud, 2, 8).is_err());
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn size_factors(
    grade: SizeFactorGrade,
    nominal_thickness: u8,
    nominal_width: u8,
) -> Result<Cited<SizeFactors>, OutsideLimits> {
    DIMENSION_THICKNESS.check(f64::from(nominal_thickness))?;
    let width = f64::from(nominal_width);
    let factors = match grade {
        SizeFactorGrade::Structural => structural(nominal_thickness, WIDE_ENOUGH.check(width)?),
        SizeFactorGrade::Stud => stud(STUD_WIDTH.check(width)?),
        SizeFactorGrade::ConstructionOrStandard => {
            LIGHT_FRAMING_WIDTH.check(width)?;
            SizeFactors::new(1.0, 1.0, 1.0)
        }
        SizeFactorGrade::Utility => utility(nominal_thickness, LIGHT_FRAMING_WIDTH.check(width)?)?,
    };
    Ok(Cited::new(factors, TABLE_4A))
}

fn structural(thickness: u8, width: f64) -> SizeFactors {
    let thick = thickness >= 4;
    match width {
        ..5.0 => SizeFactors::new(1.5, 1.5, 1.15),
        ..6.0 => SizeFactors::new(1.4, 1.4, 1.1),
        ..8.0 => SizeFactors::new(1.3, 1.3, 1.1),
        ..10.0 => SizeFactors::new(if thick { 1.3 } else { 1.2 }, 1.2, 1.05),
        ..12.0 => SizeFactors::new(if thick { 1.2 } else { 1.1 }, 1.1, 1.0),
        ..14.0 => SizeFactors::new(if thick { 1.1 } else { 1.0 }, 1.0, 1.0),
        _ => SizeFactors::new(if thick { 1.0 } else { 0.9 }, 0.9, 0.9),
    }
}

fn stud(width: f64) -> SizeFactors {
    if width < 5.0 { SizeFactors::new(1.1, 1.1, 1.05) } else { SizeFactors::new(1.0, 1.0, 1.0) }
}

fn utility(thickness: u8, width: f64) -> Result<SizeFactors, OutsideLimits> {
    if width >= 4.0 {
        return Ok(SizeFactors::new(1.0, 1.0, 1.0));
    }
    NARROW_UTILITY_THICKNESS.check(f64::from(thickness))?;
    Ok(SizeFactors::new(0.4, 0.4, 0.6))
}

const DIMENSION_THICKNESS: Limit = Limit {
    what: "nominal thickness",
    unit: "in",
    accepted: Accepted::Between(2.0, 4.0),
    covers: "nominal thicknesses from 2 to 4 in",
    source: TABLE_4A,
    next_step: "Pieces 5 in and thicker are timbers, with values and factors of their own.",
};
const WIDE_ENOUGH: Limit = Limit {
    what: "nominal width",
    accepted: Accepted::Between(2.0, f64::MAX),
    covers: "nominal widths of 2 in and more",
    next_step: "Name the piece as in 2x4.",
    ..DIMENSION_THICKNESS
};
const STUD_WIDTH: Limit = Limit {
    what: "nominal width of a Stud-grade piece",
    accepted: Accepted::Between(2.0, 6.0),
    covers: "Stud grade from 2 to 6 in wide",
    next_step: "Stud grade 8 in and wider takes the No.3 design values and size factors.",
    ..DIMENSION_THICKNESS
};
const LIGHT_FRAMING_WIDTH: Limit = Limit {
    what: "nominal width of a light-framing grade",
    accepted: Accepted::Between(2.0, 4.0),
    covers: "Construction, Standard and Utility from 2 to 4 in wide",
    next_step: "Use Select Structural, No.1, No.2 or No.3 for a wider piece.",
    ..DIMENSION_THICKNESS
};
const NARROW_UTILITY_THICKNESS: Limit = Limit {
    what: "nominal thickness of a Utility piece under 4 in wide",
    accepted: Accepted::Between(2.0, 3.0),
    covers: "Utility under 4 in wide from 2 to 3 in thick",
    next_step: "Use a piece the table holds.",
    ..DIMENSION_THICKNESS
};

/// Size factor `C_F` of Southern Pine dimension lumber: its tables are printed by width, so little is left.
///
/// Takes the nominal thickness and width; gives pure numbers: 0.9 of the 12 in values when wider than 12 in; 1.1 on
/// `F_b` when 4 in thick and 8 in or wider.
///
/// Source: NDS 2018 §4.3.6.1, NDS Supplement 2018 Table 4B (looked up).
#[must_use]
pub const fn southern_pine_size_factors(nominal_thickness: u8, nominal_width: u8) -> Cited<SizeFactors> {
    let width = if nominal_width > 12 { 0.9 } else { 1.0 };
    let thickness = if nominal_thickness == 4 && nominal_width >= 8 { 1.1 } else { 1.0 };
    let source = Source::new(SUPPLEMENT, "Table 4B, size factor", LookedUp);
    Cited::new(SizeFactors::new(width * thickness, width, width), source)
}

/// Size factor `C_F` of a timber 5 in and thicker loaded on its narrow face: `(12/d)^(1/9)`, at most 1.
///
/// Takes the dressed depth; gives a pure number, on `F_b` alone.
///
/// Source: NDS 2018 §4.3.6.2, Eq. 4.3-1, NDS Supplement 2018 Table 4D (looked up).
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_4::timber_size_factor;
/// assert!((timber_size_factor(Length::from_inches(13.5)).value - 0.9870).abs() < 0.00005);
/// ```
#[must_use]
pub fn timber_size_factor(depth: Length) -> Cited<f64> {
    const FULL_DEPTH: Length = Length::from_inches(12.0);
    let value = if depth > FULL_DEPTH { math::pow(FULL_DEPTH / depth, 1.0 / 9.0) } else { 1.0 };
    Cited::new(value, nds("Eq. 4.3-1", LookedUp))
}

/// Grades of Beams & Stringers in the adjustment for the wide face.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum TimberGrade {
    /// Select Structural.
    SelectStructural,
    /// No.1.
    No1,
    /// No.2.
    No2,
}

/// Factors of a Beam & Stringer loaded on its wide face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WideFaceFactors {
    /// On `F_b`.
    pub fb: f64,
    /// On `E` and `E_min`.
    pub e: f64,
}

/// Size factor of Beams & Stringers loaded on the wide face. Posts & Timbers take 1.
///
/// Pure numbers. Source: NDS Supplement 2018 Table 4D, adjustment factors (from memory).
#[must_use]
pub const fn wide_face_factors(grade: TimberGrade) -> Cited<WideFaceFactors> {
    let (fb, e) = match grade {
        TimberGrade::SelectStructural => (0.86, 1.0),
        TimberGrade::No1 => (0.74, 0.90),
        TimberGrade::No2 => (1.0, 1.0),
    };
    Cited::new(WideFaceFactors { fb, e }, Source::new(SUPPLEMENT, "Table 4D, size factor", FromMemory))
}

/// Flat use factor `C_fu` of dimension lumber loaded on its wide face.
///
/// Takes the nominal thickness (2 to 4 in) and width; gives a pure number, on `F_b` alone. The size factor by width
/// stays in.
///
/// Source: NDS 2018 §4.3.7, NDS Supplement 2018 Tables 4A and 4B (looked up).
///
/// # Errors
/// When the thickness is not 2 to 4; a 4 in piece narrower than 4 in.
pub fn flat_use_factor(nominal_thickness: u8, nominal_width: u8) -> Result<Cited<f64>, OutsideLimits> {
    DIMENSION_THICKNESS.check(f64::from(nominal_thickness))?;
    let limit = if nominal_thickness >= 4 { FOUR_BY } else { WIDE_ENOUGH };
    limit.check(f64::from(nominal_width))?;
    let value = match (nominal_thickness >= 4, nominal_width) {
        (true, ..5) => 1.0,
        (true, ..10) => 1.05,
        (true, _) => 1.1,
        (false, ..4) => 1.0,
        (false, ..6) => 1.1,
        (false, ..10) => 1.15,
        (false, _) => 1.2,
    };
    Ok(Cited::new(value, Source::new(SUPPLEMENT, "Table 4A, flat use factor", LookedUp)))
}

const FOUR_BY: Limit = Limit {
    accepted: Accepted::Between(4.0, f64::MAX),
    covers: "nominal widths of 4 in and more for a piece 4 in thick",
    ..WIDE_ENOUGH
};
