//! Footnotes of Table R802.11: the roofs that it holds for, and what may be taken off.

use measure::{AreaLoad, Length, Ratio, Slope, Speed};

use super::table::STEEPER_FROM;
use crate::irc_2021::{DOCUMENT, r301::ExposureCategory};
use crate::{OutsideTable, Source, Status};

/// Limits of the table. Overhang and dead load were read; the height follows from the ratio of its two exposures.
const LIMITS: Source = Source::new(DOCUMENT, "Table R802.11 footnotes", Status::PartlyLookedUp);
/// Overhangs of the roof go to this.
pub const LARGEST_OVERHANG: Length = Length::from_inches(24.0);
/// Dead load of roof and ceiling of which the table has counted 0.6 against the wind: a lighter roof lifts more.
pub const DEAD_COUNTED: AreaLoad = AreaLoad::from_psf(15.0);
/// Mean roof height to which the table goes. It follows from the table: its Exposure C is 1.392 times its Exposure B before
/// dead load, as the velocity pressure is at 33 ft.
pub const HIGHEST_MEAN_ROOF: Length = Length::from_feet(33.0);

/// Exposure D has no part of its own: Exposure C at the next higher wind speed of the table.
pub const FOR_EXPOSURE_D: Source = Source::new(DOCUMENT, "Table R802.11 footnote, Exposure D", Status::FromMemory);
/// The uplift at 12 in is the uplift of a foot of wall.
pub const PER_FOOT: Source = Source::new(DOCUMENT, "Table R802.11 footnote, 12 in spacing", Status::FromMemory);
/// Each full wall above takes 60 plf off what passes between walls and into the foundation. The amount was read in
/// R602.3.5.
pub const EACH_WALL_ABOVE_SOURCE: Source =
    Source::new(DOCUMENT, "Table R802.11 footnote, walls above", Status::FromMemory);

/// Farther than 8 ft from every corner of the building.
pub const AWAY_FROM_CORNERS: Source =
    Source::new(DOCUMENT, "Table R802.11 footnote, away from corners", Status::LookedUp);
/// To this far from a corner the table holds as it is printed.
pub const CORNER: Length = Length::from_feet(8.0);
/// Hip roofs of 5 in 12 and steeper. The factor was read; the pitch is from memory.
pub const HIP_ROOF: Source = Source::new(DOCUMENT, "Table R802.11 footnote, hip roofs", Status::PartlyLookedUp);
/// The pitch from which the hip roof's factor holds.
pub const HIP_ROOF_FROM: Slope = Slope::from_rise_in_twelve(5.0);

/// Shape of a roof.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RoofShape {
    /// With a gable, or any other that is not hipped all around.
    Gable,
    /// Hipped all around.
    Hip,
}

/// A roof on its wall, and the wind.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TiedRoof {
    /// Exposure.
    pub exposure: ExposureCategory,
    /// Ultimate design wind speed.
    pub wind_speed: Speed,
    /// Roof span between its walls, on the level.
    pub span: Length,
    /// Its pitch.
    pub pitch: Slope,
    /// Its shape.
    pub shape: RoofShape,
    /// How far the roof stands out over the wall.
    pub overhang: Length,
    /// Mean roof height of the building.
    pub mean_roof_height: Length,
    /// Weight of roof and ceiling together that is surely there.
    pub dead: AreaLoad,
    /// From the tie, or the nearest end of the wall's stretch, to the nearest corner of the building.
    pub from_corner: Length,
}

impl TiedRoof {
    /// Whether the table holds for the roof itself.
    ///
    /// # Errors
    /// An overhang over 24 in, a mean roof height over 33 ft, or a roof that weighs less than 15 psf.
    pub fn within_limits(&self) -> Result<(), OutsideTable> {
        let outside = |given: String, covers, next_step| Err(OutsideTable { source: LIMITS, given, covers, next_step });
        let by_design = "An engineer gives the uplift.";
        if !(Length::ZERO..=LARGEST_OVERHANG).contains(&self.overhang) {
            return outside(format!("an overhang of {} in", self.overhang.inches()), "overhangs to 24 in", by_design);
        }
        if self.mean_roof_height <= Length::ZERO || self.mean_roof_height > HIGHEST_MEAN_ROOF {
            let given = format!("a mean roof height of {} ft", self.mean_roof_height.feet());
            return outside(given, "mean roof heights to 33 ft", by_design);
        }
        if self.pitch.rise_in_twelve() < 0.0 || self.from_corner < Length::ZERO {
            let given = "a pitch or a distance below zero".to_owned();
            return outside(given, "pitches and distances from zero", "Measure it again.");
        }
        if self.dead < DEAD_COUNTED {
            let given = format!("a roof and ceiling of {} psf", self.dead.psf());
            let next = "The wind lifts a lighter roof more: work the uplift out from the wind on the roof.";
            return outside(given, "roofs with ceilings of 15 psf or more", next);
        }
        Ok(())
    }

    /// What may be taken off. The hip roof's factor is not put together with another: it is the better one.
    #[must_use]
    pub fn reduction(&self) -> Reduction {
        if self.shape == RoofShape::Hip && self.pitch >= HIP_ROOF_FROM {
            Reduction::HipRoof
        } else {
            self.reduction_for_place()
        }
    }

    /// What the distance to the corners alone takes off.
    pub(super) fn reduction_for_place(&self) -> Reduction {
        if self.from_corner > CORNER { Reduction::AwayFromCorners } else { Reduction::None }
    }

    /// Whether the columns for 5 in 12 and steeper hold.
    pub(super) fn is_steeper(&self) -> bool {
        self.pitch >= STEEPER_FROM
    }
}

/// What a footnote takes off the printed uplift.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reduction {
    /// Nothing.
    None,
    /// Away from the corners: 0.75 of it is left.
    AwayFromCorners,
    /// Hip roof: 0.70 of it is left, and no other reduction is taken with it.
    HipRoof,
}

impl Reduction {
    /// What is left.
    #[must_use]
    pub const fn factor(self) -> Ratio {
        match self {
            Self::None => 1.0,
            Self::AwayFromCorners => 0.75,
            Self::HipRoof => 0.70,
        }
    }

    /// Where it stands.
    #[must_use]
    pub const fn source(self) -> Option<Source> {
        match self {
            Self::None => None,
            Self::AwayFromCorners => Some(AWAY_FROM_CORNERS),
            Self::HipRoof => Some(HIP_ROOF),
        }
    }
}
