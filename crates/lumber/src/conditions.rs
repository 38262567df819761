//! Where and how a member is used.

use standards::nds_2018::chapter_2::{ServiceMoisture, SustainedTemperature};

/// Where and how a member is used; the default is dry, not incised, on its own, at usual temperatures.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Conditions {
    /// Moisture in service.
    pub service: ServiceMoisture,
    /// Slit for treatment: look for the pattern of slits.
    pub incised: bool,
    /// One of three or more alike, at most 24 in apart or touching, with something that spreads the load. Whoever
    /// asks decides; products without such a factor ignore it.
    pub repetitive: bool,
    /// Temperature it is held at for long.
    pub temperature: SustainedTemperature,
}
