//! Members beside the header: from what was typed to what is answered, one file a kind.
//!
//! Where to look: [`MemberKind`] has the kinds and their inputs; [`derive_member`] reads and answers one; [`reply`] is the
//! answer as plain data; `read` turns inputs into quantities and `say` writes what all kinds say alike. A member that was
//! found otherwise than drawn is worked twice, and both stand beside each other (`found`).

mod beam;
mod found;
mod hip_valley;
mod joist;
mod more_loads;
mod notch;
mod post;
mod rafter;
mod read;
pub mod reply;
mod ridge;
mod roof;
mod say;
mod span_table;
mod stud;

use core::marker::PhantomData;
use std::collections::BTreeMap;
use std::sync::OnceLock;

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Deserializer};

use crate::Texts;
use crate::field::{FieldSpec, MEMBER_FIELDS, SITE_FIELDS, header_field, site_fields};
use crate::reading::Reading;
use crate::reply::Refusal;
use reply::MemberReply;

/// A kind of member.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum MemberKind {
    /// A joist of a floor or a ceiling.
    Joist,
    /// A rafter.
    Rafter,
    /// A beam, a girder, a trimmer.
    Beam,
    /// A ridge that carries.
    Ridge,
    /// A hip or a valley.
    HipValley,
    /// A stud.
    Stud,
    /// A post.
    Post,
    /// A notch or a hole.
    Notch,
    /// The code's span tables.
    SpanTable,
}

impl MemberKind {
    /// All of them, in the order of the screen.
    pub const ALL: [Self; 9] = [
        Self::Joist,
        Self::Beam,
        Self::Rafter,
        Self::Ridge,
        Self::HipValley,
        Self::Stud,
        Self::Post,
        Self::Notch,
        Self::SpanTable,
    ];

    /// Its stable name: `hip_valley`.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::Joist => "joist",
            Self::Rafter => "rafter",
            Self::Beam => "beam",
            Self::Ridge => "ridge",
            Self::HipValley => "hip_valley",
            Self::Stud => "stud",
            Self::Post => "post",
            Self::Notch => "notch",
            Self::SpanTable => "span_table",
        }
    }

    /// Its word on the screen.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Joist => "Joist",
            Self::Rafter => "Rafter",
            Self::Beam => "Beam",
            Self::Ridge => "Ridge",
            Self::HipValley => "Hip, valley",
            Self::Stud => "Stud",
            Self::Post => "Post",
            Self::Notch => "Notch, hole",
            Self::SpanTable => "Span table",
        }
    }

    /// The one of that name.
    #[must_use]
    pub fn of(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.id() == id)
    }

    /// The input that comes to hand first.
    #[must_use]
    pub const fn first(self) -> &'static str {
        self.fields()[0]
    }

    /// Its inputs, in the order they are asked. One that is not in [`MEMBER_FIELDS`] is shared with the job.
    #[must_use]
    pub const fn fields(self) -> &'static [&'static str] {
        match self {
            Self::Joist => joist::FIELDS,
            Self::Rafter => rafter::FIELDS,
            Self::Beam => beam::FIELDS,
            Self::Ridge => ridge::FIELDS,
            Self::HipValley => hip_valley::FIELDS,
            Self::Stud => stud::FIELDS,
            Self::Post => post::FIELDS,
            Self::Notch => notch::FIELDS,
            Self::SpanTable => span_table::FIELDS,
        }
    }

    /// Whether it is worked by what Site knows of the house and the place.
    #[must_use]
    pub const fn needs_place(self) -> bool {
        matches!(self, Self::Rafter | Self::Ridge | Self::HipValley | Self::Stud)
    }

    fn answer(self, reading: &mut Reading) -> Option<MemberReply> {
        match self {
            Self::Joist => joist::answer(reading),
            Self::Rafter => rafter::answer(reading),
            Self::Beam => beam::answer(reading),
            Self::Ridge => ridge::answer(reading),
            Self::HipValley => hip_valley::answer(reading),
            Self::Stud => stud::answer(reading),
            Self::Post => post::answer(reading),
            Self::Notch => notch::answer(reading),
            Self::SpanTable => span_table::answer(reading),
        }
    }
}

/// The verdict where a rule of the code that decides over strength is broken, whatever the wood carries.
pub const NOT_ALLOWED: &str = "not allowed by the code";

/// Whether an input belongs to one member alone, and not to the job.
#[must_use]
pub fn is_own(id: &str) -> bool {
    MEMBER_FIELDS.iter().any(|spec| spec.id == id)
}

/// The input of that name.
#[must_use]
pub fn member_field(id: &str) -> Option<&'static FieldSpec> {
    let find = |specs: &'static [FieldSpec]| specs.iter().find(|spec| spec.id == id);
    find(MEMBER_FIELDS).or_else(|| header_field(id)).or_else(|| find(SITE_FIELDS))
}

/// Every input that a kind is read by: its own, then those of the place that are not among them.
fn specs(kind: MemberKind) -> &'static [&'static FieldSpec] {
    static OF_KINDS: [OnceLock<Vec<&FieldSpec>>; MemberKind::ALL.len()] =
        [const { OnceLock::new() }; MemberKind::ALL.len()];
    OF_KINDS[kind as usize].get_or_init(|| gathered(kind))
}

fn gathered(kind: MemberKind) -> Vec<&'static FieldSpec> {
    let mut specs: Vec<&'static FieldSpec> = kind.fields().iter().filter_map(|id| member_field(id)).collect();
    if kind.needs_place() {
        let of_place: Vec<&'static FieldSpec> = site_fields().filter(|spec| !specs.contains(spec)).collect();
        specs.extend(of_place);
    }
    specs
}

/// What was understood of a member, and what follows.
#[derive(Clone, Debug, PartialEq)]
pub struct MemberOutcome {
    /// What was understood.
    pub reading: Reading,
    /// The answer; none when an input is wrong.
    pub answered: Option<MemberReply>,
}

impl MemberOutcome {
    /// The inputs that were refused.
    #[must_use]
    pub fn refusals(&self) -> Vec<Refusal> {
        let refusal = |(field, problem): (&str, &str)| Refusal { field: field.to_owned(), problem: problem.to_owned() };
        self.reading.problems().map(refusal).collect()
    }
}

/// Reads and answers a member. What its own texts do not say comes from the job's, then from what is assumed.
#[must_use]
pub fn derive_member(kind: MemberKind, case: &dyn Texts, site: &dyn Texts) -> MemberOutcome {
    let mut outcome = derive_once(kind, case, site);
    if let Some(drawn) = outcome.answered.take() {
        outcome.answered = found::beside(kind, case, site, &mut outcome.reading, drawn);
    }
    outcome
}

fn derive_once(kind: MemberKind, case: &dyn Texts, site: &dyn Texts) -> MemberOutcome {
    let mut reading = Reading::of(specs(kind).iter().copied(), case, site);
    if let Some(problem) = crate::site::speed_off_the_maps(&reading) {
        reading.refuse("wind_speed", problem);
    }
    let answer = if reading.problems().next().is_none() { kind.answer(&mut reading) } else { None };
    let mut answered = answer.filter(|_| reading.problems().next().is_none());
    if let Some(reply) = answered.as_mut().filter(|reply| reply.forbidden) {
        NOT_ALLOWED.clone_into(&mut reply.verdict);
    }
    MemberOutcome { reading, answered }
}

/// A kind of member, as a type: what a line of the command is read into.
pub trait OfKind {
    /// The kind.
    const KIND: MemberKind;
}

/// The inputs of a kind of member, each as it was typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MemberCase<K> {
    /// By the input's stable name.
    pub fields: BTreeMap<String, String>,
    kind: PhantomData<K>,
}

impl<K: OfKind> MemberCase<K> {
    /// The names of the inputs that a line may have.
    #[must_use]
    pub fn names() -> Vec<&'static str> {
        specs(K::KIND).iter().map(|spec| spec.id).collect()
    }
}

impl<'de, K: OfKind> Deserialize<'de> for MemberCase<K> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let fields = BTreeMap::<String, Option<String>>::deserialize(deserializer)?;
        let names = Self::names();
        if let Some(name) = fields.keys().find(|name| !names.contains(&name.as_str())) {
            return Err(serde::de::Error::custom(format_args!("there is no input {name}")));
        }
        let fields = fields.into_iter().filter_map(|(name, text)| Some((name, text?))).collect();
        Ok(Self { fields, kind: PhantomData })
    }
}

impl<K: OfKind> JsonSchema for MemberCase<K> {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        format!("MemberCase_{}", K::KIND.id()).into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        let property = |spec: &&FieldSpec| {
            let says = format!("{} {}", spec.label, spec.help).trim().to_owned();
            (spec.id.to_owned(), serde_json::json!({ "type": ["string", "null"], "description": says }))
        };
        let properties: serde_json::Map<_, _> = specs(K::KIND).iter().map(property).collect();
        json_schema!({ "type": "object", "properties": properties, "additionalProperties": false })
    }
}

macro_rules! kinds {
    ($($name:ident),+) => {
        $(
            #[doc = concat!("The kind [`MemberKind::", stringify!($name), "`].")]
            #[derive(Clone, Copy, Debug, PartialEq, Eq)]
            pub struct $name;

            impl OfKind for $name {
                const KIND: MemberKind = MemberKind::$name;
            }
        )+
    };
}

kinds!(Joist, Rafter, Beam, Ridge, HipValley, Stud, Post, Notch, SpanTable);
