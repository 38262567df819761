//! What is required, and where that is said.

use standards::Source;

/// A drawing, a schedule or a letter of the engineer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Drawing {
    /// Its sheet: `S2.1`.
    pub sheet: String,
    /// The revision that was at hand; none where the sheet shows none.
    pub revision: Option<String>,
}

/// Where a requirement or a limit comes from. The engineer's drawing always wins.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Origin {
    /// The engineer's drawing.
    Drawing(Drawing),
    /// A published clause or table, or a rule of the trade; the source's status says which.
    Published(Source),
    /// Typed by whoever holds the phone.
    Typed,
    /// Worked out here.
    Computed,
}

impl Origin {
    /// The published source, if it is one.
    #[must_use]
    pub const fn source(&self) -> Option<&Source> {
        if let Self::Published(source) = self { Some(source) } else { None }
    }
}

impl From<Source> for Origin {
    fn from(source: Source) -> Self {
        Self::Published(source)
    }
}

/// A value that is required, with its origin.
#[derive(Clone, Debug, PartialEq)]
pub struct Required<T> {
    /// The value.
    pub value: T,
    /// Who asks for it.
    pub origin: Origin,
}

impl<T> Required<T> {
    /// A requirement.
    #[must_use]
    pub fn new(value: T, origin: impl Into<Origin>) -> Self {
        Self { value, origin: origin.into() }
    }
}

/// Of two requirements for the same thing, the one that counts: the engineer's drawing before all others, else the
/// first. The other stays the caller's to show beside it.
#[must_use]
pub fn that_counts<'a, T>(one: &'a Required<T>, other: &'a Required<T>) -> &'a Required<T> {
    let drawn = |required: &Required<T>| matches!(required.origin, Origin::Drawing(_));
    if drawn(other) && !drawn(one) { other } else { one }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_drawing_wins() {
        let drawn = Required::new(4, Origin::Drawing(Drawing { sheet: "S2.1".into(), revision: Some("B".into()) }));
        let typed = Required::new(6, Origin::Typed);
        assert_eq!(that_counts(&typed, &drawn).value, 4);
        assert_eq!(that_counts(&drawn, &typed).value, 4);
        let later = Required::new(3, drawn.origin.clone());
        assert_eq!(that_counts(&drawn, &later).value, 4);
        assert_eq!(that_counts(&typed, &Required::new(3, Origin::Computed)).value, 6);
    }
}
