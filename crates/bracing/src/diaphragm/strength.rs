//! What a foot of nailed floor or roof carries in wind.

use measure::{Length, Ratio};
use standards::sdpws_2015::table_4_2::{DiaphragmPanel, DiaphragmRow, LayoutCase, blocked, unblocked};
use standards::sdpws_2015::{AllowableUnitShear, ApparentShearStiffness, NominalUnitShear, framing};
use standards::{OutsideTable, sdpws_2015, sdpws_2021};

use crate::strength::{Edition, Factor};

/// Whether all panel edges lie on framing, and how they are nailed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Blocking {
    /// They do.
    Blocked {
        /// Spacing at boundaries and along continuous joints.
        boundary: Length,
        /// Spacing at other edges.
        edge: Length,
    },
    /// They do not; nails at 6 in along the edges that do.
    Unblocked,
}

/// How a floor or a roof is sheathed and nailed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DiaphragmNailing {
    /// Panels, nails and the framing at their edges.
    pub panel: DiaphragmPanel,
    /// Edges.
    pub blocking: Blocking,
}

/// What the nails go into, and how the panels lie.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DiaphragmFraming {
    /// Assigned specific gravity of the framing.
    pub specific_gravity: Ratio,
    /// How the panels lie to this load. A load from the side sees another case than one from the front.
    pub case: LayoutCase,
    /// Whether it was wetter than 19 per cent when it was nailed.
    pub wet: bool,
    /// Edition.
    pub edition: Edition,
}

/// What a foot of it carries in wind, and how it comes about.
#[derive(Clone, Debug, PartialEq)]
pub struct DiaphragmStrength {
    /// The row whose unit shear is taken.
    pub row: &'static DiaphragmRow,
    /// Whether it is blocked.
    pub blocked: bool,
    /// Spacing that the panel edges within the floor are nailed at: that of the boundary in cases 5 and 6.
    pub edges: Length,
    /// Factors, in order.
    pub factors: Vec<Factor>,
    /// Nominal unit shear, factors counted.
    pub nominal: NominalUnitShear,
    /// For loads of wind.
    pub allowable: AllowableUnitShear,
    /// What the nominal one was divided by, and where that stands.
    pub divided: Factor,
    /// Apparent stiffness with strand board.
    pub stiffness: Option<ApparentShearStiffness>,
}

/// Works out what a foot of floor or roof carries in wind.
///
/// Source: SDPWS 2015 Tables 4.2A and 4.2C, by the row's own status; the factor for lighter framing was read for walls and
/// is the same here from memory.
///
/// # Errors
/// Where no table has the panels so nailed.
pub fn diaphragm_strength(
    nailing: &DiaphragmNailing,
    frame: &DiaphragmFraming,
) -> Result<DiaphragmStrength, OutsideTable> {
    let (row, is_blocked) = match nailing.blocking {
        Blocking::Blocked { boundary, edge } => (blocked(&nailing.panel, boundary, edge)?, true),
        Blocking::Unblocked => (unblocked(&nailing.panel, frame.case)?, false),
    };
    let mut factors = vec![Factor {
        what: "wood that the nails enter",
        value: framing::specific_gravity_factor(frame.specific_gravity),
        source: framing::SPECIFIC_GRAVITY,
    }];
    factors.retain(|factor| factor.value != 1.0);
    let nominal = factors.iter().fold(row.wind, |shear, factor| shear.times(factor.value));
    let wetness = if frame.wet { framing::WET_STIFFNESS } else { 1.0 };
    let at_boundary = is_blocked && frame.case.has_boundary_spacing_everywhere();
    Ok(DiaphragmStrength {
        row,
        blocked: is_blocked,
        edges: if at_boundary { row.boundary } else { row.edge },
        factors,
        nominal,
        allowable: nominal.allowable_for_wind(),
        divided: Factor {
            what: "nominal to allowable, wind",
            value: sdpws_2015::DIVIDED_BY,
            source: match frame.edition {
                Edition::Of2015 => sdpws_2015::ALLOWABLE,
                Edition::Of2021 => sdpws_2021::ALLOWABLE,
            },
        },
        stiffness: row.osb.map(|stiffness| stiffness.times(wetness)),
    })
}
