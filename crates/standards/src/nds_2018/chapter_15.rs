//! Chapter 15: special loading conditions; built-up columns.

use measure::Length;

use super::{
    Cited, OutsideLimits,
    limits::{Accepted, Limit},
    nds,
};
use crate::Status::{FromMemory, LookedUp};

/// How the plies of a built-up column are joined, to the rules of §15.3.3 and §15.3.4.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PlyFastening {
    /// Nailed.
    Nailed,
    /// Bolted.
    Bolted,
}

/// The direction in which a built-up column would bow.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum BowDirection {
    /// Across the plies, so that they slip on each other: `ℓ_e2/d_2`, with `d_2` the thickness of all plies.
    AcrossPlies,
    /// Along the faces of the plies, each bending alike: `ℓ_e1/d_1`, with `d_1` the depth of one ply.
    AlongPlies,
}

/// Built-up column factor `K_f`, which multiplies `C_P` of Eq. 3.7-1.
///
/// Takes the number of plies, the thickness of one, how they are joined and the direction of the bow. Work both
/// directions and use the smaller load. Gives a pure number. Where the nailing or bolting rules are not met, each
/// ply is a column of its own.
///
/// Source: NDS 2018 §15.3.2, Eq. 15.3-1 (looked up; limits of §15.3.1 from memory).
///
/// # Errors
/// When there are not 2 to 5 plies, or a ply is thinner than 1.5 in.
///
/// ```
/// use measure::Length;
/// use standards::nds_2018::chapter_15::{BowDirection, PlyFastening, built_up_column_factor};
/// let ply = Length::from_inches(1.5);
/// let factor = built_up_column_factor(3, ply, PlyFastening::Nailed, BowDirection::AcrossPlies)?;
/// assert_eq!(factor.value, 0.6);
/// # Ok::<(), standards::nds_2018::OutsideLimits>(())
/// ```
pub fn built_up_column_factor(
    plies: u8,
    ply_thickness: Length,
    fastening: PlyFastening,
    bow: BowDirection,
) -> Result<Cited<f64>, OutsideLimits> {
    PLIES.check(f64::from(plies))?;
    PLY_THICKNESS.check(ply_thickness.inches())?;
    let value = match (bow, fastening) {
        (BowDirection::AlongPlies, _) => 1.0,
        (BowDirection::AcrossPlies, PlyFastening::Nailed) => 0.6,
        (BowDirection::AcrossPlies, PlyFastening::Bolted) => 0.75,
    };
    Ok(Cited::new(value, nds("§15.3.2", LookedUp)))
}

const PLIES: Limit = Limit {
    what: "number of plies",
    unit: "",
    accepted: Accepted::Between(2.0, 5.0),
    covers: "2 to 5 plies",
    source: nds("§15.3.1", FromMemory),
    next_step: "Use 2 to 5 plies, or one solid post.",
};
const PLY_THICKNESS: Limit = Limit {
    what: "thickness of one ply",
    unit: "in",
    accepted: Accepted::Between(1.5, f64::MAX),
    covers: "plies 1-1/2 in thick and thicker",
    next_step: "Use plies 1-1/2 in thick or thicker.",
    ..PLIES
};

/// How the plies of a nailed column are nailed to each other: least and most, as §15.3.3 gives them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ColumnNailing {
    /// The nail goes through every ply but the last, and through three quarters of that.
    pub least_nail: Length,
    /// Rows along the column.
    pub rows: u8,
    /// Spacing along a row.
    pub spacing: (Length, Length),
    /// From the end of the column to the first nail.
    pub end: (Length, Length),
    /// Between rows.
    pub between_rows: (Length, Length),
    /// From a row to the edge.
    pub edge: (Length, Length),
}

/// Rules for nailing a built-up column, §15.3.3. Nails beside each other are driven from opposite faces.
pub const COLUMN_NAILING: crate::Source = nds("§15.3.3", LookedUp);

/// How so many plies of this thickness and depth are nailed with a nail of this diameter.
///
/// Source: NDS 2018 §15.3.3 (looked up, as an article on it gives the rules).
///
/// # Errors
/// When there are not 2 to 5 plies, or a ply is thinner than 1.5 in.
pub fn column_nailing(
    plies: u8,
    ply_thickness: Length,
    ply_depth: Length,
    diameter: Length,
) -> Result<Cited<ColumnNailing>, OutsideLimits> {
    PLIES.check(f64::from(plies))?;
    PLY_THICKNESS.check(ply_thickness.inches())?;
    let least_nail = ply_thickness * (f64::from(plies) - 0.25);
    let rows = if ply_depth > ply_thickness * 3.0 { 2 } else { 1 };
    let nailing = ColumnNailing {
        least_nail,
        rows,
        spacing: (diameter * 20.0, ply_thickness * 6.0),
        end: (diameter * 15.0, diameter * 18.0),
        between_rows: (diameter * 10.0, diameter * 20.0),
        edge: (diameter * 5.0, diameter * 20.0),
    };
    Ok(Cited::new(nailing, COLUMN_NAILING))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: an article on nailing a built-up wood column, three 2x6 with 30d common nails, 0.207 in: two rows, 4.1 to 9
    /// in apart, 3.1 to 3.7 from the ends, rows 2.1 to 4.1 apart, 1.0 to 4.1 from the edges.
    #[test]
    fn three_two_by_sixes() {
        let inches = Length::from_inches;
        let found = column_nailing(3, inches(1.5), inches(5.5), inches(0.207)).unwrap().value;
        assert_eq!((found.rows, found.least_nail.inches()), (2, 4.125));
        for ((least, most), printed) in [
            (found.spacing, (4.14, 9.0)),
            (found.end, (3.1, 3.7)),
            (found.between_rows, (2.07, 4.14)),
            (found.edge, (1.04, 4.14)),
        ] {
            assert!((least.inches() - printed.0).abs() < 0.03 && (most.inches() - printed.1).abs() < 0.03);
        }
    }
}
