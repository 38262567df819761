//! Published clauses and tables, nothing else.
//!
//! Module = standard and edition, file = chapter or table, function = clause or equation. The tables themselves are
//! data, as printed, under `data/`, and become Rust at build time (`build.rs`).
//!
//! *Invariant*: nothing here rounds, assumes, chooses or words anything for a screen. A new edition is a new folder.

pub mod asce7_10;
pub mod asce7_16;
pub mod asce7_22;
pub mod asme_b18;
pub mod cfr_29_1926;
pub mod ibc_2018;
pub mod irc_2012;
pub mod irc_2015;
pub mod irc_2018;
pub mod irc_2021;
pub mod nds_2018;
pub mod nfip_technical_bulletin_8;
mod outside_table;
pub mod sdpws_2015;
pub mod sdpws_2021;
mod source;
pub mod span_row;
pub mod technical_topic_tt_012;
pub mod wood_floor_frequency;

pub use outside_table::OutsideTable;
pub use source::{Source, Status};
