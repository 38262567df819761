//! Loads on a beam.

use measure::{Force, Length, LineLoad, Moment};

use super::BeamError;

/// How far past an end, as a share of the beam's length, a position is still the end: the rounding of a sum of lengths,
/// far below any mark on a tape.
const END_ROUNDING: f64 = 1e-9;

/// One load on a beam. Forces are positive downward, moments positive clockwise; both may be negative (uplift).
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Load {
    /// A force at a point: a post, a beam that bears on this one.
    Point {
        /// Where, from the beam's left end.
        at: Length,
        /// Its size, positive downward.
        force: Force,
    },
    /// A moment at a point: a guard post's base, a bracket.
    Couple {
        /// Where, from the beam's left end.
        at: Length,
        /// Its size, positive clockwise.
        moment: Moment,
    },
    /// A load over a part of the beam, even or changing in a straight line: a floor, a hip's triangle.
    Distributed {
        /// Where it starts, from the beam's left end.
        from: Length,
        /// Where it ends, from the beam's left end.
        to: Length,
        /// Its size where it starts, positive downward.
        start: LineLoad,
        /// Its size where it ends, positive downward.
        end: LineLoad,
    },
}

/// A load in inches and pounds, known to lie on the beam.
#[derive(Clone, Copy, Debug)]
pub(super) enum PlacedLoad {
    Point { at: f64, force: f64 },
    Couple { at: f64, moment: f64 },
    Distributed { from: f64, to: f64, start: f64, end: f64 },
}

impl Load {
    /// A force at a point, positive downward.
    #[must_use]
    pub const fn point(at: Length, force: Force) -> Self {
        Self::Point { at, force }
    }

    /// A moment at a point, positive clockwise.
    #[must_use]
    pub const fn couple(at: Length, moment: Moment) -> Self {
        Self::Couple { at, moment }
    }

    /// The same load per length over a part of the beam, positive downward.
    #[must_use]
    pub const fn uniform(from: Length, to: Length, load: LineLoad) -> Self {
        Self::Distributed { from, to, start: load, end: load }
    }

    /// A load that changes in a straight line over a part of the beam, positive downward. A zero at one end makes a
    /// triangle.
    #[must_use]
    pub const fn linear(from: Length, to: Length, start: LineLoad, end: LineLoad) -> Self {
        Self::Distributed { from, to, start, end }
    }

    /// The load on a beam of this length; `number` is only for the words of a refusal.
    pub(super) fn placed(&self, number: usize, length: Length) -> Result<PlacedLoad, BeamError> {
        let place = |at| on_beam(at, length).ok_or(BeamError::LoadOffBeam { number, at, length });
        match *self {
            Self::Point { at, force } => {
                let force = finite(force.pounds(), "force of a load")?;
                Ok(PlacedLoad::Point { at: place(at)?, force })
            }
            Self::Couple { at, moment } => {
                let moment = finite(moment.inch_pounds(), "moment of a load")?;
                Ok(PlacedLoad::Couple { at: place(at)?, moment })
            }
            Self::Distributed { from, to, start, end } => {
                let start = finite(start.pounds_per_inch(), "load per length")?;
                let end = finite(end.pounds_per_inch(), "load per length")?;
                let (left, right) = (place(from)?, place(to)?);
                if left >= right {
                    return Err(BeamError::LoadWithoutLength { number, from, to });
                }
                Ok(PlacedLoad::Distributed { from: left, to: right, start, end })
            }
        }
    }
}

pub(super) fn finite(value: f64, what: &'static str) -> Result<f64, BeamError> {
    if value.is_finite() { Ok(value) } else { Err(BeamError::NotFinite { what }) }
}

/// The position in inches, or `None` off the beam.
pub(super) fn on_beam(at: Length, length: Length) -> Option<f64> {
    let (position, end) = (at.inches(), length.inches());
    let slack = end * END_ROUNDING;
    (-slack..=end + slack).contains(&position).then(|| position.clamp(0.0, end))
}
