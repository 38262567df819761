//! Where a bolt stands in its piece: the distances that it needs, and what shorter ones cost.

use measure::{Angle, Length};
use standards::nds_2018::{
    Cited,
    chapter_12::{BoltDistances, BoltLoad, Distance, bolt_distances, geometry_factor},
};

use crate::BoltError;

/// Where a bolt stands in one piece.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BoltPlace {
    /// From the bolt to the end of the piece.
    pub end: Length,
    /// Whether the load can push it toward that end, as wind and earthquakes do both ways.
    pub toward_end: bool,
    /// From the bolt to the edge that the load pushes toward; along the grain, to the nearer edge.
    pub loaded_edge: Length,
    /// From the bolt to the other edge.
    pub unloaded_edge: Length,
    /// To the next bolt in the row; none where it stands alone.
    pub in_row: Option<Length>,
}

/// The distances that a bolt needs under a load at an angle to the grain: between along and across it, the longer of
/// each.
///
/// Source: NDS 2018 Tables 12.5.1A to 12.5.1C (from memory).
#[must_use]
pub fn needed_distances(diameter: Length, load_to_grain: Angle, toward_end: bool) -> Cited<BoltDistances> {
    let along = bolt_distances(diameter, if toward_end { BoltLoad::TowardEnd } else { BoltLoad::AwayFromEnd });
    let across = bolt_distances(diameter, BoltLoad::AcrossGrain);
    if load_to_grain <= Angle::ZERO {
        along
    } else if load_to_grain >= Angle::from_degrees(90.0) {
        across
    } else {
        along.map(|along| longer(&along, &across.value))
    }
}

fn longer(one: &BoltDistances, other: &BoltDistances) -> BoltDistances {
    let of = |a: Distance, b: Distance| Distance { full: a.full.max(b.full), least: a.least.max(b.least) };
    BoltDistances {
        end: of(one.end, other.end),
        loaded_edge: one.loaded_edge.max(other.loaded_edge),
        unloaded_edge: one.unloaded_edge.max(other.unloaded_edge),
        in_row: of(one.in_row, other.in_row),
    }
}

/// The geometry factor `C_Δ`: the smallest share of a whole distance.
pub(crate) fn geometry(place: &BoltPlace, diameter: Length, load_to_grain: Angle) -> Result<Cited<f64>, BoltError> {
    let needed = needed_distances(diameter, load_to_grain, place.toward_end).value;
    edge("the edge that the load pushes toward", place.loaded_edge, needed.loaded_edge)?;
    edge("the other edge", place.unloaded_edge, needed.unloaded_edge)?;
    let end = share("the end", place.end, needed.end)?;
    let in_row = place.in_row.map(|found| share("the next bolt", found, needed.in_row)).transpose()?;
    Ok(match in_row {
        Some(in_row) if in_row.value < end.value => in_row,
        _ => end,
    })
}

fn edge(to: &'static str, given: Length, least: Length) -> Result<(), BoltError> {
    // Decimals of an inch are not exact in binary.
    let enough = given.inches() >= least.inches() * (1.0 - 1e-9);
    if enough { Ok(()) } else { Err(BoltError::TooClose { to, given, least }) }
}

fn share(to: &'static str, given: Length, of: Distance) -> Result<Cited<f64>, BoltError> {
    geometry_factor(given, of).ok_or(BoltError::TooClose { to, given, least: of.least })
}
