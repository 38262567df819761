//! International Residential Code, 2021 edition.
//!
//! What is here: what a header over an opening needs. Live loads, deflection limits and the reach of the code's own
//! wind design (R301), bearing (R502.6), header spans on bearing walls (R602.7) and full-height studs beside an
//! opening (R602.7.5). And what an inspection asks of a wall: anchor bolts (R403.1.6, R602.11.1), notches and holes
//! (R502.8, R602.6, R602.6.1), and the uplift of rafters and trusses (R802.11). Nailing and stud sizes:
//! R602.3. Where the code's own rules stop for wind and earthquakes (R301.2), and what fasteners in treated wood are made
//! of (R317.3). Spans of joists and rafters, the rows that were read ([`spans`]); cantilevers, partitions, bridging and openings of
//! floors (R502); ties, heel joints, seats and ridges of roofs (R802.4). Sizes
//! of stairs, their handrails and guards (R311.7, R312.1).
//!
//! Deliberately absent: Table R602.7(3), headers of open porches. The copy at hand is from memory and follows no
//! bending model, so it is not used. The tables of R602.7 are those of the 2018 edition: that 2021 prints the same is
//! from memory, and a quote of two cells of 2021 agrees.

mod header_table;
pub mod r301;
pub mod r301_2;
pub mod r301_6;
pub mod r311_7;
pub mod r317_3;
pub mod r403_1_6;
pub mod r502;
pub mod r502_6;
pub mod r502_8;
pub mod r602_11;
pub mod r602_3_1;
pub mod r602_3_2;
pub mod r602_3_3;
pub mod r602_3_5;
pub mod r602_6;
pub mod r602_6_1;
pub mod r602_7;
pub mod r602_7_5;
pub mod r703_15;
pub mod r802_11;
pub mod r802_4;
pub mod spans;

pub(crate) use header_table::{HeaderTable, look_up};

pub use header_table::{HeaderCell, HeaderSize, HeaderSpan, NominalDepth};

const DOCUMENT: &str = "IRC 2021";
