//! International Residential Code, 2021 edition.
//!
//! What is here: what a header over an opening needs. Live loads, deflection limits and the reach of the code's own
//! wind design (R301), bearing (R502.6), header spans on bearing walls (R602.7) and full-height studs beside an
//! opening (R602.7.5).
//!
//! Deliberately absent: Table R602.7(3), headers of open porches. The copy at hand is from memory and follows no
//! bending model, so it is not used. The tables of R602.7 are those of the 2018 edition: that 2021 prints the same is
//! from memory, and a quote of two cells of 2021 agrees.

mod header_table;
pub mod r301;
pub mod r502_6;
pub mod r602_7;
pub mod r602_7_5;

pub(crate) use header_table::{HeaderTable, look_up};

pub use header_table::{HeaderCell, HeaderSize, HeaderSpan, NominalDepth};

const DOCUMENT: &str = "IRC 2021";
