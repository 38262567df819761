//! 4.3.3.3: walls that are sheathed on both faces.
//!
//! Layers on the same face are never added. All of it is from memory.

use measure::Ratio;

use super::table_4_3::Sheathing;
use super::{ApparentShearStiffness, DOCUMENT, NominalUnitShear};
use crate::{Source, Status};

/// 4.3.3.3.1: the same sheathing on both faces, nailed alike or not.
pub const SAME_MATERIAL: Source = Source::new(DOCUMENT, "4.3.3.3.1", Status::FromMemory);
/// 4.3.3.3.2: another sheathing on the other face.
pub const DISSIMILAR: Source = Source::new(DOCUMENT, "4.3.3.3.2", Status::FromMemory);
/// 4.3.3.3.2, its exception for wind: wood panels on one face and gypsum wallboard on the other.
pub const ADDED_IN_WIND: Source = Source::new(DOCUMENT, "4.3.3.3.2 exception", Status::FromMemory);

/// The same sheathing nailed otherwise on the other face: both stiffnesses together, and the unit shear at which the first
/// of the two faces is used up, `G_ac · min(v_1 / G_a1, v_2 / G_a2)`.
///
/// ```
/// use standards::sdpws_2015::faces::differently_nailed;
/// use standards::sdpws_2015::{ApparentShearStiffness, NominalUnitShear};
///
/// // Own arithmetic on Table 4.3A: 7/16 in with 8d at 6 in (670 plf, 15 kips an inch) and at 4 in (980, 22): 980/22 is the
/// // smaller share, and 37 times it is 1,648 plf.
/// let face = |plf, kips| (NominalUnitShear::from_plf(plf), ApparentShearStiffness::from_kips_per_inch(kips));
/// let (shear, stiffness) = differently_nailed([face(670.0, 15.0), face(980.0, 22.0)]);
/// assert!((shear.plf() - 1648.2).abs() < 0.05);
/// assert_eq!(stiffness.pounds_per_inch(), 37_000.0);
/// ```
#[must_use]
pub fn differently_nailed(
    faces: [(NominalUnitShear, ApparentShearStiffness); 2],
) -> (NominalUnitShear, ApparentShearStiffness) {
    let together: f64 = faces.iter().map(|(_, stiffness)| stiffness.pounds_per_inch()).sum();
    let shared = |(shear, stiffness): &(NominalUnitShear, ApparentShearStiffness)| -> Ratio {
        shear.plf() / stiffness.pounds_per_inch()
    };
    let least = faces.iter().map(shared).fold(f64::INFINITY, f64::min);
    (NominalUnitShear::from_plf(least * together), ApparentShearStiffness::from_kips_per_inch(together / 1000.0))
}

/// Another sheathing on the other face: twice the weaker face, or the stronger one alone, whichever is more.
///
/// ```
/// use standards::sdpws_2015::NominalUnitShear;
/// use standards::sdpws_2015::faces::dissimilar;
/// let plf = NominalUnitShear::from_plf;
/// assert_eq!(dissimilar(plf(670.0), plf(200.0)), plf(670.0));
/// assert_eq!(dissimilar(plf(670.0), plf(400.0)), plf(800.0));
/// ```
#[must_use]
pub fn dissimilar(one: NominalUnitShear, other: NominalUnitShear) -> NominalUnitShear {
    let (less, more) = if one < other { (one, other) } else { (other, one) };
    let twice = less.times(2.0);
    if twice > more { twice } else { more }
}

/// Whether, in wind, both faces may be added: wood panels or fiberboard on one, gypsum wallboard on the other.
#[must_use]
pub const fn are_added_in_wind(one: Sheathing, other: Sheathing) -> bool {
    let of_wood = matches!(one, Sheathing::StructuralI | Sheathing::Sheathing | Sheathing::Fiberboard);
    of_wood && matches!(other, Sheathing::Wallboard)
}
