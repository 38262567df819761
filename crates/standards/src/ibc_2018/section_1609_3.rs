//! 1609.3.1: ultimate and nominal wind speeds.

use measure::Speed;

use super::DOCUMENT;
use crate::{Source, Status};

/// 1609.3.1, Eq. 16-33: nominal wind speed.
pub const NOMINAL_SPEED: Source = Source::new(DOCUMENT, "1609.3.1, Eq. 16-33", Status::LookedUp);
/// Table 1609.3.1: the same as a table.
pub const CONVERSIONS: Source = Source::new(DOCUMENT, "Table 1609.3.1", Status::LookedUp);

/// Share of the strength-level wind pressure that is the allowable-stress one.
const PRESSURE_RATIO: f64 = 0.6;

/// Table 1609.3.1 as printed: ultimate speed, nominal speed. At 100 mph the equation gives 77.46 and the print 78; at
/// the others the print is the equation's value to the nearest mile per hour.
pub const TABLE_1609_3_1: [(Speed, Speed); 11] = [
    row(100.0, 78.0),
    row(110.0, 85.0),
    row(120.0, 93.0),
    row(130.0, 101.0),
    row(140.0, 108.0),
    row(150.0, 116.0),
    row(160.0, 124.0),
    row(170.0, 132.0),
    row(180.0, 139.0),
    row(190.0, 147.0),
    row(200.0, 155.0),
];

const fn row(ultimate: f64, nominal: f64) -> (Speed, Speed) {
    (Speed::from_mph(ultimate), Speed::from_mph(nominal))
}

/// Nominal (allowable-stress) wind speed `V_asd = V sqrt(0.6)` of an ultimate one.
///
/// ```
/// use measure::Speed;
/// use standards::ibc_2018::section_1609_3::nominal_speed;
/// assert_eq!(nominal_speed(Speed::from_mph(140.0)).mph().round(), 108.0);
/// ```
#[must_use]
pub fn nominal_speed(ultimate: Speed) -> Speed {
    ultimate * PRESSURE_RATIO.sqrt()
}

/// Ultimate wind speed `V = V_asd / sqrt(0.6)` of a nominal one.
#[must_use]
pub fn ultimate_speed(nominal: Speed) -> Speed {
    nominal / PRESSURE_RATIO.sqrt()
}
