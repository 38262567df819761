//! 4.4: panels that hold the wall down as well as square, by nails beyond those of the shear.
//!
//! None of the numbers of Tables 4.4.1 and 4.4.2 was read: they are from memory, and agree with a rule of nails a foot. The
//! method, the least panel and the cap were read in a trade article.

use measure::{Length, LineLoad, Ratio};

use super::{DIVIDED_BY, DOCUMENT, table_4_3::ShearFastener};
use crate::{OutsideTable, Source, Status};

/// Table 4.4.1: shear and uplift in one panel.
pub const SHEAR_AND_UPLIFT: Source = Source::new(DOCUMENT, "Table 4.4.1", Status::FromMemory);
/// Table 4.4.2: uplift alone.
pub const UPLIFT_ALONE: Source = Source::new(DOCUMENT, "Table 4.4.2", Status::FromMemory);
/// The most uplift of a panel by its thickness. Read in a trade article that does not say whether it is nominal; taken so,
/// which is the safer way.
pub const PANEL_CAP: Source = Source::new(DOCUMENT, "4.4, panel tension", Status::PartlyLookedUp);
/// 4.4.1: anchor bolts of such walls, with plate washers of 3 by 3 by 0.229 in.
pub const BOLTS: Source = Source::new(DOCUMENT, "4.4.1", Status::FromMemory);
/// The bolts are no farther apart than this.
pub const BOLT_SPACING: Length = Length::from_inches(16.0);
/// Least specific gravity of the framing.
pub const LEAST_SPECIFIC_GRAVITY: Ratio = 0.42;

/// Rows of nails at the top and bottom edges of the panel.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NailRows {
    /// One.
    Single,
    /// Two, staggered.
    Double,
}

/// How the panels of a wall are nailed for uplift.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UpliftNailing {
    /// Thickness of the panel: a wood structural panel.
    pub thickness: Length,
    /// Nails.
    pub fastener: ShearFastener,
    /// Nails along the edges that the shear needs; none where the panels take no shear.
    pub shear_edge: Option<Length>,
    /// Rows of nails into the top and the bottom plate.
    pub rows: NailRows,
    /// Spacing in each row.
    pub spacing: Length,
    /// Assigned specific gravity of the framing.
    pub specific_gravity: Ratio,
}

/// A nominal uplift of a foot of wall: not to be compared with a load.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct NominalUplift(LineLoad);

impl NominalUplift {
    /// The number that is printed.
    #[must_use]
    pub const fn plf(self) -> f64 {
        self.0.plf()
    }

    /// For loads of wind, allowable stress design: divided by 2.0 (from memory).
    #[must_use]
    pub fn allowable_for_wind(self) -> LineLoad {
        self.0 / DIVIDED_BY
    }
}

/// What a foot of panels holds, and where it stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PanelUplift {
    /// Nominal.
    pub nominal: NominalUplift,
    /// Its table, or the cap of the panel.
    pub source: Source,
}

struct Row {
    fastener: ShearFastener,
    /// Edge spacing of the shear nailing, in; none in the table of uplift alone.
    edge: Option<f64>,
    /// At 6, 4 and 3 in, one row of nails.
    single: [Option<f64>; 3],
    /// Two rows.
    double: [Option<f64>; 3],
}

const SPACINGS: [f64; 3] = [6.0, 4.0, 3.0];

const fn all(plf: [f64; 3]) -> [Option<f64>; 3] {
    let [six, four, three] = plf;
    [Some(six), Some(four), Some(three)]
}

const fn combined(fastener: ShearFastener, edge: f64, single: [Option<f64>; 3], double: [f64; 3]) -> Row {
    Row { fastener, edge: Some(edge), single, double: all(double) }
}

const fn alone(fastener: ShearFastener, single: [f64; 3]) -> Row {
    let [six, four, three] = single;
    Row { fastener, edge: None, single: all(single), double: all([2.0 * six, 2.0 * four, 2.0 * three]) }
}

/// Tables 4.4.1 and 4.4.2, nominal, pounds a foot.
const ROWS: [Row; 6] = [
    combined(ShearFastener::Common6d, 6.0, all([0.0, 168.0, 336.0]), [336.0, 672.0, 1008.0]),
    combined(ShearFastener::Common8d, 6.0, all([0.0, 216.0, 432.0]), [432.0, 864.0, 1296.0]),
    combined(ShearFastener::Common8d, 4.0, [None, None, Some(216.0)], [216.0, 648.0, 1080.0]),
    combined(ShearFastener::Common10d, 6.0, all([0.0, 262.0, 524.0]), [524.0, 1048.0, 1572.0]),
    alone(ShearFastener::Common6d, [320.0, 480.0, 640.0]),
    alone(ShearFastener::Common8d, [416.0, 624.0, 832.0]),
];

/// Panels from this thickness on carry shear and uplift.
const SEVEN_SIXTEENTHS: Length = Length::from_inches(7.0 / 16.0);
/// Panels from this thickness on carry uplift alone.
const THREE_EIGHTHS: Length = Length::from_inches(3.0 / 8.0);
const CAP: NominalUplift = NominalUplift(LineLoad::from_plf(1500.0));
const CAP_OF_THREE_EIGHTHS: NominalUplift = NominalUplift(LineLoad::from_plf(1000.0));

/// What a foot of so nailed panels holds against wind uplift, nominal, in framing of specific gravity 0.42 or more. What
/// denser framing adds is not counted.
///
/// Source: SDPWS 2015 Tables 4.4.1 and 4.4.2 (from memory).
///
/// # Errors
/// A panel that is too thin, framing that is too light, or a nailing that the tables do not have.
pub fn panel_uplift(nailing: &UpliftNailing) -> Result<PanelUplift, OutsideTable> {
    let (source, least) = match nailing.shear_edge {
        Some(_) => (SHEAR_AND_UPLIFT, SEVEN_SIXTEENTHS),
        None => (UPLIFT_ALONE, THREE_EIGHTHS),
    };
    let outside = |given: String, covers| {
        Err(OutsideTable { source, given, covers, next_step: "Carry the uplift by straps, or ask the engineer." })
    };
    if nailing.thickness < least {
        let given = format!("panels of {} in", nailing.thickness.inches());
        return outside(given, "panels of 7/16 in and thicker, for uplift alone of 3/8 in");
    }
    if nailing.specific_gravity < LEAST_SPECIFIC_GRAVITY {
        let given = format!("framing of specific gravity {}", nailing.specific_gravity);
        return outside(given, "framing of specific gravity 0.42 or more");
    }
    let Some(plf) = printed(nailing) else {
        let given = format!("nails at {} in, {:?} row", nailing.spacing.inches(), nailing.rows);
        return outside(
            given,
            "6d, 8d and 10d common nails at 6, 4 and 3 in, with shear nailing at 6 in, of 8d also at 4 in; 10d with shear \
             nailing only",
        );
    };
    let cap = if nailing.thickness < SEVEN_SIXTEENTHS { CAP_OF_THREE_EIGHTHS } else { CAP };
    let printed = NominalUplift(LineLoad::from_plf(plf));
    if printed > cap {
        return Ok(PanelUplift { nominal: cap, source: PANEL_CAP });
    }
    Ok(PanelUplift { nominal: printed, source })
}

fn printed(nailing: &UpliftNailing) -> Option<f64> {
    let edge = nailing.shear_edge.map(Length::inches);
    let row = ROWS.iter().find(|row| row.fastener == nailing.fastener && row.edge == edge)?;
    let cells = match nailing.rows {
        NailRows::Single => row.single,
        NailRows::Double => row.double,
    };
    SPACINGS.into_iter().zip(cells).find(|(spacing, _)| *spacing == nailing.spacing.inches())?.1
}

#[cfg(test)]
mod tests {
    use super::*;

    const ROW_COUNTS: [(NailRows, f64); 2] = [(NailRows::Single, 1.0), (NailRows::Double, 2.0)];

    fn nailing(fastener: ShearFastener, shear_edge: Option<f64>, rows: NailRows, spacing: f64) -> UpliftNailing {
        UpliftNailing {
            thickness: SEVEN_SIXTEENTHS,
            fastener,
            shear_edge: shear_edge.map(Length::from_inches),
            rows,
            spacing: Length::from_inches(spacing),
            specific_gravity: 0.42,
        }
    }

    /// Every cell is 3.2 times a nail's worth for each nail a foot beyond those of the shear: 52.5, 67.5 and 81.9 lb in
    /// Table 4.4.1, 50 and 65 lb in Table 4.4.2; to 1 lb, since they are printed whole. Then the cap.
    #[test]
    fn every_cell_by_its_nails() {
        use ShearFastener::{Common6d, Common8d, Common10d};
        for (fastener, edge, nail, cells) in [
            (Common6d, Some(6.0), 52.5, 6),
            (Common8d, Some(6.0), 67.5, 6),
            (Common8d, Some(4.0), 67.5, 4),
            (Common10d, Some(6.0), 81.9, 6),
            (Common6d, None, 50.0, 6),
            (Common8d, None, 65.0, 6),
        ] {
            let mut found = 0;
            for ((rows, count), spacing) in ROW_COUNTS.into_iter().flat_map(|rows| SPACINGS.map(|at| (rows, at))) {
                let beyond = count * 12.0 / spacing - edge.map_or(0.0, |edge| 12.0 / edge);
                match panel_uplift(&nailing(fastener, edge, rows, spacing)) {
                    Ok(PanelUplift { nominal: uplift, source }) => {
                        found += 1;
                        assert_eq!(source == PANEL_CAP, uplift == CAP);
                        let by_nails = (beyond * 3.2 * nail).min(1500.0);
                        assert!((uplift.plf() - by_nails).abs() < 1.0, "{fastener:?} {edge:?} {rows:?} {spacing}");
                        assert_eq!(uplift.allowable_for_wind().plf(), uplift.plf() / 2.0);
                    }
                    Err(_) => assert!(beyond <= 0.0, "{fastener:?} {edge:?} {rows:?} {spacing}"),
                }
            }
            assert_eq!(found, cells, "{fastener:?} {edge:?}");
        }
    }

    /// Source: a trade article on combined uplift and shear: 1,500 plf from 7/16 in on, 1,000 plf of 3/8 in.
    #[test]
    fn thin_panels_light_framing_and_other_nailings() {
        let thin =
            UpliftNailing { thickness: THREE_EIGHTHS, ..nailing(ShearFastener::Common8d, None, NailRows::Double, 3.0) };
        assert_eq!(panel_uplift(&thin).unwrap().nominal.plf(), 1000.0);
        let good = nailing(ShearFastener::Common8d, Some(6.0), NailRows::Double, 4.0);
        assert_eq!(panel_uplift(&good).unwrap().nominal.plf(), 864.0);
        for refused in [
            UpliftNailing { thickness: THREE_EIGHTHS, ..good },
            UpliftNailing { specific_gravity: 0.41, ..good },
            UpliftNailing { spacing: Length::from_inches(2.0), ..good },
            UpliftNailing { shear_edge: Some(Length::from_inches(3.0)), ..good },
            UpliftNailing { fastener: ShearFastener::RoofingShort, ..good },
        ] {
            assert!(panel_uplift(&refused).unwrap_err().to_string().contains("straps"), "{refused:?}");
        }
    }
}
