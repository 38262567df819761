//! What is on the other face of a wall, and what both faces carry together.

use measure::{Length, Ratio};
use standards::sdpws_2015::table_4_3::{ShearWallRow, WallboardFastening, wallboard};
use standards::sdpws_2015::{ApparentShearStiffness, NominalUnitShear, aspect, faces};
use standards::{OutsideTable, Source};

use crate::face::Face;
use crate::strength::{Framing, Nailing};

/// What is on the other face of a wall, beside the panels that are asked about. Where those are on both faces already,
/// nothing of it counts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum OtherFace {
    /// Nothing that is counted.
    Bare,
    /// Wood panels that are nailed otherwise.
    Panels(Nailing),
    /// One layer of gypsum wallboard.
    Board(WallboardFastening),
}

/// How two faces are put together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Joined {
    /// Added: wood panels and gypsum wallboard, in wind.
    Added,
    /// The same panels nailed otherwise: by their stiffnesses.
    ByStiffness,
    /// Other panels: twice the weaker face.
    TwiceTheWeaker,
    /// The stronger face alone.
    StrongerAlone,
}

/// The other face, and what both carry together.
#[derive(Clone, Debug, PartialEq)]
pub struct SecondFace {
    /// The row whose unit shear is taken.
    pub row: &'static ShearWallRow,
    /// What it carries alone, factors counted.
    pub shear: NominalUnitShear,
    /// How the two are put together.
    pub joined: Joined,
    /// Where that stands.
    pub source: Source,
    /// What both carry.
    pub both: NominalUnitShear,
    /// Stiffness of both, where the rule has one; else the panels alone count.
    pub stiffness: Option<ApparentShearStiffness>,
    /// The most of height over length at which it counts.
    pub most: Ratio,
}

/// Puts the other face beside the panels that are asked about.
pub(crate) fn second_face(
    nailing: &Nailing,
    frame: &Framing,
    first: &Face,
) -> Result<Option<SecondFace>, OutsideTable> {
    match &frame.other_face {
        _ if nailing.both_faces => Ok(None),
        OtherFace::Bare => Ok(None),
        OtherFace::Board(fastening) => board(fastening, frame.studs, first).map(Some),
        OtherFace::Panels(other) => panels(nailing, &Nailing { both_faces: false, ..*other }, frame, first).map(Some),
    }
}

fn board(fastening: &WallboardFastening, studs: Length, first: &Face) -> Result<SecondFace, OutsideTable> {
    let row = wallboard(fastening, studs)?;
    let most = aspect::most(row.sheathing, fastening.blocked);
    let added = faces::are_added_in_wind(first.row.sheathing, row.sheathing);
    let (joined, source, both) = if added {
        (Joined::Added, faces::ADDED_IN_WIND, first.shear.plus(row.wind))
    } else {
        unlike(first.shear, row.wind)
    };
    Ok(SecondFace { row, shear: row.wind, joined, source, both, stiffness: None, most })
}

fn panels(nailing: &Nailing, other: &Nailing, frame: &Framing, first: &Face) -> Result<SecondFace, OutsideTable> {
    let second = Face::of(other, frame)?;
    let same = nailing.sheathing == other.sheathing && nailing.thickness == other.thickness;
    let stiffnesses = first.stiffness.zip(second.stiffness).filter(|_| same);
    let (joined, source, both, stiffness) = match stiffnesses {
        Some((one, two)) => {
            let (both, stiffness) = faces::differently_nailed([(first.shear, one), (second.shear, two)]);
            (Joined::ByStiffness, faces::SAME_MATERIAL, both, Some(stiffness))
        }
        None => {
            let (joined, source, both) = unlike(first.shear, second.shear);
            (joined, source, both, None)
        }
    };
    let most = aspect::most(second.row.sheathing, frame.joints.are_blocked());
    Ok(SecondFace { row: second.row, shear: second.shear, joined, source, both, stiffness, most })
}

fn unlike(one: NominalUnitShear, other: NominalUnitShear) -> (Joined, Source, NominalUnitShear) {
    let both = faces::dissimilar(one, other);
    let alone = both == one || both == other;
    (if alone { Joined::StrongerAlone } else { Joined::TwiceTheWeaker }, faces::DISSIMILAR, both)
}
