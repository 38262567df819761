//! R602.7.5: full-height (king) studs at each end of a header in an exterior wall.

use measure::{Length, Speed};

use super::{DOCUMENT, r301::ExposureCategory};
use crate::{OutsideTable, Source, Status};

/// One cell of a table of full-height studs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FullHeightStudsCell<Column> {
    /// The heading it stands under.
    pub column: Column,
    /// The opening may be up to this.
    pub span: Length,
    /// Studs at each end.
    pub studs: u8,
    /// How the cell came here.
    pub status: Status,
}

/// A wind column of Table R602.7.5.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WindColumn {
    /// Ultimate wind speed to 115 mph in Exposure B.
    To115B,
    /// Under 140 mph in Exposure B, or under 130 mph in Exposure C.
    Under140BOr130C,
}

/// What the table asks beside an opening.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FullHeightStuds<Column> {
    /// Full-height studs at each end of the header.
    pub count: u8,
    /// Span of the row read: the next one up.
    pub row: Length,
    /// Column read.
    pub column: Column,
    /// The table, and how the cell came here.
    pub source: Source,
}

/// Table R602.7.5, every cell.
pub const TABLE_R602_7_5: &[FullHeightStudsCell<WindColumn>] =
    include!(concat!(env!("OUT_DIR"), "/irc_2021_table_r602_7_5.rs"));

/// The row for an opening in a table of full-height studs: the next one up.
pub(crate) fn next_row_up<Column: Copy + PartialEq>(
    cells: &[FullHeightStudsCell<Column>],
    document: &'static str,
    column: Column,
    opening: Length,
    covers: &'static str,
) -> Result<FullHeightStuds<Column>, OutsideTable> {
    let next_up = cells
        .iter()
        .filter(|cell| cell.column == column && cell.span >= opening && opening > Length::ZERO)
        .min_by(|a, b| a.span.inches().total_cmp(&b.span.inches()));
    let Some(cell) = next_up else {
        return Err(outside(document, format!("opening {} ft wide", opening.feet()), covers));
    };
    let source = Source::new(document, PLACE, cell.status);
    Ok(FullHeightStuds { count: cell.studs, row: cell.span, column, source })
}

const PLACE: &str = "Table R602.7.5";

pub(crate) fn outside(document: &'static str, given: String, covers: &'static str) -> OutsideTable {
    let source = Source::new(document, PLACE, Status::FromMemory);
    OutsideTable { source, given, covers, next_step: "An engineer designs the full-height studs for the wind." }
}

pub(crate) fn for_wind(
    document: &'static str,
    opening: Length,
    wind_speed: Speed,
    exposure: ExposureCategory,
) -> Result<FullHeightStuds<WindColumn>, OutsideTable> {
    let mph = wind_speed.mph();
    let column = match exposure {
        ExposureCategory::B if mph <= 115.0 => WindColumn::To115B,
        ExposureCategory::B if mph < 140.0 => WindColumn::Under140BOr130C,
        ExposureCategory::C if mph < 130.0 => WindColumn::Under140BOr130C,
        _ => {
            let given = format!("ultimate wind speed {mph} mph in Exposure {}", exposure.letter());
            return Err(outside(document, given, "under 140 mph in Exposure B and under 130 mph in Exposure C"));
        }
    };
    next_row_up(TABLE_R602_7_5, document, column, opening, "openings to 18 ft wide")
}

/// Full-height (king) studs at each end of a header in an exterior wall, by the ultimate wind speed and exposure.
///
/// The opening goes to the next row up. Most of the table is from memory; the source of the answer says which.
///
/// # Errors
/// Exposure D, which is not in the table; 140 mph or more in Exposure B; 130 mph or more in Exposure C; an opening over
/// 18 ft.
pub fn king_studs(
    opening: Length,
    wind_speed: Speed,
    exposure: ExposureCategory,
) -> Result<FullHeightStuds<WindColumn>, OutsideTable> {
    for_wind(DOCUMENT, opening, wind_speed, exposure)
}
