//! National Design Specification for Wood Construction, 2018 edition, allowable stress design.
//!
//! File = chapter, function = clause, equation or table. Each gives a [`Cited`] value: the number and where it stands
//! in print, with how it came here. Nothing is rounded and nothing is taken past a limit the standard sets: there the
//! answer is [`OutsideLimits`], which says what was given, what is accepted and what to do.
//!
//! *Absent on purpose*: load and resistance factor design; what a member is made of (the caller knows);
//! connections other than nails and bolts.

pub mod appendix_i;
pub mod appendix_l;
pub mod chapter_11;
pub mod chapter_12;
pub mod chapter_15;
pub mod chapter_2;
pub mod chapter_3;
pub mod chapter_4;
pub mod chapter_5;
pub mod chapter_8;
mod cited;
mod limits;
pub mod supplement;

pub use cited::Cited;
pub use limits::OutsideLimits;

use crate::{Source, Status};

/// A place in NDS 2018.
const fn nds(place: &'static str, status: Status) -> Source {
    Source::new("NDS 2018", place, status)
}
