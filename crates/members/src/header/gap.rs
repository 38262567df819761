//! A gap between header and jack: how much of it is shrinkage.

use lumber::Member;
use measure::Ratio;

use super::input::Gap;
use super::result::GapAnswer;

/// Shrinkage across the grain for each per cent of moisture lost below the fibre saturation point, as a share of the
/// size. Common practice: between 0.2 and 0.3 per cent for a mix of tangential and radial grain.
const COMMON: Ratio = 0.0025;
const LEAST: Ratio = 0.0020;
/// Three eighths of an inch in 11-1/4 in over nine per cent is told of as well.
const MOST: Ratio = 0.375 / 11.25 / 9.0;
/// Wood does not shrink above this moisture content, per cent (from memory).
const FIBRE_SATURATION: Ratio = 28.0;

/// What a header shrinks in depth while it dries, beside the gap that was found.
pub(super) fn answer(header: &Member, gap: Gap) -> GapAnswer {
    let lost = (gap.moisture_when_set.min(FIBRE_SATURATION) - gap.moisture_in_service).max(0.0);
    let depth = header.section().depth;
    GapAnswer {
        found: gap.opening,
        expected: depth * COMMON * lost,
        least: depth * LEAST * lost,
        most: depth * MOST * lost,
    }
}
