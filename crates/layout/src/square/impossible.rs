//! Six measurements that no four corners can have: the one that does not fit.

use measure::Length;

use super::error::SquareError;
use super::four_sided::NOISE;
use super::measured::{Measurement, Sides};

type Triangle = [(Measurement, Length); 3];

/// Looks at the four triangles of two diagonals. A wrong measurement spoils both triangles that it is in: the one that is in most
/// of those that do not close is named, a diagonal before a side.
pub(super) fn all_close(sides: &Sides, ac: Length, bd: Length) -> Result<(), SquareError> {
    let [ab, bc, cd, da] = sides.named();
    let (ac, bd) = ((Measurement::Ac, ac), (Measurement::Bd, bd));
    let triangles = [[ac, ab, bc], [ac, cd, da], [bd, da, ab], [bd, bc, cd]];
    let open: Vec<&Triangle> = triangles.iter().filter(|triangle| !closes(triangle)).collect();
    let spoils = |one: &(Measurement, Length)| open.iter().filter(|triangle| triangle.contains(one)).count();
    // The last of several alike is taken: diagonals stand last.
    let suspect = [da, cd, bc, ab, bd, ac].into_iter().max_by_key(spoils).filter(|one| spoils(one) > 0);
    let Some((which, given)) = suspect else { return Ok(()) };
    let bounds = |triangles: &mut dyn Iterator<Item = &Triangle>| {
        triangles.filter_map(|triangle| range(triangle, which)).reduce(|a, b| (a.0.max(b.0), a.1.min(b.1)))
    };
    // Where its two triangles agree on no length, one of those that do not close is shown.
    let both = bounds(&mut triangles.iter()).filter(|(least, most)| least < most);
    match both.or_else(|| bounds(&mut open.into_iter().take(1))) {
        Some((least, most)) => Err(SquareError::DoesNotFit { which, given, least, most }),
        None => Ok(()),
    }
}

fn closes(triangle: &Triangle) -> bool {
    let (which, given) = triangle[0];
    range(triangle, which).is_some_and(|(least, most)| given > least + NOISE && given < most - NOISE)
}

/// What one side of a triangle may be with the two others; none where it is not in it.
fn range(triangle: &Triangle, which: Measurement) -> Option<(Length, Length)> {
    let mut others = triangle.iter().filter(|other| other.0 != which).map(|other| other.1);
    match (others.next(), others.next(), others.next()) {
        (Some(a), Some(b), None) => Some(((a - b).abs(), a + b)),
        _ => None,
    }
}
