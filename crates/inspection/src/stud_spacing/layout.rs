//! Each stud beside its layout mark.

use measure::Length;

use super::Wall;

/// A stud farther from every mark than this share of the spacing stands on none: it was added, or ends the wall.
const ON_LAYOUT: f64 = 0.375;
/// Drifts that grow by the same to within this are one creep: an eighth is what a mark and a stud differ by.
const SAME_STEP: Length = Length::from_inches(1.0 / 8.0);
/// A creep of less than this at each stud is the width of a pencil line.
const LEAST_STEP: Length = Length::from_inches(1.0 / 16.0);
/// From so many studs on a creep is told from chance.
const STUDS_OF_A_CREEP: usize = 4;

/// Drift of each stud from the mark it was set to. Marks stand at whole spacings from the plate's end.
///
/// Marks are counted from stud to stud, so that a creep past half a spacing is still a creep and not a new mark.
pub(super) fn drift(centres: &[Length], wall: &Wall, spacing: Length) -> Vec<Option<Length>> {
    let half = wall.stud / 2.0;
    let far_end = wall.length.map(|length| length - wall.stud);
    let (mut mark, mut at) = (0.0, Length::ZERO);
    let mut drift_of = |centre: Length| {
        if centre <= half + half || far_end.is_some_and(|end| centre > end) {
            return None;
        }
        let steps = ((centre - at) / spacing).round();
        let off = centre - at - spacing * steps;
        if steps < 1.0 || off.abs() > spacing * ON_LAYOUT {
            return None;
        }
        (mark, at) = (mark + steps, centre);
        Some(centre - spacing * mark)
    };
    centres.iter().map(|centre| drift_of(*centre)).collect()
}

/// Whether the drift grows by the same at each stud.
pub(super) fn creeps(drift: &[Option<Length>]) -> bool {
    let on_layout: Vec<Length> = drift.iter().flatten().copied().collect();
    if on_layout.len() < STUDS_OF_A_CREEP {
        return false;
    }
    let steps: Vec<Length> = on_layout.windows(2).map(|pair| pair[1] - pair[0]).collect();
    let first = steps[0];
    let one_way = steps.iter().all(|step| *step > LEAST_STEP) || steps.iter().all(|step| *step < -LEAST_STEP);
    one_way && steps.iter().all(|step| (*step - first).abs() <= SAME_STEP)
}
