//! Spans of floor joists (R502.3.1), ceiling joists (R802.5.1) and rafters (R802.4.1): the rows that were read, no others.
//! Made from `data/irc_2021/spans.csv` at build time.

use measure::{AreaLoad, Length};

use crate::Status;
use crate::span_row::{PrintedSpan, SpanGrade, SpanRow, SpanSpecies, SpanTable};

/// Every row that was read.
pub const SPANS: &[SpanRow] = include!(concat!(env!("OUT_DIR"), "/irc_2021_spans.rs"));
