//! IBC 2018, Section 1609: the nominal wind speed, wind-borne debris.

use measure::{Length, Speed};

use crate::{Source, Status};

const DOCUMENT: &str = "IBC 2018";

/// Eq. 16-33: nominal and basic speed.
pub const NOMINAL_SPEED: Source = Source::new(DOCUMENT, "1609.3.1, Eq. 16-33", Status::LookedUp);
/// Clause 202: hurricane-prone and wind-borne debris regions.
pub const DEBRIS_REGION: Source = Source::new(DOCUMENT, "202, 1609.2", Status::LookedUp);

/// Share of the square of the speed that allowable-stress design takes.
const ASD: f64 = 0.6;

/// Nominal (allowable-stress) speed `V_asd = V sqrt(0.6)` of a basic (ultimate) one.
#[must_use]
pub fn nominal_speed(basic: Speed) -> Speed {
    Speed::from_mph(basic.mph() * ASD.sqrt())
}

/// The basic (ultimate) speed of a nominal one.
#[must_use]
pub fn basic_speed(nominal: Speed) -> Speed {
    Speed::from_mph(nominal.mph() / ASD.sqrt())
}

/// Whether a place on a hurricane coast is in the wind-borne debris region: 140 mph anywhere, or 130 mph within a mile of
/// the water's mean high line. ASCE 7 asks beside that for open water upwind at the waterline; this text does not, and
/// takes in more.
#[must_use]
pub fn is_wind_borne_debris_region(basic: Speed, to_water: Option<Length>) -> bool {
    let within_a_mile = to_water.is_none_or(|distance| distance <= Length::from_feet(5280.0));
    basic >= Speed::from_mph(140.0) || (basic >= Speed::from_mph(130.0) && within_a_mile)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: IBC 2018 Table 1609.3.1, whole mph. At 100 mph the equation gives 77.5 and the table prints 78.
    #[test]
    fn nominal_speeds_as_printed() {
        let printed = [78.0, 85.0, 93.0, 101.0, 108.0, 116.0, 124.0, 132.0, 139.0, 147.0, 155.0];
        for (step, printed) in printed.into_iter().enumerate() {
            let basic = Speed::from_mph(100.0 + 10.0 * step as f64);
            assert!((nominal_speed(basic).mph() - printed).abs() <= 0.55, "{}", basic.mph());
            assert!((basic_speed(nominal_speed(basic)).mph() - basic.mph()).abs() < 1e-12);
        }
    }

    #[test]
    fn debris_by_speed_and_distance() {
        let in_it =
            |mph: f64, feet: f64| is_wind_borne_debris_region(Speed::from_mph(mph), Some(Length::from_feet(feet)));
        assert!(in_it(140.0, 1e6) && in_it(130.0, 5280.0));
        assert!(!in_it(130.0, 5281.0) && !in_it(129.0, 0.0));
    }
}
