//! Polynomials up to the fifth degree and where they change sign.

/// The deflection of a beam under a load that changes in a straight line is of the fifth degree.
const COEFFICIENTS: usize = 6;

/// Halvings of a bracket: enough to take it from any length to under one unit in the last place.
const HALVINGS: usize = 64;

/// Coefficients from the constant up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Polynomial(pub(super) [f64; COEFFICIENTS]);

impl Polynomial {
    /// Its value at `t`.
    pub(super) fn at(&self, t: f64) -> f64 {
        self.0.iter().rev().fold(0.0, |sum, coefficient| sum * t + coefficient)
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

    /// Every place between 0 and `end` where the sign changes, in order, to the last place of the number.
    ///
    /// Between two neighbouring sign changes of its derivative a polynomial only rises or only falls, so it crosses
    /// zero there once or not at all; each crossing is closed in by halving. A place where it touches zero and turns
    /// back is not a crossing and is not given. Where it is so flat that its value is rounding alone, a crossing may be
    /// given more than once, close together.
    pub(super) fn crossings(&self, end: f64) -> Vec<f64> {
        if self.0[1..].iter().all(|&coefficient| coefficient == 0.0) {
            return Vec::new();
        }
        let mut marks = vec![0.0];
        marks.extend(self.derivative().crossings(end));
        marks.push(end);
        marks.windows(2).filter_map(|pair| self.crossing_between(pair[0], pair[1])).collect()
    }

    fn crossing_between(&self, mut low: f64, mut high: f64) -> Option<f64> {
        let starts_positive = self.at(low) > 0.0;
        if starts_positive == (self.at(high) > 0.0) {
            return None;
        }
        for _ in 0..HALVINGS {
            let middle = 0.5 * (low + high);
            if (self.at(middle) > 0.0) == starts_positive {
                low = middle;
            } else {
                high = middle;
            }
        }
        Some(0.5 * (low + high))
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
