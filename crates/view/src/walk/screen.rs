//! What the screen of a look shows.

use super::ready::ReadyKeys;
use crate::model::{Answer, Field, FieldId, State};
use crate::scene::Scene;

/// Everything that the screen of a look shows.
#[derive(Clone, Debug, PartialEq)]
pub struct LookScreen {
    /// The answer.
    pub answer: Answer,
    /// False when an input was refused and the answer is the last good one: it is greyed and says `not updated`.
    pub current: bool,
    /// What was measured, drawn to scale.
    pub picture: Scene,
    /// The inputs that matter, in order. A list shows the reading in hand.
    pub fields: Vec<Field>,
    /// Every list with readings.
    pub readings: Vec<ListShown>,
    /// What a new reading would be if it stood on its mark, as it would be typed; one tap takes it.
    pub offered: Option<String>,
    /// What can be said with one tap of the reading in hand.
    pub ready: ReadyKeys,
    /// What is still to be answered: the input that answers it, and which reading of a list, from 0.
    pub questions: Vec<(FieldId, Option<usize>, String)>,
    /// Each value beside its limit, those that are out first.
    pub checks: Vec<WalkCheckShown>,
    /// What was found, in sentences.
    pub says: Vec<String>,
    /// What can be done, and who must say yes.
    pub remedies: Vec<(String, Vec<String>)>,
    /// Numbers that follow: what, the value, and who says so (may be empty).
    pub facts: Vec<(String, String, String)>,
    /// What could not be seen or was not looked at.
    pub not_seen: Vec<String>,
    /// What is not for this tool to decide, and who decides.
    pub left_to: Vec<(String, String)>,
    /// What was assumed, each with the input that states it, where there is one.
    pub assumptions: Vec<(Option<FieldId>, String)>,
    /// The usual cautions.
    pub cautions: Vec<String>,
    /// What is stored with the look: the core's verdict. A look with a refused reading is not judged: `could not be seen`.
    pub verdict: String,
    /// What is stored with the look: the answer in one line.
    pub summary: String,
}

/// A list with its readings.
#[derive(Clone, Debug, PartialEq)]
pub struct ListShown {
    /// Its input.
    pub field: FieldId,
    /// Its label.
    pub label: &'static str,
    /// The readings, in order.
    pub readings: Vec<ReadingShown>,
}

/// One reading of a list.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadingShown {
    /// As typed.
    pub typed: String,
    /// As understood, short: `2' 9"`; empty where it was not.
    pub understood: String,
    /// How it stands: short where it was refused, not known where it is asked about.
    pub state: State,
    /// What is wrong with it, or what is asked about it.
    pub question: Option<String>,
    /// What may have been meant; never put in its place.
    pub perhaps: Vec<String>,
    /// Whether the question is answered by saying that it is right.
    pub can_be_confirmed: bool,
    /// Whether someone said so.
    pub confirmed: bool,
    /// Whether it is the one in hand.
    pub in_hand: bool,
}

/// One value beside its limit.
#[derive(Clone, Debug, PartialEq)]
pub struct WalkCheckShown {
    /// What was looked at.
    pub subject: String,
    /// Where, when there are several.
    pub at: Option<String>,
    /// What was found.
    pub found: String,
    /// What is allowed.
    pub limit: String,
    /// What is to spare, or missing.
    pub margin: String,
    /// Its state.
    pub state: State,
    /// The same in words.
    pub word: String,
    /// Who asks for it, and how a published source came here.
    pub clause: String,
}
