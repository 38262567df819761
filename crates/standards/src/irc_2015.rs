//! International Residential Code, 2015 edition: full-height studs, which went by stud spacing.
//!
//! Superseded: from 2018 the table goes by wind. Kept to judge what was framed under it. Its header spans are not here.

use measure::Length;

use crate::{
    OutsideTable, Status,
    irc_2021::r602_7_5::{next_row_up, outside},
};

pub use crate::irc_2021::r602_7_5::{FullHeightStuds, FullHeightStudsCell};

const DOCUMENT: &str = "IRC 2015";

/// Table R602.7.5 of 2015, every cell; the column is the spacing of the wall's studs.
pub const TABLE_R602_7_5: &[FullHeightStudsCell<Length>] =
    include!(concat!(env!("OUT_DIR"), "/irc_2015_table_r602_7_5.rs"));

/// Full-height studs at each end of a header by the spacing of the wall's studs.
///
/// The opening goes to the next row up. A spacing between 16 and 24 in takes the 16 in column, which asks for more.
///
/// # Errors
/// A spacing under 16 in or over 24 in, or an opening over 16 ft.
pub fn king_studs(opening: Length, stud_spacing: Length) -> Result<FullHeightStuds<Length>, OutsideTable> {
    let [narrow, wide] = [16.0, 24.0].map(Length::from_inches);
    if stud_spacing < narrow || stud_spacing > wide {
        let given = format!("stud spacing {} in", stud_spacing.inches());
        return Err(outside(DOCUMENT, given, "stud spacings from 16 to 24 in"));
    }
    let column = if stud_spacing < wide { narrow } else { wide };
    next_row_up(TABLE_R602_7_5, DOCUMENT, column, opening, "openings to 16 ft wide")
}
