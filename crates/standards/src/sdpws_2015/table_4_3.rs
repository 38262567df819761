//! Tables 4.3A to 4.3D: nominal unit shears of shear walls, by sheathing, fastener and spacing. Made from
//! `data/sdpws_2015/table_4_3.csv` at build time.

use measure::Length;

use super::{ApparentShearStiffness, DOCUMENT, NominalUnitShear};
use crate::{OutsideTable, Source, Status};

/// Every row, in the order of the tables.
pub const SHEAR_WALLS: &[ShearWallRow] = include!(concat!(env!("OUT_DIR"), "/sdpws_2015_table_4_3.rs"));

/// Which of the four tables.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ShearWallTable {
    /// Wood panels on the framing.
    A,
    /// Wood panels over gypsum board.
    B,
    /// Gypsum and plaster.
    C,
    /// Boards.
    D,
}

/// Sheathing as the tables name it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Sheathing {
    /// Wood structural panel, Structural I.
    StructuralI,
    /// Wood structural panel, sheathing grade.
    Sheathing,
    /// Plywood siding, but for Group 5.
    PlywoodSiding,
    /// Particleboard with exterior glue.
    Particleboard,
    /// Structural fiberboard.
    Fiberboard,
    /// Structural I over 1/2 or 5/8 in gypsum board.
    StructuralIOverGypsum,
    /// Sheathing grade over 1/2 or 5/8 in gypsum board.
    SheathingOverGypsum,
    /// Gypsum wallboard.
    Wallboard,
    /// Gypsum wallboard in two layers.
    WallboardTwoPly,
    /// Gypsum sheathing in boards of 2 by 8 ft.
    GypsumSheathingNarrow,
    /// Gypsum sheathing in boards 4 ft wide.
    GypsumSheathing,
    /// Gypsum lath with plaster.
    GypsumLathAndPlaster,
    /// Lath with portland cement plaster.
    CementPlaster,
    /// Boards laid level.
    HorizontalLumber,
    /// Boards laid aslant.
    DiagonalLumber,
    /// Two layers of boards laid aslant, crosswise.
    DoubleDiagonalLumber,
    /// Board siding, upright.
    VerticalSiding,
}

impl Sheathing {
    /// Whether it is a wood structural panel, nailed to the framing.
    #[must_use]
    pub const fn is_wood_structural_panel(self) -> bool {
        matches!(self, Self::StructuralI | Self::Sheathing)
    }
}

/// Fastener as the tables name it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ShearFastener {
    /// 6d common, 2 by 0.113 in.
    Common6d,
    /// 8d common, 2-1/2 by 0.131 in.
    Common8d,
    /// 10d common, 3 by 0.148 in.
    Common10d,
    /// 6d galvanized casing, 2 by 0.099 in.
    Casing6d,
    /// 8d galvanized casing, 2-1/2 by 0.113 in.
    Casing8d,
    /// Galvanized roofing nail, 1-1/2 by 0.120 in, with a head of 7/16 in.
    RoofingShort,
    /// Galvanized roofing nail, 1-3/4 by 0.120 in, with a head of 7/16 in.
    RoofingLong,
    /// 5d cooler, 1-5/8 by 0.086 in.
    Cooler5d,
    /// 6d cooler, 1-7/8 by 0.092 in.
    Cooler6d,
    /// 6d cooler in the first layer, 8d cooler in the second.
    Cooler6dUnder8d,
    /// No. 6 drywall screw, 1-1/4 in.
    DrywallScrew,
    /// Lath nail, 1-1/8 by 0.092 in.
    Lath,
}

/// One row at one spacing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShearWallRow {
    /// Its table.
    pub table: ShearWallTable,
    /// Sheathing.
    pub sheathing: Sheathing,
    /// Least nominal thickness of it.
    pub thickness: Length,
    /// Fastener.
    pub fastener: ShearFastener,
    /// Least length in the framing, where it is printed.
    pub penetration: Option<Length>,
    /// Spacing along all panel edges; none for boards.
    pub edge: Option<Length>,
    /// Spacing elsewhere, where it is printed; see [`field_spacing`].
    pub field: Option<Length>,
    /// Whether all edges lie on framing; none for boards.
    pub blocked: Option<bool>,
    /// The farthest apart that studs may be.
    pub studs: Length,
    /// Nominal unit shear for earthquakes.
    pub seismic: NominalUnitShear,
    /// Nominal unit shear for wind.
    pub wind: NominalUnitShear,
    /// Apparent stiffness with strand board, or of what the row names.
    pub osb: Option<ApparentShearStiffness>,
    /// Apparent stiffness with three-ply plywood.
    pub plywood: Option<ApparentShearStiffness>,
    /// How the unit shears came here.
    pub status: Status,
    /// How the stiffnesses came here.
    pub stiffness_status: Status,
}

impl ShearWallRow {
    /// Where it is printed.
    #[must_use]
    pub const fn source(&self) -> Source {
        let table = match self.table {
            ShearWallTable::A => "Table 4.3A",
            ShearWallTable::B => "Table 4.3B",
            ShearWallTable::C => "Table 4.3C",
            ShearWallTable::D => "Table 4.3D",
        };
        Source::new(DOCUMENT, table, self.status)
    }
}

/// Footnote of Table 4.3A: nails in the field of a wood panel.
pub const FIELD: Source = Source::new(DOCUMENT, "Table 4.3A footnote", Status::FromMemory);

/// Spacing of nails away from the edges of a wood panel: 6 in where a panel of 7/16 in or less is on studs at 24 in, else
/// 12 in.
#[must_use]
pub fn field_spacing(thickness: Length, studs: Length) -> Length {
    let thin = thickness.inches() < 15.0 / 32.0 - 1e-9;
    Length::from_inches(if thin && studs.inches() > 16.0 { 6.0 } else { 12.0 })
}

/// Footnote of Table 4.3A: a panel of 3/8 or 7/16 in with 8d nails takes the unit shear of 15/32 in where studs are at
/// 16 in or less, or the panel's long side runs across them. The marks were read, the words are from memory.
pub const AS_THICKER: Source = Source::new(DOCUMENT, "Table 4.3A footnote 2", Status::PartlyLookedUp);

/// The row of a blocked wood panel nailed to the framing, at one of the printed edge spacings: 2, 3, 4 or 6 in.
///
/// # Errors
/// Where the table has no such row: a thinner panel, another nail, another spacing.
///
/// ```
/// use measure::Length;
/// use standards::sdpws_2015::table_4_3::{ShearFastener, Sheathing, wood_panel};
///
/// let inches = Length::from_inches;
/// let row = wood_panel(Sheathing::Sheathing, inches(7.0 / 16.0), ShearFastener::Common8d, inches(6.0))?;
/// assert_eq!(row.wind.plf(), 670.0);
/// # Ok::<(), standards::OutsideTable>(())
/// ```
pub fn wood_panel(
    sheathing: Sheathing,
    thickness: Length,
    fastener: ShearFastener,
    edge: Length,
) -> Result<&'static ShearWallRow, OutsideTable> {
    let of_kind = |row: &&ShearWallRow| {
        row.table == ShearWallTable::A
            && row.sheathing == sheathing
            && row.fastener == fastener
            && row.edge == Some(edge)
    };
    // A thicker panel than printed has the thickest row that it covers.
    let covered = |row: &&ShearWallRow| row.thickness.inches() <= thickness.inches() + 1e-9;
    let rows = SHEAR_WALLS.iter().filter(of_kind).filter(covered);
    rows.max_by(|a, b| a.thickness.inches().total_cmp(&b.thickness.inches())).ok_or_else(|| OutsideTable {
        source: Source::new(DOCUMENT, "Table 4.3A", Status::LookedUp),
        given: format!("{sheathing:?} {} in thick, {fastener:?} at {} in", thickness.inches(), edge.inches()),
        covers: "6d common from 5/16 in, 8d common from 3/8 in and 10d common from 15/32 in, at 2, 3, 4 and 6 in",
        next_step: "Nail it as one of these, or ask the engineer.",
    })
}

/// How one layer of gypsum wallboard is fastened.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallboardFastening {
    /// Thickness of the board.
    pub thickness: Length,
    /// Cooler nails or drywall screws.
    pub fastener: ShearFastener,
    /// Spacing along its edges.
    pub edge: Length,
    /// Spacing elsewhere; that of the edges where it is not said.
    pub field: Option<Length>,
    /// Whether all its edges lie on framing.
    pub blocked: bool,
}

/// The strongest row of one layer of wallboard that such a fastening keeps to: at one of the printed edge spacings, with
/// field fasteners no farther apart than printed and studs no farther. A blocked board may take the row of one that is not.
///
/// # Errors
/// Where Table 4.3C has no such row. Screws are not taken for cooler nails, nor nails for screws.
///
/// ```
/// use measure::Length;
/// use standards::sdpws_2015::table_4_3::{ShearFastener, WallboardFastening, wallboard};
///
/// let inches = Length::from_inches;
/// let nailed = WallboardFastening {
///     thickness: inches(0.5),
///     fastener: ShearFastener::Cooler5d,
///     edge: inches(7.0),
///     field: None,
///     blocked: false,
/// };
/// // Source: a state's building code, 100 plf on studs at 16 in, which is half of the nominal value.
/// assert_eq!(wallboard(&nailed, inches(16.0))?.wind.plf(), 200.0);
/// # Ok::<(), standards::OutsideTable>(())
/// ```
pub fn wallboard(board: &WallboardFastening, studs: Length) -> Result<&'static ShearWallRow, OutsideTable> {
    let field = board.field.unwrap_or(board.edge);
    let keeps = |row: &&ShearWallRow| {
        row.sheathing == Sheathing::Wallboard
            && (row.thickness.inches() - board.thickness.inches()).abs() < 1e-9
            && row.fastener == board.fastener
            && row.edge == Some(board.edge)
            && row.field.is_none_or(|printed| field <= printed)
            && (board.blocked || row.blocked != Some(true))
            && studs <= row.studs
    };
    let rows = SHEAR_WALLS.iter().filter(keeps);
    rows.max_by(|a, b| a.wind.plf().total_cmp(&b.wind.plf())).ok_or_else(|| OutsideTable {
        source: Source::new(DOCUMENT, "Table 4.3C", Status::PartlyLookedUp),
        given: format!(
            "gypsum wallboard {} in thick, {:?} at {} and {} in, {}, studs at {} in",
            board.thickness.inches(),
            board.fastener,
            board.edge.inches(),
            field.inches(),
            if board.blocked { "blocked" } else { "not blocked" },
            studs.inches()
        ),
        covers: "1/2 in with 5d coolers or screws, and 5/8 in with 6d coolers or screws, at the spacings that are printed",
        next_step: "Leave the board out of the count, or ask the engineer.",
    })
}
