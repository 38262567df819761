//! The beam: where it is held, how long it is, how stiff.

use measure::{FlexuralRigidity, Length, LineLoad};

use super::load::finite;
use super::{BeamError, Load, Solution, solve};

/// What a support holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Restraint {
    /// Up and down only; the beam may turn: a wall, a post, a hanger.
    Simple,
    /// Up, down and against turning: built in.
    Fixed,
}

/// A place where the beam is held.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Support {
    /// Where, from the beam's left end.
    pub at: Length,
    /// What it holds.
    pub restraint: Restraint,
}

impl Support {
    /// A support that lets the beam turn.
    #[must_use]
    pub const fn simple(at: Length) -> Self {
        Self { at, restraint: Restraint::Simple }
    }

    /// A support that holds the beam against turning.
    #[must_use]
    pub const fn fixed(at: Length) -> Self {
        Self { at, restraint: Restraint::Fixed }
    }
}

/// A straight beam of one stiffness over its whole length, on supports that do not settle.
///
/// What sticks out past the first or the last support is an overhang.
#[derive(Clone, Debug, PartialEq)]
pub struct Beam {
    supports: Vec<Support>,
    length: Length,
    ei: FlexuralRigidity,
}

impl Beam {
    /// A beam on simple supports at the places given, from left to right.
    ///
    /// # Errors
    /// As [`Beam::with_supports`].
    pub fn new(supports: &[Length], length: Length, ei: FlexuralRigidity) -> Result<Self, BeamError> {
        Self::with_supports(supports.iter().map(|&at| Support::simple(at)).collect(), length, ei)
    }

    /// A beam on the supports given, from left to right.
    ///
    /// # Errors
    /// [`BeamError`] when the length or the stiffness is not above zero, when a support is off the beam or not to the
    /// right of the one before it, or when the supports are too few to hold the beam: two simple supports, or
    /// one fixed, are the least.
    pub fn with_supports(supports: Vec<Support>, length: Length, ei: FlexuralRigidity) -> Result<Self, BeamError> {
        if finite(length.inches(), "length of the beam")? <= 0.0 {
            return Err(BeamError::LengthNotPositive { given: length });
        }
        if finite(ei.pound_square_inches(), "stiffness of the beam")? <= 0.0 {
            return Err(BeamError::StiffnessNotPositive { given: ei });
        }
        check_supports(&supports, length)?;
        Ok(Self { supports, length, ei })
    }

    /// One span with a simple support at each end.
    ///
    /// # Errors
    /// [`BeamError`] when the span or the stiffness is not above zero.
    pub fn simple_span(span: Length, ei: FlexuralRigidity) -> Result<Self, BeamError> {
        Self::new(&[Length::ZERO, span], span, ei)
    }

    /// Where the beam is held, from left to right.
    #[must_use]
    pub fn supports(&self) -> &[Support] {
        &self.supports
    }

    /// From end to end.
    #[must_use]
    pub const fn length(&self) -> Length {
        self.length
    }

    /// Its flexural rigidity `EI`.
    #[must_use]
    pub const fn ei(&self) -> FlexuralRigidity {
        self.ei
    }

    /// The same load per length from end to end, positive downward.
    #[must_use]
    pub const fn uniform(&self, load: LineLoad) -> Load {
        Load::uniform(Length::ZERO, self.length, load)
    }

    /// Works out the beam under all the loads together. No load at all is allowed and gives zeros.
    ///
    /// # Errors
    /// [`BeamError`] when a load is off the beam, is distributed over no length or is not finite, or when the results
    /// are too large to be numbers.
    pub fn solve(&self, loads: &[Load]) -> Result<Solution, BeamError> {
        let placed = loads.iter().enumerate().map(|(index, load)| load.placed(index + 1, self.length));
        solve::solve(self, &placed.collect::<Result<Vec<_>, _>>()?)
    }

    /// Works out the beam under each group of loads alone, in such a way that the solutions can be added with
    /// [`Solution::sum`]: one group a kind of load, or a kind of load and a span.
    ///
    /// # Errors
    /// As [`Beam::solve`]; loads are counted within their group.
    pub fn solve_apart(&self, groups: &[Vec<Load>]) -> Result<Vec<Solution>, BeamError> {
        let placed = |loads: &Vec<Load>| {
            let placed = loads.iter().enumerate().map(|(index, load)| load.placed(index + 1, self.length));
            placed.collect::<Result<Vec<_>, _>>()
        };
        solve::solve_apart(self, &groups.iter().map(placed).collect::<Result<Vec<_>, _>>()?)
    }
}

fn check_supports(supports: &[Support], length: Length) -> Result<(), BeamError> {
    for (index, support) in supports.iter().enumerate() {
        let (number, at) = (index + 1, support.at);
        if !(0.0..=length.inches()).contains(&at.inches()) {
            return Err(BeamError::SupportOffBeam { number, at, length });
        }
        if let Some(previous) = index.checked_sub(1).map(|before| supports[before].at)
            && at <= previous
        {
            return Err(BeamError::SupportsOutOfOrder { number, at, previous });
        }
    }
    match supports {
        [Support { restraint: Restraint::Fixed, .. }] | [_, _, ..] => Ok(()),
        _ => Err(BeamError::TooFewSupports { given: supports.len() }),
    }
}
