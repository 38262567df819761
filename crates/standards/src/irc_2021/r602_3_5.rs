//! Table R602.3(5): size, height and spacing of wood studs. Made from `data/irc_2021/` at build time.

use measure::{Denominator, Length};

use super::DOCUMENT;
use crate::{OutsideTable, Source, Status};

/// What the studs of a bearing wall carry.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum StudSupporting {
    /// Roof and ceiling, or a habitable attic.
    RoofCeiling,
    /// One floor, and roof and ceiling.
    OneFloorAndRoof,
    /// Two floors, and roof and ceiling.
    TwoFloorsAndRoof,
    /// One floor only.
    OneFloorOnly,
}

impl StudSupporting {
    /// Every column, in the order of the table.
    pub const ALL: [Self; 4] = [Self::RoofCeiling, Self::OneFloorAndRoof, Self::TwoFloorsAndRoof, Self::OneFloorOnly];

    const fn words(self) -> &'static str {
        match self {
            Self::RoofCeiling => "roof and ceiling",
            Self::OneFloorAndRoof => "one floor, roof and ceiling",
            Self::TwoFloorsAndRoof => "two floors, roof and ceiling",
            Self::OneFloorOnly => "one floor only",
        }
    }
}

/// One row: a size of stud.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StudRow {
    /// Nominal size: `2x6`.
    pub size: &'static str,
    /// Largest laterally unsupported height in a bearing wall; none where it may not bear.
    pub bearing_height: Option<Length>,
    /// Largest spacings in a bearing wall, in the order of [`StudSupporting::ALL`]; none where it is not allowed.
    pub spacings: [Option<Length>; 4],
    /// Largest laterally unsupported height in a nonbearing wall.
    pub nonbearing_height: Length,
    /// Largest spacing in a nonbearing wall.
    pub nonbearing_spacing: Length,
    /// How the row came here.
    pub status: Status,
}

impl StudRow {
    /// The table, and how the row came here.
    #[must_use]
    pub const fn source(&self) -> Source {
        Source::new(DOCUMENT, PLACE, self.status)
    }

    /// Largest spacing in a bearing wall; none where it is not allowed.
    #[must_use]
    pub const fn spacing(&self, supporting: StudSupporting) -> Option<Length> {
        let [roof, one_and_roof, two_and_roof, one] = self.spacings;
        match supporting {
            StudSupporting::RoofCeiling => roof,
            StudSupporting::OneFloorAndRoof => one_and_roof,
            StudSupporting::TwoFloorsAndRoof => two_and_roof,
            StudSupporting::OneFloorOnly => one,
        }
    }
}

/// Table R602.3(5), every row. Not for utility grade, which may carry a roof and ceiling only, at 16 in and to 8 ft.
pub const TABLE_R602_3_5: &[StudRow] = include!(concat!(env!("OUT_DIR"), "/irc_2021_table_r602_3_5.rs"));

const PLACE: &str = "Table R602.3(5)";

/// What the table allows of a stud.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StudSpacing {
    /// Largest spacing, on center.
    pub spacing: Length,
    /// Largest laterally unsupported height.
    pub height: Length,
    /// The table, and how the row came here.
    pub source: Source,
}

/// Largest spacing of the studs of a bearing wall.
///
/// Takes the nominal size, the laterally unsupported height, and what the wall carries.
///
/// Source: IRC 2021 Table R602.3(5); see the status of the answer. 2x4 and 2x6 under a roof and more floors were looked
/// up.
///
/// # Errors
/// A size that is not listed, one that may not carry this, or a height over the table's.
///
/// ```
/// use measure::Length;
/// use standards::irc_2021::r602_3_5::{StudSupporting, bearing_stud};
/// let found = bearing_stud("2x4", Length::from_feet(8.0), StudSupporting::OneFloorAndRoof)?;
/// assert_eq!(found.spacing.inches(), 16.0);
/// assert!(bearing_stud("2x4", Length::from_feet(8.0), StudSupporting::TwoFloorsAndRoof).is_err());
/// # Ok::<(), standards::OutsideTable>(())
/// ```
pub fn bearing_stud(size: &str, height: Length, supporting: StudSupporting) -> Result<StudSpacing, OutsideTable> {
    let row = row(size)?;
    let allowed = row.bearing_height.zip(row.spacing(supporting));
    let (largest, spacing) = allowed
        .ok_or_else(|| outside(row.status, format!("{size} studs that carry {}", supporting.words()), BEARING_SIZES))?;
    within(row, height, largest, spacing, "bearing studs to 10 ft between supports at their sides")
}

/// Largest spacing of the studs of a wall that bears nothing. A 2x3 is not for exterior walls.
///
/// # Errors
/// A size that is not listed, or a height over the table's.
pub fn nonbearing_stud(size: &str, height: Length) -> Result<StudSpacing, OutsideTable> {
    let row = row(size)?;
    let covers = "nonbearing 2x3 to 10 ft, 2x4 and 3x4 to 14 ft, 2x5 to 16 ft and 2x6 to 20 ft";
    within(row, height, row.nonbearing_height, row.nonbearing_spacing, covers)
}

const BEARING_SIZES: &str = "2x4 and 2x5 under one floor and roof, 3x4 and 2x6 under two floors and roof";

fn row(size: &str) -> Result<&'static StudRow, OutsideTable> {
    let found = TABLE_R602_3_5.iter().find(|row| row.size == size);
    found.ok_or_else(|| outside(Status::FromMemory, format!("{size} studs"), "2x3, 2x4, 3x4, 2x5 and 2x6 studs"))
}

fn within(
    row: &StudRow,
    height: Length,
    largest: Length,
    spacing: Length,
    covers: &'static str,
) -> Result<StudSpacing, OutsideTable> {
    if height > Length::ZERO && height <= largest {
        return Ok(StudSpacing { spacing, height: largest, source: row.source() });
    }
    let given = format!("{} studs {} high", row.size, height.to_feet_inches(Denominator::Sixteenth));
    Err(outside(row.status, given, covers))
}

fn outside(status: Status, given: String, covers: &'static str) -> OutsideTable {
    let source = Source::new(DOCUMENT, PLACE, status);
    OutsideTable { source, given, covers, next_step: "Use a larger stud, or have an engineer design the wall." }
}
