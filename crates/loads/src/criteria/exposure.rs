//! Exposure from what stands upwind of a house.

use measure::{Angle, Length};
use standards::OutsideTable;
use standards::asce7_16::{
    chapter_26::Exposure,
    chapter_26_7::{ExposureRule, Fetch, exposure_rule},
};

/// An eighth of the compass; its first edge is where it is named for, and it goes on clockwise.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sector {
    /// From north to northeast.
    North,
    /// From northeast to east.
    Northeast,
    /// From east to southeast.
    East,
    /// From southeast to south.
    Southeast,
    /// From south to southwest.
    South,
    /// From southwest to west.
    Southwest,
    /// From west to northwest.
    West,
    /// From northwest to north.
    Northwest,
}

const WIDTH: f64 = 45.0;

impl Sector {
    /// All eight, clockwise from north.
    pub const ALL: [Self; 8] = [
        Self::North,
        Self::Northeast,
        Self::East,
        Self::Southeast,
        Self::South,
        Self::Southwest,
        Self::West,
        Self::Northwest,
    ];

    /// Its middle, clockwise from north.
    #[must_use]
    pub fn middle(self) -> Angle {
        Angle::from_degrees((f64::from(self as u8) + 0.5) * WIDTH)
    }

    /// Whether any of it lies within 45 degrees of where the wind comes from.
    fn counts_for(self, wind_from: Angle) -> bool {
        let apart = (self.middle() - wind_from).degrees().rem_euclid(360.0);
        apart.min(360.0 - apart) < 1.5 * WIDTH
    }
}

/// What is known of the ground around a house.
#[derive(Clone, Debug, PartialEq)]
pub enum Surroundings {
    /// Exposure as the drawings or the code official give it.
    Given(Exposure),
    /// The same ground in every direction.
    AllAround(Fetch),
    /// The ground in each sector, in the order of [`Sector::ALL`].
    BySector(Box<[Fetch; 8]>),
}

/// An exposure, and what gave it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ExposureFinding {
    /// The exposure.
    pub exposure: Exposure,
    /// The rule that gave it; none where the exposure was given.
    pub rule: Option<ExposureRule>,
    /// The sector that governs, the first where several do; none where all are alike.
    pub sector: Option<Sector>,
}

impl Surroundings {
    /// The worst exposure of all directions: what a low house and its cladding are designed for.
    ///
    /// # Errors
    /// A mean roof height that is not above the ground, or a stretch of ground without length.
    pub fn governing(&self, mean_roof_height: Length) -> Result<ExposureFinding, OutsideTable> {
        self.worst(mean_roof_height, |_| true)
    }

    /// The exposure for wind from a direction, clockwise from north: the worst of the sectors within 45 degrees of it.
    ///
    /// # Errors
    /// As [`Surroundings::governing`].
    pub fn from_direction(&self, wind_from: Angle, mean_roof_height: Length) -> Result<ExposureFinding, OutsideTable> {
        self.worst(mean_roof_height, |sector| sector.counts_for(wind_from))
    }

    fn worst(&self, height: Length, counts: impl Fn(Sector) -> bool) -> Result<ExposureFinding, OutsideTable> {
        match self {
            Self::Given(exposure) => Ok(ExposureFinding { exposure: *exposure, rule: None, sector: None }),
            Self::AllAround(fetch) => Ok(by_rule(exposure_rule(height, fetch)?, None)),
            Self::BySector(fetches) => {
                let mut worst: Option<ExposureFinding> = None;
                for (sector, fetch) in Sector::ALL.into_iter().zip(fetches.iter()) {
                    let found = by_rule(exposure_rule(height, fetch)?, Some(sector));
                    if counts(sector) && worst.is_none_or(|worst| worst.exposure < found.exposure) {
                        worst = Some(found);
                    }
                }
                // Every direction has a sector within 45 degrees; were there none, open water would be the safe answer.
                Ok(worst.unwrap_or(ExposureFinding { exposure: Exposure::D, rule: None, sector: None }))
            }
        }
    }
}

const fn by_rule(rule: ExposureRule, sector: Option<Sector>) -> ExposureFinding {
    ExposureFinding { exposure: rule.exposure(), rule: Some(rule), sector }
}
