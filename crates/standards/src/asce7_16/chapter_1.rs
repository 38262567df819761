//! Chapter 1: risk categories and importance factors.

use measure::Ratio;

use crate::{Source, Status, asce7_16::DOCUMENT};

/// Table 1.5-2, the column of snow importance factors.
pub const SNOW_IMPORTANCE: Source = Source::new(DOCUMENT, "Table 1.5-2", Status::LookedUp);

/// How much harm a failure would do. A house is [`RiskCategory::Two`].
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RiskCategory {
    /// Low hazard to life, such as a barn.
    One,
    /// All others: dwellings.
    Two,
    /// Substantial hazard to life.
    Three,
    /// Essential facilities.
    Four,
}

impl RiskCategory {
    /// Snow importance factor `I_s` of Table 1.5-2.
    #[must_use]
    pub const fn snow_importance_factor(self) -> Ratio {
        match self {
            Self::One => 0.8,
            Self::Two => 1.0,
            Self::Three => 1.1,
            Self::Four => 1.2,
        }
    }
}
