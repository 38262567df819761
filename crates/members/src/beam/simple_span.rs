//! The commonest beam of all, without the general solver.

use measure::{FlexuralRigidity, Force, Length, LineLoad, Moment};

/// The results of one span under a uniform load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SimpleSpan {
    /// At each end, positive upward; also the largest shear. `w L / 2`.
    pub reaction: Force,
    /// At the middle, positive sagging. `w L² / 8`.
    pub moment: Moment,
    /// At the middle, positive downward. `5 w L⁴ / (384 E I)`.
    pub deflection: Length,
}

/// One span on two simple supports, the same load all along: the closed forms, for checks that run thousands of times.
///
/// `load` is positive downward. `span` runs from support to support; it and `ei` must be above zero: nothing is checked
/// here, and a caller that has typed values builds a [`Beam`](super::Beam) or checks them first.
///
/// Source: equilibrium and the beam equation; the same as [`Beam::simple_span`](super::Beam::simple_span) with
/// [`Beam::uniform`](super::Beam::uniform).
///
/// ```
/// use measure::{FlexuralRigidity, Length, LineLoad};
/// use members::beam::simple_span_uniform;
///
/// // 10 ft, 100 plf: 500 lb at each end and 1250 ft-lb at the middle.
/// let ei = FlexuralRigidity::from_pound_square_inches(1.0e8);
/// let span = simple_span_uniform(LineLoad::from_plf(100.0), Length::from_feet(10.0), ei);
/// assert_eq!(span.reaction.pounds(), 500.0);
/// assert_eq!(span.moment.foot_pounds(), 1250.0);
/// ```
#[must_use]
pub fn simple_span_uniform(load: LineLoad, span: Length, ei: FlexuralRigidity) -> SimpleSpan {
    let total = load * span;
    let moment = total * span / 8.0;
    // 5 w L⁴ / 384 E I = (w L² / 8) (5 L² / 48 E I).
    let bend = 5.0 * moment.inch_pounds() * span.inches() / (48.0 * ei.pound_square_inches());
    SimpleSpan { reaction: total / 2.0, moment, deflection: span * bend }
}
