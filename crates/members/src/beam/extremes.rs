//! The largest values along a beam, and where they are.

use measure::{Force, Length, Moment};

use super::Section;

/// A value and the place where it occurs. Of equal values the one found first from the left is kept.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Extreme<Q> {
    /// The value.
    pub value: Q,
    /// Where it is, from the beam's left end.
    pub at: Length,
}

/// The extremes of shear, moment and deflection over a stretch or over the whole beam.
///
/// They are found from the roots of the beam's own polynomials, not from samples. Signs are those of
/// [`beam`](super): sagging and downward are positive.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Extremes {
    /// The largest shear, without its sign.
    pub largest_shear: Extreme<Force>,
    /// The highest moment with its sign: the most sagging, or the least hogging.
    pub maximum_moment: Extreme<Moment>,
    /// The lowest moment with its sign: the most hogging, or the least sagging.
    pub minimum_moment: Extreme<Moment>,
    /// The deflection furthest down, with its sign.
    pub most_down: Extreme<Length>,
    /// The deflection furthest up, with its sign: below zero where the beam rises.
    pub most_up: Extreme<Length>,
}

impl Extremes {
    /// The largest moment, without its sign.
    #[must_use]
    pub fn largest_moment(&self) -> Extreme<Moment> {
        let hogging = Extreme { value: self.minimum_moment.value.abs(), at: self.minimum_moment.at };
        higher(Extreme { value: self.maximum_moment.value.abs(), at: self.maximum_moment.at }, hogging)
    }

    /// The largest deflection, without its sign.
    #[must_use]
    pub fn largest_deflection(&self) -> Extreme<Length> {
        let up = Extreme { value: self.most_up.value.abs(), at: self.most_up.at };
        higher(Extreme { value: self.most_down.value.abs(), at: self.most_down.at }, up)
    }

    pub(super) fn at(section: &Section) -> Self {
        let at = section.at;
        Self {
            largest_shear: Extreme { value: section.shear.abs(), at },
            maximum_moment: Extreme { value: section.moment, at },
            minimum_moment: Extreme { value: section.moment, at },
            most_down: Extreme { value: section.deflection, at },
            most_up: Extreme { value: section.deflection, at },
        }
    }

    /// The extremes of both; `self` is to the left of `other`.
    pub(super) fn merged(self, other: Self) -> Self {
        Self {
            largest_shear: higher(self.largest_shear, other.largest_shear),
            maximum_moment: higher(self.maximum_moment, other.maximum_moment),
            minimum_moment: lower(self.minimum_moment, other.minimum_moment),
            most_down: higher(self.most_down, other.most_down),
            most_up: lower(self.most_up, other.most_up),
        }
    }
}

/// The most and the least of one quantity over a stretch, with their signs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Turns<Q> {
    /// The most sagging moment, or the deflection furthest down.
    pub most: Extreme<Q>,
    /// The most hogging moment, or the deflection furthest up.
    pub least: Extreme<Q>,
}

impl<Q: Copy + PartialOrd> Turns<Q> {
    /// `here` is to the right of those held.
    pub(super) fn with(self, here: Extreme<Q>) -> Self {
        Self { most: higher(self.most, here), least: lower(self.least, here) }
    }

    pub(super) fn map<R>(self, into: impl Fn(Q) -> R) -> Turns<R> {
        let one = |extreme: Extreme<Q>| Extreme { value: into(extreme.value), at: extreme.at };
        Turns { most: one(self.most), least: one(self.least) }
    }
}

impl<Q: Copy + PartialOrd + core::ops::Neg<Output = Q>> Turns<Q> {
    /// The one that is furthest from nothing, without its sign.
    #[must_use]
    pub fn largest(&self) -> Extreme<Q> {
        let size = |extreme: Extreme<Q>| {
            let turned = -extreme.value;
            Extreme { value: if turned > extreme.value { turned } else { extreme.value }, at: extreme.at }
        };
        higher(size(self.most), size(self.least))
    }
}

fn higher<Q: PartialOrd>(held: Extreme<Q>, other: Extreme<Q>) -> Extreme<Q> {
    if other.value > held.value { other } else { held }
}

fn lower<Q: PartialOrd>(held: Extreme<Q>, other: Extreme<Q>) -> Extreme<Q> {
    if other.value < held.value { other } else { held }
}
