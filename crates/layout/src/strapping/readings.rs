//! Readings from a string or a laser to the undersides of the joists, row by row, gaps and all.

use measure::Length;

use super::error::{StrappingError, in_order, within};

/// The most rows of readings that are taken.
pub const MOST_ROWS: usize = 60;
/// The most joists that are taken.
pub const MOST_JOISTS: usize = 60;
/// The widest ceiling that is taken.
const WIDEST: Length = Length::from_inches(1200.0);
/// The farthest string or laser from the joists that is taken.
const FARTHEST: Length = Length::from_inches(240.0);
/// Readings and places are worked in whole parts of this many to the inch: far finer than any tape, and whole.
const PARTS: f64 = 4096.0;
/// Parts in a sixteenth.
pub(super) const PARTS_IN_A_SIXTEENTH: i128 = 256;

/// On which side of the joists' undersides the string or the laser stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// Below them: a larger reading is a higher joist.
    Below,
    /// Above them, read downwards: a larger reading is a lower joist.
    Above,
}

/// What was read from. All strings of one ceiling must lie in one plane: pulled over two strings at the walls, or levelled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Datum {
    /// Where it stands.
    pub side: Side,
    /// Whether it is known to be level: a laser that was checked, or a levelled string.
    pub level: bool,
}

/// A place where a row crosses a joist, both counted from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Crossing {
    /// Which row.
    pub row: usize,
    /// Which joist.
    pub joist: usize,
}

/// Readings at the crossings of rows and joists; some may be missing.
#[derive(Clone, Debug, PartialEq)]
pub struct Readings {
    joists: Vec<Length>,
    rows: Vec<Length>,
    heights: Vec<Vec<Option<Length>>>,
    level: bool,
}

impl Readings {
    /// Takes readings row by row: `by_row[row][joist]`, with none where nothing was read. `joists` are the joists' centres
    /// across the ceiling and `rows` the rows' centres along them, each in order from one wall.
    ///
    /// Places and readings are taken to 1/4096 in.
    ///
    /// # Errors
    /// Where there are no joists or rows or more than 60 of them, they are not in order or farther than 100 ft, a row does
    /// not have one entry for each joist, a reading is farther than 20 ft, or there is none at all.
    pub fn new(
        datum: Datum,
        joists: &[Length],
        rows: &[Length],
        by_row: &[Vec<Option<Length>>],
    ) -> Result<Self, StrappingError> {
        places("joists", joists, MOST_JOISTS)?;
        places("rows", rows, MOST_ROWS)?;
        if by_row.len() != rows.len() {
            return Err(StrappingError::Count { what: "rows of readings", given: by_row.len(), most: rows.len() });
        }
        let mut heights = Vec::with_capacity(rows.len());
        for (index, row) in by_row.iter().enumerate() {
            if row.len() != joists.len() {
                return Err(StrappingError::RowLength { row: index + 1, given: row.len(), joists: joists.len() });
            }
            heights.push(row.iter().map(|reading| height(datum, *reading)).collect::<Result<Vec<_>, _>>()?);
        }
        if heights.iter().flatten().all(Option::is_none) {
            return Err(StrappingError::NoReadings);
        }
        Ok(Self { joists: joists.to_vec(), rows: rows.to_vec(), heights, level: datum.level })
    }

    /// Whether the string or the laser is known to be level.
    #[must_use]
    pub const fn level(&self) -> bool {
        self.level
    }

    /// Centres of the joists across the ceiling.
    #[must_use]
    pub fn joists(&self) -> &[Length] {
        &self.joists
    }

    /// Centres of the rows along the joists.
    #[must_use]
    pub fn rows(&self) -> &[Length] {
        &self.rows
    }

    /// Every crossing, row by row.
    pub fn crossings(&self) -> impl Iterator<Item = Crossing> + '_ {
        let joists = 0..self.joists.len();
        (0..self.rows.len()).flat_map(move |row| joists.clone().map(move |joist| Crossing { row, joist }))
    }

    /// Height of the joist's underside over the string or the laser as it was read, below zero where it stands above;
    /// none where nothing was read.
    #[must_use]
    pub fn height(&self, at: Crossing) -> Option<Length> {
        self.heights.get(at.row)?.get(at.joist).copied().flatten()
    }

    /// Height on the straight line between the two nearest readings of the same joist, one on each side; none where one
    /// side has none.
    #[must_use]
    pub fn between(&self, at: Crossing) -> Option<Length> {
        let read = |row: usize| Some((*self.rows.get(row)?, self.height(Crossing { row, joist: at.joist })?));
        let place = *self.rows.get(at.row)?;
        let (from, low) = (0..at.row).rev().find_map(read)?;
        let (to, high) = (at.row + 1..self.rows.len()).find_map(read)?;
        Some(low + (high - low) * ((place - from) / (to - from)))
    }

    /// The crossing's place in whole parts: across, along.
    pub(super) fn place(&self, at: Crossing) -> [i128; 2] {
        let part = |places: &[Length], index: usize| places.get(index).map_or(0, |place| parts(*place));
        [part(&self.joists, at.joist), part(&self.rows, at.row)]
    }
}

/// A length in whole parts.
pub(super) fn parts(length: Length) -> i128 {
    (length.inches() * PARTS).round() as i128
}

/// A quotient of whole parts as a length.
pub(super) fn length_of(top: i128, bottom: i128) -> Length {
    Length::from_inches(top as f64 / bottom as f64 / PARTS)
}

fn places(what: &'static str, places: &[Length], most: usize) -> Result<(), StrappingError> {
    if places.is_empty() || places.len() > most {
        return Err(StrappingError::Count { what, given: places.len(), most });
    }
    for place in places {
        within(what, *place, [Length::ZERO, WIDEST])?;
    }
    in_order(what, places)
}

fn height(datum: Datum, reading: Option<Length>) -> Result<Option<Length>, StrappingError> {
    let Some(reading) = reading else { return Ok(None) };
    let reading = within("a reading", reading, [-FARTHEST, FARTHEST])?;
    Ok(Some(match datum.side {
        Side::Below => reading,
        Side::Above => -reading,
    }))
}
