//! The strips along the edges of a house in which the wind is stronger.

use measure::{Length, Ratio};
use standards::{Source, Status};

/// Note on the width `a`: 10 per cent of the least plan dimension or 0.4 of the mean roof height, whichever is less,
/// but not less than 4 per cent of the least plan dimension nor 3 ft. Read in a standard that reproduces the figure.
pub const END_ZONE: Source = Source::new("ASCE 7-16", "Fig. 28.3-1, Fig. 30.3-1, notes on a", Status::LookedUp);

const OF_PLAN: Ratio = 0.10;
const OF_HEIGHT: Ratio = 0.4;
const LEAST_OF_PLAN: Ratio = 0.04;
const LEAST: Length = Length::from_feet(3.0);

/// Widths of the edge strips.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EndZone {
    /// `a`: the strip along eaves, rakes, ridges and corners for cladding, measured level.
    pub edge_strip: Length,
    /// `2 a`: the end zone of the main frame, from a corner.
    pub end_strip: Length,
}

/// The edge strips of a house, by its least plan dimension and its mean roof height. The larger width that the note
/// allows over 300 ft, with roofs of 7 degrees or less, does not arise: no house here is larger.
#[must_use]
pub fn end_zone(least_plan_dimension: Length, mean_roof_height: Length) -> EndZone {
    let wide = (least_plan_dimension * OF_PLAN).min(mean_roof_height * OF_HEIGHT);
    let edge_strip = wide.max(least_plan_dimension * LEAST_OF_PLAN).max(LEAST);
    EndZone { edge_strip, end_strip: edge_strip * 2.0 }
}
