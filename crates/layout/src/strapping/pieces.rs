//! Pieces of a row: joints on joists, the fewest pieces, and no joint beside one of the row before.

use measure::Length;

use super::error::StrappingError;

/// A row from end to end, or what an opening or a beam leaves of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    /// Where it begins, from the left wall.
    pub from: Length,
    /// Where it ends.
    pub to: Length,
    /// Its pieces from the left.
    pub pieces: Vec<Length>,
    /// Joists, counted from 0, on whose middle its joints stand.
    pub joints: Vec<usize>,
    /// Joists that it crosses.
    pub crossings: usize,
    /// Whether fewer than two joists hold it: it needs blocking.
    pub loose: bool,
}

/// What joints stand on.
pub(super) struct Joints<'a> {
    pub joists: &'a [Length],
    pub stock: Length,
    /// Joists with a joint in the row before.
    pub avoid: &'a [usize],
}

const SAME: Length = Length::from_inches(1e-9);

/// Divides a run into the fewest pieces. Where staggering it is not possible, it is not staggered.
pub(super) fn joined([from, to]: [Length; 2], joints: &Joints<'_>) -> Result<Run, StrappingError> {
    let on = |joist: &Length| *joist >= from - SAME && *joist <= to + SAME;
    let first = joints.joists.iter().position(on).unwrap_or(0);
    let crossings = joints.joists.iter().filter(|joist| on(joist)).count();
    // An end piece lies on two joists at least: neither the first nor the last one takes a joint.
    let inner = (first + 1)..(first + crossings).saturating_sub(1);
    let staggered: Vec<usize> = inner.clone().filter(|joist| !joints.avoid.contains(joist)).collect();
    let chosen = fewest([from, to], &staggered, joints)
        .or_else(|| fewest([from, to], &inner.collect::<Vec<_>>(), joints))
        .ok_or(StrappingError::OutOfReach { from, stock: joints.stock })?;
    let place = |joist: &usize| joints.joists.get(*joist).copied();
    let marks: Vec<Length> = [from].into_iter().chain(chosen.iter().filter_map(place)).chain([to]).collect();
    let pieces = marks.windows(2).map(|pair| pair[1] - pair[0]).collect();
    Ok(Run { from, to, pieces, joints: chosen, crossings, loose: crossings < 2 })
}

/// The joists of the joints, the fewest that will do; of equal choices the first pieces are the longest.
fn fewest([from, to]: [Length; 2], allowed: &[usize], joints: &Joints<'_>) -> Option<Vec<usize>> {
    let place = |joist: &usize| joints.joists.get(*joist).copied();
    let mut marks = vec![from];
    marks.extend(allowed.iter().filter_map(place));
    marks.push(to);
    let reach = |one: usize, other: usize| marks[other] - marks[one] <= joints.stock + SAME;
    // Pieces from each mark to the end, and the mark that the next piece goes to, worked from the end.
    let end = marks.len() - 1;
    let mut onward: Vec<Option<(usize, usize)>> = vec![None; marks.len()];
    onward[end] = Some((0, end));
    for mark in (0..end).rev() {
        let next = (mark + 1..=end).rev().filter(|next| reach(mark, *next));
        let pieces = next.filter_map(|next| Some((onward[next]?.0 + 1, next)));
        onward[mark] = pieces.min_by_key(|(pieces, _)| *pieces);
    }
    let mut chosen = Vec::new();
    let mut mark = onward[0]?.1;
    while mark != end {
        chosen.push(*allowed.get(mark - 1)?);
        mark = onward[mark]?.1;
    }
    Some(chosen)
}
