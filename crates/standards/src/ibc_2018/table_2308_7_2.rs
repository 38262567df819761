//! Table 2308.7.2(2): rafters with a ceiling under roof live load. Made from `data/ibc_2018/` at build time.
//!
//! Rows of Douglas Fir-Larch Select Structural, No. 2 and No. 3 and of Hem-Fir No. 1 follow base values of bending that
//! have since been changed: 1450, 875 and 500 psi, and 950 psi.

use measure::{AreaLoad, Length};

use crate::Status;
use crate::span_row::{PrintedSpan, SpanGrade, SpanRow, SpanSpecies, SpanTable};

/// Every row that was read.
pub const TABLE_2308_7_2_2: &[SpanRow] = include!(concat!(env!("OUT_DIR"), "/ibc_2018_table_2308_7_2_2.rs"));
