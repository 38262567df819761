//! Walls that keep the house square: what they carry, what holds their ends down, how far they lean.
//!
//! A [`Nailing`] on [`Framing`] has a [`Strength`], what is on the [`OtherFace`] counted in; a [`SegmentedWall`] holds each full-height piece down at its own ends, a
//! [`PerforatedWall`] the whole of it at two; [`overturning`] carries what holds the ends down through the storeys.
//! [`lightest_that_carries`] finds the nailing that a unit shear needs. [`uplift`] follows what lifts the roof down to the
//! footing. [`diaphragm`] has the floors and roofs that bring the wind to the walls, [`wall_lines`] what each line of walls
//! is given, [`check_line`] what a line lacks; [`fewest_bolts`] holds a piece of bottom plate to its concrete;
//! [`check_make_up`] looks at the layers of a wall, and [`schedule`] reads what the engineer drew,
//! and [`braced_walls`] the walls that it is for.
//!
//! *Invariant*: loads and strengths meet at allowable stress design and nowhere else. A piece of wall that is narrower than
//! the limit counts for nothing, and no number is given for sheathing that no table has. What an engineer drew is never
//! changed.
//!
//! *Absent on purpose*: earthquakes, portal frames, straps around openings, more than three storeys; and
//! what one bolt or nail carries, which stands with fasteners.

pub mod braced_walls;
mod choose;
pub mod diaphragm;
mod face;
mod face_text;
mod faces;
mod line;
mod make_up;
mod nailing_text;
mod overturning;
mod perforated;
pub mod schedule;
mod segmented;
mod sill;
mod strength;
pub mod uplift;
pub mod wall_lines;

pub use choose::{Chosen, lightest_that_carries, nailings};
pub use face_text::{OtherFaceTextError, read_other_face};
pub use faces::{Joined, OtherFace, SecondFace};
pub use line::{LineAnswer, Remedy, check_line};
pub use make_up::{Braces, Layer, LayerKind, MakeUp, MakeUpAnswer, Misplaced, Reach, check_make_up};
pub use nailing_text::{NailingTextError, nail_length, nail_name, nail_words, read_nailing};
pub use overturning::{Storey, overturning};
pub use perforated::{Opening, PerforatedAnswer, PerforatedWall, check_perforated};
pub use segmented::{Ends, OF_DEAD, Segment, SegmentedAnswer, SegmentedWall, check_segmented};
pub use sill::{OneBolt, SillAnswer, SillError, SillPiece, bolts_at, check_sill, fewest_bolts};
pub use standards::sdpws_2015::table_4_3::{ShearFastener, Sheathing, WallboardFastening};
pub use strength::{Edition, Factor, Framing, LevelJoints, Nailing, Strength, strength};
