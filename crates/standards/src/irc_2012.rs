//! International Residential Code, 2012 edition and before: header spans.
//!
//! Superseded by Table R602.7(1) of 2018, which has other widths and a weaker southern pine. Kept to judge what was
//! framed under it. Only two blocks of the table are here, both for 30 psf of ground snow.

use measure::{AreaLoad, Length};

use crate::{
    OutsideTable, Status,
    irc_2021::{HeaderTable, look_up},
};

pub use crate::irc_2021::{HeaderCell, HeaderSize, HeaderSpan, NominalDepth, r602_7::Supporting};

const DOCUMENT: &str = "IRC 2012";

/// Table R502.5(1), the cells at hand. Lumber is No. 2, but southern pine is No. 1.
pub const TABLE_R502_5_1: &[HeaderCell<Supporting>] = include!(concat!(env!("OUT_DIR"), "/irc_2012_table_r502_5_1.rs"));

/// Longest span and jack studs of a header in an exterior bearing wall, Table R502.5(1).
///
/// Width interpolates between 20, 28 and 36 ft; a narrower building takes the 20 ft column. The table has no rule for
/// a header whose top is not held sideways.
///
/// # Errors
/// Ground snow over 30 psf, a building over 36 ft wide, a size or a kind of load above that is not in the copy here.
pub fn header_span(
    supporting: Supporting,
    size: HeaderSize,
    ground_snow: AreaLoad,
    roof_live: AreaLoad,
    width: Length,
) -> Result<HeaderSpan, OutsideTable> {
    let table = HeaderTable {
        cells: TABLE_R502_5_1,
        document: DOCUMENT,
        place: "Table R502.5(1)",
        snow: "ground snow loads to 30 psf, in the part of it that is at hand",
        widths: "buildings to 36 ft wide",
        sizes: "2-2x4 to 2-2x12, and 3 and 4 plies of 2x8 to 2x12",
    };
    let column = table.snow_column(ground_snow, roof_live)?;
    look_up(&table, supporting, size, Some(column), width)
}
