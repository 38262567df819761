//! Kinds of member, as one chooses between them on site.

/// The kind of a member.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Family {
    /// One or more plies of 2x lumber.
    BuiltUp2x,
    /// Sawn lumber 3 or 4 in thick.
    Sawn4x,
    /// Timbers 5 in and thicker.
    Sawn6x,
    /// Laminated veneer lumber of a generic class.
    Lvl,
    /// Glulam.
    Glulam,
    /// Typed in from a label.
    Labelled,
}

impl Family {
    /// Every kind, in the order in which they are usually reached for.
    pub const ALL: [Self; 6] = [Self::BuiltUp2x, Self::Sawn4x, Self::Sawn6x, Self::Lvl, Self::Glulam, Self::Labelled];
}
