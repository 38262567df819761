//! One face of wood panels: its row, and the factors on it.

use measure::Length;
use standards::sdpws_2015::table_4_3::{AS_THICKER, ShearFastener, ShearWallRow, wood_panel};
use standards::sdpws_2015::{ApparentShearStiffness, NominalUnitShear, framing, unblocked};
use standards::{OutsideTable, Source, sdpws_2021};

use crate::strength::{Edition, Factor, Framing, LevelJoints, Nailing};

/// The thickness whose unit shear a thinner panel may take.
const THICKER: Length = Length::from_inches(15.0 / 32.0);
/// The thinnest panel that may.
const THIN: Length = Length::from_inches(3.0 / 8.0);

/// Edge nails of the walls that the factor for level joints on nothing is a share of.
const UNBLOCKED_EDGE: Length = Length::from_inches(6.0);

/// One face of wood panels.
pub(crate) struct Face {
    pub(crate) row: &'static ShearWallRow,
    /// Why that is the row of a thicker panel, where it is.
    pub(crate) as_thicker: Option<Source>,
    pub(crate) factors: Vec<Factor>,
    /// Nominal unit shear, factors counted.
    pub(crate) shear: NominalUnitShear,
    /// With strand board, wetness and level joints counted.
    pub(crate) stiffness: Option<ApparentShearStiffness>,
}

impl Face {
    /// # Errors
    /// As [`strength`].
    pub(crate) fn of(nailing: &Nailing, frame: &Framing) -> Result<Self, OutsideTable> {
        let own = wood_panel(nailing.sheathing, nailing.thickness, nailing.fastener, nailing.edge)?;
        if frame.studs > own.studs {
            return Err(OutsideTable {
                source: own.source(),
                given: format!("studs at {} in", frame.studs.inches()),
                covers: "studs to 24 in",
                next_step: "Set the studs closer, or ask the engineer.",
            });
        }
        let mut factors = vec![Factor {
            what: "wood that the nails enter",
            value: framing::specific_gravity_factor(frame.specific_gravity),
            source: framing::SPECIFIC_GRAVITY,
        }];
        if frame.edition == Edition::Of2021 {
            let value = sdpws_2021::hold_down_factor(nailing.fastener, frame.hold_downs_inside);
            let source = sdpws_2021::INNER_HOLD_DOWN;
            factors.push(Factor { what: "hold-downs on the inner face of the end posts", value, source });
        }
        // The panel that is there leans as it does, whatever it may be taken to carry.
        let (row, as_thicker, leans, share) = match frame.joints {
            LevelJoints::Blocked => {
                let thicker = takes_thicker(nailing, frame)
                    .then(|| wood_panel(nailing.sheathing, THICKER, nailing.fastener, nailing.edge))
                    .transpose()?;
                (thicker.unwrap_or(own), thicker.map(|_| AS_THICKER), own, 1.0)
            }
            // A share of the wall on studs at 24 in with nails at 6 in, however much closer these are.
            LevelJoints::Unblocked { field } => {
                let value = unblocked::factor(frame.studs, nailing.edge, field)?;
                factors.push(Factor { what: "level joints that are not blocked", value, source: unblocked::FACTOR });
                let base = wood_panel(nailing.sheathing, nailing.thickness, nailing.fastener, UNBLOCKED_EDGE)?;
                (base, None, base, value)
            }
        };
        factors.retain(|factor| factor.value != 1.0);
        let wetness = if frame.wet { framing::WET_STIFFNESS } else { 1.0 };
        Ok(Self {
            row,
            as_thicker,
            shear: factors.iter().fold(row.wind, |shear, factor| shear.times(factor.value)),
            factors,
            stiffness: leans.osb.map(|stiffness| stiffness.times(wetness * share)),
        })
    }
}

/// Panels of 3/8 and 7/16 in with 8d nails, on studs at 16 in or less or laid across them.
fn takes_thicker(nailing: &Nailing, frame: &Framing) -> bool {
    nailing.fastener == ShearFastener::Common8d
        && nailing.thickness >= THIN
        && nailing.thickness < THICKER
        && (frame.studs.inches() <= 16.0 || nailing.across_studs)
}
