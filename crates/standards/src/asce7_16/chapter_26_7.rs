//! 26.7: what the ground is like upwind, and the exposure that follows.

use measure::Length;

use super::{DOCUMENT, chapter_26::Exposure};
use crate::{OutsideTable, Source, Status};

/// 26.7.2: surface roughness. Read in the IBC of 2018, 1609.4.2.
pub const SURFACE_ROUGHNESS: Source = Source::new(DOCUMENT, "26.7.2", Status::LookedUp);
/// 26.7.3: exposure. The distances were read in the IBC of 2018, 1609.4.3.
pub const EXPOSURE: Source = Source::new(DOCUMENT, "26.7.3", Status::LookedUp);
/// 26.7.4: the worse of two sectors for a direction of wind; the worst direction of all for a low house and for its
/// cladding. The sectors were read in the IBC of 2018, 1609.4; the rest is from memory.
pub const GOVERNING_SECTOR: Source = Source::new(DOCUMENT, "26.7.4", Status::PartlyLookedUp);
/// Open water is roughness D on a hurricane coast too; editions to 2005 took the hurricane shoreline as C. Read in a
/// seminar's slides on the edition of 2010.
pub const HURRICANE_WATER: Source = Source::new(DOCUMENT, "26.7.2, Surface Roughness D", Status::LookedUp);

/// What a stretch of ground does to the wind.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum SurfaceRoughness {
    /// Town, suburb or wood: many close obstructions of a house's size or larger.
    B,
    /// Open ground with scattered obstructions, most under 30 ft: flat open country, grassland.
    C,
    /// Flat and bare ground, and water: mud flats, salt flats, unbroken ice. Open water counts on a hurricane coast
    /// too.
    D,
}

/// A stretch of ground of one roughness.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretch {
    /// Its roughness.
    pub roughness: SurfaceRoughness,
    /// Its length, along the wind.
    pub length: Length,
}

/// The ground upwind, from the house outward.
#[derive(Clone, Debug, PartialEq)]
pub struct Fetch {
    /// The stretches one after the other, the nearest first.
    pub stretches: Vec<Stretch>,
    /// All ground beyond them.
    pub beyond: SurfaceRoughness,
}

impl Fetch {
    /// The same ground all the way.
    #[must_use]
    pub const fn all(roughness: SurfaceRoughness) -> Self {
        Self { stretches: Vec::new(), beyond: roughness }
    }
}

/// The sentence of 26.7.3 that gave the exposure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ExposureRule {
    /// B: roughness B for more than 1,500 ft, under a mean roof height of 30 ft or less.
    SheltersLowHouse,
    /// B: roughness B for more than 2,600 ft and 20 heights, under a mean roof height over 30 ft.
    SheltersHighHouse,
    /// D: roughness D from the house on, for 5,000 ft and 20 heights.
    OpenFromTheHouse,
    /// D: such ground begins within 600 ft or 20 heights of the house.
    NearOpenGround,
    /// C: where neither B nor D applies.
    NeitherOfTheOthers,
}

impl ExposureRule {
    /// The exposure that it gives.
    #[must_use]
    pub const fn exposure(self) -> Exposure {
        match self {
            Self::SheltersLowHouse | Self::SheltersHighHouse => Exposure::B,
            Self::OpenFromTheHouse | Self::NearOpenGround => Exposure::D,
            Self::NeitherOfTheOthers => Exposure::C,
        }
    }
}

/// Mean roof height to which the shorter distance of roughness B is enough.
const LOW_HOUSE: Length = Length::from_feet(30.0);
const SHELTER_OF_LOW: Length = Length::from_feet(1500.0);
const SHELTER_OF_HIGH: Length = Length::from_feet(2600.0);
const OPEN_GROUND: Length = Length::from_feet(5000.0);
const NEAR: Length = Length::from_feet(600.0);
const HEIGHTS: f64 = 20.0;

/// The sentence of 26.7.3 that applies to one direction of wind, for a mean roof height.
///
/// The texts differ by a word at the limits: "greater than" here, from memory, and "not less than" in the IBC. The
/// harsher is used: exactly 1,500 ft is not enough shelter for B, and exactly 5,000 ft is open enough for D. The
/// exposure between two categories that the clause permits near a change of ground is not used. A patch of other
/// ground ends a stretch, however small it is.
///
/// # Errors
/// A mean roof height that is not above the ground, or a stretch without length.
///
/// ```
/// use measure::Length;
/// use standards::asce7_16::chapter_26_7::{ExposureRule, Fetch, Stretch, SurfaceRoughness, exposure_rule};
/// // 550 ft of wood, and then the bay.
/// let wood = Stretch { roughness: SurfaceRoughness::B, length: Length::from_feet(550.0) };
/// let fetch = Fetch { stretches: vec![wood], beyond: SurfaceRoughness::D };
/// assert_eq!(exposure_rule(Length::from_feet(25.0), &fetch)?, ExposureRule::NearOpenGround);
/// # Ok::<(), standards::OutsideTable>(())
/// ```
pub fn exposure_rule(mean_roof_height: Length, fetch: &Fetch) -> Result<ExposureRule, OutsideTable> {
    if mean_roof_height <= Length::ZERO || fetch.stretches.iter().any(|stretch| stretch.length <= Length::ZERO) {
        return Err(OutsideTable {
            source: EXPOSURE,
            given: given(mean_roof_height, fetch),
            covers: "mean roof heights and stretches of ground longer than nothing",
            next_step: "Measure them on a map or an aerial picture.",
        });
    }
    let heights = mean_roof_height * HEIGHTS;
    match open_ground_begins(fetch, OPEN_GROUND.max(heights)) {
        Some(Length::ZERO) => return Ok(ExposureRule::OpenFromTheHouse),
        Some(start) if start <= NEAR.max(heights) => return Ok(ExposureRule::NearOpenGround),
        _ => {}
    }
    let (shelter, rule) = if mean_roof_height <= LOW_HOUSE {
        (SHELTER_OF_LOW, ExposureRule::SheltersLowHouse)
    } else {
        (SHELTER_OF_HIGH.max(heights), ExposureRule::SheltersHighHouse)
    };
    Ok(if is_sheltered(fetch, shelter) { rule } else { ExposureRule::NeitherOfTheOthers })
}

fn given(mean_roof_height: Length, fetch: &Fetch) -> String {
    let shortest = fetch.stretches.iter().map(|stretch| stretch.length.feet()).fold(f64::INFINITY, f64::min);
    let height = mean_roof_height.feet();
    if shortest.is_finite() {
        format!("mean roof height {height} ft, shortest stretch {shortest} ft")
    } else {
        format!("mean roof height {height} ft")
    }
}

/// How far off the nearest roughness D begins that goes on for at least `needed`.
fn open_ground_begins(fetch: &Fetch, needed: Length) -> Option<Length> {
    let (mut at, mut run) = (Length::ZERO, Length::ZERO);
    for stretch in &fetch.stretches {
        run = if stretch.roughness == SurfaceRoughness::D { run + stretch.length } else { Length::ZERO };
        at += stretch.length;
        if run > Length::ZERO && run >= needed {
            return Some(beginning(at, run));
        }
    }
    (fetch.beyond == SurfaceRoughness::D).then_some(beginning(at, run))
}

/// Where a run that has come as far as `at` began; nothing is nearer than the house.
fn beginning(at: Length, run: Length) -> Length {
    (at - run).max(Length::ZERO)
}

/// Whether roughness B goes on from the house for more than `needed`.
fn is_sheltered(fetch: &Fetch, needed: Length) -> bool {
    let shelters = |stretch: &&Stretch| stretch.roughness == SurfaceRoughness::B;
    let near: Vec<_> = fetch.stretches.iter().take_while(shelters).collect();
    let goes_on = near.len() == fetch.stretches.len() && fetch.beyond == SurfaceRoughness::B;
    goes_on || near.iter().map(|stretch| stretch.length).sum::<Length>() > needed
}
