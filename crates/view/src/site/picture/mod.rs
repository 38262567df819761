//! The house with what is looked at, and the small pictures of options.

mod option;
mod section;
mod solid;
mod zones;

use framing::reading::Reading;
use framing::site::reply::{GravityReply, SnowReply, WindReply};
use framing::site::{DrawnHouse, drawn};
use measure::Length;

use super::Topic;
use crate::scene::Scene;

pub(super) use option::option;

/// The picture of a topic.
pub(super) fn picture(
    topic: Topic,
    reading: &Reading,
    (wind, snow, gravity): (&WindReply, &SnowReply, &GravityReply),
) -> Scene {
    let Some(house) = drawn(reading) else { return empty() };
    match topic {
        Topic::Parts => zones::picture(&house, wind),
        Topic::House => solid::push(&house, wind),
        Topic::Uplift => section::lift(&house, wind),
        Topic::Snow => section::snow(&house, snow),
        Topic::Weights => section::weights(&house, gravity),
    }
}

/// A sheet with nothing drawn on it.
pub(super) fn empty() -> Scene {
    Scene {
        left: 0.0,
        top: 0.0,
        width: 100.0,
        height: 60.0,
        marks: Vec::new(),
        alt: "Nothing is drawn yet.".to_owned(),
    }
}

/// The house in feet, as drawings take it.
#[derive(Clone, Copy)]
struct Feet {
    length: f64,
    width: f64,
    eave: f64,
    ridge: f64,
    ridge_length: f64,
    overhang: f64,
    zone: f64,
    /// Widths of a flat roof's zones: corner, edge, inner.
    flat: [f64; 3],
    is_hip: bool,
}

impl Feet {
    fn of(house: &DrawnHouse) -> Self {
        Self {
            length: house.length.feet(),
            width: house.width.feet(),
            eave: house.eave_height.feet(),
            ridge: house.ridge_height.feet(),
            ridge_length: house.ridge_length.feet(),
            overhang: house.overhang.feet(),
            zone: house.zone_width.feet(),
            flat: [house.flat_zones.corner, house.flat_zones.edge, house.flat_zones.inner].map(Length::feet),
            is_hip: house.roof == "hip",
        }
    }

    fn is_flat(&self) -> bool {
        self.ridge <= self.eave
    }

    /// How far the ridge's ends stand from the gable ends.
    fn hip_run(&self) -> f64 {
        if self.is_hip { (self.length - self.ridge_length).max(0.0) / 2.0 } else { 0.0 }
    }
}
