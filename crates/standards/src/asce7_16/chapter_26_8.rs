//! Clause 26.8: the wind over hills, ridges and bluffs.

use measure::{Length, Ratio, math};

use super::chapter_26::Exposure;
use crate::{Source, Status, asce7_16::DOCUMENT};

/// Fig. 26.8-1: the factor, and what a shape does.
pub const TOPOGRAPHIC_FACTOR: Source = Source::new(DOCUMENT, "Fig. 26.8-1", Status::LookedUp);
/// Clause 26.8.1: when a shape counts. The last two conditions are looked up.
pub const CONDITIONS: Source = Source::new(DOCUMENT, "26.8.1", Status::PartlyLookedUp);

/// The shape of the ground.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Landform {
    /// A long ridge.
    Ridge,
    /// An escarpment: a bluff with level ground behind it.
    Escarpment,
    /// A hill by itself.
    Hill,
}

/// Where the house stands, seen with the wind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// Before the crest.
    Upwind,
    /// Behind it.
    Downwind,
}

/// A shape of the ground and the house on it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Topography {
    /// The shape.
    pub landform: Landform,
    /// Its height over the ground upwind, `H`.
    pub height: Length,
    /// Level distance upwind from the crest to where the ground is half as high, `L_h`.
    pub half_length: Length,
    /// Level distance of the house from the crest, `x`.
    pub distance: Length,
    /// On which side of the crest.
    pub side: Side,
    /// Whether it stands alone and twice as high as what is within 2 miles upwind: conditions 1 and 2.
    pub stands_out: bool,
}

/// The factor with the steps to it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TopographicFactor {
    /// `K_1`, of the shape.
    pub k_1: Ratio,
    /// `K_2`, of the distance.
    pub k_2: Ratio,
    /// `K_3`, of the height above ground.
    pub k_3: Ratio,
    /// `L_h` as it was used: twice the height on a steep shape.
    pub half_length: Length,
    /// `K_zt`.
    pub k_zt: Ratio,
}

/// Why a shape does not count, so that the factor is 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotCounted {
    /// Conditions 1 and 2: it does not stand out alone.
    NotAlone,
    /// Condition 4: less steep than 0.2.
    NotSteep,
    /// Condition 5: lower than 15 ft, or 60 ft in Exposure B.
    NotHigh,
}

/// Steepest height over half-length that `K_1` grows with.
const STEEP: f64 = 0.5;

impl Landform {
    /// What `K_1` is times `H / L_h`.
    const fn k_1(self, exposure: Exposure) -> f64 {
        match (self, exposure) {
            (Self::Ridge, Exposure::B) => 1.30,
            (Self::Ridge, Exposure::C) => 1.45,
            (Self::Ridge, Exposure::D) => 1.55,
            (Self::Escarpment, Exposure::B) => 0.75,
            (Self::Escarpment, Exposure::C) => 0.85,
            (Self::Escarpment, Exposure::D) => 0.95,
            (Self::Hill, Exposure::B) => 0.95,
            (Self::Hill, Exposure::C) => 1.05,
            (Self::Hill, Exposure::D) => 1.15,
        }
    }

    /// How fast the speed-up falls with height, `gamma`.
    const fn height_attenuation(self) -> f64 {
        match self {
            Self::Ridge => 3.0,
            Self::Escarpment => 2.5,
            Self::Hill => 4.0,
        }
    }

    /// How far it reaches, `mu`.
    const fn reach(self, side: Side) -> f64 {
        match (self, side) {
            (Self::Escarpment, Side::Downwind) => 4.0,
            _ => 1.5,
        }
    }
}

impl Topography {
    /// Topographic factor `K_zt = (1 + K_1 K_2 K_3)^2` at a height above the ground.
    ///
    /// Where `H / L_h` is over 0.5 it is taken as 0.5, and `L_h` as `2 H`.
    ///
    /// # Errors
    /// The condition that is not met, so that the shape does not count. Condition 3, that the house stands in the upper
    /// half or near the crest, shows in `K_2`.
    pub fn factor(&self, exposure: Exposure, height: Length) -> Result<TopographicFactor, NotCounted> {
        let least = Length::from_feet(if exposure == Exposure::B { 60.0 } else { 15.0 });
        let steepness = self.height / self.half_length;
        if !self.stands_out {
            return Err(NotCounted::NotAlone);
        }
        if self.height < least {
            return Err(NotCounted::NotHigh);
        }
        if steepness < 0.2 {
            return Err(NotCounted::NotSteep);
        }
        let half_length = if steepness > STEEP { self.height * 2.0 } else { self.half_length };
        let k_1 = self.landform.k_1(exposure) * steepness.min(STEEP);
        let k_2 = (1.0 - self.distance / (half_length * self.landform.reach(self.side))).max(0.0);
        let k_3 = math::pow(core::f64::consts::E, -self.landform.height_attenuation() * (height / half_length));
        let speed_up = 1.0 + k_1 * k_2 * k_3;
        Ok(TopographicFactor { k_1, k_2, k_3, half_length, k_zt: speed_up * speed_up })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shape(landform: Landform, height: f64, half_length: f64, distance: f64) -> Topography {
        Topography {
            landform,
            height: Length::from_feet(height),
            half_length: Length::from_feet(half_length),
            distance: Length::from_feet(distance),
            side: Side::Downwind,
            stands_out: true,
        }
    }

    /// Source: ASCE 7-16 Fig. 26.8-1, printed `K_1` of Exposure C at `H / L_h` 0.20 to 0.50; two places.
    #[test]
    fn printed_k_1() {
        let printed = [
            (Landform::Ridge, [0.29, 0.36, 0.43, 0.51, 0.58, 0.65, 0.72]),
            (Landform::Escarpment, [0.17, 0.21, 0.26, 0.30, 0.34, 0.38, 0.43]),
            (Landform::Hill, [0.21, 0.26, 0.32, 0.37, 0.42, 0.47, 0.53]),
        ];
        for (landform, row) in printed {
            for (column, printed) in row.into_iter().enumerate() {
                let height = 20.0 + 5.0 * column as f64;
                let found = shape(landform, height, 100.0, 0.0).factor(Exposure::C, Length::ZERO).unwrap();
                assert!((found.k_1 - printed).abs() <= 0.0051, "{landform:?} {height}: {}", found.k_1);
            }
        }
    }

    /// Source: the figure's note 2 worked for a bluff of 50 ft with a half-length of 60 ft, 30 ft behind the crest, at
    /// 13.5 ft in Exposure D: 0.475, 0.925, 0.7136, 1.725.
    #[test]
    fn a_steep_bluff_takes_twice_its_height() {
        let found = shape(Landform::Escarpment, 50.0, 60.0, 30.0).factor(Exposure::D, Length::from_feet(13.5)).unwrap();
        assert!((found.k_1 - 0.475).abs() < 1e-9 && (found.k_2 - 0.925).abs() < 1e-9);
        assert!((found.k_3 - 0.7136).abs() < 5e-5 && (found.k_zt - 1.725).abs() < 5e-4, "{found:?}");
    }

    #[test]
    fn it_falls_with_distance_and_height_and_never_below_one() {
        let k_zt = |distance: f64, height: f64| {
            let at = Length::from_feet(height);
            shape(Landform::Ridge, 40.0, 100.0, distance).factor(Exposure::D, at).unwrap().k_zt
        };
        for step in 0..40 {
            let step = f64::from(step);
            assert!(k_zt(step * 5.0, 10.0) >= k_zt(step * 5.0 + 5.0, 10.0));
            assert!(k_zt(0.0, step) > k_zt(0.0, step + 1.0) && k_zt(step * 5.0, step) >= 1.0);
        }
    }

    #[test]
    fn a_shape_that_does_not_count_says_why() {
        let factor = |shape: Topography, exposure| shape.factor(exposure, Length::from_feet(20.0)).err();
        let alone = shape(Landform::Hill, 50.0, 200.0, 0.0);
        assert_eq!(factor(Topography { stands_out: false, ..alone }, Exposure::C), Some(NotCounted::NotAlone));
        assert_eq!(factor(alone, Exposure::B), Some(NotCounted::NotHigh));
        assert_eq!(factor(shape(Landform::Hill, 50.0, 300.0, 0.0), Exposure::C), Some(NotCounted::NotSteep));
        assert_eq!(factor(alone, Exposure::C), None);
    }
}
