//! The screen of a member: from what was typed to what is shown.

mod answer;
mod own;
mod panels;
mod picture;
mod tables;

use std::collections::BTreeMap;
use std::sync::Arc;

use framing::Texts;
use framing::member::reply::MemberReply;
use framing::member::{MemberKind, MemberOutcome, derive_member, member_field};

pub use own::{KIND, kind, own_key, write};

use crate::inputs;
use crate::model::{Answer, Bar, Family, Field, FieldId, Group, Panel, State, Table, WorkingPart};
use crate::replied::working;
use crate::scene::Scene;

/// The input that holds the size to judge: it is chosen from the list of sizes.
pub const SIZE: FieldId = "drawn_size";

/// Everything that the screen of a member shows.
#[derive(Clone, Debug, PartialEq)]
pub struct MemberScreen {
    /// The kind.
    pub kind: MemberKind,
    /// The answer.
    pub answer: Answer,
    /// False when an input is wrong and the answer is the last good one.
    pub current: bool,
    /// The member drawn to scale.
    pub picture: Scene,
    /// The way of its load to the ground, where it stands on posts.
    pub path_down: Option<Scene>,
    /// The inputs, in order.
    pub fields: Arc<Vec<Field>>,
    /// Questions still to be answered, each with the field that answers it.
    pub questions: Vec<(FieldId, String)>,
    /// The checks of the judged size, governing first.
    pub bars: Vec<Bar>,
    /// What the code's own rules say, and what was drawn where it was found otherwise.
    pub panels: Vec<Panel>,
    /// All sizes tried, by family.
    pub families: Vec<Family>,
    /// Whether the answer is about a size that was asked for.
    pub asked: bool,
    /// Its numbers, what its supports give, and other tables.
    pub tables: Vec<Table>,
    /// What is to be known beside it.
    pub known: Vec<String>,
    /// What was assumed.
    pub assumptions: Vec<(Option<FieldId>, String)>,
    /// The usual cautions.
    pub cautions: Vec<String>,
    /// The working of the judged size.
    pub working: Vec<WorkingPart>,
}

/// The values as they are stored with the job.
pub type Fields = BTreeMap<String, String>;

/// What the screen of a member shows for the job's values.
///
/// When an input is wrong the last good answer of the same kind stays, marked as not current.
#[must_use]
pub fn screen(kind: MemberKind, fields: &Fields, last_good: Option<&MemberScreen>) -> MemberScreen {
    let case = own::Own { kind, fields };
    let starts = framing::site::starts(fields);
    let outcome = derive_member(kind, &case, &own::Job { fields, starts: &starts });
    let inputs = Arc::new(shown_fields(kind, &outcome));
    match &outcome.answered {
        Some(reply) => MemberScreen { fields: inputs, asked: case.text(SIZE).is_some(), ..shown(kind, reply) },
        None => {
            let kept = last_good.filter(|last| last.kind == kind).cloned().unwrap_or_else(|| nothing_yet(kind));
            MemberScreen { fields: inputs, current: false, ..kept }
        }
    }
}

/// The kind's inputs in its order, those that say nothing here left out.
fn shown_fields(kind: MemberKind, outcome: &MemberOutcome) -> Vec<Field> {
    let all = inputs::fields(&outcome.reading);
    let word = |id: &str| outcome.reading.word(id).map(str::to_owned);
    let speaks = |id: &str| match id {
        "ceiling_dead" | "attic_live" if kind == MemberKind::Joist => word("joist_of").as_deref() == Some("ceiling"),
        "floor_dead" | "floor_live" if kind == MemberKind::Joist => word("joist_of").as_deref() != Some("ceiling"),
        "ceiling_dead" => word("ceiling_on_rafters").as_deref() == Some("yes"),
        "ridge_spans" if kind == MemberKind::Rafter => word("ties").as_deref() == Some("ridge"),
        "tie_height" => word("ties").as_deref() == Some("raised"),
        "cut_to_edge" => word("cut_kind").as_deref() == Some("hole") && word("notch_of").as_deref() != Some("stud"),
        "cut_length" | "cut_edge" => {
            word("cut_kind").as_deref() == Some("notch") && word("notch_of").as_deref() != Some("stud")
        }
        "cut_at" | "joist_span" | "joist_spacing" | "floor_dead" | "floor_live" if kind == MemberKind::Notch => {
            word("notch_of").as_deref() != Some("stud")
        }
        "flush_joists" | "joists_proud" | "joists_now" | "joists_later" | "strap" => {
            word("set").as_deref() == Some("flush")
        }
        "roof_dead" | "roof_live" | "ground_snow" | "thermal" | "roof_snow" if kind == MemberKind::Beam => {
            outcome.reading.number("roof_strip").is_some()
        }
        "wind_speed" | "exposure" | "enclosure" | "near_corner" | "mean_roof_height" | "wall_finish"
            if kind == MemberKind::Stud =>
        {
            word("stud_wall").as_deref() != Some("inner")
        }
        _ => true,
    };
    let order = kind.fields().iter().filter(|id| speaks(id));
    order
        .filter_map(|id| all.iter().find(|field| field.id == *id))
        .map(|field| in_its_place(kind, field.clone()))
        .collect()
}

/// What the place gives stands under the place; what is of the roof's shape with the shape.
fn in_its_place(kind: MemberKind, field: Field) -> Field {
    let group = match field.id {
        "roof_pitch" | "eave_overhang" | "roof_kind" | "house_width" if kind != MemberKind::Stud => Group::Shape,
        "floor_dead" | "floor_live" | "ceiling_dead" | "attic_live" | "roof_dead" | "roof_live" => Group::Carries,
        "ground_snow" | "roof_snow" | "thermal" | "wind_speed" | "exposure" | "enclosure" | "near_corner"
        | "mean_roof_height" => Group::Place,
        "plies_share_load" => Group::Wood,
        _ => field.group,
    };
    Field { group, ..field }
}

fn shown(kind: MemberKind, reply: &MemberReply) -> MemberScreen {
    let id = |id: &str| {
        kind.fields().iter().copied().find(|known| *known == id).or_else(|| member_field(id).map(|spec| spec.id))
    };
    let about = &reply.about;
    MemberScreen {
        kind,
        answer: answer::answer(reply),
        current: true,
        picture: picture::picture(kind, reply),
        path_down: picture::path_down(kind, reply),
        fields: Arc::default(),
        questions: about.questions.iter().filter_map(|(field, asks)| Some((id(field)?, asks.clone()))).collect(),
        bars: answer::bars(reply),
        panels: panels::panels(reply),
        families: panels::families(reply),
        asked: false,
        tables: tables::tables(reply),
        known: about.outside.iter().chain(&about.says).cloned().collect(),
        assumptions: about.assumed.iter().map(|one| (one.input.as_deref().and_then(id), one.says.clone())).collect(),
        cautions: about.cautions.clone(),
        working: about.working.iter().map(working).collect(),
    }
}

fn nothing_yet(kind: MemberKind) -> MemberScreen {
    MemberScreen {
        kind,
        answer: Answer {
            state: State::NotKnown,
            figure: kind.word().to_owned(),
            word: "still to be said".to_owned(),
            share: None,
            share_text: String::new(),
            action: Vec::new(),
        },
        current: false,
        picture: Scene { left: 0.0, top: 0.0, width: 100.0, height: 60.0, marks: Vec::new(), alt: String::new() },
        path_down: None,
        fields: Arc::default(),
        questions: Vec::new(),
        bars: Vec::new(),
        panels: Vec::new(),
        families: Vec::new(),
        asked: false,
        tables: Vec::new(),
        known: Vec::new(),
        assumptions: Vec::new(),
        cautions: Vec::new(),
        working: Vec::new(),
    }
}
