//! R502.6: bearing of joists, beams and girders.

use measure::Length;

use super::DOCUMENT;
use crate::{Source, Status};

/// R502.6: least bearing.
pub const BEARING: Source = Source::new(DOCUMENT, "R502.6", Status::LookedUp);
/// Least length of bearing on wood or metal.
pub const ON_WOOD: Length = Length::from_inches(1.5);
/// Least length of bearing on masonry or concrete.
pub const ON_MASONRY: Length = Length::from_inches(3.0);
