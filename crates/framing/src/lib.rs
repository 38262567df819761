//! The one flow from what was typed to what is answered, and the headless command.
//!
//! What is here: the inputs of a check and what may be typed in them ([`field`]), how they are read ([`reading`]), the
//! check itself ([`header`]), checks of one kind each ([`quick`]: [`member`], [`bracing`], [`layout`](mod@layout)), its sentences ([`words`]), what is found on a walk through the frame ([`walk`]), and the
//! command's lines ([`check`]).
//!
//! *Invariant*: no clock, no randomness, no storage, no browser; and no second way to compute anything that a crate
//! below computes.

mod answering;
pub mod bracing;
mod case;
pub mod check;
pub mod field;
pub mod header;
pub mod layout;
pub mod member;
pub mod quick;
pub mod reading;
pub mod reply;
pub mod site;
pub mod walk;
pub mod words;

pub use answering::{piece, reply};
pub use case::{HeaderCase, Texts};
pub use header::{HeaderOutcome, derive_header};
