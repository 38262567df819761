//! Which of the layouts of the tables a floor or a roof is, by how its panels lie.

use standards::sdpws_2015::table_4_2::LayoutCase;

/// How the panels of a floor or a roof lie to its framing, and that to the load.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Layout {
    /// Whether the long sides of the panels run across the framing.
    pub across_framing: bool,
    /// Whether the short sides are staggered from row to row.
    pub staggered: bool,
    /// Whether the framing runs along the load.
    pub framing_along_load: bool,
}

impl Layout {
    /// Whether the long sides of the panels run along the load.
    #[must_use]
    pub const fn long_sides_along_load(self) -> bool {
        self.across_framing != self.framing_along_load
    }

    /// The case of the tables. Only case 1 has neither an unblocked edge nor a continuous joint along the load.
    ///
    /// Source: SDPWS 2015 Tables 4.2A and 4.2C, the drawings over them, from memory.
    ///
    /// ```
    /// use bracing::diaphragm::Layout;
    /// use standards::sdpws_2015::table_4_2::LayoutCase;
    ///
    /// let usual = Layout { across_framing: true, staggered: true, framing_along_load: true };
    /// assert_eq!(usual.case(), LayoutCase::One);
    /// assert_eq!(Layout { framing_along_load: false, ..usual }.case(), LayoutCase::Three);
    /// ```
    #[must_use]
    pub const fn case(self) -> LayoutCase {
        match (self.staggered, self.across_framing, self.framing_along_load) {
            (true, true, true) => LayoutCase::One,
            (true, false, false) => LayoutCase::Two,
            (true, true, false) => LayoutCase::Three,
            (true, false, true) => LayoutCase::Four,
            (false, _, _) if self.long_sides_along_load() => LayoutCase::Five,
            (false, _, _) => LayoutCase::Six,
        }
    }
}
