//! Whether a thing was seen.

/// A thing that was to be looked at. What is hidden is never taken for seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Seen<T> {
    /// It was seen, and this was found.
    Observed(T),
    /// It was not looked at yet.
    NotObserved,
    /// It could not be seen or reached.
    CouldNotBeSeen,
}

impl<T> Seen<T> {
    /// What was found, if it was seen.
    #[must_use]
    pub fn observed(self) -> Option<T> {
        if let Self::Observed(found) = self { Some(found) } else { None }
    }

    /// Looks at it by reference.
    #[must_use]
    pub const fn as_ref(&self) -> Seen<&T> {
        match self {
            Self::Observed(found) => Seen::Observed(found),
            Self::NotObserved => Seen::NotObserved,
            Self::CouldNotBeSeen => Seen::CouldNotBeSeen,
        }
    }

    /// The same observation of something that follows from it.
    #[must_use]
    pub fn map<U>(self, follow: impl FnOnce(T) -> U) -> Seen<U> {
        match self {
            Self::Observed(found) => Seen::Observed(follow(found)),
            Self::NotObserved => Seen::NotObserved,
            Self::CouldNotBeSeen => Seen::CouldNotBeSeen,
        }
    }
}
