//! Angles and marks as a carpenter reads them.

use layout::roof::Cut;
use measure::{Angle, Length};

use crate::quick::reply::FactReply;
use crate::quick::say::fact;
use crate::site::about::About;
use crate::words;

/// Degrees to a tenth, as a saw is set.
pub(super) fn degrees(angle: Angle) -> String {
    format!("{:.1}°", angle.degrees())
}

/// Inches to a sixteenth on 12, as a square is set.
pub(super) fn on_twelve(cut: Cut) -> String {
    format!("{} on 12", words::inches(Length::from_inches(cut.on_twelve().rise_in_twelve())))
}

/// Inches to a sixteenth on 17, as a square is set for a hip; 16.97 is worked with.
pub(super) fn on_diagonal(cut: Cut) -> String {
    format!("{} on 16.97", words::inches(cut.on_diagonal()))
}

/// An angle of an answer.
pub(super) fn angle_fact(name: &str, what: impl Into<String>, angle: Angle) -> FactReply {
    fact(name, what, angle.degrees(), degrees(angle))
}

/// The usual cautions, and those of the saw.
pub(super) fn cautions(about: &mut About<'_>) {
    crate::quick::say::cautions(about);
    about.caution("Measure what was built before you cut: plates, ridge and wood are never quite as drawn. Cut one, try it in its place on both sides, then cut the others from it.");
}
