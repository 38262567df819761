//! What is drawn of walls as the engineer drew them beside what is worked out for them.

/// One bar: a share of what carries, or why there is none.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnShare {
    /// The share; none where there is no number.
    pub share: Option<f64>,
    /// It in words: `82 %`, `128 %, ends`, `not worked`.
    pub says: String,
}

/// A wall with its two bars.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnPair {
    /// Its name.
    pub name: String,
    /// Its mark; empty where the drawing says nothing of it.
    pub mark: String,
    /// What of the drawing is used the hardest.
    pub drawn: DrawnShare,
    /// What is used of the lightest panels and nails that carry.
    pub worked: DrawnShare,
    /// What follows, in words.
    pub follows: String,
    /// Whether the engineer is to be asked.
    pub asks: bool,
}
