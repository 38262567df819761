//! Studs of a gable end, cut under the rafter.

use measure::{Angle, Length};

use super::common::{Common, common};
use super::error::{RoofError, not_negative, positive};
use super::plane::rise;

/// The most studs under one rafter.
const MOST: usize = 500;

/// A stud under the rafter of a gable end, flat against it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GableStud {
    /// From the outer face of the plate under the rafter's heel to the middle of the stud.
    pub from_corner: Length,
    /// From the top of the plate to the underside of the rafter, on the middle of the stud.
    pub length: Length,
}

/// Studs of one half of a gable end.
#[derive(Clone, Debug, PartialEq)]
pub struct GableStuds {
    /// From the corner to the ridge.
    pub studs: Vec<GableStud>,
    /// From one stud to the next.
    pub common_difference: Length,
    /// Cut at the top, from square.
    pub top_cut: Angle,
}

/// Lays out the studs under one rafter: the first so far from the outer face of its plate, the others at the spacing,
/// up to the ridge. A place where the rafter is too low for a stud has none.
///
/// Source: geometry; a naval training course prints the difference at 6 in 12.
///
/// # Errors
/// As [`common`], a spacing of nothing, and more than 500 studs.
pub fn gable_studs(rafter: &Common, first: Length, spacing: Length) -> Result<GableStuds, RoofError> {
    not_negative("distance to the first stud", first)?;
    positive("spacing", spacing)?;
    let of_rafter = common(rafter)?;
    let slope = rafter.pitch.angle();
    let under = of_rafter.birdsmouth.height_above_plate - of_rafter.plumb_depth;
    let many = (rafter.run - first) / spacing;
    if many >= MOST as f64 {
        return Err(RoofError::TooMany { what: "studs", most: MOST });
    }
    let stud = |count: u32| {
        let from_corner = first + spacing * f64::from(count);
        GableStud { from_corner, length: rise(from_corner, rafter.pitch) + under }
    };
    let there = |stud: &GableStud| stud.from_corner <= rafter.run && stud.length > Length::ZERO;
    Ok(GableStuds {
        studs: (0..=MOST as u32).map(stud).filter(there).collect(),
        common_difference: rise(spacing, rafter.pitch),
        top_cut: slope,
    })
}
