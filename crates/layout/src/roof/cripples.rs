//! Cripple jacks: from a valley up to a hip, and from one valley to another.

use measure::Length;

use super::corner::Corner;
use super::cut::Cut;
use super::error::{RoofError, not_negative, positive};
use super::plane::{Side, along_slope, ratio};
use super::space::{ORIGIN, Plane, Vector};
use super::stick::{Ends, Piece, Planes, Stick};

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

/// A cripple jack as stock.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrippleStock {
    /// Thickness.
    pub thickness: Length,
    /// Depth.
    pub depth: Length,
}

/// A cripple jack. Its lengths are on the top edge.
#[derive(Clone, Debug, PartialEq)]
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
    /// The stick with its marks.
    pub stick: Stick,
}

/// A cripple from a valley up to a hip, at a place past the foot of the valley.
///
/// The hip starts over an outside corner, the valley over the inside corner at the other end of that piece of `plate`;
/// `past_valley` is along the eave from the valley's foot, away from the hip's. With hip and valley parallel in plan
/// all are alike.
///
/// Source: planes in space; an old cyclopedia of construction has the run of a square corner, the length of plate.
///
/// # Errors
/// Sizes of nothing, ends of two pitches, and a run that the two lines take whole.
pub fn hip_valley_cripple(
    hip: &CrippleEnd,
    valley: &CrippleEnd,
    stock: CrippleStock,
    plate: Length,
    past_valley: Length,
) -> Result<Cripple, RoofError> {
    positive("plate between hip and valley", plate)?;
    not_negative("distance past the valley", past_valley)?;
    let (rises, falls) = (hip.tangent(), valley.tangent());
    let run = (plate + past_valley) * rises - past_valley * falls;
    lay([hip, valley], stock, past_valley, run, [rises, falls])
}

/// A cripple from one valley to the other where a short valley meets a long one, at a distance along the eave from
/// their crossing.
///
/// Source: planes in space; a naval training course for builders has the run of a square corner, twice the distance.
///
/// # Errors
/// As [`hip_valley_cripple`].
pub fn valley_cripple(
    long: &CrippleEnd,
    short: &CrippleEnd,
    stock: CrippleStock,
    from_crossing: Length,
) -> Result<Cripple, RoofError> {
    positive("distance from the crossing", from_crossing)?;
    let (rises, falls) = (long.tangent(), -short.tangent());
    lay([long, short], stock, from_crossing, from_crossing * (rises - falls), [rises, falls])
}

fn lay(
    ends: [&CrippleEnd; 2],
    stock: CrippleStock,
    along_eave: Length,
    run: Length,
    tangents: [f64; 2],
) -> Result<Cripple, RoofError> {
    let [upper, lower] = ends;
    let pitch = upper.corner.pitch(upper.side);
    let other = lower.corner.pitch(lower.side);
    if (pitch - other).rise_in_twelve().abs() > 1e-9 {
        return Err(RoofError::OtherPitch { side: lower.side, given: pitch, plane: other });
    }
    positive("thickness of the cripple", stock.thickness)?;
    positive("depth of the cripple", stock.depth)?;
    positive("thickness of the upper line", upper.thickness)?;
    positive("thickness of the lower line", lower.thickness)?;
    let taken: Length = ends.iter().map(|end| end.corner.jack_shortening(end.side, end.thickness)).sum();
    if taken >= run {
        return Err(RoofError::NothingLeft { what: "cripple", run, taken });
    }
    let along = |level| along_slope(level, pitch);
    let half = along(stock.thickness / 2.0 * (tangents[0] - tangents[1]));
    let centre = along(run - taken);
    let none = RoofError::NothingLeft { what: "cripple", run, taken };
    Ok(Cripple {
        stick: in_space(ends, stock, run, tangents).ok_or(none)?,
        along_eave,
        run,
        line_length: along(run),
        centre,
        faces: [centre - half, centre + half],
        cheeks: ends.map(|end| end.corner.jack(end.side)),
    })
}

/// Its lower centre line in the origin, the run along `y`, the eave from the corner along `x`, or against it for plane
/// B.
fn in_space(ends: [&CrippleEnd; 2], stock: CrippleStock, run: Length, tangents: [f64; 2]) -> Option<Stick> {
    let [upper, lower] = ends;
    let from_corner = if upper.side == Side::A { 1.0 } else { -1.0 };
    // The face of a line whose middle crosses the cripple's at this run, so far up the roof or down it.
    let face = |end: &CrippleEnd, tangent: f64, run: Length, up: f64| {
        let across = Vector::new(-tangent * from_corner, 1.0, 0.0).unit();
        let middle = Plane::through(Vector::new(0.0, run.inches(), 0.0), across);
        Plane { offset: middle.offset + up * end.thickness.inches() / 2.0, ..middle }
    };
    let axis = Vector::new(0.0, 1.0, ratio(upper.corner.pitch(upper.side))).unit();
    let piece = Piece::on_edge(ORIGIN, axis, stock.thickness, stock.depth);
    piece.stick(&Planes {
        head: (&[face(upper, tangents[0], run, -1.0)], Ends::Pointed),
        notches: &[],
        tail: (&[face(lower, tangents[1], Length::ZERO, 1.0)], Ends::Pointed),
    })
}

impl CrippleEnd {
    fn tangent(&self) -> f64 {
        self.corner.plan_angle(self.side).tan()
    }
}
