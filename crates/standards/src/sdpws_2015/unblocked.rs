//! 4.3.3.2: wood panel walls whose level joints lie on no framing.

use measure::{Length, Ratio};

use super::DOCUMENT;
use crate::{OutsideTable, Source, Status};

/// Table 4.3.3.2: the unblocked shear wall adjustment factor.
pub const FACTOR: Source = Source::new(DOCUMENT, "Table 4.3.3.2", Status::FromMemory);
/// The highest that such a wall may be.
pub const HIGHEST: Length = Length::from_feet(16.0);

/// Stud spacings of the table, and the factor with field nails at 6 and at 12 in.
const ROWS: [(f64, [Ratio; 2]); 4] = [(12.0, [1.0, 0.8]), (16.0, [0.8, 0.6]), (20.0, [0.6, 0.5]), (24.0, [0.5, 0.4])];

/// Factor `C_ub` on the unit shear, and on the stiffness, of the blocked wall on studs at 24 in with nails at 6 in.
///
/// A stud spacing between two of the table's takes the wider one's factor. Source: SDPWS 2015 Table 4.3.3.2 (from memory).
///
/// # Errors
/// For edge nails farther apart than 6 in, field nails over 12 in, and studs over 24 in.
pub fn factor(studs: Length, edge: Length, field: Length) -> Result<Ratio, OutsideTable> {
    let column = if field.inches() <= 6.0 { 0 } else { 1 };
    let row = ROWS.iter().find(|(spacing, _)| studs.inches() <= *spacing + 1e-9);
    match row {
        Some((_, factors)) if edge.inches() <= 6.0 && field.inches() <= 12.0 => Ok(factors[column]),
        _ => Err(OutsideTable {
            source: FACTOR,
            given: format!("studs at {} in, nails at {} in and {} in", studs.inches(), edge.inches(), field.inches()),
            covers: "studs to 24 in, nails to 6 in at edges and 12 in between",
            next_step: "Block the joints, or nail as the table has it.",
        }),
    }
}
