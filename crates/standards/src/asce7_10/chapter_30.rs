//! Chapter 30: roofs of this edition, in three zones.

use measure::Area;

use super::DOCUMENT;
use crate::asce7_16::chapter_30::Toward;
use crate::asce7_16::chapter_30::roofs::{Curve, Figure, Roof, RoofCoefficient, RoofShape, RoofZone, read};
use crate::{Source, Status};

/// The figures' curves.
pub const CURVES: &[Curve] = include!(concat!(env!("OUT_DIR"), "/asce7_10_fig_30_4_2.rs"));

/// External pressure coefficient of a part of a roof in this edition; none where its figures have none: hip roofs over
/// 27 degrees, gable roofs over 45, and overhangs away from an edge.
#[must_use]
pub fn roof_pressure_coefficient(
    roof: &Roof,
    zone: RoofZone,
    toward: Toward,
    area: Area,
    overhang: bool,
) -> Option<RoofCoefficient> {
    let figure = match (roof.shape, roof.angle.degrees()) {
        (_, 0.0..=7.0) => Figure::Flat,
        (_, ..=27.0) => Figure::To27,
        (RoofShape::Gable, ..=45.0) => Figure::GableTo45,
        _ => return None,
    };
    let zone = match zone {
        RoofZone::OnePrime | RoofZone::One => RoofZone::One,
        RoofZone::Two | RoofZone::TwoE | RoofZone::TwoN | RoofZone::TwoR => RoofZone::Two,
        RoofZone::Three | RoofZone::ThreeE | RoofZone::ThreeR => RoofZone::Three,
    };
    let (gc_p, status) = read(CURVES, figure, zone, toward, area, overhang)?;
    Some(RoofCoefficient { gc_p, source: Source::new(DOCUMENT, "Figs. 30.4-2A to 30.4-2C", status) })
}
