//! 4.2: how slender a diaphragm may be, and how far it bends.

use measure::{Area, Length, LineLoad, Ratio, Stress};

use super::deflection::PanelRigidity;
use super::{ApparentShearStiffness, DOCUMENT};
use crate::{OutsideTable, Source, Status};

/// Table 4.2.4: the most of length over width. Read in one house's calculation for wood panels; the table is from memory.
pub const LIMITS: Source = Source::new(DOCUMENT, "Table 4.2.4", Status::PartlyLookedUp);
/// 4.2.5.2: diaphragms that stick out past their last wall line. Read in one house's calculation, and remembered otherwise.
pub const OPEN_FRONT: Source = Source::new(DOCUMENT, "4.2.5.2", Status::PartlyLookedUp);
/// Eq. 4.2-1, in three terms, from memory; its terms and the four-term form were read in the building code.
pub const THREE_TERMS: Source = Source::new(DOCUMENT, "Eq. 4.2-1", Status::PartlyLookedUp);
/// Eq. C4.2.2-1, in four terms. Read in the building code (IBC Eq. 23-1).
pub const FOUR_TERMS: Source = Source::new(DOCUMENT, "Eq. C4.2.2-1", Status::LookedUp);

/// The most of length over width that a wood panel diaphragm may have.
///
/// Source: SDPWS 2015 Table 4.2.4.
#[must_use]
pub const fn most(blocked: bool) -> Ratio {
    if blocked { 4.0 } else { 3.0 }
}

/// Length over width of a diaphragm: its span between wall lines over its depth along the load.
///
/// # Errors
/// Where it is more slender than the limit; nothing is rounded before it is compared.
pub fn ratio(length: Length, width: Length, blocked: bool) -> Result<Ratio, OutsideTable> {
    let ratio = length / width;
    if length > Length::ZERO && width > Length::ZERO && ratio <= most(blocked) {
        return Ok(ratio);
    }
    Err(OutsideTable {
        source: LIMITS,
        given: format!("a diaphragm {} ft long and {} ft wide", length.feet(), width.feet()),
        covers: "lengths to 4 times the width where it is blocked, 3 times where it is not",
        next_step: "Set another wall line between, block the edges, or ask the engineer.",
    })
}

/// A diaphragm that bends under a load along its width.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BendingDiaphragm {
    /// Span, between wall lines.
    pub length: Length,
    /// Depth, along the load.
    pub width: Length,
    /// Area of the chord of one side.
    pub chord: Area,
    /// Modulus of elasticity of the chord.
    pub modulus: Stress,
}

/// A splice of a chord: where it is, from the nearer wall line, and how far it slips.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Splice {
    /// From the nearer wall line.
    pub from_support: Length,
    /// Slip under the load.
    pub slip: Length,
}

/// The terms of a diaphragm's deflection in the middle of its span.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bow {
    /// Chords stretched and pressed, `5 v L³ / (8 E A W)`.
    pub bending: Length,
    /// Panels sheared, with their nails' slip in three terms and without in four.
    pub shear: Length,
    /// Nails' slip, in four terms.
    pub slip: Length,
    /// What the chords' splices give, `Σ(x Δ_c) / (2 W)`.
    pub splices: Length,
}

impl Bow {
    /// All of it.
    #[must_use]
    pub fn total(&self) -> Length {
        self.bending + self.shear + self.slip + self.splices
    }
}

/// Deflection in three terms: `5 v L³ / (8 E A W) + 0.25 v L / (1000 G_a) + Σ(x Δ_c) / (2 W)`, with `v` in pounds a foot,
/// lengths in feet but `Δ_c` in inches, `A` in square inches and `G_a` in kips an inch.
///
/// ```
/// use measure::{Area, Length, LineLoad, Stress};
/// use standards::sdpws_2015::ApparentShearStiffness;
/// use standards::sdpws_2015::diaphragm::{BendingDiaphragm, three_terms};
///
/// // Own: 180 plf on 40 ft by 28 ft is 128.6 plf; 0.0125 + 0.1513 in.
/// let floor = BendingDiaphragm {
///     length: Length::from_feet(40.0),
///     width: Length::from_feet(28.0),
///     chord: Area::from_square_inches(10.5),
///     modulus: Stress::from_psi(1.4e6),
/// };
/// let bow = three_terms(&floor, LineLoad::from_plf(128.571), ApparentShearStiffness::from_kips_per_inch(8.5), &[]);
/// assert!((bow.total().inches() - 0.1638).abs() < 0.00005);
/// ```
#[must_use]
pub fn three_terms(
    floor: &BendingDiaphragm,
    shear: LineLoad,
    stiffness: ApparentShearStiffness,
    splices: &[Splice],
) -> Bow {
    let sheared = 0.25 * shear.plf() * floor.length.feet() / stiffness.pounds_per_inch();
    Bow {
        bending: bending(floor, shear),
        shear: Length::from_inches(sheared),
        slip: Length::ZERO,
        splices: spliced(floor, splices),
    }
}

/// Deflection in four terms, nails spaced evenly: `5 v L³ / (8 E A W) + v L / (4 G_v t_v) + 0.188 L e_n + Σ(x Δ_c) / (2 W)`;
/// `G_v t_v` in pounds an inch.
#[must_use]
pub fn four_terms(
    floor: &BendingDiaphragm,
    shear: LineLoad,
    panel: PanelRigidity,
    slip: Length,
    splices: &[Splice],
) -> Bow {
    let sheared = 0.25 * shear.plf() * floor.length.feet() / panel.pounds_per_inch();
    Bow {
        bending: bending(floor, shear),
        shear: Length::from_inches(sheared),
        slip: slip * (0.188 * floor.length.feet()),
        splices: spliced(floor, splices),
    }
}

fn bending(floor: &BendingDiaphragm, shear: LineLoad) -> Length {
    let length = floor.length.feet();
    let stretched = floor.modulus.psi() * floor.chord.square_inches() * floor.width.feet();
    Length::from_inches(5.0 * shear.plf() * length * length * length / (8.0 * stretched))
}

fn spliced(floor: &BendingDiaphragm, splices: &[Splice]) -> Length {
    let sum = splices.iter().fold(0.0, |sum, splice| sum + splice.from_support.feet() * splice.slip.inches());
    Length::from_inches(sum / (2.0 * floor.width.feet()))
}
