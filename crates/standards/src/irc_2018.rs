//! International Residential Code, 2018 edition: its tables on headers, and its sizes of stairs.
//!
//! They were read, in part, in a reprint of this edition; the 2021 edition prints the same, so the cells are kept with
//! that edition and each answer here names 2018. Of its stairs much was read in a county's page on this
//! edition, the rest is from memory.

use measure::{AreaLoad, Length, Speed};

use crate::{
    OutsideTable, Status,
    irc_2021::{look_up, r311_7, r602_7, r602_7_5},
};

pub use crate::irc_2021::{
    HeaderCell, HeaderSize, HeaderSpan, NominalDepth,
    r301::ExposureCategory,
    r311_7::{StairLimit, StairLimits},
    r602_7::{
        InteriorSupporting, Supporting, TABLE_R602_7_1, TABLE_R602_7_2, TableSpecies, flat_two_by_four_may_head,
        unbraced_top_factor,
    },
    r602_7_5::{FullHeightStuds, TABLE_R602_7_5, WindColumn},
};

const DOCUMENT: &str = "IRC 2018";

/// Sizes of stairs, handrails and guards.
pub const STAIRS: StairLimits = r311_7::limits(DOCUMENT, Status::LookedUp);

/// Longest span and jack studs of a header in an exterior bearing wall, as [`r602_7::header_span`] of 2021.
///
/// # Errors
/// As there.
pub fn header_span(
    supporting: Supporting,
    size: HeaderSize,
    ground_snow: AreaLoad,
    roof_live: AreaLoad,
    width: Length,
) -> Result<HeaderSpan, OutsideTable> {
    let table = r602_7::exterior(DOCUMENT);
    let column = table.snow_column(ground_snow, roof_live)?;
    look_up(&table, supporting, size, Some(column), width)
}

/// Longest span and jack studs of a header in an interior bearing wall, as [`r602_7::interior_header_span`] of 2021.
///
/// # Errors
/// As there.
pub fn interior_header_span(
    supporting: InteriorSupporting,
    size: HeaderSize,
    width: Length,
) -> Result<HeaderSpan, OutsideTable> {
    look_up(&r602_7::interior(DOCUMENT), supporting, size, None, width)
}

/// Full-height studs at each end of a header, as [`r602_7_5::king_studs`] of 2021.
///
/// # Errors
/// As there.
pub fn king_studs(
    opening: Length,
    wind_speed: Speed,
    exposure: ExposureCategory,
) -> Result<FullHeightStuds<WindColumn>, OutsideTable> {
    r602_7_5::for_wind(DOCUMENT, opening, wind_speed, exposure)
}
