//! What a walk's check answers: sentences, and texts with their units.

use schemars::JsonSchema;
use serde::Serialize;

use crate::reply::AssumedReply;

/// The answer of a walk's check.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
pub struct WalkReply {
    /// `within`, `at the limit`, `out`, `could not be seen` or `not for this tool to decide`.
    pub verdict: String,
    /// By how much, of the check that is out by the largest share of its limit; else of the one with the least to
    /// spare.
    pub by_how_much: Option<String>,
    /// The finding that is named first; none while nothing was measured.
    pub foremost: Option<Foremost>,
    /// What was found, in sentences, the most important first.
    pub says: Vec<String>,
    /// Each value that was compared with a limit.
    pub checks: Vec<WalkCheck>,
    /// What could not be seen or was not looked at.
    pub not_seen: Vec<String>,
    /// What is not for this tool to decide, and who decides.
    pub left_to: Vec<LeftTo>,
    /// What is still to be answered, readings that look wrong among it.
    pub questions: Vec<WalkQuestion>,
    /// What can be done, and who must say yes.
    pub remedies: Vec<WalkRemedy>,
    /// Numbers that follow from what was measured, and limits to know beside it.
    pub facts: Vec<Fact>,
    /// How each reading was understood.
    pub read: Vec<Understood>,
    /// What was assumed, and why.
    pub assumed: Vec<AssumedReply>,
    /// The usual cautions.
    pub cautions: Vec<String>,
}

/// The finding that is named first.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Foremost {
    /// What was looked at.
    pub subject: String,
    /// What was found, short: `17"`; empty where it is plainly wrong and no number says so.
    pub found: String,
    /// How it stands in the trade's words: `too far apart`, `within`.
    pub word: String,
    /// Share of the limit that is used, 1 at the limit; none where there is no such number.
    pub share: Option<f64>,
}

/// One value beside its limit.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct WalkCheck {
    /// What was looked at.
    pub subject: String,
    /// Where, when there are several.
    pub at: Option<String>,
    /// What was found.
    pub found: String,
    /// What is allowed: `at most 16"`.
    pub limit: String,
    /// What is to spare, or missing: `1" short`.
    pub margin: String,
    /// How it stands.
    pub verdict: String,
    /// Who says so.
    pub clause: Clause,
}

/// Who asks for a limit.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Clause {
    /// Document and place: `IRC 2021 R403.1.6`; or the drawing, or `typed by you`.
    pub source: String,
    /// How a published one came here: `looked up`, `from memory`, `common practice`. Empty for all others.
    pub status: String,
}

/// Something that is left to someone.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct LeftTo {
    /// What.
    pub subject: String,
    /// Who decides.
    pub who: String,
}

/// A question that is still to be answered.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct WalkQuestion {
    /// The question.
    pub asks: String,
    /// The input that answers it.
    pub input: Option<String>,
    /// Which reading of a list it is about, counted from 1.
    pub which: Option<usize>,
    /// That reading, as it was typed.
    pub typed: Option<String>,
    /// What may have been meant; never put in its place.
    pub perhaps: Vec<String>,
}

/// Something that can be done.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct WalkRemedy {
    /// What to do.
    pub what: String,
    /// Everyone who must say yes before it is built.
    pub who_says_yes: Vec<String>,
}

/// A number beside the checks.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Fact {
    /// What it is.
    pub what: String,
    /// The value with its unit.
    pub value: String,
    /// Who says so, where it is not plain arithmetic.
    pub clause: Option<Clause>,
}

/// How a reading was understood.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Understood {
    /// The input.
    pub input: String,
    /// Which of a list, counted from 1.
    pub which: Option<usize>,
    /// As it was typed.
    pub typed: String,
    /// As it was understood: `98 3/4 in = 8' 2-3/4"`.
    pub understood: String,
}
