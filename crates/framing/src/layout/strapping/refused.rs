//! Errors of the ceiling, each on the input that it is about.

use layout::strapping::StrappingError;
use measure::{Denominator, Length};

use crate::reading::Reading;

/// What was worked; an error is said on its input, and nothing is left.
pub(super) fn taken<T>(reading: &mut Reading, found: Result<T, StrappingError>) -> Option<T> {
    match found {
        Ok(found) => Some(found),
        Err(error) => {
            let (id, problem) = input(reading, &error);
            reading.refuse(id, problem);
            None
        }
    }
}

fn input(reading: &Reading, error: &StrappingError) -> (&'static str, String) {
    let joists = if reading.word("strap_joists_at").is_some() { "strap_joists_at" } else { "strap_joist_every" };
    let rows = if reading.word("strap_read_at").is_some() { "strap_read_at" } else { "strap_along" };
    let id = match error {
        StrappingError::Outside { what, .. } => match *what {
            "the spacing of the rows" => "strap_every",
            "the room along the joists" => "strap_along",
            "the strip's width" => "strap_strip",
            "the room across the joists" => "strap_across",
            "the joist's thickness" => "strap_joist_thick",
            "a reading" => "strap_readings",
            "rows" => rows,
            _ => joists,
        },
        StrappingError::NotInOrder { what, .. } => {
            if *what == "rows" {
                rows
            } else {
                joists
            }
        }
        StrappingError::Count { what, .. } => match *what {
            "joists" if joists == "strap_joists_at" => joists,
            "joists" => "strap_across",
            "rows" => rows,
            "rows of readings" => "strap_readings",
            "shim sizes" => "strap_shims",
            _ => "strap_bundle",
        },
        StrappingError::RowLength { .. }
        | StrappingError::NoReadings
        | StrappingError::InOneLine
        | StrappingError::NoPlane => "strap_readings",
        StrappingError::NotLevel => "strap_level",
        StrappingError::Bearing { .. } => "strap_joist_thick",
        StrappingError::OutOfReach { .. } => "strap_stock",
        StrappingError::ShimSize { .. } => "strap_shims",
    };
    (id, sentence(error))
}

/// The core's own sentence; where it does not name what the inputs are called here, one that does.
fn sentence(error: &StrappingError) -> String {
    let inches = |length: &Length| length.to_inches_fraction(Denominator::SixtyFourth);
    match error {
        StrappingError::Bearing { needed, there } => format!(
            "Given: half a joist of {}. Taken is {} and more under each end of a strip: nail a block beside each joist, and give both together.",
            inches(there),
            inches(needed)
        ),
        StrappingError::RowLength { row, given, joists } => format!(
            "Row {row}: {given} {} given for {joists} joists. One for each joist is taken, with - where none was read.",
            if *given == 1 { "reading was" } else { "readings were" }
        ),
        other => other.to_string(),
    }
}
