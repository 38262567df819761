//! Six measurements of four corners: five decide, the sixth shows whether they fit.

use measure::Length;

use super::error::SquareError;
use super::four_sided::{FourSided, Known, four_sided};
use super::impossible::all_close;
use super::measured::{Measurement, Sides};

/// What one measurement would have to be for the other five to fit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fit {
    /// Which one.
    pub which: Measurement,
    /// What was measured.
    pub measured: Length,
    /// What the other five ask for.
    pub needed: Length,
    /// The change: longer above zero.
    pub change: Length,
    /// Whether the change is a whole inch or a foot, to an eighth: a slip of the tape.
    pub slip: bool,
}

/// How well six measurements fit.
#[derive(Clone, Debug, PartialEq)]
pub struct Closing {
    /// The corners by the sides and diagonal A to C.
    pub by_ac: FourSided,
    /// Measured less computed, of diagonal B to D: the closing error.
    pub error: Length,
    /// Whether that is no more than what was allowed.
    pub fits: bool,
    /// Each measurement with what it would have to be; slips first, then the smallest change. Those that the other five
    /// cannot mend are left out.
    pub fit: Vec<Fit>,
}

/// A change this near to a whole inch or foot may be a slip; our own choice.
const SLIP: Length = Length::from_inches(0.125);

/// Holds four sides and both diagonals against each other.
///
/// Which of six is wrong cannot be known from them alone: each is shown with what it would have to be.
///
/// Source: geometry.
///
/// # Errors
/// As [`four_sided`]: where a diagonal cannot belong to the sides, the one that does not fit is named.
pub fn closing(sides: &Sides, ac: Length, bd: Length, allowed: Length) -> Result<Closing, SquareError> {
    all_close(sides, ac, bd)?;
    let by_ac = four_sided(sides, Known::Ac(ac))?;
    let error = bd - by_ac.bd;
    let fits = error.abs() <= allowed.abs();
    Ok(Closing { by_ac, error, fits, fit: fit(sides, ac, bd) })
}

fn fit(sides: &Sides, ac: Length, bd: Length) -> Vec<Fit> {
    let Sides { ab, bc, cd, da } = *sides;
    // Two corners whose distance is looked for, each with its distances to the two others, and those two's own.
    let rows = [
        (Measurement::Ab, ab, [da, ac], [bd, bc], cd, Side::Same),
        (Measurement::Bc, bc, [bd, ab], [cd, ac], da, Side::Same),
        (Measurement::Cd, cd, [bc, ac], [bd, da], ab, Side::Same),
        (Measurement::Da, da, [cd, bd], [ac, ab], bc, Side::Same),
        (Measurement::Ac, ac, [ab, da], [bc, cd], bd, Side::Opposite),
        (Measurement::Bd, bd, [ab, bc], [da, cd], ac, Side::Opposite),
    ];
    let of =
        |(which, measured, one, other, base, side): (Measurement, Length, [Length; 2], [Length; 2], Length, Side)| {
            let needed = apart(one, other, base, side)?;
            let change = needed - measured;
            Some(Fit { which, measured, needed, change, slip: is_slip(change) })
        };
    let mut found: Vec<Fit> = rows.into_iter().filter_map(of).collect();
    let key = |fit: &Fit| (!fit.slip, fit.change.abs().inches());
    found.sort_by(|a, b| key(a).0.cmp(&key(b).0).then(key(a).1.total_cmp(&key(b).1)));
    found
}

#[derive(Clone, Copy)]
enum Side {
    Same,
    Opposite,
}

/// How far apart two corners are that are each so far from both ends of a base: on the same side of it or not. None where the
/// lengths do not close.
fn apart(one: [Length; 2], other: [Length; 2], base: Length, side: Side) -> Option<Length> {
    let place = |[from, to]: [Length; 2]| {
        let along = (from * from - to * to + base * base) / (base * 2.0);
        let away = (from * from - along * along).square_inches();
        (away >= 0.0).then(|| (along, Length::from_inches(away.sqrt())))
    };
    let ((along, away), (other_along, other_away)) = (place(one)?, place(other)?);
    let across = match side {
        Side::Same => away - other_away,
        Side::Opposite => away + other_away,
    };
    Some(super::diagonal::third_side(along - other_along, across))
}

fn is_slip(change: Length) -> bool {
    [1.0, 12.0].into_iter().any(|inches| (change.abs() - Length::from_inches(inches)).abs() <= SLIP)
}
