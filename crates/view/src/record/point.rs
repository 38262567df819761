//! One thing that was looked at, as its row shows it.

use job::walk::{Because, Entry, Look, LookEntry, Mark, Point, Step};

use super::words::{kind_words, sentence, severity_words, state_of, when_and_who};
use crate::model::State;

/// How far something that was out has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stage {
    /// Found; nothing is agreed yet, or what was mended did not hold.
    Found,
    /// What is to be done is agreed.
    Agreed,
    /// It was done, and is to be looked at again.
    Done,
    /// It was looked at again and is right.
    Right,
}

impl Stage {
    /// In a word.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Found => "found",
            Self::Agreed => "agreed",
            Self::Done => "done",
            Self::Right => "right",
        }
    }
}

/// A row of the list: one thing that was looked at, as it stands now.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PointRow {
    /// The id of its first look.
    pub id: String,
    /// The id of the look that counts now; that of the first look where all are crossed out.
    pub look: String,
    /// The mark's id.
    pub mark: String,
    /// The mark's name.
    pub mark_name: String,
    /// What was looked at, by its stable name.
    pub kind: String,
    /// The same in words.
    pub kind_words: String,
    /// Where on the mark, as typed.
    pub place: String,
    /// The verdict in words.
    pub verdict: String,
    /// The verdict's state.
    pub state: State,
    /// The answer in words at the time.
    pub says: String,
    /// How bad it is, by its stable name; empty where nothing was said.
    pub severity: String,
    /// The same in words.
    pub severity_words: String,
    /// A note of one's own.
    pub note: String,
    /// The phone's own time.
    pub at: String,
    /// Who looked, as typed.
    pub by: String,
    /// How many photos there are.
    pub photos: usize,
    /// Whether a look was corrected.
    pub corrected: bool,
    /// Whether what counts now was measured after something was mended.
    pub mended: bool,
    /// How far it has come, where it was out or something became of it.
    pub stage: Option<Stage>,
    /// Why it is crossed out, where every look is.
    pub struck: Option<String>,
    /// One line a look, the first one first.
    pub history: Vec<String>,
    /// One line for each thing that became of it.
    pub follow_ups: Vec<String>,
}

impl PointRow {
    /// Whether it counts and is to be mended.
    #[must_use]
    pub fn is_to_mend(&self) -> bool {
        self.struck.is_none() && self.state == State::Short
    }

    /// Its name in a list: `W1, Nails, grid B`.
    #[must_use]
    pub fn name(&self) -> String {
        let parts = [self.mark_name.as_str(), &self.kind_words, self.place.trim()];
        parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<&str>>().join(", ")
    }
}

/// The state of what counts now; none where every look is crossed out.
pub(super) fn state(point: &Point) -> Option<State> {
    point.now().map(|look| state_of(&look.what.verdict))
}

/// Whether it was out, was mended, and is right.
pub(super) fn is_mended(point: &Point) -> bool {
    // What was looked at once was not mended.
    point.looks.len() > 1 && stage(point, &rounds(point)) == Some(Stage::Right)
}

/// A row, unless the point has no look at all.
pub(super) fn row(mark: &Mark, point: &Point) -> Option<PointRow> {
    let first = point.first()?;
    let now = point.now().unwrap_or(first);
    let rounds = rounds(point);
    Some(PointRow {
        id: first.id.clone(),
        look: now.id.clone(),
        mark: mark.id.clone(),
        mark_name: mark.name().to_owned(),
        kind: now.what.kind.clone(),
        kind_words: kind_words(&now.what.kind).to_owned(),
        place: now.what.place.clone(),
        verdict: now.what.verdict.clone(),
        state: state_of(&now.what.verdict),
        says: now.what.says.clone(),
        severity: now.what.severity.clone(),
        severity_words: severity_words(&now.what.severity).to_owned(),
        note: now.what.note.clone(),
        at: now.at.clone(),
        by: now.by.clone(),
        photos: point.photos.iter().filter(|(photo, _)| photo.struck.is_none()).count(),
        corrected: point.looks.iter().any(|look| look.struck.is_none() && is(look, Because::Corrected)),
        mended: rounds.last().is_some_and(|round| round.mended),
        stage: stage(point, &rounds),
        struck: if rounds.is_empty() { now.struck.clone() } else { None },
        history: point.looks.iter().map(history).collect(),
        follow_ups: point.follow_ups.iter().map(follow_up).collect(),
    })
}

fn is(look: &LookEntry, because: Because) -> bool {
    look.what.follows.as_ref().is_some_and(|follows| follows.because == because)
}

/// A round of looking: the look that counts for it, after its corrections.
struct Round<'a> {
    look: &'a LookEntry,
    mended: bool,
    /// When the round began.
    since: &'a str,
}

/// The rounds, without what is crossed out. A correction takes the place of the round before it; of the last round the
/// look is the one that counts now.
fn rounds(point: &Point) -> Vec<Round<'_>> {
    let mut rounds: Vec<Round<'_>> = Vec::new();
    for look in point.looks.iter().filter(|look| look.struck.is_none()) {
        match rounds.last_mut() {
            Some(last) if is(look, Because::Corrected) => last.look = look,
            _ => rounds.push(Round { look, mended: is(look, Because::Mended), since: &look.at }),
        }
    }
    rounds
}

fn stage(point: &Point, rounds: &[Round<'_>]) -> Option<Stage> {
    let (last, before) = rounds.split_last()?;
    let out = |round: &Round<'_>| state_of(&round.look.what.verdict) == State::Short;
    let now = state_of(&last.look.what.verdict);
    if matches!(now, State::Carries | State::AtLimit) {
        return before.iter().any(out).then_some(Stage::Right);
    }
    // What was agreed and done before it was looked at again did not mend it.
    let since = if before.is_empty() { "" } else { last.since };
    let mut follow_ups = point.follow_ups.iter().filter(|entry| entry.struck.is_none() && entry.at.as_str() >= since);
    match follow_ups.next_back().map(|entry| entry.what.0) {
        Some(Step::Done) => Some(Stage::Done),
        Some(Step::Agreed) => Some(Stage::Agreed),
        None => out(last).then_some(Stage::Found),
    }
}

/// What a look was: the first, a correction, or one after mending.
pub(super) fn look_words(look: &Look) -> &'static str {
    match look.follows.as_ref().map(|follows| follows.because) {
        None => "First look",
        Some(Because::Corrected) => "Corrected",
        Some(Because::Mended) => "Looked at again after mending",
    }
}

/// What became of it, in a word.
pub(super) const fn step_words(step: Step) -> &'static str {
    match step {
        Step::Agreed => "Agreed",
        Step::Done => "Done",
    }
}

fn history(look: &LookEntry) -> String {
    let why = look.what.follows.as_ref().map(|follows| follows.why.trim()).filter(|why| !why.is_empty());
    let lead = [look_words(&look.what).to_owned(), when_and_who(&look.at, &look.by)];
    let lead = lead.into_iter().filter(|part| !part.is_empty()).collect::<Vec<String>>().join(", ");
    let mut line = format!("{lead}: {}", sentence(&look.what.verdict));
    for (before, text) in
        [("", Some(look.what.says.as_str())), ("Why: ", why), ("Crossed out: ", look.struck.as_deref())]
    {
        if let Some(text) = text.filter(|text| !text.trim().is_empty()) {
            line.push_str(&format!(" {before}{}", sentence(text)));
        }
    }
    line
}

fn follow_up(entry: &Entry<(Step, String)>) -> String {
    let (step, says) = &entry.what;
    let lead = [step_words(*step).to_owned(), when_and_who(&entry.at, &entry.by)];
    let lead = lead.into_iter().filter(|part| !part.is_empty()).collect::<Vec<String>>().join(", ");
    let struck = entry.struck.as_ref().map(|why| format!(" Crossed out: {}", sentence(why))).unwrap_or_default();
    format!("{lead}: {}{struck}", sentence(says))
}
