//! One mark with everything that was looked at there.

use job::walk::Walk;

use super::overview::{MarkRow, mark_row};
use super::point::{PointRow, row};

/// A mark as its screen shows it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MarkView {
    /// The mark at a glance.
    pub head: MarkRow,
    /// What was looked at there, in its order; what is crossed out among it.
    pub rows: Vec<PointRow>,
    /// How many photos there are of the mark itself.
    pub photos: usize,
}

/// A mark of a walk by its id; none where there is no such mark.
#[must_use]
pub fn mark(walk: &Walk, id: &str) -> Option<MarkView> {
    let mark = walk.marks.iter().find(|mark| mark.id == id)?;
    Some(MarkView {
        head: mark_row(mark),
        rows: mark.points.iter().filter_map(|point| row(mark, point)).collect(),
        photos: mark.photos.iter().filter(|(photo, _)| photo.struck.is_none()).count(),
    })
}
