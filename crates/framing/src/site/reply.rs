//! What the command answers of a place: plain data, with units in the names. Pressures and forces are at
//! allowable-stress level unless a name says strength.

use schemars::JsonSchema;
use serde::Serialize;

use crate::reply::{AssumedReply, WorkingReply};

/// What goes with each answer.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
pub struct AboutReply {
    /// What to know, in sentences.
    pub says: Vec<String>,
    /// What is not for this tool to decide, and who decides.
    pub outside: Vec<String>,
    /// Questions still to be answered: the input and the question.
    pub questions: Vec<(String, String)>,
    /// What was assumed.
    pub assumed: Vec<AssumedReply>,
    /// The usual cautions.
    pub cautions: Vec<String>,
    /// The working.
    pub working: Vec<WorkingReply>,
}

/// Wind on a part.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct PressureReply {
    /// What it is: `wall`, `roof`, `overhang`, `opening`, `header`, `stud`, `rafter`.
    pub part: String,
    /// Its zone: `5`, `2e`.
    pub zone: String,
    /// Where that is, in words.
    pub place: String,
    /// Effective wind area.
    pub area_sqft: f64,
    /// Toward the house; none for an overhang.
    pub inward_psf: Option<f64>,
    /// Away from it, without a sign.
    pub outward_psf: f64,
    /// The same at strength level.
    pub inward_strength_psf: Option<f64>,
    /// The same at strength level.
    pub outward_strength_psf: f64,
    /// Where the coefficient comes from.
    pub source: String,
}

/// One level of a push.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct LevelReply {
    /// Its height above the ground.
    pub height: String,
    /// What comes in here.
    pub here_lb: f64,
    /// What the walls below it carry.
    pub shear_below_lb: f64,
}

/// The push of the wind on the house.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct PushReply {
    /// `across the ridge` or `along the ridge`.
    pub direction: String,
    /// `directional` or `envelope`.
    pub procedure: String,
    /// From the lowest level up.
    pub levels: Vec<LevelReply>,
    /// What goes straight to the foundation.
    pub to_foundation_lb: f64,
    /// All of it.
    pub total_lb: f64,
    /// All of it at strength level.
    pub total_strength_lb: f64,
    /// Moment about the ground.
    pub overturning_ft_lb: f64,
    /// Whether the least load of the clause governs.
    pub least_governs: bool,
    /// Whether it is the larger of the two procedures.
    pub governs: bool,
}

/// What lifts the roof at the eave walls.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct UpliftReply {
    /// Lift by load case: where, and lb a foot at strength level at both walls.
    pub cases: Vec<(String, f64, f64)>,
    /// Weight that holds it down, lb a foot.
    pub dead_plf: f64,
    /// Net lift in the end strip, `0.6D + 0.6W`, lb a foot; negative where the weight holds it.
    pub net_end_plf: f64,
    /// The same away from the ends.
    pub net_interior_plf: f64,
    /// Spacing of the rafters.
    pub rafters_apart: String,
    /// Net lift of a rafter in the end strip, lb.
    pub rafter_end_lb: f64,
    /// The same away from the ends.
    pub rafter_interior_lb: f64,
}

/// The wind on a house.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
pub struct WindReply {
    /// Basic (ultimate) speed.
    pub speed_mph: f64,
    /// The same as a nominal speed.
    pub nominal_mph: f64,
    /// Exposure.
    pub exposure: String,
    /// Mean roof height, in words.
    pub mean_roof_height: String,
    /// Topographic factor.
    pub topographic_factor: f64,
    /// Velocity pressure at mean roof height, strength level, for cladding.
    pub q_h_psf: Option<f64>,
    /// Width of the zones along edges and corners, in words.
    pub end_width: String,
    /// Wind on parts.
    pub pressures: Vec<PressureReply>,
    /// The opening at a corner, were the glass to break and the wind to push from inside.
    pub if_glass_breaks: Option<PressureReply>,
    /// The push on the house.
    pub push: Vec<PushReply>,
    /// What lifts the roof.
    pub uplift: Option<UpliftReply>,
    /// The wing, where one is described.
    pub wing: Option<WingReply>,
    /// What goes with it.
    #[serde(flatten)]
    pub about: AboutReply,
}

/// The wind on a wing, or on a garage beside the house.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
pub struct WingReply {
    /// Mean roof height that it is worked with, in words: the house's where it is built against it.
    pub mean_roof_height: String,
    /// Width of the zones along edges and corners, in words.
    pub end_width: String,
    /// Wind on parts of its roof; its walls are as the house's.
    pub pressures: Vec<PressureReply>,
    /// The push on it.
    pub push: Vec<PushReply>,
    /// What lifts its roof.
    pub uplift: Option<UpliftReply>,
}

/// A case of snow.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct SnowCaseReply {
    /// Its name.
    pub name: String,
    /// On the windward slope, or all over.
    pub windward_psf: f64,
    /// On the leeward slope.
    pub leeward_psf: f64,
    /// More, and how far it reaches: heaviest psf, feet, and whether it falls to nothing there.
    pub more: Option<(f64, f64, bool)>,
    /// What it acts with, in words.
    pub acts: String,
}

/// The snow on a roof.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
pub struct SnowReply {
    /// Ground snow.
    pub ground_psf: f64,
    /// Flat roof.
    pub flat_psf: f64,
    /// Slope factor.
    pub slope_factor: f64,
    /// Balanced.
    pub balanced_psf: f64,
    /// The heaviest on a rafter of the main roof; none while a case cannot be worked.
    pub heaviest_psf: Option<f64>,
    /// Every case.
    pub cases: Vec<SnowCaseReply>,
    /// What goes with it.
    #[serde(flatten)]
    pub about: AboutReply,
}

/// A weight, with the layers that it is made of.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct WeightReply {
    /// Of what: `roof`, `ceiling`, `floor`, `wall`.
    pub of: String,
    /// Its layers and their weights, on their own surface.
    pub layers: Vec<(String, f64, String)>,
    /// Altogether, on the level for a roof.
    pub psf: f64,
}

/// A live load by use.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct LiveReply {
    /// The use.
    pub of: String,
    /// Its live load.
    pub psf: f64,
    /// The input that it is typed in.
    pub input: String,
    /// Where it comes from.
    pub source: String,
}

/// Weights and live loads.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
pub struct GravityReply {
    /// Weights.
    pub weights: Vec<WeightReply>,
    /// Live loads by use.
    pub live: Vec<LiveReply>,
    /// Roof live load of a rafter by the residential code's table.
    pub roof_live_by_table_psf: f64,
    /// The same by the load standard's equation.
    pub roof_live_by_equation_psf: f64,
    /// The combinations: how they are written, and the load duration factor that goes with each.
    pub combinations: Vec<(String, f64)>,
    /// What goes with it.
    #[serde(flatten)]
    pub about: AboutReply,
}
