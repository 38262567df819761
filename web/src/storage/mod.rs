//! What is kept on this phone.
//!
//! One database: `parts` (the job, part by part), `journal` (what is being typed for a check, one record a window and a job),
//! `walk_log` and `walk_drafts` (the same two for a walk), `photos` and `thumbs`, and `broken` (bytes that could not be
//! read, untouched). Settings that may be lost are in [`settings`].
//!
//! *Invariant*: nothing is called kept before its transaction has completed, and a write never replaces a part that is
//! newer than the one it started from.

mod change;
mod database;
mod drafts;
mod error;
mod jobs;
mod journal;
mod keeper;
mod lasting;
mod log;
mod parts;
mod saving;
pub mod settings;
mod start;
#[cfg(test)]
mod tests;
mod transfer;
mod windows;

pub use change::{in_words, put_name, put_site, site_of};
pub use drafts::{drop_drafts, keep_draft, read_drafts};
pub use error::StoreError;
pub use jobs::{begin_job, jobs, put_back};
pub use keeper::{Keeper, Kept};
pub use lasting::{ask_to_last, whether_lasting};
pub use log::{PhotoBytes, add, add_photo, photo, photos, read_log};
pub use parts::{chosen_job, read_all as read_parts};
pub use saving::Saved;
pub use start::{Found, at_start};
pub use transfer::{Trouble, bring_in, gather};
pub use windows::{hear_other_windows, tell_other_windows};
