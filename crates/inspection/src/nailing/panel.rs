//! How many nails a sheet has.

use measure::Length;

/// A sheet and its nailing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PanelNailing {
    /// Width of the sheet, across the studs.
    pub width: Length,
    /// Height of the sheet, along the studs.
    pub height: Length,
    /// Spacing of the studs.
    pub stud_spacing: Length,
    /// Spacing of the nails along the edges.
    pub edge_spacing: Length,
    /// Spacing of the nails along the studs between.
    pub field_spacing: Length,
}

/// Nails in one sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NailCount {
    /// Around its edges.
    pub perimeter: u32,
    /// On the studs between.
    pub field: u32,
}

impl NailCount {
    /// All of them.
    #[must_use]
    pub const fn total(self) -> u32 {
        self.perimeter.saturating_add(self.field)
    }
}

/// Spaces of at most `spacing` in a length. Arithmetic alone adds none.
pub(super) fn spaces(length: Length, spacing: Length) -> u32 {
    const NOISE: f64 = 1e-9;
    if spacing <= Length::ZERO || length <= Length::ZERO {
        return 0;
    }
    (length / spacing - NOISE).ceil().max(0.0) as u32
}

/// Counts the nails of a sheet from its size and spacings: both long edges with their corners, both short edges between
/// them, and the studs between. Edges shared by two sheets are nailed twice.
///
/// ```
/// use inspection::nailing::{PanelNailing, nails_in_panel};
/// use measure::Length;
///
/// let inches = Length::from_inches;
/// let sheet = PanelNailing {
///     width: inches(48.0),
///     height: inches(96.0),
///     stud_spacing: inches(16.0),
///     edge_spacing: inches(6.0),
///     field_spacing: inches(12.0),
/// };
/// assert_eq!(nails_in_panel(&sheet).perimeter, 48);
/// assert_eq!(nails_in_panel(&sheet).field, 14);
/// ```
#[must_use]
pub fn nails_in_panel(panel: &PanelNailing) -> NailCount {
    let PanelNailing { width, height, stud_spacing, edge_spacing, field_spacing } = *panel;
    let up = spaces(height, edge_spacing).saturating_add(1);
    let across = spaces(width, edge_spacing).saturating_sub(1);
    let studs_between = spaces(width, stud_spacing).saturating_sub(1);
    let on_each = spaces(height, field_spacing).saturating_sub(1);
    NailCount { perimeter: up.saturating_add(across).saturating_mul(2), field: studs_between.saturating_mul(on_each) }
}
