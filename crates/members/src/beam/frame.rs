//! Finds the moments over the supports, and with them the state in which each stretch starts.
//!
//! The unknowns are the rotations over the supports (slope-deflection): the moments that meet at a simple support
//! balance. Each run is first carried from rest, a *probe*, to learn what its loads alone do; everything else is linear
//! in where it starts. Overhangs are found by statics alone, so a short one costs no digits.

use super::model::{Restraint, Support};
use super::segment::{State, carry};
use super::strips::Strip;

/// A span or an overhang. One without strips is an overhang that is not there.
struct Run<'a> {
    strips: &'a [Strip],
    length: f64,
    /// The state at its right end if it starts from rest.
    probe: State,
}

/// A span or an overhang, ready to be carried along.
pub(super) struct Leg<'a> {
    pub(super) strips: &'a [Strip],
    pub(super) start: State,
    pub(super) end_moment: f64,
    /// Nothing at a free end: it goes where the beam takes it.
    pub(super) end_deflection: Option<f64>,
}

/// The bending moments just left and just right of a support.
#[derive(Clone, Copy)]
struct SupportMoments {
    left: f64,
    right: f64,
}

/// The loaded beam taken apart at its supports: the left overhang, the spans, the right overhang.
pub(super) struct Frame<'a> {
    supports: &'a [Support],
    /// The strip that starts at each support: it holds what acts right on the support.
    joints: Vec<&'a Strip>,
    left: Run<'a>,
    spans: Vec<Run<'a>>,
    right: Run<'a>,
    /// Shear and moment at the left overhang's free end.
    left_end: State,
    /// Shear and moment at the right overhang's free end.
    right_end: State,
    /// Shear and moment where the right overhang starts.
    right_start: State,
}

impl<'a> Run<'a> {
    fn new(strips: &'a [Strip], start: State) -> Self {
        let length = match strips {
            [] => 0.0,
            [only] => only.end - only.start,
            [first, .., last] => last.end - first.start,
        };
        Self { strips, length, probe: carry(strips, start).1 }
    }

    /// The moment at its left end under its loads with both ends fixed.
    fn fixed_end_left(&self) -> f64 {
        (6.0 * self.probe.deflection / self.length - 2.0 * self.probe.slope) / self.length
    }

    /// The moment at its right end under its loads with both ends fixed.
    fn fixed_end_right(&self) -> f64 {
        self.probe.moment + (4.0 * self.probe.slope - 6.0 * self.probe.deflection / self.length) / self.length
    }
}

impl<'a> Frame<'a> {
    /// Every support must stand where a strip starts, from left to right, and there must be one at least.
    pub(super) fn new(supports: &'a [Support], strips: &'a [Strip]) -> Self {
        let is_joint = |strip: &Strip| supports.iter().any(|support| support.at.inches() == strip.start);
        let marks: Vec<usize> = (0..strips.len()).filter(|&index| is_joint(&strips[index])).collect();
        let (first, last, end) = (marks[0], marks[marks.len() - 1], strips.len() - 1);
        let left_end =
            if first > 0 { State::default().past(strips[0].force, strips[0].couple) } else { State::default() };
        let spans = marks.windows(2).map(|pair| Run::new(&strips[pair[0]..pair[1]], State::default())).collect();
        let right = Run::new(&strips[last..end], State::default());
        // Statics: from what acts at the overhang's free end to the support.
        let right_end =
            if last < end { State::default().past(-strips[end].force, -strips[end].couple) } else { State::default() };
        let shear = right_end.shear - right.probe.shear;
        let moment = right_end.moment - shear * right.length - right.probe.moment;
        Self {
            supports,
            joints: marks.iter().map(|&mark| &strips[mark]).collect(),
            left: Run::new(&strips[..first], left_end),
            spans,
            right,
            left_end,
            right_end,
            right_start: State { shear, moment, ..State::default() },
        }
    }

    /// What acts right on each support, in their order.
    pub(super) fn joints(&self) -> &[&'a Strip] {
        &self.joints
    }

    /// The left overhang, the spans and the right overhang, each with where it starts and what is known of its end.
    pub(super) fn legs(&self) -> Vec<Leg<'a>> {
        let rotations = self.rotations();
        let moments = self.support_moments(&rotations);
        let slope = rotations[0] - self.left.probe.slope;
        let deflection = -(slope * self.left.length + self.left.probe.deflection);
        let mut legs = vec![Leg {
            strips: self.left.strips,
            start: State { slope, deflection, ..self.left_end },
            end_moment: moments[0].left,
            end_deflection: Some(0.0),
        }];
        for (index, span) in self.spans.iter().enumerate() {
            let (moment, end_moment) = (moments[index].right, moments[index + 1].left);
            let shear = (end_moment - moment - span.probe.moment) / span.length;
            let start = State { shear, moment, slope: rotations[index], deflection: 0.0 };
            legs.push(Leg { strips: span.strips, start, end_moment, end_deflection: Some(0.0) });
        }
        legs.push(Leg {
            strips: self.right.strips,
            start: State { slope: rotations[self.spans.len()], ..self.right_start },
            end_moment: self.right_end.moment,
            end_deflection: None,
        });
        legs
    }

    fn is_fixed(&self, index: usize) -> bool {
        self.supports[index].restraint == Restraint::Fixed
    }

    /// The rotation over each support, times `EI`.
    fn rotations(&self) -> Vec<f64> {
        let count = self.supports.len();
        let (mut diagonal, mut right_side) = (vec![0.0; count], vec![0.0; count]);
        for (index, joint) in self.joints.iter().enumerate() {
            right_side[index] += joint.couple;
        }
        right_side[0] += self.left.probe.moment;
        right_side[count - 1] -= self.right_start.moment;
        for (index, span) in self.spans.iter().enumerate() {
            diagonal[index] += 4.0 / span.length;
            diagonal[index + 1] += 4.0 / span.length;
            right_side[index] -= span.fixed_end_left();
            right_side[index + 1] += span.fixed_end_right();
        }
        for index in (0..count).filter(|&index| self.is_fixed(index)) {
            (diagonal[index], right_side[index]) = (1.0, 0.0);
        }
        let touches_fixed = |index: usize| self.is_fixed(index) || self.is_fixed(index + 1);
        let coupling = |(index, span): (usize, &Run)| if touches_fixed(index) { 0.0 } else { 2.0 / span.length };
        let beside: Vec<f64> = self.spans.iter().enumerate().map(coupling).collect();
        solve_tridiagonal(diagonal, &beside, right_side)
    }

    fn support_moments(&self, rotations: &[f64]) -> Vec<SupportMoments> {
        let last = self.spans.len();
        let left_of = |index: usize| match index.checked_sub(1).map(|before| (&self.spans[before], rotations[before])) {
            Some((span, before)) => span.fixed_end_right() - (2.0 * before + 4.0 * rotations[index]) / span.length,
            None => self.left.probe.moment,
        };
        let right_of = |index: usize| match self.spans.get(index) {
            Some(span) => span.fixed_end_left() + (4.0 * rotations[index] + 2.0 * rotations[index + 1]) / span.length,
            None => self.right_start.moment,
        };
        let moments = |index: usize| {
            let couple = self.joints[index].couple;
            if self.is_fixed(index) {
                return SupportMoments { left: left_of(index), right: right_of(index) };
            }
            // Where the beam may turn the two differ by the couple alone: take the side that statics gives, if one
            // does.
            if index == last {
                let right = right_of(index);
                return SupportMoments { left: right - couple, right };
            }
            let left = left_of(index);
            SupportMoments { left, right: left + couple }
        };
        (0..=last).map(moments).collect()
    }
}

/// Solves a symmetric system whose matrix has a diagonal and one line beside it.
///
/// Over each simple support the diagonal is at least twice the sum of what stands beside it (4/L against 2/L), so
/// elimination in order is stable and needs no pivoting.
fn solve_tridiagonal(mut diagonal: Vec<f64>, beside: &[f64], mut right_side: Vec<f64>) -> Vec<f64> {
    for (index, &coupling) in beside.iter().enumerate() {
        let factor = coupling / diagonal[index];
        diagonal[index + 1] -= factor * coupling;
        right_side[index + 1] -= factor * right_side[index];
    }
    for index in (0..diagonal.len()).rev() {
        let known = beside.get(index).map_or(0.0, |coupling| coupling * right_side[index + 1]);
        right_side[index] = (right_side[index] - known) / diagonal[index];
    }
    right_side
}

#[cfg(test)]
mod tests {
    use super::solve_tridiagonal;

    #[test]
    fn a_small_system_is_solved() {
        // [4 2 0; 2 8 2; 0 2 4] applied to (1, -2, 3).
        let found = solve_tridiagonal(vec![4.0, 8.0, 4.0], &[2.0, 2.0], vec![0.0, -8.0, 8.0]);
        for (one, expected) in found.iter().zip([1.0, -2.0, 3.0]) {
            assert!((one - expected).abs() < 1e-14, "{found:?}");
        }
    }
}
