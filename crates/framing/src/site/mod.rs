//! Site: what loads a house at its place, from what the building department says, the ground and the house's outline.
//!
//! Where to look: [`derive_site`] reads and answers all of it; `input` has the quantities, one file a topic has its answer
//! in plain data ([`reply`]), `says` its sentences and `working` its steps. [`starts`] is what every check of the job
//! begins with.

pub(crate) mod about;
mod case;
mod gravity;
pub(crate) mod input;
pub mod reply;
mod says;
mod snow;
mod starts;
mod wind;
mod worked;
mod working;

pub use case::SiteCase;
pub(crate) use gravity::roof_and_ceiling;
pub use gravity::{ROOF_LIVE_HEADING, weight_heading};
pub use input::{DrawnHouse, drawn};
pub(crate) use says::metal_of_class;
pub use starts::starts;
pub(crate) use wind::{cases, governing_push, refused};
pub use worked::work_out;
pub use working::{LIFT_HEADING, SNOW_HEADING, part_heading, push_heading};

use measure::Length;

use crate::Texts;
use crate::field::site_fields;
use crate::reading::{Origin, Reading};
use crate::reply::Refusal;
use crate::words;
use reply::{GravityReply, SnowReply, WindReply};

/// The names of the layers whose weight is known.
pub fn layer_names() -> impl Iterator<Item = &'static str> {
    loads::weights::LAYERS.iter().map(|layer| layer.name)
}

/// Values of which none was said.
pub struct Nothing;

impl Texts for Nothing {
    fn text(&self, _: &str) -> Option<&str> {
        None
    }
}

/// What the wind rests on.
const OF_WIND: &[&str] = &[
    "wind_speed",
    "speed_given_as",
    "load_standard",
    "exposure",
    "hill",
    "ground_elevation",
    "enclosure",
    "storeys",
    "building_length",
    "house_width",
    "eave_height",
    "roof_kind",
    "roof_pitch",
    "eave_overhang",
    "rake_overhang",
    "open_side",
    "parapet",
    "opening_wide",
    "opening_high",
    "stud_height",
    "studs_apart",
    "rafters_apart",
    "roof_dead",
    "ceiling_dead",
];

/// What the snow rests on.
const OF_SNOW: &[&str] = &[
    "ground_snow",
    "load_standard",
    "risk_category",
    "exposure",
    "thermal",
    "roof_surface",
    "simple_rafters",
    "house_width",
    "roof_kind",
    "roof_pitch",
];

/// What weights and live loads rest on.
const OF_GRAVITY: &[&str] =
    &["roof_dead", "ceiling_dead", "floor_dead", "wall_dead", "house_width", "roof_pitch", "rafters_apart"];

/// What was understood of a place, and what follows from it.
#[derive(Clone, Debug, PartialEq)]
pub struct SiteOutcome {
    /// What was understood.
    pub reading: Reading,
    /// The wind, the snow, and weights with live loads; none when an input is wrong.
    pub answered: Option<(WindReply, SnowReply, GravityReply)>,
}

impl SiteOutcome {
    /// The inputs that were refused.
    #[must_use]
    pub fn refusals(&self) -> Vec<Refusal> {
        let refusal = |(field, problem): (&str, &str)| Refusal { field: field.to_owned(), problem: problem.to_owned() };
        self.reading.problems().map(refusal).collect()
    }
}

/// Reads a place. What was not said is assumed; what does not agree is said where it is.
#[must_use]
pub fn read_site(fields: &dyn Texts) -> Reading {
    let mut reading = Reading::of(site_fields(), fields, &Nothing);
    refuse_what_does_not_agree(&mut reading);
    reading
}

/// Reads and answers a place.
#[must_use]
pub fn derive_site(fields: &dyn Texts) -> SiteOutcome {
    let reading = read_site(fields);
    let good = reading.problems().next().is_none();
    let answered =
        good.then(|| Some((wind::wind(&reading)?, snow::snow(&reading)?, gravity::gravity(&reading)?))).flatten();
    SiteOutcome { reading, answered }
}

fn refuse_what_does_not_agree(reading: &mut Reading) {
    for id in ["roof_layers", "ceiling_layers", "floor_layers", "wall_layers"] {
        if let Err(problem) = input::layers(reading, id) {
            reading.refuse(id, problem);
        }
    }
    if let Some(problem) = speed_off_the_maps(reading) {
        reading.refuse("wind_speed", problem);
    }
    if let Some(problem) = roof_under_its_eave(reading) {
        reading.refuse("mean_roof_height", problem);
    }
    let factor_given = reading.get("topographic_factor").is_some_and(|value| value.origin != Origin::Assumed);
    let any_height = Length::from_feet(30.0);
    if let Some(Err(outside)) = input::ground_finding(reading, any_height).filter(|_| !factor_given) {
        let shape = reading.word("hill") == Some("valley");
        let problem = if shape { format!("{outside} Type it as the topographic factor.") } else { outside.to_string() };
        reading.refuse(if shape { "hill" } else { "hill_half_length" }, problem);
    }
    if let Some(house) = input::house(reading)
        && let Some(Err(outside)) = input::glass(reading, &house)
    {
        let largest = ["glass_front", "glass_back", "glass_left", "glass_right"]
            .into_iter()
            .max_by(|a, b| reading.number(a).unwrap_or(0.0).total_cmp(&reading.number(b).unwrap_or(0.0)));
        reading.refuse(largest.unwrap_or("glass_front"), outside.to_string());
    }
}

/// A mean roof height is not under the eave, where both were typed.
fn roof_under_its_eave(reading: &Reading) -> Option<String> {
    let typed = |id| reading.get(id).filter(|value| value.origin != Origin::Assumed).and_then(|_| reading.length(id));
    let (mean, eave) = (typed("mean_roof_height")?, typed("eave_height")?);
    (mean < eave).then(|| {
        format!(
            "{} is under the eave at {}. The mean roof height is half-way from eave to ridge; empty, it is worked out.",
            words::length(mean),
            words::length(eave)
        )
    })
}

/// A nominal speed may be lower than any on the maps; the ultimate one that it stands for may not.
pub(crate) fn speed_off_the_maps(reading: &Reading) -> Option<String> {
    let basic = input::basic_speed(reading)?;
    standards::asce7_16::chapter_26::basic_wind_speed_is_mapped(basic).err().map(|outside| outside.to_string())
}

pub(crate) use input::basic_speed;
