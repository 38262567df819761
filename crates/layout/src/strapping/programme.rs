//! A linear programme in four unknowns, solved in whole numbers: the plane that asks for the least shim.
//!
//! Asked is the `y` that makes `toward · y` greatest under every constraint `row · y ≤ most`. A corner is where four
//! constraints hold as equalities. The method is the simplex method on the dual: from a corner of four constraints whose
//! mix gives `toward`, the constraint that is broken most takes the place of the one that gives way first, until none is
//! broken. When a step does not move, Bland's rule (the first broken constraint, and the first that gives way) leads on,
//! so that no corner comes twice and the search ends. Each step looks once at every constraint.
//!
//! All numbers are whole, and a corner is a quotient of determinants (Cramer's rule): nothing is rounded, and nothing
//! depends on the machine. With entries to 2²³ and costs to 2²⁵ no product here passes 2¹¹².
//!
//! Source: the revised simplex method and Bland's rule, as in any textbook of linear programming, from memory.

/// Unknowns.
pub(super) const UNKNOWNS: usize = 4;
/// Far more steps than 7,204 constraints were seen to take; a guard against a mistake, not a limit of the method.
const STEPS: usize = 100_000;

type Row = [i128; UNKNOWNS];

/// `row · y ≤ most`.
#[derive(Clone, Copy, Debug)]
pub(super) struct Constraint {
    pub row: Row,
    pub most: i128,
}

/// The best corner: `y` is `top` over `bottom`, which is above zero.
#[derive(Clone, Copy, Debug)]
pub(super) struct Corner {
    pub top: Row,
    pub bottom: i128,
}

/// The corner that makes `toward · y` greatest, from a first choice of four constraints whose mix, none taken less than
/// nothing, gives `toward`. None where that choice is no such corner.
pub(super) fn greatest(toward: Row, constraints: &[Constraint], start: [usize; UNKNOWNS]) -> Option<Corner> {
    let mut chosen = start;
    let mut first_broken = false;
    for _ in 0..STEPS {
        let corner = Chosen::of(constraints, chosen)?;
        let Some(enters) = broken(constraints, &corner, first_broken) else {
            return Some(Corner { top: corner.prices(), bottom: corner.bottom });
        };
        let shares = corner.mix(toward);
        let leaves = gives_way(shares, corner.mix(constraints.get(enters)?.row), chosen)?;
        first_broken = shares[leaves] == 0;
        chosen[leaves] = enters;
    }
    None
}

/// Four chosen constraints and the inverse of their rows, over one bottom.
struct Chosen {
    inverse: [Row; UNKNOWNS],
    bottom: i128,
    most: Row,
}

impl Chosen {
    fn of(constraints: &[Constraint], chosen: [usize; UNKNOWNS]) -> Option<Self> {
        let mut rows = [[0; UNKNOWNS]; UNKNOWNS];
        let mut most = [0; UNKNOWNS];
        for (place, index) in chosen.into_iter().enumerate() {
            let constraint = constraints.get(index)?;
            rows[place] = constraint.row;
            most[place] = constraint.most;
        }
        let (mut inverse, mut bottom) = adjugate(&rows);
        if bottom == 0 {
            return None;
        }
        if bottom < 0 {
            bottom = -bottom;
            inverse = inverse.map(|row| row.map(|entry| -entry));
        }
        Some(Self { inverse, bottom, most })
    }

    /// `y` at the corner, over the bottom.
    fn prices(&self) -> Row {
        self.inverse.map(|row| dot(row, self.most))
    }

    /// How much of each chosen constraint makes this row together, over the bottom.
    fn mix(&self, row: Row) -> Row {
        core::array::from_fn(|place| (0..UNKNOWNS).map(|at| row[at] * self.inverse[at][place]).sum())
    }
}

/// The constraint that the corner breaks most, or the first of those it breaks.
fn broken(constraints: &[Constraint], corner: &Chosen, first: bool) -> Option<usize> {
    let prices = corner.prices();
    let left = |constraint: &Constraint| constraint.most * corner.bottom - dot(constraint.row, prices);
    let mut broken = constraints.iter().map(left).enumerate().filter(|(_, left)| *left < 0);
    if first { broken.next() } else { broken.min_by_key(|(_, left)| *left) }.map(|(index, _)| index)
}

/// Which of the four reaches nothing first when the new one is taken in; of several the one that stands first.
fn gives_way(shares: Row, falls: Row, chosen: [usize; UNKNOWNS]) -> Option<usize> {
    let sooner = |one: usize, other: usize| {
        let (left, right) = (shares[one] * falls[other], shares[other] * falls[one]);
        left.cmp(&right).then(chosen[one].cmp(&chosen[other]))
    };
    (0..UNKNOWNS).filter(|place| falls[*place] > 0).min_by(|one, other| sooner(*one, *other))
}

fn dot(left: Row, right: Row) -> i128 {
    left.into_iter().zip(right).map(|(left, right)| left * right).sum()
}

/// Adjugate and determinant: the inverse is one over the other.
fn adjugate(rows: &[Row; UNKNOWNS]) -> ([Row; UNKNOWNS], i128) {
    let inverse: [Row; UNKNOWNS] = core::array::from_fn(|at| core::array::from_fn(|place| cofactor(rows, place, at)));
    let bottom = (0..UNKNOWNS).map(|at| rows[0][at] * inverse[at][0]).sum();
    (inverse, bottom)
}

/// The determinant of what is left without this row and column, with the sign of its place.
fn cofactor(rows: &[Row; UNKNOWNS], row: usize, column: usize) -> i128 {
    let others = |left_out: usize| core::array::from_fn::<usize, 3, _>(|at| if at < left_out { at } else { at + 1 });
    let ([a, b, c], [i, j, k]) = (others(row), others(column));
    let minor = rows[a][i] * (rows[b][j] * rows[c][k] - rows[b][k] * rows[c][j])
        - rows[a][j] * (rows[b][i] * rows[c][k] - rows[b][k] * rows[c][i])
        + rows[a][k] * (rows[b][i] * rows[c][j] - rows[b][j] * rows[c][i]);
    if (row + column).is_multiple_of(2) { minor } else { -minor }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn constraint(row: Row, most: i128) -> Constraint {
        Constraint { row, most }
    }

    /// Arithmetic: under x ≤ 4, y ≤ 6 and 3x + 2y ≤ 18 the greatest of 3x + 5y is 36, at x = 2, y = 6: the product-mix
    /// example of the textbooks, from memory, and checked by its three corners.
    #[test]
    fn the_textbooks_three_limits() {
        let constraints = [
            constraint([1, 0, 0, 0], 4),
            constraint([0, 1, 0, 0], 6),
            constraint([3, 2, 0, 0], 18),
            constraint([0, 0, 1, 0], 0),
            constraint([0, 0, 0, 1], 0),
        ];
        let found = greatest([3, 5, 0, 0], &constraints, [0, 1, 3, 4]).map(|corner| (corner.top, corner.bottom));
        assert_eq!(found, Some(([6, 18, 0, 0], 3)));
    }

    #[test]
    fn four_that_make_no_corner_are_none() {
        let twice = [constraint([1, 0, 0, 0], 4); 4];
        assert!(greatest([1, 0, 0, 0], &twice, [0, 1, 2, 3]).is_none());
    }
}
