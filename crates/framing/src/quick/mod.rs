//! Quick checks: one thing of a house worked out by itself, from what was typed to what is answered.
//!
//! Where to look: [`QuickKind`] is what a chapter of kinds gives (members, bracing); [`derive`] reads and answers one;
//! [`reply`] is the answer as plain data, [`drawn_fasteners`] what is drawn of nails and bolts, [`drawn_compared`] of walls side by side; `read` turns inputs into quantities and `say` writes what all say alike.

pub mod drawn_compared;
pub mod drawn_fasteners;
pub(crate) mod read;
pub mod reply;
pub(crate) mod say;

use core::fmt::Debug;
use core::marker::PhantomData;
use std::collections::BTreeMap;

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Deserializer};

use crate::Texts;
use crate::field::{FieldSpec, SITE_FIELDS, header_field, site_fields};
use crate::reading::Reading;
use crate::reply::Refusal;
use reply::QuickReply;

/// The kinds of a chapter of quick checks.
pub trait QuickKind: Copy + Debug + PartialEq + Eq + Send + Sync + 'static {
    /// All of them, in the order of the screen; the first is looked at first.
    const ALL: &'static [Self];

    /// The inputs that belong to a check of this chapter alone, and not to the job.
    const OWN: &'static [&'static [FieldSpec]];

    /// Those among them that all its kinds share, as one schedule of a drawing.
    const SHARED: &'static [&'static str] = &[];

    /// Its stable name: `hip_valley`.
    fn id(self) -> &'static str;

    /// Its word on the screen.
    fn word(self) -> &'static str;

    /// Its inputs, in the order they are asked. One that is not among [`QuickKind::OWN`] is shared with the job.
    fn fields(self) -> &'static [&'static str];

    /// Whether it is worked by what Site knows of the house and the place.
    fn needs_place(self) -> bool {
        false
    }

    /// Answers what was understood; none when an input is wrong, which is then said.
    fn answer(self, reading: &mut Reading) -> Option<QuickReply>;

    /// What follows from the answer by looking at the inputs again.
    fn look_again(
        self,
        _case: &dyn Texts,
        _site: &dyn Texts,
        _reading: &mut Reading,
        reply: QuickReply,
    ) -> Option<QuickReply> {
        Some(reply)
    }

    /// The one of that name.
    #[must_use]
    fn of(id: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|kind| kind.id() == id)
    }

    /// The input that comes to hand first.
    #[must_use]
    fn first(self) -> &'static str {
        self.fields()[0]
    }

    /// Whether an input belongs to a check of this chapter alone, and not to the job.
    #[must_use]
    fn is_own(id: &str) -> bool {
        Self::OWN.iter().copied().flatten().any(|spec| spec.id == id)
    }

    /// The input of that name.
    #[must_use]
    fn field(id: &str) -> Option<&'static FieldSpec> {
        let find = |specs: &'static [FieldSpec]| specs.iter().find(|spec| spec.id == id);
        let own = Self::OWN.iter().copied().find_map(find);
        own.or_else(|| header_field(id)).or_else(|| find(SITE_FIELDS))
    }
}

/// The verdict where a rule of the code that decides over strength is broken, whatever the wood carries.
pub const NOT_ALLOWED: &str = "not allowed by the code";

/// Every input that a kind is read by: its own, then those of the place that are not among them.
fn specs<K: QuickKind>(kind: K) -> Vec<&'static FieldSpec> {
    let mut specs: Vec<&'static FieldSpec> = kind.fields().iter().filter_map(|id| K::field(id)).collect();
    if kind.needs_place() {
        let of_place: Vec<&'static FieldSpec> = site_fields().filter(|spec| !specs.contains(spec)).collect();
        specs.extend(of_place);
    }
    specs
}

/// What was understood, and what follows.
#[derive(Clone, Debug, PartialEq)]
pub struct QuickOutcome {
    /// What was understood.
    pub reading: Reading,
    /// The answer; none when an input is wrong.
    pub answered: Option<QuickReply>,
}

impl QuickOutcome {
    /// The inputs that were refused.
    #[must_use]
    pub fn refusals(&self) -> Vec<Refusal> {
        let refusal = |(field, problem): (&str, &str)| Refusal { field: field.to_owned(), problem: problem.to_owned() };
        self.reading.problems().map(refusal).collect()
    }
}

/// Reads and answers a check. What its own texts do not say comes from the job's, then from what is assumed.
#[must_use]
pub fn derive<K: QuickKind>(kind: K, case: &dyn Texts, site: &dyn Texts) -> QuickOutcome {
    let mut outcome = derive_once(kind, case, site);
    if let Some(reply) = outcome.answered.take() {
        outcome.answered = kind.look_again(case, site, &mut outcome.reading, reply);
    }
    outcome
}

/// The same without a second look.
pub(crate) fn derive_once<K: QuickKind>(kind: K, case: &dyn Texts, site: &dyn Texts) -> QuickOutcome {
    let mut reading = Reading::of(specs(kind), case, site);
    if let Some(problem) = crate::site::speed_off_the_maps(&reading) {
        reading.refuse("wind_speed", problem);
    }
    let answer = if reading.problems().next().is_none() { kind.answer(&mut reading) } else { None };
    let mut answered = answer.filter(|_| reading.problems().next().is_none());
    if let Some(reply) = answered.as_mut().filter(|reply| reply.forbidden) {
        NOT_ALLOWED.clone_into(&mut reply.verdict);
    }
    QuickOutcome { reading, answered }
}

/// One kind, as a type: what a line of the command is read into.
pub trait OfKind {
    /// The chapter.
    type Chapter: QuickKind;
    /// The kind.
    const KIND: Self::Chapter;
}

/// The inputs of a quick check, each as it was typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct QuickCase<K> {
    /// By the input's stable name.
    pub fields: BTreeMap<String, String>,
    kind: PhantomData<K>,
}

impl<K: OfKind> QuickCase<K> {
    /// The names of the inputs that a line may have.
    #[must_use]
    pub fn names() -> Vec<&'static str> {
        specs(K::KIND).into_iter().map(|spec| spec.id).collect()
    }
}

impl<'de, K: OfKind> Deserialize<'de> for QuickCase<K> {
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

impl<K: OfKind> JsonSchema for QuickCase<K> {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        format!("QuickCase_{}", K::KIND.id()).into()
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

/// Makes a type of each kind of a chapter.
macro_rules! kinds {
    ($chapter:ident: $($name:ident),+) => {
        $(
            #[doc = concat!("The kind [`", stringify!($chapter), "::", stringify!($name), "`].")]
            #[derive(Clone, Copy, Debug, PartialEq, Eq)]
            pub struct $name;

            impl $crate::quick::OfKind for $name {
                type Chapter = $chapter;
                const KIND: $chapter = $chapter::$name;
            }
        )+
    };
}
pub(crate) use kinds;
