//! R703.15: cladding over foam sheathing, and the furring that holds it.

use measure::{AreaLoad, Length};

use super::DOCUMENT;
use crate::{OutsideTable, Source, Status};

/// Table R703.15.2: furring over foam on wood studs. Read in its twin, Table 2603.13.2 of the 2018 International Building
/// Code.
pub const FURRING_OVER_FOAM: Source = Source::new(DOCUMENT, "Table R703.15.2", Status::LookedUp);
/// R703.15: how deep a fastener of cladding or furring goes into the framing.
pub const INTO_FRAMING: Source = Source::new(DOCUMENT, "R703.15", Status::PartlyLookedUp);
/// R602.3: wall sheathing that resists wind is fastened to the framing itself.
pub const DIRECTLY_TO_FRAMING: Source = Source::new(DOCUMENT, "R602.3", Status::LookedUp);
/// R703.2: a water-resistive barrier behind the cladding.
pub const WATER_BARRIER: Source = Source::new(DOCUMENT, "R703.2", Status::FromMemory);

/// A fastener of furring.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FurringFastener {
    /// Nail of 0.131 in.
    Nail131,
    /// Nail of 0.162 in.
    Nail162,
    /// No. 10 wood screw.
    Screw10,
    /// Lag screw of 1/4 in.
    Lag,
}

impl FurringFastener {
    /// How deep it goes into the framing, at the least.
    #[must_use]
    pub const fn penetration(self) -> Length {
        Length::from_inches(match self {
            Self::Nail131 | Self::Nail162 => 1.25,
            Self::Screw10 => 1.0,
            Self::Lag => 1.5,
        })
    }
}

/// Weights of cladding of the table's columns, psf.
const WEIGHTS: [f64; 4] = [3.0, 11.0, 18.0, 25.0];

/// A row: the fastener, its spacing along the furring, and the thickest foam with furring at 16 in and at 24 in, by the
/// cladding's weight; none where a design is required. Inches.
type Row = (FurringFastener, f64, [Option<f64>; 4], [Option<f64>; 4]);

const fn row(fastener: FurringFastener, apart: f64, at_16: [f64; 4], at_24: [f64; 4]) -> Row {
    (fastener, apart, printed(at_16), printed(at_24))
}

/// What stands as nought here is printed as design required.
const fn printed(cells: [f64; 4]) -> [Option<f64>; 4] {
    let mut row = [None; 4];
    let mut column = 0;
    while column < 4 {
        if cells[column] > 0.0 {
            row[column] = Some(cells[column]);
        }
        column += 1;
    }
    row
}

/// Table R703.15.2 for 1x furring on 2x studs of specific gravity 0.42.
const TABLE: [Row; 12] = {
    use FurringFastener::{Lag, Nail131, Nail162, Screw10};
    [
        row(Nail131, 8.0, [4.0, 2.45, 1.45, 0.95], [4.0, 1.6, 0.85, 0.0]),
        row(Nail131, 12.0, [4.0, 1.6, 0.85, 0.0], [4.0, 0.95, 0.0, 0.0]),
        row(Nail131, 16.0, [4.0, 1.1, 0.0, 0.0], [3.05, 0.6, 0.0, 0.0]),
        row(Nail162, 8.0, [4.0, 4.0, 2.45, 1.6], [4.0, 2.75, 1.45, 0.85]),
        row(Nail162, 12.0, [4.0, 2.75, 1.45, 0.85], [4.0, 1.65, 0.75, 0.0]),
        row(Nail162, 16.0, [4.0, 1.9, 0.95, 0.0], [4.0, 1.05, 0.0, 0.0]),
        row(Screw10, 12.0, [4.0, 2.3, 1.2, 0.7], [4.0, 1.4, 0.6, 0.0]),
        row(Screw10, 16.0, [4.0, 1.65, 0.75, 0.0], [4.0, 0.9, 0.0, 0.0]),
        row(Screw10, 24.0, [4.0, 0.9, 0.0, 0.0], [2.85, 0.0, 0.0, 0.0]),
        row(Lag, 12.0, [4.0, 2.65, 1.5, 0.9], [4.0, 1.65, 0.8, 0.0]),
        row(Lag, 16.0, [4.0, 1.95, 0.95, 0.5], [4.0, 1.1, 0.0, 0.0]),
        row(Lag, 24.0, [4.0, 1.1, 0.0, 0.0], [3.25, 0.5, 0.0, 0.0]),
    ]
};

/// The thickest foam under furring whose fasteners hold the cladding's weight. A spacing or a weight between two of the
/// table's takes the harder one's. The pull of the wind on the fastener is a check of its own.
///
/// # Errors
/// Where the table has no such spacing or weight, or asks for a design.
pub fn thickest_foam(
    fastener: FurringFastener,
    apart: Length,
    furring: Length,
    cladding: AreaLoad,
) -> Result<Length, OutsideTable> {
    let outside =
        |given: String, covers, next_step| Err(OutsideTable { source: FURRING_OVER_FOAM, given, covers, next_step });
    let Some(column) = WEIGHTS.iter().position(|weight| cladding.psf() <= *weight) else {
        let given = format!("cladding of {} psf", cladding.psf());
        return outside(given, "cladding to 25 psf", "An engineer designs what holds it.");
    };
    if furring.inches() > 24.0 {
        let given = format!("furring at {} in", furring.inches());
        return outside(given, "furring at 16 and 24 in", "Set it on every stud, 24 in apart at the most.");
    }
    let fits = |row: &&Row| row.0 == fastener && apart.inches() <= row.1;
    let Some(row) = TABLE.iter().find(fits) else {
        let given = format!("fasteners at {} in", apart.inches());
        return outside(given, "nails to 16 in, screws and lags to 24 in along the furring", "Set them closer.");
    };
    let cells = if furring.inches() <= 16.0 { &row.2 } else { &row.3 };
    match cells[column] {
        Some(thick) => Ok(Length::from_inches(thick)),
        None => outside(
            format!("cladding of {} psf on such fasteners", cladding.psf()),
            "what the table prints a thickness for",
            "Set them closer, take a stronger one, or have an engineer design it.",
        ),
    }
}

#[cfg(test)]
mod tests {
    use super::FurringFastener::{Lag, Nail131, Nail162, Screw10};
    use super::*;

    fn thick(fastener: FurringFastener, apart: f64, furring: f64, psf: f64) -> Option<f64> {
        let (apart, furring) = (Length::from_inches(apart), Length::from_inches(furring));
        thickest_foam(fastener, apart, furring, AreaLoad::from_psf(psf)).ok().map(Length::inches)
    }

    /// Every cell through the lookup. Source: Table 2603.13.2 of the 2018 IBC, as it was read.
    #[test]
    fn every_cell_as_printed() {
        for (fastener, apart, at_16, at_24) in TABLE {
            for (furring, cells) in [(16.0, at_16), (24.0, at_24)] {
                for (weight, printed) in WEIGHTS.iter().zip(cells) {
                    assert_eq!(
                        thick(fastener, apart, furring, *weight),
                        printed,
                        "{fastener:?} {apart} {furring} {weight}"
                    );
                }
            }
        }
        assert_eq!((thick(Nail131, 8.0, 16.0, 11.0), thick(Nail162, 16.0, 24.0, 11.0)), (Some(2.45), Some(1.05)));
        assert_eq!((thick(Screw10, 24.0, 24.0, 3.0), thick(Lag, 16.0, 16.0, 25.0)), (Some(2.85), Some(0.5)));
    }

    #[test]
    fn what_lies_between_takes_the_harder() {
        assert_eq!(thick(Nail131, 10.0, 16.0, 5.0), thick(Nail131, 12.0, 16.0, 11.0));
        assert_eq!(thick(Screw10, 12.0, 19.2, 3.0), thick(Screw10, 12.0, 24.0, 3.0));
        assert_eq!((thick(Nail131, 20.0, 16.0, 3.0), thick(Lag, 12.0, 16.0, 30.0)), (None, None));
        assert_eq!((thick(Lag, 12.0, 30.0, 3.0), thick(Nail131, 12.0, 16.0, 25.0)), (None, None));
    }

    /// Closer fasteners, closer furring and lighter cladding are never worse.
    #[test]
    fn more_holds_more() {
        for (fastener, apart, at_16, at_24) in TABLE {
            assert!(at_16.iter().zip(at_24).all(|(near, far)| *near >= far), "{fastener:?} {apart}");
            for cells in [at_16, at_24] {
                assert!(cells.is_sorted_by(|light, heavy| light >= heavy), "{fastener:?} {apart}");
            }
        }
    }
}
