//! Cripple jacks: from a valley up to a hip, and from one valley to another.

use measure::Length;

use super::corner::Corner;
use super::cut::Cut;
use super::error::{RoofError, not_negative, positive};
use super::plane::{Side, along_slope};

/// The line at one end of a cripple jack, and the plane of it that the cripple lies in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrippleEnd {
    /// The planes that meet there.
    pub corner: Corner,
    /// The plane of the cripples.
    pub side: Side,
    /// Thickness of the hip or valley; of a doubled one, both plies.
    pub thickness: Length,
}

/// A cripple jack. Its lengths are on the top edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cripple {
    /// Along the eave: see what laid it out.
    pub along_eave: Length,
    /// Level run between the two centre lines.
    pub run: Length,
    /// Length of the line over it.
    pub line_length: Length,
    /// Length on the middle of the top edge, shortened at both ends.
    pub centre: Length,
    /// Length on the face toward the lower end of both lines, and on the other.
    pub faces: [Length; 2],
    /// Cheek at the upper and at the lower end.
    pub cheeks: [Cut; 2],
}

/// A cripple from a valley up to a hip, at a place past the foot of the valley.
///
/// The hip starts over an outside corner, the valley over the inside corner at the other end of that piece of `plate`;
/// `past_valley` is along the eave from the valley's foot, away from the hip's. With hip and valley parallel in plan all are alike.
///
/// Source: planes in space; an old cyclopedia of construction has the run of a square corner, the length of plate.
///
/// # Errors
/// Sizes of nothing, ends of two pitches, and a run that the two lines take whole.
pub fn hip_valley_cripple(
    hip: &CrippleEnd,
    valley: &CrippleEnd,
    jack_thickness: Length,
    plate: Length,
    past_valley: Length,
) -> Result<Cripple, RoofError> {
    positive("plate between hip and valley", plate)?;
    not_negative("distance past the valley", past_valley)?;
    let (rises, falls) = (hip.tangent(), valley.tangent());
    let run = (plate + past_valley) * rises - past_valley * falls;
    lay([hip, valley], jack_thickness, past_valley, run, rises - falls)
}

/// A cripple from one valley to the other where a short valley meets a long one, at a distance along the eave from their crossing.
///
/// Source: planes in space; a naval training course for builders has the run of a square corner, twice the distance.
///
/// # Errors
/// As [`hip_valley_cripple`].
pub fn valley_cripple(
    long: &CrippleEnd,
    short: &CrippleEnd,
    jack_thickness: Length,
    from_crossing: Length,
) -> Result<Cripple, RoofError> {
    positive("distance from the crossing", from_crossing)?;
    let spread = long.tangent() + short.tangent();
    lay([long, short], jack_thickness, from_crossing, from_crossing * spread, spread)
}

fn lay(
    ends: [&CrippleEnd; 2],
    jack_thickness: Length,
    along_eave: Length,
    run: Length,
    spread: f64,
) -> Result<Cripple, RoofError> {
    let [upper, lower] = ends;
    let pitch = upper.corner.pitch(upper.side);
    let other = lower.corner.pitch(lower.side);
    if (pitch - other).rise_in_twelve().abs() > 1e-9 {
        return Err(RoofError::OtherPitch { side: lower.side, given: pitch, plane: other });
    }
    positive("thickness of the cripple", jack_thickness)?;
    positive("thickness of the upper line", upper.thickness)?;
    positive("thickness of the lower line", lower.thickness)?;
    let taken: Length = ends.iter().map(|end| end.corner.jack_shortening(end.side, end.thickness)).sum();
    if taken >= run {
        return Err(RoofError::NothingLeft { what: "cripple", run, taken });
    }
    let along = |level| along_slope(level, pitch);
    let half = along(jack_thickness / 2.0 * spread);
    let centre = along(run - taken);
    Ok(Cripple {
        along_eave,
        run,
        line_length: along(run),
        centre,
        faces: [centre - half, centre + half],
        cheeks: ends.map(|end| end.corner.jack(end.side)),
    })
}

impl CrippleEnd {
    fn tangent(&self) -> f64 {
        self.corner.plan_angle(self.side).tan()
    }
}
