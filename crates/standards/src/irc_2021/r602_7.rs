//! R602.7: headers in exterior and interior bearing walls, and in walls that bear nothing.

use measure::{AreaLoad, Length, LineLoad, Ratio};

use super::{DOCUMENT, HeaderCell, HeaderSize, HeaderSpan, HeaderTable, NominalDepth, look_up};
use crate::{OutsideTable, Source, Status};

/// What a header in an exterior bearing wall carries.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Supporting {
    /// Roof and ceiling.
    RoofCeiling,
    /// Roof, ceiling and one floor whose joists rest on a wall at mid-width.
    OneFloorCenterBearing,
    /// Roof, ceiling and one floor whose joists span the whole width.
    OneFloorClearSpan,
    /// Roof, ceiling and two floors that rest on a wall at mid-width.
    TwoFloorsCenterBearing,
    /// Roof, ceiling and two floors that span the whole width.
    TwoFloorsClearSpan,
}

/// What a header in an interior bearing wall carries.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum InteriorSupporting {
    /// One floor only.
    OneFloor,
    /// Two floors.
    TwoFloors,
}

/// Species groups the tables are made for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TableSpecies {
    /// Douglas Fir-Larch.
    DouglasFirLarch,
    /// Hem-Fir.
    HemFir,
    /// Southern Pine.
    SouthernPine,
    /// Spruce-Pine-Fir.
    SprucePineFir,
}

/// The lowest grade the tables are made for.
pub const GRADE: &str = "No. 2";

/// Table R602.7(1), every cell.
pub const TABLE_R602_7_1: &[HeaderCell<Supporting>] = include!(concat!(env!("OUT_DIR"), "/irc_2021_table_r602_7_1.rs"));

/// Table R602.7(2), every cell.
pub const TABLE_R602_7_2: &[HeaderCell<InteriorSupporting>] =
    include!(concat!(env!("OUT_DIR"), "/irc_2021_table_r602_7_2.rs"));

/// The footnote on a header whose top is not held sideways. The 0.70 was read; that 2x4 and 2x6 keep their spans is
/// from memory.
pub const UNBRACED_TOP: Source = Source::new(DOCUMENT, "Table R602.7(1) footnote", Status::PartlyLookedUp);

/// Clause on walls that bear nothing; its limits are from memory.
pub const NONBEARING: Source = Source::new(DOCUMENT, "R602.7.4", Status::FromMemory);

pub(crate) const fn exterior(document: &'static str) -> HeaderTable<Supporting> {
    HeaderTable {
        cells: TABLE_R602_7_1,
        document,
        place: "Table R602.7(1)",
        snow: "ground snow loads to 70 psf",
        widths: "buildings to 36 ft wide",
        sizes: "1-2x6 to 1-2x12, 2-2x4 to 2-2x12, and 3 and 4 plies of 2x8 to 2x12",
    }
}

pub(crate) const fn interior(document: &'static str) -> HeaderTable<InteriorSupporting> {
    HeaderTable {
        cells: TABLE_R602_7_2,
        document,
        place: "Table R602.7(2)",
        snow: "walls that carry no roof",
        widths: "buildings to 36 ft wide",
        sizes: "2-2x4 to 2-2x12, and 3 and 4 plies of 2x8 to 2x12",
    }
}

/// Longest span and jack studs of a header in an exterior bearing wall, Table R602.7(1).
///
/// Takes the ground snow load (not the roof's), the roof live load, and the width of the building at right angles to
/// the ridge. Snow goes to the next column up; width interpolates between 12, 24 and 36 ft; a narrower building takes
/// the 12 ft column. The table is for No. 2 lumber of [`TableSpecies`].
///
/// # Errors
/// Ground snow over 70 psf, a building over 36 ft wide, a size that is not listed, or a roof live load over 20 psf
/// where snow is under 30 psf.
pub fn header_span(
    supporting: Supporting,
    size: HeaderSize,
    ground_snow: AreaLoad,
    roof_live: AreaLoad,
    width: Length,
) -> Result<HeaderSpan, OutsideTable> {
    let table = exterior(DOCUMENT);
    let column = table.snow_column(ground_snow, roof_live)?;
    look_up(&table, supporting, size, Some(column), width)
}

/// Longest span and jack studs of a header in an interior bearing wall, Table R602.7(2).
///
/// # Errors
/// A building over 36 ft wide, or a size that is not listed.
pub fn interior_header_span(
    supporting: InteriorSupporting,
    size: HeaderSize,
    width: Length,
) -> Result<HeaderSpan, OutsideTable> {
    look_up(&interior(DOCUMENT), supporting, size, None, width)
}

/// What a tabulated span is multiplied by when the header's top is not held sideways by framing that bears on it, as
/// when cripple studs stand on it: 0.70 for 2x8, 2x10 and 2x12; 1 for 2x4 and 2x6.
#[must_use]
pub const fn unbraced_top_factor(size: HeaderSize) -> Ratio {
    match size.depth {
        NominalDepth::Four | NominalDepth::Six => 1.0,
        NominalDepth::Eight | NominalDepth::Ten | NominalDepth::Twelve => 0.70,
    }
}

/// Widest opening that a single flat 2x4 may head in a wall that bears nothing.
pub const NONBEARING_WIDEST: Length = Length::from_feet(8.0);
/// Farthest distance from that flat 2x4 up to the framing above.
pub const NONBEARING_FARTHEST_ABOVE: Length = Length::from_inches(24.0);

/// Whether a single flat 2x4 may head an opening in a wall that bears nothing.
#[must_use]
pub fn flat_two_by_four_may_head(opening: Length, to_framing_above: Length) -> bool {
    opening <= NONBEARING_WIDEST && to_framing_above <= NONBEARING_FARTHEST_ABOVE
}
