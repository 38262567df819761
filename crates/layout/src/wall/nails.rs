//! Nails in one sheet, by their spacing at the edges and between.

use measure::Length;

/// Nails of one sheet. Edges that two sheets share are nailed twice, once for each.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SheetNails {
    /// Around its edges.
    pub perimeter: u32,
    /// In the supports between.
    pub field: u32,
}

impl SheetNails {
    /// All of them.
    #[must_use]
    pub const fn total(self) -> u32 {
        self.perimeter + self.field
    }
}

/// Counts the nails of a whole sheet, `width` across the supports and `height` along them. None where a measure or a
/// spacing is nothing, or the sheet is not a whole number of bays wide.
#[must_use]
pub fn nails_in_sheet(
    width: Length,
    height: Length,
    supports: Length,
    edge: Length,
    field: Length,
) -> Option<SheetNails> {
    let all = [width, height, supports, edge, field];
    if all.iter().any(|length| *length <= Length::ZERO) || width > Length::from_feet(100.0) {
        return None;
    }
    let bays = width / supports;
    if (bays - bays.round()).abs() > 1e-9 {
        return None;
    }
    // A spacing that goes in exactly is not one more for its binary noise.
    let spaces = |length: Length, spacing: Length| (length / spacing - 1e-9).ceil().min(1e6) as u32;
    let perimeter = 2 * (spaces(height, edge) + 1) + 2 * (spaces(width, edge).saturating_sub(1));
    let field = (bays.round() as u32).saturating_sub(1) * spaces(height, field).saturating_sub(1);
    Some(SheetNails { perimeter, field })
}
