//! The pull that the next stud gives if it stands on its mark.

use inspection::stud_spacing::Pulls;
use measure::Length;

use super::{StudSpacingCase, pulled, required, row, wall};
use crate::walk::answer::Answer;
use crate::walk::reading::Inputs;

/// A first stud farther than this from its mark: the layout runs from that stud, not from the plate's end.
const ON_ITS_MARK: Length = Length::from_inches(0.25);
/// A mark nearer to the last stud than this share of the spacing is that stud's own.
const OWN_MARK: f64 = 0.375;

/// What the tape would say at the next stud, if it stood on its layout: marks stand at whole spacings from the plate's
/// end, or from the first stud where that one was set off the marks. Centre to centre it is the spacing itself. None
/// past the end of the plate. Pulls that cannot be read are passed over.
#[must_use]
pub fn next_on_layout(case: &StudSpacingCase) -> Option<Length> {
    let (inputs, answer) = (&mut Inputs::default(), &mut Answer::default());
    let row = row(inputs, case);
    let spacing = required(inputs, answer, case, row).value;
    let wall = wall(inputs, answer, case, row);
    let pulled = pulled(inputs, answer, case);
    let half = wall.stud / 2.0;
    let to_centre = match pulled.pulls {
        Pulls::CentreToCentre(_) => return Some(spacing),
        Pulls::RunningToNearEdge => half,
        Pulls::RunningToFarEdge => -half,
        Pulls::RunningToCentre => Length::ZERO,
    };
    let centres: Vec<Length> = pulled.readings.iter().map(|reading| reading.pull + to_centre).collect();
    let next = next_mark(&centres, spacing);
    let past = wall.length.is_some_and(|length| next + half > length);
    (!past).then_some(next - to_centre)
}

fn next_mark(centres: &[Length], spacing: Length) -> Length {
    let off = |centre: Length| centre - spacing * (centre / spacing).round();
    // The end stud may have been pulled first: it stands on no mark.
    let first = centres.iter().copied().find(|centre| *centre > spacing * OWN_MARK);
    let base = first.filter(|first| off(*first).abs() > ON_ITS_MARK).map_or(Length::ZERO, off);
    let last = centres.iter().copied().fold(Length::ZERO, Length::max);
    let steps = ((last - base + spacing * OWN_MARK) / spacing).floor() + 1.0;
    base + spacing * steps
}
