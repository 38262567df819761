//! ASME B18: sizes of nuts and washers.

use measure::Length;

use crate::{Source, Status};

/// ASME B18.2.2: hex nuts.
pub const HEX_NUTS: Source = Source::new("ASME B18.2.2", "hex nuts", Status::FromMemory);
/// ASME B18.21.1: plain washers, type A, wide. In the trade: cut washers.
pub const CUT_WASHERS: Source = Source::new("ASME B18.21.1", "type A plain washers, wide", Status::FromMemory);

/// Nut and cut washer of one bolt diameter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NutAndWasher {
    /// The bolt's diameter.
    pub diameter: Length,
    /// Height of the hex nut.
    pub nut: Length,
    /// Thickness of the cut washer.
    pub washer: Length,
    /// Outer diameter of the cut washer.
    pub across: Length,
}

const fn row(diameter: f64, nut: f64, washer: f64, across: f64) -> NutAndWasher {
    NutAndWasher {
        diameter: Length::from_inches(diameter),
        nut: Length::from_inches(nut),
        washer: Length::from_inches(washer),
        across: Length::from_inches(across),
    }
}

/// Bolts of the sizes that anchor a house, all from memory.
pub const NUTS_AND_WASHERS: [NutAndWasher; 5] = [
    row(0.5, 7.0 / 16.0, 0.109, 1.375),
    row(0.625, 35.0 / 64.0, 0.134, 1.75),
    row(0.75, 41.0 / 64.0, 0.148, 2.0),
    row(0.875, 3.0 / 4.0, 0.165, 2.25),
    row(1.0, 55.0 / 64.0, 0.165, 2.5),
];

/// Nut and washer of a bolt; none for a diameter that is not listed.
#[must_use]
pub fn nut_and_washer(diameter: Length) -> Option<NutAndWasher> {
    NUTS_AND_WASHERS.into_iter().find(|row| row.diameter == diameter)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: a field case with a 1/2 in bolt: nut 0.4375 in, washer 0.109 in.
    #[test]
    fn a_half_inch_bolt() {
        let half = nut_and_washer(Length::from_inches(0.5)).unwrap();
        assert_eq!((half.nut.inches(), half.washer.inches()), (0.4375, 0.109));
        assert_eq!(nut_and_washer(Length::from_inches(0.6)), None);
    }

    #[test]
    fn a_thicker_bolt_has_a_higher_nut() {
        assert!(NUTS_AND_WASHERS.is_sorted_by(|a, b| a.diameter < b.diameter && a.nut < b.nut && a.washer <= b.washer));
    }
}
