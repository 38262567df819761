//! Anchor bolts of sill plates, and hold-downs.
//!
//! A bolt without a tight nut and a washer does not hold and is not counted.

mod bolt;
mod hold_down;
mod sill;

pub use bolt::{AnchorBolt, Nut, Washer, middle_third_of, thread_needed};
pub use hold_down::{DrilledAnchor, DrilledAnchorLacks, HoldDown, HoldDownRequired, Thread, judge_hold_down};
pub use sill::{PlateWasher, Sill, SillAnswer, SillRequired, judge_sill};
