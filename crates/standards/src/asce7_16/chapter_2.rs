//! Chapter 2: the combinations of loads for allowable-stress design (2.4.1).
//!
//! Rain, flood, soil and earthquake are left out: none of them loads a header in a way this book works. Where the
//! clause says "`L_r` or `S`", each is an entry of its own, so that its load duration goes with it.

use measure::Ratio;

use crate::{Source, Status, asce7_16::DOCUMENT};

/// A kind of load, as Chapter 2 tells them apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LoadCase {
    /// Dead load `D`: the weight of the building.
    Dead,
    /// Live load `L` of floors and attics.
    Live,
    /// Roof live load `L_r`: people and tools on the roof.
    RoofLive,
    /// Snow load `S`.
    Snow,
    /// Wind load `W`, at strength level.
    Wind,
}

impl LoadCase {
    /// Every case, in the order of the clause.
    pub const ALL: [Self; 5] = [Self::Dead, Self::Live, Self::RoofLive, Self::Snow, Self::Wind];

    /// The clause's symbol: `Lr`.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Dead => "D",
            Self::Live => "L",
            Self::RoofLive => "Lr",
            Self::Snow => "S",
            Self::Wind => "W",
        }
    }
}

/// A combination of 2.4.1. The figure in a variant's doc is the clause's own number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Combination {
    /// 1: `D`.
    Dead,
    /// 2: `D + L`.
    DeadLive,
    /// 3: `D + Lr`.
    DeadRoofLive,
    /// 3: `D + S`.
    DeadSnow,
    /// 4: `D + 0.75L + 0.75Lr`.
    DeadLiveRoofLive,
    /// 4: `D + 0.75L + 0.75S`.
    DeadLiveSnow,
    /// 5: `D + 0.6W`.
    DeadWind,
    /// 6: `D + 0.75L + 0.75(0.6W) + 0.75Lr`.
    DeadLiveWindRoofLive,
    /// 6: `D + 0.75L + 0.75(0.6W) + 0.75S`.
    DeadLiveWindSnow,
    /// 7: `0.6D + 0.6W`.
    LeastDeadWind,
}

/// Share of the wind load, which the maps give at strength level, that allowable-stress design takes.
const WIND: Ratio = 0.6;
/// Share of each of several transient loads that act at once.
const AT_ONCE: Ratio = 0.75;
/// Share of the dead load that is sure to be there when it holds the building down.
const LEAST_DEAD: Ratio = 0.6;

impl Combination {
    /// Every combination, in the order of the clause.
    pub const ALL: [Self; 10] = [
        Self::Dead,
        Self::DeadLive,
        Self::DeadRoofLive,
        Self::DeadSnow,
        Self::DeadLiveRoofLive,
        Self::DeadLiveSnow,
        Self::DeadWind,
        Self::DeadLiveWindRoofLive,
        Self::DeadLiveWindSnow,
        Self::LeastDeadWind,
    ];

    /// Clause 2.4.1; the factors were read as the building code of 2018 prints them.
    pub const SOURCE: Source = Source::new(DOCUMENT, "2.4.1", Status::LookedUp);

    /// As it is written: `D + 0.75L + 0.75S`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Dead => "D",
            Self::DeadLive => "D + L",
            Self::DeadRoofLive => "D + Lr",
            Self::DeadSnow => "D + S",
            Self::DeadLiveRoofLive => "D + 0.75L + 0.75Lr",
            Self::DeadLiveSnow => "D + 0.75L + 0.75S",
            Self::DeadWind => "D + 0.6W",
            Self::DeadLiveWindRoofLive => "D + 0.75L + 0.75(0.6W) + 0.75Lr",
            Self::DeadLiveWindSnow => "D + 0.75L + 0.75(0.6W) + 0.75S",
            Self::LeastDeadWind => "0.6D + 0.6W",
        }
    }

    /// What the combination takes of a load; 0 where the load is not in it.
    #[must_use]
    pub const fn factor(self, case: LoadCase) -> Ratio {
        let [dead, live, roof_live, snow, wind] = self.factors();
        match case {
            LoadCase::Dead => dead,
            LoadCase::Live => live,
            LoadCase::RoofLive => roof_live,
            LoadCase::Snow => snow,
            LoadCase::Wind => wind,
        }
    }

    /// In the order of [`LoadCase::ALL`].
    const fn factors(self) -> [Ratio; 5] {
        match self {
            Self::Dead => [1.0, 0.0, 0.0, 0.0, 0.0],
            Self::DeadLive => [1.0, 1.0, 0.0, 0.0, 0.0],
            Self::DeadRoofLive => [1.0, 0.0, 1.0, 0.0, 0.0],
            Self::DeadSnow => [1.0, 0.0, 0.0, 1.0, 0.0],
            Self::DeadLiveRoofLive => [1.0, AT_ONCE, AT_ONCE, 0.0, 0.0],
            Self::DeadLiveSnow => [1.0, AT_ONCE, 0.0, AT_ONCE, 0.0],
            Self::DeadWind => [1.0, 0.0, 0.0, 0.0, WIND],
            Self::DeadLiveWindRoofLive => [1.0, AT_ONCE, AT_ONCE, 0.0, AT_ONCE * WIND],
            Self::DeadLiveWindSnow => [1.0, AT_ONCE, 0.0, AT_ONCE, AT_ONCE * WIND],
            Self::LeastDeadWind => [LEAST_DEAD, 0.0, 0.0, 0.0, WIND],
        }
    }

    /// The load in it that lasts the shortest time, by which the strength of wood is judged.
    #[must_use]
    pub const fn shortest_case(self) -> LoadCase {
        match self {
            Self::Dead => LoadCase::Dead,
            Self::DeadLive => LoadCase::Live,
            Self::DeadRoofLive | Self::DeadLiveRoofLive => LoadCase::RoofLive,
            Self::DeadSnow | Self::DeadLiveSnow => LoadCase::Snow,
            Self::DeadWind | Self::DeadLiveWindRoofLive | Self::DeadLiveWindSnow | Self::LeastDeadWind => {
                LoadCase::Wind
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: ASCE 7-16 2.4.1, each combination written out.
    #[test]
    fn a_name_says_the_factors() {
        for combination in Combination::ALL {
            let name = combination.name().replace("0.75(0.6W)", "0.45W");
            let mut left = 5;
            for term in name.split(" + ") {
                let symbol = term.trim_start_matches(|c: char| c.is_ascii_digit() || c == '.');
                let factor: f64 =
                    term.strip_suffix(symbol).filter(|f| !f.is_empty()).map_or(1.0, |f| f.parse().unwrap());
                let case = LoadCase::ALL.into_iter().find(|c| c.symbol() == symbol).unwrap();
                assert!((combination.factor(case) - factor).abs() < 1e-12, "{name}: {term}");
                left -= 1;
            }
            let absent = LoadCase::ALL.into_iter().filter(|&c| combination.factor(c) == 0.0).count();
            assert_eq!(absent, left, "{name}");
        }
    }

    #[test]
    fn the_shortest_load_is_in_its_combination() {
        for combination in Combination::ALL {
            assert!(combination.factor(combination.shortest_case()) > 0.0, "{}", combination.name());
        }
    }
}
