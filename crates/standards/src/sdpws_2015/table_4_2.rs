//! Tables 4.2A to 4.2C: nominal unit shears of wood panel diaphragms, by panel, nail, framing and spacing. Made from
//! `data/sdpws_2015/table_4_2.csv` at build time.
//!
//! Deliberately absent: Table 4.2D, diaphragms of boards. None of its values was read.

use measure::Length;

use super::table_4_3::{ShearFastener, Sheathing};
use super::{ApparentShearStiffness, DOCUMENT, NominalUnitShear};
use crate::{OutsideTable, Source, Status};

/// Every row, in the order of the tables.
pub const DIAPHRAGMS: &[DiaphragmRow] = include!(concat!(env!("OUT_DIR"), "/sdpws_2015_table_4_2.rs"));

/// Which of the tables.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum DiaphragmTable {
    /// Blocked.
    A,
    /// Blocked, with several lines of nails.
    B,
    /// Unblocked.
    C,
}

/// How the panels lie to the load, as the tables draw it. One floor lies as one case to a load from the front and as
/// another to a load from the side.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum LayoutCase {
    /// No unblocked edges and no continuous joints along the load.
    One,
    /// Case 2.
    Two,
    /// Case 3.
    Three,
    /// Case 4.
    Four,
    /// Continuous joints both ways, the long sides along the load.
    Five,
    /// Continuous joints both ways, the long sides across the load.
    Six,
}

impl LayoutCase {
    /// All of them.
    pub const ALL: [Self; 6] = [Self::One, Self::Two, Self::Three, Self::Four, Self::Five, Self::Six];

    /// Whether the spacing of the boundary goes along every panel edge of a blocked diaphragm.
    #[must_use]
    pub const fn has_boundary_spacing_everywhere(self) -> bool {
        matches!(self, Self::Five | Self::Six)
    }
}

/// Which cases a row is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Cases {
    /// All six.
    All,
    /// Case 1.
    One,
    /// Cases 2 to 6.
    TwoToSix,
}

impl Cases {
    /// Whether this case is among them.
    #[must_use]
    pub const fn has(self, case: LayoutCase) -> bool {
        match self {
            Self::All => true,
            Self::One => matches!(case, LayoutCase::One),
            Self::TwoToSix => !matches!(case, LayoutCase::One),
        }
    }
}

/// One row at one spacing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DiaphragmRow {
    /// Its table.
    pub table: DiaphragmTable,
    /// Grade of the panel: Structural I, or sheathing and single-floor.
    pub grade: Sheathing,
    /// Nail.
    pub fastener: ShearFastener,
    /// Least length in the framing.
    pub penetration: Length,
    /// Least nominal thickness of the panel.
    pub thickness: Length,
    /// Least nominal width of the nailed face at panel edges and boundaries, in whole inches: 2, 3 or 4.
    pub framing: u8,
    /// Lines of nails.
    pub lines: u8,
    /// Which cases it is for.
    pub cases: Cases,
    /// Spacing at boundaries and along continuous edges; see [`LayoutCase::has_boundary_spacing_everywhere`].
    pub boundary: Length,
    /// Spacing at other panel edges.
    pub edge: Length,
    /// Nominal unit shear for earthquakes.
    pub seismic: NominalUnitShear,
    /// Nominal unit shear for wind.
    pub wind: NominalUnitShear,
    /// Apparent stiffness with strand board, where it is held.
    pub osb: Option<ApparentShearStiffness>,
    /// Apparent stiffness with three-ply plywood, where it is held.
    pub plywood: Option<ApparentShearStiffness>,
    /// How the unit shears came here.
    pub status: Status,
    /// How the stiffnesses came here.
    pub stiffness_status: Status,
}

impl DiaphragmRow {
    /// Where it is printed.
    #[must_use]
    pub const fn source(&self) -> Source {
        let table = match self.table {
            DiaphragmTable::A => "Table 4.2A",
            DiaphragmTable::B => "Table 4.2B",
            DiaphragmTable::C => "Table 4.2C",
        };
        Source::new(DOCUMENT, table, self.status)
    }

    /// Whether framing at adjoining edges is 3 in nominal at the least and its nails are staggered: at 2-1/2 in and closer,
    /// and where a 10d nail goes in deeper than 1-1/2 in at 3 in or closer.
    ///
    /// The marks in the table were read, the words are from memory ([`CLOSE_NAILS`]).
    #[must_use]
    pub fn needs_wide_joints(&self, penetration: Length) -> bool {
        let close = self.boundary.inches() <= 2.5;
        let heavy =
            self.fastener == ShearFastener::Common10d && penetration.inches() > 1.5 && self.boundary.inches() <= 3.0;
        close || heavy
    }
}

/// Footnotes of Table 4.2A: framing at adjoining edges under close nails.
pub const CLOSE_NAILS: Source = Source::new(DOCUMENT, "Table 4.2A footnotes", Status::PartlyLookedUp);

/// Footnote of Table 4.2A: nails in the field of a panel. Read of staples in the building code; of nails from memory.
pub const FIELD: Source = Source::new(DOCUMENT, "Table 4.2A footnote", Status::PartlyLookedUp);

/// Spacing of nails away from the edges: 12 in, and 6 in where supports are 48 in apart or more.
#[must_use]
pub fn field_spacing(supports: Length) -> Length {
    Length::from_inches(if supports.inches() >= 48.0 { 6.0 } else { 12.0 })
}

/// A panel and its nails on framing, all but the spacing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DiaphragmPanel {
    /// Grade.
    pub grade: Sheathing,
    /// Nominal thickness.
    pub thickness: Length,
    /// Nails.
    pub fastener: ShearFastener,
    /// Nominal width of the framing at panel edges and boundaries, in whole inches.
    pub framing: u8,
}

/// The row of a blocked diaphragm nailed in one line, at printed spacings of boundaries and of other edges: 6 and 6, 4 and
/// 6, 2-1/2 and 4, or 2 and 3 in. What is nailed at 4 in along edges may carry by it only where its boundaries and
/// continuous joints are nailed so too.
///
/// # Errors
/// Where the table has no such row: a thinner panel, another nail, another spacing.
///
/// ```
/// use measure::Length;
/// use standards::sdpws_2015::table_4_2::{DiaphragmPanel, blocked};
/// use standards::sdpws_2015::table_4_3::{ShearFastener, Sheathing};
///
/// let inches = Length::from_inches;
/// let panel = DiaphragmPanel {
///     grade: Sheathing::Sheathing,
///     thickness: inches(7.0 / 16.0),
///     fastener: ShearFastener::Common8d,
///     framing: 2,
/// };
/// assert_eq!(blocked(&panel, inches(6.0), inches(6.0))?.seismic.plf(), 510.0);
/// # Ok::<(), standards::OutsideTable>(())
/// ```
pub fn blocked(panel: &DiaphragmPanel, boundary: Length, edge: Length) -> Result<&'static DiaphragmRow, OutsideTable> {
    let spaced = |row: &&DiaphragmRow| row.table == DiaphragmTable::A && row.boundary == boundary && row.edge == edge;
    thickest_covered(panel, spaced).ok_or_else(|| OutsideTable {
        source: Source::new(DOCUMENT, "Table 4.2A", Status::PartlyLookedUp),
        given: format!("{} at {} and {} in", named(panel), boundary.inches(), edge.inches()),
        covers: COVERS,
        next_step: "Nail it as one of these, or ask the engineer.",
    })
}

/// The row of an unblocked diaphragm, nailed at 6 in along all supported edges.
///
/// # Errors
/// Where the table has no such row.
pub fn unblocked(panel: &DiaphragmPanel, case: LayoutCase) -> Result<&'static DiaphragmRow, OutsideTable> {
    let of_case = |row: &&DiaphragmRow| row.table == DiaphragmTable::C && row.cases.has(case);
    thickest_covered(panel, of_case).ok_or_else(|| OutsideTable {
        source: Source::new(DOCUMENT, "Table 4.2C", Status::PartlyLookedUp),
        given: named(panel),
        covers: COVERS,
        next_step: "Nail it as one of these, or ask the engineer.",
    })
}

const COVERS: &str = "wood panels with 6d common from 5/16 in, 8d common from 3/8 in and 10d common from 15/32 in, on \
                      framing 2 in nominal and wider, at 6 and 6, 4 and 6, 2-1/2 and 4, or 2 and 3 in (6 in unblocked)";

fn named(panel: &DiaphragmPanel) -> String {
    let DiaphragmPanel { grade, thickness, fastener, framing } = panel;
    format!("{grade:?} {} in thick, {fastener:?}, framing {framing} in nominal", thickness.inches())
}

/// A thicker panel, or wider framing, than printed has the most of the rows that it covers.
fn thickest_covered(
    panel: &DiaphragmPanel,
    of: impl Fn(&&'static DiaphragmRow) -> bool,
) -> Option<&'static DiaphragmRow> {
    let covered = |row: &&'static DiaphragmRow| {
        row.grade == panel.grade
            && row.fastener == panel.fastener
            && row.framing <= panel.framing
            && row.thickness.inches() <= panel.thickness.inches() + 1e-9
    };
    let rows = DIAPHRAGMS.iter().filter(of).filter(covered);
    rows.max_by(|a, b| a.framing.cmp(&b.framing).then(a.thickness.inches().total_cmp(&b.thickness.inches())))
}
