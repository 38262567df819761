//! What the building department gives for a place, and what follows from it for the wind.
//!
//! What is here: the wind speed and its two kinds ([`wind_speed`]), exposure from the ground upwind ([`exposure`]),
//! rising ground ([`topography`]), what a broken window does ([`openings`]), wind-borne debris ([`debris`]), metal near
//! salt water ([`corrosion`]) and earthquakes ([`seismic`]).
//!
//! *Invariant*: what was given is never changed. What was not given is taken on the safe side, and the finding says so.

pub mod corrosion;
pub mod debris;
pub mod exposure;
pub mod openings;
pub mod seismic;
pub mod topography;
pub mod wind_speed;

use measure::{Length, Ratio};
use standards::OutsideTable;
use standards::asce7_16::{
    chapter_1::RiskCategory,
    chapter_26::ground_elevation_factor,
    chapter_26_12::{Coast, hurricane_prone},
};
use standards::irc_2021::r301_2::{Dwelling, SeismicDesignCategory, prescriptive_wind_at};

use crate::site::exposure_category;
use debris::{DebrisFinding, debris_region};
use exposure::{ExposureFinding, Surroundings};
use topography::{Topography, TopographyFinding};
use wind_speed::{GivenSpeed, WindSpeed};

/// The residential code that a department has adopted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum CodeEdition {
    /// IRC 2012.
    Irc2012,
    /// IRC 2015.
    Irc2015,
    /// IRC 2018.
    Irc2018,
    /// IRC 2021.
    Irc2021,
    /// IRC 2024.
    Irc2024,
}

/// What a builder gets from the building department, or finds on the cover sheet.
#[derive(Clone, Debug, PartialEq)]
pub struct SiteCriteria {
    /// The code that was adopted.
    pub edition: CodeEdition,
    /// Kind of dwelling.
    pub dwelling: Dwelling,
    /// Risk category; it chose the map that the wind speed is from.
    pub risk_category: RiskCategory,
    /// Wind speed, with its kind.
    pub wind_speed: GivenSpeed,
    /// Whether the code's map marks the place "wind design required".
    pub in_wind_design_region: bool,
    /// What stands upwind.
    pub surroundings: Surroundings,
    /// Whether the ground rises.
    pub topography: Topography,
    /// Elevation of the ground above the sea; where none is given the air is taken as dense as at the sea, which is
    /// safe above it.
    pub ground_elevation: Option<Length>,
    /// Where the place lies, for hurricanes.
    pub coast: Coast,
    /// Distance to the coast's mean high-water line.
    pub to_coast: Option<Length>,
    /// Whether the water there makes an Exposure D condition at its edge.
    pub open_water_at_coast: bool,
    /// Distance to salt water of any kind: ocean, bay, salt marsh.
    pub to_salt_water: Option<Length>,
    /// Seismic design category, where it is known.
    pub seismic: Option<SeismicDesignCategory>,
}

/// What the criteria come to, for the wind on a house.
#[derive(Clone, Debug, PartialEq)]
pub struct WindCriteria {
    /// Wind speed, both kinds.
    pub speed: WindSpeed,
    /// The worst exposure of all directions, which counts for a low house and its cladding.
    pub exposure: ExposureFinding,
    /// The topographic factor at the mean roof height, or the reason why it is 1.
    pub topography: TopographyFinding,
    /// Ground elevation factor `K_e`.
    pub ground_elevation_factor: Ratio,
    /// Whether wind carries debris there.
    pub debris: DebrisFinding,
}

impl SiteCriteria {
    /// What the criteria come to for a house of a mean roof height. Rising ground is met by the worst exposure of all
    /// directions, whichever way it faces: that is safe.
    ///
    /// # Errors
    /// A wind speed off the maps, a mean roof height that is not above the ground, ground that 26.8 does not cover.
    pub fn wind(&self, mean_roof_height: Length) -> Result<WindCriteria, OutsideTable> {
        let speed = self.wind_speed.both_kinds()?;
        let exposure = self.surroundings.governing(mean_roof_height)?;
        let topography = self.topography.factor_at(exposure.exposure, mean_roof_height)?;
        let ground_elevation_factor = self.ground_elevation.map_or(1.0, ground_elevation_factor);
        let debris = debris_region(self.coast, speed.ultimate, self.to_coast, self.open_water_at_coast);
        Ok(WindCriteria { speed, exposure, topography, ground_elevation_factor, debris })
    }

    /// Why the code's own tables for wind do not reach this house: none where they do.
    ///
    /// # Errors
    /// As [`SiteCriteria::wind`].
    pub fn beyond_prescriptive(&self, mean_roof_height: Length) -> Result<Vec<OutsideTable>, OutsideTable> {
        let WindCriteria { speed, exposure, .. } = self.wind(mean_roof_height)?;
        let by_speed = prescriptive_wind_at(
            self.in_wind_design_region,
            speed.ultimate,
            exposure_category(exposure.exposure),
            hurricane_prone(self.coast, speed.ultimate),
        );
        let on_hill = self.topography.prescriptive(exposure.exposure);
        Ok([by_speed, on_hill].into_iter().filter_map(Result::err).collect())
    }
}
