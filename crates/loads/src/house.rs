//! The outline of a house: enough for loads without drawing walls.

use measure::{Angle, Area, Length, Slope};

/// The kind of a roof.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RoofKind {
    /// Two slopes that meet at a ridge.
    Gable,
    /// Four slopes of one pitch.
    Hip,
    /// One slope.
    Shed,
    /// Two slopes on each side.
    Gambrel,
    /// Level, or nearly so.
    Flat,
}

impl RoofKind {
    /// In words.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Gable => "gable",
            Self::Hip => "hip",
            Self::Shed => "one-slope",
            Self::Gambrel => "gambrel",
            Self::Flat => "flat",
        }
    }
}

/// A house of one rectangle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct House {
    /// Along the ridge, outside to outside.
    pub length: Length,
    /// Square to the ridge.
    pub width: Length,
    /// From the ground to where roof and wall meet.
    pub eave_height: Length,
    /// How many storeys of wall.
    pub storeys: u8,
    /// Its roof.
    pub roof: RoofKind,
    /// The roof's pitch.
    pub pitch: Slope,
    /// Overhang at the eaves, measured level.
    pub eave_overhang: Length,
    /// Overhang at the gable ends, measured level.
    pub rake_overhang: Length,
    /// The lesser plan dimension of a larger building that it is a wing of; none where it stands alone.
    pub wing_of: Option<Length>,
}

/// Which way the wind blows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WindDirection {
    /// Square to the ridge: onto the eave wall.
    AcrossRidge,
    /// Along the ridge: onto the gable end.
    AlongRidge,
}

impl WindDirection {
    /// Both.
    pub const ALL: [Self; 2] = [Self::AcrossRidge, Self::AlongRidge];
}

/// Roofs no steeper than this have their mean height at the eave.
const LOW_SLOPE: Angle = Angle::from_degrees(10.0);

impl House {
    /// The roof's angle with the level.
    #[must_use]
    pub fn angle(&self) -> Angle {
        if self.roof == RoofKind::Flat { Angle::ZERO } else { self.pitch.angle() }
    }

    /// From eave to ridge, measured upright.
    #[must_use]
    pub fn rise(&self) -> Length {
        let run = match self.roof {
            RoofKind::Flat => Length::ZERO,
            RoofKind::Shed => self.width,
            // A hip's slopes meet over the shorter side, whichever that is.
            RoofKind::Hip => self.width.min(self.length) / 2.0,
            RoofKind::Gable | RoofKind::Gambrel => self.width / 2.0,
        };
        run * (self.pitch.rise_in_twelve() / 12.0)
    }

    /// Height of the ridge above the ground.
    #[must_use]
    pub fn ridge_height(&self) -> Length {
        self.eave_height + self.rise()
    }

    /// Mean roof height: half-way between eave and ridge, or the eave height under roofs of 10 degrees and less.
    ///
    /// Source: ASCE 7-16 26.2.
    #[must_use]
    pub fn mean_roof_height(&self) -> Length {
        if self.angle() <= LOW_SLOPE { self.eave_height } else { self.eave_height + self.rise() / 2.0 }
    }

    /// The least plan dimension of the building: the smaller of length and width; of a wing that of the building that it is
    /// a part of, where that is more.
    #[must_use]
    pub fn least_dimension(&self) -> Length {
        self.length.min(self.width).max(self.wing_of.unwrap_or_default())
    }

    /// Plan dimension along the wind.
    #[must_use]
    pub const fn along(&self, wind: WindDirection) -> Length {
        match wind {
            WindDirection::AcrossRidge => self.width,
            WindDirection::AlongRidge => self.length,
        }
    }

    /// Plan dimension across the wind.
    #[must_use]
    pub const fn across(&self, wind: WindDirection) -> Length {
        match wind {
            WindDirection::AcrossRidge => self.length,
            WindDirection::AlongRidge => self.width,
        }
    }

    /// Area of one wall that faces the wind, with its gable.
    #[must_use]
    pub fn wall_area(&self, wind: WindDirection) -> Area {
        self.across(wind) * self.eave_height + self.gable_area(wind)
    }

    /// What stands above the eave and faces the wind as a wall: the gable's triangle with the wind along the ridge.
    #[must_use]
    pub fn gable_area(&self, wind: WindDirection) -> Area {
        let is_gable = matches!(self.roof, RoofKind::Gable | RoofKind::Gambrel | RoofKind::Shed);
        if is_gable && wind == WindDirection::AlongRidge { self.width * self.rise() * 0.5 } else { Area::ZERO }
    }

    /// What stands above the eave and faces the wind as a roof, on the upright projection.
    #[must_use]
    pub fn roof_projection(&self, wind: WindDirection) -> Area {
        let (along, rise) = (self.length, self.rise());
        match (self.roof, wind) {
            (RoofKind::Flat, _) => Area::ZERO,
            (RoofKind::Hip, WindDirection::AcrossRidge) => (along + self.ridge_length()) * rise * 0.5,
            (RoofKind::Hip, WindDirection::AlongRidge) => self.width * rise * 0.5,
            (_, WindDirection::AcrossRidge) => along * rise,
            (_, WindDirection::AlongRidge) => Area::ZERO,
        }
    }

    /// Length of the ridge.
    #[must_use]
    pub fn ridge_length(&self) -> Length {
        match self.roof {
            RoofKind::Hip => (self.length - self.width).abs(),
            RoofKind::Flat => Length::ZERO,
            _ => self.length,
        }
    }

    /// Height of each level that takes wind from the walls, from the lowest floor above ground to the roof.
    #[must_use]
    pub fn levels(&self) -> Vec<Length> {
        let storeys = self.storeys.max(1);
        (1..=storeys).map(|storey| self.eave_height * (f64::from(storey) / f64::from(storeys))).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn house(roof: RoofKind) -> House {
        House {
            length: Length::from_feet(40.0),
            width: Length::from_feet(28.0),
            eave_height: Length::from_feet(10.0),
            storeys: 1,
            roof,
            pitch: Slope::from_rise_in_twelve(6.0),
            eave_overhang: Length::ZERO,
            rake_overhang: Length::ZERO,
            wing_of: None,
        }
    }

    /// Source: a gable of 28 ft by 40 ft, eave 10 ft, 6 in 12: mean roof height 13.5 ft, rise 7 ft.
    #[test]
    fn heights_of_a_gable() {
        let gable = house(RoofKind::Gable);
        assert!((gable.rise().feet() - 7.0).abs() < 1e-12 && (gable.mean_roof_height().feet() - 13.5).abs() < 1e-12);
        let flat = house(RoofKind::Flat);
        assert_eq!((flat.rise(), flat.mean_roof_height()), (Length::ZERO, Length::from_feet(10.0)));
    }

    /// A gable is as high as its width makes it, also where it is wider than long.
    #[test]
    fn a_wide_gable() {
        let wide = House { length: Length::from_feet(16.0), ..house(RoofKind::Gable) };
        assert!((wide.rise().feet() - 7.0).abs() < 1e-12);
        let hip = House { length: Length::from_feet(16.0), ..house(RoofKind::Hip) };
        assert!((hip.rise().feet() - 4.0).abs() < 1e-12);
    }

    #[test]
    fn what_faces_the_wind() {
        use WindDirection::{AcrossRidge, AlongRidge};
        let (gable, hip) = (house(RoofKind::Gable), house(RoofKind::Hip));
        let feet = |area: Area| area.square_feet();
        assert!((feet(gable.roof_projection(AcrossRidge)) - 280.0).abs() < 1e-9);
        assert!((feet(gable.gable_area(AlongRidge)) - 98.0).abs() < 1e-9);
        // A hip: the trapezoid and the triangle.
        assert!((feet(hip.roof_projection(AcrossRidge)) - (40.0 + 12.0) * 3.5).abs() < 1e-9);
        assert!((feet(hip.roof_projection(AlongRidge)) - 98.0).abs() < 1e-9);
        assert_eq!(hip.gable_area(AlongRidge), Area::ZERO);
    }

    #[test]
    fn levels_are_storeys_apart() {
        let two = House { storeys: 2, eave_height: Length::from_feet(19.0), ..house(RoofKind::Gable) };
        assert_eq!(two.levels(), [Length::from_feet(9.5), Length::from_feet(19.0)]);
    }
}
