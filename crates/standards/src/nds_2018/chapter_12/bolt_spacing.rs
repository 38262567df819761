//! §12.5.1: how far bolts stand from ends, edges and each other, and what less than the whole distance costs.

use measure::Length;

use crate::Status::FromMemory;
use crate::nds_2018::{Cited, nds};

/// Which way the bolt pushes on the wood.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum BoltLoad {
    /// Along the grain, toward the end of the piece.
    TowardEnd,
    /// Along the grain, away from the end.
    AwayFromEnd,
    /// Across the grain.
    AcrossGrain,
}

impl BoltLoad {
    /// Every direction.
    pub const ALL: [Self; 3] = [Self::TowardEnd, Self::AwayFromEnd, Self::AcrossGrain];
}

/// A distance with a whole and a least value. Between the two the geometry factor is the share of the whole one; under
/// the least the bolt has no value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Distance {
    /// From here on nothing is taken off.
    pub full: Length,
    /// The least that counts at all.
    pub least: Length,
}

/// Distances of bolts in softwood.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoltDistances {
    /// From the bolt to the end of the piece.
    pub end: Distance,
    /// From the bolt to the edge that the load pushes toward; nothing is allowed under it.
    pub loaded_edge: Length,
    /// From the bolt to the other edge; nothing is allowed under it.
    pub unloaded_edge: Length,
    /// Between bolts in a row.
    pub in_row: Distance,
}

/// Distances of bolts of a diameter in softwood: ends 7 D toward, 4 D away and 4 D across, the least one half of
/// each; edges 1.5 D, and 4 D where the load pushes across the grain toward it; 4 D in a row, at least 3 D.
///
/// Edges along the grain are for a bolt whose bearing length is at most 6 diameters, as in a sill; in a row across the
/// grain the whole spacing is that of the attached member.
///
/// Source: NDS 2018 Tables 12.5.1A, 12.5.1B and 12.5.1C (from memory).
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_12::{BoltLoad, bolt_distances};
/// let found = bolt_distances(Length::from_inches(0.5), BoltLoad::TowardEnd).value;
/// assert_eq!([found.end.full, found.end.least].map(Length::inches), [3.5, 1.75]);
/// ```
#[must_use]
pub fn bolt_distances(diameter: Length, load: BoltLoad) -> Cited<BoltDistances> {
    let (end, loaded_edge) = match load {
        BoltLoad::TowardEnd => (7.0, 1.5),
        BoltLoad::AwayFromEnd => (4.0, 1.5),
        BoltLoad::AcrossGrain => (4.0, 4.0),
    };
    let distances = BoltDistances {
        end: Distance { full: diameter * end, least: diameter * (end / 2.0) },
        loaded_edge: diameter * loaded_edge,
        unloaded_edge: diameter * 1.5,
        in_row: Distance { full: diameter * 4.0, least: diameter * 3.0 },
    };
    Cited::new(distances, nds("Tables 12.5.1A to 12.5.1C", FromMemory))
}

/// Geometry factor `C_Δ` of a distance: its share of the whole one, at most 1; none under the least one.
///
/// Pure number. Source: NDS 2018 §12.5.1.2 (from memory).
#[must_use]
pub fn geometry_factor(found: Length, of: Distance) -> Option<Cited<f64>> {
    // Decimals of an inch are not exact in binary.
    const ROUNDING: f64 = 1e-9;
    let share = found.inches() / of.full.inches();
    let enough = found.inches() >= of.least.inches() * (1.0 - ROUNDING);
    enough.then(|| Cited::new(share.min(1.0), nds("§12.5.1.2", FromMemory)))
}
