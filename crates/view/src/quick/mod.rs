//! The screen of a quick check: from what was typed to what is shown.

mod answer;
mod own;
mod panels;
mod tables;

use core::marker::PhantomData;
use std::collections::BTreeMap;
use std::sync::Arc;

use framing::Texts as _;
use framing::quick::reply::QuickReply;
use framing::quick::{QuickKind, QuickOutcome, derive};
use framing::reading::Reading;

pub(crate) use answer::capital;
pub use own::{kind, kind_key, own_key, write};

use crate::inputs;
use crate::markup::OTHER_SIZES;
use crate::model::{Answer, Bar, Family, Field, FieldId, Panel, State, Table, WorkingPart};
use crate::replied::working;
use crate::scene::Scene;

/// How a chapter of quick checks is shown.
pub trait Shown: QuickKind {
    /// Its name in addresses and in what is stored: `member`.
    const CHAPTER: &'static str;

    /// What stands over the sizes that were tried, and on the key that finds the least of them again.
    const OTHERS: (&'static str, &'static str) = OTHER_SIZES;

    /// Whether an input has something to say here.
    fn speaks(self, _id: &str, _reading: &Reading) -> bool {
        true
    }

    /// An input, in the group where this kind asks it.
    fn in_its_place(self, field: Field) -> Field {
        field
    }

    /// It drawn to scale.
    fn picture(self, reply: &QuickReply) -> Scene;

    /// A second picture: the way of its load to the ground.
    fn path_down(self, _reply: &QuickReply) -> Option<Scene> {
        None
    }
}

/// The input that holds the size to judge: it is chosen from the list of sizes.
pub const SIZE: FieldId = "drawn_size";

/// Everything that the screen of a quick check shows.
#[derive(Clone, Debug, PartialEq)]
pub struct QuickScreen<K> {
    /// The kind.
    pub kind: K,
    /// The answer.
    pub answer: Answer,
    /// False when an input is wrong and the answer is the last good one.
    pub current: bool,
    /// It drawn to scale.
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
    /// Lines of text to be copied: heading and text.
    pub texts: Vec<(String, String)>,
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

/// What the screen of a quick check shows for the job's values.
///
/// When an input is wrong the last good answer of the same kind stays, marked as not current.
#[must_use]
pub fn screen<K: Shown>(kind: K, fields: &Fields, last_good: Option<&QuickScreen<K>>) -> QuickScreen<K> {
    let case = own::Own { kind, fields };
    let starts = framing::site::starts(fields);
    let outcome = derive(kind, &case, &own::Job { chapter: PhantomData::<K>, fields, starts: &starts });
    let inputs = Arc::new(shown_fields(kind, &outcome));
    match &outcome.answered {
        Some(reply) => QuickScreen { fields: inputs, asked: case.text(SIZE).is_some(), ..shown(kind, reply) },
        None => {
            let kept = last_good.filter(|last| last.kind == kind).cloned().unwrap_or_else(|| nothing_yet(kind));
            QuickScreen { fields: inputs, current: false, ..kept }
        }
    }
}

/// The kind's inputs in its order, those that say nothing here left out.
fn shown_fields<K: Shown>(kind: K, outcome: &QuickOutcome) -> Vec<Field> {
    let all = inputs::fields(&outcome.reading);
    let order = kind.fields().iter().filter(|id| kind.speaks(id, &outcome.reading));
    order
        .filter_map(|id| all.iter().find(|field| field.id == *id))
        .map(|field| kind.in_its_place(field.clone()))
        .collect()
}

fn shown<K: Shown>(kind: K, reply: &QuickReply) -> QuickScreen<K> {
    let id = |id: &str| {
        kind.fields().iter().copied().find(|known| *known == id).or_else(|| K::field(id).map(|spec| spec.id))
    };
    let about = &reply.about;
    QuickScreen {
        kind,
        answer: answer::answer(reply),
        current: true,
        picture: kind.picture(reply),
        path_down: kind.path_down(reply),
        fields: Arc::default(),
        questions: about.questions.iter().filter_map(|(field, asks)| Some((id(field)?, asks.clone()))).collect(),
        bars: answer::bars(reply),
        panels: panels::panels(reply),
        families: panels::families(reply),
        asked: false,
        tables: tables::tables(reply),
        texts: reply.texts.iter().map(|one| (one.heading.clone(), one.text.clone())).collect(),
        known: about.outside.iter().chain(&about.says).cloned().collect(),
        assumptions: about.assumed.iter().map(|one| (one.input.as_deref().and_then(id), one.says.clone())).collect(),
        cautions: about.cautions.clone(),
        working: about.working.iter().map(working).collect(),
    }
}

fn nothing_yet<K: Shown>(kind: K) -> QuickScreen<K> {
    QuickScreen {
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
        texts: Vec::new(),
        known: Vec::new(),
        assumptions: Vec::new(),
        cautions: Vec::new(),
        working: Vec::new(),
    }
}
