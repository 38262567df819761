//! The stored job: what someone typed or measured, and nothing that can be computed from it.
//!
//! A job is kept as parts, so that one keystroke does not rewrite a house: its head, its site values, and one record
//! for each saved check. Each part is versioned JSON with a revision that grows by one at every write. Typing that is
//! not saved yet is kept beside the parts as a [`Typing`].
//!
//! What was measured on site is a log of records that are added and never changed ([`walk`]): two phones may add to one
//! walk and neither loses a finding. A job with its log and its photos travels as one file ([`mod@file`]), which is taken
//! whole or refused whole, and is brought into what is here without overwriting any of it.
//!
//! *Invariant*: no engineering and no browser is known here. Nothing here has a clock: times come in as text. A part
//! that cannot be opened is given back with its bytes, never dropped and never repaired in silence.

mod document;
pub mod file;
mod jobs;
mod merge;
mod open;
mod part;
mod typing;
pub mod walk;

pub use document::{Fields, Job, SavedHeader};
pub use jobs::{JobName, jobs, next_job_name};
pub use merge::{Clash, Merged, merge_fields};
pub use open::{OpenError, open_part, open_typing};
pub use part::{Part, PartBody, PartKey};
pub use typing::Typing;

/// The format that this version writes. Every format up to it opens.
pub const FORMAT: u32 = 1;
