//! R602.11.1: plate washers on the anchor bolts of braced wall lines.

use measure::Length;

use super::DOCUMENT;
use crate::{Source, Status};

/// R602.11.1: plate washers, in Seismic Design Categories D0 to D2 and in townhouses in C. The side was read in a wood
/// council's answer; the thickness is from memory.
pub const PLATE_WASHERS: Source = Source::new(DOCUMENT, "R602.11.1", Status::PartlyLookedUp);
/// Least side of the washer.
pub const SIDE: Length = Length::from_inches(3.0);
/// Least thickness of the washer.
pub const THICKNESS: Length = Length::from_inches(0.229);
