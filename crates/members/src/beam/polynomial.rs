//! Polynomials up to the fifth degree and where they change sign.

/// The deflection of a beam under a load that changes in a straight line is of the fifth degree.
const COEFFICIENTS: usize = 6;

/// Steps to close a bracket in: halvings alone would take it from any length to under one unit in the last place.
const MOST_STEPS: usize = 64;

/// Coefficients from the constant up.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Polynomial(pub(super) [f64; COEFFICIENTS]);

impl Polynomial {
    /// Its value at `t`.
    pub(super) fn at(&self, t: f64) -> f64 {
        value(&self.0, t)
    }

    /// Its coefficients but for the zeros at the top, which change no value: most are of a lower degree than the fifth.
    fn terms(&self) -> &[f64] {
        let count = self.0.iter().rposition(|&coefficient| coefficient != 0.0).map_or(0, |last| last + 1);
        &self.0[..count]
    }

    /// Its derivative.
    pub(super) fn derivative(&self) -> Self {
        let mut result = [0.0; COEFFICIENTS];
        let mut power = 0.0;
        for (into, coefficient) in result.iter_mut().zip(&self.0[1..]) {
            power += 1.0;
            *into = coefficient * power;
        }
        Self(result)
    }

    /// Adds so many times another.
    pub(super) fn add(&mut self, times: f64, other: &Self) {
        for (into, coefficient) in self.0.iter_mut().zip(&other.0) {
            *into += times * coefficient;
        }
    }

    /// Every place between 0 and `end` where the sign changes, in order, to the last place of the number.
    ///
    /// Between two neighbouring sign changes of its derivative a polynomial only rises or only falls, so it crosses
    /// zero there once or not at all; each crossing is closed in by Newton's steps, and by halving where such a step
    /// would leave the bracket. A place where it touches zero and turns back is not a crossing and is not given. Where it
    /// is so flat that its value is rounding alone, a crossing may be given more than once, close together.
    pub(super) fn crossings(&self, end: f64) -> Crossings {
        if self.0[1..].iter().all(|&coefficient| coefficient == 0.0) {
            return Crossings::default();
        }
        let derivative = self.derivative();
        let turns = derivative.crossings(end);
        self.crossings_between(&derivative, &turns, end)
    }

    /// The same where its derivative and that one's sign changes are known already.
    pub(super) fn crossings_between(&self, derivative: &Self, turns: &[f64], end: f64) -> Crossings {
        let mut found = Crossings::default();
        let (terms, slopes) = (self.terms(), derivative.terms());
        let (mut low, mut starts_positive) = (0.0, value(terms, 0.0) > 0.0);
        for high in turns.iter().copied().chain([end]) {
            let ends_positive = value(terms, high) > 0.0;
            if starts_positive != ends_positive {
                found.push(closed_in(terms, slopes, (low, high), starts_positive));
            }
            (low, starts_positive) = (high, ends_positive);
        }
        found
    }
}

/// The value at `t` of the polynomial with these coefficients from the constant up.
fn value(terms: &[f64], t: f64) -> f64 {
    terms.iter().rev().fold(0.0, |sum, coefficient| sum * t + coefficient)
}

/// The one place between two where a polynomial with these coefficients crosses zero; `slopes` are its derivative's.
fn closed_in(terms: &[f64], slopes: &[f64], (mut low, mut high): (f64, f64), starts_positive: bool) -> f64 {
    let mut place = match *terms {
        [constant, slope] => return (-constant / slope).clamp(low, high),
        [constant, slope, square] => of_the_square(constant, slope, square, (low, high)),
        _ => 0.5 * (low + high),
    };
    for _ in 0..MOST_STEPS {
        let here = value(terms, place);
        if (here > 0.0) == starts_positive {
            low = place;
        } else {
            high = place;
        }
        let newton = place - here / value(slopes, place);
        let next = if newton > low && newton < high { newton } else { 0.5 * (low + high) };
        if next == place || (next - place).abs() <= f64::EPSILON * high {
            return next;
        }
        place = next;
    }
    place
}

/// The root of a polynomial of the second degree between two places, to be polished; halfway where rounding hides it.
fn of_the_square(constant: f64, slope: f64, square: f64, (low, high): (f64, f64)) -> f64 {
    let root = (slope * slope - 4.0 * square * constant).max(0.0).sqrt();
    // The sum of two numbers of one sign: no digits are lost.
    let sum = -0.5 * (slope + root.copysign(slope));
    let inside = |place: &f64| *place >= low && *place <= high;
    [sum / square, constant / sum].into_iter().find(inside).unwrap_or(0.5 * (low + high))
}

/// Places where a polynomial crosses zero, from left to right. One of the fifth degree has five at most.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Crossings {
    places: [f64; COEFFICIENTS],
    count: usize,
}

impl Crossings {
    fn push(&mut self, place: f64) {
        self.places[self.count] = place;
        self.count += 1;
    }
}

impl core::ops::Deref for Crossings {
    type Target = [f64];

    fn deref(&self) -> &[f64] {
        &self.places[..self.count]
    }
}

#[cfg(test)]
mod tests {
    use super::Polynomial;

    #[track_caller]
    fn check(coefficients: [f64; 6], end: f64, expected: &[f64]) {
        let found = Polynomial(coefficients).crossings(end);
        assert_eq!(found.len(), expected.len(), "found {found:?}, expected {expected:?}");
        for (one, other) in found.iter().zip(expected) {
            assert!((one - other).abs() <= 1e-12, "found {found:?}, expected {expected:?}");
        }
    }

    #[test]
    fn crossings_of_known_roots_are_found() {
        check([-3.0, 2.0, 0.0, 0.0, 0.0, 0.0], 5.0, &[1.5]);
        check([2.0, -3.0, 1.0, 0.0, 0.0, 0.0], 5.0, &[1.0, 2.0]);
        // (t - 1)(t - 2)(t - 3)(t - 4)
        check([24.0, -50.0, 35.0, -10.0, 1.0, 0.0], 5.0, &[1.0, 2.0, 3.0, 4.0]);
        check([24.0, -50.0, 35.0, -10.0, 1.0, 0.0], 2.5, &[1.0, 2.0]);
    }

    #[test]
    fn what_turns_back_before_zero_does_not_cross() {
        check([1.25, -2.0, 1.0, 0.0, 0.0, 0.0], 2.0, &[]);
        check([1.0, 0.0, 0.0, 0.0, 0.0, 0.0], 2.0, &[]);
    }

    #[test]
    fn a_triple_root_is_found_where_rounding_lets_it() {
        let cubed = Polynomial([-1.0, 3.0, -3.0, 1.0, 0.0, 0.0]);
        let found = cubed.crossings(2.0);
        assert!(found.len() % 2 == 1, "the sign changes from one end to the other: {found:?}");
        assert!(found.iter().all(|&t| cubed.at(t).abs() < 1e-15), "{found:?}");
    }

    #[test]
    fn the_derivative_lowers_each_power() {
        let derived = Polynomial([7.0, 1.0, 2.0, 3.0, 4.0, 5.0]).derivative();
        assert_eq!(derived, Polynomial([1.0, 4.0, 9.0, 16.0, 25.0, 0.0]));
    }
}
