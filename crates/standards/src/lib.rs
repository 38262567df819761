//! Published clauses and tables, nothing else.
//!
//! Module = standard and edition, file = chapter or table, function = clause or equation. The tables themselves are
//! data, as printed, under `data/`, and become Rust at build time (`build.rs`).
//!
//! *Invariant*: nothing here rounds, assumes, chooses or words anything for a screen. A new edition is a new folder.

mod source;

pub use source::{Source, Status};
