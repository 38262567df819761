//! One wall line through the storeys, as its ends are held down.

use measure::{Length, LineLoad};

use super::house::House;
use super::share::{STACKED, StoreyLines};
use crate::overturning::Storey;

/// The storeys of the line at a place, from the first that has it down, each with what its own floor or roof brings to the
/// whole line. The dead load that surely stands on it is for the caller to know: none is taken here.
///
/// The storeys must be those that [`super::wind_to_lines`] gave for this house.
#[must_use]
pub fn stacked(house: &House, storeys: &[StoreyLines], at: Length) -> Vec<Storey> {
    let of = |lines: &StoreyLines| {
        let away = |place: Length| (place - at).inches().abs();
        lines.lines.iter().find(|line| away(line.at) <= STACKED.inches()).map(|line| line.own)
    };
    let both = house.storeys.iter().zip(storeys);
    both.filter_map(|(storey, lines)| Some(Storey { force: of(lines)?, height: storey.height, dead: LineLoad::ZERO }))
        .collect()
}
