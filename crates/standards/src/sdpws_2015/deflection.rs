//! 4.3.2 and its commentary: how far a shear wall leans.

use measure::{Area, Force, Length, LineLoad, Ratio, Stress, math};

use super::table_4_3::ShearFastener;
use super::{ApparentShearStiffness, DOCUMENT};
use crate::{OutsideTable, Source, Status};

/// Eq. 4.3-1, in three terms. Read in practitioners' calculations.
pub const THREE_TERMS: Source = Source::new(DOCUMENT, "Eq. 4.3-1", Status::LookedUp);
/// Eq. C4.3.2-2, in four terms.
pub const FOUR_TERMS: Source = Source::new(DOCUMENT, "Eq. C4.3.2-2", Status::FromMemory);
/// Table C4.2.2D: nail slip, framing dry when it was nailed. Confirmed by every stiffness of Table 4.3A.
pub const NAIL_SLIP: Source = Source::new(DOCUMENT, "Table C4.2.2D", Status::FromMemory);

/// What a wall is, where it leans: its height, its length, the area of one end post and its stiffness along the grain.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LeaningWall {
    /// Height.
    pub height: Length,
    /// Length.
    pub length: Length,
    /// Area of the end post at one end.
    pub end_post: Area,
    /// Modulus of elasticity of the end post.
    pub modulus: Stress,
}

/// Shear rigidity through the thickness of a panel, `G_v t_v`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PanelRigidity {
    pounds_per_inch: f64,
}

impl PanelRigidity {
    /// In pounds an inch.
    #[must_use]
    pub const fn pounds_per_inch(self) -> f64 {
        self.pounds_per_inch
    }
}

/// Panels as their rigidity is printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PanelMake {
    /// Oriented strand board.
    StrandBoard,
    /// Plywood of three plies, sheathing grade.
    Plywood,
    /// Plywood of three plies, Structural I.
    PlywoodStructuralI,
}

/// Table C4.2.2A: shear rigidity through the thickness. Confirmed by every stiffness of Table 4.3A.
pub const RIGIDITY: Source = Source::new(DOCUMENT, "Table C4.2.2A", Status::FromMemory);

/// Thicknesses in 32nds of an inch, and the rigidities of the three makes, pounds an inch.
const RIGIDITIES: [(f64, [f64; 3]); 5] = [
    (10.0, [77_500.0, 25_000.0, 32_500.0]),
    (12.0, [77_500.0, 25_000.0, 32_500.0]),
    (14.0, [83_500.0, 27_000.0, 35_000.0]),
    (15.0, [83_500.0, 27_000.0, 35_000.0]),
    (19.0, [88_500.0, 28_500.0, 37_000.0]),
];

/// Rigidity of a panel; a thickness between two of the table's takes the thinner one's.
///
/// # Errors
/// For panels thinner than 5/16 in.
pub fn panel_rigidity(make: PanelMake, thickness: Length) -> Result<PanelRigidity, OutsideTable> {
    let covered = |(of, _): &&(f64, [f64; 3])| *of / 32.0 <= thickness.inches() + 1e-9;
    match RIGIDITIES.iter().rev().find(covered) {
        Some((_, of)) => Ok(PanelRigidity { pounds_per_inch: of[make as usize] }),
        None => Err(OutsideTable {
            source: RIGIDITY,
            given: format!("a panel {} in thick", thickness.inches()),
            covers: "panels from 5/16 in",
            next_step: "Take a panel of the shear wall table.",
        }),
    }
}

/// Slip of one nail under its load, framing dry when it was nailed, `(V / a)^b`; a fifth more where the panel is not
/// Structural I.
///
/// ```
/// use measure::Force;
/// use standards::sdpws_2015::deflection::nail_slip;
/// use standards::sdpws_2015::table_4_3::ShearFastener;
///
/// // Source: the standard's commentary, an example as it is remembered: 140 lb on a 6d in Structural I, 0.0244 in.
/// let slip = nail_slip(ShearFastener::Common6d, Force::from_pounds(140.0), true);
/// assert!(slip.is_some_and(|slip| (slip.inches() - 0.0244).abs() < 0.0001));
/// ```
#[must_use]
pub fn nail_slip(fastener: ShearFastener, load: Force, structural_i: bool) -> Option<Length> {
    let (scale, power) = match fastener {
        ShearFastener::Common6d => (456.0, 3.144),
        ShearFastener::Common8d => (616.0, 3.018),
        ShearFastener::Common10d => (769.0, 3.276),
        _ => return None,
    };
    let more: Ratio = if structural_i { 1.0 } else { 1.2 };
    Some(Length::from_inches(math::pow(load.pounds() / scale, power) * more))
}

/// The apparent stiffness that makes three terms equal to four at 1.4 times the allowable unit shear for earthquakes: how
/// the printed stiffnesses were made.
#[must_use]
pub fn apparent_stiffness(shear: LineLoad, panel: PanelRigidity, slip: Length) -> ApparentShearStiffness {
    let kips = shear.plf() / (shear.plf() / panel.pounds_per_inch + 0.75 * slip.inches()) / 1000.0;
    ApparentShearStiffness::from_kips_per_inch(kips)
}

/// The terms of a wall's lean.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lean {
    /// End posts stretched and pressed, `8 v h³ / (E A b)`.
    pub bending: Length,
    /// Panels sheared, with their nails' slip in three terms and without in four.
    pub shear: Length,
    /// Nails' slip, in four terms.
    pub slip: Length,
    /// The wall turned by what gives at its hold-down, `h Δ_a / b`.
    pub anchorage: Length,
}

impl Lean {
    /// All of it.
    #[must_use]
    pub fn total(&self) -> Length {
        self.bending + self.shear + self.slip + self.anchorage
    }
}

/// Lean in three terms: `8 v h³ / (E A b) + v h / (1000 G_a) + h Δ_a / b`, with `v` in pounds a foot, lengths in feet but
/// `Δ_a` in inches, `A` in square inches and `G_a` in kips an inch.
///
/// ```
/// use measure::{Area, Length, LineLoad, Stress};
/// use standards::sdpws_2015::ApparentShearStiffness;
/// use standards::sdpws_2015::deflection::{LeaningWall, three_terms};
///
/// // Source: an open set of design notes for one house: 0.0008, 0.0511, 0.0388, in all 0.0907 in.
/// let wall = LeaningWall {
///     height: Length::from_feet(4.083),
///     length: Length::from_feet(6.573),
///     end_post: Area::from_square_inches(10.5),
///     modulus: Stress::from_psi(1.4e6),
/// };
/// let stiffness = ApparentShearStiffness::from_kips_per_inch(11.0);
/// let lean = three_terms(&wall, LineLoad::from_plf(137.7), stiffness, Length::from_inches(1.0 / 16.0));
/// assert!((lean.total().inches() - 0.0907).abs() < 0.00005);
/// ```
#[must_use]
pub fn three_terms(wall: &LeaningWall, shear: LineLoad, stiffness: ApparentShearStiffness, anchorage: Length) -> Lean {
    let sheared = shear.plf() * wall.height.feet() / stiffness.pounds_per_inch();
    Lean {
        bending: bending(wall, shear),
        shear: Length::from_inches(sheared),
        slip: Length::ZERO,
        anchorage: anchorage * (wall.height / wall.length),
    }
}

/// Lean in four terms: `8 v h³ / (E A b) + v h / (G_v t_v) + 0.75 h e_n + h Δ_a / b`; `G_v t_v` in pounds an inch.
#[must_use]
pub fn four_terms(wall: &LeaningWall, shear: LineLoad, panel: PanelRigidity, slip: Length, anchorage: Length) -> Lean {
    let sheared = shear.plf() * wall.height.feet() / panel.pounds_per_inch;
    Lean {
        bending: bending(wall, shear),
        shear: Length::from_inches(sheared),
        slip: slip * (0.75 * wall.height.feet()),
        anchorage: anchorage * (wall.height / wall.length),
    }
}

fn bending(wall: &LeaningWall, shear: LineLoad) -> Length {
    let height = wall.height.feet();
    let stretched = wall.modulus.psi() * wall.end_post.square_inches() * wall.length.feet();
    Length::from_inches(8.0 * shear.plf() * height * height * height / stretched)
}
