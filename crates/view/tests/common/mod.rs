//! What the tests of several screens need.

use view::scene::Mark;

/// The coordinates of a mark.
pub fn numbers(mark: &Mark) -> Vec<f64> {
    match mark {
        Mark::Line { from, to, .. }
        | Mark::Dimension { from, to, .. }
        | Mark::Arrow { from, to, .. }
        | Mark::Pick { from, to, .. } => vec![from.0, from.1, to.0, to.1],
        Mark::Shape { points, .. } => points.iter().flat_map(|point| [point.0, point.1]).collect(),
        Mark::Label { at, .. } | Mark::Words { from: at, .. } => vec![at.0, at.1],
    }
}
