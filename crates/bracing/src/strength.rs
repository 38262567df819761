//! What a foot of nailed wall carries in wind.

use measure::{Length, Ratio};
use standards::sdpws_2015::table_4_3::{ShearFastener, ShearWallRow, Sheathing};
use standards::sdpws_2015::{AllowableUnitShear, ApparentShearStiffness, NominalUnitShear, aspect, unblocked};
use standards::{OutsideTable, Source, sdpws_2015, sdpws_2021};

use crate::face::Face;
use crate::faces::{OtherFace, SecondFace, second_face};

/// Which edition of the provisions is followed. In wind they differ in one factor.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Edition {
    /// 2015.
    Of2015,
    /// 2021.
    Of2021,
}

/// How a wall is sheathed and nailed: wood panels right on the framing.
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

/// What the level joints of the panels lie on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LevelJoints {
    /// Framing or blocking, as all other edges do; or there is none.
    Blocked,
    /// Nothing between the studs.
    Unblocked {
        /// Spacing of the nails away from the edges.
        field: Length,
    },
}

impl LevelJoints {
    /// Whether all edges lie on framing.
    #[must_use]
    pub const fn are_blocked(self) -> bool {
        matches!(self, Self::Blocked)
    }
}

/// What the nails go into, and what else is on it.
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
    /// What the level joints of the panels lie on.
    pub joints: LevelJoints,
    /// What is on the other face.
    pub other_face: OtherFace,
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
    /// Whether all edges of the panels lie on framing.
    pub blocked: bool,
    /// What is on the other face, where it is counted.
    pub second: Option<SecondFace>,
    /// Of the wall.
    pub nominal: NominalUnitShear,
    /// For loads of wind.
    pub allowable: AllowableUnitShear,
    /// What the nominal one was divided by, and where that stands.
    pub divided: Factor,
    /// Apparent stiffness with strand board.
    pub stiffness: Option<ApparentShearStiffness>,
    /// That of the panels that are asked about alone.
    pub panels_stiffness: Option<ApparentShearStiffness>,
}

impl Strength {
    /// Height over length of a piece of such a wall, where it may count at all.
    ///
    /// # Errors
    /// Where it is narrower than the limit, or higher than a wall may be whose level joints lie on nothing.
    pub fn ratio(&self, height: Length, length: Length) -> Result<Ratio, OutsideTable> {
        self.is_not_too_high(height)?;
        aspect::ratio(height, length, self.row.sheathing, self.blocked)
    }

    /// Whether such a wall may be so high.
    ///
    /// # Errors
    /// For level joints on nothing, over 16 ft.
    pub fn is_not_too_high(&self, height: Length) -> Result<(), OutsideTable> {
        if self.blocked || height <= unblocked::HIGHEST {
            return Ok(());
        }
        Err(OutsideTable {
            source: unblocked::FACTOR,
            given: format!("a wall {} ft high whose level joints are not blocked", height.feet()),
            covers: "such walls to 16 ft",
            next_step: "Block the joints, or ask the engineer.",
        })
    }

    /// The strength of a line of these pieces. Gypsum board has no rule for narrow pieces: where one that counts is narrower
    /// than its limit, the other face counts in none, for all pieces of a line are alike.
    #[must_use]
    pub fn of_pieces(&self, height: Length, pieces: &[Length]) -> Self {
        let Some(second) = &self.second else { return self.clone() };
        let narrow = pieces.iter().filter_map(|length| self.ratio(height, *length).ok()).any(|of| of > second.most);
        if !narrow {
            return self.clone();
        }
        Self {
            second: None,
            nominal: self.one_face,
            allowable: self.one_face.allowable_for_wind(),
            stiffness: self.panels_stiffness,
            ..self.clone()
        }
    }
}

/// Works out what a foot of wall carries in wind.
///
/// # Errors
/// Where no table has the sheathing so nailed, or the studs are farther apart than the table has them; where the other face
/// is none of the tables'.
pub fn strength(nailing: &Nailing, frame: &Framing) -> Result<Strength, OutsideTable> {
    let face = Face::of(nailing, frame)?;
    let second = second_face(nailing, frame, &face)?;
    let faces = if nailing.both_faces { 2.0 } else { 1.0 };
    let nominal = second.as_ref().map_or(face.shear.times(faces), |second| second.both);
    let panels_stiffness = face.stiffness.map(|stiffness| stiffness.times(faces));
    Ok(Strength {
        row: face.row,
        as_thicker: face.as_thicker,
        factors: face.factors,
        one_face: face.shear,
        blocked: frame.joints.are_blocked(),
        stiffness: second.as_ref().and_then(|second| second.stiffness).or(panels_stiffness),
        panels_stiffness,
        second,
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
    })
}
