//! What a foot of nailed wall carries in wind.

use measure::{Length, Ratio};
use standards::sdpws_2015::table_4_3::{AS_THICKER, ShearFastener, ShearWallRow, Sheathing, wood_panel};
use standards::sdpws_2015::{AllowableUnitShear, ApparentShearStiffness, NominalUnitShear, framing};
use standards::{OutsideTable, Source, sdpws_2015, sdpws_2021};

/// Which edition of the provisions is followed. In wind they differ in one factor.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Edition {
    /// 2015.
    Of2015,
    /// 2021.
    Of2021,
}

/// How a wall is sheathed and nailed: wood panels right on the framing, all edges blocked.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nailing {
    /// Sheathing: a wood structural panel.
    pub sheathing: Sheathing,
    /// Its nominal thickness.
    pub thickness: Length,
    /// Nails.
    pub fastener: ShearFastener,
    /// Spacing along all edges.
    pub edge: Length,
    /// Whether the long side of the panels runs across the studs.
    pub across_studs: bool,
    /// Whether both faces are so.
    pub both_faces: bool,
}

/// What the nails go into.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Framing {
    /// Assigned specific gravity of the studs and plates.
    pub specific_gravity: Ratio,
    /// Stud spacing.
    pub studs: Length,
    /// Whether it was wetter than 19 per cent when it was nailed.
    pub wet: bool,
    /// Whether hold-downs stand on the inner face of the end posts, in the bay.
    pub hold_downs_inside: bool,
    /// Edition.
    pub edition: Edition,
}

/// A factor on a unit shear, with its reason.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Factor {
    /// What it is for.
    pub what: &'static str,
    /// The factor.
    pub value: Ratio,
    /// Its source.
    pub source: Source,
}

/// What a foot of wall carries in wind, and how it comes about.
#[derive(Clone, Debug, PartialEq)]
pub struct Strength {
    /// The row whose unit shear is taken.
    pub row: &'static ShearWallRow,
    /// Why that is the row of a thicker panel, where it is.
    pub as_thicker: Option<Source>,
    /// Factors, in order.
    pub factors: Vec<Factor>,
    /// Nominal unit shear of one face, factors counted.
    pub one_face: NominalUnitShear,
    /// Of the wall.
    pub nominal: NominalUnitShear,
    /// For loads of wind.
    pub allowable: AllowableUnitShear,
    /// What the nominal one was divided by, and where that stands.
    pub divided: Factor,
    /// Apparent stiffness with strand board.
    pub stiffness: Option<ApparentShearStiffness>,
}

/// The thickness whose unit shear a thinner panel may take.
const THICKER: Length = Length::from_inches(15.0 / 32.0);
/// The thinnest panel that may.
const THIN: Length = Length::from_inches(3.0 / 8.0);

/// Works out what a foot of wall carries in wind.
///
/// # Errors
/// Where no table has the sheathing so nailed, or the studs are farther apart than the table has them.
pub fn strength(nailing: &Nailing, frame: &Framing) -> Result<Strength, OutsideTable> {
    let own = wood_panel(nailing.sheathing, nailing.thickness, nailing.fastener, nailing.edge)?;
    if frame.studs > own.studs {
        return Err(OutsideTable {
            source: own.source(),
            given: format!("studs at {} in", frame.studs.inches()),
            covers: "studs to 24 in",
            next_step: "Set the studs closer, or ask the engineer.",
        });
    }
    let thicker = takes_thicker(nailing, frame)
        .then(|| wood_panel(nailing.sheathing, THICKER, nailing.fastener, nailing.edge))
        .transpose()?;
    let row = thicker.unwrap_or(own);
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
    factors.retain(|factor| factor.value != 1.0);
    let one_face = factors.iter().fold(row.wind, |shear, factor| shear.times(factor.value));
    let faces = if nailing.both_faces { 2.0 } else { 1.0 };
    let nominal = one_face.times(faces);
    let wetness = if frame.wet { framing::WET_STIFFNESS } else { 1.0 };
    Ok(Strength {
        row,
        as_thicker: thicker.map(|_| AS_THICKER),
        factors,
        one_face,
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
        // The panel that is there leans as it does, whatever it may be taken to carry.
        stiffness: own.osb.map(|stiffness| stiffness.times(faces * wetness)),
    })
}

/// Panels of 3/8 and 7/16 in with 8d nails, on studs at 16 in or less or laid across them.
fn takes_thicker(nailing: &Nailing, frame: &Framing) -> bool {
    nailing.fastener == ShearFastener::Common8d
        && nailing.thickness >= THIN
        && nailing.thickness < THICKER
        && (frame.studs.inches() <= 16.0 || nailing.across_studs)
}
