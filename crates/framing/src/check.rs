//! The headless command's lines: one JSON object in, one JSON object out.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::HeaderCase;
use crate::answering::reply;
use crate::bracing;
use crate::header::derive_header;
use crate::layout;
use crate::member;
use crate::quick::reply::QuickReply;
use crate::quick::{OfKind, QuickCase, QuickKind as _, derive};
use crate::reply::{HeaderReply, Refusal};
use crate::site::reply::{GravityReply, SnowReply, WindReply};
use crate::site::{Nothing, SiteCase, derive_site};
use crate::walk::flatness::{self, FlatnessCase};
use crate::walk::hold_down_point::{self, HoldDownPointCase};
use crate::walk::moisture::{self, MoistureCase};
use crate::walk::nailing::{self, NailingCase};
use crate::walk::notch_found::{self, NotchFoundCase};
use crate::walk::stud_spacing::{self, StudSpacingCase};
use crate::walk::{WalkReply, Walked};

/// What one line asks.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize, JsonSchema)]
#[serde(tag = "check", rename_all = "snake_case")]
pub enum CheckRequest {
    /// A header over an opening.
    Header(Box<HeaderCase>),
    /// Studs by their pulls.
    StudSpacing(Box<StudSpacingCase>),
    /// Nails that were found.
    Nailing(Box<NailingCase>),
    /// Anchor bolts of a sill, or a hold-down.
    HoldDownPoint(Box<HoldDownPointCase>),
    /// A notch, a hole or a cut that was found.
    NotchFound(Box<NotchFoundCase>),
    /// Plumb, flat, and the faces of neighbours.
    Flatness(Box<FlatnessCase>),
    /// Moisture, visit by visit.
    Moisture(Box<MoistureCase>),
    /// Wind on a house at its place.
    Wind(Box<SiteCase>),
    /// Snow on its roof.
    Snow(Box<SiteCase>),
    /// Weights, live loads and combinations.
    Gravity(Box<SiteCase>),
    /// A joist of a floor or a ceiling.
    Joist(Box<QuickCase<member::Joist>>),
    /// A rafter.
    Rafter(Box<QuickCase<member::Rafter>>),
    /// A beam, a girder, a trimmer.
    Beam(Box<QuickCase<member::Beam>>),
    /// A ridge that carries.
    Ridge(Box<QuickCase<member::Ridge>>),
    /// A hip or a valley.
    HipValley(Box<QuickCase<member::HipValley>>),
    /// A stud or a king.
    Stud(Box<QuickCase<member::Stud>>),
    /// A post.
    Post(Box<QuickCase<member::Post>>),
    /// A notch or a hole.
    Notch(Box<QuickCase<member::Notch>>),
    /// The code's span tables.
    SpanTable(Box<QuickCase<member::SpanTable>>),
    /// Full-height pieces of wall, each held down at its own ends.
    ShearWall(Box<QuickCase<bracing::ShearWall>>),
    /// A wall with openings that is held down at its two ends.
    PerforatedWall(Box<QuickCase<bracing::PerforatedWall>>),
    /// What holds the ends of stacked walls down.
    HoldDown(Box<QuickCase<bracing::HoldDown>>),
    /// The path of uplift from the rafters to the footing.
    Uplift(Box<QuickCase<bracing::Uplift>>),
    /// The layers of a wall from the studs out.
    WallLayers(Box<QuickCase<bracing::WallLayers>>),
    /// The engineer's schedule of panels and hold-downs.
    Schedule(Box<QuickCase<bracing::Schedule>>),
    /// The engineer's schedule and the worked alternative, wall by wall.
    DrawnAndWorked(Box<QuickCase<bracing::DrawnAndWorked>>),
    /// One nail in a joint.
    Nail(Box<QuickCase<bracing::Nail>>),
    /// The nail at hand in place of the one that was drawn.
    NailSwap(Box<QuickCase<bracing::NailSwap>>),
    /// Anchor bolts along a bottom plate.
    AnchorBolts(Box<QuickCase<bracing::AnchorBolts>>),
    /// The push of the wind on a house, brought to its wall lines.
    WallLines(Box<QuickCase<bracing::WallLines>>),
    /// A floor or a roof that brings the wind to the wall lines.
    Diaphragm(Box<QuickCase<bracing::Diaphragm>>),
    /// A common rafter, marked and cut.
    CommonRafter(Box<QuickCase<layout::CommonRafter>>),
    /// A hip or a valley rafter, marked and cut.
    HipValleyCuts(Box<QuickCase<layout::HipValleyCuts>>),
    /// The jacks along a hip or a valley.
    Jack(Box<QuickCase<layout::Jack>>),
    /// The sheets of one roof plane.
    RoofSheathing(Box<QuickCase<layout::RoofSheathing>>),
    /// The plates of a wall, and what stands on them.
    WallLayout(Box<QuickCase<layout::WallLayout>>),
    /// The joists of a floor, and the panels on them.
    FloorLayout(Box<QuickCase<layout::FloorLayout>>),
    /// Strips across the joists of a ceiling, and the shims behind them.
    Strapping(Box<QuickCase<layout::Strapping>>),
}

/// What one line answers.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(tag = "check", rename_all = "snake_case")]
pub enum CheckResponse {
    /// A header over an opening.
    Header(Box<HeaderReply>),
    /// Studs by their pulls.
    StudSpacing(Box<WalkReply>),
    /// Nails that were found.
    Nailing(Box<WalkReply>),
    /// Anchor bolts of a sill, or a hold-down.
    HoldDownPoint(Box<WalkReply>),
    /// A notch, a hole or a cut that was found.
    NotchFound(Box<WalkReply>),
    /// Plumb, flat, and the faces of neighbours.
    Flatness(Box<WalkReply>),
    /// Moisture, visit by visit.
    Moisture(Box<WalkReply>),
    /// Wind on a house at its place.
    Wind(Box<WindReply>),
    /// Snow on its roof.
    Snow(Box<SnowReply>),
    /// Weights, live loads and combinations.
    Gravity(Box<GravityReply>),
    /// A joist of a floor or a ceiling.
    Joist(Box<QuickReply>),
    /// A rafter.
    Rafter(Box<QuickReply>),
    /// A beam, a girder, a trimmer.
    Beam(Box<QuickReply>),
    /// A ridge that carries.
    Ridge(Box<QuickReply>),
    /// A hip or a valley.
    HipValley(Box<QuickReply>),
    /// A stud or a king.
    Stud(Box<QuickReply>),
    /// A post.
    Post(Box<QuickReply>),
    /// A notch or a hole.
    Notch(Box<QuickReply>),
    /// The code's span tables.
    SpanTable(Box<QuickReply>),
    /// Full-height pieces of wall, each held down at its own ends.
    ShearWall(Box<QuickReply>),
    /// A wall with openings that is held down at its two ends.
    PerforatedWall(Box<QuickReply>),
    /// What holds the ends of stacked walls down.
    HoldDown(Box<QuickReply>),
    /// The path of uplift from the rafters to the footing.
    Uplift(Box<QuickReply>),
    /// The layers of a wall from the studs out.
    WallLayers(Box<QuickReply>),
    /// The engineer's schedule of panels and hold-downs.
    Schedule(Box<QuickReply>),
    /// The engineer's schedule and the worked alternative, wall by wall.
    DrawnAndWorked(Box<QuickReply>),
    /// One nail in a joint.
    Nail(Box<QuickReply>),
    /// The nail at hand in place of the one that was drawn.
    NailSwap(Box<QuickReply>),
    /// Anchor bolts along a bottom plate.
    AnchorBolts(Box<QuickReply>),
    /// The push of the wind on a house, brought to its wall lines.
    WallLines(Box<QuickReply>),
    /// A floor or a roof that brings the wind to the wall lines.
    Diaphragm(Box<QuickReply>),
    /// A common rafter, marked and cut.
    CommonRafter(Box<QuickReply>),
    /// A hip or a valley rafter, marked and cut.
    HipValleyCuts(Box<QuickReply>),
    /// The jacks along a hip or a valley.
    Jack(Box<QuickReply>),
    /// The sheets of one roof plane.
    RoofSheathing(Box<QuickReply>),
    /// The plates of a wall, and what stands on them.
    WallLayout(Box<QuickReply>),
    /// The joists of a floor, and the panels on them.
    FloorLayout(Box<QuickReply>),
    /// Strips across the joists of a ceiling, and the shims behind them.
    Strapping(Box<QuickReply>),
    /// The line was refused: which inputs, and why.
    Refused {
        /// Each input that was refused.
        refused: Vec<Refusal>,
    },
}

impl CheckResponse {
    /// Whether the line was answered.
    #[must_use]
    pub const fn answered(&self) -> bool {
        !matches!(self, Self::Refused { .. })
    }
}

/// Answers one line. A line that cannot be read, a field that does not exist and a value that cannot be are refused
/// with the field's name, what was given and what is taken.
#[must_use]
pub fn check(line: &str) -> CheckResponse {
    match serde_json::from_str::<CheckRequest>(line) {
        Ok(request) => answer(&request),
        Err(problem) => CheckResponse::Refused { refused: vec![unreadable(line, &problem)] },
    }
}

fn answer(request: &CheckRequest) -> CheckResponse {
    let walked = |walked: Walked, kind: fn(Box<WalkReply>) -> CheckResponse| walked.map(|reply| kind(Box::new(reply)));
    let answered = match request {
        CheckRequest::Header(case) => {
            reply(&derive_header(case, &HeaderCase::default())).map(|reply| CheckResponse::Header(Box::new(reply)))
        }
        CheckRequest::StudSpacing(case) => walked(stud_spacing::answer(case), CheckResponse::StudSpacing),
        CheckRequest::Nailing(case) => walked(nailing::answer(case), CheckResponse::Nailing),
        CheckRequest::HoldDownPoint(case) => walked(hold_down_point::answer(case), CheckResponse::HoldDownPoint),
        CheckRequest::NotchFound(case) => walked(notch_found::answer(case), CheckResponse::NotchFound),
        CheckRequest::Flatness(case) => walked(flatness::answer(case), CheckResponse::Flatness),
        CheckRequest::Moisture(case) => walked(moisture::answer(case), CheckResponse::Moisture),
        CheckRequest::Wind(case) => of_place(case, |(wind, _, _)| CheckResponse::Wind(Box::new(wind))),
        CheckRequest::Snow(case) => of_place(case, |(_, snow, _)| CheckResponse::Snow(Box::new(snow))),
        CheckRequest::Gravity(case) => of_place(case, |(_, _, gravity)| CheckResponse::Gravity(Box::new(gravity))),
        CheckRequest::Joist(case) => of_quick(case, CheckResponse::Joist),
        CheckRequest::Rafter(case) => of_quick(case, CheckResponse::Rafter),
        CheckRequest::Beam(case) => of_quick(case, CheckResponse::Beam),
        CheckRequest::Ridge(case) => of_quick(case, CheckResponse::Ridge),
        CheckRequest::HipValley(case) => of_quick(case, CheckResponse::HipValley),
        CheckRequest::Stud(case) => of_quick(case, CheckResponse::Stud),
        CheckRequest::Post(case) => of_quick(case, CheckResponse::Post),
        CheckRequest::Notch(case) => of_quick(case, CheckResponse::Notch),
        CheckRequest::SpanTable(case) => of_quick(case, CheckResponse::SpanTable),
        CheckRequest::ShearWall(case) => of_quick(case, CheckResponse::ShearWall),
        CheckRequest::PerforatedWall(case) => of_quick(case, CheckResponse::PerforatedWall),
        CheckRequest::HoldDown(case) => of_quick(case, CheckResponse::HoldDown),
        CheckRequest::Uplift(case) => of_quick(case, CheckResponse::Uplift),
        CheckRequest::WallLayers(case) => of_quick(case, CheckResponse::WallLayers),
        CheckRequest::Schedule(case) => of_quick(case, CheckResponse::Schedule),
        CheckRequest::DrawnAndWorked(case) => of_quick(case, CheckResponse::DrawnAndWorked),
        CheckRequest::Nail(case) => of_quick(case, CheckResponse::Nail),
        CheckRequest::NailSwap(case) => of_quick(case, CheckResponse::NailSwap),
        CheckRequest::AnchorBolts(case) => of_quick(case, CheckResponse::AnchorBolts),
        CheckRequest::WallLines(case) => of_quick(case, CheckResponse::WallLines),
        CheckRequest::Diaphragm(case) => of_quick(case, CheckResponse::Diaphragm),
        CheckRequest::CommonRafter(case) => of_quick(case, CheckResponse::CommonRafter),
        CheckRequest::HipValleyCuts(case) => of_quick(case, CheckResponse::HipValleyCuts),
        CheckRequest::Jack(case) => of_quick(case, CheckResponse::Jack),
        CheckRequest::RoofSheathing(case) => of_quick(case, CheckResponse::RoofSheathing),
        CheckRequest::WallLayout(case) => of_quick(case, CheckResponse::WallLayout),
        CheckRequest::FloorLayout(case) => of_quick(case, CheckResponse::FloorLayout),
        CheckRequest::Strapping(case) => of_quick(case, CheckResponse::Strapping),
    };
    answered.unwrap_or_else(|refused| CheckResponse::Refused { refused })
}

fn of_place(
    case: &SiteCase,
    kind: impl FnOnce((WindReply, SnowReply, GravityReply)) -> CheckResponse,
) -> Result<CheckResponse, Vec<Refusal>> {
    let outcome = derive_site(case);
    let refused = outcome.refusals();
    outcome.answered.map(kind).ok_or(refused)
}

fn of_quick<K: OfKind>(
    case: &QuickCase<K>,
    kind: fn(Box<QuickReply>) -> CheckResponse,
) -> Result<CheckResponse, Vec<Refusal>> {
    let outcome = derive(K::KIND, &case.fields, &Nothing);
    let refused = outcome.refusals();
    outcome.answered.map(|reply| kind(Box::new(reply))).ok_or(refused)
}

/// A kind of check: its name, the inputs that are one text, and those that are a list of texts.
struct Kind {
    name: &'static str,
    texts: Vec<&'static str>,
    lists: &'static [&'static str],
}

impl Kind {
    fn new(name: &'static str, texts: &[&'static str], lists: &'static [&'static str]) -> Self {
        Self { name, texts: texts.to_vec(), lists }
    }

    fn of_quick<K: OfKind>() -> Self {
        Self { name: K::KIND.id(), texts: QuickCase::<K>::names(), lists: &[] }
    }
}

fn kinds() -> Vec<Kind> {
    vec![
        Kind::new("header", HeaderCase::FIELDS, &[]),
        Kind::new("stud_spacing", StudSpacingCase::TEXTS, StudSpacingCase::LISTS),
        Kind::new("nailing", NailingCase::TEXTS, NailingCase::LISTS),
        Kind::new("hold_down_point", HoldDownPointCase::TEXTS, HoldDownPointCase::LISTS),
        Kind::new("notch_found", NotchFoundCase::TEXTS, NotchFoundCase::LISTS),
        Kind::new("flatness", FlatnessCase::TEXTS, FlatnessCase::LISTS),
        Kind::new("moisture", MoistureCase::TEXTS, MoistureCase::LISTS),
        Kind::new("wind", SiteCase::FIELDS, &[]),
        Kind::new("snow", SiteCase::FIELDS, &[]),
        Kind::new("gravity", SiteCase::FIELDS, &[]),
        Kind::of_quick::<member::Joist>(),
        Kind::of_quick::<member::Rafter>(),
        Kind::of_quick::<member::Beam>(),
        Kind::of_quick::<member::Ridge>(),
        Kind::of_quick::<member::HipValley>(),
        Kind::of_quick::<member::Stud>(),
        Kind::of_quick::<member::Post>(),
        Kind::of_quick::<member::Notch>(),
        Kind::of_quick::<member::SpanTable>(),
        Kind::of_quick::<bracing::ShearWall>(),
        Kind::of_quick::<bracing::PerforatedWall>(),
        Kind::of_quick::<bracing::HoldDown>(),
        Kind::of_quick::<bracing::Uplift>(),
        Kind::of_quick::<bracing::WallLayers>(),
        Kind::of_quick::<bracing::Schedule>(),
        Kind::of_quick::<bracing::Nail>(),
        Kind::of_quick::<bracing::NailSwap>(),
        Kind::of_quick::<bracing::AnchorBolts>(),
        Kind::of_quick::<bracing::WallLines>(),
        Kind::of_quick::<bracing::Diaphragm>(),
        Kind::of_quick::<layout::CommonRafter>(),
        Kind::of_quick::<layout::HipValleyCuts>(),
        Kind::of_quick::<layout::Jack>(),
        Kind::of_quick::<layout::RoofSheathing>(),
        Kind::of_quick::<layout::WallLayout>(),
        Kind::of_quick::<layout::FloorLayout>(),
        Kind::of_quick::<layout::Strapping>(),
    ]
}

/// The field's name is found in the line itself, since the reader's message is about JSON and not about headers.
fn unreadable(line: &str, problem: &serde_json::Error) -> Refusal {
    let Ok(serde_json::Value::Object(fields)) = serde_json::from_str(line) else {
        let problem = format!("One JSON object a line is taken, such as {{\"check\":\"header\"}}; {problem}.");
        return Refusal { field: String::new(), problem };
    };
    let known = kinds();
    let named = |name: &str| known.iter().find(|kind| kind.name == name);
    let Some(kind) = fields.get("check").and_then(serde_json::Value::as_str).and_then(named) else {
        let given = fields.get("check").map_or_else(|| "nothing".to_owned(), ToString::to_string);
        let kinds: Vec<&str> = known.iter().map(|kind| kind.name).collect();
        let problem = format!("{given} was given; one of these is taken: {}.", kinds.join(", "));
        return Refusal { field: "check".to_owned(), problem };
    };
    wrong_field(kind, &fields).unwrap_or_else(|| Refusal { field: String::new(), problem: format!("{problem}.") })
}

fn wrong_field(kind: &Kind, fields: &serde_json::Map<String, serde_json::Value>) -> Option<Refusal> {
    let known = |name: &str| name == "check" || kind.texts.contains(&name) || kind.lists.contains(&name);
    if let Some(name) = fields.keys().find(|name| !known(name)) {
        let taken: Vec<&str> = kind.texts.iter().chain(kind.lists).copied().collect();
        let taken = taken.join(", ");
        let problem = format!("There is no input of this name; these are taken: {taken}.");
        return Some(Refusal { field: name.clone(), problem });
    }
    let is_list = |name: &str| kind.lists.contains(&name);
    let wrong = |(name, value): &(&String, &serde_json::Value)| match value.as_array() {
        _ if value.is_null() => false,
        Some(items) if is_list(name) => !items.iter().all(serde_json::Value::is_string),
        _ => is_list(name) || !value.is_string(),
    };
    let (name, value) = fields.iter().find(wrong)?;
    let taken = if is_list(name) {
        "a list of texts is taken, such as [\"16\", \"33\"]."
    } else {
        "a text with its unit is taken, such as \"6' 0\\\"\" or \"40 psf\"."
    };
    Some(Refusal { field: name.clone(), problem: format!("{value} was given; {taken}") })
}

/// Answers one line with one line of JSON.
#[must_use]
pub fn check_line(line: &str) -> String {
    to_line(&check(line))
}

/// A response as one line of JSON.
#[must_use]
pub fn to_line(response: &CheckResponse) -> String {
    // A number that is not finite has no place in JSON and none is produced; the writer has no other way to fail.
    serde_json::to_string(response).unwrap_or_else(|problem| {
        format!("{{\"check\":\"refused\",\"refused\":[{{\"field\":\"\",\"problem\":\"The answer could not be written: {problem}.\"}}]}}")
    })
}

/// JSON Schema of what a line may ask and what it answers.
#[must_use]
pub fn schema() -> String {
    let schema = serde_json::json!({
        "request": schemars::schema_for!(CheckRequest),
        "response": schemars::schema_for!(CheckResponse),
    });
    format!("{schema:#}")
}
