//! The screen of Site: from a place's outcome to what is shown.

mod answer;
mod given;
pub mod layers;
mod picture;
mod tables;

use std::sync::Arc;

use framing::Texts;
use framing::field::site_fields;
use framing::site::reply::{GravityReply, SnowReply, WindReply};
use framing::site::{SiteOutcome, derive_site};
use framing::words::figure;

pub use given::{GIVERS, Given, give, given, write};

use crate::inputs;
use crate::model::{Answer, Field, FieldId, Group, State, Table, WorkingPart};
use crate::replied::working;
use crate::scene::Scene;

/// The input that comes to hand first.
pub const FIRST: FieldId = "wind_speed";

/// What is looked at.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Topic {
    /// Wind on its parts: walls, windows, studs, roof.
    #[default]
    Parts,
    /// Wind on the whole house: the push and the turning over.
    House,
    /// What lifts the roof.
    Uplift,
    /// Snow.
    Snow,
    /// Weights and live loads.
    Weights,
}

impl Topic {
    /// All of them, in order.
    pub const ALL: [Self; 5] = [Self::Parts, Self::House, Self::Uplift, Self::Snow, Self::Weights];

    /// Its word.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Parts => "Parts",
            Self::House => "Push",
            Self::Uplift => "Uplift",
            Self::Snow => "Snow",
            Self::Weights => "Weight",
        }
    }
}

impl Topic {
    /// The input that comes to hand with it.
    #[must_use]
    pub const fn first(self) -> FieldId {
        match self {
            Self::Parts => FIRST,
            Self::House => "eave_height",
            Self::Uplift => "roof_pitch",
            Self::Snow => "ground_snow",
            Self::Weights => "roof_layers",
        }
    }
}

/// What is asked one after the other the first time.
pub const FIRST_QUESTIONS: [FieldId; 12] = [
    "wind_speed",
    "speed_given_as",
    "exposure",
    "hill",
    "ground_snow",
    "hurricane_coast",
    "salt_water",
    "storeys",
    "building_length",
    "house_width",
    "eave_height",
    "roof_pitch",
];

/// Whether nothing of the place was said yet.
#[must_use]
pub fn is_first_time(fields: &dyn Texts) -> bool {
    FIRST_QUESTIONS.iter().all(|id| fields.text(id).is_none())
}

/// Everything that the screen of Site shows.
#[derive(Clone, Debug, PartialEq)]
pub struct SiteScreen {
    /// The answer to what is looked at.
    pub answer: Answer,
    /// False when an input is wrong and the answer is the last good one.
    pub current: bool,
    /// The house, with what is looked at.
    pub picture: Scene,
    /// The inputs, in order.
    pub fields: Arc<Vec<Field>>,
    /// Questions still to be answered, each with the field that answers it.
    pub questions: Vec<(FieldId, String)>,
    /// What is to be known beside it.
    pub known: Vec<String>,
    /// The results of what is looked at.
    pub tables: Vec<Table>,
    /// Published values that one tap writes: the input, what it is of, and the value.
    pub published: Vec<(String, String, String)>,
    /// What was assumed.
    pub assumptions: Vec<(Option<FieldId>, String)>,
    /// The usual cautions.
    pub cautions: Vec<String>,
    /// The working of what is looked at.
    pub working: Vec<WorkingPart>,
}

impl SiteScreen {
    /// What is published for an input, and the value.
    #[must_use]
    pub fn published_for(&self, input: FieldId) -> Vec<(String, String)> {
        let of_input = self.published.iter().filter(|(of, ..)| of == input);
        of_input.map(|(_, of, value)| (of.clone(), value.clone())).collect()
    }
}

/// The small picture of an option, where it has one.
#[must_use]
pub fn option_picture(field: FieldId, value: &str, words: &str) -> Option<Scene> {
    picture::option(field, value, words)
}

/// What the screen of Site shows for what was typed.
///
/// When an input is wrong the last good answer stays, marked as not current; the inputs are always those of now.
#[must_use]
pub fn screen(fields: &dyn Texts, topic: Topic, last_good: Option<&SiteScreen>) -> SiteScreen {
    let outcome = derive_site(fields);
    let inputs = Arc::new(inputs::fields(&outcome.reading).into_iter().map(in_its_place).collect());
    match &outcome.answered {
        Some(answered) => SiteScreen { fields: inputs, ..shown(&outcome, topic, answered) },
        None => {
            let kept = last_good.cloned().unwrap_or_else(nothing_yet);
            SiteScreen { fields: inputs, current: false, ..kept }
        }
    }
}

/// What a check knows as a load of the site stands here by what it is of.
fn in_its_place(field: Field) -> Field {
    let group = match field.id {
        "edition" | "wind_speed" | "speed_given_as" | "ground_snow" => Group::Place,
        "exposure" => Group::Upwind,
        "topographic_factor" | "ground_elevation" => Group::Ground,
        "mean_roof_height" => Group::House,
        "enclosure" => Group::Glass,
        "snow_exposure" | "thermal" | "roof_snow" => Group::RoofSnow,
        "roof_dead" | "ceiling_dead" | "attic_live" | "floor_dead" | "floor_live" | "roof_live" => Group::Weights,
        _ => field.group,
    };
    Field { group, ..field }
}

fn shown(outcome: &SiteOutcome, topic: Topic, answered: &Answered) -> SiteScreen {
    let (wind, snow, gravity) = answered;
    let about = match topic {
        Topic::Parts | Topic::House | Topic::Uplift => &wind.about,
        Topic::Snow => &snow.about,
        Topic::Weights => &gravity.about,
    };
    let field = |id: &str| site_fields().map(|spec| spec.id).find(|known| *known == id);
    SiteScreen {
        answer: answer::answer(topic, wind, snow, gravity),
        current: true,
        picture: picture::picture(topic, &outcome.reading, (wind, snow, gravity)),
        fields: Arc::default(),
        questions: about.questions.iter().filter_map(|(id, asks)| Some((field(id)?, asks.clone()))).collect(),
        known: about.says.clone(),
        tables: tables::tables(topic, answered, &|heading| {
            about.working.iter().position(|part| part.heading == heading)
        }),
        published: published(gravity),
        assumptions: about.assumed.iter().map(|one| (one.input.as_deref().and_then(field), one.says.clone())).collect(),
        cautions: about.cautions.clone(),
        working: about.working.iter().map(working).collect(),
    }
}

/// Live loads by use, and the roof's for one rafter.
fn published(gravity: &GravityReply) -> Vec<(String, String, String)> {
    let one = |input: &str, of: &str, psf: f64| (input.to_owned(), of.to_owned(), format!("{} psf", figure(psf)));
    let by_use = gravity.live.iter().map(|live| one(&live.input, &live.of, live.psf));
    let of_roof = [
        ("residential code's table", gravity.roof_live_by_table_psf),
        ("load standard's equation", gravity.roof_live_by_equation_psf),
    ];
    by_use.chain(of_roof.map(|(of, psf)| one("roof_live", of, psf))).collect()
}

/// The wind, the snow, and weights with live loads.
type Answered = (WindReply, SnowReply, GravityReply);

/// Before anything could be answered.
fn nothing_yet() -> SiteScreen {
    SiteScreen {
        answer: Answer {
            state: State::NotKnown,
            figure: "Site".to_owned(),
            word: "still to be said".to_owned(),
            share: None,
            share_text: String::new(),
            action: Vec::new(),
        },
        current: false,
        picture: Scene { left: 0.0, top: 0.0, width: 100.0, height: 60.0, marks: Vec::new(), alt: String::new() },
        fields: Arc::default(),
        questions: Vec::new(),
        known: Vec::new(),
        tables: Vec::new(),
        published: Vec::new(),
        assumptions: Vec::new(),
        cautions: Vec::new(),
        working: Vec::new(),
    }
}
