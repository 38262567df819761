//! Unit shears before and after the division that makes them comparable with loads.

use measure::{LineLoad, Ratio};

use super::DOCUMENT;
use crate::{Source, Status};

/// 4.3.3: a nominal unit shear is divided by 2.0 for allowable stress design, for wind and, in this edition, for
/// earthquakes.
pub const ALLOWABLE: Source = Source::new(DOCUMENT, "4.3.3", Status::FromMemory);
/// What a nominal unit shear is divided by.
pub const DIVIDED_BY: Ratio = 2.0;

/// A nominal unit shear, as the tables print it: not to be compared with a load.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct NominalUnitShear(LineLoad);

/// A unit shear that loads of allowable stress design may be compared with.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct AllowableUnitShear(LineLoad);

/// Apparent shear stiffness `G_a` of a nailed wall: shear of the panel and slip of its nails together.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct ApparentShearStiffness {
    pounds_per_inch: f64,
}

impl NominalUnitShear {
    /// As printed, pounds a foot of wall.
    #[must_use]
    pub const fn from_plf(plf: f64) -> Self {
        Self(LineLoad::from_plf(plf))
    }

    /// The number that is printed.
    #[must_use]
    pub const fn plf(self) -> f64 {
        self.0.plf()
    }

    /// Lowered by a factor of the clauses, or added for a second face.
    #[must_use]
    pub fn times(self, factor: Ratio) -> Self {
        Self(self.0 * factor)
    }

    /// Two faces together.
    #[must_use]
    pub fn plus(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }

    /// For loads of wind, allowable stress design.
    ///
    /// Source: SDPWS 2015 4.3.3 (from memory).
    ///
    /// ```
    /// use standards::sdpws_2015::NominalUnitShear;
    /// assert_eq!(NominalUnitShear::from_plf(670.0).allowable_for_wind().line_load().plf(), 335.0);
    /// ```
    #[must_use]
    pub fn allowable_for_wind(self) -> AllowableUnitShear {
        AllowableUnitShear(self.0 / DIVIDED_BY)
    }
}

impl AllowableUnitShear {
    /// As a load along the wall.
    #[must_use]
    pub const fn line_load(self) -> LineLoad {
        self.0
    }
}

impl ApparentShearStiffness {
    /// As the tables print it.
    #[must_use]
    pub const fn from_kips_per_inch(kips: f64) -> Self {
        Self { pounds_per_inch: kips * 1000.0 }
    }

    /// In pounds an inch.
    #[must_use]
    pub const fn pounds_per_inch(self) -> f64 {
        self.pounds_per_inch
    }

    /// So many times it: two faces, or framing that got wet.
    #[must_use]
    pub const fn times(self, factor: Ratio) -> Self {
        Self { pounds_per_inch: self.pounds_per_inch * factor }
    }
}
