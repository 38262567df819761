//! A value that carries its source.

use crate::Source;

/// A value of a clause or a table, with the place it comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cited<T> {
    /// The value itself, unrounded.
    pub value: T,
    /// Where the rule behind it stands, and how it came here.
    pub source: Source,
}

impl<T> Cited<T> {
    /// A value with its source.
    #[must_use]
    pub const fn new(value: T, source: Source) -> Self {
        Self { value, source }
    }

    /// Another value from the same place: one stress of a row of factors, for example.
    #[must_use]
    pub fn map<U>(self, part: impl FnOnce(T) -> U) -> Cited<U> {
        Cited { value: part(self.value), source: self.source }
    }
}
