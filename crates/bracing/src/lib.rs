//! Walls that keep the house square: what they carry, what holds their ends down, how far they lean.
//!
//! A [`Nailing`] on [`Framing`] has a [`Strength`]; a [`SegmentedWall`] holds each full-height piece down at its own ends, a
//! [`PerforatedWall`] the whole of it at two; [`overturning`] carries what holds the ends down through the storeys.
//! [`lightest_that_carries`] finds the nailing that a unit shear needs. [`uplift`] follows what lifts the roof down to the
//! footing. [`fewest_bolts`] holds a piece of bottom plate to its concrete.
//!
//! *Invariant*: loads and strengths meet at allowable stress design and nowhere else. A piece of wall that is narrower than
//! the limit counts for nothing, and no number is given for sheathing that no table has. What an engineer drew is never
//! changed.
//!
//! *Absent on purpose*: earthquakes, portal frames, straps around openings, more than three storeys. Not here yet:
//! diaphragms and collectors; what one bolt carries stands with fasteners.

mod choose;
mod nailing_text;
mod overturning;
mod perforated;
mod segmented;
mod sill;
mod strength;
pub mod uplift;

pub use choose::{Chosen, lightest_that_carries, nailings};
pub use nailing_text::{NailingTextError, nail_length, nail_words, read_nailing};
pub use overturning::{Storey, overturning};
pub use perforated::{Opening, PerforatedAnswer, PerforatedWall, check_perforated};
pub use segmented::{Ends, OF_DEAD, Segment, SegmentedAnswer, SegmentedWall, check_segmented};
pub use sill::{OneBolt, SillAnswer, SillError, SillPiece, bolts_at, check_sill, fewest_bolts};
pub use standards::sdpws_2015::table_4_3::{ShearFastener, Sheathing};
pub use strength::{Edition, Factor, Framing, Nailing, Strength, strength};
