//! What was measured first, and what was measured later in the same place.

/// A later measurement, with the reason for it.
#[derive(Clone, Debug, PartialEq)]
pub struct Remeasured<T> {
    /// What it was then.
    pub value: T,
    /// Who measured.
    pub by: String,
    /// When, as written down.
    pub when: String,
    /// Why.
    pub why: String,
}

/// A measurement that keeps its history. The first one is never changed, and nothing is ever taken away.
#[derive(Clone, Debug, PartialEq)]
pub struct Measurements<T> {
    first: T,
    later: Vec<Remeasured<T>>,
}

impl<T> Measurements<T> {
    /// The first measurement.
    #[must_use]
    pub const fn new(first: T) -> Self {
        Self { first, later: Vec::new() }
    }

    /// Adds a later one.
    pub fn remeasure(&mut self, later: Remeasured<T>) {
        self.later.push(later);
    }

    /// What was found first.
    #[must_use]
    pub const fn first(&self) -> &T {
        &self.first
    }

    /// What counts now: the last one.
    #[must_use]
    pub fn now(&self) -> &T {
        self.later.last().map_or(&self.first, |later| &later.value)
    }

    /// The later ones, in their order.
    #[must_use]
    pub fn later(&self) -> &[Remeasured<T>] {
        &self.later
    }
}
