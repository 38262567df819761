//! One piece of the beam in which nothing changes but by polynomial.
//!
//! Inches and pounds throughout; slope and deflection are held times `EI`, so that stiffness enters only at the end.

use super::polynomial::Polynomial;
use super::strips::Strip;

/// Two ends, one turn of a straight shear, two of a parabola, four of a slope of the fourth degree; and room for a place
/// that rounding gives twice.
const MOST_TURNS: usize = 20;

/// A turn so near an end, as a share of the length, is the end: what is known there is not lost to rounding.
const AT_AN_END: f64 = 1e-12;

/// What goes on inside the beam at one place.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct State {
    pub(super) shear: f64,
    pub(super) moment: f64,
    pub(super) slope: f64,
    pub(super) deflection: f64,
}

impl State {
    /// Just past a force (down) and a moment (clockwise) that act at this place.
    pub(super) fn past(self, force: f64, moment: f64) -> Self {
        Self { shear: self.shear - force, moment: self.moment + moment, ..self }
    }

    /// The largest of its numbers, without signs, at a stiffness; infinite if one of them is not a number.
    pub(super) fn largest_part(&self, stiffness: f64) -> f64 {
        let parts = [self.shear, self.moment, self.slope / stiffness, self.deflection / stiffness];
        parts.iter().map(|part| if part.is_finite() { part.abs() } else { f64::INFINITY }).fold(0.0, f64::max)
    }
}

/// Of what the extremes are asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Bent {
    /// The bending moment.
    Moment,
    /// The deflection, times `EI`.
    Deflection,
}

/// A piece of the beam between two neighbouring places where a load or a support starts, ends or acts.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Segment {
    pub(super) start: f64,
    pub(super) end: f64,
    deflection: Polynomial,
    slope: Polynomial,
    moment: Polynomial,
    shear: Polynomial,
    /// The state just left of its end.
    last: State,
}

impl Segment {
    /// The strip, with `state` just right of its start.
    pub(super) fn new(strip: &Strip, state: State) -> Self {
        // From EI y'''' = q, y downward: EI y'' = -M, M' = V, V' = -q.
        let deflection = Polynomial([
            state.deflection,
            state.slope,
            -state.moment / 2.0,
            -state.shear / 6.0,
            strip.intensity / 24.0,
            strip.gradient / 120.0,
        ]);
        let moment = Polynomial([state.moment, state.shear, -strip.intensity / 2.0, -strip.gradient / 6.0, 0.0, 0.0]);
        let (slope, shear) = (deflection.derivative(), moment.derivative());
        let (start, end) = (strip.start, strip.end);
        let mut segment = Self { start, end, deflection, slope, moment, shear, last: state };
        segment.last = segment.inside(end - start);
        segment
    }

    pub(super) fn length(&self) -> f64 {
        self.end - self.start
    }

    /// Replaces what the polynomials give at its end by what is known there, so that a beam does not hog or rise by
    /// rounding where it rests.
    pub(super) fn close(&mut self, moment: f64, deflection: Option<f64>) {
        self.last.moment = moment;
        self.last.deflection = deflection.unwrap_or(self.last.deflection);
    }

    /// The state at a distance from the segment's own start.
    pub(super) fn state(&self, t: f64) -> State {
        if t < self.length() { self.inside(t) } else { self.last }
    }

    fn inside(&self, t: f64) -> State {
        State {
            shear: self.shear.at(t),
            moment: self.moment.at(t),
            slope: self.slope.at(t),
            deflection: self.deflection.at(t),
        }
    }

    /// From the segment's own start: its two ends and each place inside where shear, moment or deflection may turn.
    pub(super) fn turning_points(&self) -> impl Iterator<Item = f64> {
        let (mut places, mut count) = ([0.0; MOST_TURNS], 2);
        places[1] = self.length();
        let at_an_end = self.length() * AT_AN_END;
        let inside = at_an_end..self.length() - at_an_end;
        // Each is the next one's derivative, but for a sign; the moment's crossings only lead to the slope's.
        let end = self.length();
        let load = self.shear.derivative();
        let loads = load.crossings(end);
        let shears = self.shear.crossings_between(&load, &loads, end);
        let moments = self.moment.crossings_between(&self.shear, &shears, end);
        let slopes = self.slope.crossings_between(&self.slope.derivative(), &moments, end);
        for turns in [loads, shears, slopes] {
            for turn in turns.iter().filter(|turn| inside.contains(turn)) {
                places[count] = *turn;
                count += 1;
            }
        }
        places[..count].sort_unstable_by(f64::total_cmp);
        places.into_iter().take(count)
    }

    /// In a sum of what goes on in one piece under several loads: the value of what is bent to, at both ends and where it
    /// turns inside, each with its distance from the piece's start.
    pub(super) fn values_of_sum<'s>(
        parts: impl IntoIterator<Item = (f64, &'s Self)>,
        of: Bent,
    ) -> impl Iterator<Item = (f64, f64)> {
        let (mut sum, mut last, mut length) = (Polynomial::default(), 0.0, 0.0);
        for (times, part) in parts {
            let (polynomial, at_end) = match of {
                Bent::Moment => (&part.moment, part.last.moment),
                Bent::Deflection => (&part.deflection, part.last.deflection),
            };
            sum.add(times, polynomial);
            last += times * at_end;
            length = part.length();
        }
        let turns = sum.derivative().crossings(length);
        let at_an_end = length * AT_AN_END;
        let mut values = [(0.0, sum.at(0.0)); MOST_TURNS];
        let mut count = 1;
        for turn in turns.iter().filter(|turn| **turn > at_an_end && **turn < length - at_an_end) {
            values[count] = (*turn, sum.at(*turn));
            count += 1;
        }
        values[count] = (length, last);
        values.into_iter().take(count + 1)
    }

    /// Adds so many times what goes on in the same piece under other loads.
    pub(super) fn add(&mut self, times: f64, other: &Self) {
        self.deflection.add(times, &other.deflection);
        self.slope.add(times, &other.slope);
        self.moment.add(times, &other.moment);
        self.shear.add(times, &other.shear);
        self.last.shear += times * other.last.shear;
        self.last.moment += times * other.last.moment;
        self.last.slope += times * other.last.slope;
        self.last.deflection += times * other.last.deflection;
    }
}

/// Carries a state from the left end of neighbouring strips to their right end. What acts at the very start is taken to
/// be in `start` already.
pub(super) fn carry(strips: &[Strip], start: State) -> (Vec<Segment>, State) {
    let mut state = start;
    let mut segments = Vec::with_capacity(strips.len());
    for (index, strip) in strips.iter().enumerate() {
        if index > 0 {
            state = state.past(strip.force, strip.couple);
        }
        let segment = Segment::new(strip, state);
        state = segment.last;
        segments.push(segment);
    }
    (segments, state)
}
