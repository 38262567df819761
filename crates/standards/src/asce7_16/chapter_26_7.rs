//! Clause 26.7: the exposure, from what stands upwind.

use measure::Length;

use super::chapter_26::Exposure;
use crate::{Source, Status, asce7_16::DOCUMENT};

/// Clause 26.7.3: exposure categories.
pub const EXPOSURE: Source = Source::new(DOCUMENT, "26.7.3", Status::LookedUp);

/// What lies upwind, in the worst direction.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Upwind {
    /// How far houses or woods (roughness B) reach from the house.
    pub rough: Length,
    /// How far open water or flats (roughness D) reach beyond them; on a hurricane coast too.
    pub open_water: Length,
}

/// The rule that decided.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Because {
    /// Houses or woods reach far enough.
    Rough,
    /// Open water or flats reach far enough, and the house is near them.
    OpenWater,
    /// Neither.
    Neither,
}

/// How far houses or woods must reach for Exposure B.
#[must_use]
pub fn rough_needed(mean_roof_height: Length) -> Length {
    if mean_roof_height <= Length::from_feet(30.0) {
        Length::from_feet(1500.0)
    } else {
        Length::from_feet(2600.0).max(mean_roof_height * 20.0)
    }
}

/// How far open water or flats must reach for Exposure D.
#[must_use]
pub fn water_needed(mean_roof_height: Length) -> Length {
    Length::from_feet(5000.0).max(mean_roof_height * 20.0)
}

/// How near to them a house on other ground must be to count as Exposure D.
#[must_use]
pub fn near_water(mean_roof_height: Length) -> Length {
    Length::from_feet(600.0).max(mean_roof_height * 20.0)
}

/// The exposure of a house, and the rule that decided.
#[must_use]
pub fn exposure(upwind: &Upwind, mean_roof_height: Length) -> (Exposure, Because) {
    let by_the_water =
        upwind.open_water >= water_needed(mean_roof_height) && upwind.rough <= near_water(mean_roof_height);
    if by_the_water {
        (Exposure::D, Because::OpenWater)
    } else if upwind.rough >= rough_needed(mean_roof_height) {
        (Exposure::B, Because::Rough)
    } else {
        (Exposure::C, Because::Neither)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: IBC 2018 1609.4.3: 1,500 ft and 5,000 ft; within 600 ft or 20 times the height.
    #[test]
    fn the_distances_of_the_clause() {
        let of = |rough: f64, water: f64, high: f64| {
            let upwind = Upwind { rough: Length::from_feet(rough), open_water: Length::from_feet(water) };
            exposure(&upwind, Length::from_feet(high)).0
        };
        assert_eq!(of(1500.0, 0.0, 25.0), Exposure::B);
        assert_eq!(of(1499.0, 0.0, 25.0), Exposure::C);
        assert_eq!(of(1500.0, 0.0, 31.0), Exposure::C);
        assert_eq!(of(2600.0, 0.0, 31.0), Exposure::B);
        assert_eq!(of(0.0, 5000.0, 25.0), Exposure::D);
        assert_eq!(of(0.0, 4999.0, 25.0), Exposure::C);
        assert_eq!(of(600.0, 9000.0, 25.0), Exposure::D);
        assert_eq!(of(601.0, 9000.0, 25.0), Exposure::C);
        assert_eq!(of(700.0, 9000.0, 35.0), Exposure::D);
    }
}
