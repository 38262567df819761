//! What is kept on this phone.
//!
//! One database with three stores: `parts` (the job, part by part), `journal` (what is being typed, one record a
//! window) and `broken` (bytes that could not be read, untouched). Settings that may be lost are in [`settings`].
//!
//! *Invariant*: nothing is called kept before its transaction has completed, and a write never replaces a part that is
//! newer than the one it started from.

mod change;
mod database;
mod error;
mod journal;
mod keeper;
mod lasting;
mod parts;
mod saving;
pub mod settings;
mod start;
#[cfg(test)]
mod tests;
mod windows;

pub use error::StoreError;
pub use keeper::{Keeper, Kept};
pub use lasting::{ask_to_last, whether_lasting};
pub use saving::Saved;
pub use start::{Found, at_start};
pub use windows::hear_other_windows;
