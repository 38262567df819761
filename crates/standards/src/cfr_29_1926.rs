//! 29 CFR 1926.1052, federal safety rules for construction: stairs that a crew works on.
//!
//! States have rules of their own that may ask for more.

use measure::{Angle, Length};

use crate::{Source, Status};

const DOCUMENT: &str = "29 CFR 1926";

/// 1926.1052(a): stairs in use during construction. Read in the text of a course and on a training page.
pub const STAIRS_IN_USE: Source = Source::new(DOCUMENT, "1926.1052(a)", Status::LookedUp);
/// Largest less smallest riser or tread.
pub const VARIATION: Length = Length::from_inches(0.25);
/// Flattest slope above level.
pub const FLATTEST: Angle = Angle::from_degrees(30.0);
/// Steepest slope above level.
pub const STEEPEST: Angle = Angle::from_degrees(50.0);
/// 1926.1052(b): stairs whose treads come later have temporary ones. Read on the same page.
pub const TEMPORARY_TREADS: Source = Source::new(DOCUMENT, "1926.1052(b)", Status::LookedUp);
/// 1926.1052(c): stair rails. Read in the text of a course.
pub const STAIR_RAILS: Source = Source::new(DOCUMENT, "1926.1052(c)", Status::LookedUp);
/// A stair of this many risers has rails.
pub const RAILS_FROM_RISERS: u16 = 4;
/// A stair that rises more than this has rails, whichever comes first.
pub const RAILS_ABOVE: Length = Length::from_inches(30.0);
