//! The parts of a screen, as plain data.

use std::sync::Arc;

use crate::scene::Scene;

/// The stable name of an input, the same as in the headless command: `opening_width`.
pub type FieldId = &'static str;

/// The states that an answer can be in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum State {
    /// It carries its load.
    Carries,
    /// It carries it with nothing to spare.
    AtLimit,
    /// It does not.
    Short,
    /// Not for this tool to decide.
    Outside,
    /// Something is still to be said.
    NotKnown,
    /// An answer that is no verdict: a load.
    Told,
}

/// The answer of a screen: what is largest on it.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The verdict's state.
    pub state: State,
    /// The figure: `2-2x10`.
    pub figure: String,
    /// The verdict in the trade's words: `carries it`.
    pub word: String,
    /// Share of capacity used, 1 at the limit; none where there is no number.
    pub share: Option<f64>,
    /// The share in words: `82 %, bending`.
    pub share_text: String,
    /// What to do, in sentences.
    pub action: Vec<String>,
}

/// Where the value of a field comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Origin {
    /// Typed for this check.
    Typed,
    /// From the job's site values.
    Site,
    /// Assumed until someone says otherwise: underlined with dashes wherever it appears.
    Assumed,
    /// Not said, and nothing is assumed.
    Unknown,
}

/// How a field is filled.
#[derive(Clone, Debug, PartialEq)]
pub enum Entry {
    /// A length, with the tape below it.
    Length {
        /// Where the tape starts, inches.
        least: f64,
        /// Where the tape ends, inches.
        most: f64,
    },
    /// A number with a unit written after it.
    Number {
        /// The unit: `psf`.
        unit: &'static str,
    },
    /// One of a few: the value that is stored, and its words.
    Choice(&'static [(&'static str, &'static str)]),
    /// A name of one's own.
    Text,
    /// Several lines.
    Lines,
}

/// One input as the screen shows it.
#[derive(Clone, Debug, PartialEq)]
pub struct Field {
    /// Its stable name.
    pub id: FieldId,
    /// Its label.
    pub label: &'static str,
    /// One line of help below it; may be empty.
    pub help: &'static str,
    /// How it is filled.
    pub entry: Entry,
    /// What was typed, for this check or for the job, as typed; empty when nothing was.
    pub text: String,
    /// The value in use, in words: `6' 0"`, `40 psf`, `joists bear on it`.
    pub shown: String,
    /// What was understood from the text, echoed: `98 3/4 in = 8' 2-3/4"`; empty when nothing was typed.
    pub echo: String,
    /// The value in use as a number of the field's base unit (inches for a length), for the tape.
    pub number: Option<f64>,
    /// Where the value in use comes from.
    pub origin: Origin,
    /// What is wrong with the text, as a sentence.
    pub problem: Option<String>,
    /// Which group of inputs it belongs to.
    pub group: Group,
}

/// Groups of inputs, in the order they are asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Group {
    /// The opening itself: shown first.
    Opening,
    /// What it carries.
    Carries,
    /// The wall around it.
    Wall,
    /// The wood.
    Wood,
    /// Loads and site, kept with the job.
    Site,
    /// A member typed in from its label.
    Label,
    /// Limits and rarely changed things.
    Limits,
    /// What was found on site.
    AsBuilt,
    /// What the building department says of the place.
    Place,
    /// What the wind crosses before it comes to the house.
    Upwind,
    /// The ground that the house stands on.
    Ground,
    /// The house's outline.
    House,
    /// A wing of it.
    Wing,
    /// Its doors and windows.
    Glass,
    /// Snow on its roof.
    RoofSnow,
    /// Its weights and live loads.
    Weights,
    /// The parts that the wind is worked out for.
    Parts,
    /// What was found on a walk, with tape, meter or eye.
    Found,
    /// What the drawing asks for there.
    Required,
    /// What is known of the wall around it.
    Around,
    /// The head of a walk's record.
    Record,
    /// The shape of a member: its spans, its pitch, its spacing.
    Shape,
    /// What holds it up and sideways.
    Bears,
    /// How it lies among its neighbours.
    Lies,
    /// A notch or a hole in it.
    Cut,
    /// A joist from its maker's sheet.
    Sheet,
}

/// A share of capacity as a labelled bar with its mark at 100 %.
#[derive(Clone, Debug, PartialEq)]
pub struct Bar {
    /// What is checked: `Bending`.
    pub label: String,
    /// Share of capacity used; 1 at the limit.
    pub share: f64,
    /// The share in words: `82 %`.
    pub percent: String,
    /// Demand against capacity: `887 of 1,006 psi, D + 0.75L + 0.75S`.
    pub detail: String,
    /// Its own state.
    pub state: State,
    /// Whether this one governs.
    pub governs: bool,
}

/// One size that was tried.
#[derive(Clone, Debug, PartialEq)]
pub struct Candidate {
    /// The value that chooses it: `2-2x10`.
    pub value: String,
    /// Its name on the screen.
    pub name: String,
    /// Its state.
    pub state: State,
    /// `82 %, bending` or why it does not fit.
    pub note: String,
    /// Share of capacity used.
    pub share: Option<f64>,
    /// Whether it is the one that the answer is about.
    pub chosen: bool,
    /// Whether it is the smallest of its family that works and fits.
    pub smallest: bool,
}

/// A family of sizes.
#[derive(Clone, Debug, PartialEq)]
pub struct Family {
    /// Its name: `Built-up 2x, SPF No. 2`.
    pub name: String,
    /// Its sizes, smallest first.
    pub sizes: Vec<Candidate>,
}

/// A short paragraph under a heading, with a state of its own: the code table, the kings, the jacks.
#[derive(Clone, Debug, PartialEq)]
pub struct Panel {
    /// Its heading.
    pub heading: String,
    /// Its state.
    pub state: State,
    /// Its answer, larger: `2 jacks each side`.
    pub figure: String,
    /// Its sentences.
    pub lines: Vec<String>,
}

/// One row of the cut list.
#[derive(Clone, Debug, PartialEq)]
pub struct Cut {
    /// How many.
    pub count: u32,
    /// What: `Jack, 2x4`.
    pub piece: String,
    /// How long.
    pub length: String,
    /// Spoken length, for screen readers.
    pub spoken: String,
    /// How it comes about: `head height less bottom plate`.
    pub note: String,
}

/// A table of results.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Table {
    /// Its heading.
    pub heading: String,
    /// What stands over its columns, the first of them over the rows' names.
    pub columns: Vec<String>,
    /// Its rows.
    pub rows: Vec<TableRow>,
    /// What is to be known of it, in sentences.
    pub notes: Vec<String>,
    /// Which part of the working its numbers come from, counted from 0.
    pub working: Option<usize>,
}

/// One row of a table of results.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct TableRow {
    /// What it is of.
    pub what: String,
    /// Its values, with their units where the column does not name them.
    pub values: Vec<String>,
    /// Whether it governs.
    pub strong: bool,
}

/// One step of the working.
#[derive(Clone, Debug, PartialEq)]
pub struct WorkingStep {
    /// Its symbol: `f_b`.
    pub symbol: String,
    /// What it is.
    pub meaning: String,
    /// The expression with its numbers put in.
    pub expression: String,
    /// Its value with unit.
    pub value: String,
    /// Clause and status: `NDS 2018 3.3.3, looked up`.
    pub source: String,
    /// Whether it rests on an assumed value.
    pub assumed: bool,
}

/// A part of the working.
#[derive(Clone, Debug, PartialEq)]
pub struct WorkingPart {
    /// Its heading: `Loads`.
    pub heading: String,
    /// Its steps.
    pub steps: Vec<WorkingStep>,
}

/// Everything the header screen shows.
#[derive(Clone, Debug, PartialEq)]
pub struct HeaderScreen {
    /// The answer.
    pub answer: Answer,
    /// False when a field is wrong and the answer is the last good one: it is greyed and says `not updated`.
    pub current: bool,
    /// The opening drawn to scale.
    pub picture: Scene,
    /// The inputs, in order.
    pub fields: Arc<Vec<Field>>,
    /// Questions still to be answered, each with the field that answers it.
    pub questions: Vec<(FieldId, String)>,
    /// The checks of the chosen size, governing first.
    pub bars: Vec<Bar>,
    /// Jacks, kings, the code table, fit, wind, the gap: in the order of the screen.
    pub panels: Vec<Panel>,
    /// All sizes tried, by family.
    pub families: Vec<Family>,
    /// Whether the answer is about a size that was asked for, not the smallest that works.
    pub asked: bool,
    /// What to cut.
    pub cuts: Vec<Cut>,
    /// What was assumed, in sentences, each with the field that states it, where there is one.
    pub assumptions: Vec<(Option<FieldId>, String)>,
    /// The usual cautions.
    pub cautions: Vec<String>,
    /// The working of the chosen size.
    pub working: Vec<WorkingPart>,
}
