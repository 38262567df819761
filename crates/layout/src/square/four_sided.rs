//! Four corners from their sides and one thing more.

use measure::{Angle, Length, math};

use super::diagonal::third_side;
use super::error::{SquareError, size};
use super::measured::{Measurement, Sides};

/// Arithmetic alone may be off by so much: no tape reads it.
pub(super) const NOISE: Length = Length::from_inches(1e-9);

/// One of the corners.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Corner {
    /// A.
    A,
    /// B.
    B,
    /// C.
    C,
    /// D.
    D,
}

impl Corner {
    /// All, as one walks round.
    pub const ALL: [Self; 4] = [Self::A, Self::B, Self::C, Self::D];
}

/// What is known besides the sides: four sides alone can lean any way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Known {
    /// Diagonal A to C.
    Ac(Length),
    /// Diagonal B to D.
    Bd(Length),
    /// The angle inside one corner; 90 degrees where it is square.
    Angle(Corner, Angle),
}

/// A place in plan.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Place {
    /// From A towards B.
    pub along: Length,
    /// Square to that, to the side where C and D are.
    pub across: Length,
}

impl Place {
    /// How far two places are from each other.
    #[must_use]
    pub fn to(self, other: Self) -> Length {
        third_side(other.along - self.along, other.across - self.across)
    }

    /// Twice the area to the left of going from here over `then` to `last`; in square inches.
    fn turn(self, then: Self, last: Self) -> f64 {
        let (first, second) = (
            (then.along - self.along, then.across - self.across),
            (last.along - then.along, last.across - then.across),
        );
        (first.0 * second.1 - first.1 * second.0).square_inches()
    }
}

/// Four corners, solved.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FourSided {
    /// A, B, C and D.
    pub corners: [Place; 4],
    /// Diagonal A to C.
    pub ac: Length,
    /// Diagonal B to D.
    pub bd: Length,
    /// Angles inside A, B, C and D.
    pub angles: [Angle; 4],
}

/// Finds both diagonals and every corner.
///
/// Source: geometry: two triangles on one diagonal.
///
/// # Errors
/// Lengths of nothing or over 1,000 ft; a measurement that no corners can have with the others, which is named; a corner that
/// points inward.
pub fn four_sided(sides: &Sides, known: Known) -> Result<FourSided, SquareError> {
    for (_, given) in sides.named() {
        size("side", given)?;
    }
    let ac = diagonal_ac(sides, known)?;
    let corners = corners(sides, ac)?;
    Ok(FourSided { ac, bd: corners[1].to(corners[3]), angles: angles(&corners), corners })
}

/// A to C, whichever was given.
fn diagonal_ac(sides: &Sides, known: Known) -> Result<Length, SquareError> {
    let Sides { ab, bc, cd, da } = *sides;
    match known {
        Known::Ac(ac) => size("diagonal A to C", ac),
        Known::Bd(bd) => across(sides, size("diagonal B to D", bd)?),
        Known::Angle(_, given) if !(given > Angle::ZERO && given < Angle::from_degrees(180.0)) => {
            Err(SquareError::CornerAngle { given })
        }
        Known::Angle(Corner::A, angle) => across(sides, opposite(da, ab, angle)),
        Known::Angle(Corner::B, angle) => Ok(opposite(ab, bc, angle)),
        Known::Angle(Corner::C, angle) => across(sides, opposite(bc, cd, angle)),
        Known::Angle(Corner::D, angle) => Ok(opposite(cd, da, angle)),
    }
}

/// The side opposite an angle between two others.
fn opposite(a: Length, b: Length, angle: Angle) -> Length {
    let square = a * a + b * b - a * b * (2.0 * angle.cos());
    Length::from_inches(square.square_inches().max(0.0).sqrt())
}

/// A to C where B to D is known: the same corners, named on by one.
fn across(sides: &Sides, bd: Length) -> Result<Length, SquareError> {
    triangle(Measurement::Bd, bd, (Measurement::Da, sides.da), (Measurement::Ab, sides.ab))?;
    triangle(Measurement::Bd, bd, (Measurement::Bc, sides.bc), (Measurement::Cd, sides.cd))?;
    let turned = Sides { ab: sides.bc, bc: sides.cd, cd: sides.da, da: sides.ab };
    let corners = placed(&turned, bd);
    // Refused here: on the other diagonal the same sides make another shape, which does not.
    if points_inward(&corners) { Err(SquareError::PointsInward) } else { Ok(corners[1].to(corners[3])) }
}

fn corners(sides: &Sides, ac: Length) -> Result<[Place; 4], SquareError> {
    triangle(Measurement::Ac, ac, (Measurement::Ab, sides.ab), (Measurement::Bc, sides.bc))?;
    triangle(Measurement::Ac, ac, (Measurement::Cd, sides.cd), (Measurement::Da, sides.da))?;
    let corners = placed(sides, ac);
    if points_inward(&corners) { Err(SquareError::PointsInward) } else { Ok(corners) }
}

/// B below the diagonal and D above it, then turned so that B lies along.
fn placed(sides: &Sides, ac: Length) -> [Place; 4] {
    // Along the diagonal from A, and away from it, of a corner so far from A and from C.
    let beside = |from_a: Length, from_c: Length| {
        let along = (from_a * from_a - from_c * from_c + ac * ac) / (ac * 2.0);
        let away = (from_a * from_a - along * along).square_inches().max(0.0).sqrt();
        (along, Length::from_inches(away))
    };
    let ((b_along, b_away), (d_along, d_away)) = (beside(sides.ab, sides.bc), beside(sides.da, sides.cd));
    let (cos, sin) = (b_along / sides.ab, b_away / sides.ab);
    let turned =
        |along: Length, across: Length| Place { along: along * cos - across * sin, across: along * sin + across * cos };
    [
        Place::default(),
        Place { along: sides.ab, across: Length::ZERO },
        turned(ac, Length::ZERO),
        turned(d_along, d_away),
    ]
}

/// Whether three lengths close. Where they do not, the diagonal is named: it is the one that is harder to measure.
fn triangle(
    which: Measurement,
    given: Length,
    a: (Measurement, Length),
    b: (Measurement, Length),
) -> Result<(), SquareError> {
    let (least, most) = ((a.1 - b.1).abs(), a.1 + b.1);
    if given > least + NOISE && given < most - NOISE {
        return Ok(());
    }
    Err(SquareError::DoesNotFit { which, given, least, most })
}

fn points_inward(corners: &[Place; 4]) -> bool {
    (0..4).any(|at| corners[at].turn(corners[(at + 1) % 4], corners[(at + 2) % 4]) <= 0.0)
}

fn angles(corners: &[Place; 4]) -> [Angle; 4] {
    let direction = |from: Place, to: Place| {
        math::atan2((to.across - from.across).inches(), (to.along - from.along).inches()).to_degrees()
    };
    [0, 1, 2, 3].map(|at| {
        let inside = direction(corners[at], corners[(at + 3) % 4]) - direction(corners[at], corners[(at + 1) % 4]);
        Angle::from_degrees(if inside < 0.0 { inside + 360.0 } else { inside })
    })
}
