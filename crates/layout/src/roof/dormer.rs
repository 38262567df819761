//! Dormers on a main roof: gable and shed.

use measure::{Angle, Length, Slope};

use super::corner::{Corner, Meeting};
use super::cut::{Cut, Under};
use super::error::{RoofError, positive};
use super::plane::{Sides, along_slope, pitched, ratio, rise};

/// A gable dormer, its ridge square to the main eave.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GableDormer {
    /// Pitch of the main roof.
    pub main: Slope,
    /// Pitch of the dormer.
    pub dormer: Slope,
    /// Half of its width, plate to plate.
    pub half_width: Length,
    /// Height of its plates above the plane of the main roof, at its face.
    pub face_height: Length,
}

/// A gable dormer, laid out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GableDormerAnswer {
    /// Length of its ridge from its face to where the main roof reaches it.
    pub ridge: Length,
    /// Level, from its face to where its plates die into the main roof and the valleys start.
    pub plates: Length,
    /// Both valleys: A is the main roof.
    pub valley: Corner,
    /// The cut of its eave fascia, set square to its rafters, where it dies on the main roof.
    pub fascia: Cut,
}

/// Lays out a gable dormer.
///
/// Source: planes in space; a practitioner's drawing notes print the fascia of 10 in 12 on 7 in 12.
///
/// # Errors
/// Pitches that are no roof's, and sizes of nothing.
pub fn gable_dormer(given: &GableDormer) -> Result<GableDormerAnswer, RoofError> {
    let GableDormer { main, dormer, half_width, face_height } = *given;
    let valley = Corner::new(Meeting::Valley, Sides { a: main, b: dormer }, Angle::from_degrees(90.0))?;
    positive("half of the dormer's width", half_width)?;
    positive("height of the dormer's plate above the main roof", face_height)?;
    let over = |height: Length| height / ratio(main);
    let (eave, face) = (valley.eaves.b, valley.jack_axis(super::Side::B));
    Ok(GableDormerAnswer {
        ridge: over(face_height + rise(half_width, dormer)),
        plates: over(face_height),
        valley,
        fascia: Cut::by_plane(Under::SquareFace, eave, face, valley.normals.a),
    })
}

/// A shed dormer, flatter than the main roof and falling the same way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShedDormer {
    /// Pitch of the main roof.
    pub main: Slope,
    /// Pitch of the dormer.
    pub shed: Slope,
    /// Height of its plate above the plane of the main roof, at its face.
    pub face_height: Length,
}

/// A shed dormer, laid out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShedDormerAnswer {
    /// Level run of its rafters to the main roof.
    pub run: Length,
    /// Their length.
    pub line_length: Length,
    /// Angle between its rafters and the main roof's plane: the slice cut of their upper end, from the axis.
    pub between: Angle,
}

/// Lays out a shed dormer.
///
/// Source: two lines in one plumb plane.
///
/// # Errors
/// A shed as steep as the main roof, which never meets it, and sizes of nothing.
pub fn shed_dormer(given: &ShedDormer) -> Result<ShedDormerAnswer, RoofError> {
    let ShedDormer { main, shed, face_height } = *given;
    pitched(main)?;
    pitched(shed)?;
    positive("height of the dormer's plate above the main roof", face_height)?;
    if shed >= main {
        return Err(RoofError::NeverMeets { lower: main, upper: shed });
    }
    let run = face_height / (ratio(main) - ratio(shed));
    Ok(ShedDormerAnswer { run, line_length: along_slope(run, shed), between: main.angle() - shed.angle() })
}
