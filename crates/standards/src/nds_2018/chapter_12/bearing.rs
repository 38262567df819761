//! §12.3.3: how hard wood is to crush under the shank of a nail.

use measure::{Stress, math};

use super::SPECIFIC_GRAVITY;
use crate::Status::{FromMemory, LookedUp};
use crate::nds_2018::{Cited, OutsideLimits, nds, supplement::SpeciesGroup};

/// Dowel bearing strength of wood for dowels under 1/4 in, `F_e = 16,600 G^1.84`, whatever the grain.
///
/// Takes the specific gravity `G`, oven-dry; gives a stress, unrounded.
///
/// Source: NDS 2018 §12.3.3, Table 12.3.3 footnote 2 (looked up; the ends of the table from memory).
///
/// # Errors
/// When the specific gravity is under 0.31 or over 0.73.
///
/// ```
/// use standards::nds_2018::chapter_12::dowel_bearing_strength;
/// assert!((dowel_bearing_strength(0.50)?.value.psi() - 4637.0).abs() < 0.5);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn dowel_bearing_strength(specific_gravity: f64) -> Result<Cited<Stress>, OutsideLimits> {
    let gravity = SPECIFIC_GRAVITY.check(specific_gravity)?;
    Ok(Cited::new(Stress::from_psi(16_600.0 * math::pow(gravity, 1.84)), nds("Table 12.3.3 footnote 2", LookedUp)))
}

/// The same as the table prints it, to the nearest 50 psi. The design values of Tables 12N to 12R are made with it.
///
/// Source: NDS 2018 Table 12.3.3 (rounding looked up).
///
/// # Errors
/// As [`dowel_bearing_strength`].
pub fn tabulated_dowel_bearing_strength(specific_gravity: f64) -> Result<Cited<Stress>, OutsideLimits> {
    const PRINTED_STEP: f64 = 50.0;
    let exact = dowel_bearing_strength(specific_gravity)?.value;
    let printed = (exact.psi() / PRINTED_STEP).round() * PRINTED_STEP;
    Ok(Cited::new(Stress::from_psi(printed), nds("Table 12.3.3", LookedUp)))
}

/// Assigned specific gravity `G` of a group of species: a pure number.
///
/// Source: NDS 2018 Table 12.3.3A (looked up).
#[must_use]
pub const fn assigned_specific_gravity(group: SpeciesGroup) -> Cited<f64> {
    let value = match group {
        SpeciesGroup::SouthernPine => 0.55,
        SpeciesGroup::DouglasFirLarch => 0.50,
        SpeciesGroup::HemFir => 0.43,
        SpeciesGroup::SprucePineFir => 0.42,
        SpeciesGroup::SprucePineFirSouth => 0.36,
    };
    Cited::new(value, nds("Table 12.3.3A", LookedUp))
}

/// Wood structural panels as the table groups them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum WoodPanel {
    /// Oriented strand board, all grades.
    Osb,
    /// Plywood, Structural 1 or Marine.
    PlywoodStructural1,
    /// Plywood of other grades, unless every ply is known to be denser.
    PlywoodOther,
}

impl WoodPanel {
    /// Every group.
    pub const ALL: [Self; 3] = [Self::Osb, Self::PlywoodStructural1, Self::PlywoodOther];
}

/// Specific gravity `G` of a panel: a pure number.
///
/// Source: NDS 2018 Table 12.3.3B (from memory).
#[must_use]
pub const fn panel_specific_gravity(panel: WoodPanel) -> Cited<f64> {
    let value = match panel {
        WoodPanel::Osb | WoodPanel::PlywoodStructural1 => 0.50,
        WoodPanel::PlywoodOther => 0.42,
    };
    Cited::new(value, nds("Table 12.3.3B", FromMemory))
}

/// Dowel bearing strength `F_e` of a panel, for dowels to 1/4 in.
///
/// Source: NDS 2018 Table 12.3.3B (from memory).
#[must_use]
pub const fn panel_bearing_strength(panel: WoodPanel) -> Cited<Stress> {
    let psi = match panel {
        WoodPanel::Osb | WoodPanel::PlywoodStructural1 => 4650.0,
        WoodPanel::PlywoodOther => 3350.0,
    };
    Cited::new(Stress::from_psi(psi), nds("Table 12.3.3B", FromMemory))
}
