//! What the headless command answers: plain data, with units in the names.

use schemars::JsonSchema;
use serde::Serialize;

/// The answer of one check.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct HeaderReply {
    /// `carries it`, `at the limit`, `too small` or `outside what this tool may decide`.
    pub verdict: String,
    /// The size it is about.
    pub size: String,
    /// Share of capacity used, 1 at the limit.
    pub ratio: Option<f64>,
    /// What governs.
    pub governs: Option<String>,
    /// The combination that governs.
    pub combination: Option<String>,
    /// Why there is no number, or why it does not fit.
    pub reason: Option<String>,
    /// Load along the header under the combination that loads it most, plf.
    pub line_load_plf: f64,
    /// Load on each side's jacks, lb.
    pub reaction_lb: f64,
    /// Loads along the header by case, plf.
    pub loads_plf: CaseLoadsReply,
    /// Jacks at each side by strength.
    pub jacks_each_side: Option<u8>,
    /// Jacks to set at each side: by strength, or by the code's table where it asks for more.
    pub jacks_to_set: u8,
    /// Kings to set at each side, in the same way.
    pub kings_to_set: u8,
    /// Crushing stress on one jack against its strength, as a share: over 1 when one is not enough.
    pub one_jack_bearing: Option<CheckReply>,
    /// Kings at each side.
    pub kings: Option<KingsReply>,
    /// Each limit of the size.
    pub checks: Vec<CheckReply>,
    /// The smallest of each family that carries and fits.
    pub smallest: Vec<String>,
    /// Every size tried.
    pub sizes: Vec<SizeReply>,
    /// The code's header table.
    pub table: TableReply,
    /// Cut list.
    pub cuts: Vec<CutReply>,
    /// A gap at the jack.
    pub gap: Option<GapReply>,
    /// Questions that are still to be answered.
    pub questions: Vec<String>,
    /// What was assumed.
    pub assumed: Vec<AssumedReply>,
    /// What to do, in sentences.
    pub action: Vec<String>,
    /// The usual cautions.
    pub cautions: Vec<String>,
    /// The working.
    pub working: Vec<WorkingReply>,
}

/// Loads along the header by case.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CaseLoadsReply {
    /// Dead, without the header itself.
    pub dead: f64,
    /// Live.
    pub live: f64,
    /// Attic live load that acts alone.
    pub attic_alone: f64,
    /// Roof live.
    pub roof_live: f64,
    /// Snow.
    pub snow: f64,
}

/// One limit.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CheckReply {
    /// What limits.
    pub limit: String,
    /// Share used.
    pub ratio: f64,
    /// What is asked.
    pub demand: f64,
    /// What there is.
    pub capacity: f64,
    /// Unit of both.
    pub unit: String,
    /// Combination.
    pub combination: String,
}

/// One size tried.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct SizeReply {
    /// The size.
    pub size: String,
    /// Verdict.
    pub verdict: String,
    /// Share used.
    pub ratio: Option<f64>,
    /// What governs.
    pub governs: Option<String>,
    /// Jacks at each side.
    pub jacks_each_side: Option<u8>,
    /// Why it does not fit, or why there is no answer.
    pub reason: Option<String>,
}

/// Kings.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct KingsReply {
    /// Kings at each side.
    pub each_side: u8,
    /// By strength.
    pub for_bending: u8,
    /// By stiffness.
    pub for_stiffness: u8,
    /// What is asked of one king, as a share of its strength.
    pub one_king_ratio: f64,
    /// Wind pressure on them, psf at allowable-stress level.
    pub pressure_psf: f64,
    /// By the code's table, where it covers the case.
    pub by_table: Option<u8>,
    /// Why the table gives none.
    pub table_outside: Option<String>,
}

/// The code's header table.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct TableReply {
    /// `span`, `ask`, `outside` or `nonbearing`.
    pub kind: String,
    /// The edition.
    pub edition: String,
    /// Span allowed, inches, after the footnote for an unbraced top.
    pub allowed_in: Option<f64>,
    /// Span as printed or interpolated, inches.
    pub printed_in: Option<f64>,
    /// Whether the opening is within it.
    pub passes: Option<bool>,
    /// Jacks by the table.
    pub jacks: Option<u8>,
    /// What it says, in sentences.
    pub says: Vec<String>,
}

/// One row of the cut list.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CutReply {
    /// How many.
    pub count: u32,
    /// What.
    pub piece: String,
    /// How long, in feet and inches.
    pub length: String,
}

/// A gap at the jack.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct GapReply {
    /// Status.
    pub status: String,
    /// Gap found, inches.
    pub found_in: f64,
    /// Shrinkage to expect, inches.
    pub expected_in: f64,
    /// The least that is usual, inches.
    pub least_in: f64,
    /// The most that is usual, inches.
    pub most_in: f64,
    /// What to do.
    pub action: Vec<String>,
}

/// Something that was assumed.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct AssumedReply {
    /// The input.
    pub input: Option<String>,
    /// What was assumed and why.
    pub says: String,
}

/// A part of the working.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct WorkingReply {
    /// Its heading.
    pub heading: String,
    /// Its steps.
    pub steps: Vec<StepReply>,
}

/// A step of the working.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct StepReply {
    /// Symbol.
    pub symbol: String,
    /// Meaning.
    pub meaning: String,
    /// Expression with its numbers put in.
    pub expression: String,
    /// Value.
    pub value: f64,
    /// Unit.
    pub unit: String,
    /// Source: standard, clause, and how it came here; or `typed`, `assumed`, `from the job`.
    pub source: String,
}

/// One input that was refused.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Refusal {
    /// The input's name; empty when the line itself could not be read.
    pub field: String,
    /// What was given, what is taken, what to do.
    pub problem: String,
}
