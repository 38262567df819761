//! Chapter 11: mechanical connections, the factors every fastener shares.
//!
//! Here for nails, whose diameter is under 1/4 in, and for one bolt: the group action factor is 1 for them. The geometry
//! factor of a bolt stands with its distances in chapter 12.

use super::{
    Cited,
    chapter_2::{LoadDuration, ServiceMoisture, SustainedTemperature},
    nds,
};
use crate::Status::{FromMemory, LookedUp, PartlyLookedUp};

/// Largest load duration factor of a connection.
const LARGEST_LOAD_DURATION_FACTOR: f64 = 1.6;

/// Load duration factor `C_D` of a connection: that of the members, and never over 1.6.
///
/// Pure number. Source: NDS 2018 §11.3.2 (looked up).
///
/// ```
/// use standards::nds_2018::{chapter_2::LoadDuration, chapter_11::load_duration_factor};
/// assert_eq!(load_duration_factor(LoadDuration::Impact).value, 1.6);
/// assert_eq!(load_duration_factor(LoadDuration::TwoMonths).value, 1.15);
/// ```
#[must_use]
pub fn load_duration_factor(duration: LoadDuration) -> Cited<f64> {
    Cited::new(duration.factor().value.min(LARGEST_LOAD_DURATION_FACTOR), nds("§11.3.2", LookedUp))
}

/// Moisture of the wood of a connection: dry is at most 19 %.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct ConnectionMoisture {
    /// When the fastener was driven.
    pub at_fabrication: ServiceMoisture,
    /// In service.
    pub in_service: ServiceMoisture,
}

/// Wet service factor `C_M` of a nail across the load: 1 when the wood is dry at both times, 0.7 when it is wet at
/// either.
///
/// Pure number, for fasteners under 1/4 in. Source: NDS 2018 Table 11.3.3 (looked up).
#[must_use]
pub fn wet_service_factor_lateral(moisture: ConnectionMoisture) -> Cited<f64> {
    let dry = moisture == ConnectionMoisture::default();
    Cited::new(if dry { 1.0 } else { 0.7 }, nds("Table 11.3.3", LookedUp))
}

/// Wet service factor `C_M` of a smooth nail pulled out along its shank: 1 when the wood stays dry or stays wet, 0.25
/// when it passes 19 % between the driving and the service.
///
/// Pure number. It does not apply to toe-nails. Source: NDS 2018 Table 11.3.3 (looked up; wet at both times from
/// memory).
#[must_use]
pub fn wet_service_factor_withdrawal(moisture: ConnectionMoisture) -> Cited<f64> {
    let steady = moisture.at_fabrication == moisture.in_service;
    Cited::new(if steady { 1.0 } else { 0.25 }, nds("Table 11.3.3", PartlyLookedUp))
}

/// Wet service factor `C_M` of a post-frame ring shank nail pulled out along its shank: 1, whatever the moisture.
///
/// Pure number. Of roof sheathing ring shank nails nothing was read: [`wet_service_factor_withdrawal`] is the safer one
/// for them. Source: NDS 2018 Table 11.3.3 (looked up).
#[must_use]
pub const fn wet_service_factor_post_frame() -> Cited<f64> {
    Cited::new(1.0, nds("Table 11.3.3", LookedUp))
}

/// Wet service factor `C_M` of one bolt, or of one row along the grain: 1 in dry service, 0.7 in wet. More rows in wood
/// that dries in place have less.
///
/// Pure number, for fasteners of 1/4 in and more. Source: NDS 2018 Table 11.3.3 (from memory).
#[must_use]
pub const fn wet_service_factor_bolt(in_service: ServiceMoisture) -> Cited<f64> {
    let value = match in_service {
        ServiceMoisture::Dry => 1.0,
        ServiceMoisture::Wet => 0.7,
    };
    Cited::new(value, nds("Table 11.3.3", FromMemory))
}

/// Temperature factor `C_t` of a connection.
///
/// Pure number. Source: NDS 2018 Table 11.3.4 (the steps and dry 0.8 looked up, the rest from memory).
#[must_use]
pub const fn temperature_factor(temperature: SustainedTemperature, in_service: ServiceMoisture) -> Cited<f64> {
    use {ServiceMoisture as M, SustainedTemperature as T};
    let value = match (temperature, in_service) {
        (T::UpTo100F, _) => 1.0,
        (T::Over100To125F, M::Dry) => 0.8,
        (T::Over100To125F, M::Wet) | (T::Over125To150F, M::Dry) => 0.7,
        (T::Over125To150F, M::Wet) => 0.5,
    };
    Cited::new(value, nds("Table 11.3.4", PartlyLookedUp))
}
