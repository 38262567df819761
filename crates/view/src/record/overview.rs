//! The walk at a glance.

use job::walk::{Mark, Point, Walk};

use super::lacks::{Lacking, lacks};
use super::point::{PointRow, is_mended, row, state};
use super::words::{severity_rank, severity_words, worse};
use crate::model::State;

/// The walk at a glance.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Overview {
    /// The worst state of what was looked at; not known while nothing was.
    pub state: State,
    /// The figure: `3 to mend`.
    pub figure: String,
    /// The verdict in words, or how bad the worst is: `stop work here`.
    pub word: String,
    /// How much was looked at: `14 looked at, 2 not seen`.
    pub share_text: String,
    /// The marks, in the order in which they were first typed; none that is crossed out.
    pub marks: Vec<MarkRow>,
    /// What is to be mended, the worst first.
    pub to_mend: Vec<PointRow>,
    /// How many were out, were mended, and are right.
    pub mended: usize,
    /// What could not be seen.
    pub not_seen: Vec<PointRow>,
    /// What others decide.
    pub left_to_others: Vec<PointRow>,
    /// What the record still lacks.
    pub lacks: Vec<Lacking>,
    /// Whether the walk is signed.
    pub signed: bool,
}

/// A mark at a glance.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MarkRow {
    /// Its id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// The worst state of what was looked at; not known while nothing was.
    pub state: State,
    /// How many things were looked at and seen.
    pub looked_at: usize,
    /// How many of them are out.
    pub to_mend: usize,
    /// How many could not be seen.
    pub not_seen: usize,
    /// How many are for others to decide.
    pub left_to_others: usize,
    /// How many are open: to be mended, not seen, or for others to decide.
    pub open: usize,
}

impl MarkRow {
    /// Whether anything stands there.
    const fn holds_any(&self) -> bool {
        self.looked_at + self.not_seen > 0
    }

    /// The counts in words: `14 looked at, 3 to mend, 2 not seen`.
    #[must_use]
    pub fn counts(&self) -> String {
        if !self.holds_any() {
            return "nothing looked at yet".to_owned();
        }
        let others =
            [(self.to_mend, "to mend"), (self.not_seen, "not seen"), (self.left_to_others, "for others to decide")];
        let held = others.into_iter().filter(|(count, _)| *count > 0);
        let parts = held.map(|(count, words)| format!("{count} {words}"));
        [format!("{} looked at", self.looked_at)].into_iter().chain(parts).collect::<Vec<String>>().join(", ")
    }
}

/// The walk at a glance, from the whole of what stands.
#[must_use]
pub fn overview(walk: &Walk) -> Overview {
    let marks: Vec<MarkRow> = standing(walk).map(mark_row).collect();
    let points = standing_points(walk);
    let rows = |wanted: State| -> Vec<PointRow> {
        let stands = points.iter().filter(|(.., state)| *state == wanted);
        stands.filter_map(|(mark, point, _)| row(mark, point)).collect()
    };
    let mut to_mend = rows(State::Short);
    to_mend.sort_by_key(|row| severity_rank(&row.severity));
    let (not_seen, left_to_others) = (rows(State::NotKnown), rows(State::Outside));
    let state = marks.iter().filter(|mark| mark.holds_any()).map(|mark| mark.state).reduce(worse);
    let state = state.unwrap_or(State::NotKnown);
    let looked_at: usize = marks.iter().map(|mark| mark.looked_at).sum();
    let (figure, word) = match state {
        State::Short => (format!("{} to mend", to_mend.len()), worst_word(&to_mend)),
        State::Outside => (format!("{} for others to decide", left_to_others.len()), "not for this tool to decide"),
        State::NotKnown if not_seen.is_empty() => ("Nothing looked at".to_owned(), "type a mark and measure"),
        State::NotKnown | State::Told => (format!("{} not seen", not_seen.len()), "could not be seen"),
        State::AtLimit => ("Nothing to mend".to_owned(), "at the limit"),
        State::Carries => ("Nothing to mend".to_owned(), "within"),
    };
    Overview {
        state,
        figure,
        word: word.to_owned(),
        share_text: share_text(looked_at, not_seen.len()),
        signed: walk.is_signed(),
        lacks: lacks(walk),
        mended: points.iter().filter(|(_, point, _)| is_mended(point)).count(),
        marks,
        to_mend,
        not_seen,
        left_to_others,
    }
}

/// The marks that are not crossed out.
pub(super) fn standing(walk: &Walk) -> impl Iterator<Item = &Mark> {
    walk.marks.iter().filter(|mark| !mark.is_struck())
}

/// Everything that stands, with its mark and its state: a walk may hold thousands, so each is judged once.
fn standing_points(walk: &Walk) -> Vec<(&Mark, &Point, State)> {
    let of_mark = |mark| move |point| Some((mark, point, state(point)?));
    standing(walk).flat_map(|mark| mark.points.iter().filter_map(of_mark(mark))).collect()
}

/// How bad the worst of what is out is; where nothing was said, that it is out.
fn worst_word(to_mend: &[PointRow]) -> &str {
    let worst = to_mend.first().map_or("", |row| row.severity.as_str());
    if matches!(worst, "stop" | "before_cover") { severity_words(worst) } else { "out" }
}

fn share_text(looked_at: usize, not_seen: usize) -> String {
    match not_seen {
        0 => format!("{looked_at} looked at"),
        _ => format!("{looked_at} looked at, {not_seen} not seen"),
    }
}

pub(super) fn mark_row(mark: &Mark) -> MarkRow {
    let states: Vec<State> = mark.points.iter().filter_map(state).collect();
    let count = |wanted: State| states.iter().filter(|state| **state == wanted).count();
    let (to_mend, not_seen, left_to_others) = (count(State::Short), count(State::NotKnown), count(State::Outside));
    MarkRow {
        id: mark.id.clone(),
        name: mark.name().to_owned(),
        state: states.iter().copied().reduce(worse).unwrap_or(State::NotKnown),
        looked_at: states.len() - not_seen,
        to_mend,
        not_seen,
        left_to_others,
        open: to_mend + not_seen + left_to_others,
    }
}
